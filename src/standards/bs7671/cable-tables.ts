import { factValue, isMissing, type Known, type Missing, missing, type Sheet, type Table } from '../../core/index.js';
import type { Cable, GroupArrangement, Stretch } from '../../installation/index.js';
import { type Amperes, metres, type Ratio, ratio, type VoltsPerAmpereMetre } from '../../units/index.js';
import { unequalGroupFactor } from '../iec-family/capacity.js';
import { isBuried, noFactor, type RatingTables } from '../iec-family/coordination.js';
import { table4B1 } from './tables/4b1.js';
import { table4B2 } from './tables/4b2.js';
import { table4B3 } from './tables/4b3.js';
import { table4C1 } from './tables/4c1.js';
import { table4C2 } from './tables/4c2.js';
import { table4C3Multicore, table4C3SingleCore } from './tables/4c3.js';
import { table4C4 } from './tables/4c4.js';
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
import { table4J4A } from './tables/4j4a.js';
import { table4J4B } from './tables/4j4b.js';
import { table52_2 } from './tables/52-2.js';

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

function ambient(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio> {
  if (cable.insulation === 'thermosetting-60')
    return sheet.given(
      'ambientFactor',
      missing({
        kind: 'cell',
        table: 'bs7671/4b1',
        explain: 'Table 4B1 has no column for 60 °C insulation',
        source: table4B1.source,
      }),
    );
  const insulation = sheet.label('insulation', cable.insulation);
  if (isBuried(stretch))
    return sheet.look(table4B2, { insulation, groundTemperature: sheet.given('groundTemperature', stretch.ambient) });
  return sheet.look(table4B1, { insulation, ambientTemperature: sheet.given('ambientTemperature', stretch.ambient) });
}

function group(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio> {
  const { group: g } = stretch;
  if (!g) return noFactor(sheet, 'groupFactor', 'no other circuit beside it');
  const circuits = factValue(`circuits beside ${stretch.name}`, g.circuits);
  const light = g.lightlyLoaded ?? 0;
  const by = light > 0 ? `${light} of them never above 30 % of their grouped rating, left out (523.5)` : undefined;
  const counted: Known<Ratio> = isMissing(circuits) ? circuits : ratio(Math.max(1, circuits - light));
  if (g.unequal) {
    const groupedCircuits = sheet.given('groupedCircuits', counted, by);
    return sheet.step(unequalGroupFactor, { groupedCircuits });
  }
  if (counted === 1) return noFactor(sheet, 'groupFactor', by ?? 'alone');
  const circuitsInGroup = sheet.given('circuitsInGroup', counted, by);
  return grouped(sheet, cable, stretch, g.arrangement, circuitsInGroup);
}

function grouped(
  sheet: Sheet,
  cable: Cable,
  stretch: Stretch,
  arrangement: GroupArrangement,
  circuitsInGroup: Known<Ratio>,
): Known<Ratio> {
  const g = stretch.group;
  switch (arrangement) {
    case 'direct-in-ground':
      return sheet.look(table4C2, {
        clearance: sheet.label('clearance', clearance(g?.spacing, [0.125, 0.25, 0.5]) as 'touching'),
        circuitsInGroup,
      });
    case 'ducts-in-ground': {
      const label = sheet.label('clearance', clearance(g?.spacing, [0.25, 0.5, 1]) as 'touching');
      const table = cable.construction === 'single-core' ? table4C3SingleCore : table4C3Multicore;
      return sheet.look(table, { clearance: label, circuitsInGroup });
    }
    case 'single-layer-ceiling':
      return sheet.given(
        'groupFactor',
        missing({
          kind: 'cell',
          table: 'bs7671/4c1',
          explain: 'Table 4C1, as entered here, has no row for cables under a ceiling',
          source: table4C1.source,
        }),
      );
    default:
      if (g?.tray)
        return sheet.look(table4C4, {
          support: sheet.label('support', g.tray.support),
          spacing: sheet.label('spacing', g.tray.spaced ? 'spaced' : 'touching'),
          trays: sheet.label('trays', String(g.tray.trays) as '1'),
          circuitsInGroup,
        });
      return sheet.look(table4C1, { circuitsInGroup, arrangement: sheet.label('arrangement', arrangement) });
  }
}

/** The printed clearance at or below a real one: the safe side. */
function clearance(spacing: number | undefined, printed: readonly number[]): string {
  const fits = printed.filter((p) => spacing !== undefined && spacing >= p).at(-1);
  return fits === undefined ? 'touching' : `${fits} m`;
}

function insulation(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio> {
  const length = stretch.insulated ? factValue(`insulated length of ${stretch.name}`, stretch.insulated) : metres(0);
  if (length === 0) return noFactor(sheet, 'insulationFactor', 'no length in thermal insulation');
  if (cable.area.state === 'known' && cable.area.value > 10)
    return sheet.given(
      'insulationFactor',
      missing({
        kind: 'cell',
        table: 'bs7671/52.2',
        explain: 'Table 52.2 is for conductors of up to 10 mm²',
        source: table52_2.source,
      }),
    );
  const counted = isMissing(length) ? length : metres(Math.min(length, 0.5));
  const by = !isMissing(length) && length > 0.5 ? 'from 0.5 m up the factor stays the same (523.9)' : undefined;
  return sheet.look(table52_2, { insulatedLength: sheet.given('insulatedLength', counted, by) });
}

function soil(sheet: Sheet, _cable: Cable, stretch: Stretch): Known<Ratio> {
  if (!isBuried(stretch)) return noFactor(sheet, 'soilFactor', 'not in the ground');
  const laying = sheet.label('laying', stretch.containment === 'duct' ? 'ducts' : 'direct');
  const resistivity = stretch.soilResistivity ?? {
    state: 'unknown' as const,
    obtain: 'assume 2.5 K·m/W by stating it, or have the soil measured',
  };
  return sheet.look(table4B3, { laying, soilResistivity: sheet.given('soilResistivity', resistivity) });
}

/** The rating tables of BS 7671 Appendix 4. */
export const ratingTables: RatingTables = {
  tabulated,
  ambient,
  group,
  insulation,
  soil,
  containsInsulation: (method) => /^(A[12]?|10[0-3])$/.test(method),
};

/**
 * Reads the tabulated drop of a cable.
 * @param sheet where it is written
 * @param cable the cable
 * @param stretch how single-core cables lie
 * @param system single- or three-phase
 * @param component r, x or z
 */
export function dropRateOf(
  sheet: Sheet,
  cable: Cable,
  stretch: Stretch | undefined,
  system: 'single-phase' | 'three-phase',
  component: 'r' | 'x' | 'z',
): Known<VoltsPerAmpereMetre> {
  const sort = sortOf(cable);
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
 */
export function capacityTableOf(cable: Cable): Pick<Table, 'id' | 'offers'> | undefined {
  const sort = sortOf(cable);
  if (sort === undefined) return undefined;
  return {
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
}
