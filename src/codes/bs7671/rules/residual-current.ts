import {
  type CheckResult,
  factValue,
  isMissing,
  type Known,
  missing,
  notDetermined,
  notRequired,
  reaches,
  type Sheet,
  whenKnown,
} from '../../../core/index.js';
import { type ChargePoint, type Load, outletsBelow, type ResidualDevice } from '../../../installation/index.js';
import { smoothCurrentWithstand } from '../../../products/en61008/smooth-current.js';
import { type Amperes, amperes, milliamperes } from '../../../units/index.js';
import { residualUpstream } from '../../iec-family/residual-position.js';
import type { CircuitCase, Rule } from '../../wiring-code.js';
import * as c from '../residual-checks.js';

import {
  ask,
  cableDepends,
  fact,
  isPoint,
  judgePoint,
  pointsThrough,
  protecting,
  rating,
  ratingOf,
} from './residual-point.js';

function position(circuit: CircuitCase, sheet: Sheet, inside: readonly ResidualDevice[]): CheckResult {
  const depends = cableDepends(circuit);
  if (isMissing(depends)) return sheet.result(notDetermined(c.residualAtOrigin, ...depends.missing));
  if (!depends)
    return sheet.result(
      notRequired(c.residualAtOrigin, 'not-applicable', 'The cable does not depend on a residual current device.'),
    );
  const upstream = residualUpstream(circuit.path).length > 0;
  return sheet.check(c.residualAtOrigin, {
    holds: upstream,
    because: upstream
      ? 'a device stands upstream of the whole cable'
      : inside.length > 0
        ? 'a device inside the equipment protects no cable ahead of it'
        : 'no device stands upstream of the cable',
  });
}

/** Devices that serve several points: what they can pass of smooth direct current, each at most 6 mA. */
function smoothCurrent(circuit: CircuitCase, sheet: Sheet): CheckResult[] {
  return residualUpstream(circuit.path).flatMap((device, i) => {
    const here = sheet.part(`Smooth direct current through device ${i + 1} from the origin`);
    const type = factValue('type of the residual current device', device.type);
    if (isMissing(type)) return [here.result(notDetermined(c.smoothCurrentBorne, ...type.missing))];
    if (type === 'B') return [];
    const points = pointsThrough(circuit, device);
    const parts = points.map((p) => {
      const part = here.part(p.id);
      const detection = fact('detection of 6 mA direct current', p.directCurrentDetection, 'the instructions');
      part.given(
        'smoothResidualCurrent',
        whenKnown([detection], (d) =>
          d
            ? milliamperes(6)
            : missing(ask(`direct current that ${p.id} can pass`, 'without a detector it is not limited')),
        ) as Known<Amperes>,
        'IEC 62955: a detector may let up to 6 mA stand',
      );
      return part;
    });
    if (parts.length === 0) return [];
    const smoothResidualSum = here.gather('sum', 'smoothResidualCurrent', 'smoothResidualSum', parts);
    const residualType = here.label('residualType', type);
    const smoothResidualWithstand = here.look(smoothCurrentWithstand, { residualType });
    return [here.check(c.smoothCurrentBorne, { smoothResidualSum, smoothResidualWithstand })];
  });
}

function selectivity(circuit: CircuitCase, sheet: Sheet, inside: readonly ResidualDevice[]): CheckResult[] {
  const series = [...residualUpstream(circuit.path), ...inside];
  return series.slice(1).map((below, i) => {
    const above = series[i] as ResidualDevice;
    const delay = fact('delay of the upstream residual current device', above.delay, 'the marking S');
    const holds = whenKnown(
      [delay, ratingOf(above), ratingOf(below)],
      (d, a, b) => d === 'selective' && reaches(a, 3 * b),
    );
    return sheet.check(c.residualSelective, { holds, because: 'otherwise either of the two may open' });
  });
}

/** Standing currents of every point behind a device, whoever's circuit it is, against that device. */
function standing(points: readonly ChargePoint[], device: ResidualDevice, part: Sheet): CheckResult[] {
  if (points.length === 0) return [];
  const parts = points.map((p) => {
    const own = part.part(p.id);
    own.given('standingCurrent', p.standingLeakage ?? missing(ask(`standing current of ${p.id}`, 'the data sheet')));
    return own;
  });
  const standingCurrentSum = part.gather('sum', 'standingCurrent', 'standingCurrentSum', parts);
  const standingCurrentLimit = part.given(
    'standingCurrentLimit',
    whenKnown([ratingOf(device)], (r) => amperes(0.3 * r)),
    '30 % of the rated residual current, BS 7671 531.3.2',
  );
  return [part.check(c.standingCurrentBorne, { standingCurrentSum, standingCurrentLimit })];
}

function standingCurrents(circuit: CircuitCase, points: readonly ChargePoint[], sheet: Sheet): CheckResult[] {
  const behind = [
    ...residualUpstream(circuit.path).map((device) => ({ device, through: pointsThrough(circuit, device) })),
    ...points.flatMap((p) => (p.residual ? [{ device: p.residual, through: [p] }] : [])),
  ];
  return behind.flatMap(({ device, through }, i) =>
    standing(through, device, behind.length > 1 ? sheet.part(`Device ${i + 1} from the origin`) : sheet),
  );
}

function overload(circuit: CircuitCase, sheet: Sheet): CheckResult[] {
  const ahead = circuit.path.feeders.at(-1)?.device ?? circuit.installation.supply.cutOut;
  return (circuit.board.residual ?? []).flatMap((device, i) => {
    if (device.ratedCurrent === undefined) return [];
    if (device.serves && !device.serves.includes(circuit.run.id)) return [];
    const part = sheet.part(`Load of residual current device ${i + 1} on the board`);
    const residualRatedCurrent = part.given('residualRatedCurrent', device.ratedCurrent);
    const served = circuit.board.runs.filter((r) => device.serves === undefined || device.serves.includes(r.id));
    const sum = whenKnown(
      served.map((r) => factValue(`rating of the device of ${r.id}`, r.device.rating)),
      (...all) => (all as unknown as number[]).reduce((a, b) => a + b, 0),
    );
    // whichever is smaller limits the current: the device ahead, or those below together; where one of them is not
    // known, the other decides only if it is small enough
    const before = factValue(
      ahead === circuit.installation.supply.cutOut ? 'cutOutRating' : 'rating of the device ahead',
      ahead.rating,
    );
    const carries = factValue('rated current of the residual current device', device.ratedCurrent);
    const limits = [before, sum].filter((x) => !isMissing(x)) as number[];
    const small = limits.some((x) => !isMissing(carries) && x <= carries);
    const least =
      limits.length === 1 && small ? Math.min(...limits) : whenKnown([before, sum], (a, b) => Math.min(a, b as number));
    const residualLoad = part.given(
      'residualLoad',
      isMissing(least) ? least : amperes(least as number),
      'the device ahead, or the devices below together, diversity not counted',
    );
    return [part.check(c.residualNotOverloaded, { residualRatedCurrent, residualLoad })];
  });
}

const feedsBack = (o: Load | ChargePoint) =>
  isPoint(o) ? o.bidirectional === true : o.purpose === 'generation' || o.purpose === 'storage';

function bothWays(circuit: CircuitCase, sheet: Sheet): CheckResult[] {
  if (!outletsBelow(circuit.run).some(feedsBack)) return [];
  return residualUpstream(circuit.path).map((device) =>
    sheet.check(c.residualBothWays, {
      holds: fact('whether the device may be fed from both sides', device.bidirectional, 'the marking of the device'),
      because: 'this circuit can feed back',
    }),
  );
}

function board(circuit: CircuitCase, sheet: Sheet): CheckResult[] {
  const infeeds = circuit.board.runs.filter((r) => outletsBelow(r).some(feedsBack));
  if (infeeds.length === 0) return [];
  const part = sheet.part('Rating of the board');
  const boardRating = part.given(
    'boardRating',
    circuit.board.rating ?? missing(ask('rated current of the board', 'its rating plate')),
  );
  const ahead = circuit.path.feeders.at(-1)?.device ?? circuit.installation.supply.cutOut;
  const boardInfeed = part.given(
    'boardInfeed',
    whenKnown(
      [ahead, ...infeeds.map((r) => r.device)].map((d) => factValue('rating of an infeed', d.rating)),
      (...all) => amperes((all as unknown as number[]).reduce((a, b) => a + b, 0)),
    ) as Known<Amperes>,
    'device ahead and the devices of every circuit that can feed back',
  );
  return [part.check(c.boardCarriesInfeed, { boardRating, boardInfeed })];
}

/** Loads that are known to have no direct-current component, the only ones for which type AC is left. */
const resistive: readonly string[] = ['instantaneous-water-heating', 'thermostatic-water-heating'];

function loads(circuit: CircuitCase, sheet: Sheet): CheckResult[] {
  const upstream = residualUpstream(circuit.path);
  const outlets = outletsBelow(circuit.run);
  // what a feeder feeds has its additional protection on its own circuits
  const own = circuit.run.feeds.some((o) => o.kind === 'board') ? [] : outlets;
  const sockets = own.some((o) => !isPoint(o) && (o.purpose === 'socket-outlets' || o.withSocket === true));
  const results: CheckResult[] = [];
  const device = protecting(upstream, undefined);
  const shallow = circuit.run.stretches.some((s) => s.concealedShallow?.state === 'known' && s.concealedShallow.value);
  if (sockets || shallow)
    results.push(
      device
        ? rating(sheet.part('Additional protection'), device, upstream)
        : sheet.result(
            notDetermined(c.additionalProtection, ask('residual current device of the circuit', 'the board')),
          ),
    );
  const plain = outlets.every((o) => !isPoint(o) && resistive.includes(o.purpose));
  for (const d of plain ? [] : upstream) {
    const type = factValue('type of the residual current device', d.type);
    results.push(
      sheet.check(c.residualTypeSuits, {
        holds: whenKnown([type], (t) => t !== 'AC'),
        because: 'type AC is left for fixed equipment that is known to have no direct-current component',
      }),
    );
  }
  return results;
}

/** Residual current devices of a circuit. BS 7671 531.3, 722.531.3.101. */
export const residualCurrent: Rule = (circuit, _findings, sheet) => {
  const points = circuit.run.feeds.filter((o): o is ChargePoint => o.kind === 'charge-point');
  const inside = points.flatMap((p) => p.residual ?? []);
  const results = points.flatMap((p) => judgePoint(circuit, p, sheet.part(`Residual current device of ${p.id}`)));
  if (points.length === 0) results.push(...loads(circuit, sheet));
  results.push(position(circuit, sheet, inside));
  results.push(...smoothCurrent(circuit, sheet.part('Smooth direct current')));
  results.push(...selectivity(circuit, sheet, inside));
  results.push(...standingCurrents(circuit, points, sheet.part('Standing protective-conductor current')));
  results.push(...overload(circuit, sheet), ...bothWays(circuit, sheet), ...board(circuit, sheet));
  return results;
};
