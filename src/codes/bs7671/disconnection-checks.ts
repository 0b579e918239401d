import { advice, alternatives, type Known, rule } from '../../core/index.js';
import type { Ohms } from '../../units/index.js';
import { bs } from './source.js';

/** What is said with every verdict on protection against electric shock. */
export const shockCaution =
  'Electric shock can kill. The installation must not be energised on the strength of a calculation alone: the loop impedance and the disconnection have to be confirmed by test, by a competent person, to the edition in force.';

/** A caution of its own, followed by the one on electric shock. A template would stay in every bundle. */
const withShockCaution = (own: string): string => `${own} ${shockCaution}`;

/** Z_s I_a <= U_0 C_min: the overcurrent device disconnects an earth fault in time. BS 7671, 411.4.4. */
export const overcurrentDisconnects = /* @__PURE__ */ rule({
  id: 'disconnection-by-overcurrent-device',
  title: 'The earth fault loop impedance lets the overcurrent device disconnect within the required time',
  of: ['loopImpedance', 'at-most', 'loopImpedanceLimit'],
  source: /* @__PURE__ */ bs('411.4.4'),
  caution: shockCaution,
});

/** The residual current device disconnects within the required time. BS 7671, 411.4.5, 411.5.3. */
export const residualDisconnects = /* @__PURE__ */ rule({
  id: 'disconnection-by-residual-current-device',
  title: 'The residual current device disconnects within the required time',
  of: ['disconnectionTime', 'at-most', 'requiredTime'],
  source: /* @__PURE__ */ bs('411.4.5, 411.5.3'),
  caution: shockCaution,
});

/** R_A I_Δn <= 50 V (Z_s I_Δn in TN). BS 7671, 411.5.3, Table 41.5. */
export const residualTouchLimit = /* @__PURE__ */ rule({
  id: 'touch-voltage-at-residual-current',
  title: 'The rated residual current raises at most 50 V on exposed metal',
  of: ['touchVoltage', 'at-most', 'touchVoltageLimit'],
  source: /* @__PURE__ */ bs('411.5.3, Table 41.5'),
  caution: shockCaution,
});

/** Automatic disconnection by one device or another. BS 7671, 411.3.2. */
export const automaticDisconnection = /* @__PURE__ */ alternatives({
  id: 'automatic-disconnection',
  title: 'An earth fault is disconnected within the required time',
  weight: 'rule',
  source: /* @__PURE__ */ bs('411.3.2'),
  caution: shockCaution,
});

/**
 * A warning where a residual current device has to do what the overcurrent device cannot. BS 7671, 411.4.4, 411.4.5.
 */
export const overcurrentPreferred = /* @__PURE__ */ advice({
  id: 'disconnection-without-residual-current-device',
  title: 'The overcurrent device alone disconnects an earth fault in time',
  source: /* @__PURE__ */ bs('411.4.4, 411.4.5', 'one-source'),
  caution: /* @__PURE__ */ withShockCaution(
    'Protection rests on a mechanism that has to be tested regularly; the line-neutral fault current is as small and has to be judged against the overcurrent device and the withstand of the conductors.',
  ),
});

/** R_A <= 200 Ω, for a resistance that lasts. BS 7671, 411.5.3, Table 41.5, note. */
export const electrodeStable = /* @__PURE__ */ advice({
  id: 'electrode-stability',
  title: 'The resistance of the earth electrode is low enough to be stable',
  of: ['electrodeResistance', 'at-most', 'electrodeStability'],
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: '411.5.3, Table 41.5, note',
    provenance: 'two-sources',
  },
  caution: /* @__PURE__ */ withShockCaution(
    'Above 200 Ω the resistance may not be stable: soil dries out and freezes.',
  ),
});

/**
 * The named note for a value that lies between the exact and the printed limit.
 * @param value loop impedance, Ω, 0 and up
 * @param exact computed limit, Ω, 0 and up
 * @param printed printed limit, Ω, 0 and up
 * @returns the note, or nothing where the value lies elsewhere
 */
export function betweenPrints(value: Known<Ohms>, exact: Known<Ohms>, printed: Known<Ohms>): string | undefined {
  if (typeof value !== 'number' || typeof exact !== 'number' || typeof printed !== 'number') return undefined;
  const [low, high] = exact < printed ? [exact, printed] : [printed, exact];
  if (!(value > low && value <= high)) return undefined;
  return `Between exact and printed limit: ${value.toPrecision(4)} Ω lies between the computed ${exact.toPrecision(4)} Ω and the printed ${printed} Ω; the computed one decides.`;
}
