/** Trees that are deep or wide: nothing overflows, and what was gone through once is not gone through for each circuit again. */
import { expect, it } from 'vitest';
import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { adequacyOf } from '../../src/demand/index.js';
import { ordinaryHome } from '../../src/great-britain.js';
import { assess, assume, type Board, type Installation, pathsOf, type Run } from '../../src/index.js';
import { boardsOf } from '../../src/site/option-survey.js';
import { premises, soundCircuit, soundHouse, soundPoint } from '../hazards/sound.js';

/** Boards one behind the other, the circuit at the last. */
function nested(boards: number): Installation {
  const house = soundHouse();
  let board: Board = { ...house.board, id: `board ${boards}` };
  for (let i = boards - 1; i >= 0; i--) {
    const feeder: Run = { ...soundCircuit(), id: `feeder ${i}`, feeds: [board] };
    board = { ...house.board, id: i === 0 ? 'origin' : `board ${i}`, runs: [feeder] };
  }
  return { ...house, board };
}

it('3,000 boards one behind the other overflow nothing', () => {
  const deep = nested(3000);
  expect(boardsOf(deep.board)).toHaveLength(3001);
  expect(boardsOf(assume(deep, ordinaryHome).board)).toHaveLength(3001);
  expect(pathsOf(deep).at(-1)?.feeders).toHaveLength(3000);
  expect(adequacyOf(bs7671Demand, deep, { premises: 'dwelling' }).demand.methods.length).toBeGreaterThan(0);
});

it('of 3,000 circuits the tree is gone through once, however many are assessed', () => {
  const wide = soundHouse(
    Array.from({ length: 3000 }, (_, i) =>
      soundCircuit({ id: `circuit ${i}`, feeds: [soundPoint({ id: `point ${i}` })] }),
    ),
  );
  let reads = 0;
  // the last circuit is read by whoever goes through all of the tree
  const [last] = wide.board.runs.slice(-1) as [Run];
  Object.defineProperty(last, 'outOfUse', {
    enumerable: true,
    get() {
      reads += 1;
      return undefined;
    },
  });
  const readsOf = (id: string): number => {
    const before = reads;
    assess(bs7671('2018+A2:2022'), wide, id, premises);
    return reads - before;
  };
  readsOf('circuit 0');
  const each = ['circuit 1', 'circuit 2', 'circuit 3'].map(readsOf);
  expect(each).toEqual([0, 0, 0]);
});
