import { noOptions } from '../codes/option-problems.js';
import type { AssessmentOptions, CircuitFigures, WiringCode } from '../codes/wiring-code.js';
import type { CheckResult, Sheet } from '../core/index.js';
import { once } from '../core/once.js';
import { holdsRange, type Installation, pathTo, type Run } from '../installation/index.js';
import { type Assessment, assessmentOf, writeCircuit } from './assessment.js';
import { ofOneWay, wayCases, worstOfWays } from './beside.js';
import { circuitCase } from './circuit-case.js';
import { conditionsOf, judgedConditionally } from './conditions.js';
import { type OverRanges, overRanges, type Ranged, rangeReport, writeCorners } from './over-ranges.js';
import { rangesOf } from './ranges.js';
import { type AspectResults, Working } from './working.js';

export type { Aspect, CircuitFigures, WiringCode } from '../codes/wiring-code.js';

/**
 * Assesses one circuit or feeder of an installation by every aspect of a wiring code, in order. Where facts are known
 * only within a range, figures are bounded over it: a check passes when it passes for the whole range, fails when it fails
 * for the whole range, and is `not-determined` otherwise, with the values for which it holds. What passes by assumed facts
 * alone is `conditional`, and the assumptions that it rests on are named.
 * @param code the wiring code
 * @param installation the installation
 * @param runId name of the run
 * @param options choices that change a figure
 * @param sheet where the calculation is written, a part an aspect; kept nowhere when absent
 * @returns results, what they amount to, figures, gaps and cautions; plain data. An unknown fact ends in
 * `not-determined`, never in an error
 * @throws CalculationError `unknown-definition` when there is no such run, `invalid-input` with the path of each problem of
 * an installation that cannot be or is not covered
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { amperes, assess, squareMillimetres } from 'ohmwright';
 * import { bs7671 } from 'ohmwright/bs7671';
 * import { readSurvey } from 'ohmwright/io';
 * import { decidedRun, withAddedRun } from 'ohmwright/site';
 *
 * const { installation, wanted } = readSurvey(survey);
 * const [point] = wanted;
 * if (!point) throw new Error('no point is wanted');
 * const run = decidedRun(point, point.run.cable, squareMillimetres(6), amperes(32));
 * const house = withAddedRun(installation, point.from, run);
 * const { results, overall } = assess(bs7671('2018+A2:2022'), house, run.id);
 * results.find((r) => r.check === 'voltage-drop')?.verdict; // => 'pass'
 * overall.verdict; // => 'pass'
 * ```
 */
export function assess(
  code: WiringCode,
  installation: Installation,
  runId: string,
  options: AssessmentOptions = noOptions,
  sheet?: Sheet,
): Assessment {
  const said = assessAsSaid(code, installation, runId, options);
  const beside = sideBySide(installation, runId);
  if (beside) return assessWays(code, installation, beside, said, sheet);
  const judged = judgedConditionally(installation, said.judged, (bare) => judgedAgain(said, bare));
  const { over } = said;
  const assessment = assessmentOf(said.working, judged, said.figures, (results, { verdict }) => {
    const conditions = conditionsOf(installation, results);
    return {
      ...(conditions.length > 0 ? { conditions } : {}),
      ...(over ? { ranges: rangeReport(over.circuit, over.checks, verdict, said.judged) } : {}),
    };
  });
  if (sheet) {
    const assumed = [...new Set(assessment.overall.conditional.flatMap((r) => r.conditions ?? []))];
    if (over) writeCorners(over.circuit, said.whole, sheet, assumed);
    else {
      // seen without assumed facts meanwhile
      if (judged !== said.judged) said.working.change(installation, options);
      writeCircuit(said.working, sheet, assumed);
    }
  }
  return assessment;
}

/** A run of a sound installation beside which others feed the same board. */
const sideBySide = (installation: Installation, runId: string): Run | undefined => {
  const run = pathTo(installation, runId)?.run;
  return run?.beside?.length ? run : undefined;
};

/** Ways side by side, each judged with its share, and what is the same for all of them judged once. */
function assessWays(code: WiringCode, installation: Installation, run: Run, together: Said, sheet?: Sheet): Assessment {
  const { options } = together;
  const judgedOf = (said: Said, of: Installation) =>
    judgedConditionally(of, said.judged, (bare) => judgedAgain(said, bare));
  const one = ofOneWay(options, run.id);
  const ways = wayCases(installation, run, circuitCase(installation, run.id, options).designCurrent).map((way) => {
    const said = assessAsSaid(code, way.installation, run.id, one);
    if (sheet && !said.over) writeCircuit(said.working, sheet.part(way.name));
    const judged = judgedOf(said, way.installation).filter(({ aspect }) => way.aspects.includes(aspect));
    return { name: way.name, judged };
  });
  if (sheet && !together.over) writeCircuit(together.working, sheet.part('All ways together'));
  const judged = worstOfWays(judgedOf(together, installation), ways);
  return assessmentOf(together.working, judged, together.figures, (results) => {
    const conditions = conditionsOf(installation, results);
    return conditions.length > 0 ? { conditions } : {};
  });
}

/** A circuit judged by its facts as they are said, assumed ones like known ones. */
interface Said {
  readonly working: Working;
  readonly options: AssessmentOptions;
  /** Figures by name, worked out when they are first asked for. */
  readonly figures: () => CircuitFigures;
  /** Results with every figure bounded over ranges, and what they come to. */
  readonly whole: readonly AspectResults[];
  readonly judged: readonly AspectResults[];
  readonly over?: OverRanges & { readonly circuit: Ranged };
}

function assessAsSaid(code: WiringCode, installation: Installation, runId: string, options: AssessmentOptions): Said {
  const working = new Working(code, installation, runId, options);
  const whole = working.judged();
  const figures = once(() => code.figures(working.calculation));
  const said = { working, options, figures, whole };
  if (!meetsRanges(said, installation)) return { ...said, judged: whole };
  const circuit = rangedOf(said, installation);
  const over = overRanges(circuit, whole);
  return { ...said, judged: over.judged, over: { ...over, circuit } };
}

function meetsRanges(
  { working, options, figures }: Pick<Said, 'working' | 'options' | 'figures'>,
  installation: Installation,
): boolean {
  if (!holdsRange(installation) && !holdsRange(options)) return false;
  // they may meet a range that no check does
  figures();
  return working.calculation.meetsSpans();
}

const rangedOf = (
  { working: { code, run }, options }: Pick<Said, 'working' | 'options'>,
  installation: Installation,
): Ranged => ({ code, installation, run, options, ranges: rangesOf(installation) });

/** Results of a circuit by its facts as they are said, assumed ones like known ones: enough where it is asked what fails. */
export const resultsAsSaid = (
  code: WiringCode,
  installation: Installation,
  runId: string,
  options: AssessmentOptions,
): readonly CheckResult[] => {
  const said = assessAsSaid(code, installation, runId, options);
  const beside = sideBySide(installation, runId);
  return beside ? assessWays(code, installation, beside, said).results : said.judged.flatMap((j) => j.results);
};

/** The results with facts unknown that were assumed: what does not depend on them is not worked out again. */
function judgedAgain(said: Said, bare: Installation): readonly AspectResults[] {
  const { working, options, over } = said;
  said.figures(); // by the facts as they are said
  working.change(bare, options);
  const whole = working.judged();
  return meetsRanges(said, bare) ? overRanges(rangedOf(said, bare), whole, over?.settled).judged : whole;
}
