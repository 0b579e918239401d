import {
  invalidInput,
  type Metres,
  type Millimetres,
  type Problem,
  type Ratio,
  type Seconds,
  type SquareMetresPerSecond,
} from '../../../units/index.js';
import { besselK, stepFrom } from './bessel.js';
import { exponentialIntegral } from './exponential-integral.js';

/** A neighbour of the same losses at all times. @inline */
export interface ThermalNeighbour {
  /** Distance of the axes, m, above 0. */
  readonly distance: Metres;
  /** Distance from its image above the ground, m; more than the distance. */
  readonly imageDistance: Metres;
}

/**
 * What a cable stores of its heat itself, in two parts: conductors with their share of the insulation, and all that is
 * outside, as far as the soil. @inline
 */
export interface CableStore {
  /** Thermal resistance between the parts, K·m/W, above 0. */
  readonly innerResistance: number;
  /** Thermal resistance between the outer part and the soil, K·m/W, 0 and up. */
  readonly outerResistance: number;
  /** Heat capacity per length of the inner part, J/(K·m), 0 and up. */
  readonly innerCapacity: number;
  /** Heat capacity per length of the outer part, J/(K·m), 0 and up. */
  readonly outerCapacity: number;
}

/** A cable or duct in the ground, as far as the course of its temperature in time is concerned. @inline */
export interface BuriedBody {
  /** Outer diameter of the cable, or of its duct, mm. */
  readonly diameter: Millimetres;
  /** Depth of its axis, m; more than its diameter. */
  readonly depth: Metres;
  /** Thermal diffusivity of the soil, m²/s. */
  readonly diffusivity: SquareMetresPerSecond;
  /** Share of the rise of the conductor that lies in the soil under a steady load, 1, 0 to 1. */
  readonly soilShare: Ratio;
  /** Others of the same losses. */
  readonly neighbours?: readonly ThermalNeighbour[];
  /**
   * What the cable stores itself. Without it the conductor follows its surface at once, and the cable counts as soil inside,
   * as IEC 60853-1 has it.
   */
  readonly store?: CableStore;
}

const finite = (value: unknown, least: number, open = false): boolean =>
  Number.isFinite(value) && (open ? (value as number) > least : (value as number) >= least);

/** @internal Everything that is wrong with a body. */
export function bodyProblems(body: BuriedBody, at: Problem['path'] = []): readonly Problem[] {
  if (typeof body !== 'object' || body === null) return [{ path: at, message: 'is no cable in the ground' }];
  const problems: Problem[] = [];
  const wrong = (when: boolean, path: Problem['path'], message: string) => {
    if (when) problems.push({ path: [...at, ...path], message });
  };
  const { diameter, depth, diffusivity, soilShare, neighbours, store } = body;
  wrong(!finite(diameter, 0, true), ['diameter'], 'must be above 0 mm');
  wrong(!(finite(depth, 0, true) && depth * 1000 > diameter), ['depth'], 'must be more than the diameter');
  wrong(!finite(diffusivity, 0, true), ['diffusivity'], 'must be above 0 m²/s');
  wrong(!(finite(soilShare, 0) && soilShare <= 1), ['soilShare'], 'must be from 0 to 1');
  for (const [i, n] of (neighbours ?? []).entries())
    wrong(
      !(finite(n?.distance, 0, true) && finite(n.imageDistance, 0, true) && n.imageDistance > n.distance),
      ['neighbours', i],
      'must be closer than its image, and not at the same place',
    );
  if (store) {
    wrong(!(soilShare < 1), ['soilShare'], 'must be below 1 where the cable stores heat');
    wrong(!finite(store.innerResistance, 0, true), ['store', 'innerResistance'], 'must be above 0 K·m/W');
    for (const name of ['outerResistance', 'innerCapacity', 'outerCapacity'] as const)
      wrong(!finite(store[name], 0), ['store', name], 'must be finite, from 0');
  }
  return problems;
}

/** @internal Refuses what is wrong, all at once. */
export function refuse(problems: readonly Problem[]): void {
  if (problems.length > 0) throw invalidInput('a cable in the ground', problems);
}

/** @internal Share of its final rise that the soil around it has reached at the surface of the body: heat from a line. */
export function soilAttained({ diameter, depth, diffusivity, neighbours = [] }: BuriedBody, time: number): number {
  if (time <= 0) return 0;
  const all = [{ distance: diameter / 2000, imageDistance: 2 * depth }, ...neighbours];
  const of = (distance: number) => exponentialIntegral((distance * distance) / (4 * diffusivity * time));
  let now = 0;
  let last = 0;
  for (const { distance, imageDistance } of all) {
    now += of(distance) - of(imageDistance);
    last += 2 * Math.log(imageDistance / distance);
  }
  return now / last;
}

/** Thermal impedance of the soil at a rate, over its steady resistance: heat from the surface of the body, not its axis. */
function soilImpedance({ diameter, depth, diffusivity, neighbours = [] }: BuriedBody, rate: number): number {
  const q = Math.sqrt(rate / diffusivity);
  const radius = diameter / 2000;
  const x = q * radius;
  const all = [{ distance: radius, imageDistance: 2 * depth }, ...neighbours];
  // over that of the surface, whose factor e^x goes out
  const of = (distance: number) => besselK(0, q * distance) * Math.exp(x - q * distance);
  const now = all.reduce((sum, n) => sum + of(n.distance) - of(n.imageDistance), 0) / (x * besselK(1, x));
  return now / all.reduce((sum, n) => sum + Math.log(n.imageDistance / n.distance), 0);
}

/** @internal Share of its final rise that the conductor has reached. */
export function conductorAttained(body: BuriedBody, time: number): number {
  const { soilShare: k, store } = body;
  if (time <= 0) return 0;
  if (!store) return 1 - k + k * soilAttained(body, time);
  const { innerResistance, outerResistance, innerCapacity, outerCapacity } = store;
  const inside = innerResistance + outerResistance;
  const soil = (inside * k) / (1 - k);
  const impedance = (rate: number) => {
    const outer = rate * outerCapacity + 1 / (outerResistance + soil * soilImpedance(body, rate));
    return 1 / (rate * innerCapacity + 1 / (innerResistance + 1 / outer));
  };
  return Math.min(1, stepFrom(impedance, time) / (inside + soil));
}

/** A body and the time since the load was switched on. @inline */
export interface StepInput {
  readonly body: BuriedBody;
  /** Time since the load came on, s, 0 and up. */
  readonly time: Seconds;
}
