/** What an answer may be, up to the last day of a month and the last minute of a day, and how rows are cut. */
import { describe, expect, it } from 'vitest';
import { type Question, questionnaire } from '../../src/installation/index.js';
import { readAnswer } from '../../src/io/brief/answers.js';
import { parseCsv } from '../../src/io/csv.js';

const question = (answer: Question['answer']): Question => {
  const found = questionnaire().find((q) => q.answer === answer);
  if (!found) throw new Error(`nothing is asked that is a ${answer}`);
  return found;
};
const read = (answer: Question['answer'], input: unknown): unknown => {
  const found = readAnswer(question(answer), input, 'survey');
  if ('problem' in found) return found.problem.id;
  return found.answer && 'known' in found.answer ? found.answer.known : found.answer;
};

describe('a day', () => {
  it.each([
    ['2026-01-31', '2026-01-31'],
    ['2026-01-32', 'not-a-day'],
    ['2026-01-00', 'not-a-day'],
    ['2026-02-28', '2026-02-28'],
    ['2026-02-29', 'not-a-day'],
    ['2028-02-29', '2028-02-29'],
    ['2028-02-30', 'not-a-day'],
    ['2000-02-29', '2000-02-29'],
    ['2100-02-29', 'not-a-day'],
    ['2026-03-31', '2026-03-31'],
    ['2026-03-32', 'not-a-day'],
    ['2026-04-30', '2026-04-30'],
    ['2026-04-31', 'not-a-day'],
    ['2026-05-31', '2026-05-31'],
    ['2026-05-32', 'not-a-day'],
    ['2026-06-31', 'not-a-day'],
    ['2026-07-31', '2026-07-31'],
    ['2026-07-32', 'not-a-day'],
    ['2026-08-31', '2026-08-31'],
    ['2026-08-32', 'not-a-day'],
    ['2026-09-31', 'not-a-day'],
    ['2026-10-31', '2026-10-31'],
    ['2026-10-32', 'not-a-day'],
    ['2026-11-31', 'not-a-day'],
    ['2026-12-31', '2026-12-31'],
    ['2026-12-32', 'not-a-day'],
    ['2026-13-01', 'not-a-day'],
    ['2026-00-01', 'not-a-day'],
    // as a spreadsheet of the country writes it
    ['9/3/2026', '2026-03-09'],
    ['31.04.2026', 'not-a-day'],
  ])('%s: %s', (text, expected) => expect(read('date', text)).toBe(expected));
});

describe('a time of day', () => {
  it.each([
    ['0:00', '00:00'],
    ['23:59', '23:59'],
    ['23:60', 'not-a-time'],
    ['24:00', 'not-a-time'],
    ['7:05:00', '07:05'],
    ['7:5', 'not-a-time'],
  ])('%s: %s', (text, expected) => expect(read('clock', text)).toBe(expected));
});

describe('a count', () => {
  it.each([
    [0, 0],
    ['3', 3],
    [' 12 ', 12],
    [10_000, 10_000],
    [10_001, 'wrong-kind'],
    [-1, 'wrong-kind'],
    [1.5, 'wrong-kind'],
    ['1.5', 'wrong-kind'],
    ['three', 'wrong-kind'],
  ])('%s: %s', (input, expected) => expect(read('count', input)).toBe(expected));
});

it('rows end with every kind of line end, and fields may hold them within quotes', () => {
  const rows = [
    ['a', 'b'],
    ['c', 'd'],
  ];
  for (const end of ['\n', '\r\n', '\r']) expect(parseCsv(`a,b${end}c,d`).slice(0, 2)).toEqual(rows);
  expect(parseCsv('"a\r\nb",c\n')[0]).toEqual(['a\r\nb', 'c']);
  expect(parseCsv('"say ""yes""",c')[0]).toEqual(['say "yes"', 'c']);
});
