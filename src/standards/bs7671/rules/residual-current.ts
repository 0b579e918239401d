import {
  type CheckResult,
  type Fact,
  factValue,
  isMissing,
  type Known,
  missing,
  notDetermined,
  notRequired,
  type Sheet,
  whenKnown,
} from '../../../core/index.js';
import { type ChargePoint, type Load, outletsBelow, type ResidualDevice } from '../../../installation/index.js';
import { type Amperes, amperes, milliamperes } from '../../../units/index.js';
import { smoothCurrentWithstand } from '../../en61008/smooth-current.js';
import { residualUpstream } from '../../iec-family/residual-position.js';
import type { CircuitCase, Rule } from '../../wiring-code.js';
import * as c from '../residual-checks.js';

const isPoint = (o: Load | ChargePoint): o is ChargePoint => o.kind === 'charge-point';
const fact = <T>(name: string, value: Fact<T> | undefined, obtain: string): Known<T> =>
  value ? factValue(name, value) : missing({ kind: 'fact', fact: name, obtain });
const ask = (name: string, obtain: string) => ({ kind: 'fact', fact: name, obtain }) as const;
const ratingOf = (d: ResidualDevice) => factValue('rated residual operating current', d.rating);

/** Whether a device is, or may be, delayed: a delay leaves a person on the fault for as long as it lasts. */
const delayed = (d: ResidualDevice): boolean =>
  d.delayTime !== undefined || (d.delay !== undefined && !(d.delay.state === 'known' && d.delay.value === 'general'));

/**
 * The device upstream with the smallest rated residual current, or the one inside the point; one of at most 30 mA
 * without delay before every other.
 */
function protecting(upstream: readonly ResidualDevice[], inside: ResidualDevice | undefined) {
  const every = inside ? [...upstream, inside] : upstream;
  const prompt = every.filter((d) => !delayed(d) && d.rating.state === 'known' && d.rating.value <= 0.03);
  const all = prompt.length > 0 ? prompt : every;
  const size = (d: ResidualDevice) => (d.rating.state === 'known' ? d.rating.value : Number.POSITIVE_INFINITY);
  return all.reduce<ResidualDevice | undefined>((best, d) => (best && size(best) <= size(d) ? best : d), undefined);
}

/** Whether the cable itself depends on the device. */
function cableDepends(circuit: CircuitCase): Known<boolean> {
  if (circuit.run.stretches.some((s) => s.concealedShallow?.state === 'known' && s.concealedShallow.value)) return true;
  const system = factValue('earthing system of the supply', circuit.installation.supply.system);
  const open = circuit.run.stretches.flatMap((s) => (s.concealedShallow?.state === 'unknown' ? [s.name] : []));
  if (system === 'TT') return true;
  if (isMissing(system)) return system;
  return open.length > 0
    ? missing(ask(`whether ${open.join(', ')} is concealed less than 50 mm deep`, 'survey'))
    : false;
}

function rating(sheet: Sheet, device: ResidualDevice): CheckResult {
  if (delayed(device) && !(device.rating.state === 'known' && device.rating.value > 0.03))
    return sheet.result(
      notDetermined(
        c.additionalProtection,
        ask(
          'a residual current device of at most 30 mA without delay',
          'read the marking: a delayed one gives no additional protection',
        ),
      ),
    );
  const residualOperatingCurrent = sheet.given('residualOperatingCurrent', device.rating);
  const residualLimit = sheet.given('residualLimit', milliamperes(30), 'BS 7671 722.531.3.101; 411.3.3');
  return sheet.check(c.additionalProtection, { residualOperatingCurrent, residualLimit });
}

/** Type for a charge point: B, or A or F with detection of 6 mA direct current. */
function pointType(sheet: Sheet, point: ChargePoint, device: ResidualDevice): CheckResult {
  const type = factValue('type of the residual current device', device.type);
  if (isMissing(type)) return sheet.result(notDetermined(c.residualTypeSuits, ...type.missing));
  const detects =
    type === 'B' || type === 'AC'
      ? type === 'B'
      : fact('detection of 6 mA direct current', point.directCurrentDetection, 'the charge point’s instructions');
  return sheet.check(c.residualTypeSuits, {
    holds: detects,
    because:
      type === 'AC'
        ? 'type AC does not suit a charge point'
        : type === 'B'
          ? 'type B detects smooth direct current'
          : `type ${type} needs a 6 mA direct-current detector beside it`,
  });
}

function judgePoint(circuit: CircuitCase, point: ChargePoint, sheet: Sheet): CheckResult[] {
  const upstream = residualUpstream(circuit.path);
  const device = protecting(upstream, point.residual);
  if (!device)
    return [
      sheet.result(
        notDetermined(
          c.additionalProtection,
          ask('residual current device of the charge point', 'board and instructions'),
        ),
      ),
    ];
  const results = [rating(sheet, device)];
  // of several devices the prompt one with the smallest rating protects the point: while that is not known of each,
  // nobody can say which
  const open = [...upstream, ...(point.residual ? [point.residual] : [])].filter(
    (d) => d.rating.state === 'unknown' || d.delay?.state === 'unknown',
  );
  if (open.length > 0 && (upstream.length > 1 || point.residual)) {
    const gap = ask('which residual current device has the smallest rating', 'the marking of each device on the way');
    results.push(sheet.result(notDetermined(c.residualTypeSuits, gap)));
    results.push(sheet.result(notDetermined(c.residualOpensAllLive, gap)));
  } else {
    results.push(pointType(sheet, point, device));
    results.push(
      sheet.check(c.residualOpensAllLive, {
        holds: fact('poles of the residual current device', device.opensAllLive, 'the marking of the device'),
        because: 'line and neutral of a charge point are opened together',
      }),
    );
  }
  results.push(onePerPoint(circuit, point, upstream, sheet));
  return results;
}

/** A device on the board that several circuits share is nobody's own, nor is one above 30 mA. */
function onePerPoint(
  circuit: CircuitCase,
  point: ChargePoint,
  upstream: readonly ResidualDevice[],
  sheet: Sheet,
): CheckResult {
  const alone = upstream.filter((d) => pointsThrough(circuit, d).length <= 1 && (d.pointsServed ?? 1) <= 1);
  const small = alone.some((d) => d.rating.state === 'known' && d.rating.value <= 0.03);
  const open = alone.flatMap((d) => {
    const found = ratingOf(d);
    return isMissing(found) ? [found] : [];
  });
  const own: Known<boolean> = point.residual !== undefined || small ? true : (open[0] ?? false);
  return sheet.check(c.oneDevicePerPoint, {
    holds: own,
    because: own === true ? 'the device serves this point alone' : 'the device serves more than one charge point',
  });
}

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

/** Charge points whose current passes a device, wherever it stands on the way to the run. */
function pointsThrough(circuit: CircuitCase, device: ResidualDevice): readonly ChargePoint[] {
  for (const run of [...circuit.path.feeders, circuit.run])
    if (run.residual?.includes(device)) return outletsBelow(run).filter(isPoint);
  for (const board of circuit.path.boards) {
    const own = board.residual?.find((r) => r === device);
    if (own)
      return board.runs
        .filter((r) => own.serves === undefined || own.serves.includes(r.id))
        .flatMap(outletsBelow)
        .filter(isPoint);
  }
  return [];
}

function selectivity(circuit: CircuitCase, sheet: Sheet, inside: readonly ResidualDevice[]): CheckResult[] {
  const series = [...residualUpstream(circuit.path), ...inside];
  return series.slice(1).map((below, i) => {
    const above = series[i] as ResidualDevice;
    const delay = fact('delay of the upstream residual current device', above.delay, 'the marking S');
    const holds = whenKnown([delay, ratingOf(above), ratingOf(below)], (d, a, b) => d === 'selective' && a >= 3 * b);
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
      limits.length === 2 || small ? Math.min(...limits) : whenKnown([before, sum], (a, b) => Math.min(a, b as number));
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
        ? rating(sheet.part('Additional protection'), device)
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
