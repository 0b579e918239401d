import type { CheckResult, Gap } from '../../core/index.js';

/** A result that is open after all: what it failed by is not known, but supposed. */
export function opened(result: CheckResult, gaps: readonly Gap[], because?: string): CheckResult {
  const { check, title, weight, source, caution } = result;
  return {
    check,
    title,
    weight,
    source,
    ...(caution === undefined ? {} : { caution }),
    verdict: 'not-determined',
    ...(because === undefined ? {} : { because }),
    gaps,
  };
}
