import { bs7671 } from '../../src/codes/bs7671/index.js';
import { amperes, known, type Load, type ResidualDevice, unknown } from '../../src/index.js';
import { load } from '../support/house.js';
import type { Chapter } from './hazard.js';
import {
  breaker,
  flat,
  garageFeeder,
  lamps,
  lightCircuit,
  pointAlone,
  premisesOf,
  rcd,
  showerCircuit,
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
const other = premisesOf(known('other', looked));

const ofSockets = {
  check: 'residual-current-socket-outlets',
  clause: 'BS 7671:2018+A2:2022, 411.3.3, two sources',
  harm: 'A damaged flex of a mower or a drill is held in a wet hand, and nothing opens.',
  mustNotSay: 'That the socket-outlets need no device of at most 30 mA, or have one.',
} as const;
const ofLights = {
  check: 'residual-current-lighting',
  clause: 'BS 7671:2018, 411.3.4, two sources',
  harm: 'Somebody changes a lamp on a steel ladder and touches the cap.',
  mustNotSay: 'That luminaires of a household need no device of at most 30 mA, or have one.',
} as const;
const ofBaths = {
  check: 'residual-current-bath-or-shower',
  clause: 'BS 7671:2018+A2:2022, 701.411.3.3, two sources',
  harm: 'Bare, wet, in touch with earthed pipes: a current that is felt elsewhere kills here.',
  mustNotSay: 'That what serves the bathroom needs no device of at most 30 mA, or has one.',
} as const;

const ofPlaces = {
  check: 'special-place',
  clause: 'BS 7671:2018+A2:2022, Part 7, from memory: none of its sections for such places is entered',
  harm: 'Wet, barefoot, among metal that nobody bonded: what is safe in a house kills there.',
  mustNotSay: 'That a circuit passes in a place whose rules nobody looked at.',
} as const;
const pump = soundCircuit({ feeds: [load(10, { id: 'pump', purpose: 'motor', residualType: known('A', looked) })] });

const plugged = (plug: Load['plugged']) =>
  socketCircuit({
    device: breaker(16),
    residual: [],
    feeds: [load(8, { id: 'pump', purpose: 'other', ...(plug ? { plugged: plug } : {}) })],
  });
const compressor = (residual: readonly ResidualDevice[]) =>
  socketCircuit({
    device: breaker(16),
    residual,
    feeds: [
      load(12, {
        id: 'compressor',
        purpose: 'motor',
        socketRating: known(amperes(16), looked),
        residualType: known('A', 'its maker'),
      }),
    ],
  });
const onAccessory = (change: Partial<Load> = {}) =>
  socketCircuit({
    device: breaker(16),
    residual: [],
    feeds: [load(10, { id: 'heater', purpose: 'space-heating', accessories: known('BS 1363', looked), ...change })],
  });

export const chapter: Chapter = {
  title: 'Where people are easily hurt: sockets, lamps, bathrooms',
  introduction:
    'Some circuits have a residual current device of at most 30 mA ahead of them because of those who use them, whatever the cable and the earthing are.',
  hazards: [
    {
      ...ofSockets,
      id: 'socket-beside-charge-point',
      title: 'A socket-outlet on the circuit of a charge point, the 30 mA inside the point',
      unsafe: {
        what: '16 A of sockets beside a point set to 16 A, behind a circuit-breaker; 30 mA inside the point.',
        told: () =>
          told(code, [pointAlone({ feeds: [soundPoint({ setting: known(amperes(16), looked) }), sockets()] })]),
      },
      sound: {
        what: 'The point alone, as designed.',
        told: () => told(code, [pointAlone()]),
      },
    },
    {
      ...ofSockets,
      id: 'socket-beside-charge-point-on-tt',
      title: 'A socket-outlet beside a charge point on TT behind 100 mA',
      unsafe: {
        what: 'TT: 100 mA, type S, at the origin, 30 mA inside the point, a garden socket on the same circuit.',
        told: () =>
          told(
            code,
            [
              pointAlone({
                residual: [rcd(100, { delay: known('selective', 'marking') })],
                feeds: [soundPoint({ setting: known(amperes(16), looked) }), sockets({ current: known(amperes(13)) })],
              }),
            ],
            tt,
          ),
      },
      sound: {
        what: 'TT: the garden sockets on a circuit of their own behind 30 mA.',
        told: () => told(code, [socketCircuit()], tt),
      },
    },
    {
      ...ofSockets,
      id: 'run-feeds-board-and-socket',
      title: 'A socket-outlet taken off the cable to the garage board',
      unsafe: {
        what: '16 mm² armoured to a garage board behind 50 A, a socket in the porch taken off it, no 30 mA ahead.',
        told: () =>
          told(code, [garageFeeder({ feeds: [...garageFeeder().feeds, sockets({ id: 'socket on the way' })] })]),
      },
      sound: {
        what: 'The cable to the garage board and nothing else on it.',
        told: () => told(code, [garageFeeder()]),
      },
    },
    {
      ...ofSockets,
      id: 'run-feeds-board-and-socket-behind-300',
      title: 'The same behind a slow device of 300 mA',
      unsafe: {
        what: 'TN-S: 300 mA, type S, at the origin of the cable that feeds board and socket.',
        told: () =>
          told(
            code,
            [
              garageFeeder({
                residual: [slow({ position: 'origin-of-circuit' })],
                feeds: [...garageFeeder().feeds, sockets({ id: 'socket on the way' })],
              }),
            ],
            tnS,
          ),
      },
      sound: {
        what: '30 mA at its origin: everything in the garage trips together, and nobody is hurt.',
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
          ),
      },
    },
    {
      ...ofSockets,
      id: 'sockets-behind-100-ma',
      title: 'Socket-outlets behind a device of 100 mA',
      unsafe: {
        what: 'A radial of sockets behind 100 mA.',
        told: () => told(code, [socketCircuit({ residual: [rcd(100)] })]),
      },
      sound: { what: 'Behind 30 mA.', told: () => told(code, [socketCircuit()]) },
    },
    {
      ...ofSockets,
      id: 'plugged-load-without-device',
      title: 'A pump for the pond that is plugged in, entered as a load',
      unsafe: {
        what: 'A pump of 8 A behind a circuit-breaker of 16 A, said to be plugged in; no residual current device.',
        told: () => told(code, [plugged(known(true, looked))]),
      },
      sound: { what: 'The same pump, wired in.', told: () => told(code, [plugged(known(false, looked))]) },
    },
    {
      ...ofSockets,
      id: 'rated-socket-entered-as-a-motor',
      title: 'A compressor of which the rating of its socket-outlet was read',
      unsafe: {
        what: 'A motor of 12 A with a socket-outlet of 16 A behind a circuit-breaker, no residual current device.',
        told: () => told(code, [compressor([])]),
      },
      sound: { what: 'The same behind 30 mA.', told: () => told(code, [compressor([rcd(30)])]) },
    },
    {
      ...ofSockets,
      id: 'accessory-that-may-be-a-socket',
      title: 'A heater on an accessory to BS 1363, a socket-outlet or a fused connection unit',
      unsafe: {
        what: 'A heater of 10 A on an accessory to BS 1363, no residual current device; how it is connected is not said.',
        told: () => told(code, [onAccessory()]),
      },
      sound: {
        what: 'The same, seen to be wired to a fused connection unit.',
        told: () => told(code, [onAccessory({ plugged: known(false, looked) })]),
      },
    },
    {
      ...ofSockets,
      id: 'cooker-unit-not-looked-at',
      title: 'A cooker unit of which nobody said whether it has a socket-outlet',
      harm: 'A kettle with a damaged flex is plugged into the cooker unit beside the sink.',
      unsafe: {
        what: '10 mm² to a cooker behind a 40 A circuit-breaker, no 30 mA; the unit is not described.',
        told: () =>
          told(code, [
            soundCircuit({
              device: breaker(40),
              residual: [],
              cable: flat(10),
              feeds: [load(35, { purpose: 'cooking' })],
            }),
          ]),
      },
      sound: {
        what: 'The same with a unit that has no socket-outlet.',
        told: () =>
          told(code, [
            soundCircuit({
              device: breaker(40),
              residual: [],
              cable: flat(10),
              feeds: [load(35, { purpose: 'cooking', withSocket: false })],
            }),
          ]),
      },
    },
    {
      ...ofSockets,
      id: 'large-socket-rating-not-known',
      title: 'A socket-outlet that may be of 32 A or of 63 A',
      unsafe: {
        what: 'An industrial socket behind 40 A, its rating not read.',
        told: () =>
          told(
            code,
            [
              soundCircuit({
                device: breaker(40),
                residual: [],
                cable: flat(10),
                feeds: [sockets({ current: known(amperes(32)), socketRating: unknown('its marking') })],
              }),
            ],
            tnS,
            {},
            other,
          ),
      },
      sound: {
        what: 'Marked 63 A: 411.3.3 ends at 32 A.',
        told: () =>
          told(
            code,
            [
              soundCircuit({
                device: breaker(40),
                residual: [],
                cable: flat(10),
                feeds: [sockets({ current: known(amperes(32)), socketRating: known(amperes(63), 'its marking') })],
              }),
            ],
            tnS,
            {},
            other,
          ),
      },
    },
    {
      ...ofSockets,
      id: 'household-socket-said-to-be-of-63-a',
      title: 'Socket-outlets to BS 1363, entered as 63 A',
      unsafe: {
        what: 'Household socket-outlets in a workshop, no 30 mA ahead, their rating written down as 63 A.',
        told: () =>
          told(
            code,
            [
              socketCircuit({
                residual: [],
                feeds: [sockets({ accessories: known('BS 1363', looked), socketRating: known(amperes(63), 'a form') })],
              }),
            ],
            tnS,
            {},
            other,
          ),
      },
      sound: {
        what: 'The same behind 30 mA.',
        told: () =>
          told(
            code,
            [
              socketCircuit({
                feeds: [sockets({ accessories: known('BS 1363', looked), socketRating: known(amperes(63), 'a form') })],
              }),
            ],
            tnS,
            {},
            other,
          ),
      },
    },
    {
      ...ofLights,
      id: 'lights-of-a-dwelling-without-device',
      title: 'Lights of a dwelling on a circuit-breaker alone',
      unsafe: {
        what: '1.5 mm² clipped under the floor behind 6 A, TN-C-S, no residual current device.',
        told: () => told(code, [lightCircuit({ residual: [] })]),
      },
      sound: { what: 'Behind an RCBO of 30 mA.', told: () => told(code, [lightCircuit()]) },
    },
    {
      ...ofLights,
      id: 'lights-of-a-dwelling-under-2018',
      title: 'The same by the edition of 2018, which brought the rule',
      unsafe: {
        what: 'Lights of a dwelling on TT behind 100 mA, type S, by BS 7671:2018.',
        told: () =>
          told(bs7671('2018'), [lightCircuit({ residual: [] })], tt, { residual: [slow({ rating: rcd(100).rating })] }),
      },
      sound: {
        what: 'Lights of a workshop there, behind the same device.',
        told: () =>
          told(
            bs7671('2018'),
            [lightCircuit({ residual: [] })],
            tt,
            { residual: [slow({ rating: rcd(100).rating })] },
            other,
          ),
      },
    },
    {
      ...ofLights,
      id: 'lights-premises-not-known',
      title: 'Lights of premises that nobody named',
      unsafe: {
        what: 'Lights behind a circuit-breaker; the kind of premises is not known.',
        told: () => told(code, [lightCircuit({ residual: [] })], tnS, {}, premisesOf(unknown('ask the owner'))),
      },
      sound: {
        what: 'Lights of a workshop.',
        told: () => told(code, [lightCircuit({ residual: [] })], tnS, {}, other),
      },
    },
    {
      ...ofLights,
      id: 'lights-of-shared-house',
      title: 'Lights of a house in multiple occupation behind 300 mA',
      unsafe: {
        what: 'A slow device of 300 mA ahead of the lights of the landing.',
        told: () =>
          told(
            code,
            [lightCircuit({ residual: [] })],
            tnS,
            { residual: [slow()] },
            premisesOf(known('multiple-occupation')),
          ),
      },
      sound: {
        what: '30 mA ahead of them.',
        told: () => told(code, [lightCircuit()], tnS, { residual: [slow()] }, premisesOf(known('multiple-occupation'))),
      },
    },
    {
      ...ofLights,
      id: 'lamp-on-the-circuit-of-a-point',
      title: 'A porch lamp on the circuit of a charge point',
      unsafe: {
        what: 'A point set to 16 A and a lamp on its circuit; 30 mA inside the point only.',
        told: () => told(code, [pointAlone({ feeds: [soundPoint({ setting: known(amperes(16), looked) }), lamps()] })]),
      },
      sound: { what: 'The lamp on a lighting circuit behind 30 mA.', told: () => told(code, [lightCircuit()]) },
    },
    {
      ...ofBaths,
      id: 'shower-without-device',
      title: 'A shower on a circuit-breaker alone',
      unsafe: {
        what: '8.5 kW in 10 mm² behind 40 A, TN-C-S, no residual current device.',
        told: () => told(code, [showerCircuit({ residual: [] })]),
      },
      sound: { what: 'Behind 30 mA.', told: () => told(code, [showerCircuit()]) },
    },
    {
      ...ofBaths,
      id: 'shower-behind-100-ma-on-tt',
      title: 'A shower behind the 100 mA device of a TT installation',
      unsafe: {
        what: 'TT: 100 mA, type S, on the board, the shower behind it.',
        told: () =>
          told(code, [showerCircuit({ residual: [] })], tt, { residual: [slow({ rating: rcd(100).rating })] }),
      },
      sound: {
        what: 'TT: 30 mA for the shower behind the 100 mA.',
        told: () => told(code, [showerCircuit()], tt, { residual: [slow({ rating: rcd(100).rating })] }),
      },
    },
    {
      ...ofBaths,
      id: 'bathroom-not-asked',
      title: 'Nobody asked whether the heater circuit serves the bathroom',
      unsafe: {
        what: 'Panel heaters behind 20 A without a residual current device; where they hang is not said.',
        told: () => {
          const { bathOrShower: _asked, ...run } = socketCircuit({
            residual: [],
            feeds: [load(14, { purpose: 'space-heating' })],
          });
          return told(code, [run], tnS);
        },
      },
      sound: {
        what: 'The heaters are in the hall and the landing.',
        told: () => told(code, [socketCircuit({ residual: [], feeds: [load(14, { purpose: 'space-heating' })] })], tnS),
      },
    },
    {
      ...ofBaths,
      id: 'cable-through-zone-one',
      title: 'The cable of a charge point through the shower cubicle',
      harm: 'A tile is drilled for a shelf, in bare feet on a wet floor.',
      unsafe: {
        what: '6 mm² flat cable behind a circuit-breaker through zone 1; 30 mA inside the point only.',
        told: () => told(code, [pointAlone({ bathOrShower: known(true, 'route followed') })]),
      },
      sound: {
        what: 'The same way behind an RCBO of 30 mA.',
        told: () => told(code, [soundCircuit({ bathOrShower: known(true, 'route followed') })]),
      },
    },
    {
      ...ofBaths,
      id: 'bathroom-light-delayed-device',
      title: 'Bathroom lights of a gymnasium behind a delayed device of 100 mA',
      unsafe: {
        what: 'Lights of the showers behind 100 mA, type S; the premises are no household.',
        told: () =>
          told(
            code,
            [
              lightCircuit({
                residual: [rcd(100, { delay: known('selective', 'marking') })],
                bathOrShower: known(true, looked),
              }),
            ],
            tnS,
            {},
            other,
          ),
      },
      sound: {
        what: 'Behind 30 mA.',
        told: () => told(code, [lightCircuit({ bathOrShower: known(true, looked) })], tnS, {}, other),
      },
    },
    {
      ...ofBaths,
      id: 'device-rating-not-read-for-bathroom',
      title: 'A device for the bathroom whose rating nobody read',
      unsafe: {
        what: 'The shower behind a device of which the rating is not known.',
        told: () => told(code, [showerCircuit({ residual: [rcd(30, { rating: unknown('its marking') })] })], tnS),
      },
      sound: { what: 'Marked 30 mA.', told: () => told(code, [showerCircuit()], tnS) },
    },
    {
      ...ofSockets,
      check: 'residual-current-rating',
      clause: 'BS 7671:2018+A2:2022, 722.531.3.101, two sources',
      id: 'point-without-any-device',
      title: 'A charge point whose device nobody found',
      harm: 'Somebody holds the connector with a cracked housing in the rain.',
      mustNotSay: 'That the point has a residual current device of at most 30 mA.',
      unsafe: {
        what: 'A point without a device inside it behind a circuit-breaker.',
        told: () => told(code, [pointAlone({ feeds: [bare] })]),
      },
      sound: { what: 'The same behind an RCBO of 30 mA.', told: () => told(code, [soundCircuit({ feeds: [bare] })]) },
    },
    {
      ...ofPlaces,
      id: 'pump-at-a-swimming-pool',
      title: 'The pump of a swimming pool, judged as one in a cellar',
      unsafe: {
        what: 'A pump of 10 A behind 30 mA at a swimming pool, nothing said of zones and bonding.',
        told: () => told(code, [pump], { specialLocation: 'swimming-pool' }),
      },
      sound: { what: 'The same pump in a house without a pool.', told: () => told(code, [pump]) },
    },
    {
      ...ofPlaces,
      id: 'sockets-on-a-jetty',
      title: 'Socket-outlets of a marina, judged as those of a garage',
      unsafe: {
        what: 'A radial of socket-outlets behind one device of 30 mA in a marina.',
        told: () => told(code, [socketCircuit()], { specialLocation: 'marina' }),
      },
      sound: { what: 'The same in a garage.', told: () => told(code, [socketCircuit()]) },
    },
    {
      ...ofPlaces,
      id: 'feeder-of-a-farm',
      title: 'A distribution circuit of a farm, judged as that of a house',
      unsafe: {
        what: 'A feeder without a residual current device to the board of a cowshed.',
        told: () => told(code, [garageFeeder()], { specialLocation: 'farm' }),
      },
      sound: { what: 'The same to the garage of a house.', told: () => told(code, [garageFeeder()]) },
    },
    {
      ...ofPlaces,
      id: 'heater-in-a-place-nobody-named',
      title: 'A circuit of which nobody says what kind of place it is in',
      unsafe: {
        what: 'Socket-outlets behind 30 mA; the kind of place left out.',
        told: () => told(code, [socketCircuit()], { specialLocation: undefined as never }),
      },
      sound: { what: 'Said to be none of those places.', told: () => told(code, [socketCircuit()]) },
    },
  ],
};
