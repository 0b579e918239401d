import type { Aspect, AssessmentOptions } from '../codes/wiring-code.js';
import { type CheckResult, endsOf, type Fact, isMissing, type Known, known } from '../core/index.js';
import { asLong, type Ends, inParallel, lengthOf, sharesOf, waysOf, within } from '../installation/beside.js';
import {
  type Board,
  type Installation,
  type Load,
  outletsBelow,
  type Run,
  type Supply,
} from '../installation/index.js';
import { stillSound } from '../installation/problems.js';
import { withRun } from '../installation/tree.js';
import { type Amperes, amperes, ohms } from '../units/index.js';
import { worse } from './over-ranges.js';
import type { AspectResults } from './working.js';

/** One of several ways side by side as a circuit of its own, under one condition. */
export interface WayCase {
  /** The way, and what is wrong at it. */
  readonly name: string;
  readonly installation: Installation;
  /** What is judged by it. */
  readonly aspects: readonly Aspect[];
}

/** What is judged of each way with its share of the current; everything else of all ways together. */
const OF_FAULTS: readonly Aspect[] = ['disconnection', 'line-withstand', 'protective-conductor'];
const OF_EACH: readonly Aspect[] = [
  'coordination',
  'disconnection',
  'line-withstand',
  'protective-conductor',
  'breaking-capacity',
  'terminal-temperature',
  'minimum-size',
  'placement',
];

/** A supply as a device sees it that carries only a part of the fault current: its impedance weighs more. */
function seenBy(supply: Supply, [least]: Ends): Supply {
  const by = 'as seen by a device with a share of the current';
  const impedance = endsOf(supply.externalImpedance);
  const current = endsOf(supply.prospectiveCurrent);
  return {
    ...supply,
    ...(impedance ? { externalImpedance: within([impedance[0] / least, impedance[1] / least], ohms, by) } : {}),
    ...(current ? { prospectiveCurrent: within([current[0] * least, current[1] * least], amperes, by) } : {}),
  };
}

/**
 * Largest part of the loop of a length of cable, there by the line conductor of the others and on to a fault in this one,
 * that counts: (1 - t)(1 + t P/r)/(1 + P/r), which is at most a half where the protective conductor has at least the
 * resistance of the line. Where that is not certain the whole length counts.
 */
function backShare({ protective, protectiveArea, area, protectiveMaterial, material }: Run['cable']): number {
  const line = endsOf(area);
  const own = endsOf(protectiveArea);
  if (!line || (protectiveMaterial !== undefined && protectiveMaterial !== material)) return 1;
  if (protective === 'armour') return line[0] >= 6 ? 0.5 : 1;
  const core = protective === 'core' || protective === 'bare-core' || protective === 'separate';
  return core && (own === undefined ? protective !== 'separate' : own[1] <= line[0]) ? 0.5 : 1;
}

/** The board at the end, in the place of all that leaves it one load of a share of the current. */
function takingShare(run: Run, current: Fact<Amperes>): Run {
  const [board] = run.feeds as readonly Board[];
  if (!board) return run;
  const { control: _, residual: __, ...at } = board;
  const forHours = outletsBelow(run).some((o) => o.kind === 'charge-point' || o.purpose === 'charge-point');
  const load: Load = {
    kind: 'load',
    id: `share of ${board.id}`,
    purpose: forHours ? 'charge-point' : 'other',
    current,
    lines: run.lines,
  };
  const onward: Run = { ...run, id: `of ${board.id}`, existing: true, feeds: [load] };
  return { ...run, feeds: [{ ...at, complete: known(true), runs: [onward] }] };
}

/**
 * The ways of a feeder that stand side by side, each as a circuit of its own: with its share of the current; at a fault at
 * the far board, which all of them feed by their shares; and at one in another way near its start, where that way's
 * device has opened and the others feed the fault by the far board.
 * @param whole current of all ways together, A
 */
export function wayCases(
  installation: Installation,
  run: Run,
  whole: Known<Amperes> | Fact<Amperes>,
): readonly WayCase[] {
  const ways = waysOf(run);
  const known = ways.map(lengthOf);
  const lengths = known.every((l) => l !== undefined) ? (known as readonly Ends[]) : undefined;
  const current = isMissing(whole) ? undefined : typeof whole === 'number' ? ([whole, whole] as const) : endsOf(whole);
  const shares = lengths && sharesOf(lengths);
  return ways.flatMap((way, k) => {
    const share = shares?.[k];
    const at = (name: string, aspects: readonly Aspect[], change: (r: Run) => Run, seen?: Ends): WayCase => {
      const { supply } = installation;
      const from = seen ? stillSound(installation, { ...installation, supply: seenBy(supply, seen) }) : installation;
      const changed = withRun(from, run.id, () => ({ ...change(way), id: run.id }));
      return { name, aspects, installation: stillSound(installation, changed) };
    };
    const shared = (r: Run): Run =>
      share && current
        ? takingShare(r, within([current[0] * share[0], current[1] * share[1]], amperes, `share of ${way.id}`))
        : r;
    if (!share || !lengths)
      return [at(way.id, OF_EACH, (r) => ({ ...r, stretches: asLong(r.stretches, undefined, '') }))];
    return [
      at(way.id, OF_EACH, shared),
      at(`${way.id}, fault at the far board`, OF_FAULTS, shared, share),
      ...ways.flatMap((broken, j) => {
        if (j === k) return [];
        const others = lengths.filter((_, i) => i !== j);
        const [own] = sharesOf(others).slice(k > j ? k - 1 : k);
        const [least, most] = inParallel(others);
        if (!own) return [];
        const part = backShare(way.cable) / own[0];
        const back: Ends = [(least + (lengths[j]?.[0] ?? 0)) * part, (most + (lengths[j]?.[1] ?? 0)) * part];
        return [
          at(
            `${way.id}, fault in ${broken.id}`,
            OF_FAULTS,
            (r) => shared({ ...r, stretches: asLong(r.stretches, back, `there and back to a fault in ${broken.id}`) }),
            own,
          ),
        ];
      }),
    ];
  });
}

/** Of the results of all ways the worst of each check, with the way that it is of, in the order of the first. */
export function worstOfWays(
  together: readonly AspectResults[],
  ways: readonly { readonly name: string; readonly judged: readonly AspectResults[] }[],
): readonly AspectResults[] {
  return together.map(({ aspect, results }) => {
    if (!OF_EACH.includes(aspect)) return { aspect, results };
    const worst = new Map<string, CheckResult>();
    for (const { name, judged } of ways)
      for (const result of judged.find((j) => j.aspect === aspect)?.results ?? []) {
        const before = worst.get(result.check);
        const because = result.because ? `${name}: ${result.because}` : name;
        if (!before || worse(result, before) < 0) worst.set(result.check, { ...result, because });
      }
    return { aspect, results: [...worst.values()] };
  });
}

/** Options by which one way is assessed: its share is what its board takes, whatever is declared of all ways. */
export const ofOneWay = (options: AssessmentOptions, run: string): AssessmentOptions => {
  const without = <T>(of: Readonly<Record<string, T>> = {}) =>
    Object.fromEntries(Object.entries(of).filter(([id]) => id !== run));
  return { ...options, feederDemand: without(options.feederDemand), demandBeyond: without(options.demandBeyond) };
};
