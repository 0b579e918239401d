import { formula } from '../core/index.js';

/** Largest earth fault loop impedance from the voltage and the current that operates the device in time. */
export const loopImpedanceLimitOf = /* @__PURE__ */ formula({
  id: 'loop-impedance-limit',
  title: 'Largest earth fault loop impedance Z_s,max = U_0 C_min / I_a',
  inputs: ['nominalVoltage', 'minimumVoltageFactor', 'operatingCurrent'],
  output: 'loopImpedanceLimit',
  expression: 'nominalVoltage * minimumVoltageFactor / operatingCurrent',
  compute: ({ nominalVoltage, minimumVoltageFactor, operatingCurrent }) =>
    (nominalVoltage * minimumVoltageFactor) / operatingCurrent,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '411.4.4', provenance: 'two-sources' },
});

/** Smallest earth fault current at the end of a run, with the conductors hot. */
export const earthFaultCurrentOf = /* @__PURE__ */ formula({
  id: 'earth-fault-current',
  title: 'Earth fault current',
  inputs: ['nominalVoltage', 'minimumVoltageFactor', 'loopImpedance'],
  output: 'earthFaultCurrent',
  expression: 'nominalVoltage * minimumVoltageFactor / loopImpedance',
  compute: ({ nominalVoltage, minimumVoltageFactor, loopImpedance }) =>
    (nominalVoltage * minimumVoltageFactor) / loopImpedance,
  valid: { loopImpedance: { above: 0 } },
  source: { document: 'IEC 60909-0', clause: 'smallest current', provenance: 'one-source' },
});

/** Largest earth fault current at the origin of a run, with the conductors cold. */
export const largestEarthFault = /* @__PURE__ */ formula({
  id: 'largest-earth-fault-current',
  title: 'Largest earth fault current at the origin of the run',
  inputs: ['nominalVoltage', 'maximumVoltageFactor', 'originImpedance'],
  output: 'maximumFaultCurrent',
  expression: 'nominalVoltage * maximumVoltageFactor / originImpedance',
  compute: ({ nominalVoltage, maximumVoltageFactor, originImpedance }) =>
    (nominalVoltage * maximumVoltageFactor) / originImpedance,
  valid: { originImpedance: { above: 0 } },
  source: { document: 'IEC 60909-0', clause: 'largest current', provenance: 'one-source' },
});

/** Largest impedance from the earth fault path: electrode of the installation and the path of the network. */
export const externalImpedanceOfElectrode = /* @__PURE__ */ formula({
  id: 'external-impedance-of-electrode',
  title: 'External earth fault loop impedance with an electrode',
  inputs: ['earthElectrode', 'networkEarth'],
  output: 'externalImpedance',
  expression: 'earthElectrode + networkEarth',
  compute: ({ earthElectrode, networkEarth }) => earthElectrode + networkEarth,
  source: { document: 'ENA ER P23/1', edition: '1991', clause: 'Table 1', provenance: 'one-source' },
});

/** Resistance R_A of the electrode and the protective conductors that lead to it. */
export const electrodeAndProtective = /* @__PURE__ */ formula({
  id: 'electrode-and-protective-resistance',
  title: 'Resistance of the electrode and the protective conductors R_A',
  inputs: ['earthElectrode', 'circuitProtectiveResistance'],
  output: 'electrodeResistance',
  expression: 'earthElectrode + circuitProtectiveResistance',
  compute: ({ earthElectrode, circuitProtectiveResistance }) => earthElectrode + circuitProtectiveResistance,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '411.5.3', provenance: 'two-sources' },
});

/** Voltage that the rated residual operating current raises on the electrode. */
export const residualTouchVoltage = /* @__PURE__ */ formula({
  id: 'residual-touch-voltage',
  title: 'Voltage at the rated residual operating current, R_A I_Δn',
  inputs: ['electrodeResistance', 'residualOperatingCurrent'],
  output: 'touchVoltage',
  expression: 'electrodeResistance * residualOperatingCurrent',
  compute: ({ electrodeResistance, residualOperatingCurrent }) => electrodeResistance * residualOperatingCurrent,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '411.5.3', provenance: 'two-sources' },
});

/** Voltage that the rated residual operating current raises in an earth fault loop. */
export const residualLoopVoltage = /* @__PURE__ */ formula({
  id: 'residual-loop-voltage',
  title: 'Voltage at the rated residual operating current, Z_s I_Δn',
  inputs: ['loopImpedance', 'residualOperatingCurrent'],
  output: 'touchVoltage',
  expression: 'loopImpedance * residualOperatingCurrent',
  compute: ({ loopImpedance, residualOperatingCurrent }) => loopImpedance * residualOperatingCurrent,
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: 'Table 41.5', provenance: 'two-sources' },
});

/** Current of a device from its multiple of the rated current. */
export const operatingCurrentFromMultiple = /* @__PURE__ */ formula({
  id: 'operating-current-from-multiple',
  title: 'Current that operates the device at once',
  inputs: ['deviceMultiple', 'deviceRating'],
  output: 'operatingCurrent',
  expression: 'deviceMultiple * deviceRating',
  compute: ({ deviceMultiple, deviceRating }) => deviceMultiple * deviceRating,
  source: { document: 'EN 60898-1', clause: 'Table 7', provenance: 'two-sources' },
});
