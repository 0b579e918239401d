import { expect, test } from 'vitest';
import { hasCode } from '../../src/index.js';
import { readPriceBook, readWorkRules } from '../../src/io/index.js';
import { commonPractice } from '../../src/site/index.js';

const book = { format: 'prices/1', currency: 'GBP', items: { 'cable:*': 315 }, hour: 4550, taxBasisPoints: 2000 };
const paths = (read: () => unknown): readonly string[] => {
  try {
    read();
    return [];
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems.map((p) => p.path.join('.'));
    throw error;
  }
};

test('a price book is read, in whole coins only', () => {
  expect(readPriceBook(book)).toEqual(book);
  expect([...paths(() => readPriceBook({ ...book, hour: 45.5, items: { a: -1 }, currency: 'pounds' }))].sort()).toEqual(
    ['currency', 'hour', 'items.a'],
  );
  expect(paths(() => readPriceBook(JSON.parse('{"format":"prices/1","__proto__":{"hour":1}}')))).toEqual(['__proto__']);
});

test('work rules of a firm must have hours for every task', () => {
  const tasks = Object.keys(commonPractice.hours);
  expect(readWorkRules(commonPractice, tasks)).toEqual(commonPractice);
  const { 'dead and live tests': _, ...hours } = commonPractice.hours;
  expect(paths(() => readWorkRules({ ...commonPractice, hours }, tasks))).toEqual(['hours.dead and live tests']);
});

test('work rules rise from low to high, and say what became of the factor for a buried cable', () => {
  const tasks = Object.keys(commonPractice.hours);
  const falling = { ...commonPractice.hours, 'backfill, each m': { low: 1, typical: 0.5, high: 2 } };
  expect(paths(() => readWorkRules({ ...commonPractice, hours: falling }, tasks))).toEqual(['hours.backfill, each m']);
  const containmentFactor = { ...commonPractice.containmentFactor, buried: 3 };
  expect(() => readWorkRules({ ...commonPractice, containmentFactor }, tasks)).toThrow(/tasks of a trench/);
});
