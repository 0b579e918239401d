/** Remedies beside those of `verdicts.test.ts`, each on an everyday job: it cures what it is for, and what was offered is the verdict once it is applied. */
import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../../src/io/index.js';
import { type Plan, withChanges } from '../../../src/site/index.js';
import { type ShortSurvey, surveyOf } from '../../jobs/base.js';
import { wholePlanInBritain } from '../../support/plan.js';
import type { Json } from '../../support/surveys.js';
import { asWanted, brief, type Case, cure, cutOut, home, plain, seen, tt } from './cures.js';

const heater = (line: string, current: string, device: string, area: string): ShortSurvey['circuits'][number] => [
  `heater ${line}`,
  { purpose: 'other', current },
  device,
  area,
  [line],
];

/** The point on a spare way behind the device of the ring, without one of its own. */
const shared: ShortSurvey = {
  ...home,
  board: {
    residual: [
      {
        position: 'origin-of-installation',
        serves: ['ring', 'point 1 circuit'],
        type: 'A',
        rating: '30 mA',
        ratedCurrent: '80 A',
        delay: 'general',
        opensAllLive: true,
      },
    ],
  },
  points: [
    {
      device: { kind: { standard: 'EN 60898', type: 'B' } },
      residual: [],
      route: [['clipped outdoors', 10]],
    },
  ],
};

const feederOf4 = {
  construction: 'armoured',
  insulation: 'thermosetting-90',
  cores: 3,
  protective: 'core',
  material: 'copper',
  area: '4 mm²',
};
const origin = {
  position: 'origin-of-installation',
  type: 'A',
  rating: '100 mA',
  ratedCurrent: '100 A',
  delay: 'selective',
  delayTime: '0 s',
  opensAllLive: true,
  bidirectional: true,
};
const garageOn = (change: Record<string, Json>, fed: Record<string, Json> = {}): ShortSurvey => ({
  ...home,
  boards: [
    {
      id: 'garage',
      circuits: ['lights', 'radial'],
      feeder: {
        device: '50 A',
        area: '10 mm²',
        cable: 'armoured 3-core',
        route: [['buried', 18, { soilResistivity: '2.5 K·m/W' }]],
        change,
      },
      change: { detached: seen(true), extraneousParts: seen(false), ...fed },
    },
  ],
  points: [
    {
      from: 'garage',
      cables: ['twin and earth'],
      point: { setting: seen('16 A') },
      route: [['clipped indoors', 4]],
    },
  ],
});

const cases: readonly Case[] = [
  {
    remedy: 'larger-feeder',
    what: 'a joint of the feeder under a slab: a new cable all the way (BS 7671, 526.3)',
    survey: garageOn({ jointsAccessible: seen(false) }),
    check: 'joint-accessible',
  },
  {
    remedy: 'main-switch',
    what: 'a switch-fuse of 16 A at the end of a feeder of 50 A: a larger one',
    survey: { ...garageOn({}, { mainSwitch: { rating: seen('63 A'), fuseAhead: seen('16 A') } }), supply: {} },
    check: 'demand-within-main-switch',
  },
  {
    remedy: 'new-cable',
    what: 'an old cable with a joint under the floor, to be kept: a new one (BS 7671, 526.3)',
    survey: {
      ...home,
      points: [
        {
          cables: [['twin and earth', '10 mm²', 'marking']],
          route: [['clipped indoors', 14, { existing: true }]],
          change: { jointsAccessible: seen(false) },
        },
      ],
    },
    check: 'joint-accessible',
  },
  {
    remedy: 'larger-feeder',
    what: 'a thin feeder of which nobody knows the joints, nor whether it leaves the board: the new one has none, and does',
    survey: {
      ...garageOn({
        jointsAccessible: { unknown: 'not followed' },
        fromTails: { unknown: 'not seen' },
        cable: feederOf4,
      }),
      supply: tt,
      board: { residual: [origin] },
    },
    check: 'terminal-temperature',
  },
  {
    remedy: 'outbuilding-bonding',
    what: 'a steel barn on PME bonded with 4 mm²: 10 mm² (BS 7671, Table 54.8)',
    survey: {
      ...home,
      boards: [
        {
          id: 'barn',
          circuits: ['lights', 'radial'],
          feeder: {
            device: '63 A',
            area: '16 mm²',
            cable: 'armoured 3-core',
            route: [['buried', 30, { soilResistivity: '2.5 K·m/W' }]],
          },
          change: { detached: seen(true), extraneousParts: seen(true), bonding: seen('4 mm²') },
        },
      ],
      points: [{ from: 'barn', cables: ['twin and earth'], route: [['clipped indoors', 5]] }],
    },
    check: 'outbuilding-bonding',
  },
  {
    remedy: 'other-line',
    what: 'the point on the line with 80 A, and 20 A on the others: it goes there',
    survey: {
      base: 'three-phase',
      premises: 'small-shop',
      circuits: [
        heater('L1', '80 A', '80 A', '25 mm²'),
        heater('L2', '20 A', '20 A', '4 mm²'),
        heater('L3', '20 A', '20 A', '4 mm²'),
      ],
      points: [{ lines: ['L1'], route: [['clipped outdoors', 14]] }],
    },
    check: 'demand-within-cut-out',
  },
  {
    remedy: 'own-service',
    what: 'a looped service: one of its own, measured anew',
    survey: { ...home, base: 'by photograph', supply: { ...home.supply, looped: seen(true) } },
    check: 'service-of-its-own',
    verdict: 'conditional',
  },
  {
    remedy: 'residual-selective',
    what: '100 mA without delay ahead of a whole TT house: with time delay',
    survey: {
      ...home,
      supply: tt,
      board: {
        residual: [
          {
            position: 'origin-of-installation',
            type: seen('A'),
            rating: '100 mA',
            ratedCurrent: seen('100 A'),
            delay: 'general',
            opensAllLive: true,
          },
        ],
      },
      points: [{ point: plain, route: [['clipped outdoors', 10]] }],
    },
    check: 'residual-current-selectivity',
  },
  {
    remedy: 'sound-cut-out',
    what: 'a scorched cut-out: the operator puts it right',
    survey: { ...home, supply: { ...home.supply, cutOutSound: seen(false) } },
    check: 'cut-out-is-sound',
  },
  {
    remedy: 'way-given-up',
    what: 'a shower that is out of use, on 80 A by the guide: disconnected for good',
    survey: {
      base: 'measured',
      circuits: [
        'lights',
        'ring',
        [
          'shower',
          { purpose: 'instantaneous-water-heating', current: '41.3 A' },
          '45 A',
          '10 mm²',
          ['L1'],
          { outOfUse: seen(true) },
        ],
      ],
      supply: { cutOut: cutOut('80 A') },
      points: [{ route: [['clipped outdoors', 10]] }],
    },
    check: 'demand-within-cut-out',
  },
  {
    remedy: 'earthing-conductor',
    what: '10 mm² behind a cut-out whose label nobody can read: 16 mm², by the table for tails of 25 mm² (BS 7671, Table 54.7)',
    survey: {
      ...home,
      supply: {
        cutOut: { kind: { unknown: 'the label of the cut-out' }, rating: seen('80 A') },
        earthingConductor: seen('10 mm²'),
      },
    },
    check: 'earthing-conductor',
  },
  {
    remedy: 'own-board-for-sources',
    what: 'a battery on a board of 100 A behind 100 A (BS 7671, 551.7.2): on a board of its own',
    survey: {
      base: 'measured',
      circuits: ['lights', 'radial', ['battery', { purpose: 'storage', current: '16 A' }, '20 A', '4 mm²']],
      points: [{ route: [['clipped outdoors', 10]] }],
    },
    check: 'board-rating',
  },
  {
    remedy: 'second-board',
    what: 'ways that are free in a board whose devices are no longer made: a small board beside it',
    survey: { ...home, work: { devicesToBeHad: seen(false) } },
    check: 'way-of-its-own',
  },
  {
    remedy: 'new-cable',
    what: '6 mm² twin and earth laid in wool, 23.5 A (BS 7671, Table 4D5, method 103): 10 mm², 32 A',
    survey: {
      ...home,
      points: [{ cables: [['twin and earth', '6 mm²', 'marking']], route: [['in loft insulation', 4]] }],
    },
    check: 'tabulated-capacity',
  },
  {
    remedy: 'new-cable',
    what: 'two cores without a protective conductor, left by others: an armoured one',
    survey: {
      ...home,
      points: [{ cables: [['two-core without earth', '6 mm²', 'marking']], route: [['clipped outdoors', 8]] }],
    },
    check: 'protective-conductor',
  },
  {
    remedy: 'mode-3-point',
    what: 'a 13 A socket outdoors for a vehicle: a fixed point',
    survey: {
      ...home,
      points: [
        {
          point: { ...plain, mode: 2, setting: seen('10 A'), socket: seen('BS 1363') },
          route: [['clipped outdoors', 10]],
        },
      ],
    },
    check: 'charge-point-earthing',
  },
  {
    remedy: 'charge-point-earthing',
    what: 'an electrode that nobody measured, on TN-S from the transformer of the site: the earth of the supply',
    survey: {
      ...home,
      supply: { ...home.supply, system: seen('TN-S'), separateEarthConfirmed: seen(true) },
      points: [{ point: { ...plain, earthing: 'tt-earthing' }, route: [['clipped outdoors', 10]] }],
    },
    check: 'tt-out-of-reach',
  },
  {
    remedy: 'electrode',
    what: 'TT, and a rod of 1,900 Ω: 57 V at 30 mA; further rods until it lasts (BS 7671, 411.5.3)',
    survey: {
      ...home,
      supply: { ...tt, externalImpedance: seen('1900 Ω'), electrode: { resistance: seen('1900 Ω') } },
      points: [{ point: plain, route: [['clipped outdoors', 10]] }],
    },
    check: 'automatic-disconnection',
  },
  {
    remedy: 'ahead-of-residual-device',
    what: 'a way under the 30 mA device that serves the ring: an RCBO fed ahead of it, so that neither darkens the other',
    survey: shared,
    check: 'residual-current-one-per-point',
  },
  {
    remedy: 'own-service',
    what: 'a looped service that was measured: the new one is measured anew',
    survey: { ...home, supply: { ...home.supply, looped: seen(true) } },
    check: 'service-of-its-own',
    verdict: 'not-determined',
  },
  {
    remedy: 'charge-point-earthing',
    what: 'a point without any measure on PME: one with open-PEN detection',
    survey: { ...home, points: [{ point: plain, route: [['clipped outdoors', 10]] }] },
    check: 'charge-point-earthing',
  },
];

cure(cases);

it('leaves an earthing conductor of 16 mm² as it is, whatever the cut-out', () => {
  const found = cases.find((c) => c.remedy === 'earthing-conductor') as Case;
  const { supply } = found.survey;
  const survey = surveyOf('16 mm²', { ...found.survey, supply: { ...supply, earthingConductor: seen('16 mm²') } });
  const plan = wholePlanInBritain(readSurvey(survey), brief);
  expect(asWanted(plan)?.overall.verdict).toBe('pass');
  expect(plan.remedies.flatMap((o) => o.remedies.map((r) => r.id))).not.toContain('earthing-conductor');
});

it('takes no device of 30 mA from circuits that rely on it', () => {
  const found = cases.find((c) => c.remedy === 'residual-selective') as Case;
  const board = JSON.parse(JSON.stringify(found.survey.board).replace('100 mA', '30 mA'));
  const { remedies } = wholePlanInBritain(readSurvey(surveyOf('30 mA ahead', { ...found.survey, board })), brief);
  expect(remedies.flatMap((o) => o.remedies.map((r) => r.id))).not.toContain('residual-selective');
});

it('puts no lower type in the place of a residual current device that a circuit has', () => {
  const pump: ShortSurvey['circuits'][number] = [
    'heat pump',
    { purpose: 'heat-pump', current: '12 A', residualType: 'B' },
    '20 A',
    '4 mm²',
    ['L1'],
    { residual: [{ position: 'origin-of-circuit', type: 'B', rating: '30 mA', ratedCurrent: '40 A' }] },
  ];
  const full = { ...home, circuits: [...home.circuits, pump], board: { spareWays: seen(0) } };
  const survey = readSurvey(surveyOf('a full board', full));
  const offer = wholePlanInBritain(survey, brief).remedies.find((o) => o.remedies.some((r) => r.id === 'new-board'));
  const then = withChanges(survey, offer?.changes ?? []).installation.board.runs;
  const types = then.map(({ id, residual = [] }) => [id, ...residual.map((r) => 'value' in r.type && r.type.value)]);
  expect(types).toContainEqual(['heat pump', 'B']);
  expect(types).toContainEqual(['ring', 'A']);
  expect(offer?.remedies[0]?.what).toContain('type B where there was one');
});

it('leads with what keeps the wanted setting; a lower one is offered beside it', () => {
  const survey: ShortSurvey = {
    ...home,
    points: [{ cables: [['twin and earth', '2.5 mm²', 'marking']], route: [['clipped indoors', 14]] }],
  };
  const { options, remedies } = wholePlanInBritain(readSurvey(surveyOf('a cable that waits', survey)), brief);
  expect(options[0]?.remedies?.map((r) => r.id)).toEqual(['new-cable']);
  expect(remedies.flatMap((o) => o.remedies.map((r) => r.id))).toContain('lower-setting');
});

describe('drop-temperature', () => {
  // 6 mm² armoured: 47 m x 7.9 mV/A/m x 32 A = 11.9 V, 5.2 %; C_t = (320 - (1 - (32/62)²) x 60) / 320 = 0.86, so 10.3 V, 4.5 %
  const survey = readSurvey(
    surveyOf('47 m along a wall', {
      ...home,
      points: [
        {
          point: { openPenDevice: seen('open-pen-detection-touch-voltage') },
          route: [['clipped outdoors', 47]],
        },
      ],
    }),
  );
  const plan = wholePlanInBritain(survey, brief);
  const offer = plan.remedies.find((o) => o.remedies.some((r) => r.id === 'drop-temperature'));
  const areaOf = (of: Plan) => asWanted(of)?.points[0]?.design.chosen?.area;

  it('is offered where only the drop at the tabulated temperature asks for the larger cable', () => {
    expect(areaOf(plan)).toBe(10);
    expect(offer?.verdict).toBe('pass');
  });

  it('gives the smaller cable, and passes, when it is applied', () => {
    const then = wholePlanInBritain(withChanges(survey, offer?.changes ?? []), { ...brief, remedies: false });
    expect(asWanted(then)?.overall.verdict).toBe('pass');
    expect(areaOf(then)).toBe(6);
  });
});

describe('clear-of-insulation', () => {
  // method 103: 6 mm² carries 23.5 A, 10 mm² 32 A; clipped direct 4 mm² carries 37 A (BS 7671, Table 4D5)
  const survey = readSurvey(
    surveyOf('three metres below the wool', {
      ...home,
      points: [
        {
          cables: ['twin and earth'],
          route: [
            ['clipped indoors', 4],
            ['in loft insulation', 3],
          ],
        },
      ],
    }),
  );
  const plan = wholePlanInBritain(survey, brief);
  const offer = plan.remedies.find((o) => o.remedies.some((r) => r.id === 'clear-of-insulation'));
  const areaOf = (of: Plan) => asWanted(of)?.points[0]?.design.chosen?.area;

  it('is offered where the insulation alone asks for the larger cable', () => {
    expect(areaOf(plan)).toBe(10);
    expect(offer?.verdict).toBe('pass');
    expect(offer?.remedies.map((r) => r.what)).toEqual([
      'cable clipped clear of the thermal insulation: in loft insulation',
    ]);
  });

  it('gives the smaller cable, and passes, when it is applied', () => {
    const then = wholePlanInBritain(withChanges(survey, offer?.changes ?? []), { ...brief, remedies: false });
    expect(asWanted(then)?.overall.verdict).toBe('pass');
    expect(areaOf(then)).toBe(4);
  });
});
