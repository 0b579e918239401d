import { formula, relation } from '../core/index.js';
import { CalculationError } from '../units/index.js';

/** Voltage at a load that holds its current, power factor referred to its own voltage. Circuit theory. */
export const voltageAtConstantCurrent = /* @__PURE__ */ formula({
  id: 'voltage-at-constant-current',
  title: 'Voltage at a load that holds its current',
  inputs: ['supplyVoltage', 'resistance', 'reactance', 'designCurrent', 'powerFactor', 'reactiveFactor'],
  output: 'pointVoltage',
  expression:
    'sqrt(supplyVoltage^2 - (designCurrent * (reactance * powerFactor - resistance * reactiveFactor))^2) - designCurrent * (resistance * powerFactor + reactance * reactiveFactor)',
  compute: ({ supplyVoltage, resistance, reactance, designCurrent, powerFactor, reactiveFactor }) =>
    Math.sqrt(supplyVoltage ** 2 - (designCurrent * (reactance * powerFactor - resistance * reactiveFactor)) ** 2) -
    designCurrent * (resistance * powerFactor + reactance * reactiveFactor),
  source: { document: 'Circuit theory', clause: 'phasor sum, exact', provenance: 'definition' },
});

/** Voltage at a load whose current is referred to the voltage of the source. Circuit theory. */
export const voltageAtSourceCurrent = /* @__PURE__ */ formula({
  id: 'voltage-at-source-current',
  title: 'Voltage at a load whose current is referred to the source',
  inputs: ['supplyVoltage', 'resistance', 'reactance', 'designCurrent', 'powerFactor', 'reactiveFactor'],
  output: 'pointVoltage',
  expression:
    'sqrt((supplyVoltage - designCurrent * (resistance * powerFactor + reactance * reactiveFactor))^2 + (designCurrent * (reactance * powerFactor - resistance * reactiveFactor))^2)',
  compute: ({ supplyVoltage, resistance, reactance, designCurrent, powerFactor, reactiveFactor }) =>
    Math.hypot(
      supplyVoltage - designCurrent * (resistance * powerFactor + reactance * reactiveFactor),
      designCurrent * (reactance * powerFactor - resistance * reactiveFactor),
    ),
  source: { document: 'Circuit theory', clause: 'phasor sum, exact', provenance: 'definition' },
});

/** Voltage at a load that holds its power: the upper of the two operating points. Circuit theory. */
export const voltageAtConstantPower = /* @__PURE__ */ relation({
  id: 'voltage-at-constant-power',
  title: 'Voltage at a load that holds its power',
  inputs: ['supplyVoltage', 'resistance', 'reactance', 'activePower', 'reactivePower'],
  output: 'pointVoltage',
  terms: [
    'pointVoltage^4',
    '2 * (resistance * activePower + reactance * reactivePower) * pointVoltage^2',
    '-(supplyVoltage^2 * pointVoltage^2)',
    '(resistance^2 + reactance^2) * (activePower^2 + reactivePower^2)',
  ],
  tolerance: 1e-10,
  solve: ({ supplyVoltage, resistance, reactance, activePower, reactivePower }) => {
    const b = supplyVoltage ** 2 - 2 * (resistance * activePower + reactance * reactivePower);
    const c = (resistance ** 2 + reactance ** 2) * (activePower ** 2 + reactivePower ** 2);
    const root = b * b - 4 * c;
    if (!(root >= 0 && b > 0)) {
      const values = { supplyVoltage, resistance, reactance, activePower, reactivePower };
      throw new CalculationError(
        'no-solution',
        `a load of ${activePower} W cannot be served from ${supplyVoltage} V through ${resistance} Ω: there is no operating point`,
        { method: 'voltage-at-constant-power', values },
      );
    }
    return Math.sqrt((b + Math.sqrt(root)) / 2);
  },
  source: { document: 'Circuit theory', clause: 'power balance, exact', provenance: 'definition' },
});

/** Voltage drop from the voltages at both ends. Definition. Definition of voltage drop. */
export const dropBetween = /* @__PURE__ */ formula({
  id: 'drop-between-voltages',
  title: 'Voltage drop from the voltages at both ends',
  inputs: ['supplyVoltage', 'pointVoltage'],
  output: 'totalDrop',
  expression: 'supplyVoltage - pointVoltage',
  compute: ({ supplyVoltage, pointVoltage }) => supplyVoltage - pointVoltage,
  source: { document: 'Definition of voltage drop', provenance: 'definition' },
});

/** Drop at the last of N equal loads spaced equally along a run. Circuit theory, unity power factor. */
export const dropOfEqualTaps = /* @__PURE__ */ formula({
  id: 'drop-of-equal-taps',
  title: 'Voltage drop at the last of equal loads spaced equally',
  inputs: ['dropRate', 'designCurrent', 'length', 'tapCount'],
  output: 'voltageDrop',
  expression: 'dropRate * designCurrent * length * (tapCount + 1) / (2 * tapCount)',
  compute: ({ dropRate, designCurrent, length, tapCount }) =>
    (dropRate * designCurrent * length * (tapCount + 1)) / (2 * tapCount),
  source: { document: 'Circuit theory', clause: 'sum over sections', provenance: 'derived' },
});

/** Drop at a single load on a ring, from the rate of its cable and the length once round. Circuit theory. */
export const dropOnRing = /* @__PURE__ */ formula({
  id: 'drop-on-ring',
  title: 'Voltage drop at a load on a ring',
  inputs: ['dropRate', 'designCurrent', 'length', 'ringPosition'],
  output: 'voltageDrop',
  expression: 'dropRate * designCurrent * length * ringPosition * (1 - ringPosition)',
  direction: { dropRate: 1, designCurrent: 1, length: 1 },
  compute: ({ dropRate, designCurrent, length, ringPosition }) =>
    dropRate * designCurrent * length * ringPosition * (1 - ringPosition),
  source: { document: 'Circuit theory', clause: 'two resistances in parallel', provenance: 'derived' },
});
