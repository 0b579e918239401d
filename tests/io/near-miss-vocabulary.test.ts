/** Slips that people make, over every question of the questionnaire: read where they are clear, and named where not. */
import { describe, expect, test } from 'vitest';
import { hasCode, type Problem } from '../../src/index.js';
import { questionnaire } from '../../src/installation/index.js';
import { readBrief, usualDefaults } from '../../src/io/index.js';

const base = { format: 'brief/1', date: '2026-09-21', edition: '2018+A2:2022' };
function problemsOf(answers: Readonly<Record<string, unknown>>): readonly Problem[] {
  try {
    readBrief({ ...base, ...answers }, usualDefaults);
    return [];
  } catch (error) {
    if (hasCode(error, 'invalid-input')) return error.detail.problems;
    // well said, and refused by name
    if (hasCode(error, 'not-covered')) return [];
    throw error;
  }
}

/** How the trade writes units, beside their symbol. */
const said: Readonly<Record<string, readonly string[]>> = {
  A: ['amp', 'amps', 'Amps', 'ampere'],
  mA: ['ma', 'milliamps'],
  kA: ['ka'],
  Ω: ['ohm', 'ohms', 'Ohms'],
  'mm²': ['mm2', 'sqmm', 'sq mm', 'mm sq'],
  kW: ['kw', 'KW', 'kilowatts'],
  kWh: ['kwh', 'KWH'],
  m: ['metres', 'meters', 'mtr'],
  mm: ['millimetres'],
  '°C': ['C', 'deg C', 'degrees'],
  '%': ['percent', 'pc'],
};
const quantities = questionnaire().filter((q) => q.unit !== undefined && q.unit !== '');

test('there is a spelling to try for every unit', () => {
  expect(quantities.length).toBeGreaterThan(25);
  expect(quantities.map((q) => q.unit).filter((unit) => !Object.hasOwn(said, unit ?? ''))).toEqual([]);
});

describe.each(quantities.map((q) => [q.id, q.unit ?? '', q.usual ?? [1, 10]] as const))(
  '%s, in %s',
  (id, unit, usual) => {
    // a figure that a survey could find
    const figure = Math.max(usual[0], Math.min(usual[1], 10)) || 1;

    test('with its unit in the words of the trade, or without', () => {
      for (const word of [unit, ...(said[unit] ?? [])])
        expect([word, problemsOf({ [id]: `${figure} ${word}` })]).toEqual([word, []]);
      expect(problemsOf({ [id]: figure })).toEqual([]);
      expect(problemsOf({ [id]: String(figure) })).toEqual([]);
    });

    test('with a decimal comma: what to write is said', () => {
      const [problem] = problemsOf({ [id]: `${Math.floor(figure)},5 ${unit}` });
      expect(problem?.path).toEqual([id]);
      expect(problem?.id).toBe('decimal-comma');
      expect(String(problem?.write)).toMatch(/^\d+\.5 /);
      expect(problemsOf({ [id]: problem?.write }).filter((p) => p.id !== 'out-of-range')).toEqual([]);
    });

    test('in a unit of something else: the unit that is due is said', () => {
      const [problem] = problemsOf({ [id]: `3 ${unit === 'Hz' ? 'A' : 'Hz'}` });
      expect(problem?.path).toEqual([id]);
      expect(problem?.id).toBe('wrong-unit');
      expect(problem?.message).toContain(unit);
    });
  },
);

describe.each(
  questionnaire()
    .filter((q) => q.choices !== undefined)
    .map((q) => [q.id, (q.choices ?? []).map((c) => c.value)] as const),
)('%s', (id, values) => {
  test('takes each choice in small and in large letters, and lists them where there is none such', () => {
    for (const value of values) {
      const text = String(value);
      for (const written of [value, text, text.toUpperCase(), text.toLowerCase(), text.replaceAll('-', ' ')])
        expect([written, problemsOf({ [id]: written })]).toEqual([written, []]);
    }
    const [problem] = problemsOf({ [id]: 'zzzzzzzz' });
    expect(problem?.path).toEqual([id]);
    expect(problem?.id).toBe('not-allowed');
    expect(problem?.allowed).toEqual(values);
  });
});

test.each([
  ['earthing', 'PME'],
  ['earthing', 'TNCS'],
  ['earthing', 'SNE'],
  ['earthing', 'rod'],
  ['phases', 'single phase'],
  ['phases', 'three-phase'],
  ['looped', 'Yes'],
  ['looped', 'N'],
])('%s: %s is read', (id, written) => {
  expect(problemsOf({ [id]: written })).toEqual([]);
});
