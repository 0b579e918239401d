import { formulasIn, tablesIn } from '../../core/collections.js';
import * as all from './definitions.js';

/** The steps from the build of a cable to its rating and to a load that varies, by name: formulas, relations and procedures. */
export const heatFormulas = /* @__PURE__ */ formulasIn(all);

/** Constants of materials, of air and of ducts, by name. */
export const heatTables = /* @__PURE__ */ tablesIn(all);
