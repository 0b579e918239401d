import { shapes } from '../shapes.js';

/** How a field holds what it holds, and what that is: as in `shapes`, for records that are no part of an installation too. */
type AnyField = readonly [how: string, what: string];

/** The records of a survey around the installation, and what runs, boards and outlets hold of each other. */
export const around: Readonly<Record<string, Readonly<Record<string, AnyField>>>> = {
  survey: {
    format: ['plain', 'text'],
    about: ['plain', 'about'],
    code: ['plain', 'code'],
    supply: ['plain', 'supply'],
    board: ['plain', 'board'],
    wanted: ['list', 'wanted'],
    options: ['plain?', 'options'],
    demand: ['plain?', 'demand'],
    work: ['plain?', 'work'],
  },
  about: {
    title: ['plain', 'text'],
    reference: ['plain?', 'text'],
    invented: ['plain?', 'yes'],
    date: ['plain', 'date'],
    country: ['plain', 'about.country'],
    premises: ['plain', 'about.premises'],
    dwellings: ['plain?', 'pieces'],
  },
  code: { id: ['plain', 'text'], edition: ['plain', 'text'] },
  supply: { operation: ['plain?', 'supply.operation'], currentKind: ['plain?', 'supply.currentKind'] },
  run: { lines: ['list', 'line'], feeds: ['list', 'outlet'] },
  load: { kind: ['plain', 'text'], lines: ['list', 'line'] },
  chargePoint: { kind: ['plain', 'text'], lines: ['list', 'line'] },
  board: { kind: ['plain', 'text'], runs: ['list', 'run'] },
  wanted: {
    id: ['plain', 'text'],
    count: ['plain?', 'alikePoints'],
    inTurn: ['plain?', 'yes'],
    from: ['plain', 'text'],
    lines: ['list', 'line'],
    point: ['plain', 'chargePoint'],
    device: ['plain', 'device'],
    residual: ['list?', 'residual'],
    jointsAccessible: ['fact?', 'yes'],
    bathOrShower: ['fact?', 'yes'],
    thirdHarmonic: ['fact?', 'thirdHarmonic'],
    cables: ['list', 'cable'],
    route: ['list', 'stretch'],
    terminalTemperature: ['fact?', 'terminalTemperature'],
    vehicle: ['plain?', 'vehicle'],
  },
  vehicle: {
    energy: ['fact?', 'energyNeeded'],
    battery: ['plain?', 'battery'],
    onBoardCurrent: ['fact', 'chargeCurrent'],
    onBoardPhases: ['fact', 'vehicle.onBoardPhases'],
    arrives: ['plain', 'clock'],
    leaves: ['plain', 'clock'],
    efficiency: ['fact', 'chargeEfficiency'],
  },
  battery: {
    holds: ['fact', 'batteryEnergy'],
    onArrival: ['fact', 'stateOfCharge'],
    onDeparture: ['fact', 'stateOfCharge'],
  },
  options: {
    dropLimit: ['plain?', 'dropLimit'],
    testTemperature: ['plain?', 'ambientTemperature'],
    acceptMemoryFigures: ['plain?', 'yes'],
    makersLetThrough: ['plain?', 'number'],
    fuseEdition: ['plain?', 'options.fuseEdition'],
    initialTemperature: ['plain?', 'initialTemperature'],
    dropTemperature: ['plain?', 'options.dropTemperature'],
    premises: ['plain?', 'premises'],
  },
  premises: {
    kind: ['fact', 'premises.kind'],
    overvoltageSerious: ['fact?', 'yes'],
    surgeProtectionDeclined: ['fact?', 'yes'],
    arcDetection: ['fact?', 'yes'],
  },
  demand: {
    meteredMargin: ['plain?', 'demandMargin'],
    governing: ['plain?', 'text'],
    halfHours: ['plain?', 'halfHours'],
    dwellings: ['plain?', 'dwellingConstants'],
    assembly: ['plain?', 'demand.assembly'],
    factors: ['plain?', 'demandFactors'],
  },
  dwellingConstants: {
    afterDiversity: ['plain?', 'afterDiversity'],
    coincidence: ['plain?', 'coincidence'],
    energy: ['plain?', 'dwellingEnergy'],
  },
  afterDiversity: {
    demand: ['plain', 'afterDiversityDemand'],
    constant: ['plain', 'groupConstant'],
    unbalance: ['plain', 'unbalanceAllowance'],
  },
  coincidence: { largest: ['plain', 'largestPower'], limit: ['plain', 'coincidenceLimit'] },
  dwellingEnergy: {
    each: ['plain', 'annualEnergy'],
    linear: ['plain', 'linearCoefficient'],
    root: ['plain', 'rootCoefficient'],
  },
  halfHours: {
    from: ['plain', 'text'],
    wattHours: ['list', 'number'],
    season: ['plain', 'text'],
    margin: ['plain?', 'demandMargin'],
  },
  demandFactors: { utilisation: ['plain', 'factors'], simultaneity: ['plain', 'factors'] },
  work: {
    mounting: ['plain?', 'work.mounting'],
    wallsToDrill: ['fact?', 'pieces'],
    newEnclosure: ['fact?', 'yes'],
    electrode: ['plain?', 'yes'],
    replaceTails: ['plain?', 'yes'],
    digging: ['fact?', 'work.digging'],
    surface: ['fact?', 'work.surface'],
    sensorCable: ['fact?', 'length'],
    sensorPossible: ['fact?', 'yes'],
    limiterReaction: ['fact?', 'excessTime'],
    limiterKeepsFuse: ['fact?', 'yes'],
    limiterFallback: ['fact?', 'chargeCurrent'],
    supplyChange: ['plain?', 'work.supplyChange'],
    travelMinutes: ['plain?', 'number'],
    outletHeight: ['fact?', 'length'],
    tenure: ['fact?', 'work.tenure'],
    ownerAgrees: ['fact?', 'yes'],
    isolation: ['fact?', 'work.isolation'],
    lead: ['fact?', 'length'],
    toInlet: ['fact?', 'length'],
    dataConnection: ['fact?', 'work.dataConnection'],
    devicesToBeHad: ['fact?', 'yes'],
    model: ['plain?', 'text'],
  },
};

/** How and what a field of a record holds, or undefined where there is none. */
export function fieldOf(record: string, field: string): AnyField | undefined {
  const inside: Readonly<Record<string, Readonly<Record<string, AnyField>>>> = shapes;
  for (const all of [inside, around])
    if (Object.hasOwn(all, record) && Object.hasOwn(all[record] ?? {}, field)) return all[record]?.[field];
  return undefined;
}

/** Names of all records. */
export const recordNames = (): readonly string[] => [...new Set([...Object.keys(around), ...Object.keys(shapes)])];

/** Names of the fields of a record. */
export const fieldNames = (record: string): readonly string[] => [
  ...Object.keys((shapes as Readonly<Record<string, object>>)[record] ?? {}),
  ...Object.keys(around[record] ?? {}),
];
