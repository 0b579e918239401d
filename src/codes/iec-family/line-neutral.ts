import { factValue, isMissing, type Known, type Sheet } from '../../core/index.js';
import type { Cable, Run } from '../../installation/index.js';
import { sumOfLineAndNeutral } from '../../physics/index.js';
import { celsius, type Ohms, ohms } from '../../units/index.js';
import type { AssessmentOptions } from '../wiring-code.js';
import { operatingTemperatureOf, type RunTemperature, writeConductor, writeRunImpedance } from './loop-impedance.js';

/**
 * Writes the resistance of a run for faults between live conductors as `segmentImpedance`: line and neutral of one size,
 * or the line alone, which is what a balanced three-phase fault sees and never more than the other.
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

/** The cable with everything in it that can carry an earth fault: an earthed armour carries beside a core. */
function withArmour(cable: Cable): Cable {
  if (cable.construction !== 'armoured' || cable.protective.startsWith('armour')) return cable;
  if (cable.protective === 'none') return { ...cable, protective: 'armour' };
  const protectiveArea = cable.protectiveArea ?? (cable.protective === 'core' ? cable.area : undefined);
  return { ...cable, protective: 'armour-and-separate', ...(protectiveArea ? { protectiveArea } : {}) };
}

/**
 * Writes the least resistance of a cold single-phase run for the largest fault current as `segmentImpedance`: of line
 * and neutral, or of line and protective path where the fault may return to the source that way and that is less.
 */
export function writeLeastResistance(sheet: Sheet, run: Run, earthed: boolean): Known<Ohms> {
  const cold = celsius(20);
  const cable = withArmour(run.cable);
  if (!earthed || cable.protective === 'none') return writeFeederResistance(sheet, run, true, cold);
  const neutral = sheet.part('Line and neutral');
  writeFeederResistance(neutral, run, true, cold);
  const earth = sheet.part('Line and protective conductor');
  const inner = earth.part('Armour counted where there is one');
  // a recalled figure of the armour may raise this current, never lower it: nobody has to accept that
  const options: AssessmentOptions = { acceptMemoryFigures: true };
  writeRunImpedance(inner, { ...run, cable }, cold, options);
  const path = inner.latest('lineAndProtectiveResistance');
  if (path === undefined || isMissing(path)) writeFeederResistance(earth, run, false, cold);
  else earth.gather('sum', 'lineAndProtectiveResistance', 'segmentImpedance', [inner]);
  return sheet.gather('smallest', 'segmentImpedance', 'segmentImpedance', [neutral, earth]);
}
