import { coordinationRule } from '../../iec-family/coordination.js';
import type { Rule } from '../../wiring-code.js';
import { ratingTables } from '../cable-tables.js';

/** Load, device and cable are coordinated over every stretch. BS 7671 433.1, Appendix 4. */
export const coordination: Rule = (circuit, findings, sheet) =>
  coordinationRule(ratingTables)(circuit, findings, sheet);
