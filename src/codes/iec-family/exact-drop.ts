import { widened } from '../../calculation/index.js';
import { isMissing, type Known, type Name, whenKnown } from '../../core/index.js';
import { byCable, isSource, type Line, type Run, rangesIn } from '../../installation/index.js';
import type { FourWireSection, NodeLoad } from '../../physics/four-wire-network.js';
import { type FollowedLine, type LineCurrents, placeOf, powerFactorOf, type Tap, tapsOf } from './drop-loads.js';
import { lengthOf } from './loop-impedance.js';

type Loads = [NodeLoad | null, NodeLoad | null, NodeLoad | null];

/** A network under construction, parents first. */
class Network {
  readonly sections: (Omit<FourWireSection, 'loads'> & { readonly loads: Loads })[] = [];

  add(parent: number, impedance: readonly [number, number]): number {
    this.sections.push({ parent, line: impedance, neutral: impedance, loads: [null, null, null] });
    return this.sections.length - 1;
  }

  /** Hangs a load on a node; several on one line share it through sections without impedance. */
  load(node: number, line: 0 | 1 | 2, load: NodeLoad): void {
    const place = this.sections[node]?.loads[line] ? this.add(node, [0, 0]) : node;
    const section = this.sections[place];
    if (section) section.loads[line] = load;
  }
}

/** How an outlet draws: charge points hold their current; loads their current or their power, as stated. */
function drawing({ outlet, current }: Tap, nominal: number): NodeLoad {
  const cos = outlet.kind === 'load' ? (outlet.powerFactor ?? 1) : 1;
  const sin = Math.sqrt(Math.max(0, 1 - cos ** 2));
  if (outlet.kind === 'load' && outlet.holds === 'power' && !isSource(outlet))
    return { kind: 'power', active: nominal * current * cos, reactive: nominal * current * sin };
  return { kind: 'current', current, angle: isSource(outlet) ? Math.PI : Math.atan2(sin, cos) };
}

const lines: readonly Line[] = ['L1', 'L2', 'L3'];

/** What a run of the way draws at its end, or at its taps. */
export interface RunDraw {
  readonly currents: LineCurrents;
  /** Cosine and sine of the phase angle of all that it feeds, where it is known. */
  readonly angle: number;
  readonly ring: boolean;
  /** The outlets of a final circuit that draw along it or along the length of its cable, in their places from where it begins. */
  readonly taps: readonly Tap[] | undefined;
}
/** Resistance and reactance of a conductor of a run, Ω, and its length, m. */
export interface RunImpedance {
  readonly r: number;
  readonly x: number;
  readonly length: number;
}

/** Outlets of a final circuit that draw: sources that feed into others are left out. */
const drawnTaps = (run: Run): Known<readonly Tap[]> =>
  whenKnown([tapsOf(run)], (taps) => {
    const alone = taps.every((t) => isSource(t.outlet));
    return taps.filter((t) => alone || !isSource(t.outlet));
  });

/**
 * What the runs of the way draw when a line is followed, the circuit last.
 * @param of the line that is followed
 * @param circuit the circuit
 */
export function drawsOf(of: FollowedLine, circuit: Run): Known<readonly RunDraw[]> {
  const final = !circuit.feeds.some((o) => o.kind === 'board');
  const all = of.loads.flatMap(({ run, currents }) => {
    const factor = powerFactorOf(run);
    const taps: Known<readonly Tap[] | undefined> = run === circuit && final ? drawnTaps(run) : undefined;
    const parts = byCable(run);
    return parts.map((_, i) => {
      const last = i === parts.length - 1;
      const lengths = last && i === 0 ? [] : parts.slice(0, i + 1).map(lengthOf);
      return whenKnown([currents, taps, factor, ...lengths], (c, t, f, ...before) => {
        const to = before.reduce<number>((a, b) => a + b, 0);
        const from = to - (before[i] ?? 0);
        return {
          currents: c,
          angle: f ? Math.atan2(f.sin, f.cos) : 0,
          ring: run.ring === true,
          taps: t
            ?.filter(({ at }) => (at > from || i === 0) && (at <= to || last))
            .map((tap) => ({ ...tap, at: tap.at - from })),
        };
      });
    });
  });
  const draws = whenKnown(all, (...known) => known as unknown as readonly RunDraw[]);
  const narrower = isMissing(draws) && of.loads.some(({ run }) => rangesIn(run).length > 0);
  return narrower ? widened(draws) : draws;
}

/**
 * The runs of the way in series as a network: further load of a distribution circuit hangs at its end, outlets of the circuit at
 * their taps.
 * @param draws what each run draws
 * @param impedances what a conductor of each run amounts to
 * @param nominal nominal voltage, V
 */
export function networkOf(draws: readonly RunDraw[], impedances: readonly RunImpedance[], nominal: number) {
  const network = new Network();
  let node = -1;
  draws.forEach(({ currents, angle, ring, taps }, i) => {
    const { r, x, length } = impedances[i] as RunImpedance;
    if (taps) {
      const ends = ring ? [length] : [...new Set([...taps.map((t) => t.at), length])].sort((a, b) => a - b);
      let from = 0;
      for (const end of ends) {
        const share = length > 0 ? (end - from) / length : 1;
        node = network.add(node, [r * share, x * share]);
        for (const tap of taps.filter((t) => t.at === end || ring))
          for (const line of tap.outlet.lines) network.load(node, placeOf(line), drawing(tap, nominal));
        from = end;
      }
      return;
    }
    node = network.add(node, [r, x]);
    const behind = draws[i + 1]?.currents ?? [0, 0, 0];
    for (const line of lines) {
      const current = currents[placeOf(line)] - behind[placeOf(line)];
      if (current > 0) network.load(node, placeOf(line), { kind: 'current', current, angle });
    }
  });
  return { sections: network.sections as readonly FourWireSection[], section: node };
}

/** The network with the loads of two lines changed over: what it is in the other phase sequence. */
export const reversed = (sections: readonly FourWireSection[], line: 0 | 1 | 2): readonly FourWireSection[] =>
  sections.map((s) => {
    const [a, b, c] = s.loads;
    return { ...s, loads: line === 0 ? [a, c, b] : line === 1 ? [c, b, a] : [b, a, c] };
  });

/**
 * What a network is built of, by role, so that every number of it stands on the sheet.
 * @param sections its sections
 */
export const sectionFigures = (
  sections: readonly FourWireSection[],
): readonly (readonly [role: Name, value: number, by: string])[] =>
  sections.flatMap(({ line, loads }) => [
    ['resistance', line[0], 'conductor above, its share up to the next tap'] as const,
    ['reactance', line[1], 'conductor above, its share up to the next tap'] as const,
    ...loads.flatMap((load, i): readonly (readonly [Name, number, string])[] => {
      if (!load || load.kind === 'impedance') return [];
      const by = `load on L${i + 1} at the end of the section`;
      return load.kind === 'current'
        ? [
            ['designCurrent', load.current, by],
            ['loadAngle', load.angle, 'from its power factor'],
          ]
        : [
            ['activePower', load.active, by],
            ['reactivePower', load.reactive, by],
          ];
    }),
  ]);
