/**
 * The cells that the circuit judged by hand reads, as plain maps and arrays: BS 7671:2018+A2:2022 and the product
 * standards that it rests on, as the tables of the library state them.
 */

/** A number for each cross-section, mm². */
export type BySize = ReadonlyMap<number, number>;

const sizes = [1.5, 2.5, 4, 6, 10, 16, 25];
const bySize = (...cells: readonly number[]): Map<number, number> =>
  new Map(cells.map((cell, i) => [sizes[i] as number, cell] as const));

/** Capacity by reference method and size, two loaded conductors, A. Tables 4D5 and 4E4A. */
export const capacities = {
  'flat-twin-and-earth': {
    100: bySize(16, 21, 27, 34, 45, 57),
    101: bySize(13, 17, 22, 27, 36, 46),
    102: bySize(16, 21, 27, 35, 47, 63),
    103: bySize(10, 13.5, 17.5, 23.5, 32, 42.5),
    A: bySize(14.5, 20, 26, 32, 44, 57),
    C: bySize(20, 27, 37, 47, 64, 85),
  },
  armoured: { C: bySize(27, 36, 49, 62, 85, 110, 146), E: bySize(29, 39, 52, 66, 90, 115, 152) },
} as const;

/** Drop by size, single-phase, mV/A/m. Tables 4D5 and 4E4B. */
export const dropRates = {
  'flat-twin-and-earth': bySize(29, 18, 11, 7.3, 4.4, 2.8),
  armoured: bySize(31, 19, 12, 7.9, 4.7, 2.9, 1.9),
} as const;

/** Steps in ascending order: each cell holds for what is at most as large as its key. */
export interface Steps {
  readonly upTo: readonly number[];
  readonly cells: readonly number[];
}

/** Current that melts a fuse of BS 1361 within 5 s, A, by its rating, A. BS 7671 Appendix 3. */
export const slowFuseCurrents: BySize = new Map([
  [45, 239.6],
  [60, 328.6],
  [80, 460],
  [100, 638.9],
]);

const airTemperatures = [25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80];

/** Factor for the temperature of the air, °C. Table 4B1. */
export const ambientFactors: Readonly<Record<string, Steps>> = {
  'thermoplastic-70': { upTo: airTemperatures.slice(0, 8), cells: [1.03, 1, 0.94, 0.87, 0.79, 0.71, 0.61, 0.5] },
  'thermosetting-90': {
    upTo: airTemperatures,
    cells: [1.02, 1, 0.96, 0.91, 0.87, 0.82, 0.76, 0.71, 0.65, 0.58, 0.5, 0.41],
  },
};

const circuits = [1, 2, 3, 4, 5, 6, 7, 8, 9, 12, 16, 20];

/** Factor for the circuits of a group. Table 4C1. */
export const groupFactors: Readonly<Record<string, Steps>> = {
  bunched: { upTo: circuits, cells: [1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5, 0.45, 0.41, 0.38] },
  'single-layer-wall': { upTo: circuits, cells: [1, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.7, 0.7, 0.7, 0.7] },
};

/** Factor for a length in thermal insulation, m. Table 52.2. */
export const insulationFactors: Steps = { upTo: [0.05, 0.1, 0.2, 0.4, 0.5], cells: [0.88, 0.78, 0.63, 0.51, 0.5] };

/** Resistance of copper conductors at 20 °C, mΩ/m. IEC 60228, class 2. */
export const resistances = bySize(12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727).set(1, 18.1);

/** Protective conductor in flat twin and earth, mm². BS 6004. */
export const flatProtective = bySize(1, 1.5, 1.5, 2.5, 4, 6);

/** Resistance of the armour at 20 °C by the number of cores, mΩ/m. BS 5467. */
export const armour: Readonly<Record<number, BySize>> = {
  2: bySize(10.2, 8.8, 7.9, 7, 6, 3.7, 3.7),
  3: bySize(9.5, 8.2, 7.5, 6.7, 4, 3.5, 2.5),
};

/** Energy let through by circuit-breakers of class 3: type, breaking capacity, then rating, A²s. EN 60898-1. */
export const classThree: Readonly<Record<string, Readonly<Record<number, Steps>>>> = {
  B: {
    3000: { upTo: [16, 32, 40], cells: [15_000, 18_000, 21_600] },
    4500: { upTo: [16, 32, 40], cells: [25_000, 32_000, 38_400] },
    6000: { upTo: [16, 32, 40], cells: [35_000, 45_000, 54_000] },
    10000: { upTo: [16, 32, 40], cells: [70_000, 90_000, 108_000] },
  },
  C: {
    3000: { upTo: [16, 32, 40], cells: [18_000, 22_000, 26_400] },
    4500: { upTo: [16, 32, 40], cells: [30_000, 39_000, 46_800] },
    6000: { upTo: [16, 32, 40], cells: [42_000, 55_000, 66_000] },
    10000: { upTo: [16, 32, 40], cells: [84_000, 110_000, 132_000] },
  },
};

/** Main bonding conductor under PME by the neutral of the supply, mm². Table 54.8. */
export const bondingAreas: Steps = { upTo: [35, 50, 95, 150, 2000], cells: [10, 16, 25, 35, 50] };

/** Edges of the instantaneous trip in multiples of the rated current. EN 60898-1 Table 7. */
export const tripBands = { B: [3, 5], C: [5, 10], D: [10, 20] } as const;

/** Largest break time from once, twice and five times the rated residual current on, s. EN 61008-1. */
export const breakTimes = { general: [0.3, 0.15, 0.04], selective: [0.5, 0.2, 0.15] } as const;

/** Smooth direct current with which a residual current device works, A. EN 61008-1, EN 62423. */
export const smoothWithstand = { AC: 0, A: 0.006, F: 0.01 } as const;

/** Factor k for copper from the temperatures at the start and the end of a fault. IEC 60364-5-54 Annex A. */
const copper = (initial: number, final: number) => 226 * Math.sqrt(Math.log((234.5 + final) / (234.5 + initial)));

/** Conductor temperature in operation, °C, and k up to the end of a fault. Tables 43.1 and 54.3. */
export const insulations = {
  'thermoplastic-70': { operating: 70, k: copper(70, 160) },
  'thermosetting-90': { operating: 90, k: copper(90, 250) },
} as const;

/** Reference methods that already contain thermal insulation. */
export const containInsulation: ReadonlySet<string> = new Set(['103']);

/** Reference methods beside insulation on one side: a length that it surrounds counts by what the method has not yet taken. */
export const besideInsulation: ReadonlySet<string> = new Set(['A', '100', '101', '102']);
