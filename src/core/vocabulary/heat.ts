import type {
  Amperes,
  Celsius,
  KelvinMetresPerWatt,
  Kelvins,
  Metres,
  Millimetres,
  OhmsPerMetre,
  Ratio,
} from '../../units/index.js';
import type { Terms } from './term.js';

/** Roles of heat. */
export interface HeatTerms {
  /** Current-carrying capacity by computation, not from a table I_c, A, 0 and up. */
  computedCapacity: Amperes;
  /** Exponent of a power law m, 1. */
  lawExponent: Ratio;
  /** Coefficient of the part that a power law deducts b, 1. */
  lawDeduction: Ratio;
  /** Exponent of the part that a power law deducts n, 1. */
  lawDeductionExponent: Ratio;
  /** Rise of the conductor above its surroundings that is permitted Δθ, K, above 0 to 250. */
  permissibleRise: Kelvins;
  /** Permitted rise above the reference temperature of a table Δθ_0, K, above 0 to 250. */
  referenceRise: Kelvins;
  /** Rise of the surface of a cable above the air Δθ_s, K, 0 to 250. */
  surfaceRise: Kelvins;
  /** Mean temperature between cable and duct θ_m, °C, 0 to 250. */
  mediumTemperature: Celsius;
  /** Argument of skin and proximity effect x, 1, 0 and up. */
  skinArgument: Ratio;
  /** Share that skin effect adds to the resistance y_s, 1, 0 and up. */
  skinFactor: Ratio;
  /** Share that proximity effect adds to the resistance y_p, 1, 0 and up. */
  proximityFactor: Ratio;
  /** Share of the proximity effect of round conductors that the shape leaves k_sh, 1, above 0 to 1. */
  shapeShare: Ratio;
  /** Resistance per length to alternating current R_ac, Ω/m, above 0. */
  acResistancePerMetre: OhmsPerMetre;
  /** Diameter of a conductor d_c, mm, above 0. */
  conductorDiameter: Millimetres;
  /** Distance between the axes of conductors s, mm, above 0. */
  conductorSpacing: Millimetres;
  /** Thickness of the insulation of a core t_i, mm, above 0. */
  insulationThickness: Millimetres;
  /** Radius of the circle around sector-shaped conductors r_1, mm, above 0. */
  sectorRadius: Millimetres;
  /** Number of cores of a cable n, 1, 1 and up. */
  coreCount: Ratio;
  /** Thickness of the insulation over the diameter of the conductor X, 1, above 0. */
  insulationRatio: Ratio;
  /** Geometric factor of the insulation between touching cores G, 1, above 0. */
  geometricFactor: Ratio;
  /** What the hottest core sees of the geometric factor when not all cores are loaded k_h, 1, above 0 to 1. */
  hottestCoreShare: Ratio;
  /** Diameter over the laid-up cores D_l, mm, above 0. */
  laidUpDiameter: Millimetres;
  /** Thermal resistivity of a material ρ_T, K·m/W, above 0. */
  thermalResistivity: KelvinMetresPerWatt;
  /** Thermal resistance per core between conductor and laid-up cores T_1, K·m/W, above 0. */
  coreThermalResistance: KelvinMetresPerWatt;
  /** Thermal resistance of the bedding T_2, K·m/W, 0 and up. */
  beddingThermalResistance: KelvinMetresPerWatt;
  /** Thermal resistance of the sheath T_3, K·m/W, 0 and up. */
  sheathThermalResistance: KelvinMetresPerWatt;
  /** Thermal resistance outside the cable T_4, K·m/W, above 0. */
  externalThermalResistance: KelvinMetresPerWatt;
  /** Thermal resistance between conductors and surface, for the losses of the whole cable T_in, K·m/W, 0 and up. */
  innerThermalResistance: KelvinMetresPerWatt;
  /** Thermal resistance of the soil around one cable or duct T_so, K·m/W, 0 and up. */
  soilThermalResistance: KelvinMetresPerWatt;
  /** What one neighbour of equal losses adds T_nb, K·m/W, 0 and up. */
  neighbourThermalResistance: KelvinMetresPerWatt;
  /** What all neighbours of equal losses add T_nbs, K·m/W, 0 and up. */
  neighboursThermalResistance: KelvinMetresPerWatt;
  /** Thermal resistance between the inside of a duct and the surface of the ground T_du, K·m/W, 0 and up. */
  ductThermalResistance: KelvinMetresPerWatt;
  /** Thermal resistance of the wall of a duct T_wa, K·m/W, 0 and up. */
  wallThermalResistance: KelvinMetresPerWatt;
  /** Thermal resistance of the gap between cable and duct T_ga, K·m/W, above 0. */
  gapThermalResistance: KelvinMetresPerWatt;
  /** Distance of a neighbour to the side, axis to axis a, m. */
  neighbourOffset: Metres;
  /** Depth of the axis of a neighbour L_n, m, above 0. */
  neighbourDepth: Metres;
  /** Thermal resistance of a round layer T_sh, K·m/W, 0 and up. */
  shellThermalResistance: KelvinMetresPerWatt;
  /** Thickness of a round layer t, mm, 0 and up. */
  shellThickness: Millimetres;
  /** Diameter below a round layer D_i, mm, above 0. */
  shellInnerDiameter: Millimetres;
  /** Outer diameter of a cable or duct D_e, mm, above 0. */
  cableDiameter: Millimetres;
  /** Heat that a surface gives to the air, W/m² at 1 K to the power of 5/4 h, 1, above 0. */
  dissipation: Ratio;
  /** Part of the dissipation that falls with the diameter Z, 1, above 0. */
  dissipationSlope: Ratio;
  /** Part of the dissipation that does not depend on the diameter E, 1, above 0. */
  dissipationBase: Ratio;
  /** Exponent of the diameter in the dissipation g, 1, above 0 to 1. */
  dissipationExponent: Ratio;
  /** Ratio of the drop of temperature inside a cable to that outside it at a surface rise of 1 K K_A, 1, 0 and up. */
  surfaceShare: Ratio;
  /** Constant U of the gap in a duct U, 1, above 0. */
  ductGapBase: Ratio;
  /** Constant V of the gap in a duct V, 1, above 0. */
  ductGapOffset: Ratio;
  /** Constant Y of the gap in a duct Y, 1, above 0. */
  ductGapSlope: Ratio;
  /** Constant of a correlation of heat C_h, 1. */
  heatConstant: Ratio;
  /** Distance of the axis of a conductor from that of the cable c, mm, above 0. */
  coreAxisRadius: Millimetres;
  /** Temperature of the surface of a cable θ_e, °C, -40 to 250. */
  surfaceTemperature: Celsius;
  /** Thickness of the bedding under the armour t_b, mm, 0 and up. */
  beddingThickness: Millimetres;
  /** Mean diameter of the armour d_A, mm, above 0. */
  armourMeanDiameter: Millimetres;
  /** Diameter of an armour wire d_w, mm, above 0. */
  armourWireDiameter: Millimetres;
  /** Resistance per length of the armour at its temperature R_A, Ω/m, above 0. */
  armourPerMetre: OhmsPerMetre;
  /** Temperature of the armour θ_A, °C, -40 to 250. */
  armourTemperature: Celsius;
  /** Temperature of the armour that the balance gives θ_A,b, °C, -40 to 250. */
  balancedArmourTemperature: Celsius;
  /** Losses of the armour over those of the conductors λ_2, 1, 0 and up. */
  armourLossFactor: Ratio;
}

/** Symbols, units and ranges of the roles of heat. */
export const heatTerms: Terms<HeatTerms> = {
  computedCapacity: {
    symbol: 'I_c',
    unit: 'A',
    least: 0,
    words: 'current-carrying capacity by computation, not from a table',
  },
  lawExponent: { symbol: 'm', unit: '1', words: 'exponent of a power law' },
  lawDeduction: { symbol: 'b', unit: '1', words: 'coefficient of the part that a power law deducts' },
  lawDeductionExponent: { symbol: 'n', unit: '1', words: 'exponent of the part that a power law deducts' },
  permissibleRise: {
    symbol: 'Δθ',
    unit: 'K',
    above: 0,
    most: 250,
    words: 'rise of the conductor above its surroundings that is permitted',
  },
  referenceRise: {
    symbol: 'Δθ_0',
    unit: 'K',
    above: 0,
    most: 250,
    words: 'permitted rise above the reference temperature of a table',
  },
  surfaceRise: {
    symbol: 'Δθ_s',
    unit: 'K',
    least: 0,
    most: 250,
    words: 'rise of the surface of a cable above the air',
  },
  mediumTemperature: {
    symbol: 'θ_m',
    unit: '°C',
    least: 0,
    most: 250,
    words: 'mean temperature between cable and duct',
  },
  skinArgument: { symbol: 'x', unit: '1', least: 0, words: 'argument of skin and proximity effect' },
  skinFactor: { symbol: 'y_s', unit: '1', least: 0, words: 'share that skin effect adds to the resistance' },
  proximityFactor: { symbol: 'y_p', unit: '1', least: 0, words: 'share that proximity effect adds to the resistance' },
  shapeShare: {
    symbol: 'k_sh',
    unit: '1',
    above: 0,
    most: 1,
    words: 'share of the proximity effect of round conductors that the shape leaves',
  },
  acResistancePerMetre: {
    symbol: 'R_ac',
    unit: 'Ω/m',
    above: 0,
    words: 'resistance per length to alternating current',
  },
  conductorDiameter: { symbol: 'd_c', unit: 'mm', above: 0, words: 'diameter of a conductor' },
  conductorSpacing: { symbol: 's', unit: 'mm', above: 0, words: 'distance between the axes of conductors' },
  insulationThickness: { symbol: 't_i', unit: 'mm', above: 0, words: 'thickness of the insulation of a core' },
  sectorRadius: { symbol: 'r_1', unit: 'mm', above: 0, words: 'radius of the circle around sector-shaped conductors' },
  coreCount: { symbol: 'n', unit: '1', least: 1, words: 'number of cores of a cable' },
  insulationRatio: {
    symbol: 'X',
    unit: '1',
    above: 0,
    words: 'thickness of the insulation over the diameter of the conductor',
  },
  geometricFactor: {
    symbol: 'G',
    unit: '1',
    above: 0,
    words: 'geometric factor of the insulation between touching cores',
  },
  hottestCoreShare: {
    symbol: 'k_h',
    unit: '1',
    above: 0,
    most: 1,
    words: 'what the hottest core sees of the geometric factor when not all cores are loaded',
  },
  laidUpDiameter: { symbol: 'D_l', unit: 'mm', above: 0, words: 'diameter over the laid-up cores' },
  thermalResistivity: { symbol: 'ρ_T', unit: 'K·m/W', above: 0, words: 'thermal resistivity of a material' },
  coreThermalResistance: {
    symbol: 'T_1',
    unit: 'K·m/W',
    above: 0,
    words: 'thermal resistance per core between conductor and laid-up cores',
  },
  beddingThermalResistance: { symbol: 'T_2', unit: 'K·m/W', least: 0, words: 'thermal resistance of the bedding' },
  sheathThermalResistance: { symbol: 'T_3', unit: 'K·m/W', least: 0, words: 'thermal resistance of the sheath' },
  externalThermalResistance: { symbol: 'T_4', unit: 'K·m/W', above: 0, words: 'thermal resistance outside the cable' },
  innerThermalResistance: {
    symbol: 'T_in',
    unit: 'K·m/W',
    least: 0,
    words: 'thermal resistance between conductors and surface, for the losses of the whole cable',
  },
  soilThermalResistance: {
    symbol: 'T_so',
    unit: 'K·m/W',
    least: 0,
    words: 'thermal resistance of the soil around one cable or duct',
  },
  neighbourThermalResistance: {
    symbol: 'T_nb',
    unit: 'K·m/W',
    least: 0,
    words: 'what one neighbour of equal losses adds',
  },
  neighboursThermalResistance: {
    symbol: 'T_nbs',
    unit: 'K·m/W',
    least: 0,
    words: 'what all neighbours of equal losses add',
  },
  ductThermalResistance: {
    symbol: 'T_du',
    unit: 'K·m/W',
    least: 0,
    words: 'thermal resistance between the inside of a duct and the surface of the ground',
  },
  wallThermalResistance: { symbol: 'T_wa', unit: 'K·m/W', least: 0, words: 'thermal resistance of the wall of a duct' },
  gapThermalResistance: {
    symbol: 'T_ga',
    unit: 'K·m/W',
    above: 0,
    words: 'thermal resistance of the gap between cable and duct',
  },
  neighbourOffset: { symbol: 'a', unit: 'm', words: 'distance of a neighbour to the side, axis to axis' },
  neighbourDepth: { symbol: 'L_n', unit: 'm', above: 0, words: 'depth of the axis of a neighbour' },
  shellThermalResistance: { symbol: 'T_sh', unit: 'K·m/W', least: 0, words: 'thermal resistance of a round layer' },
  shellThickness: { symbol: 't', unit: 'mm', least: 0, words: 'thickness of a round layer' },
  shellInnerDiameter: { symbol: 'D_i', unit: 'mm', above: 0, words: 'diameter below a round layer' },
  cableDiameter: { symbol: 'D_e', unit: 'mm', above: 0, words: 'outer diameter of a cable or duct' },
  dissipation: {
    symbol: 'h',
    unit: '1',
    above: 0,
    words: 'heat that a surface gives to the air, W/m² at 1 K to the power of 5/4',
  },
  dissipationSlope: { symbol: 'Z', unit: '1', above: 0, words: 'part of the dissipation that falls with the diameter' },
  dissipationBase: {
    symbol: 'E',
    unit: '1',
    above: 0,
    words: 'part of the dissipation that does not depend on the diameter',
  },
  dissipationExponent: {
    symbol: 'g',
    unit: '1',
    above: 0,
    most: 1,
    words: 'exponent of the diameter in the dissipation',
  },
  surfaceShare: {
    symbol: 'K_A',
    unit: '1',
    least: 0,
    words: 'ratio of the drop of temperature inside a cable to that outside it at a surface rise of 1 K',
  },
  ductGapBase: { symbol: 'U', unit: '1', above: 0, words: 'constant U of the gap in a duct' },
  ductGapOffset: { symbol: 'V', unit: '1', above: 0, words: 'constant V of the gap in a duct' },
  ductGapSlope: { symbol: 'Y', unit: '1', above: 0, words: 'constant Y of the gap in a duct' },
  heatConstant: { symbol: 'C_h', unit: '1', words: 'constant of a correlation of heat' },
  coreAxisRadius: {
    symbol: 'c',
    unit: 'mm',
    above: 0,
    words: 'distance of the axis of a conductor from that of the cable',
  },
  surfaceTemperature: {
    symbol: 'θ_e',
    unit: '°C',
    least: -40,
    most: 250,
    words: 'temperature of the surface of a cable',
  },
  beddingThickness: { symbol: 't_b', unit: 'mm', least: 0, words: 'thickness of the bedding under the armour' },
  armourMeanDiameter: { symbol: 'd_A', unit: 'mm', above: 0, words: 'mean diameter of the armour' },
  armourWireDiameter: { symbol: 'd_w', unit: 'mm', above: 0, words: 'diameter of an armour wire' },
  armourPerMetre: {
    symbol: 'R_A',
    unit: 'Ω/m',
    above: 0,
    words: 'resistance per length of the armour at its temperature',
  },
  armourTemperature: { symbol: 'θ_A', unit: '°C', least: -40, most: 250, words: 'temperature of the armour' },
  balancedArmourTemperature: {
    symbol: 'θ_A,b',
    unit: '°C',
    least: -40,
    most: 250,
    words: 'temperature of the armour that the balance gives',
  },
  armourLossFactor: { symbol: 'λ_2', unit: '1', least: 0, words: 'losses of the armour over those of the conductors' },
};
