import { tableB5216, tableB5218 } from '../../../src/codes/iec60364/definitions.js';
import { celsius, hertz, kelvinMetresPerWatt, metres, squareMillimetres } from '../../../src/index.js';
import { type HeatSurroundings, heatBalance } from '../../../src/physics/heat/index.js';
import { unarmouredBuild } from '../../../src/products/iec60502/build.js';

/** A printed rating factor beside those of the heat balance for several sizes of cable. */
export interface FactorRange {
  /** Table, column and row. */
  readonly cell: string;
  readonly printed: number;
  /** Smallest and largest computed factor. */
  readonly least: number;
  readonly most: number;
}

const sizes = [2.5, 10, 25, 95, 240];
const cableOf = (size: number) =>
  unarmouredBuild({ metal: 'copper', insulation: 'XLPE', cores: 3, conductorArea: squareMillimetres(size) });

/** Capacity of a three-core cable in the ground of the tables, among neighbours in a row at these distances. */
function inGround(size: number, resistivity: number, offsets: readonly number[] = []): number {
  const surroundings: HeatSurroundings = {
    where: 'ground',
    groundTemperature: celsius(20),
    soilResistivity: kelvinMetresPerWatt(resistivity),
    burialDepth: metres(0.7),
    neighbours: offsets.map((offset) => ({ offset: metres(offset), depth: metres(0.7) })),
  };
  return heatBalance({
    cable: cableOf(size),
    loadedConductors: 3,
    surroundings,
    operatingTemperature: celsius(90),
    frequency: hertz(50),
  }).computedCapacity;
}

const range = (cell: string, printed: number, factor: (size: number) => number): FactorRange => {
  const all = sizes.map(factor);
  return { cell, printed, least: Math.min(...all), most: Math.max(...all) };
};

/** Distance from axis to axis of a column of B.52.18, m. */
const distance = (clearance: string, diameter: number): number =>
  clearance === 'touching'
    ? diameter
    : clearance === 'one-diameter'
      ? 2 * diameter
      : diameter + Number.parseFloat(clearance);

/** Each factor of B.52.18 beside that of the middle cable of a row, all equally loaded. */
export function groupFactors(): readonly FactorRange[] {
  return tableB5218.rows.flatMap(([count, ...cells]) =>
    cells.map((printed, c) => {
      const clearance = tableB5218.columns[c]?.[0] ?? '';
      return range(`${tableB5218.id} ${clearance}, ${count}`, Number(printed), (size) => {
        const apart = distance(String(clearance), cableOf(size).overallDiameter / 1000);
        const middle = Math.floor((Number(count) - 1) / 2);
        const others = Array.from({ length: Number(count) }, (_, i) => i - middle).filter((i) => i !== 0);
        return (
          inGround(
            size,
            2.5,
            others.map((i) => i * apart),
          ) / inGround(size, 2.5)
        );
      });
    }),
  );
}

/** Each factor for cables direct in the ground of B.52.16 beside the computed one. */
export function soilFactors(): readonly FactorRange[] {
  const at = tableB5216.columns.findIndex(([laying]) => laying === 'direct') + 1;
  return tableB5216.rows.map((row) =>
    range(
      `${tableB5216.id} direct, ${row[0]}`,
      Number(row[at]),
      (size) => inGround(size, Number(row[0])) / inGround(size, 2.5),
    ),
  );
}
