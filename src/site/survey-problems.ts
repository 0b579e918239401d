import { feederProblems, optionProblems } from '../codes/option-problems.js';
import {
  aroundProblems,
  type Cable,
  type ChargePoint,
  coresProblem,
  installationProblems,
  isRecord,
  type Line,
  linesOfSupply,
  Names,
  partsProblems,
  problemAt,
  recordProblems,
  runProblems,
  type Say,
} from '../installation/index.js';
import { type Problem, shown } from '../units/index.js';
import { withAllWanted } from './installed.js';
import type { Survey, VehicleNeed, WantedPoint, WorkFacts } from './survey.js';

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

/** What is wrong with the facts about the work. */
function workProblems(work: WorkFacts, say: Say): undefined {
  aroundProblems('work', work, say);
  const { travelMinutes } = work;
  if (typeof travelMinutes === 'number' && (travelMinutes < 0 || travelMinutes > 1440))
    say(['travelMinutes'], `is ${shown(travelMinutes)}; it is a number of minutes from 0 to 1440`, 'out-of-range');
}

/** What is wrong with a vehicle; its energy has been worked out where its battery is told. */
function vehicleProblems(vehicle: VehicleNeed, say: Say): undefined {
  aroundProblems('vehicle', vehicle, say);
  if (isRecord(vehicle) && vehicle.energy === undefined) say(['energy'], 'is missing', 'missing');
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
  const inside =
    (key: keyof Survey): Say =>
    (at, message, id) =>
      say([key, ...at], message, id);
  // another country is not wrong, but may have rules of its own
  aroundProblems('about', survey.about, inside('about'), ['country']);
  aroundProblems('code', survey.code, inside('code'));
  if (isRecord(survey.about) && typeof survey.about.country !== 'string')
    say(['about', 'country'], `is ${shown(survey.about.country)}; it is text`, 'wrong-kind');
  for (const key of ['options', 'work'] as const)
    if (!isRecord(survey[key])) say([key], `is ${shown(survey[key])}; an object is due`, 'wrong-kind');
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
  return [...partsProblems(whole).map(inInstallation), ...feederProblems(whole, survey.options)];
}
