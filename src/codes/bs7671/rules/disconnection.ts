import { isMissing, type Known, missing, type Sheet } from '../../../core/index.js';
import type { Ohms, Seconds } from '../../../units/index.js';
import { disconnectionRule } from '../../iec-family/disconnection.js';
import type { CircuitCase, Rule } from '../../wiring-code.js';
import { table411 } from '../tables/41-1.js';
import { table413 } from '../tables/41-3.js';
import { distributionTimes } from '../tables/411-3-2.js';
import { fuseCurrentOf } from './fuses.js';

/** Rating up to which a final circuit with socket-outlets, or one with fixed equipment only, is in Table 41.1, A. */
const socketScope = 63;
const fixedScope = 32;

/** Whether a run is a final circuit in the scope of Table 41.1; a charge point counts as a socket-outlet. */
function inScope(circuit: CircuitCase): Known<boolean> {
  const { run } = circuit;
  // a run that feeds a board and an outlet of its own as well is a final circuit for that outlet
  const outlets = run.feeds.filter((o) => o.kind !== 'board');
  if (outlets.length === 0 && run.feeds.length > 0) return false;
  const rating = run.device.rating;
  if (rating.state === 'unknown')
    return missing({
      kind: 'fact',
      fact: 'rating of the overcurrent device',
      ...(rating.obtain ? { obtain: rating.obtain } : {}),
    });
  const most = rating.state === 'known' ? rating.value : rating.least;
  const sockets = outlets.some(
    (o) => o.kind === 'charge-point' || o.purpose === 'socket-outlets' || o.withSocket === true,
  );
  return most <= (sockets ? socketScope : fixedScope);
}

function requiredTime(sheet: Sheet, circuit: CircuitCase, system: 'TN-S' | 'TN-C-S' | 'TT' | 'IT'): Known<Seconds> {
  const part = sheet.part('Required disconnection time');
  const group = () => part.label('system', system === 'TT' ? 'TT' : 'TN', 'earthing system of the supply');
  const scope = inScope(circuit);
  if (isMissing(scope)) {
    part.given('requiredTime', scope);
  } else if (scope) {
    const current = part.label('current', 'AC');
    part.look(table411, {
      system: group(),
      current,
      nominalVoltage: part.given('nominalVoltage', circuit.nominalVoltage),
    });
  } else {
    part.look(distributionTimes, { supply: part.label('supply', 'any'), system: group() });
  }
  return sheet.gather('smallest', 'requiredTime', 'requiredTime', [part]);
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
