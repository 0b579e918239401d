import { formulasIn } from '../core/collections.js';
import * as all from './definitions.js';

/** All formulas, relations and procedures of this entry by name. Whoever takes one of them pays for all in a bundle. */
export const physicsFormulas = /* @__PURE__ */ formulasIn(all);
