/**
 * @internal The modified Bessel function K_0 or K_1 times e^x, for x above 0: its integral over cosh by equal steps, which
 * converges to the last place.
 */
export function besselK(order: 0 | 1, x: number): number {
  const step = Math.min(0.2, 0.7 / Math.sqrt(x));
  let sum = 0.5;
  for (let i = 1; i < 1000; i++) {
    const t = i * step;
    const power = x * (Math.cosh(t) - 1);
    if (power > 45) break;
    sum += Math.exp(-power) * (order === 0 ? 1 : Math.cosh(t));
  }
  return sum * step;
}

// weights of Stehfest's method for fourteen terms
const TERMS = 14;
const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));
const weight = (i: number): number => {
  const half = TERMS / 2;
  let sum = 0;
  for (let k = Math.floor((i + 1) / 2); k <= Math.min(i, half); k++)
    sum +=
      (k ** half * factorial(2 * k)) /
      (factorial(half - k) * factorial(k) * factorial(k - 1) * factorial(i - k) * factorial(2 * k - i));
  return (i + half) % 2 === 0 ? sum : -sum;
};
let weights: readonly number[] | undefined;

/**
 * @internal The answer to a step from the answer to a steady oscillation that dies out: Stehfest's inversion of the Laplace
 * transform, for what rises smoothly.
 * @param impedance the transform over that of the step, at a rate in 1/s
 * @param time time since the step, s, above 0
 */
export function stepFrom(impedance: (rate: number) => number, time: number): number {
  weights ??= Array.from({ length: TERMS }, (_, i) => weight(i + 1));
  return weights.reduce((sum, w, i) => sum + (w / (i + 1)) * impedance(((i + 1) * Math.LN2) / time), 0);
}
