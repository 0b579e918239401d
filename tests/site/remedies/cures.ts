/** Remedies on everyday jobs: what is found, what cures it, and that what was offered comes true. */
import { describe, expect, it } from 'vitest';
import { ordinaryHome } from '../../../src/great-britain.js';
import { readSurvey } from '../../../src/io/index.js';
import { type Plan, withChanges } from '../../../src/site/index.js';
import { type ShortSurvey, surveyOf } from '../../jobs/base.js';
import { wholePlanInBritain } from '../../support/plan.js';

export const brief = { sheets: 'none', lengths: false } as const;
export const seen = <T>(known: T) => ({ known, by: 'seen' });
export const cutOut = (rating: string) => ({ kind: { standard: 'BS 1361' }, rating: seen(rating) });
export const home: ShortSurvey = {
  base: 'measured',
  metered: '20 A',
  circuits: ['lights', 'ring', 'cooker'],
  supply: { cutOut: cutOut('80 A') },
  points: [{ route: [['clipped outdoors', 10]] }],
};
export const tt: NonNullable<ShortSurvey['supply']> = {
  ...home.supply,
  system: seen('TT'),
  externalImpedance: seen('62 Ω'),
  electrode: { resistance: seen('60 Ω') },
  earthingConductorLaid: seen('buried-protected'),
};
export const plain = { openPenDevice: seen('none') };
export interface Case {
  readonly remedy: string;
  /** What is found, and what a competent person does: common practice, no source. */
  readonly what: string;
  readonly survey: ShortSurvey;
  /** What fails, is open, or is advised against, without it. */
  readonly check: string;
  readonly verdict?: 'pass' | 'conditional' | 'not-determined';
}

export const asWanted = (plan: Plan) => plan.options.find((o) => o.id === 'as-wanted');
const stands = (plan: Plan, check: string, verdicts = ['fail', 'not-determined']) => {
  const { overall } = asWanted(plan) ?? {};
  const results = overall ? [...overall.failed, ...overall.undetermined, ...overall.advice] : [];
  return results.some((r) => r.check === check && verdicts.includes(r.verdict));
};

export const cure = (cases: readonly Case[]) =>
  describe.each(cases)('$remedy, $what', ({ remedy, what, survey: short, check, verdict = 'pass' }) => {
    const survey = readSurvey(surveyOf(what, short));
    const by = { ...brief, ...(short.base === 'by photograph' ? { assumptions: ordinaryHome } : {}) };
    const plan = wholePlanInBritain(survey, by);
    const offer = plan.remedies.find((o) => o.option === 'as-wanted' && o.remedies.some((r) => r.id === remedy));

    it('is offered for it', () => {
      expect(stands(plan, check)).toBe(true);
      expect(offer?.verdict).toBe(verdict);
    });

    it('gives the verdict that was offered when it is applied, and cures what it is for', () => {
      const then = wholePlanInBritain(withChanges(survey, offer?.changes ?? []), { ...by, remedies: false });
      expect(asWanted(then)?.overall.verdict).toBe(verdict);
      expect(asWanted(then)?.notification.decision.route).toBe(offer?.route);
      expect(stands(then, check)).toBe(false);
    });
  });
