import { type Calculation, checksOf, plain, Writer } from '../calculation/index.js';
import {
  type Aspect,
  type AssessmentOptions,
  aspects,
  type CircuitCase,
  type CircuitPlace,
  type Findings,
  type WiringCode,
} from '../codes/wiring-code.js';
import {
  type CheckResult,
  type Gap,
  notRequired,
  type Overall,
  overall,
  type Sheet,
  statement,
} from '../core/index.js';
import type { Installation } from '../installation/index.js';
import { circuitCase } from './circuit-case.js';

/** What one aspect of a circuit ended in. */
export interface AspectVerdict {
  /** The aspect. */
  readonly aspect: Aspect;
  /** What its rules amount to; `not-required` when none of its results is a rule that was judged. */
  readonly verdict: Overall['verdict'] | 'not-required';
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
  /** Figures that the aspects worked out. */
  readonly findings: Readonly<Findings>;
  /** What stands in the way of a verdict, each once. */
  readonly gaps: readonly Gap[];
  /** What a person has to be told, each once. */
  readonly cautions: readonly string[];
  /** Facts known only within a range, and how far each check holds over them; absent when there is none. */
  readonly ranges?: RangeReport;
}

/** A fact that is known only within a range. */
export interface RangedFact {
  /** What it is, and of what. */
  readonly name: string;
  /** Role in the vocabulary, where its name says it. */
  readonly role?: string;
  /** Unit, where the role is known. */
  readonly unit?: string;
  /** Smallest value. */
  readonly least: number;
  /** Largest value. */
  readonly most: number;
}

/** How far a check holds over the ranges of the facts that it can depend on. */
export interface RangedCheck {
  /** Aspect that the check belongs to. */
  readonly aspect: Aspect;
  /** Identifier of the check. */
  readonly check: string;
  /** `pass` or `fail` for the whole range, or `depends` on where in the range the facts lie. */
  readonly verdict: 'pass' | 'fail' | 'depends' | 'not-determined' | 'not-required';
  /** Where it was found to be worst, by the names of the facts that it can depend on. */
  readonly worstAt: Readonly<Record<string, number>>;
  /**
   * What the verdict for the whole range rests on: it depends on no such fact, it is monotone in all of them and was
   * taken at its worst point, or the range was subdivided where it is not known to be monotone.
   */
  readonly grounds: 'independent' | 'worst-point' | 'subdivided';
  /** Points at which it was judged. */
  readonly points: number;
  /** For each fact that it depends on: the values for which it passes whatever the others are. */
  readonly holds?: readonly { readonly fact: string; readonly intervals: readonly PermittedInterval[] }[];
}

/** What an assessment over ranges rests on. */
export interface RangeReport {
  /** The facts. */
  readonly facts: readonly RangedFact[];
  /** `pass` when every rule passes over the whole range; `fail` when one fails over all of it. */
  readonly verdict: 'pass' | 'fail' | 'depends' | 'not-determined';
  /** How far each check holds. */
  readonly checks: readonly RangedCheck[];
}

/** The results of one aspect. */
export interface AspectResults {
  /** The aspect. */
  readonly aspect: Aspect;
  /** Its results. */
  readonly results: readonly CheckResult[];
}

/** One end of an interval: a value that was assessed and holds, and one just beyond that does not. */
export interface IntervalEnd {
  /** The last value inside; the circuit was assessed at it. */
  readonly value: number;
  /** The first value beyond and the check that no longer passes there; absent at the end of what was examined. */
  readonly beyond?: { readonly value: number; readonly check: CheckResult };
}

/** A run of values for which no rule fails. */
export interface PermittedInterval {
  /** Whether every rule passes, or some could not be judged. */
  readonly verdict: 'pass' | 'not-determined';
  /** Smallest value. */
  readonly from: IntervalEnd;
  /** Largest value. */
  readonly to: IntervalEnd;
}

const titles: Readonly<Record<Aspect, string>> = {
  'origin-facts': 'What is said of the origin',
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

function once<T>(items: readonly T[]): readonly T[] {
  return items.length < 2 ? items : [...new Map(items.map((item) => [JSON.stringify(item), item] as const)).values()];
}

function verdictOf(results: readonly CheckResult[]): AspectVerdict['verdict'] {
  const judged = results.some((r) => r.weight === 'rule' && r.verdict !== 'not-required');
  return judged ? overall(results).verdict : 'not-required';
}

/** Gaps of a result and of the alternatives in it. */
const gapsOf = (r: CheckResult): readonly Gap[] =>
  r.verdict === 'not-determined' ? [...(r.gaps ?? []), ...(r.alternatives ?? []).flatMap(gapsOf)] : [];

/** Whether a rule is not met. */
const isFailed = (r: CheckResult): boolean => r.weight === 'rule' && r.verdict === 'fail';

/**
 * Judges a circuit aspect by aspect, every fact at one value.
 * @param findings where the rules keep their figures
 * @param stopAtFail whether the aspects after the first with a rule that is not met are left out
 */
export function judgeAspects(
  code: WiringCode,
  installation: Installation,
  runId: string,
  options: AssessmentOptions,
  sheet: Sheet,
  findings: Findings,
  stopAtFail = false,
): readonly AspectResults[] {
  const circuit = circuitCase(installation, runId, options);
  const judged: AspectResults[] = [];
  const calculation = calculationOf(code, circuit, findings);
  for (const aspect of aspects) {
    const one = judgeAspect(code, aspect, circuit, findings, sheet.part(titles[aspect]), calculation);
    judged.push(one);
    if (stopAtFail && one.results.some(isFailed)) break;
  }
  return judged;
}

/** The contents list of a code at work on one circuit, and what writes its sheet. */
interface Working {
  readonly calculation: Calculation;
  readonly writer: Writer;
}
function calculationOf(code: WiringCode, circuit: CircuitCase, findings: Findings): Working | undefined {
  const calculation = code.calculator?.of({ ...circuit, findings } satisfies CircuitPlace);
  return calculation && { calculation, writer: new Writer(calculation) };
}

/** Judges one aspect of a circuit, on a part of the sheet of its own. */
export function judgeAspect(
  code: WiringCode,
  aspect: Aspect,
  circuit: CircuitCase,
  findings: Findings,
  part: Sheet,
  working = calculationOf(code, circuit, findings),
): AspectResults {
  const rule = code.rules[aspect];
  if (typeof rule === 'function') return { aspect, results: rule(circuit, findings, part) };
  if ('finds' in rule && working) {
    const { calculation, writer } = working;
    const listed = code.calculator?.contents.checks[aspect] ?? [];
    for (const check of 'noRule' in listed ? [] : checksOf(listed)) part.told(check);
    const results = calculation.results(aspect);
    for (const name of rule.finds) {
      const found = plain(name, calculation.figure(name));
      if (found !== undefined) (findings as Record<string, unknown>)[name] = found;
    }
    part.listed((next, place) => writer.group(aspect, next, place));
    return { aspect, results };
  }
  if (!('notRequired' in rule)) throw new Error(`${code.name} lists ${aspect} and has no contents list`);
  const check = statement({
    id: `${aspect}-rule`,
    title: titles[aspect],
    weight: 'rule',
    source: rule.source ?? { document: code.name, edition: code.edition, provenance: 'memory' },
  });
  return { aspect, results: [part.result(notRequired(check, 'no-rule', rule.notRequired))] };
}

/** What the results of all aspects amount to. */
export function assessmentOf(
  code: WiringCode,
  runId: string,
  judged: readonly AspectResults[],
  findings: Findings,
): Assessment {
  const results = judged.flatMap((j) => j.results);
  return {
    run: runId,
    code: code.name,
    edition: code.edition,
    standing: code.standing,
    results,
    aspects: judged.map((j) => ({ aspect: j.aspect, verdict: verdictOf(j.results) })),
    overall: overall(results),
    findings,
    gaps: once(results.flatMap(gapsOf)),
    cautions: [...new Set(results.flatMap((r) => (r.caution === undefined ? [] : [r.caution])))],
  };
}
