import { bs7671 } from '../../src/codes/bs7671/index.js';
import { known, metres, type Run, type Stretch, unknown } from '../../src/index.js';
import type { Chapter, Hazard } from './hazard.js';
import {
  armoured,
  dwelling,
  flat,
  garageFeeder,
  inside,
  lightCircuit,
  pointAlone,
  premisesOf,
  rcd,
  showerCircuit,
  silent,
  slow,
  socketCircuit,
  tnS,
  told,
  tt,
} from './residual-circuits.js';
import { soundCircuit, soundPoint, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const check = 'residual-current-concealed-cable';
const clause = 'BS 7671:2018+A2:2022, 522.6.202 with 415.1.1, two sources';
const harm =
  'Somebody hangs a picture, and the nail goes through the cable. Whoever holds the hammer is on the line conductor, and nothing opens.';
const mustNotSay = 'That the cable needs no residual current device of at most 30 mA, or has one.';
const hidden = [soundStretch({ concealedShallow: known(true, 'seen before the wall was plastered') })];
const at = (depth: number, change: Partial<Stretch> = {}) =>
  [{ ...silent('C'), depth: known(metres(depth), 'measured'), ...change }] as const;
const other = premisesOf(known('other', 'seen at the survey'));

const hazard = (
  of: Omit<Hazard, 'harm' | 'clause' | 'mustNotSay' | 'check'> &
    Partial<Pick<Hazard, 'harm' | 'clause' | 'mustNotSay'>>,
): Hazard => ({ harm, clause, mustNotSay, check, ...of });
const routed = (stretches: Run['stretches'], change: Partial<Run> = {}): Run => pointAlone({ stretches, ...change });

export const chapter: Chapter = {
  title: 'Cables that nobody sees',
  introduction:
    'A cable less than 50 mm deep in a wall is where nails and screws go. Earthed metal around it makes the fault clear; without that a residual current device of at most 30 mA ahead of the cable is what saves whoever drives the nail.',
  hazards: [
    hazard({
      id: 'concealed-cable-device-inside-point',
      title: 'The 30 mA device is inside the charge point, behind the cable that is in the wall',
      clause: `${clause}; that a device sees only what is downstream of it: one source`,
      unsafe: {
        what: '6 mm² flat cable in plaster behind a circuit-breaker, on TN-C-S; 30 mA inside the point.',
        told: () => told(code, [routed(hidden)]),
      },
      sound: {
        what: 'The same cable clipped to the wall where it is seen.',
        told: () => told(code, [pointAlone()]),
      },
    }),
    hazard({
      id: 'concealed-cable-behind-slow-device',
      title: 'A slow device of 300 mA stands ahead of the concealed cable',
      unsafe: {
        what: 'On TT a device of 300 mA, type S, on the board; 30 mA inside the point; flat cable in plaster.',
        told: () => told(code, [routed(hidden)], tt, { residual: [slow()] }),
      },
      sound: {
        what: 'On TT 30 mA at the origin of the circuit.',
        told: () => told(code, [routed(hidden, { residual: [rcd(30)] })], tt),
      },
    }),
    hazard({
      id: 'concealed-cable-behind-100-ma',
      title: 'A device of 100 mA stands ahead of the concealed cable',
      unsafe: {
        what: 'TN-S, flat cable in plaster behind a device of 100 mA, 30 mA inside the point.',
        told: () => told(code, [routed(hidden, { residual: [rcd(100)] })], tnS),
      },
      sound: {
        what: 'TN-S, 30 mA in its place.',
        told: () => told(code, [routed(hidden, { residual: [rcd(30)] })], tnS),
      },
    }),
    hazard({
      id: 'concealed-cable-delayed-small-device',
      title: 'The device ahead of the concealed cable is marked 30 mA and delayed',
      unsafe: {
        what: 'A device that is said to be of 30 mA with a delay of 0.06 s ahead of a cable in plaster.',
        told: () =>
          told(code, [routed(hidden, { residual: [rcd(30, { delay: known('selective', 'marking') })] })], tnS),
      },
      sound: {
        what: 'A general one of 30 mA.',
        told: () => told(code, [routed(hidden, { residual: [rcd(30, { delay: known('general', 'marking') })] })], tnS),
      },
    }),
    hazard({
      id: 'stud-wall-nothing-said',
      title: 'A cable in a stud wall of which nothing more is said',
      unsafe: {
        what: 'Method 102, the cable touching the inner surface of a stud wall; the question of depth left out.',
        told: () => told(code, [routed([silent('102')])]),
      },
      sound: {
        what: 'The same behind an RCBO of 30 mA.',
        told: () => told(code, [soundCircuit({ stretches: [silent('102')] })]),
      },
    }),
    hazard({
      id: 'chased-depth-stated',
      title: 'A chase of 20 mm, its depth stated and nothing else',
      unsafe: {
        what: 'Method C, 20 mm below the plaster; 30 mA inside the point only.',
        told: () => told(code, [routed(at(0.02))]),
      },
      sound: {
        what: 'Method C, 70 mm deep in a brick wall without metal parts.',
        told: () => told(code, [routed(at(0.07, { metalParts: known(false, 'brick') }))]),
      },
    }),
    hazard({
      id: 'chased-at-the-limit',
      title: 'A chase a hair less deep than 50 mm',
      unsafe: {
        what: '49 mm below the plaster of a brick wall.',
        told: () => told(code, [routed(at(0.049, { metalParts: known(false, 'brick') }))], tnS),
      },
      sound: {
        what: '50 mm below it.',
        told: () => told(code, [routed(at(0.05, { metalParts: known(false, 'brick') }))], tnS),
      },
    }),
    hazard({
      id: 'depth-between',
      title: 'A depth of which only the limits are known',
      unsafe: {
        what: 'Between 30 mm and 70 mm deep in a brick wall.',
        told: () =>
          told(code, [
            routed([
              {
                ...silent('C'),
                depth: { state: 'between', least: metres(0.03), most: metres(0.07) },
                metalParts: known(false, 'brick'),
              },
            ]),
          ]),
      },
      sound: {
        what: 'Between 60 mm and 90 mm deep.',
        told: () =>
          told(code, [
            routed([
              {
                ...silent('C'),
                depth: { state: 'between', least: metres(0.06), most: metres(0.09) },
                metalParts: known(false, 'brick'),
              },
            ]),
          ]),
      },
    }),
    hazard({
      id: 'depth-of-what-is-seen',
      title: 'A cable on a tray, and a depth in the wall that somebody wrote down',
      unsafe: {
        what: 'On a tray by one line of the survey, between 6 mm and 60 mm deep in the wall by another.',
        told: () =>
          told(code, [
            routed([
              {
                ...silent('C'),
                containment: 'tray',
                depth: { state: 'between', least: metres(0.006), most: metres(0.06) },
              },
            ]),
          ]),
      },
      sound: {
        what: 'On a tray, and no depth said.',
        told: () => told(code, [routed([{ ...silent('C'), containment: 'tray' }])]),
      },
    }),
    hazard({
      id: 'metal-studs-at-any-depth',
      title: 'Metal studs beside a cable that lies deep',
      harm: 'A screw, or the edge of a stud, cuts the cable, and the whole frame of the wall is live.',
      clause: 'BS 7671:2018+A2:2022, 522.6.203, two sources',
      unsafe: {
        what: '60 mm deep in a partition with metal studs.',
        told: () => told(code, [routed(at(0.06, { metalParts: known(true, 'magnet') }))]),
      },
      sound: {
        what: 'The same behind an RCBO of 30 mA.',
        told: () => told(code, [soundCircuit({ stretches: at(0.06, { metalParts: known(true, 'magnet') }) })]),
      },
    }),
    hazard({
      id: 'metal-studs-not-asked',
      title: 'A deep cable in a stud wall, and nobody looked for metal studs',
      harm: 'The frame of the wall is live behind the plasterboard.',
      clause: 'BS 7671:2018+A2:2022, 522.6.203, two sources',
      unsafe: {
        what: '16 mm² flat cable, method 103, said not to be less than 50 mm deep; nothing is said of the studs.',
        told: () =>
          told(code, [routed([{ ...silent('103'), concealedShallow: known(false, 'drawing') }], { cable: flat(16) })]),
      },
      sound: {
        what: 'The same wall with studs of timber.',
        told: () =>
          told(code, [
            routed(
              [
                {
                  ...silent('103'),
                  concealedShallow: known(false, 'drawing'),
                  metalParts: known(false, 'timber studs'),
                },
              ],
              { cable: flat(16) },
            ),
          ]),
      },
    }),
    hazard({
      id: 'method-c-nothing-said',
      title: 'Method C, which is clipped to the wall as well as under its plaster',
      unsafe: {
        what: 'Method C; whether the cable is seen was not written down.',
        told: () => told(code, [routed([silent('C')])]),
      },
      sound: {
        what: 'Method C on a tray along the wall.',
        told: () => told(code, [routed([{ ...silent('C'), containment: 'tray' }])]),
      },
    }),
    hazard({
      id: 'clips-in-a-chase',
      title: 'Clipped, which cables are in chases and on studs as well',
      unsafe: {
        what: 'Method C, clipped; whether plaster went over it was not written down.',
        told: () => told(code, [routed([{ ...silent('C'), containment: 'clipped' }])], tnS),
      },
      sound: {
        what: 'Method C, clipped to the face of the wall, as the survey says.',
        told: () => told(code, [pointAlone()], tnS),
      },
    }),
    hazard({
      id: 'tt-100-ma-concealment-not-known',
      title: 'TT, 100 mA, and nobody knows how deep the cable lies',
      unsafe: {
        what: 'On TT lights of a workshop behind a device of 100 mA, type S; whether the cable is concealed is not known.',
        told: () =>
          told(
            code,
            [
              lightCircuit({
                residual: [],
                stretches: [soundStretch({ concealedShallow: unknown('open the wall') })],
              }),
            ],
            tt,
            { residual: [slow({ rating: rcd(100).rating })] },
            other,
          ),
      },
      sound: {
        what: 'The same with the cable in sight.',
        told: () =>
          told(code, [lightCircuit({ residual: [] })], tt, { residual: [slow({ rating: rcd(100).rating })] }, other),
      },
    }),
    hazard({
      id: 'insulated-wall-nothing-said',
      title: 'A cable in conduit in an insulated wall',
      unsafe: {
        what: 'Method A, 6 mm² flat cable behind a circuit-breaker; nothing is said of depth or conduit.',
        told: () => told(code, [routed([silent('A')], { cable: flat(10) })]),
      },
      sound: {
        what: 'Method A, seen to be in earthed steel conduit, the studs of timber.',
        told: () =>
          told(code, [
            routed(
              [
                {
                  ...silent('A'),
                  containment: 'conduit',
                  concealedShallow: known(false, 'in earthed steel conduit'),
                  metalParts: known(false, 'timber studs'),
                },
              ],
              { cable: flat(10) },
            ),
          ]),
      },
    }),
    hazard({
      id: 'ceiling-nothing-said',
      title: 'A route above a ceiling that goes down a wall nobody described',
      unsafe: {
        what: 'Method 100 over the whole way, flat cable, 30 mA inside the point only.',
        told: () => told(code, [routed([silent('100')])], tnS),
      },
      sound: {
        what: 'The same behind an RCBO of 30 mA.',
        told: () => told(code, [soundCircuit({ stretches: [silent('100')] })], tnS),
      },
    }),
    hazard({
      id: 'one-hidden-section-of-two',
      title: 'One section of two is in the plaster',
      unsafe: {
        what: '15 m clipped in the cellar, 5 m in the plaster of the hall.',
        told: () =>
          told(code, [
            routed([
              soundStretch({ name: 'cellar', length: known(metres(15), 'measured') }),
              soundStretch({
                name: 'hall',
                length: known(metres(5), 'measured'),
                concealedShallow: known(true, 'seen'),
              }),
            ]),
          ]),
      },
      sound: {
        what: 'Both sections clipped to the surface.',
        told: () =>
          told(code, [
            routed([
              soundStretch({ name: 'cellar', length: known(metres(15), 'measured') }),
              soundStretch({ name: 'hall', length: known(metres(5), 'measured') }),
            ]),
          ]),
      },
    }),
    hazard({
      id: 'flat-cable-where-armour-would-do',
      title: 'Flat cable where armoured cable would be exempt',
      clause: 'BS 7671:2018+A2:2022, 522.6.204, two sources',
      unsafe: {
        what: 'Flat cable 30 mm deep in the outer wall, 30 mA inside the point only.',
        told: () => told(code, [routed(at(0.03))]),
      },
      sound: {
        what: 'Armoured cable, its armour earthed, 30 mm deep in the same wall: a nail meets earthed steel first.',
        told: () => told(code, [routed(at(0.03), { cable: armoured(6) })]),
      },
    }),
    hazard({
      id: 'plastic-conduit-is-no-exemption',
      title: 'Plastic conduit in the plaster',
      clause: 'BS 7671:2018+A2:2022, 522.6.204, two sources',
      unsafe: {
        what: 'Single-core cables in conduit 20 mm deep, with a protective conductor beside them.',
        told: () =>
          told(code, [
            routed([{ ...silent('B'), containment: 'conduit', depth: known(metres(0.02), 'measured') }], {
              cable: {
                ...flat(10),
                construction: 'single-core',
                protective: 'separate',
                protectiveArea: flat(10).area,
              },
            }),
          ]),
      },
      sound: {
        what: 'The same behind 30 mA at the origin.',
        told: () =>
          told(code, [
            routed([{ ...silent('B'), containment: 'conduit', depth: known(metres(0.02), 'measured') }], {
              residual: [rcd(30)],
              cable: {
                ...flat(10),
                construction: 'single-core',
                protective: 'separate',
                protectiveArea: flat(10).area,
              },
            }),
          ]),
      },
    }),
    hazard({
      id: 'feeder-in-the-wall',
      title: 'A distribution circuit in the wall without 30 mA ahead',
      harm: 'A screw for a shelf goes into the cable to the garage, which only a 50 A device protects.',
      unsafe: {
        what: '16 mm² flat cable to a garage board, 25 mm deep; the circuits of the garage have devices of their own.',
        told: () => told(code, [garageFeeder({ cable: flat(16), stretches: at(0.025) })]),
      },
      sound: {
        what: '16 mm² armoured cable in the same wall.',
        told: () => told(code, [garageFeeder({ stretches: at(0.025) })]),
      },
    }),
    hazard({
      id: 'contradicting-depth',
      title: 'Said not to be shallow, and 20 mm deep',
      unsafe: {
        what: 'Flat cable: "not concealed less than 50 mm deep", and a depth of 20 mm beside it.',
        told: () => told(code, [routed(at(0.02, { concealedShallow: known(false, 'form filled in') }))], tnS),
      },
      sound: {
        what: 'In steel conduit 20 mm deep, which the survey says.',
        told: () =>
          told(
            code,
            [routed(at(0.02, { containment: 'conduit', concealedShallow: known(false, 'earthed steel conduit') }))],
            tnS,
          ),
      },
    }),
    hazard({
      id: 'no-route',
      title: 'A circuit whose route is not described at all',
      unsafe: {
        what: 'A shower circuit without a single section.',
        told: () => told(code, [showerCircuit({ residual: [rcd(100)], stretches: [] })], {}, {}, dwelling),
      },
      sound: {
        what: 'A shower circuit, 20 m clipped, behind 30 mA.',
        told: () => told(code, [showerCircuit()]),
      },
    }),
    hazard({
      id: 'sockets-protected-at-the-outlet-only',
      title: 'Two devices in series, the small one at the wrong end',
      unsafe: {
        what: 'Two points on TT: 100 mA at the origin, 30 mA inside each, the cable in plaster.',
        told: () =>
          told(
            code,
            [
              routed(hidden, {
                residual: [rcd(100, { delay: known('selective', 'marking') })],
                feeds: [soundPoint({ residual: inside(30) })],
              }),
            ],
            tt,
          ),
      },
      sound: {
        what: 'Sockets on TT behind 30 mA at the origin, the cable in the same plaster.',
        told: () => told(code, [socketCircuit({ stretches: hidden })], tt),
      },
    }),
  ],
};
