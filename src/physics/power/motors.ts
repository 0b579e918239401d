import { formula, moving, multiplied } from '../../core/index.js';

/** Rated apparent power of a motor. IEC 60909-0, asynchronous motors. */
export const motorRatingOf = /* @__PURE__ */ multiplied({
  id: 'motor-rating',
  title: 'Rated apparent power of a motor',
  times: ['motorPower'],
  over: ['motorEfficiency', 'powerFactor'],
  output: 'motorRating',
  valid: { powerFactor: { above: 0 } },
  source: { document: 'IEC 60909-0', clause: 'asynchronous motors', provenance: 'one-source' },
});

/** Rated current of a motor. Three-phase power. */
export const motorCurrentOf = /* @__PURE__ */ moving({
  id: 'motor-current',
  title: 'Rated current of a motor',
  moves: { motorRating: 1, motorVoltage: -1 },
  output: 'motorCurrent',
  expression: 'motorRating / (sqrt(3) * motorVoltage)',
  compute: ({ motorRating, motorVoltage }) => motorRating / (Math.sqrt(3) * motorVoltage),
  source: { document: 'Three-phase power', provenance: 'definition' },
});

/** Impedance of an asynchronous motor, or of a group, at a fault. IEC 60909-0, asynchronous motors. */
export const motorImpedanceOf = /* @__PURE__ */ moving({
  id: 'motor-impedance',
  title: 'Impedance of a motor at a fault',
  moves: { motorVoltage: 1, motorRating: -1, startMultiple: -1 },
  output: 'motorImpedance',
  expression: 'motorVoltage^2 / (startMultiple * motorRating)',
  compute: ({ motorVoltage, motorRating, startMultiple }) =>
    (motorVoltage * motorVoltage) / (startMultiple * motorRating),
  source: { document: 'IEC 60909-0', clause: 'asynchronous motors', provenance: 'one-source' },
});

/** Reactance of a group of low-voltage motors with their cables: R/X is 0.42. IEC 60909-0, asynchronous motors. */
export const motorGroupReactance = /* @__PURE__ */ moving({
  id: 'motor-group-reactance',
  title: 'Reactance of a group of low-voltage motors with their cables',
  moves: { motorImpedance: 1 },
  output: 'reactance',
  expression: '0.922 * motorImpedance',
  compute: ({ motorImpedance }) => 0.922 * motorImpedance,
  source: { document: 'IEC 60909-0', clause: 'asynchronous motors', provenance: 'one-source' },
});

/** Resistance of a group of low-voltage motors with their cables: R/X is 0.42. IEC 60909-0, asynchronous motors. */
export const motorGroupResistance = /* @__PURE__ */ moving({
  id: 'motor-group-resistance',
  title: 'Resistance of a group of low-voltage motors with their cables',
  moves: { motorImpedance: 1 },
  output: 'resistance',
  expression: '0.42 * 0.922 * motorImpedance',
  compute: ({ motorImpedance }) => 0.42 * 0.922 * motorImpedance,
  source: { document: 'IEC 60909-0', clause: 'asynchronous motors', provenance: 'one-source' },
});

/** Current that a motor feeds into a three-phase fault at its terminals. IEC 60909-0, asynchronous motors. */
export const motorFaultCurrentOf = /* @__PURE__ */ moving({
  id: 'motor-fault-current',
  title: 'Current that a motor feeds into a three-phase fault at its terminals',
  moves: { voltageFactor: 1, lineVoltage: 1, motorImpedance: -1 },
  output: 'motorFaultCurrent',
  expression: 'voltageFactor * lineVoltage / (sqrt(3) * motorImpedance)',
  compute: ({ voltageFactor, lineVoltage, motorImpedance }) =>
    (voltageFactor * lineVoltage) / (Math.sqrt(3) * motorImpedance),
  source: { document: 'IEC 60909-0', clause: 'asynchronous motors', provenance: 'memory' },
});

/** Starting current of a motor with its starter. Rating plate. */
export const startCurrentOf = /* @__PURE__ */ formula({
  id: 'start-current',
  title: 'Starting current of a motor with its starter',
  inputs: ['motorCurrent', 'startMultiple', 'startReduction'],
  output: 'startCurrent',
  expression: 'motorCurrent * startMultiple * startReduction',
  direction: { motorCurrent: 1, startMultiple: 1, startReduction: 1 },
  compute: ({ motorCurrent, startMultiple, startReduction }) => motorCurrent * startMultiple * startReduction,
  source: {
    document: 'Rating plate',
    provenance: 'derived',
    note: 'of the direct current in the line star-delta leaves a third, an autotransformer the square of its tap, a soft starter the share of the voltage',
  },
});

/** Change of the voltage by a current through the impedance of a supply or cable, per line: a start, or running. Circuit theory. */
export const voltageDipOf = /* @__PURE__ */ formula({
  id: 'voltage-dip',
  title: 'Change of the voltage by a current',
  inputs: ['startCurrent', 'resistance', 'reactance', 'powerFactor', 'reactiveFactor', 'nominalVoltage'],
  output: 'voltageDip',
  expression: 'startCurrent * (resistance * powerFactor + reactance * reactiveFactor) / nominalVoltage',
  compute: ({ startCurrent, resistance, reactance, powerFactor, reactiveFactor, nominalVoltage }) =>
    (startCurrent * (resistance * powerFactor + reactance * reactiveFactor)) / nominalVoltage,
  source: {
    document: 'Circuit theory',
    clause: 'drop in phase with the voltage',
    provenance: 'derived',
    note: 'of one line, single-phase of the loop; line to neutral',
  },
});

/** Largest current of a start for a limit of the change of the voltage at the point of common coupling. ENA ER P28. */
export const largestStartCurrentOf = /* @__PURE__ */ formula({
  id: 'largest-start-current',
  title: 'Largest starting current for a limit of the voltage change',
  inputs: ['dipLimit', 'nominalVoltage', 'resistance', 'reactance', 'powerFactor', 'reactiveFactor'],
  output: 'largestStartCurrent',
  expression: 'dipLimit * nominalVoltage / (resistance * powerFactor + reactance * reactiveFactor)',
  compute: ({ dipLimit, nominalVoltage, resistance, reactance, powerFactor, reactiveFactor }) =>
    (dipLimit * nominalVoltage) / (resistance * powerFactor + reactance * reactiveFactor),
  source: {
    document: 'ENA ER P28',
    edition: '1989',
    clause: 'step voltage change',
    provenance: 'one-source',
    note: 'three per cent, not more often than each 750 s; the limit is given, the formula is that of the drop',
  },
});

/** Largest current of a start whatever its power factor: the whole impedance counts. Circuit theory. */
export const largestStartCurrentAnyAngle = /* @__PURE__ */ moving({
  id: 'largest-start-current-any-angle',
  title: 'Largest starting current for a limit of the voltage change, whatever its power factor',
  moves: { dipLimit: 1, nominalVoltage: 1, resistance: -1, reactance: -1 },
  output: 'largestStartCurrent',
  expression: 'dipLimit * nominalVoltage / sqrt(resistance^2 + reactance^2)',
  compute: ({ dipLimit, nominalVoltage, resistance, reactance }) =>
    (dipLimit * nominalVoltage) / Math.sqrt(resistance * resistance + reactance * reactance),
  source: { document: 'Circuit theory', provenance: 'derived' },
});

/** Change of the voltage by a start as a fixed impedance behind a fault level, angles alike. Circuit theory. */
export const dipByFaultLevel = /* @__PURE__ */ moving({
  id: 'voltage-dip-by-fault-level',
  title: 'Change of the voltage by a start behind a fault level',
  moves: { startPower: 1, faultPower: -1 },
  output: 'voltageDip',
  expression: 'startPower / (startPower + faultPower)',
  compute: ({ startPower, faultPower }) => startPower / (startPower + faultPower),
  source: {
    document: 'Circuit theory',
    provenance: 'derived',
    note: 'start and supply of the same angle: never less than the exact value',
  },
});

/** Share of the time that a spot welder works. Definition of the duty cycle. */
export const workingShareOfWelds = /* @__PURE__ */ multiplied({
  id: 'working-share-of-welds',
  title: 'Share of the time that a spot welder works',
  times: ['weldCycles'],
  over: ['frequency', 'weldTime'],
  output: 'workingShare',
  source: { document: 'Definition of the duty cycle', provenance: 'definition' },
});

/** Steady current of the same heat as an intermittent load, such as a welder. Heat by the square of the current. */
export const equivalentCurrentOf = /* @__PURE__ */ moving({
  id: 'equivalent-current',
  title: 'Steady current of the same heat as an intermittent load',
  moves: { workingCurrent: 1, workingShare: 1 },
  output: 'equivalentCurrent',
  expression: 'workingCurrent * sqrt(workingShare)',
  compute: ({ workingCurrent, workingShare }) => workingCurrent * Math.sqrt(workingShare),
  source: {
    document: 'Heat by the square of the current',
    provenance: 'definition',
    note: 'for cables and devices whose time constant is long against the cycle; the voltage drops by the full current',
  },
});

/** Apparent power of a motor at standstill from its code letter. NEMA MG 1. */
export const startPowerByLetter = /* @__PURE__ */ moving({
  id: 'start-power-by-letter',
  title: 'Apparent power of a motor at standstill from its code letter',
  moves: { letterFactor: 1, motorPower: 1 },
  output: 'startPower',
  expression: 'letterFactor * motorPower / 0.745699872',
  compute: ({ letterFactor, motorPower }) => (letterFactor * motorPower) / 0.745699872,
  source: { document: 'NEMA MG 1', clause: 'code letters', provenance: 'memory' },
});

/** Largest impedance of a supply for equipment whose voltage change was tested under another. IEC 61000-3-11. */
export const largestImpedanceByDip = /* @__PURE__ */ multiplied({
  id: 'largest-impedance-by-dip',
  title: 'Largest impedance of a supply by the voltage change as tested',
  times: ['testImpedance', 'dipLimit'],
  over: ['voltageDip'],
  output: 'largestImpedance',
  valid: { voltageDip: { above: 0 } },
  source: { document: 'IEC 61000-3-11', provenance: 'one-source' },
});

/** Largest impedance of a supply for equipment whose flicker was tested under another; the limit is 1. IEC 61000-3-11. */
export const largestImpedanceByFlicker = /* @__PURE__ */ moving({
  id: 'largest-impedance-by-flicker',
  title: 'Largest impedance of a supply by the flicker as tested',
  moves: { testImpedance: 1, flicker: -1 },
  output: 'largestImpedance',
  expression: 'testImpedance / flicker^1.5',
  compute: ({ testImpedance, flicker }) => testImpedance / flicker ** 1.5,
  source: { document: 'IEC 61000-3-11', provenance: 'memory' },
});

/** Fault level of a supply over the power of equipment. IEC 61000-3-12. */
export const shortCircuitRatioOf = /* @__PURE__ */ multiplied({
  id: 'short-circuit-ratio',
  title: 'Fault level of a supply over the power of equipment',
  times: ['faultPower'],
  over: ['equipmentRating'],
  output: 'shortCircuitRatio',
  source: {
    document: 'IEC 61000-3-12',
    provenance: 'memory',
    note: 'of single-phase equipment three times its voltage line to neutral and its current counts',
  },
});
