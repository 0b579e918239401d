import type { DemandOptions } from '../demand/index.js';
import type { Premises } from '../demand/method.js';
import type { Survey } from './survey.js';

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
  ...(survey.demand?.meteredMargin === undefined ? {} : { meteredMargin: survey.demand.meteredMargin }),
  ...(survey.demand?.governing === undefined ? {} : { governing: survey.demand.governing }),
});
