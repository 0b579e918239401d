import { bs7671 } from '../../src/codes/bs7671/index.js';
import { amperes, known, unknown } from '../../src/index.js';
import type { Chapter } from './hazard.js';
import {
  breaker,
  flat,
  garageFeeder,
  pointAlone,
  premisesOf,
  rcd,
  socketCircuit,
  sockets,
  tnS,
  told,
} from './residual-circuits.js';
import { soundCircuit, soundPoint } from './sound.js';

const code = bs7671('2018+A2:2022');
const looked = 'seen at the survey';
const none = known(false, looked);
const fitted = known(true, looked);
const care = premisesOf(known('care-home', looked), none);
const careWith = premisesOf(known('care-home', looked), fitted);

const common = {
  check: 'arc-detection',
  clause: 'BS 7671:2018+A2:2022, 421.1.7, from memory; that 32 A is the rating of the socket-outlet: two sources',
  harm: 'A loose terminal behind a bed glows for weeks and sets the wall alight; those who live there cannot run.',
  mustNotSay: 'That no arc detection is required.',
} as const;

export const chapter: Chapter = {
  title: 'Arcs that nothing else sees',
  introduction:
    'An arc in series draws no more than the load does, and neither a circuit-breaker nor a residual current device sees it. Where people cannot get out quickly, circuits of socket-outlets have a device that does.',
  hazards: [
    {
      ...common,
      id: 'sockets-behind-40-a',
      title: 'Socket-outlets of 13 A behind a 40 A device in a care home',
      unsafe: {
        what: '10 mm² behind 40 A with socket-outlets of 13 A on it.',
        told: () =>
          told(
            code,
            [
              soundCircuit({
                device: breaker(40),
                cable: flat(10),
                feeds: [sockets({ current: known(amperes(32)), socketRating: known(amperes(13), 'BS 1363') })],
              }),
            ],
            {},
            {},
            care,
          ),
      },
      sound: {
        what: 'A socket-outlet of 63 A on that circuit.',
        told: () =>
          told(
            code,
            [
              soundCircuit({
                device: breaker(40),
                cable: flat(10),
                feeds: [sockets({ current: known(amperes(32)), socketRating: known(amperes(63), 'marking') })],
              }),
            ],
            {},
            {},
            care,
          ),
      },
    },
    {
      ...common,
      id: 'socket-beside-a-point-without-arc-detection',
      title: 'A socket-outlet on the circuit of a charge point, in a house in multiple occupation',
      unsafe: {
        what: 'A point of 16 A and sockets of 13 A behind one RCBO.',
        told: () =>
          told(
            code,
            [soundCircuit({ feeds: [soundPoint({ setting: known(amperes(16), looked) }), sockets()] })],
            {},
            {},
            premisesOf(known('multiple-occupation', looked), none),
          ),
      },
      sound: {
        what: 'The point alone: the rule is about socket-outlets.',
        told: () => told(code, [pointAlone()], {}, {}, premisesOf(known('multiple-occupation', looked), none)),
      },
    },
    {
      ...common,
      id: 'board-and-socket-without-arc-detection',
      title: 'A socket-outlet taken off the cable to a board of student rooms',
      unsafe: {
        what: 'A cable to a board with a cleaner’s socket on the way, 30 mA at its origin.',
        told: () =>
          told(
            code,
            [
              garageFeeder({
                residual: [rcd(30)],
                feeds: [...garageFeeder().feeds, sockets({ id: 'socket on the way' })],
              }),
            ],
            tnS,
            {},
            premisesOf(known('student-accommodation', looked), none),
          ),
      },
      sound: {
        what: 'The cable to the board alone.',
        told: () => told(code, [garageFeeder()], tnS, {}, premisesOf(known('student-accommodation', looked), none)),
      },
    },
    {
      ...common,
      id: 'arc-detection-premises-not-known',
      title: 'Sockets of premises that nobody named',
      unsafe: {
        what: 'A radial of sockets; the kind of premises is not known.',
        told: () => told(code, [socketCircuit()], {}, {}, premisesOf(unknown('ask the owner'), none)),
      },
      sound: {
        what: 'The same with an arc fault detection device, whatever the premises are.',
        told: () => told(code, [socketCircuit()], {}, {}, premisesOf(unknown('ask the owner'), fitted)),
      },
    },
    {
      ...common,
      id: 'arc-detection-since-a2',
      title: 'Sockets of a care home without arc detection, by A2',
      unsafe: {
        what: 'A radial of sockets in a care home, by A2:2022.',
        told: () => told(code, [socketCircuit()], {}, {}, care),
      },
      sound: {
        what: 'The same designed by BS 7671:2018, which recommended it: advice, no failure.',
        told: () => told(bs7671('2018'), [socketCircuit()], {}, {}, care),
      },
    },
    {
      ...common,
      id: 'arc-detection-in-high-building',
      title: 'Sockets of a tall building, the origin of the circuit not looked at',
      unsafe: {
        what: 'A higher-risk residential building; whether a device is fitted is not known.',
        told: () =>
          told(code, [socketCircuit()], tnS, {}, premisesOf(known('higher-risk-residential', looked), unknown('look'))),
      },
      sound: {
        what: 'A care home on TN-S with the device fitted.',
        told: () => told(code, [socketCircuit()], tnS, {}, careWith),
      },
    },
  ],
};
