import { checksIn, formulasIn } from '../core/collections.js';
import * as all from './definitions.js';

/** Formulas and procedures of demand and headroom, by name. */
export const demandFormulas = /* @__PURE__ */ formulasIn(all);

/** Checks of the place of a charge point, by name. */
export const demandChecks = /* @__PURE__ */ checksIn(all);
