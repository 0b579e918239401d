import {
  type CheckResult,
  type Fact,
  factValue,
  isMissing,
  type Known,
  missing,
  notDetermined,
  notRequired,
  overall,
  type Sheet,
  whenKnown,
} from '../../core/index.js';
import type { ChargePoint, Electrode, Supply } from '../../installation/index.js';
import {
  arithmeticSum,
  heldCurrentElectrodeLimit,
  heldPowerElectrodeLimit,
  lostPenElectrodeLimit,
  lostPenFloating,
  publishedElectrodeLimit,
  residualTouchVoltage,
  vectorSum,
  windowMarginOf,
} from '../../physics/index.js';
import { type Amperes, amperes, ohms, type Ratio, ratio, volts, watts } from '../../units/index.js';
import type { LoadState } from '../wiring-code.js';
import * as c from './earthing-checks.js';
import { earthSeparations } from './tables/722-separation.js';
import { lostPenLimits } from './tables/722-touch-voltage.js';
import { lineNeutralWindow } from './tables/722-window.js';

/** What the arrangements are judged by. @inline */
export interface EarthingQuestion {
  readonly supply: Supply;
  readonly point: ChargePoint;
  /** States of load that can occur, charge points at their full setting; none declared when absent. */
  readonly loadStates?: readonly LoadState[];
  /** Why the point never runs alone, where something prevents it. */
  readonly pointNeverAlone?: string;
  /** Rated residual current of the device ahead of the point, A, for an electrode of its own: see `islandResidual`. */
  readonly residualRating?: Fact<Amperes>;
}

const SOURCE_FACTOR: readonly [Ratio, string] = [
  /* @__PURE__ */ ratio(1.1),
  'BS 7671 Annex A722, C_max: every figure stands for 1.1 U_0',
];
/** Largest smooth deviation of the supply voltage below nominal, Great Britain. */
const LOWEST_SUPPLY = 0.94;

const inOrder = (point: ChargePoint, current: Known<Amperes>, phases: 1 | 3): Known<LoadState> =>
  whenKnown([current], (i) => {
    const on = (line: string, k: number) =>
      (phases === 1 ? k === 0 : point.lines.includes(line as 'L1')) ? i : amperes(0);
    return { name: 'the point alone', currents: [on('L1', 0), on('L2', 1), on('L3', 2)] } as LoadState;
  });

const total = (s: LoadState) => s.currents[0] + s.currents[1] + s.currents[2];

function statesOf(q: EarthingQuestion, phases: 1 | 3): Known<readonly LoadState[]> {
  const declared = (q.loadStates ?? []).filter((s) => total(s) > 0);
  if (q.pointNeverAlone !== undefined && declared.length > 0) return declared;
  const alone = inOrder(q.point, factValue('setting of the charge point', q.point.setting), phases);
  // a point on all three lines that runs alone is balanced; on one line it is the worst state there is
  return whenKnown([alone], (state) => (total(state) > 0 ? [state, ...declared] : declared));
}

function takeDown(part: Sheet, state: LoadState) {
  const lineCurrent1 = part.given('lineCurrent1', state.currents[0], state.name);
  const lineCurrent2 = part.given('lineCurrent2', state.currents[1], state.name);
  const lineCurrent3 = part.given('lineCurrent3', state.currents[2], state.name);
  const lines = { lineCurrent1, lineCurrent2, lineCurrent3 };
  return { lines, arithmeticSumCurrent: part.step(arithmeticSum, lines) };
}

/** Whether a declared state has the point in it, at its full setting on every line that it uses. */
function countsPoint(state: LoadState, q: EarthingQuestion, phases: 1 | 3, setting: number): boolean {
  const lines = phases === 1 ? [0] : q.point.lines.map((line) => Number(line[1]) - 1);
  return lines.every((k) => (state.currents[k] ?? 0) >= setting);
}

function undeclared(q: EarthingQuestion, sheet: Sheet, results: CheckResult[], phases: 1 | 3): void {
  if (overall(results).verdict === 'fail') return;
  const declared = q.loadStates ?? [];
  const setting = factValue('setting of the charge point', q.point.setting);
  if (!isMissing(setting) && declared.some((state) => countsPoint(state, q, phases, setting))) return;
  results.push(
    sheet.result(
      notDetermined(c.loadStatesDeclared, {
        kind: 'fact',
        fact:
          declared.length > 0
            ? 'a state of load in which the charge point runs at its full setting'
            : 'states of load of the installation',
        obtain: 'currents of each line in every state that can occur, the charge points at full current',
      }),
    ),
  );
}

/** (i) Balanced three-phase load: the voltage of the earth after the loss of the PEN conductor, state by state. */
export function balanced(q: EarthingQuestion, sheet: Sheet, phases: Known<1 | 3>): CheckResult[] {
  const three = sheet.check(c.threePhaseInstallation, {
    holds: whenKnown([phases], (n) => n === 3),
    because: isMissing(phases)
      ? 'the number of phases is not known'
      : phases === 1
        ? 'the supply has a single phase'
        : 'the supply has three phases',
  });
  if (isMissing(phases) || phases === 1) return [three];
  const results = [three];
  const states = statesOf(q, 3);
  if (isMissing(states)) return [three, sheet.result(notDetermined(c.balancedKeepsLimit, ...states.missing))];
  const arrangement = sheet.label('arrangement', 'balanced-three-phase');
  const touchVoltageLimit = sheet.look(lostPenLimits, { arrangement });
  const parts = states.map((state) => {
    const part = sheet.part(`State of load: ${state.name}`);
    const { lines, arithmeticSumCurrent } = takeDown(part, state);
    const vectorSumCurrent = part.step(vectorSum, lines);
    const sourceFactor = part.given('sourceFactor', ...SOURCE_FACTOR);
    const nominalVoltage = part.given('nominalVoltage', q.supply.nominalVoltage);
    part.step(lostPenFloating, { sourceFactor, nominalVoltage, vectorSumCurrent, arithmeticSumCurrent });
    return part;
  });
  const touchVoltage = sheet.gather('largest', 'touchVoltage', 'touchVoltage', parts);
  results.push(sheet.check(c.balancedKeepsLimit, { touchVoltage, touchVoltageLimit }));
  undeclared(q, sheet, results, 3);
  return results;
}

function electrodeOf(electrode: Electrode | undefined, what: string) {
  return electrode
    ? electrode.resistance
    : missing({ kind: 'fact', fact: what, obtain: 'measure it, disconnected from every other earth' });
}

/** (ii) An electrode low enough to hold that voltage down. */
export function lowElectrode(q: EarthingQuestion, sheet: Sheet, phases: Known<1 | 3>): CheckResult[] {
  // on an unknown number of phases the single phase is the harder case
  const n = isMissing(phases) ? 1 : phases;
  const states = statesOf(q, n);
  if (isMissing(states)) return [sheet.result(notDetermined(c.electrodeKeepsLimit, ...states.missing))];
  const needing = n === 1 ? states : states.filter((state) => needsElectrode(q, state));
  sheet.note('Own load only. A break further upstream adds the current of the neighbours.');
  if (needing.length === 0) {
    const because = 'No state of load raises exposed metal above the limit without an electrode.';
    const results = [sheet.result(notRequired(c.electrodeKeepsLimit, 'not-applicable', because))];
    undeclared(q, sheet, results, n);
    return results;
  }
  const arrangement = sheet.label('arrangement', 'low-electrode');
  const touchVoltageLimit = sheet.look(lostPenLimits, { arrangement });
  const electrodeResistance = sheet.given(
    'electrodeResistance',
    electrodeOf(q.supply.electrode, 'electrode of the installation'),
  );
  const published = sheet.part('Load as a resistance');
  const parts: Sheet[] = [];
  for (const state of needing) {
    const part = published.part(`State of load: ${state.name}`);
    const load = n === 1 ? part.part('Load') : part;
    const { lines, arithmeticSumCurrent } = takeDown(load, state);
    const sourceFactor = part.given('sourceFactor', ...SOURCE_FACTOR);
    const nominalVoltage = part.given('nominalVoltage', q.supply.nominalVoltage);
    if (n === 1) {
      const installationCurrent = part.gather('sum', 'arithmeticSumCurrent', 'installationCurrent', [load]);
      part.step(publishedElectrodeLimit, { touchVoltageLimit, nominalVoltage, sourceFactor, installationCurrent });
    } else {
      const vectorSumCurrent = part.step(vectorSum, lines);
      const sourceElectrodeResistance = part.given(
        'sourceElectrodeResistance',
        ohms(0),
        'own load only: electrodes and load of others never improve the verdict',
      );
      part.step(lostPenElectrodeLimit, {
        touchVoltageLimit,
        sourceFactor,
        nominalVoltage,
        vectorSumCurrent,
        arithmeticSumCurrent,
        sourceElectrodeResistance,
      });
    }
    parts.push(part);
  }
  const electrodeLimit = published.gather('smallest', 'electrodeLimit', 'electrodeLimit', parts);
  const results = [published.check(c.electrodeKeepsLimit, { electrodeResistance, electrodeLimit })];
  undeclared(q, sheet, results, n);
  const setting = factValue('setting of the charge point', q.point.setting);
  const current = sheet.part('A charger that holds its current');
  const held = current.step(heldCurrentElectrodeLimit, {
    touchVoltageLimit,
    installationCurrent: current.given('installationCurrent', setting, 'the charge point alone'),
  });
  results.push(current.check(c.electrodeForHeldCurrent, { electrodeResistance, electrodeLimit: held }));
  const power = sheet.part('A charger that holds its power');
  const supplyVoltage = power.given(
    'supplyVoltage',
    volts(LOWEST_SUPPLY * q.supply.nominalVoltage),
    'lowest voltage of a supply in Great Britain, 0.94 U_0: the worst case, stated instead of c',
  );
  const heldPower = power.given(
    'heldPower',
    whenKnown([setting], (i) => watts(i * q.supply.nominalVoltage)),
    'the charge point alone at nominal voltage',
  );
  const least = power.step(heldPowerElectrodeLimit, { touchVoltageLimit, supplyVoltage, heldPower });
  results.push(power.check(c.electrodeForHeldPower, { electrodeResistance, electrodeLimit: least }));
  return results;
}

function needsElectrode(q: EarthingQuestion, state: LoadState): boolean {
  const [a, b, d] = state.currents;
  const lines = { lineCurrent1: a, lineCurrent2: b, lineCurrent3: d };
  const floating = (SOURCE_FACTOR[0] * q.supply.nominalVoltage * vectorSum(lines)) / arithmeticSum(lines);
  return floating > lostPenLimits.get({ arrangement: 'low-electrode' });
}

/** Whether the point has a device of this kind, in words. */
export const builtIn = (q: EarthingQuestion, kind: string, otherwise: string): string =>
  q.point.openPenDevice?.state === 'known' && q.point.openPenDevice.value === kind
    ? 'the charge point has such a device'
    : otherwise;

/** (iv) A device that watches line against neutral: single phase, and the supply inside its window. */
export function window(q: EarthingQuestion, sheet: Sheet, phases: Known<1 | 3>): CheckResult[] {
  const single = sheet.check(c.singlePhaseInstallation, {
    holds: whenKnown([phases], (n) => n === 1),
    because:
      phases === 3
        ? 'on three phases the reading of one line can stay inside 207 to 253 V while exposed metal is above 70 V'
        : 'the supply is to have one phase',
  });
  if (phases === 3) return [single];
  const [lower, upper] = [sheet.part('Lower end'), sheet.part('Upper end')];
  lower.look(lineNeutralWindow, { end: lower.label('end', 'lower') });
  upper.look(lineNeutralWindow, { end: upper.label('end', 'upper') });
  const windowLower = sheet.gather('smallest', 'windowLimit', 'windowLower', [lower]);
  sheet.gather('largest', 'windowLimit', 'windowUpper', [upper]);
  const minimumSupplyVoltage = sheet.given(
    'minimumSupplyVoltage',
    volts(LOWEST_SUPPLY * q.supply.nominalVoltage),
    'lowest voltage of a supply in Great Britain, 0.94 U_0',
  );
  sheet.step(windowMarginOf, { minimumSupplyVoltage, windowLower });
  const device = sheet.check(c.windowDevice, {
    holds: true,
    because: builtIn(q, 'line-neutral-window-device', 'such a device has to be fitted'),
  });
  return [single, device];
}

/** An electrode of its own: separated from everything on the earth of the supply. */
export function island(q: EarthingQuestion, sheet: Sheet): CheckResult[] {
  const { electrode, feedSeparated } = q.point;
  const separated = sheet.check(c.islandFeedSeparated, {
    holds: feedSeparated
      ? factValue('separation of the feed', feedSeparated)
      : missing({ kind: 'fact', fact: 'separation of the feed', obtain: 'how armour and cpc end at the point' }),
    because: 'armour or protective conductor that is carried through brings the earth of the supply to the island',
  });
  const distance =
    electrode?.separation ??
    missing({ kind: 'fact', fact: 'distance to metal on the earth of the supply', obtain: 'measure it on site' });
  const reach = sheet.part('Arm’s reach');
  const earthSeparation = reach.given('earthSeparation', distance);
  const requiredSeparation = reach.look(earthSeparations, { place: reach.label('place', 'arms-reach') });
  const buried = sheet.part('Buried metal');
  const buriedSeparation = buried.given('earthSeparation', distance);
  const buriedRequired = buried.look(earthSeparations, { place: buried.label('place', 'buried') });
  const touch = sheet.part('Electrode and residual current device');
  const resistance = touch.given('electrodeResistance', electrodeOf(electrode, 'electrode of the charge point'));
  const rating = touch.given(
    'residualOperatingCurrent',
    q.residualRating ?? missing({ kind: 'fact', fact: 'residual current device ahead of the charge point' }),
  );
  const touchVoltage = touch.step(residualTouchVoltage, {
    electrodeResistance: resistance,
    residualOperatingCurrent: rating,
  });
  const touchVoltageLimit = touch.given('touchVoltageLimit', volts(50), 'BS 7671 411.5.3');
  const electrodeLimit = touch.given('electrodeLimit', ohms(200), 'BS 7671 Table 41.5, note');
  return [
    separated,
    reach.check(c.islandOutOfReach, { earthSeparation, requiredSeparation }),
    touch.check(c.islandTouchLimit, { touchVoltage, touchVoltageLimit }),
    buried.check(c.islandElectrodesApart, {
      earthSeparation: buriedSeparation,
      requiredSeparation: buriedRequired,
    }),
    touch.check(c.islandElectrodeStable, { electrodeResistance: resistance, electrodeLimit }),
  ];
}

/** An isolating transformer for one vehicle. */
export function separation(q: EarthingQuestion, sheet: Sheet): CheckResult[] {
  const n = q.point.vehiclesSeparated;
  return [
    sheet.check(c.oneVehicleSeparated, {
      holds: n
        ? whenKnown([factValue('vehicles on the transformer', n)], (k) => k === 1)
        : missing({ kind: 'fact', fact: 'vehicles on the isolating transformer', obtain: 'one transformer a vehicle' }),
      because: 'a second vehicle on the transformer joins two vehicle bodies',
    }),
  ];
}
