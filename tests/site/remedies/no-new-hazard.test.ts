/** What a remedy must not bring along: a circuit that loses its protection, a device that does not suit what hangs on it. */
import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../../src/io/index.js';
import { withChanges } from '../../../src/site/index.js';
import { type ShortSurvey, surveyOf } from '../../jobs/base.js';
import { wholePlanInBritain } from '../../support/plan.js';
import type { Json } from '../../support/surveys.js';
import { asWanted, brief, type Case, cure, home, seen, tt } from './cures.js';

const soil = { soilResistivity: '2.5 K·m/W' };
const breaker = { kind: { standard: 'EN 60898', type: 'B' } };
const ofBoard = (change: object) => ({
  position: 'origin-of-installation',
  type: seen('A'),
  rating: '30 mA',
  ratedCurrent: seen('100 A'),
  delay: 'general',
  opensAllLive: true,
  ...change,
});
/** A garage with lights, behind a cable of 15 m in the ground. */
const garage = (
  device: string,
  area: string,
  cable = 'armoured 3-core',
  kind: Json = { standard: 'BS 88-2' },
): Partial<ShortSurvey> => ({
  boards: [
    {
      id: 'garage',
      circuits: ['lights'],
      feeder: { device, area, cable, kind, route: [['buried', 15, soil]] },
      change: { detached: seen(true), extraneousParts: seen(false) },
    },
  ],
  points: [{ from: 'garage', route: [['clipped indoors', 4]] }],
});
const [inGarage] = garage('63 A', '16 mm²').points ?? [];
const onTt: Partial<ShortSurvey> = {
  ...garage('63 A', '16 mm²'),
  supply: tt,
  points: inGarage ? [{ ...inGarage, point: { openPenDevice: seen('none') } }] : [],
};
const insideOnly = (change: object): ShortSurvey['points'] => [
  {
    point: { residual: { ...ofBoard(change), position: 'inside-equipment', pointsServed: 1 } },
    device: breaker,
    residual: [],
    route: [['clipped outdoors', 10]],
  },
];
const trunking: ShortSurvey['points'][number]['route'][number] = [
  'clipped indoors',
  6,
  { method: 'B', containment: 'trunking' },
];

const cases: readonly Case[] = [
  {
    remedy: 'own-residual-device',
    what: 'a circuit-breaker, and nobody planned a residual current device: an RCBO (BS 7671, 722.531.3.101)',
    survey: { ...home, points: [{ device: breaker, residual: [], route: [['clipped outdoors', 10]] }] },
    check: 'residual-current-rating',
  },
  {
    remedy: 'own-residual-device',
    what: 'a device of 30 mA said to be delayed: an RCBO without delay',
    survey: {
      ...home,
      points: [
        {
          residual: [ofBoard({ position: 'origin-of-circuit', delay: 'selective' })] as never,
          route: [['clipped outdoors', 10]],
        },
      ],
    },
    check: 'residual-current-one-per-point',
  },
  {
    remedy: 'own-residual-device',
    what: 'a device inside the point that opens the line alone: an RCBO that opens both (BS 7671, 722.531.3.101)',
    survey: { ...home, points: insideOnly({ opensAllLive: false }) },
    check: 'residual-current-poles',
  },
  {
    remedy: 'residual-rated-current',
    what: 'a device of 20 A for the circuit behind 32 A on three lines: one of 40 A',
    survey: {
      base: 'three-phase',
      premises: 'workplace',
      metered: '20 A',
      circuits: ['lights'],
      points: [
        {
          lines: ['L1', 'L2', 'L3'],
          cables: ['armoured 5-core'],
          residual: [ofBoard({ position: 'origin-of-circuit', ratedCurrent: '20 A' })] as never,
          route: [['on tray', 12]],
        },
      ],
    },
    check: 'residual-current-device-overload',
  },
  {
    remedy: 'feeder-device',
    what: '63 A ahead of 6 mm² to the garage, 53 A in the ground (BS 7671, Table 4E4A): 50 A',
    survey: { ...home, ...garage('63 A', '6 mm²') },
    check: 'tabulated-capacity',
  },
  {
    remedy: 'feeder-device',
    what: 'a circuit-breaker D 63 A ahead of the garage, Z_s of 0.17 Ω at most (BS 7671, Table 41.3): curve B',
    survey: { ...home, ...garage('63 A', '16 mm²', 'armoured 3-core', { standard: 'EN 60898', type: 'D' }) },
    check: 'automatic-disconnection',
  },
  {
    remedy: 'feeder-residual-device',
    what: 'TT, and a fuse alone ahead of the cable to the garage: 100 mA with time delay (BS 7671, 411.5.2)',
    survey: { ...home, ...onTt },
    check: 'automatic-disconnection',
  },
  {
    remedy: 'ahead-of-residual-device',
    what: '30 mA without delay ahead of a whole house, on which its circuits rely: the point is fed ahead of it',
    survey: { ...home, board: { residual: [ofBoard({})] as never } },
    check: 'residual-current-selectivity',
  },
  {
    remedy: 'larger-feeder',
    what: 'twin and earth in the ground to the garage: an armoured cable',
    survey: { ...home, ...garage('40 A', '10 mm²', 'twin and earth') },
    check: 'cable-for-the-ground',
  },
  {
    remedy: 'clear-of-insulation',
    what: 'armoured cable across a ceiling with insulation, for which no table rates it: clipped clear of it',
    survey: {
      ...home,
      points: [
        {
          route: [
            ['above a ceiling', 6],
            ['clipped outdoors', 5],
          ],
        },
      ],
    },
    check: 'cable-for-the-route',
  },
  {
    remedy: 'flat-cable-indoors',
    what: 'armoured cable in mini trunking, for which no table rates it: twin and earth to a joint box, armoured outdoors',
    survey: { ...home, points: [{ route: [trunking, ['clipped outdoors', 5]] }] },
    check: 'cable-for-the-route',
  },
  {
    remedy: 'change-of-cable',
    what: 'twin and earth for the trunking and armoured for the ground, neither for both: a joint box between them',
    survey: {
      ...home,
      points: [{ cables: ['twin and earth', 'armoured 3-core'], route: [trunking, ['buried', 15, soil]] }],
    },
    check: 'cable-for-the-ground',
  },
  {
    remedy: 'mode-3-point',
    what: 'a 13 A socket for a vehicle in a house in multiple occupation, without arc detection (BS 7671, 421.1.7): a fixed point',
    survey: {
      ...home,
      options: { premises: { kind: seen('multiple-occupation'), arcDetection: seen(false) } },
      points: [
        {
          point: { mode: 2, setting: seen('10 A'), socket: seen('BS 1363'), outdoors: seen(false) },
          route: [['clipped indoors', 10]],
        },
      ],
    },
    check: 'arc-detection',
  },
];
cure(cases);

it('puts in an earthing conductor that holds with a larger fuse too', () => {
  const thin = { ...home, supply: { ...home.supply, earthingConductor: seen('6 mm²') } };
  const { done } = applied('6 mm²', thin, 'earthing-conductor');
  expect(done.installation.supply.earthingConductor).toMatchObject({ value: 16 });
});

/** The survey with the first offer of a remedy applied. */
function applied(what: string, short: ShortSurvey, remedy: string) {
  const survey = readSurvey(surveyOf(what, short));
  const offer = wholePlanInBritain(survey, brief).remedies.find((o) => o.remedies.some((r) => r.id === remedy));
  if (!offer) throw new Error(`${remedy} is not offered`);
  return { offer, done: withChanges(survey, offer.changes) };
}
const typesOf = (residual: readonly { readonly type: unknown }[] = []) =>
  residual.map(({ type }) => (type as { readonly value?: string }).value);
const sun = (change: object): ShortSurvey['circuits'][number] => [
  'solar',
  { purpose: 'generation', current: '16 A', plugged: seen(false), ...change },
  '20 A',
  '4 mm²',
  ['L1'],
  { device: { ...breaker, rating: '20 A', breakingCapacity: '6 kA' }, noResidual: seen(true) },
];

describe('a circuit that leaves the devices of its board', () => {
  // under A1 a point may share the device of the board
  const shared: ShortSurvey = {
    ...home,
    edition: '2018+A1:2020',
    board: { residual: [ofBoard({})] as never },
    points: [{ device: breaker, residual: [], route: [['clipped outdoors', 10]] }],
  };

  it('stays behind them where there is a way for it', () => {
    expect(asWanted(wholePlanInBritain(readSurvey(surveyOf('a way', shared)), brief))?.overall.verdict).toBe('pass');
  });

  it('has one of its own on the small board that is put beside', () => {
    const { done, offer } = applied(
      'no way',
      { ...shared, board: { ...shared.board, spareWays: seen(0) } },
      'second-board',
    );
    expect(typesOf(done.wanted[0]?.run.residual)).toEqual(['A']);
    expect(offer.remedies[0]?.what).toContain('RCBO of its own');
  });

  it('has one of its own on the board of the sources, and what stays keeps the one that was shared', () => {
    const of = (load: object): ShortSurvey => ({
      ...home,
      supply: {},
      circuits: ['lights', 'ring', sun(load)],
      board: { residual: [{ ...ofBoard({ ratedCurrent: seen('63 A') }), serves: ['solar', 'ring'] }] as never },
    });
    const { done } = applied('solar', of({}), 'own-board-for-sources');
    const [feeder] = done.installation.board.runs.filter((r) => r.id === 'feeder of board of the sources');
    const [board] = feeder?.feeds ?? [];
    expect(board?.kind === 'board' && board.runs.map((r) => [r.id, ...typesOf(r.residual)])).toEqual([['solar', 'A']]);
    expect(done.installation.board.residual?.map((d) => d.serves)).toEqual([['ring']]);
    // no lower than its maker asks for
    const askedFor = applied('solar', of({ residualType: 'B' }), 'own-board-for-sources').done;
    expect(JSON.stringify(askedFor.installation.board.runs.at(-1)?.feeds)).toContain(
      '"type":{"state":"known","value":"B"',
    );
  });

  it('is not named any more by the board of a garage that it leaves', () => {
    const small = garage('32 A', '4 mm²');
    const [one] = small.boards ?? [];
    const boards = [
      {
        ...(one as NonNullable<typeof one>),
        change: {
          ...one?.change,
          noResidual: seen(false),
          residual: [{ ...ofBoard({ ratedCurrent: seen('63 A') }), serves: ['garage lights', 'point 1 circuit'] }],
        },
      },
    ] as never;
    const { done } = applied('garage', { ...home, ...small, boards }, 'own-circuit');
    expect(done.wanted[0]?.from).toBe('consumer unit');
    expect(JSON.stringify(done.installation)).not.toContain('point 1');
  });
});

describe('a new board', () => {
  const pump: ShortSurvey['circuits'][number] = [
    'heat pump',
    { purpose: 'heat-pump', current: '12 A', residualType: 'B' },
    '20 A',
    '4 mm²',
    ['L1'],
    { device: { kind: { standard: 'EN 60898', type: 'C' }, rating: '20 A', breakingCapacity: '6 kA' } },
  ];
  const [barn] = garage('63 A', '16 mm²').boards as NonNullable<ShortSurvey['boards']>;
  const full = (change: NonNullable<ShortSurvey['boards']>[number]['feeder']['change'] = {}): ShortSurvey => ({
    ...home,
    circuits: [...home.circuits, pump],
    boards: barn ? [{ ...barn, feeder: { ...barn.feeder, change } }] : [],
    board: { spareWays: seen(0), residual: [ofBoard({ rating: '100 mA', delay: 'selective' })] as never },
    supply: tt,
    points: [{ point: { openPenDevice: seen('none') }, route: [['clipped outdoors', 10]] }],
  });

  it('has the type that the maker of a load asks for, and the curve that is there', () => {
    const { done } = applied('a full board', full(), 'new-board');
    const moved = done.installation.board.runs.find((r) => r.id === 'heat pump');
    expect(typesOf(moved?.residual)).toEqual(['B']);
    expect(moved?.device.kind).toMatchObject({ value: { standard: 'EN 61009', type: 'C' } });
  });

  it('gives a feeder no 30 mA, and takes from it nothing that stood ahead of it', () => {
    const { done } = applied('a full board', full(), 'new-board');
    const feeder = done.installation.board.runs.find((r) => r.id === 'feeder of garage');
    expect(feeder?.device.kind).toMatchObject({ value: { standard: 'BS 88-2' } });
    expect(feeder?.residual).toMatchObject([{ rating: { value: 0.1 }, delay: { value: 'selective' } }]);
  });

  it('leaves a feeder alone that leaves the tails', () => {
    const { done } = applied('a full board', full({ fromTails: seen(true) }), 'new-board');
    expect(done.installation.board.runs.find((r) => r.id === 'feeder of garage')?.residual).toBeUndefined();
  });
});
