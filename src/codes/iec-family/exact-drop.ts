import { factValue, isMissing, type Known, missing, type Sheet, whenKnown } from '../../core/index.js';
import { isSource, type Line, type Run } from '../../installation/index.js';
import type { NodeLoad } from '../../physics/four-wire-network.js';
import { type FourWireSection, runReactance, voltageInNetwork } from '../../physics/index.js';
import { amperes, ohms, ohmsPerMetre, ratio, type Volts, vars, watts } from '../../units/index.js';
import type { CircuitCase, Findings } from '../wiring-code.js';
import {
  type FollowedLine,
  type LineCurrents,
  placeOf,
  powerFactorOf,
  type RunLoad,
  type Tap,
  tapsOf,
} from './drop-loads.js';
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

/** A voltage at the end of a circuit, and the line that has it where several are followed. */
export interface EndVoltage {
  /** The voltage line to neutral. */
  readonly voltage: Known<Volts>;
  /** Name of the line. */
  readonly name?: string;
}

/** The exact voltage at the end of a circuit at any supply voltage: of all its lines the smallest, or the largest. */
export type ExactVoltage = (sheet: Sheet, supply: Volts, by: string, how: 'smallest' | 'largest') => EndVoltage;

/** The network with the loads of two lines changed over: what it is in the other phase sequence. */
const reversed = (sections: readonly FourWireSection[], line: 0 | 1 | 2): readonly FourWireSection[] =>
  sections.map((s) => {
    const [a, b, c] = s.loads;
    return { ...s, loads: line === 0 ? [a, c, b] : line === 1 ? [c, b, a] : [b, a, c] };
  });

/**
 * Prepares the exact voltage at the end of a circuit: the runs of its path as a four-wire network with the impedance of
 * the neutral, every line with its own load, taps in their places. Which line follows which is seldom known: where it
 * matters, both phase sequences count.
 * @param sheet where the impedances are written
 * @param findings the temperature of the conductor
 * @param followed the line conductors whose voltage is wanted
 */
export function exactVoltage(
  sheet: Sheet,
  circuit: CircuitCase,
  findings: Findings,
  followed: readonly FollowedLine[],
): ExactVoltage {
  const part = sheet.part('Exact voltage at the point');
  part.note(
    'Charge points hold the current that they are set to, whatever the voltage; loads hold their current unless it is stated that they hold their power.',
  );
  const runs = [...circuit.path.feeders, circuit.run];
  const impedances = runs.map((run) => conductor(part, circuit, run, findings));
  const final = !circuit.run.feeds.some((o) => o.kind === 'board');
  const taps: Known<readonly Tap[] | undefined> = final ? tapsOf(circuit.run) : undefined;
  const prepared = followed.map((of) => {
    const pieces = of.loads.map((load, i) =>
      whenKnown(
        [impedances[i] ?? missing(), load.currents, load.run === circuit.run ? taps : undefined],
        (impedance, currents, t): Piece => ({ load, impedance, currents, taps: t }),
      ),
    );
    const network = whenKnown(pieces, (...all) =>
      networkOf(all as unknown as readonly Piece[], circuit.nominalVoltage),
    );
    return { of, network };
  });
  const alone = followed.length === 1 && followed.every((of) => of.othersAlike);
  return (at, supply, by, how) => {
    if (prepared.some((p) => !isMissing(p.network))) at.given('supplyVoltage', supply, by);
    const found: { readonly name: string; readonly part: Sheet; readonly voltage: Known<Volts> }[] = [];
    for (const { of, network } of prepared) {
      const line = placeOf(of.line);
      const run = (on: Sheet, order: (sections: readonly FourWireSection[]) => readonly FourWireSection[]) => {
        const place = whenKnown([network], ({ network: { sections }, end }) => ({
          network: { sourceVoltage: supply, sections: order(sections) },
          section: end,
          line,
        }));
        found.push({ name: of.name, part: on, voltage: on.run(voltageInNetwork, place) });
      };
      const own = alone ? at : at.part(of.name);
      if (!isMissing(network))
        for (const [i, section] of network.network.sections.entries())
          writeSection(own.part(`Section ${i + 1}`), section);
      run(own, (sections) => sections);
      if (!of.othersAlike)
        run(own.part(`${of.name}, the other phase sequence`), (sections) => reversed(sections, line));
    }
    const voltage = alone
      ? (found[0]?.voltage ?? missing())
      : at.gather(
          how,
          'pointVoltage',
          'pointVoltage',
          found.map((f) => f.part),
        );
    const worst = prepared.length > 1 ? found.find((f) => f.voltage === voltage) : undefined;
    return { voltage, ...(worst ? { name: worst.name } : {}) };
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
