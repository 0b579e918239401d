/** Difference of currents that counts as none, A. */
export const TOLERANCE = 1e-9;

/** So many steps, without the crumbs of binary fractions: 66 steps of 0.1 A are 6.6 A. */
export function multiple(count: number, step: number): number {
  const inOne = Math.round(1 / step);
  return Math.abs(inOne * step - 1) < 1e-12 ? count / inOne : Number((count * step).toPrecision(12));
}

/** A current rounded down to a multiple of the step; what is less than a billionth short of one counts as one. */
export const wholeSteps = (current: number, step: number): number =>
  multiple(Math.floor(current / step + TOLERANCE), step);

/** A current rounded up to a multiple of the step; what is less than a billionth above one counts as one. */
export const wholeStepsUp = (current: number, step: number): number =>
  multiple(Math.ceil(current / step - TOLERANCE), step);

/** A current that is a whole number of steps, and one step more or less. */
export const stepFrom = (current: number, step: number, by: 1 | -1): number =>
  multiple(Math.round(current / step) + by, step);
