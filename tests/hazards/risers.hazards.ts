import { bs7671 } from '../../src/codes/bs7671/code.js';
import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { feederDemandOf } from '../../src/demand/feeder.js';
import { dwellingsAtOnce } from '../../src/demand/index.js';
import {
  amperes,
  assess,
  type Board,
  isMissing,
  known,
  type Line,
  type Load,
  metres,
  overall,
  ratio,
  squareMillimetres,
  watts,
} from '../../src/index.js';
import { atItsDemand } from '../../src/site/at-its-demand.js';
import type { Survey } from '../../src/site/index.js';
import { chargePoint, circuit, house, stretch } from '../support/house.js';
import type { Chapter, Told } from './hazard.js';

const looked = 'seen at the survey';
const all: readonly Line[] = ['L1', 'L2', 'L3'];

/** Flats of a floor, tapped off the riser so far from its start, m. */
const floor = (id: string, count: number, at: number): Load => {
  const dwellings = { count, each: known(amperes(60), looked), heating: known('not-electric' as const, looked) };
  const current = dwellingsAtOnce(dwellings, 3);
  return { kind: 'load', id, purpose: 'dwellings', current, lines: all, dwellings, at: metres(at) };
};
/** The drop along a riser of 90 m and 35 mm², 15 flats along it, by the demand of what each piece carries. */
const riser = (feeds: readonly Load[]): Told => {
  const building = house(
    [
      circuit({
        id: 'riser',
        lines: all,
        existing: true,
        device: { kind: known({ standard: 'BS 88-2' }, looked), rating: known(amperes(100), looked) },
        cable: {
          ...circuit().cable,
          construction: 'multicore',
          cores: 5,
          protective: 'core',
          area: known(squareMillimetres(35), looked),
        },
        stretches: [stretch({ length: known(metres(90), looked) })],
        feeds,
      }),
    ],
    { phases: known(3, looked) },
  );
  const dwellings = { afterDiversity: { demand: watts(1500), constant: watts(8000), unbalance: ratio(1) } };
  const demand = feederDemandOf(bs7671Demand, building, 'riser', {
    premises: 'other',
    governing: 'after-diversity',
    dwellings,
  });
  if (isMissing(demand.worst)) throw new Error('the demand is known here');
  const options = atItsDemand({ options: { dropLimit: 0.01 } } as unknown as Survey, demand);
  const { results } = assess(bs7671('2018+A2:2022'), building, 'riser', options);
  const own = results.filter((r) => r.check === 'voltage-drop');
  return { verdict: overall(own).verdict, results: own };
};

/** A fuse for the five flats of a floor by their demand after diversity, of which nobody allows for unbalance. */
const topFloor = (phases: 1 | 3, rating: number): Told => {
  const flats = floor('floor 6', 5, 30);
  const own = {
    ...flats,
    dwellings: { ...(flats.dwellings as object), phases: known(phases, looked) } as Load['dwellings'],
  };
  const run = circuit({
    id: 'top floor',
    lines: all,
    existing: true,
    device: { kind: known({ standard: 'BS 88-2' }, looked), rating: known(amperes(rating), looked) },
    cable: {
      ...circuit().cable,
      construction: 'multicore',
      cores: 5,
      protective: 'core',
      area: known(squareMillimetres(16), looked),
    },
    stretches: [stretch({ length: known(metres(30), looked) })],
    feeds: [own as Load],
  });
  const building = house([run], { phases: known(3, looked) });
  const dwellings = { afterDiversity: { demand: watts(1500), constant: watts(8000), unbalance: ratio(1) } };
  const demand = feederDemandOf(bs7671Demand, building, 'top floor', {
    premises: 'other',
    governing: 'after-diversity',
    dwellings,
  });
  if (isMissing(demand.worst)) throw new Error('the demand is known here');
  const options = atItsDemand({ options: {} } as unknown as Survey, demand);
  const { results } = assess(bs7671('2018+A2:2022'), building, 'top floor', options);
  const found = results.filter((r) => r.check === 'device-carries-load');
  return { verdict: overall(found).verdict, results: found };
};

/** The drop at a charge point whose board stands a third along a ring of 16 mm². */
const alongRing = (length: number): Told => {
  const board = (id: string, at: number): Board => ({
    kind: 'board',
    id,
    at: metres(at),
    complete: known(true, looked),
    noResidual: known(true, looked),
    runs: [
      circuit({
        id: `circuit of ${id}`,
        cable: { ...circuit().cable, area: known(squareMillimetres(6), looked) },
        stretches: [stretch({ length: known(metres(32), looked) })],
        feeds: [{ ...chargePoint, id: `point of ${id}` }],
      }),
    ],
  });
  const building = house([
    circuit({
      id: 'ring',
      ring: true,
      device: { ...circuit().device, rating: known(amperes(80), looked) },
      cable: { ...circuit().cable, area: known(squareMillimetres(16), looked) },
      stretches: [stretch({ length: known(metres(length), looked) })],
      feeds: [board('near board', length / 3), board('far board', length / 2)],
    }),
  ]);
  const { results } = assess(bs7671('2018+A2:2022'), building, 'circuit of near board');
  const own = results.filter((r) => r.check === 'voltage-drop');
  return { verdict: overall(own).verdict, results: own };
};

export const chapter: Chapter = {
  title: 'Voltage along a riser or a ring',
  introduction:
    'The flats of a block do not all take their most at once, and those low down do not load the cable above them. Both make a riser better than the sum of its flats at its end; neither may be granted where the flats are not there.',
  hazards: [
    {
      id: 'riser-loaded-at-its-top',
      title: 'All flats at the top of a riser that would carry them spread over the floors',
      harm: 'Lamps dim and motors stall on the top floors every evening; connected equipment overheats.',
      clause: 'BS 7671:2018+A2:2022, 525.202 and Appendix 4, 6.4; the share of each piece by circuit theory',
      mustNotSay: 'that the voltage drop is in order',
      check: 'voltage-drop',
      unsafe: {
        what: 'Fifteen flats on the three top floors of a riser of 90 m, after diversity 30.5 kW.',
        told: () => riser([floor('floor 8', 5, 80), floor('floor 9', 5, 85), floor('floor 10', 5, 90)]),
      },
      sound: {
        what: 'The same flats on floors from 18 m up: the pieces above carry fewer of them.',
        told: () => riser([floor('floor 2', 5, 18), floor('floor 4', 5, 36), floor('floor 10', 5, 90)]),
      },
    },
    {
      id: 'five-flats-spread-over-three-lines',
      title: 'Five flats of which each line is said to have five thirds',
      harm: 'One line has two of the five flats and more than its fuse carries: it blows on the coldest evening.',
      clause:
        'British network design practice, N·ADMD and a constant, from memory; whole flats on three lines by counting',
      mustNotSay: 'that a fuse of 25 A carries five single-phase flats of 15.5 kW',
      check: 'device-carries-load',
      unsafe: {
        what: 'Five single-phase flats, 15.5 kW after diversity without an allowance for unbalance, 25 A: two flats draw 28.4 A.',
        told: () => topFloor(1, 25),
      },
      sound: {
        what: 'Five flats on three lines each: a third of it is 23.6 A.',
        told: () => topFloor(3, 25),
      },
    },
    {
      id: 'board-along-a-ring-taken-for-near',
      title: 'A board a third along a ring, taken for the end of a short one',
      harm: 'The vehicle charges at too low a voltage, and an earth fault is cleared too slowly: the legs of the ring are longer than the way to the board.',
      clause: 'BS 7671:2018+A2:2022, 525.202; two legs in parallel by circuit theory: at(L - at)/L',
      mustNotSay: 'that the voltage drop is in order',
      check: 'voltage-drop',
      unsafe: {
        what: 'A ring of 120 m with boards at 40 m and 60 m: to the first as far as 26.7 m of one cable, not 10 m.',
        told: () => alongRing(120),
      },
      sound: {
        what: 'The same on a ring of 40 m: 8.9 m of one cable.',
        told: () => alongRing(40),
      },
    },
  ],
};
