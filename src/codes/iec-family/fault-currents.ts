import { by, choose, type Line, same, set, sum } from '../../calculation/index.js';
import {
  externalImpedanceOfElectrode,
  largestEarthFault,
  leastOriginImpedance,
  lineNeutralLoop,
  smallestLineNeutralFault,
  sourceImpedanceOf,
} from '../../physics/definitions.js';
import { earthFaultCurrentOf } from '../../physics/index.js';
import { ohms, type Ratio } from '../../units/index.js';
import { ofCircuit, ofFault, type TemperaturePlace } from './places.js';

const coldAhead = { among: ({ at, own }: TemperaturePlace) => at === 'cold' && !own };
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
    earthFaultCurrent: by(earthFaultCurrentOf),
  },
  faults: {
    fault: ofFault(({ conductor, end }) => `${conductor}, ${end}` as const),
    faultCurrent: choose('fault', {
      'line, near': same('maximumFaultCurrent'),
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
