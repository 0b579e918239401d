import fc from 'fast-check';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { CheckResult, Verdict } from '../../src/core/index.js';
import { assess, hasCode, type Installation } from '../../src/index.js';
import { narrowed, pathsOf, rangesIn } from '../../src/installation/index.js';
import { readSurvey } from '../../src/io/index.js';
import { withAllWanted } from '../../src/site/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';
import { premises, soundHouse } from '../hazards/sound.js';
import { surveyDocuments } from '../support/surveys.js';

const code = bs7671('2018+A2:2022');
/** Values tried inside the ranges of one case, their ends among them. */
export const SAMPLES = 20;

type Path = readonly (string | number)[];

/** Every fact of a tree that is known as a number. */
function numbersIn(node: unknown, path: Path = []): readonly Path[] {
  if (typeof node !== 'object' || node === null) return [];
  const { state, value } = node as { readonly state?: unknown; readonly value?: unknown };
  if (state === 'known') return typeof value === 'number' ? [path] : [];
  return Object.entries(node).flatMap(([key, inner]) => numbersIn(inner, [...path, key]));
}

const at = (node: unknown, path: Path): unknown =>
  path.reduce<unknown>((inner, key) => (inner as Record<string | number, unknown>)[key], node);

function withFact(node: unknown, [key, ...rest]: Path, fact: unknown): unknown {
  if (key === undefined) return fact;
  const copy = (Array.isArray(node) ? [...node] : { ...(node as object) }) as Record<string | number, unknown>;
  copy[key] = withFact(copy[key], rest, fact);
  return copy;
}

/** What is counted. */
const wholeNumbers: ReadonlySet<string> = new Set(['circuits', 'vehiclesSeparated', 'loadedCores']);

interface Home {
  readonly house: Installation;
  readonly runs: readonly string[];
  readonly numbers: readonly Path[];
}
const homes: readonly Home[] = [
  soundHouse(),
  ...Object.values(surveyDocuments).map((d) => withAllWanted(readSurvey(d))),
  ...fc.sample(arbitraryInstallation(), { numRuns: 90, seed: 11 }),
].map((house) => ({
  house,
  runs: pathsOf(house)
    .map((p) => p.run.id)
    .slice(-2),
  numbers: numbersIn(house),
}));

interface Case {
  readonly home: Home;
  readonly run: string;
  readonly ranged: Installation;
  /** For each sample, where it lies between the ends of each range. */
  readonly shares: readonly (readonly number[])[];
}

const share = fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true }));
const drawn: fc.Arbitrary<Case> = fc
  .record({
    home: fc.constantFrom(...homes),
    which: fc.array(fc.nat(), { minLength: 1, maxLength: 4 }),
    factors: fc.array(
      fc.tuple(fc.double({ min: 0.3, max: 1, noNaN: true }), fc.double({ min: 1, max: 3, noNaN: true })),
      { minLength: 4, maxLength: 4 },
    ),
    run: fc.nat(),
    shares: fc.array(fc.array(share, { minLength: 8, maxLength: 8 }), { minLength: SAMPLES, maxLength: SAMPLES }),
  })
  .map(({ home, which, factors, run, shares }) => {
    const ranged = [...new Set(which.map((n) => home.numbers[n % home.numbers.length] as Path))].reduce<unknown>(
      (house, path, i) => {
        const { value, ...said } = at(home.house, path) as { readonly value: number };
        const whole = wholeNumbers.has(String(path.at(-1)));
        const end = (factor: number) => (whole ? Math.max(1, Math.round(value * factor)) : value * factor);
        const [low, high] = factors[i] as readonly [number, number];
        const fact = { ...said, state: 'between', least: end(low), most: end(high) };
        return fact.least < fact.most ? withFact(house, path, fact) : house;
      },
      home.house,
    ) as Installation;
    return { home, run: home.runs[run % home.runs.length] as string, ranged, shares };
  });

/** The results of each check, and what they come to; undefined where the installation is refused. */
function judged(installation: Installation, run: string): ReadonlyMap<string, readonly Verdict[]> | undefined {
  try {
    const { results, overall } = assess(code, installation, run, premises);
    const found = new Map<string, Verdict[]>([['the circuit', [overall.verdict]]]);
    const take = ({ check, verdict }: CheckResult) => found.set(check, [...(found.get(check) ?? []), verdict]);
    for (const r of results) take(r);
    return found;
  } catch (e) {
    if (hasCode(e, 'invalid-input') || hasCode(e, 'out-of-range')) return undefined;
    throw e;
  }
}

/** Checks that hold over the ranges and not at a value inside them, or fail over them and not there. */
function partings(
  over: ReadonlyMap<string, readonly Verdict[]>,
  inside: ReadonlyMap<string, readonly Verdict[]>,
): readonly string[] {
  return [...over].flatMap(([check, verdicts]) => {
    const here = inside.get(check) ?? [];
    // where another check stands in its place, such as when no arrangement remains, the whole still fails
    const instead = here.length === 0 && inside.get('the circuit')?.includes('fail');
    if (verdicts.includes('fail'))
      return here.includes('fail') || instead ? [] : [`${check} fails over the range, ${here} inside`];
    if (verdicts.includes('not-determined') || verdicts.includes('conditional')) return [];
    return here.includes('fail') || here.includes('not-determined')
      ? [`${check} ${verdicts} over the range, ${here} inside`]
      : [];
  });
}

/** Cases by a seed: how many were judged, values tried inside, and what parted. */
export function tried(count: number, seed: number) {
  const found: string[] = [];
  let compared = 0;
  let samples = 0;
  let decided = 0;
  for (const { home, run, ranged, shares } of fc.sample(drawn, { numRuns: count, seed })) {
    const ranges = rangesIn(ranged);
    const over = judged(ranged, run);
    if (ranges.length === 0 || !over) continue;
    compared++;
    if (!over.get('the circuit')?.includes('not-determined')) decided++;
    for (const [n, where] of shares.entries()) {
      const values = ranges.map(({ key, fact: { least, most } }, i) => {
        const value = least + (most - least) * (where[i % where.length] as number);
        return wholeNumbers.has(key) ? Math.round(value) : Math.min(value, most);
      });
      const inside = judged(
        narrowed(
          ranged,
          values.map((v) => [v, v] as const),
        ),
        run,
      );
      if (!inside) continue;
      samples++;
      for (const what of partings(over, inside))
        found.push(
          `${homes.indexOf(home)} ${run}, sample ${n}: ${what}; ${ranges.map((r, i) => `${r.where} ${r.key} ${r.fact.least} to ${r.fact.most} at ${values[i]}`).join(', ')}`,
        );
    }
  }
  return { compared, samples, decided, found };
}
