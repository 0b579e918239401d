import { checksIn, formulasIn, tablesIn } from '../core/collections.js';
import * as all from './definitions.js';

/** Tables of network operators and of smart charging, by name. */
export const networkTables = /* @__PURE__ */ tablesIn(all);

/** Formulas of network operators, by name. */
export const networkFormulas = /* @__PURE__ */ formulasIn(all);

/** Checks of connection and notice, by name. */
export const networkChecks = /* @__PURE__ */ checksIn(all);
