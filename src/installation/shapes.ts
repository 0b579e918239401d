import type { Name } from '../core/index.js';
import type { counts, labels } from './labels.js';

/** What a value is: a role of the vocabulary, a label of a list, a number of a kind, yes or no, text, or a record. */
export type What =
  | Name
  | keyof typeof labels
  | keyof typeof counts
  | 'yes'
  | 'text'
  | 'overcurrentKind'
  | keyof typeof shapes;

/** How a field holds it, with a question mark where it may be left out. */
export type Field = readonly [how: 'plain' | 'fact' | 'list' | 'plain?' | 'fact?' | 'list?', what: string];

/**
 * The fields of every record of an installation. What a run feeds, the runs of a board and the line conductors are not
 * among them: they are held against one another.
 */
export const shapes = {
  device: {
    kind: ['fact', 'overcurrentKind'],
    rating: ['fact', 'deviceRating'],
    breakingCapacity: ['fact?', 'breakingCapacity'],
    conditionalRating: ['fact?', 'breakingCapacity'],
    energyClass: ['fact?', 'energyClass'],
    groupingFactor: ['fact?', 'groupingFactor'],
  },
  residual: {
    position: ['plain', 'position'],
    type: ['fact', 'residualType'],
    rating: ['fact', 'residualOperatingCurrent'],
    ratedCurrent: ['fact?', 'deviceRating'],
    delay: ['fact?', 'delay'],
    delayTime: ['fact?', 'disconnectionTime'],
    opensAllLive: ['fact?', 'yes'],
    bidirectional: ['fact?', 'yes'],
    pointsServed: ['plain?', 'pieces'],
    serves: ['list?', 'text'],
  },
  cable: {
    construction: ['plain', 'construction'],
    material: ['plain', 'material'],
    insulation: ['plain', 'insulation'],
    cores: ['plain', 'coresOfCable'],
    area: ['fact', 'conductorArea'],
    sizeName: ['plain?', 'text'],
    loadedCores: ['fact?', 'coresLoaded'],
    parallel: ['plain?', 'parallel'],
    protective: ['plain', 'protective'],
    protectiveArea: ['fact?', 'protectiveArea'],
    protectiveImpedance: ['fact?', 'resistancePerMetre20'],
    protectiveMaterial: ['plain?', 'protectiveMaterial'],
  },
  tray: { support: ['plain', 'support'], trays: ['plain', 'trays'], spaced: ['plain', 'yes'] },
  group: {
    arrangement: ['plain', 'arrangement'],
    circuits: ['fact', 'circuits'],
    spacing: ['plain?', 'length'],
    lightlyLoaded: ['plain?', 'lightlyLoaded'],
    unequal: ['plain?', 'yes'],
    tray: ['plain?', 'tray'],
    overloads: ['plain?', 'overloads'],
  },
  stretch: {
    name: ['plain', 'text'],
    length: ['fact', 'length'],
    method: ['fact', 'method'],
    ambient: ['fact', 'ambientTemperature'],
    group: ['plain?', 'group'],
    insulated: ['fact?', 'insulatedLength'],
    drum: ['plain?', 'drum'],
    formation: ['plain?', 'formation'],
    soilResistivity: ['fact?', 'soilResistivity'],
    depth: ['fact?', 'depth'],
    concealedShallow: ['fact?', 'yes'],
    containment: ['plain?', 'containment'],
    outdoors: ['plain?', 'yes'],
  },
  run: {
    id: ['plain', 'text'],
    device: ['plain', 'device'],
    residual: ['list?', 'residual'],
    ring: ['plain?', 'yes'],
    existing: ['plain?', 'yes'],
    cable: ['plain', 'cable'],
    stretches: ['list', 'stretch'],
    thirdHarmonic: ['fact?', 'thirdHarmonic'],
    terminalTemperature: ['fact?', 'terminalTemperature'],
  },
  load: {
    id: ['plain', 'text'],
    purpose: ['plain', 'purpose'],
    current: ['fact', 'connectedCurrent'],
    withSocket: ['plain?', 'yes'],
    powerFactor: ['plain?', 'powerFactor'],
    holds: ['plain?', 'holds'],
    at: ['plain?', 'length'],
    standardCircuit: ['plain?', 'yes'],
  },
  electrode: {
    resistance: ['fact', 'electrodeResistance'],
    soilResistivity: ['fact?', 'earthResistivity'],
    separation: ['fact?', 'length'],
  },
  chargePoint: {
    id: ['plain', 'text'],
    setting: ['fact', 'chargeCurrent'],
    minimum: ['plain?', 'chargeCurrent'],
    outdoors: ['fact', 'yes'],
    mode: ['plain', 'mode'],
    directCurrentDetection: ['fact?', 'yes'],
    residual: ['plain?', 'residual'],
    openPenDevice: ['fact?', 'openPenDevice'],
    earthing: ['plain?', 'earthing'],
    electrode: ['plain?', 'electrode'],
    feedSeparated: ['fact?', 'yes'],
    vehiclesSeparated: ['fact?', 'pieces'],
    bidirectional: ['plain?', 'yes'],
    standingLeakage: ['fact?', 'chargeCurrent'],
    power: ['plain?', 'chargePower'],
  },
  mainSwitch: { rating: ['fact', 'deviceRating'] },
  control: { name: ['plain', 'text'], limit: ['fact', 'controlLimit'], controls: ['list', 'text'] },
  board: {
    id: ['plain', 'text'],
    mainSwitch: ['plain?', 'mainSwitch'],
    conditionalRating: ['fact?', 'breakingCapacity'],
    rating: ['fact?', 'deviceRating'],
    residual: ['list?', 'residual'],
    control: ['plain?', 'control'],
    spareWays: ['fact?', 'pieces'],
    surgeProtection: ['fact?', 'yes'],
  },
  bonded: { what: ['plain', 'text'], area: ['fact', 'bondingArea'] },
  meteredDemand: { current: ['fact', 'demand'], about: ['plain', 'text'] },
  supply: {
    system: ['fact', 'system'],
    phases: ['fact', 'phaseCount'],
    nominalVoltage: ['plain', 'nominalVoltage'],
    frequency: ['plain', 'frequency'],
    externalImpedance: ['fact', 'externalImpedance'],
    prospectiveCurrent: ['fact', 'prospectiveCurrent'],
    cutOut: ['plain', 'device'],
    cutOutSound: ['fact?', 'yes'],
    looped: ['fact', 'yes'],
    metered: ['fact?', 'yes'],
    tails: ['fact?', 'tailsArea'],
    earthingConductor: ['fact?', 'earthingConductorArea'],
    earthingConductorLaid: ['fact?', 'earthingConductorLaid'],
    supplyNeutral: ['fact?', 'supplyNeutralArea'],
    bonding: ['list?', 'bonded'],
    electrode: ['plain?', 'electrode'],
    meterPoint: ['fact?', 'text'],
    specialLocation: ['plain?', 'specialLocation'],
    meteredDemand: ['plain?', 'meteredDemand'],
  },
} as const satisfies Readonly<Record<string, Readonly<Record<string, Field>>>>;
