import { optionProblems } from '../codes/option-problems.js';
import {
  type Cable,
  type ChargePoint,
  controlProblems,
  coresProblem,
  factProblems,
  installationProblems,
  isRecord,
  type Line,
  linesOfSupply,
  Names,
  recordProblems,
  runProblems,
  type Say,
  shown,
} from '../installation/index.js';
import type { Problem } from '../units/index.js';
import { withAllWanted } from './installed.js';
import type { Survey, VehicleNeed, WantedPoint, WorkFacts } from './survey.js';

/** Smallest current that a charge point offers by its control pilot, A. */
const LEAST_OFFERED = 6;

function settingProblem({ id, setting, minimum }: ChargePoint): string | undefined {
  const least: number = Math.max(LEAST_OFFERED, minimum ?? 0);
  const most = setting.state === 'known' ? setting.value : setting.state === 'between' ? setting.least : least;
  return most < least ? `'${id}' is set below ${least} A, the smallest current that it can offer` : undefined;
}

/** What the facts about the work are: counts, yes or no, quantities. */
const workFacts = {
  wallsToDrill: 'pieces',
  newEnclosure: 'yes',
  sensorCable: 'length',
  limiterReaction: 'excessTime',
  outletHeight: 'length',
} as const satisfies { readonly [K in keyof WorkFacts]?: string };
const workLabels = {
  digging: ['hand', 'machine'],
  surface: ['turf-or-soil', 'paving', 'concrete-or-asphalt'],
} as const satisfies { readonly [K in keyof WorkFacts]?: readonly string[] };

function workProblems(work: WorkFacts, say: Say): undefined {
  for (const [key, what] of Object.entries(workFacts)) {
    const fact = work[key as keyof typeof workFacts];
    if (fact !== undefined) factProblems(what, fact, (at, message) => say([key, ...at], message));
  }
  for (const [key, all] of Object.entries(workLabels)) {
    const fact: unknown = work[key as keyof typeof workLabels];
    if (fact === undefined || (isRecord(fact) && fact.state === 'unknown')) continue;
    if (!isRecord(fact) || fact.state !== 'known')
      say([key], `is ${shown(fact)}; a fact is due: it is known or unknown`);
    else if (!(all as readonly unknown[]).includes(fact.value))
      say([key, 'value'], `is ${shown(fact.value)}; known are ${all.join(', ')}`);
  }
  const { travelMinutes } = work;
  if (travelMinutes !== undefined && !(travelMinutes >= 0 && travelMinutes <= 1440))
    say(['travelMinutes'], `is ${shown(travelMinutes)}; it is a number of minutes from 0 to 1440`);
}

/** What the facts about a vehicle are. */
const vehicleFacts = {
  energy: 'energyNeeded',
  onBoardCurrent: 'chargeCurrent',
  efficiency: 'chargeEfficiency',
} as const satisfies { readonly [K in keyof VehicleNeed]?: string };
const clock = /^([01]\d|2[0-3]):[0-5]\d$/;

function vehicleProblems(vehicle: VehicleNeed, say: Say): undefined {
  if (!isRecord(vehicle)) return say([], `is ${shown(vehicle)}; an object is due`);
  for (const [key, what] of Object.entries(vehicleFacts))
    factProblems(what, vehicle[key as keyof typeof vehicleFacts], (at, message) => say([key, ...at], message));
  for (const key of ['arrives', 'leaves'] as const)
    if (typeof vehicle[key] !== 'string' || !clock.test(vehicle[key]))
      say([key], `is ${shown(vehicle[key])}; it is a time of day as hh:mm`);
}

/** What is wrong with a point that is wanted, in itself and beside what is there. */
function wantedProblems(point: WantedPoint, of: readonly Line[], names: Names, say: Say): undefined {
  if (!isRecord(point)) return say([], `is ${shown(point)}; a wanted point is due`);
  const { from, run, cables } = point;
  if (!names.of('board').has(from))
    say(['from'], `there is no board called ${shown(from)}; there is ${[...names.of('board')].map(shown).join(', ')}`);
  let sound = true;
  const inRun: Say = (at, message) => {
    sound = false;
    return say(['run', ...at], message);
  };
  runProblems(run, of, inRun);
  if (point.vehicle !== undefined) vehicleProblems(point.vehicle, (at, message) => say(['vehicle', ...at], message));
  if (!Array.isArray(cables)) return say(['cables'], `is ${shown(cables)}; a list is due`);
  if (!sound) return undefined;
  names.note('run', run, inRun);
  for (const [j, o] of run.feeds.entries()) {
    const outlet: Say = (at, message) => inRun(['feeds', j, ...at], message);
    names.note('outlet', o, outlet);
    const setting = o.kind === 'charge-point' ? settingProblem(o) : undefined;
    if (setting) outlet(['setting'], setting);
  }
  for (const [j, cable] of (cables as readonly Cable[]).entries()) {
    recordProblems('cable', cable, (at, message) => say(['cables', j, ...at], message));
    const cores = isRecord(cable) ? coresProblem(cable, run) : undefined;
    if (cores) say(['cables', j, 'cores'], cores);
  }
  return undefined;
}

const inInstallation = ({ path, message }: Problem): Problem => ({ path: ['installation', ...path], message });

/** Everything for which a survey is refused, apart from what code and country it is for, each with its path. */
export function surveyProblems(survey: Survey): readonly Problem[] {
  if (!isRecord(survey)) return [{ path: [], message: `is ${shown(survey)}; a survey is due` }];
  const { installation, wanted } = survey;
  const names = new Names();
  const problems = installationProblems(installation, names).map(inInstallation);
  const say: Say = (path, message) => void problems.push({ path: [...path], message });
  for (const key of ['about', 'code', 'options', 'work'] as const)
    if (!isRecord(survey[key])) say([key], `is ${shown(survey[key])}; an object is due`);
  if (isRecord(survey.options)) problems.push(...optionProblems(survey.options));
  if (isRecord(survey.work)) workProblems(survey.work, (at, message) => say(['work', ...at], message));
  if (!Array.isArray(wanted)) say(['wanted'], `is ${shown(wanted)}; a list is due`);
  else if (isRecord(installation))
    for (const [i, point] of wanted.entries())
      wantedProblems(point, linesOfSupply(installation), names, (at, message) => say(['wanted', i, ...at], message));
  return problems.length > 0 ? problems : controlProblems(withAllWanted(survey)).map(inInstallation);
}
