import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { adequacyOf, demandOf, notificationOf } from '../../src/demand/index.js';
import {
  amperes,
  type ChargePoint,
  hertz,
  type Installation,
  known,
  type Outlet,
  type Purpose,
  type Run,
  recorder,
  squareMillimetres,
  unknown,
  volts,
} from '../../src/index.js';
import { greatBritain } from '../../src/networks/index.js';
import { compare } from '../compare.js';

const circuit = (id: string, feeds: Outlet): Run => ({
  id,
  lines: ['L1'],
  device: { kind: known({ standard: 'EN 60898', type: 'B' }), rating: known(amperes(32)) },
  cable: {
    construction: 'flat-twin-and-earth',
    material: 'copper',
    insulation: 'thermoplastic-70',
    cores: 2,
    area: unknown(),
    protective: 'bare-core',
  },
  stretches: [],
  feeds: [feeds],
});
const load = (id: string, purpose: Purpose, current: number) =>
  circuit(id, { kind: 'load', id: `${id}-load`, purpose, current: known(amperes(current)), lines: ['L1'] });
const point: ChargePoint = {
  kind: 'charge-point',
  id: 'point',
  lines: ['L1'],
  setting: known(amperes(32)),
  outdoors: known(true),
  mode: 3,
};

// an invented house; the cooker differs from call to call
const currents = [6, 20, 32, 31.3, 41.3];
const house = (call: number): Installation => ({
  supply: {
    system: known('TN-C-S'),
    phases: known(1),
    nominalVoltage: volts(230),
    frequency: hertz(50),
    externalImpedance: unknown(),
    prospectiveCurrent: unknown(),
    cutOut: { kind: unknown(), rating: known(amperes(100)) },
    looped: known(false),
    tails: known(squareMillimetres(25)),
  },
  board: {
    kind: 'board',
    id: 'consumer unit',
    mainSwitch: { rating: known(amperes(100)), noFuseAhead: known(true) },
    rating: known(amperes(100)),
    runs: [
      load('lights', 'lighting', 6),
      load('ring-1', 'socket-outlets', 20),
      load('ring-2', 'socket-outlets', 32),
      load('cooker', 'cooking', 31.3 + (call % 100) / 100),
      load('shower', 'instantaneous-water-heating', 41.3),
      circuit('ev', point),
    ],
  },
});
const options = { premises: 'dwelling' } as const;

export default [
  compare('one house', {
    anchor: 'making the house and adding its currents up',
    ways: {
      'making the house and adding its currents up': (call) => {
        const { board } = house(call);
        let sum = 0;
        for (const run of board.runs)
          for (const o of run.feeds) if (o.kind === 'load' && o.current.state === 'known') sum += o.current.value;
        return sum + (currents[call % currents.length] ?? 0);
      },
      'demand by every method': (call) => demandOf(bs7671Demand, house(call), options),
      'adequacy, silent sheet': (call) => adequacyOf(bs7671Demand, house(call), options),
      'adequacy, recorded sheet': (call) => adequacyOf(bs7671Demand, house(call), options, recorder('house')),
      'notification, silent sheet': (call) => notificationOf(bs7671Demand, greatBritain, house(call), options),
    },
  }),
];
