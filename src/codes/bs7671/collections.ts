import { checksIn, formulasIn, tablesIn } from '../../core/collections.js';
import * as all from './definitions.js';

/** Tables of BS 7671 by number, `bs7671Tables['4D5']`; `capacityTables`, `voltageDropTables`, `correctionFactorTables`, `faultProtectionTables` and `adiabaticFactorTables` have the common ones in words. */
export const bs7671Tables = /* @__PURE__ */ tablesIn(all);

/** Formulas and procedures by which BS 7671 judges, by name. */
export const bs7671Formulas = /* @__PURE__ */ formulasIn(all);

/** Checks of BS 7671 by name. */
export const bs7671Checks = /* @__PURE__ */ checksIn(all);
