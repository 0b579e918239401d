import { cableTables } from '../../../src/codes/bs7671/cable-tables.js';
import * as iec from '../../../src/codes/iec60364/definitions.js';
import {
  CalculationError,
  celsius,
  hertz,
  kelvinMetresPerWatt,
  metres,
  millimetres,
  squareMillimetres,
} from '../../../src/index.js';
import type { CableConstruction } from '../../../src/installation/index.js';
import { type HeatCable, type HeatSurroundings, heatBalance } from '../../../src/physics/heat/index.js';
import { armouredBuild, unarmouredBuild } from '../../../src/products/index.js';

/** A tabulated capacity beside the computed one. */
export interface TableDeviation {
  /** Identifier of the table. */
  readonly table: string;
  /** Key of the column, as printed, and what was computed for it. */
  readonly column: string;
  /** Cross-section, mm². */
  readonly size: number;
  /** Tabulated capacity, A. */
  readonly tabulated: number;
  /** Computed capacity, A. */
  readonly computed: number;
  /** Computed over tabulated, less one. */
  readonly deviation: number;
}

type Metal = 'copper' | 'aluminium';
type Choice = (size: number) => HeatCable | undefined;

interface Printed {
  readonly id: string;
  readonly columns: readonly (readonly (string | number)[])[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

interface Compared {
  readonly table: Printed;
  readonly column: readonly string[];
  readonly as: string;
  readonly cable: Choice;
  readonly loaded: 2 | 3;
  readonly hot: 70 | 90;
  readonly where: (cable: HeatCable) => HeatSurroundings;
}

/** A build, or nothing where no such cable is listed. */
const listed =
  (build: (size: number) => HeatCable): Choice =>
  (size) => {
    try {
      return build(size);
    } catch (error) {
      if (error instanceof CalculationError && error.code === 'no-cell') return undefined;
      throw error;
    }
  };
const unarmoured = (metal: Metal, hot: 70 | 90, cores: 1 | 2 | 3): Choice =>
  listed((size) =>
    unarmouredBuild({
      metal,
      insulation: hot === 70 ? 'PVC' : 'XLPE',
      cores,
      conductorArea: squareMillimetres(size),
    }),
  );
const armoured = (metal: Metal, cores: 2 | 3 | 4): Choice =>
  listed((size) => armouredBuild({ metal, cores, conductorArea: squareMillimetres(size) }));

// conditions of the tables: air 30 °C; ground 20 °C, 2.5 K·m/W, 0.7 m
const air = (formation: Extract<HeatSurroundings, { where: 'air' }>['formation']) => (): HeatSurroundings => ({
  where: 'air',
  ambientTemperature: celsius(30),
  formation,
});
const soil = {
  groundTemperature: celsius(20),
  soilResistivity: kelvinMetresPerWatt(2.5),
  burialDepth: metres(0.7),
} as const;
const ground = (): HeatSurroundings => ({ where: 'ground', ...soil });
/** The tables do not print their duct: plastic, one and a half diameters wide, not below 63 mm. */
const duct = (cable: HeatCable): HeatSurroundings => {
  const inner = Math.max(63, 1.5 * cable.overallDiameter);
  return {
    where: 'duct',
    ...soil,
    duct: {
      kind: 'plastic',
      wall: 'PVC duct',
      innerDiameter: millimetres(inner),
      outerDiameter: millimetres(inner * 1.08),
    },
  };
};

const shut: readonly (readonly [Printed, 2 | 3, 70 | 90])[] = [
  [iec.tableB522, 2, 70],
  [iec.tableB523, 2, 90],
  [iec.tableB524, 3, 70],
  [iec.tableB525, 3, 90],
];
const enclosed = shut.flatMap(([table, loaded, hot]) =>
  (['copper', 'aluminium'] as const).flatMap((metal) => {
    const one = (method: string, as: string, where: Compared['where']): Compared => {
      return { table, column: [metal, method], as, cable: unarmoured(metal, hot, loaded), loaded, hot, where };
    };
    return [
      one('C', 'multicore on a wall', air('one-on-wall')),
      one('D1', 'multicore in a plastic duct', duct),
      one('D2', 'multicore in the ground', ground),
    ];
  }),
);

const airFormations = [
  ['F', 2, 'flat-touching', 'two-touching-horizontal'],
  ['F', 3, 'trefoil', 'three-trefoil'],
  ['F', 3, 'flat-touching', 'three-touching-horizontal'],
  ['G', 3, 'spaced-horizontal', 'one-spaced'],
  ['G', 3, 'spaced-vertical', 'three-spaced-vertical'],
] as const;
const singles = (table: Printed, metal: Metal, hot: 70 | 90): readonly Compared[] =>
  airFormations.map(([method, loaded, formation, as]) => ({
    table,
    column: [method, String(loaded), formation],
    as: `single-core, ${as}`,
    cable: unarmoured(metal, hot, 1),
    loaded,
    hot,
    where: air(as),
  }));
const multicore = (
  table: Printed,
  hot: 70 | 90,
  cable: (loaded: 2 | 3) => Choice,
  as: string,
  methods: readonly (readonly [string, string, Compared['where']])[],
  formation: readonly string[] = [],
): readonly Compared[] =>
  ([2, 3] as const).flatMap((loaded) =>
    methods.map(([method, place, where]) => ({
      table,
      column: [method, String(loaded), ...formation],
      as: `${as} ${place}`,
      cable: cable(loaded),
      loaded,
      hot,
      where,
    })),
  );
const onWall = ['C', 'on a wall', air('one-on-wall')] as const;
const inAir = ['E', 'in free air', air('one-spaced')] as const;
const inDuct = ['D', 'in a plastic duct', duct] as const;

const free = (table: Printed, metal: Metal, hot: 70 | 90) => [
  ...multicore(table, hot, (n) => unarmoured(metal, hot, n), 'multicore', [inAir], ['multicore']),
  ...singles(table, metal, hot),
];
const armour = [onWall, inAir, inDuct] as const;

/** The capacity tables of BS 7671 for cables of a construction. */
const of = (
  construction: CableConstruction,
  compare: (table: Printed, metal: Metal, hot: 70 | 90) => readonly Compared[],
): readonly Compared[] =>
  cableTables.flatMap((row) =>
    row.construction === construction
      ? compare(row.capacity, row.material, row.insulation === 'thermoplastic-70' ? 70 : 90)
      : [],
  );

/** What is compared: a column of a table with a cable and its surroundings. */
const compared: readonly Compared[] = [
  ...enclosed,
  ...free(iec.tableB5210, 'copper', 70),
  ...free(iec.tableB5211, 'aluminium', 70),
  ...free(iec.tableB5212, 'copper', 90),
  ...free(iec.tableB5213, 'aluminium', 90),
  ...of('single-core', (t, metal, hot) => singles(t, metal, hot)),
  ...of('multicore', (t, metal, hot) =>
    multicore(t, hot, (n) => unarmoured(metal, hot, n), 'multicore', [onWall, inAir]),
  ),
  // dimensions are listed of thermosetting armoured cable only
  ...of('armoured', (t, metal, hot) =>
    hot === 90 ? multicore(t, hot, (n) => armoured(metal, n), 'armoured', armour) : [],
  ),
];

/** The computed capacity for a cell, or undefined where no such cable is listed. */
function computed({ cable, loaded, hot, where }: Compared, size: number): number | undefined {
  const build = cable(size);
  return (
    build &&
    heatBalance({
      cable: build,
      loadedConductors: loaded,
      surroundings: where(build),
      operatingTemperature: celsius(hot),
      frequency: hertz(50),
    }).computedCapacity
  );
}

/**
 * Every tabulated capacity that the heat balance covers, with the computed one and the deviation. Methods A and B, flat
 * twin cable, thermoplastic armoured cable and flexible cable are not covered, nor sizes without listed dimensions.
 */
export function tableDeviations(): readonly TableDeviation[] {
  return compared.flatMap((c) => {
    const at = c.table.columns.findIndex((key) => key.join() === c.column.join());
    if (at < 0) throw new Error(`${c.table.id} has no column ${c.column.join(' ')}`);
    return c.table.rows.flatMap((row) => {
      const [size, tabulated] = [Number(row[0]), row[at + 1]];
      if (typeof tabulated !== 'number') return [];
      const ours = computed(c, size);
      if (ours === undefined) return [];
      return [
        {
          table: c.table.id,
          column: `${c.column.join(' ')}: ${c.as}`,
          size,
          tabulated,
          computed: ours,
          deviation: ours / tabulated - 1,
        },
      ];
    });
  });
}

/** How deviations are spread. */
export interface DeviationSpread {
  readonly count: number;
  readonly mean: number;
  readonly deviation: number;
  readonly least: number;
  readonly most: number;
  /** Share within 3 % and within 5 %. */
  readonly within3: number;
  readonly within5: number;
}

/** The spread of some deviations. */
export function spreadOf(rows: readonly TableDeviation[]): DeviationSpread {
  const all = rows.map((r) => r.deviation);
  const mean = all.reduce((a, b) => a + b, 0) / all.length;
  return {
    count: all.length,
    mean,
    deviation: Math.sqrt(all.reduce((a, b) => a + (b - mean) ** 2, 0) / all.length),
    least: Math.min(...all),
    most: Math.max(...all),
    within3: all.filter((d) => Math.abs(d) <= 0.03).length / all.length,
    within5: all.filter((d) => Math.abs(d) <= 0.05).length / all.length,
  };
}

/** The deviations as a table of percentages: a row for each column of a table, the sizes across, then mean and spread. */
export function deviationsBySize(all = tableDeviations()): {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
} {
  const sizes = [...new Set(all.map((r) => r.size))].sort((a, b) => a - b);
  const columns = [...new Set(all.map((r) => `${r.table} ${r.column}`))];
  const percent = (share: number) => (100 * share).toFixed(1).replace(/^-(0\.0)$/, '$1');
  return {
    head: ['column', ...sizes.map(String), 'mean', 'spread'],
    rows: columns.map((name) => {
      const own = all.filter((r) => `${r.table} ${r.column}` === name);
      const { mean, deviation } = spreadOf(own);
      const at = (size: number) => own.find((r) => r.size === size);
      const cells = sizes.map((size) => {
        const found = at(size);
        return found === undefined ? '' : percent(found.deviation);
      });
      return [name, ...cells, percent(mean), percent(deviation)];
    }),
  };
}
