import { kilovoltAmperes, kilowatts, ratio, volts } from '../../src/index.js';
import { currentFromPower, currentFromThreePhasePower, transformerFaultCurrent } from '../../src/physics/index.js';
import type { PublishedCase } from '../support/published.js';

/** Published cases of currents from powers, and of the fault current from a transformer's plate. */
export const cases: readonly PublishedCase[] = [
  {
    id: 'current-of-a-kiln',
    about: 'design current of a kiln of 8.6 kW',
    source: { document: 'Electric wiring: domestic', where: 'design example, kiln in a workshop' },
    provenance: 'one-source',
    exercises: [currentFromPower.id],
    ours: () => currentFromPower({ activePower: kilowatts(8.6), nominalVoltage: volts(230), powerFactor: ratio(1) }),
    published: 37.4,
    unit: 'A',
    tolerance: 0.05,
  },
  {
    id: 'current-of-a-process-heater',
    about: 'design current of a three-phase heater of 16 kW',
    source: { document: 'Exercise sheet of a UK college', where: '16 kW heater at 400 V' },
    provenance: 'derived',
    exercises: [currentFromThreePhasePower.id],
    ours: () =>
      currentFromThreePhasePower({ activePower: kilowatts(16), lineVoltage: volts(400), powerFactor: ratio(1) }),
    published: 23.1,
    unit: 'A',
    tolerance: 0.05,
  },
  {
    id: 'fault-at-the-terminals-of-300-kva',
    about: 'fault current at the terminals of a transformer of 300 kVA with 1.8 %, 208 V',
    source: { document: 'Electrical plan review handbook', where: 'point-to-point method, fault 1' },
    provenance: 'one-source',
    exercises: [transformerFaultCurrent.id],
    ours: () =>
      transformerFaultCurrent({
        transformerRating: kilovoltAmperes(300),
        transformerVoltage: volts(208),
        transformerImpedanceVoltage: ratio(0.018),
      }),
    published: 46273,
    unit: 'A',
    // the print multiplies the rounded 833 A by the rounded 55.55
    tolerance: 12,
  },
];
