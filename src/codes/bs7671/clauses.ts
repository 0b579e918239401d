/** Checks that wiring codes share, with the clauses by which BS 7671 asks for them. */
import * as shared from '../iec-family/checks.js';
import { bs } from './source.js';

/** I_b <= I_n. BS 7671, 433.1.1 (i). */
export const deviceCarriesLoad = /* @__PURE__ */ shared.deviceCarriesLoad(/* @__PURE__ */ bs('433.1.1 (i)'));
/** I_t >= I_t,min. BS 7671, 433.1.1 (ii), Appendix 4, 5. */
export const capacitySuffices = /* @__PURE__ */ shared.capacitySuffices(
  /* @__PURE__ */ bs('433.1.1 (ii), Appendix 4, 5'),
);
/** I_b <= I_z. BS 7671, 433.1.1. */
export const loadWithinCapacity = /* @__PURE__ */ shared.loadWithinCapacity(/* @__PURE__ */ bs('433.1.1'));
/** I_2 <= 1.45 I_z. BS 7671, 433.1.1 (iii). */
export const conventionalOverload = /* @__PURE__ */ shared.conventionalOverload(/* @__PURE__ */ bs('433.1.1 (iii)'));
/** A method that contains insulation takes no further factor for it. BS 7671, 523.9, Appendix 4. */
export const insulationOnce = /* @__PURE__ */ shared.insulationOnce(/* @__PURE__ */ bs('523.9, Appendix 4', 'memory'));
/** The third-harmonic content of a three-phase circuit is stated. BS 7671, 523.6.3, Appendix 4, 5.5. */
export const harmonicsStated = /* @__PURE__ */ shared.harmonicsStated(
  /* @__PURE__ */ bs('523.6.3, Appendix 4, 5.5', 'memory'),
);
/** ΔU/U_0 <= limit. BS 7671, 525, Appendix 4, 6.4. */
export const dropWithinLimit = /* @__PURE__ */ shared.dropWithinLimit(/* @__PURE__ */ bs('525, Appendix 4, 6.4'));
/** The voltage at the point stays inside the window of its protective device. BS 7671, 722.411.4.1 (iv). */
export const insideWindow = /* @__PURE__ */ shared.insideWindow({
  document: 'BS 7671',
  edition: '2018+A1:2020',
  clause: '722.411.4.1 (iv)',
  provenance: 'two-sources',
});
/** The conductor is not hotter than the terminals bear, θ <= θ_term. BS 7671, 512.1.5. */
export const terminalsCoolEnough = /* @__PURE__ */ shared.terminalsCoolEnough(/* @__PURE__ */ bs('512.1.5', 'memory'));
