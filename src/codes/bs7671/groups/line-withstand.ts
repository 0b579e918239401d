import {
  adjusted,
  anyOf,
  by,
  choose,
  chosen,
  compare,
  deciding,
  each,
  holds,
  largest,
  missingOf,
  open,
  same,
  set,
  weigh,
} from '../../../calculation/index.js';
import { type Gap, isMissing, missing } from '../../../core/index.js';
import { byCable } from '../../../installation/index.js';
import { withstandEnergyOf } from '../../../physics/definitions.js';
import { ratio } from '../../../units/index.js';
import { faultCurrents } from '../../iec-family/fault-currents.js';
import { acquitOnly, letThrough } from '../../iec-family/let-through.js';
import { familyOf } from '../../iec-family/overcurrent-device.js';
import { type FaultPlace, ofCable, ofCircuit } from '../../iec-family/places.js';
import {
  lineNeutralClears,
  lineProtectedByOverload,
  lineWithstandCheck,
  lineWithstands,
  parallelConductorsWithstand,
} from '../withstand-checks.js';
import { cooler, factorsK } from './factor-k.js';

const noParallelRule: Gap = {
  kind: 'fact',
  fact: 'energy in one of several conductors in parallel',
  obtain: 'there is no rule for it here: have it worked out, each conductor fed from both of its ends',
};
/** How a fault in one of several conductors in parallel is fed is not worked out: nothing is judged. */
export const notJudgedInParallel = () => [holds(parallelConductorsWithstand, open(noParallelRule), set(''))];

/** Line conductors against fault current. BS 7671 434.5, 435.1. */
export const lineWithstand = () => {
  const current = faultCurrents(set(ratio(1.1), 'IEC 60909-0 Table 1, largest, supply tolerance +10 %'));
  const energy = letThrough('434.5.2', 'by the fault level, On-Site Guide Table B7');
  return {
    circuit: {
      ...current.circuit,
      ...energy.circuit,
      quickOperatingCurrent: largest('fuses/quickOperatingCurrent'),
      slowOperatingCurrent: largest('fuses/slowOperatingCurrent'),
      anyInParallel: ofCircuit((c) => byCable(c.run).some(({ cable }) => (cable.parallel ?? 1) > 1)),
      // 435.1 counts a device that breaks the fault and limits its energy
      overloadSuffices: weigh(
        ['ownBreaks', 'conditionalBreaks', 'deviceKind', 'energyClass'],
        ({ ownBreaks, conditionalBreaks, deviceKind, energyClass }) => {
          if (ownBreaks !== true && conditionalBreaks !== true) {
            const unknown = missingOf([ownBreaks, conditionalBreaks]);
            return unknown.missing.length > 0
              ? unknown
              : missing({ kind: 'fact', fact: 'breaking capacity that is enough' });
          }
          if (!isMissing(deviceKind) && deviceKind.standard === 'BS 3036')
            return 'A rewirable fuse is judged by the adiabatic equation.';
          if (isMissing(deviceKind)) return deviceKind;
          if (familyOf(deviceKind) === 'fuse') return true as const;
          if (isMissing(energyClass)) return energyClass;
          if (energyClass === '1')
            return 'A circuit-breaker of class 1 does not limit its energy: the adiabatic equation judges.';
          return true as const;
        },
      ),
    },
    cables: {
      ...current.cables,
      ...factorsK(),
      inParallel: ofCable((c) => (c.run.cable.parallel ?? 1) > 1),
      withstandEnergy: by(withstandEnergyOf, '434.5.2', { adiabaticFactor: 'lineFactor' }),
    },
    faults: { ...current.faults, ...energy.faults },
    checks: [
      each('cables', [
        chosen('inParallel', {
          true: notJudgedInParallel(),
          false: [
            anyOf(
              lineWithstandCheck,
              [
                compare(lineProtectedByOverload, {
                  applies: 'overloadSuffices',
                  because: set(
                    'Protected against overload by a device that breaks the fault current: no further calculation is asked for.',
                  ),
                }),
                deciding([
                  each(
                    'faults',
                    [
                      adjusted(
                        adjusted(
                          compare(lineWithstands, { because: 'energyRests' }),
                          ['energyIsBound', 'energyRests'],
                          acquitOnly,
                        ),
                        ['realLoad'],
                        cooler,
                      ),
                    ],
                    ({ conductor }: FaultPlace) => conductor === 'line',
                  ),
                ]),
              ],
              { because: 'cableName' },
            ),
          ],
        }),
      ]),
      chosen('anyInParallel', {
        true: [],
        false: [
          compare(lineNeutralClears, {
            as: {
              operatingCurrent: choose('deviceFamily', {
                'circuit-breaker': same('instantaneousTrip'),
                'old circuit-breaker': same('instantaneousTrip'),
                fuse: same('slowOperatingCurrent'),
              }),
            },
          }),
        ],
      }),
    ],
  };
};
