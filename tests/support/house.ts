import type { AssessmentOptions, CircuitCase } from '../../src/codes/wiring-code.js';
import {
  amperes,
  type Board,
  type ChargePoint,
  celsius,
  hertz,
  type Installation,
  known,
  type Load,
  metres,
  ohms,
  pathTo,
  type Run,
  ratio,
  type Stretch,
  type Supply,
  squareMillimetres,
  volts,
} from '../../src/index.js';

/** A supply of an invented house. */
export const supply = (change: Partial<Supply> = {}): Supply => ({
  system: known('TN-C-S'),
  phases: known(1),
  nominalVoltage: volts(230),
  frequency: hertz(50),
  externalImpedance: known(ohms(0.35)),
  prospectiveCurrent: known(amperes(1200)),
  cutOut: { kind: known({ standard: 'BS 88-3' }), rating: known(amperes(100)) },
  looped: known(false),
  tails: known(squareMillimetres(25)),
  earthingConductor: known(squareMillimetres(16)),
  earthingConductorLaid: known('above-ground'),
  supplyNeutral: known(squareMillimetres(25)),
  specialLocation: 'none',
  ...change,
});

/** A charge point of 32 A, of which nobody says whether there is a residual current device inside. */
export const barePoint: ChargePoint = {
  kind: 'charge-point',
  id: 'point',
  lines: ['L1'],
  setting: known(amperes(32)),
  outdoors: known(true),
  mode: 3,
  bidirectional: false,
};
/** The same without one. */
export const chargePoint: ChargePoint = { ...barePoint, noResidual: known(true) };

/** Loads of which their makers alone can say which type of residual current device stands ahead. */
const byMaker: readonly Load['purpose'][] = [
  'heat-pump',
  'motor',
  'air-conditioning',
  'charge-point',
  'generation',
  'storage',
];
/** What the instructions of an ordinary load ask for; heaters of water pass no direct current. */
const typeFor = (purpose: Load['purpose']): Pick<Load, 'residualType'> =>
  byMaker.includes(purpose) ? {} : { residualType: known(purpose.endsWith('water-heating') ? 'AC' : 'A') };

/** A load on L1, A. */
export const load = (current: number, change: Partial<Load> = {}): Load => ({
  ...typeFor(change.purpose ?? 'other'),
  kind: 'load',
  id: 'load',
  purpose: 'other',
  current: known(amperes(current)),
  lines: ['L1'],
  ...change,
});

/** 20 m by method C at 30 °C. */
export const stretch = (change: Partial<Stretch> = {}): Stretch => ({
  name: 'route',
  length: known(metres(20)),
  method: known('C'),
  ambient: known(celsius(30)),
  group: { arrangement: 'bunched', circuits: known(1) },
  insulated: known(metres(0)),
  ...change,
});

/** A circuit in flat twin and earth, 6 mm² over 20 m behind a 32 A type B RCBO, that feeds the charge point. */
export const circuit = (change: Partial<Run> = {}): Run => ({
  id: 'ev',
  lines: ['L1'],
  device: {
    kind: known({ standard: 'EN 61009', type: 'B' }),
    rating: known(amperes(32)),
    breakingCapacity: known(amperes(6000)),
    energyClass: known(3),
    groupingFactor: known(1),
  },
  cable: {
    construction: 'flat-twin-and-earth',
    material: 'copper',
    insulation: 'thermoplastic-70',
    cores: 2,
    area: known(squareMillimetres(6)),
    protective: 'bare-core',
  },
  stretches: [stretch()],
  terminalTemperature: known(celsius(70)),
  thirdHarmonic: known(ratio(0)),
  feeds: [chargePoint],
  ...change,
});

/** The device of that circuit as a circuit-breaker, without a residual current part. */
export const plainBreaker: Run['device'] = { ...circuit().device, kind: known({ standard: 'EN 60898', type: 'B' }) };

/** An invented house with these runs on its board. */
export const house = (
  runs: readonly Run[],
  change: Partial<Supply> = {},
  board: Partial<Board> = {},
): Installation => ({
  supply: supply(change),
  board: {
    kind: 'board',
    id: 'db',
    complete: known(true),
    ...((board.residual ?? []).length > 0 ? {} : { noResidual: known(true) }),
    runs,
    ...board,
  },
});

/** The case of one run of an installation. */
export function caseOf(installation: Installation, id: string, options: AssessmentOptions = {}): CircuitCase {
  const path = pathTo(installation, id);
  if (!path) throw new Error(`no run ${id}`);
  return {
    installation,
    path,
    run: path.run,
    board: path.boards[path.boards.length - 1] as Board,
    phases: path.run.lines.length === 3 ? 3 : 1,
    designCurrent: amperes(32),
    nominalVoltage: installation.supply.nominalVoltage,
    feedsChargePoint: path.run.feeds.some((o) => o.kind === 'charge-point'),
    options,
  };
}
