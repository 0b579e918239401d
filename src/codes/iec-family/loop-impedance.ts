import { factValue, isMissing, type Known, missing, type Sheet, whenKnown } from '../../core/index.js';
import type { Cable, Run } from '../../installation/index.js';
import {
  parallelProtectivePaths,
  resistanceAtTemperature,
  runReactance,
  runResistance,
  segmentImpedanceOf,
  sumOfLineAndProtective,
} from '../../physics/index.js';
import { armourResistances } from '../../products/bs5467/armour.js';
import { flatCableProtective } from '../../products/bs6004/protective-conductors.js';
import { conductorResistance } from '../../products/iec60228/conductor-resistance.js';
import {
  type Celsius,
  type Metres,
  metres,
  type Ohms,
  type OhmsPerMetre,
  ohms,
  ohmsPerMetre,
  perKelvin,
  ratio,
  type SquareMillimetres,
} from '../../units/index.js';
import type { AssessmentOptions } from '../wiring-code.js';
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

/** Temperature at which a run is considered: of normal operation, or one of the whole run, °C. */
export type RunTemperature = 'operating' | Celsius;

/** Length of a run one way. */
export function lengthOf(run: Run): Known<Metres> {
  const lengths = run.stretches.map((s) => factValue(`length of ${s.name}`, s.length));
  return whenKnown(lengths, (...all) => metres(all.reduce<number>((a, b) => a + b, 0)));
}

/** How the conductors of a run lie in parallel: n conductors, or one for all, and on a ring both ways from the farthest point. */
function giveParallel(sheet: Sheet, run: Run, once = false) {
  const n = once ? 1 : (run.cable.parallel ?? 1);
  return sheet.given(
    'parallelConductors',
    ratio(run.ring ? 4 * n : n),
    run.ring ? 'ring: a quarter of its resistance from end to end, at the farthest point' : 'conductors in parallel',
  );
}

/** Writes the resistance of one conductor of a run on a part of its own: `resistance` is its latest value afterwards. */
export function writeConductor(
  sheet: Sheet,
  title: string,
  run: Run,
  metal: 'copper' | 'aluminium',
  area: Known<SquareMillimetres>,
  temperature: Known<Celsius>,
  once = false,
): Sheet {
  const part = sheet.part(title);
  const label = part.label('metal', metal);
  const conductorClass = part.label('conductorClass', run.cable.construction === 'flexible' ? '5' : '2');
  const conductorArea = part.given('conductorArea', area);
  const resistancePerMetre20 = part.look(conductorResistance, { metal: label, conductorClass, conductorArea });
  const temperatureCoefficient = part.given('temperatureCoefficient', perKelvin(metalCoefficient), metalCoefficientBy);
  const conductorTemperature = part.given('conductorTemperature', temperature);
  const resistancePerMetre = part.step(resistanceAtTemperature, {
    resistancePerMetre20,
    temperatureCoefficient,
    conductorTemperature,
  });
  const length = part.given('length', lengthOf(run), 'all stretches');
  part.step(runResistance, { resistancePerMetre, length, parallelConductors: giveParallel(part, run, once) });
  return part;
}

/** Writes the resistance of armour or conduit of a run, as a part of its own whose latest `resistance` it is. */
function steelPath(
  sheet: Sheet,
  title: string,
  run: Run,
  area: Known<SquareMillimetres>,
  temperature: Celsius,
  options: AssessmentOptions,
  once = false,
): Sheet {
  const part = sheet.part(title);
  const { cable } = run;
  let resistancePerMetre20: Known<OhmsPerMetre>;
  if (cable.protectiveImpedance)
    resistancePerMetre20 = part.given('resistancePerMetre20', cable.protectiveImpedance, "the maker's figure");
  else if (armourFromMemory(cable) && options.acceptMemoryFigures !== true && !isMissing(area))
    resistancePerMetre20 = part.given('resistancePerMetre20', missing(acceptArmour));
  else {
    const cores = part.given('cores', ratio(cable.cores));
    const conductorArea = part.given('conductorArea', area);
    resistancePerMetre20 = part.look(armourResistances, { cores, conductorArea });
  }
  const temperatureCoefficient = part.given('temperatureCoefficient', perKelvin(steelCoefficient), steelCoefficientBy);
  const conductorTemperature = part.given('conductorTemperature', temperature);
  const resistancePerMetre = part.step(resistanceAtTemperature, {
    resistancePerMetre20,
    temperatureCoefficient,
    conductorTemperature,
  });
  const length = part.given('length', lengthOf(run), 'all stretches');
  part.step(runResistance, { resistancePerMetre, length, parallelConductors: giveParallel(part, run, once) });
  return part;
}

const copperOr = (metal: Cable['protectiveMaterial'], otherwise: 'copper' | 'aluminium') =>
  metal === 'aluminium' || metal === 'copper' ? metal : otherwise;

/** Area of the copper or aluminium protective conductor of a run: as surveyed, or given by the construction of the cable. */
export function protectiveAreaOf(sheet: Sheet, cable: Cable, line: Known<SquareMillimetres>): Known<SquareMillimetres> {
  if (cable.protectiveArea) return factValue('area of the protective conductor', cable.protectiveArea);
  if (cable.protective === 'core') return line;
  if (cable.protective === 'bare-core') {
    const construction = sheet.label('construction', 'flat-twin-and-earth' as const);
    return sheet.look(flatCableProtective, { construction, conductorArea: sheet.given('conductorArea', line) });
  }
  return missing({ kind: 'fact', fact: 'area of the protective conductor', obtain: 'read it off the cable' });
}

function protective(
  sheet: Sheet,
  run: Run,
  line: Known<SquareMillimetres>,
  at: RunTemperature,
  options: AssessmentOptions,
): Known<Ohms> {
  const { cable } = run;
  const hot = at === 'operating' ? operatingTemperatureOf(cable.insulation) : at;
  const hotArmour = at === 'operating' ? steelTemperatureOf(cable.insulation, 'armour') : at;
  const metal = copperOr(cable.protectiveMaterial, cable.protective === 'core' ? cable.material : 'copper');
  const none = (obtain: string) =>
    sheet.given(
      'protectiveResistance',
      missing({ kind: 'fact', fact: 'resistance of the protective conductor', obtain }),
    );
  switch (cable.protective) {
    case 'core':
    case 'bare-core':
    case 'separate': {
      const area = protectiveAreaOf(sheet, cable, line);
      const once = isThereOnce(cable, 'protective');
      const part = writeConductor(sheet, 'Protective conductor', run, metal, area, hot, once);
      return sheet.gather('sum', 'resistance', 'protectiveResistance', [part]);
    }
    case 'armour':
      return sheet.gather('sum', 'resistance', 'protectiveResistance', [
        steelPath(sheet, 'Armour', run, line, hotArmour, options),
      ]);
    case 'armour-and-separate': {
      const steelPart = steelPath(sheet, 'Armour', run, line, hotArmour, options);
      const copperPart = writeConductor(
        sheet,
        'Protective conductor beside the armour',
        run,
        metal,
        protectiveAreaOf(sheet, cable, line),
        hot,
        isThereOnce(cable, 'protective'),
      );
      const armourResistance = sheet.gather('sum', 'resistance', 'armourResistance', [steelPart]);
      const separateResistance = sheet.gather('sum', 'resistance', 'separateResistance', [copperPart]);
      return sheet.step(parallelProtectivePaths, { armourResistance, separateResistance });
    }
    case 'conduit': {
      const warm = at === 'operating' ? steelTemperatureOf(cable.insulation, 'conduit') : at;
      if (cable.protectiveImpedance)
        return sheet.gather('sum', 'resistance', 'protectiveResistance', [
          steelPath(sheet, 'Conduit', run, line, warm, options, isThereOnce(cable, 'conduit')),
        ]);
      return none('impedance of the conduit per metre from its maker, or a measurement');
    }
    case 'none':
      return none('the run has no protective conductor');
    default: {
      const never: never = cable.protective;
      return never;
    }
  }
}

/**
 * Writes the impedance of line and protective conductor of one run on a sheet: `lineAndProtectiveResistance`,
 * `protectiveResistance` and `segmentImpedance` are its latest values afterwards.
 */
export function writeRunImpedance(
  sheet: Sheet,
  run: Run,
  at: RunTemperature,
  options: AssessmentOptions = {},
): Known<Ohms> {
  const line = factValue('area of the line conductor', run.cable.area);
  const hot = at === 'operating' ? operatingTemperatureOf(run.cable.insulation) : at;
  const linePart = writeConductor(sheet, 'Line conductor', run, run.cable.material, line, hot);
  const lineResistance = sheet.gather('sum', 'resistance', 'lineResistance', [linePart]);
  const protectiveResistance = protective(sheet, run, line, at, options);
  const lineAndProtectiveResistance = sheet.step(sumOfLineAndProtective, { lineResistance, protectiveResistance });
  const viaArmour = run.cable.protective.startsWith('armour');
  const counts = typeof line === 'number' && line > reactiveAbove;
  if (!counts) {
    const reactance = sheet.given('reactance', ohms(0), notReactiveBy);
    return sheet.step(segmentImpedanceOf, { lineAndProtectiveResistance, reactance });
  }
  const reactancePerMetre = sheet.given(
    'reactancePerMetre',
    ohmsPerMetre(viaArmour ? armourReactance : 2 * coreReactance),
    viaArmour ? armourReactanceBy : coreReactanceBy,
  );
  const length = sheet.given('length', lengthOf(run), 'all stretches');
  const reactance = sheet.step(runReactance, {
    reactancePerMetre,
    length,
    parallelConductors: giveParallel(
      sheet,
      run,
      isThereOnce(run.cable, run.cable.protective === 'conduit' ? 'conduit' : 'protective'),
    ),
  });
  return sheet.step(segmentImpedanceOf, { lineAndProtectiveResistance, reactance });
}

/** Writes the impedance of several runs in series, each in a part of its own. */
export function writeImpedances(
  sheet: Sheet,
  runs: readonly Run[],
  at: RunTemperature,
  options: AssessmentOptions = {},
): readonly Sheet[] {
  return runs.map((run) => {
    const part = sheet.part(`Impedance of ${run.id}`);
    writeRunImpedance(part, run, at, options);
    return part;
  });
}
