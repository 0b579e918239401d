import {
  type CheckResult,
  type Fact,
  factValue,
  isMissing,
  type Known,
  missing,
  notDetermined,
  type Sheet,
} from '../../core/index.js';
import { prospectiveBehindFeeders } from '../../physics/index.js';
import { type Amperes, celsius, ohms } from '../../units/index.js';
import type { CircuitCase, Findings } from '../wiring-code.js';
import { breakingCapacityCheck, conditionalBreakingCapacity, ownBreakingCapacity } from './breaking-checks.js';
import { writeFeederResistance, writeLeastResistance } from './line-neutral.js';

/**
 * Writes the largest prospective current at the origin of a run, from that at the origin of the installation and the
 * feeders ahead, cold, and adds to the findings.
 * @param sheet where it is written
 * @param findings what is found out
 * @returns prospective current, A, or what is missing
 */
export function writeProspective(sheet: Sheet, circuit: CircuitCase, findings: Findings): Known<Amperes> {
  const { supply } = circuit.installation;
  const single = supply.phases.state === 'known' && supply.phases.value === 1;
  const earthed = !(supply.system.state === 'known' && supply.system.value === 'TT');
  const parts = circuit.path.feeders.map((feeder) => {
    const part = sheet.part(`Cold resistance of ${feeder.id}`);
    if (single) writeLeastResistance(part, feeder, earthed);
    else writeFeederResistance(part, feeder, false, celsius(20));
    return part;
  });
  const counted = sheet.gather('sum', 'segmentImpedance', 'feederImpedance', parts);
  // without its impedance a feeder is left out: the current is then not understated
  const feederImpedance = isMissing(counted)
    ? sheet.given('feederImpedance', ohms(0), 'not known, and left out: the largest current is sought')
    : counted;
  const nominalVoltage = sheet.given('nominalVoltage', circuit.nominalVoltage);
  const prospectiveCurrent = sheet.given('prospectiveCurrent', supply.prospectiveCurrent);
  const current = sheet.step(prospectiveBehindFeeders, { nominalVoltage, prospectiveCurrent, feederImpedance });
  findings.prospectiveAtOrigin = isMissing(counted) ? counted : current;
  return current;
}

const fact = <T>(name: string, given: Fact<T> | undefined, obtain: string): Known<T> =>
  given ? factValue(name, given) : missing({ kind: 'fact', fact: name, obtain });

/**
 * Judges the breaking capacity of the device of a run, own or conditional; `maximumFaultCurrent` stands on the sheet.
 * @param sheet where it is written
 * @param current largest prospective current at the device, A, 0 and up
 * @returns pass when either suffices, fail when neither does, else not determined
 */
export function judgeBreaking(sheet: Sheet, circuit: CircuitCase, current: Known<Amperes>): CheckResult {
  const { device } = circuit.run;
  const own = sheet.part('By itself');
  const breakingCapacity = own.given(
    'breakingCapacity',
    fact('breaking capacity of the device', device.breakingCapacity, 'in the rectangle on its front'),
  );
  const results = [own.check(ownBreakingCapacity, { breakingCapacity, maximumFaultCurrent: current })];
  const declared = [device.conditionalRating, circuit.board.conditionalRating].filter((f) => f !== undefined);
  const conditional = sheet.part('With the assembly or the device ahead');
  if (declared.length === 0) {
    results.push(
      conditional.result(
        notDetermined(conditionalBreakingCapacity, {
          kind: 'fact',
          fact: 'conditional short-circuit rating',
          obtain: 'from the label of the assembly, or back-up by the fuse ahead as the maker declares it',
        }),
      ),
    );
  }
  declared.forEach((f, i) => {
    const part = conditional.part(
      i === 0 && device.conditionalRating ? 'Declared for the device' : 'Declared for the assembly',
    );
    const breakingLimit = part.given('breakingLimit', factValue('conditional short-circuit rating', f));
    results.push(part.check(conditionalBreakingCapacity, { breakingLimit, maximumFaultCurrent: current }));
  });
  return sheet.check(breakingCapacityCheck, { results }, circuit.path.feeders.length > 0 ? behindFeeder : undefined);
}

/** What the current behind a feeder is, said with every verdict that rests on it. */
const behindFeeder =
  'The prospective current behind a feeder is an upper bound of what its cables let through: conductors at 20 °C, the feeder at right angles to the source. Other metal that joins the boards to earth is not counted: measure at the board.';
