import { advice, rule, type Source, span } from '../../core/index.js';

/** I_b <= I_n, by the clause of a code. */
export const deviceCarriesLoad = (source: Source) =>
  rule({
    id: 'device-carries-load',
    title: 'The rated current of the device is not below the design current',
    of: ['deviceRating', 'at-least', 'designCurrent'],
    source,
  });

/** I_t >= I_t,min, by the clause of a code. */
export const capacitySuffices = (source: Source) =>
  rule({
    id: 'tabulated-capacity',
    title: 'The tabulated capacity is not below the one that load and device require',
    of: ['tabulatedCapacity', 'at-least', 'requiredCapacity'],
    source,
    caution: 'An overloaded cable ages, and can start a fire, without any device operating.',
  });

/** I_b <= I_z, by the clause of a code. */
export const loadWithinCapacity = (source: Source) =>
  rule({
    id: 'load-within-capacity',
    title: 'The design current is within the capacity as installed',
    of: ['designCurrent', 'at-most', 'capacity'],
    source,
  });

/** I_2 <= 1.45 I_z, by the clause of a code. */
export const conventionalOverload = (source: Source) =>
  rule({
    id: 'conventional-overload',
    title: 'The conventional operating current is at most 1.45 times the capacity',
    of: ['conventionalOperatingCurrent', 'at-most', 'overloadLimit'],
    source,
  });

/** A method that contains insulation takes no further factor for it, by the clause of a code. */
export const insulationOnce = (source: Source) =>
  rule({
    id: 'insulation-counted-once',
    title: 'Thermal insulation is counted once: in the reference method or by C_i',
    source,
  });

/** The third-harmonic content of a three-phase circuit is stated, by the clause of a code. */
export const harmonicsStated = (source: Source) =>
  advice({
    id: 'third-harmonic-stated',
    title: 'The third-harmonic content of the load is stated',
    source,
  });

/** ΔU/U_0 <= limit, by the clause of a code. */
export const dropWithinLimit = (source: Source) =>
  rule({
    id: 'voltage-drop',
    title: 'The voltage drop from the origin is within the limit',
    of: ['dropRatio', 'at-most', 'dropLimit'],
    source,
  });

/** The voltage at the point stays inside the window of its protective device, by the clause of a code. */
export const insideWindow = (source: Source) =>
  span({
    id: 'voltage-window',
    title: 'The voltage at the point stays inside the window of its voltage-operated protective device',
    value: 'pointVoltage',
    least: 'windowLow',
    most: 'windowHigh',
    weight: 'advice',
    source,
    caution:
      'Outside its window the device opens: the vehicle is then not charged, at the smallest supply voltage or at the largest.',
  });

/** The conductor is not hotter than the terminals bear, θ <= θ_term, by the clause of a code. */
export const terminalsCoolEnough = (source: Source) =>
  rule({
    id: 'terminal-temperature',
    title: 'The conductor is not hotter at its load than its terminals allow',
    of: ['conductorTemperature', 'at-most', 'terminalTemperature'],
    source,
    caution: 'A terminal that runs hotter than it was made for loosens, and can start a fire.',
  });
