import { by, choose, derive, open, orElse, same, set, smallest, sum, when } from '../../calculation/index.js';
import { contradicted } from '../../core/contradicted.js';
import { endsOf, type Fact, type Gap, type Missing, missing } from '../../core/index.js';
import type { Cable } from '../../installation/index.js';
import {
  parallelProtectivePaths,
  runReactance,
  runResistance,
  segmentImpedanceOf,
  sumOfLineAndNeutral,
} from '../../physics/definitions.js';
import { resistanceAtTemperature, sumOfLineAndProtective } from '../../physics/index.js';
import { armourResistances } from '../../products/bs5467/armour.js';
import { flatCableProtective } from '../../products/bs6004/protective-conductors.js';
import { conductorResistance } from '../../products/iec60228/conductor-resistance.js';
import { celsius, ohms, ohmsPerMetre, perKelvin, ratio, type SquareMillimetres } from '../../units/index.js';
import {
  acceptArmour,
  armourFromMemory,
  armourReactance,
  armourReactanceBy,
  coreReactance,
  coreReactanceBy,
  isThereOnce,
  metalCoefficient,
  metalCoefficientBy,
  notReactiveBy,
  operatingTemperatureOf,
  reactiveAbove,
  steelCoefficient,
  steelCoefficientBy,
  steelTemperatureOf,
} from './conductor-constants.js';
import {
  type ConductorPlace,
  ofConductor,
  ofReturn,
  ofRun,
  ofRunSection,
  ofTemperature,
  type RunPlace,
} from './places.js';

const noConduit: Gap = {
  kind: 'fact',
  fact: 'resistance of the protective conductor',
  obtain: 'impedance of the conduit per metre from its maker, or a measurement',
};
const noProtective: Gap = {
  kind: 'fact',
  fact: 'resistance of the protective conductor',
  obtain: 'the run has no protective conductor',
};
const readItOff: Gap = { kind: 'fact', fact: 'area of the protective conductor', obtain: 'read it off the cable' };
const largerThanMade = /* @__PURE__ */ contradicted(
  'read the marking again: no cable is made with a protective core larger than its line conductor, and twin and earth has a smaller one from 1.5 mm² up',
);
/** A protective core as surveyed; one that is larger than it is made in its cable contradicts what is said of the lines. */
function protectiveAsSurveyed({ run: { cable } }: RunPlace): Fact<SquareMillimetres> | Missing {
  const { area, protective, protectiveArea } = cable;
  const [line] = endsOf(area) ?? [];
  const [, own] = (protectiveArea && endsOf(protectiveArea)) ?? [];
  if (line === undefined || own === undefined || !['core', 'bare-core'].includes(protective))
    return protectiveArea ?? missing(readItOff);
  const flat = protective === 'bare-core' && line > 1 ? own >= line : own > line;
  return flat ? largerThanMade : (protectiveArea as Fact<SquareMillimetres>);
}

/** What serves as protective conductor, by the way in which its resistance is found. */
const protectivePathOf = ({ protective, protectiveImpedance }: Cable) => {
  if (protective === 'none' || protective === 'armour-and-separate') return protective;
  if (protective === 'conduit') return protectiveImpedance ? 'steel' : 'conduit';
  return protective === 'armour' ? 'steel' : 'conductor';
};
/** How the area of the protective conductor is known: as surveyed, or by the construction of the cable. */
const protectiveAreaFromOf = ({ protectiveArea, protective }: Cable) => {
  if (protectiveArea) return 'survey';
  return protective === 'core' ? 'line' : protective === 'bare-core' ? 'flat cable' : 'survey';
};
/** By which metal a fault may return to earth, armour counted wherever there is one. */
const earthReturnOf = ({ construction, protective }: Cable) => {
  if (construction !== 'armoured' && !protective.startsWith('armour')) return 'protective conductor';
  return protective === 'none' || protective === 'armour' ? 'armour' : 'armour and conductor';
};
/** Metal of a protective conductor that is no steel: as stated, that of twin and earth copper, else that of the lines. */
export function protectiveMetalOf({ material, protective, protectiveMaterial }: Cable): 'copper' | 'aluminium' {
  if (protectiveMaterial === 'aluminium' || protectiveMaterial === 'copper') return protectiveMaterial;
  return protective === 'bare-core' ? 'copper' : material;
}
const metalOf = (cable: Cable, conductor: ConductorPlace['conductor']) =>
  conductor === 'line' ? cable.material : protectiveMetalOf(cable);
/** The figures of most armour are recalled: they are accepted by option, and where a larger current is the safer one. */
const steelFigureOf = ({ run: { cable }, conductor, circuit }: ConductorPlace) => {
  if (cable.protectiveImpedance) return 'maker';
  const accepted = circuit.options.acceptMemoryFigures === true || conductor === 'earthed armour';
  return accepted || cable.area.state === 'unknown' || !armourFromMemory(cable) ? 'table' : 'to accept';
};
const ofLine = ({ conductor }: ConductorPlace) => conductor === 'line';
const ofProtective = ({ conductor }: ConductorPlace) => conductor === 'protective';
const ofSteel = ({ conductor }: ConductorPlace) => conductor === 'armour' || conductor === 'conduit';
const ofEarthedArmour = ({ conductor }: ConductorPlace) => conductor === 'earthed armour';

/** By what the resistance of a conductor is divided that all cables in parallel share. */
const ring = () =>
  ofRun(({ run }) => ratio(run.ring ? 4 : 1), {
    by: 'one for all cables in parallel; of a ring a quarter of its resistance from end to end, at the farthest point',
  });

/**
 * Resistances and impedances of the runs of the way, at the temperatures at which they are considered: of each conductor,
 * of line and protective conductor together, and between live conductors.
 */
export const conductors = () => ({
  runSections: {
    length: ofRunSection((s) => s.section.length, { called: (s) => `length of ${s.section.name}` }),
  },
  runs: {
    length: sum('runSections/length'),
    conductorArea: ofRun((r) => r.run.cable.area, { called: 'area of the line conductor' }),
    parallelConductors: ofRun(({ run }) => ratio((run.ring ? 4 : 1) * (run.cable.parallel ?? 1)), {
      by: 'conductors in parallel; of a ring a quarter of its resistance from end to end, at the farthest point',
    }),
    operatingTemperature: ofRun((r) => operatingTemperatureOf(r.run.cable.insulation)),
    protectivePath: ofRun((r) => protectivePathOf(r.run.cable)),
    protectiveAreaFrom: ofRun((r) => protectiveAreaFromOf(r.run.cable)),
    protectiveArea: choose('protectiveAreaFrom', {
      survey: ofRun(protectiveAsSurveyed, { called: 'area of the protective conductor' }),
      line: same('conductorArea'),
      'flat cable': by(flatCableProtective, undefined, { construction: set('flat-twin-and-earth') }),
    }),
    reactanceCounts: derive(['conductorArea'], ({ conductorArea }) => conductorArea > reactiveAbove, {
      direction: { conductorArea: 1 },
    }),
    viaArmour: ofRun((r) => r.run.cable.protective.startsWith('armour')),
    reactancePerMetre: when(
      'viaArmour',
      set(ohmsPerMetre(armourReactance), armourReactanceBy),
      set(ohmsPerMetre(2 * coreReactance), coreReactanceBy),
    ),
    earthReturn: ofRun((r) => earthReturnOf(r.run.cable)),
  },
  temperatures: {
    consideredAt: ofTemperature((t) => t.at),
    lineResistance: sum('conductors/resistance', { among: ofLine }),
    armourResistance: sum('conductors/resistance', { among: ofSteel }),
    separateResistance: sum('conductors/resistance', { among: ofProtective }),
    protectiveResistance: choose('protectivePath', {
      conductor: sum('conductors/resistance', { among: ofProtective }),
      steel: sum('conductors/resistance', { among: ofSteel }),
      'armour-and-separate': by(parallelProtectivePaths),
      conduit: open(noConduit),
      none: open(noProtective),
    }),
    lineAndProtectiveResistance: by(sumOfLineAndProtective),
    reactance: when('reactanceCounts', by(runReactance), set(ohms(0), notReactiveBy)),
    segmentImpedance: by(segmentImpedanceOf, undefined, {
      reactance: when(
        'reactanceCounts',
        when(
          ofTemperature(({ run: { cable } }) =>
            isThereOnce(cable, cable.protective === 'conduit' ? 'conduit' : 'protective'),
          ),
          by(runReactance, undefined, { parallelConductors: ring() }),
          by(runReactance),
        ),
        set(ohms(0), notReactiveBy),
      ),
    }),
    // between live conductors, the neutral of the size of the lines
    lineNeutralImpedance: by(sumOfLineAndNeutral, undefined, { neutralResistance: 'lineResistance' }),
    // for the largest fault current of a single phase where the earth leads back to the source by metal
    earthReturnResistance: choose('earthReturn', {
      'protective conductor': same('protectiveResistance'),
      armour: sum('conductors/resistance', { among: ofEarthedArmour }),
      'armour and conductor': by(parallelProtectivePaths, undefined, {
        armourResistance: sum('conductors/resistance', { among: ofEarthedArmour }),
        separateResistance: sum('conductors/resistance', { among: ofProtective }),
      }),
    }),
    leastImpedance: smallest('returns/segmentImpedance'),
  },
  conductors: {
    conductor: ofConductor((c) => c.conductor),
    metal: ofConductor((c) => metalOf(c.run.cable, c.conductor)),
    conductorClass: ofConductor(({ run: { cable } }) => (cable.construction === 'flexible' ? '5' : '2')),
    cores: ofConductor((c) => ratio(c.run.cable.cores)),
    steelFigure: ofConductor(steelFigureOf),
    steel: ofConductor((c) => c.conductor !== 'line' && c.conductor !== 'protective'),
    resistancePerMetre20: choose('conductor', {
      line: by(conductorResistance),
      protective: by(conductorResistance, undefined, { conductorArea: 'protectiveArea' }),
      armour: steelPerMetre(),
      conduit: steelPerMetre(),
      'earthed armour': steelPerMetre(),
    }),
    temperatureCoefficient: when(
      'steel',
      set(perKelvin(steelCoefficient), steelCoefficientBy),
      set(perKelvin(metalCoefficient), metalCoefficientBy),
    ),
    conductorTemperature: choose('consideredAt', {
      operating: when(
        'steel',
        ofConductor(({ run, conductor }) =>
          steelTemperatureOf(run.cable.insulation, conductor === 'conduit' ? 'conduit' : 'armour'),
        ),
        same('operatingTemperature'),
      ),
      cold: set(celsius(20)),
      test: ofConductor(({ circuit }) => circuit.options.testTemperature ?? celsius(20), {
        by: 'temperature of the test',
      }),
    }),
    resistancePerMetre: by(resistanceAtTemperature),
    // each cable in parallel has its own cores and armour; a separate conductor and a conduit are there once
    resistance: when(
      ofConductor(({ run: { cable }, conductor }) => isThereOnce(cable, conductor)),
      by(runResistance, undefined, { parallelConductors: ring() }),
      by(runResistance),
    ),
  },
  returns: {
    wayBack: ofReturn((r) => r.wayBack),
    segmentImpedance: choose('wayBack', {
      neutral: same('lineNeutralImpedance'),
      // where the metal is not known, the line alone: never more
      earth: orElse(
        by(sumOfLineAndProtective, undefined, { protectiveResistance: 'earthReturnResistance' }),
        same('lineResistance'),
      ),
    }),
  },
});

const steelPerMetre = () =>
  choose('steelFigure', {
    maker: ofConductor(({ run: { cable } }) => cable.protectiveImpedance ?? missing(noConduit), {
      by: "the maker's figure",
    }),
    table: by(armourResistances),
    'to accept': open(acceptArmour),
  });
