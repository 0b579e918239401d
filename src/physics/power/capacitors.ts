import { formula, moving, multiplied } from '../../core/index.js';

/** Reactive power of a lagging load from its power factor. Power triangle. */
export const reactivePowerOf = /* @__PURE__ */ formula({
  id: 'reactive-power',
  title: 'Reactive power of a lagging load',
  inputs: ['activePower', 'powerFactor'],
  output: 'reactivePower',
  signed: true,
  expression: 'activePower * sqrt(1 / powerFactor^2 - 1)',
  compute: ({ activePower, powerFactor }) => activePower * Math.sqrt(1 / powerFactor ** 2 - 1),
  valid: { activePower: { least: 0 }, powerFactor: { above: 0 } },
  source: { document: 'Power triangle', provenance: 'definition' },
});

/** Capacitors that raise the power factor of a load. Power triangle. */
export const capacitorPowerOf = /* @__PURE__ */ formula({
  id: 'capacitor-power',
  title: 'Capacitors that raise the power factor of a load',
  inputs: ['activePower', 'powerFactor', 'targetPowerFactor'],
  output: 'capacitorPower',
  expression: 'activePower * (sqrt(1 / powerFactor^2 - 1) - sqrt(1 / targetPowerFactor^2 - 1))',
  direction: { powerFactor: -1, targetPowerFactor: 1 },
  compute: ({ activePower, powerFactor, targetPowerFactor }) =>
    activePower * (Math.sqrt(1 / powerFactor ** 2 - 1) - Math.sqrt(1 / targetPowerFactor ** 2 - 1)),
  valid: { activePower: { least: 0 }, powerFactor: { above: 0 } },
  source: { document: 'Power triangle', provenance: 'definition' },
});

/** Apparent power of a load with capacitors. Power triangle. */
export const correctedPowerOf = /* @__PURE__ */ formula({
  id: 'corrected-power',
  title: 'Apparent power of a load with capacitors',
  inputs: ['activePower', 'reactivePower', 'capacitorPower'],
  output: 'correctedPower',
  expression: 'sqrt(activePower^2 + (reactivePower - capacitorPower)^2)',
  compute: ({ activePower, reactivePower, capacitorPower }) =>
    Math.sqrt(activePower ** 2 + (reactivePower - capacitorPower) ** 2),
  source: { document: 'Power triangle', provenance: 'definition' },
});

/** Power factor of a load with capacitors. Power triangle. */
export const correctedPowerFactorOf = /* @__PURE__ */ formula({
  id: 'corrected-power-factor',
  title: 'Power factor of a load with capacitors',
  inputs: ['activePower', 'correctedPower'],
  output: 'correctedPowerFactor',
  expression: 'activePower / correctedPower',
  direction: { activePower: 1 },
  compute: ({ activePower, correctedPower }) => activePower / correctedPower,
  valid: { activePower: { least: 0 } },
  source: { document: 'Power triangle', provenance: 'definition' },
});

/** Current ahead of capacitors over that without them. Power triangle. */
export const currentReductionOf = /* @__PURE__ */ multiplied({
  id: 'current-reduction',
  title: 'Current with capacitors over that without',
  times: ['powerFactor'],
  over: ['correctedPowerFactor'],
  output: 'currentReduction',
  valid: { correctedPowerFactor: { above: 0 } },
  source: { document: 'Power triangle', provenance: 'definition' },
});

/** Rise of the voltage where capacitors are connected: what they take off the drop ahead of them. Circuit theory. */
export const capacitorRiseOf = /* @__PURE__ */ moving({
  id: 'capacitor-rise',
  title: 'Rise of the voltage by capacitors',
  moves: { capacitorPower: 1, reactance: 1, lineVoltage: -1 },
  output: 'capacitorRise',
  expression: 'capacitorPower * reactance / lineVoltage^2',
  compute: ({ capacitorPower, reactance, lineVoltage }) => (capacitorPower * reactance) / (lineVoltage * lineVoltage),
  source: { document: 'Circuit theory', clause: 'drop in phase with the voltage', provenance: 'derived' },
});

/** Current of three-phase capacitors at a voltage. Three-phase power. */
export const capacitorCurrentOf = /* @__PURE__ */ moving({
  id: 'capacitor-current',
  title: 'Current of three-phase capacitors',
  moves: { capacitorPower: 1, lineVoltage: -1 },
  output: 'capacitorCurrent',
  expression: 'capacitorPower / (sqrt(3) * lineVoltage)',
  compute: ({ capacitorPower, lineVoltage }) => capacitorPower / (Math.sqrt(3) * lineVoltage),
  source: { document: 'Three-phase power', provenance: 'definition' },
});

/** Order of the harmonic at which capacitors resonate with a supply of a fault level. Resonance of capacitors and supply. */
export const resonanceOrderOf = /* @__PURE__ */ moving({
  id: 'resonance-order',
  title: 'Order of the harmonic at which capacitors and supply resonate',
  moves: { faultPower: 1, capacitorPower: -1 },
  output: 'resonanceOrder',
  expression: 'sqrt(faultPower / capacitorPower)',
  compute: ({ faultPower, capacitorPower }) => Math.sqrt(faultPower / capacitorPower),
  valid: { capacitorPower: { above: 0 } },
  source: { document: 'Resonance of capacitors and supply', provenance: 'one-source' },
});

/** Order of the harmonic at which capacitors resonate with a transformer alone. Resonance of capacitors and supply. */
export const resonanceOrderOfTransformer = /* @__PURE__ */ moving({
  id: 'resonance-order-transformer',
  title: 'Order of the harmonic at which capacitors and a transformer resonate',
  moves: { transformerRating: 1, transformerImpedanceVoltage: -1, capacitorPower: -1 },
  output: 'resonanceOrder',
  expression: 'sqrt(transformerRating / (transformerImpedanceVoltage * capacitorPower))',
  compute: ({ transformerRating, transformerImpedanceVoltage, capacitorPower }) =>
    Math.sqrt(transformerRating / (transformerImpedanceVoltage * capacitorPower)),
  valid: { capacitorPower: { above: 0 } },
  source: { document: 'Resonance of capacitors and supply', provenance: 'one-source' },
});

/** Order of the harmonic at which detuned capacitors resonate with their reactor. Resonance of capacitors and reactor. */
export const detunedOrderOf = /* @__PURE__ */ moving({
  id: 'detuned-order',
  title: 'Order of the harmonic at which detuned capacitors resonate with their reactor',
  moves: { reactorShare: -1 },
  output: 'resonanceOrder',
  expression: '1 / sqrt(reactorShare)',
  compute: ({ reactorShare }) => 1 / Math.sqrt(reactorShare),
  source: { document: 'Resonance of capacitors and reactor', provenance: 'derived' },
});

/** Voltage of capacitors behind a detuning reactor. Circuit theory. */
export const detunedVoltageOf = /* @__PURE__ */ moving({
  id: 'detuned-voltage',
  title: 'Voltage of capacitors behind a detuning reactor',
  moves: { lineVoltage: 1, reactorShare: 1 },
  output: 'capacitorVoltage',
  expression: 'lineVoltage / (1 - reactorShare)',
  compute: ({ lineVoltage, reactorShare }) => lineVoltage / (1 - reactorShare),
  source: { document: 'Circuit theory', provenance: 'derived' },
});
