import { bs7671 } from '../../src/codes/bs7671/index.js';
import { amperes, known, type ResidualDevice, type Run } from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Chapter } from './hazard.js';
import {
  armoured,
  breaker,
  flat,
  garageFeeder,
  inside,
  pointAlone,
  rcd,
  slow,
  socketCircuit,
  told,
} from './residual-circuits.js';
import { premises, soundCircuit, soundHouse, soundPoint } from './sound.js';

const [a2, a3] = [bs7671('2018+A2:2022'), bs7671('2018+A3:2024')];
const seen = 'seen at the survey';
const yes = known(true, seen);
const no = known(false, seen);
const { residual: _, ...bare } = soundPoint();
const rated = (amps: number, change: Partial<ResidualDevice> = {}) =>
  rcd(30, { ratedCurrent: known(amperes(amps), seen), ...change });
/** A point behind a circuit-breaker of 32 A and a residual current device of its own. */
const behind = (device: ResidualDevice): Run => soundCircuit({ device: breaker(32), residual: [device] });
/** A cable to a board of two circuits, a residual current device at its origin. */
const feeder = (amps: number): Run =>
  garageFeeder(
    {
      device: breaker(63),
      cable: armoured(25),
      residual: [slow({ position: 'origin-of-circuit', ratedCurrent: known(amperes(amps), seen) })],
    },
    [
      pointAlone(),
      soundCircuit({
        id: 'heater',
        device: breaker(32),
        residual: [],
        feeds: [load(20, { id: 'heater', purpose: 'space-heating', residualType: known('AC', 'its maker') })],
      }),
    ],
  );
const options = { ...premises, makersLetThrough: 12_000 };

const overload = {
  check: 'residual-current-device-overload',
  clause: 'BS 7671:2018+A2:2022, 536.4.202 and 536.4.3.2, two sources',
  harm: 'Its contacts carry more than they are made for. They weld, and it does not open when somebody is on the fault.',
  mustNotSay: 'That a device without overcurrent protection carries whatever flows.',
} as const;
const bothWays = {
  check: 'residual-current-both-ways',
  clause: 'BS 7671:2018+A3:2024, 530.3.201, two sources',
  harm: 'Fed from the other side, its coil burns out as it opens. It looks sound and never opens again.',
  mustNotSay: 'That only the devices of the circuit that generates are fed from both sides.',
} as const;

/** A photovoltaic generator on a circuit of its own. */
const generator = soundCircuit({
  id: 'roof',
  device: breaker(16),
  residual: [],
  feeds: [load(14, { id: 'inverter', purpose: 'generation', plugged: no, residualType: known('A', 'its maker') })],
});
const carries = { rating: known(amperes(160), 'marking') };
const feedingBack = (ofPoint: boolean) =>
  told(
    a3,
    [
      soundCircuit(
        { residual: [rcd(30, { bidirectional: yes })] },
        { bidirectional: true, residual: inside(30, { bidirectional: known(ofPoint, 'its maker') }) },
      ),
    ],
    {},
    carries,
  );

export const chapter: Chapter = {
  title: 'What flows through a residual current device',
  introduction: 'A residual current device is made for a current and for a direction, on a circuit as on a board.',
  hazards: [
    {
      ...overload,
      id: 'small-device-of-a-circuit',
      title: 'A residual current device of 25 A on a circuit of 32 A',
      unsafe: {
        what: 'RCCB 25 A and circuit-breaker 32 A of a charge point.',
        told: () => told(a2, [behind(rated(25))]),
      },
      sound: { what: 'RCCB 40 A.', told: () => told(a2, [behind(rated(40))]) },
    },
    {
      ...overload,
      id: 'device-of-a-circuit-not-read',
      title: 'A residual current device of a circuit whose rated current nobody read',
      unsafe: {
        what: 'RCCB beside a circuit-breaker of 32 A, its rated current not said.',
        told: () => {
          const { ratedCurrent: _rated, ...unread } = rcd(30);
          return told(a2, [behind(unread)]);
        },
      },
      sound: {
        what: 'The residual part of an RCBO, which protects itself.',
        told: () => told(a2, [soundCircuit()]),
      },
    },
    {
      ...overload,
      id: 'small-device-of-a-feeder',
      title: 'A residual current device of 40 A at the origin of a cable behind 63 A',
      unsafe: {
        what: 'RCCB 40 A, 63 A ahead, 32 A and 32 A behind.',
        told: () => assessed(a2, soundHouse([feeder(40)]), 'garage feeder', options),
      },
      sound: {
        what: 'RCCB 63 A.',
        told: () => assessed(a2, soundHouse([feeder(63)]), 'garage feeder', options),
      },
    },
    {
      ...bothWays,
      id: 'one-way-device-inside-a-point-that-feeds-back',
      title: 'A device for one direction inside a point that feeds back',
      unsafe: { what: 'V2G, the device inside made for one direction.', told: () => feedingBack(false) },
      sound: { what: 'V2G, both devices made for two.', told: () => feedingBack(true) },
    },
    {
      ...bothWays,
      id: 'one-way-device-that-a-neighbour-feeds-back-through',
      title: 'A new point behind a device for one direction through which the roof feeds back',
      unsafe: {
        what: '100 mA for one direction ahead of the board, photovoltaics on the next circuit.',
        told: () => told(a3, [soundCircuit(), generator], {}, { ...carries, residual: [slow({ bidirectional: no })] }),
      },
      sound: {
        what: 'The same, made for both.',
        told: () => told(a3, [soundCircuit(), generator], {}, { ...carries, residual: [slow({ bidirectional: yes })] }),
      },
    },
    {
      id: 'device-beside-the-point-and-cable-in-the-wall',
      title: 'A device in an enclosure beside the point, the cable to it hidden in a wall',
      harm: 'A screw in the cable makes a hinge live: the device at its far end sees nothing of it.',
      clause: 'BS 7671:2018+A2:2022, 522.6.202, 722.531.3.101 (does not say where the device stands); two sources',
      mustNotSay: 'That a device at the far end protects the cable.',
      check: 'residual-current-concealed-cable',
      unsafe: {
        what: 'Flat cable 30 mm deep, 30 mA beside the point.',
        told: () => {
          const run = soundCircuit({
            device: breaker(32),
            cable: flat(6),
            residual: [rated(40, { position: 'along-circuit' })],
            feeds: [{ ...bare, noResidual: yes }],
          });
          return told(a2, [{ ...run, stretches: run.stretches.map((s) => ({ ...s, concealedShallow: yes })) }]);
        },
      },
      sound: {
        what: 'Armoured cable, 30 mA beside the point, none inside it.',
        told: () =>
          told(a2, [
            soundCircuit({
              device: breaker(32),
              cable: armoured(6),
              residual: [rated(40, { position: 'along-circuit' })],
              feeds: [{ ...bare, noResidual: yes }],
            }),
          ]),
      },
    },
    {
      id: 'socket-outlets-without-any-device',
      title: 'Socket-outlets of which somebody found that no device stands ahead',
      harm: 'The mower cuts its cable, and nothing opens for whoever picks it up.',
      clause: 'BS 7671:2018+A2:2022, 411.3.3, two sources',
      mustNotSay: 'That a device may be there: it was looked for.',
      check: 'residual-current-socket-outlets',
      unsafe: {
        what: 'A radial of socket-outlets, no device on the circuit, none on the board.',
        told: () => {
          const { verdict, results } = told(a2, [socketCircuit({ residual: [], noResidual: yes })]);
          // open would be too little said
          return { verdict: verdict === 'fail' ? 'fail' : 'pass', results };
        },
      },
      sound: { what: 'The same with a device of 30 mA.', told: () => told(a2, [socketCircuit()]) },
    },
  ],
};
