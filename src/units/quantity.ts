/**
 * A plain number whose unit exists for the compiler only: no run-time cost, ordinary JSON, and amperes cannot be
 * passed where metres are due. Each quantity has one canonical unit, the one that the trade writes.
 */
export type Quantity<U extends string> = number & { readonly '~unit': U };

/** The unit of a quantity type. */
export type UnitOf<Q> = Q extends Quantity<infer U> ? U : never;

/** Electric current, A. */
export type Amperes = Quantity<'A'>;
/** Voltage, V. */
export type Volts = Quantity<'V'>;
/** Impedance, resistance or reactance, Ω. */
export type Ohms = Quantity<'Ω'>;
/** Impedance per length of route, Ω/m. */
export type OhmsPerMetre = Quantity<'Ω/m'>;
/** Tabulated voltage drop per ampere and metre, V/(A·m). */
export type VoltsPerAmpereMetre = Quantity<'V/(A·m)'>;
/** Length along a route, m. */
export type Metres = Quantity<'m'>;
/** Small dimension such as a diameter or a thickness, mm. */
export type Millimetres = Quantity<'mm'>;
/** Conductor cross-section, mm². */
export type SquareMillimetres = Quantity<'mm²'>;
/** Area of a plate or a site, m². */
export type SquareMetres = Quantity<'m²'>;
/** Active power, W. */
export type Watts = Quantity<'W'>;
/** Apparent power, VA. */
export type VoltAmperes = Quantity<'VA'>;
/** Reactive power, var. */
export type Vars = Quantity<'var'>;
/** Energy, Wh. */
export type WattHours = Quantity<'Wh'>;
/** Temperature, °C. */
export type Celsius = Quantity<'°C'>;
/** Temperature difference, K. */
export type Kelvins = Quantity<'K'>;
/** Time, s. */
export type Seconds = Quantity<'s'>;
/** Days, d. */
export type Days = Quantity<'d'>;
/** Let-through energy I²t, A²s. */
export type AmpereSquaredSeconds = Quantity<'A²s'>;
/** Thermal resistivity of soil or insulation, K·m/W. */
export type KelvinMetresPerWatt = Quantity<'K·m/W'>;
/** Heat loss per length, W/m. */
export type WattsPerMetre = Quantity<'W/m'>;
/** Electrical resistivity of soil, Ω·m. */
export type OhmMetres = Quantity<'Ω·m'>;
/** Ratio, factor, power factor or count, 1. */
export type Ratio = Quantity<'1'>;
/** Angle, degrees. */
export type Degrees = Quantity<'°'>;
/** Frequency, Hz. */
export type Hertz = Quantity<'Hz'>;
/** Factor k of the adiabatic equation, A·√s/mm². */
export type AdiabaticFactor = Quantity<'A·√s/mm²'>;
/** Volumetric heat capacity, J/(K·mm³). */
export type HeatCapacity = Quantity<'J/(K·mm³)'>;
/** Electrical resistivity of a conductor, Ω·mm. */
export type OhmMillimetres = Quantity<'Ω·mm'>;
/** Temperature coefficient, 1/K. */
export type PerKelvin = Quantity<'1/K'>;
/** Thermal diffusivity, m²/s. */
export type SquareMetresPerSecond = Quantity<'m²/s'>;
/** Rise of current with time, A/s. */
export type AmperesPerSecond = Quantity<'A/s'>;
