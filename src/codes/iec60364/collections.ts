import { checksIn, formulasIn, tablesIn } from '../../core/collections.js';
import { clauses } from './clauses.js';
import * as all from './definitions.js';

/** Tables of IEC 60364-5-52 by number, `iec60364Tables['B522']`. */
export const iec60364Tables = /* @__PURE__ */ tablesIn(all);

/** Formulas and procedures by which IEC 60364 judges, by name. */
export const iec60364Formulas = /* @__PURE__ */ formulasIn(all);

/** Checks of IEC 60364 by name. */
export const iec60364Checks = /* @__PURE__ */ (() => checksIn(clauses()))();
