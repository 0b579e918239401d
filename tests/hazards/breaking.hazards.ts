import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  type Board,
  known,
  ohms,
  type Run,
  type Supply,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import { assessed, type Chapter, type Told } from './hazard.js';
import { armoured, breaker, dwelling, garageFeeder, pointAlone } from './residual-circuits.js';
import { metresOf, soundCircuit, soundHouse, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const A = (value: number) => known(amperes(value), seen);
const mm2 = (value: number) => known(squareMillimetres(value), seen);
const gG = (rating: Supply['cutOut']['rating']): Partial<Supply> => ({
  cutOut: { kind: known({ standard: 'BS 88-3' }, seen), rating },
});
/** A supply of this prospective current, with large tails and earthing. */
const strong = (current: number, supply: Partial<Supply>): Partial<Supply> => ({
  prospectiveCurrent: A(current),
  externalImpedance: known(ohms(235 / current), 'measured'),
  tails: mm2(70),
  earthingConductor: mm2(35),
  ...supply,
});
/** An RCBO of 6 kA in a board marked 16 kA, on a supply of 9 kA. */
const ofBoard = (supply: Partial<Supply>, run: Run = soundCircuit(), board: Partial<Board> = {}): Told =>
  assessed(code, soundHouse([run], strong(9000, supply), board), 'ev', dwelling);
/** A garage board 2 m behind a feeder with a circuit-breaker of its own. */
const garage = (own: number): Told => {
  const feeder = garageFeeder(
    {
      device: { ...breaker(125), kind: known({ standard: 'BS 88-2' }, seen), breakingCapacity: A(80_000) },
      cable: armoured(50),
      stretches: [soundStretch({ length: metresOf(2) })],
    },
    [pointAlone({ device: { ...breaker(32), breakingCapacity: A(own), energyClass: known(3, seen) } })],
  );
  const boards = feeder.feeds.map((o) =>
    o.kind === 'board' ? { ...o, detached: known(false, seen), conditionalRating: A(16_000) } : o,
  );
  return ofBoard(gG(A(160)), { ...feeder, feeds: boards });
};

const common = {
  check: 'breaking-capacity',
  harm: 'The device bursts in the fault that it should break, into the face of whoever switches it on again.',
  clause:
    'BS 7671:2018+A2:2022, 434.5.1 and 536.5, two sources; EN 61439-3, its annex for Great Britain, from memory: 16 kA behind a fuse of 100 A',
} as const;

export const chapter: Chapter = {
  title: 'What a device can break',
  introduction:
    'The 16 kA on a consumer unit are a promise with a condition: a fuse of at most 100 A ahead, which does the breaking. Behind anything else the figure on the device counts.',
  hazards: [
    {
      ...common,
      id: 'board-of-16-ka-behind-a-larger-fuse',
      title: 'A consumer unit behind a fuse of 160 A',
      mustNotSay: 'That 16 kA on the enclosure hold behind any fuse.',
      unsafe: {
        what: 'RCBOs of 6 kA, 9 kA prospective, the board marked 16 kA, a cut-out of 160 A.',
        told: () => ofBoard(gG(A(160))),
      },
      sound: { what: 'The same behind 100 A.', told: () => ofBoard(gG(A(100))) },
    },
    {
      ...common,
      id: 'board-of-16-ka-behind-a-fuse-nobody-read',
      title: 'A consumer unit behind a fuse that nobody read',
      mustNotSay: 'That the fuse will be one of 100 A.',
      unsafe: {
        what: 'The same behind a cut-out whose fuse is not known.',
        told: () => ofBoard(gG(unknown('ask the distributor'))),
      },
      sound: { what: 'The letter of the distributor says 80 A.', told: () => ofBoard(gG(A(80))) },
    },
    {
      ...common,
      id: 'sub-board-behind-a-feeder-of-125-a',
      title: 'A small board beside the main switchboard',
      mustNotSay: 'That the marking of the small board holds behind 125 A.',
      unsafe: {
        what: 'A board marked 16 kA, 2 m behind a feeder of 125 A on a supply of 160 A, circuit-breakers of 6 kA.',
        told: () => garage(6000),
      },
      sound: { what: 'The same with circuit-breakers of 10 kA.', told: () => garage(10_000) },
    },
  ],
};
