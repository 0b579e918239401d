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
  statement,
  whenKnown,
} from '../../core/index.js';
import type { EarthingSystem, ResidualDevice } from '../../installation/index.js';
import {
  electrodeAndProtective,
  externalImpedanceOfElectrode,
  loopImpedanceLimitOf,
  loopImpedanceOf,
  originImpedanceOf,
  residualLoopVoltage,
  residualTouchVoltage,
} from '../../physics/index.js';
import { type Amperes, celsius, type Ohms, ohms, ratio, type Seconds, type Volts, volts } from '../../units/index.js';
import { residualBreakTimes } from '../en61008/break-times.js';
import type { CircuitCase, Findings, Rule } from '../wiring-code.js';
import { restsOnArmour, writeImpedances } from './loop-impedance.js';
import { type FuseCurrent, writeOperatingCurrent } from './operating-current.js';
import { residualUpstream } from './residual-position.js';

/** What is said with every verdict on protection against electric shock. */
export const shockCaution =
  'Electric shock can kill. The installation must not be energised on the strength of a calculation alone: the loop impedance and the disconnection have to be confirmed by test, by a competent person, to the edition in force.';

/** Z_s I_a <= U_0 C_min: the overcurrent device disconnects an earth fault in time. */
export const overcurrentDisconnects = /* @__PURE__ */ comparison({
  id: 'disconnection-by-overcurrent-device',
  title: 'The earth fault loop impedance lets the overcurrent device disconnect within the required time',
  kind: 'at-most',
  value: 'loopImpedance',
  limit: 'loopImpedanceLimit',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '411.4.4', provenance: 'two-sources' },
  caution: shockCaution,
  worse: { externalImpedance: 'up', length: 'up', operatingCurrent: 'up' },
});

/** The residual current device disconnects within the required time. */
export const residualDisconnects = /* @__PURE__ */ comparison({
  id: 'disconnection-by-residual-current-device',
  title: 'The residual current device disconnects within the required time',
  kind: 'at-most',
  value: 'disconnectionTime',
  limit: 'requiredTime',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '411.4.5, 411.5.3', provenance: 'two-sources' },
  caution: shockCaution,
  worse: { externalImpedance: 'up', residualOperatingCurrent: 'up' },
});

/** R_A I_Δn <= 50 V (Z_s I_Δn in TN). */
export const residualTouchLimit = /* @__PURE__ */ comparison({
  id: 'touch-voltage-at-residual-current',
  title: 'The rated residual current raises at most 50 V on exposed metal',
  kind: 'at-most',
  value: 'touchVoltage',
  limit: 'touchVoltageLimit',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '411.5.3, Table 41.5', provenance: 'two-sources' },
  caution: shockCaution,
  worse: { electrodeResistance: 'up', residualOperatingCurrent: 'up' },
});

/** Automatic disconnection by one device or another. */
export const automaticDisconnection = /* @__PURE__ */ alternatives({
  id: 'automatic-disconnection',
  title: 'An earth fault is disconnected within the required time',
  weight: 'rule',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '411.3.2', provenance: 'two-sources' },
  caution: shockCaution,
});

/** A warning where a residual current device has to do what the overcurrent device cannot. */
export const overcurrentPreferred = /* @__PURE__ */ statement({
  id: 'disconnection-without-residual-current-device',
  title: 'The overcurrent device alone disconnects an earth fault in time',
  weight: 'advice',
  source: { document: 'BS 7671', edition: '2018+A2:2022', clause: '411.4.4, 411.4.5', provenance: 'one-source' },
  caution: `Protection rests on a mechanism that has to be tested regularly; the line-neutral fault current is as small and has to be judged against the overcurrent device and the withstand of the conductors. ${shockCaution}`,
});

/** R_A <= 200 Ω, for a resistance that lasts. */
export const electrodeStable = /* @__PURE__ */ comparison({
  id: 'electrode-stability',
  title: 'The resistance of the earth electrode is low enough to be stable',
  kind: 'at-most',
  value: 'electrodeResistance',
  limit: 'electrodeStability',
  weight: 'advice',
  source: {
    document: 'BS 7671',
    edition: '2018+A2:2022',
    clause: '411.5.3, Table 41.5, note',
    provenance: 'two-sources',
  },
  caution: `Above 200 Ω the resistance may not be stable: soil dries out and freezes. ${shockCaution}`,
  worse: { electrodeResistance: 'up' },
});

/** What a wiring code says of disconnection; the mechanics are shared. */
export interface DisconnectionFigures {
  /** Minimum voltage factor and where it stands. */
  readonly minimumVoltageFactor: readonly [value: number, by: string];
  /** Writes the required time. */
  requiredTime(sheet: Sheet, circuit: CircuitCase, system: EarthingSystem): Known<Seconds>;
  /** Current that operates a fuse. */
  readonly fuseCurrent: FuseCurrent;
  /** A note where the value lies between the computed and a printed limit. */
  printedLimit?(sheet: Sheet, circuit: CircuitCase, required: Known<Seconds>): Known<Ohms> | undefined;
}

/**
 * Writes the external earth fault loop impedance: as surveyed, or on TT from the electrode and the path of the network.
 * @param sheet where it is written
 * @param circuit the circuit
 * @param system earthing system of the supply
 * @returns Z_e, Ω, or what is missing
 */
export function writeExternalImpedance(sheet: Sheet, circuit: CircuitCase, system: EarthingSystem): Known<Ohms> {
  const { supply } = circuit.installation;
  const electrode = supply.electrode?.resistance;
  if (system === 'TT' && supply.externalImpedance.state === 'unknown' && electrode && electrode.state !== 'unknown') {
    const part = sheet.part('Earth fault path of a TT supply');
    const earthElectrode = part.given('earthElectrode', electrode);
    const networkEarth = part.given('networkEarth', ohms(21), 'customary largest value of the network, ENA ER P23/1');
    part.step(externalImpedanceOfElectrode, { earthElectrode, networkEarth });
    return sheet.gather('sum', 'externalImpedance', 'externalImpedance', [part]);
  }
  return sheet.given('externalImpedance', supply.externalImpedance);
}

/**
 * Writes the loop impedance of a circuit, hot, from Z_e, every feeder of its path and the circuit itself, and adds to
 * the findings; R_1+R_2 at 20 °C is found besides, for the tests.
 * @param sheet where it is written
 * @param circuit the circuit
 * @param system earthing system of the supply
 * @param findings what is found out
 * @returns Z_s at the far end, Ω, or what is missing, and the parts of the runs
 */
export function writeLoopImpedance(sheet: Sheet, circuit: CircuitCase, system: EarthingSystem, findings: Findings) {
  const { feeders, run } = circuit.path;
  const externalImpedance = writeExternalImpedance(sheet, circuit, system);
  const feederParts = writeImpedances(sheet, feeders, 'operating', circuit.options);
  const [own] = writeImpedances(sheet, [run], 'operating', circuit.options);
  const parts = own ? [...feederParts, own] : feederParts;
  const feederImpedance = sheet.gather('sum', 'segmentImpedance', 'feederImpedance', feederParts);
  findings.loopAtOrigin = sheet.step(originImpedanceOf, { externalImpedance, feederImpedance });
  const circuitImpedance = sheet.gather('sum', 'segmentImpedance', 'circuitImpedance', parts);
  const loopImpedance = sheet.step(loopImpedanceOf, { externalImpedance, circuitImpedance });
  findings.loopImpedance = loopImpedance;
  const cold = sheet.part('R_1+R_2 at 20 °C, for the tests');
  const [coldPart] = writeImpedances(cold, [run], celsius(20), circuit.options);
  findings.lineAndProtectiveCold = coldPart?.latest('lineAndProtectiveResistance') ?? ohms(0);
  return { loopImpedance, parts };
}

function breakTime(
  sheet: Sheet,
  device: ResidualDevice,
  voltage: Volts,
  loop: Known<Ohms>,
  rating: Known<Amperes>,
  required: Known<Seconds>,
): Known<Seconds> {
  if (device.delayTime !== undefined) {
    // the break time comes on top of a set delay: the delay alone can condemn, never acquit
    const delay = factValue('set delay of the residual current device', device.delayTime);
    const late = !isMissing(delay) && !isMissing(required) && delay > required;
    const onTop = missing({
      kind: 'fact',
      fact: 'break time of the delayed residual current device',
      obtain: 'from its maker, for the delay that is set',
    });
    return sheet.given('disconnectionTime', late ? delay : onTop, 'set delay of the device');
  }
  const multiple = whenKnown([loop, rating], (z, i) => voltage / z / i);
  const row: Known<number> = isMissing(multiple)
    ? multiple
    : (rowBelow(multiple) ??
      missing({
        kind: 'range',
        formula: 'en61008/break-times',
        explain: `the fault current is ${multiple.toPrecision(3)} times the rated residual current; the device is bound to operate from once on`,
      }));
  const residualMultiple = sheet.given(
    'residualMultiple',
    isMissing(row) ? row : ratio(row),
    typeof multiple === 'number'
      ? `printed row at or below ${multiple.toPrecision(3)}, U_0/Z_s over the rated residual current`
      : undefined,
  );
  const delay = sheet.label('delay', device.delay ?? 'general', device.delay ? undefined : 'no delay stated');
  return sheet.look(residualBreakTimes, { delay, residualMultiple });
}

/** The printed row of break times at or below a multiple of the rated residual current. */
const rowBelow = (multiple: number): number | undefined => [5, 2, 1].find((m) => multiple >= m);

function residualResult(
  sheet: Sheet,
  circuit: CircuitCase,
  device: ResidualDevice,
  isTT: boolean,
  loop: Known<Ohms>,
): readonly CheckResult[] {
  const touchVoltageLimit = sheet.given('touchVoltageLimit', volts(50), 'BS 7671 411.5.3');
  const electrode = circuit.installation.supply.electrode?.resistance;
  let path: Known<Ohms> = loop;
  if (isTT) {
    // a loop test of the supply may stand for the electrode: it is never less
    const earthElectrode =
      electrode && electrode.state !== 'unknown'
        ? sheet.given('earthElectrode', electrode)
        : sheet.given(
            'earthElectrode',
            circuit.installation.supply.externalImpedance,
            'external loop impedance in place of the electrode: never less',
          );
    const circuitProtectiveResistance = sheet.latest('circuitProtectiveResistance') ?? missing();
    path = sheet.step(electrodeAndProtective, { earthElectrode, circuitProtectiveResistance });
  }
  const residualOperatingCurrent = sheet.given('residualOperatingCurrent', device.rating);
  const touchVoltage = isTT
    ? sheet.step(residualTouchVoltage, { electrodeResistance: path, residualOperatingCurrent })
    : sheet.step(residualLoopVoltage, { loopImpedance: loop, residualOperatingCurrent });
  const touch = sheet.check(residualTouchLimit, { touchVoltage, touchVoltageLimit });

  const requiredTime = sheet.latest('requiredTime') ?? missing();
  const disconnectionTime = breakTime(
    sheet,
    device,
    circuit.nominalVoltage,
    loop,
    residualOperatingCurrent,
    requiredTime,
  );
  const time = sheet.check(residualDisconnects, { disconnectionTime, requiredTime });
  return [touch, time];
}

const worst = (results: readonly CheckResult[]): CheckResult => {
  const { failed, undetermined } = overall(results);
  return failed[0] ?? undetermined[0] ?? (results[results.length - 1] as CheckResult);
};

/**
 * The rule that an earth fault is disconnected in time, for a wiring code of the IEC family.
 * @param figures what the code says: times, voltage factor, fuses
 */
export function disconnectionRule(figures: DisconnectionFigures): Rule {
  return (circuit, findings, sheet) => {
    const system = factValue('earthing system of the supply', circuit.installation.supply.system);
    if (isMissing(system)) return [sheet.result(notDetermined(automaticDisconnection, ...system.missing))];
    if (system === 'IT')
      return [
        sheet.result(
          notDetermined(automaticDisconnection, {
            kind: 'fact',
            fact: 'second fault on an IT system',
            obtain: 'not covered: IT systems are judged by their own rules',
          }),
        ),
      ];
    const isTT = system === 'TT';
    const { loopImpedance, parts } = writeLoopImpedance(sheet, circuit, system, findings);
    const requiredTime = figures.requiredTime(sheet, circuit, system);

    const byFuse = sheet.part('Overcurrent device');
    const operatingCurrent = writeOperatingCurrent(byFuse, circuit.run.device, requiredTime, figures.fuseCurrent);
    const nominalVoltage = byFuse.given('nominalVoltage', circuit.nominalVoltage);
    const minimumVoltageFactor = byFuse.given(
      'minimumVoltageFactor',
      ratio(figures.minimumVoltageFactor[0]),
      figures.minimumVoltageFactor[1],
    );
    const loopImpedanceLimit = byFuse.step(loopImpedanceLimitOf, {
      nominalVoltage,
      minimumVoltageFactor,
      operatingCurrent,
    });
    findings.loopImpedanceLimit = loopImpedanceLimit;
    const printed = figures.printedLimit?.(sheet.part('Printed limit'), circuit, requiredTime);
    const overcurrent = byFuse.check(
      overcurrentDisconnects,
      { loopImpedance, loopImpedanceLimit },
      joined(
        betweenPrints(loopImpedance, loopImpedanceLimit, printed),
        restsOnArmour([...circuit.path.feeders, circuit.run]),
      ),
    );

    const upstream = residualUpstream(circuit.path);
    if (isTT && upstream.length > 0) sheet.gather('sum', 'protectiveResistance', 'circuitProtectiveResistance', parts);
    const residual = upstream.map((device, i) => {
      const part = sheet.part(`Residual current device ${i + 1}`);
      return worst(residualResult(part, circuit, device, isTT, loopImpedance));
    });
    const results: CheckResult[] = [sheet.check(automaticDisconnection, { results: [overcurrent, ...residual] })];
    const reliesOnResidual = overcurrent.verdict !== 'pass' && residual.some((r) => r.verdict === 'pass');
    if (isTT) results.push(stability(sheet, circuit));
    else if (overcurrent.verdict === 'not-determined' && !reliesOnResidual)
      results.push(sheet.result(notDetermined(overcurrentPreferred, ...(overcurrent.gaps ?? []))));
    else
      results.push(
        sheet.check(overcurrentPreferred, {
          holds: overcurrent.verdict === 'pass',
          because: reliesOnResidual
            ? 'Disconnection rests on a residual current device because the overcurrent device is too slow or cannot be judged.'
            : overcurrent.verdict === 'pass'
              ? 'Disconnection does not rest on a residual current device.'
              : 'The overcurrent device is too slow.',
        }),
      );
    return results;
  };
}

function stability(sheet: Sheet, circuit: CircuitCase): CheckResult {
  const electrode = circuit.installation.supply.electrode;
  if (!electrode)
    return sheet.result(
      notRequired(electrodeStable, 'not-applicable', 'No electrode of the installation is described.'),
    );
  const part = sheet.part('Earth electrode');
  const electrodeResistance = part.given('electrodeResistance', electrode.resistance);
  const electrodeStability = part.given('electrodeStability', ohms(200), 'BS 7671 411.5.3, note');
  return part.check(electrodeStable, { electrodeResistance, electrodeStability });
}

const joined = (...parts: readonly (string | undefined)[]): string | undefined => {
  const said = parts.filter((p) => p !== undefined);
  return said.length > 0 ? said.join(' ') : undefined;
};

/**
 * The named note for a value that lies between the exact and the printed limit.
 * @param value loop impedance, Ω
 * @param exact computed limit, Ω
 * @param printed printed limit, Ω
 * @returns the note, or nothing where the value lies elsewhere
 */
export function betweenPrints(
  value: Known<Ohms>,
  exact: Known<Ohms>,
  printed: Known<Ohms> | undefined,
): string | undefined {
  if (typeof value !== 'number' || typeof exact !== 'number' || typeof printed !== 'number') return undefined;
  const [low, high] = exact < printed ? [exact, printed] : [printed, exact];
  if (!(value > low && value <= high)) return undefined;
  return `Between exact and printed limit: ${value.toPrecision(4)} Ω lies between the computed ${exact.toPrecision(4)} Ω and the printed ${printed} Ω; the computed one decides.`;
}
