import type { Known, Sheet } from '../../core/index.js';
import type { EarthingSystem } from '../../installation/index.js';
import { externalImpedanceOfElectrode, loopImpedanceOf, originImpedanceOf } from '../../physics/index.js';
import { celsius, type Ohms, ohms } from '../../units/index.js';
import type { CircuitCase, Findings } from '../wiring-code.js';
import { writeImpedances } from './loop-impedance.js';

/** Writes the external earth fault loop impedance: as surveyed, or on TT from the electrode and the path of the network. */
export function writeExternalImpedance(sheet: Sheet, circuit: CircuitCase, system: EarthingSystem): Known<Ohms> {
  const { supply } = circuit.installation;
  const electrode = supply.electrode?.resistance;
  if (system === 'TT' && supply.externalImpedance.state === 'unknown' && electrode && electrode.state !== 'unknown') {
    const part = sheet.part('Earth fault path of a TT supply');
    const earthElectrode = part.given('earthElectrode', electrode);
    const networkEarth = part.given('networkEarth', ohms(21), 'customary largest value of the network, ENA ER P23/1');
    part.step(externalImpedanceOfElectrode, { earthElectrode, networkEarth });
    return sheet.gather('sum', 'externalImpedance', 'externalImpedance', [part]);
  }
  return sheet.given('externalImpedance', supply.externalImpedance);
}

/**
 * Writes the loop impedance of a circuit, hot, from Z_e, every feeder of its path and the circuit itself, and adds to
 * the findings; R_1+R_2 at 20 °C is found besides, for the tests.
 */
export function writeLoopImpedance(sheet: Sheet, circuit: CircuitCase, system: EarthingSystem, findings: Findings) {
  const { feeders, run } = circuit.path;
  const externalImpedance = writeExternalImpedance(sheet, circuit, system);
  const feederParts = writeImpedances(sheet, feeders, 'operating', circuit.options);
  const [own] = writeImpedances(sheet, [run], 'operating', circuit.options);
  const parts = own ? [...feederParts, own] : feederParts;
  const feederImpedance = sheet.gather('sum', 'segmentImpedance', 'feederImpedance', feederParts);
  findings.loopAtOrigin = sheet.step(originImpedanceOf, { externalImpedance, feederImpedance });
  const circuitImpedance = sheet.gather('sum', 'segmentImpedance', 'circuitImpedance', parts);
  const loopImpedance = sheet.step(loopImpedanceOf, { externalImpedance, circuitImpedance });
  findings.loopImpedance = loopImpedance;
  const cold = sheet.part('R_1+R_2 at 20 °C, for the tests');
  const [coldPart] = writeImpedances(cold, [run], celsius(20), circuit.options);
  findings.lineAndProtectiveCold = coldPart?.latest('lineAndProtectiveResistance') ?? ohms(0);
  return { loopImpedance, parts };
}
