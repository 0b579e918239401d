import { formulasIn } from '../../core/collections.js';
import * as all from './definitions.js';

/** All formulas and procedures of this entry by name. */
export const powerFormulas = /* @__PURE__ */ formulasIn(all);
