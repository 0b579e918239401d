import type { Roles } from './term.js';

/** Roles of heat. */
export const heatTerms = {
  /** Current-carrying capacity by computation, not from a table I_c, A, 0 and up. */
  computedCapacity: {
    symbol: 'I_c',
    unit: 'A',
    least: 0,
    words: 'current-carrying capacity by computation, not from a table',
  },
  /** Exponent of a power law m, 1, any. */
  lawExponent: { symbol: 'm', unit: '1', words: 'exponent of a power law' },
  /** Coefficient of the part that a power law deducts b, 1, any. */
  lawDeduction: { symbol: 'b', unit: '1', words: 'coefficient of the part that a power law deducts' },
  /** Exponent of the part that a power law deducts n, 1, any. */
  lawDeductionExponent: { symbol: 'n', unit: '1', words: 'exponent of the part that a power law deducts' },
  /** Rise of the conductor above its surroundings that is permitted Δθ, K, above 0 to 250. */
  permissibleRise: {
    symbol: 'Δθ',
    unit: 'K',
    above: 0,
    most: 250,
    words: 'rise of the conductor above its surroundings that is permitted',
  },
  /** Permitted rise above the reference temperature of a table Δθ_0, K, above 0 to 250. */
  referenceRise: {
    symbol: 'Δθ_0',
    unit: 'K',
    above: 0,
    most: 250,
    words: 'permitted rise above the reference temperature of a table',
  },
  /** Rise of the surface of a cable above the air Δθ_s, K, 0 to 250. */
  surfaceRise: {
    symbol: 'Δθ_s',
    unit: 'K',
    least: 0,
    most: 250,
    words: 'rise of the surface of a cable above the air',
  },
  /** Mean temperature between cable and duct θ_m, °C, 0 to 250. */
  mediumTemperature: {
    symbol: 'θ_m',
    unit: '°C',
    least: 0,
    most: 250,
    words: 'mean temperature between cable and duct',
  },
  /** Argument of skin and proximity effect x, 1, 0 and up. */
  skinArgument: { symbol: 'x', unit: '1', least: 0, words: 'argument of skin and proximity effect' },
  /** Share that skin effect adds to the resistance y_s, 1, 0 and up. */
  skinFactor: { symbol: 'y_s', unit: '1', least: 0, words: 'share that skin effect adds to the resistance' },
  /** Share that proximity effect adds to the resistance y_p, 1, 0 and up. */
  proximityFactor: { symbol: 'y_p', unit: '1', least: 0, words: 'share that proximity effect adds to the resistance' },
  /** Share of the proximity effect of round conductors that the shape leaves k_sh, 1, above 0 to 1. */
  shapeShare: {
    symbol: 'k_sh',
    unit: '1',
    above: 0,
    most: 1,
    words: 'share of the proximity effect of round conductors that the shape leaves',
  },
  /** Resistance per length to alternating current R_ac, Ω/m, above 0. */
  acResistancePerMetre: {
    symbol: 'R_ac',
    unit: 'Ω/m',
    above: 0,
    words: 'resistance per length to alternating current',
  },
  /** Diameter of a conductor d_c, mm, above 0. */
  conductorDiameter: { symbol: 'd_c', unit: 'mm', above: 0, words: 'diameter of a conductor' },
  /** Distance between the axes of conductors s, mm, above 0. */
  conductorSpacing: { symbol: 's', unit: 'mm', above: 0, words: 'distance between the axes of conductors' },
  /** Thickness of the insulation of a core t_i, mm, above 0. */
  insulationThickness: { symbol: 't_i', unit: 'mm', above: 0, words: 'thickness of the insulation of a core' },
  /** Radius of the circle around sector-shaped conductors r_1, mm, above 0. */
  sectorRadius: { symbol: 'r_1', unit: 'mm', above: 0, words: 'radius of the circle around sector-shaped conductors' },
  /** Number of cores of a cable n, 1, 1 and up. */
  coreCount: { symbol: 'n', unit: '1', least: 1, words: 'number of cores of a cable' },
  /** Thickness of the insulation over the diameter of the conductor X, 1, above 0. */
  insulationRatio: {
    symbol: 'X',
    unit: '1',
    above: 0,
    words: 'thickness of the insulation over the diameter of the conductor',
  },
  /** Geometric factor of the insulation between touching cores G, 1, above 0. */
  geometricFactor: {
    symbol: 'G',
    unit: '1',
    above: 0,
    words: 'geometric factor of the insulation between touching cores',
  },
  /** What the hottest core sees of the geometric factor when not all cores are loaded k_h, 1, above 0 to 1. */
  hottestCoreShare: {
    symbol: 'k_h',
    unit: '1',
    above: 0,
    most: 1,
    words: 'what the hottest core sees of the geometric factor when not all cores are loaded',
  },
  /** Diameter over the laid-up cores D_l, mm, above 0. */
  laidUpDiameter: { symbol: 'D_l', unit: 'mm', above: 0, words: 'diameter over the laid-up cores' },
  /** Thermal resistivity of a material ρ_T, K·m/W, above 0. */
  thermalResistivity: { symbol: 'ρ_T', unit: 'K·m/W', above: 0, words: 'thermal resistivity of a material' },
  /** Thermal resistance per core between conductor and laid-up cores T_1, K·m/W, above 0. */
  coreThermalResistance: {
    symbol: 'T_1',
    unit: 'K·m/W',
    above: 0,
    words: 'thermal resistance per core between conductor and laid-up cores',
  },
  /** Thermal resistance of the bedding T_2, K·m/W, 0 and up. */
  beddingThermalResistance: { symbol: 'T_2', unit: 'K·m/W', least: 0, words: 'thermal resistance of the bedding' },
  /** Thermal resistance of the sheath T_3, K·m/W, 0 and up. */
  sheathThermalResistance: { symbol: 'T_3', unit: 'K·m/W', least: 0, words: 'thermal resistance of the sheath' },
  /** Thermal resistance outside the cable T_4, K·m/W, above 0. */
  externalThermalResistance: { symbol: 'T_4', unit: 'K·m/W', above: 0, words: 'thermal resistance outside the cable' },
  /** Thermal resistance between conductors and surface, for the losses of the whole cable T_in, K·m/W, 0 and up. */
  innerThermalResistance: {
    symbol: 'T_in',
    unit: 'K·m/W',
    least: 0,
    words: 'thermal resistance between conductors and surface, for the losses of the whole cable',
  },
  /** Thermal resistance of the soil around one cable or duct T_so, K·m/W, 0 and up. */
  soilThermalResistance: {
    symbol: 'T_so',
    unit: 'K·m/W',
    least: 0,
    words: 'thermal resistance of the soil around one cable or duct',
  },
  /** What one neighbour of equal losses adds T_nb, K·m/W, 0 and up. */
  neighbourThermalResistance: {
    symbol: 'T_nb',
    unit: 'K·m/W',
    least: 0,
    words: 'what one neighbour of equal losses adds',
  },
  /** What all neighbours of equal losses add T_nbs, K·m/W, 0 and up. */
  neighboursThermalResistance: {
    symbol: 'T_nbs',
    unit: 'K·m/W',
    least: 0,
    words: 'what all neighbours of equal losses add',
  },
  /** Thermal resistance between the inside of a duct and the surface of the ground T_du, K·m/W, 0 and up. */
  ductThermalResistance: {
    symbol: 'T_du',
    unit: 'K·m/W',
    least: 0,
    words: 'thermal resistance between the inside of a duct and the surface of the ground',
  },
  /** Thermal resistance of the wall of a duct T_wa, K·m/W, 0 and up. */
  wallThermalResistance: { symbol: 'T_wa', unit: 'K·m/W', least: 0, words: 'thermal resistance of the wall of a duct' },
  /** Thermal resistance of the gap between cable and duct T_ga, K·m/W, above 0. */
  gapThermalResistance: {
    symbol: 'T_ga',
    unit: 'K·m/W',
    above: 0,
    words: 'thermal resistance of the gap between cable and duct',
  },
  /** Distance of a neighbour to the side, axis to axis a, m, any. */
  neighbourOffset: { symbol: 'a', unit: 'm', words: 'distance of a neighbour to the side, axis to axis' },
  /** Depth of the axis of a neighbour L_n, m, above 0. */
  neighbourDepth: { symbol: 'L_n', unit: 'm', above: 0, words: 'depth of the axis of a neighbour' },
  /** Thermal resistance of a round layer T_sh, K·m/W, 0 and up. */
  shellThermalResistance: { symbol: 'T_sh', unit: 'K·m/W', least: 0, words: 'thermal resistance of a round layer' },
  /** Thickness of a round layer t, mm, 0 and up. */
  shellThickness: { symbol: 't', unit: 'mm', least: 0, words: 'thickness of a round layer' },
  /** Diameter below a round layer D_i, mm, above 0. */
  shellInnerDiameter: { symbol: 'D_i', unit: 'mm', above: 0, words: 'diameter below a round layer' },
  /** Outer diameter of a cable or duct D_e, mm, above 0. */
  cableDiameter: { symbol: 'D_e', unit: 'mm', above: 0, words: 'outer diameter of a cable or duct' },
  /** Heat that a surface gives to the air, W/m² at 1 K to the power of 5/4 h, 1, above 0. */
  dissipation: {
    symbol: 'h',
    unit: '1',
    above: 0,
    words: 'heat that a surface gives to the air, W/m² at 1 K to the power of 5/4',
  },
  /** Part of the dissipation that falls with the diameter Z, 1, above 0. */
  dissipationSlope: { symbol: 'Z', unit: '1', above: 0, words: 'part of the dissipation that falls with the diameter' },
  /** Part of the dissipation that does not depend on the diameter E, 1, above 0. */
  dissipationBase: {
    symbol: 'E',
    unit: '1',
    above: 0,
    words: 'part of the dissipation that does not depend on the diameter',
  },
  /** Exponent of the diameter in the dissipation g, 1, above 0 to 1. */
  dissipationExponent: {
    symbol: 'g',
    unit: '1',
    above: 0,
    most: 1,
    words: 'exponent of the diameter in the dissipation',
  },
  /** Ratio of the drop of temperature inside a cable to that outside it at a surface rise of 1 K K_A, 1, 0 and up. */
  surfaceShare: {
    symbol: 'K_A',
    unit: '1',
    least: 0,
    words: 'ratio of the drop of temperature inside a cable to that outside it at a surface rise of 1 K',
  },
  /** Constant U of the gap in a duct U, 1, above 0. */
  ductGapBase: { symbol: 'U', unit: '1', above: 0, words: 'constant U of the gap in a duct' },
  /** Constant V of the gap in a duct V, 1, above 0. */
  ductGapOffset: { symbol: 'V', unit: '1', above: 0, words: 'constant V of the gap in a duct' },
  /** Constant Y of the gap in a duct Y, 1, above 0. */
  ductGapSlope: { symbol: 'Y', unit: '1', above: 0, words: 'constant Y of the gap in a duct' },
  /** Constant of a correlation of heat C_h, 1, any. */
  heatConstant: { symbol: 'C_h', unit: '1', words: 'constant of a correlation of heat' },
  /** Distance of the axis of a conductor from that of the cable c, mm, above 0. */
  coreAxisRadius: {
    symbol: 'c',
    unit: 'mm',
    above: 0,
    words: 'distance of the axis of a conductor from that of the cable',
  },
  /** Temperature of the surface of a cable θ_e, °C, -40 to 250. */
  surfaceTemperature: {
    symbol: 'θ_e',
    unit: '°C',
    least: -40,
    most: 250,
    words: 'temperature of the surface of a cable',
  },
  /** Thickness of the bedding under the armour t_b, mm, 0 and up. */
  beddingThickness: { symbol: 't_b', unit: 'mm', least: 0, words: 'thickness of the bedding under the armour' },
  /** Mean diameter of the armour d_A, mm, above 0. */
  armourMeanDiameter: { symbol: 'd_A', unit: 'mm', above: 0, words: 'mean diameter of the armour' },
  /** Diameter of an armour wire d_w, mm, above 0. */
  armourWireDiameter: { symbol: 'd_w', unit: 'mm', above: 0, words: 'diameter of an armour wire' },
  /** Resistance per length of the armour at its temperature R_A, Ω/m, above 0. */
  armourPerMetre: {
    symbol: 'R_A',
    unit: 'Ω/m',
    above: 0,
    words: 'resistance per length of the armour at its temperature',
  },
  /** Temperature of the armour θ_A, °C, -40 to 250. */
  armourTemperature: { symbol: 'θ_A', unit: '°C', least: -40, most: 250, words: 'temperature of the armour' },
  /** Temperature of the armour that the balance gives θ_A,b, °C, -40 to 250. */
  balancedArmourTemperature: {
    symbol: 'θ_A,b',
    unit: '°C',
    least: -40,
    most: 250,
    words: 'temperature of the armour that the balance gives',
  },
  /** Losses of the armour over those of the conductors λ_2, 1, 0 and up. */
  armourLossFactor: { symbol: 'λ_2', unit: '1', least: 0, words: 'losses of the armour over those of the conductors' },
  /** Thermal diffusivity of the soil δ, m²/s, above 0. */
  soilDiffusivity: { symbol: 'δ', unit: 'm²/s', above: 0, words: 'thermal diffusivity of the soil' },
  /** Heat capacity of a volume of soil C_s, J/(K·mm³), above 0. */
  soilHeatCapacity: { symbol: 'C_s', unit: 'J/(K·mm³)', above: 0, words: 'heat capacity of a volume of soil' },
  /** Density of the dry soil over that of water d_s, 1, above 0. */
  dryDensity: { symbol: 'd_s', unit: '1', above: 0, words: 'density of the dry soil over that of water' },
  /** Water in the soil over the mass of the dry soil v, 1, 0 to 1. */
  soilMoisture: { symbol: 'v', unit: '1', least: 0, most: 1, words: 'water in the soil over the mass of the dry soil' },
  /** Heat capacity of a volume of a material of cables C_v, J/(K·mm³), above 0. */
  volumeHeatCapacity: {
    symbol: 'C_v',
    unit: 'J/(K·mm³)',
    above: 0,
    words: 'heat capacity of a volume of a material of cables',
  },
  /** Share of its final rise that a temperature has reached R(t), 1, 0 and up. */
  attainment: { symbol: 'R(t)', unit: '1', least: 0, words: 'share of its final rise that a temperature has reached' },
  /** Share of the rise of the conductor that lies in the soil k, 1, 0 to 1. */
  soilShare: {
    symbol: 'k',
    unit: '1',
    least: 0,
    most: 1,
    words: 'share of the rise of the conductor that lies in the soil',
  },
  /** Mean load of a day over its peak LF, 1, 0 to 1. */
  loadFactor: { symbol: 'LF', unit: '1', least: 0, most: 1, words: 'mean load of a day over its peak' },
  /** Mean square of the load of a day over the square of its peak μ, 1, 0 to 1. */
  lossLoadFactor: {
    symbol: 'μ',
    unit: '1',
    least: 0,
    most: 1,
    words: 'mean square of the load of a day over the square of its peak',
  },
  /** Weight of the load factor itself in a rule for the loss-load factor w_LF, 1, 0 to 1. */
  loadFactorWeight: {
    symbol: 'w_LF',
    unit: '1',
    least: 0,
    most: 1,
    words: 'weight of the load factor itself in a rule for the loss-load factor',
  },
  /** Peak of a daily cycle over the current of a steady load M, 1, above 0. */
  cyclicFactor: {
    symbol: 'M',
    unit: '1',
    above: 0,
    words: 'peak of a daily cycle over the current of a steady load',
  },
  /** Peak current of a daily cycle by computation, not from a table I_c,M, A, 0 and up. */
  cyclicCapacity: {
    symbol: 'I_c,M',
    unit: 'A',
    least: 0,
    words: 'peak current of a daily cycle by computation, not from a table',
  },
  /** Product of the ratios of image distance to distance of the neighbours F, 1, above 0. */
  distanceProduct: {
    symbol: 'F',
    unit: '1',
    above: 0,
    words: 'product of the ratios of image distance to distance of the neighbours',
  },
  /** Diameter that stands for the neighbours of a group d_f, m, above 0. */
  groupDiameter: { symbol: 'd_f', unit: 'm', above: 0, words: 'diameter that stands for the neighbours of a group' },
  /** Steady load before an overload over the steady capacity h_1, 1, 0 to 1. */
  startLoad: {
    symbol: 'h_1',
    unit: '1',
    least: 0,
    most: 1,
    words: 'steady load before an overload over the steady capacity',
  },
  /** Rise that is permitted for a limited time over that of a steady load r, 1, above 0. */
  riseRatio: {
    symbol: 'r',
    unit: '1',
    above: 0,
    words: 'rise that is permitted for a limited time over that of a steady load',
  },
  /** Resistance at the temperature before an overload over that at its end R_1/R_max, 1, above 0 to 1. */
  startResistanceRatio: {
    symbol: 'R_1/R_max',
    unit: '1',
    above: 0,
    most: 1,
    words: 'resistance at the temperature before an overload over that at its end',
  },
  /** Resistance at the temperature of a steady load over that at the end of an overload R_R/R_max, 1, above 0 to 1. */
  ratedResistanceRatio: {
    symbol: 'R_R/R_max',
    unit: '1',
    above: 0,
    most: 1,
    words: 'resistance at the temperature of a steady load over that at the end of an overload',
  },
  /** Current for a limited time over the steady capacity I_2/I_R, 1, 0 and up. */
  emergencyFactor: {
    symbol: 'I_2/I_R',
    unit: '1',
    least: 0,
    words: 'current for a limited time over the steady capacity',
  },
  /** Losses of a metal sheath over those of the conductor λ_1, 1, 0 and up. */
  sheathLossFactor: {
    symbol: 'λ_1',
    unit: '1',
    least: 0,
    words: 'losses of a metal sheath over those of the conductor',
  },
  /** Resistance per length of a metal sheath at its temperature R_S, Ω/m, above 0. */
  sheathPerMetre: {
    symbol: 'R_S',
    unit: 'Ω/m',
    above: 0,
    words: 'resistance per length of a metal sheath at its temperature',
  },
  /** Reactance per length of a metal sheath X_S, Ω/m, above 0. */
  sheathReactance: { symbol: 'X_S', unit: 'Ω/m', above: 0, words: 'reactance per length of a metal sheath' },
  /** Mean diameter of a metal sheath d_S, mm, above 0. */
  sheathMeanDiameter: { symbol: 'd_S', unit: 'mm', above: 0, words: 'mean diameter of a metal sheath' },
  /** Distance between the axes of single-core cables s, mm, above 0. */
  cableSpacing: { symbol: 's', unit: 'mm', above: 0, words: 'distance between the axes of single-core cables' },
  /** Dielectric loss per length of one phase W_d, W/m, 0 and up. */
  dielectricLoss: { symbol: 'W_d', unit: 'W/m', least: 0, words: 'dielectric loss per length of one phase' },
  /** Relative permittivity of insulation ε, 1, 1 and up. */
  permittivity: { symbol: 'ε', unit: '1', least: 1, words: 'relative permittivity of insulation' },
  /** Loss factor of insulation tan δ, 1, 0 and up. */
  dielectricLossFactor: { symbol: 'tan δ', unit: '1', least: 0, words: 'loss factor of insulation' },
  /** Diameter over insulation D_i, mm, above 0. */
  insulationDiameter: { symbol: 'D_i', unit: 'mm', above: 0, words: 'diameter over insulation' },
  /** Diameter under insulation d_i, mm, above 0. */
  innerInsulationDiameter: { symbol: 'd_i', unit: 'mm', above: 0, words: 'diameter under insulation' },
} satisfies Roles;
