/** What the tables of rating factors have in common in IEC 60364-5-52 Annex B and the codes that follow it. */

const circuitsInGroup = {
  name: 'circuitsInGroup',
  unit: '1',
  between: 'next-up',
  allowedBy: 'the safe side',
} as const;

/** Factors for the temperature of the air. */
export const airFactors = {
  axes: [
    { name: 'insulation', labels: ['thermoplastic-70', 'thermosetting-90', 'mineral-70', 'mineral-105'] },
    { name: 'ambientTemperature', unit: '°C', between: 'next-up', allowedBy: 'the safe side', below: 'first' },
  ],
  cell: 'ambientFactor',
  unit: '1',
} as const;

/** Factors for the temperature of the ground. */
export const groundFactors = {
  axes: [
    { name: 'insulation', labels: ['thermoplastic-70', 'thermosetting-90'] },
    { name: 'groundTemperature', unit: '°C', between: 'next-up', allowedBy: 'the safe side', below: 'first' },
  ],
  cell: 'ambientFactor',
  unit: '1',
} as const;

/** Factors for the soil. */
export const soilFactors = {
  axes: [
    { name: 'laying', labels: ['ducts', 'direct'] },
    { name: 'soilResistivity', unit: 'K·m/W', between: 'next-up', allowedBy: 'the safe side', below: 'first' },
  ],
  cell: 'soilFactor',
  unit: '1',
} as const;

/** Factors for groups of cables direct in the ground. */
export const directFactors = {
  axes: [{ name: 'clearance', labels: ['touching', 'one-diameter', '0.125 m', '0.25 m', '0.5 m'] }, circuitsInGroup],
  cell: 'groupFactor',
  unit: '1',
} as const;

/** Factors for groups of cables in buried ducts, one in each. */
export const ductFactors = {
  axes: [{ name: 'clearance', labels: ['touching', '0.25 m', '0.5 m', '1 m'] }, circuitsInGroup],
  cell: 'groupFactor',
  unit: '1',
} as const;

/** Factors for groups of multicore cables on trays and ladders. */
export const trayFactors = {
  axes: [
    { name: 'support', labels: ['perforated tray', 'vertical perforated tray', 'unperforated tray', 'ladder, cleats'] },
    { name: 'spacing', labels: ['touching', 'spaced'] },
    { name: 'trays', labels: ['1', '2', '3', '6'] },
    circuitsInGroup,
  ],
  // biome-ignore format: a line for each way of lying
  columns: [
    ['perforated tray', 'touching', '1'], ['perforated tray', 'touching', '2'], ['perforated tray', 'touching', '3'], ['perforated tray', 'touching', '6'],
    ['perforated tray', 'spaced', '1'], ['perforated tray', 'spaced', '2'], ['perforated tray', 'spaced', '3'],
    ['vertical perforated tray', 'touching', '1'], ['vertical perforated tray', 'touching', '2'],
    ['vertical perforated tray', 'spaced', '1'], ['vertical perforated tray', 'spaced', '2'],
    ['unperforated tray', 'touching', '1'], ['unperforated tray', 'touching', '2'], ['unperforated tray', 'touching', '3'], ['unperforated tray', 'touching', '6'],
    ['ladder, cleats', 'touching', '1'], ['ladder, cleats', 'touching', '2'], ['ladder, cleats', 'touching', '3'], ['ladder, cleats', 'touching', '6'],
    ['ladder, cleats', 'spaced', '1'], ['ladder, cleats', 'spaced', '2'], ['ladder, cleats', 'spaced', '3'],
  ],
  cell: 'groupFactor',
  unit: '1',
} as const;

/** Factors for three-phase circuits of single-core cables on trays and ladders. */
export const singleCoreTrayFactors = {
  axes: [
    { name: 'formation', labels: ['flat touching', 'trefoil spaced'] },
    { name: 'support', labels: ['perforated tray', 'vertical perforated tray', 'ladder, cleats'] },
    { name: 'trays', labels: ['1', '2', '3'] },
    circuitsInGroup,
  ],
  // biome-ignore format: a line for each way of lying
  columns: [
    ['flat touching', 'perforated tray', '1'], ['flat touching', 'perforated tray', '2'], ['flat touching', 'perforated tray', '3'],
    ['flat touching', 'vertical perforated tray', '1'], ['flat touching', 'vertical perforated tray', '2'],
    ['flat touching', 'ladder, cleats', '1'], ['flat touching', 'ladder, cleats', '2'], ['flat touching', 'ladder, cleats', '3'],
    ['trefoil spaced', 'perforated tray', '1'], ['trefoil spaced', 'perforated tray', '2'], ['trefoil spaced', 'perforated tray', '3'],
    ['trefoil spaced', 'vertical perforated tray', '1'], ['trefoil spaced', 'vertical perforated tray', '2'],
    ['trefoil spaced', 'ladder, cleats', '1'], ['trefoil spaced', 'ladder, cleats', '2'], ['trefoil spaced', 'ladder, cleats', '3'],
  ],
  cell: 'groupFactor',
  unit: '1',
} as const;
