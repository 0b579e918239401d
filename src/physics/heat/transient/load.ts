import { evaluate, procedure, type Vocabulary } from '../../../core/index.js';
import {
  type Amperes,
  amperes,
  CalculationError,
  type Celsius,
  type PerKelvin,
  type Problem,
  ratio,
  type Seconds,
  type SquareMetresPerSecond,
  squareMetresPerSecond,
} from '../../../units/index.js';
import type { HeatCase } from '../cable.js';
import { temperatureCoefficients } from '../tables/temperature-coefficients.js';
import { buriedState } from './buried.js';
import { type BuriedBody, bodyProblems, conductorAttained, refuse } from './buried-body.js';
import {
  cyclicCapacityOf,
  cyclicFactorOf,
  emergencyFactorOf,
  lossLoadFactorOf,
  superposedCyclicFactor,
} from './cyclic.js';

/** A heat balance of a cable in the ground or in a buried duct. */
export type BuriedCase = HeatCase & { readonly surroundings: { readonly where: 'ground' | 'duct' } };

/** A cable in the ground as the course of its temperature is reckoned from: plain data. */
export interface BuriedCable {
  readonly body: BuriedBody;
  /** Current that it carries for ever, by its heat balance, A. */
  readonly steadyCapacity: Amperes;
  /** Temperature of the conductor at that current, °C. */
  readonly operatingTemperature: Celsius;
  /** Temperature of the ground without the cables, °C. */
  readonly groundTemperature: Celsius;
  /** Change of the resistance of the conductor with its temperature, of that at 20 °C, 1/K. */
  readonly temperatureCoefficient: PerKelvin;
  /** What a user of the figures has to know. */
  readonly cautions: readonly string[];
}

const cautions = [
  'Computed for a load that varies: an estimate beside the tables. The verdict by the tabulated capacity of the wiring code stands, whatever is found here.',
  'Every day has the same load, and the neighbours have it at the same hours.',
] as const;

/**
 * A cable in the ground for loads that vary: its steady heat balance (IEC 60287), the share of its rise that lies in the
 * soil, and what it stores itself.
 * @param heat cable, loaded conductors and surroundings in the ground
 * @param diffusivity thermal diffusivity of the soil, m²/s, above 0; 0.5·10⁻⁶ by IEC 60853-1 where nothing is known
 * @returns plain data for the procedures of cyclic load and overload
 * @throws CalculationError as `heatBalance` does, `invalid-input` for a diffusivity that cannot be
 * @example
 * ```ts
 * import { celsius, hertz, kelvinMetresPerWatt, metres, millimetres, ohmsPerMetre } from 'ohmwright';
 * import { buriedCable } from 'ohmwright/heat';
 *
 * const feeder = buriedCable({
 *   cable: {
 *     metal: 'copper',
 *     resistancePerMetre20: ohmsPerMetre(0.000524),
 *     shape: 'round',
 *     conductorDiameter: millimetres(6.9),
 *     insulation: { material: 'XLPE', thickness: millimetres(0.9) },
 *     cores: 4,
 *     laidUpDiameter: millimetres(21),
 *     sheath: { material: 'PVC', thickness: millimetres(1.8) },
 *     overallDiameter: millimetres(24.6),
 *   },
 *   loadedConductors: 3,
 *   surroundings: {
 *     where: 'ground',
 *     groundTemperature: celsius(15),
 *     soilResistivity: kelvinMetresPerWatt(1.2),
 *     burialDepth: metres(0.6),
 *   },
 *   operatingTemperature: celsius(90),
 *   frequency: hertz(50),
 * });
 * Math.round(feeder.steadyCapacity); // => 182
 * feeder.body.soilShare; // ≈ 0.78
 * ```
 */
export function buriedCable(
  heat: BuriedCase,
  diffusivity: SquareMetresPerSecond = squareMetresPerSecond(5e-7),
): BuriedCable {
  const { balance, body } = buriedState(heat, diffusivity);
  refuse(bodyProblems(body));
  return {
    body,
    steadyCapacity: balance.computedCapacity,
    operatingTemperature: heat.operatingTemperature,
    groundTemperature: heat.surroundings.groundTemperature,
    temperatureCoefficient: temperatureCoefficients.get({ metal: heat.cable.metal }),
    cautions: [...balance.cautions, ...cautions],
  };
}

/** What a buried cable carries in a daily cycle. @inline */
export interface CyclicRating {
  /** Peak of the cycle over the steady capacity by IEC 60853-1, 1. */
  readonly cyclicFactor: Vocabulary['cyclicFactor'];
  /** The same with every hour counted and what the cable stores itself, 1. */
  readonly superposedFactor: Vocabulary['cyclicFactor'];
  /** Peak current that the cable carries in this cycle by the smaller of the two, A. */
  readonly cyclicCapacity: Amperes;
  /** Mean of the squared load over the square of its peak, 1. */
  readonly lossLoadFactor: Vocabulary['lossLoadFactor'];
  /** What a user of the figures has to know. */
  readonly cautions: readonly string[];
}

/**
 * What a buried cable carries in a daily cycle, such as a night's block of charging, by IEC 60853-1 and with every hour
 * counted. An estimate: the tabulated capacity of the wiring code goes before it.
 * @param cable the cable, from `buriedCable`
 * @param load load in each hour of the day: 24 numbers from 0, of any unit
 * @returns factor and peak current, A, with what a user has to know
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { celsius, metres, millimetres, perKelvin, ratio, amperes, squareMetresPerSecond } from 'ohmwright';
 * import { cyclicRating } from 'ohmwright/heat';
 *
 * const cable = {
 *   body: {
 *     diameter: millimetres(45),
 *     depth: metres(0.6),
 *     diffusivity: squareMetresPerSecond(5e-7),
 *     soilShare: ratio(0.8),
 *   },
 *   steadyCapacity: amperes(200),
 *   operatingTemperature: celsius(90),
 *   groundTemperature: celsius(15),
 *   temperatureCoefficient: perKelvin(0.00393),
 *   cautions: [],
 * };
 * const night = Array.from({ length: 24 }, (_, hour) => (hour < 7 ? 1 : 0.15));
 * const { cyclicFactor, cyclicCapacity } = cyclicRating(cable, night);
 * cyclicFactor; // ≈ 1.1815
 * cyclicCapacity; // ≈ 236.3
 * ```
 */
export function cyclicRating(cable: BuriedCable, load: readonly number[]): CyclicRating {
  const cyclicFactor = cyclicFactorOf({ body: cable.body, load });
  const superposedFactor = superposedCyclicFactor({ body: cable.body, load });
  const factor = ratio(Math.min(cyclicFactor, superposedFactor));
  return {
    cyclicFactor,
    superposedFactor,
    cyclicCapacity: evaluate(cyclicCapacityOf, { computedCapacity: cable.steadyCapacity, cyclicFactor: factor }),
    lossLoadFactor: lossLoadFactorOf(load),
    cautions: cable.cautions,
  };
}

/** A current and how long it flows. @inline */
export interface LoadPeriod {
  /** Current, A, 0 and up. */
  readonly current: Amperes;
  /** How long, s, above 0. */
  readonly duration: Seconds;
}

/** Loads of a buried cable one after the other. */
export interface BuriedLoad {
  readonly cable: BuriedCable;
  /** Current that has flowed for ever before, A, 0 and up. */
  readonly before: Amperes;
  /** What follows. */
  readonly periods: readonly LoadPeriod[];
}

const number = (value: unknown, path: Problem['path'], open = false): readonly Problem[] =>
  Number.isFinite(value) && (open ? (value as number) > 0 : (value as number) >= 0)
    ? []
    : [{ path, message: open ? 'must be above 0' : 'must be from 0' }];

/** @internal What is wrong with a cable as plain data. */
export const cableProblems = (cable: BuriedCable): readonly Problem[] => [
  ...bodyProblems(cable?.body, ['cable', 'body']),
  ...number(cable?.steadyCapacity, ['cable', 'steadyCapacity'], true),
];

function loadProblems({ cable, before, periods }: BuriedLoad): readonly Problem[] {
  return [
    ...cableProblems(cable),
    ...number(before, ['before']),
    ...(Array.isArray(periods) ? periods : []).flatMap((p: LoadPeriod, i) => [
      ...number(p?.current, ['periods', i, 'current']),
      ...number(p?.duration, ['periods', i, 'duration'], true),
    ]),
  ];
}

/** @internal Temperature of the conductor at a share of the rise that its steady capacity makes, °C. */
export function temperatureAt(
  { groundTemperature: ground, operatingTemperature: hot, temperatureCoefficient: alpha }: BuriedCable,
  share: number,
): number {
  const rise = (hot - ground) * share;
  if (share <= 1) return ground + rise;
  // the whole rise grows with the resistance at its end: a straight line, which has no end where it is too steep
  const perKelvin = alpha / (1 + alpha * (hot - 20));
  const slope = 1 - rise * perKelvin;
  if (!(slope > 0))
    throw new CalculationError('no-solution', 'the temperature of the conductor has no bound under these loads', {
      method: 'temperature-after-load',
      values: { share, rise },
    });
  return (ground + rise * (1 - perKelvin * hot)) / slope;
}

/**
 * Temperature of the conductor of a buried cable at the end of loads that follow one another. IEC 60853-2, with the
 * resistance of the end taken for all the time where that is hotter than the steady temperature.
 */
export const temperatureAfterLoad = /* @__PURE__ */ procedure({
  id: 'temperature-after-load',
  title: 'Temperature of the conductor of a buried cable after loads',
  output: 'conductorTemperature',
  method: 'each change of the losses by its step response; the resistance is never taken as less than it is',
  source: { document: 'IEC 60853-2', clause: 'transient temperature', provenance: 'derived' },
  run: (input: BuriedLoad) => {
    refuse(loadProblems(input));
    const { cable, before, periods } = input;
    const loss = (current: number) => (current / cable.steadyCapacity) ** 2;
    let left = periods.reduce((sum, p) => sum + p.duration, 0);
    let last = loss(before);
    let share = last;
    for (const { current, duration } of periods) {
      share += (loss(current) - last) * conductorAttained(cable.body, left);
      last = loss(current);
      left -= duration;
    }
    return temperatureAt(cable, share);
  },
});

/** An overload of stated hours after a steady load. @inline */
export interface Overload {
  /** Steady current before, A, 0 to the steady capacity. */
  readonly before: Amperes;
  /** How long the overload lasts, s, above 0. */
  readonly duration: Seconds;
  /** Temperature that is permitted at its end, °C; that of the steady load where it is absent. */
  readonly finalTemperature?: Celsius;
}

/**
 * The current that brings a buried cable just to a temperature after a stated time, by IEC 60853-2. A wiring
 * code may know no emergency rating: for an installation the temperature of the steady load is the limit, which is the default.
 * @param cable the cable, from `buriedCable`
 * @param overload steady current before, A, and the time, s
 * @returns the current, A
 * @throws CalculationError `invalid-input` with everything that is wrong
 * @example
 * ```ts
 * import { amperes, celsius, metres, millimetres, perKelvin, ratio, seconds, squareMetresPerSecond } from 'ohmwright';
 * import { overloadCurrent } from 'ohmwright/heat';
 *
 * const cable = {
 *   body: {
 *     diameter: millimetres(60),
 *     depth: metres(0.8),
 *     diffusivity: squareMetresPerSecond(5e-7),
 *     soilShare: ratio(0.8),
 *   },
 *   steadyCapacity: amperes(200),
 *   operatingTemperature: celsius(90),
 *   groundTemperature: celsius(15),
 *   temperatureCoefficient: perKelvin(0.00393),
 *   cautions: [],
 * };
 * overloadCurrent(cable, { before: amperes(120), duration: seconds(4 * 3600) }); // ≈ 261.6
 * ```
 */
export function overloadCurrent(cable: BuriedCable, overload: Overload): Amperes {
  const { before, duration, finalTemperature = cable.operatingTemperature } = overload;
  const start = before / cable.steadyCapacity;
  const { groundTemperature: ground, operatingTemperature: hot, temperatureCoefficient: alpha } = cable;
  refuse([
    ...loadProblems({ cable, before, periods: [{ current: before, duration }] }),
    ...(start <= 1 ? [] : [{ path: ['before'], message: 'is more than the steady capacity' }]),
    ...(Number.isFinite(finalTemperature) && finalTemperature >= hot
      ? []
      : [{ path: ['finalTemperature'], message: 'is below that of the steady load' }]),
  ]);
  const resistance = (temperature: number) => 1 + alpha * (temperature - 20);
  const end = resistance(finalTemperature);
  const factor = evaluate(emergencyFactorOf, {
    startLoad: ratio(start),
    startResistanceRatio: ratio(resistance(ground + start * start * (hot - ground)) / end),
    ratedResistanceRatio: ratio(resistance(hot) / end),
    riseRatio: ratio((finalTemperature - ground) / (hot - ground)),
    attainment: ratio(conductorAttained(cable.body, duration)),
  });
  return amperes(cable.steadyCapacity * factor);
}
