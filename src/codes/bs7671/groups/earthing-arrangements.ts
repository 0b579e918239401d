import {
  adjusted,
  anyOf,
  by,
  chosen,
  compare,
  derive,
  each,
  holds,
  type Judgement,
  judged,
  type Line,
  open,
  set,
  unlessFailed,
  weigh,
} from '../../../calculation/index.js';
import { type CheckResult, type Fact, isMissing, type Known, type Statement, unknown } from '../../../core/index.js';
import type { Path, ResidualDevice } from '../../../installation/index.js';
import { earthingWords } from '../../../installation/marking.js';
import {
  heldCurrentElectrodeLimit,
  heldPowerElectrodeLimit,
  heldPowerOf,
  residualTouchVoltage,
} from '../../../physics/definitions.js';
import { type Amperes, ohms, volts } from '../../../units/index.js';
import { ofPoint, residualAlong } from '../../iec-family/places.js';
import { isSetToNone, residualUpstream } from '../../iec-family/residual-position.js';
import * as c from '../earthing-checks.js';
import { earthSeparations } from '../tables/722-separation.js';
import { openPenLimits } from '../tables/722-touch-voltage.js';

/** An arrangement: its checks as it could be made, and as they are where it is the one that is chosen. */
export interface Arrangement<
  A extends readonly Judgement[] = readonly Judgement[],
  B extends readonly Judgement[] = A,
> {
  readonly offered: A;
  readonly chosen: B;
}
const either = <const J extends readonly Judgement[]>(checks: J): Arrangement<J> => ({
  offered: checks,
  chosen: checks,
});

/** An arrangement that leaves the point on the earth of the supply, which is barred in some places. */
const onSupplyEarth = <const J extends readonly Judgement[]>(checks: J) =>
  [
    chosen('combinedEarthAllowed', {
      true: checks,
      false: [holds(c.combinedEarthAllowed, set(false), 'combinedEarthBarred')],
    }),
  ] as const;

/** A device, which could be fitted, and which has to be there where it is the one that is chosen. */
const device = <const J extends readonly Judgement[]>(
  check: Statement,
  kind: string,
  otherwise: string,
  around: (device: Judgement<'openPenDevice' | 'openPenEqualSafety'>) => J,
  fitted: Line<'openPenDevice' | 'openPenEqualSafety', boolean> = derive(
    ['openPenDevice'],
    ({ openPenDevice }) => openPenDevice === kind,
  ),
) => ({
  offered: onSupplyEarth(
    around(
      holds(
        check,
        set(true),
        weigh(['openPenDevice'], ({ openPenDevice }) =>
          openPenDevice === kind ? 'the charge point has such a device' : otherwise,
        ),
      ),
    ),
  ),
  chosen: onSupplyEarth(
    around(
      holds(
        check,
        fitted,
        weigh(['openPenDevice'], ({ openPenDevice }) =>
          isMissing(openPenDevice)
            ? 'not known'
            : openPenDevice === 'none'
              ? 'the charge point has no open-PEN detection'
              : `found: ${earthingWords[openPenDevice]}`,
        ),
      ),
    ),
  ),
});

const stateAskedFor = (fact: string) =>
  open({
    kind: 'fact',
    fact,
    obtain: 'currents of each line in every state that can occur, the charge points at full current',
  });
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

/** (i) Balanced three-phase load: the voltage of the earth after the loss of the PEN conductor, state by state. */
export const balancedThreePhase = () =>
  either(
    onSupplyEarth([
      holds(
        c.threePhaseInstallation,
        weigh(['supplyPhases', 'otherLoads'], ({ supplyPhases, otherLoads }) => {
          if (supplyPhases === 1 || otherLoads === false) return false;
          return isMissing(supplyPhases) ? supplyPhases : otherLoads;
        }),
        weigh(['supplyPhases', 'otherLoads'], ({ supplyPhases, otherLoads }) => {
          if (supplyPhases === 1) return 'the supply has a single phase';
          return otherLoads === false
            ? 'nothing but charge points is fed: there is no other load to balance'
            : 'the supply has three phases, and feeds other loads';
        }),
      ),
      chosen('supplyPhases', {
        1: [],
        3: [
          unlessFailed(
            [
              compare(c.balancedKeepsLimit, {
                as: {
                  touchVoltageLimit: by(openPenLimits, '722.411.4.1 (i)', { earthing: set('balanced-three-phase') }),
                },
              }),
            ],
            [statesDeclared()],
          ),
        ],
      }),
    ]),
  );

/** (ii) An electrode low enough to hold that voltage down. */
export const lowElectrode = () =>
  either(
    onSupplyEarth([
      unlessFailed([compare(c.electrodeKeepsLimit, { applies: 'electrodeNeeded' })], [statesDeclared()]),
      holds(
        c.electrodeThere,
        derive(['electrodeResistance'], () => true),
        set('its resistance is measured'),
        {
          applies: derive(['electrodeNeeded'], ({ electrodeNeeded }) =>
            electrodeNeeded === true ? 'The electrode is judged by its resistance.' : true,
          ),
        },
      ),
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
  );

/** (iii) Open-PEN detection that measures the voltage of exposed metal to earth. */
export const openPenDetectionTouchVoltage = () =>
  device(
    c.openPenDetectionTouchVoltage,
    'open-pen-detection-touch-voltage',
    'such a device has to be fitted, with a reference of its own to true earth or to three lines',
    (fitted) => [fitted],
  );

const onePhase = () => derive(['supplyPhases'], ({ supplyPhases }) => supplyPhases === 1);
const blindOnThree = 'the reading of one line can stay inside 207 to 253 V while exposed metal is above 70 V';

/** (iv) A device that watches line against neutral, on a single phase. */
export const openPenDetectionWindowOnOnePhase = () =>
  device(c.openPenDetectionWindow, 'open-pen-detection-window', 'such a device has to be fitted', (fitted) => [
    unlessFailed(
      [
        holds(
          c.singlePhaseInstallation,
          onePhase(),
          weigh(['supplyPhases'], ({ supplyPhases }) =>
            supplyPhases === 3 ? `on three phases ${blindOnThree}` : 'the supply is to have one phase',
          ),
        ),
      ],
      [fitted],
    ),
  ]);

/** (iv) The same on any supply; on three phases it does not see every open PEN conductor. */
export const openPenDetectionWindow = () =>
  device(c.openPenDetectionWindow, 'open-pen-detection-window', 'such a device has to be fitted', (fitted) => [
    fitted,
    chosen(
      weigh(['supplyPhases'], ({ supplyPhases }) => supplyPhases === 1),
      {
        true: [],
        false: [
          holds(
            c.windowSeesOpenPen,
            onePhase(),
            set(`${blindOnThree}: a device that measures the voltage to earth, or against three lines, is better`),
          ),
        ],
      },
    ),
  ]);

/** (v) Open-PEN detection of another kind, of equal safety. */
export const openPenDetectionOther = () =>
  device(
    c.openPenDetectionOther,
    'open-pen-detection-other',
    'such a device has to be fitted, its maker showing equal safety',
    (fitted) => [fitted],
    weigh(['openPenDevice', 'openPenEqualSafety'], ({ openPenDevice, openPenEqualSafety }) => {
      if (isMissing(openPenDevice)) return openPenDevice;
      return openPenDevice === 'open-pen-detection-other' && openPenEqualSafety;
    }),
  );

/** TT earthing for the charge point: separated from everything on the earth of the supply. */
export const electrodeOfItsOwn = () =>
  either([
    holds(
      c.ttFeedSeparated,
      'feedSeparated',
      set('armour or protective conductor that is carried through brings the earth of the supply to the charge point'),
    ),
    compare(c.ttOutOfReach, {
      as: { requiredSeparation: by(earthSeparations, '417.3', { place: set('arms-reach') }) },
    }),
    compare(c.ttTouchLimit, {
      as: {
        touchVoltage: by(residualTouchVoltage, '411.5.3', {
          electrodeResistance: 'pointElectrodeResistance',
          residualOperatingCurrent: ofPoint(({ circuit }) => residualAhead(circuit.path)),
        }),
        touchVoltageLimit: set(volts(50), 'BS 7671 411.5.3'),
      },
    }),
    compare(c.ttElectrodesApart, {
      as: { requiredSeparation: by(earthSeparations, undefined, { place: set('buried') }) },
    }),
    compare(c.ttElectrodeStable, {
      as: {
        electrodeResistance: 'pointElectrodeResistance',
        electrodeLimit: set(ohms(200), 'BS 7671 Table 41.5, note'),
      },
    }),
  ]);

/** An isolating transformer for one vehicle. */
export const separationForOneVehicle = () =>
  either([
    holds(
      c.oneVehicleSeparated,
      derive(['vehiclesSeparated'], ({ vehiclesSeparated }) => vehiclesSeparated === 1),
      set('a second vehicle on the transformer joins two vehicle bodies'),
    ),
  ]);

/**
 * Rated residual current that protects a charge point on an electrode of its own: the smallest of the undelayed devices
 * ahead of the point. One inside it leaves the terminals ahead of it, in the same metal, on the electrode with no protection.
 */
function residualAhead(path: Path): Fact<Amperes> {
  const ahead = [...residualUpstream(path), ...residualAlong(path.run)];
  if (ahead.length === 0)
    return unknown('a residual current device ahead of the point; one inside it does not protect its terminals');
  const prompt = ahead.filter(isSetToNone);
  if (prompt.length === 0) return unknown('a device without a set delay: 0.2 s is allowed on TT');
  const size = (r: ResidualDevice) => (r.rating.state === 'known' ? r.rating.value : Number.POSITIVE_INFINITY);
  const best = prompt.reduce((least, r) => (size(r) < size(least) ? r : least));
  // one whose rating is not known may be the smallest
  const open = prompt.find((r) => r.rating.state !== 'known');
  return open && size(best) > 0.03 ? open.rating : best.rating;
}

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

/** What the arrangements of an edition give: every one of them judged, and the checks of the one that is chosen. */
export const earthedBy = <
  const A extends Readonly<Record<string, Arrangement<readonly Judgement[], readonly Judgement[]>>>,
>(
  arrangements: A,
) => {
  type Checks<W extends 'offered' | 'chosen'> = { readonly [K in keyof A]: A[K][W] };
  const checksOf = <W extends 'offered' | 'chosen'>(way: W) =>
    Object.fromEntries(Object.entries(arrangements).map(([name, a]) => [name, a[way]])) as unknown as Checks<W>;
  return {
    points: { earthingOffers: judged(checksOf('offered')) },
    checks: [
      chosen('feedsChargePoint', {
        false: [anyOf(c.chargePointEarthed, [], { applies: set('The circuit feeds no charge point.') })],
        true: [
          chosen('placeCovered', {
            false: [holds(c.placeCovered, set(false), set('no rules are entered for the place'))],
            true: [],
          }),
          each('points', [
            adjusted(
              chosen('earthingJudged', {
                ...checksOf('chosen'),
                none: [anyOf(c.chargePointEarthed, [], { applies: 'arrangementChosen', because: 'notEarthed' })],
              }),
              ['outdoors', 'system'],
              noFailureYet,
            ),
            chosen('earthingChosen', { 'open-pen-detection-window': [compare(c.windowLeavesDrop)] }),
          ]),
        ],
      }),
    ],
  } as const;
};
