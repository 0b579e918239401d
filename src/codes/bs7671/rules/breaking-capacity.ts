import { breakingCapacityRule } from '../../iec-family/breaking-capacity.js';
import type { Rule } from '../../wiring-code.js';

/** Breaking capacity at the place of the device, own or conditional. BS 7671 434.5.1, 536. */
export const breakingCapacity: Rule = breakingCapacityRule;
