import type { Bounds } from '../../units/index.js';
import { cableTerms } from './cables.js';
import { chargingTerms } from './charging.js';
import { demandTerms } from './demand.js';
import { earthingTerms } from './earthing.js';
import { faultTerms } from './faults.js';
import { heatTerms } from './heat.js';
import { powerTerms } from './power.js';
import { siteTerms } from './site.js';
import { supplyTerms } from './supply.js';
import type { Quantities, Roles, Term } from './term.js';

export type { Term } from './term.js';

type Rows = typeof supplyTerms &
  typeof cableTerms &
  typeof faultTerms &
  typeof earthingTerms &
  typeof heatTerms &
  typeof powerTerms &
  typeof demandTerms &
  typeof chargingTerms &
  typeof siteTerms;
type Terms = { [N in keyof Rows]: Term<Rows[N][1]> };

/**
 * The trade's vocabulary: every role that a quantity plays, with its unit type. Formulas pick their inputs from it.
 *
 * Roles of your own join it by declaration, and formulas and sheets then take them. Nothing but the compiler knows of
 * them: they have no range, and on a written sheet neither symbol, unit nor words. A name that the library has already
 * keeps its unit.
 *
 * ```ts no-run
 * import { formula, type Metres } from 'ohmwright';
 *
 * declare module 'ohmwright' {
 *   interface Vocabulary {
 *     trenchWidth: Metres;
 *   }
 * }
 * ```
 */
export interface Vocabulary extends Quantities<Terms> {}

/** The name of a role. */
export type Name = keyof Vocabulary;

/** Symbol, unit, range and words of each role; used by sheets, guards, proof and documents only. */
export const vocabulary: { readonly [N in keyof Terms]: Term<Terms[N]['unit']> } = /* @__PURE__ */ (() => {
  const topics: readonly Roles[] = [
    supplyTerms,
    cableTerms,
    faultTerms,
    earthingTerms,
    heatTerms,
    powerTerms,
    demandTerms,
    chargingTerms,
    siteTerms,
  ];
  const roles = topics.flatMap((topic) => Object.entries(topic));
  return Object.fromEntries(
    roles.map(([name, [symbol, unit, range, words]]) => [name, { symbol, unit, ...range, words }]),
  );
})() as Terms;

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

/** A fact in words: those of its role, or the text itself where it names no role. */
export const factWords = (fact: string): string => termOf(fact)?.words ?? fact;

/** Whether a number respects the bounds; NaN and infinities never do. */
export function within(value: number, bounds: Bounds): boolean {
  return (
    Number.isFinite(value) &&
    !(bounds.least !== undefined && value < bounds.least) &&
    !(bounds.most !== undefined && value > bounds.most) &&
    !(bounds.above !== undefined && value <= bounds.above)
  );
}
