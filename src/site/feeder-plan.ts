import { overall, type Sheet } from '../core/index.js';
import { feederDemandOf } from '../demand/feeder.js';
import { assess } from '../design/index.js';
import { waysOf } from '../installation/beside.js';
import { type Installation, pathsOf, pathTo } from '../installation/index.js';
import type { Applicable } from './applicable.js';
import { atItsDemand } from './at-its-demand.js';
import { demandOptions } from './demand-options.js';
import { feederHoursOf } from './hours.js';
import { withAllWanted } from './installed.js';
import type { FeederPlan } from './plan.js';
import { feederQuantitiesOf } from './quantities.js';
import type { Survey } from './survey.js';
import type { WorkRules } from './work-rules.js';

/** Names of the feeders on the way to runs, in the order of the tree. */
export function feedersIn(installation: Installation, runs: readonly string[]): readonly string[] {
  const onTheWay = new Set(runs.flatMap((id) => pathTo(installation, id)?.feeders ?? []).map((feeder) => feeder.id));
  return pathsOf(installation).flatMap(({ run }) => (onTheWay.has(run.id) ? [run.id] : []));
}

/** Names of the feeders on the way to the points, in the order of the tree. */
export const feedersOf = (survey: Survey): readonly string[] =>
  feedersIn(
    withAllWanted(survey),
    survey.wanted.map((w) => w.run.id),
  );

/** A feeder at the demand of what is below it: new points may ask more of it than it carries. */
export function feederPlan(
  { code, demand: rulesOfDemand }: Pick<Applicable, 'code' | 'demand'>,
  survey: Survey,
  installation: Installation,
  id: string,
  rules: WorkRules,
  sheet: Sheet,
): FeederPlan {
  const part = sheet.part(`Feeder ${id}`);
  const demand = feederDemandOf(
    rulesOfDemand,
    installation,
    id,
    demandOptions(survey, installation),
    part.part('Demand'),
  );
  const assessment = assess(code, installation, id, atItsDemand(survey, demand), part.part('Circuit'));
  const run = pathTo(installation, id)?.run;
  // the board at the end is there once, however many ways lead to it
  const ways = run ? waysOf(run).map((way, i) => (i === 0 ? way : { ...way, feeds: [] })) : [];
  return {
    run: id,
    demand,
    assessment,
    ...(run?.existing === false
      ? {
          items: ways.flatMap((way) =>
            feederQuantitiesOf(way, survey.work, rules, sheet.part(`Quantities of ${way.id}`)),
          ),
          hours: feederHoursOf(ways, survey.work, rules),
        }
      : {}),
    overall: overall([...demand.results, ...assessment.results]),
  };
}
