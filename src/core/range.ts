import { type Bounds, CalculationError, formatIn, hasCode } from '../units/index.js';
import type { Gap } from './fact.js';
import { termOf } from './vocabulary/index.js';

/** Quantity, value with unit, permitted range and source, in words. */
export const outOfRange = (name: string, value: number, bounds: Bounds, source: string): string => {
  const unit = termOf(name)?.unit ?? '';
  const limit = [
    bounds.least === undefined ? '' : `from ${formatIn(bounds.least, unit, 6)}`,
    bounds.above === undefined ? '' : `above ${formatIn(bounds.above, unit, 6)}`,
    bounds.most === undefined ? '' : `up to ${formatIn(bounds.most, unit, 6)}`,
  ];
  const written = Number.isFinite(value) ? formatIn(value, unit, 6) : 'not a finite number';
  return `${name} is ${written}; ${source} holds ${limit.filter(Boolean).join(' ') || 'for finite values'}`;
};

/** The same as a gap: the formula or procedure gives nothing here. */
export const rangeGap = (formula: string, name: string, value: number, bounds: Bounds, source: string): Gap => ({
  kind: 'range',
  formula,
  explain: outOfRange(name, value, bounds, source),
});

/**
 * Why a formula or procedure gave nothing here, from what it threw: an iteration without a solution, or a result out of its
 * range, is a finding about the circuit and no crash of the whole; anything else is thrown on.
 */
export function thrownGap(of: { readonly id: string; readonly output: string }, error: unknown): Gap {
  if (!(error instanceof CalculationError)) throw error;
  return hasCode(error, 'out-of-range') && error.detail.quantity === of.output
    ? rangeGap(of.id, of.output, error.detail.value, termOf(of.output) ?? {}, of.id)
    : { kind: 'range', formula: of.id, explain: error.message };
}
