import { isMissing, type Name, type Sheet, type Vocabulary } from '../../core/index.js';
import { CalculationError, type Celsius, celsius, millimetres, ratio } from '../../units/index.js';
import { checkCase, type HeatCase } from './cable.js';
import { armourLosses, insulation, resistance, shell } from './inside.js';
import { outside } from './outside.js';
import {
  armourTemperatureOf,
  balancedCapacity,
  riseAboveAir,
  riseAboveGround,
  surfaceTemperatureOf,
} from './rating.js';
import { StrictSheet } from './strict-sheet.js';
import { innerResistance } from './thermal-resistance.js';

/** Writes the balance on a sheet, the armour at a temperature. */
function write(sheet: Sheet, heat: HeatCase, armourTemperature: Celsius | undefined): void {
  const { cable, surroundings } = heat;
  const loaded = cable.cores === 1 ? 1 : heat.loadedConductors;
  const loadedCores = sheet.given('loadedCores', ratio(loaded), 'circuit');
  const of = resistance(sheet, heat);
  const { acResistancePerMetre } = of;
  const coreThermalResistance = insulation(sheet, heat, of);
  const beddingThermalResistance = sheet.gather(
    'sum',
    'shellThermalResistance',
    'beddingThermalResistance',
    cable.bedding ? [shell(sheet.part('Bedding'), cable.bedding, cable.laidUpDiameter)] : [],
  );
  const below = millimetres(cable.overallDiameter - 2 * cable.sheath.thickness);
  const sheathThermalResistance = sheet.gather('sum', 'shellThermalResistance', 'sheathThermalResistance', [
    shell(sheet.part('Sheath'), cable.sheath, below),
  ]);
  const armourLossFactor = armourLosses(sheet, heat, of, armourTemperature);
  const inside = {
    loadedCores,
    coreThermalResistance,
    beddingThermalResistance,
    sheathThermalResistance,
    armourLossFactor,
  };
  const innerThermalResistance = sheet.step(innerResistance, inside);
  const operatingTemperature = sheet.given('operatingTemperature', heat.operatingTemperature, 'insulation');
  const permissibleRise =
    surroundings.where === 'air'
      ? sheet.step(riseAboveAir, {
          operatingTemperature,
          ambientTemperature: sheet.given('ambientTemperature', surroundings.ambientTemperature, 'survey'),
        })
      : sheet.step(riseAboveGround, {
          operatingTemperature,
          groundTemperature: sheet.given('groundTemperature', surroundings.groundTemperature, 'survey'),
        });
  const externalThermalResistance = outside(sheet, heat, permissibleRise, innerThermalResistance);
  sheet.step(balancedCapacity, { ...inside, permissibleRise, acResistancePerMetre, externalThermalResistance });
  const layers = { operatingTemperature, permissibleRise, innerThermalResistance, externalThermalResistance };
  sheet.step(surfaceTemperatureOf, layers);
  if (armourTemperature !== undefined) sheet.step(armourTemperatureOf, { ...layers, sheathThermalResistance });
  for (const caution of cautionsOf(heat)) sheet.note(caution);
}

/** What a user of the figure has to know. */
function cautionsOf({ cable, loadedConductors, surroundings }: HeatCase): readonly string[] {
  const known = cable.shape === 'round' && cable.cores === 4 && loadedConductors === 3;
  return [
    'Computed from first principles for a steady load: an estimate; a tabulated capacity goes before it.',
    ...(surroundings.where === 'air' ? ['Free air in the shade: the sun is not in the balance.'] : []),
    ...(surroundings.where === 'air' ? [] : ['The soil is taken as uniform and not drying out.']),
    ...(surroundings.where === 'duct' && cable.overallDiameter < 25
      ? ['The correlation for the gap in a duct was made for cables from 25 mm.']
      : []),
    ...(cable.cores > loadedConductors && !known ? ['Unloaded cores are taken as loaded inside the insulation.'] : []),
  ];
}

/** What the balance of a cable gives; quantities under the names of the vocabulary. */
export interface HeatBalance
  extends Readonly<
    Pick<
      Vocabulary,
      | 'computedCapacity'
      | 'resistancePerMetre'
      | 'skinFactor'
      | 'proximityFactor'
      | 'acResistancePerMetre'
      | 'armourLossFactor'
      | 'coreThermalResistance'
      | 'beddingThermalResistance'
      | 'sheathThermalResistance'
      | 'externalThermalResistance'
      | 'surfaceTemperature'
    >
  > {
  /** Temperature of the armour, °C, where there is one. */
  readonly armourTemperature?: Celsius;
  /** What a user of the figures has to know. */
  readonly cautions: readonly string[];
}

const tolerance = 1e-9;

/** @internal The temperature of the armour at which the balance closes, to 1e-9 K; none without armour. */
export function balanceArmour(heat: HeatCase, most = 40): { sheet: Sheet; at: Celsius | undefined } {
  let at: Celsius | undefined = heat.cable.armour ? heat.operatingTemperature : undefined;
  let residual = 0;
  for (let i = 0; i < most; i++) {
    const sheet = new StrictSheet();
    write(sheet, heat, at);
    if (at === undefined) return { sheet, at };
    const next = numberOn(sheet, 'balancedArmourTemperature');
    residual = next - at;
    if (Math.abs(residual) <= tolerance) return { sheet, at };
    at = celsius(next);
  }
  throw new CalculationError('not-converged', `the temperature of the armour did not settle to ${tolerance} K`, {
    method: 'heat-balance',
    iterations: most,
    residual,
  });
}

function numberOn<N extends Name>(sheet: Sheet, name: N): Vocabulary[N] {
  const value = sheet.latest(name);
  if (value === undefined || isMissing(value)) throw new Error(`the balance has no ${name}`);
  return value as Vocabulary[N];
}

/**
 * The current-carrying capacity of a low-voltage cable from its heat balance (IEC 60287), in free air, in the ground or
 * in a duct: an estimate beside the tables that never overrules a tabulated capacity. Dielectric loss is nothing at low
 * voltage and is left out; sun, drying soil and cables shut in walls, conduit or insulation are not covered. Loads that vary
 * are those of `buriedCable`.
 * @param heat cable, loaded conductors, surroundings, largest temperature in °C and frequency in Hz
 * @param sheet what the lines are written on; nothing is kept when absent
 * @returns the capacity, A, with resistance, thermal resistances, losses and temperatures behind it
 * @throws CalculationError `invalid-input` with everything that contradicts itself, `not-covered`, `out-of-range` outside
 * the range of a formula, `not-converged` when the temperature of the armour does not settle to 1e-9 K
 * @example
 * ```ts
 * import { celsius, hertz, millimetres, ohmsPerMetre } from 'ohmwright';
 * import { heatBalance } from 'ohmwright/heat';
 *
 * const { computedCapacity } = heatBalance({
 *   cable: {
 *     metal: 'copper',
 *     resistancePerMetre20: ohmsPerMetre(0.00115),
 *     shape: 'round',
 *     conductorDiameter: millimetres(4.65),
 *     insulation: { material: 'XLPE', thickness: millimetres(0.7) },
 *     cores: 3,
 *     laidUpDiameter: millimetres(13.04),
 *     sheath: { material: 'PVC', thickness: millimetres(1.8) },
 *     overallDiameter: millimetres(16.64),
 *   },
 *   loadedConductors: 3,
 *   surroundings: { where: 'air', ambientTemperature: celsius(30), formation: 'one-spaced' },
 *   operatingTemperature: celsius(90),
 *   frequency: hertz(50),
 * });
 * Math.round(computedCapacity); // => 96
 * ```
 */
export function heatBalance(heat: HeatCase, sheet?: Sheet): HeatBalance {
  checkCase(heat);
  const { sheet: found, at } = balanceArmour(heat);
  if (sheet) write(sheet, heat, at);
  const of = <N extends Name>(name: N) => numberOn(found, name);
  return {
    computedCapacity: of('computedCapacity'),
    resistancePerMetre: of('resistancePerMetre'),
    skinFactor: of('skinFactor'),
    proximityFactor: of('proximityFactor'),
    acResistancePerMetre: of('acResistancePerMetre'),
    armourLossFactor: of('armourLossFactor'),
    coreThermalResistance: of('coreThermalResistance'),
    beddingThermalResistance: of('beddingThermalResistance'),
    sheathThermalResistance: of('sheathThermalResistance'),
    externalThermalResistance: of('externalThermalResistance'),
    surfaceTemperature: of('surfaceTemperature'),
    ...(at === undefined ? {} : { armourTemperature: at }),
    cautions: cautionsOf(heat),
  };
}
