import { factValue, type Known, type Sheet } from '../../core/index.js';
import type { Run } from '../../installation/index.js';
import { sumOfLineAndNeutral } from '../../physics/index.js';
import { type Ohms, ohms } from '../../units/index.js';
import { operatingTemperatureOf, type RunTemperature, writeConductor } from './loop-impedance.js';

/**
 * Writes the resistance of a run for faults between live conductors as `segmentImpedance`: line and neutral of one size,
 * or the line alone, which is what a balanced three-phase fault sees and never more than the other.
 * @param sheet the part that belongs to the run
 * @param run feeder or circuit
 * @param withNeutral whether the neutral is counted
 * @param at temperature of the conductors, °C, -60 to 1200, or `operating`
 * @returns resistance, Ω, or what is missing
 */
export function writeFeederResistance(sheet: Sheet, run: Run, withNeutral: boolean, at: RunTemperature): Known<Ohms> {
  const hot = at === 'operating' ? operatingTemperatureOf(run.cable.insulation) : at;
  const area = factValue('area of the line conductor', run.cable.area);
  const part = writeConductor(sheet, 'Line conductor', run, run.cable.material, area, hot);
  const lineResistance = sheet.gather('sum', 'resistance', 'lineResistance', [part]);
  const neutralResistance = withNeutral
    ? sheet.gather('sum', 'resistance', 'neutralResistance', [part])
    : sheet.given('neutralResistance', ohms(0), 'not counted: the largest current is sought');
  return sheet.step(sumOfLineAndNeutral, { lineResistance, neutralResistance });
}
