import { comparison, type Source, span, statement } from '../../core/index.js';

/** I_b <= I_n, by the clause of a code. */
export const deviceCarriesLoad = (source: Source) =>
  comparison({
    id: 'device-carries-load',
    title: 'The rated current of the device is not below the design current',
    kind: 'at-least',
    value: 'deviceRating',
    limit: 'designCurrent',
    weight: 'rule',
    source,
  });

/** I_t >= I_t,min, by the clause of a code. */
export const capacitySuffices = (source: Source) =>
  comparison({
    id: 'tabulated-capacity',
    title: 'The tabulated capacity is not below the one that load and device require',
    kind: 'at-least',
    value: 'tabulatedCapacity',
    limit: 'requiredCapacity',
    weight: 'rule',
    source,
    caution: 'An overloaded cable ages, and can start a fire, without any device operating.',
  });

/** I_b <= I_z, by the clause of a code. */
export const loadWithinCapacity = (source: Source) =>
  comparison({
    id: 'load-within-capacity',
    title: 'The design current is within the capacity as installed',
    kind: 'at-most',
    value: 'designCurrent',
    limit: 'capacity',
    weight: 'rule',
    source,
  });

/** I_2 <= 1.45 I_z, by the clause of a code. */
export const conventionalOverload = (source: Source) =>
  comparison({
    id: 'conventional-overload',
    title: 'The conventional operating current is at most 1.45 times the capacity',
    kind: 'at-most',
    value: 'conventionalOperatingCurrent',
    limit: 'overloadLimit',
    weight: 'rule',
    source,
  });

/** A method that contains insulation takes no further factor for it, by the clause of a code. */
export const insulationOnce = (source: Source) =>
  statement({
    id: 'insulation-counted-once',
    title: 'Thermal insulation is counted once: in the reference method or by C_i',
    weight: 'rule',
    source,
  });

/** The third-harmonic content of a three-phase circuit is stated, by the clause of a code. */
export const harmonicsStated = (source: Source) =>
  statement({
    id: 'third-harmonic-stated',
    title: 'The third-harmonic content of the load is stated',
    weight: 'advice',
    source,
  });

/** ΔU/U_0 <= limit, by the clause of a code. */
export const dropWithinLimit = (source: Source) =>
  comparison({
    id: 'voltage-drop',
    title: 'The voltage drop from the origin is within the limit',
    kind: 'at-most',
    value: 'dropRatio',
    limit: 'dropLimit',
    weight: 'rule',
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
  comparison({
    id: 'terminal-temperature',
    title: 'The conductor is not hotter at its load than its terminals allow',
    kind: 'at-most',
    value: 'conductorTemperature',
    limit: 'terminalTemperature',
    weight: 'rule',
    source,
    caution: 'A terminal that runs hotter than it was made for loosens, and can start a fire.',
  });
