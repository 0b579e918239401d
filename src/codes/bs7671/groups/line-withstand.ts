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
  type Judgement,
  largest,
  missingOf,
  open,
  same,
  set,
  weigh,
} from '../../../calculation/index.js';
import { type CheckResult, type Gap, isMissing, missing } from '../../../core/index.js';
import { byCable } from '../../../installation/index.js';
import { withstandEnergyOf } from '../../../physics/definitions.js';
import { ratio } from '../../../units/index.js';
import { faultCurrents } from '../../iec-family/fault-currents.js';
import { acquitOnly, letThrough } from '../../iec-family/let-through.js';
import { opened } from '../../iec-family/opened.js';
import { familyOf } from '../../iec-family/overcurrent-device.js';
import { type CablePlace, type FaultPlace, ofCable, ofCircuit } from '../../iec-family/places.js';
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
  obtain: 'have it worked out, each conductor fed from both of its ends: one alone does not withstand all of it',
};
/** How a fault in one of more than two conductors in parallel is fed is not worked out: nothing is judged. */
export const notJudgedInParallel = () => [holds(parallelConductorsWithstand, open(noParallelRule), set(''))];

/** How many conductors of a cable are in parallel. */
export const parallelOf = ({ run }: CablePlace): number => run.cable.parallel ?? 1;

/**
 * A fault in one of two like conductors in parallel, at a share x of their length: its impedance is x (2 - x) / 2 of that of
 * one, at most what it is at the far end, so that the device sees a current between those of both ends. Either conductor
 * carries part of it: what withstands all of it alone is safe, and of what does not nothing is said.
 */
const alone = (result: CheckResult, { pairInParallel }: { readonly pairInParallel: unknown }): CheckResult =>
  pairInParallel === false || result.verdict !== 'fail' ? result : opened(result, [noParallelRule]);

/** What withstands a fault, of a bound on its energy, of the conductor as warm as its load makes it, and of one of a pair. */
export const byBounds = <J extends Judgement>(of: J) =>
  adjusted(
    adjusted(adjusted(of, ['energyIsBound', 'energyRests'], acquitOnly), ['realLoad'], cooler),
    ['pairInParallel'],
    alone,
  );

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
      anyInParallel: ofCircuit((c) => byCable(c.run).some(({ cable }) => (cable.parallel ?? 1) > 2)),
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
      pairInParallel: ofCable((c) => parallelOf(c) === 2),
      manyInParallel: ofCable((c) => parallelOf(c) > 2),
      withstandEnergy: by(withstandEnergyOf, '434.5.2', { adiabaticFactor: 'lineFactor' }),
    },
    faults: { ...current.faults, ...energy.faults },
    checks: [
      each('cables', [
        chosen('manyInParallel', {
          true: notJudgedInParallel(),
          false: [
            anyOf(
              lineWithstandCheck,
              [
                compare(lineProtectedByOverload, {
                  applies: weigh(['pairInParallel', 'overloadSuffices'], ({ pairInParallel, overloadSuffices }) =>
                    pairInParallel === false
                      ? overloadSuffices
                      : 'Of conductors in parallel this has to be checked: the adiabatic equation judges.',
                  ),
                  because: set(
                    'Protected against overload by a device that breaks the fault current: no further calculation is asked for.',
                  ),
                }),
                deciding([
                  each(
                    'faults',
                    [byBounds(compare(lineWithstands, { because: 'energyRests' }))],
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
