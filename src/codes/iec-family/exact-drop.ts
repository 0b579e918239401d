import { factValue, isMissing, type Known, missing, type Sheet, whenKnown } from '../../core/index.js';
import { isSource, type Line, type Run } from '../../installation/index.js';
import { type FourWireSection, type NodeLoad, runReactance, voltageInNetwork } from '../../physics/index.js';
import { amperes, ohms, ohmsPerMetre, ratio, type Volts, vars, watts } from '../../units/index.js';
import type { CircuitCase, Findings } from '../wiring-code.js';
import { type LineCurrents, placeOf, powerFactorOf, type RunLoad, type Tap, tapsOf } from './drop-loads.js';
import { coreReactance, lengthOf, operatingTemperatureOf, writeConductor } from './loop-impedance.js';

/** Impedance of one conductor of a run at the temperature of its load. */
function conductor(sheet: Sheet, circuit: CircuitCase, run: Run, findings: Findings) {
  const area = factValue(`area of ${run.id}`, run.cable.area);
  const own = run === circuit.run ? findings.hottestConductor : undefined;
  const temperature = own === undefined || isMissing(own) ? operatingTemperatureOf(run.cable.insulation) : own;
  const title = `Conductor of ${run.id} at the temperature of its load`;
  const part = writeConductor(sheet, title, run, run.cable.material, area, temperature);
  const resistance = part.latest('resistance') ?? missing();
  const reactance = part.step(runReactance, {
    reactancePerMetre: part.given('reactancePerMetre', ohmsPerMetre(0.08e-3), coreReactance),
    length: part.latest('length') ?? missing(),
    parallelConductors: part.latest('parallelConductors') ?? missing(),
  });
  return whenKnown([resistance, reactance, lengthOf(run)], (r, x, length) => ({ r, x, length }));
}

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

interface Piece {
  readonly load: RunLoad;
  readonly impedance: { readonly r: number; readonly x: number; readonly length: number };
  readonly currents: LineCurrents;
  readonly taps: readonly Tap[] | undefined;
}

/** The runs of the path in series: further load of a feeder hangs at its end, outlets of the circuit at their taps. */
function networkOf(pieces: readonly Piece[], nominal: number): { readonly network: Network; readonly end: number } {
  const network = new Network();
  let node = -1;
  pieces.forEach(({ load, impedance, currents, taps }, i) => {
    const { r, x, length } = impedance;
    if (taps) {
      const alone = taps.every((t) => isSource(t.outlet));
      const drawn = taps.filter((t) => alone || !isSource(t.outlet));
      const ends = load.run.ring ? [length] : [...new Set([...drawn.map((t) => t.at), length])].sort((a, b) => a - b);
      let from = 0;
      for (const end of ends) {
        const share = length > 0 ? (end - from) / length : 1;
        node = network.add(node, [r * share, x * share]);
        for (const tap of drawn.filter((t) => t.at === end || load.run.ring))
          for (const line of tap.outlet.lines) network.load(node, placeOf(line), drawing(tap, nominal));
        from = end;
      }
      return;
    }
    node = network.add(node, [r, x]);
    const behind = pieces[i + 1]?.currents ?? [0, 0, 0];
    const factor = powerFactorOf(load.run);
    const angle = factor ? Math.atan2(factor.sin, factor.cos) : 0;
    for (const line of lines) {
      const current = currents[placeOf(line)] - behind[placeOf(line)];
      if (current > 0) network.load(node, placeOf(line), { kind: 'current', current, angle });
    }
  });
  return { network, end: node };
}

/** The exact voltage at the end of a circuit at any supply voltage. */
export type ExactVoltage = (sheet: Sheet, supply: Volts, by: string) => Known<Volts>;

/**
 * Prepares the exact voltage at the end of a circuit: the runs of its path as a four-wire network with the impedance of
 * the neutral, every line with its own load, taps in their places.
 * @param sheet where the impedances are written
 * @param circuit the circuit
 * @param findings the temperature of the conductor
 * @param loads what each run of the path carries, the circuit last
 * @param followed the line conductor whose voltage is wanted
 */
export function exactVoltage(
  sheet: Sheet,
  circuit: CircuitCase,
  findings: Findings,
  loads: readonly RunLoad[],
  followed: Line,
): ExactVoltage {
  const part = sheet.part('Exact voltage at the point');
  part.note(
    'Charge points hold the current that they are set to, whatever the voltage; loads hold their current unless it is stated that they hold their power.',
  );
  const pieces = loads.map((load) => {
    const impedance = conductor(part, circuit, load.run, findings);
    const final = load.run === circuit.run && !load.run.feeds.some((o) => o.kind === 'board');
    const taps: Known<readonly Tap[] | undefined> = final ? tapsOf(load.run) : undefined;
    return whenKnown(
      [impedance, load.currents, taps],
      (z, currents, t): Piece => ({ load, impedance: z, currents, taps: t }),
    );
  });
  const prepared = whenKnown(pieces, (...all) => {
    const { network, end } = networkOf(all as unknown as readonly Piece[], circuit.nominalVoltage);
    return { sections: network.sections, end };
  });
  return (at, supply, by) => {
    if (!isMissing(prepared)) {
      at.given('supplyVoltage', supply, by);
      for (const [i, section] of prepared.sections.entries()) writeSection(at.part(`Section ${i + 1}`), section);
    }
    return at.run(
      voltageInNetwork,
      whenKnown([prepared], ({ sections, end }) => ({
        network: { sourceVoltage: supply, sections },
        section: end,
        line: placeOf(followed),
      })),
    );
  };
}

/** Takes down what the network is built of, so that every number of it stands on the sheet. */
function writeSection(sheet: Sheet, { line, loads }: FourWireSection): void {
  sheet.given('resistance', ohms(line[0]), 'conductor above, its share up to the next tap');
  sheet.given('reactance', ohms(line[1]), 'conductor above, its share up to the next tap');
  loads.forEach((load, i) => {
    if (!load) return;
    const at = sheet.part(`Load on L${i + 1}`);
    if (load.kind === 'current') {
      at.given('designCurrent', amperes(load.current), 'load at the end of the section');
      at.given('loadAngle', ratio(load.angle), 'from its power factor');
    } else if (load.kind === 'power') {
      at.given('activePower', watts(load.active), 'load at the end of the section');
      at.given('reactivePower', vars(load.reactive), 'load at the end of the section');
    }
  });
}
