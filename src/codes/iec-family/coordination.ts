import {
  adjusted,
  by,
  chosen,
  compare,
  derive,
  holds,
  largest,
  open,
  same,
  set,
  smallest,
  weigh,
  when,
  whereLargest,
} from '../../calculation/index.js';
import { type CheckResult, type Fact, type Gap, unknown } from '../../core/index.js';
import { byCable, outletsBelow } from '../../installation/index.js';
import { type Ratio, ratio } from '../../units/index.js';
import type { CircuitPlace } from '../wiring-code.js';
import { conventionalCurrentOf, deviceShareOf, groupedDevice } from './capacity.js';
import type * as shared from './checks.js';
import { fewLoaded } from './group-factor.js';
import { thirdHarmonics, withNeutral } from './harmonics.js';
import { opened } from './opened.js';
import { ofCable, ofCircuit, ofSection } from './places.js';

const besideAsked = /* @__PURE__ */ unknown(
  'the instructions of its maker, for devices side by side that carry their load for hours; 1 where it stands apart',
);
const hoursAsked: Gap = {
  kind: 'fact',
  fact: 'whether the circuit carries its load for hours beside others that do',
  obtain: "the maker's factor is for such devices: see what is connected, and what stands beside the device",
};
/** Whether a run carries its load for hours: it feeds a charge point. */
const forHours = ({ run }: CircuitPlace): boolean =>
  outletsBelow(run).some((o) => o.kind === 'charge-point' || o.purpose === 'charge-point');
/** A load that comes and goes is not condemned by a factor for loads that stay. */
const ifForHours = (result: CheckResult): CheckResult =>
  result.verdict === 'fail' ? opened(result, [hoursAsked]) : result;

/** Load, device and cable of a circuit. */
export const loadAndDevice = () => ({
  deviceGroupFactor: ofCircuit(({ run }) => (run.device.groupingFactor ?? besideAsked) as Fact<Ratio>, {
    by: "maker's factor",
  }),
  deviceShare: by(deviceShareOf),
  ...thirdHarmonics(),
  conventionalOperatingCurrent: by(conventionalCurrentOf),
});
/** How a cable of the circuit is loaded. */
export const cableAndLoad = () => ({
  // a content that is not known leaves open what the cable is chosen for
  harmonicsCount: ofCable(withNeutral),
  // the factors for many cores go with the columns of three loaded conductors
  loaded: ofCable(({ phases, run }) => (phases === 3 || !fewLoaded(run) ? '3' : '2')),
  parallelConductors: ofCable(({ run }) => ratio(run.cable.parallel ?? 1), {
    by: 'equal conductors that share the load equally',
  }),
});

/** A device of whose standard the conventional operating current is not entered. */
export const conventionalNotEntered = (standard: string) =>
  open({
    kind: 'fact',
    fact: `conventional operating current of a device to ${standard}`,
    obtain: 'the product standard',
  });

/** The section that uses its capacity most and its figures, and what holds of all sections. */
export const governingSection = () => {
  const governs = <const T extends string>(take: T) => whereLargest('sections/capacityUse', take);
  return {
    capacity: smallest('sections/capacity'),
    hottestConductor: largest('sections/conductorTemperature'),
    governingStretch: governs('sectionName'),
    tabulatedCapacity: governs('tabulatedCapacity'),
    ambientFactor: governs('ambientFactor'),
    groupFactor: governs('groupFactor'),
    conductorTemperature: governs('conductorTemperature'),
    governingFigures: weigh(
      ['tabulatedCapacity', 'ambientFactor', 'groupFactor', 'conductorTemperature'],
      (figures) => ({ ...figures }),
    ),
  };
};

/** The current that a cable is chosen for: with third harmonics the neutral, not the line, may be the loaded conductor. */
export const cableLoad = () => when('harmonicsCount', same('harmonicCurrent'), same('designCurrent'));

/** Whether several conductors lie in parallel in each line. */
export const inParallel = () => ofSection(({ circuit }) => (circuit.run.cable.parallel ?? 1) > 1);

/** Temperature of the air or the ground around a section. */
export const surroundings = () => when('buried', same('groundTemperature'), same('ambientTemperature'));

/** The checks of coordination, as a code cites them. */
export interface CoordinationChecks {
  readonly deviceCarriesLoad: ReturnType<typeof shared.deviceCarriesLoad>;
  readonly harmonicsStated: ReturnType<typeof shared.harmonicsStated>;
  readonly insulationOnce: ReturnType<typeof shared.insulationOnce>;
  readonly capacitySuffices: ReturnType<typeof shared.capacitySuffices>;
  readonly loadWithinCapacity: ReturnType<typeof shared.loadWithinCapacity>;
  readonly conventionalOverload: ReturnType<typeof shared.conventionalOverload>;
}

/** Checks of a circuit before its sections are looked at. */
export const checksOfLoad = (checks: CoordinationChecks) =>
  [
    compare(checks.deviceCarriesLoad),
    chosen(ofCircuit(forHours), {
      true: [compare(groupedDevice)],
      false: [
        chosen(
          ofCircuit(({ run }) => run.device.groupingFactor !== undefined),
          { true: [adjusted(compare(groupedDevice), [], ifForHours)] },
        ),
      ],
    }),
    chosen(
      ofCircuit((c) => byCable(c.run).some((run) => withNeutral({ ...c, run }))),
      {
        true: [
          holds(
            checks.harmonicsStated,
            'harmonicsKnown',
            derive(['harmonicsKnown'], ({ harmonicsKnown }) =>
              harmonicsKnown
                ? 'The content is stated and applied.'
                : 'It is not stated: whether the neutral is overloaded stays open. Ask the maker of the load.',
            ),
          ),
        ],
      },
    ),
  ] as const;

/** Checks of a section. */
export const checksOfSection = (checks: CoordinationChecks) => ({
  insulation: chosen(
    ofSection(({ section }) => section.insulated !== undefined),
    {
      true: [
        chosen('insulationCounts', {
          'in the method': [
            holds(
              checks.insulationOnce,
              set(true),
              derive(['method'], ({ method }) => `Method ${method} already contains the insulation: no C_i as well.`),
            ),
          ],
        }),
      ],
    },
  ),
  overload: [
    compare(checks.capacitySuffices, { because: 'sectionName' }),
    compare(checks.loadWithinCapacity, { as: { designCurrent: cableLoad() }, because: 'sectionName' }),
  ] as const,
  conventional: compare(checks.conventionalOverload, { because: 'sectionName' }),
});
