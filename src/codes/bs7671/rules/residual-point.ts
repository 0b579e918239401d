import {
  type CheckResult,
  type Fact,
  factValue,
  isMissing,
  type Known,
  missing,
  notDetermined,
  type Sheet,
} from '../../../core/index.js';
import { type ChargePoint, type Load, outletsBelow, type ResidualDevice } from '../../../installation/index.js';
import { milliamperes } from '../../../units/index.js';
import { residualUpstream } from '../../iec-family/residual-position.js';
import type { CircuitCase } from '../../wiring-code.js';
import * as c from '../residual-checks.js';

/** Whether an outlet is a charge point. */
export const isPoint = (o: Load | ChargePoint): o is ChargePoint => o.kind === 'charge-point';
/** A fact that may not have been surveyed at all. */
export const fact = <T>(name: string, value: Fact<T> | undefined, obtain: string): Known<T> =>
  value ? factValue(name, value) : missing({ kind: 'fact', fact: name, obtain });
/** A fact to be asked for. */
export const ask = (name: string, obtain: string) => ({ kind: 'fact', fact: name, obtain }) as const;
/** Rated residual operating current of a device. */
export const ratingOf = (d: ResidualDevice) => factValue('rated residual operating current', d.rating);

/** Whether a device is, or may be, delayed: a delay leaves a person on the fault for as long as it lasts. */
const delayed = (d: ResidualDevice): boolean =>
  d.delayTime !== undefined || (d.delay !== undefined && !(d.delay.state === 'known' && d.delay.value === 'general'));

/**
 * The device upstream with the smallest rated residual current, or the one inside the point; one of at most 30 mA
 * without delay before every other.
 */
export function protecting(upstream: readonly ResidualDevice[], inside: ResidualDevice | undefined) {
  const every = inside ? [...upstream, inside] : upstream;
  const prompt = every.filter((d) => !delayed(d) && d.rating.state === 'known' && d.rating.value <= 0.03);
  const all = prompt.length > 0 ? prompt : every;
  const size = (d: ResidualDevice) => (d.rating.state === 'known' ? d.rating.value : Number.POSITIVE_INFINITY);
  return all.reduce<ResidualDevice | undefined>((best, d) => (best && size(best) <= size(d) ? best : d), undefined);
}

/** Whether the cable itself depends on the device. */
export function cableDepends(circuit: CircuitCase): Known<boolean> {
  if (circuit.run.stretches.some((s) => s.concealedShallow?.state === 'known' && s.concealedShallow.value)) return true;
  const system = factValue('earthing system of the supply', circuit.installation.supply.system);
  const open = circuit.run.stretches.flatMap((s) => (s.concealedShallow?.state === 'unknown' ? [s.name] : []));
  if (system === 'TT') return true;
  if (isMissing(system)) return system;
  return open.length > 0
    ? missing(ask(`whether ${open.join(', ')} is concealed less than 50 mm deep`, 'survey'))
    : false;
}

/** Whether a device gives additional protection, or while it does not, one of the others whose rating is not known may. */
export function rating(sheet: Sheet, device: ResidualDevice, others: readonly ResidualDevice[]): CheckResult {
  const prompt = !delayed(device) && device.rating.state === 'known' && device.rating.value <= 0.03;
  const open = prompt || device.rating.state === 'unknown' ? [] : others.filter((d) => d.rating.state === 'unknown');
  if ((delayed(device) && !(device.rating.state === 'known' && device.rating.value > 0.03)) || open.some(delayed))
    return sheet.result(
      notDetermined(
        c.additionalProtection,
        ask(
          'a residual current device of at most 30 mA without delay',
          'read the marking: a delayed one gives no additional protection',
        ),
      ),
    );
  const residualOperatingCurrent = sheet.given('residualOperatingCurrent', (open[0] ?? device).rating);
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

/** The residual current device of a charge point: rating, type, poles, and whether it is its own. */
export function judgePoint(circuit: CircuitCase, point: ChargePoint, sheet: Sheet): CheckResult[] {
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
  const every = [...upstream, ...(point.residual ? [point.residual] : [])];
  const results = [rating(sheet, device, every)];
  // of several devices the prompt one with the smallest rating protects the point: while that is not known of each,
  // nobody can say which
  const open = every.filter((d) => d.rating.state === 'unknown' || d.delay?.state === 'unknown');
  if (open.length > 0 && every.length > 1) {
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

/** Charge points whose current passes a device, wherever it stands on the way to the run. */
export function pointsThrough(circuit: CircuitCase, device: ResidualDevice): readonly ChargePoint[] {
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
