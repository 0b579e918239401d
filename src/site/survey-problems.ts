import { feederProblems, optionProblems } from '../codes/option-problems.js';
import {
  type Cable,
  type ChargePoint,
  coresProblem,
  factProblems,
  installationProblems,
  isRecord,
  type Line,
  linesOfSupply,
  Names,
  nameProblems,
  problemAt,
  recordProblems,
  runProblems,
  type Say,
} from '../installation/index.js';
import { type Problem, type ProblemId, shown } from '../units/index.js';
import { withAllWanted } from './installed.js';
import {
  mountings,
  premisesKinds,
  type Survey,
  supplyChanges,
  type VehicleNeed,
  type WantedPoint,
  type WorkFacts,
  workLabels,
} from './survey.js';

/**
 * Boards one behind another: a plan looks at each with all before it. The board of each floor of a tower may hang on that of
 * the floor below.
 */
const MOST_BEHIND = 100;

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
  sensorPossible: 'yes',
  limiterReaction: 'excessTime',
  limiterKeepsFuse: 'yes',
  limiterFallback: 'chargeCurrent',
  outletHeight: 'length',
  ownerAgrees: 'yes',
  lead: 'length',
  toInlet: 'length',
  devicesToBeHad: 'yes',
} as const satisfies { readonly [K in keyof WorkFacts]?: string };

function workProblems(work: WorkFacts, say: Say): undefined {
  for (const [key, what] of Object.entries(workFacts)) {
    const fact = work[key as keyof typeof workFacts];
    if (fact !== undefined) factProblems(what, fact, (at, message, id) => say([key, ...at], message, id));
  }
  for (const [key, all] of Object.entries(workLabels)) {
    const fact: unknown = work[key as keyof typeof workLabels];
    if (fact === undefined || (isRecord(fact) && fact.state === 'unknown')) continue;
    if (!isRecord(fact) || fact.state !== 'known')
      say([key], `is ${shown(fact)}; a fact is due: it is known or unknown`, 'wrong-kind');
    else if (!(all as readonly unknown[]).includes(fact.value))
      say([key, 'value'], `is ${shown(fact.value)}; known are ${all.join(', ')}`, 'not-allowed');
  }
}

/** What a plain value has to be, in words, and the stable name of what it is not. */
interface Plain {
  readonly holds: (value: unknown) => boolean;
  readonly due: string;
  readonly id: ProblemId;
  readonly optional?: true;
}
const oneOf = (all: readonly string[]): Plain => ({
  holds: (v) => (all as readonly unknown[]).includes(v),
  due: `known are ${all.join(', ')}`,
  id: 'not-allowed',
});
const text: Plain = { holds: (v) => typeof v === 'string', due: 'it is text', id: 'wrong-kind' };
const yesOrNo: Plain = { holds: (v) => typeof v === 'boolean', due: 'it is true or false', id: 'wrong-kind' };
const between = (least: number, most: number, what: string): Plain => ({
  holds: (v) => typeof v === 'number' && v >= least && v <= most,
  due: `it is a number of ${what} from ${least} to ${most}`,
  id: 'out-of-range',
});
const may = (plain: Plain): Plain => ({ ...plain, optional: true });

const workValues: Readonly<Record<string, Plain>> = {
  mounting: may(oneOf(mountings)),
  electrode: may(yesOrNo),
  replaceTails: may(yesOrNo),
  supplyChange: may(oneOf(supplyChanges)),
  travelMinutes: may(between(0, 1440, 'minutes')),
  model: may(text),
};
const aboutValues: Readonly<Record<string, Plain>> = {
  title: text,
  reference: may(text),
  invented: may(yesOrNo),
  date: {
    holds: (v) => typeof v === 'string' && /^\d{4}-\d\d-\d\d$/.test(v),
    due: 'it is a day as yyyy-mm-dd',
    id: 'not-a-day',
  },
  country: text,
  premises: oneOf(premisesKinds),
  dwellings: may(between(1, 10_000, 'dwellings')),
};
const codeValues: Readonly<Record<string, Plain>> = { id: text, edition: text };

function plainProblems(values: Readonly<Record<string, Plain>>, record: object, say: Say): void {
  for (const [key, { holds, due, id, optional }] of Object.entries(values)) {
    const value = (record as Readonly<Record<string, unknown>>)[key];
    if (value === undefined) {
      if (!optional) say([key], 'is missing', 'missing');
    } else if (!holds(value)) say([key], `is ${shown(value)}; ${due}`, id);
  }
}

/** What the facts about a vehicle are. */
const vehicleFacts = {
  energy: 'energyNeeded',
  onBoardCurrent: 'chargeCurrent',
  onBoardPhases: 'chargerPhases',
  efficiency: 'chargeEfficiency',
} as const satisfies Readonly<Record<Exclude<keyof VehicleNeed, 'battery' | 'arrives' | 'leaves'>, string>>;
const batteryFacts = { holds: 'batteryEnergy', onArrival: 'stateOfCharge', onDeparture: 'stateOfCharge' } as const;
const clock = /^([01]\d|2[0-3]):[0-5]\d$/;

function vehicleProblems(vehicle: VehicleNeed, say: Say): undefined {
  if (!isRecord(vehicle)) return say([], `is ${shown(vehicle)}; an object is due`, 'wrong-kind');
  for (const [key, what] of Object.entries(vehicleFacts))
    factProblems(what, vehicle[key as keyof typeof vehicleFacts], (at, message, id) => say([key, ...at], message, id));
  if (vehicle.battery !== undefined && !isRecord(vehicle.battery))
    say(['battery'], `is ${shown(vehicle.battery)}; an object is due`, 'wrong-kind');
  else if (vehicle.battery)
    for (const [key, what] of Object.entries(batteryFacts))
      factProblems(what, vehicle.battery[key as keyof typeof batteryFacts], (at, message, id) =>
        say(['battery', key, ...at], message, id),
      );
  for (const key of ['arrives', 'leaves'] as const)
    if (typeof vehicle[key] !== 'string' || !clock.test(vehicle[key]))
      say([key], `is ${shown(vehicle[key])}; it is a time of day as hh:mm`, 'not-a-time');
}

/** What is wrong with a point that is wanted, in itself and beside what is there. */
function wantedProblems(point: WantedPoint, of: readonly Line[], names: Names, say: Say): undefined {
  if (!isRecord(point)) return say([], `is ${shown(point)}; a wanted point is due`, 'wrong-kind');
  const { from, run, cables } = point;
  if (!names.of('board').has(from))
    say(['from'], `there is no board called ${shown(from)}; there is ${[...names.of('board')].map(shown).join(', ')}`);
  let sound = true;
  const inRun: Say = (at, message, id) => {
    sound = false;
    return say(['run', ...at], message, id);
  };
  runProblems(run, of, inRun);
  if (point.vehicle !== undefined)
    vehicleProblems(point.vehicle, (at, message, id) => say(['vehicle', ...at], message, id));
  if (!Array.isArray(cables)) return say(['cables'], `is ${shown(cables)}; a list is due`, 'wrong-kind');
  if (!sound) return undefined;
  names.note('run', run, inRun);
  for (const [j, o] of run.feeds.entries()) {
    const outlet: Say = (at, message, id) => inRun(['feeds', j, ...at], message, id);
    names.note('outlet', o, outlet);
    const setting = o.kind === 'charge-point' ? settingProblem(o) : undefined;
    if (setting) outlet(['setting'], setting, 'out-of-range');
  }
  for (const [j, cable] of (cables as readonly Cable[]).entries()) {
    recordProblems('cable', cable, (at, message, id) => say(['cables', j, ...at], message, id));
    const cores = isRecord(cable) ? coresProblem(cable, run) : undefined;
    if (cores) say(['cables', j, 'cores'], cores);
  }
  return undefined;
}

const inInstallation = (problem: Problem): Problem => ({ ...problem, path: ['installation', ...problem.path] });

/** Everything for which a survey is refused, apart from what code and country it is for, each with its path. */
export function surveyProblems(survey: Survey): readonly Problem[] {
  if (!isRecord(survey)) return [{ path: [], id: 'wrong-kind', message: `is ${shown(survey)}; a survey is due` }];
  const { installation, wanted } = survey;
  const names = new Names();
  const problems = installationProblems(installation, names, MOST_BEHIND).map(inInstallation);
  const say: Say = (path, message, id) => void problems.push(problemAt(path, message, id));
  const plain = { about: aboutValues, code: codeValues, options: {}, work: workValues };
  for (const key of ['about', 'code', 'options', 'work'] as const)
    if (!isRecord(survey[key])) say([key], `is ${shown(survey[key])}; an object is due`, 'wrong-kind');
    else plainProblems(plain[key], survey[key], (at, message, id) => say([key, ...at], message, id));
  if (isRecord(survey.options)) problems.push(...optionProblems(survey.options));
  if (isRecord(survey.work)) workProblems(survey.work, (at, message, id) => say(['work', ...at], message, id));
  if (!Array.isArray(wanted)) say(['wanted'], `is ${shown(wanted)}; a list is due`, 'wrong-kind');
  else if (isRecord(installation))
    for (const [i, point] of wanted.entries())
      wantedProblems(point, linesOfSupply(installation), names, (at, message, id) =>
        say(['wanted', i, ...at], message, id),
      );
  if (problems.length > 0) return problems;
  const whole = withAllWanted(survey);
  return [...nameProblems(whole).map(inInstallation), ...feederProblems(whole, survey.options)];
}
