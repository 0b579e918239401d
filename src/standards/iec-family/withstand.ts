import {
  alternatives,
  type CheckResult,
  comparison,
  factValue,
  isMissing,
  type Known,
  missing,
  notDetermined,
  notRequired,
  overall,
  type Sheet,
} from '../../core/index.js';
import type { Cable, ResidualDevice } from '../../installation/index.js';
import {
  adiabaticArea,
  adiabaticAreaOfShare,
  armourShare,
  earthFaultCurrentOf,
  largestEarthFault,
  leastOriginImpedance,
  lineNeutralLoop,
  separateShare,
  smallestLineNeutralFault,
  sourceImpedanceOf,
  tabulatedProtective,
  tabulatedProtectiveOther,
  withstandEnergyOf,
} from '../../physics/index.js';
import {
  type AdiabaticFactor,
  type Amperes,
  celsius,
  type Ohms,
  ratio,
  type SquareMillimetres,
  seconds,
  squareMillimetres,
} from '../../units/index.js';
import { armourAreas } from '../bs5467/armour.js';
import type { CircuitCase, Findings, Rule } from '../wiring-code.js';
import { judgeBreaking, writeProspective } from './breaking-capacity.js';
import { type DeviceEnergy, writeDeviceEnergy } from './device-energy.js';
import { shockCaution, writeExternalImpedance } from './disconnection.js';
import { writeFeederResistance } from './line-neutral.js';
import { protectiveAreaOf, writeImpedances } from './loop-impedance.js';
import { type FuseCurrent, writeOperatingCurrent } from './operating-current.js';
import { residualUpstream } from './residual-position.js';

/** Heat of a fault, said with every verdict on it. */
const heatCaution =
  'A conductor that does not withstand the fault burns its insulation or parts before the device has cleared: the next fault is then without protection.';

/** k²S² >= I²t for the line conductor. */
export const lineWithstands = /* @__PURE__ */ comparison({
  id: 'line-conductor-adiabatic',
  title: 'The line conductor withstands the energy that the device lets through',
  kind: 'at-least',
  value: 'withstandEnergy',
  limit: 'letThrough',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.2', provenance: 'two-sources' },
  caution: heatCaution,
  worse: { letThrough: 'up', conductorArea: 'down' },
});

/** 435.1: behind a device that protects against overload and breaks the fault, line conductors count as protected. */
export const lineProtectedByOverload = /* @__PURE__ */ comparison({
  id: 'line-conductor-behind-overload-device',
  title: 'The device protects the line conductor against overload and breaks the fault current',
  kind: 'at-most',
  value: 'deviceRating',
  limit: 'capacity',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '435.1', provenance: 'one-source' },
});

/** Either way. */
export const lineWithstandCheck = /* @__PURE__ */ alternatives({
  id: 'line-withstand',
  title: 'The line conductor is protected against fault current',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.2, 435.1', provenance: 'two-sources' },
  caution: heatCaution,
});

/** The smallest line-neutral fault current operates the overcurrent device within 5 s. */
export const lineNeutralClears = /* @__PURE__ */ comparison({
  id: 'line-neutral-fault-clears',
  title: 'The smallest line-neutral fault current operates the overcurrent device within 5 s',
  kind: 'at-least',
  value: 'minimumFaultCurrent',
  limit: 'operatingCurrent',
  weight: 'advice',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.2', provenance: 'one-source' },
  caution: 'A residual current device does not see a fault between line and neutral.',
  worse: { length: 'up' },
});

/** S >= √(I²t)/k for the protective conductor. */
export const protectiveWithstands = /* @__PURE__ */ comparison({
  id: 'protective-conductor-adiabatic',
  title: 'The protective conductor is at least as large as the adiabatic equation asks',
  kind: 'at-least',
  value: 'protectiveArea',
  limit: 'minimumProtectiveArea',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '543.1.3', provenance: 'two-sources' },
  caution: shockCaution,
  worse: { letThrough: 'up', protectiveArea: 'down' },
});

/** S >= S of Table 54.7. */
export const protectiveByTable = /* @__PURE__ */ comparison({
  id: 'protective-conductor-by-table',
  title: 'The protective conductor is at least as large as the table asks',
  kind: 'at-least',
  value: 'protectiveArea',
  limit: 'minimumProtectiveArea',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '543.1.4, Table 54.7', provenance: 'two-sources' },
  worse: { protectiveArea: 'down' },
});

/** Either way. */
export const protectiveConductorCheck = /* @__PURE__ */ alternatives({
  id: 'protective-conductor',
  title: 'The protective conductor is large enough',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '543.1.1', provenance: 'two-sources' },
  caution: shockCaution,
});

/** What a protective path is made of and where it lies: the table of k that holds for it. */
export type FactorCase = 'line' | 'protective-in-cable' | 'armour' | 'conduit';

/** What a wiring code says of thermal withstand. */
export interface WithstandFigures {
  /** Writes the factor k of a conductor; `adiabaticFactor` is the latest value of the sheet afterwards. */
  factor(sheet: Sheet, cable: Cable, of: FactorCase, circuit: CircuitCase): Known<AdiabaticFactor>;
  /** Current that operates a fuse. */
  readonly fuseCurrent: FuseCurrent;
  /** Largest and smallest voltage factor and where they stand. */
  readonly voltageFactors: { readonly most: readonly [number, string]; readonly least: readonly [number, string] };
}

const worst = (results: readonly CheckResult[]): CheckResult => {
  const { failed, undetermined } = overall(results);
  return failed[0] ?? undetermined[0] ?? (results[results.length - 1] as CheckResult);
};

/** A bound that a conductor does not withstand condemns nothing: the maker's figure decides. */
function acquitOnly(sheet: Sheet, result: CheckResult, energy: DeviceEnergy): CheckResult {
  if (result.verdict !== 'fail' || !energy.bound) return result;
  const { check, title, weight, source, caution } = result;
  return sheet.result({
    check,
    title,
    weight,
    source,
    ...(caution === undefined ? {} : { caution }),
    verdict: 'not-determined',
    because: energy.because,
    gaps: [
      {
        kind: 'fact',
        fact: 'let-through energy of the device',
        obtain:
          'at the prospective current, from its maker: the bound that is known is more than the conductor withstands',
      },
    ],
  });
}

function judgeLine(
  sheet: Sheet,
  circuit: CircuitCase,
  figures: WithstandFigures,
  current: Known<Amperes>,
): CheckResult {
  const { run, options } = circuit;
  const part = sheet.part('Let-through energy');
  const energy = writeDeviceEnergy(part, { device: run.device, current, options, fuseCurrent: figures.fuseCurrent });
  const letThrough = sheet.gather('largest', 'letThrough', 'letThrough', [part]);
  const adiabaticFactor = figures.factor(sheet, run.cable, 'line', circuit);
  const conductorArea = sheet.given('conductorArea', run.cable.area);
  const withstandEnergy = sheet.step(withstandEnergyOf, { adiabaticFactor, conductorArea });
  const result = sheet.check(lineWithstands, { withstandEnergy, letThrough }, energy.because || undefined);
  return acquitOnly(sheet, result, energy);
}

/** Line-neutral fault current at the far end, hot. */
function farLineNeutral(sheet: Sheet, circuit: CircuitCase, figures: WithstandFigures): Known<Amperes> {
  const { supply } = circuit.installation;
  const parts = [...circuit.path.feeders, circuit.run].map((run) => {
    const part = sheet.part(`Line and neutral of ${run.id}`);
    writeFeederResistance(part, run, true, 'operating');
    return part;
  });
  const circuitImpedance = sheet.gather('sum', 'segmentImpedance', 'circuitImpedance', parts);
  const nominalVoltage = sheet.given('nominalVoltage', circuit.nominalVoltage);
  let sourceImpedance: Known<Ohms>;
  const system = factValue('earthing system of the supply', supply.system);
  if (system === 'TT' || system === 'IT' || isMissing(system)) {
    const prospectiveCurrent = sheet.given('prospectiveCurrent', supply.prospectiveCurrent);
    sourceImpedance = sheet.step(sourceImpedanceOf, { nominalVoltage, prospectiveCurrent });
  } else {
    sourceImpedance = sheet.given(
      'sourceImpedance',
      factValue('externalImpedance', supply.externalImpedance),
      'external earth fault loop impedance, taken for the line-neutral loop of the supply too',
    );
  }
  const lineNeutralImpedance = sheet.step(lineNeutralLoop, { sourceImpedance, circuitImpedance });
  const minimumVoltageFactor = sheet.given(
    'minimumVoltageFactor',
    ratio(figures.voltageFactors.least[0]),
    figures.voltageFactors.least[1],
  );
  return sheet.step(smallestLineNeutralFault, { nominalVoltage, minimumVoltageFactor, lineNeutralImpedance });
}

/**
 * The rule that line conductors are protected against fault current: 435.1 first, else the adiabatic equation at both
 * ends of the circuit.
 * @param figures what the code says of withstand
 */
export function lineWithstandRule(figures: WithstandFigures): Rule {
  return (circuit, findings, sheet) => {
    const near = sheet.part('Largest fault current');
    const largest = writeProspective(near, circuit, {});
    const overload = sheet.part('Behind an overload device');
    const breaking = judgeBreaking(near, circuit, largest);
    const kind = factValue('kind of the overcurrent device', circuit.run.device.kind);
    const rewirable = !isMissing(kind) && kind.standard === 'BS 3036';
    let first: CheckResult;
    if (breaking.verdict !== 'pass') {
      const gaps = breaking.alternatives?.flatMap((r) => r.gaps ?? []) ?? [];
      first = overload.result(
        notDetermined(
          lineProtectedByOverload,
          ...(gaps.length > 0 ? gaps : [{ kind: 'fact', fact: 'breaking capacity that is enough' } as const]),
        ),
      );
    } else if (rewirable) {
      first = overload.result(
        notRequired(lineProtectedByOverload, 'not-applicable', 'A rewirable fuse is judged by the adiabatic equation.'),
      );
    } else {
      const deviceRating = overload.given('deviceRating', circuit.run.device.rating);
      const capacity = overload.given(
        'capacity',
        findings.capacity ??
          missing({ kind: 'fact', fact: 'current-carrying capacity', obtain: 'from the rule of coordination' }),
        'governing stretch',
      );
      first = overload.check(
        lineProtectedByOverload,
        { deviceRating, capacity },
        'Protected against overload by a device that breaks the fault current: no further calculation is asked for.',
      );
    }
    const far = sheet.part('Smallest fault current');
    const smallest = farLineNeutral(far, circuit, figures);
    const ends = [
      judgeLine(sheet.part('Near end'), circuit, figures, largest),
      judgeLine(sheet.part('Far end'), circuit, figures, smallest),
    ];
    const results = [sheet.check(lineWithstandCheck, { results: [first, worst(ends)] })];
    return [...results, lineNeutralAdvice(far, circuit, figures, smallest)];
  };
}

function lineNeutralAdvice(
  sheet: Sheet,
  circuit: CircuitCase,
  figures: WithstandFigures,
  minimumFaultCurrent: Known<Amperes>,
): CheckResult {
  const operatingCurrent = writeOperatingCurrent(sheet, circuit.run.device, seconds(5), figures.fuseCurrent);
  return sheet.check(lineNeutralClears, { minimumFaultCurrent, operatingCurrent });
}

/** The earth fault currents at both ends of a circuit: cold at its origin, hot at its end. */
function earthFaultEnds(sheet: Sheet, circuit: CircuitCase, findings: Findings, figures: WithstandFigures) {
  const system = factValue('earthing system of the supply', circuit.installation.supply.system);
  const near = sheet.part('Largest earth fault current');
  const externalImpedance = writeExternalImpedance(near, circuit, isMissing(system) ? 'TN-S' : system);
  const parts = writeImpedances(near, circuit.path.feeders, celsius(20), circuit.options);
  const feederImpedance = near.gather('sum', 'segmentImpedance', 'feederImpedance', parts);
  const originImpedance = near.step(leastOriginImpedance, { externalImpedance, feederImpedance });
  const nominalVoltage = near.given('nominalVoltage', circuit.nominalVoltage);
  const maximumVoltageFactor = near.given(
    'maximumVoltageFactor',
    ratio(figures.voltageFactors.most[0]),
    figures.voltageFactors.most[1],
  );
  const largest = near.step(largestEarthFault, { nominalVoltage, maximumVoltageFactor, originImpedance });
  const prospective = writeProspective(sheet.part('Prospective current, as a guard'), circuit, {});
  const far = sheet.part('Smallest earth fault current');
  const loopImpedance = far.given(
    'loopImpedance',
    findings.loopImpedance ??
      missing({ kind: 'fact', fact: 'earth fault loop impedance', obtain: 'from the rule of disconnection' }),
    'rule of disconnection',
  );
  const voltage = far.given('nominalVoltage', circuit.nominalVoltage);
  const minimumVoltageFactor = far.given(
    'minimumVoltageFactor',
    ratio(figures.voltageFactors.least[0]),
    figures.voltageFactors.least[1],
  );
  const smallest = far.step(earthFaultCurrentOf, { nominalVoltage: voltage, minimumVoltageFactor, loopImpedance });
  return { largest, smallest, prospective };
}

/** A protective conductor that is neither in a cable nor enclosed: 4 mm², so that it lasts. */
export const separateProtectiveLarge = /* @__PURE__ */ comparison({
  id: 'separate-protective-conductor',
  title: 'A protective conductor of its own is large enough to last',
  kind: 'at-least',
  value: 'protectiveArea',
  limit: 'minimumProtectiveArea',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '543.1.1', provenance: 'two-sources' },
  worse: { protectiveArea: 'down' },
});

/** 2.5 mm² where it is protected against mechanical damage, 4 mm² where it is not. */
function separateMinimum(sheet: Sheet, circuit: CircuitCase): CheckResult {
  const { stretches } = circuit.run;
  const inside = (s: (typeof stretches)[number]) => ['conduit', 'trunking', 'duct'].includes(s.containment ?? '');
  if (stretches.every(inside))
    return sheet.result(
      notRequired(separateProtectiveLarge, 'not-applicable', 'It lies in an enclosure over the whole route.'),
    );
  const silentOn = stretches.filter((s) => s.containment === undefined);
  if (stretches.every((s) => inside(s) || s.containment === undefined))
    return sheet.result(
      notDetermined(
        separateProtectiveLarge,
        ...silentOn.map(
          (s) => ({ kind: 'fact', fact: `containment of ${s.name}`, obtain: 'enclosed or not' }) as const,
        ),
      ),
    );
  const protectiveArea = writePathArea(sheet, circuit, 'plain');
  const minimumProtectiveArea = sheet.given(
    'minimumProtectiveArea',
    squareMillimetres(4),
    'BS 7671 543.1.1: not enclosed and taken as not protected against mechanical damage',
  );
  return sheet.check(separateProtectiveLarge, { protectiveArea, minimumProtectiveArea });
}

type PathKind = 'plain' | 'armour' | 'beside-armour';

function judgeProtective(
  sheet: Sheet,
  circuit: CircuitCase,
  figures: WithstandFigures,
  current: Known<Amperes>,
  path: PathKind,
  guard?: Known<Amperes>,
): CheckResult {
  const { run, options } = circuit;
  const upstream = residualUpstream(circuit.path);
  const residual: ResidualDevice | undefined = upstream[upstream.length - 1];
  const part = sheet.part('Let-through energy');
  const energy = writeDeviceEnergy(part, {
    device: run.device,
    current,
    options,
    fuseCurrent: figures.fuseCurrent,
    ...(residual ? { residual } : {}),
    ...(guard === undefined ? {} : { largest: guard }),
  });
  const letThrough = sheet.gather('largest', 'letThrough', 'letThrough', [part]);
  const adiabaticFactor = figures.factor(
    sheet,
    run.cable,
    path === 'armour' ? 'armour' : 'protective-in-cable',
    circuit,
  );
  let minimumProtectiveArea: Known<SquareMillimetres>;
  if (run.cable.protective === 'armour-and-separate') {
    const armourResistance = sheet.latest('armourResistance') ?? missing();
    const separateResistance = sheet.latest('separateResistance') ?? missing();
    const pathShare = sheet.step(path === 'armour' ? armourShare : separateShare, {
      armourResistance,
      separateResistance,
    });
    minimumProtectiveArea = sheet.step(adiabaticAreaOfShare, { letThrough, adiabaticFactor, pathShare });
  } else {
    minimumProtectiveArea = sheet.step(adiabaticArea, { letThrough, adiabaticFactor });
  }
  const protectiveArea = writePathArea(sheet, circuit, path);
  const result = sheet.check(
    protectiveWithstands,
    { protectiveArea, minimumProtectiveArea },
    [energy.because, path === 'armour' && recalledArea(run.cable) ? armourAccepted : ''].filter(Boolean).join(' ') ||
      undefined,
  );
  return acquitOnly(sheet, result, energy);
}

const armourAccepted = 'Rests on the area of steel wire armour from memory (grade C), accepted by option.';
const recalledArea = (cable: Cable) =>
  cable.cores !== 2 && !(cable.protective === 'armour' && cable.protectiveArea !== undefined);

function writePathArea(sheet: Sheet, circuit: CircuitCase, path: PathKind): Known<SquareMillimetres> {
  const { cable } = circuit.run;
  const line = factValue('area of the line conductor', cable.area);
  if (path === 'armour') {
    if (cable.protective === 'armour' && cable.protectiveArea)
      return sheet.given('protectiveArea', cable.protectiveArea, 'area of the armour, as surveyed');
    if (recalledArea(cable) && circuit.options.acceptMemoryFigures !== true)
      return sheet.given(
        'protectiveArea',
        missing({
          kind: 'fact',
          fact: 'area of the armour',
          obtain: 'from the maker of the cable; the figure here is recalled (grade C) and has to be accepted',
        }),
      );
    const part = sheet.part('Armour');
    const cores = part.given('cores', ratio(cable.cores));
    const conductorArea = part.given('conductorArea', line);
    part.look(armourAreas, { cores, conductorArea });
    return sheet.gather('sum', 'armourArea', 'protectiveArea', [part]);
  }
  const part = sheet.part('Area of the protective conductor');
  return sheet.given('protectiveArea', protectiveAreaOf(part, cable, line));
}

/** The table method, with k_1/k_2 where the materials differ. */
function byTable(sheet: Sheet, circuit: CircuitCase, figures: WithstandFigures, path: PathKind): CheckResult {
  const { cable } = circuit.run;
  const conductorArea = sheet.given('conductorArea', cable.area);
  const tabulatedProtectiveArea = sheet.step(tabulatedProtective, { conductorArea });
  const line = sheet.part('Line conductor');
  figures.factor(line, cable, 'line', circuit);
  const other = sheet.part('Protective conductor');
  figures.factor(other, cable, path === 'armour' ? 'armour' : 'protective-in-cable', circuit);
  const lineFactor = sheet.gather('sum', 'adiabaticFactor', 'lineFactor', [line]);
  const protectiveFactor = sheet.gather('sum', 'adiabaticFactor', 'protectiveFactor', [other]);
  const minimumProtectiveArea = sheet.step(tabulatedProtectiveOther, {
    tabulatedProtectiveArea,
    lineFactor,
    protectiveFactor,
  });
  const protectiveArea = writePathArea(sheet, circuit, path);
  return sheet.check(protectiveByTable, { protectiveArea, minimumProtectiveArea });
}

/**
 * The rule that the protective conductor is large enough: adiabatic at both ends of the circuit, or by the table.
 * @param figures what the code says of withstand
 */
export function protectiveConductorRule(figures: WithstandFigures): Rule {
  return (circuit, findings, sheet) => {
    const { cable } = circuit.run;
    const kind = cable.protective;
    if (kind === 'none' || kind === 'conduit')
      return [
        sheet.result(
          notDetermined(protectiveConductorCheck, {
            kind: 'fact',
            fact: kind === 'none' ? 'protective conductor of the run' : 'cross-section and impedance of the conduit',
            obtain: kind === 'none' ? 'the run has none; find out why' : 'from the maker of the conduit',
          }),
        ),
      ];
    const { largest, smallest, prospective } = earthFaultEnds(sheet, circuit, findings, figures);
    if (kind === 'armour-and-separate') {
      const both = writeImpedances(sheet, [circuit.run], 'operating', circuit.options);
      sheet.gather('sum', 'armourResistance', 'armourResistance', both);
      sheet.gather('sum', 'separateResistance', 'separateResistance', both);
    }
    const paths: readonly PathKind[] =
      kind === 'armour' ? ['armour'] : kind === 'armour-and-separate' ? ['armour', 'beside-armour'] : ['plain'];
    const results = paths.map((path, i) => {
      const part = paths.length > 1 ? sheet.part(i === 0 ? 'Armour' : 'Beside the armour') : sheet;
      const ends = [
        judgeProtective(part.part('Near end'), circuit, figures, largest, path, prospective),
        judgeProtective(part.part('Far end'), circuit, figures, smallest, path),
      ];
      const table = byTable(part.part('By the table'), circuit, figures, path);
      if (i === paths.length - 1)
        findings.protectiveArea = table.value ? squareMillimetres(table.value.value) : missing();
      return part.check(protectiveConductorCheck, { results: [worst(ends), table] });
    });
    if (kind === 'separate' || kind === 'armour-and-separate')
      results.push(separateMinimum(sheet.part('Protective conductor of its own'), circuit));
    return results;
  };
}
