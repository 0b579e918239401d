import { ofSingleConductors } from '../../iec-family/parallel-conductors.js';
import { protectiveConductorRule } from '../../iec-family/protective-conductor.js';
import type { Rule } from '../../wiring-code.js';
import { withstandFigures } from './adiabatic.js';

/** Size of the protective conductor. BS 7671 543.1. */
export const protectiveConductor: Rule = /* @__PURE__ */ ofSingleConductors((circuit, findings, sheet) =>
  protectiveConductorRule(withstandFigures(circuit))(circuit, findings, sheet),
);
