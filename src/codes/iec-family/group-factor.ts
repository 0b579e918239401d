import { by, choose, derive, type Line, open, orElse, set, when } from '../../calculation/index.js';
import { contradicted } from '../../core/contradicted.js';
import { type Fact, type Known, known, missing, type Table, unknown } from '../../core/index.js';
import type { Cable, Group, Run, Stretch } from '../../installation/index.js';
import { manyCoresFactors } from '../../products/vde0298/tables/4-many-cores.js';
import { type Ratio, ratio } from '../../units/index.js';
import { unequalGroupFactor } from './capacity.js';
import type { directFactors, ductFactors, singleCoreTrayFactors, trayFactors } from './factor-forms.js';
import { isEnclosed } from './facts.js';
import { ofCable, ofSection, type SectionPlace } from './places.js';

type Factors<F extends { readonly axes: readonly unknown[] }> = Table<
  F['axes'] extends infer A extends Table['axes'] ? A : never,
  'groupFactor'
>;

/** What a wiring code says of groups. */
export interface GroupTables<T extends string, C extends string> {
  /** Cables on a surface, bunched or in a single layer. */
  readonly touching: Line<T, Ratio>;
  /** Cables in a single layer under a ceiling. */
  readonly ceiling: Line<C, Ratio>;
  /** Cables direct in the ground. */
  readonly direct: Factors<typeof directFactors>;
  /** Multicore cables in buried ducts. */
  readonly ductsOfMulticore: Factors<typeof ductFactors>;
  /** Single-core cables in buried ducts. */
  readonly ductsOfSingles: Factors<typeof ductFactors>;
  /** Multicore cables on trays or ladders. */
  readonly trays: Factors<typeof trayFactors>;
  /** Three-phase circuits of single-core cables on trays or ladders. */
  readonly traysOfSingles: Factors<typeof singleCoreTrayFactors>;
  /** Clause by which circuits below 30 % are left out. */
  readonly lightClause: string;
}

/** The circuits beside a section, as they lie where its own cable is seen to lie closer than what is said of them. */
function groupOf({ method, containment, group }: Stretch): Group | undefined {
  if (!group) return undefined;
  const { tray: _, ...rest } = group;
  const { arrangement } = group;
  const said = method.state === 'known' ? method.value : '';
  const layer = arrangement.startsWith('single-layer');
  if ((containment === 'buried' || said === 'D2') && ['ducts-in-ground', 'bunched'].includes(arrangement))
    return { ...rest, arrangement: 'direct-in-ground' };
  if (layer && (isEnclosed(containment) || /^[AB]/.test(said))) return { ...rest, arrangement: 'bunched' };
  return containment === 'clipped' && /tray|ladder/.test(arrangement)
    ? { ...rest, arrangement: 'single-layer-wall' }
    : group;
}
/** Whether circuits are said to lie above ground beside a section below it, or the other way round. */
const isElsewhere = ({ method, group }: Stretch): boolean =>
  method.state === 'known' &&
  (method.value.startsWith('D')
    ? group?.arrangement.startsWith('single-layer') === true
    : group?.arrangement.endsWith('-in-ground') === true);

/** What is said of the circuits beside a section. */
function groupingOf({ circuit, section }: SectionPlace) {
  const group = groupOf(section);
  if (!group) return (circuit.run.cable.parallel ?? 1) > 1 ? 'sets in parallel' : 'not stated';
  // under a ceiling and on some trays one cable alone has a factor already
  return group.tray || group.arrangement === 'single-layer-ceiling' ? 'tray or ceiling' : 'side by side';
}

const sizesAsked = /* @__PURE__ */ unknown(
  'compare the sizes of the cables: a small one among large ones carries less',
);

/** How they lie, as the tables have it. */
function layOf({ circuit, section }: SectionPlace) {
  const group = groupOf(section);
  const single = circuit.run.cable.construction === 'single-core';
  const three = circuit.phases === 3;
  switch (group?.arrangement) {
    case 'direct-in-ground':
      return 'direct';
    case 'ducts-in-ground':
      return single ? 'ducts, single-core' : 'ducts, multicore';
    default: {
      if (group?.tray && !single) return 'trays, multicore';
      if (group?.tray && three) return 'trays, single-core';
      if (single && (group?.tray || /tray|ladder/.test(group?.arrangement ?? '')))
        return three ? 'trays not described' : 'single-core, one phase';
      // one above the other, cables on trays carry less than the row of a single one has it
      if (/tray|ladder/.test(group?.arrangement ?? '')) return 'trays not described';
      return group?.arrangement === 'single-layer-ceiling' ? 'ceiling' : 'touching';
    }
  }
}

/** Whether nothing runs beside a section: how it would lie is no matter then. */
const isAlone = (circuits: Fact<Ratio> | Known<Ratio>): boolean =>
  typeof circuits === 'object' && 'state' in circuits && circuits.state === 'known' && circuits.value === 1;
const oneCircuit = /* @__PURE__ */ known(/* @__PURE__ */ ratio(1));
/** Circuits that count: without those that carry too little. */
function counted(name: string, group: Group, clause: string): Fact<Ratio> | Known<Ratio> {
  const { circuits, lightlyLoaded: light = 0 } = group;
  const least = circuits.state === 'known' ? circuits.value : circuits.state === 'between' ? circuits.least : light;
  if (light > least || light < 0)
    return missing({
      kind: 'fact',
      fact: `group of ${name}`,
      obtain: `${light} circuits are said to be lightly loaded, of a group of ${least}: count them anew`,
    });
  const less = (n: number) => ratio(Math.max(1, n - light));
  const by =
    light > 0
      ? { by: `${light} of them never above 30 % of their grouped rating, left out (${clause})` }
      : circuits.state !== 'unknown' && circuits.by
        ? { by: circuits.by }
        : {};
  switch (circuits.state) {
    case 'known':
      return { state: 'known', value: less(circuits.value), ...by };
    case 'between':
      return { state: 'between', least: less(circuits.least), most: less(circuits.most), ...by };
    default:
      return circuits;
  }
}

/** The printed clearance at or below a real one: the safe side. */
const clearance = (printed: readonly number[]) =>
  ofSection(({ section: { group } }) => {
    const fits = printed.filter((p) => group?.spacing !== undefined && group.spacing >= p).at(-1);
    return (fits === undefined ? 'touching' : `${fits} m`) as '0.25 m';
  });

/** Cores of the cable that carry load together: not more than it has. */
function loadedCoresOf({ construction, cores, loadedCores }: Cable): Fact<number> {
  if (loadedCores === undefined)
    return unknown('count the cores of the cable that carry load, those of other circuits too');
  const most =
    loadedCores.state === 'known' ? loadedCores.value : loadedCores.state === 'between' ? loadedCores.most : 0;
  const some = cores === 5 && construction !== 'single-core' && construction !== 'flat-twin-and-earth';
  return some || most <= cores
    ? loadedCores
    : contradicted(`the cable has ${cores} cores: see which of the two is right`);
}

type Tray = NonNullable<Group['tray']>;
const tray = <V>(read: (tray: Tray, place: SectionPlace) => V) =>
  ofSection((place): V => read(place.section.group?.tray as Tray, place));

/** Factor for the circuits beside a section, and the one for more than four loaded cores in the cable. */
export const groupFactor = <T extends string, C extends string>(tables: GroupTables<T, C>) => {
  const support = tray((t) => t.support);
  const trays = tray((t) => String(t.trays) as '1');
  const spacing = tray((t) => (t.spaced ? 'spaced' : 'touching'));
  const formation = tray((t, { section }) => {
    const lie = section.formation === 'flat-touching' ? 'flat' : 'trefoil';
    return `${lie} ${t.spaced ? 'spaced' : 'touching'}` as 'flat touching';
  });
  const printed = choose('lay', {
    touching: tables.touching,
    ceiling: tables.ceiling,
    direct: by(tables.direct, undefined, { clearance: clearance([0.125, 0.25, 0.5]) }),
    'ducts, multicore': by(tables.ductsOfMulticore, undefined, { clearance: clearance([0.25, 0.5, 1]) }),
    'ducts, single-core': by(tables.ductsOfSingles, undefined, { clearance: clearance([0.25, 0.5, 1]) }),
    'trays, multicore': by(tables.trays, undefined, { support, spacing, trays }),
    'trays, single-core': by(tables.traysOfSingles, undefined, { formation, support, trays }),
    'trays not described': ofSection<Ratio>(({ section }) =>
      missing({
        kind: 'fact',
        fact: `trays of ${section.name}`,
        obtain: 'see how many trays or ladders lie one above the other and how they are built',
      }),
    ),
    'single-core, one phase': open({
      kind: 'cell',
      table: tables.traysOfSingles.id,
      explain: `${tables.traysOfSingles.source.clause} lists three-phase circuits of single-core cables, not single-phase ones`,
      source: tables.traysOfSingles.source,
    }),
  });
  const alone = derive(['circuitsInGroup'], ({ circuitsInGroup }) => circuitsInGroup <= 1, {
    direction: { circuitsInGroup: -1 },
  });
  const amongOthers = when(
    'unequal',
    by(unequalGroupFactor, undefined, { groupedCircuits: 'circuitsInGroup' }),
    printed,
  );
  const grouped = choose('grouping', {
    'not stated': ofSection<Ratio>(({ section }) =>
      missing({
        kind: 'fact',
        fact: `circuits beside ${section.name}`,
        obtain: 'count those that run beside it, this one included; 1 where it runs alone',
      }),
    ),
    'sets in parallel': ofSection<Ratio>(({ section }) =>
      missing({
        kind: 'fact',
        fact: `group of ${section.name}`,
        obtain:
          'conductors in parallel warm one another: say how they lie, each set counted as a circuit; 1 when far apart',
      }),
    ),
    // one circuit alone on a tray or under a ceiling has a factor already
    'tray or ceiling': when(alone, printed, amongOthers),
    'side by side': when(alone, set(ratio(1), 'alone'), amongOthers),
  });
  const upTo10 = orElse(
    derive(['conductorArea'], ({ conductorArea }) => conductorArea <= 10, { direction: { conductorArea: -1 } }),
    set(true), // an area that is not known is missing in the capacity as well
  );
  const noCoresFactor = open({
    kind: 'cell',
    table: manyCoresFactors.id,
    explain: 'the factors for more than four loaded cores are for cables in air with conductors of up to 10 mm²',
    source: manyCoresFactors.source,
  });
  return {
    cables: {
      loadedCores: ofCable(({ run }) => loadedCoresOf(run.cable) as Fact<Ratio>, {
        called: 'loaded cores of the cable',
      }),
    },
    sections: {
      grouping: ofSection(groupingOf),
      unequal: ofSection(({ section: { group } }) => group?.unequal ?? sizesAsked, {
        called: ({ section }) => `whether the circuits beside ${section.name} are of very unequal size`,
      }),
      lay: ofSection(layOf),
      arrangement: ofSection(({ section }) => groupOf(section)?.arrangement ?? missing()),
      circuitsInGroup: ofSection(
        ({ section }) => {
          const { name, group } = section;
          if (!group) return oneCircuit;
          const circuits = counted(name, group, tables.lightClause);
          return isElsewhere(section) && !isAlone(circuits)
            ? contradicted(
                'they are said to lie above ground, and it lies below, or the other way round: see which is right',
              )
            : circuits;
        },
        { called: ({ section }) => `circuits beside ${section.name}` },
      ),
      coresFactor: when(
        orElse(
          derive(['loadedCores'], ({ loadedCores }) => loadedCores <= 4, { direction: { loadedCores: -1 } }),
          set(false),
        ),
        set(ratio(1), 'not more than four loaded cores'),
        when('buried', noCoresFactor, when(upTo10, by(manyCoresFactors), noCoresFactor)),
      ),
    },
    grouped,
  };
};

/** Whether more than four cores of one cable may carry load together. */
export const mayLoadMany = ({ cable: { construction, cores, loadedCores } }: Run): boolean =>
  loadedCores !== undefined || (cores === 5 && !['single-core', 'flat-twin-and-earth'].includes(construction));
/** Whether it is known that not more than two do. */
export const fewLoaded = ({ cable: { loadedCores } }: Run): boolean => {
  if (loadedCores === undefined || loadedCores.state === 'unknown') return loadedCores === undefined;
  return (loadedCores.state === 'known' ? loadedCores.value : loadedCores.most) <= 2;
};
export const manyCores = () => ofSection(({ circuit }) => mayLoadMany(circuit.run));
