/** The same of what is designed, permitted, shared and notified: a fact that nobody knows, or that is worse, gives no more. */
import fc from 'fast-check';
import { allocate, networkOf } from '../../src/charging/index.js';
import { bs7671, bs7671Demand } from '../../src/codes/bs7671/index.js';
import { demandOf, notificationOf } from '../../src/demand/index.js';
import { cheapestFirst, design } from '../../src/design/design.js';
import { permitted } from '../../src/design/permitted.js';
import { amperes, hasCode, type Installation, isMissing, type Known, known } from '../../src/index.js';
import { type Board, lineConductors, pathsOf } from '../../src/installation/index.js';
import { greatBritain } from '../../src/networks/index.js';
import { premises, soundCircuit, soundHouse } from '../hazards/sound.js';
import { chosen, houses, may, said, standing, without, worse } from './cases.js';
import { type Found, factsOf } from './facts.js';

const code = bs7671('2018+A2:2022');

/** What is asked of an installation, and of two answers whether the one says more than the other allows. */
interface Asked<A> {
  readonly houses: readonly Installation[];
  ask(house: Installation, run: string, vary: (typeof varied)[number]): A;
  /** What the suspect has that the other has not; nothing where it is no better. */
  better(suspect: A, other: A): string | undefined;
  /** Facts that are left out of it, of which absence is a value that is stated with them. */
  readonly not?: readonly string[];
}
const varied = ['length', 'load', 'area', 'rating', 'ambient', 'grouping'] as const;

/** Boards and fuse of which something is said, as a network asks it. */
function rated({ supply, board }: Installation): Installation {
  const a = (n: number) => known(amperes(n));
  const all = (b: Board): Board => ({
    ...b,
    ...(b.residual?.length ? {} : { noResidual: known(true) }),
    mainSwitch: b.mainSwitch ?? { rating: a(100) },
    rating: b.rating ?? a(100),
    runs: b.runs.map((run) => ({
      ...run,
      ...(run.residual?.length ? {} : { noResidual: known(true) }),
      thirdHarmonic: run.thirdHarmonic ?? known(0.2 as never),
      feeds: run.feeds.map((o) => (o.kind === 'board' ? all(o) : o)),
    })),
  });
  return { supply, board: all(board) };
}

/** Every circuit is on the list. */
const listed = ({ supply, board }: Installation): Installation => {
  const all = (b: Board): Board => ({
    ...b,
    complete: known(true),
    runs: b.runs.map((run) => ({ ...run, feeds: run.feeds.map((o) => (o.kind === 'board' ? all(o) : o)) })),
  });
  return { supply, board: all(board) };
};

/** A house on three lines with a point on all of them. */
const threeLines = (): Installation => {
  const lines = lineConductors;
  const run = soundCircuit(
    { lines, cable: { ...soundCircuit().cable, construction: 'multicore', cores: 5, protective: 'core' } },
    { lines },
  );
  return soundHouse([run], { phases: known(3) });
};

/** One kind of question with the type of its answer out of sight. */
interface Question {
  readonly homes: readonly { readonly house: Installation; readonly facts: readonly Found[] }[];
  compare(suspect: Installation, other: Installation, run: string, vary: (typeof varied)[number]): string | undefined;
}
function question<A>({ houses: of, ask, better, not = [] }: Asked<A>): Question {
  const answer = (house: Installation, run: string, vary: (typeof varied)[number]): A | undefined => {
    try {
      return ask(house, run, vary);
    } catch (e) {
      if (hasCode(e, 'invalid-input') || hasCode(e, 'unknown-definition')) return undefined;
      throw e;
    }
  };
  return {
    homes: of.map((house) => ({
      house,
      facts: factsOf(house).filter((f) => f.choices.length > 0 && !chosen(house, f) && !not.includes(f.name)),
    })),
    compare(suspect, other, run, vary) {
      const [a, b] = [answer(suspect, run, vary), answer(other, run, vary)];
      return a === undefined || b === undefined ? undefined : better(a, b);
    },
  };
}

/** Circuits that can be designed, new and as they stand. */
const designed = [houses[0], houses[2], standing(soundHouse())] as readonly Installation[];
const passes = (outcome: string) => outcome === 'accepted' || outcome === 'conditional';

const questions = {
  'the cheapest circuit': question({
    houses: designed,
    ask: (house, run) => design(code, house, run, {}, { ...premises, lengths: false, mostOpen: 20 }),
    better: (suspect, other) => {
      if (!passes(suspect.outcome) || !suspect.chosen) return undefined;
      if (other.outcome === 'none') return 'nothing passes otherwise';
      if (!passes(other.outcome) || !other.chosen) return undefined;
      // less current flows at the end of a longer feeder
      if (other.passedOver.some((p) => p.check.check === 'breaking-capacity')) return undefined;
      const { area, rating } = suspect.chosen;
      return cheapestFirst.compare(suspect.chosen, other.chosen) < 0 ? `${area} mm² behind ${rating} A` : undefined;
    },
    // where a cable is on a drum, and how, is what is built
    not: ['stretch.drum'],
  }),
  'what is permitted': question({
    houses: designed,
    ask: (house, run, vary) => permitted(code, house, run, { vary }, premises),
    better: (suspect, other) => {
      if (other.gaps.length > 0 || other.barredBy.some((r) => r.check === 'breaking-capacity')) return undefined;
      const within = (x: number) => other.intervals.some((i) => i.from.value - 0.002 <= x && x <= i.to.value + 0.002);
      const ends = suspect.intervals.flatMap((i) => (i.verdict === 'not-determined' ? [] : [i.from.value, i.to.value]));
      const beyond = ends.find((x) => !within(x));
      return beyond === undefined ? undefined : `${suspect.name} ${beyond} ${suspect.unit}`;
    },
    not: ['stretch.drum'],
  }),
  'what charge points share': question({
    houses: [threeLines(), ...houses.slice(0, 12)].map(rated),
    ask: (house) => {
      const network = networkOf(house);
      return isMissing(network) ? undefined : { network, shares: allocate(network, { rule: 'max-min-amperes' }) };
    },
    better: (suspect, other) => {
      if (suspect === undefined || other === undefined) return undefined;
      const all = ({ shares }: typeof suspect) => shares.points.reduce((sum, p) => sum + p.current, 0);
      if (all(suspect) > all(other) + 1e-9) return `${all(suspect)} A and ${all(other)} A in all`;
      for (const { id, limit, neutralLimit, thirdHarmonic = 0 } of other.network.nodes) {
        const mine = suspect.network.nodes.find((n) => n.id === id);
        if (!mine) continue;
        if (limit?.some((a, p) => (mine.limit?.[p] ?? Infinity) > a + 1e-9)) return `limit of ${id}`;
        if (neutralLimit === undefined) continue;
        if ((mine.neutralLimit ?? Infinity) > neutralLimit || (mine.thirdHarmonic ?? 0) < thirdHarmonic)
          return `neutral of ${id}`;
      }
      return undefined;
    },
    // left out where there is none, or as every point has it
    not: ['mainSwitch.fuseAhead', 'chargePoint.minimum'],
  }),
  'whom to tell': question({
    houses,
    ask: (house) =>
      notificationOf(bs7671Demand, greatBritain, house, { premises: 'dwelling', programme: known(false) }).decision,
    better: (suspect, other) => {
      if (suspect.route === 'notify-after' && other.route !== 'notify-after') return `${suspect.route}, ${other.route}`;
      // line by line the same check: the worst of them
      const worst = ({ results }: typeof other, check: string) =>
        (['fail', 'not-determined', 'pass'] as const).find((v) =>
          results.some((r) => r.check === check && r.verdict === v),
        );
      return other.results.find(
        ({ check }) =>
          worst(other, check) === 'fail' && !['fail', 'not-determined'].includes(worst(suspect, check) ?? ''),
      )?.check;
    },
  }),
  'the demand': question({
    houses: houses.map(listed),
    ask: (house) => demandOf(bs7671Demand, house, { premises: 'dwelling' }).governing,
    better: (suspect, other) => {
      if (suspect.verdict !== 'applicable' || suspect.method !== other.method) return undefined;
      for (const { line, demand, existing } of other.lines) {
        const mine = suspect.lines.find((l) => l.line === line);
        const less = (a: Known<number> | undefined, b: Known<number>) =>
          a !== undefined && !isMissing(a) && !isMissing(b) && a < b - 1e-9;
        if (less(mine?.demand, demand) || less(mine?.existing, existing))
          return `${line}: ${mine?.demand} A, ${demand} A`;
      }
      return undefined;
    },
    // that socket circuits are standard ones is what the guide's method takes, and says beside its figure
    not: ['load.standardCircuit', 'supply.meteredDemand', 'meteredDemand.current'],
  }),
} as const;

/** What is asked. */
export type Of = keyof typeof questions;

/** Draws cases, half of them with a fact that nobody knows, the others with one that is worse, and compares both sides. */
export function answersOf(
  of: Of,
  count: number,
  seed: number,
): { readonly compared: number; readonly found: readonly string[] } {
  const { homes, compare } = questions[of];
  const found = new Set<string>();
  let compared = 0;
  const cases = fc.nat(homes.length - 1).chain((h) => {
    const { house, facts } = homes[h] as (typeof homes)[number];
    return fc.boolean().chain((isWorse) => {
      const open = isWorse ? facts.filter((f) => f.name in worse) : facts.filter(may);
      const names = [...new Set(open.map((f) => f.name))];
      return fc
        .constantFrom(...names)
        .chain((name) => fc.constantFrom(...open.filter((f) => f.name === name)))
        .chain((fact) =>
          fc.record({
            house: fc.constant(house),
            number: fc.constant(h),
            isWorse: fc.constant(isWorse),
            fact: fc.constant(fact),
            value: fc.constantFrom(...fact.choices),
            other: fc.constantFrom(...fact.choices),
            left: fc.boolean(),
            run: fc.constantFrom(
              ...pathsOf(house)
                .slice(-2)
                .map((p) => p.run.id),
            ),
            vary: fc.constantFrom(...varied),
          }),
        );
    });
  });
  for (const { house, number, isWorse, fact, value, other, left, run, vary } of fc.sample(cases, {
    numRuns: count,
    seed,
  })) {
    const [low, high] = [value, other].sort((a, b) => (a as number) - (b as number));
    if (isWorse && low === high) continue;
    const [good, bad] = worse[fact.name] === 'up' ? [low, high] : [high, low];
    const better = isWorse
      ? compare(said(house, fact, bad), said(house, fact, good), run, vary)
      : compare(without(house, fact, left), said(house, fact, value), run, vary);
    compared++;
    if (better !== undefined)
      found.add(
        `house ${number}, ${run}, ${vary}: ${fact.path.join('.')} ${isWorse ? `${bad} for ${good}` : `not known for ${JSON.stringify(value)}`}: ${better}`,
      );
  }
  return { compared, found: [...found].sort() };
}
