import {
  type CheckResult,
  factValue,
  isMissing,
  type Known,
  missing,
  type Sheet,
  whenKnown,
} from '../../core/index.js';
import { type Cable, connectedCurrentOf, type Run, type Stretch } from '../../installation/index.js';
import { voltageInNetwork } from '../../physics/index.js';
import { type Amperes, amperes, type Ratio, ratio, type Volts, type VoltsPerAmpereMetre } from '../../units/index.js';
import type { CircuitCase, Findings, Rule } from '../wiring-code.js';
import { dropCorrectionAtTemperature, dropCorrectionGroupFull } from './conductor-temperature.js';
import { lengthOf, operatingTemperatureOf, writeConductor } from './loop-impedance.js';
import {
  dropRateCorrected,
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
  /** Window of a voltage-operated protective device of a charge point. */
  readonly window: { readonly low: Volts; readonly high: Volts; readonly by: string };
}

/**
 * Current of a run, A per line: of the circuit itself its design current, of a feeder its declared demand, or the load
 * below it on the line most loaded, at most the rating of its device.
 * @param circuit the circuit
 * @param run the circuit's run or a feeder of its path
 */
export function currentOf(circuit: CircuitCase, run: Run): { readonly current: Known<Amperes>; readonly by: string } {
  if (run === circuit.run) return { current: circuit.designCurrent, by: 'load of the circuit' };
  const declared = circuit.options.feederDemand?.[run.id];
  if (declared !== undefined) return { current: declared, by: 'declared demand of the feeder' };
  const rating = factValue(`rating of the device of ${run.id}`, run.device.rating);
  const load = connectedCurrentOf(run);
  if (isMissing(load)) return { current: rating, by: 'rating of its device: a load below it is not known' };
  return {
    current: whenKnown([load, rating], (w, r) => amperes(Math.min(w, r))),
    by: 'load below it, at most the rating of its device',
  };
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
  const designCurrent = sheet.latest('designCurrent') ?? missing();
  return sheet.step(dropCorrectionGroupFull, {
    ambientFactor,
    groupFactor,
    designCurrent,
    tabulatedCapacity,
    operatingTemperature,
  });
}

interface RunDrop {
  readonly run: Run;
  readonly part: Sheet;
  readonly current: Known<Amperes>;
}

function runDrop(circuit: CircuitCase, figures: DropFigures, findings: Findings, sheet: Sheet, run: Run): RunDrop {
  const part = sheet.part(`Drop along ${run.id}`);
  const { current, by } = currentOf(circuit, run);
  const three = run.lines.length === 3;
  const designCurrent = part.given('designCurrent', current, by);
  const length = part.given('length', lengthOf(run), 'all stretches');
  let dropRate = figures.rate(part, run.cable, run.stretches[0], three ? 'three-phase' : 'single-phase', 'z');
  const temperatureCorrection = correction(part, circuit, run, findings);
  if (temperatureCorrection !== undefined) {
    const resistiveRate = part.given('resistiveRate', dropRate, 'tabulated, reactance neglected');
    dropRate = part.step(dropRateCorrected, { resistiveRate, temperatureCorrection });
  }
  const voltageDrop = part.step(voltageDropTabulated, { dropRate, designCurrent, length });
  if (three) part.step(dropToNeutral, { voltageDrop });
  else part.gather('sum', 'voltageDrop', 'phaseDrop', [part]);
  return { run, part, current };
}

/** Impedance of one conductor of a run at the temperature of its load: resistance by table, reactance where it counts. */
function exactImpedance(sheet: Sheet, circuit: CircuitCase, run: Run, findings: Findings) {
  const area = factValue(`area of ${run.id}`, run.cable.area);
  const own = run === circuit.run ? findings.governingFigures?.conductorTemperature : undefined;
  const temperature = own === undefined || isMissing(own) ? operatingTemperatureOf(run.cable.insulation) : own;
  const part = writeConductor(
    sheet,
    `Conductor of ${run.id} at the temperature of its load`,
    run,
    run.cable.material,
    area,
    temperature,
  );
  const resistance = part.latest('resistance') ?? missing();
  const reactance = whenKnown([area, lengthOf(run)], (s, l) => (s > 16 ? 0.08e-3 * l : 0));
  return { resistance, reactance };
}

/** Exact voltage at the point: the runs of the path as sections of a four-wire network in series. */
function exactVoltage(
  sheet: Sheet,
  circuit: CircuitCase,
  findings: Findings,
  drops: readonly RunDrop[],
  supply: Volts,
): Known<Volts> {
  const rows = drops.map(({ run, current }) => {
    const { resistance, reactance } = exactImpedance(sheet, circuit, run, findings);
    return whenKnown([resistance, reactance, current], (r, x, amps) => ({
      three: run.lines.length === 3,
      impedance: [r, x] as const,
      amps,
    }));
  });
  return sheet.run(
    voltageInNetwork,
    whenKnown(rows, (...all) => {
      const runs = all as unknown as readonly SeriesRun[];
      // each section carries what the ones behind it draw; its own further load is tapped at its end
      const sections = runs.map((r, i) => {
        const behind = runs[i + 1];
        const tapped = { kind: 'current' as const, current: Math.max(0, r.amps - (behind?.amps ?? 0)), angle: 0 };
        const others = r.three && !(behind && !behind.three && tapped.current === 0) ? balanced(r, behind) : null;
        return { parent: i - 1, line: r.impedance, neutral: r.impedance, loads: [tapped, others, others] as const };
      });
      return { network: { sourceVoltage: supply, sections }, section: sections.length - 1, line: 0 as const };
    }),
  );
}

interface SeriesRun {
  readonly three: boolean;
  readonly impedance: readonly [number, number];
  readonly amps: number;
}

/** What the other two line conductors of a three-phase section carry: the same as the most loaded one, as designed. */
const balanced = (
  r: { readonly amps: number },
  behind: { readonly three: boolean; readonly amps: number } | undefined,
) => ({
  kind: 'current' as const,
  current: behind?.three ? Math.max(0, r.amps - behind.amps) : r.amps,
  angle: 0,
});

/**
 * The rule on voltage drop from the origin, existing feeders included: the tabulated drop is judged, and the exact
 * phasor solution gives the voltage at the point at both ends of the supply's tolerance.
 * @param figures the code's tables and limits
 */
export function voltageDropRule(figures: DropFigures): Rule {
  return (circuit, findings, sheet) => {
    const runs = [...circuit.path.feeders, circuit.run];
    const drops = runs.map((run) => runDrop(circuit, figures, findings, sheet, run));
    const totalDrop = sheet.gather(
      'sum',
      'phaseDrop',
      'totalDrop',
      drops.map((d) => d.part),
    );
    findings.totalDrop = totalDrop;
    const nominalVoltage = sheet.given('nominalVoltage', circuit.nominalVoltage);
    const dropRatio = sheet.step(dropRatioOf, { totalDrop, nominalVoltage });
    const lighting = circuit.run.feeds.some((o) => o.kind === 'load' && o.purpose === 'lighting');
    const own = circuit.options.dropLimit;
    const dropLimit = sheet.given(
      'dropLimit',
      ratio(own ?? (lighting ? figures.limit.lighting : figures.limit.other)),
      own === undefined ? figures.limit.by : 'set by the user',
    );
    const results: CheckResult[] = [sheet.check(dropWithinLimit, { dropRatio, dropLimit })];

    for (const [title, supply, key] of [
      ['Exact voltage at the smallest supply voltage', figures.supply.least, 'voltageAtLowestSupply'],
      ['Exact voltage at the largest supply voltage', figures.supply.most, 'voltageAtHighestSupply'],
    ] as const) {
      const part = sheet.part(title);
      const voltage = exactVoltage(part, circuit, findings, drops, supply);
      findings[key] = voltage;
      const windowed = circuit.run.feeds.some(
        (o) =>
          o.kind === 'charge-point' &&
          o.openPenDevice?.state === 'known' &&
          o.openPenDevice.value === 'line-neutral-window-device',
      );
      if (!windowed) continue;
      const windowLow = part.given('windowLow', figures.window.low, figures.window.by);
      const windowHigh = part.given('windowHigh', figures.window.high, figures.window.by);
      results.push(part.check(insideWindow, { pointVoltage: voltage, windowLow, windowHigh }));
    }
    return results;
  };
}
