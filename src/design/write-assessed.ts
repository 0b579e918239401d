import type { AssessmentOptions, WiringCode } from '../codes/wiring-code.js';
import type { Sheet } from '../core/index.js';
import type { Installation } from '../installation/index.js';
import { type Assessment, writeCircuit } from './assessment.js';
import { writeCorners } from './over-ranges.js';
import { rangesOf } from './ranges.js';
import { Working } from './working.js';

/** Writes the calculation of a circuit that has been assessed, without judging it over its ranges and its assumptions once more. */
export function writeAssessed(
  code: WiringCode,
  installation: Installation,
  { run, overall, ranges }: Assessment,
  options: AssessmentOptions,
  sheet: Sheet,
): void {
  const working = new Working(code, installation, run, options);
  // all that an assessment works out before it is written
  const judged = working.judged();
  code.figures(working.calculation);
  const assumed = [...new Set(overall.conditional.flatMap((r) => r.conditions ?? []))];
  if (ranges)
    writeCorners({ code, installation, run, options, ranges: rangesOf(installation) }, judged, sheet, assumed);
  else writeCircuit(working, sheet, assumed);
}
