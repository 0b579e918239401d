import { describe, expect, it } from 'vitest';
import { termOf } from '../../src/core/index.js';
import { readSurvey } from '../../src/io/index.js';
import { planBlocks, renderHtml, renderMarkdown, renderText } from '../../src/report/index.js';
import { type OptionPlan, simplestFirst } from '../../src/site/index.js';
import { planInBritain } from '../support/plan.js';
import { type Json, surveyDocument, surveyDocuments } from '../support/surveys.js';

const plan = (name: string) => planInBritain(readSurvey(surveyDocuments[name]));

/** Every number in plain data. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

describe('the plan of a survey', () => {
  it.each(Object.keys(surveyDocuments))('%s goes all the way: plain data, finite numbers, same bytes again', (name) => {
    const first = plan(name);
    expect(numbersIn(first).every(Number.isFinite)).toBe(true);
    expect(JSON.parse(JSON.stringify(first))).toEqual(first);
    if (name !== 'flats') expect(JSON.stringify(plan(name))).toBe(JSON.stringify(first));
    const blocks = planBlocks(first, { sheet: true });
    for (const text of [renderText(blocks), renderMarkdown(blocks), renderHtml(blocks, first.about.title)]) {
      expect(text).not.toMatch(/\bNaN\b|undefined|\[object/);
      expect(text).toContain('withdrawn on 15 October 2026');
    }
  });

  it('offers the easy home a limiter first, at the full setting, and says why not as wanted', () => {
    const { options, discarded } = plan('easy-home');
    expect(options.map((o) => [o.id, o.overall.verdict])).toEqual([
      ['with-limiter', 'pass'],
      ['lower-setting', 'pass'],
      ['as-wanted', 'not-determined'],
      ['three-phase-supply', 'not-determined'],
    ]);
    expect(discarded.map((d) => d.id)).toEqual(['larger-supply-fuse']);
    // On-Site Guide: lighting 66 % of 6 A; cooking 10 A + 30 % of 21.3 A + 5 A; rings 32 A + 40 % of 32 A
    const demand = options[0]?.supply.demand.governing.lines[0];
    expect(demand?.existing).toBeCloseTo(70.15, 2);
    // by the estimate 70.15 A + 32 A are too much for 80 A: 48 A may be there without the point, 40 A read with 20 % on top
    expect(options[2]?.overall.undetermined.map((r) => r.check)).toContain('demand-within-cut-out');
    expect(options[2]?.measure).toMatchObject([{ line: 'L1', most: 48, mostRead: 40 }]);
    expect(options[2]?.notification.decision.route).toBe('apply-first');
  });

  it('chooses 6 mm² for the easy home, each smaller size with its reason', () => {
    const point = plan('easy-home').options[0]?.points[0];
    expect(point?.design.outcome).toBe('accepted');
    expect(point?.run.cable.area).toMatchObject({ value: 6 });
    const before = point?.design.passedOver ?? [];
    expect([...new Set(before.map((c) => Number(c.candidate.area)))]).toEqual([4]); // what is bought behind 32 A begins at 4 mm²
    expect(before.every((c) => c.check.verdict === 'fail')).toBe(true);
    expect(point?.assessment.overall.failed).toEqual([]);
    // 30 kWh at 32 A, 230 V and 90 %: 4.53 h
    expect((point?.chargeTime?.seconds ?? 0) / 3600).toBeCloseTo(4.529, 3);
  });

  it('refuses a residual current device of type AC ahead of a point, and says so', () => {
    const cottage = plan('tt-cottage').options[0];
    expect(cottage?.overall.verdict).toBe('fail');
    expect(cottage?.overall.failed.map((r) => r.check)).toContain('smooth-current-upstream');
  });

  it('names what an unknown fact blocks', () => {
    const document = surveyDocument('easy-home');
    (document.supply as { [key: string]: Json }).externalImpedance = { unknown: 'measure at the main switch' };
    const open = planInBritain(readSurvey(document)).options[0];
    expect(open?.overall.verdict).toBe('not-determined');
    const item = open?.unknown.find((u) => u.role === 'externalImpedance');
    expect(item).toMatchObject({
      fact: termOf('externalImpedance')?.words,
      obtain: 'measure at the main switch',
      decides: true,
    });
    expect(item?.blocks).toContain('An earth fault is disconnected within the required time');
  });

  it('judges no circuit by an edition whose text was not available', () => {
    const document = surveyDocument('easy-home');
    document.code = { id: 'BS 7671', edition: '2018+A4:2026' };
    for (const option of planInBritain(readSurvey(document)).options)
      expect(option.points[0]?.assessment.overall.verdict).toBe('not-determined');
  });

  it('ranks what has the vehicle ready in time before what has not, of those that pass', () => {
    const [limited] = plan('easy-home').options;
    const slow = plan('easy-home').options.find((o) => o.id === 'lower-setting');
    if (!limited || !slow) throw new Error('two options pass');
    expect(slow.points[0]?.chargeTime?.inTime).toBe(false);
    // a larger fuse is more effort than a lower setting, but leaves the vehicle ready
    expect(simplestFirst.compare({ ...limited, id: 'larger-supply-fuse' }, slow)).toBeLessThan(0);
    const failing = { ...limited, overall: { ...limited.overall, verdict: 'fail' as const } };
    expect(simplestFirst.compare(failing, slow)).toBeGreaterThan(0);
  });

  it('ranks by a rule that can be replaced', () => {
    const fewestChanges = {
      words: 'fewest changes',
      compare: (a: OptionPlan, b: OptionPlan) => a.changes.length - b.changes.length,
    };
    const ranked = planInBritain(readSurvey(surveyDocument('easy-home')), { ranking: fewestChanges, sheets: 'none' });
    expect(ranked.options[0]?.id).toBe('as-wanted');
    expect(ranked.rankedBy).toBe('fewest changes');
    expect(ranked.options.every((o) => o.sheet === undefined)).toBe(true);
  });
});
