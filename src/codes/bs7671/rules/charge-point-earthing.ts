import {
  type CheckResult,
  type Fact,
  factValue,
  type Gap,
  isMissing,
  type Known,
  notDetermined,
  notRequired,
  type Sheet,
  unknown,
} from '../../../core/index.js';
import type { ChargePoint, ChargePointEarthing, Path, ResidualDevice } from '../../../installation/index.js';
import { type Amperes, volts } from '../../../units/index.js';
import { residualUpstream } from '../../iec-family/residual-position.js';
import type { CircuitCase, EarthingOption, Rule } from '../../wiring-code.js';
import {
  chargePointEarthed,
  equalDevice,
  touchVoltageDevice,
  windowDevice,
  windowLeavesDrop,
} from '../earthing-checks.js';
import { writeEarthingOptions } from '../earthing-options.js';
import { type Edition, editionGap } from '../editions.js';

type Arrangement = EarthingOption['arrangement'];
const deviceChecks = {
  'touch-voltage-device': touchVoltageDevice,
  'line-neutral-window-device': windowDevice,
  'equal-device': equalDevice,
} as const;
type Device = keyof typeof deviceChecks;
const isDevice = (a: ChargePointEarthing | 'none'): a is Device => a in deviceChecks;

/** What has been chosen: said outright, or by a device that the point has. */
function chosen(point: ChargePoint): ChargePointEarthing | undefined {
  if (point.earthing !== undefined) return point.earthing;
  const built = point.openPenDevice;
  return built?.state === 'known' && built.value !== 'none' ? built.value : undefined;
}

/** Whether the device that an arrangement needs is there. */
function deviceThere(point: ChargePoint, arrangement: Arrangement, sheet: Sheet): CheckResult[] {
  if (!isDevice(arrangement)) return [];
  const built = point.openPenDevice ?? { state: 'unknown' as const, obtain: 'the charge point’s instructions' };
  const found = factValue('device against a lost PEN conductor', built);
  const holds: Known<boolean> = isMissing(found) ? found : found === arrangement;
  return [
    sheet.check(deviceChecks[arrangement], {
      holds,
      because: isMissing(found) ? 'not known' : `device found: ${found.replaceAll('-', ' ')}`,
    }),
  ];
}

/**
 * Rated residual current that protects a charge point on an electrode of its own: of the devices ahead of the point. One
 * inside it leaves the terminals ahead of it, in the same metal, on the electrode with no protection.
 */
export function islandResidual(path: Path): Fact<Amperes> {
  const along = (path.run.residual ?? []).filter((r) => r.position === 'along-circuit');
  const ahead = [...residualUpstream(path), ...along];
  if (ahead.length === 0)
    return unknown('a residual current device ahead of the point; one inside it does not protect its terminals');
  const prompt = ahead.filter((r) => r.delayTime === undefined);
  if (prompt.length === 0) return unknown('a device without a set delay: 0.2 s is allowed on TT');
  const size = (r: ResidualDevice) => (r.rating.state === 'known' ? r.rating.value : Number.POSITIVE_INFINITY);
  const best = prompt.reduce((least, r) => (size(r) < size(least) ? r : least));
  // one whose rating is not known may be the smallest
  const open = prompt.find((r) => r.rating.state !== 'known');
  return open && size(best) > 0.03 ? open.rating : best.rating;
}

/** A failure that rests on a fact that is not known is no failure yet. */
const softened = (results: readonly CheckResult[], gaps: readonly Gap[]): readonly CheckResult[] =>
  gaps.length === 0
    ? results
    : results.map(({ value: _v, limit: _l, most: _m, margin: _g, ...r }) =>
        r.verdict === 'fail'
          ? { ...r, verdict: 'not-determined' as const, gaps }
          : { ...r, ...(_v && { value: _v }), ...(_l && { limit: _l }) },
      );

function judgePoint(circuit: CircuitCase, point: ChargePoint, sheet: Sheet): readonly CheckResult[] {
  const { supply } = circuit.installation;
  const outdoors = factValue('whether a vehicle can be charged outdoors', point.outdoors);
  const system = factValue('earthing system of the supply', supply.system);
  if (outdoors === false)
    return [sheet.result(notRequired(chargePointEarthed, 'not-applicable', 'No vehicle can be charged outdoors.'))];
  if (system === 'TT')
    return [
      sheet.result(
        notRequired(chargePointEarthed, 'not-applicable', 'The supply is TT: there is no PEN conductor to lose.'),
      ),
    ];
  if (system === 'TN-S')
    return [
      sheet.result(
        notRequired(
          chargePointEarthed,
          'not-applicable',
          'The supply is stated to be TN-S. Cables are repaired with combined conductors: have the distributor confirm it.',
        ),
      ),
    ];
  if (system === 'IT')
    return [
      sheet.result(
        notDetermined(chargePointEarthed, {
          kind: 'fact',
          fact: 'earthing arrangement on an IT supply',
          obtain: 'the clause speaks of PME only; have it designed',
        }),
      ),
    ];
  const gaps = [...(isMissing(outdoors) ? outdoors.missing : []), ...(isMissing(system) ? system.missing : [])];
  const { loadStates, pointNeverAlone } = circuit.options;
  const options = writeEarthingOptions(sheet, {
    supply,
    point,
    ...(loadStates ? { loadStates } : {}),
    ...(pointNeverAlone === undefined ? {} : { pointNeverAlone }),
    residualRating: islandResidual(circuit.path),
  });
  const choice = chosen(point);
  const remaining = options.filter((o) => o.possible !== 'fail');
  if (choice === 'supply-earth' || remaining.length === 0) {
    const because = choice === 'supply-earth' ? 'the earth of the supply alone is not permitted' : '';
    if (because) sheet.note(`${because}; remaining: ${remaining.map((o) => o.arrangement).join(', ') || 'none'}`);
    return softened([sheet.check(chargePointEarthed, { results: [] })], gaps);
  }
  const option = options.find((o) => o.arrangement === choice);
  if (option === undefined)
    return [
      sheet.result(
        notDetermined(chargePointEarthed, {
          kind: 'fact',
          fact: 'earthing arrangement of the charge point',
          obtain: `choose one; remaining: ${remaining.map((o) => o.arrangement).join(', ')}`,
        }),
      ),
    ];
  // the device itself is judged by what is fitted, not by what could be
  const own = isDevice(option.arrangement) ? deviceChecks[option.arrangement].id : '';
  const device =
    option.possible === 'fail' ? [] : deviceThere(point, option.arrangement, sheet.part('Device as fitted'));
  return softened([...option.results.filter((r) => r.check !== own), ...device], gaps);
}

/** Earthing of charge points by an edition of BS 7671, Section 722. */
export const chargePointEarthingOf =
  (edition: Edition): Rule =>
  (circuit, findings, sheet) => {
    const points = circuit.run.feeds.filter((o): o is ChargePoint => o.kind === 'charge-point');
    if (points.length === 0)
      return [sheet.result(notRequired(chargePointEarthed, 'not-applicable', 'The circuit feeds no charge point.'))];
    const gap = editionGap(edition);
    if (gap) return [sheet.result(notDetermined(chargePointEarthed, gap))];
    return points.flatMap((point) => {
      const part = sheet.part(`Earthing of ${point.id}`);
      const results = [...judgePoint(circuit, point, part)];
      if (chosen(point) === 'line-neutral-window-device' && findings.totalDrop !== undefined) {
        const margin = part.part('Window and voltage drop');
        const windowMargin = margin.given('windowMargin', windowMarginAt(circuit), '0.94 U_0 less 207 V');
        const totalDrop = margin.given('totalDrop', findings.totalDrop, 'voltage drop of this circuit');
        results.push(margin.check(windowLeavesDrop, { totalDrop, windowMargin }));
      }
      return results;
    });
  };

const windowMarginAt = (circuit: CircuitCase) => volts(0.94 * circuit.nominalVoltage - 207);

/** Earthing of charge points, wording of 2018 with A1 to A3. BS 7671 722.411.4.1. */
export const chargePointEarthing: Rule = /* @__PURE__ */ chargePointEarthingOf('2018+A3:2024');
