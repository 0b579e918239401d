import { cableTables } from '../../../src/codes/bs7671/cable-tables.js';
import { celsius, hertz, ratio, squareMillimetres } from '../../../src/index.js';
import {
  acResistance,
  coreSpacing,
  proximityOfThree,
  proximityOfTwo,
  skinArgument,
  skinFactor,
  temperatureCoefficients,
} from '../../../src/physics/heat/definitions.js';
import { resistanceAtTemperature } from '../../../src/physics/index.js';
import { conductorDiameters, conductorResistance, insulationThicknesses } from '../../../src/products/definitions.js';
import { temperatureOf } from '../../tables/laws.js';

/** A printed resistive drop beside twice, or √3 times, the resistance to alternating current. */
export interface DropDeviation {
  readonly table: string;
  readonly column: string;
  readonly size: number;
  /** Printed, mV/A/m. */
  readonly printed: number;
  /** Computed, mV/A/m. */
  readonly computed: number;
  /** What skin and proximity effect add to the resistance, 1. */
  readonly added: number;
  /** Printed less computed, over computed, 1. */
  readonly deviation: number;
}

/** The drop tables of multicore cable, armoured or not, each once. */
const multicore = [
  ...new Map(
    cableTables.flatMap(({ construction, material, insulation, drop }) =>
      drop && (construction === 'multicore' || construction === 'armoured')
        ? [
            [
              drop,
              [drop, temperatureOf[insulation], material, insulation === 'thermoplastic-70' ? 'PVC' : 'XLPE'] as const,
            ],
          ]
        : [],
    ),
  ).values(),
];

/** The resistance of a core to alternating current at its largest temperature, by IEC 60287 and IEC 60228, Ω/m. */
function resistances(
  metal: 'copper' | 'aluminium',
  insulation: 'PVC' | 'XLPE',
  hot: number,
  size: number,
  loaded: 2 | 3,
) {
  const conductorArea = squareMillimetres(size);
  const resistancePerMetre = resistanceAtTemperature({
    resistancePerMetre20: conductorResistance.get({ metal, conductorClass: '2', conductorArea }),
    temperatureCoefficient: temperatureCoefficients.get({ metal }),
    conductorTemperature: celsius(hot),
  });
  const conductorDiameter = conductorDiameters.get({ strand: size < 16 ? 'stranded' : 'compacted', conductorArea });
  const argument = skinArgument({ frequency: hertz(50), resistancePerMetre });
  const proximityFactor = (loaded === 2 ? proximityOfTwo : proximityOfThree)({
    skinArgument: argument,
    conductorDiameter,
    conductorSpacing: coreSpacing({
      conductorDiameter,
      insulationThickness: insulationThicknesses.get({ insulation, conductorArea }),
    }),
    shapeShare: ratio(1),
  });
  return {
    direct: resistancePerMetre,
    alternating: acResistance({
      resistancePerMetre,
      skinFactor: skinFactor({ skinArgument: argument }),
      proximityFactor,
    }),
  };
}

/** Every r of the multicore drop tables, beside that from the conductor's resistance with skin and proximity effect. */
export function dropDeviations(): readonly DropDeviation[] {
  return multicore.flatMap(([printed, hot, metal, insulation]) =>
    (['single-phase', 'three-phase'] as const).flatMap((system) => {
      const at = printed.columns.findIndex(([s, component]) => s === system && component === 'r');
      const loaded = system === 'single-phase' ? 2 : 3;
      return printed.rows.flatMap((row): readonly DropDeviation[] => {
        const [size, cell] = [Number(row[0]), row[at + 1]];
        if (typeof cell !== 'number' || size < 1.5 || size > 400) return [];
        const { direct, alternating } = resistances(metal, insulation, hot, size, loaded);
        const computed = (loaded === 2 ? 2 : Math.sqrt(3)) * alternating * 1000;
        return [
          {
            table: printed.id,
            column: `${system} r`,
            size,
            printed: cell,
            computed,
            added: alternating / direct - 1,
            deviation: cell / computed - 1,
          },
        ];
      });
    }),
  );
}
