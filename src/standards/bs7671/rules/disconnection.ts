import { isMissing, type Known, missing, type Sheet } from '../../../core/index.js';
import { outletsBelow } from '../../../installation/index.js';
import { currentOnCurve } from '../../../physics/index.js';
import { type Amperes, type Ohms, type Seconds, seconds } from '../../../units/index.js';
import { disconnectionRule } from '../../iec-family/disconnection.js';
import type { FuseCurrent } from '../../iec-family/operating-current.js';
import type { CircuitCase, Rule } from '../../wiring-code.js';
import { table411 } from '../tables/41-1.js';
import { table413 } from '../tables/41-3.js';
import { distributionTimes } from '../tables/411-3-2.js';
import { fuseOperatingCurrents } from '../tables/fuse-operating-currents.js';

/** Rating up to which a final circuit with socket-outlets, or one with fixed equipment only, is in Table 41.1, A. */
const socketScope = 63;
const fixedScope = 32;

/** Whether a run is a final circuit in the scope of Table 41.1; a charge point counts as a socket-outlet. */
function inScope(circuit: CircuitCase): Known<boolean> {
  const { run } = circuit;
  if (run.feeds.some((o) => o.kind === 'board')) return false;
  const rating = run.device.rating;
  if (rating.state === 'unknown')
    return missing({
      kind: 'fact',
      fact: 'rating of the overcurrent device',
      ...(rating.obtain ? { obtain: rating.obtain } : {}),
    });
  const most = rating.state === 'known' ? rating.value : rating.least;
  const outlets = outletsBelow(run);
  const sockets = outlets.some(
    (o) => o.kind === 'charge-point' || o.purpose === 'socket-outlets' || o.withSocket === true,
  );
  return most <= (sockets ? socketScope : fixedScope);
}

function requiredTime(sheet: Sheet, circuit: CircuitCase, system: 'TN-S' | 'TN-C-S' | 'TT' | 'IT'): Known<Seconds> {
  const part = sheet.part('Required disconnection time');
  const group = part.label('system', system === 'TT' ? 'TT' : 'TN', 'earthing system of the supply');
  const scope = inScope(circuit);
  if (isMissing(scope)) {
    part.given('requiredTime', scope);
  } else if (scope) {
    const current = part.label('current', 'AC');
    part.look(table411, {
      system: group,
      current,
      nominalVoltage: part.given('nominalVoltage', circuit.nominalVoltage),
    });
  } else {
    part.look(distributionTimes, { supply: part.label('supply', 'any'), system: group });
  }
  return sheet.gather('smallest', 'requiredTime', 'requiredTime', [part]);
}

/** Whether the two standards of a BS 88-2 fuse print the same currents for a rating. */
const fuseEditionOf = (circuit: CircuitCase) => circuit.options.fuseEdition;

const fuseCurrentOf =
  (circuit: CircuitCase): FuseCurrent =>
  (sheet, device, standard, within) => {
    const edition = fuseEditionOf(circuit);
    if (standard === 'BS 88-2' && edition === undefined && circuit.run.existing === true)
      return eitherEdition(sheet, device, within);
    const name = standard === 'BS 88-2' && edition === '2008' ? 'BS 88-2.2' : standard;
    return readFuse(sheet, name, device, within);
  };

type FuseName = 'BS 88-2' | 'BS 88-2.2' | 'BS 88-3' | 'BS 1361' | 'BS 1362' | 'BS 3036';

/** Without its edition an existing fuse is judged by the heavier of both currents. */
function eitherEdition(sheet: Sheet, device: CircuitCase['run']['device'], within: Known<Seconds>): Known<Amperes> {
  const parts = (['BS 88-2', 'BS 88-2.2'] as const).map((name) => {
    const part = sheet.part(`Fuse to ${name}`);
    readFuse(part, name, device, within);
    return part;
  });
  sheet.note('Edition of the fuse not stated: the larger of both operating currents counts.');
  return sheet.gather('largest', 'operatingCurrent', 'operatingCurrent', parts);
}

function readFuse(
  sheet: Sheet,
  name: FuseName,
  device: CircuitCase['run']['device'],
  within: Known<Seconds>,
): Known<Amperes> {
  const at = (target: Sheet, time: Known<Seconds>) => {
    const label = target.label('device', name);
    const operatingTime = target.given('operatingTime', time);
    const deviceRating = target.given('deviceRating', device.rating);
    return target.look(fuseOperatingCurrents, { device: label, operatingTime, deviceRating });
  };
  if (isMissing(within) || within === 0.4 || within === 5 || within < 0.4 || within > 5) return at(sheet, within);
  const quick = at(sheet.part('0.4 s'), seconds(0.4));
  const slow = at(sheet.part('5 s'), seconds(5));
  if (isMissing(quick)) return sheet.given('operatingCurrent', quick);
  if (isMissing(slow)) return sheet.given('operatingCurrent', slow);
  return sheet.run(currentOnCurve, {
    points: [
      { current: quick as number, time: 0.4 },
      { current: slow as number, time: 5 },
    ],
    time: within as number,
  });
}

/** The printed limit of Table 41.3, which the trade compares with. */
function printedLimit(sheet: Sheet, circuit: CircuitCase): Known<Ohms> | undefined {
  const { kind, rating } = circuit.run.device;
  if (kind.state !== 'known' || rating.state !== 'known' || circuit.nominalVoltage !== 230) return undefined;
  if (kind.value.standard !== 'EN 60898' && kind.value.standard !== 'EN 61009') return undefined;
  const printed = sheet.label('printed', '2015');
  const type = sheet.label('type', kind.value.type);
  return sheet.look(table413, { printed, type, deviceRating: sheet.given('deviceRating', rating) });
}

/** Automatic disconnection of supply. BS 7671 Chapter 41. */
export const disconnection: Rule = (circuit, findings, sheet) =>
  disconnectionRule({
    minimumVoltageFactor: [0.95, 'BS 7671 411.4.4, C_min'],
    requiredTime,
    fuseCurrent: fuseCurrentOf(circuit),
    printedLimit,
  })(circuit, findings, sheet);
