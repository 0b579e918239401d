import { endsOf, knownOf } from '../core/index.js';
import { lineConductors, outletsBelow, type Purpose } from '../installation/index.js';
import type { Survey } from './survey.js';

/** The method by which the largest half hour that a meter saw is the demand. */
export const HALF_HOURS = 'metered-peak';

/**
 * A largest half hour that was only assumed governs nothing by itself: the survey without it, and the survey by it, where
 * nobody named another method.
 */
export function withHalfHours(survey: Survey): { readonly survey: Survey; readonly byHalfHours?: Survey } {
  const { meteredDemand, ...supply } = survey.installation.supply;
  const current = meteredDemand?.current;
  if (!current || current.state === 'unknown' || current.assumed === undefined) return { survey };
  const governing = survey.demand?.governing;
  const without = { ...survey, installation: { ...survey.installation, supply } };
  if ((governing !== undefined && governing !== HALF_HOURS) || survey.demand?.readings) return { survey: without };
  return { survey: without, byHalfHours: { ...survey, demand: { ...survey.demand, governing: HALF_HOURS } } };
}

/** Purposes of appliances that run at their full current, all of it at once. */
const inFullAtOnce: readonly Purpose[] = [
  'instantaneous-water-heating',
  'cooking',
  'heat-pump',
  'space-heating',
  'motor',
];

/**
 * Half hours hide what lasts for minutes: where the two largest appliances together are more than the fuse and the main switch
 * carry, or one takes nobody knows what, or nobody says that all are listed, no customary half hour says that the supply holds.
 */
export function shortPeaksFit({ installation: { supply, board } }: Survey): boolean {
  const ratings = [supply.cutOut.rating, board.mainSwitch?.rating].flatMap((r) => endsOf(r)?.[0] ?? []);
  if (ratings.length === 0 || knownOf(board.complete) !== true) return false;
  return lineConductors.every((line) => {
    const currents = outletsBelow(board).flatMap((o) =>
      o.kind === 'load' && inFullAtOnce.includes(o.purpose) && o.lines.includes(line)
        ? [endsOf(o.current)?.[1] ?? Number.POSITIVE_INFINITY]
        : [],
    );
    const [one = 0, two = 0] = currents.sort((a, b) => b - a);
    return one + two <= Math.min(...ratings);
  });
}
