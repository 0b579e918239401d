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
import {
  lineNeutralLoop,
  smallestLineNeutralFault,
  sourceImpedanceOf,
  withstandEnergyOf,
} from '../../physics/index.js';
import { type Amperes, type Ohms, ratio, seconds } from '../../units/index.js';
import type { CircuitCase, Rule } from '../wiring-code.js';
import { writeDeviceEnergy } from './device-energy.js';
import { writeFeederResistance } from './line-neutral.js';
import { writeOperatingCurrent } from './operating-current.js';
import { judgeBreaking, writeProspective } from './prospective.js';

import { acquitOnly, decidingResult, heatCaution, type WithstandFigures } from './withstand.js';
import { loadAndHeat } from './worse.js';

/** Withstand of the line conductor, k²S² >= I²t. BS 7671, 434.5.2. */
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

/** By 435.1, behind a device that protects against overload and breaks the fault, line conductors count as protected. */
export const lineProtectedByOverload = /* @__PURE__ */ comparison({
  id: 'line-conductor-behind-overload-device',
  title: 'The device protects the line conductor against overload and breaks the fault current',
  kind: 'at-most',
  value: 'deviceRating',
  limit: 'capacity',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '435.1', provenance: 'one-source' },
});

/** Either way. BS 7671, 434.5.2, 435.1. */
export const lineWithstandCheck = /* @__PURE__ */ alternatives({
  id: 'line-withstand',
  title: 'The line conductor is protected against fault current',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.2, 435.1', provenance: 'two-sources' },
  caution: heatCaution,
  worse: loadAndHeat,
});

/** The smallest line-neutral fault current operates the overcurrent device within 5 s. BS 7671, 434.5.2. */
export const lineNeutralClears = /* @__PURE__ */ comparison({
  id: 'line-neutral-fault-clears',
  title: 'The smallest line-neutral fault current operates the overcurrent device within 5 s',
  kind: 'at-least',
  value: 'minimumFaultCurrent',
  limit: 'operatingCurrent',
  weight: 'advice',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '434.5.2', provenance: 'one-source' },
  caution: 'A residual current device does not see a fault between line and neutral.',
  worse: {
    length: 'up',
    prospectiveCurrent: 'down',
    externalImpedance: 'up',
    designCurrent: 'up',
    ambientTemperature: 'up',
    groundTemperature: 'up',
    circuitsInGroup: 'up',
    soilResistivity: 'up',
    insulatedLength: 'up',
  },
});

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
  if (isMissing(system)) {
    // on TN the loop of the supply is taken, on TT the prospective current: nobody can say which
    sourceImpedance = sheet.given('sourceImpedance', system);
  } else if (system === 'TT' || system === 'IT') {
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
 */
export function lineWithstandRule(figures: WithstandFigures): Rule {
  return (circuit, findings, sheet) => {
    const near = sheet.part('Largest fault current');
    const largest = writeProspective(near, circuit, {});
    const overload = sheet.part('Behind an overload device');
    const breaking = judgeBreaking(near, circuit, largest);
    const kind = factValue('kind of the overcurrent device', circuit.run.device.kind);
    const rewirable = !isMissing(kind) && kind.standard === 'BS 3036';
    const { energyClass } = circuit.run.device;
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
    } else if (energyClass?.state === 'known' && energyClass.value === 1) {
      const why = 'A circuit-breaker of class 1 does not limit its energy: the adiabatic equation judges.';
      first = overload.result(notRequired(lineProtectedByOverload, 'not-applicable', why));
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
    const results = [sheet.check(lineWithstandCheck, { results: [first, decidingResult(ends)] })];
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
