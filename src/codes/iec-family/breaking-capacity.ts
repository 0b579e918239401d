import { any, by, choose, derive, orElse, set, sum, weigh } from '../../calculation/index.js';
import { type Gap, isMissing, missing, reaches } from '../../core/index.js';
import { prospectiveBehindFeeders } from '../../physics/definitions.js';
import { ohms } from '../../units/index.js';
import { assemblyRatingCounts } from '../assembly-rating.js';
import type { CircuitPlace } from '../wiring-code.js';
import { ofCircuit, ofConditionalRating, type RunPlace, type TemperaturePlace } from './places.js';

const onItsFront: Gap = {
  kind: 'fact',
  fact: 'breaking capacity of the device',
  obtain: 'in the rectangle on its front',
};
const onTheLabel: Gap = {
  kind: 'fact',
  fact: 'conditional short-circuit rating',
  obtain: 'from the label of the assembly, or back-up by the fuse ahead as the maker declares it',
};
/** What the current behind a feeder is, said with every verdict that rests on it. */
const behindFeeder =
  'The prospective current behind a feeder is an upper bound of what its cables let through: conductors at 20 °C, the feeder at right angles to the source. Other metal that joins the boards to earth is not counted: measure at the board.';

/** Between lines unless there is one; to earth only where the earth leads back to the source by metal. */
function largestFaultOf({ installation: { supply } }: CircuitPlace) {
  if (!(supply.phases.state === 'known' && supply.phases.value === 1)) return 'between lines';
  const electrode = supply.system.state === 'known' && supply.system.value === 'TT';
  return electrode ? 'line and neutral' : 'line and neutral or earth';
}
/** The least impedance of the runs of the way that lie ahead of a place, with the conductors cold. */
export const leastImpedanceAhead = <P>(ahead: (run: RunPlace, here: P) => boolean) => {
  const cold = { among: (t: TemperaturePlace, here: P) => t.at === 'cold' && ahead(t, here) };
  return choose('largestFault', {
    'between lines': sum('temperatures/lineResistance', cold),
    'line and neutral': sum('temperatures/lineNeutralImpedance', cold),
    'line and neutral or earth': sum('temperatures/leastImpedance', cold),
  });
};

/** The largest prospective current at the origin of the run, and what is declared for breaking it. */
export const breaking = () => ({
  circuit: {
    largestFault: ofCircuit(largestFaultOf),
    leastFeederImpedance: leastImpedanceAhead(({ own }) => !own),
    prospectiveCurrent: ofCircuit((c) => c.installation.supply.prospectiveCurrent),
    prospectiveAtOrigin: by(prospectiveBehindFeeders, undefined, { feederImpedance: 'leastFeederImpedance' }),
    // without its impedance a feeder is left out: the current is then not understated
    maximumFaultCurrent: orElse(
      'prospectiveAtOrigin',
      by(prospectiveBehindFeeders, undefined, {
        feederImpedance: set(ohms(0), 'not known, and left out: the largest current is sought'),
      }),
    ),
    feedersCounted: weigh(
      ['leastFeederImpedance'],
      ({ leastFeederImpedance: z }) => (isMissing(z) ? z : (true as const)),
      { direction: { leastFeederImpedance: 1 } },
    ),
    breakingCapacity: ofCircuit((c) => c.run.device.breakingCapacity ?? missing(onItsFront), {
      called: 'breaking capacity of the device',
    }),
    ownBreaks: derive(
      ['breakingCapacity', 'maximumFaultCurrent'],
      ({ breakingCapacity, maximumFaultCurrent }) => reaches(breakingCapacity, maximumFaultCurrent),
      { direction: { breakingCapacity: 1, maximumFaultCurrent: -1 } },
    ),
    conditionalBreaks: any('conditionalRatings/conditionalBreaks'),
    saidOfProspective: ofCircuit((c) => (c.path.feeders.length > 0 ? behindFeeder : (false as const))),
  },
  conditionalRatings: {
    ratingDeclared: ofConditionalRating((r) => {
      if (!r.rating) return missing(onTheLabel);
      return r.of === 'assembly' ? assemblyRatingCounts(r.circuit.installation, r.circuit.path) : (true as const);
    }),
    breakingLimit: ofConditionalRating((r) => r.rating ?? missing(onTheLabel), {
      called: 'conditional short-circuit rating',
    }),
    conditionalBreaks: derive(
      ['ratingDeclared', 'breakingLimit', 'maximumFaultCurrent'],
      ({ breakingLimit, maximumFaultCurrent }) => reaches(breakingLimit, maximumFaultCurrent),
      { direction: { breakingLimit: 1, maximumFaultCurrent: -1 } },
    ),
  },
});
