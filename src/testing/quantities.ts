import fc from 'fast-check';
import { between, type Fact, known, type Name, termOf, unknown, type Vocabulary } from '../core/index.js';

/** How an arbitrary of facts is made. @inline */
export interface FactChoices {
  /** Whether a fact may be unknown or a range; it is always known when absent. */
  readonly open?: boolean;
  /** Whether cables change along their routes; one cable lies all the way when absent. */
  readonly joined?: boolean;
}

/**
 * Facts about one thing: known, and where that is asked for within a range or not at all.
 * @param values what the fact may be
 * @param choices whether it may be open
 * @returns a generator for fast-check
 */
export function arbitraryFact<T>(values: fc.Arbitrary<T>, choices: FactChoices = {}): fc.Arbitrary<Fact<T>> {
  const sure = values.map((value): Fact<T> => known(value));
  if (!choices.open) return sure;
  const range = fc.tuple(values, values).map(([a, b]): Fact<T> => {
    if (typeof a !== 'number' || typeof b !== 'number') return known(a);
    return between(Math.min(a, b), Math.max(a, b)) as Fact<T>;
  });
  return fc.oneof({ weight: 12, arbitrary: sure }, { weight: 1, arbitrary: range }, fc.constant(unknown('look at it')));
}

/** Magnitudes that a role without bounds takes in practice, by its unit; others reach from a thousandth to a thousand. */
const usual: Readonly<Record<string, readonly [number, number]>> = {
  A: [0.001, 20_000],
  V: [0.1, 1000],
  Ω: [0.0001, 2000],
  'Ω/m': [1e-5, 0.1],
  'V/(A·m)': [1e-5, 0.1],
  m: [0.1, 500],
  'mm²': [0.5, 400],
  '°C': [-20, 250],
  W: [1, 500_000],
  VA: [1, 500_000],
  Wh: [1, 500_000],
  s: [0.001, 36_000],
  'A²s': [10, 1e8],
  Hz: [16, 1000],
  'A·√s/mm²': [20, 250],
  'J/(K·mm³)': [1e-3, 5e-3],
  Ω·mm: [1e-5, 3e-4],
  '1/K': [1e-3, 6e-3],
};

/**
 * Values that a role of the vocabulary allows, its bounds among them.
 * @param name the role
 * @returns a generator for fast-check
 */
export function arbitraryQuantity<N extends Name>(name: N): fc.Arbitrary<Vocabulary[N]> {
  const term = termOf(name);
  const [low, high] = usual[term?.unit ?? ''] ?? [0.001, 1000];
  const least = term?.least ?? (term?.above === undefined ? low : Math.max(low, term.above));
  const most = term?.most ?? Math.max(high, least * 10);
  const inside = fc.double({ min: least, max: most, noNaN: true, minExcluded: term?.above === least });
  const edges = [term?.least, term?.most].filter((edge) => edge !== undefined);
  const all = edges.length > 0 ? fc.oneof({ weight: 8, arbitrary: inside }, fc.constantFrom(...edges)) : inside;
  return all as unknown as fc.Arbitrary<Vocabulary[N]>;
}
