import {
  adjusted,
  anyOf,
  by,
  choose,
  chosen,
  compare,
  derive,
  largest,
  open,
  set,
  weigh,
  when,
} from '../../../calculation/index.js';
import { type CheckResult, type Gap, judge, type Known, missing, notDetermined } from '../../../core/index.js';
import { byCable, feedsNothing, type Run } from '../../../installation/index.js';
import { loopImpedanceLimitOf } from '../../../physics/index.js';
import { ohms, ratio, volts } from '../../../units/index.js';
import { armourFromMemory } from '../../iec-family/conductor-constants.js';
import { faultLoop } from '../../iec-family/fault-loop.js';
import { operatingCurrent } from '../../iec-family/operating-current.js';
import { ofCircuit } from '../../iec-family/places.js';
import { residualDevicesDisconnect, residualUpstream } from '../../iec-family/residual-disconnection.js';
import {
  automaticDisconnection,
  betweenPrints,
  electrodeStable,
  overcurrentDisconnects,
  overcurrentPreferred,
  residualDisconnects,
  residualTouchLimit,
} from '../disconnection-checks.js';
import { table411 } from '../tables/41-1.js';
import { table413 } from '../tables/41-3.js';
import { distributionTimes } from '../tables/411-3-2.js';
import { fuses } from './fuses.js';

const secondFault: Gap = {
  kind: 'fact',
  fact: 'second fault on an IT system',
  obtain: 'not covered: IT systems are judged by their own rules',
};

const noPrint: Gap = { kind: 'fact', fact: 'printed limit of the loop impedance' };

const cookerAsked: Gap = {
  kind: 'fact',
  fact: 'whether the circuit has socket-outlets of up to 32 A',
  obtain: 'see whether the cooker unit has a socket-outlet',
};

/** What a run serves; of a run that feeds a board and an outlet of its own as well, the outlet. */
function servesOf(run: Run) {
  const { feeds } = run;
  if (feeds.length === 0) return missing(feedsNothing(run));
  const outlets = feeds.filter((o) => o.kind !== 'board');
  if (outlets.length === 0) return 'boards';
  // a charge point counts as a socket-outlet
  const sockets = outlets.some(
    (o) => o.kind === 'charge-point' || o.purpose === 'socket-outlets' || o.withSocket === true,
  );
  if (sockets) return 'socket-outlets';
  const cooker = outlets.some((o) => o.kind === 'load' && o.purpose === 'cooking' && o.withSocket === undefined);
  return cooker ? 'a cooker unit' : 'fixed equipment';
}

/** What is said of a loop impedance beside its verdict. */
const loopBecause = () =>
  weigh(
    ['loopImpedance', 'loopImpedanceLimit', 'printedImpedanceLimit', 'recalledArmour'],
    ({ loopImpedance, loopImpedanceLimit, printedImpedanceLimit, recalledArmour }) =>
      [
        betweenPrints(loopImpedance, loopImpedanceLimit, printedImpedanceLimit),
        recalledArmour === true
          ? 'Rests on resistances of steel wire armour from memory (grade C), accepted by option.'
          : undefined,
      ]
        .filter((said) => said !== undefined)
        .join(' ') || undefined,
  );

/** Beside the verdict on TN: a warning where a residual current device has to do what the overcurrent device cannot. */
function withPreference(result: CheckResult, { earthing }: { readonly earthing: unknown }): readonly CheckResult[] {
  const [overcurrent, ...residual] = result.alternatives ?? [];
  if (earthing !== 'TN' || !overcurrent) return [result];
  const passes = overcurrent.verdict === 'pass';
  const relies = !passes && residual.some((r) => r.verdict === 'pass');
  // what cannot be judged may do, for some values of a range or for all
  if (overcurrent.verdict === 'not-determined')
    return [result, notDetermined(overcurrentPreferred, ...(overcurrent.gaps ?? []))];
  const because = relies
    ? 'Disconnection rests on a residual current device because the overcurrent device is too slow.'
    : passes
      ? 'Disconnection does not rest on a residual current device.'
      : 'The overcurrent device is too slow.';
  return [result, judge(overcurrentPreferred, { holds: passes, because })];
}

/** Automatic disconnection of supply. BS 7671 Chapter 41. */
export const disconnection = () => ({
  circuit: {
    earthing: derive(['system'], ({ system }) =>
      system === 'IT' ? missing(secondFault) : system === 'TT' ? 'TT' : 'TN',
    ),
    ...faultLoop({
      loopClause: '411.4.4',
      networkEarth: set(ohms(21), 'customary largest value of the network, ENA ER P23/1'),
    }),
    // required time
    circuitServes: ofCircuit((c) => servesOf(c.run)),
    inTable411: choose('circuitServes', {
      boards: set(false),
      'socket-outlets': derive(['deviceRating'], (v) => v.deviceRating <= 63, { direction: { deviceRating: 1 } }),
      // whether it has a socket-outlet decides between 32 A and 63 A
      'a cooker unit': derive(
        ['deviceRating'],
        ({ deviceRating }): Known<boolean> =>
          deviceRating > 32 && deviceRating <= 63 ? missing(cookerAsked) : deviceRating <= 32,
      ),
      'fixed equipment': derive(['deviceRating'], (v) => v.deviceRating <= 32, { direction: { deviceRating: 1 } }),
    }),
    requiredTime: when(
      'inTable411',
      by(table411, '411.3.2.2', { system: 'earthing', current: set('AC') }),
      by(distributionTimes, '411.3.2.3, 411.3.2.4', { system: 'earthing', supply: set('any') }),
    ),
    // overcurrent device
    ...operatingCurrent(largest('fuses/operatingCurrent')),
    minimumVoltageFactor: set(ratio(0.95), 'BS 7671 411.4.4, C_min'),
    loopImpedanceLimit: by(loopImpedanceLimitOf, '411.4.4'),
    inTable413: derive(
      ['deviceFamily', 'nominalVoltage'],
      (v) => v.deviceFamily === 'circuit-breaker' && v.nominalVoltage === 230,
    ),
    printedImpedanceLimit: choose('inTable413', {
      true: by(table413, 'Table 41.3', { printed: set('2015'), type: 'tripType' }),
      false: open(noPrint),
    }),
    recalledArmour: ofCircuit(({ path, run }) =>
      [...path.feeders, run].flatMap(byCable).some((r) => armourFromMemory(r.cable)),
    ),
    // residual current devices
    touchVoltageLimit: set(volts(50), 'BS 7671 411.5.3'),
  },
  residualUpstream: residualUpstream('411.5.3', 'Table 41.5'),
  fuses: fuses(),
  checks: [
    adjusted(
      anyOf(
        automaticDisconnection,
        [
          compare(overcurrentDisconnects, { because: loopBecause() }),
          residualDevicesDisconnect(residualDisconnects, residualTouchLimit),
        ],
        { applies: derive(['earthing'], () => true) },
      ),
      ['earthing'],
      withPreference,
    ),
    chosen('earthing', {
      TN: [],
      TT: [
        compare(electrodeStable, {
          as: {
            electrodeResistance: 'earthElectrode',
            electrodeStability: set(ohms(200), 'BS 7671 411.5.3, note'),
          },
          applies: ofCircuit((c) =>
            c.installation.supply.electrode ? true : 'No electrode of the installation is described.',
          ),
        }),
      ],
    }),
  ],
});
