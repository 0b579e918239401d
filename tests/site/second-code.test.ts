import { describe, expect, it } from 'vitest';
import { iec60364 } from '../../src/codes/iec60364/code.js';
import { britishWords, inGreatBritain } from '../../src/great-britain.js';
import { known } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { germany } from '../../src/networks/index.js';
import { planBlocks, recordBlocks, renderHtml, renderText } from '../../src/report/index.js';
import { type Plan, planOf, recordsOf, type Survey } from '../../src/site/index.js';
import { verifySheet } from '../../src/verify/index.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocument, surveyDocuments } from '../support/surveys.js';

const british = readSurvey(surveyDocument('easy-home'));
/** The home with its whole route clipped direct: IEC 60364 has no method for a ceiling with insulation. */
const clipped: Survey = {
  ...british,
  wanted: british.wanted.map((w) => ({
    ...w,
    run: { ...w.run, stretches: w.run.stretches.map((s) => ({ ...s, method: known('C') })) },
  })),
};
const asked = { id: 'IEC 60364', edition: '2009' };
const second = { ...inGreatBritain('2018+A2:2022'), code: iec60364('2009') };

describe('a plan by a second code', () => {
  const plan = planOf({ ...clipped, code: asked }, { ...second, sheets: 'all' });
  const [option] = plan.options;
  if (!option) throw new Error('no option');
  const [point] = option.points;
  if (!point) throw new Error('no point');

  it('names the code that it was made by, and what has to be said of it', () => {
    expect(plan.code).toMatchObject({ name: 'IEC 60364', edition: '2009', onSurveyDay: 'unknown' });
    expect(point.assessment).toMatchObject({ code: 'IEC 60364', standing: plan.code.standing });
  });

  it('says what none of its checks looks at', () => {
    expect(option.cautions).toContain(second.code.notJudged);
  });

  it('passes nothing of which no rule is entered', () => {
    expect(plan.options.map((o) => o.overall.verdict)).not.toContain('pass');
    const verdicts = Object.fromEntries(point.assessment.aspects.map((a) => [a.aspect, a.verdict]));
    expect(verdicts.coordination).toBe('pass');
    expect(verdicts['voltage-drop']).toBe('pass');
    for (const aspect of ['disconnection', 'residual-current', 'charge-point-earthing', 'breaking-capacity'])
      expect([aspect, verdicts[aspect]]).toEqual([aspect, 'not-determined']);
    expect(option.unknown.map((u) => u.fact)).toContain('IEC 60364, other parts than 5-52');
  });

  it('chooses a size by the tables of that code', () => {
    // 32 A in two loaded cores of 70 °C copper by method C: 2.5 mm² carries 27 A, 4 mm² 36 A, IEC 60364-5-52 Table B.52.2
    expect(point.run.cable.area).toMatchObject({ state: 'known', value: 4 });
    expect(point.run.device.rating).toMatchObject({ state: 'known', value: 32 });
    const looked = JSON.stringify(option.sheet);
    expect(looked).toContain('iec60364/b.52.2');
    expect(looked).not.toMatch(/bs7671\/4d/);
  });

  it('leaves the size open where it has no table for the method', () => {
    const open = planOf({ ...british, code: asked }, { ...second, sheets: 'none' }).options[0]?.points[0];
    expect(open?.run.cable.area.state).toBe('unknown');
    expect(open?.design.outcome).toBe('not-determined');
    expect(open?.design.gaps).toContainEqual(expect.objectContaining({ kind: 'cell', table: 'iec60364/b.52.2' }));
  });

  it('offers no earthing and asks for no tests that it does not know', () => {
    expect(point.earthing).toEqual([]);
    expect(point.tests.tests).toEqual([]);
    expect(point.tests.gaps).toHaveLength(1);
    const records = recordsOf(plan, 0, { drive: {} });
    expect(records?.circuits[0]?.judgement?.results.map((r) => r.verdict)).toEqual(['not-determined']);
  });

  it('is plain data, printed and verified like any other', () => {
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
    const text = renderText(planBlocks(plan, { sheet: true }));
    expect(text).toContain('Judged by IEC 60364:2009');
    expect(text).toContain('The tests of IEC 60364:2009 are not entered here');
    const records = recordsOf(plan);
    expect(records && renderHtml(recordBlocks(records), 'records')).toContain('IEC 60364');
    for (const { sheet } of plan.options) expect(sheet && verifySheet(sheet).problems).toEqual([]);
  });
});

describe('what is handed in', () => {
  const refused = (options: Parameters<typeof planOf>[1], of: Survey = british) => {
    try {
      return planOf(of, options);
    } catch (error) {
      return (error as { detail: { problems: { path: string[] }[] } }).detail.problems.map((p) => p.path.join('.'));
    }
  };
  const short = { sheets: 'none', lengths: false } as const;

  it('has to be what the survey names', () => {
    expect(refused({ ...second, ...short })).toEqual(['code']);
    expect(refused({ ...inGreatBritain('2018+A3:2024'), ...short })).toEqual(['code']);
    expect(refused({ ...inGreatBritain('2018+A2:2022'), network: germany, ...short })).toEqual(['about.country']);
    expect(refused({ ...second, network: germany, ...short })).toEqual(['code', 'about.country']);
    expect(refused({ ...inGreatBritain('2018+A2:2022'), ...short })).toHaveProperty('format', 'plan/1');
  });

  it('decides the notification and gives the words', () => {
    const abroad = { ...british, about: { ...british.about, country: 'DE' } };
    const words = { ...britishWords, tails: 'conductors ahead of the board', meterPoint: 'number of the connection' };
    const plan = planOf(abroad, { ...inGreatBritain('2018+A2:2022'), network: germany, words, ...short }) as Plan;
    expect(plan.options[0]?.notification.decision.country).toBe('DE');
    expect(plan.options.flatMap((o) => o.changes).join()).toContain(
      'current sensors on the conductors ahead of the board',
    );
    const titles = recordsOf(plan)?.installation.map((f) => f.title);
    expect(titles).toContain('Conductors ahead of the board');
    expect(titles).toContain('Number of the connection');
    expect(JSON.stringify(plan.options)).not.toMatch(/current sensors on the meter tails/);
  });

  it('an edition whose text was not available offers neither earthing nor tests', () => {
    const document = surveyDocuments['easy-home'] as object;
    const of = (edition: string) =>
      planInBritain(readSurvey({ ...document, code: { id: 'BS 7671', edition } }), short).options[0]?.points[0];
    expect(of('2018+A4:2026')?.earthing).toEqual([]);
    expect(of('2018+A4:2026')?.tests.tests).toEqual([]);
    expect(of('2018+A3:2024')?.earthing).toHaveLength(6);
    expect(of('2018+A3:2024')?.tests.tests.length).toBeGreaterThan(5);
  });
});
