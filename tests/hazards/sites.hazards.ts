import { bs7671 } from '../../src/codes/bs7671/code.js';
import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { feederDemandOf } from '../../src/demand/feeder.js';
import { type Dwellings, dwellingsAtOnce, type SupplyTransformer } from '../../src/demand/index.js';
import {
  amperes,
  assess,
  type Board,
  type Installation,
  known,
  type Line,
  type Load,
  metres,
  overall,
  type Run,
  ratio,
  type Supply,
  squareMillimetres,
  unknown,
  voltAmperes,
  volts,
  watts,
} from '../../src/index.js';
import { chargePoint, circuit, house, stretch } from '../support/house.js';
import { type Chapter, supplied, type Told } from './hazard.js';

const looked = 'seen at the survey';
const A = (value: number) => known(amperes(value), looked);
const all: readonly Line[] = ['L1', 'L2', 'L3'];

/** Flats of 60 A each, spread over three lines. */
const flats = (count: number, heating: Dwellings['heating'] = known('not-electric', looked)): Load => {
  const dwellings: Dwellings = { count, each: A(60), heating };
  const current = dwellingsAtOnce(dwellings, 3);
  return { kind: 'load', id: 'flats', purpose: 'dwellings', current, lines: all, dwellings };
};
const behind = (id: string, rating: number, feeds: Run['feeds']): Run =>
  circuit({
    id,
    lines: all,
    existing: true,
    device: { kind: known({ standard: 'BS 88-2' }), rating: A(rating) },
    cable: { ...circuit().cable, construction: 'multicore', cores: 5, protective: 'core' },
    feeds,
  });
/** A block of flats behind a three-phase fuse of 100 A. */
const block = (of: Load, change: Partial<Supply> = {}): Installation =>
  house(
    [behind('riser', 100, [of])],
    {
      phases: known(3),
      cutOut: { kind: known({ standard: 'BS 88-3' }), rating: A(100) },
      tails: known(squareMillimetres(35), looked),
      ...change,
    },
    { mainSwitch: { rating: A(100), noFuseAhead: known(true) }, rating: A(100) },
  );
const told = (of: Load, change: Partial<Supply> = {}): Told => supplied(block(of, change), { premises: 'other' });
/** A floor of flats behind a main switch of its own, on a riser that carries it. */
const floor = (count: number): Told => {
  const board: Board = {
    kind: 'board',
    id: 'floor board',
    complete: known(true, looked),
    noResidual: known(true, looked),
    mainSwitch: { rating: A(100), noFuseAhead: known(true) },
    rating: A(100),
    runs: [behind('meters', 100, [flats(count)])],
  };
  const building = house([behind('riser', 100, [board])], { phases: known(3) });
  const { results } = feederDemandOf(bs7671Demand, building, 'riser', { premises: 'other' });
  return { verdict: overall(results).verdict, results };
};
/** What a circuit of a floor board is told of one check, two boards tapped off a riser at distances, m. */
const tapped = (check: string, of: 'ground floor' | 'top floor', at: number | undefined, top: number): Told => {
  const floorBoard = (id: string, from?: number): Board => ({
    kind: 'board',
    id,
    ...(from === undefined ? {} : { at: metres(from) }),
    complete: known(true, looked),
    noResidual: known(true, looked),
    runs: [circuit({ id: `circuit of ${id}`, feeds: [{ ...chargePoint, id: `point of ${id}` }] })],
  });
  const building = house(
    [
      circuit({
        id: 'riser',
        device: { ...circuit().device, rating: A(63) },
        cable: { ...circuit().cable, area: known(squareMillimetres(16), looked) },
        stretches: [stretch({ length: known(metres(top), looked) })],
        feeds: [floorBoard('ground floor', at), floorBoard('top floor', top)],
      }),
    ],
    { prospectiveCurrent: known(amperes(9000), looked) },
  );
  const { results } = assess(bs7671('2018+A2:2022'), building, `circuit of ${of}`);
  const own = results.filter((r) => r.check === check);
  return { verdict: overall(own).verdict, results: own };
};
const plate = (kVA: number, u: number) => ({
  rating: known(voltAmperes(kVA * 1e3), looked),
  impedanceVoltage: known(ratio(u), looked),
  loss: known(watts(kVA * 15), looked),
});
const transformer = (kVA: number, more: Partial<SupplyTransformer> = {}): Partial<Supply> => ({
  transformer: {
    rating: known(voltAmperes(kVA * 1e3), looked),
    voltage: known(volts(433), looked),
    impedanceVoltage: known(ratio(0.045), looked),
    loss: known(watts(kVA * 15), looked),
    gridFaultPower: known(voltAmperes(100e6), looked),
    owner: 'customer',
    atOrigin: known(true, looked),
    ...more,
  },
});

export const chapter: Chapter = {
  title: 'Many homes on one cable, and the transformer behind them',
  introduction:
    'What many flats take together is neither what one takes times their number nor what the landlord’s meter shows. Risers and floor boards were sized for the cooking of their year; heat and cars came later.',
  hazards: [
    {
      id: 'block-of-flats-beyond-its-fuse',
      title: 'Forty flats on a service for twenty',
      harm: 'The service fuse opens on the first frost with forty families behind it; before that the joint in the cellar has run hot for weeks.',
      clause: 'BS 7671:2018, 311.1; demand after diversity of British network practice, from memory',
      mustNotSay: 'That a 100 A three-phase service carries forty flats.',
      check: 'demand-within-cut-out',
      unsafe: { what: '40 flats with gas heating behind 100 A, three-phase.', told: () => told(flats(40)) },
      sound: { what: '20 flats behind the same fuse.', told: () => told(flats(20)) },
    },
    {
      id: 'heating-of-flats-not-asked',
      title: 'Flats whose heating nobody asked about',
      harm: 'The flats heat with electricity. On a winter evening they take twice what was counted, and the riser behind the lift shaft glows.',
      clause: 'BS 7671:2018, 311.1; demand after diversity by heating, from memory',
      mustNotSay: 'That twenty flats take what flats with gas take, before anybody knows how they are heated.',
      check: 'demand-within-cut-out',
      unsafe: {
        what: '20 flats, heating not known, behind 100 A, three-phase.',
        told: () => told(flats(20, unknown('ask the manager of the building'))),
      },
      sound: { what: '20 flats with gas heating behind the same fuse.', told: () => told(flats(20)) },
    },
    {
      id: 'floor-board-on-a-riser',
      title: 'A floor board with more flats than its switch',
      harm: 'The riser was renewed, the board of the floor was not: its 100 A switch carries half as much again every evening, in a cupboard full of prams.',
      clause: 'BS 7671:2018, 512.1.2; demand after diversity of British network practice, from memory',
      mustNotSay: 'That the switch of a floor carries what the riser carries.',
      check: 'demand-within-main-switch',
      unsafe: { what: '50 flats behind a floor board of 100 A.', told: () => floor(50) },
      sound: { what: '20 flats behind the same board.', told: () => floor(20) },
    },
    {
      id: 'board-near-the-start-of-a-riser',
      title: 'A floor board near the foot of the riser, reckoned as if it hung at the top',
      harm: 'A fault in the board of the ground floor draws three times what its circuit-breakers are made to break. One bursts in the face of whoever switches it on again.',
      clause: 'BS 7671:2018, 434.5.1',
      mustNotSay: 'That devices of 6 kA do on every floor because they do at the end of the riser.',
      check: 'breaking-capacity',
      unsafe: {
        what: 'Boards along a riser of 28 m, 9 kA at its foot; nobody says where each is tapped.',
        told: () => tapped('breaking-capacity', 'ground floor', undefined, 28),
      },
      sound: {
        what: 'The same board, tapped 25 m up.',
        told: () => tapped('breaking-capacity', 'ground floor', 25, 28),
      },
    },
    {
      id: 'transformer-beyond-its-rating',
      title: 'A transformer of the site’s own beyond its rating',
      harm: 'No fuse of a transformer protects it against a fifth too much for ten hours a night. Its oil boils off its life in a few winters, and the site is dark for the weeks that a new one takes.',
      clause: 'IEC 60076-1, rated power, from memory',
      mustNotSay: 'That a 50 kVA transformer carries 83 A on each line because the fuse behind it does.',
      check: 'demand-within-transformer',
      unsafe: { what: '20 flats, 83 A a line, on 50 kVA.', told: () => told(flats(20), transformer(50)) },
      sound: { what: 'The same on 100 kVA.', told: () => told(flats(20), transformer(100)) },
    },
    {
      id: 'last-board-of-a-riser',
      title: 'The last board of a long riser, reckoned by what flows at its end',
      harm: 'The voltage at the top floor is too low whenever the floors below draw theirs: chargers pause, and motors run hot.',
      clause: 'BS 7671:2018, 525.202 and Appendix 4, 6.4',
      mustNotSay: 'That a riser drops what the last floor draws: below the first tap it carries all floors.',
      check: 'voltage-drop',
      unsafe: {
        what: 'A board 10 m and one 80 m up a riser of 16 mm², 32 A at each.',
        told: () => tapped('voltage-drop', 'top floor', 10, 80),
      },
      sound: { what: 'The second 40 m up.', told: () => tapped('voltage-drop', 'top floor', 10, 40) },
    },
    {
      id: 'unlike-transformers-in-parallel',
      title: 'Two unlike transformers reckoned as the sum of their plates',
      harm: 'The one of the lower impedance takes two thirds of the load. It ages for both, unseen, because the meter of the two together shows less than their plates.',
      clause: 'IEC 60076-1, rated power; IEC 60076-8, parallel operation, from memory',
      mustNotSay: 'That two of 40 kVA, of 4.5 % and 9 %, carry 80 kVA.',
      check: 'demand-within-transformer',
      unsafe: {
        what: '20 flats, 83 A a line, on 40 kVA of 4.5 % beside 40 kVA of 9 %.',
        told: () => told(flats(20), transformer(40, { beside: [plate(40, 0.09)] })),
      },
      sound: {
        what: 'The same on two of 4.5 %.',
        told: () => told(flats(20), transformer(40, { beside: [plate(40, 0.045)] })),
      },
    },
    {
      id: 'transformer-with-harmonics',
      title: 'A transformer whose load is far from sinusoidal',
      harm: 'Rectifiers heat its windings by a fifth more than the current tells. The thermometer of the oil does not see the hot spot.',
      clause: 'IEC 60076-1, rated power; EN 50464-3, factor K, from memory',
      mustNotSay: 'That it carries the current on its plate when the factor K of its load is known to be 1.2.',
      check: 'demand-within-transformer',
      unsafe: {
        what: '20 flats, 83 A a line, on 70 kVA, a factor K of 1.2.',
        told: () => told(flats(20), transformer(70, { harmonicLossFactor: known(ratio(1.2), looked) })),
      },
      sound: {
        what: 'The same with a factor K of 1.02.',
        told: () => told(flats(20), transformer(70, { harmonicLossFactor: known(ratio(1.02), looked) })),
      },
    },
  ],
};
