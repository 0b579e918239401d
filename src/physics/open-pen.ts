import { added, formula, moving, multiplied } from '../core/index.js';

/** Vector sum of three line currents of unity power factor, the current of the neutral. Vectors at 120°. */
export const vectorSum = /* @__PURE__ */ formula({
  id: 'vector-sum-of-line-currents',
  title: 'Vector sum of the line currents',
  inputs: ['lineCurrent1', 'lineCurrent2', 'lineCurrent3'],
  output: 'vectorSumCurrent',
  expression:
    'sqrt(((lineCurrent1 - lineCurrent2)^2 + (lineCurrent2 - lineCurrent3)^2 + (lineCurrent3 - lineCurrent1)^2) / 2)',
  compute: ({ lineCurrent1: a, lineCurrent2: b, lineCurrent3: c }) =>
    Math.sqrt(((a - b) ** 2 + (b - c) ** 2 + (c - a) ** 2) / 2),
  source: { document: 'Vectors at 120°', provenance: 'definition' },
});

/** Arithmetic sum of three line currents. */
export const arithmeticSum = /* @__PURE__ */ added({
  id: 'arithmetic-sum-of-line-currents',
  title: 'Arithmetic sum of the line currents',
  plus: ['lineCurrent1', 'lineCurrent2', 'lineCurrent3'],
  output: 'arithmeticSumCurrent',
  source: { document: 'physics', provenance: 'definition' },
});

/** Touch voltage with the PEN conductor open and no electrode, resistive loads in star. */
export const openPenFloating = /* @__PURE__ */ formula({
  id: 'open-pen-voltage-without-electrode',
  title: 'Touch voltage with the PEN conductor open, no electrode, resistive loads',
  inputs: ['sourceFactor', 'nominalVoltage', 'vectorSumCurrent', 'arithmeticSumCurrent'],
  output: 'touchVoltage',
  expression: 'sourceFactor * nominalVoltage * vectorSumCurrent / arithmeticSumCurrent',
  compute: ({ sourceFactor, nominalVoltage, vectorSumCurrent, arithmeticSumCurrent }) =>
    (sourceFactor * nominalVoltage * vectorSumCurrent) / arithmeticSumCurrent,
  direction: { sourceFactor: 1, nominalVoltage: 1, vectorSumCurrent: 1, arithmeticSumCurrent: -1 },
  source: { document: 'physics', clause: 'star point of resistive loads', provenance: 'derived' },
});

/**
 * Touch voltage with the PEN conductor open, resistive loads: electrodes of both sides of the break in the circuit. The
 * single phase is the case of one line current.
 */
export const openPenTouchVoltage = /* @__PURE__ */ moving({
  id: 'open-pen-touch-voltage',
  title: 'Touch voltage with the PEN conductor open, resistive loads',
  moves: {
    sourceFactor: 1,
    nominalVoltage: 1,
    vectorSumCurrent: 1,
    arithmeticSumCurrent: -1,
    electrodeResistance: 1,
    sourceElectrodeResistance: -1,
  },
  output: 'touchVoltage',
  expression:
    'sourceFactor * vectorSumCurrent * electrodeResistance / (1 + arithmeticSumCurrent * (electrodeResistance + sourceElectrodeResistance) / nominalVoltage)',
  compute: ({
    sourceFactor: c,
    nominalVoltage,
    vectorSumCurrent,
    arithmeticSumCurrent,
    electrodeResistance: ra,
    sourceElectrodeResistance: rb,
  }) => (c * vectorSumCurrent * ra) / (1 + (arithmeticSumCurrent * (ra + rb)) / nominalVoltage),
  source: { document: 'physics', clause: 'one node, resistive loads in star', provenance: 'derived' },
});

/** Voltage of the source neutral to earth with the PEN conductor open: what electrodes of the network cost others. */
export const openPenSourceVoltage = /* @__PURE__ */ moving({
  id: 'open-pen-source-neutral-voltage',
  title: 'Voltage of the source neutral with the PEN conductor open',
  moves: { touchVoltage: 1, electrodeResistance: -1, sourceElectrodeResistance: 1 },
  output: 'sourceNeutralVoltage',
  expression: 'touchVoltage * sourceElectrodeResistance / electrodeResistance',
  compute: ({ touchVoltage, electrodeResistance, sourceElectrodeResistance }) =>
    (touchVoltage * sourceElectrodeResistance) / electrodeResistance,
  valid: { electrodeResistance: { above: 0 } },
  source: { document: 'physics', provenance: 'derived' },
});

/**
 * Largest electrode resistance that keeps a touch voltage with the PEN conductor open, resistive loads. Where the star
 * point stays below the limit by itself there is no such resistance, and no electrode is needed.
 */
export const openPenElectrodeLimit = /* @__PURE__ */ moving({
  id: 'open-pen-electrode-limit',
  title: 'Largest electrode resistance with the PEN conductor open, resistive loads',
  moves: {
    touchVoltageLimit: 1,
    sourceFactor: -1,
    nominalVoltage: -1,
    vectorSumCurrent: -1,
    arithmeticSumCurrent: 1,
    sourceElectrodeResistance: 1,
  },
  output: 'electrodeLimit',
  expression:
    'touchVoltageLimit * (1 + arithmeticSumCurrent * sourceElectrodeResistance / nominalVoltage) / (sourceFactor * vectorSumCurrent - touchVoltageLimit * arithmeticSumCurrent / nominalVoltage)',
  compute: ({
    touchVoltageLimit: u,
    sourceFactor: c,
    nominalVoltage: u0,
    vectorSumCurrent,
    arithmeticSumCurrent: sum,
    sourceElectrodeResistance: rb,
  }) => (u * (1 + (sum * rb) / u0)) / (c * vectorSumCurrent - (u * sum) / u0),
  source: { document: 'physics', clause: 'one node, resistive loads in star', provenance: 'derived' },
});

/** Largest electrode resistance for a load that holds its current, as a charger does that is told a current. */
export const heldCurrentElectrodeLimit = /* @__PURE__ */ multiplied({
  id: 'open-pen-electrode-limit-held-current',
  title: 'Largest electrode resistance, load that holds its current',
  times: ['touchVoltageLimit'],
  over: ['installationCurrent'],
  output: 'electrodeLimit',
  source: { document: 'physics', provenance: 'definition' },
});

/** Power of a charge point alone at nominal voltage, which a charger that holds its power draws at any voltage. */
export const heldPowerOf = /* @__PURE__ */ multiplied({
  id: 'held-power-at-nominal-voltage',
  title: 'Power that a charger holds, at nominal voltage',
  times: ['chargeCurrent', 'nominalVoltage'],
  output: 'heldPower',
  source: { document: 'physics', provenance: 'definition' },
});

/** Largest electrode resistance for a load that holds its power; smallest at the lowest supply voltage. */
export const heldPowerElectrodeLimit = /* @__PURE__ */ formula({
  id: 'open-pen-electrode-limit-held-power',
  title: 'Largest electrode resistance, load that holds its power',
  inputs: ['touchVoltageLimit', 'supplyVoltage', 'heldPower'],
  output: 'electrodeLimit',
  expression: 'touchVoltageLimit * (supplyVoltage - touchVoltageLimit) / heldPower',
  compute: ({ touchVoltageLimit, supplyVoltage, heldPower }) =>
    (touchVoltageLimit * (supplyVoltage - touchVoltageLimit)) / heldPower,
  direction: { supplyVoltage: 1, heldPower: -1 },
  source: {
    document: 'physics',
    provenance: 'derived',
    note: 'holds on the branch of the higher load voltage, for a limit up to half the supply voltage',
  },
});

/** Electrode resistance above which a load that holds its power has no operating point: there metal stands at U/2. */
export const heldPowerCollapse = /* @__PURE__ */ moving({
  id: 'open-pen-collapse-resistance',
  title: 'Electrode resistance above which a held power collapses',
  moves: { supplyVoltage: 1, heldPower: -1 },
  output: 'collapseResistance',
  expression: 'supplyVoltage^2 / (4 * heldPower)',
  compute: ({ supplyVoltage, heldPower }) => supplyVoltage ** 2 / (4 * heldPower),
  source: { document: 'physics', provenance: 'derived' },
});

/** Touch voltage with a load that holds its power, on the branch of the higher load voltage. */
export const heldPowerTouchVoltage = /* @__PURE__ */ moving({
  id: 'open-pen-touch-voltage-held-power',
  title: 'Touch voltage with the PEN conductor open, load that holds its power',
  moves: { supplyVoltage: -1, heldPower: 1, electrodeResistance: 1 },
  output: 'touchVoltage',
  expression: '(supplyVoltage - sqrt(supplyVoltage^2 - 4 * heldPower * electrodeResistance)) / 2',
  compute: ({ supplyVoltage: u, heldPower, electrodeResistance }) =>
    (2 * heldPower * electrodeResistance) / (u + Math.sqrt(u * u - 4 * heldPower * electrodeResistance)),
  source: { document: 'physics', provenance: 'derived' },
});

/**
 * Largest voltage of exposed metal at which the monitored line of a three-phase supply still reads inside its window:
 * the star point lies on the side of the voltage triangle, at the upper limit from the monitored line.
 */
export const undetectedVoltageOf = /* @__PURE__ */ formula({
  id: 'open-pen-undetected-voltage',
  title: 'Largest voltage that a line-neutral monitor cannot see, three phases',
  inputs: ['supplyVoltage', 'windowUpper'],
  output: 'undetectedVoltage',
  expression: 'sqrt(supplyVoltage^2 + windowUpper^2 - sqrt(3) * supplyVoltage * windowUpper)',
  compute: ({ supplyVoltage: e, windowUpper: w }) => Math.sqrt(e * e + w * w - Math.sqrt(3) * e * w),
  source: {
    document: 'physics',
    provenance: 'derived',
    note: 'for an upper limit between √3/2 and √3 of the supply voltage, no electrode',
  },
});

/** Voltage that may be lost in the installation before a line-neutral window trips at the lowest supply voltage. */
export const windowMarginOf = /* @__PURE__ */ added({
  id: 'line-neutral-window-margin',
  title: 'Voltage that may be lost before the window trips',
  plus: ['minimumSupplyVoltage'],
  minus: ['windowLower'],
  output: 'windowMargin',
  signed: true,
  source: { document: 'physics', provenance: 'derived' },
});
