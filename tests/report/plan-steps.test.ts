import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { type Block, planBlocks } from '../../src/report/index.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocuments } from '../support/surveys.js';

const stepsOf = (name: string, option = 0): readonly string[] => {
  const blocks = planBlocks(planInBritain(readSurvey(surveyDocuments[name])), { option });
  const at = blocks.findIndex((b) => b.kind === 'heading' && b.text === 'What to do next');
  const steps = blocks[at + 1] as Block | undefined;
  return steps?.kind === 'list' ? steps.items : [];
};

describe('what to do next', () => {
  it('asks the distributor, then names what changes and what to install', () => {
    const steps = stepsOf('easy-home');
    expect(steps[0]).toMatch(/^Apply to the distributor for charge point ‘drive’/);
    const provide = steps.findIndex((s) => /^Also: load limiter/.test(s));
    expect(provide).toBe(steps.length - 2);
    expect(steps.at(-1)).toMatch(
      /^Install charge point ‘drive’: .* mm², copper; protected by RCBO \d+ A, curve B, 30 mA type A, double pole; .* built in$/,
    );
  });

  it('installs nothing while a rule fails, and names each fact that decides once', () => {
    const steps = stepsOf('tt-cottage');
    expect(steps.some((s) => s.startsWith('Install') || s.startsWith('Beside'))).toBe(false);
    expect(steps.filter((s) => s.includes('service cut-out fuse'))).toHaveLength(1);
    expect(steps[0]).toMatch(/^(Find out|Measure the demand first)/);
  });

  it('counts many points of one kind', () => {
    expect(stepsOf('flats').filter((s) => s.startsWith('Install 24 charge points'))).toHaveLength(1);
    expect(stepsOf('workshop').filter((s) => s.startsWith('Install'))).toHaveLength(2);
  });
});
