import {
  type Axis,
  factValue,
  isMissing,
  type Known,
  type Missing,
  missing,
  type Sheet,
  type Table,
} from '../../core/index.js';
import type { Cable, GroupArrangement, Stretch } from '../../installation/index.js';
import { tableManyCores } from '../../products/vde0298/tables/4-many-cores.js';
import { type Ratio, ratio } from '../../units/index.js';
import { groupWithCores, groupWithDrum, unequalGroupFactor } from './capacity.js';
import { isBuried, noFactor } from './rating-tables.js';

/** Cables that lie in air without trays of their own. */
export type TouchingArrangement = Exclude<GroupArrangement, 'direct-in-ground' | 'ducts-in-ground'>;

/** A table of group factors; what it has no label for, it says itself. */
export type GroupTable = Table<readonly Axis[], 'groupFactor'>;

/** What a wiring code says of groups: its tables, read with keys that the sheet has. */
export interface GroupTables {
  /** Cables on a surface, bunched or in a single layer; the number is written where a table is read with it. */
  touching(sheet: Sheet, arrangement: TouchingArrangement, circuitsInGroup: () => Known<Ratio>): Known<Ratio>;
  /** Cables direct in the ground, by clearance and circuits. */
  readonly direct: GroupTable;
  /** Multicore cables in buried ducts, by clearance and circuits. */
  readonly ductsOfMulticore: GroupTable;
  /** Single-core cables in buried ducts, by clearance and circuits. */
  readonly ductsOfSingles: GroupTable;
  /** Multicore cables on trays or ladders, by support, spacing, trays and circuits. */
  readonly trays: GroupTable;
  /** Three-phase circuits of single-core cables on trays or ladders, by formation, support, trays and circuits. */
  readonly traysOfSingles: GroupTable;
  /** Factor for cable on a drum, where the code has one. */
  readonly drum?: (sheet: Sheet, drum: NonNullable<Stretch['drum']>) => Known<Ratio>;
  /** Clause by which circuits below 30 % are left out. */
  readonly lightClause: string;
}

/** The printed clearance at or below a real one: the safe side. */
function clearance(spacing: number | undefined, printed: readonly number[]): string {
  const fits = printed.filter((p) => spacing !== undefined && spacing >= p).at(-1);
  return fits === undefined ? 'touching' : `${fits} m`;
}

/** Circuits beside a stretch, without those that carry too little to count. */
function groupFactor(tables: GroupTables, sheet: Sheet, cable: Cable, stretch: Stretch, three: boolean): Known<Ratio> {
  const { group } = stretch;
  if (!group && (cable.parallel ?? 1) > 1)
    return sheet.given(
      'groupFactor',
      missing({
        kind: 'fact',
        fact: `group of ${stretch.name}`,
        obtain:
          'conductors in parallel warm one another: say how they lie, each set counted as a circuit; 1 when far apart',
      }),
    );
  if (!group) return noFactor(sheet, 'groupFactor', 'no other circuit beside it');
  const circuits = factValue(`circuits beside ${stretch.name}`, group.circuits);
  const light = group.lightlyLoaded ?? 0;
  const by =
    light > 0
      ? `${light} of them never above 30 % of their grouped rating, left out (${tables.lightClause})`
      : undefined;
  const counted: Known<Ratio> = isMissing(circuits) ? circuits : ratio(Math.max(1, circuits - light));
  if (group.unequal) {
    const groupedCircuits = sheet.given('groupedCircuits', counted, by);
    return sheet.step(unequalGroupFactor, { groupedCircuits });
  }
  const alone = group.tray === undefined && group.arrangement !== 'single-layer-ceiling';
  if (counted === 1 && alone) return noFactor(sheet, 'groupFactor', by ?? 'alone');
  const count = () => sheet.given('circuitsInGroup', counted, by);
  const single = cable.construction === 'single-core';
  switch (group.arrangement) {
    case 'direct-in-ground':
      return read(sheet, tables.direct, { clearance: clearance(group.spacing, [0.125, 0.25, 0.5]) }, count());
    case 'ducts-in-ground': {
      const ducts = single ? tables.ductsOfSingles : tables.ductsOfMulticore;
      return read(sheet, ducts, { clearance: clearance(group.spacing, [0.25, 0.5, 1]) }, count());
    }
    default: {
      const { tray } = group;
      if (tray && !single) {
        const spacing = tray.spaced ? 'spaced' : 'touching';
        return read(sheet, tables.trays, { support: tray.support, spacing, trays: String(tray.trays) }, count());
      }
      if (tray && three) {
        const lie = stretch.formation === 'flat-touching' ? 'flat' : 'trefoil';
        const formation = `${lie} ${tray.spaced ? 'spaced' : 'touching'}`;
        return read(
          sheet,
          tables.traysOfSingles,
          { formation, support: tray.support, trays: String(tray.trays) },
          count(),
        );
      }
      if (single && (group.tray || /tray|ladder/.test(group.arrangement)))
        return sheet.given('groupFactor', singlesOnTray(tables, stretch, three));
      return tables.touching(sheet, group.arrangement, count);
    }
  }
}

/** Reads a table by labels and the number of circuits. */
function read(
  sheet: Sheet,
  table: GroupTable,
  labels: Readonly<Record<string, string>>,
  circuitsInGroup: Known<Ratio>,
): Known<Ratio> {
  const keys = Object.entries(labels).map(([name, label]) => [name, sheet.label(name, label)]);
  return sheet.look(table, { ...Object.fromEntries(keys), circuitsInGroup });
}

/** Why single-core cables on a tray have no factor. */
const singlesOnTray = (tables: GroupTables, stretch: Stretch, three: boolean): Missing =>
  missing(
    three
      ? {
          kind: 'fact',
          fact: `trays of ${stretch.name}`,
          obtain: 'see how many trays or ladders lie one above the other and how they are built',
        }
      : {
          kind: 'cell',
          table: tables.traysOfSingles.id,
          explain: `${tables.traysOfSingles.source.clause} lists three-phase circuits of single-core cables, not single-phase ones`,
          source: tables.traysOfSingles.source,
        },
  );

/**
 * How the code's tables give the factor for the circuits beside a stretch, for more than four loaded cores in the cable
 * and for cable on a drum.
 */
export const groupFactorOf =
  (tables: GroupTables) =>
  (sheet: Sheet, cable: Cable, stretch: Stretch, three: boolean): Known<Ratio> => {
    let factor = groupFactor(tables, sheet, cable, stretch, three);
    if (cable.loadedCores)
      factor = sheet.step(groupWithCores, { groupFactor: factor, coresFactor: manyCores(sheet, cable, stretch) });
    if (stretch.drum && tables.drum) {
      const drumFactor = tables.drum(sheet, stretch.drum);
      factor = sheet.step(groupWithDrum, { groupFactor: factor, drumFactor });
    }
    return factor;
  };

/** Factor for more than four loaded cores: in air, up to 10 mm². */
function manyCores(sheet: Sheet, cable: Cable, stretch: Stretch): Known<Ratio> {
  const loaded = factValue('loaded cores of the cable', cable.loadedCores ?? { state: 'unknown' });
  if (!isMissing(loaded) && loaded <= 4) return sheet.given('coresFactor', ratio(1), 'not more than four loaded cores');
  const area = factValue('area of the conductors', cable.area);
  if (isBuried(stretch) || (!isMissing(area) && area > 10))
    return sheet.given(
      'coresFactor',
      missing({
        kind: 'cell',
        table: tableManyCores.id,
        explain: 'the factors for more than four loaded cores are for cables in air with conductors of up to 10 mm²',
        source: tableManyCores.source,
      }),
    );
  const loadedCores = sheet.given('loadedCores', isMissing(loaded) ? loaded : ratio(loaded));
  return sheet.look(tableManyCores, { loadedCores });
}
