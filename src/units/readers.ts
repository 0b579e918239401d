import type * as Q from './quantity.js';

/**
 * Milliamperes in a current.
 * @param value the current, A, any
 * @returns number of milliamperes
 * @example
 * ```ts
 * import { amperes, inMilliamperes } from 'ohmwright';
 *
 * inMilliamperes(amperes(0.03)); // => 30
 * ```
 */
export const inMilliamperes = (value: Q.Amperes): number => value * 1e3;
/**
 * Kiloamperes in a current.
 * @param value the current, A, any
 * @returns number of kiloamperes
 * @example
 * ```ts
 * import { amperes, inKiloamperes } from 'ohmwright';
 *
 * inKiloamperes(amperes(1200)); // => 1.2
 * ```
 */
export const inKiloamperes = (value: Q.Amperes): number => value / 1e3;
/**
 * Milliohms in an impedance.
 * @param value the impedance, Ω, any
 * @returns number of milliohms
 * @example
 * ```ts
 * import { inMilliohms, ohms } from 'ohmwright';
 *
 * inMilliohms(ohms(0.35)); // => 350
 * ```
 */
export const inMilliohms = (value: Q.Ohms): number => value * 1e3;
/**
 * Megohms in a resistance.
 * @param value the resistance, Ω, any
 * @returns number of megohms
 * @example
 * ```ts
 * import { inMegohms, ohms } from 'ohmwright';
 *
 * inMegohms(ohms(200_000_000)); // => 200
 * ```
 */
export const inMegohms = (value: Q.Ohms): number => value / 1e6;
/**
 * Milliohms per metre in an impedance per length.
 * @param value the impedance per length, Ω/m, any
 * @returns number of milliohms per metre
 * @example
 * ```ts
 * import { inMilliohmsPerMetre, ohmsPerMetre } from 'ohmwright';
 *
 * inMilliohmsPerMetre(ohmsPerMetre(0.00741)); // => 7.41
 * ```
 */
export const inMilliohmsPerMetre = (value: Q.OhmsPerMetre): number => value * 1e3;
/**
 * Millivolts per ampere and metre in a tabulated drop.
 * @param value the tabulated drop, V/(A·m), any
 * @returns number of millivolts per ampere and metre
 * @example
 * ```ts
 * import { inMillivoltsPerAmpereMetre, voltsPerAmpereMetre } from 'ohmwright';
 *
 * inMillivoltsPerAmpereMetre(voltsPerAmpereMetre(0.0073)); // => 7.3
 * ```
 */
export const inMillivoltsPerAmpereMetre = (value: Q.VoltsPerAmpereMetre): number => value * 1e3;
/**
 * Kilometres in a length.
 * @param value the length, m, any
 * @returns number of kilometres
 * @example
 * ```ts
 * import { inKilometres, metres } from 'ohmwright';
 *
 * inKilometres(metres(400)); // => 0.4
 * ```
 */
export const inKilometres = (value: Q.Metres): number => value / 1e3;
/**
 * Kilowatts in an active power.
 * @param value the active power, W, any
 * @returns number of kilowatts
 * @example
 * ```ts
 * import { inKilowatts, watts } from 'ohmwright';
 *
 * inKilowatts(watts(7400)); // => 7.4
 * ```
 */
export const inKilowatts = (value: Q.Watts): number => value / 1e3;
/**
 * Kilovolt-amperes in an apparent power.
 * @param value the apparent power, VA, any
 * @returns number of kilovolt-amperes
 * @example
 * ```ts
 * import { inKilovoltAmperes, voltAmperes } from 'ohmwright';
 *
 * inKilovoltAmperes(voltAmperes(500000)); // => 500
 * ```
 */
export const inKilovoltAmperes = (value: Q.VoltAmperes): number => value / 1e3;
/**
 * Kilowatt-hours in an energy.
 * @param value the energy, Wh, any
 * @returns number of kilowatt-hours
 * @example
 * ```ts
 * import { inKilowattHours, wattHours } from 'ohmwright';
 *
 * inKilowattHours(wattHours(40000)); // => 40
 * ```
 */
export const inKilowattHours = (value: Q.WattHours): number => value / 1e3;
/**
 * Milliseconds in a time.
 * @param value the time, s, any
 * @returns number of milliseconds
 * @example
 * ```ts
 * import { inMilliseconds, seconds } from 'ohmwright';
 *
 * inMilliseconds(seconds(0.04)); // => 40
 * ```
 */
export const inMilliseconds = (value: Q.Seconds): number => value * 1e3;
/**
 * Minutes in a time.
 * @param value the time, s, any
 * @returns number of minutes
 * @example
 * ```ts
 * import { inMinutes, seconds } from 'ohmwright';
 *
 * inMinutes(seconds(300)); // => 5
 * ```
 */
export const inMinutes = (value: Q.Seconds): number => value / 60;
/**
 * Hours in a time.
 * @param value the time, s, any
 * @returns number of hours
 * @example
 * ```ts
 * import { inHours, seconds } from 'ohmwright';
 *
 * inHours(seconds(28800)); // => 8
 * ```
 */
export const inHours = (value: Q.Seconds): number => value / 3600;
/**
 * Percent in a ratio.
 * @param value the ratio, a plain number, any
 * @returns the number before the percent sign
 * @example
 * ```ts
 * import { inPercent, ratio } from 'ohmwright';
 *
 * inPercent(ratio(0.05)); // => 5
 * ```
 */
export const inPercent = (value: Q.Ratio): number => value * 100;
