import type { DemandOptions } from '../demand/index.js';
import type { Premises } from '../demand/method.js';
import { ratio } from '../units/index.js';
import type { Survey } from './survey.js';

/**
 * Margin on what was metered where the survey states none, for what half hours hide and the season did not show. Common
 * practice, no source.
 */
export const CUSTOMARY_MARGIN = 0.2;

/** The premises as the guide tables of demand name them. */
const demandPremises: Readonly<Record<Survey['about']['premises'], Premises>> = {
  dwelling: 'dwelling',
  'small-shop': 'small-shop',
  hotel: 'small-hotel',
  workplace: 'other',
  flats: 'other',
};

/** What a survey says of its demand. */
export const demandOptions = (survey: Survey): DemandOptions => ({
  premises: demandPremises[survey.about.premises],
  ...(survey.installation.supply.meteredDemand && survey.demand?.meteredMargin === undefined
    ? { meteredMargin: ratio(CUSTOMARY_MARGIN), marginBy: 'customary: common practice, no source' }
    : {}),
  ...survey.demand,
});
