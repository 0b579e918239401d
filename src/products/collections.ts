import { tablesIn } from '../core/collections.js';
import * as all from './definitions.js';

/** Tables of product standards, and of what they lean on, by name. */
export const productTables = /* @__PURE__ */ tablesIn(all);
