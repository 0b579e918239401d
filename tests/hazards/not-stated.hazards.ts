import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { notificationOf } from '../../src/demand/index.js';
import {
  amperes,
  type ChargePoint,
  known,
  type Load,
  metres,
  overall,
  type Run,
  squareMillimetres,
} from '../../src/index.js';
import { greatBritain } from '../../src/networks/index.js';
import { house, load } from '../support/house.js';
import { assessed, type Chapter, supplied, type Told } from './hazard.js';
import { breaker, dwelling, socketCircuit } from './residual-circuits.js';
import { metresOf, soundCircuit, soundHouse, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const A = (value: number) => known(amperes(value), seen);
const way = (id: string, rating: number, current: number, purpose: Load['purpose'], change: Partial<Load> = {}): Run =>
  soundCircuit({
    id,
    device: breaker(rating),
    residual: [],
    feeds: [load(current, { id: `load of ${id}`, purpose, ...change })],
  });

/** A house of 97.5 A behind 100 A with a cooker of 40 A, of which this is said. */
const kitchen = (change: Partial<Load>): Told =>
  supplied(
    house(
      [
        way('ring', 32, 27, 'socket-outlets'),
        way('cooker', 45, 40, 'cooking', change),
        way('cylinder', 16, 13, 'thermostatic-water-heating'),
        way('pump', 10, 6.5, 'heat-pump'),
        soundCircuit(),
      ],
      { cutOut: { kind: known({ standard: 'BS 88-3' }), rating: A(100) } },
      { mainSwitch: { rating: A(100), noFuseAhead: known(true) }, rating: A(100) },
    ),
  );
/** A cooker behind a fuse of 45 A at the end of a long cable: in time within 5 s, too late within 0.4 s. */
const cooker = (change: Partial<Load>): Told =>
  assessed(
    code,
    soundHouse([
      {
        ...way('cooker', 45, 20, 'cooking', change),
        device: { ...breaker(45), kind: known({ standard: 'BS 88-3' }, seen), breakingCapacity: A(33_000) },
        cable: {
          construction: 'multicore',
          material: 'copper',
          insulation: 'thermoplastic-70',
          cores: 3,
          protective: 'core',
          area: known(squareMillimetres(10), seen),
        },
        stretches: [soundStretch({ length: metresOf(90) })],
      },
    ]),
    'cooker',
    dwelling,
  );
/** What the distributor is to be told of a point. */
const told = (point: Partial<ChargePoint>, lacking?: 'bidirectional'): Told => {
  const run = soundCircuit({}, point);
  const feeds = run.feeds.map((o) => {
    const { [lacking as 'bidirectional']: _, ...rest } = o as ChargePoint;
    return rest as ChargePoint;
  });
  const { decision } = notificationOf(
    bs7671Demand,
    greatBritain,
    soundHouse([{ ...run, feeds }], { metered: known(true, seen), cutOutSound: known(true, seen) }),
    { premises: 'dwelling', programme: known(false, seen) },
  );
  return { verdict: overall(decision.results).verdict, results: decision.results };
};

export const chapter: Chapter = {
  title: 'What silence leaves open',
  introduction: 'A line of the form that was skipped is no answer, and least of all the convenient one.',
  hazards: [
    {
      id: 'cooker-socket-not-asked-in-the-demand',
      title: 'A cooker unit, with a socket-outlet or without',
      harm: 'The kettle and the toaster stand beside the cooker. The service fuse goes on Sunday, with the oven full.',
      clause: 'On-Site Guide, Table A2: 5 A for a socket-outlet in a cooker unit, one source',
      mustNotSay: 'That a unit of which nobody says so has no socket-outlet.',
      check: 'demand-within-cut-out',
      unsafe: { what: '97.5 A behind 100 A, the cooker unit not looked at.', told: () => kitchen({}) },
      sound: { what: 'The same, the unit without a socket-outlet.', told: () => kitchen({ withSocket: false }) },
    },
    {
      id: 'cooker-socket-not-asked-in-disconnection',
      title: 'A cooker fuse that is quick enough for a cooker',
      harm: 'What is plugged in beside the cooker is held in the hand. Its fault stays on for seconds.',
      clause: 'BS 7671:2018+A2:2022, 411.3.2.2 and 411.3.2.3, two sources: socket-outlets up to 63 A within 0.4 s',
      mustNotSay: 'That 5 s are enough.',
      check: 'automatic-disconnection',
      unsafe: { what: '45 A BS 88-3 over 90 m, the cooker unit not looked at.', told: () => cooker({}) },
      sound: { what: 'The same, the unit without a socket-outlet.', told: () => cooker({ withSocket: false }) },
    },
    {
      id: 'feeding-back-not-asked-by-the-distributor',
      title: 'A point of which nobody says whether it feeds back',
      harm: 'The jointer in the street has the fuse in his hand, and the car feeds the cable from behind.',
      clause: 'ENA EREC G98 and G99, scope, two sources',
      mustNotSay: 'That a notice after the work is enough.',
      check: 'sources-for-notice',
      unsafe: { what: 'A point of 32 A, feeding back or not.', told: () => told({}, 'bidirectional') },
      sound: { what: 'The same, which does not.', told: () => told({}) },
    },
    {
      id: 'socket-beyond-the-end-of-its-cable',
      title: 'A load beyond the end of its cable',
      harm: 'Half of the route was never surveyed. The cable in it is the one that burns.',
      clause: 'Two lengths that cannot both be right decide nothing: common practice, no source',
      mustNotSay: 'That the voltage arrives at 80 m of a cable of 20 m.',
      unsafe: {
        what: 'Socket-outlets tapped at 80 m, the route 20 m long.',
        told: () => assessed(code, soundHouse([tapped(80)]), 'sockets', dwelling),
      },
      sound: {
        what: 'Tapped at 18 m.',
        told: () => assessed(code, soundHouse([tapped(18)]), 'sockets', dwelling),
      },
    },
    {
      id: 'demand-declared-for-a-feeder-of-another-name',
      title: 'A demand that was declared for a feeder of another name',
      harm: 'The workshop takes 45 A. The name was misspelt, and the cable was sized by the one heater that is listed.',
      clause: 'What is declared and counted nowhere is refused: common practice, no source',
      mustNotSay: 'That the drop is in order.',
      unsafe: {
        what: 'A demand declared for a feeder that the installation does not have.',
        told: () =>
          assessed(code, soundHouse([socketCircuit()]), 'sockets', {
            ...dwelling,
            feederDemand: { 'garage feder': amperes(45) },
          }),
      },
      sound: {
        what: 'Nothing declared, every load listed.',
        told: () => assessed(code, soundHouse([socketCircuit()]), 'sockets', dwelling),
      },
    },
  ],
};

function tapped(at: number): Run {
  const run = socketCircuit();
  return { ...run, feeds: run.feeds.map((o) => ({ ...(o as Load), at: metres(at) })) };
}
