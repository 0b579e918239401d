import {
  type CheckResult,
  type Fact,
  factValue,
  isMissing,
  type Known,
  missing,
  type Sheet,
  whenKnown,
} from '../../core/index.js';
import type { Run, Stretch } from '../../installation/index.js';
import { type Amperes, amperes, type Ratio, ratio } from '../../units/index.js';
import type { CircuitCase, Findings, Rule } from '../wiring-code.js';
import {
  capacityAsInstalled,
  capacityInParallel,
  capacitySuffices,
  conventionalCurrentOf,
  conventionalOverload,
  deviceCarriesLoad,
  deviceShareOf,
  groupedDevice,
  harmonicsStated,
  insulationOnce,
  loadWithinCapacity,
  overloadLimitOf,
  requiredForLoad,
  requiredForOverload,
  requiredNotTogether,
  ringCarriesEnough,
} from './capacity.js';
import { temperatureAtShareOfCapacity } from './conductor-temperature.js';
import { writeHarmonics } from './harmonics.js';
import { operatingTemperatureOf } from './loop-impedance.js';
import { isBuried, noFactor, type OverloadRules, type RatingTables } from './rating-tables.js';

interface StretchVerdict {
  readonly stretch: Stretch;
  readonly part: Sheet;
  readonly warm: Sheet;
  readonly results: readonly CheckResult[];
  readonly figures: NonNullable<Findings['governingFigures']>;
  readonly use: Known<number>;
}

/** Conductor temperature at the real load, from the share of the capacity that it takes. */
function partialLoad(sheet: Sheet, circuit: CircuitCase, overload: OverloadRules, stretch: Stretch): Sheet {
  const part = sheet.part('Conductor temperature at the real load');
  const load = sheet.latest('harmonicCurrent');
  let designCurrent = sheet.latest('designCurrent') ?? missing();
  if (load !== undefined) designCurrent = part.given('designCurrent', load, 'with third harmonics');
  else if (ringRule(circuit.run, overload))
    designCurrent = part.given(
      'designCurrent',
      whenKnown([designCurrent, sheet.latest('capacity') ?? missing()], (b, z) => amperes(Math.min(b, z))),
      `no part of a ring is to carry more than its capacity for long, ${overload.ring?.by}`,
    );
  const operatingTemperature = part.given('operatingTemperature', operatingTemperatureOf(circuit.run.cable.insulation));
  const ambientTemperature = part.given(
    'ambientTemperature',
    stretch.ambient,
    isBuried(stretch) ? 'temperature of the ground' : undefined,
  );
  part.step(temperatureAtShareOfCapacity, {
    designCurrent,
    capacity: sheet.latest('capacity') ?? missing(),
    ambientTemperature,
    operatingTemperature,
  });
  return part;
}

const isSemiEnclosed = (run: Run) => run.device.kind.state === 'known' && run.device.kind.value.standard === 'BS 3036';

/** What is written of a stretch before load and device are judged. */
interface Written {
  readonly stretch: Stretch;
  readonly part: Sheet;
  readonly tabulatedCapacity: Known<Amperes>;
  readonly capacity: Known<Amperes>;
  readonly factors: {
    readonly ambientFactor: Known<Ratio>;
    readonly groupFactor: Known<Ratio>;
    readonly insulationFactor: Known<Ratio>;
    readonly soilFactor: Known<Ratio>;
  };
}

interface Judged {
  readonly results: readonly CheckResult[];
  /** Share of the capacity that is asked for. */
  readonly use: Known<number>;
}

/** Whether the code's rule for ring final circuits holds for a run: it is one behind a device of a rating named there. */
function ringRule(run: Run, { ring }: OverloadRules): boolean {
  const { rating } = run.device;
  return run.ring === true && ring !== undefined && rating.state === 'known' && ring.ratings.includes(rating.value);
}

/** A ring is fed from both ends: a capacity below the rating of the device is enough, if it is the one that is named. */
function judgeRing({ ring }: OverloadRules, { stretch, part, capacity }: Written): Judged {
  const ringCapacity = part.given('ringCapacity', ring?.least ?? missing(), ring?.by);
  return {
    results: [part.check(ringCarriesEnough, { capacity, ringCapacity }, stretch.name)],
    use: whenKnown([ringCapacity, capacity], (r, c) => r / c),
  };
}

/** Load and device against the capacity of a stretch. */
function judgeOverload(circuit: CircuitCase, overload: OverloadRules, written: Written): Judged {
  const { run } = circuit;
  const { stretch, part, tabulatedCapacity, capacity, factors } = written;
  const together = !(overload.notSimultaneous && stretch.group?.overloads === 'not-simultaneous');
  const results: CheckResult[] = [];
  const kind = factValue('kind of the overcurrent device', run.device.kind);
  const fuseFactor = !overload.semiEnclosed
    ? noFactor(part, 'fuseFactor', isSemiEnclosed(run) ? 'counted by its operating current' : 'no semi-enclosed fuse')
    : isMissing(kind)
      ? part.given('fuseFactor', kind)
      : isSemiEnclosed(run)
        ? part.given('fuseFactor', ratio(overload.semiEnclosed[0]), overload.semiEnclosed[1])
        : noFactor(part, 'fuseFactor', 'no semi-enclosed fuse');
  const deviceFactor =
    isBuried(stretch) && overload.buried
      ? part.given('deviceFactor', ratio(overload.buried[0]), overload.buried[1])
      : noFactor(part, 'deviceFactor', isBuried(stretch) ? 'the code has none for the ground' : 'not in the ground');
  const deviceRating = part.latest('deviceRating') ?? missing();
  const designCurrent = part.latest('designCurrent') ?? missing();
  let requiredCapacity: Known<Amperes>;
  if (!together) {
    const byLoad = part.part('Required by the load');
    byLoad.step(requiredForLoad, { designCurrent, ...factors });
    const byOverload = part.part('Required when one circuit is overloaded at a time');
    byOverload.step(requiredNotTogether, { deviceRating, designCurrent, ...factors, fuseFactor, deviceFactor });
    requiredCapacity = part.gather('largest', 'requiredCapacity', 'requiredCapacity', [byLoad, byOverload]);
  } else {
    requiredCapacity = part.step(requiredForOverload, { deviceRating, ...factors, fuseFactor, deviceFactor });
  }
  results.push(part.check(capacitySuffices, { tabulatedCapacity, requiredCapacity }, stretch.name));
  const harmonicCurrent = part.latest('harmonicCurrent');
  if (harmonicCurrent !== undefined) {
    // with third harmonics the neutral, not the line, may be the loaded conductor
    const chosen = part.part('Load with third harmonics');
    chosen.given('designCurrent', harmonicCurrent, 'current from which the cable is chosen');
    results.push(chosen.check(loadWithinCapacity, { designCurrent: harmonicCurrent, capacity }, stretch.name));
  } else results.push(part.check(loadWithinCapacity, { designCurrent, capacity }, stretch.name));
  if (together) {
    const conventional = part.step(conventionalCurrentOf, {
      deviceRating,
      conventionalMultiple: overload.conventionalMultiple(part, run),
    });
    const overloadLimit = part.step(overloadLimitOf, { capacity });
    results.push(
      part.check(conventionalOverload, { conventionalOperatingCurrent: conventional, overloadLimit }, stretch.name),
    );
  }
  return { results, use: whenKnown([requiredCapacity, tabulatedCapacity], (r, t) => r / t) };
}

function stretchVerdict(circuit: CircuitCase, tables: RatingTables, sheet: Sheet, stretch: Stretch): StretchVerdict {
  const { run } = circuit;
  const { cable } = run;
  const part = sheet.part(stretch.name);
  const results: CheckResult[] = [];
  const three = circuit.phases === 3;
  const { overload } = tables;
  // the factors for many cores go with the columns of three loaded conductors
  const loaded = three || cable.loadedCores ? '3' : '2';
  let tabulatedCapacity = tables.tabulated(part, cable, stretch, loaded);
  if (cable.parallel !== undefined && cable.parallel > 1) {
    const parallelConductors = part.given(
      'parallelConductors',
      ratio(cable.parallel),
      'equal conductors that share the load equally',
    );
    tabulatedCapacity = part.step(capacityInParallel, { tabulatedCapacity, parallelConductors });
  }
  const ambientFactor = tables.ambient(part, cable, stretch);
  const groupFactor = tables.group(part, cable, stretch, three);
  const soilFactor = tables.soil(part, cable, stretch);
  const contains = stretch.method.state === 'known' && tables.containsInsulation(stretch.method.value);
  const insulated = stretch.insulated !== undefined;
  const insulationFactor =
    contains || !insulated
      ? noFactor(
          part,
          'insulationFactor',
          contains ? 'the reference method already contains the insulation' : 'no thermal insulation around the cable',
        )
      : tables.insulation(part, cable, stretch);
  if (contains && insulated)
    results.push(
      part.check(insulationOnce, {
        holds: true,
        because: `Method ${stretch.method.state === 'known' ? stretch.method.value : ''} already contains the insulation: no C_i as well.`,
      }),
    );
  const factors = { ambientFactor, groupFactor, insulationFactor, soilFactor };
  const capacity = part.step(capacityAsInstalled, { tabulatedCapacity, ...factors });

  const written = { stretch, part, tabulatedCapacity, capacity, factors };
  const judged = ringRule(run, overload) ? judgeRing(overload, written) : judgeOverload(circuit, overload, written);
  results.push(...judged.results);
  const warm = partialLoad(part, circuit, overload, stretch);
  const figures = {
    tabulatedCapacity,
    ambientFactor,
    groupFactor,
    conductorTemperature: warm.latest('conductorTemperature') ?? missing(),
  };
  return {
    stretch,
    part,
    warm,
    results,
    figures,
    use: judged.use,
  };
}

/** The stretch that uses its capacity most; the first whose use is not known, if any. */
const governing = (all: readonly StretchVerdict[]): StretchVerdict | undefined =>
  all.find((v) => isMissing(v.use)) ?? [...all].sort((a, b) => (b.use as number) - (a.use as number))[0];

/**
 * The rule that load, device and cable are coordinated over every stretch, for a wiring code of the IEC family. Each
 * stretch has its own factors; factors of different stretches never multiply; the governing stretch is named.
 */
export function coordinationRule(tables: RatingTables): Rule {
  return (circuit: CircuitCase, findings: Findings, sheet: Sheet) => {
    const { run } = circuit;
    const designCurrent = sheet.given('designCurrent', circuit.designCurrent, 'load of the circuit');
    const deviceRating = sheet.given('deviceRating', run.device.rating);
    const results: CheckResult[] = [sheet.check(deviceCarriesLoad, { deviceRating, designCurrent })];
    if (run.device.groupingFactor) {
      const deviceGroupFactor = sheet.given('deviceGroupFactor', asRatio(run.device.groupingFactor), "maker's factor");
      const deviceShare = sheet.step(deviceShareOf, { deviceRating, deviceGroupFactor });
      results.push(sheet.check(groupedDevice, { deviceShare, designCurrent }));
    }
    if (circuit.phases === 3 && run.cable.cores >= 4) {
      const stated = run.thirdHarmonic !== undefined && run.thirdHarmonic.state !== 'unknown';
      results.push(
        sheet.check(harmonicsStated, {
          holds: stated,
          because: stated
            ? 'The content is stated and applied.'
            : 'It is not stated: the neutral is taken as lightly loaded. Ask the maker of the load.',
        }),
      );
      // a content that is asked for and not known leaves open what the cable is chosen for
      if (run.thirdHarmonic) writeHarmonics(sheet, designCurrent, run.thirdHarmonic);
    }
    const verdicts = run.stretches.map((s) => stretchVerdict(circuit, tables, sheet, s));
    const worst = governing(verdicts);
    if (worst) {
      findings.governingStretch = worst.stretch.name;
      findings.governingFigures = worst.figures;
    }
    findings.capacity = sheet.gather(
      'smallest',
      'capacity',
      'capacity',
      verdicts.map((v) => v.part),
    );
    findings.hottestConductor = sheet.gather(
      'largest',
      'conductorTemperature',
      'conductorTemperature',
      verdicts.map((v) => v.warm),
    );
    if (worst) sheet.note(`Governing stretch: ${worst.stretch.name}.`);
    return [...results, ...verdicts.flatMap((v) => v.results)];
  };
}

const asRatio = (fact: Fact<number>): Fact<Ratio> =>
  fact.state === 'known'
    ? { ...fact, value: ratio(fact.value) }
    : fact.state === 'between'
      ? { ...fact, least: ratio(fact.least), most: ratio(fact.most) }
      : fact;
