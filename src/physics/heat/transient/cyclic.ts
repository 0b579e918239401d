import { formula, moving, multiplied, procedure } from '../../../core/index.js';
import type { Problem } from '../../../units/index.js';
import { type BuriedBody, bodyProblems, conductorAttained, refuse, soilAttained } from './buried-body.js';

const HOUR = 3600;

/** The load of a day and the cable that carries it. */
export interface CyclicLoad {
  readonly body: BuriedBody;
  /** Load in each hour of the day, of any unit: its shape alone counts. 24 numbers from 0, not all of them 0. */
  readonly load: readonly number[];
}

/** @internal What is wrong with the load of a day. */
export function loadProblems(load: readonly number[]): readonly Problem[] {
  if (!Array.isArray(load) || load.length !== 24) return [{ path: ['load'], message: 'must be 24 numbers' }];
  if (!load.every((v) => Number.isFinite(v) && v >= 0)) return [{ path: ['load'], message: 'must be numbers from 0' }];
  return load.some((v) => v > 0) ? [] : [{ path: ['load'], message: 'has no load in it' }];
}

/** @internal Squares of the loads over that of the largest, hour by hour. */
export function lossOrdinates(load: readonly number[]): readonly number[] {
  const peak = Math.max(...load);
  return load.map((v) => (v / peak) ** 2);
}
const mean = (all: readonly number[]) => all.reduce((a, b) => a + b, 0) / all.length;

/** The response at each hour: beyond ten days from the ends of the days, by a parabola between them. */
function responses(hours: number, response: (seconds: number) => number): readonly number[] {
  const dense = Math.min(hours, 240);
  const at = Array.from({ length: dense + 1 }, (_, i) => (i === 0 ? 0 : response(i * HOUR)));
  for (let from = dense; from < hours; from += 24) {
    const first = at[from] as number;
    const last = response((from + 24) * HOUR);
    const bend = (last - 2 * first + (at[from - 24] as number)) / 2;
    for (let i = 1; i <= 24; i++) at.push(first + (last - first - bend) * (i / 24) + bend * (i / 24) ** 2);
  }
  return at;
}

/**
 * @internal What a response makes of a periodic load at the end of each hour of the day: what the hours before leave, as far
 * back as is asked for, and the mean of all before.
 */
export function risesOf(
  losses: readonly number[],
  hours: number,
  response: (seconds: number) => number,
): readonly number[] {
  const mu = mean(losses);
  const at = responses(hours, response);
  const steps = Array.from({ length: hours }, (_, i) => (at[i + 1] as number) - (at[i] as number));
  const rest = mu * (1 - (at[hours] as number));
  return losses.map((_, now) =>
    steps.reduce((sum, step, i) => sum + step * (losses[(((now - i) % 24) + 24) % 24] as number), rest),
  );
}

/** @internal Hours that are counted one by one: a hundred days. */
export const ALL_HOURS = 2400;

/** Mean square of the load of a day over the square of its peak. IEC 60853-1. */
export const lossLoadFactorOf = /* @__PURE__ */ procedure({
  id: 'loss-load-factor',
  title: 'Loss-load factor of a day',
  output: 'lossLoadFactor',
  method: 'mean of the squares of the hourly loads over the square of the largest',
  source: { document: 'IEC 60853-1', clause: 'loss-load factor', provenance: 'definition' },
  run: (load: readonly number[]) => {
    refuse(loadProblems(load));
    return mean(lossOrdinates(load));
  },
});

/** Loss-load factor by a rule from the load factor, where the course of the load is not known. Practice of network planning. */
export const lossLoadFactorByRule = /* @__PURE__ */ moving({
  id: 'loss-load-factor-by-rule',
  title: 'Loss-load factor by a rule from the load factor',
  moves: { loadFactor: 1, loadFactorWeight: 1 },
  output: 'lossLoadFactor',
  expression: 'loadFactorWeight * loadFactor + (1 - loadFactorWeight) * loadFactor^2',
  compute: ({ loadFactor, loadFactorWeight: w }) => w * loadFactor + (1 - w) * loadFactor * loadFactor,
  source: {
    document: 'Practice of network planning',
    provenance: 'memory',
    note: 'weights of 0.3, 0.2 and 0.15 are in use; too low for blocks of charging, where the mean of the squares lies near the load factor',
  },
});

/**
 * Cyclic rating factor of buried cables: the last six hours count one by one, all before by their mean. The cable's own
 * heat is left out. IEC 60853-1.
 */
export const cyclicFactorOf = /* @__PURE__ */ procedure({
  id: 'cyclic-factor',
  title: 'Cyclic rating factor of a buried cable',
  output: 'cyclicFactor',
  method: 'six hourly losses before each hour of the day and the mean of all before; the smallest factor of the day',
  source: {
    document: 'IEC 60853-1',
    provenance: 'memory',
    note: 'neighbours one by one where the standard takes a diameter for all of them; within 2 % below a sum over weeks',
  },
  run: ({ body, load }: CyclicLoad) => {
    refuse([...bodyProblems(body, ['body']), ...loadProblems(load)]);
    const k = body.soilShare;
    const response = (t: number) => 1 - k + k * soilAttained(body, t);
    return 1 / Math.sqrt(Math.max(...risesOf(lossOrdinates(load), 6, response)));
  },
});

/** Cyclic rating factor with every hour of a hundred days counted and the cable's own heat in it. Heat conduction. */
export const superposedCyclicFactor = /* @__PURE__ */ procedure({
  id: 'cyclic-factor-superposed',
  title: 'Cyclic rating factor of a buried cable, every hour counted',
  output: 'cyclicFactor',
  method:
    'hourly losses of a hundred days before each hour of the day, each by its step response, and the mean of all before',
  source: { document: 'Heat conduction', clause: 'superposition of steps', provenance: 'derived' },
  run: ({ body, load }: CyclicLoad) => {
    refuse([...bodyProblems(body, ['body']), ...loadProblems(load)]);
    return 1 / Math.sqrt(Math.max(...risesOf(lossOrdinates(load), ALL_HOURS, (t) => conductorAttained(body, t))));
  },
});

/** Peak current of a daily cycle that a buried cable carries. IEC 60853-1. */
export const cyclicCapacityOf = /* @__PURE__ */ multiplied({
  id: 'cyclic-capacity',
  title: 'Peak current of a daily cycle',
  times: ['computedCapacity', 'cyclicFactor'],
  output: 'cyclicCapacity',
  source: { document: 'IEC 60853-1', provenance: 'memory' },
});

/** Diameter that stands for the neighbours of a group of buried cables. IEC 60853-1. */
export const groupDiameterOf = /* @__PURE__ */ formula({
  id: 'group-diameter',
  title: 'Diameter that stands for the neighbours of a group',
  inputs: ['burialDepth', 'distanceProduct', 'circuitsInGroup'],
  output: 'groupDiameter',
  expression: '4 * burialDepth / distanceProduct^(1 / (circuitsInGroup - 1))',
  compute: ({ burialDepth, distanceProduct, circuitsInGroup }) =>
    (4 * burialDepth) / distanceProduct ** (1 / (circuitsInGroup - 1)),
  valid: { circuitsInGroup: { least: 2 }, distanceProduct: { least: 1 } },
  source: { document: 'IEC 60853-1', clause: 'groups of cables', provenance: 'memory' },
});

/** Heat capacity of a volume of soil from its density and moisture. IEC 60853-1. */
export const soilHeatCapacityOf = /* @__PURE__ */ moving({
  id: 'soil-heat-capacity',
  title: 'Heat capacity of a volume of soil',
  moves: { dryDensity: 1, soilMoisture: 1 },
  output: 'soilHeatCapacity',
  expression: 'one * dryDensity * (0.82 + 4.2 * soilMoisture)',
  constants: { one: [0.001, 'J/(K·mm³)'] },
  compute: ({ dryDensity, soilMoisture }) => 0.001 * dryDensity * (0.82 + 4.2 * soilMoisture),
  source: { document: 'IEC 60853-1', clause: 'estimate of the diffusivity', provenance: 'memory' },
});

/** Thermal diffusivity of the soil from its resistivity and heat capacity. Heat conduction. */
export const soilDiffusivityOf = /* @__PURE__ */ moving({
  id: 'soil-diffusivity',
  title: 'Thermal diffusivity of the soil',
  moves: { soilResistivity: -1, soilHeatCapacity: -1 },
  output: 'soilDiffusivity',
  expression: '1 / (soilResistivity * soilHeatCapacity)',
  compute: ({ soilResistivity, soilHeatCapacity }) => 1e-9 / (soilResistivity * soilHeatCapacity),
  source: { document: 'Heat conduction', provenance: 'definition' },
});

/** Current for a limited time after a steady load, at which the conductor just reaches the temperature permitted. IEC 60853-2. */
export const emergencyFactorOf = /* @__PURE__ */ formula({
  id: 'emergency-factor',
  title: 'Current for a limited time over the steady capacity',
  inputs: ['startLoad', 'startResistanceRatio', 'ratedResistanceRatio', 'riseRatio', 'attainment'],
  output: 'emergencyFactor',
  expression:
    'sqrt(startLoad^2 * startResistanceRatio + ratedResistanceRatio * (riseRatio - startLoad^2 * startResistanceRatio / ratedResistanceRatio) / attainment)',
  compute: ({ startLoad: h, startResistanceRatio: a, ratedResistanceRatio: b, riseRatio, attainment }) =>
    Math.sqrt(h * h * a + (b * (riseRatio - (h * h * a) / b)) / attainment),
  valid: { attainment: { above: 0, most: 1 } },
  source: { document: 'IEC 60853-2', clause: 'emergency rating', provenance: 'memory' },
});
