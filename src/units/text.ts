import { quantity } from './constructors.js';
import { CalculationError } from './error.js';
import type { Quantity } from './quantity.js';
import { type CanonicalUnit, type Spelling, spellings } from './spellings.js';

/** A number with at most this many significant figures, without a tail of zeros and never in exponent form. */
export function formatNumber(value: number, figures = 3): string {
  if (value === 0) return '0';
  const magnitude = Math.floor(Math.log10(Math.abs(value)));
  const whole = magnitude >= figures - 1;
  const places = Math.min(20, Math.max(0, figures - 1 - magnitude));
  // whole numbers keep all their digits: 12345 A²s is not 12300 A²s
  const text = whole
    ? value.toFixed(Number.isInteger(value) || magnitude >= figures ? 0 : places)
    : value.toFixed(places);
  // from 1e21 on toFixed falls back to the exponent form
  if (text.includes('e')) return BigInt(value).toString();
  const short = text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
  return short === '-0' ? '0' : short;
}

/**
 * A quantity as the trade prints it: `1.09 Ω`, `32 A`, `7.3 mV/A/m`, `18.4 kA`.
 * @param value the quantity in its canonical unit
 * @param unit the canonical unit
 * @param figures significant figures, 1 and up
 * @returns number and unit; the unit is scaled as the trade scales it
 * @example
 * ```ts
 * import { format, kiloamperes, millivoltsPerAmpereMetre, ohms } from 'ohmwright';
 *
 * format(kiloamperes(18.4), 'A'); // => '18.4 kA'
 * format(millivoltsPerAmpereMetre(7.3), 'V/(A·m)'); // => '7.3 mV/A/m'
 * format(ohms(1.0925), 'Ω'); // => '1.09 Ω'
 * ```
 */
export function format<U extends CanonicalUnit>(value: Quantity<U>, unit: U, figures = 3): string {
  return formatIn(value, unit, figures);
}

/**
 * The same for a unit that is known only at run time, as in a report; an unlisted unit is printed as it is.
 * @param value the number in the unit
 * @param unit a canonical unit
 * @param figures significant figures, 1 and up
 * @returns number and unit; the unit is scaled as the trade scales it
 * @example
 * ```ts
 * import { formatIn } from 'ohmwright';
 *
 * formatIn(0.0073, 'V/(A·m)'); // => '7.3 mV/A/m'
 * ```
 */
export function formatIn(value: number, unit: string, figures = 3): string {
  const all: readonly Spelling[] = (spellings as Readonly<Record<string, readonly Spelling[]>>)[unit] ?? [
    { text: unit, factor: 1, prints: true },
  ];
  const printed = all.filter((s) => s.prints);
  // rounded first: 999.96 A is 1 kA, not 1000 A
  const size = Number(Math.abs(value).toPrecision(Math.min(100, Math.max(1, figures))));
  const chosen =
    printed.find((s) => size >= s.factor * keepBelow(s)) ??
    printed[value === 0 ? baseIndex(printed) : printed.length - 1];
  if (!chosen) return formatNumber(value, figures);
  const number = formatNumber(value / chosen.factor, figures);
  if (chosen.text === '' || chosen.text === '°') return number + chosen.text;
  return `${number} ${chosen.text === 'days' && number === '1' ? 'day' : chosen.text}`;
}

/** 1500 s stays in seconds and 0.9 kA is 900 A: a larger unit is taken only where the trade would. */
const keepBelow = (s: Spelling): number => (s.text === 'h' || s.text === 'min' ? 2 : 1);
const baseIndex = (printed: readonly Spelling[]): number =>
  Math.max(
    0,
    printed.findIndex((s) => s.factor === 1),
  );

/**
 * A ratio in percent: `2.75 %`.
 * @param value the ratio, a plain number, any
 * @param figures significant figures, 1 and up
 * @returns number and percent sign
 * @example
 * ```ts
 * import { formatPercent, ratio } from 'ohmwright';
 *
 * formatPercent(ratio(0.0275)); // => '2.75 %'
 * ```
 */
export function formatPercent(value: Quantity<'1'>, figures = 3): string {
  return `${formatNumber(value * 100, figures)} %`;
}

const AMOUNT = /^\s*([+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d{1,3})?)\s*(\S.*?)?\s*$/u;

/**
 * Reads a text such as `'7.4 kW'` or `'25 mm²'` as a quantity of the unit that is due.
 * @param text number, then one of the listed spellings of the unit
 * @param unit the canonical unit that is due
 * @returns the quantity, in the canonical unit
 * @throws CalculationError `unreadable-quantity` with the spellings that would be read
 * @example
 * ```ts
 * import { parseQuantity } from 'ohmwright';
 *
 * parseQuantity('7.4 kW', 'W'); // => 7400
 * parseQuantity('18 mV/A/m', 'V/(A·m)'); // => 0.018
 * ```
 */
export function parseQuantity<U extends CanonicalUnit>(text: string, unit: U): Quantity<U> {
  const match = text.length <= 60 ? AMOUNT.exec(text) : null;
  const listed: readonly Spelling[] = spellings[unit];
  // Ω has two code points, µ is not used: fold the ohm sign into the Greek letter
  const tail = (match?.[2] ?? '').replace(/\u2126/gu, 'Ω');
  const spelling = match && listed.find((s) => s.text === tail);
  if (!match || !spelling) {
    throw new CalculationError(
      'unreadable-quantity',
      `'${text.slice(0, 60)}' is not a quantity in ${listed.map((s) => s.text || 'plain number').join(', ')}, such as '${unit === '1' ? '32' : `32 ${unit}`}'`,
      {
        text: text.slice(0, 60),
        expected: unit,
        spellings: listed.map((s) => s.text),
      },
    );
  }
  const number = Number(match[1]);
  const { factor } = spelling;
  return quantity(factor < 1 ? number / Math.round(1 / factor) : number * factor, unit);
}

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];

/** A day as it is written in English: 21 September 2026; months from 1. */
export const writtenDay = (year: number, month: number, day: number): string => `${day} ${months[month - 1]} ${year}`;
