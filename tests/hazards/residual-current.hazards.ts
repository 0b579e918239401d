import { bs7671 } from '../../src/codes/bs7671/index.js';
import { amperes, known, type Load, milliamperes, type Run, unknown } from '../../src/index.js';
import { load } from '../support/house.js';
import type { Chapter } from './hazard.js';
import {
  armoured,
  breaker,
  inside,
  pointAlone,
  rcd,
  slow,
  socketCircuit,
  sockets,
  tnS,
  told,
  tt,
} from './residual-circuits.js';
import { soundCircuit, soundPoint } from './sound.js';

const code = bs7671('2018+A2:2022');
const looked = 'seen at the survey';
const { residual: _inside, ...bare } = soundPoint();
const { residualType: _maker, ...ordinarySockets } = sockets();
const small = { setting: known(amperes(16), looked) };

const ofOwn = {
  check: 'residual-current-one-per-point',
  clause: 'BS 7671:2018+A2:2022, 722.531.3.101 ("individually"), two sources',
  harm: 'Standing currents of several things add up in one device: it opens for nothing, and somebody bridges it or sets it higher.',
  mustNotSay: 'That the point has a device of at most 30 mA of its own.',
} as const;
const ofType = {
  check: 'residual-current-type',
  clause: 'BS 7671:2018+A2:2022, 531.3.3, two sources; no type is named for heat pumps, two sources',
  harm: 'Smooth direct current from the inverter saturates the core of the device: it no longer opens for anybody on its circuits.',
  mustNotSay: 'That type A suits a load of which the maker has not said so.',
} as const;

/** A circuit of 2.5 mm² behind 20 A and a device of this type that feeds a load. */
const feeding = (purpose: Load['purpose'], type: 'AC' | 'A' | 'F' | 'B', change: Partial<Load> = {}) =>
  socketCircuit({
    residual: [rcd(30, { type: known(type, 'marking'), bidirectional: known(true, 'marking') })],
    feeds: [load(12, { purpose, id: purpose, ...change })],
  });
const heatPump = load(12, { purpose: 'heat-pump', id: 'heat pump' });
const says = (type: 'AC' | 'A' | 'F' | 'B') => ({ residualType: known(type, 'instructions of the maker') });
/** A board that carries what feeds back. */
const board = { rating: known(amperes(125), 'marking') };

const ofShared = {
  check: 'smooth-current-upstream',
  clause: 'BS 7671:2018+A2:2022, 531.3.3, two sources',
  harm: 'Smooth direct current of a neighbour blinds the device that the whole house relies on: it does not open for a fault at the new point either.',
  mustNotSay: 'That what stands on the other circuits of the board is no matter to the device ahead of them all.',
} as const;
/** A circuit of sockets that was there, followed to its end, without a device of its own. */
const behindTheBoard = (change: Partial<Run>) =>
  socketCircuit({
    existing: true,
    residual: [],
    noResidual: known(true, looked),
    jointsAccessible: known(true, looked),
    ...change,
  });
const onItsWay = behindTheBoard({ fromTails: known(false, looked) });
const { noResidual: _unsaid, ...unread } = onItsWay;
/** A new point on TT behind 100 mA, type A, of the board, which serves this load too. */
const behindOne = (other: Load) =>
  told(
    code,
    [
      pointAlone(),
      socketCircuit({
        id: 'neighbour',
        existing: true,
        fromTails: known(false, looked),
        residual: [],
        noResidual: known(true, looked),
        feeds: [other],
      }),
    ],
    tt,
    { residual: [slow({ rating: known(milliamperes(100), looked) })] },
  );

export const chapter: Chapter = {
  title: 'Residual current devices that do not do what they are there for',
  introduction:
    'A residual current device of the wrong rating, of the wrong type or shared by too many looks like protection on the board.',
  hazards: [
    {
      ...ofOwn,
      id: 'own-device-of-100-ma',
      title: 'The device of its own is one of 100 mA',
      unsafe: {
        what: '100 mA inside the point, 30 mA ahead that it shares with the sockets of the garage.',
        told: () =>
          told(
            code,
            [pointAlone({ feeds: [soundPoint({ residual: inside(100) })] }), socketCircuit()],
            {},
            { residual: [rcd(30)] },
          ),
      },
      sound: {
        what: '30 mA inside the point.',
        told: () => told(code, [pointAlone(), socketCircuit()]),
      },
    },
    {
      ...ofOwn,
      id: 'own-device-rating-not-known',
      title: 'The device inside the point whose rating nobody read',
      unsafe: {
        what: 'TN-S, a device inside the point, its rating not known.',
        told: () => told(code, [pointAlone({}, { residual: inside(30, { rating: unknown('data sheet') }) })], tnS),
      },
      sound: { what: 'TN-S, 30 mA by the data sheet.', told: () => told(code, [pointAlone()], tnS) },
    },
    {
      ...ofOwn,
      id: 'split-load-board',
      title: 'A point behind the 30 mA device that half the house shares',
      unsafe: {
        what: 'A point without a device of its own on the side of the board that serves the sockets too.',
        told: () =>
          told(code, [pointAlone({ feeds: [bare] }), socketCircuit({ residual: [] })], {}, { residual: [rcd(30)] }),
      },
      sound: {
        what: 'The same board, the device serving the run of the point alone.',
        told: () =>
          told(
            code,
            [pointAlone({ feeds: [bare] }), socketCircuit()],
            {},
            { residual: [{ ...rcd(30), serves: ['ev'] }] },
          ),
      },
    },
    {
      ...ofOwn,
      id: 'two-points-behind-one-residual-device',
      title: 'Two points behind one device of 30 mA',
      unsafe: {
        what: 'Armoured cable to two points of 16 A on one circuit, 30 mA at its origin, none inside.',
        told: () =>
          told(code, [
            soundCircuit({
              cable: armoured(6),
              feeds: [
                { ...bare, ...small },
                { ...bare, ...small, id: 'second' },
              ],
            }),
          ]),
      },
      sound: {
        what: 'Armoured cable to one point.',
        told: () => told(code, [soundCircuit({ cable: armoured(6), feeds: [bare] })]),
      },
    },
    {
      ...ofOwn,
      id: 'device-inside-shared-by-two-outlets',
      title: 'A post with two outlets and one device',
      unsafe: {
        what: 'The device inside the post serves two points.',
        told: () => told(code, [pointAlone({ cable: armoured(6) }, { residual: inside(30, { pointsServed: 2 }) })]),
      },
      sound: {
        what: 'One device for each outlet.',
        told: () => told(code, [pointAlone({ cable: armoured(6) }, { residual: inside(30, { pointsServed: 1 }) })]),
      },
    },
    {
      ...ofOwn,
      id: 'shared-device-in-2018',
      title: 'Two points behind one device, by the edition of 2018',
      clause:
        'BS 7671:2018, 722.531.3.101: "individually" stood in 2015, was left out in A1, and stands in A2, two sources; 2018 itself not seen, the stricter reading',
      unsafe: {
        what: 'Two points of 16 A indoors, 30 mA at the origin of the circuit.',
        told: () =>
          told(
            bs7671('2018'),
            [
              soundCircuit({
                feeds: [
                  { ...bare, ...small },
                  { ...bare, ...small, id: 'second' },
                ],
              }),
            ],
            tnS,
          ),
      },
      sound: {
        what: 'A point behind a device that it shares with sockets, by A1:2020, which asks for 30 mA and not for one each.',
        told: () =>
          told(bs7671('2018+A1:2020'), [pointAlone({ feeds: [bare] }), socketCircuit({ residual: [] })], tnS, {
            residual: [rcd(30)],
          }),
      },
    },
    {
      ...ofOwn,
      check: 'residual-current-rating',
      clause: 'BS 7671:2018+A2:2022, 722.531.3.101, two sources',
      id: 'point-behind-300-ma',
      title: 'A point on TT behind the slow device of the house',
      harm: 'A vehicle with an earth fault stands at 50 V; a hand on the door carries 200 mA.',
      mustNotSay: 'That a device of at most 30 mA protects the point.',
      unsafe: {
        what: 'TT, 300 mA, type S, on the board, nothing inside the point.',
        told: () => told(code, [pointAlone({ feeds: [bare] })], tt, { residual: [slow()] }),
      },
      sound: {
        what: 'TT, 30 mA inside the point behind the slow device, the cable clipped where it is seen.',
        told: () => told(code, [pointAlone()], tt, { residual: [slow()] }),
      },
    },
    {
      ...ofOwn,
      check: 'residual-current-rating',
      clause: 'BS 7671:2018+A2:2022, 722.531.3.101, two sources',
      id: 'inner-rating-unknown-behind-100-ma',
      title: '100 mA ahead, and inside the point a device that nobody read',
      harm: 'If the inner device is one of 100 mA as well, nothing protects whoever touches the vehicle.',
      mustNotSay: 'That the point is protected, and not that it is not.',
      unsafe: {
        what: 'TN-C-S, 100 mA at the origin, the rating inside the point not known: open, no failure.',
        told: () =>
          told(code, [
            pointAlone({ residual: [rcd(100)] }, { residual: inside(30, { rating: unknown('data sheet') }) }),
          ]),
      },
      sound: {
        what: 'The data sheet says 30 mA.',
        told: () => told(code, [pointAlone({ residual: [rcd(100)] })]),
      },
    },
    {
      ...ofType,
      id: 'heat-pump-on-type-a',
      title: 'A heat pump behind type A, its maker not asked',
      unsafe: { what: 'Type A, 30 mA.', told: () => told(code, [feeding('heat-pump', 'A')]) },
      sound: {
        what: 'Type A, which the instructions of the heat pump permit.',
        told: () => told(code, [feeding('heat-pump', 'A', says('A'))]),
      },
    },
    {
      ...ofType,
      id: 'heat-pump-behind-an-rcbo-of-which-nothing-is-known',
      title: 'A heat pump behind an RCBO of which nobody read the residual part',
      check: 'residual-current-type',
      mustNotSay: 'That there is no residual current device because none is described.',
      unsafe: {
        what: 'An RCBO of 32 A; its type and rated residual current are not stated.',
        told: () => told(code, [soundCircuit({ residual: [], feeds: [heatPump] })], tnS),
      },
      sound: {
        what: 'A circuit-breaker in its place.',
        told: () => told(code, [soundCircuit({ device: breaker(32), residual: [], feeds: [heatPump] })], tnS),
      },
    },
    {
      ...ofType,
      id: 'heat-pump-that-asks-for-type-b',
      title: 'A heat pump whose maker asks for type B, behind type F',
      unsafe: {
        what: 'Type F, 30 mA; the instructions say type B.',
        told: () => told(code, [feeding('heat-pump', 'F', says('B'))], tnS),
      },
      sound: { what: 'Type B.', told: () => told(code, [feeding('heat-pump', 'B', says('B'))], tnS) },
    },
    {
      ...ofType,
      id: 'motor-on-type-a',
      title: 'A motor that may have an inverter, behind type A',
      unsafe: {
        what: 'TT, type A, 30 mA, a motor of which nothing more is known.',
        told: () => told(code, [feeding('motor', 'A')], tt),
      },
      sound: {
        what: 'TT, the maker says that the motor starts direct on line and type AC will do; type A is fitted.',
        told: () => told(code, [feeding('motor', 'A', says('AC'))], tt),
      },
    },
    {
      ...ofType,
      id: 'solar-inverter-on-type-a',
      title: 'A solar inverter behind type A',
      unsafe: {
        what: 'Generation of 12 A behind type A; no statement of the maker of the inverter.',
        told: () => told(code, [feeding('generation', 'A')], {}, board),
      },
      sound: {
        what: 'The maker says that its inverter cannot pass smooth direct current and type A will do.',
        told: () => told(code, [feeding('generation', 'A', says('A'))], {}, board),
      },
    },
    {
      ...ofType,
      id: 'battery-on-type-f',
      title: 'A battery behind type F',
      unsafe: {
        what: 'Storage of 12 A behind type F; nobody asked.',
        told: () => told(code, [feeding('storage', 'F')], tnS, board),
      },
      sound: { what: 'Behind type B.', told: () => told(code, [feeding('storage', 'B')], tnS, board) },
    },
    {
      ...ofType,
      id: 'air-conditioning-on-type-ac',
      title: 'Air conditioning behind type AC',
      unsafe: {
        what: 'An old device of type AC, 30 mA.',
        told: () => told(code, [feeding('air-conditioning', 'AC')]),
      },
      sound: {
        what: 'Type F, as the maker asks.',
        told: () => told(code, [feeding('air-conditioning', 'F', says('F'))]),
      },
    },
    {
      ...ofType,
      id: 'heat-pump-beside-a-point',
      title: 'A heat pump on the circuit of a charge point',
      unsafe: {
        what: 'A point of 16 A and a heat pump of 12 A behind one RCBO of type A, which suits the point.',
        told: () =>
          told(code, [
            soundCircuit({ feeds: [soundPoint(small), load(12, { purpose: 'heat-pump', id: 'heat pump' })] }),
          ]),
      },
      sound: { what: 'The point alone.', told: () => told(code, [soundCircuit()]) },
    },
    {
      ...ofType,
      id: 'sockets-on-type-ac',
      title: 'Socket-outlets behind type AC',
      clause: 'BS 7671:2018+A2:2022, 531.3.3, two sources',
      mustNotSay: 'That type AC suits whatever is plugged in.',
      unsafe: {
        what: 'A radial of sockets behind type AC, 30 mA.',
        told: () =>
          told(code, [socketCircuit({ residual: [rcd(30, { type: known('AC', 'marking') })], feeds: [sockets()] })]),
      },
      sound: { what: 'Behind type A.', told: () => told(code, [socketCircuit()]) },
    },
    {
      ...ofType,
      id: 'sockets-said-to-suit-type-ac',
      title: 'Socket-outlets of which somebody wrote that type AC will do',
      clause: 'BS 7671:2018+A2:2022, 531.3.3, two sources',
      mustNotSay: 'That anybody can say of a socket-outlet what will be plugged into it.',
      unsafe: {
        what: 'A radial of sockets behind type AC; “AC” noted as the least type.',
        told: () =>
          told(code, [
            socketCircuit({
              residual: [rcd(30, { type: known('AC', 'marking') })],
              feeds: [sockets({ residualType: known('AC', 'note on the schedule') })],
            }),
          ]),
      },
      sound: {
        what: 'The same note, behind type A.',
        told: () =>
          told(code, [socketCircuit({ feeds: [sockets({ residualType: known('AC', 'note on the schedule') })] })]),
      },
    },
    {
      ...ofType,
      id: 'cooker-unit-type-ac-socket-unsaid',
      title: 'A cooker behind type AC, and nobody says whether its unit has a socket-outlet',
      clause: 'BS 7671:2018+A2:2022, 531.3.3, two sources',
      mustNotSay: 'That nothing else is ever plugged in there.',
      unsafe: {
        what: 'A cooker of which somebody wrote that type AC will do, behind type AC; its unit not described.',
        told: () => told(code, [feeding('cooking', 'AC', says('AC'))]),
      },
      sound: {
        what: 'The same, the unit without a socket-outlet.',
        told: () => told(code, [feeding('cooking', 'AC', { ...says('AC'), withSocket: false })]),
      },
    },
    {
      ...ofType,
      id: 'heat-pump-on-type-ac-in-2018',
      title: 'A heat pump behind type AC, by the edition of 2018',
      clause: 'BS 7671:2018, 531.3.3 (type AC for general purposes, where the load allows it), two sources',
      mustNotSay: 'That type AC for general purposes suits an inverter.',
      unsafe: { what: 'Heat pump behind type AC.', told: () => told(bs7671('2018'), [feeding('heat-pump', 'AC')]) },
      sound: {
        what: 'Socket-outlets behind type AC, which that edition has for general purposes.',
        told: () =>
          told(bs7671('2018'), [
            socketCircuit({ residual: [rcd(30, { type: known('AC', 'marking') })], feeds: [ordinarySockets] }),
          ]),
      },
    },
    {
      ...ofType,
      id: 'point-on-type-ac-in-a1',
      check: 'residual-current-type',
      title: 'A charge point behind type AC, by A1:2020',
      clause: 'BS 7671:2018+A1:2020, 722.531.3.101, two sources',
      mustNotSay: 'That type AC for general purposes suits a charge point.',
      unsafe: {
        what: 'A point of which nothing is known inside, behind an RCBO of type AC.',
        told: () =>
          told(bs7671('2018+A1:2020'), [
            soundCircuit({ residual: [rcd(30, { type: known('AC', 'marking') })], feeds: [bare] }),
          ]),
      },
      sound: {
        what: 'Behind type A, with 6 mA detection in the point.',
        told: () => told(bs7671('2018+A1:2020'), [soundCircuit({ feeds: [bare] })]),
      },
    },
    {
      ...ofType,
      id: 'board-nobody-looked-into',
      check: 'residual-current-type',
      title: 'Residual current devices of a board that nobody looked into',
      harm: 'The old device ahead of the whole house is of type AC. The direct current of one car blinds it for everybody.',
      clause: 'BS 7671:2018+A2:2022, 531.3.3, two sources',
      mustNotSay: 'That nothing else stands ahead.',
      unsafe: {
        what: 'Socket-outlets behind their own device; of the board nothing is said.',
        told: () => told(code, [socketCircuit()], {}, { noResidual: unknown() }),
      },
      sound: { what: 'The same, and somebody saw that the board has none.', told: () => told(code, [socketCircuit()]) },
    },
    {
      ...ofType,
      id: 'feeder-nobody-looked-at',
      check: 'residual-current-type',
      title: 'An old distribution circuit, its device not described',
      harm: 'A device of type AC at its origin sees nothing of the direct current behind it.',
      clause: 'BS 7671:2018+A2:2022, 531.3.3, two sources',
      mustNotSay: 'That no residual current device stands at its origin.',
      unsafe: {
        what: 'An existing circuit of sockets with nothing said of residual current devices at its origin.',
        told: () => told(code, [unread], {}, { residual: [rcd(30)] }),
      },
      sound: {
        what: 'The same, and somebody saw that there is none.',
        told: () => told(code, [onItsWay], {}, { residual: [rcd(30)] }),
      },
    },
    {
      id: 'sockets-that-may-leave-the-tails',
      title: 'An old circuit of which nobody saw where it begins',
      harm: 'The outbuilding was connected ahead of the board, behind a fuse of its own. The device on the board, which everybody tests, has nothing to do with it.',
      clause: 'BS 7671:2018+A2:2022, 411.3.3, two sources',
      mustNotSay: 'That it is behind the residual current device of the board that lists it.',
      check: 'residual-current-socket-outlets',
      unsafe: {
        what: 'An existing circuit of sockets listed with a board that has a device of 30 mA; nobody saw whether it leaves that board.',
        told: () => told(code, [behindTheBoard({})], {}, { residual: [rcd(30)] }),
      },
      sound: {
        what: 'The same, seen to leave a way of that board.',
        told: () => told(code, [onItsWay], {}, { residual: [rcd(30)] }),
      },
    },
    {
      ...ofShared,
      id: 'point-listed-as-a-load-behind-the-shared-device',
      title: 'An older point behind the device of the house, listed as a load',
      unsafe: {
        what: 'TT: 100 mA, type A, on the board, ahead of the new point and of one that is listed as a load of 16 A.',
        told: () =>
          behindOne(load(16, { id: 'older point', purpose: 'charge-point', residualType: known('A', 'its maker') })),
      },
      sound: { what: 'The same beside a heater.', told: () => behindOne(load(16, { id: 'heater' })) },
    },
    {
      ...ofShared,
      id: 'inverter-that-asks-for-type-b-behind-the-shared-device',
      title: 'A heat pump that asks for type B, behind the type A of the house',
      unsafe: {
        what: 'TT: 100 mA, type A, on the board, ahead of the new point and of a heat pump whose maker asks for type B.',
        told: () =>
          behindOne(load(12, { id: 'heat pump', purpose: 'heat-pump', residualType: known('B', 'its maker') })),
      },
      sound: {
        what: 'The same beside one whose maker is content with type A.',
        told: () =>
          behindOne(load(12, { id: 'heat pump', purpose: 'heat-pump', residualType: known('A', 'its maker') })),
      },
    },
  ],
};
