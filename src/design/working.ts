import type { Calculation } from '../calculation/index.js';
import { type Aspect, type AssessmentOptions, aspects, type WiringCode } from '../codes/wiring-code.js';
import type { CheckResult } from '../core/index.js';
import type { Installation } from '../installation/index.js';
import { circuitCase } from './circuit-case.js';

/** The results of one aspect. */
export interface AspectResults {
  readonly aspect: Aspect;
  readonly results: readonly CheckResult[];
}

/** Whether a rule is not met. */
export const isFailed = (r: CheckResult): boolean => r.weight === 'rule' && r.verdict === 'fail';

/** A circuit at work: the contents list of its code over its facts, which may be exchanged for others. */
export class Working {
  readonly calculation: Calculation;

  constructor(
    readonly code: WiringCode,
    installation: Installation,
    readonly run: string,
    options: AssessmentOptions,
  ) {
    this.calculation = code.calculator.of(circuitCase(installation, run, options));
  }

  /** Goes on with other facts, of lengths alone where that is said: what does not depend on them is kept. */
  change(installation: Installation, options: AssessmentOptions, lengths = false): void {
    this.calculation.change(circuitCase(installation, this.run, options), lengths);
  }

  /** The results of the aspects in their order, of all or of some. */
  judged(some?: ReadonlySet<Aspect>): readonly AspectResults[] {
    const asked = some ? aspects.filter((a) => some.has(a)) : aspects;
    return asked.map((aspect) => ({ aspect, results: this.calculation.results(aspect) }));
  }

  /** The results of all aspects in one list. */
  results(): readonly CheckResult[] {
    return aspects.flatMap((aspect) => this.calculation.results(aspect));
  }

  /** The first rule that is not met; the aspects after it are not asked. */
  firstFailure(): CheckResult | undefined {
    for (const aspect of aspects) {
      const failed = this.calculation.results(aspect).find(isFailed);
      if (failed) return failed;
    }
    return undefined;
  }
}
