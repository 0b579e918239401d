import { describe, expect, it } from 'vitest';
import { inGreatBritain } from '../../src/great-britain.js';
import { hasCode, type Installation, known, metres } from '../../src/index.js';
import { withRun } from '../../src/installation/index.js';
import { readSurvey } from '../../src/io/index.js';
import { type OptionPlan, recordsOf, type Survey } from '../../src/site/index.js';
import { judgedAgain } from '../../src/site/judged.js';
import { planInBritain } from '../support/plan.js';
import { type Json, surveyDocument } from '../support/surveys.js';

type Entry = { [key: string]: Json };
/** The flats with their first points as a group of so many. */
function grouped(count: number, change: (entry: Entry) => void = () => undefined): { [key: string]: Json } {
  const document = surveyDocument('flats');
  const [first] = document.wanted as Entry[];
  const entry: Entry = { ...structuredClone(first as Entry), id: 'bay', count, inTurn: true };
  change(entry);
  document.wanted = [entry];
  const board = document.board as { control: { controls: string[] }; runs: Json[] };
  board.control.controls = ['bay'];
  for (const run of board.runs as { feeds: { kind: string; control?: { controls: string[] } }[] }[])
    for (const o of run.feeds) if (o.control) o.control.controls = o.control.controls.includes('bay 1') ? ['bay'] : [];
  return document;
}
const planOfSurvey = (survey: Survey) => planInBritain(survey, { sheets: 'none', limits: false }).options[0];
const named = (survey: Survey) => survey.wanted.map((w) => [w.run.feeds[0]?.id, w.run.id, w.run.lines.join()]);

describe('a group of points in a survey', () => {
  it('is written out: names, lines in turn, and the load controls that hold it', () => {
    const survey = readSurvey(grouped(4));
    expect(named(survey)).toEqual([
      ['bay 1', 'bay 1 circuit', 'L1'],
      ['bay 2', 'bay 2 circuit', 'L2'],
      ['bay 3', 'bay 3 circuit', 'L3'],
      ['bay 4', 'bay 4 circuit', 'L1'],
    ]);
    expect(survey.installation.board.control?.controls).toEqual(['bay 1', 'bay 2', 'bay 3', 'bay 4']);
  });
  it('all on the line that is named where they do not take turns', () => {
    const survey = readSurvey(grouped(3, (entry) => void delete entry.inTurn));
    expect(named(survey).map(([, , lines]) => lines)).toEqual(['L1', 'L1', 'L1']);
  });
  it('problems stand at its entry, once', () => {
    const document = grouped(40, (entry) => {
      entry.from = 'no such board';
    });
    try {
      readSurvey(document);
      expect.unreachable();
    } catch (error) {
      if (!hasCode(error, 'invalid-input')) throw error;
      const at = error.detail.problems.filter((p) => p.path.join('.') === 'wanted.0.from');
      expect(at).toHaveLength(1);
    }
  });
});

describe('points that are alike', () => {
  const survey = readSurvey(grouped(9));
  const option = planOfSurvey(survey);
  it('are planned once for each line, and stand for every name', () => {
    expect(option?.points.map((p) => [p.point, p.alike?.points.map((a) => a.point)])).toEqual([
      ['bay 1', ['bay 4', 'bay 7']],
      ['bay 2', ['bay 5', 'bay 8']],
      ['bay 3', ['bay 6', 'bay 9']],
    ]);
    expect(option && recordsOf(planInBritain(survey), 0)?.circuits.map((c) => c.point)).toHaveLength(9);
  });
  // each on its own by a difference that changes nothing but the words of who says so
  it('come to what each of them comes to alone', () => {
    const apart: Survey = {
      ...survey,
      wanted: survey.wanted.map((w, i) => ({
        ...w,
        run: { ...w.run, noResidual: known(false, `seen at bay ${i + 1}`) },
      })),
    };
    const plain: Survey = {
      ...survey,
      wanted: survey.wanted.map((w) => ({ ...w, run: { ...w.run, noResidual: known(false, 'seen') } })),
    };
    const [each, together] = [apart, plain].map(planOfSurvey);
    expect(each?.points).toHaveLength(9);
    expect(together?.points).toHaveLength(3);
    expect(together?.overall.verdict).toBe(each?.overall.verdict);
    expect(together?.hours.typical).toBeCloseTo(each?.hours.typical as number, 9);
    expect(together?.hours.high).toBeCloseTo(each?.hours.high as number, 9);
    const sizeOf = (name: string, of: typeof each) =>
      of?.points
        .filter((p) => p.point === name || p.alike?.points.some((a) => a.point === name))
        .map((p) => [p.run.cable.area, p.run.device.rating, p.assessment.figures.totalDrop]);
    for (let n = 1; n <= 9; n++) expect(sizeOf(`bay ${n}`, together)).toEqual(sizeOf(`bay ${n}`, each));
    expect(together?.installation.board).toEqual(
      JSON.parse(JSON.stringify(each?.installation.board).replace(/seen at bay \d+/g, 'seen')),
    );
  });
  it('what is found of one of them is judged, though another stood for it', () => {
    const by = inGreatBritain(survey.code.edition);
    const found = withRun(option?.installation as Installation, 'bay 7 circuit', (run) => ({
      ...run,
      stretches: run.stretches.map((s) => ({ ...s, length: known(metres(400), 'measured') })),
    }));
    const failed = (installation: Installation) =>
      judgedAgain(by, survey, option as OptionPlan, installation).filter((r) => r.verdict === 'fail');
    expect(failed(option?.installation as Installation)).toEqual([]);
    expect(failed(found).map((r) => r.check)).toContain('voltage-drop');
  });
  it('one that differs stands alone', () => {
    const other: Survey = {
      ...survey,
      wanted: survey.wanted.map((w, i) =>
        i === 4
          ? { ...w, run: { ...w.run, stretches: w.run.stretches.map((s) => ({ ...s, name: 'round the back' })) } }
          : w,
      ),
    };
    const points = planOfSurvey(other)?.points.map((p) => p.point);
    expect(points).toEqual(['bay 1', 'bay 2', 'bay 3', 'bay 5']);
  });
});
