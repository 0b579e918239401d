/**
 * The heat equation around one cable in the ground, by finite volumes in bipolar coordinates: the surface of the ground and
 * that of the cable are coordinate lines, and infinity is a corner. The surface of the cable has one temperature.
 */
export interface GroundGrid {
  /** Radius of the cable, m. */
  readonly radius: number;
  /** Depth of its axis, m. */
  readonly depth: number;
  /** Diffusivity of the soil, m²/s. */
  readonly diffusivity: number;
  /** Cells around half the cable, and from the cable to the surface of the ground. */
  readonly cells: readonly [around: number, out: number];
  /**
   * Stores of the cable from the conductor outwards, as resistance to the next and capacity, both in those of the soil: 1 is
   * its thermal resistivity, and the heat capacity of a square metre of soil.
   */
  readonly chain?: readonly { readonly resistance: number; readonly capacity: number }[];
}

/** Steps in time of the temperatures, in units of loss per length times thermal resistivity of the soil. */
export interface Stepper {
  /** Rise of the surface of the cable. */
  surface(): number;
  /** Rise of the ground in a cell, and how far it lies to the side and how deep, m. */
  cell(around: number, out: number): { readonly rise: number; readonly offset: number; readonly depth: number };
  /** Rise of the conductor. */
  conductor(): number;
  /** Sets all temperatures to those of a steady loss. */
  steady(loss: number): void;
  /** Goes on by a time, s, with a loss, 1 being that of the unit. */
  step(loss: number): void;
}

/**
 * Makes a stepper of one step length. Two-stage diagonally implicit Runge-Kutta: of second order, damps what is fast.
 * @param grid the cable and the ground
 * @param seconds length of a step
 */
export function ground(
  { radius, depth, diffusivity, cells: [around, out], chain = [] }: GroundGrid,
  seconds: number,
): Stepper {
  const focus = Math.sqrt(depth * depth - radius * radius);
  const most = Math.acosh(depth / radius);
  const dt = most / out;
  const ds = Math.PI / around;
  const inSoil = around * out;
  const size = inSoil + 1 + chain.length;
  const capacity = new Float64Array(size);
  const links: [number, number, number][] = [];
  // twice: the half plane stands for the whole
  for (let j = 0; j < out; j++)
    for (let i = 0; i < around; i++) {
      const at = j * around + i;
      const tau = (j + 0.5) * dt;
      const scale = focus / (Math.cosh(tau) - Math.cos((i + 0.5) * ds));
      capacity[at] = 2 * scale * scale * dt * ds;
      if (i + 1 < around) links.push([at, at + 1, (2 * dt) / ds]);
      if (j + 1 < out) links.push([at, at + around, (2 * ds) / dt]);
      else links.push([at, inSoil, (4 * ds) / dt]);
      if (j === 0) links.push([at, -1, (4 * ds) / dt]);
    }
  chain.forEach(({ resistance, capacity: store }, k) => {
    const at = inSoil + chain.length - k;
    capacity[at] = store;
    links.push([at - 1, at, 1 / resistance]);
  });
  const band = around + 1;
  const matrix = (weight: number, withCapacity: number) => {
    // lower band, row by row: column c of row r at r * (band + 1) + (c - r + band)
    const a = new Float64Array(size * (band + 1));
    const put = (r: number, c: number, v: number) => {
      const at = r * (band + 1) + (c - r + band);
      a[at] = (a[at] as number) + v;
    };
    for (let r = 0; r < size; r++) put(r, r, (withCapacity * (capacity[r] as number)) / diffusivity);
    for (const [p, q, g] of links) {
      if (q < 0) put(p, p, weight * g);
      else {
        put(p, p, weight * g);
        put(q, q, weight * g);
        put(Math.max(p, q), Math.min(p, q), -weight * g);
      }
    }
    for (let r = 0; r < size; r++)
      for (let c = Math.max(0, r - band); c <= r; c++) {
        let v = a[r * (band + 1) + (c - r + band)] as number;
        for (let k = Math.max(0, r - band); k < c; k++)
          v -= (a[r * (band + 1) + (k - r + band)] as number) * (a[c * (band + 1) + (k - c + band)] as number);
        a[r * (band + 1) + (c - r + band)] = c === r ? Math.sqrt(v) : v / (a[c * (band + 1) + band] as number);
      }
    return (right: Float64Array) => {
      const x = Float64Array.from(right);
      for (let r = 0; r < size; r++) {
        let v = x[r] as number;
        for (let c = Math.max(0, r - band); c < r; c++)
          v -= (a[r * (band + 1) + (c - r + band)] as number) * (x[c] as number);
        x[r] = v / (a[r * (band + 1) + band] as number);
      }
      for (let r = size - 1; r >= 0; r--) {
        const v = (x[r] as number) / (a[r * (band + 1) + band] as number);
        x[r] = v;
        for (let c = Math.max(0, r - band); c < r; c++)
          x[c] = (x[c] as number) - (a[r * (band + 1) + (c - r + band)] as number) * v;
      }
      return x;
    };
  };
  const gamma = 1 - Math.SQRT1_2;
  const implicit = matrix(gamma * seconds, 1);
  const source = size - 1;
  // C/δ dT/dt = -G T + loss at the conductor
  const flow = (t: Float64Array, loss: number) => {
    const f = new Float64Array(size);
    f[source] = loss;
    for (const [p, q, g] of links) {
      const heat = g * ((t[p] as number) - (q < 0 ? 0 : (t[q] as number)));
      f[p] = (f[p] as number) - heat;
      if (q >= 0) f[q] = (f[q] as number) + heat;
    }
    return f;
  };
  let now: Float64Array = new Float64Array(size);
  return {
    surface: () => now[inSoil] as number,
    cell: (i, j) => {
      const [tau, sigma] = [(j + 0.5) * dt, (i + 0.5) * ds];
      const below = Math.cosh(tau) - Math.cos(sigma);
      return {
        rise: now[j * around + i] as number,
        offset: (focus * Math.sin(sigma)) / below,
        depth: (focus * Math.sinh(tau)) / below,
      };
    },
    conductor: () => now[source] as number,
    steady: (loss) => {
      const right = new Float64Array(size);
      right[source] = loss;
      now = matrix(1, 0)(right);
    },
    step: (loss) => {
      const k1 = implicit(flow(now, loss));
      const middle = now.map((v, i) => v + (1 - gamma) * seconds * (k1[i] as number));
      const k2 = implicit(flow(middle, loss));
      now = now.map((v, i) => v + seconds * ((1 - gamma) * (k1[i] as number) + gamma * (k2[i] as number)));
    },
  };
}
