import { factValue, isMissing, missing, silent } from '../../core/index.js';
import type { WiringCode } from '../wiring-code.js';
import { writeExternalImpedance } from './fault-loop.js';
import { writeRunImpedance } from './loop-impedance.js';

/** The figures of a run at a temperature, by the same lines that the assessment writes. */
export const runFigures: WiringCode['runFigures'] = (run, at, options) => {
  const sheet = silent();
  const impedance = writeRunImpedance(sheet, run, at, options);
  const none = missing({ kind: 'fact', fact: 'resistance of the run' });
  return {
    line: sheet.latest('lineResistance') ?? none,
    protective: sheet.latest('protectiveResistance') ?? none,
    both: sheet.latest('lineAndProtectiveResistance') ?? none,
    impedance,
  };
};

/** The external loop impedance, by the same lines that the assessment writes. */
export const externalImpedance: WiringCode['externalImpedance'] = (circuit) => {
  const system = factValue('earthing system of the supply', circuit.installation.supply.system);
  return isMissing(system) ? system : writeExternalImpedance(silent(), circuit, system);
};
