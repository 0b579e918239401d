import { argumentsDue, fieldsDue, listOf, mayBe, numberDue, oneOf } from '../../core/due.js';
import type { Figure } from '../../core/figure.js';
import { isMissing, recorder, writeSheet } from '../../core/index.js';
import { citation } from '../../core/source.js';
import { demandOf } from '../../demand/index.js';
import { guideDwelling } from '../../guidance/on-site-guide/allowances.js';
import type { Installation, Load, Purpose, Run } from '../../installation/index.js';
import { type Amperes, CalculationError, hertz, volts } from '../../units/index.js';
import { formatIn } from '../../units/text.js';
import { bs7671Demand } from './demand.js';

/** What a dwelling with a single-phase supply has, in amperes. @inline */
export interface DwellingLoads {
  /** Lighting, all together, A. */
  readonly lighting?: Amperes;
  /** Rated current of each ring or radial circuit for socket-outlets, A. */
  readonly socketCircuits?: readonly Amperes[];
  /** Full load of each cooker, A, and whether a socket-outlet stands at its switch. */
  readonly cookers?: readonly { readonly current: Amperes; readonly withSocket: boolean }[];
  /** Full load of each shower or other instantaneous water heater, A. */
  readonly showers?: readonly Amperes[];
  /** Full load of each immersion heater, A. */
  readonly immersionHeaters?: readonly Amperes[];
  /** Full load of fixed heating without storage, A. */
  readonly heating?: Amperes;
  /** Full load of storage heating, A. */
  readonly storageHeating?: Amperes;
}

const unsaid = { state: 'unknown' } as const;
const known = <T>(value: T) => ({ state: 'known', value }) as const;

function runOf(id: string, purpose: Purpose, current: Amperes, more: Partial<Load> = {}): Run {
  const load: Load = { kind: 'load', id, purpose, current: known(current), lines: ['L1'], ...more };
  return {
    id,
    lines: ['L1'],
    existing: true,
    device: { kind: unsaid, rating: unsaid },
    cable: {
      construction: 'flat-twin-and-earth',
      material: 'copper',
      insulation: 'thermoplastic-70',
      cores: 2,
      area: unsaid,
      protective: 'bare-core',
    },
    stretches: [],
    feeds: [load],
  };
}

function runsOf(loads: DwellingLoads): readonly Run[] {
  const { lighting, socketCircuits = [], cookers = [], showers = [], immersionHeaters = [] } = loads;
  const each = (name: string, purpose: Purpose, all: readonly Amperes[], more?: Partial<Load>) =>
    all.map((current, i) => runOf(`${name} ${i + 1}`, purpose, current, more));
  const one = (name: string, purpose: Purpose, current: Amperes | undefined) =>
    current === undefined ? [] : [runOf(name, purpose, current)];
  return [
    ...one('lighting', 'lighting', lighting),
    ...each('sockets', 'socket-outlets', socketCircuits, { standardCircuit: true }),
    ...cookers.map(({ current, withSocket }, i) => runOf(`cooker ${i + 1}`, 'cooking', current, { withSocket })),
    ...each('shower', 'instantaneous-water-heating', showers),
    ...each('immersion heater', 'thermostatic-water-heating', immersionHeaters),
    ...one('heating', 'space-heating', loads.heating),
    ...one('storage heating', 'storage-heating', loads.storageHeating),
  ];
}

const current = /* @__PURE__ */ numberDue('amperes(30)');
const one = /* @__PURE__ */ mayBe(current);
const several = /* @__PURE__ */ mayBe(/* @__PURE__ */ listOf(current, '[amperes(30)]'));
/** No other field: what is misspelt would be left out of the demand. */
const loadsDue = /* @__PURE__ */ fieldsDue(
  {
    lighting: one,
    socketCircuits: several,
    cookers: /* @__PURE__ */ mayBe(
      /* @__PURE__ */ listOf(
        /* @__PURE__ */ fieldsDue(
          { current, withSocket: /* @__PURE__ */ oneOf(() => [true, false]) },
          '{ current: amperes(52), withSocket: true }',
        ),
        '[{ current: amperes(52), withSocket: true }]',
      ),
    ),
    showers: several,
    immersionHeaters: several,
    heating: one,
    storageHeating: one,
  },
  '{ lighting: amperes(5), showers: [amperes(37)] }',
  true,
);

/**
 * Maximum demand of a dwelling after diversity, by the allowances of the On-Site Guide.
 *
 * An estimate: methods differ by a factor of two. Charge points are added in full, 722.311.201.
 * @param loads what the dwelling has, A each
 * @returns the demand in A, with the allowances on its sheet
 * @throws CalculationError `not-covered` where the guide has no allowance, `invalid-input` for a field that is none, or of
 * another kind
 * @example
 * ```ts
 * import { amperes } from 'ohmwright';
 * import { dwellingDemand } from 'ohmwright/bs7671';
 *
 * // 10 A + 30 % of 42.17 A + 5 A
 * dwellingDemand({ cookers: [{ current: amperes(52.17), withSocket: true }] }).text; // => '27.7 A'
 * ```
 */
export function dwellingDemand(loads: DwellingLoads): Figure<'demand'> {
  argumentsDue('dwellingDemand', ['loads', loads, loadsDue]);
  const installation: Installation = {
    supply: {
      system: unsaid,
      phases: known(1),
      nominalVoltage: volts(230),
      frequency: hertz(50),
      externalImpedance: unsaid,
      prospectiveCurrent: unsaid,
      cutOut: { kind: unsaid, rating: unsaid },
      looped: unsaid,
    },
    board: { kind: 'board', id: 'consumer unit', complete: known(true), runs: runsOf(loads) },
  };
  const sheet = recorder('Maximum demand of a dwelling');
  const { methods } = demandOf(bs7671Demand, installation, { premises: 'dwelling' }, sheet);
  const demand = methods.find((m) => m.method === guideDwelling.id)?.lines[0]?.demand;
  if (demand === undefined || isMissing(demand)) {
    const what = 'a demand for which the guide has no allowance';
    throw new CalculationError('not-covered', `not covered: ${what}`, { what });
  }
  const written = writeSheet(sheet);
  return {
    value: demand,
    unit: 'A',
    text: formatIn(demand, 'A'),
    sources: [citation(guideDwelling.source)],
    sheet: written,
  };
}
