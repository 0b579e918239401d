/** Remedies that stand beside others: each cures what it is for, and the verdict that is offered is the verdict once it is applied. */
import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../../src/io/index.js';
import { type Plan, withChanges } from '../../../src/site/index.js';
import { type Change, changedSurvey } from '../../hazards/hazard.js';
import { wholePlanInBritain } from '../../support/plan.js';
import type { Json } from '../../support/surveys.js';

const brief = { sheets: 'none', lengths: false } as const;
const metered: Change = ['demand', { governing: 'metered-peak' }];
/** Of the board of which it was said that it has no residual current device. */
const described: Change = ['board.noResidual', undefined];
const shared: Json = {
  position: 'origin-of-installation',
  type: 'AC',
  rating: '30 mA',
  ratedCurrent: '100 A',
  delay: 'general',
  opensAllLive: true,
  bidirectional: true,
};
const settledGarage: readonly Change[] = [
  ['supply.externalImpedance', '0.4 Ω'],
  ['board.runs.5.stretches.1.length', '38 m'],
];

interface Case {
  readonly remedy: string;
  readonly of?: string;
  readonly changes: readonly Change[];
  /** What fails, or is advised against, without it. */
  readonly check: string;
  readonly verdict?: 'pass' | 'conditional' | 'not-determined';
}

const cases: readonly Case[] = [
  { remedy: 'new-board', changes: [metered, ['board.spareWays', 0]], check: 'way-of-its-own' },
  {
    remedy: 'own-residual-device',
    changes: [metered, ['wanted.0.residual.0.rating', '100 mA']],
    check: 'residual-current-rating',
  },
  {
    remedy: 'ahead-of-residual-device',
    changes: [metered, ['board.residual', [shared]], described],
    check: 'smooth-current-upstream',
  },
  {
    remedy: 'residual-type-b',
    changes: [metered, ['board.residual', [shared]], described],
    check: 'smooth-current-upstream',
  },
  {
    remedy: 'larger-fuse-and-limiter',
    changes: [
      ['supply.cutOut.rating', '60 A'],
      ['supply.meteredDemand', undefined],
    ],
    check: 'demand-within-cut-out',
  },
  { remedy: 'lower-setting', of: 'garage-submain', changes: settledGarage, check: 'device-carries-load' },
  { remedy: 'larger-feeder', of: 'garage-submain', changes: settledGarage, check: 'device-carries-load' },
  // beside a feeder of which the soil is not known, the new circuit is open as the feeder is
  {
    remedy: 'own-circuit',
    of: 'garage-submain',
    changes: settledGarage,
    check: 'device-carries-load',
    verdict: 'not-determined',
  },
  {
    remedy: 'electrode',
    changes: [
      metered,
      ['supply.system', 'TT'],
      ['supply.externalImpedance', '247 Ω'],
      ['supply.electrode', { resistance: '245 Ω' }],
      ['supply.earthingConductorLaid', 'buried-protected'],
      ['supply.prospectiveCurrent', '0.8 kA'],
    ],
    // BS 7671, 411.5.3, note: at most 200 Ω
    check: 'electrode-stability',
  },
  // in a home a limiter at that figure is an option by itself
  {
    remedy: 'limiter-for-notice',
    changes: [metered, ['about.premises', 'small-shop']],
    check: 'demand-for-notice',
  },
];

const asWanted = (plan: Plan) => plan.options.find((o) => o.id === 'as-wanted');
const stands = (plan: Plan, check: string, verdicts = ['fail', 'not-determined']) => {
  const option = asWanted(plan);
  const results = option ? [...option.overall.failed, ...option.overall.undetermined, ...option.overall.advice] : [];
  return [...results, ...(option?.notification.decision.results ?? [])].some(
    (r) => r.check === check && verdicts.includes(r.verdict),
  );
};

describe.each(cases)('remedy $remedy of $check', ({ remedy, of = 'easy-home', changes, check, verdict = 'pass' }) => {
  const survey = readSurvey(changedSurvey(of, changes));
  const plan = wholePlanInBritain(survey, brief);
  const offer = plan.remedies.find((o) => o.option === 'as-wanted' && o.remedies.some((r) => r.id === remedy));

  it('is offered for it', () => {
    expect(stands(plan, check)).toBe(true);
    expect(offer?.verdict).toBe(verdict);
  });

  it('gives the verdict that was offered when it is applied, and cures what it is for', () => {
    const then = wholePlanInBritain(withChanges(survey, offer?.changes ?? []), { ...brief, remedies: false });
    expect(asWanted(then)?.overall.verdict).toBe(verdict);
    expect(asWanted(then)?.notification.decision.route).toBe(offer?.route);
    expect(stands(then, check, verdict === 'not-determined' ? ['fail'] : undefined)).toBe(false);
  });
});
