import { type CheckResult, comparison, type Fact, notRequired, type Sheet, silent, span } from '../core/index.js';
import { buildingHeights } from '../guidance/approved-document-m/heights.js';
import { codeOfPracticeHeights } from '../guidance/charging-code-of-practice/heights.js';
import { frenchHeights } from '../guidance/fr-accessibility/heights.js';
import { accessibleHeights } from '../guidance/pas1899/heights.js';
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

/** Which figures are asked for. */
export type MountingUse = 'general' | 'accessible' | 'in-buildings' | 'accessible-fr';

const height = (
  id: string,
  title: string,
  table: { readonly source: typeof codeOfPracticeHeights.source },
  caution?: string,
) =>
  span({
    id,
    title,
    value: 'mountingHeight',
    least: 'leastHeight',
    most: 'greatestHeight',
    weight: 'advice',
    source: table.source,
    ...(caution === undefined ? {} : { caution }),
  });
const draft = 'The figures are those of a draft: see the published text.';

/**
 * Heights that a code of practice asks of outlet and display. IET Code of Practice for Electric Vehicle Charging
 * Equipment Installation, 4.4.
 */
export const generalHeight = /* @__PURE__ */ height(
  'mounting-height',
  'Height within the code of practice',
  codeOfPracticeHeights,
);
/** Heights of accessible points. PAS 1899, 5.2 of the draft. */
export const accessibleHeight = /* @__PURE__ */ height(
  'accessible-height',
  'Height of an accessible charge point',
  accessibleHeights,
  draft,
);
/** Heights of controls in buildings. Approved Document M, 4.30. */
export const buildingHeight = /* @__PURE__ */ height(
  'building-height',
  'Height of controls in a building',
  buildingHeights,
);
/** Heights of accessible equipment in France. */
export const frenchHeight = /* @__PURE__ */ height(
  'french-height',
  'Height of accessible equipment in France',
  frenchHeights,
);

/** The point is clear of a gas meter. Zone about gas meters, 150 mm. */
export const clearOfGasMeter = /* @__PURE__ */ comparison({
  id: 'clear-of-gas-meter',
  title: 'The charge point is at least 150 mm from the gas meter',
  kind: 'at-least',
  value: 'gasMeterDistance',
  limit: 'gasMeterClearance',
  weight: 'advice',
  source: { document: 'zone about gas meters', clause: '150 mm', provenance: 'memory' },
  caution: 'The gas operator’s own rule goes before it.',
  worse: { gasMeterDistance: 'down' },
});

type Part = 'outlet' | 'controls' | 'display';

/** Table, check and the row for each part, by use; a part without a row is not asked. */
function rulesOf(use: MountingUse) {
  switch (use) {
    case 'general':
      return {
        check: generalHeight,
        find: (part: Part, end: 'least' | 'greatest') =>
          codeOfPracticeHeights.find({ part: part === 'controls' ? 'outlet' : part, end }),
      };
    case 'accessible':
      return {
        check: accessibleHeight,
        find: (part: Part, end: 'least' | 'greatest') => accessibleHeights.find({ part, end }),
      };
    case 'in-buildings':
      return {
        check: buildingHeight,
        find: (part: Part, end: 'least' | 'greatest') =>
          part === 'controls' ? buildingHeights.find({ part, end }) : undefined,
      };
    case 'accessible-fr':
      return {
        check: frenchHeight,
        find: (part: Part, end: 'least' | 'greatest') =>
          part === 'outlet' ? frenchHeights.find({ part, end }) : undefined,
      };
  }
}

/**
 * Judges heights and distances of a charge point against the figures of one use.
 * @param mounting heights and distances, mm, 0 and up
 * @param use which figures are asked for
 * @param sheet where the calculation is written; nowhere when absent
 * @returns a result for each part that is given, as advice
 * @throws CalculationError `out-of-range` for a negative height
 * @example
 * ```ts
 * import { known, millimetres } from 'ohmwright';
 * import { mountingResults } from 'ohmwright/demand';
 *
 * mountingResults({ outlet: known(millimetres(900)) }, 'accessible').map((r) => r.verdict); // => ['pass']
 * mountingResults({ outlet: known(millimetres(1100)) }, 'accessible').map((r) => r.verdict); // => ['fail']
 * ```
 */
export function mountingResults(mounting: Mounting, use: MountingUse, sheet: Sheet = silent()): readonly CheckResult[] {
  const { check, find } = rulesOf(use);
  const results = (['outlet', 'controls', 'display'] as const).flatMap((name) => {
    const fact = mounting[name];
    if (!fact) return [];
    const part = sheet.part(name);
    const [least, greatest] = [find(name, 'least'), find(name, 'greatest')];
    if (least === undefined || greatest === undefined)
      return [part.result(notRequired(check, 'no-rule', `no figure for the ${name}`))];
    const mountingHeight = part.given('mountingHeight', fact);
    const leastHeight = part.given('leastHeight', least, check.source.document);
    const greatestHeight = part.given('greatestHeight', greatest, check.source.document);
    return [part.check(check, { mountingHeight, leastHeight, greatestHeight })];
  });
  if (!mounting.gasMeter) return results;
  const part = sheet.part('gas meter');
  const gasMeterDistance = part.given('gasMeterDistance', mounting.gasMeter);
  const gasMeterClearance = part.given('gasMeterClearance', millimetres(150), clearOfGasMeter.source.document);
  return [...results, part.check(clearOfGasMeter, { gasMeterDistance, gasMeterClearance })];
}
