import type { Bounds } from '../../units/index.js';
import { type CableTerms, cableTerms } from './cables.js';
import { type ChargingTerms, chargingTerms } from './charging.js';
import { type DemandTerms, demandTerms } from './demand.js';
import { type EarthingTerms, earthingTerms } from './earthing.js';
import { type FaultTerms, faultTerms } from './faults.js';
import { type HeatTerms, heatTerms } from './heat.js';
import { type SiteTerms, siteTerms } from './site.js';
import { type SupplyTerms, supplyTerms } from './supply.js';
import type { Term, Terms } from './term.js';

export type { Term, Terms } from './term.js';

/** The trade's glossary: every role that a quantity plays, with its unit type. Formulas pick their inputs from it. */
export interface Vocabulary
  extends SupplyTerms,
    CableTerms,
    FaultTerms,
    EarthingTerms,
    HeatTerms,
    DemandTerms,
    ChargingTerms,
    SiteTerms {}

/** The name of a role. */
export type Name = keyof Vocabulary;

/** Symbol, unit, range and words of each role; used by sheets, guards, proof and documents only. */
export const vocabulary: Terms<Vocabulary> = /* @__PURE__ */ (() => ({
  ...supplyTerms,
  ...cableTerms,
  ...faultTerms,
  ...earthingTerms,
  ...heatTerms,
  ...demandTerms,
  ...chargingTerms,
  ...siteTerms,
}))();

/** The same as a map, which is quicker to read by a name of run time; made when first asked. */
let terms: ReadonlyMap<string, Term> | undefined;

/**
 * The term of a role whose name is known only at run time, or undefined.
 * @param name a role
 * @returns symbol, unit, range and words of the role, or undefined where there is none of that name
 * @example
 * ```ts
 * import { termOf } from 'ohmwright';
 *
 * termOf('designCurrent')?.symbol; // => 'I_b'
 * termOf('colour'); // => undefined
 * ```
 */
export function termOf(name: string): Term | undefined {
  terms ??= new Map(Object.entries(vocabulary));
  return terms.get(name);
}

/**
 * A fact in words: those of its role, or the text itself where it names no role.
 * @param fact a role, or words
 * @returns words for a person
 * @example
 * ```ts
 * import { factWords } from 'ohmwright';
 *
 * factWords('cutOutRating'); // => 'rating of the service cut-out fuse'
 * factWords('setting of drive'); // => 'setting of drive'
 * ```
 */
export const factWords = (fact: string): string => termOf(fact)?.words ?? fact;

/**
 * Whether a number respects the bounds; NaN and infinities never do.
 * @param value the number
 * @param bounds least, most, above
 */
export function within(value: number, bounds: Bounds): boolean {
  return (
    Number.isFinite(value) &&
    !(bounds.least !== undefined && value < bounds.least) &&
    !(bounds.most !== undefined && value > bounds.most) &&
    !(bounds.above !== undefined && value <= bounds.above)
  );
}
