import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../../src/io/index.js';
import { type Plan, type Survey, withChanges } from '../../../src/site/index.js';
import { type Change, changedSurvey } from '../../hazards/hazard.js';
import { wholePlanInBritain } from '../../support/plan.js';
import type { Json } from '../../support/surveys.js';

const brief = { sheets: 'none', lengths: false } as const;
const surveyOf = (name: string, changes: readonly Change[]): Survey => readSurvey(changedSurvey(name, changes));

/** A house in which what is wanted passes, its demand being metered over a year. */
const metered: Change = ['demand', { governing: 'metered-peak' }];
/** Of the board of which it was said that it has no residual current device. */
const described: Change = ['board.noResidual', undefined];
const device = (type: string, rest: { [key: string]: Json } = {}): Json => ({
  position: 'origin-of-installation',
  type,
  rating: '30 mA',
  ratedCurrent: '100 A',
  delay: 'general',
  opensAllLive: true,
  bidirectional: true,
  ...rest,
});
const garageWall = {
  name: 'garage wall',
  length: '8 m',
  method: 'C',
  ambient: '30 °C',
  group: { arrangement: 'bunched', circuits: 1 },
  insulated: '0 m',
  containment: 'clipped',
  concealedShallow: false,
};
const buried = [
  {
    name: 'under the lawn',
    length: '12 m',
    method: 'D',
    ambient: '15 °C',
    soilResistivity: '2.5 K·m/W',
    depth: '0.6 m',
    group: { arrangement: 'direct-in-ground', circuits: 1 },
    containment: 'buried',
    outdoors: true,
  },
];
const flat = {
  construction: 'flat-twin-and-earth',
  material: 'copper',
  insulation: 'thermoplastic-70',
  cores: 2,
  protective: 'bare-core',
};

interface Case {
  readonly remedy: string;
  readonly of?: string;
  readonly changes: readonly Change[];
  /** A check that stands in the way before. */
  readonly check: string;
  /** What is done, in words that have to be there. */
  readonly what: RegExp;
  /** Items beside those of the circuit, by key. */
  readonly items: readonly string[];
  /** Typical hours beside those of the circuit, from the labour table by hand. */
  readonly hours: number;
}

const cases: readonly Case[] = [
  {
    remedy: 'main-bonding',
    changes: [metered, ['supply.bonding.0.area', '6 mm²']],
    check: 'main-bonding-conductor',
    what: /bonding conductor of 10 mm²: water$/, // Table 54.8, neutral up to 35 mm²
    items: ['bonding'],
    hours: 2,
  },
  {
    remedy: 'earthing-conductor',
    changes: [metered, ['supply.earthingConductor', '4 mm²']],
    check: 'earthing-conductor',
    // Table 54.8 asks for 10 mm²; Table 54.7 for 16 mm² with tails of 25 mm², whatever the fuse
    what: /earthing conductor of 16 mm²/,
    items: ['earthing-conductor'],
    hours: 1,
  },
  {
    remedy: 'tails',
    changes: [metered, ['supply.tails', '16 mm²'], ['supply.cutOut.rating', '100 A']],
    check: 'tails-overload',
    what: /tails of 25 mm²/, // distributors: 25 mm² for 100 A
    items: [],
    hours: 0,
  },
  {
    remedy: 'surge-protection',
    changes: [metered, ['board.surgeProtection', false]],
    check: 'surge-protection',
    what: /surge protective device/,
    items: ['surge-protection'],
    hours: 0.5,
  },
  {
    remedy: 'second-board',
    changes: [metered, ['board.spareWays', 0]],
    check: 'way-of-its-own',
    what: /small board/,
    items: [],
    hours: 0,
  },
  {
    remedy: 'way-given-up',
    changes: [metered, ['board.spareWays', 0], ['board.runs.3.outOfUse', true]],
    check: 'way-of-its-own',
    what: /the way of cooker/,
    items: [],
    hours: 0.5,
  },
  {
    remedy: 'main-switch',
    changes: [metered, ['board.mainSwitch.rating', '63 A']],
    check: 'main-switch-overload',
    what: /main switch of 80 A/, // 536.4.202: at least the fuse ahead, 80 A
    items: ['main-switch'],
    hours: 0.75,
  },
  {
    remedy: 'residual-type-a',
    changes: [metered, ['board.residual', [device('AC')]], described],
    check: 'smooth-current-upstream',
    what: /RCD 100 A, 30 mA type A, in place/,
    items: ['residual-device'],
    hours: 0.75,
  },
  {
    remedy: 'residual-rated-current',
    changes: [metered, ['board.residual', [device('A', { ratedCurrent: '63 A' })]], described],
    check: 'residual-device-at-origin-overload',
    what: /RCD 80 A, 30 mA type A/, // at least the fuse ahead, 80 A
    items: ['residual-device'],
    hours: 0.75,
  },
  {
    remedy: 'double-pole',
    changes: [metered, ['wanted.0.residual.0.opensAllLive', false]],
    check: 'residual-current-poles',
    what: /opens all live/,
    items: [],
    hours: 0,
  },
  {
    remedy: 'both-ways',
    changes: [
      metered,
      ['wanted.0.residual.0.bidirectional', false],
      ['wanted.0.point.bidirectional', true],
      ['wanted.0.point.noResidual', true],
      ['board.rating', '125 A'],
    ],
    check: 'residual-current-marked-both-ways',
    what: /fed from both sides/,
    items: [],
    hours: 0,
  },
  {
    remedy: 'direct-current-detection',
    changes: [metered, ['wanted.0.point.directCurrentDetection', false]],
    check: 'residual-current-type',
    what: /detection of 6 mA/,
    items: [],
    hours: 0,
  },
  {
    remedy: 'charge-point-earthing',
    changes: [metered, ['wanted.0.point.openPenDevice', 'none']],
    check: 'charge-point-earthing',
    what: /open-PEN detection/,
    items: [],
    hours: 0,
  },
  {
    remedy: 'breaking-capacity',
    changes: [
      metered,
      ['supply.prospectiveCurrent', '7 kA'],
      ['supply.externalImpedance', '0.036 Ω'],
      ['board.conditionalRating', '6 kA'],
      ['options.makersLetThrough', 20000],
    ],
    check: 'breaking-capacity',
    what: /breaks 10 kA/,
    items: [],
    hours: 0,
  },
  {
    remedy: 'armoured-cable',
    changes: [metered, ['wanted.0.route', buried], ['wanted.0.cables', [flat]]],
    check: 'cable-for-the-ground',
    what: /armoured cable in place of one that is not for burial/,
    items: [],
    hours: 0,
  },
  {
    remedy: 'change-of-cable',
    changes: [metered, ['wanted.0.route', [garageWall, ...buried]], ['wanted.0.cables', [flat]]],
    check: 'cable-for-the-ground',
    what: /joint box, and armoured cable of \d+ mm² onwards: .* from under the lawn/,
    items: [],
    hours: 0,
  },
  {
    remedy: 'one-cable',
    changes: [
      metered,
      [
        'wanted.0.route',
        [
          { ...garageWall, cable: { ...flat, area: '2.5 mm²' }, existing: true },
          { ...garageWall, name: 'drive', jointAccessible: true },
        ],
      ],
      ['wanted.0.cables', [flat]],
    ],
    check: 'tabulated-capacity',
    what: /one new cable all the way, without a joint/,
    items: [],
    hours: 0,
  },
  {
    remedy: 'metered-demand',
    changes: [],
    check: 'demand-within-cut-out',
    what: /demand as metered/,
    items: [],
    hours: 0,
  },
];

const found = (plan: Plan, remedy: string) => plan.remedies.find((o) => o.remedies.some((r) => r.id === remedy));
const obstacles = (plan: Plan) =>
  plan.options.flatMap((o) => (o.remedies ? [] : [...o.overall.failed, ...o.overall.undetermined].map((r) => r.check)));

describe.each(cases)('remedy $remedy of $check', ({ remedy, of = 'easy-home', changes, check, what, items, hours }) => {
  const survey = surveyOf(of, changes);
  const plan = wholePlanInBritain(survey, brief);
  const offer = found(plan, remedy);

  it('is offered where the check stands in the way, with what it takes', () => {
    expect(obstacles(plan)).toContain(check);
    const applied = offer?.remedies.find((r) => r.id === remedy);
    expect(applied?.what).toMatch(what);
    expect(applied?.items.map((i) => i.key)).toEqual(items);
    expect(applied?.hours.typical).toBeCloseTo(hours, 9);
  });

  it('gives the verdict that was offered when it is applied', () => {
    expect(offer?.verdict).toBe('pass');
    const then = wholePlanInBritain(withChanges(survey, offer?.changes ?? []), { ...brief, remedies: false });
    const asWanted = then.options.find((o) => o.id === 'as-wanted');
    expect(asWanted?.overall.verdict).toBe('pass');
    expect(asWanted?.notification.decision.route).toBe(offer?.route);
  });
});
