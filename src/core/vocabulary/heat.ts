import { aboveZero, anyNumber, fromZero, part, type Roles, share } from './term.js';

/** Roles of heat. */
export const heatTerms = {
  /** Current-carrying capacity by computation, not from a table I_c, A, 0 and up. */
  computedCapacity: ['I_c', 'A', fromZero, 'current-carrying capacity by computation, not from a table'],
  /** Exponent of a power law m, 1, any. */
  lawExponent: ['m', '1', anyNumber, 'exponent of a power law'],
  /** Coefficient of the part that a power law deducts b, 1, any. */
  lawDeduction: ['b', '1', anyNumber, 'coefficient of the part that a power law deducts'],
  /** Exponent of the part that a power law deducts n, 1, any. */
  lawDeductionExponent: ['n', '1', anyNumber, 'exponent of the part that a power law deducts'],
  /** Rise of the conductor above its surroundings that is permitted Δθ, K, above 0 to 250. */
  permissibleRise: [
    'Δθ',
    'K',
    { above: 0, most: 250 },
    'rise of the conductor above its surroundings that is permitted',
  ],
  /** Permitted rise above the reference temperature of a table Δθ_0, K, above 0 to 250. */
  referenceRise: ['Δθ_0', 'K', { above: 0, most: 250 }, 'permitted rise above the reference temperature of a table'],
  /** Rise of the surface of a cable above the air Δθ_s, K, 0 to 250. */
  surfaceRise: ['Δθ_s', 'K', { least: 0, most: 250 }, 'rise of the surface of a cable above the air'],
  /** Mean temperature between cable and duct θ_m, °C, 0 to 250. */
  mediumTemperature: ['θ_m', '°C', { least: 0, most: 250 }, 'mean temperature between cable and duct'],
  /** Argument of skin and proximity effect x, 1, 0 and up. */
  skinArgument: ['x', '1', fromZero, 'argument of skin and proximity effect'],
  /** Share that skin effect adds to the resistance y_s, 1, 0 and up. */
  skinFactor: ['y_s', '1', fromZero, 'share that skin effect adds to the resistance'],
  /** Share that proximity effect adds to the resistance y_p, 1, 0 and up. */
  proximityFactor: ['y_p', '1', fromZero, 'share that proximity effect adds to the resistance'],
  /** Share of the proximity effect of round conductors that the shape leaves k_sh, 1, above 0 to 1. */
  shapeShare: ['k_sh', '1', part, 'share of the proximity effect of round conductors that the shape leaves'],
  /** Resistance per length to alternating current R_ac, Ω/m, above 0. */
  acResistancePerMetre: ['R_ac', 'Ω/m', aboveZero, 'resistance per length to alternating current'],
  /** Diameter of a conductor d_c, mm, above 0. */
  conductorDiameter: ['d_c', 'mm', aboveZero, 'diameter of a conductor'],
  /** Distance between the axes of conductors s, mm, above 0. */
  conductorSpacing: ['s', 'mm', aboveZero, 'distance between the axes of conductors'],
  /** Thickness of the insulation of a core t_i, mm, above 0. */
  insulationThickness: ['t_i', 'mm', aboveZero, 'thickness of the insulation of a core'],
  /** Radius of the circle around sector-shaped conductors r_1, mm, above 0. */
  sectorRadius: ['r_1', 'mm', aboveZero, 'radius of the circle around sector-shaped conductors'],
  /** Number of cores of a cable n, 1, 1 and up. */
  coreCount: ['n', '1', { least: 1 }, 'number of cores of a cable'],
  /** Thickness of the insulation over the diameter of the conductor X, 1, above 0. */
  insulationRatio: ['X', '1', aboveZero, 'thickness of the insulation over the diameter of the conductor'],
  /** Geometric factor of the insulation between touching cores G, 1, above 0. */
  geometricFactor: ['G', '1', aboveZero, 'geometric factor of the insulation between touching cores'],
  /** What the hottest core sees of the geometric factor when not all cores are loaded k_h, 1, above 0 to 1. */
  hottestCoreShare: [
    'k_h',
    '1',
    part,
    'what the hottest core sees of the geometric factor when not all cores are loaded',
  ],
  /** Diameter over the laid-up cores D_l, mm, above 0. */
  laidUpDiameter: ['D_l', 'mm', aboveZero, 'diameter over the laid-up cores'],
  /** Thermal resistivity of a material ρ_T, K·m/W, above 0. */
  thermalResistivity: ['ρ_T', 'K·m/W', aboveZero, 'thermal resistivity of a material'],
  /** Thermal resistance per core between conductor and laid-up cores T_1, K·m/W, above 0. */
  coreThermalResistance: ['T_1', 'K·m/W', aboveZero, 'thermal resistance per core between conductor and laid-up cores'],
  /** Thermal resistance of the bedding T_2, K·m/W, 0 and up. */
  beddingThermalResistance: ['T_2', 'K·m/W', fromZero, 'thermal resistance of the bedding'],
  /** Thermal resistance of the sheath T_3, K·m/W, 0 and up. */
  sheathThermalResistance: ['T_3', 'K·m/W', fromZero, 'thermal resistance of the sheath'],
  /** Thermal resistance outside the cable T_4, K·m/W, above 0. */
  externalThermalResistance: ['T_4', 'K·m/W', aboveZero, 'thermal resistance outside the cable'],
  /** Thermal resistance between conductors and surface, for the losses of the whole cable T_in, K·m/W, 0 and up. */
  innerThermalResistance: [
    'T_in',
    'K·m/W',
    fromZero,
    'thermal resistance between conductors and surface, for the losses of the whole cable',
  ],
  /** Thermal resistance of the soil around one cable or duct T_so, K·m/W, 0 and up. */
  soilThermalResistance: ['T_so', 'K·m/W', fromZero, 'thermal resistance of the soil around one cable or duct'],
  /** What one neighbour of equal losses adds T_nb, K·m/W, 0 and up. */
  neighbourThermalResistance: ['T_nb', 'K·m/W', fromZero, 'what one neighbour of equal losses adds'],
  /** What all neighbours of equal losses add T_nbs, K·m/W, 0 and up. */
  neighboursThermalResistance: ['T_nbs', 'K·m/W', fromZero, 'what all neighbours of equal losses add'],
  /** Thermal resistance between the inside of a duct and the surface of the ground T_du, K·m/W, 0 and up. */
  ductThermalResistance: [
    'T_du',
    'K·m/W',
    fromZero,
    'thermal resistance between the inside of a duct and the surface of the ground',
  ],
  /** Thermal resistance of the wall of a duct T_wa, K·m/W, 0 and up. */
  wallThermalResistance: ['T_wa', 'K·m/W', fromZero, 'thermal resistance of the wall of a duct'],
  /** Thermal resistance of the gap between cable and duct T_ga, K·m/W, above 0. */
  gapThermalResistance: ['T_ga', 'K·m/W', aboveZero, 'thermal resistance of the gap between cable and duct'],
  /** Distance of a neighbour to the side, axis to axis a, m, any. */
  neighbourOffset: ['a', 'm', anyNumber, 'distance of a neighbour to the side, axis to axis'],
  /** Depth of the axis of a neighbour L_n, m, above 0. */
  neighbourDepth: ['L_n', 'm', aboveZero, 'depth of the axis of a neighbour'],
  /** Thermal resistance of a round layer T_sh, K·m/W, 0 and up. */
  shellThermalResistance: ['T_sh', 'K·m/W', fromZero, 'thermal resistance of a round layer'],
  /** Thickness of a round layer t, mm, 0 and up. */
  shellThickness: ['t', 'mm', fromZero, 'thickness of a round layer'],
  /** Diameter below a round layer D_i, mm, above 0. */
  shellInnerDiameter: ['D_i', 'mm', aboveZero, 'diameter below a round layer'],
  /** Outer diameter of a cable or duct D_e, mm, above 0. */
  cableDiameter: ['D_e', 'mm', aboveZero, 'outer diameter of a cable or duct'],
  /** Heat that a surface gives to the air, W/m² at 1 K to the power of 5/4 h, 1, above 0. */
  dissipation: ['h', '1', aboveZero, 'heat that a surface gives to the air, W/m² at 1 K to the power of 5/4'],
  /** Part of the dissipation that falls with the diameter Z, 1, above 0. */
  dissipationSlope: ['Z', '1', aboveZero, 'part of the dissipation that falls with the diameter'],
  /** Part of the dissipation that does not depend on the diameter E, 1, above 0. */
  dissipationBase: ['E', '1', aboveZero, 'part of the dissipation that does not depend on the diameter'],
  /** Exponent of the diameter in the dissipation g, 1, above 0 to 1. */
  dissipationExponent: ['g', '1', part, 'exponent of the diameter in the dissipation'],
  /** Ratio of the drop of temperature inside a cable to that outside it at a surface rise of 1 K K_A, 1, 0 and up. */
  surfaceShare: [
    'K_A',
    '1',
    fromZero,
    'ratio of the drop of temperature inside a cable to that outside it at a surface rise of 1 K',
  ],
  /** Constant U of the gap in a duct U, 1, above 0. */
  ductGapBase: ['U', '1', aboveZero, 'constant U of the gap in a duct'],
  /** Constant V of the gap in a duct V, 1, above 0. */
  ductGapOffset: ['V', '1', aboveZero, 'constant V of the gap in a duct'],
  /** Constant Y of the gap in a duct Y, 1, above 0. */
  ductGapSlope: ['Y', '1', aboveZero, 'constant Y of the gap in a duct'],
  /** Constant of a correlation of heat C_h, 1, any. */
  heatConstant: ['C_h', '1', anyNumber, 'constant of a correlation of heat'],
  /** Distance of the axis of a conductor from that of the cable c, mm, above 0. */
  coreAxisRadius: ['c', 'mm', aboveZero, 'distance of the axis of a conductor from that of the cable'],
  /** Temperature of the surface of a cable θ_e, °C, -40 to 250. */
  surfaceTemperature: ['θ_e', '°C', { least: -40, most: 250 }, 'temperature of the surface of a cable'],
  /** Thickness of the bedding under the armour t_b, mm, 0 and up. */
  beddingThickness: ['t_b', 'mm', fromZero, 'thickness of the bedding under the armour'],
  /** Mean diameter of the armour d_A, mm, above 0. */
  armourMeanDiameter: ['d_A', 'mm', aboveZero, 'mean diameter of the armour'],
  /** Diameter of an armour wire d_w, mm, above 0. */
  armourWireDiameter: ['d_w', 'mm', aboveZero, 'diameter of an armour wire'],
  /** Resistance per length of the armour at its temperature R_A, Ω/m, above 0. */
  armourPerMetre: ['R_A', 'Ω/m', aboveZero, 'resistance per length of the armour at its temperature'],
  /** Temperature of the armour θ_A, °C, -40 to 250. */
  armourTemperature: ['θ_A', '°C', { least: -40, most: 250 }, 'temperature of the armour'],
  /** Temperature of the armour that the balance gives θ_A,b, °C, -40 to 250. */
  balancedArmourTemperature: [
    'θ_A,b',
    '°C',
    { least: -40, most: 250 },
    'temperature of the armour that the balance gives',
  ],
  /** Losses of the armour over those of the conductors λ_2, 1, 0 and up. */
  armourLossFactor: ['λ_2', '1', fromZero, 'losses of the armour over those of the conductors'],
  /** Thermal diffusivity of the soil δ, m²/s, above 0. */
  soilDiffusivity: ['δ', 'm²/s', aboveZero, 'thermal diffusivity of the soil'],
  /** Heat capacity of a volume of soil C_s, J/(K·mm³), above 0. */
  soilHeatCapacity: ['C_s', 'J/(K·mm³)', aboveZero, 'heat capacity of a volume of soil'],
  /** Density of the dry soil over that of water d_s, 1, above 0. */
  dryDensity: ['d_s', '1', aboveZero, 'density of the dry soil over that of water'],
  /** Water in the soil over the mass of the dry soil v, 1, 0 to 1. */
  soilMoisture: ['v', '1', share, 'water in the soil over the mass of the dry soil'],
  /** Heat capacity of a volume of a material of cables C_v, J/(K·mm³), above 0. */
  volumeHeatCapacity: ['C_v', 'J/(K·mm³)', aboveZero, 'heat capacity of a volume of a material of cables'],
  /** Share of its final rise that a temperature has reached R(t), 1, 0 and up. */
  attainment: ['R(t)', '1', fromZero, 'share of its final rise that a temperature has reached'],
  /** Share of the rise of the conductor that lies in the soil k, 1, 0 to 1. */
  soilShare: ['k', '1', share, 'share of the rise of the conductor that lies in the soil'],
  /** Mean load of a day over its peak LF, 1, 0 to 1. */
  loadFactor: ['LF', '1', share, 'mean load of a day over its peak'],
  /** Mean square of the load of a day over the square of its peak μ, 1, 0 to 1. */
  lossLoadFactor: ['μ', '1', share, 'mean square of the load of a day over the square of its peak'],
  /** Weight of the load factor itself in a rule for the loss-load factor w_LF, 1, 0 to 1. */
  loadFactorWeight: ['w_LF', '1', share, 'weight of the load factor itself in a rule for the loss-load factor'],
  /** Peak of a daily cycle over the current of a steady load M, 1, above 0. */
  cyclicFactor: ['M', '1', aboveZero, 'peak of a daily cycle over the current of a steady load'],
  /** Peak current of a daily cycle by computation, not from a table I_c,M, A, 0 and up. */
  cyclicCapacity: ['I_c,M', 'A', fromZero, 'peak current of a daily cycle by computation, not from a table'],
  /** Product of the ratios of image distance to distance of the neighbours F, 1, above 0. */
  distanceProduct: ['F', '1', aboveZero, 'product of the ratios of image distance to distance of the neighbours'],
  /** Diameter that stands for the neighbours of a group d_f, m, above 0. */
  groupDiameter: ['d_f', 'm', aboveZero, 'diameter that stands for the neighbours of a group'],
  /** Steady load before an overload over the steady capacity h_1, 1, 0 to 1. */
  startLoad: ['h_1', '1', share, 'steady load before an overload over the steady capacity'],
  /** Rise that is permitted for a limited time over that of a steady load r, 1, above 0. */
  riseRatio: ['r', '1', aboveZero, 'rise that is permitted for a limited time over that of a steady load'],
  /** Resistance at the temperature before an overload over that at its end R_1/R_max, 1, above 0 to 1. */
  startResistanceRatio: [
    'R_1/R_max',
    '1',
    part,
    'resistance at the temperature before an overload over that at its end',
  ],
  /** Resistance at the temperature of a steady load over that at the end of an overload R_R/R_max, 1, above 0 to 1. */
  ratedResistanceRatio: [
    'R_R/R_max',
    '1',
    part,
    'resistance at the temperature of a steady load over that at the end of an overload',
  ],
  /** Current for a limited time over the steady capacity I_2/I_R, 1, 0 and up. */
  emergencyFactor: ['I_2/I_R', '1', fromZero, 'current for a limited time over the steady capacity'],
  /** Losses of a metal sheath over those of the conductor λ_1, 1, 0 and up. */
  sheathLossFactor: ['λ_1', '1', fromZero, 'losses of a metal sheath over those of the conductor'],
  /** Resistance per length of a metal sheath at its temperature R_S, Ω/m, above 0. */
  sheathPerMetre: ['R_S', 'Ω/m', aboveZero, 'resistance per length of a metal sheath at its temperature'],
  /** Reactance per length of a metal sheath X_S, Ω/m, above 0. */
  sheathReactance: ['X_S', 'Ω/m', aboveZero, 'reactance per length of a metal sheath'],
  /** Mean diameter of a metal sheath d_S, mm, above 0. */
  sheathMeanDiameter: ['d_S', 'mm', aboveZero, 'mean diameter of a metal sheath'],
  /** Distance between the axes of single-core cables s, mm, above 0. */
  cableSpacing: ['s', 'mm', aboveZero, 'distance between the axes of single-core cables'],
  /** Dielectric loss per length of one phase W_d, W/m, 0 and up. */
  dielectricLoss: ['W_d', 'W/m', fromZero, 'dielectric loss per length of one phase'],
  /** Relative permittivity of insulation ε, 1, 1 and up. */
  permittivity: ['ε', '1', { least: 1 }, 'relative permittivity of insulation'],
  /** Loss factor of insulation tan δ, 1, 0 and up. */
  dielectricLossFactor: ['tan δ', '1', fromZero, 'loss factor of insulation'],
  /** Diameter over insulation D_i, mm, above 0. */
  insulationDiameter: ['D_i', 'mm', aboveZero, 'diameter over insulation'],
  /** Diameter under insulation d_i, mm, above 0. */
  innerInsulationDiameter: ['d_i', 'mm', aboveZero, 'diameter under insulation'],
} satisfies Roles;
