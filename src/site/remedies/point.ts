import { known, unknown } from '../../core/index.js';
import type { ChargePoint, OpenPenDetection, Run } from '../../installation/index.js';
import { earthingWords } from '../../installation/marking.js';
import { type Amperes, amperes } from '../../units/index.js';
import { pointsOfPlan } from '../alike-plans.js';
import type { Survey } from '../survey.js';
import {
  type Change,
  isKnown,
  item,
  leastOf,
  PUT_THERE,
  type Situation,
  type SurveyRemedy,
  sizeFrom,
  withWantedRuns,
} from './remedy.js';

/** Smallest current that a charge point offers by its control pilot, A. */
const LEAST_OFFERED = 6;
/** Breaking capacities in which circuit-breakers are bought, A. */
const breakingCapacities = [6000, 10000, 15000, 25000];

/** A survey with its wanted points changed. */
export const withPoints = (survey: Survey, change: (point: ChargePoint, run: Run) => ChargePoint): Survey =>
  withWantedRuns(survey, (run) => ({
    ...run,
    feeds: run.feeds.map((o) => (o.kind === 'charge-point' ? change(o, run) : o)),
  }));

const pointsOf = (survey: Survey): readonly ChargePoint[] =>
  survey.wanted.flatMap((w) => w.run.feeds.flatMap((o) => (o.kind === 'charge-point' ? [o] : [])));

function detection({ survey }: Situation): readonly Change[] {
  const without = pointsOf(survey).filter((p) => !isKnown(p.directCurrentDetection, true));
  if (without.length === 0) return [];
  return [
    {
      survey: withPoints(survey, (p) => ({ ...p, directCurrentDetection: known(true, PUT_THERE) })),
      what: `charge point with detection of 6 mA direct current: ${without.map((p) => p.id).join(', ')}`,
    },
  ];
}

const socketsOf = (survey: Survey): readonly ChargePoint[] => pointsOf(survey).filter((p) => p.mode === 2);

/** A fixed charge point in the place of a socket-outlet, with what such a point has inside. */
function fixedPoint({ survey, result }: Situation): readonly Change[] {
  const sockets = socketsOf(survey);
  // what the premises are is asked before a socket-outlet is given up for it
  if (sockets.length === 0 || (result.check === 'arc-detection' && result.verdict !== 'fail')) return [];
  const device = isKnown(survey.installation.supply.phases, 1)
    ? ('open-pen-detection-window' as const)
    : ('open-pen-detection-touch-voltage' as const);
  const names = sockets.map((p) => p.id).join(', ');
  return [
    {
      survey: withPoints(survey, (p) => {
        if (p.mode !== 2) return p;
        const { socket: _socket, socketRating: _rated, ...rest } = p;
        return {
          ...rest,
          mode: 3,
          directCurrentDetection: known(true, PUT_THERE),
          openPenDevice: known(device, PUT_THERE),
          earthing: device,
        };
      }),
      what: `fixed charge point with open-PEN detection and detection of 6 mA direct current in place of the socket-outlet: ${names}`,
      items: [item('charge-point', 'charge point for mode 3', sockets.length)],
    },
  ];
}

/** Points that are yet to be given an arrangement get open-PEN detection, or earth electrodes of their own. */
function earthed({ survey, plan, result }: Situation): readonly Change[] {
  const unsettled = plan.points.filter((p) =>
    p.assessment.results.some(
      (r) => r.check === result.check && (r.verdict === 'fail' || r.verdict === 'not-determined'),
    ),
  );
  // a socket-outlet has no device: a fixed point takes its place
  const sockets = new Set(socketsOf(survey).map((p) => p.id));
  const asked = new Set(unsettled.flatMap(pointsOfPlan).filter((id) => !sockets.has(id)));
  if (asked.size === 0) return [];
  const names = [...asked].join(', ');
  const { supply } = survey.installation;
  // the voltage of one line says nothing of the others
  const single = isKnown(supply.phases, 1) && pointsOf(survey).every((p) => !asked.has(p.id) || p.lines.length === 1);
  // where neutral and earth are separate conductors all the way, there is none to break
  const separate =
    isKnown(supply.system, 'TN-S') &&
    (supply.transformer?.owner === 'customer' || isKnown(supply.separateEarthConfirmed, true));
  // where the combined conductor must not be used at all, no detection makes it good
  const barred = result.check === 'combined-earth-allowed';
  const builtIn: readonly OpenPenDetection[] = barred
    ? []
    : single
      ? ['open-pen-detection-window', 'open-pen-detection-touch-voltage']
      : ['open-pen-detection-touch-voltage'];
  const electrode = {
    resistance: unknown('measure it when the rod is driven, disconnected from every other earth'),
    separation: unknown('measure it on site: to the nearest metal on the earth of the supply'),
  };
  const ofSupply: readonly Change[] = separate
    ? [
        {
          survey: withPoints(survey, (p) => {
            const { electrode: _own, feedSeparated: _apart, ...rest } = p;
            return asked.has(p.id) ? { ...rest, earthing: 'supply-earth' } : p;
          }),
          what: `earth of the supply, which is TN-S all the way: ${names}`,
        },
      ]
    : [];
  return [
    ...ofSupply,
    ...builtIn.map((device) => ({
      survey: withPoints(survey, (p) =>
        asked.has(p.id) ? { ...p, openPenDevice: known(device, PUT_THERE), earthing: device } : p,
      ),
      what: `charge point with ${earthingWords[device]}: ${names}`,
    })),
    {
      survey: withPoints(survey, (p) =>
        asked.has(p.id)
          ? {
              ...p,
              earthing: 'tt-earthing',
              electrode: p.electrode ?? electrode,
              feedSeparated: known(true, 'armour and protective conductor of the feed to be ended apart'),
            }
          : p,
      ),
      what: `${earthingWords['tt-earthing']}, with an electrode of its own: ${names}`,
    },
  ];
}

function breaking({ survey, result }: Situation): readonly Change[] {
  const own = (result.alternatives ?? []).find((a) => a.limit)?.limit?.value;
  const size = own === undefined ? undefined : sizeFrom(breakingCapacities, own);
  if (size === undefined) return [];
  let any = false;
  const then = withWantedRuns(survey, (run) => {
    const now = leastOf(run.device.breakingCapacity) ?? 0;
    if (now >= size) return run;
    any = true;
    return { ...run, device: { ...run.device, breakingCapacity: known(amperes(size), PUT_THERE) } };
  });
  return any ? [{ survey: then, what: `device of the circuit that breaks ${size / 1000} kA` }] : [];
}

/** Settings below the present one, the largest that the shortfall suggests first. */
export function lowerSettings(now: Amperes, result: Situation['result']): readonly number[] {
  const { value, limit } = result;
  const share = value && limit && value.value > 0 ? limit.value / value.value : undefined;
  const suggested = share !== undefined && share > 0 && share < 1 ? [Math.floor(now * share)] : [];
  return [...new Set([...suggested, 25, 20, 16, 13, 10, LEAST_OFFERED])]
    .filter((a) => a < now && a >= LEAST_OFFERED)
    .filter((a) => suggested.length === 0 || a <= (suggested[0] as number))
    .sort((a, b) => b - a);
}

/** Every point whose circuit fails is set lower. */
function lowered({ survey, plan, result }: Situation): readonly Change[] {
  const failing = new Set(
    plan.points.flatMap((p) =>
      p.assessment.results.some((r) => r.check === result.check && r.verdict === 'fail') ? pointsOfPlan(p) : [],
    ),
  );
  const points = pointsOf(survey).filter((p) => failing.size === 0 || failing.has(p.id));
  const settings = points.flatMap((p) => (p.setting.state === 'known' ? [p.setting.value] : []));
  if (settings.length < points.length || settings.length === 0) return [];
  const names = points.map((p) => p.id).join(', ');
  return lowerSettings(amperes(Math.min(...settings)), result).map((setting) => ({
    survey: withPoints(survey, (p) =>
      points.includes(p) ? { ...p, setting: known(amperes(setting), 'lowered so that the circuit is met') } : p,
    ),
    what: `setting of ${names} lowered to ${setting} A`,
  }));
}

/** What an arrangement for the open PEN may not meet. */
const earthingChecks = [
  'charge-point-earthing',
  'combined-earth-allowed',
  'open-pen-balanced-load',
  'three-phase-installation',
  'open-pen-low-electrode',
  'open-pen-electrode-there',
  'open-pen-held-current',
  'open-pen-held-power',
  'open-pen-detection-touch-voltage',
  'open-pen-detection-window',
  'open-pen-detection-other',
  'single-phase-installation',
  'line-neutral-window-sight',
  'tt-feed-separated',
  'tt-out-of-reach',
  'tt-electrodes-apart',
  'tt-touch-voltage',
];

/** Remedies at the charge points and their devices. */
export const pointRemedies: readonly SurveyRemedy[] = [
  {
    id: 'direct-current-detection',
    title: 'A charge point with detection of 6 mA direct current',
    checks: ['residual-current-type', 'smooth-current-upstream'],
    whenOpen: true,
    ways: detection,
  },
  {
    id: 'mode-3-point',
    title: 'A fixed charge point in place of a socket-outlet',
    checks: [
      'charge-point-earthing',
      'socket-outlet-for-hours',
      'socket-outlet-behind-its-device',
      'residual-current-type',
      // asked of socket-outlets alone
      'arc-detection',
    ],
    whenOpen: true,
    ways: fixedPoint,
  },
  {
    id: 'charge-point-earthing',
    title: 'Another arrangement for the open PEN',
    checks: earthingChecks,
    whenOpen: true,
    ways: earthed,
  },
  {
    id: 'breaking-capacity',
    title: 'A device of a larger breaking capacity',
    checks: ['breaking-capacity'],
    ways: breaking,
  },
  {
    id: 'lower-setting',
    title: 'A lower setting',
    checks: [
      'tabulated-capacity',
      'conventional-overload',
      'voltage-drop',
      'voltage-window',
      'device-carries-load',
      'load-within-capacity',
      'grouped-device',
      'socket-outlet-for-hours',
    ],
    ways: lowered,
  },
];
