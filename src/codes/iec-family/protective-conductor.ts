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
  separateShare,
  tabulatedProtective,
  tabulatedProtectiveOther,
} from '../../physics/index.js';
import { armourAreas } from '../../products/bs5467/armour.js';
import { type Amperes, celsius, ratio, type SquareMillimetres, squareMillimetres } from '../../units/index.js';
import type { CircuitCase, Findings, Rule } from '../wiring-code.js';
import { writeDeviceEnergy } from './device-energy.js';
import { shockCaution } from './disconnection-checks.js';
import { writeExternalImpedance } from './fault-loop.js';
import { protectiveAreaOf, writeImpedances } from './loop-impedance.js';
import { writeProspective } from './prospective.js';
import { residualUpstream } from './residual-position.js';

import { acquitOnly, decidingResult, type WithstandFigures } from './withstand.js';

/** S >= √(I²t)/k for the protective conductor. BS 7671, 543.1.3. */
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

/** S >= S of Table 54.7. BS 7671, 543.1.4, Table 54.7. */
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

/** Either way. BS 7671, 543.1.1. */
export const protectiveConductorCheck = /* @__PURE__ */ alternatives({
  id: 'protective-conductor',
  title: 'The protective conductor is large enough',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '543.1.1', provenance: 'two-sources' },
  caution: shockCaution,
});

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

/** A protective conductor that is neither in a cable nor enclosed: 4 mm², so that it lasts. BS 7671, 543.1.1. */
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

/** The rule that the protective conductor is large enough: adiabatic at both ends of the circuit, or by the table. */
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
      return part.check(protectiveConductorCheck, { results: [decidingResult(ends), table] });
    });
    if (kind === 'separate' || kind === 'armour-and-separate')
      results.push(separateMinimum(sheet.part('Protective conductor of its own'), circuit));
    return results;
  };
}
