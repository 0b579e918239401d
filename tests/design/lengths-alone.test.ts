/** Where lengths of a route alone differ, the things that are looked at again are all that depend on one. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Line } from '../../src/calculation/line.js';
import { Thing, thingsBelow } from '../../src/calculation/lists.js';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { iec60364 } from '../../src/codes/iec60364/index.js';
import { circuitCase } from '../../src/design/index.js';
import { Working } from '../../src/design/working.js';
import { type Board, hasCode, type Installation, known, metres, type Run } from '../../src/index.js';
import { runNames, withRun } from '../../src/installation/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';

const codes = { bs7671: bs7671('2018+A2:2022'), iec60364: iec60364('2009') } as const;
const drawn: readonly Installation[] = [
  ...fc.sample(arbitraryInstallation(), { numRuns: 25, seed: 47 }),
  ...fc.sample(arbitraryInstallation({ open: true }), { numRuns: 25, seed: 48 }),
];

/**
 * They go through lines and loads, and pass lengths on the way that leave no trace in them: how many lines are followed is
 * asked anew with every change, and the others add up currents.
 */
const withoutTrace = ['circuit/severalLines', 'circuit/unknownBehind', 'circuit/generationCurrent'];

const lengthRead = new Error('a length is read');
let armed = false;
/** The installation with lengths that nobody may read once they are armed. */
const trapped = ({ supply, board }: Installation): Installation => {
  const inRun = (run: Run): Run => ({
    ...run,
    stretches: run.stretches.map((s) => {
      const { length } = s;
      return Object.defineProperty({ ...s }, 'length', {
        enumerable: true,
        get() {
          if (armed) throw lengthRead;
          return length;
        },
      });
    }),
    feeds: run.feeds.map((o) => (o.kind === 'board' ? inBoard(o) : o)),
  });
  const inBoard = (b: Board): Board => ({ ...b, runs: b.runs.map(inRun) });
  return { supply, board: inBoard(board) };
};

/** What a line reads facts by, in all its ways. */
const readersOf = ({ how }: Line): readonly ((place: never) => unknown)[] => {
  if (how.kind === 'fact') return [how.read];
  if (how.kind === 'choose') return Object.values(how.of).flatMap(readersOf);
  if (how.kind === 'or-else') return readersOf(how.then);
  return how.kind === 'between-steps' ? readersOf(how.of) : [];
};
const touches = (read: () => unknown): boolean => {
  try {
    armed = true;
    read();
    return false;
  } catch (error) {
    return error === lengthRead;
  } finally {
    armed = false;
  }
};
const caseOf = (installation: Installation, run: string) => {
  try {
    return circuitCase(installation, run, {});
  } catch (error) {
    if (!hasCode(error, 'invalid-input')) throw error;
    return undefined;
  }
};

test.each(Object.entries(codes))('%s reads no length of things that are not along the route', (_, { calculator }) => {
  const { lists, root } = calculator.lists;
  const reading = new Set<string>();
  let places = 0;
  for (const installation of drawn) {
    const traps = trapped(installation);
    for (const run of runNames(installation)) {
      const place = caseOf(traps, run);
      if (!place) continue;
      const circuit = new Thing(root, calculator.placeOf(place));
      for (const list of lists.values()) {
        const above = list.above && (list.above === root ? [circuit] : thingsBelow(circuit, list.above));
        if (!list.hasLengths && above?.some((t) => touches(() => list.scope.things(t.place as never))))
          reading.add(`things of ${list.name}`);
        for (const thing of list === root ? [circuit] : thingsBelow(circuit, list)) {
          places += 1;
          for (const { name, node } of list.facts)
            if (readersOf(node.line).some((read) => touches(() => read(thing.place as never))))
              reading.add(`${list.name}/${name}`);
        }
      }
    }
  }
  expect(places).toBeGreaterThan(1000);
  const along = (entry: string) => lists.get(entry.split('/')[0] as string)?.scope.alongRoute;
  expect([...reading].filter((entry) => !along(entry) && !withoutTrace.includes(entry))).toEqual([]);
  expect([...reading]).toContain('runSections/length');
});

test.each(Object.entries(codes))('%s says the same after a change of lengths as from the start', (_, code) => {
  let compared = 0;
  for (const installation of drawn.slice(0, 10).concat(drawn.slice(25, 35)))
    for (const run of runNames(installation)) {
      if (!caseOf(installation, run)) continue;
      const working = new Working(code, installation, run, {});
      working.results();
      for (const factor of [0.3, 4]) {
        const longer = withRun(installation, run, (r) => ({
          ...r,
          stretches: r.stretches.map((s) => ({ ...s, length: known(metres(factor * 7)) })),
        }));
        if (!caseOf(longer, run)) continue;
        working.change(longer, {}, true);
        expect(working.results()).toEqual(new Working(code, longer, run, {}).results());
        compared += 1;
      }
    }
  expect(compared).toBeGreaterThan(50);
});
