import { type CheckResult, isMissing, type Known, missing, type Sheet, whenKnown } from '../../core/index.js';
import type { Cable, Line, Run, Stretch } from '../../installation/index.js';
import { dropOnRing } from '../../physics/index.js';
import {
  type Amperes,
  amperes,
  metres,
  millivoltsPerAmpereMetre,
  type Ratio,
  ratio,
  type Volts,
  type VoltsPerAmpereMetre,
} from '../../units/index.js';
import type { CircuitCase, Findings, Rule } from '../wiring-code.js';
import { dropCorrectionAtTemperature, dropCorrectionGroupFull } from './conductor-temperature.js';
import {
  type DropSection,
  type FollowedLine,
  linesFollowed,
  placeOf,
  powerFactorOf,
  type RunLoad,
} from './drop-loads.js';
import { exactVoltage } from './exact-drop.js';
import { operatingTemperatureOf } from './loop-impedance.js';
import {
  balancedEquivalent,
  dropRateAtPowerFactor,
  dropRateAtWorstAngle,
  dropRateInParallel,
  dropRatioOf,
  dropToNeutral,
  dropWithinLimit,
  insideWindow,
  voltageDropTabulated,
} from './voltage-drop.js';

/** What a wiring code says of voltage drop. */
export interface DropFigures {
  /** Reads the tabulated drop. */
  rate(
    sheet: Sheet,
    cable: Cable,
    stretch: Stretch | undefined,
    system: 'single-phase' | 'three-phase',
    component: 'r' | 'x' | 'z',
  ): Known<VoltsPerAmpereMetre>;
  /** Limit as a ratio for lighting and for other uses, and where it stands. */
  readonly limit: { readonly lighting: number; readonly other: number; readonly by: string };
  /** Smallest and largest supply voltage, and where they stand. */
  readonly supply: { readonly least: Volts; readonly most: Volts; readonly by: string };
  /** Largest area, mm², for which there is one drop without its parts; reactance is neglected up to it. */
  readonly wholeRateUpTo: number;
  /** Window of a voltage-operated protective device of a charge point, where the code has one. */
  readonly window?: { readonly low: Volts; readonly high: Volts; readonly by: string };
}

/** Correction of the drop for the real temperature, where the user asks for it. */
function correction(sheet: Sheet, circuit: CircuitCase, run: Run, findings: Findings): Known<Ratio> | undefined {
  const choice = circuit.options.dropTemperature;
  const figures = findings.governingFigures;
  if (!choice || run !== circuit.run || !figures) return undefined;
  const operatingTemperature = sheet.given('operatingTemperature', operatingTemperatureOf(run.cable.insulation));
  const by = `governing stretch, ${findings.governingStretch}`;
  if (choice === 'group-at-same-load') {
    const conductorTemperature = sheet.given('conductorTemperature', figures.conductorTemperature, by);
    return sheet.step(dropCorrectionAtTemperature, { conductorTemperature, operatingTemperature });
  }
  const tabulatedCapacity = sheet.given('tabulatedCapacity', figures.tabulatedCapacity, by);
  const groupFactor = sheet.given('groupFactor', figures.groupFactor, by);
  const ambientFactor = sheet.given('ambientFactor', figures.ambientFactor, by);
  const designCurrent = sheet.given('designCurrent', circuit.designCurrent, 'load of the circuit');
  return sheet.step(dropCorrectionGroupFull, {
    ambientFactor,
    groupFactor,
    designCurrent,
    tabulatedCapacity,
    operatingTemperature,
  });
}

/** Drop per ampere and metre of a run in one of its stretches: at its power factor and temperature where they count. */
function writeRate(
  part: Sheet,
  circuit: CircuitCase,
  figures: DropFigures,
  findings: Findings,
  run: Run,
  stretch: Stretch | undefined,
): Known<VoltsPerAmpereMetre> {
  const system = run.lines.length === 3 ? 'three-phase' : 'single-phase';
  const read = (at: Sheet, component: 'r' | 'x' | 'z') => figures.rate(at, run.cable, stretch, system, component);
  /** A part of the rate under its own role: read in a part of its own, so that no rate stands unused. */
  const readAs = (to: 'resistiveRate' | 'reactiveRate', title: string, component: 'r' | 'x' | 'z') => {
    const own = part.part(title);
    read(own, component);
    return part.gather('sum', 'dropRate', to, [own]);
  };
  const factor = powerFactorOf(run);
  const split = run.cable.area.state === 'known' && run.cable.area.value > figures.wholeRateUpTo;
  const wanted = factor !== undefined || (circuit.options.dropTemperature !== undefined && run === circuit.run);
  if (!wanted) return read(part, 'z');
  const resistiveRate = split
    ? readAs('resistiveRate', 'Resistive part as tabulated', 'r')
    : readAs('resistiveRate', 'Tabulated, reactance neglected', 'z');
  const reactiveRate = split
    ? readAs('reactiveRate', 'Reactive part as tabulated', 'x')
    : part.given('reactiveRate', millivoltsPerAmpereMetre(0), `neglected up to ${figures.wholeRateUpTo} mm²`);
  const temperatureCorrection =
    correction(part, circuit, run, findings) ??
    part.given('temperatureCorrection', ratio(1), 'conductor at its largest operating temperature');
  if (!factor) return part.step(dropRateAtWorstAngle, { resistiveRate, reactiveRate, temperatureCorrection });
  return part.step(dropRateAtPowerFactor, {
    resistiveRate,
    reactiveRate,
    temperatureCorrection,
    powerFactor: part.given('powerFactor', ratio(factor.cos), 'of all that the run feeds'),
    reactiveFactor: part.given('reactiveFactor', ratio(factor.sin), 'of all that the run feeds'),
  });
}

/** The stretches whose drop differs: only single-core cables drop more or less by how they lie. */
const differing = (run: Run): readonly (Stretch | undefined)[] =>
  run.cable.construction === 'single-core' && run.stretches.length > 1 ? run.stretches : [run.stretches[0]];

/** Current that counts in a section: of a three-phase run with unequal lines, the balanced one with the same drop. */
function writeCurrent(sheet: Sheet, run: Run, section: DropSection, followed: Line, by: string): Known<Amperes> {
  const own = section.currents[placeOf(followed)];
  const others = section.currents[0] + section.currents[1] + section.currents[2] - own;
  if (run.lines.length !== 3 || others === 2 * own) return sheet.given('designCurrent', amperes(own), by);
  const ownLineCurrent = sheet.given('ownLineCurrent', amperes(own), `${by}, ${followed}`);
  const otherLineCurrents = sheet.given('otherLineCurrents', amperes(others), `${by}, the other lines`);
  return sheet.step(balancedEquivalent, { ownLineCurrent, otherLineCurrents });
}

function runDrop(
  circuit: CircuitCase,
  figures: DropFigures,
  findings: Findings,
  sheet: Sheet,
  load: RunLoad,
  followed: Line,
): { readonly run: Run; readonly part: Sheet; readonly drop: Known<Volts> } {
  const { run, sections, by } = load;
  const part = sheet.part(`Drop along ${run.id}`);
  const rates = differing(run).map((stretch) => {
    const own = part.part(`Rate, ${stretch?.name ?? run.id}`);
    writeRate(own, circuit, figures, findings, run, stretch);
    return own;
  });
  let dropRate = part.gather('largest', 'dropRate', 'dropRate', rates);
  const parallel = run.cable.parallel ?? 1;
  if (parallel > 1) {
    const parallelConductors = part.given('parallelConductors', ratio(parallel), 'they share the load equally');
    dropRate = part.step(dropRateInParallel, { dropRate, parallelConductors });
  }
  const pieces: readonly Known<DropSection>[] = isMissing(sections) ? [sections] : sections;
  const drops = pieces.map((piece, i) => {
    const own = part.part(pieces.length > 1 ? `Section ${i + 1} of ${pieces.length}` : 'Whole length');
    const length = own.given(
      'length',
      whenKnown([piece], (p) => metres(p.length)),
      'between taps, or the whole run',
    );
    const designCurrent = isMissing(piece)
      ? own.given('designCurrent', piece)
      : writeCurrent(own, run, piece, followed, by);
    if (run.ring) {
      const ringPosition = own.given('ringPosition', ratio(0.5), 'all of the load at the farthest point');
      own.step(dropOnRing, { dropRate, designCurrent, length, ringPosition });
    } else own.step(voltageDropTabulated, { dropRate, designCurrent, length });
    return own;
  });
  const voltageDrop = part.gather('sum', 'voltageDrop', 'voltageDrop', drops);
  const drop =
    run.lines.length === 3
      ? part.step(dropToNeutral, { voltageDrop })
      : part.gather('sum', 'voltageDrop', 'phaseDrop', [part]);
  return { run, part, drop };
}

/** The drop of one line from the origin to the end of the circuit. */
interface LineDrop {
  readonly name: string;
  readonly totalDrop: Known<Volts>;
  /** What each run adds. */
  readonly along: NonNullable<Findings['dropAlong']>;
}

/** The line with the largest drop; one whose drop cannot be had goes before all others. */
const worstOf = (drops: readonly LineDrop[]): LineDrop | undefined =>
  drops.find((d) => isMissing(d.totalDrop)) ??
  drops.reduce<LineDrop | undefined>(
    (worst, d) => (worst && (worst.totalDrop as number) >= (d.totalDrop as number) ? worst : d),
    undefined,
  );

/** Works out the drop of every line that is followed; the largest is the latest `totalDrop` of the sheet. */
function writeDrops(
  circuit: CircuitCase,
  figures: DropFigures,
  findings: Findings,
  sheet: Sheet,
  followed: readonly FollowedLine[],
): readonly LineDrop[] {
  const alone = followed.length === 1;
  const written = followed.map(({ line, name, loads }) => {
    const part = alone ? sheet : sheet.part(`Drop of ${name}`);
    const drops = loads.map((load) => runDrop(circuit, figures, findings, part, load, line));
    const totalDrop = part.gather(
      'sum',
      'phaseDrop',
      'totalDrop',
      drops.map((d) => d.part),
    );
    return { part, name, totalDrop, along: drops.map(({ run, drop }) => ({ run: run.id, drop })) };
  });
  if (!alone)
    sheet.gather(
      'largest',
      'totalDrop',
      'totalDrop',
      written.map((w) => w.part),
    );
  return written;
}

/**
 * The rule on voltage drop from the origin, existing feeders included, on every line: the tabulated drop of the worst is
 * judged, and the exact phasor solution gives the voltage at the point at both ends of the supply's tolerance.
 */
export function voltageDropRule(figures: DropFigures): Rule {
  return (circuit, findings, sheet) => {
    const followed = linesFollowed(circuit);
    const worst = worstOf(writeDrops(circuit, figures, findings, sheet, followed));
    const totalDrop = sheet.latest('totalDrop') ?? missing();
    findings.totalDrop = totalDrop;
    findings.dropAlong = worst?.along ?? [];
    findings.lowestSupply = figures.supply.least;
    const nominalVoltage = sheet.given('nominalVoltage', circuit.nominalVoltage);
    const dropRatio = sheet.step(dropRatioOf, { totalDrop, nominalVoltage });
    const lighting = circuit.run.feeds.some((o) => o.kind === 'load' && o.purpose === 'lighting');
    const own = circuit.options.dropLimit;
    const dropLimit = sheet.given(
      'dropLimit',
      ratio(own ?? (lighting ? figures.limit.lighting : figures.limit.other)),
      own === undefined ? figures.limit.by : 'set by the user',
    );
    findings.dropLimit = dropLimit;
    const results: CheckResult[] = [
      sheet.check(
        dropWithinLimit,
        { dropRatio, dropLimit },
        worst && followed.length > 1 && !isMissing(totalDrop) ? `${worst.name}, where the drop is largest` : undefined,
      ),
    ];

    const voltageAt = exactVoltage(sheet, circuit, findings, followed);
    for (const [where, supply, key, how] of [
      ['at the smallest supply voltage', figures.supply.least, 'voltageAtLowestSupply', 'smallest'],
      ['at the largest supply voltage', figures.supply.most, 'voltageAtHighestSupply', 'largest'],
    ] as const) {
      const part = sheet.part(`Exact voltage ${where}`);
      const { voltage, name } = voltageAt(part, supply, figures.supply.by, how);
      findings[key] = voltage;
      const windowed = circuit.run.feeds.some(
        (o) =>
          o.kind === 'charge-point' &&
          o.openPenDevice?.state === 'known' &&
          o.openPenDevice.value === 'line-neutral-window-device',
      );
      if (!windowed || !figures.window) continue;
      const windowLow = part.given('windowLow', figures.window.low, figures.window.by);
      const windowHigh = part.given('windowHigh', figures.window.high, figures.window.by);
      results.push(
        part.check(insideWindow, { pointVoltage: voltage, windowLow, windowHigh }, name ? `${where}, ${name}` : where),
      );
    }
    return results;
  };
}
