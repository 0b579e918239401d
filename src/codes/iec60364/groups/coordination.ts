import { by, choose, derive, each, open, set, weigh, when } from '../../../calculation/index.js';
import { isMissing, type Known, missing } from '../../../core/index.js';
import type { ReferenceMethod } from '../../../installation/index.js';
import { ggConventional } from '../../../products/bs88/conventional-currents.js';
import { type Amperes, ratio } from '../../../units/index.js';
import * as capacity from '../../iec-family/capacity.js';
import { temperatureAtShareOfCapacity } from '../../iec-family/conductor-temperature.js';
import {
  cableAndLoad,
  cableLoad,
  checksOfLoad,
  checksOfSection,
  conventionalNotEntered,
  governingSection,
  inParallel,
  loadAndDevice,
  surroundings,
} from '../../iec-family/coordination.js';
import { groupFactor, manyCores } from '../../iec-family/group-factor.js';
import { ofSection } from '../../iec-family/places.js';
import { soilFactor, thermalInsulation, uninsulated } from '../../iec-family/section-factors.js';
import { clauses } from '../clauses.js';
import { inAir, noTable, without } from '../rating-tables.js';
import * as annexB from '../tables/index.js';

/** Capacities by Annex B, read by the method as it names it: A, B and D are two each, by the cable and by what it lies in. */
const tabulatedCapacity = () => {
  const material = derive(['cable'], ({ cable }) => cable.material);
  const enclosed = { material, method: 'listedMethod' } as const;
  const method = { method: 'listedMethod' } as const;
  const one = choose('capacityTable', {
    'thermoplastic, 2 loaded': by(annexB.tableB522, undefined, enclosed),
    'thermosetting, 2 loaded': by(annexB.tableB523, undefined, enclosed),
    'thermoplastic, 3 loaded': by(annexB.tableB524, undefined, enclosed),
    'thermosetting, 3 loaded': by(annexB.tableB525, undefined, enclosed),
    'thermoplastic, copper in air': by(annexB.tableB5210, undefined, method),
    'thermoplastic, aluminium in air': by(annexB.tableB5211, undefined, method),
    'thermosetting, copper in air': by(annexB.tableB5212, undefined, method),
    'thermosetting, aluminium in air': by(annexB.tableB5213, undefined, method),
    none: derive(['cable'], ({ cable }): Known<Amperes> => noTable(without(cable) ?? '')),
  });
  return {
    listedMethod: ofSection<ReferenceMethod>(
      ({ circuit, section: { name, method: surveyed, containment } }) => {
        if (surveyed.state !== 'known') return surveyed;
        const { value } = surveyed;
        if (value === 'A' || value === 'B')
          return `${value}${circuit.run.cable.construction === 'single-core' ? 1 : 2}` as const;
        if (value !== 'D' || containment === 'duct') return value === 'D' ? 'D1' : value;
        return containment === 'buried'
          ? 'D2'
          : missing({
              kind: 'fact',
              fact: `containment of ${name}`,
              obtain: 'see whether it lies in a duct (D1) or direct in the ground (D2)',
            });
      },
      { called: ({ section }) => `method of ${section.name}` },
    ),
    // a method that is not known is still missing when the table is read
    capacityTable: weigh(['listedMethod', 'cable', 'loaded'], ({ listedMethod, cable, loaded }) => {
      if (isMissing(cable) || without(cable)) return 'none';
      const hot = cable.insulation === 'thermosetting-90' ? 'thermosetting' : 'thermoplastic';
      if (isMissing(listedMethod) || !inAir(listedMethod)) return `${hot}, ${loaded} loaded`;
      return `${hot}, ${cable.material} in air`;
    }),
    laid: ofSection(({ section }) => section.formation ?? 'not stated'),
    formation: derive(['listedMethod', 'loaded', 'laid'], (v) => {
      if (v.listedMethod === 'E') return 'multicore';
      if (v.laid !== 'not stated') return v.laid;
      return v.listedMethod === 'G' ? 'spaced-horizontal' : v.loaded === '2' ? 'flat-touching' : 'trefoil';
    }),
    tabulatedCapacity: when(inParallel(), by(capacity.capacityInParallel, '523.7', { tabulatedCapacity: one }), one),
  };
};

/** Conventional operating currents: breakers by their standard, gG fuses by the table of IEC 60269. */
const conventionalMultiple = () => {
  const breaker = set(ratio(1.45), 'EN 60898: conventional tripping current 1.45 I_n');
  return choose(
    derive(['deviceKind'], ({ deviceKind }) => deviceKind.standard),
    {
      'EN 60898': breaker,
      'EN 61009': breaker,
      'BS 88-2': by(ggConventional, undefined, { edge: set('fusing') }),
      'BS 88-3': conventionalNotEntered('BS 88-3'),
      'BS 1361': conventionalNotEntered('BS 1361'),
      'BS 1362': conventionalNotEntered('BS 1362'),
      'BS 3036': conventionalNotEntered('BS 3036'),
      'BS 3871': conventionalNotEntered('BS 3871'),
    },
  );
};

/** Load, device and cable are coordinated over every section. IEC 60364-4-43 and 5-52 Annex B. */
export const coordination = () => {
  const { cables, sections, grouped } = groupFactor({
    touching: by(annexB.tableB5217),
    ceiling: by(annexB.tableB5217),
    direct: annexB.tableB5218,
    ductsOfMulticore: annexB.tableB5219Multicore,
    ductsOfSingles: annexB.tableB5219SingleCore,
    trays: annexB.tableB5220,
    traysOfSingles: annexB.tableB5221,
    lightClause: 'IEC 60364-5-52 523.5',
  });
  const ofSections = checksOfSection(clauses());
  const surrounded = () =>
    when(
      uninsulated(),
      set(ratio(1), 'no length in thermal insulation'),
      open(...noTable('cables that thermal insulation surrounds over a length').missing),
    );
  return {
    circuit: {
      ...loadAndDevice(),
      fuseFactor: set(ratio(1), 'semi-enclosed fuses are counted by their operating current'),
      conventionalMultiple: conventionalMultiple(),
      ...governingSection(),
    },
    cables: { ...cableAndLoad(), ...cables },
    sections: {
      ...tabulatedCapacity(),
      ambientFactor: choose(
        derive(['insulation', 'buried'], ({ insulation, buried }) =>
          insulation === 'thermosetting-60' ? 'none' : buried ? 'ground' : 'air',
        ),
        {
          air: by(annexB.tableB5214),
          ground: by(annexB.tableB5215),
          none: open(...noTable('cables with insulation for 60 °C').missing),
        },
      ),
      ...sections,
      groupFactor: when(manyCores(), by(capacity.groupWithCores, 'Annex B', { groupFactor: grouped }), grouped),
      ...thermalInsulation(/^$/, /^A[12]?$/),
      insulationFactor: choose('insulationCounts', {
        'in the method': set(ratio(1), 'the reference method already contains the insulation'),
        'beside the method': surrounded(),
        'by a factor': surrounded(),
      }),
      ...soilFactor(
        annexB.tableB5216,
        derive(['listedMethod'], ({ listedMethod }) => (listedMethod === 'D1' ? 'ducts' : 'direct')),
      ),
      capacity: by(capacity.capacityAsInstalled, '523'),
      conductorTemperature: by(temperatureAtShareOfCapacity, undefined, {
        designCurrent: cableLoad(),
        ambientTemperature: surroundings(),
      }),
      deviceFactor: set(ratio(1), 'none in this code'),
      requiredCapacity: by(capacity.requiredForOverload, '4-43, 433.1'),
      overloadLimit: by(capacity.overloadLimitOf, '4-43, 433.1'),
      capacityUse: by(capacity.capacityUseOf),
    },
    checks: [
      ...checksOfLoad(clauses()),
      each('sections', [ofSections.insulation, ...ofSections.overload, ofSections.conventional]),
    ],
  };
};
