import { advice, type CheckResult, type Fact, notRequired, type Sheet, type Span, silent } from '../core/index.js';
import { type Millimetres, millimetres } from '../units/index.js';

/** Heights and distances of a charge point as planned or measured. */
export interface Mounting {
  /** Height of the outlet, or of the lead's holder, mm. */
  readonly outlet?: Fact<Millimetres>;
  /** Height of controls that a user operates, mm. */
  readonly controls?: Fact<Millimetres>;
  /** Height of the display, of an accessible point its upper edge, mm. */
  readonly display?: Fact<Millimetres>;
  /** Distance from a gas meter, mm; absent where there is none. */
  readonly gasMeter?: Fact<Millimetres>;
}

/** A part of a charge point whose height is asked for. @inline */
export type MountingPart = 'outlet' | 'controls' | 'display';

/** Heights that a guide asks of charge points: a value. */
export interface HeightRules {
  /** The check, with its source. */
  readonly check: Span<'mountingHeight', 'leastHeight', 'greatestHeight'>;
  /** Least and greatest height of a part, mm; none where the guide has no figure for it. */
  heightsOf(part: MountingPart): readonly [least: Millimetres, greatest: Millimetres] | undefined;
}

/** The point is clear of a gas meter. Zone about gas meters, 150 mm. */
export const clearOfGasMeter = /* @__PURE__ */ advice({
  id: 'clear-of-gas-meter',
  title: 'The charge point is at least 150 mm from the gas meter',
  of: ['gasMeterDistance', 'at-least', 'gasMeterClearance'],
  source: { document: 'zone about gas meters', clause: '150 mm', provenance: 'memory' },
  caution: 'The gas operator’s own rule goes before it.',
});

/**
 * Judges heights and distances of a charge point against the figures of a guide.
 * @param rules heights that a guide asks, such as `codeOfPracticeMounting`
 * @param mounting heights and distances, mm, 0 and up
 * @param sheet where the calculation is written; nowhere when absent
 * @returns a result for each part that is given, as advice
 * @throws CalculationError `out-of-range` for a negative height
 * @example
 * ```ts
 * import { known, millimetres } from 'ohmwright';
 * import { mountingResults } from 'ohmwright/demand';
 * import { accessibleMounting } from 'ohmwright/guidance';
 *
 * mountingResults(accessibleMounting, { outlet: known(millimetres(900)) }).map((r) => r.verdict); // => ['pass']
 * mountingResults(accessibleMounting, { outlet: known(millimetres(1100)) }).map((r) => r.verdict); // => ['fail']
 * ```
 */
export function mountingResults(
  { check, heightsOf }: HeightRules,
  mounting: Mounting,
  sheet: Sheet = silent(),
): readonly CheckResult[] {
  const results = (['outlet', 'controls', 'display'] as const).flatMap((name) => {
    const fact = mounting[name];
    if (!fact) return [];
    const part = sheet.part(name);
    const heights = heightsOf(name);
    if (!heights) return [part.result(notRequired(check, 'no-rule', `no figure for the ${name}`))];
    const mountingHeight = part.given('mountingHeight', fact);
    const leastHeight = part.given('leastHeight', heights[0], check.source.document);
    const greatestHeight = part.given('greatestHeight', heights[1], check.source.document);
    return [part.check(check, { mountingHeight, leastHeight, greatestHeight })];
  });
  if (!mounting.gasMeter) return results;
  const part = sheet.part('gas meter');
  const gasMeterDistance = part.given('gasMeterDistance', mounting.gasMeter);
  const gasMeterClearance = part.given('gasMeterClearance', millimetres(150), clearOfGasMeter.source.document);
  return [...results, part.check(clearOfGasMeter, { gasMeterDistance, gasMeterClearance })];
}
