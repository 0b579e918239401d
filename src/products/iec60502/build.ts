import type { HeatCable } from '../../physics/heat/cable.js';
import { coreSpacing, laidUpDiameterOfRound, laidUpDiameterOfSectors } from '../../physics/heat/geometry.js';
import { millimetres, ratio, type SquareMillimetres } from '../../units/index.js';
import { conductorDiameters } from '../iec60228/conductor-diameter.js';
import { conductorResistance } from '../iec60228/conductor-resistance.js';
import { insulationThicknesses } from './insulation-thickness.js';

/** Which low-voltage cable is meant. @inline */
export interface CableChoice {
  /** Metal of the conductors, of class 2. */
  readonly metal: 'copper' | 'aluminium';
  /** What insulates the cores; the sheath is of PVC. */
  readonly insulation: 'PVC' | 'XLPE';
  /** Cores of one cable. */
  readonly cores: 1 | 2 | 3 | 4;
  /** Cross-section of a conductor, mm². */
  readonly conductorArea: SquareMillimetres;
}

/** @internal Conductors, insulation and laid-up cores of a cable for 0.6/1 kV. */
export function coresOf({ metal, insulation, cores, conductorArea }: CableChoice, shape: 'round' | 'sector') {
  const compacted = conductorArea >= 16;
  const conductorDiameter = conductorDiameters.get({ strand: compacted ? 'compacted' : 'stranded', conductorArea });
  const thickness = insulationThicknesses.get({ insulation, conductorArea });
  const conductorSpacing = coreSpacing({ conductorDiameter, insulationThickness: thickness });
  const laidUp =
    cores === 1
      ? conductorSpacing
      : shape === 'round'
        ? laidUpDiameterOfRound({ coreCount: ratio(cores), conductorSpacing })
        : laidUpDiameterOfSectors({ coreCount: ratio(cores), conductorDiameter, insulationThickness: thickness });
  return {
    metal,
    resistancePerMetre20: conductorResistance.get({ metal, conductorClass: '2', conductorArea }),
    shape,
    conductorDiameter,
    insulation: { material: insulation, thickness },
    cores,
    laidUpDiameter: laidUp,
  } as const;
}

/**
 * The usual build of an unarmoured low-voltage cable with round conductors, for its heat balance. IEC 60502-1. Makers
 * differ; a tenth of the outer diameter moves the computed rating by less than 1 %.
 * @param choice metal, insulation, cores and size, 1.5 to 400 mm²
 * @returns the cable for `heatBalance`
 * @throws CalculationError `no-cell` for a size that is not listed
 * @example
 * ```ts
 * import { celsius, hertz, kelvinMetresPerWatt, metres, squareMillimetres } from 'ohmwright';
 * import { heatBalance } from 'ohmwright/heat';
 * import { unarmouredBuild } from 'ohmwright/products';
 *
 * const { computedCapacity } = heatBalance({
 *   cable: unarmouredBuild({ metal: 'copper', insulation: 'XLPE', cores: 3, conductorArea: squareMillimetres(95) }),
 *   loadedConductors: 3,
 *   surroundings: {
 *     where: 'ground',
 *     groundTemperature: celsius(20),
 *     soilResistivity: kelvinMetresPerWatt(2.5),
 *     burialDepth: metres(0.7),
 *     neighbours: [{ offset: metres(0.25), depth: metres(0.7) }],
 *   },
 *   operatingTemperature: celsius(90),
 *   frequency: hertz(50),
 * });
 * Math.round(computedCapacity); // => 188
 * ```
 */
export function unarmouredBuild(choice: CableChoice): HeatCable {
  const cores = coresOf(choice, 'round');
  const least = choice.cores === 1 ? 1.4 : 1.8;
  const thickness = millimetres(Math.max(least, 0.035 * cores.laidUpDiameter + 1));
  return {
    ...cores,
    sheath: { material: 'PVC', thickness },
    overallDiameter: millimetres(cores.laidUpDiameter + 2 * thickness),
  };
}
