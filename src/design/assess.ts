import {
  type CheckResult,
  type Gap,
  notRequired,
  type Overall,
  overall,
  type Sheet,
  silent,
  statement,
} from '../core/index.js';
import type { Installation } from '../installation/index.js';
import {
  type Aspect,
  type AssessmentOptions,
  aspects,
  type Findings,
  type WiringCode,
} from '../standards/wiring-code.js';
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
}

const titles: Readonly<Record<Aspect, string>> = {
  coordination: 'Load, device and cable',
  'voltage-drop': 'Voltage drop',
  disconnection: 'Automatic disconnection',
  'residual-current': 'Residual current protection',
  'line-withstand': 'Line conductors under fault',
  'protective-conductor': 'Protective conductor',
  'breaking-capacity': 'Breaking capacity',
  'terminal-temperature': 'Terminals',
  'minimum-size': 'Smallest size',
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

/**
 * Assesses one circuit or feeder of an installation by every aspect of a wiring code, in order.
 * @param code the wiring code
 * @param installation the installation
 * @param runId name of the run
 * @param options choices that change a figure
 * @param sheet where the calculation is written, a part an aspect; kept nowhere when absent
 * @returns results, what they amount to, figures, gaps and cautions; plain data. An unknown fact ends in
 * `not-determined`, never in an error
 * @throws CalculationError `unknown-definition` when there is no such run, `out-of-range` for a surveyed value that its
 * role forbids
 */
export function assess(
  code: WiringCode,
  installation: Installation,
  runId: string,
  options: AssessmentOptions = {},
  sheet: Sheet = silent(),
): Assessment {
  const circuit = circuitCase(installation, runId, options);
  const findings: Findings = {};
  const results: CheckResult[] = [];
  const verdicts: AspectVerdict[] = [];
  for (const aspect of aspects) {
    const rule = code.rules[aspect];
    const part = sheet.part(titles[aspect]);
    const found: readonly CheckResult[] =
      typeof rule === 'function'
        ? rule(circuit, findings, part)
        : [
            part.result(
              notRequired(
                statement({
                  id: `${aspect}-rule`,
                  title: titles[aspect],
                  weight: 'rule',
                  source: rule.source ?? { document: code.name, edition: code.edition, provenance: 'memory' },
                }),
                'no-rule',
                rule.notRequired,
              ),
            ),
          ];
    results.push(...found);
    verdicts.push({ aspect, verdict: verdictOf(found) });
  }
  return {
    run: runId,
    code: code.name,
    edition: code.edition,
    standing: code.standing,
    results,
    aspects: verdicts,
    overall: overall(results),
    findings,
    gaps: once(results.flatMap(gapsOf)),
    cautions: [...new Set(results.flatMap((r) => (r.caution === undefined ? [] : [r.caution])))],
  };
}
