import { lineWithstandRule } from '../../iec-family/line-withstand.js';
import { ofSingleConductors } from '../../iec-family/parallel-conductors.js';
import type { Rule } from '../../wiring-code.js';
import { withstandFigures } from './adiabatic.js';

/** Line conductors against fault current. BS 7671 434.5, 435.1. */
export const lineWithstand: Rule = /* @__PURE__ */ ofSingleConductors((circuit, findings, sheet) =>
  lineWithstandRule(withstandFigures(circuit))(circuit, findings, sheet),
);
