import { by, derive, type Line, set } from '../../calculation/index.js';
import { type Axis, type Missing, missing, type Table } from '../../core/index.js';
import type {
  Cable,
  CableConstruction,
  ConductorMaterial,
  Insulation,
  ReferenceMethod,
} from '../../installation/index.js';
import type { Amperes } from '../../units/index.js';
import * as appendix4 from './tables/index.js';

/** @internal A pair of tables of Appendix 4 and the cables that it is for. */
export interface CableTables {
  readonly construction: CableConstruction;
  readonly material: ConductorMaterial;
  readonly insulation: Insulation;
  /** For the sizes of flexible cords, or else for all the others. */
  readonly cords?: true;
  readonly capacity: Table<readonly Axis[], 'tabulatedCapacity'>;
  /** How many loaded conductors the capacities are for, where the table has no column for it. */
  readonly loaded?: '2';
  readonly drop?: Table<readonly Axis[], 'dropRate'>;
  /** Factor on the printed drop for this insulation, and where it stands. */
  readonly dropFactor?: readonly [factor: number, by: string];
}

/** @internal Smallest size of the tables of flexible cables, mm²; below it there are cords. */
export const leastOfFlexible = 4;

const hotCords = [1.09, 'BS 7671 Table 4F3B, insulation for 90 °C'] as const;

// biome-ignore format: a row for each pair
/** @internal The cable tables of Appendix 4: of the rows for a cable, the first that has what is asked counts. */
export const cableTables: readonly CableTables[] = [
  { construction: 'flat-twin-and-earth', material: 'copper', insulation: 'thermoplastic-70', capacity: appendix4.table4D5, loaded: '2', drop: appendix4.table4D5Drop },
  { construction: 'flat-twin-and-earth', material: 'copper', insulation: 'thermoplastic-70', capacity: appendix4.table4D2A, drop: appendix4.table4D2B },
  { construction: 'single-core', material: 'copper', insulation: 'thermoplastic-70', capacity: appendix4.table4D1A, drop: appendix4.table4D1B },
  { construction: 'multicore', material: 'copper', insulation: 'thermoplastic-70', capacity: appendix4.table4D2A, drop: appendix4.table4D2B },
  { construction: 'armoured', material: 'copper', insulation: 'thermoplastic-70', capacity: appendix4.table4D4A, drop: appendix4.table4D4B },
  { construction: 'single-core', material: 'copper', insulation: 'thermosetting-90', capacity: appendix4.table4E1A, drop: appendix4.table4E1B },
  { construction: 'multicore', material: 'copper', insulation: 'thermosetting-90', capacity: appendix4.table4E2A, drop: appendix4.table4E2B },
  { construction: 'armoured', material: 'copper', insulation: 'thermosetting-90', capacity: appendix4.table4E4A, drop: appendix4.table4E4B },
  { construction: 'flexible', material: 'copper', insulation: 'thermosetting-60', capacity: appendix4.table4F1A },
  { construction: 'flexible', material: 'copper', insulation: 'thermosetting-90', capacity: appendix4.table4F2A, drop: appendix4.table4F2B },
  { construction: 'flexible', material: 'copper', insulation: 'thermosetting-60', cords: true, capacity: appendix4.table4F3A, drop: appendix4.table4F3B },
  { construction: 'flexible', material: 'copper', insulation: 'thermosetting-90', cords: true, capacity: appendix4.table4F3A, drop: appendix4.table4F3B, dropFactor: hotCords },
  { construction: 'armoured', material: 'aluminium', insulation: 'thermosetting-90', capacity: appendix4.table4J4A, drop: appendix4.table4J4B },
];

/** The rows for a cable: those of cords, or those of all other sizes. */
const tablesFor = (cable: Cable, cords: boolean): readonly CableTables[] =>
  cableTables.filter(
    (t) =>
      t.construction === cable.construction &&
      t.material === cable.material &&
      t.insulation === cable.insulation &&
      (t.cords ?? false) === cords,
  );

/** @internal Why there is no table for a cable. */
export const noTable = (cable: Cable): Missing =>
  missing({
    kind: 'cell',
    // the first table of multicore cable stands for the appendix
    table: appendix4.table4D2A.id,
    explain: `BS 7671 Appendix 4, as entered here, has no table for ${cable.material} ${cable.construction} cable with ${cable.insulation} insulation`,
    source: appendix4.table4D2A.source,
  });

/** @internal The letter under which BS 7671 lists an IEC method. */
export const bsMethod = (method: ReferenceMethod) => method.replace(/^([ABD])[12]$/, '$1') as ReferenceMethod;

/** @internal The tables of capacities of a cable for a number of loaded conductors, its own first. */
export const capacityTablesFor = (cable: Cable, cord: boolean, loaded: '2' | '3') =>
  tablesFor(cable, cord).flatMap((t) => ((t.loaded ?? loaded) === loaded ? [t.capacity] : []));

/** @internal Of these the first that has a column for the method; where none has, its own stands for them. */
export function capacityTableFor(cable: Cable, cord: boolean, loaded: '2' | '3', method: ReferenceMethod) {
  const tables = capacityTablesFor(cable, cord, loaded);
  // a table without that axis is read whatever the method is
  return (
    tables.find((t) => !t.axes.some((a) => a.name === 'method') || t.offers('method').includes(method)) ?? tables[0]
  );
}

/** @internal How each table of capacities is read: by those of the keys that it has axes for. */
export const readCapacity = (method: 'listedMethod' | 'C' = 'listedMethod') => {
  const clipped = {
    method: set('C'),
    // single-core cables clipped direct lie touching
    formation: derive(['loaded'], ({ loaded }) => (loaded === '2' ? 'flat-touching' : 'flat-or-trefoil')),
  };
  const keys = {
    ...(method === 'C' ? clipped : { method }),
    system: derive(['loaded'], ({ loaded }) => (loaded === '3' ? 'three-phase' : 'single-phase')),
    build: set('multicore'),
  };
  return Object.fromEntries(
    cableTables.map(({ capacity }) => [
      capacity.id,
      // the tables differ in their axes: these are all that any of them has
      by(capacity, undefined, keys as never) as unknown as Line<
        'listedMethod' | 'loaded' | 'formation' | 'conductorArea',
        Amperes
      >,
    ]),
  );
};

/** @internal The table that prints the drop of a cable, or a part of it; a table of one figure, for small sizes, has it for r and z. */
export function dropTableFor(cable: Cable, area: number | undefined, system: string, part: 'r' | 'x' | 'z') {
  const cords = cable.construction === 'flexible' && area !== undefined && area < leastOfFlexible;
  const rows = tablesFor(cable, cords);
  const printing = (of: string) =>
    rows.find((t) => t.drop?.offers('system').includes(system) && t.drop.offers('component').includes(of));
  const printed = part === 'r' && !printing('r') ? 'z' : part;
  const { drop, dropFactor } = printing(printed) ?? {};
  return drop && { drop, dropFactor, part: printed };
}

/** The table of capacities that serves a cable, or undefined where none is entered. */
export function capacityTableOf(cable: Cable): Pick<Table, 'id' | 'offers'> | undefined {
  const [tables] = tablesFor(cable, false);
  if (!tables) return undefined;
  const { id, offers } = tables.capacity;
  const cords = tablesFor(cable, true).flatMap((t) => t.capacity.offers('conductorArea'));
  const smaller = cords.filter((size) => Number(size) < leastOfFlexible);
  return { id, offers: (axis) => (axis === 'conductorArea' ? [...smaller, ...offers(axis)] : offers(axis)) };
}
