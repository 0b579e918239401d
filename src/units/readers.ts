import type * as Q from './quantity.js';

/** Milliamperes in a current. */
export const inMilliamperes = (value: Q.Amperes): number => value * 1e3;
/** Kiloamperes in a current. */
export const inKiloamperes = (value: Q.Amperes): number => value / 1e3;
/** Milliohms in an impedance. */
export const inMilliohms = (value: Q.Ohms): number => value * 1e3;
/** Megohms in a resistance. */
export const inMegohms = (value: Q.Ohms): number => value / 1e6;
/** Milliohms per metre in an impedance per length. */
export const inMilliohmsPerMetre = (value: Q.OhmsPerMetre): number => value * 1e3;
/** Millivolts per ampere and metre in a tabulated drop. */
export const inMillivoltsPerAmpereMetre = (value: Q.VoltsPerAmpereMetre): number => value * 1e3;
/** Kilometres in a length. */
export const inKilometres = (value: Q.Metres): number => value / 1e3;
/** Kilowatts in an active power. */
export const inKilowatts = (value: Q.Watts): number => value / 1e3;
/** Kilovolt-amperes in an apparent power. */
export const inKilovoltAmperes = (value: Q.VoltAmperes): number => value / 1e3;
/** Kilowatt-hours in an energy. */
export const inKilowattHours = (value: Q.WattHours): number => value / 1e3;
/** Milliseconds in a time. */
export const inMilliseconds = (value: Q.Seconds): number => value * 1e3;
/** Minutes in a time. */
export const inMinutes = (value: Q.Seconds): number => value / 60;
/** Hours in a time. */
export const inHours = (value: Q.Seconds): number => value / 3600;
/** Percent in a ratio. */
export const inPercent = (value: Q.Ratio): number => value * 100;
