import { Writer } from '../calculation/index.js';
import {
  type Aspect,
  type AssessmentOptions,
  aspects,
  type CircuitFigures,
  type WiringCode,
} from '../codes/wiring-code.js';
import { eachOnce } from '../core/each-once.js';
import { type CheckResult, type Gap, type Overall, overall, type Sheet } from '../core/index.js';
import type { Installation } from '../installation/index.js';
import type { Condition } from './conditions.js';
import type { RangeReport } from './range-report.js';
import { type AspectResults, Working } from './working.js';

/** What one aspect of a circuit ended in. */
export interface AspectVerdict {
  /** The aspect. */
  readonly aspect: Aspect;
  /** What its rules amount to; `not-required` when none of its results is a rule that was judged. */
  readonly verdict: Overall['verdict'] | 'not-required';
  /** Checks of its results by identifier, each once. */
  readonly checks: readonly string[];
}

/** The assessment of one circuit or feeder by one wiring code: plain, JSON-ready. */
export interface Assessment {
  /** Name of the run. */
  readonly run: string;
  /** The code, as cited. */
  readonly code: string;
  /** Its edition. */
  readonly edition: string;
  /** What has to be said of the edition beside every verdict. */
  readonly standing: string;
  /** Results of all checks in the order of the aspects. */
  readonly results: readonly CheckResult[];
  /** What each aspect ended in. */
  readonly aspects: readonly AspectVerdict[];
  /** What the results amount to. */
  readonly overall: Overall;
  /** Figures that a reader asks for by name. */
  readonly figures: CircuitFigures;
  /** What stands in the way of a verdict, each once. */
  readonly gaps: readonly Gap[];
  /** What a person has to be told, each once. */
  readonly cautions: readonly string[];
  /** Assumed facts that results rest on, to be confirmed; absent when none does. */
  readonly conditions?: readonly Condition[];
  /** Facts known only within a range, and how far each check holds over them; absent when no check meets one. */
  readonly ranges?: RangeReport;
}

/** What the aspects are called. */
export const aspectTitles: Readonly<Record<Aspect, string>> = {
  'origin-facts': 'Particulars of the supply',
  coordination: 'Load, device and cable',
  'voltage-drop': 'Voltage drop',
  disconnection: 'Automatic disconnection',
  'residual-current': 'Residual current protection',
  'line-withstand': 'Line conductors under fault',
  'protective-conductor': 'Protective conductor',
  'breaking-capacity': 'Breaking capacity',
  'terminal-temperature': 'Terminals',
  'minimum-size': 'Smallest size',
  placement: 'Where the cable lies',
  'earthing-and-bonding': 'Earthing and bonding',
  'charge-point-earthing': 'Earthing of the charge point',
  'surge-protection': 'Surge protection',
  'arc-detection': 'Arc detection',
};

function verdictOf(results: readonly CheckResult[]): AspectVerdict['verdict'] {
  const judged = results.some((r) => r.weight === 'rule' && r.verdict !== 'not-required');
  return judged ? overall(results).verdict : 'not-required';
}

/** Gaps of results and of the alternatives in them. */
function gapsOf(results: readonly CheckResult[], into: Gap[] = []): Gap[] {
  for (const { verdict, gaps, alternatives } of results) {
    if (verdict !== 'not-determined') continue;
    if (gaps) into.push(...gaps);
    if (alternatives) gapsOf(alternatives, into);
  }
  return into;
}

/** Writes the calculation of a circuit, a part an aspect, and what it amounts to. */
export function writeCircuit(working: Working, sheet: Sheet, assumed: readonly string[] = []): void {
  const { calculation, code } = working;
  const writer = new Writer(calculation);
  for (const aspect of aspects)
    sheet.part(aspectTitles[aspect]).listed((next, place) => writer.group(aspect, next, place));
  sheet.overall(
    working.results(),
    code.calculator.code?.document === code.name ? code.calculator.code : undefined,
    assumed,
  );
}

/** What the results of all aspects amount to; its figures are worked out when they are first read. */
export function assessmentOf(
  { code, run }: Working,
  judged: readonly AspectResults[],
  figures: () => CircuitFigures,
  besides: (results: readonly CheckResult[], overall: Overall) => Pick<Assessment, 'conditions' | 'ranges'>,
): Assessment {
  const results: CheckResult[] = [];
  const cautions = new Set<string>();
  for (const j of judged)
    for (const r of j.results) {
      results.push(r);
      if (r.caution !== undefined) cautions.add(r.caution);
    }
  const whole = overall(results);
  return {
    run,
    code: code.name,
    edition: code.edition,
    standing: code.standing,
    results,
    aspects: judged.map((j) => ({
      aspect: j.aspect,
      verdict: verdictOf(j.results),
      checks: [...new Set(j.results.map((r) => r.check))],
    })),
    overall: whole,
    get figures() {
      return figures();
    },
    gaps: eachOnce(gapsOf(results)),
    cautions: [...cautions, ...(code.attested?.remarks ?? [])],
    ...besides(results, whole),
  };
}

/** A circuit with every fact at one value, written on a sheet. */
export function writeAt(
  code: WiringCode,
  installation: Installation,
  run: string,
  options: AssessmentOptions,
  sheet: Sheet,
  assumed: readonly string[],
): void {
  writeCircuit(new Working(code, installation, run, options), sheet, assumed);
}
