import { checksIn, formulasIn, tablesIn } from '../core/collections.js';
import * as all from './definitions.js';

/** Tables of guides, those with a number by it, `guidanceTables['A2']`. */
export const guidanceTables = /* @__PURE__ */ tablesIn(all);

/** Formulas and procedures of guides, by name. */
export const guidanceFormulas = /* @__PURE__ */ formulasIn(all);

/** Heights of charge points, as checks by name. */
export const guidanceChecks = /* @__PURE__ */ checksIn(all);
