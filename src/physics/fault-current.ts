import { added, formula, moving, multiplied } from '../core/index.js';

/**
 * Largest earth fault loop impedance from the voltage and the current that operates the device in time. Ohm's
 * law.
 */
export const loopImpedanceLimitOf = /* @__PURE__ */ formula({
  id: 'loop-impedance-limit',
  title: 'Largest earth fault loop impedance Z_s,max = U_0 C_min / I_a',
  inputs: ['nominalVoltage', 'minimumVoltageFactor', 'operatingCurrent'],
  output: 'loopImpedanceLimit',
  expression: 'nominalVoltage * minimumVoltageFactor / operatingCurrent',
  direction: { nominalVoltage: 1, minimumVoltageFactor: 1, operatingCurrent: -1 },
  compute: ({ nominalVoltage, minimumVoltageFactor, operatingCurrent }) =>
    (nominalVoltage * minimumVoltageFactor) / operatingCurrent,
  source: { document: "Ohm's law", provenance: 'definition' },
});

/** Smallest earth fault current at the end of a run, with the conductors hot. IEC 60909-0, smallest current. */
export const earthFaultCurrentOf = /* @__PURE__ */ formula({
  id: 'earth-fault-current',
  title: 'Earth fault current',
  inputs: ['nominalVoltage', 'minimumVoltageFactor', 'loopImpedance'],
  output: 'earthFaultCurrent',
  expression: 'nominalVoltage * minimumVoltageFactor / loopImpedance',
  direction: { nominalVoltage: 1, minimumVoltageFactor: 1, loopImpedance: -1 },
  compute: ({ nominalVoltage, minimumVoltageFactor, loopImpedance }) =>
    (nominalVoltage * minimumVoltageFactor) / loopImpedance,
  valid: { loopImpedance: { above: 0 } },
  source: { document: 'IEC 60909-0', clause: 'smallest current', provenance: 'one-source' },
});

/** Largest earth fault current at the origin of a run, with the conductors cold. IEC 60909-0, largest current. */
export const largestEarthFault = /* @__PURE__ */ multiplied({
  id: 'largest-earth-fault-current',
  title: 'Largest earth fault current at the origin of the run',
  times: ['nominalVoltage', 'maximumVoltageFactor'],
  over: ['originImpedance'],
  output: 'maximumFaultCurrent',
  valid: { originImpedance: { above: 0 } },
  source: { document: 'IEC 60909-0', clause: 'largest current', provenance: 'one-source' },
});

/**
 * Largest impedance from the earth fault path: electrode of the installation and the path of the network. ENA ER
 * P23/1, Table 1.
 */
export const externalImpedanceOfElectrode = /* @__PURE__ */ added({
  id: 'external-impedance-of-electrode',
  title: 'External earth fault loop impedance with an electrode',
  plus: ['earthElectrode', 'networkEarth'],
  output: 'externalImpedance',
  source: { document: 'ENA ER P23/1', edition: '1991', clause: 'Table 1', provenance: 'one-source' },
});

/** Resistance R_A of the electrode and the protective conductors that lead to it. Resistances in series. */
export const electrodeAndProtective = /* @__PURE__ */ added({
  id: 'electrode-and-protective-resistance',
  title: 'Resistance of the electrode and the protective conductors R_A',
  plus: ['earthElectrode', 'circuitProtectiveResistance'],
  output: 'electrodeResistance',
  source: { document: 'Resistances in series', provenance: 'definition' },
});

/** Voltage that the rated residual operating current raises on the electrode. Ohm's law. */
export const residualTouchVoltage = /* @__PURE__ */ multiplied({
  id: 'residual-touch-voltage',
  title: 'Voltage at the rated residual operating current, R_A I_Δn',
  times: ['electrodeResistance', 'residualOperatingCurrent'],
  output: 'touchVoltage',
  source: { document: "Ohm's law", provenance: 'definition' },
});

/** Voltage that the rated residual operating current raises in an earth fault loop. Ohm's law. */
export const residualLoopVoltage = /* @__PURE__ */ multiplied({
  id: 'residual-loop-voltage',
  title: 'Voltage at the rated residual operating current, Z_s I_Δn',
  times: ['loopImpedance', 'residualOperatingCurrent'],
  output: 'touchVoltage',
  source: { document: "Ohm's law", provenance: 'definition' },
});

/** Earth fault current over the rated residual operating current of a device. */
export const residualMultipleOf = /* @__PURE__ */ moving({
  id: 'residual-multiple',
  title: 'Earth fault current over the rated residual operating current',
  moves: { nominalVoltage: 1, loopImpedance: -1, residualOperatingCurrent: -1 },
  output: 'residualMultiple',
  expression: 'nominalVoltage / loopImpedance / residualOperatingCurrent',
  compute: ({ nominalVoltage, loopImpedance, residualOperatingCurrent }) =>
    nominalVoltage / loopImpedance / residualOperatingCurrent,
  valid: { loopImpedance: { above: 0 } },
  source: { document: 'physics', provenance: 'definition' },
});

/** Current of a device from its multiple of the rated current. EN 60898-1, Table 7. */
export const operatingCurrentFromMultiple = /* @__PURE__ */ multiplied({
  id: 'operating-current-from-multiple',
  title: 'Current that operates the device at once',
  times: ['deviceMultiple', 'deviceRating'],
  output: 'operatingCurrent',
  source: { document: 'EN 60898-1', clause: 'Table 7', provenance: 'two-sources' },
});

/** Least impedance of the earth fault loop at the origin of a run: sizes at right angles, so that no current is missed. */
export const leastOriginImpedance = /* @__PURE__ */ moving({
  id: 'least-origin-impedance',
  title: 'Least earth fault loop impedance at the origin of the run',
  moves: { externalImpedance: 1, feederImpedance: 1 },
  output: 'originImpedance',
  expression: 'sqrt(externalImpedance^2 + feederImpedance^2)',
  compute: ({ externalImpedance: a, feederImpedance: b }) => (b === 0 ? a : Math.sqrt(a * a + b * b)),
  source: {
    document: 'physics',
    provenance: 'definition',
    note: 'two impedances of 0 to 90° add up to no less than this',
  },
});

/** Largest prospective current behind feeders, from that at the origin and the resistance of the feeders. */
export const prospectiveBehindFeeders = /* @__PURE__ */ moving({
  id: 'prospective-behind-feeders',
  title: 'Largest prospective current at the origin of the run',
  moves: { nominalVoltage: 1, prospectiveCurrent: 1, feederImpedance: -1 },
  output: 'maximumFaultCurrent',
  expression: 'nominalVoltage / sqrt((nominalVoltage / prospectiveCurrent)^2 + feederImpedance^2)',
  compute: ({ nominalVoltage: u, prospectiveCurrent, feederImpedance: z }) =>
    z === 0 ? prospectiveCurrent : u / Math.sqrt((u / prospectiveCurrent) ** 2 + z * z),
  valid: { prospectiveCurrent: { above: 0 } },
  source: {
    document: 'physics',
    provenance: 'definition',
    note: 'the feeder at right angles to the source: never less than the exact value',
  },
});

/** Impedance of the source from the prospective current at the origin. Guidance Note 3, prospective fault current. */
export const sourceImpedanceOf = /* @__PURE__ */ multiplied({
  id: 'source-impedance',
  title: 'Impedance of the source from the prospective current',
  times: ['nominalVoltage'],
  over: ['prospectiveCurrent'],
  output: 'sourceImpedance',
  valid: { prospectiveCurrent: { above: 0 } },
  source: { document: 'Guidance Note 3', clause: 'prospective fault current', provenance: 'two-sources' },
});

/** Impedance of the line-neutral loop: source and circuit. */
export const lineNeutralLoop = /* @__PURE__ */ added({
  id: 'line-neutral-loop',
  title: 'Impedance of the line-neutral loop',
  plus: ['sourceImpedance', 'circuitImpedance'],
  output: 'lineNeutralImpedance',
  source: { document: 'physics', provenance: 'definition' },
});

/** Sum of the resistances of the line and the neutral conductor of a run. */
export const sumOfLineAndNeutral = /* @__PURE__ */ added({
  id: 'line-and-neutral-resistance',
  title: 'Resistance of line and neutral conductor of a run',
  plus: ['lineResistance', 'neutralResistance'],
  output: 'segmentImpedance',
  source: { document: 'physics', provenance: 'definition' },
});

/** Smallest line-neutral fault current at the far end, with the conductors hot. IEC 60909-0, smallest current. */
export const smallestLineNeutralFault = /* @__PURE__ */ multiplied({
  id: 'smallest-line-neutral-fault-current',
  title: 'Smallest line-neutral fault current at the far end',
  times: ['nominalVoltage', 'minimumVoltageFactor'],
  over: ['lineNeutralImpedance'],
  output: 'minimumFaultCurrent',
  valid: { lineNeutralImpedance: { above: 0 } },
  source: { document: 'IEC 60909-0', clause: 'smallest current', provenance: 'one-source' },
});

/**
 * Three-phase prospective current by the doubling rule: twice the reading between one line and neutral. Guidance Note
 * 3, prospective fault current.
 */
export const doubledReading = /* @__PURE__ */ formula({
  id: 'doubling-rule',
  title: 'Three-phase prospective current as twice a line-neutral reading (approximation of the trade)',
  inputs: ['prospectiveCurrent'],
  output: 'faultCurrent',
  expression: '2 * prospectiveCurrent',
  compute: ({ prospectiveCurrent }) => 2 * prospectiveCurrent,
  source: {
    document: 'Guidance Note 3',
    clause: 'prospective fault current',
    provenance: 'two-sources',
    note: 'exact where line and neutral have the same impedance back to the star point; else an approximation',
  },
});

/** The larger of a fault current and the prospective current, where the impedance may be less than declared. */
export const largerFaultCurrent = /* @__PURE__ */ moving({
  id: 'larger-fault-current',
  title: 'Fault current, or the prospective current where that is larger',
  moves: { faultCurrent: 1, maximumFaultCurrent: 1 },
  output: 'guardedCurrent',
  expression: 'max(faultCurrent, maximumFaultCurrent)',
  compute: ({ faultCurrent, maximumFaultCurrent }) => Math.max(faultCurrent, maximumFaultCurrent),
  source: {
    document: 'physics',
    provenance: 'definition',
    note: 'a declared impedance may be higher than the real one',
  },
});
