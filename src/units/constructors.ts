import { CalculationError } from './error.js';
import type * as Q from './quantity.js';

/**
 * The number as a quantity of this unit.
 * @param value any finite number in the unit
 * @param unit the canonical unit, such as `'A'`
 * @throws CalculationError `not-finite` for NaN and infinities
 */
export function quantity<const U extends string>(value: number, unit: U): Q.Quantity<U> {
  if (!Number.isFinite(value))
    throw new CalculationError('not-finite', `${value} ${unit} is not a quantity`, { unit, value });
  return value as Q.Quantity<U>;
}

// Division by a power of ten is correctly rounded where multiplication by its inverse is not: 7.41 mΩ/m is 0.00741.

/** Current from a number of amperes. */
export const amperes = (value: number): Q.Amperes => quantity(value, 'A');
/** Current, A, from a number of milliamperes. */
export const milliamperes = (value: number): Q.Amperes => quantity(value / 1e3, 'A');
/** Current, A, from a number of kiloamperes. */
export const kiloamperes = (value: number): Q.Amperes => quantity(value * 1e3, 'A');
/** Voltage from a number of volts. */
export const volts = (value: number): Q.Volts => quantity(value, 'V');
/** Voltage, V, from a number of millivolts. */
export const millivolts = (value: number): Q.Volts => quantity(value / 1e3, 'V');
/** Voltage, V, from a number of kilovolts. */
export const kilovolts = (value: number): Q.Volts => quantity(value * 1e3, 'V');
/** Impedance from a number of ohms. */
export const ohms = (value: number): Q.Ohms => quantity(value, 'Ω');
/** Impedance, Ω, from a number of milliohms. */
export const milliohms = (value: number): Q.Ohms => quantity(value / 1e3, 'Ω');
/** Resistance, Ω, from a number of megohms. */
export const megohms = (value: number): Q.Ohms => quantity(value * 1e6, 'Ω');
/** Impedance per length from a number of ohms per metre. */
export const ohmsPerMetre = (value: number): Q.OhmsPerMetre => quantity(value, 'Ω/m');
/** Impedance per length, Ω/m, from a number of milliohms per metre (the same figure in ohms per kilometre). */
export const milliohmsPerMetre = (value: number): Q.OhmsPerMetre => quantity(value / 1e3, 'Ω/m');
/** Tabulated drop, V/(A·m), from a number of volts per ampere and metre. */
export const voltsPerAmpereMetre = (value: number): Q.VoltsPerAmpereMetre => quantity(value, 'V/(A·m)');
/** Tabulated drop, V/(A·m), from a number of millivolts per ampere and metre, as tables print it. */
export const millivoltsPerAmpereMetre = (value: number): Q.VoltsPerAmpereMetre => quantity(value / 1e3, 'V/(A·m)');
/** Length from a number of metres. */
export const metres = (value: number): Q.Metres => quantity(value, 'm');
/** Length, m, from a number of kilometres. */
export const kilometres = (value: number): Q.Metres => quantity(value * 1e3, 'm');
/** Small dimension from a number of millimetres. */
export const millimetres = (value: number): Q.Millimetres => quantity(value, 'mm');
/** Conductor cross-section from a number of square millimetres. */
export const squareMillimetres = (value: number): Q.SquareMillimetres => quantity(value, 'mm²');
/** Area from a number of square metres. */
export const squareMetres = (value: number): Q.SquareMetres => quantity(value, 'm²');
/** Active power from a number of watts. */
export const watts = (value: number): Q.Watts => quantity(value, 'W');
/** Active power, W, from a number of kilowatts. */
export const kilowatts = (value: number): Q.Watts => quantity(value * 1e3, 'W');
/** Apparent power from a number of volt-amperes. */
export const voltAmperes = (value: number): Q.VoltAmperes => quantity(value, 'VA');
/** Apparent power, VA, from a number of kilovolt-amperes. */
export const kilovoltAmperes = (value: number): Q.VoltAmperes => quantity(value * 1e3, 'VA');
/** Reactive power from a number of vars. */
export const vars = (value: number): Q.Vars => quantity(value, 'var');
/** Energy from a number of watt-hours. */
export const wattHours = (value: number): Q.WattHours => quantity(value, 'Wh');
/** Energy, Wh, from a number of kilowatt-hours. */
export const kilowattHours = (value: number): Q.WattHours => quantity(value * 1e3, 'Wh');
/** Temperature from a number of degrees Celsius. */
export const celsius = (value: number): Q.Celsius => quantity(value, '°C');
/** Temperature difference from a number of kelvins. */
export const kelvins = (value: number): Q.Kelvins => quantity(value, 'K');
/** Time from a number of seconds. */
export const seconds = (value: number): Q.Seconds => quantity(value, 's');
/** Time, s, from a number of milliseconds. */
export const milliseconds = (value: number): Q.Seconds => quantity(value / 1e3, 's');
/** Time, s, from a number of minutes. */
export const minutes = (value: number): Q.Seconds => quantity(value * 60, 's');
/** Time, s, from a number of hours. */
export const hours = (value: number): Q.Seconds => quantity(value * 3600, 's');
/** Time from a number of days. */
export const days = (value: number): Q.Days => quantity(value, 'd');
/** Let-through energy from a number of ampere-squared seconds. */
export const ampereSquaredSeconds = (value: number): Q.AmpereSquaredSeconds => quantity(value, 'A²s');
/** Thermal resistivity from a number of kelvin-metres per watt. */
export const kelvinMetresPerWatt = (value: number): Q.KelvinMetresPerWatt => quantity(value, 'K·m/W');
/** Heat per length from a number of watts per metre. */
export const wattsPerMetre = (value: number): Q.WattsPerMetre => quantity(value, 'W/m');
/** Soil resistivity from a number of ohm-metres. */
export const ohmMetres = (value: number): Q.OhmMetres => quantity(value, 'Ω·m');
/** Ratio, factor or count from a plain number. */
export const ratio = (value: number): Q.Ratio => quantity(value, '1');
/** Ratio from a number of percent. */
export const percent = (value: number): Q.Ratio => quantity(value / 100, '1');
/** Angle from a number of degrees. */
export const degrees = (value: number): Q.Degrees => quantity(value, '°');
/** Frequency from a number of hertz. */
export const hertz = (value: number): Q.Hertz => quantity(value, 'Hz');
/** Factor k of the adiabatic equation from its number in A·√s/mm². */
export const adiabaticFactor = (value: number): Q.AdiabaticFactor => quantity(value, 'A·√s/mm²');
/** Volumetric heat capacity from a number of joules per kelvin and cubic millimetre. */
export const heatCapacity = (value: number): Q.HeatCapacity => quantity(value, 'J/(K·mm³)');
/** Conductor resistivity from a number of ohm-millimetres. */
export const ohmMillimetres = (value: number): Q.OhmMillimetres => quantity(value, 'Ω·mm');
/** Temperature coefficient from a number per kelvin. */
export const perKelvin = (value: number): Q.PerKelvin => quantity(value, '1/K');
