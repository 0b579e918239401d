import {
  CalculationError,
  type Celsius,
  formatIn,
  type Hertz,
  invalidInput,
  type KelvinMetresPerWatt,
  type Metres,
  type Millimetres,
  metres,
  type OhmsPerMetre,
  type Problem,
} from '../../units/index.js';
import type { airDissipation } from './tables/air-dissipation.js';
import type { ductGap } from './tables/duct-gap.js';
import type { temperatureCoefficients } from './tables/temperature-coefficients.js';
import type { thermalResistivities } from './tables/thermal-resistivities.js';

/** A material whose thermal resistivity is known, such as `XLPE`. @inline */
export type ThermalMaterial = (typeof thermalResistivities)['axes'][0]['labels'][number];
/** How cables lie in free air, such as `one-on-wall` or `three-trefoil`. @inline */
export type AirFormation = (typeof airDissipation)['axes'][1]['labels'][number];
/** What a duct is made of. @inline */
export type DuctKind = (typeof ductGap)['axes'][1]['labels'][number];

/** A round layer of a cable. @inline */
export interface HeatLayer {
  readonly material: ThermalMaterial;
  /** Its thickness, mm. */
  readonly thickness: Millimetres;
}

/** The build of a cable, as far as heat is concerned. */
export interface HeatCable {
  readonly metal: (typeof temperatureCoefficients)['axes'][0]['labels'][number];
  /** Resistance per length of a conductor at 20 °C, Ω/m. */
  readonly resistancePerMetre20: OhmsPerMetre;
  readonly shape: 'round' | 'sector';
  /** Diameter of a conductor, mm; for sectors that of a round conductor of the same area. */
  readonly conductorDiameter: Millimetres;
  /** Insulation of each core. */
  readonly insulation: HeatLayer;
  /** Cores of one cable. */
  readonly cores: 1 | 2 | 3 | 4 | 5;
  /** Diameter over the laid-up cores, mm; of a single core over its insulation. */
  readonly laidUpDiameter: Millimetres;
  /** Bedding under the armour. */
  readonly bedding?: HeatLayer;
  /** One layer of steel wires; cables of two to four cores only. */
  readonly armour?: { readonly wireDiameter: Millimetres };
  readonly sheath: HeatLayer;
  /** Outer diameter, mm. */
  readonly overallDiameter: Millimetres;
}

/** A buried neighbour with the same losses per length. @inline */
export interface BuriedNeighbour {
  /** Distance to the side, axis to axis, m. */
  readonly offset: Metres;
  /** Depth of its axis, m. */
  readonly depth: Metres;
}

/** Soil around a cable or a duct; it does not dry out. @inline */
export interface Soil {
  /** Temperature of the ground without the cables, °C. */
  readonly groundTemperature: Celsius;
  /** Thermal resistivity of the soil, K·m/W. */
  readonly soilResistivity: KelvinMetresPerWatt;
  /** Depth of the axis of cable or duct, m, 0.2 to 20. */
  readonly burialDepth: Metres;
  /**
   * Distance of the axes of the single-core cables of the circuit, m; they touch where it is absent, in trefoil or side by
   * side. Multicore cables have none.
   */
  readonly spacing?: Metres;
  /** Other cables or ducts with the same losses; of other circuits, where the cables have one core. */
  readonly neighbours?: readonly BuriedNeighbour[];
}

/**
 * Where a cable lies: in free air in the shade, direct in the ground, or alone in a buried duct. Single-core cables of a
 * circuit lie side by side, in the ground each with the same losses, in ducts each in a duct of its own.
 */
export type HeatSurroundings =
  | { readonly where: 'air'; readonly ambientTemperature: Celsius; readonly formation: AirFormation }
  | ({ readonly where: 'ground' } & Soil)
  | ({
      readonly where: 'duct';
      readonly duct: {
        /** What it is made of. */
        readonly kind: DuctKind;
        readonly wall: ThermalMaterial;
        /** Inner diameter, mm. */
        readonly innerDiameter: Millimetres;
        /** Outer diameter, mm. */
        readonly outerDiameter: Millimetres;
      };
    } & Soil);

/** One rating to compute. */
export interface HeatCase {
  readonly cable: HeatCable;
  /** Loaded conductors of the circuit: two in single phase, three in three phase, four where the neutral is loaded alike. */
  readonly loadedConductors: 2 | 3 | 4;
  readonly surroundings: HeatSurroundings;
  /** Largest operating temperature of the conductor, °C. */
  readonly operatingTemperature: Celsius;
  /** Frequency, Hz. */
  readonly frequency: Hertz;
}

/** Cables of a formation, and their distance axis to axis in diameters. */
export const formations: Readonly<Record<AirFormation, readonly [cables: number | undefined, diameters: number]>> = {
  'one-spaced': [undefined, 2],
  'two-touching-horizontal': [2, 1],
  'three-trefoil': [3, 1],
  'three-touching-horizontal': [3, 1],
  'two-touching-vertical': [2, 1],
  'two-spaced-vertical': [2, 2],
  'three-touching-vertical': [3, 1],
  'three-spaced-vertical': [3, 2],
  'one-on-wall': [1, 1],
  'three-trefoil-on-wall': [3, 1],
};

/** @internal Distance of the axes of the single-core cables of a circuit in the ground, mm. */
export function axesApart({ cable, surroundings }: HeatCase): number {
  if (surroundings.where === 'air') return formations[surroundings.formation][1] * cable.overallDiameter;
  const outer = surroundings.where === 'duct' ? surroundings.duct.outerDiameter : cable.overallDiameter;
  return surroundings.spacing === undefined ? outer : surroundings.spacing * 1000;
}

/** @internal The neighbours of a cable in the ground, the other single-core cables of its circuit first: of the hottest. */
export function neighboursOf(heat: HeatCase): readonly BuriedNeighbour[] {
  const { cable, loadedConductors, surroundings } = heat;
  if (surroundings.where === 'air') return [];
  const apart = axesApart(heat) / 1000;
  const beside = cable.cores === 1 ? [1, -1, 2].slice(0, loadedConductors - 1) : [];
  const own = beside.map((i) => ({ offset: metres(i * apart), depth: surroundings.burialDepth }));
  return [...own, ...(surroundings.neighbours ?? [])];
}

/** Refuses what the method does not cover, by name. */
function refuse({ cable }: HeatCase): void {
  const what =
    cable.cores === 1 && cable.shape === 'sector'
      ? 'the heat balance of single-core cables with sector-shaped conductors'
      : cable.armour && (cable.cores === 1 || cable.cores === 5)
        ? `the losses in the armour of cables of ${cable.cores} ${cable.cores === 1 ? 'core' : 'cores'}`
        : undefined;
  if (what !== undefined) throw new CalculationError('not-covered', `${what} is not covered`, { what });
}

/**
 * @internal Refuses a case that contradicts itself, with all that is wrong, and what is not covered.
 * @param heat the case
 */
export function checkCase(heat: HeatCase): void {
  const { cable, loadedConductors, surroundings } = heat;
  const problems: Problem[] = [];
  const wrong = (when: boolean, path: Problem['path'], message: string) => {
    if (when) problems.push({ path, message });
  };
  const mm = (value: number) => formatIn(value, 'mm', 6);
  const core = cable.conductorDiameter + 2 * cable.insulation.thickness;
  wrong(![1, 2, 3, 4, 5].includes(cable.cores), ['cable', 'cores'], 'is not 1 to 5');
  wrong(![2, 3, 4].includes(loadedConductors), ['loadedConductors'], 'is not 2 to 4');
  wrong(cable.cores > 1 && loadedConductors > cable.cores, ['loadedConductors'], `the cable has ${cable.cores} cores`);
  for (const layer of ['insulation', 'sheath', 'bedding'] as const)
    wrong(cable[layer] !== undefined && !(cable[layer].thickness > 0), ['cable', layer, 'thickness'], 'is not above 0');
  wrong(
    cable.armour !== undefined && !(cable.armour.wireDiameter > 0),
    ['cable', 'armour', 'wireDiameter'],
    'is not above 0',
  );
  // sector-shaped cores are laid up closer than round ones
  const least = cable.shape === 'round' ? core * (cable.cores === 1 ? 1 : 2) : core;
  wrong(
    !(cable.laidUpDiameter > least * (1 - 1e-6)),
    ['cable', 'laidUpDiameter'],
    `${mm(cable.laidUpDiameter)} do not hold cores of ${mm(core)}`,
  );
  const inside =
    cable.laidUpDiameter +
    2 * ((cable.bedding?.thickness ?? 0) + (cable.armour?.wireDiameter ?? 0) + cable.sheath.thickness);
  wrong(
    !(cable.overallDiameter > inside * 0.999),
    ['cable', 'overallDiameter'],
    `is ${mm(cable.overallDiameter)}; the layers make ${mm(inside)}`,
  );
  if (surroundings.where === 'air') {
    const cables = formations[surroundings.formation]?.[0];
    wrong(
      cable.cores === 1 && cables !== undefined && cables !== loadedConductors,
      ['surroundings', 'formation'],
      `${surroundings.formation} is not made of ${loadedConductors} single-core cables`,
    );
    wrong(
      surroundings.formation.endsWith('on-wall') && cable.overallDiameter > 80,
      ['surroundings', 'formation'],
      `holds up to 80 mm, the cable has ${mm(cable.overallDiameter)} (IEC 60287-2-1)`,
    );
  } else {
    const outer = surroundings.where === 'duct' ? surroundings.duct.outerDiameter : cable.overallDiameter;
    const { spacing } = surroundings;
    wrong(
      spacing !== undefined && (cable.cores > 1 || !(spacing * 1000 >= outer * (1 - 1e-6))),
      ['surroundings', 'spacing'],
      cable.cores > 1 ? 'is of single-core cables' : `is less than the diameter of ${mm(outer)}`,
    );
    for (const [i, n] of (surroundings.neighbours ?? []).entries())
      wrong(
        !(Math.hypot(n.offset, n.depth - surroundings.burialDepth) >= (outer / 1000) * (1 - 1e-6)),
        ['surroundings', 'neighbours', i],
        `lies closer than a diameter of ${mm(outer)}`,
      );
    if (surroundings.where === 'duct') {
      const { innerDiameter, outerDiameter } = surroundings.duct;
      const path = ['surroundings', 'duct', 'innerDiameter'] as const;
      wrong(!(innerDiameter > cable.overallDiameter), path, `does not hold ${mm(cable.overallDiameter)}`);
      wrong(!(outerDiameter > innerDiameter), ['surroundings', 'duct', 'outerDiameter'], 'is not above the inner one');
    }
  }
  if (problems.length > 0) throw invalidInput('a heat balance', problems);
  refuse(heat);
}
