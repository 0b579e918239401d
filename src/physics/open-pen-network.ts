import { procedure } from '../core/index.js';
import { CalculationError, invalidInput, type Problem } from '../units/index.js';

/** A load behind an open PEN conductor, unity power factor. @inline */
export interface OpenPenLoad {
  /** Line conductor that it is on; 1 on a single phase. */
  readonly line: 1 | 2 | 3;
  /** Current at nominal voltage, A. */
  readonly current: number;
  /** What it holds when its voltage changes; a resistance when absent. */
  readonly holds?: 'resistance' | 'current' | 'power';
}

/** An installation, or a street, behind an open PEN conductor. */
export interface OpenPenCase {
  /** Nominal voltage line to earth U_0, V. */
  readonly nominalVoltage: number;
  /** Source voltage over nominal voltage c, stated with every figure. */
  readonly sourceFactor: number;
  /** All loads behind the break. */
  readonly loads: readonly OpenPenLoad[];
  /** Electrodes on the floating side, in parallel, Ω; none when empty. */
  readonly electrodes: readonly number[];
  /** Electrodes on the healthy side, together, Ω; 0 when absent. */
  readonly sourceElectrode?: number;
}

/** What stands after the break. @inline */
export interface OpenPenState {
  /** Voltage of exposed metal to remote earth, V. */
  readonly touchVoltage: number;
  /** Current to earth through the electrodes of the floating side, A. */
  readonly earthCurrent: number;
  /** Voltage of the source neutral to remote earth, V. */
  readonly sourceNeutral: number;
  /** Voltage between line and floating neutral for L1, L2, L3, V. */
  readonly lineNeutral: readonly [number, number, number];
}

// cos and sin of 0, -120 and 120 degrees; an expression here would stay in every bundle
const UNIT = [
  [1, 0],
  [-0.5, -0.8660254037844386],
  [-0.5, 0.8660254037844386],
] as const;

function problemsOf(c: OpenPenCase): Problem[] {
  const lists = ['loads', 'electrodes'] as const;
  const absent = lists.filter((key) => !Array.isArray(c?.[key]));
  if (absent.length > 0) return absent.map((key) => ({ path: [key], message: 'must be a list' }));
  const problems: Problem[] = [];
  const wrong = (path: (string | number)[], message: string) => problems.push({ path, message });
  if (!(c.nominalVoltage > 0 && Number.isFinite(c.nominalVoltage))) wrong(['nominalVoltage'], 'must be above 0 V');
  if (!(c.sourceFactor > 0 && c.sourceFactor <= 1.2)) wrong(['sourceFactor'], 'must be above 0 and at most 1.2');
  const rb = c.sourceElectrode ?? 0;
  if (!(rb >= 0 && Number.isFinite(rb))) wrong(['sourceElectrode'], 'must be a resistance from 0 Ω');
  c.electrodes.forEach((r, i) => {
    if (!(r > 0 && Number.isFinite(r))) wrong(['electrodes', i], 'must be a resistance above 0 Ω');
  });
  if (!c.loads.some((l) => l.current > 0))
    wrong(['loads'], 'needs a load: without one the metal has no defined voltage');
  c.loads.forEach((l, i) => {
    if (!(l.current >= 0 && Number.isFinite(l.current))) wrong(['loads', i, 'current'], 'must be from 0 A');
    if (![1, 2, 3].includes(l.line)) wrong(['loads', i, 'line'], 'must be 1, 2 or 3');
    if (!['resistance', 'current', 'power'].includes(l.holds ?? 'resistance'))
      wrong(['loads', i, 'holds'], 'must be resistance, current or power');
  });
  return problems;
}

interface Node {
  /** Current into the node, A, and what is left of it. */
  readonly re: number;
  readonly im: number;
  /** Derivative of the current by the voltage across the loads. */
  readonly a: number;
  readonly b: number;
  readonly d: number;
}

/** Current of all loads and its derivative at a shift w of the floating neutral, `held` of the way from resistance. */
function currents(c: OpenPenCase, w: readonly [number, number], held: number): Node {
  let [re, im, a, b, d] = [0, 0, 0, 0, 0];
  const e = c.sourceFactor * c.nominalVoltage;
  for (const { line, current, holds = 'resistance' } of c.loads) {
    const unit = UNIT[line - 1] as readonly [number, number];
    const [x, y] = [e * unit[0] - w[0], e * unit[1] - w[1]];
    const share = holds === 'resistance' ? 0 : held;
    const conductance = ((1 - share) * current) / c.nominalVoltage;
    re += conductance * x;
    im += conductance * y;
    a += conductance;
    d += conductance;
    if (share === 0) continue;
    const square = x * x + y * y;
    // a held current falls by the first power of the voltage, a held power by the second
    const fall = holds === 'current' ? 1 : 2;
    const k = share * (holds === 'current' ? current / Math.sqrt(square) : (current * c.nominalVoltage) / square);
    re += k * x;
    im += k * y;
    a += k * (1 - (fall * x * x) / square);
    b -= (k * fall * x * y) / square;
    d += k * (1 - (fall * y * y) / square);
  }
  return { re, im, a, b, d };
}

function settle(
  c: OpenPenCase,
  start: readonly [number, number],
  g: number,
  held: number,
): [number, number] | undefined {
  let [x, y] = start;
  for (let i = 0; i < 50; i++) {
    const n = currents(c, [x, y], held);
    const [fx, fy] = [g * x - n.re, g * y - n.im];
    const [a, d] = [g + n.a, g + n.d];
    const det = a * d - n.b * n.b;
    // beyond the fold there is no stable operating point
    if (!(det > 0) || !(a + d > 0)) return undefined;
    const [dx, dy] = [(d * fx - n.b * fy) / det, (a * fy - n.b * fx) / det];
    x -= dx;
    y -= dy;
    if (Math.hypot(dx, dy) <= 1e-13 * c.nominalVoltage * Math.max(1, Math.hypot(x, y) / c.nominalVoltage))
      return [x, y];
  }
  return undefined;
}

/**
 * State of an installation, or of a street, behind an open PEN conductor: exact for loads of unity power factor that
 * hold their resistance, their current or their power.
 * @param c nominal voltage, source factor, loads by line, electrodes of both sides
 * @returns touch voltage, earth current, voltage of the source neutral, line-neutral voltages
 * @throws CalculationError `invalid-input` with every problem; `no-solution` when held loads have no operating point
 *   (exposed metal then comes near the full voltage of the supply)
 * @example
 * ```ts
 * import { openPen } from 'ohmwright/physics';
 *
 * const rod = { nominalVoltage: 230, sourceFactor: 1, loads: [{ line: 1, current: 32 }], electrodes: [20] } as const;
 * openPen(rod).touchVoltage; // => 169.19540229885058
 * ```
 */
export function openPen(c: OpenPenCase): OpenPenState {
  const problems = problemsOf(c);
  if (problems.length > 0) throw invalidInput('A case of an open PEN conductor', problems);
  const rb = c.sourceElectrode ?? 0;
  const conductance = c.electrodes.reduce((sum, r) => sum + 1 / r, 0);
  const ra = 1 / conductance;
  const g = conductance === 0 ? 0 : 1 / (ra + rb);
  const first = currents(c, [0, 0], 0);
  // with loads of constant resistance the circuit is linear; held loads are then brought in by steps
  let w: [number, number] = [first.re / (g + first.a), first.im / (g + first.a)];
  if (c.loads.some((l) => l.current > 0 && l.holds !== undefined && l.holds !== 'resistance')) {
    const steps = 64;
    for (let i = 1; i <= steps; i++) {
      const next = settle(c, w, g, i / steps);
      if (next === undefined)
        throw new CalculationError(
          'no-solution',
          'The loads have no operating point behind the open PEN conductor: their voltage collapses and exposed metal comes near the full voltage of the supply',
          { method: 'open-pen', values: { electrodeResistance: ra, held: i / steps } },
        );
      w = next;
    }
  }
  const e = c.sourceFactor * c.nominalVoltage;
  const shift = Math.hypot(w[0], w[1]);
  const to = (i: 0 | 1 | 2) => Math.hypot(e * UNIT[i][0] - w[0], e * UNIT[i][1] - w[1]);
  return {
    touchVoltage: conductance === 0 ? shift : shift * ra * g,
    earthCurrent: shift * g,
    sourceNeutral: conductance === 0 ? 0 : shift * rb * g,
    lineNeutral: [to(0), to(1), to(2)],
  };
}

/** Touch voltage of an installation, or of a street, behind an open PEN conductor, by the network. */
export const openPenSolved = /* @__PURE__ */ procedure({
  id: 'open-pen-network',
  title: 'Touch voltage with the PEN conductor open, by the network',
  output: 'touchVoltage',
  method:
    'One node: the currents of all loads meet in the floating neutral and leave through the electrodes. Resistive loads directly; loads that hold their current or power by Newton steps from the resistive case, on the branch of the higher load voltage.',
  source: { document: 'physics', clause: 'node equation', provenance: 'definition' },
  run: (c: OpenPenCase) => openPen(c).touchVoltage,
});

/** What a monitor between one line and neutral makes of an open PEN conductor. @inline */
export interface WindowSight {
  /** Voltage of exposed metal, V. */
  readonly touchVoltage: number;
  /** Voltage that the monitor reads, V. */
  readonly reading: number;
  /** Whether exposed metal is above the limit while the reading stays inside the window. */
  readonly blind: boolean;
}

/**
 * Whether a monitor between one line and neutral is blind to an open PEN conductor: it reads inside its window while
 * exposed metal is above the limit.
 * @param c the case
 * @param line the line that is monitored
 * @param window lower and upper limit of the window, V
 * @param limit limit of the touch voltage, V, above 0
 * @returns what exposed metal is at, what the monitor reads, V, and whether it is blind
 * @throws CalculationError `invalid-input` with every problem; `no-solution` when the loads cannot be served, as `openPen` does
 * @example
 * ```ts
 * import { windowSight } from 'ohmwright/physics';
 *
 * const loads = [{ line: 1, current: 60 }, { line: 2, current: 100 }, { line: 3, current: 20 }] as const;
 * windowSight({ nominalVoltage: 230, sourceFactor: 1, loads, electrodes: [] }, 1, [207, 253], 70).blind; // => true
 * ```
 */
export function windowSight(
  c: OpenPenCase,
  line: 1 | 2 | 3,
  window: readonly [number, number],
  limit: number,
): WindowSight {
  const problems: Problem[] = [];
  if (![1, 2, 3].includes(line)) problems.push({ path: ['line'], message: 'must be 1, 2 or 3' });
  if (!(window?.[0] <= window?.[1]))
    problems.push({ path: ['window'], message: 'must be two limits, the lower one first' });
  if (!(limit > 0)) problems.push({ path: ['limit'], message: 'must be above 0 V' });
  if (problems.length > 0) throw invalidInput('what the monitor sees', problems);
  const { touchVoltage, lineNeutral } = openPen(c);
  const reading = lineNeutral[line - 1] as number;
  return { touchVoltage, reading, blind: touchVoltage > limit && reading >= window[0] && reading <= window[1] };
}
