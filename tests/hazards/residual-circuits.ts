import type { AssessmentOptions, WiringCode } from '../../src/codes/wiring-code.js';
import {
  amperes,
  type Board,
  type Cable,
  type ChargePoint,
  type Fact,
  known,
  type Load,
  milliamperes,
  ohms,
  type ResidualDevice,
  type Run,
  type Supply,
  seconds,
  squareMillimetres,
} from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Told } from './hazard.js';
import { premises, soundCircuit, soundHouse, soundPoint, soundStretch } from './sound.js';

const looked = 'seen at the survey';

/** A residual current device of type A that opens line and neutral, by its rating in mA. */
export const rcd = (rating: number, change: Partial<ResidualDevice> = {}): ResidualDevice => ({
  position: 'origin-of-circuit',
  type: known('A', looked),
  rating: known(milliamperes(rating), looked),
  opensAllLive: known(true, looked),
  ratedCurrent: known(amperes(100), looked),
  ...change,
});
/** The slow one of 300 mA that stands at the origin of many an installation. */
export const slow = (change: Partial<ResidualDevice> = {}): ResidualDevice =>
  rcd(300, {
    position: 'origin-of-installation',
    delay: known('selective', looked),
    delayTime: known(seconds(0), looked),
    ...change,
  });
/** One inside a charge point. */
export const inside = (rating: number, change: Partial<ResidualDevice> = {}): ResidualDevice =>
  rcd(rating, { position: 'inside-equipment', pointsServed: 1, ...change });

/** A circuit-breaker of type B without a residual current device. */
export const breaker = (rating: number): Run['device'] => ({
  kind: known({ standard: 'EN 60898', type: 'B' }),
  rating: known(amperes(rating), looked),
  breakingCapacity: known(amperes(6000), looked),
  groupingFactor: known(1, looked),
});
const area = (mm2: number) => known(squareMillimetres(mm2), looked);
/** Flat twin and earth. */
export const flat = (mm2: number): Cable => ({ ...soundCircuit().cable, area: area(mm2) });
/** Steel-wire armoured cable of three cores, one of them protective. */
export const armoured = (mm2: number): Cable => ({
  construction: 'armoured',
  material: 'copper',
  insulation: 'thermosetting-90',
  cores: 3,
  area: area(mm2),
  protective: 'core',
});

/** A point that relies on the device inside it: circuit-breaker on the board, no residual current device ahead. */
export const pointAlone = (change: Partial<Run> = {}, point: Partial<ChargePoint> = {}): Run =>
  soundCircuit({ device: breaker(32), residual: [], ...change, feeds: change.feeds ?? [soundPoint(point)] });

/** Socket-outlets. */
export const sockets = (change: Partial<Load> = {}): Load =>
  load(16, { purpose: 'socket-outlets', id: 'sockets', ...change });
/** Luminaires. */
export const lamps = (change: Partial<Load> = {}): Load => load(4, { purpose: 'lighting', id: 'lamps', ...change });

/** A radial circuit of socket-outlets, 2.5 mm² behind a 20 A circuit-breaker and a device of 30 mA. */
export const socketCircuit = (change: Partial<Run> = {}): Run =>
  soundCircuit({
    id: 'sockets',
    device: breaker(20),
    residual: [rcd(30)],
    cable: flat(2.5),
    feeds: [sockets()],
    ...change,
  });
/** Lights, 1.5 mm² behind a 6 A circuit-breaker and a device of 30 mA. */
export const lightCircuit = (change: Partial<Run> = {}): Run =>
  soundCircuit({
    id: 'lights',
    device: breaker(6),
    residual: [rcd(30)],
    cable: flat(1.5),
    feeds: [lamps()],
    ...change,
  });
/** A shower of 8.5 kW, 10 mm² behind a 40 A circuit-breaker and a device of 30 mA. */
export const showerCircuit = (change: Partial<Run> = {}): Run =>
  soundCircuit({
    id: 'shower',
    device: breaker(40),
    residual: [rcd(30)],
    cable: flat(10),
    bathOrShower: known(true, looked),
    feeds: [load(37, { purpose: 'instantaneous-water-heating', id: 'shower' })],
    ...change,
  });
/** A distribution circuit to a garage, 16 mm² armoured behind 50 A, clipped to the wall. */
export const garageFeeder = (change: Partial<Run> = {}, runs: readonly Run[] = [socketCircuit()]): Run => {
  const garage: Board = {
    kind: 'board',
    complete: known(true),
    noResidual: known(true, 'seen at the survey'),
    detached: known(true, looked),
    extraneousParts: known(false, 'looked: no pipes, no steelwork'),
    id: 'garage',
    runs,
  };
  return soundCircuit({
    id: 'garage feeder',
    device: breaker(50),
    residual: [],
    cable: armoured(16),
    feeds: [garage],
    ...change,
  });
};

/** The route in a wall of which nothing is said but its method. */
export const silent = (method: 'A' | 'B' | 'C' | '100' | '101' | '102' | '103') => {
  const { concealedShallow: _said, containment: _clipped, ...rest } = soundStretch({ method: known(method, looked) });
  return rest;
};

/** On TN-S. */
export const tnS: Partial<Supply> = { system: known('TN-S', looked) };
/** On TT, with a rod of 40 Ω. */
export const tt: Partial<Supply> = {
  system: known('TT', looked),
  externalImpedance: known(ohms(40), 'measured'),
  electrode: { resistance: known(ohms(40), 'measured') },
  earthingConductorLaid: known('above-ground', looked),
  bonding: [
    { what: 'water', area: area(10) },
    { what: 'gas', area: area(10) },
  ],
};

/** The premises are a dwelling, and the let-through energy of the devices at 0.86 kA is known from an invented maker. */
export const dwelling: AssessmentOptions = { ...premises, makersLetThrough: 5000 };
/** The same where the premises are something else. */
export const premisesOf = (
  kind: NonNullable<AssessmentOptions['premises']>['kind'],
  arcDetection?: Fact<boolean>,
): AssessmentOptions => ({
  ...dwelling,
  premises: { ...premises.premises, kind, ...(arcDetection ? { arcDetection } : {}) },
});

/** What the first of these circuits is told. */
export const told = (
  code: WiringCode,
  runs: readonly Run[],
  supply: Partial<Supply> = {},
  board: Partial<Board> = {},
  options = dwelling,
): Told => assessed(code, soundHouse(runs, supply, board), runs[0]?.id ?? '', options);
