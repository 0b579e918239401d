import type { Known, Sheet } from '../../core/index.js';
import { type Celsius, type Millimetres, millimetres, ratio } from '../../units/index.js';
import { resistanceAtTemperature } from '../loop.js';
import { acResistance, proximityOfThree, proximityOfTwo, skinArgument, skinFactor } from './ac-resistance.js';
import {
  armourLayerArea,
  armourLayerResistance,
  armourLossOfRound,
  armourLossOfSectors,
  armourLossOfTwo,
} from './armour.js';
import { axesApart, type HeatCase, type HeatLayer, type ThermalMaterial } from './cable.js';
import { armourMeanDiameterOf, coreAxisRadiusOf, coreSpacing, insulationRatioOf, sectorRadiusOf } from './geometry.js';
import { temperatureCoefficients } from './tables/temperature-coefficients.js';
import { thermalResistivities } from './tables/thermal-resistivities.js';
import {
  sectorCoresResistance,
  shellResistance,
  touchingCoresFactor,
  touchingCoresResistance,
} from './thermal-resistance.js';

/** Where dimensions of a cable come from. */
export const build = 'build of the cable';
const fewerLoaded = 'finite volumes: the hottest of three loaded among four cores';

/** @internal A round layer in a part of its own. */
export function shell(part: Sheet, { material, thickness }: HeatLayer, inner: Millimetres, by = build): Sheet {
  const thermalResistivity = part.look(thermalResistivities, {
    material: part.label<ThermalMaterial>('material', material, by),
  });
  const shellThickness = part.given('shellThickness', thickness, by);
  const shellInnerDiameter = part.given('shellInnerDiameter', inner, by);
  part.step(shellResistance, { thermalResistivity, shellThickness, shellInnerDiameter });
  return part;
}

/** @internal The resistance of a conductor to alternating current at its largest temperature. */
export function resistance(sheet: Sheet, heat: HeatCase) {
  const { cable, loadedConductors } = heat;
  const conductorTemperature = sheet.given('conductorTemperature', heat.operatingTemperature, 'largest temperature');
  const resistancePerMetre = sheet.step(resistanceAtTemperature, {
    resistancePerMetre20: sheet.given('resistancePerMetre20', cable.resistancePerMetre20, build),
    temperatureCoefficient: sheet.look(temperatureCoefficients, { metal: sheet.label('metal', cable.metal, build) }),
    conductorTemperature,
  });
  const frequency = sheet.given('frequency', heat.frequency, 'supply');
  const argument = sheet.step(skinArgument, { frequency, resistancePerMetre });
  const skin = sheet.step(skinFactor, { skinArgument: argument });
  const conductorDiameter = sheet.given('conductorDiameter', cable.conductorDiameter, build);
  const conductorSpacing =
    cable.cores === 1
      ? sheet.given('conductorSpacing', millimetres(axesApart(heat)), 'formation of the cables')
      : sheet.step(coreSpacing, {
          conductorDiameter,
          insulationThickness: sheet.given('insulationThickness', cable.insulation.thickness, build),
        });
  const shapeShare = sheet.given('shapeShare', ratio(cable.shape === 'round' ? 1 : 2 / 3), build);
  const proximity = sheet.step(loadedConductors === 2 ? proximityOfTwo : proximityOfThree, {
    skinArgument: argument,
    conductorDiameter,
    conductorSpacing,
    shapeShare,
  });
  const acResistancePerMetre = sheet.step(acResistance, {
    resistancePerMetre,
    skinFactor: skin,
    proximityFactor: proximity,
  });
  return { acResistancePerMetre, frequency, conductorDiameter, conductorSpacing };
}

/** @internal T_1: between a conductor and the laid-up cores. */
export function insulation(sheet: Sheet, { cable, loadedConductors }: HeatCase, of: ReturnType<typeof resistance>) {
  if (cable.cores === 1) {
    const part = shell(sheet.part('Insulation'), cable.insulation, cable.conductorDiameter);
    return sheet.gather('sum', 'shellThermalResistance', 'coreThermalResistance', [part]);
  }
  const thermalResistivity = sheet.look(thermalResistivities, {
    material: sheet.label<ThermalMaterial>('material', cable.insulation.material, build),
  });
  const coreCount = sheet.given('coreCount', ratio(cable.cores), build);
  const { conductorDiameter } = of;
  const insulationThickness = sheet.latest('insulationThickness') as Known<Millimetres>;
  if (cable.shape === 'sector')
    return sheet.step(sectorCoresResistance, {
      thermalResistivity,
      coreCount,
      insulationThickness,
      conductorDiameter,
      sectorRadius: sheet.step(sectorRadiusOf, {
        laidUpDiameter: sheet.given('laidUpDiameter', cable.laidUpDiameter, build),
        insulationThickness,
      }),
    });
  const insulationRatio = sheet.step(insulationRatioOf, { insulationThickness, conductorDiameter });
  const geometricFactor = sheet.step(touchingCoresFactor, { coreCount, insulationRatio });
  const known = cable.cores === 4 && loadedConductors === 3;
  const hottestCoreShare = sheet.given('hottestCoreShare', ratio(known ? 0.94 : 1), known ? fewerLoaded : 'safe side');
  return sheet.step(touchingCoresResistance, { thermalResistivity, geometricFactor, hottestCoreShare });
}

/** @internal λ_2: losses of the armour at a temperature. */
export function armourLosses(
  sheet: Sheet,
  { cable }: HeatCase,
  of: ReturnType<typeof resistance>,
  at: Celsius | undefined,
) {
  if (!cable.armour || at === undefined) return sheet.given('armourLossFactor', ratio(0), 'no armour');
  const { acResistancePerMetre, frequency, conductorSpacing } = of;
  const insulationThickness = sheet.latest('insulationThickness') as Known<Millimetres>;
  const laidUpDiameter = sheet.given('laidUpDiameter', cable.laidUpDiameter, build);
  const armourWireDiameter = sheet.given('armourWireDiameter', cable.armour.wireDiameter, build);
  const armourMeanDiameter = sheet.step(armourMeanDiameterOf, {
    laidUpDiameter,
    beddingThickness: sheet.given('beddingThickness', cable.bedding?.thickness ?? millimetres(0), build),
    armourWireDiameter,
  });
  const armourArea = sheet.step(armourLayerArea, { armourMeanDiameter, armourWireDiameter });
  const armourTemperature = sheet.given('armourTemperature', at, 'iteration; the balance gives it back');
  const armourPerMetre = sheet.step(armourLayerResistance, { armourArea, armourTemperature });
  const losses = { armourPerMetre, acResistancePerMetre, armourMeanDiameter, frequency };
  if (cable.cores !== 2 && cable.shape === 'round')
    return sheet.step(armourLossOfRound, {
      ...losses,
      coreAxisRadius: sheet.step(coreAxisRadiusOf, { laidUpDiameter, conductorSpacing }),
    });
  const sectorRadius = sheet.step(sectorRadiusOf, { laidUpDiameter, insulationThickness });
  return cable.cores === 2
    ? sheet.step(armourLossOfTwo, { ...losses, armourArea, sectorRadius, insulationThickness })
    : sheet.step(armourLossOfSectors, { ...losses, sectorRadius });
}
