/** What physics says of whole tables, from what they are for; nothing that it says is excused. */
import { type CableTables, cableTables } from '../../src/codes/bs7671/cable-tables.js';
import type { Insulation } from '../../src/installation/index.js';
import { conductorResistance } from '../../src/products/definitions.js';
import { columnName, halfAmpere, type Objection, type Printed, printedCell } from './guards.js';

/** What the cables of a table are. */
export interface CablesOf {
  readonly table: Printed;
  readonly material: 'copper' | 'aluminium';
  readonly temperature: number;
}

/** Temperature of the conductors at the capacity of a table, °C. */
export const temperatureOf: Readonly<Record<Insulation, number>> = {
  'thermoplastic-70': 70,
  'thermosetting-90': 90,
  'thermosetting-60': 60,
};

/** The inferred zero of resistance, IEC 60949, °C below zero. */
const zero = { copper: 234.5, aluminium: 228 } as const;

/** Cells of two tables under the same column and row whose ratio, but for rounding, leaves a band. */
function outside(
  name: string,
  table: Printed,
  other: Printed,
  theirs: (column: string) => string | undefined,
  band: (column: string) => readonly [least: number, most: number],
): Objection[] {
  return table.columns.map(columnName).flatMap((column) => {
    const beside = theirs(column);
    if (beside === undefined) return [];
    const [least, most] = band(column);
    return table.rows.flatMap(([size]) => {
      const [v, o] = [printedCell(table, column, size as number), printedCell(other, beside, size as number)];
      if (v === undefined || o === undefined) return [];
      const [up, down] = [(v + halfAmpere(v)) / (o - halfAmpere(o)), (v - halfAmpere(v)) / (o + halfAmpere(o))];
      return up < least || down > most ? [`${name} ${other.id}: ${column}, ${size}: ${(v / o).toFixed(3)}`] : [];
    });
  });
}

/**
 * The same cable with hotter insulation carries more, as the heat that it may lose and its resistance have it: by
 * sqrt of the ratio of temperature rise over resistance at least, from air of 30 °C or ground of 20 °C. Convection,
 * which rises with the temperature, and insulation that conducts heat better add up to 17 % to it in the tables.
 */
export const hotterCarriesMore = (hot: CablesOf, cool: CablesOf, suits: (column: string) => boolean = () => true) =>
  outside(
    'hotter than',
    hot.table,
    cool.table,
    (column) => (suits(column) ? column : undefined),
    (column) => {
      const around = /(^| )D/.test(column) ? 20 : 30;
      const heat = ({ material, temperature }: CablesOf) => (temperature - around) / (zero[material] + temperature);
      const least = Math.sqrt(heat(hot) / heat(cool));
      return [least, 1.17 * least];
    },
  );

/** Aluminium carries less than copper by the root of their resistances, 0.78 from IEC 60228, within 8 %. */
export const aluminiumCarriesLess = (
  aluminium: Printed,
  copper: Printed,
  theirs: (column: string) => string | undefined = (column) => column,
) => outside('aluminium to', aluminium, copper, theirs, () => [0.92 * 0.775, 1.08 * 0.775]);

/** Three loaded conductors carry less than two: by sqrt(2/3) where all heat is their own, by 5 % at least. */
export const threeCarryLess = (table: Printed) =>
  outside(
    'three to two of',
    table,
    table,
    (column) => (/^\S+ 3$/.test(column) ? column.replace('3', '2') : undefined),
    () => [0.815, 0.955],
  );

/** mV/A/m due to resistance alone, IEC 60228 at the temperature: 2 R and sqrt(3) R. */
export const dropOfResistance =
  ({ material, temperature }: Omit<CablesOf, 'table'>, conductorClass: '2' | '5') =>
  (column: string, size: number): number | undefined => {
    const dc = column.startsWith('dc');
    if (!dc && !column.endsWith(' r') && !(column.endsWith(' z') && size <= 16)) return undefined;
    const at = conductorResistance.columns.findIndex(([m, k]) => m === material && k === conductorClass);
    const r20 = conductorResistance.rows.find((r) => r[0] === size)?.[at + 1];
    if (typeof r20 !== 'number') return undefined;
    const alpha = material === 'copper' ? 0.00393 : 0.00403;
    return (column.startsWith('three') ? Math.sqrt(3) : 2) * r20 * (1 + alpha * (temperature - 20));
  };

/** Taken over a whole table, its drops are those of the resistance at its temperature; tinned wires add up to 4 %. */
export function dropsAreOfTemperature(cables: CablesOf, conductorClass: '2' | '5'): Objection[] {
  const { table } = cables;
  const law = dropOfResistance(cables, conductorClass);
  const ratios = table.columns.flatMap((key, c) =>
    table.rows.flatMap((row) => {
      const [v, due] = [row[c + 1], law(columnName(key), row[0] as number)];
      return typeof v === 'number' && due !== undefined ? [v / due] : [];
    }),
  );
  const middle = ratios.sort((a, b) => a - b)[Math.floor(ratios.length / 2)] ?? Number.NaN;
  return middle > 0.98 && middle < (conductorClass === '5' ? 1.04 : 1.02) ? [] : [`drop to resistance: ${middle}`];
}

/** What the laws say of the tables of a row, beside those of the other rows. */
export function lawsOf(row: CableTables, rows: readonly CableTables[] = cableTables): Objection[] {
  const cables = ({ capacity: table, material, insulation }: CableTables): CablesOf => {
    return { table, material, temperature: temperatureOf[insulation] };
  };
  const own = cables(row);
  const alike = rows.filter((r) => r.construction === row.construction && r.cords === row.cords && !row.cords);
  const others = alike.filter((r) => r.material === row.material).map(cables);
  const copper = alike.filter((r) => r.insulation === row.insulation && r.material === 'copper');
  return [
    ...others.filter((o) => o.temperature < own.temperature).flatMap((cool) => hotterCarriesMore(own, cool)),
    ...others.filter((o) => o.temperature > own.temperature).flatMap((hot) => hotterCarriesMore(hot, own)),
    ...(row.material === 'aluminium' ? copper.flatMap((c) => aluminiumCarriesLess(row.capacity, c.capacity)) : []),
    ...threeCarryLess(row.capacity),
    ...(row.drop && !row.dropFactor
      ? dropsAreOfTemperature({ ...own, table: row.drop }, row.construction === 'flexible' ? '5' : '2')
      : []),
  ];
}
