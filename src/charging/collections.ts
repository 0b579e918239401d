import { checksIn, formulasIn, tablesIn } from '../core/collections.js';
import * as all from './definitions.js';

/** Formulas and procedures of charging, by name. */
export const chargingFormulas = /* @__PURE__ */ formulasIn(all);

/** Tables of charging, by name. */
export const chargingTables = /* @__PURE__ */ tablesIn(all);

/** Checks of the main fuse under load control, by name. */
export const chargingChecks = /* @__PURE__ */ checksIn(all);
