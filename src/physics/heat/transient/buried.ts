import { evaluate } from '../../../core/index.js';
import { type Metres, metres, millimetres, ratio, type SquareMetresPerSecond } from '../../../units/index.js';
import { type HeatBalance, heatBalance } from '../balance.js';
import { type HeatCase, type HeatLayer, neighboursOf } from '../cable.js';
import { buriedResistance, neighbourResistance } from '../ground.js';
import { volumeHeatCapacities } from '../tables/volume-heat-capacities.js';
import { innerResistance } from '../thermal-resistance.js';
import type { BuriedBody, CableStore } from './buried-body.js';

const area = (outer: number, inner = 0) => (Math.PI / 4) * (outer * outer - inner * inner);

/** J/(K·m) of a material over an area in mm²; one whose heat capacity is not known stores nothing: the safe side. */
function capacity(material: string, square: number): number {
  const offered = volumeHeatCapacities.axes[0].labels as readonly string[];
  const perVolume = offered.includes(material) ? volumeHeatCapacities.get({ material: material as 'PVC' }) : 0;
  return 1000 * perVolume * square;
}

/** Share of what a layer stores that counts on its inner side, by IEC 60853-2 for long times. */
function innerPart(outer: number, inner: number): number {
  const u = outer / inner;
  return 1 / (2 * Math.log(u)) - 1 / (u * u - 1);
}

/** What the cable stores; fillers are left out: the safe side. */
function storeOf({ cable, loadedConductors }: HeatCase, b: HeatBalance, outsideCable: number): CableStore {
  const loaded = cable.cores === 1 ? 1 : loadedConductors;
  const lossy = 1 + b.armourLossFactor;
  const d = cable.conductorDiameter;
  const over = d + 2 * cable.insulation.thickness;
  const insulation = loaded * capacity(cable.insulation.material, area(over, d));
  const near = innerPart(over, d);
  const layer = (of: HeatLayer | undefined, inner: number) =>
    of ? capacity(of.material, area(inner + 2 * of.thickness, inner)) : 0;
  const bedded = cable.laidUpDiameter + 2 * (cable.bedding?.thickness ?? 0);
  const wire = cable.armour?.wireDiameter ?? 0;
  // wires fill π/4 of their ring
  const armour = wire > 0 ? (Math.PI / 4) * capacity('steel', area(bedded + 2 * wire, bedded)) : 0;
  const below = cable.overallDiameter - 2 * cable.sheath.thickness;
  const sheath = innerPart(cable.overallDiameter, below) * layer(cable.sheath, below);
  return {
    innerResistance: b.coreThermalResistance / loaded,
    outerResistance: b.beddingThermalResistance + lossy * (b.sheathThermalResistance + outsideCable),
    innerCapacity: loaded * capacity(cable.metal, area(d)) + near * insulation,
    outerCapacity: (1 - near) * insulation + layer(cable.bedding, cable.laidUpDiameter) + (armour + sheath) / lossy,
  };
}

/** What a steady load makes of a cable in the ground, and the body that follows another load. */
export interface BuriedState {
  readonly body: BuriedBody;
  readonly balance: HeatBalance;
}

/** @internal The steady balance of a cable in the ground and the body for its course in time. */
export function buriedState(
  heat: HeatCase & { readonly surroundings: { readonly where: 'ground' | 'duct' } },
  diffusivity: SquareMetresPerSecond,
): BuriedState {
  const { cable, surroundings, loadedConductors } = heat;
  const balance = heatBalance(heat);
  const diameter = surroundings.where === 'duct' ? surroundings.duct.outerDiameter : cable.overallDiameter;
  const { soilResistivity, burialDepth } = surroundings;
  const all = neighboursOf(heat);
  const soil =
    evaluate(buriedResistance, { soilResistivity, burialDepth, cableDiameter: diameter }) +
    all.reduce(
      (sum, n) =>
        sum +
        evaluate(neighbourResistance, {
          soilResistivity,
          burialDepth,
          neighbourOffset: n.offset,
          neighbourDepth: n.depth,
        }),
      0,
    );
  const inner = innerResistance({
    loadedCores: ratio(cable.cores === 1 ? 1 : loadedConductors),
    coreThermalResistance: balance.coreThermalResistance,
    beddingThermalResistance: balance.beddingThermalResistance,
    sheathThermalResistance: balance.sheathThermalResistance,
    armourLossFactor: balance.armourLossFactor,
  });
  const external = balance.externalThermalResistance;
  const distance = (n: (typeof all)[number], depth: Metres) => metres(Math.hypot(n.offset, n.depth - depth));
  return {
    balance,
    body: {
      diameter: millimetres(diameter),
      depth: burialDepth,
      diffusivity,
      soilShare: ratio(Math.min(1, soil / (inner + external))),
      neighbours: all.map((n) => ({
        distance: distance(n, burialDepth),
        imageDistance: metres(Math.hypot(n.offset, n.depth + burialDepth)),
      })),
      store: storeOf(heat, balance, Math.max(0, external - soil)),
    },
  };
}
