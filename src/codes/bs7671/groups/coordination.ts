import {
  by,
  choose,
  chosen,
  compare,
  derive,
  each,
  type Line,
  open,
  orElse,
  same,
  set,
  when,
} from '../../../calculation/index.js';
import { contradicted } from '../../../core/contradicted.js';
import { type Fact, isMissing, type Known, known, missing, type Table, unknown } from '../../../core/index.js';
import type { Outlet, Run } from '../../../installation/index.js';
import { type Amperes, amperes, metres, type Ratio, ratio } from '../../../units/index.js';
import * as shared from '../../iec-family/capacity.js';
import { temperatureAtShareOfCapacity } from '../../iec-family/conductor-temperature.js';
import {
  cableAndLoad,
  checksOfLoad,
  checksOfSection,
  conventionalNotEntered,
  governingSection,
  inParallel,
  loadAndDevice,
  surroundings,
} from '../../iec-family/coordination.js';
import { groupFactor, manyCores } from '../../iec-family/group-factor.js';
import { ofCable, ofSection, type SectionPlace } from '../../iec-family/places.js';
import { soilFactor, thermalInsulation, uninsulated } from '../../iec-family/section-factors.js';
import { bsMethod, capacityTableFor, leastOfFlexible, noTable, readCapacity } from '../cable-tables.js';
import * as own from '../capacity.js';
import * as clauses from '../clauses.js';
import * as appendix4 from '../tables/index.js';

/** What a table does not print, as a gap. */
const notPrinted = ({ id, source }: Pick<Table, 'id' | 'source'>, explain: string) =>
  open({ kind: 'cell', table: id, explain, source });

/** The table that is printed for the cable, and has it clipped. */
const ownTable = () =>
  derive(
    ['cable', 'cord', 'loaded'],
    ({ cable, cord, loaded }) => capacityTableFor(cable, cord, loaded, 'C')?.id ?? 'none',
  );

/** The table of capacities for the cable, and what it is read by. BS 7671 Appendix 4, Tables 4D to 4J. */
const tabulatedCapacity = () => {
  const inTable = (method?: 'C') =>
    choose(method ? 'clippedTable' : 'capacityTable', {
      ...readCapacity(method),
      none: derive(['cable'], ({ cable }): Known<Amperes> => noTable(cable)),
    });
  const ofAll = (one: ReturnType<typeof inTable>) =>
    when(inParallel(), by(shared.capacityInParallel, '523.7', { tabulatedCapacity: one }), one);
  return {
    cables: {
      cord: orElse(
        derive(
          ['cable', 'conductorArea'],
          (v) => v.cable.construction === 'flexible' && v.conductorArea < leastOfFlexible,
          {
            direction: { conductorArea: -1 },
          },
        ),
        set(false),
      ),
      clippedTable: ownTable(),
    },
    sections: {
      listedMethod: derive(['method'], ({ method }) => bsMethod(method)),
      capacityTable: orElse(
        derive(
          ['cable', 'cord', 'loaded', 'listedMethod'],
          ({ cable, cord, loaded, listedMethod }) => capacityTableFor(cable, cord, loaded, listedMethod)?.id ?? 'none',
        ),
        // how it is laid nobody knows: its own table stands for the others
        ownTable(),
      ),
      laid: ofSection(({ section }) => section.formation ?? 'not stated'),
      formation: derive(['listedMethod', 'loaded', 'laid'], ({ listedMethod: method, loaded, laid }) => {
        if (method === 'A' || method === 'B') return 'enclosed';
        if (method === 'C') return loaded === '2' ? 'flat-touching' : 'flat-or-trefoil';
        return laid !== 'not stated' ? laid : loaded === '2' ? 'flat-touching' : 'trefoil';
      }),
      tabulatedCapacity: ofAll(inTable()),
      clippedCapacity: ofAll(inTable('C')),
    },
  };
};

/** Factor C_a: of flexible cables none is taken above the reference where none is printed. BS 7671 Tables 4B1, 4B2, 4F. */
const ambientFactor = () => {
  const reference = set(ratio(1), 'not above 30 °C, for which the table of capacity is');
  const others = 'the factors entered above 30 °C are those of the 90 °C cables of Table 4F2A';
  const above = derive(['ambientTemperature'], ({ ambientTemperature }) => ambientTemperature > 30, {
    direction: { ambientTemperature: 1 },
  });
  return {
    ambientTable: derive(['cable', 'cord', 'buried'], ({ cable, cord, buried }) => {
      if (cable.construction === 'flexible' && !buried)
        return cord ? 'cord' : cable.insulation === 'thermosetting-90' ? 'flexible, 90 °C' : 'flexible, 60 °C';
      return cable.insulation === 'thermosetting-60' ? 'none' : buried ? 'ground' : 'air';
    }),
    ambientFactor: choose('ambientTable', {
      air: by(appendix4.table4B1),
      ground: by(appendix4.table4B2),
      none: notPrinted(appendix4.table4B1, 'Table 4B1 has no column for 60 °C insulation'),
      'flexible, 90 °C': when(above, by(appendix4.table4FAmbient), reference),
      'flexible, 60 °C': when(above, notPrinted(appendix4.table4FAmbient, others), reference),
      cord: when(above, notPrinted(appendix4.table4F3A, others), reference),
    }),
  };
};

/** Whether the cable is wound on a drum, which flexible cable alone is. */
function woundOf({ circuit, section: { drum } }: SectionPlace): Fact<boolean> {
  if (drum === 'none' || (drum === undefined && circuit.run.cable.construction !== 'flexible')) return known(false);
  if (drum === undefined)
    return unknown('see whether the cable stays wound on a drum while it is in use, and in how many layers');
  return circuit.run.cable.construction === 'flexible'
    ? known(true)
    : contradicted('only flexible cable is wound in use: see which of the two is right');
}

/** Factor C_g. BS 7671 Tables 4C1 to 4C5 and the notes of Tables 4F. */
const grouping = () => {
  const { cables, sections, grouped } = groupFactor({
    touching: by(appendix4.table4C1),
    ceiling: notPrinted(appendix4.table4C1, 'Table 4C1, as entered here, has no row for cables under a ceiling'),
    direct: appendix4.table4C2,
    ductsOfMulticore: appendix4.table4C3Multicore,
    ductsOfSingles: appendix4.table4C3SingleCore,
    trays: appendix4.table4C4,
    traysOfSingles: appendix4.table4C5,
    lightClause: 'BS 7671 523.5',
  });
  const factor = when(manyCores(), by(shared.groupWithCores, 'Appendix 4, 5', { groupFactor: grouped }), grouped);
  return {
    cables,
    sections: {
      ...sections,
      wound: ofSection<boolean>(woundOf, { called: ({ section }) => `drum of ${section.name}` }),
      drum: ofSection(({ section: { drum } }) => (drum === undefined || drum === 'none' ? missing() : drum)),
      drumFactor: by(appendix4.table4FDrum),
      groupFactor: when('wound', by(own.groupWithDrum, 'Tables 4F, notes', { groupFactor: factor }), factor),
    },
  };
};

/** Factor C_i. BS 7671 523.9, Table 52.2. */
const insulationFactor = () => {
  const surrounded = when(
    derive(['conductorArea'], ({ conductorArea }) => conductorArea > 10, { direction: { conductorArea: 1 } }),
    notPrinted(appendix4.table52_2, 'Table 52.2 is for conductors of up to 10 mm²'),
    by(appendix4.table52_2, '523.9', {
      insulatedLength: derive(['insulatedLength'], (v) => metres(Math.min(v.insulatedLength, 0.5)), {
        by: 'from 0.5 m up the factor stays the same (523.9)',
        direction: { insulatedLength: 1 },
      }),
    }),
  );
  const where = <L extends Line<string, Ratio>>(factor: L) =>
    when(uninsulated(), set(ratio(1), 'no length in thermal insulation'), factor);
  return {
    ...thermalInsulation(/^103$/, /^(A[12]?|10[0-2])$/),
    insulationFactor: choose('insulationCounts', {
      'in the method': set(ratio(1), 'the reference method already contains the insulation'),
      'beside the method': where(by(own.insulationBesideMethod, '523.9', { surroundFactor: surrounded })),
      'by a factor': where(surrounded),
    }),
  };
};

/** Multiples of the rated current at which a device operates within its conventional time. */
const conventionalMultiple = () => {
  const breaker = set(ratio(1.45), 'EN 60898: conventional tripping current 1.45 I_n');
  const fuse = set(ratio(1.45), 'fuse in its enclosure counts as 1.45 I_n, BS 7671 433.1.202, from memory');
  return choose(
    derive(['deviceKind'], ({ deviceKind }) => deviceKind.standard),
    {
      'EN 60898': breaker,
      'EN 61009': breaker,
      'BS 88-2': fuse,
      'BS 88-3': fuse,
      'BS 1361': fuse,
      'BS 3036': set(ratio(2), 'BS 3036: fusing factor 2'),
      'BS 1362': conventionalNotEntered('BS 1362'),
      'BS 3871': conventionalNotEntered('BS 3871'),
    },
  );
};

/** The column of Table 4B3 for a section, as far as method and containment say it and agree. */
function soilColumnOf({ section: { method, containment } }: SectionPlace) {
  const named =
    method.state === 'known' ? { D1: 'ducts' as const, D2: 'direct' as const }[method.value as 'D1'] : undefined;
  const seen =
    containment === 'buried' ? 'direct' : containment === 'duct' || containment === 'conduit' ? 'ducts' : undefined;
  return named && seen && named !== seen ? 'not stated' : (named ?? seen ?? 'not stated');
}

/** Largest fuse in the plug or connection unit of an accessory to BS 1363, A. */
const largestPlugFuse = 13;

/** Whether an outlet of a ring is one of those for which its rule is, as far as that is known. */
function onRing(o: Outlet, { lines, id }: Run): Known<boolean> {
  if (o.kind !== 'load' || lines.length > 1) return false;
  const fixed = o.purpose !== 'socket-outlets' && o.current.state !== 'unknown';
  const least = o.current.state === 'between' ? o.current.least : o.current.state === 'known' ? o.current.value : 0;
  if (fixed && least > largestPlugFuse) return false;
  if (o.accessories?.state === 'known') return o.accessories.value === 'BS 1363';
  return missing({
    kind: 'fact',
    fact: `accessories of ${o.id}`,
    obtain: `see whether all that ${id} feeds is connected by socket-outlets or fused connection units to BS 1363`,
  });
}

/** Whether the rule for ring final circuits holds; every other ring is a circuit like any other. BS 7671 433.1.204. */
const ringFinalCircuit = () => ({
  ringLoads: ofCable<boolean>(({ run }) => {
    const each = run.feeds.map((o) => onRing(o, run));
    if (run.cable.material !== 'copper' || each.includes(false)) return false;
    return each.find(isMissing) ?? true;
  }),
  // behind a device whose rating is not known it counts as any other circuit; none of the cables here is mineral
  ringRule: when(
    'ring',
    when(
      orElse(
        derive(['conductorArea'], ({ conductorArea }) => conductorArea >= 2.5, { direction: { conductorArea: 1 } }),
        set(false),
      ),
      when(
        orElse(
          derive(['deviceRating'], ({ deviceRating }) => deviceRating === 30 || deviceRating === 32),
          set(false),
        ),
        same('ringLoads'),
        set(false),
      ),
      set(false),
    ),
    set(false),
  ),
});

/** Load, device and cable are coordinated over every section. BS 7671 433.1, Appendix 4. */
export const coordination = () => {
  const tabulated = tabulatedCapacity();
  const group = grouping();
  const ofSections = checksOfSection(clauses);
  return {
    circuit: {
      ...loadAndDevice(),
      fuseFactor: when(
        derive(['deviceKind'], ({ deviceKind }) => deviceKind.standard === 'BS 3036'),
        set(ratio(0.725), 'BS 3036 overload device, BS 7671 433.1.202'),
        set(ratio(1), 'no semi-enclosed fuse'),
      ),
      conventionalMultiple: conventionalMultiple(),
      ringCapacity: set(amperes(20), 'BS 7671 433.1.204, ring final circuit behind 30 A or 32 A'),
      ...governingSection(),
    },
    cables: { ...cableAndLoad(), ...tabulated.cables, ...group.cables, ...ringFinalCircuit() },
    sections: {
      ...tabulated.sections,
      ...ambientFactor(),
      ...group.sections,
      ...insulationFactor(),
      soilColumn: ofSection(soilColumnOf),
      ...soilFactor(
        appendix4.table4B3,
        choose('soilColumn', {
          ducts: set('ducts'),
          direct: set('direct'),
          // both columns are 1 at the resistivity for which the tables of capacity are
          'not stated': when(
            derive(['soilResistivity'], ({ soilResistivity }) => soilResistivity === 2.5),
            set('direct'),
            ofSection<'direct'>(({ section: { name } }) =>
              missing({
                kind: 'fact',
                fact: `containment of ${name}`,
                obtain: 'see whether it lies in a duct or direct in the ground',
              }),
            ),
          ),
        }),
      ),
      capacity: by(shared.capacityAsInstalled, 'Appendix 4, 5'),
      conductorTemperature: by(temperatureAtShareOfCapacity, undefined, {
        // no part of a ring is to carry more than its capacity for long
        designCurrent: when(
          'harmonicsCount',
          same('harmonicCurrent'),
          when('ringRule', by(own.ringSectionLoad, '433.1.204'), same('designCurrent')),
        ),
        ambientTemperature: surroundings(),
      }),
      deviceFactor: when(
        'buried',
        set(ratio(0.9), 'in the ground with overload protection, BS 7671 Appendix 4, 5.1'),
        set(ratio(1), 'not in the ground'),
      ),
      overloads: ofSection(({ section }) => section.group?.overloads ?? 'simultaneous'),
      requiredByLoad: by(own.requiredForLoad, 'Appendix 4, 5.1.2'),
      requiredByOverload: by(own.requiredNotTogether, 'Appendix 4, 5.1.2'),
      requiredCapacity: choose('overloads', {
        simultaneous: by(shared.requiredForOverload, 'Appendix 4, 5.1'),
        'not-simultaneous': by(own.largerRequirement, 'Appendix 4, 5.1.2'),
      }),
      overloadLimit: by(shared.overloadLimitOf, '433.1.1 (iii)'),
      capacityUse: when(
        'ringRule',
        by(shared.capacityUseOf, undefined, { requiredCapacity: 'ringCapacity', tabulatedCapacity: 'capacity' }),
        by(shared.capacityUseOf),
      ),
    },
    checks: [
      ...checksOfLoad(clauses),
      each('sections', [
        ofSections.insulation,
        chosen('ringRule', {
          true: [compare(own.ringCarriesEnough, { because: 'sectionName' })],
          false: [...ofSections.overload, chosen('overloads', { simultaneous: [ofSections.conventional] })],
        }),
      ]),
    ],
  };
};
