import type { HeatCable } from '../../physics/heat/cable.js';
import { millimetres, ratio, type SquareMillimetres } from '../../units/index.js';
import { beddingThicknesses } from '../iec60502/bedding-thickness.js';
import { coresOf } from '../iec60502/build.js';
import { armouredOverallDiameters, armourWireDiameters } from './dimensions.js';

/**
 * The usual build of a steel wire armoured XLPE cable, for its heat balance; conductors are sector-shaped from 25 mm².
 * BS 5467. Makers differ; a tenth of the outer diameter moves the computed rating by less than 1 %.
 * @param choice metal, cores and size, 1.5 to 400 mm²
 * @returns the cable for `heatBalance`
 * @throws CalculationError `no-cell` for a cable that is not listed
 * @example
 * ```ts
 * import { celsius, hertz, squareMillimetres } from 'ohmwright';
 * import { heatBalance } from 'ohmwright/heat';
 * import { armouredBuild } from 'ohmwright/products';
 *
 * const { computedCapacity } = heatBalance({
 *   cable: armouredBuild({ metal: 'copper', cores: 3, conductorArea: squareMillimetres(16) }),
 *   loadedConductors: 3,
 *   surroundings: { where: 'air', ambientTemperature: celsius(30), formation: 'one-spaced' },
 *   operatingTemperature: celsius(90),
 *   frequency: hertz(50),
 * });
 * Math.round(computedCapacity); // => 100
 * ```
 */
export function armouredBuild(choice: {
  readonly metal: 'copper' | 'aluminium';
  readonly cores: 2 | 3 | 4;
  readonly conductorArea: SquareMillimetres;
}): HeatCable {
  const { conductorArea } = choice;
  const at = { cores: ratio(choice.cores), conductorArea };
  const cores = coresOf({ ...choice, insulation: 'XLPE' }, conductorArea < 25 ? 'round' : 'sector');
  const bedding = beddingThicknesses.get({ laidUpDiameter: cores.laidUpDiameter });
  const wireDiameter = armourWireDiameters.get(at);
  const overallDiameter = armouredOverallDiameters.get(at);
  return {
    ...cores,
    bedding: { material: 'PVC', thickness: bedding },
    armour: { wireDiameter },
    // what the printed outer diameter leaves, tolerance of the lay-up included
    sheath: {
      material: 'PVC',
      thickness: millimetres(overallDiameter / 2 - cores.laidUpDiameter / 2 - bedding - wireDiameter),
    },
    overallDiameter,
  };
}
