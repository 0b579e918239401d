import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { recordBlocks, renderMarkdown } from '../../src/report/index.js';
import { recordsOf } from '../../src/site/index.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocument } from '../support/surveys.js';

const plan = planInBritain(readSurvey(surveyDocument('easy-home')), { sheets: 'none' });

describe('records of a job', () => {
  const records = recordsOf(plan, 0, { drive: { continuity: 0.186, loop: 0.47, externalLoop: 0.28 } });

  it('holds plain fields of supply and circuit', () => {
    const value = (id: string) => records?.circuits[0]?.fields.find((f) => f.id === id)?.value;
    expect(records?.installation.find((f) => f.id === 'cut-out')?.value).toBe('BS 1361, 80 A');
    expect(value('rating')).toBe('32 A');
    expect(value('line-area')).toBe('6 mm²');
    expect(value('loop-limit')).toBe('1.366 Ω');
    expect(JSON.parse(JSON.stringify(records))).toEqual(records);
  });

  it('judges the readings that came back, and names what is still owing', () => {
    const judgement = records?.circuits[0]?.judgement;
    expect(judgement?.owing.length).toBeGreaterThan(3);
    expect(judgement?.results.length).toBeGreaterThan(0);
  });

  it('tells the householder of the limit in plain words', () => {
    expect(records?.handover.join(' ')).toMatch(/at most 32 A.*keeps it at or below 80 A/);
  });

  it('prints, and is empty for an option that is not there', () => {
    const text = renderMarkdown(records ? recordBlocks(records) : []);
    expect(text).toContain('They are no certificate');
    expect(text).toContain('withdrawn on 15 October 2026');
    expect(recordsOf(plan, 9)).toBeUndefined();
  });
});
