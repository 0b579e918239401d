import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { sanityQuestions } from '../../src/site/index.js';
import { type Change, changedSurvey } from '../hazards/hazard.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocuments } from '../support/surveys.js';

const asked = (...changes: Change[]) =>
  sanityQuestions(readSurvey(changedSurvey('easy-home', changes))).map((q) => q.of);

describe('questions about figures that are not customary', () => {
  it.each(Object.keys(surveyDocuments))('asks nothing of %s', (name) => {
    expect(sanityQuestions(readSurvey(surveyDocuments[name]))).toEqual([]);
  });

  it.each([
    ['an impedance of a rod on TN-C-S', ['supply.externalImpedance', '21 Ω'], 'the external impedance'],
    ['amperes for kiloamperes', ['supply.prospectiveCurrent', '0.86 A'], 'the prospective current'],
    ['a metered peak in watt', ['supply.meteredDemand.current', '3200 A'], 'the metered peak'],
    ['the diameter of the tails', ['supply.tails', '6 mm²'], 'the tails'],
    ['a route in feet', ['wanted.0.route.1.length', '180 m'], 'the route of drive circuit'],
    ['a frosty ceiling', ['wanted.0.route.0.ambient', '-5 °C'], 'the temperature of hall ceiling, under joists'],
    ['hours for minutes', ['work.travelMinutes', 600], 'travelling'],
  ] as const)('asks about %s', (_, change, of) => {
    expect(asked(change)).toContain(of);
  });

  it('asks whether two readings belong together', () => {
    // 230 V / 0.28 Ω = 821 A to earth
    expect(asked(['supply.prospectiveCurrent', '0.4 kA'])).toEqual(['external impedance and prospective current']);
  });

  it('asks about a price in pounds', () => {
    const book = { format: 'prices/1', currency: 'GBP', items: {}, hour: 45, taxBasisPoints: 2000 } as const;
    expect(sanityQuestions(readSurvey(surveyDocuments['easy-home']), book).map((q) => q.of)).toEqual([
      'the price of an hour',
    ]);
  });

  it('changes no verdict', () => {
    const odd = readSurvey(changedSurvey('easy-home', [['work.travelMinutes', 600]]));
    const verdicts = (survey: typeof odd) =>
      planInBritain(survey, { sheets: 'none', lengths: false }).options.map((o) => o.overall.verdict);
    expect(verdicts(odd)).toEqual(verdicts(readSurvey(surveyDocuments['easy-home'])));
  });
});
