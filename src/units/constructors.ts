import { CalculationError, shown } from './error.js';
import type * as Q from './quantity.js';

/**
 * The number as a quantity of this unit.
 * @param value any finite number in the unit
 * @param unit the canonical unit, such as `'A'`
 * @returns the number, with the unit in its type
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { quantity } from 'ohmwright';
 *
 * quantity(32, 'A'); // => 32
 * quantity(Number.NaN, 'A'); // throws not-finite
 * ```
 */
export function quantity<const U extends string>(value: number, unit: U): Q.Quantity<U> {
  if (!Number.isFinite(value))
    throw new CalculationError(
      'not-finite',
      typeof value === 'number' ? `${value} ${unit} is not a quantity` : `${shown(value)} is no number`,
      { unit, value },
    );
  return value as Q.Quantity<U>;
}

// Division by a power of ten is correctly rounded where multiplication by its inverse is not: 7.41 mΩ/m is 0.00741.

/**
 * Current from a number of amperes.
 * @param value number of amperes, any finite number
 * @returns the quantity, A
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { amperes } from 'ohmwright';
 *
 * amperes(32); // => 32
 * ```
 */
export const amperes = (value: number): Q.Amperes => quantity(value, 'A');
/**
 * Current, A, from a number of milliamperes.
 * @param value number of milliamperes, any finite number
 * @returns the quantity, A
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { milliamperes } from 'ohmwright';
 *
 * milliamperes(30); // => 0.03
 * ```
 */
export const milliamperes = (value: number): Q.Amperes => quantity(value / 1e3, 'A');
/**
 * Current, A, from a number of kiloamperes.
 * @param value number of kiloamperes, any finite number
 * @returns the quantity, A
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { kiloamperes } from 'ohmwright';
 *
 * kiloamperes(1.2); // => 1200
 * ```
 */
export const kiloamperes = (value: number): Q.Amperes => quantity(value * 1e3, 'A');
/**
 * Voltage from a number of volts.
 * @param value number of volts, any finite number
 * @returns the quantity, V
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { volts } from 'ohmwright';
 *
 * volts(230); // => 230
 * ```
 */
export const volts = (value: number): Q.Volts => quantity(value, 'V');
/**
 * Voltage, V, from a number of millivolts.
 * @param value number of millivolts, any finite number
 * @returns the quantity, V
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { millivolts } from 'ohmwright';
 *
 * millivolts(730); // => 0.73
 * ```
 */
export const millivolts = (value: number): Q.Volts => quantity(value / 1e3, 'V');
/**
 * Voltage, V, from a number of kilovolts.
 * @param value number of kilovolts, any finite number
 * @returns the quantity, V
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { kilovolts } from 'ohmwright';
 *
 * kilovolts(11); // => 11000
 * ```
 */
export const kilovolts = (value: number): Q.Volts => quantity(value * 1e3, 'V');
/**
 * Impedance from a number of ohms.
 * @param value number of ohms, any finite number
 * @returns the quantity, Ω
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { ohms } from 'ohmwright';
 *
 * ohms(0.35); // => 0.35
 * ```
 */
export const ohms = (value: number): Q.Ohms => quantity(value, 'Ω');
/**
 * Impedance, Ω, from a number of milliohms.
 * @param value number of milliohms, any finite number
 * @returns the quantity, Ω
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { milliohms } from 'ohmwright';
 *
 * milliohms(350); // => 0.35
 * ```
 */
export const milliohms = (value: number): Q.Ohms => quantity(value / 1e3, 'Ω');
/**
 * Resistance, Ω, from a number of megohms.
 * @param value number of megohms, any finite number
 * @returns the quantity, Ω
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { megohms } from 'ohmwright';
 *
 * megohms(200); // => 200000000
 * ```
 */
export const megohms = (value: number): Q.Ohms => quantity(value * 1e6, 'Ω');
/**
 * Impedance per length from a number of ohms per metre.
 * @param value number of ohms per metre, any finite number
 * @returns the quantity, Ω/m
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { ohmsPerMetre } from 'ohmwright';
 *
 * ohmsPerMetre(0.00741); // => 0.00741
 * ```
 */
export const ohmsPerMetre = (value: number): Q.OhmsPerMetre => quantity(value, 'Ω/m');
/**
 * Impedance per length, Ω/m, from a number of milliohms per metre (the same figure in ohms per kilometre).
 * @param value number of milliohms per metre, any finite number
 * @returns the quantity, Ω/m
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { milliohmsPerMetre } from 'ohmwright';
 *
 * milliohmsPerMetre(7.41); // => 0.00741
 * ```
 */
export const milliohmsPerMetre = (value: number): Q.OhmsPerMetre => quantity(value / 1e3, 'Ω/m');
/**
 * Tabulated drop, V/(A·m), from a number of volts per ampere and metre.
 * @param value number of volts per ampere and metre, any finite number
 * @returns the quantity, V/(A·m)
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { voltsPerAmpereMetre } from 'ohmwright';
 *
 * voltsPerAmpereMetre(0.0073); // => 0.0073
 * ```
 */
export const voltsPerAmpereMetre = (value: number): Q.VoltsPerAmpereMetre => quantity(value, 'V/(A·m)');
/**
 * Tabulated drop, V/(A·m), from a number of millivolts per ampere and metre, as tables print it.
 * @param value number of millivolts per ampere and metre, any finite number
 * @returns the quantity, V/(A·m)
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { millivoltsPerAmpereMetre } from 'ohmwright';
 *
 * millivoltsPerAmpereMetre(7.3); // => 0.0073
 * ```
 */
export const millivoltsPerAmpereMetre = (value: number): Q.VoltsPerAmpereMetre => quantity(value / 1e3, 'V/(A·m)');
/**
 * Length from a number of metres.
 * @param value number of metres, any finite number
 * @returns the quantity, m
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { metres } from 'ohmwright';
 *
 * metres(25); // => 25
 * ```
 */
export const metres = (value: number): Q.Metres => quantity(value, 'm');
/**
 * Length, m, from a number of kilometres.
 * @param value number of kilometres, any finite number
 * @returns the quantity, m
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { kilometres } from 'ohmwright';
 *
 * kilometres(0.4); // => 400
 * ```
 */
export const kilometres = (value: number): Q.Metres => quantity(value * 1e3, 'm');
/**
 * Small dimension from a number of millimetres.
 * @param value number of millimetres, any finite number
 * @returns the quantity, mm
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { millimetres } from 'ohmwright';
 *
 * millimetres(16); // => 16
 * ```
 */
export const millimetres = (value: number): Q.Millimetres => quantity(value, 'mm');
/**
 * Conductor cross-section from a number of square millimetres.
 * @param value number of square millimetres, any finite number
 * @returns the quantity, mm²
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { squareMillimetres } from 'ohmwright';
 *
 * squareMillimetres(6); // => 6
 * ```
 */
export const squareMillimetres = (value: number): Q.SquareMillimetres => quantity(value, 'mm²');
/**
 * Area from a number of square metres.
 * @param value number of square metres, any finite number
 * @returns the quantity, m²
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { squareMetres } from 'ohmwright';
 *
 * squareMetres(0.5); // => 0.5
 * ```
 */
export const squareMetres = (value: number): Q.SquareMetres => quantity(value, 'm²');
/**
 * Active power from a number of watts.
 * @param value number of watts, any finite number
 * @returns the quantity, W
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { watts } from 'ohmwright';
 *
 * watts(7400); // => 7400
 * ```
 */
export const watts = (value: number): Q.Watts => quantity(value, 'W');
/**
 * Active power, W, from a number of kilowatts.
 * @param value number of kilowatts, any finite number
 * @returns the quantity, W
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { kilowatts } from 'ohmwright';
 *
 * kilowatts(7.4); // => 7400
 * ```
 */
export const kilowatts = (value: number): Q.Watts => quantity(value * 1e3, 'W');
/**
 * Apparent power from a number of volt-amperes.
 * @param value number of volt-amperes, any finite number
 * @returns the quantity, VA
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { voltAmperes } from 'ohmwright';
 *
 * voltAmperes(500); // => 500
 * ```
 */
export const voltAmperes = (value: number): Q.VoltAmperes => quantity(value, 'VA');
/**
 * Apparent power, VA, from a number of kilovolt-amperes.
 * @param value number of kilovolt-amperes, any finite number
 * @returns the quantity, VA
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { kilovoltAmperes } from 'ohmwright';
 *
 * kilovoltAmperes(500); // => 500000
 * ```
 */
export const kilovoltAmperes = (value: number): Q.VoltAmperes => quantity(value * 1e3, 'VA');
/**
 * Reactive power from a number of vars.
 * @param value number of vars, any finite number
 * @returns the quantity, var
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { vars } from 'ohmwright';
 *
 * vars(1000); // => 1000
 * ```
 */
export const vars = (value: number): Q.Vars => quantity(value, 'var');
/**
 * Energy from a number of watt-hours.
 * @param value number of watt-hours, any finite number
 * @returns the quantity, Wh
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { wattHours } from 'ohmwright';
 *
 * wattHours(300); // => 300
 * ```
 */
export const wattHours = (value: number): Q.WattHours => quantity(value, 'Wh');
/**
 * Energy, Wh, from a number of kilowatt-hours.
 * @param value number of kilowatt-hours, any finite number
 * @returns the quantity, Wh
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { kilowattHours } from 'ohmwright';
 *
 * kilowattHours(40); // => 40000
 * ```
 */
export const kilowattHours = (value: number): Q.WattHours => quantity(value * 1e3, 'Wh');
/**
 * Temperature from a number of degrees Celsius.
 * @param value number of degrees Celsius, any finite number
 * @returns the quantity, °C
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { celsius } from 'ohmwright';
 *
 * celsius(30); // => 30
 * ```
 */
export const celsius = (value: number): Q.Celsius => quantity(value, '°C');
/**
 * Temperature difference from a number of kelvins.
 * @param value number of kelvins, any finite number
 * @returns the quantity, K
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { kelvins } from 'ohmwright';
 *
 * kelvins(40); // => 40
 * ```
 */
export const kelvins = (value: number): Q.Kelvins => quantity(value, 'K');
/**
 * Time from a number of seconds.
 * @param value number of seconds, any finite number
 * @returns the quantity, s
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { seconds } from 'ohmwright';
 *
 * seconds(0.4); // => 0.4
 * ```
 */
export const seconds = (value: number): Q.Seconds => quantity(value, 's');
/**
 * Time, s, from a number of milliseconds.
 * @param value number of milliseconds, any finite number
 * @returns the quantity, s
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { milliseconds } from 'ohmwright';
 *
 * milliseconds(40); // => 0.04
 * ```
 */
export const milliseconds = (value: number): Q.Seconds => quantity(value / 1e3, 's');
/**
 * Time, s, from a number of minutes.
 * @param value number of minutes, any finite number
 * @returns the quantity, s
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { minutes } from 'ohmwright';
 *
 * minutes(5); // => 300
 * ```
 */
export const minutes = (value: number): Q.Seconds => quantity(value * 60, 's');
/**
 * Time, s, from a number of hours.
 * @param value number of hours, any finite number
 * @returns the quantity, s
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { hours } from 'ohmwright';
 *
 * hours(8); // => 28800
 * ```
 */
export const hours = (value: number): Q.Seconds => quantity(value * 3600, 's');
/**
 * Time from a number of days.
 * @param value number of days, any finite number
 * @returns the quantity, d
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { days } from 'ohmwright';
 *
 * days(1); // => 1
 * ```
 */
export const days = (value: number): Q.Days => quantity(value, 'd');
/**
 * Let-through energy from a number of ampere-squared seconds.
 * @param value number of ampere-squared seconds, any finite number
 * @returns the quantity, A²s
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { ampereSquaredSeconds } from 'ohmwright';
 *
 * ampereSquaredSeconds(32400); // => 32400
 * ```
 */
export const ampereSquaredSeconds = (value: number): Q.AmpereSquaredSeconds => quantity(value, 'A²s');
/**
 * Thermal resistivity from a number of kelvin-metres per watt.
 * @param value number of kelvin-metres per watt, any finite number
 * @returns the quantity, K·m/W
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { kelvinMetresPerWatt } from 'ohmwright';
 *
 * kelvinMetresPerWatt(2.5); // => 2.5
 * ```
 */
export const kelvinMetresPerWatt = (value: number): Q.KelvinMetresPerWatt => quantity(value, 'K·m/W');
/**
 * Heat per length from a number of watts per metre.
 * @param value number of watts per metre, any finite number
 * @returns the quantity, W/m
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { wattsPerMetre } from 'ohmwright';
 *
 * wattsPerMetre(20); // => 20
 * ```
 */
export const wattsPerMetre = (value: number): Q.WattsPerMetre => quantity(value, 'W/m');
/**
 * Soil resistivity from a number of ohm-metres.
 * @param value number of ohm-metres, any finite number
 * @returns the quantity, Ω·m
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { ohmMetres } from 'ohmwright';
 *
 * ohmMetres(100); // => 100
 * ```
 */
export const ohmMetres = (value: number): Q.OhmMetres => quantity(value, 'Ω·m');
/**
 * Ratio, factor or count from a plain number.
 * @param value number of this unit, any finite number
 * @returns the plain number
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { ratio } from 'ohmwright';
 *
 * ratio(0.95); // => 0.95
 * ```
 */
export const ratio = (value: number): Q.Ratio => quantity(value, '1');
/**
 * Ratio from a number of percent.
 * @param value number of percent, any finite number
 * @returns the plain number
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { percent } from 'ohmwright';
 *
 * percent(5); // => 0.05
 * ```
 */
export const percent = (value: number): Q.Ratio => quantity(value / 100, '1');
/**
 * Angle from a number of degrees.
 * @param value number of degrees, any finite number
 * @returns the quantity, °
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { degrees } from 'ohmwright';
 *
 * degrees(20); // => 20
 * ```
 */
export const degrees = (value: number): Q.Degrees => quantity(value, '°');
/**
 * Frequency from a number of hertz.
 * @param value number of hertz, any finite number
 * @returns the quantity, Hz
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { hertz } from 'ohmwright';
 *
 * hertz(50); // => 50
 * ```
 */
export const hertz = (value: number): Q.Hertz => quantity(value, 'Hz');
/**
 * Factor k of the adiabatic equation from its number in A·√s/mm².
 * @param value number of this unit, any finite number
 * @returns the quantity, A·√s/mm²
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { adiabaticFactor } from 'ohmwright';
 *
 * adiabaticFactor(115); // => 115
 * ```
 */
export const adiabaticFactor = (value: number): Q.AdiabaticFactor => quantity(value, 'A·√s/mm²');
/**
 * Volumetric heat capacity from a number of joules per kelvin and cubic millimetre.
 * @param value number of joules per kelvin and cubic millimetre, any finite number
 * @returns the quantity, J/(K·mm³)
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { heatCapacity } from 'ohmwright';
 *
 * heatCapacity(0.00345); // => 0.00345
 * ```
 */
export const heatCapacity = (value: number): Q.HeatCapacity => quantity(value, 'J/(K·mm³)');
/**
 * Conductor resistivity from a number of ohm-millimetres.
 * @param value number of ohm-millimetres, any finite number
 * @returns the quantity, Ω·mm
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { ohmMillimetres } from 'ohmwright';
 *
 * ohmMillimetres(1.7241e-05); // => 1.7241e-05
 * ```
 */
export const ohmMillimetres = (value: number): Q.OhmMillimetres => quantity(value, 'Ω·mm');
/**
 * Temperature coefficient from a number per kelvin.
 * @param value number of this unit, any finite number
 * @returns the quantity, 1/K
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { perKelvin } from 'ohmwright';
 *
 * perKelvin(0.00393); // => 0.00393
 * ```
 */
export const perKelvin = (value: number): Q.PerKelvin => quantity(value, '1/K');
/**
 * Thermal diffusivity from a number of square metres per second.
 * @param value number of square metres per second, any finite number
 * @returns the quantity, m²/s
 * @throws CalculationError `not-finite` for NaN and infinities
 * @example
 * ```ts
 * import { squareMetresPerSecond } from 'ohmwright';
 *
 * squareMetresPerSecond(5e-7); // => 5e-7
 * ```
 */
export const squareMetresPerSecond = (value: number): Q.SquareMetresPerSecond => quantity(value, 'm²/s');
