import fc from 'fast-check';
import { all, create } from 'mathjs';
import { describe, expect, test } from 'vitest';
import * as units from '../../src/units/index.js';
import {
  type CanonicalUnit,
  format,
  formatNumber,
  formatPercent,
  type Spelling,
  spellings,
} from '../../src/units/index.js';

const math = create(all ?? {});
math.createUnit('var', { definition: '1 W', prefixes: 'short' });
math.createUnit('MA', '1e6 A');

const listed = Object.entries(spellings) as [CanonicalUnit, readonly Spelling[]][];

/** A spelling as the general unit library reads it, or undefined where it is a plain number. */
function general(text: string): string | undefined {
  const special: Record<string, string> = {
    '': '1',
    '%': '0.01',
    '°C': 'K',
    degC: 'K',
    '°': 'deg',
    'mV/A/m': 'mV/(A m)',
    'V/A/m': 'V/(A m)',
    days: 'day',
    d: 'day',
    min: 'minute',
    h: 'hour',
    'K.m/W': 'K m/W',
    'kA²s': '1000 A^2 s',
    'A·√s/mm²': 'A s^0.5 / mm^2',
    A2s: 'A^2 s',
  };
  if (text in special) return special[text];
  return text
    .replace(/MΩ/g, 'Mohm')
    .replace(/Ω/g, 'ohm')
    .replace(/m[²2](?!\w)/g, 'm^2')
    .replace(/³/g, '^3')
    .replace(/²/g, '^2 ')
    .replace(/·/g, ' ');
}

describe.each(listed)('%s', (unit, all) => {
  const base = all.find((s) => s.factor === 1) as Spelling;
  test.each(all.map((s) => [s.text, s] as const))('"%s" is what the general unit library makes of it', (_, s) => {
    const [ours, theirs] = [general(base.text), general(s.text)];
    const ratio = math.evaluate(`(1 (${theirs})) / (1 (${ours}))`);
    expect(Number(ratio)).toBeCloseTo(s.factor, 12 - Math.round(Math.log10(s.factor)));
    expect(units.parseQuantity(`7 ${s.text}`, unit)).toBeCloseTo(7 * s.factor, 9);
    expect(units.parseQuantity(`-7.5e1 ${s.text}`, unit)).toBeCloseTo(-75 * s.factor, 9);
  });

  test('what is printed is read again', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e9, max: 1e9, noNaN: true }), fc.integer({ min: 1, max: 8 }), (value, figures) => {
        const text = format(value as never, unit, figures);
        const again = units.parseQuantity(text, unit);
        // below the smallest printed spelling twenty places remain
        expect(Math.abs(again - value)).toBeLessThanOrEqual(Math.abs(value) * 0.51 * 10 ** (1 - figures) + 1e-19);
        expect(text).not.toMatch(/e[+-]?\d/);
      }),
    );
  });
});

test('the edges between two spellings', () => {
  expect([999.4, 999.5, 999.96, 1000, 1004, 18_400].map((a) => format(a as never, 'A'))).toEqual([
    '999 A',
    '1 kA',
    '1 kA',
    '1 kA',
    '1 kA',
    '18.4 kA',
  ]);
  expect([0.9994, 0.9996, 0.03, 0].map((a) => format(a as never, 'A'))).toEqual(['999 mA', '1 A', '30 mA', '0 A']);
  expect([119, 120, 7199, 7200].map((s) => format(s as never, 's', 4))).toEqual(['119 s', '2 min', '120 min', '2 h']);
  expect([1, 2, 0.5, 1.0004].map((d) => format(d as never, 'd'))).toEqual(['1 day', '2 days', '0.5 days', '1 day']);
  expect(format(999_999 as never, 'W')).toBe('1 MW');
});

test('numbers', () => {
  expect([0, -0, 12345, 12345.6, 0.000123456, -1.005, 1e21, 1e-30].map((n) => formatNumber(n))).toEqual([
    '0',
    '0',
    '12345',
    '12346',
    '0.000123',
    '-1',
    '1000000000000000000000',
    '0',
  ]);
  expect(formatPercent(units.ratio(0.0275))).toBe('2.75 %');
});

test.each([
  '',
  '7',
  '7 kilo',
  'kW 7',
  '7,4 kW',
  '7 kW kW',
  '0x10 kW',
  'NaN kW',
  'Infinity kW',
  `${'1'.repeat(70)} kW`,
  '7 kw',
])('"%s" is no power', (text) =>
  expect(() => units.parseQuantity(text, 'W')).toThrow(/is not a quantity in MW, kW, W/),
);

test('the ohm sign is the Greek letter', () => expect(units.parseQuantity('0.35 \u2126', 'Ω')).toBe(0.35));
test('a number too large is no quantity', () =>
  expect(() => units.parseQuantity('1e999 W', 'W')).toThrow('not a quantity'));

test('constructors and readers undo each other, and refuse what is no number', () => {
  const makers = Object.entries(units).filter(
    ([name, f]) => typeof f === 'function' && `in${name[0]?.toUpperCase()}${name.slice(1)}` in units,
  );
  expect(makers.length).toBeGreaterThan(8);
  for (const [name, make] of makers as [string, (v: number) => number][]) {
    const read = (units as never)[`in${name[0]?.toUpperCase()}${name.slice(1)}`] as (v: number) => number;
    for (const v of [0, 1, 7.41, -3, 1e6]) expect(read(make(v))).toBeCloseTo(v, 9);
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])
      expect(() => make(bad)).toThrow('is not a quantity');
  }
  expect(units.milliohmsPerMetre(7.41)).toBe(0.00741);
});
