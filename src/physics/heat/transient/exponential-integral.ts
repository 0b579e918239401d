const EULER = 0.5772156649015329;

/** @internal The exponential integral E_1(x), which is -Ei(-x), for x above 0, to about 1e-15 of its value. */
export function exponentialIntegral(x: number): number {
  if (x > 700) return 0;
  if (x <= 1) {
    let term = 1;
    let sum = 0;
    for (let n = 1; n < 40; n++) {
      term *= -x / n;
      sum -= term / n;
    }
    return sum - EULER - Math.log(x);
  }
  // continued fraction, from the front (Lentz)
  let b = x + 1;
  let d = 1 / b;
  let h = d;
  let c = Number.MAX_VALUE;
  for (let n = 1; n < 200; n++) {
    b += 2;
    d = 1 / (b - n * n * d);
    c = b - (n * n) / c;
    h *= c * d;
    if (Math.abs(c * d - 1) < 1e-16) break;
  }
  return h * Math.exp(-x);
}
