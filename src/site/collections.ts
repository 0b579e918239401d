import { formulasIn, tablesIn } from '../core/collections.js';
import * as all from './definitions.js';

/** Formulas of material, hours and charging time, by name. */
export const siteFormulas = /* @__PURE__ */ formulasIn(all);

/** Tables of the work, by name. */
export const siteTables = /* @__PURE__ */ tablesIn(all);
