import {
  type Cable,
  type ChargePoint,
  controlProblems,
  coresProblem,
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
import type { Survey, WantedPoint } from './survey.js';

/** Smallest current that a charge point offers by its control pilot, A. */
const LEAST_OFFERED = 6;

function settingProblem({ id, setting, minimum }: ChargePoint): string | undefined {
  const least: number = Math.max(LEAST_OFFERED, minimum ?? 0);
  const most = setting.state === 'known' ? setting.value : setting.state === 'between' ? setting.least : least;
  return most < least ? `'${id}' is set below ${least} A, the smallest current that it can offer` : undefined;
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
    const cores = isRecord(cable) ? coresProblem(cable, run, true) : undefined;
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
  if (!Array.isArray(wanted)) say(['wanted'], `is ${shown(wanted)}; a list is due`);
  else if (isRecord(installation))
    for (const [i, point] of wanted.entries())
      wantedProblems(point, linesOfSupply(installation), names, (at, message) => say(['wanted', i, ...at], message));
  return problems.length > 0 ? problems : controlProblems(withAllWanted(survey)).map(inInstallation);
}
