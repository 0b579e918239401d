import { table } from '../../core/index.js';
import { refuseNumbers } from '../../core/refuse-numbers.js';
import type { Volts } from '../../units/index.js';

/** Nominal voltages of the pilot signal by state. IEC 61851-1 Table A.4. */
export const pilotStates = /* @__PURE__ */ table({
  id: 'iec61851/pilot-states',
  title: 'Voltage of the pilot signal by state',
  axes: [
    { name: 'half', labels: ['high', 'low'] },
    { name: 'state', labels: ['A', 'B', 'C', 'D', 'E', 'F'] },
  ],
  rows: [
    ['A', 12, null],
    ['B', 9, -12],
    ['C', 6, -12],
    ['D', 3, -12],
    ['E', 0, 0],
    ['F', -12, -12],
  ],
  cell: 'pilotVoltage',
  unit: 'V',
  source: {
    document: 'IEC 61851-1',
    edition: '2017',
    clause: 'Annex A, Table A.4',
    provenance: 'two-sources',
    note: 'measured within 1 V',
  },
  notes: [
    'A: no vehicle. B: connected, not ready. C: ready. D: ready, ventilation needed. E: fault or supply lost. F: point not available.',
    'B, C and D alternate with -12 V while a current is offered; B1, C1 and D1 stand still at the high voltage.',
  ],
});

/** A state of the control pilot. */
export type PilotState = 'A' | 'B' | 'C' | 'D' | 'E' | 'F';

/**
 * The state of the control pilot from its voltages. IEC 61851-1 Table A.4, each voltage within 1 V.
 * @param high voltage during the pulse, or the standing voltage, V, any
 * @param low voltage between pulses, V, any; absent when it does not alternate
 * @returns the state, or undefined where the voltages are no state's
 * @throws CalculationError `invalid-input` where a reading is no number
 * @example
 * ```ts
 * import { volts } from 'ohmwright';
 * import { pilotStateAt } from 'ohmwright/charging';
 *
 * pilotStateAt(volts(6.2), volts(-11.9)); // => 'C'
 * pilotStateAt(volts(7.5), volts(-12)); // => undefined
 * ```
 */
export function pilotStateAt(high: Volts, low?: Volts): PilotState | undefined {
  refuseNumbers('the voltage of a control pilot', { high, ...(low === undefined ? {} : { low }) });
  const near = (a: number, b: number | undefined) => b !== undefined && Math.abs(a - b) <= 1;
  return (['A', 'B', 'C', 'D', 'E', 'F'] as const).find((state) => {
    if (!near(high, pilotStates.find({ half: 'high', state }))) return false;
    if (low === undefined) return true;
    return state !== 'A' && near(low, pilotStates.find({ half: 'low', state }));
  });
}
