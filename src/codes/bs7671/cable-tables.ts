import { factValue, isMissing, type Known, type Missing, missing, type Sheet, type Table } from '../../core/index.js';
import type { Cable, Stretch } from '../../installation/index.js';
import { type Amperes, ratio, type VoltsPerAmpereMetre } from '../../units/index.js';
import type { RatingTables } from '../iec-family/rating-tables.js';
import { dropRateCorrected } from '../iec-family/voltage-drop.js';
import {
  ambient,
  containsInsulation,
  group,
  insulation,
  isCord,
  leastOfFlexible,
  overload,
  soil,
} from './rating-factors.js';
import { table4D1A } from './tables/4d1a.js';
import { table4D1B } from './tables/4d1b.js';
import { table4D2A } from './tables/4d2a.js';
import { table4D2B } from './tables/4d2b.js';
import { table4D4A } from './tables/4d4a.js';
import { table4D4B } from './tables/4d4b.js';
import { table4D5, table4D5Drop } from './tables/4d5.js';
import { table4E1A } from './tables/4e1a.js';
import { table4E1B } from './tables/4e1b.js';
import { table4E2A } from './tables/4e2a.js';
import { table4E2B } from './tables/4e2b.js';
import { table4E4A } from './tables/4e4a.js';
import { table4E4B } from './tables/4e4b.js';
import { table4F1A } from './tables/4f1a.js';
import { table4F2A } from './tables/4f2a.js';
import { table4F2B } from './tables/4f2b.js';
import { table4F3A } from './tables/4f3a.js';
import { table4F3B } from './tables/4f3b.js';
import { table4J4A } from './tables/4j4a.js';
import { table4J4B } from './tables/4j4b.js';

const noTable = (cable: Cable): Missing =>
  missing({
    kind: 'cell',
    // the first table of multicore cable stands for the appendix
    table: table4D2A.id,
    explain: `BS 7671 Appendix 4, as entered here, has no table for ${cable.material} ${cable.construction} cable with ${cable.insulation} insulation`,
    source: table4D2A.source,
  });

type Sort =
  | 'single-70'
  | 'multi-70'
  | 'armoured-70'
  | 'flat'
  | 'single-90'
  | 'multi-90'
  | 'armoured-90'
  | 'armoured-90-al'
  | 'flex-60'
  | 'flex-90';

/** Which family of tables serves a cable. */
function sortOf(cable: Cable): Sort | undefined {
  const hot = cable.insulation === 'thermosetting-90';
  if (cable.material === 'aluminium') return cable.construction === 'armoured' && hot ? 'armoured-90-al' : undefined;
  switch (cable.construction) {
    case 'flat-twin-and-earth':
      return cable.insulation === 'thermoplastic-70' ? 'flat' : undefined;
    case 'flexible':
      return hot ? 'flex-90' : cable.insulation === 'thermosetting-60' ? 'flex-60' : undefined;
    case 'single-core':
      return hot ? 'single-90' : cable.insulation === 'thermoplastic-70' ? 'single-70' : undefined;
    case 'multicore':
      return hot ? 'multi-90' : cable.insulation === 'thermoplastic-70' ? 'multi-70' : undefined;
    case 'armoured':
      return hot ? 'armoured-90' : cable.insulation === 'thermoplastic-70' ? 'armoured-70' : undefined;
    default: {
      const never: never = cable.construction;
      return never;
    }
  }
}

/** A label that comes from data: where a table has no such label, the table itself says what it has. */
const listed = (label: Known<string>) => label as Known<never>;

/** The letter under which BS 7671 lists an IEC method. */
const bsMethod = (method: string): string => method.replace(/^([ABD])[12]$/, '$1');

function formationOf(method: string, loaded: '2' | '3', stretch: Stretch): string {
  if (method === 'A' || method === 'B') return 'enclosed';
  if (method === 'C') return loaded === '2' ? 'flat-touching' : 'flat-or-trefoil';
  return stretch.formation ?? (loaded === '2' ? 'flat-touching' : 'trefoil');
}

function tabulated(sheet: Sheet, cable: Cable, stretch: Stretch, loaded: '2' | '3'): Known<Amperes> {
  const sort = sortOf(cable);
  if (!sort) return sheet.given('tabulatedCapacity', noTable(cable));
  const known = factValue(`method of ${stretch.name}`, stretch.method);
  const conductorArea = sheet.given('conductorArea', cable.area);
  if (isCord(cable))
    return sheet.look(table4F3A, {
      system: sheet.label('system', loaded === '3' ? 'three-phase' : 'single-phase'),
      conductorArea,
    });
  if (sort === 'flex-60' || sort === 'flex-90') {
    const build = sheet.label('build', 'multicore');
    const keys = { build, loaded: sheet.label('loaded', loaded), conductorArea };
    return sort === 'flex-60' ? sheet.look(table4F1A, keys) : sheet.look(table4F2A, keys);
  }
  const method = listed(sheet.label('method', isMissing(known) ? known : bsMethod(known)));
  if (sort === 'flat' && loaded === '2') return sheet.look(table4D5, { method, conductorArea });
  const count = sheet.label('loaded', loaded);
  const formation = () =>
    listed(sheet.label('formation', isMissing(known) ? known : formationOf(bsMethod(known), loaded, stretch)));
  switch (sort) {
    case 'single-70':
      return sheet.look(table4D1A, { method, loaded: count, formation: formation(), conductorArea });
    case 'single-90':
      return sheet.look(table4E1A, { method, loaded: count, formation: formation(), conductorArea });
    case 'flat':
    case 'multi-70':
      return sheet.look(table4D2A, { method, loaded: count, conductorArea });
    case 'multi-90':
      return sheet.look(table4E2A, { method, loaded: count, conductorArea });
    case 'armoured-70':
      return sheet.look(table4D4A, { method, loaded: count, conductorArea });
    case 'armoured-90':
      return sheet.look(table4E4A, { method, loaded: count, conductorArea });
    case 'armoured-90-al':
      return sheet.look(table4J4A, { method, loaded: count, conductorArea });
    default: {
      const never: never = sort;
      return never;
    }
  }
}

/** The rating tables of BS 7671 Appendix 4. */
export const ratingTables: RatingTables = { tabulated, ambient, group, insulation, soil, containsInsulation, overload };

/**
 * Reads the tabulated drop of a cable.
 * @param sheet where it is written
 * @param cable the cable
 * @param stretch how single-core cables lie
 * @param system single- or three-phase
 * @param component r, x or z
 * @returns drop per ampere and metre, V/(A·m), or what is missing
 */
export function dropRateOf(
  sheet: Sheet,
  cable: Cable,
  stretch: Stretch | undefined,
  system: 'single-phase' | 'three-phase',
  component: 'r' | 'x' | 'z',
): Known<VoltsPerAmpereMetre> {
  const sort = sortOf(cable);
  if (sort && isCord(cable)) return cordDrop(sheet, cable, system, component);
  if (!sort || sort === 'flex-60') return sheet.given('dropRate', noTable(cable));
  const conductorArea = sheet.given('conductorArea', cable.area);
  if (sort === 'flat' && system === 'single-phase' && component === 'z')
    return sheet.look(table4D5Drop, {
      system: sheet.label('system', 'single-phase'),
      component: sheet.label('component', 'z'),
      conductorArea,
    });
  const label = sheet.label('system', system);
  const part = sheet.label('component', component);
  const keys = { system: label, component: part, conductorArea };
  const known = stretch ? factValue(`method of ${stretch.name}`, stretch.method) : 'C';
  const singles = (): Known<'enclosed' | 'flat-touching' | 'trefoil' | 'spaced'> =>
    sheet.label('formation', isMissing(known) ? known : dropFormation(bsMethod(known), system, stretch));
  switch (sort) {
    case 'single-70':
      return sheet.look(table4D1B, { ...keys, formation: singles() });
    case 'single-90':
      return sheet.look(table4E1B, { ...keys, formation: singles() });
    case 'flat':
    case 'multi-70':
      return sheet.look(table4D2B, keys);
    case 'multi-90':
      return sheet.look(table4E2B, keys);
    case 'armoured-70':
      return sheet.look(table4D4B, keys);
    case 'armoured-90':
      return sheet.look(table4E4B, keys);
    case 'armoured-90-al':
      return sheet.look(table4J4B, keys);
    case 'flex-90':
      return sheet.look(table4F2B, { ...keys, build: sheet.label('build', 'multicore') });
    default: {
      const never: never = sort;
      return never;
    }
  }
}

/** Flexible cords: the table is for 60 °C, with a factor for 90 °C; up to 4 mm² its one figure stands for r and z. */
function cordDrop(
  sheet: Sheet,
  cable: Cable,
  system: 'single-phase' | 'three-phase',
  component: 'r' | 'x' | 'z',
): Known<VoltsPerAmpereMetre> {
  if (component === 'x') return sheet.given('dropRate', noTable(cable));
  const read = (at: Sheet) =>
    at.look(table4F3B, {
      system: at.label('system', system),
      component: at.label('component', 'z'),
      conductorArea: at.given('conductorArea', cable.area),
    });
  if (cable.insulation !== 'thermosetting-90') return read(sheet);
  const part = sheet.part('Tabulated, at 60 °C');
  read(part);
  return sheet.step(dropRateCorrected, {
    resistiveRate: sheet.gather('sum', 'dropRate', 'resistiveRate', [part]),
    temperatureCorrection: sheet.given(
      'temperatureCorrection',
      ratio(1.09),
      'BS 7671:2018+A2:2022 Table 4F3B, insulation for 90 °C',
    ),
  });
}

function dropFormation(
  method: string,
  system: 'single-phase' | 'three-phase',
  stretch: Stretch | undefined,
): 'enclosed' | 'flat-touching' | 'trefoil' | 'spaced' {
  if (method === 'A' || method === 'B') return 'enclosed';
  if (stretch?.formation?.startsWith('spaced') || method === 'G') return 'spaced';
  return system === 'single-phase'
    ? 'flat-touching'
    : stretch?.formation === 'flat-touching'
      ? 'flat-touching'
      : 'trefoil';
}

/**
 * The table of capacities that serves a cable, or undefined where none is entered.
 * @param cable the cable
 * @returns its identifier and what its axes offer, or undefined
 * @example
 * ```ts
 * import { known, squareMillimetres } from 'ohmwright';
 * import { capacityTableOf } from 'ohmwright/bs7671';
 *
 * const cable = {
 *   construction: 'flat-twin-and-earth',
 *   material: 'copper',
 *   insulation: 'thermoplastic-70',
 *   cores: 2,
 *   area: known(squareMillimetres(6)),
 *   protective: 'bare-core',
 * } as const;
 * capacityTableOf(cable)?.id; // => 'bs7671/4d5'
 * ```
 */
export function capacityTableOf(cable: Cable): Pick<Table, 'id' | 'offers'> | undefined {
  const sort = sortOf(cable);
  if (sort === undefined) return undefined;
  const table = {
    flat: table4D5,
    'single-70': table4D1A,
    'single-90': table4E1A,
    'multi-70': table4D2A,
    'multi-90': table4E2A,
    'armoured-70': table4D4A,
    'armoured-90': table4E4A,
    'armoured-90-al': table4J4A,
    'flex-60': table4F1A,
    'flex-90': table4F2A,
  }[sort] as unknown as Pick<Table, 'id' | 'offers'>;
  if (cable.construction !== 'flexible') return table;
  // below the sizes of the tables of cables there are those of cords
  const cords = table4F3A.offers('conductorArea').filter((s) => (s as number) < leastOfFlexible);
  return {
    id: table.id,
    offers: (axis) => (axis === 'conductorArea' ? [...cords, ...table.offers(axis)] : table.offers(axis)),
  };
}
