import {
  adjusted,
  anyOf,
  by,
  choose,
  chosen,
  compare,
  derive,
  each,
  holds,
  type Judgement,
  judged,
  largest,
  none,
  open,
  orElse,
  same,
  set,
  smallest,
  unlessFailed,
  weigh,
  when,
} from '../../../calculation/index.js';
import {
  type CheckResult,
  type Fact,
  isMissing,
  type Known,
  missing,
  overall,
  type Statement,
  unknown,
} from '../../../core/index.js';
import type { Path, ResidualDevice } from '../../../installation/index.js';
import {
  arithmeticSum,
  heldCurrentElectrodeLimit,
  heldPowerElectrodeLimit,
  heldPowerOf,
  lostPenElectrodeLimit,
  lostPenFloating,
  publishedElectrodeLimit,
  residualTouchVoltage,
  vectorSum,
  windowMarginOf,
} from '../../../physics/index.js';
import { type Amperes, amperes, ohms, ratio, volts } from '../../../units/index.js';
import { declaredStates, ofCircuit, ofLoadState, ofPoint } from '../../iec-family/places.js';
import { residualUpstream } from '../../iec-family/residual-position.js';
import * as c from '../earthing-checks.js';
import { earthSeparations } from '../tables/722-separation.js';
import { lostPenLimits } from '../tables/722-touch-voltage.js';
import { lineNeutralWindow } from '../tables/722-window.js';

const barredPlaces = {
  'caravan-park': 'a caravan park',
  marina: 'a marina',
  'construction-site': 'a construction site',
  'filling-station': 'a filling station',
  none: '',
} as const;

/**
 * Rated residual current that protects a charge point on an electrode of its own: the smallest of the undelayed devices
 * ahead of the point. One inside it leaves the terminals ahead of it, in the same metal, on the electrode with no protection.
 */
function residualAhead(path: Path): Fact<Amperes> {
  const along = (path.run.residual ?? []).filter((r) => r.position === 'along-circuit');
  const ahead = [...residualUpstream(path), ...along];
  if (ahead.length === 0)
    return unknown('a residual current device ahead of the point; one inside it does not protect its terminals');
  const prompt = ahead.filter((r) => r.delayTime === undefined);
  if (prompt.length === 0) return unknown('a device without a set delay: 0.2 s is allowed on TT');
  const size = (r: ResidualDevice) => (r.rating.state === 'known' ? r.rating.value : Number.POSITIVE_INFINITY);
  const best = prompt.reduce((least, r) => (size(r) < size(least) ? r : least));
  // one whose rating is not known may be the smallest
  const open = prompt.find((r) => r.rating.state !== 'known');
  return open && size(best) > 0.03 ? open.rating : best.rating;
}

/** Current of a line: as declared; of the point alone its setting on the lines that it is on, a single phase being one. */
const lineCurrent = (k: 0 | 1 | 2) =>
  choose(
    ofLoadState(({ declared }) => (declared ? 'declared' : 'alone') as 'declared' | 'alone'),
    {
      declared: ofLoadState(({ declared }) => declared?.currents[k] as Amperes, { by: 'declared state of load' }),
      alone: choose('loadPhases', {
        1: k === 0 ? same('chargeCurrent') : set(amperes(0)),
        3: when(
          ofLoadState(({ point }) => point.lines.includes((['L1', 'L2', 'L3'] as const)[k])),
          same('chargeCurrent'),
          set(amperes(0)),
        ),
      }),
    },
  );

/** Why the declared states of load do not do, where no state fails already. */
const statesDeclared = () =>
  chosen('loadStatesLack', {
    nothing: [],
    states: [holds(c.loadStatesDeclared, stateAskedFor('states of load of the installation'), set(''))],
    point: [
      holds(
        c.loadStatesDeclared,
        stateAskedFor('a state of load in which the charge point runs at its full setting'),
        set(''),
      ),
    ],
  });
const stateAskedFor = (fact: string) =>
  open({
    kind: 'fact',
    fact,
    obtain: 'currents of each line in every state that can occur, the charge points at full current',
  });

/** An arrangement that leaves the point on the earth of the supply, which is barred in some places. */
const onSupplyEarth = <const J extends readonly Judgement[]>(checks: J) =>
  chosen('combinedEarthAllowed', {
    true: checks,
    false: [holds(c.combinedEarthAllowed, set(false), 'combinedEarthBarred')],
  });

/** A device that could be fitted, or is. */
const canBeFitted = (check: Statement, kind: string, otherwise: string) =>
  holds(
    check,
    set(true),
    weigh(['openPenDevice'], ({ openPenDevice }) =>
      openPenDevice === kind ? 'the charge point has such a device' : otherwise,
    ),
  );
/** A device that has to be there. */
const isFitted = (check: Statement, kind: string) =>
  holds(
    check,
    derive(['openPenDevice'], ({ openPenDevice }) => openPenDevice === kind),
    weigh(['openPenDevice'], ({ openPenDevice }) =>
      isMissing(openPenDevice) ? 'not known' : `device found: ${openPenDevice.replaceAll('-', ' ')}`,
    ),
  );
const windowOnOnePhase = <const J extends Judgement>(device: J) =>
  unlessFailed(
    [
      holds(
        c.singlePhaseInstallation,
        derive(['supplyPhases'], ({ supplyPhases }) => supplyPhases === 1),
        weigh(['supplyPhases'], ({ supplyPhases }) =>
          supplyPhases === 3
            ? 'on three phases the reading of one line can stay inside 207 to 253 V while exposed metal is above 70 V'
            : 'the supply is to have one phase',
        ),
      ),
    ],
    [device],
  );

/** The arrangements of which a charge point outdoors on a PME supply has to have one, as each could be made. BS 7671 722.411.4.1. */
const arrangements = () => ({
  'balanced-three-phase': [
    onSupplyEarth([
      holds(
        c.threePhaseInstallation,
        derive(['supplyPhases'], ({ supplyPhases }) => supplyPhases === 3),
        weigh(['supplyPhases'], ({ supplyPhases }) =>
          supplyPhases === 1 ? 'the supply has a single phase' : 'the supply has three phases',
        ),
      ),
      chosen('supplyPhases', {
        1: [],
        3: [
          unlessFailed(
            [
              compare(c.balancedKeepsLimit, {
                as: {
                  touchVoltageLimit: by(lostPenLimits, '722.411.4.1 (i)', { earthing: set('balanced-three-phase') }),
                },
              }),
            ],
            [statesDeclared()],
          ),
        ],
      }),
    ]),
  ],
  'low-electrode': [
    onSupplyEarth([
      unlessFailed([compare(c.electrodeKeepsLimit, { applies: 'electrodeNeeded' })], [statesDeclared()]),
      chosen('electrodeNeeded', {
        true: [
          compare(c.electrodeForHeldCurrent, {
            as: { electrodeLimit: by(heldCurrentElectrodeLimit, undefined, { installationCurrent: 'chargeCurrent' }) },
          }),
          compare(c.electrodeForHeldPower, {
            as: {
              electrodeLimit: by(heldPowerElectrodeLimit, undefined, {
                supplyVoltage: 'minimumSupplyVoltage',
                heldPower: by(heldPowerOf),
              }),
            },
          }),
        ],
      }),
    ]),
  ],
  'touch-voltage-device': [
    onSupplyEarth([
      canBeFitted(
        c.touchVoltageDevice,
        'touch-voltage-device',
        'such a device has to be fitted, with a reference of its own to true earth or to three lines',
      ),
    ]),
  ],
  'line-neutral-window-device': [
    onSupplyEarth([
      windowOnOnePhase(canBeFitted(c.windowDevice, 'line-neutral-window-device', 'such a device has to be fitted')),
    ]),
  ],
  'equal-device': [
    onSupplyEarth([
      canBeFitted(c.equalDevice, 'equal-device', 'such a device has to be fitted, its maker showing equal safety'),
    ]),
  ],
  'tt-island': [
    holds(
      c.islandFeedSeparated,
      'feedSeparated',
      set('armour or protective conductor that is carried through brings the earth of the supply to the island'),
    ),
    compare(c.islandOutOfReach, {
      as: { requiredSeparation: by(earthSeparations, '417.3', { place: set('arms-reach') }) },
    }),
    compare(c.islandTouchLimit, {
      as: {
        touchVoltage: by(residualTouchVoltage, '411.5.3', {
          electrodeResistance: 'pointElectrodeResistance',
          residualOperatingCurrent: ofPoint(({ circuit }) => residualAhead(circuit.path)),
        }),
        touchVoltageLimit: set(volts(50), 'BS 7671 411.5.3'),
      },
    }),
    compare(c.islandElectrodesApart, {
      as: { requiredSeparation: by(earthSeparations, undefined, { place: set('buried') }) },
    }),
    compare(c.islandElectrodeStable, {
      as: {
        electrodeResistance: 'pointElectrodeResistance',
        electrodeLimit: set(ohms(200), 'BS 7671 Table 41.5, note'),
      },
    }),
  ],
  'electrical-separation': [
    holds(
      c.oneVehicleSeparated,
      derive(['vehiclesSeparated'], ({ vehiclesSeparated }) => vehiclesSeparated === 1),
      set('a second vehicle on the transformer joins two vehicle bodies'),
    ),
  ],
});

/** The same as they are judged when one is chosen: a device is then judged by what is fitted. */
const asChosen = () => ({
  ...arrangements(),
  'touch-voltage-device': [onSupplyEarth([isFitted(c.touchVoltageDevice, 'touch-voltage-device')])],
  'line-neutral-window-device': [
    onSupplyEarth([windowOnOnePhase(isFitted(c.windowDevice, 'line-neutral-window-device'))]),
  ],
  'equal-device': [onSupplyEarth([isFitted(c.equalDevice, 'equal-device')])],
});

/** A failure that rests on a fact that is not known is no failure yet. */
function noFailureYet(
  result: CheckResult,
  facts: { readonly outdoors: Known<boolean>; readonly system: Known<string> },
): CheckResult {
  const gaps = [facts.outdoors, facts.system].flatMap((f) => (isMissing(f) ? f.missing : []));
  if (result.verdict !== 'fail' || gaps.length === 0) return result;
  const { value: _value, limit: _limit, margin: _margin, ...rest } = result;
  return { ...rest, verdict: 'not-determined', gaps };
}

/** Whether the clause asks for an arrangement. */
const needed = () => weigh(['arrangementNeeded'], ({ arrangementNeeded }) => arrangementNeeded === true);

/** Earthing of charge points outdoors on a PME supply. BS 7671 722.411.4.1, Annex A722. */
export const chargePointEarthing = () => ({
  circuit: {
    feedsChargePoint: ofCircuit((circuit) => circuit.feedsChargePoint),
    supplyPhases: ofCircuit((circuit) => circuit.installation.supply.phases, { called: 'phases of the supply' }),
    // on an unknown number of phases the single phase is the harder case
    loadPhases: orElse('supplyPhases', set(1)),
    combinedEarthAllowed: ofCircuit((circuit) => (circuit.installation.supply.specialLocation ?? 'none') === 'none'),
    combinedEarthBarred: ofCircuit(
      (circuit) =>
        `the earth of a PME supply is barred in ${barredPlaces[circuit.installation.supply.specialLocation ?? 'none']}, whatever device is added`,
    ),
    electrodeResistance: ofCircuit(
      (circuit) =>
        circuit.installation.supply.electrode?.resistance ??
        missing({
          kind: 'fact',
          fact: 'electrode of the installation',
          obtain: 'measure it, disconnected from every other earth',
        }),
    ),
    sourceFactor: set(ratio(1.1), 'Annex A722, C_max: every figure stands for 1.1 U_0'),
    minimumSupplyVoltage: by(c.lowestSupplyVoltage),
    windowLower: by(lineNeutralWindow, '722.411.4.1 (iv)', { end: set('lower') }),
    windowMargin: by(windowMarginOf),
    totalDrop: ofCircuit(
      (circuit) =>
        circuit.findings.totalDrop ?? missing({ kind: 'fact', fact: 'totalDrop', obtain: 'from the voltage drop' }),
    ),
  },
  points: {
    outdoors: ofPoint(({ point }) => point.outdoors, { called: 'whether a vehicle can be charged outdoors' }),
    arrangementNeeded: weigh(['outdoors', 'system'], ({ outdoors, system }): Known<true | string> => {
      if (outdoors === false) return 'No vehicle can be charged outdoors.';
      switch (system) {
        case 'TT':
          return 'The supply is TT: there is no PEN conductor to lose.';
        case 'TN-S':
          return 'The supply is stated to be TN-S. Cables are repaired with combined conductors: have the distributor confirm it.';
        case 'IT':
          return missing({
            kind: 'fact',
            fact: 'earthing arrangement on an IT supply',
            obtain: 'the clause speaks of PME only; have it designed',
          });
        default:
          return true; // a supply that is not known is taken for PME
      }
    }),
    chargeCurrent: ofPoint(({ point }) => point.setting, { called: 'setting of the charge point' }),
    pointLines: ofPoint(({ point }) => point.lines),

    // (i), (ii): exposed metal with the PEN conductor lost, state of load by state of load
    declaredCurrents: ofPoint((place) => declaredStates(place).map(({ currents }) => currents)),
    touchVoltage: largest('loadStates/touchVoltage'),
    touchVoltageLimit: by(lostPenLimits, '722.411.4.1 (ii)', { earthing: set('low-electrode') }),
    electrodeNeeded: derive(
      ['touchVoltage', 'touchVoltageLimit'],
      ({ touchVoltage, touchVoltageLimit }): true | string =>
        touchVoltage > touchVoltageLimit ||
        'No state of load raises exposed metal above the limit without an electrode.',
      { direction: { touchVoltage: 1 } },
    ),
    electrodeLimit: smallest('loadStates/electrodeLimit'),
    // a setting that is not known is counted in no state
    pointDeclared: orElse(
      derive(
        ['chargeCurrent', 'loadPhases', 'pointLines', 'declaredCurrents'],
        ({ chargeCurrent, loadPhases, pointLines, declaredCurrents }) => {
          const lines = loadPhases === 1 ? (['L1'] as const) : pointLines;
          return declaredCurrents.some((i) =>
            lines.every((line) => (i[Number(line[1]) - 1] as number) >= chargeCurrent),
          );
        },
        { direction: { chargeCurrent: -1 } },
      ),
      set(false),
    ),
    loadStatesLack: derive(
      ['touchVoltage', 'pointDeclared', 'declaredCurrents'],
      ({ pointDeclared, declaredCurrents }) =>
        pointDeclared ? 'nothing' : declaredCurrents.length === 0 ? 'states' : 'point',
      { direction: { touchVoltage: 1 } },
    ),

    // (iii) to (v): the device of the point
    openPenDevice: ofPoint(({ point }) => point.openPenDevice ?? unknown('the charge point’s instructions'), {
      called: 'device against a lost PEN conductor',
    }),

    // an electrode of its own, or an isolating transformer
    pointElectrodeResistance: ofPoint(
      ({ point }) => point.electrode?.resistance ?? unknown('measure it, disconnected from every other earth'),
      { called: 'electrode of the charge point' },
    ),
    earthSeparation: ofPoint(({ point }) => point.electrode?.separation ?? unknown('measure it on site'), {
      called: 'distance to metal on the earth of the supply',
    }),
    feedSeparated: ofPoint(({ point }) => point.feedSeparated ?? unknown('how armour and cpc end at the point'), {
      called: 'separation of the feed',
    }),
    vehiclesSeparated: ofPoint(({ point }) => point.vehiclesSeparated ?? unknown('one transformer a vehicle'), {
      called: 'vehicles on the isolating transformer',
    }),

    // of all of them the one that is chosen
    statedEarthing: ofPoint(({ point }) => point.earthing ?? 'none'),
    earthingChosen: weigh(['statedEarthing', 'openPenDevice'], ({ statedEarthing: stated, openPenDevice: built }) =>
      stated !== 'none' ? stated : isMissing(built) ? 'none' : built,
    ),
    earthingOffers: judged(arrangements()),
    earthingRemaining: derive(['earthingOffers'], ({ earthingOffers }) =>
      Object.keys(earthingOffers).filter((a) => overall(earthingOffers[a] ?? []).verdict !== 'fail'),
    ),
    earthingJudged: when(
      needed(),
      derive(['earthingChosen', 'earthingRemaining'], ({ earthingChosen, earthingRemaining }) =>
        earthingChosen === 'supply-earth' || earthingRemaining.length === 0 ? 'none' : earthingChosen,
      ),
      set('none'),
    ),
    arrangementChosen: when(
      needed(),
      derive(
        ['earthingChosen', 'earthingRemaining'],
        ({ earthingChosen, earthingRemaining }): Known<true | string> =>
          earthingChosen === 'supply-earth' || earthingRemaining.length === 0
            ? true
            : missing({
                kind: 'fact',
                fact: 'earthing arrangement of the charge point',
                obtain: `choose one; remaining: ${earthingRemaining.join(', ')}`,
              }),
      ),
      same('arrangementNeeded'),
    ),
  },
  loadStates: {
    lineCurrent1: lineCurrent(0),
    lineCurrent2: lineCurrent(1),
    lineCurrent3: lineCurrent(2),
    arithmeticSumCurrent: by(arithmeticSum),
    vectorSumCurrent: choose('loadPhases', { 1: same('arithmeticSumCurrent'), 3: by(vectorSum, 'Annex A722') }),
    touchVoltage: by(lostPenFloating),
    stateNeedsElectrode: derive(
      ['touchVoltage', 'touchVoltageLimit'],
      ({ touchVoltage, touchVoltageLimit }) => touchVoltage > touchVoltageLimit,
      { direction: { touchVoltage: 1 } },
    ),
    electrodeLimit: when(
      'stateNeedsElectrode',
      choose('loadPhases', {
        1: by(publishedElectrodeLimit, 'Annex A722', { installationCurrent: 'arithmeticSumCurrent' }),
        3: by(lostPenElectrodeLimit, '722.411.4.1 (ii)', {
          sourceElectrodeResistance: set(
            ohms(0),
            'own load only: electrodes and load of others never improve the verdict, a break further upstream adds the current of the neighbours',
          ),
        }),
      }),
      none('exposed metal stays within the limit without an electrode'),
    ),
  },
  checks: [
    chosen('feedsChargePoint', {
      false: [anyOf(c.chargePointEarthed, [], { applies: set('The circuit feeds no charge point.') })],
      true: [
        each('points', [
          adjusted(
            chosen('earthingJudged', {
              ...asChosen(),
              none: [
                anyOf(c.chargePointEarthed, [], {
                  applies: 'arrangementChosen',
                  because: derive(['earthingChosen', 'earthingRemaining'], ({ earthingChosen, earthingRemaining }) =>
                    earthingChosen === 'supply-earth'
                      ? `the earth of the supply alone is not permitted; remaining: ${earthingRemaining.join(', ') || 'none'}`
                      : 'no arrangement remains',
                  ),
                }),
              ],
            }),
            ['outdoors', 'system'],
            noFailureYet,
          ),
          chosen('earthingChosen', { 'line-neutral-window-device': [compare(c.windowLeavesDrop)] }),
        ]),
      ],
    }),
  ],
});
