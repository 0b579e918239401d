/** Invented premises for the tests of demand. */

import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import {
  coincidenceByRoot,
  type DemandOptions,
  demandOf,
  type GroupMethod,
  sumOfDwellings,
} from '../../src/demand/index.js';
import { buildingCurve, buildingCurveSecondReading } from '../../src/guidance/index.js';
import {
  type Amperes,
  amperes,
  type Board,
  type ChargePoint,
  type Fact,
  hertz,
  type Installation,
  type Known,
  known,
  type Line,
  type Load,
  type Outlet,
  type Purpose,
  type Run,
  type Supply,
  squareMillimetres,
  unknown,
  volts,
} from '../../src/index.js';
import { afterDiversity, peakFromEnergy, riserMethod } from '../../src/networks/index.js';

export interface LoadSpec {
  readonly purpose: Purpose;
  readonly current: number | Fact<Amperes>;
  readonly lines?: readonly Line[];
  readonly withSocket?: boolean;
  readonly standardCircuit?: boolean;
  readonly existing?: boolean;
}

export const fact = (current: number | Fact<Amperes>): Fact<Amperes> =>
  typeof current === 'number' ? known(amperes(current)) : current;

/** A circuit that feeds one outlet. */
export const circuit = (id: string, feeds: Outlet, lines: readonly Line[], existing?: boolean): Run => ({
  id,
  lines,
  device: { kind: known({ standard: 'EN 60898', type: 'B' }), rating: known(amperes(32)) },
  cable: {
    construction: 'multicore',
    material: 'copper',
    insulation: 'thermoplastic-70',
    cores: lines.length === 1 ? 2 : 4,
    area: unknown(),
    protective: 'separate',
  },
  stretches: [],
  feeds: [feeds],
  ...(existing === undefined ? {} : { existing }),
});

export const load = (
  id: string,
  { purpose, current, lines = ['L1'], withSocket, standardCircuit }: LoadSpec,
): Load => ({
  kind: 'load',
  id,
  purpose,
  current: fact(current),
  lines,
  withSocket: withSocket ?? false,
  ...(standardCircuit === undefined ? {} : { standardCircuit }),
});

export const point = (id: string, setting: number | Fact<Amperes>, lines: readonly Line[] = ['L1']): ChargePoint => ({
  kind: 'charge-point',
  id,
  lines,
  setting: fact(setting),
  outdoors: known(true),
  mode: 3,
  bidirectional: false,
});

export const supply = (change: Partial<Supply> = {}): Supply => ({
  system: known('TN-C-S'),
  phases: known(1),
  nominalVoltage: volts(230),
  frequency: hertz(50),
  externalImpedance: unknown(),
  prospectiveCurrent: unknown(),
  cutOut: { kind: known({ standard: 'BS 88-3' }), rating: known(amperes(100), 'label on the fuse') },
  cutOutSound: known(true),
  looped: known(false),
  metered: known(true),
  tails: known(squareMillimetres(25)),
  ...change,
});

/** Premises with a circuit for each load and point. */
export function premises(
  loads: readonly LoadSpec[],
  points: readonly ChargePoint[] = [],
  change: Partial<Supply> = {},
  board: Partial<Board> = {},
): Installation {
  const runs = [
    ...loads.map((l, i) => circuit(`c${i + 1}`, load(`${l.purpose}-${i + 1}`, l), l.lines ?? ['L1'], l.existing)),
    ...points.map((p) => circuit(`c-${p.id}`, p, p.lines, false)),
  ];
  return {
    supply: supply(change),
    board: {
      kind: 'board',
      id: 'db',
      mainSwitch: { rating: known(amperes(100)), noFuseAhead: known(true) },
      rating: known(amperes(100)),
      complete: known(true),
      noResidual: known(true),
      runs,
      ...board,
    },
  };
}

/** The demand on L1 by one method. */
export function by(method: string, installation: Installation, options: Partial<DemandOptions> = {}): number {
  const found = demandOf(bs7671Demand, installation, { premises: 'dwelling', ...options }).methods.find(
    (m) => m.method === method,
  );
  return found?.lines[0]?.demand as number;
}

export const number = (value: Known<number> | undefined): number => value as number;
export const amps = (kilowatts: number, volt = 230): number => (kilowatts * 1000) / volt;

/** Every method for many dwellings, of whatever country. */
export const groupMethods: readonly GroupMethod[] = [
  sumOfDwellings,
  riserMethod,
  buildingCurve,
  buildingCurveSecondReading,
  afterDiversity,
  coincidenceByRoot,
  peakFromEnergy,
];
