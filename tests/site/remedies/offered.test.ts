import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../../src/io/index.js';
import { withChanges } from '../../../src/site/index.js';
import { type Change, changedSurvey } from '../../hazards/hazard.js';
import { wholePlanInBritain } from '../../support/plan.js';

const brief = { sheets: 'none', lengths: false } as const;
const metered: Change = ['demand', { governing: 'metered-peak' }];
const garage: readonly Change[] = [['supply.externalImpedance', '0.4 Ω']];

interface Case {
  readonly what: string;
  readonly of: string;
  readonly changes: readonly Change[];
  /** What a competent person puts right: common practice, no source. */
  readonly remedy: RegExp;
  readonly verdict: 'pass' | 'not-determined';
}

describe('what fails is offered what a competent person would do, and passes with it', () => {
  it.each<Case>([
    {
      what: 'a device of type AC: one of type A',
      of: 'easy-home',
      changes: [metered, ['wanted.0.residual.0.type', 'AC']],
      remedy: /type A/,
      verdict: 'pass',
    },
    {
      what: 'a caravan park: earth electrode of the charge point',
      of: 'easy-home',
      changes: [metered, ['supply.specialLocation', 'caravan-park']],
      remedy: /electrode/,
      // its resistance is measured when it is there
      verdict: 'not-determined',
    },
    {
      what: '13 A for hours from an ordinary socket-outlet: 10 A',
      of: 'easy-home',
      changes: [
        metered,
        ['wanted.0.point.mode', 2],
        ['wanted.0.point.setting', '13 A'],
        ['wanted.0.point.socket', 'BS 1363'],
      ],
      remedy: /setting of .* lowered to 10 A/,
      // what kind of premises it is, which a socket-outlet asks for, stands nowhere in that survey
      verdict: 'not-determined',
    },
    {
      what: 'a main switch of 25 A in the garage: a larger one there',
      of: 'garage-submain',
      changes: [
        ...garage,
        ['board.runs.5.stretches.1.length', '30 m'],
        ['board.runs.5.feeds.0.mainSwitch', { rating: '25 A', noFuseAhead: true }],
      ],
      remedy: /main switch of \d+ A at garage/,
      verdict: 'pass',
    },
    {
      what: 'feeding back on a board rated 100 A: one rated 125 A',
      of: 'easy-home',
      changes: [
        metered,
        ['supply.cutOut.rating', '80 A'],
        ['wanted.0.point.bidirectional', true],
        ['board.rating', '100 A'],
        ['wanted.0.point.noResidual', true],
      ],
      remedy: /main switch 125 A/,
      verdict: 'pass',
    },
  ])('$what', ({ of, changes, remedy, verdict }) => {
    const survey = readSurvey(changedSurvey(of, changes));
    const { remedies } = wholePlanInBritain(survey, brief);
    const offered = remedies.map((o) => `${o.remedies.map((r) => r.what).join('; ')}: ${o.verdict}`);
    const hit = remedies.find((o) => o.verdict === verdict && o.remedies.some((r) => remedy.test(r.what)));
    expect(hit, offered.join('\n')).toBeDefined();
    if (!hit) return;
    const applied = wholePlanInBritain(withChanges(survey, hit.changes), { ...brief, remedies: false });
    expect(applied.options.map((o) => o.overall.verdict)).toContain(verdict);
  });

  it.each(['40 m', '45 m', '60 m', '90 m'])('a garage at the end of a trench of %s is planned', (length) => {
    const changes: readonly Change[] = [...garage, ['board.runs.5.stretches.1.length', length]];
    const plan = wholePlanInBritain(readSurvey(changedSurvey('garage-submain', changes)), brief);
    expect(plan.options.length).toBeGreaterThan(0);
  });
});
