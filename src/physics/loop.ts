import { formula, moving, multiplied } from '../core/index.js';

/**
 * Resistance per length at a temperature from that at 20 °C, by a linear temperature coefficient. IEC 60909-0,
 * conductor temperature.
 */
export const resistanceAtTemperature = /* @__PURE__ */ formula({
  id: 'resistance-at-temperature',
  title: 'Resistance per length at a temperature',
  inputs: ['resistancePerMetre20', 'temperatureCoefficient', 'conductorTemperature'],
  output: 'resistancePerMetre',
  expression: 'resistancePerMetre20 * (1 + temperatureCoefficient * (conductorTemperature - reference))',
  constants: { reference: [20, 'K'] },
  direction: { resistancePerMetre20: 1, conductorTemperature: 1 },
  compute: ({ resistancePerMetre20, temperatureCoefficient, conductorTemperature }) =>
    resistancePerMetre20 * (1 + temperatureCoefficient * (conductorTemperature - 20)),
  source: { document: 'IEC 60909-0', clause: 'conductor temperature', provenance: 'one-source' },
});

/**
 * Ratio of the resistance at a temperature to that at 20 °C, by a linear temperature coefficient. IEC 60909-0,
 * conductor temperature.
 */
export const temperatureFactorOfResistance = /* @__PURE__ */ formula({
  id: 'temperature-factor-of-resistance',
  title: 'Resistance at a temperature over that at 20 °C',
  inputs: ['temperatureCoefficient', 'conductorTemperature'],
  output: 'temperatureFactor',
  expression: '1 + temperatureCoefficient * (conductorTemperature - reference)',
  constants: { reference: [20, 'K'] },
  compute: ({ temperatureCoefficient, conductorTemperature }) =>
    1 + temperatureCoefficient * (conductorTemperature - 20),
  source: { document: 'IEC 60909-0', clause: 'conductor temperature', provenance: 'one-source' },
});

/** Resistance of the conductors of a run that lie in parallel. */
export const runResistance = /* @__PURE__ */ multiplied({
  id: 'run-resistance',
  title: 'Resistance of a run',
  times: ['resistancePerMetre', 'length'],
  over: ['parallelConductors'],
  output: 'resistance',
  source: { document: 'physics', provenance: 'definition' },
});

/** Reactance of a run from the reactance per metre of its loop. */
export const runReactance = /* @__PURE__ */ multiplied({
  id: 'run-reactance',
  title: 'Reactance of a run',
  times: ['reactancePerMetre', 'length'],
  over: ['parallelConductors'],
  output: 'reactance',
  source: { document: 'physics', provenance: 'definition' },
});

/** Resistance of the armour (or conduit) and a protective conductor beside it, in parallel. */
export const parallelProtectivePaths = /* @__PURE__ */ moving({
  id: 'parallel-protective-paths',
  title: 'Protective paths in parallel',
  moves: { armourResistance: 1, separateResistance: 1 },
  output: 'protectiveResistance',
  expression: 'armourResistance * separateResistance / (armourResistance + separateResistance)',
  compute: ({ armourResistance, separateResistance }) =>
    (armourResistance * separateResistance) / (armourResistance + separateResistance),
  source: { document: 'physics', provenance: 'definition' },
});

/** Sum of the resistances of the line and the protective conductor of a run. */
export const sumOfLineAndProtective = /* @__PURE__ */ formula({
  id: 'line-and-protective-resistance',
  title: 'R_1+R_2 of a run',
  inputs: ['lineResistance', 'protectiveResistance'],
  output: 'lineAndProtectiveResistance',
  expression: 'lineResistance + protectiveResistance',
  direction: { lineResistance: 1, protectiveResistance: 1 },
  compute: ({ lineResistance, protectiveResistance }) => lineResistance + protectiveResistance,
  source: { document: 'physics', provenance: 'definition' },
});

/** Impedance of one run from the resistance of line and protective conductor and the reactance of their loop. */
export const segmentImpedanceOf = /* @__PURE__ */ moving({
  id: 'segment-impedance',
  title: 'Impedance of a run',
  moves: { lineAndProtectiveResistance: 1, reactance: 1 },
  output: 'segmentImpedance',
  expression: 'sqrt(lineAndProtectiveResistance^2 + reactance^2)',
  compute: ({ lineAndProtectiveResistance: r, reactance: x }) => (x === 0 ? r : Math.sqrt(r * r + x * x)),
  source: { document: 'physics', provenance: 'definition' },
});

/**
 * Earth fault loop impedance as the sum of the external impedance and that of the circuit from the origin. Impedances in
 * series.
 */
export const loopImpedanceOf = /* @__PURE__ */ formula({
  id: 'loop-impedance',
  title: 'Earth fault loop impedance Z_s = Z_e + (R_1+R_2)',
  inputs: ['externalImpedance', 'circuitImpedance'],
  output: 'loopImpedance',
  expression: 'externalImpedance + circuitImpedance',
  direction: { externalImpedance: 1, circuitImpedance: 1 },
  compute: ({ externalImpedance, circuitImpedance }) => externalImpedance + circuitImpedance,
  source: {
    document: 'Impedances in series',
    provenance: 'definition',
    note: 'sizes added without regard to their angles: never less than the exact value',
  },
});

/**
 * Earth fault loop impedance at the origin of a run: the external impedance and the feeders ahead. Impedances in series.
 */
export const originImpedanceOf = /* @__PURE__ */ formula({
  id: 'origin-impedance',
  title: 'Earth fault loop impedance at the origin of the run',
  inputs: ['externalImpedance', 'feederImpedance'],
  output: 'originImpedance',
  expression: 'externalImpedance + feederImpedance',
  direction: { externalImpedance: 1, feederImpedance: 1 },
  compute: ({ externalImpedance, feederImpedance }) => externalImpedance + feederImpedance,
  source: { document: 'Impedances in series', provenance: 'definition', note: 'sizes added, as in the loop impedance' },
});
