import {
  absDependencies,
  acosDependencies,
  addDependencies,
  andDependencies,
  asinDependencies,
  atanDependencies,
  ceilDependencies,
  cosDependencies,
  create,
  createUnitDependencies,
  divideDependencies,
  equalDependencies,
  expDependencies,
  type FactoryFunctionMap,
  floorDependencies,
  largerDependencies,
  largerEqDependencies,
  logDependencies,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  notDependencies,
  orDependencies,
  parseDependencies,
  powDependencies,
  roundDependencies,
  sinDependencies,
  smallerDependencies,
  smallerEqDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  type Unit,
  unaryMinusDependencies,
  unequalDependencies,
  unitDependencies,
} from 'mathjs';
import type { CanonicalUnit } from '../units/index.js';

/** The general calculator with units: an instance of its own, with no more than an expression may use. */
export const general = /* @__PURE__ */ (() => {
  const parts = {
    ...absDependencies,
    ...acosDependencies,
    ...addDependencies,
    ...andDependencies,
    ...asinDependencies,
    ...atanDependencies,
    ...ceilDependencies,
    ...cosDependencies,
    ...createUnitDependencies,
    ...divideDependencies,
    ...equalDependencies,
    ...expDependencies,
    ...floorDependencies,
    ...largerDependencies,
    ...largerEqDependencies,
    ...logDependencies,
    ...maxDependencies,
    ...minDependencies,
    ...multiplyDependencies,
    ...notDependencies,
    ...orDependencies,
    ...parseDependencies,
    ...powDependencies,
    ...roundDependencies,
    ...sinDependencies,
    ...smallerDependencies,
    ...smallerEqDependencies,
    ...sqrtDependencies,
    ...subtractDependencies,
    ...tanDependencies,
    ...unaryMinusDependencies,
    ...unequalDependencies,
    ...unitDependencies,
  } as FactoryFunctionMap;
  const math = create(parts);
  math.createUnit('var', { definition: '1 W', prefixes: 'short' });
  return math;
})();

/** Canonical units as the general calculator spells them; temperatures are plain kelvins, without offset. */
const spelled: Readonly<Record<CanonicalUnit, string>> = {
  A: 'A',
  V: 'V',
  Ω: 'ohm',
  'Ω/m': 'ohm / m',
  'V/(A·m)': 'V / (A m)',
  m: 'm',
  mm: 'mm',
  'mm²': 'mm^2',
  'm²': 'm^2',
  W: 'W',
  VA: 'VA',
  var: 'var',
  Wh: 'W h',
  '°C': 'K',
  K: 'K',
  s: 's',
  d: 'day',
  'A²s': 'A^2 s',
  'K·m/W': 'K m / W',
  'W/m': 'W / m',
  Ω·m: 'ohm m',
  '1': '',
  '°': 'deg',
  Hz: 'Hz',
  'A·√s/mm²': 'A s^0.5 / mm^2',
  'J/(K·mm³)': 'J / (K mm^3)',
  Ω·mm: 'ohm mm',
  '1/K': '1 / K',
  'A/s': 'A / s',
  'm²/s': 'm^2 / s',
};

/**
 * A number with its unit, as the general calculator holds it; a ratio is a plain number.
 * @param value the number in the canonical unit
 * @throws Error for a unit that is not listed
 */
export function withUnit(value: number, unit: string): Unit | number {
  const text = Object.hasOwn(spelled, unit) ? spelled[unit as CanonicalUnit] : undefined;
  if (text === undefined) throw new Error(`there is no unit ${unit}`);
  return text === '' ? value : general.unit(value, text);
}

/**
 * The number in a canonical unit of what an expression gave.
 * @param result what the general calculator returned
 * @param unit the canonical unit that is due
 * @throws Error when it is of another unit, without one, or not finite
 */
export function numberIn(result: unknown, unit: string): number {
  const due = spelled[unit as CanonicalUnit];
  let value: unknown;
  if (due === '') value = result;
  else if (typeof result === 'object' && result !== null && 'toNumber' in result)
    value = (result as Unit).toNumber(due as string);
  if (typeof value !== 'number') throw new Error(`gives ${String(result)}, not a value in ${unit}`);
  if (!Number.isFinite(value)) throw new Error(`gives ${value} ${unit}`);
  return value;
}
