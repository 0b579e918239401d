import fc from 'fast-check';
import type { ShortSurvey } from '../jobs/base.js';
import type { Json } from '../support/surveys.js';

/** Everyday jobs as they may come in, sound or with faults, drawn fact by fact: what tests of plans are tried on. */

const seen = (known: Json): Json => ({ known, by: 'seen' });
const device = (change: Record<string, Json>): Json => ({
  position: 'origin-of-installation',
  type: seen('A'),
  rating: '100 mA',
  ratedCurrent: seen('100 A'),
  delay: 'selective',
  opensAllLive: true,
  ...change,
});

/** Faults and peculiarities, each with what it changes of a survey; several may come together. */
const faults: Readonly<
  Record<string, Partial<Record<'supply' | 'board' | 'point' | 'change' | 'work', Record<string, Json>>>>
> = {
  none: {},
  bonding: { supply: { bonding: [{ what: 'water', area: seen('6 mm²') }] } },
  'thin earthing conductor': { supply: { earthingConductor: seen('4 mm²') } },
  'thin tails': { supply: { tails: seen('10 mm²') } },
  'small main switch': { board: { mainSwitch: { rating: seen('40 A'), noFuseAhead: true } } },
  'no way': { board: { spareWays: seen(0) } },
  'no surge protection': { board: { surgeProtection: seen(false) } },
  'type AC upstream': { board: { residual: [device({ type: seen('AC') })] } },
  'no delay upstream': { board: { residual: [device({ delay: 'general' })] } },
  'small device upstream': { board: { residual: [device({ ratedCurrent: seen('40 A') })] } },
  'looped service': { supply: { looped: seen(true) } },
  'scorched cut-out': { supply: { cutOutSound: seen(false) } },
  'no open-PEN detection': { point: { openPenDevice: seen('none') } },
  'no detection of direct current': { point: { directCurrentDetection: seen(false) } },
  'single-pole device': {
    change: {
      residual: [
        {
          position: 'origin-of-circuit',
          type: seen('A'),
          rating: '30 mA',
          delay: 'general',
          opensAllLive: false,
        },
      ],
    },
  },
  'limiter that goes on': { work: { limiterFallback: seen('32 A') } },
  'no sensor': { work: { sensorPossible: seen(false) } },
};

type Circuits = ShortSurvey['circuits'];
const houses: readonly Circuits[] = [
  ['lights', 'ring'],
  ['lights', 'ring', 'ring upstairs', 'cooker'],
  ['lights', 'ring', 'cooker', 'shower 9.5 kW'],
  ['lights', 'ring', 'heat pump 12 A', 'immersion'],
  [
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
];
const routes: readonly ShortSurvey['points'][number]['route'][] = [
  [['clipped outdoors', 8]],
  [
    ['clipped indoors', 5],
    ['in loft insulation', 4],
  ],
  [['clipped outdoors', 47]],
  [
    ['clipped outdoors', 4],
    ['buried', 14, { soilResistivity: '2.5 K·m/W' }],
  ],
];

/** A job in short. */
export interface DrawnJob {
  readonly faults: readonly string[];
  readonly survey: ShortSurvey;
}

const arbitrary = (names: readonly string[], base: ShortSurvey['base']): fc.Arbitrary<DrawnJob> =>
  fc
    .record({
      found: fc.subarray([...names], { minLength: 1, maxLength: 2 }),
      circuits: fc.constantFrom(...houses),
      route: fc.constantFrom(...routes),
      cables: fc.constantFrom(['armoured 3-core'], ['twin and earth'], ['twin and earth', 'armoured 3-core']),
      fuse: fc.constantFrom('60 A', '80 A', '100 A'),
      system: fc.constantFrom('TN-C-S', 'TN-C-S', 'TN-S', 'TT'),
      setting: fc.constantFrom('32 A', '32 A', '16 A'),
      metered: fc.constantFrom(undefined, '20 A', '38 A'),
    })
    .map(({ found, circuits, route, cables, fuse, system, setting, metered }): DrawnJob => {
      const changed = (key: 'supply' | 'board' | 'point' | 'change' | 'work') =>
        Object.assign({}, ...found.map((f) => faults[f]?.[key] ?? {})) as Record<string, Json>;
      const tt: Record<string, Json> =
        system === 'TT'
          ? {
              ...(base === 'by photograph' ? {} : { externalImpedance: seen('62 Ω') }),
              electrode: { resistance: seen('60 Ω') },
              earthingConductorLaid: seen('buried-protected'),
            }
          : {};
      return {
        faults: found,
        survey: {
          base,
          circuits,
          ...(metered === undefined || base === 'by photograph' ? {} : { metered }),
          supply: {
            system: seen(system),
            cutOut: { kind: seen({ standard: 'BS 1361' }), rating: seen(fuse) },
            ...tt,
            ...changed('supply'),
          },
          board: changed('board'),
          points: [
            {
              route,
              cables,
              point: {
                setting: seen(setting),
                ...(system === 'TT' ? { openPenDevice: seen('none') } : {}),
                ...changed('point'),
              },
              change: changed('change'),
            },
          ],
          work: changed('work'),
        },
      };
    });

/**
 * As many jobs for each fault as are asked for, from a seed; the fault comes first, another one may come beside it.
 * @param each how many for each
 * @param base what was surveyed
 * @param seed where the draw begins
 */
export function drawnJobs(each: number, base: ShortSurvey['base'], seed: number): readonly DrawnJob[] {
  const names = Object.keys(faults);
  return names.flatMap((name, i) =>
    fc
      .sample(arbitrary(names, base), { numRuns: each, seed: seed + i })
      .map((job) => ({ ...job, faults: [...new Set([name, ...job.faults])] }))
      .map(({ faults: found, survey }) => ({ faults: found, survey: withFault(survey, name) })),
  );
}

/** A job with a fault besides. */
function withFault(survey: ShortSurvey, name: string): ShortSurvey {
  const { supply = {}, board = {}, point = {}, change = {}, work = {} } = faults[name] ?? {};
  return {
    ...survey,
    supply: { ...survey.supply, ...supply },
    board: { ...survey.board, ...board },
    work: { ...survey.work, ...work },
    points: survey.points.map((p) => ({ ...p, point: { ...p.point, ...point }, change: { ...p.change, ...change } })),
  };
}
