import { isMissing, stated } from '../core/index.js';
import type { FeederDemand } from '../demand/feeder.js';
import type { Survey } from './survey.js';

/** Options by which a feeder is assessed: it carries the demand of what is below it. */
export function atItsDemand({ options }: Survey, { run, worst, beyond }: FeederDemand): Survey['options'] {
  if (isMissing(worst)) return options;
  const along = beyond?.flatMap(({ at, demand }) => (isMissing(demand) ? [] : [{ ...stated({ at }), demand }]));
  return {
    ...options,
    feederDemand: { ...options.feederDemand, [run]: worst },
    ...(along ? { demandBeyond: { ...options.demandBeyond, [run]: along } } : {}),
  };
}
