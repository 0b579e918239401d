import { by, choose, type Line, orElse, same, set, sum } from '../../calculation/index.js';
import {
  externalImpedanceOfElectrode,
  largestEarthFault,
  leastOriginImpedance,
  lineNeutralLoop,
  prospectiveBehindFeeders,
  smallestLineNeutralFault,
  sourceImpedanceOf,
} from '../../physics/definitions.js';
import { earthFaultCurrentOf } from '../../physics/index.js';
import { ohms, type Ratio } from '../../units/index.js';
import { leastImpedanceAhead } from './breaking-capacity.js';
import { aheadOfCable, type CablePlace, ofCircuit, ofFault, type TemperaturePlace } from './places.js';

const coldAhead = {
  among: (t: TemperaturePlace, here: CablePlace) => t.at === 'cold' && aheadOfCable(t, here),
};
const hot = { among: ({ at }: TemperaturePlace) => at === 'operating' };

/**
 * The fault currents at both ends of a circuit: largest at its origin with the conductors cold, smallest at its far end
 * with them as warm as in operation.
 * @param maximumVoltageFactor largest voltage factor of the supply
 */
export const faultCurrents = (maximumVoltageFactor: Line<never, Ratio>) => ({
  circuit: {
    sourceImpedance: choose('system', {
      TT: by(sourceImpedanceOf),
      IT: by(sourceImpedanceOf),
      'TN-S': loopOfSupply(),
      'TN-C-S': loopOfSupply(),
    }),
    minimumFaultCurrent: by(smallestLineNeutralFault, undefined, {
      lineNeutralImpedance: by(lineNeutralLoop, undefined, {
        circuitImpedance: sum('temperatures/lineNeutralImpedance', hot),
      }),
    }),
    earthFaultCurrent: by(earthFaultCurrentOf),
  },
  cables: {
    // at a change of cable what the cables ahead leave of it; without their impedance that of the origin
    currentAtChange: orElse(
      by(prospectiveBehindFeeders, undefined, { feederImpedance: leastImpedanceAhead(aheadOfCable) }),
      same('maximumFaultCurrent'),
    ),
    largestEarthFaultCurrent: by(largestEarthFault, undefined, {
      maximumVoltageFactor,
      originImpedance: by(leastOriginImpedance, undefined, {
        // where only the electrode is known the path of the network may add next to nothing
        externalImpedance: choose('externalImpedanceFrom', {
          survey: same('externalImpedance'),
          electrode: by(externalImpedanceOfElectrode, undefined, {
            networkEarth: set(ohms(0), 'the least that there can be'),
          }),
        }),
        feederImpedance: sum('temperatures/segmentImpedance', coldAhead),
      }),
    }),
  },
  faults: {
    fault: ofFault(({ conductor, end, circuit }) =>
      conductor === 'line' && end === 'near' && circuit.cableNumber > 0
        ? 'line, at a change'
        : (`${conductor}, ${end}` as const),
    ),
    faultCurrent: choose('fault', {
      'line, near': same('maximumFaultCurrent'),
      'line, at a change': same('currentAtChange'),
      'line, far': same('minimumFaultCurrent'),
      'protective, near': same('largestEarthFaultCurrent'),
      'protective, far': same('earthFaultCurrent'),
    }),
  },
});

const loopOfSupply = () =>
  ofCircuit((c) => c.installation.supply.externalImpedance, {
    called: 'externalImpedance',
    by: 'external earth fault loop impedance, taken for the line-neutral loop of the supply too',
  });
