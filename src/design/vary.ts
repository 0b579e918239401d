import type { AssessmentOptions, WiringCode } from '../codes/wiring-code.js';
import { type Fact, type Gap, isMissing, known, type Name, termOf } from '../core/index.js';
import {
  type Board,
  byAssumption,
  type ChargePoint,
  connectedCurrentOf,
  type GroupArrangement,
  type Installation,
  isFeeder,
  type Load,
  type Run,
  type Stretch,
  withAssumption,
  withRun,
} from '../installation/index.js';
import { amperes, celsius, type Metres, metres, squareMillimetres } from '../units/index.js';
import { called } from './ranges.js';

/** What is varied while everything else stays as surveyed. */
export type Question =
  | {
      /** Length of the route, m: all stretches in proportion, or one stretch alone. */
      readonly vary: 'length';
      /** Name of the stretch. */
      readonly stretch?: string;
    }
  | {
      /** Load of the circuit, A per line: all its outlets in proportion; of a feeder, its declared demand. */
      readonly vary: 'load';
    }
  | {
      /** Cross-section of the line conductors, mm², over the sizes of the cable. */
      readonly vary: 'area';
    }
  | {
      /** Rated current of the device, A, over the ratings of its kind. */
      readonly vary: 'rating';
    }
  | {
      /** Temperature of the air, or of the ground, °C: of all such stretches, or of one. */
      readonly vary: 'ambient' | 'ground';
      /** Name of the stretch. */
      readonly stretch?: string;
    }
  | {
      /** Circuits in a group, this one included: in every stretch that has a group, or in one stretch. */
      readonly vary: 'grouping';
      /** Name of the stretch. */
      readonly stretch?: string;
      /** How they lie, where the stretch has no group yet. */
      readonly arrangement?: GroupArrangement;
    }
  | {
      /** A quantity that is assumed, wherever it was taken from this assumption. */
      readonly vary: 'assumed';
      /** Set and entry. */
      readonly assumption: string;
      /** Whether advice that is followed by the assumed value has to be followed as well. */
      readonly advice?: true;
    };

const circuits = /* @__PURE__ */ Array.from({ length: 30 }, (_, i) => i + 1);

/** What is examined around an assumed value: temperatures as such, all else a twentieth to twenty times of it, as far as it can be. */
function examinedAround(role: string | undefined, value: number): readonly number[] {
  if (role === 'ambientTemperature' || role === 'groundTemperature') return [-20, value, 95];
  if (role === 'terminalTemperature') return [30, value, 120];
  const most = termOf(role as Name)?.most ?? Number.POSITIVE_INFINITY;
  return value > 0 ? [...new Set([value / 20, value, Math.min(value * 20, most)])] : [0, Math.min(20, most)];
}

/** A question made ready: what to examine, and the case with a value. */
export interface Variation {
  /** Role of the value in the vocabulary. */
  readonly name: Name;
  /** Values to examine, in ascending order; the ends, and what has to be judged between them, where there are values between. */
  readonly values: readonly number[];
  /** How close an end is to be found, where there are values between the ends. */
  readonly between: number | undefined;
  /** The installation and the options with a value, or with all values between two; undefined where these cannot be said at once. */
  at(value: Fact<number>): readonly [Installation, AssessmentOptions] | undefined;
  /** Whether nothing but lengths of the route differs from value to value. */
  readonly lengths?: boolean;
  /** Why the question cannot be put. */
  readonly gaps: readonly Gap[];
}

const inGround = (s: Stretch) => s.method.state === 'known' && s.method.value.startsWith('D');

/** The largest value that a fact allows, or undefined. */
const largestOf = (fact: Fact<number>): number | undefined =>
  fact.state === 'known' ? fact.value : fact.state === 'between' ? fact.most : undefined;

/** What is a share of a value, or of all values between two. */
const shareOf = <V extends number>(value: Fact<number>, share: number, make: (n: number) => V): Fact<V> =>
  value.state === 'known'
    ? { ...value, value: make(value.value * share) }
    : value.state === 'between'
      ? { ...value, least: make(value.least * share), most: make(value.most * share) }
      : value;

const isTapped = (o: Run['feeds'][number]): o is (Load | Board) & { readonly at: Metres } =>
  o.kind !== 'charge-point' && o.at !== undefined;

/** The run with its route, and what is tapped along it, of another length. */
function withLength(run: Run, stretch: string | undefined, value: Fact<number>): Run | undefined {
  const only = stretch ?? (run.stretches.length === 1 ? run.stretches[0]?.name : undefined);
  if (only !== undefined)
    return {
      ...run,
      stretches: run.stretches.map((s) => (s.name === only ? { ...s, length: shareOf(value, 1, metres) } : s)),
    };
  // where taps move with the length, their distances are single values
  if (value.state !== 'known' && run.feeds.some(isTapped)) return undefined;
  const sumOf = (stretches: Run['stretches']) => stretches.reduce((sum, s) => sum + (largestOf(s.length) ?? 0), 0);
  const total = sumOf(run.stretches);
  const stretches = run.stretches.map((s) => ({
    ...s,
    length: shareOf(value, (largestOf(s.length) ?? 0) / total, metres),
  }));
  // what is tapped at the very end stays there, whatever the last digit of a sum comes to
  const end = sumOf(stretches);
  return {
    ...run,
    stretches,
    feeds: run.feeds.map((o) =>
      value.state === 'known' && isTapped(o)
        ? {
            ...o,
            at: metres(o.at <= total ? Math.min((o.at * value.value) / total, end) : (o.at * value.value) / total),
          }
        : o,
    ),
  };
}

function withLoad(run: Run, value: Fact<number>, drawn: number | undefined): Run {
  const scaled = (fact: Fact<number>) =>
    shareOf(value, drawn === undefined ? 1 : (largestOf(fact) ?? 0) / drawn, amperes);
  return {
    ...run,
    feeds: run.feeds.map((o) =>
      o.kind === 'load'
        ? { ...o, current: scaled(o.current) }
        : o.kind === 'charge-point'
          ? { ...o, setting: scaled(o.setting) }
          : o,
    ),
  };
}

/**
 * The run with another size of line conductor. What belonged to the old size goes with it: its name, the protective core that the
 * construction gives, the maker's figure of the armour. A separate protective conductor stays.
 * @param run the run
 * @param value cross-section, mm²
 * @param by who says so
 */
export function withArea(run: Run, value: number, by = 'varied'): Run {
  const { cable } = run;
  if (cable.area.state === 'known' && cable.area.value === value) return run;
  const { protectiveArea, protectiveImpedance: _impedance, sizeName: _name, ...rest } = cable;
  const own = cable.protective === 'core' || cable.protective === 'bare-core';
  return {
    ...run,
    cable: {
      ...rest,
      ...(protectiveArea && !own ? { protectiveArea } : {}),
      area: known(squareMillimetres(value), by),
    },
  };
}

const changed = (run: Run, wanted: (s: Stretch) => boolean, change: (s: Stretch) => Stretch): Run => ({
  ...run,
  stretches: run.stretches.map((s) => (wanted(s) ? change(s) : s)),
});

const noStretch = (what: string): Gap => ({ kind: 'fact', fact: what, obtain: 'name one when asking' });

/**
 * Makes a question ready for one run.
 * @param code the wiring code, whose sizes and ratings are scanned
 * @param installation the installation
 * @param run the run
 * @param question what is varied
 * @param options choices that change a figure
 */
export function variationOf(
  code: WiringCode,
  installation: Installation,
  run: Run,
  question: Question,
  options: AssessmentOptions,
): Variation {
  const over =
    (change: (run: Run, value: Fact<number>) => Run | undefined): Variation['at'] =>
    (value) => {
      const varied = change(run, value);
      return varied && [withRun(installation, run.id, () => varied), options];
    };
  const single =
    (change: (run: Run, value: number) => Run): Variation['at'] =>
    (value) =>
      value.state === 'known' ? [withRun(installation, run.id, (r) => change(r, value.value)), options] : undefined;
  const named = 'stretch' in question ? question.stretch : undefined;
  const wanted = (s: Stretch) => named === undefined || s.name === named;
  const known1 = named === undefined || run.stretches.some(wanted);
  const unnamed: readonly Gap[] = known1 ? [] : [noStretch(`stretch ${named} of ${run.id}`)];
  switch (question.vary) {
    case 'length': {
      const lone = named !== undefined || run.stretches.length === 1;
      const owing = lone ? [] : run.stretches.filter((s) => largestOf(s.length) === undefined);
      const total = run.stretches.reduce((sum, s) => sum + (largestOf(s.length) ?? 0), 0);
      const gaps: readonly Gap[] = [
        ...unnamed,
        ...owing.map((s): Gap => ({ kind: 'fact', fact: `length of ${s.name}`, obtain: 'or ask for one stretch' })),
        ...(lone || total > 0 ? [] : [noStretch(`proportions of the route of ${run.id}`)]),
      ];
      return {
        name: 'length',
        values: [0.5, 5000],
        between: 1e-3,
        at: over((r, v) => withLength(r, named, v)),
        lengths: !run.feeds.some(isTapped),
        gaps,
      };
    }
    case 'load': {
      if (isFeeder(run))
        return {
          name: 'designCurrent',
          values: [0.1, 2000],
          between: 1e-3,
          at: (v) =>
            v.state === 'known'
              ? [
                  installation,
                  {
                    ...options,
                    feederDemand: { ...options.feederDemand, [run.id]: amperes(v.value) },
                    // of another demand nobody says where along it that is tapped
                    demandBeyond: { ...options.demandBeyond, [run.id]: [] },
                  },
                ]
              : undefined,
          gaps: [],
        };
      const outlets = run.feeds as readonly (Load | ChargePoint)[];
      const drawn = connectedCurrentOf(run);
      const lone = outlets.length === 1;
      const gaps: readonly Gap[] = lone
        ? []
        : isMissing(drawn)
          ? drawn.missing
          : drawn > 0
            ? []
            : [{ kind: 'fact', fact: `load of ${run.id}`, obtain: 'say what it feeds' }];
      return {
        name: 'designCurrent',
        values: [0.1, 2000],
        between: 1e-3,
        at: over((r, v) => withLoad(r, v, lone || isMissing(drawn) ? undefined : drawn)),
        gaps,
      };
    }
    case 'area':
      return {
        name: 'conductorArea',
        values: code.sizesFor(run).map((size) => size.area),
        between: undefined,
        at: single((r, v) => withArea(r, v)),
        gaps: noValues(code.sizesFor(run), `sizes of the cable of ${run.id}`, 'the code has no table for this cable'),
      };
    case 'rating':
      return {
        name: 'deviceRating',
        values: code.ratingsFor(run),
        between: undefined,
        at: single((r, v) => ({ ...r, device: { ...r.device, rating: known(amperes(v), 'varied') } })),
        gaps: noValues(code.ratingsFor(run), `ratings of the device of ${run.id}`, 'say what kind of device it is'),
      };
    case 'ambient':
    case 'ground': {
      const ground = question.vary === 'ground';
      const fits = (s: Stretch) => wanted(s) && inGround(s) === ground;
      return {
        name: ground ? 'groundTemperature' : 'ambientTemperature',
        values: [-20, 95],
        between: 1e-2,
        at: over((r, v) => changed(r, fits, (s) => ({ ...s, ambient: shareOf(v, 1, celsius) }))),
        gaps: run.stretches.some(fits) ? [] : [noStretch(`stretch in ${ground ? 'the ground' : 'air'}`)],
      };
    }
    case 'grouping': {
      const { arrangement } = question;
      const fits = (s: Stretch) => wanted(s) && (s.group !== undefined || arrangement !== undefined);
      return {
        name: 'circuitsInGroup',
        values: circuits,
        between: undefined,
        at: single((r, v) =>
          changed(r, fits, (s) => ({
            ...s,
            group: {
              ...(s.group ?? { arrangement: arrangement as GroupArrangement }),
              circuits: known(v, 'varied'),
            },
          })),
        ),
        gaps: run.stretches.some(fits) ? [] : [noStretch('how the circuits would lie')],
      };
    }
    case 'assumed': {
      const { assumption } = question;
      const [first] = byAssumption(installation).get(assumption) ?? [];
      const { role } = first ? called(first) : {};
      const { fact } = first ?? {};
      const value = fact?.state === 'known' ? fact.value : fact?.most;
      const whole = role === 'circuitsInGroup';
      return {
        name: (role ?? 'length') as Name,
        values: whole ? circuits : examinedAround(role, typeof value === 'number' ? value : 0),
        between: whole ? undefined : Math.max(1e-4 * Math.abs(Number(value)), 1e-5),
        at: (v) => [withAssumption(installation, assumption, { ...v, assumed: assumption }), options],
        gaps:
          role !== undefined && typeof value === 'number'
            ? []
            : [{ kind: 'fact', fact: assumption, obtain: 'nothing is assumed by it, or no quantity' }],
      };
    }
    default: {
      const never: never = question;
      return never;
    }
  }
}

const noValues = (values: readonly unknown[], fact: string, obtain: string): readonly Gap[] =>
  values.length > 0 ? [] : [{ kind: 'fact', fact, obtain }];
