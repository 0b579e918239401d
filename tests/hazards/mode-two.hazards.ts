import { bs7671 } from '../../src/codes/bs7671/index.js';
import { amperes, type ChargePoint, known, type Run, unknown } from '../../src/index.js';
import { type Change, type Chapter, planned } from './hazard.js';
import { breaker, flat, inside, premisesOf, rcd, socketCircuit, told } from './residual-circuits.js';
import { soundCircuit, soundPoint } from './sound.js';

const code = bs7671('2018+A2:2022');
const looked = 'seen at the survey';
const { residual: _, ...bare } = soundPoint();
/** A household socket-outlet for a vehicle, 4 mm² behind 16 A; the device is that of the circuit. */
const plug = (change: Partial<ChargePoint> = {}, run: Partial<Run> = {}): Run =>
  soundCircuit({
    device: breaker(16),
    cable: flat(4),
    residual: [rcd(30)],
    feeds: [
      {
        ...bare,
        mode: 2,
        setting: known(amperes(10), looked),
        socket: known('BS 1363', looked),
        noResidual: known(true, looked),
        ...change,
      },
    ],
    ...run,
  });
const industrial: Partial<ChargePoint> = {
  socket: known('EN 60309', looked),
  socketRating: known(amperes(16), looked),
  setting: known(amperes(16), looked),
};
const none = known(false, looked);
const fitted = known(true, looked);
const many = known('multiple-occupation', looked);

const plugged = (socket: string, setting: string): readonly Change[] => [
  ['demand', { governing: 'metered-peak' }],
  ['options.premises', { kind: 'dwelling' }],
  ['wanted.0.point.mode', 2],
  ['wanted.0.point.setting', setting],
  ['wanted.0.point.socket', socket],
  ['wanted.0.point.socketRating', socket === 'EN 60309' ? '16 A' : undefined],
];
const without = (changes: readonly Change[]): readonly Change[] => changes.filter(([, value]) => value !== undefined);

export const chapter: Chapter = {
  title: 'Charging from a socket-outlet',
  introduction: 'A plug in a household socket-outlet is not made for the current of a vehicle over a night.',
  hazards: [
    {
      id: 'household-socket-at-sixteen-amperes',
      title: 'A household socket-outlet that carries 16 A for hours',
      harm: 'Plug and socket-outlet overheat in the night, and the wall behind them burns.',
      clause: 'BS 7671:2018+A2:2022 722.55.101, from memory; 10 A for hours is custom, without a source',
      mustNotSay: 'that a BS 1363 socket-outlet is good for 16 A over a night',
      check: 'socket-outlet-for-hours',
      unsafe: {
        what: 'A BS 1363 socket-outlet on a circuit of its own, the cable of the vehicle set to 16 A',
        told: () => planned('easy-home', without(plugged('BS 1363', '16 A'))),
      },
      sound: {
        what: 'An industrial socket-outlet of 16 A on the same circuit',
        told: () => planned('easy-home', without(plugged('EN 60309', '16 A'))),
      },
    },
    {
      id: 'socket-outlet-of-a-kind-not-known',
      title: 'A socket-outlet of which nobody says what it is',
      harm: 'It may be a household one, which overheats.',
      clause: 'BS 7671:2018+A2:2022 722.55.101, from memory',
      mustNotSay: 'that it carries the current',
      check: 'socket-outlet-for-hours',
      unsafe: {
        what: 'A cable set to 10 A in some socket-outlet',
        told: () =>
          planned(
            'easy-home',
            without(plugged('BS 1363', '10 A')).filter(([path]) => path !== 'wanted.0.point.socket'),
          ),
      },
      sound: {
        what: 'The same, in a BS 1363 socket-outlet on a circuit of its own',
        told: () => planned('easy-home', without(plugged('BS 1363', '10 A'))),
      },
    },
    {
      id: 'socket-outlet-protected-by-the-cable-alone',
      title: 'A socket-outlet for a vehicle whose only residual current device hangs in the cable of the vehicle',
      harm: 'Whoever touches the broken socket-outlet, or plugs in a mower, has no device that opens.',
      clause: 'BS 7671:2018+A2:2022 411.3.3, two sources',
      mustNotSay: 'that the device in the cable of the vehicle protects the socket-outlet',
      check: 'residual-current-socket-outlets',
      unsafe: {
        what: 'A BS 1363 socket-outlet on a circuit-breaker; 30 mA in the cable of the vehicle.',
        told: () => told(code, [plug({ residual: inside(30), noResidual: none }, { residual: [] })]),
      },
      sound: {
        what: 'The same with a device of 30 mA at the origin of the circuit.',
        told: () => told(code, [plug({ residual: inside(30), noResidual: none })]),
      },
    },
    {
      id: 'socket-outlet-for-a-vehicle-behind-type-ac',
      title: 'A socket-outlet for a vehicle behind a device of type AC',
      harm: 'The rectifier of the vehicle blinds it: it does not open for whoever touches the live part.',
      clause:
        'BS 7671:2018+A2:2022 531.3.3, two sources; 722.531.3.101 is about socket-outlets and connectors of EN 62196 alone; 6 mA of the cable: IEC 62752, one source',
      mustNotSay: 'that type AC suits a vehicle',
      check: 'residual-current-type',
      unsafe: {
        what: 'A BS 1363 socket-outlet for a vehicle behind 30 mA of type AC.',
        told: () => told(code, [plug({}, { residual: [rcd(30, { type: known('AC', looked) })] })]),
      },
      sound: {
        what: 'Behind one of type A that serves other socket-outlets as well, no detector of direct current at the socket-outlet.',
        told: () =>
          told(
            code,
            [plug({ directCurrentDetection: none }, { residual: [] }), socketCircuit({ residual: [] })],
            {},
            { residual: [rcd(30, { position: 'origin-of-installation' })] },
          ),
      },
    },
    {
      id: 'socket-outlet-for-a-vehicle-among-many-tenants',
      title: 'A household socket-outlet for a vehicle in a house in multiple occupation',
      harm: 'A loose terminal glows behind the socket-outlet for nights on end, and those who sleep above cannot get out.',
      clause: 'BS 7671:2018+A2:2022 421.1.7, two sources',
      mustNotSay: 'that no arc detection is required for a socket-outlet from which a vehicle is charged',
      check: 'arc-detection',
      unsafe: {
        what: 'A BS 1363 socket-outlet for a vehicle, no arc fault detection device.',
        told: () => told(code, [plug()], {}, {}, premisesOf(many, none)),
      },
      sound: {
        what: 'The same with an arc fault detection device.',
        told: () => told(code, [plug()], {}, {}, premisesOf(many, fitted)),
      },
    },
    {
      id: 'industrial-socket-outlet-smaller-than-its-device',
      title: 'An industrial socket-outlet of 16 A behind 32 A',
      harm: 'The plug has no fuse. An adaptor to a larger plug is in every caravan, and the socket-outlet carries twice what it is made for until it melts.',
      clause:
        'BS 7671:2018+A2:2022 512.1.2, from memory; the device no larger than the socket-outlet is custom, without a source',
      mustNotSay: 'that the setting of one cable protects the socket-outlet from every other plug',
      check: 'socket-outlet-behind-its-device',
      unsafe: {
        what: 'EN 60309, 16 A, on 6 mm² behind 32 A; the cable of the vehicle is set to 16 A.',
        told: () => told(code, [plug(industrial, { device: breaker(32), cable: flat(6) })]),
      },
      sound: {
        what: 'EN 60309, 32 A, in its place.',
        told: () =>
          told(code, [
            plug({ ...industrial, socketRating: known(amperes(32), looked) }, { device: breaker(32), cable: flat(6) }),
          ]),
      },
    },
    {
      id: 'industrial-socket-outlet-in-a-care-home',
      title: 'An industrial socket-outlet for a vehicle in a care home',
      harm: 'A worn contact arcs for weeks beside people who cannot run.',
      clause: 'BS 7671:2018+A2:2022 421.1.7, two sources: socket-outlets of up to 32 A',
      mustNotSay: 'that the rule is about household socket-outlets',
      check: 'arc-detection',
      unsafe: {
        what: 'EN 60309, 16 A, no arc fault detection device.',
        told: () => told(code, [plug(industrial)], {}, {}, premisesOf(known('care-home', looked), none)),
      },
      sound: {
        what: 'The same in a dwelling, where it is recommended.',
        told: () => told(code, [plug(industrial)], {}, {}, premisesOf(known('dwelling', looked), none)),
      },
    },
    {
      id: 'socket-outlet-for-a-vehicle-premises-not-known',
      title: 'A socket-outlet for a vehicle in premises that nobody named',
      harm: 'It may be a house full of tenants.',
      clause: 'BS 7671:2018+A2:2022 421.1.7, two sources',
      mustNotSay: 'that no arc detection is required',
      check: 'arc-detection',
      unsafe: {
        what: 'A BS 1363 socket-outlet for a vehicle, no arc fault detection device, premises not named.',
        told: () => told(code, [plug()], {}, {}, premisesOf(unknown('ask the owner'), none)),
      },
      sound: {
        what: 'A charge point with a tethered cable there: the rule is about socket-outlets.',
        told: () => told(code, [soundCircuit()], {}, {}, premisesOf(unknown('ask the owner'), none)),
      },
    },
  ],
};
