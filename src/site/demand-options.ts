import type { DemandOptions } from '../demand/index.js';
import type { Premises } from '../demand/method.js';
import { feedsInUnseen } from '../demand/methods/measured.js';
import { daysCovered } from '../demand/methods/readings.js';
import type { Installation } from '../installation/index.js';
import { ratio } from '../units/index.js';
import { HALF_HOURS } from './half-hours.js';
import { withAllWanted } from './installed.js';
import type { Survey } from './survey.js';

/**
 * Margin on what was metered where the survey states none, for what half hours hide and the season did not show. Common
 * practice, no source.
 */
export const CUSTOMARY_MARGIN = 0.2;

/** Fewest days of half-hour readings by which a demand is judged: a week. Common practice, no source. */
const FEWEST_DAYS = 7;

/** The premises as the guide tables of demand name them. */
const demandPremises: Readonly<Record<Survey['about']['premises'], Premises>> = {
  dwelling: 'dwelling',
  'small-shop': 'small-shop',
  hotel: 'small-hotel',
  workplace: 'other',
  flats: 'other',
};

/**
 * What a survey says of its demand. A meter that something feeds in behind saw no demand, and readings of a few days saw no
 * busy one: where they are to govern, the estimate has their place.
 * @param survey the survey
 * @param installation what is judged: that of the survey with all that is wanted, or an option's
 */
export function demandOptions(survey: Survey, installation: Installation = withAllWanted(survey)): DemandOptions {
  const { governing, ...said } = survey.demand ?? {};
  const few = governing === 'half-hour-readings' && said.readings && daysCovered(said.readings) < FEWEST_DAYS;
  const blind = few || (governing === HALF_HOURS && feedsInUnseen(installation));
  return {
    premises: demandPremises[survey.about.premises],
    ...(installation.supply.meteredDemand && said.meteredMargin === undefined
      ? { meteredMargin: ratio(CUSTOMARY_MARGIN), marginBy: 'customary: common practice, no source' }
      : {}),
    ...said,
    ...(governing === undefined || blind ? {} : { governing }),
  };
}
