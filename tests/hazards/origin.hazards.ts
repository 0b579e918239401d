import { bs7671Demand } from '../../src/codes/bs7671/demand.js';
import { feederDemandOf } from '../../src/demand/feeder.js';
import {
  amperes,
  type Board,
  type Installation,
  known,
  type Line,
  type Load,
  overall,
  type ResidualDevice,
  type Run,
  type Supply,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import { circuit, house, load } from '../support/house.js';
import { type Chapter, planned, supplied, type Told } from './hazard.js';

const looked = 'seen at the survey';
const A = (value: number) => known(amperes(value), looked);
const fuse = (rating: number): Partial<Supply> => ({
  cutOut: { kind: known({ standard: 'BS 88-3' }), rating: A(rating) },
});
const tails = (size: number) => known(squareMillimetres(size), looked);

/** A circuit behind a device of this rating that carries a load of its own. */
const of = (
  id: string,
  rating: number,
  current: number,
  lines: readonly Line[] = ['L1'],
  purpose: Load['purpose'] = 'cooking',
): Run =>
  circuit({
    id,
    lines,
    device: { kind: known({ standard: 'EN 60898', type: 'B' }), rating: A(rating) },
    feeds: [load(current, { id: `load of ${id}`, lines, purpose })],
  });
/** Heater, oven, ring and lights: 58 A of demand behind devices of 130 A together. */
const everyday: readonly Run[] = [
  of('heater', 32, 26, ['L1'], 'storage-heating'),
  of('oven', 32, 16, ['L1'], 'storage-heating'),
  of('ring', 32, 10, ['L1'], 'storage-heating'),
  of('pump', 32, 6, ['L1'], 'heat-pump'),
];
const at = (runs: readonly Run[], supply: Partial<Supply>, board: Partial<Board>): Installation =>
  house(runs, supply, { mainSwitch: { rating: A(100), noFuseAhead: known(true) }, rating: A(100), ...board });
const switched = (rating: number): Partial<Board> => ({ mainSwitch: { rating: A(rating), noFuseAhead: known(true) } });
const rccb = (ratedCurrent: number): ResidualDevice => ({
  position: 'origin-of-installation',
  type: known('A', looked),
  rating: known(amperes(0.1), looked),
  ratedCurrent: A(ratedCurrent),
});
const limiter = { name: 'load limiter', limit: A(60), controls: [] };
/** A board of this rating behind a main switch of 100 A. */
const rated = (rating: NonNullable<Board['rating']>): Partial<Board> => ({ ...switched(100), rating });
/** A garage behind a 50 A feeder, by the main switch of its board, a switch-fuse ahead of it where there is one, and its rating. */
const garage = (rating: number, fuseAhead?: number, ofBoard = 100): Told => {
  const board: Board = {
    kind: 'board',
    noResidual: known(true, 'seen at the survey'),
    id: 'garage',
    complete: known(true, looked),
    mainSwitch: {
      rating: A(rating),
      ...(fuseAhead === undefined ? { noFuseAhead: known(true, looked) } : { fuseAhead: A(fuseAhead) }),
    },
    rating: A(ofBoard),
    runs: [of('garage heater', 32, 20), of('garage sockets', 20, 10)],
  };
  const feeder: Run = { ...of('garage feeder', 50, 0), feeds: [board] };
  const { results } = feederDemandOf(bs7671Demand, at([feeder], fuse(100), {}), feeder.id, { premises: 'dwelling' });
  return { verdict: overall(results).verdict, results };
};
/** One 40 A way in an enclosure of its own. */
const oneWay = [of('ev enclosure', 40, 32, ['L1'], 'other')];

const ofBoard = {
  harm: 'The busbars behind the switch are made for less than the switch. Every charge anneals their clamps a little, until one of them glows.',
  clause: 'BS 7671:2018+A2:2022, 512.1.2 and 536.4.3.2; BS EN 61439-1, 5.3.1: from memory',
  mustNotSay: 'That a board carries what its main switch carries.',
  check: 'board-overload',
} as const;

export const chapter: Chapter = {
  title: 'Main switch, tails and the list of circuits',
  introduction:
    'Main switches, residual current devices and tails have no overload protection of their own. They burn quietly, for hours, in the cupboard under the stairs, while the fuse ahead sees nothing amiss.',
  hazards: [
    {
      id: 'main-switch-by-diversity',
      title: 'A main switch that rests on diversity alone',
      harm: 'On a cold evening everything runs. The 63 A switch carries 90 A behind a 100 A fuse that never opens; its contacts glow and the board catches fire.',
      clause: 'BS 7671:2018, 536.4.202 and 536.4.3.2, two texts',
      mustNotSay: 'That a demand of 58 A by diversity makes a 63 A switch behind a 100 A fuse sound.',
      check: 'main-switch-overload',
      unsafe: {
        what: '100 A fuse, 63 A main switch, demand 58 A, outgoing devices of 128 A.',
        told: () => supplied(at(everyday, fuse(100), switched(63))),
      },
      sound: {
        what: 'The same with a 100 A main switch.',
        told: () => supplied(at(everyday, fuse(100), switched(100))),
      },
    },
    {
      id: 'main-switch-above-its-fuse-by-a-step',
      title: 'An 80 A main switch behind a 100 A fuse',
      harm: 'The fuse was enlarged for a shower; the switch was left. It runs at a quarter above its rating and its insulation ages in a winter.',
      clause: 'BS 7671:2018, 536.4.202, two texts',
      mustNotSay: 'That the new fuse suits the old switch.',
      check: 'main-switch-overload',
      unsafe: {
        what: '100 A fuse, 80 A main switch, outgoing devices of 128 A.',
        told: () => supplied(at(everyday, fuse(100), switched(80))),
      },
      sound: { what: 'The same behind the 80 A fuse.', told: () => supplied(at(everyday, fuse(80), switched(80))) },
    },
    {
      id: 'main-switch-sum-of-devices',
      title: 'Outgoing devices that together pass the main switch',
      harm: 'Three circuits run at the full current of their devices: 96 A through a 63 A switch, no device opens.',
      clause: 'BS 7671:2018, 536.4.202, two texts',
      mustNotSay: 'That the outgoing devices protect the switch.',
      check: 'main-switch-overload',
      unsafe: {
        what: '100 A fuse, 63 A main switch, three devices of 32 A, demand 30 A.',
        told: () => supplied(at([of('a', 32, 10), of('b', 32, 10), of('c', 32, 10)], fuse(100), switched(63))),
      },
      sound: {
        what: 'The same switch with devices of 32 A, 20 A and 6 A, 58 A together.',
        told: () => supplied(at([of('a', 32, 10), of('b', 20, 10), of('c', 6, 5)], fuse(100), switched(63))),
      },
    },
    {
      id: 'main-switch-unknown-outgoing-device',
      title: 'One outgoing device nobody could read',
      harm: 'The label is painted over: 6 A or 40 A, nobody knows, and the sum that is to spare the switch is a guess.',
      clause: 'BS 7671:2018, 536.4.202, two texts',
      mustNotSay: 'That the outgoing devices are within the switch.',
      check: 'main-switch-overload',
      unsafe: {
        what: '100 A fuse, 63 A main switch, devices of 32 A and one that is not known.',
        told: () =>
          supplied(
            at(
              [of('a', 32, 10), { ...of('b', 20, 10), device: { kind: unknown(), rating: unknown('read the label') } }],
              fuse(100),
              switched(63),
            ),
          ),
      },
      sound: {
        what: 'The same, the second device read as 20 A.',
        told: () => supplied(at([of('a', 32, 10), of('b', 20, 10)], fuse(100), switched(63))),
      },
    },
    {
      id: 'switch-fuse-above-the-switch-of-a-garage',
      title: 'A switch-fuse of the size of the feeder ahead of a small switch',
      harm: 'The fuse beside the garage board is there, so the switch behind it is taken for protected: 50 A run through 40 A of contacts.',
      clause: 'BS 7671:2018, 536.4.202, two texts',
      mustNotSay: 'That any fuse ahead of a switch protects it.',
      check: 'main-switch-overload',
      unsafe: {
        what: 'Feeder of 50 A, switch-fuse of 50 A, 40 A main switch, devices of 52 A behind it.',
        told: () => garage(40, 50),
      },
      sound: { what: 'The same with a switch-fuse of 40 A.', told: () => garage(40, 40) },
    },
    {
      id: 'main-switch-behind-a-limiter',
      title: 'A load limiter in the place of overload protection',
      harm: 'A current sensor slips off the tail. The limiter reads nothing and lets everything run; the switch was never protected by a device.',
      clause: 'BS 7671:2018, 536.4.202, two texts: the device is chosen by the maker’s instructions',
      mustNotSay: 'That a limiter at 60 A protects a 63 A switch, before its maker accepts it.',
      check: 'main-switch-overload',
      unsafe: {
        what: '100 A fuse, 63 A main switch, a load limiter set to 60 A.',
        told: () => supplied(at(everyday, fuse(100), { ...switched(63), control: limiter })),
      },
      sound: {
        what: 'The same, the maker of the board having declared the switch protected there.',
        told: () =>
          supplied(
            at(everyday, fuse(100), {
              mainSwitch: {
                rating: A(63),
                overloadDeclared: known(true, 'letter of the maker'),
                noFuseAhead: known(true, 'seen'),
              },
              control: limiter,
            }),
          ),
      },
    },
    {
      id: 'main-switch-maker-not-asked',
      title: 'A declaration that nobody has read yet',
      harm: 'The fitter supposes that the maker will have thought of it. The switch is found melted at the next inspection.',
      clause: 'BS 7671:2018, 536.4.202, two texts',
      mustNotSay: 'That the maker accepts what the maker was not asked.',
      check: 'main-switch-overload',
      unsafe: {
        what: '100 A fuse, 63 A main switch, the declaration of the maker still to be asked for.',
        told: () =>
          supplied(
            at(everyday, fuse(100), {
              mainSwitch: { rating: A(63), overloadDeclared: unknown('ask the maker'), noFuseAhead: known(true) },
            }),
          ),
      },
      sound: {
        what: 'The same with the declaration.',
        told: () =>
          supplied(
            at(everyday, fuse(100), {
              mainSwitch: {
                rating: A(63),
                overloadDeclared: known(true, 'instructions'),
                noFuseAhead: known(true, 'seen'),
              },
            }),
          ),
      },
    },
    {
      id: 'main-switch-on-the-fullest-line',
      title: 'Three lines, of which one carries most of the devices',
      harm: 'Two lines idle while the third overloads its pole of the main switch.',
      clause: 'BS 7671:2018, 536.4.202, two texts',
      mustNotSay: 'That the devices are within the switch because they are on two of the lines.',
      check: 'main-switch-overload',
      unsafe: {
        what: 'Three lines, 100 A fuses, 63 A main switch; on L2 devices of 32 A, 32 A and 20 A.',
        told: () =>
          supplied(
            at(
              [of('a', 32, 10, ['L1']), of('b', 32, 10, ['L2']), of('c', 32, 10, ['L2']), of('d', 20, 5, ['L2'])],
              { ...fuse(100), phases: known(3), tails: tails(35) },
              switched(63),
            ),
          ),
      },
      sound: {
        what: 'The same with one of them moved to L3.',
        told: () =>
          supplied(
            at(
              [of('a', 32, 10, ['L1']), of('b', 32, 10, ['L2']), of('c', 32, 10, ['L3']), of('d', 20, 5, ['L2'])],
              { ...fuse(100), phases: known(3), tails: tails(35) },
              switched(63),
            ),
          ),
      },
    },
    {
      id: 'residual-device-at-origin-by-diversity',
      title: 'A 63 A residual current device in front of the whole house',
      harm: 'The RCCB at the origin carries what the 100 A fuse lets through. Overheated, it no longer trips when somebody touches a live part.',
      clause: 'BS 7671:2018, 536.4.3.2 and 536.4.202, two texts',
      mustNotSay: 'That an RCCB at the origin needs no look at its rated current.',
      check: 'residual-device-at-origin-overload',
      unsafe: {
        what: '100 A fuse and main switch, a 63 A RCCB at the origin, devices of 128 A.',
        told: () => supplied(at(everyday, fuse(100), { residual: [rccb(63)] })),
      },
      sound: {
        what: 'The same with a 100 A RCCB.',
        told: () => supplied(at(everyday, fuse(100), { residual: [rccb(100)] })),
      },
    },
    {
      id: 'residual-device-at-origin-without-rated-current',
      title: 'A residual current device whose rated current is left out',
      harm: 'It is whatever it is. If it is 40 A, it burns.',
      clause: 'BS 7671:2018, 536.4.202, two texts',
      mustNotSay: 'Anything better than for a known 40 A device.',
      check: 'residual-device-at-origin-overload',
      unsafe: {
        what: '80 A fuse, an RCCB at the origin of which only the 100 mA was read.',
        told: () => {
          const { ratedCurrent: _unread, ...device } = rccb(80);
          return supplied(at(everyday, fuse(80), { residual: [device] }));
        },
      },
      sound: {
        what: 'The same, read as 80 A.',
        told: () => supplied(at(everyday, fuse(80), { residual: [rccb(80)] })),
      },
    },
    {
      id: 'residual-device-at-origin-that-nobody-looked-for',
      title: 'A board of which nobody says whether a residual current device stands in front of it',
      harm: 'Behind the cover is a 63 A residual current device behind a 100 A fuse. It carries 90 A every winter evening, and nothing opens.',
      clause: 'BS 7671:2018, 536.4.202 and 536.4.3.2, two texts',
      mustNotSay: 'That the supply is adequate while nobody has looked.',
      check: 'residual-device-at-origin-overload',
      unsafe: {
        what: '100 A fuse and main switch; nothing is said of residual current devices.',
        told: () => supplied(at(everyday, fuse(100), { noResidual: unknown() })),
      },
      sound: {
        what: 'The same, somebody looked and found none.',
        told: () => supplied(at(everyday, fuse(100), {})),
      },
    },
    {
      id: 'residual-device-at-origin-entered-at-a-circuit',
      title: 'The same device, written down at the circuit behind it',
      harm: 'Where it is written down does not cool it.',
      clause: 'BS 7671:2018, 536.4.202, two texts',
      mustNotSay: 'Nothing at all, because the device was entered elsewhere.',
      check: 'residual-device-at-origin-overload',
      unsafe: {
        what: '100 A fuse, a 63 A RCCB at the origin of the installation, entered at the first circuit.',
        told: () =>
          supplied(at([{ ...of('heater', 32, 26), residual: [rccb(63)] }, ...everyday.slice(1)], fuse(100), {})),
      },
      sound: {
        what: 'The same, of 100 A.',
        told: () =>
          supplied(at([{ ...of('heater', 32, 26), residual: [rccb(100)] }, ...everyday.slice(1)], fuse(100), {})),
      },
    },
    {
      id: 'garage-switch-behind-its-feeder',
      title: 'A small main switch in the garage behind a 50 A feeder',
      harm: 'Point, sockets and heater of the garage draw 50 A for hours through a 40 A switch in a plastic box.',
      clause: 'BS 7671:2018, 536.4.202, two texts',
      mustNotSay: 'That the demand of 30 A makes the 40 A switch sound.',
      check: 'main-switch-overload',
      unsafe: {
        what: 'A garage board with a 40 A main switch behind a 50 A feeder, devices of 52 A, demand 30 A.',
        told: () => garage(40),
      },
      sound: { what: 'The same with a 63 A main switch.', told: () => garage(63) },
    },
    {
      ...ofBoard,
      id: 'board-made-for-less-than-its-switch',
      title: 'A board of 63 A behind a fuse of 100 A and a switch of 100 A',
      unsafe: {
        what: '100 A fuse, 100 A main switch, a board marked 63 A, outgoing devices of 128 A.',
        told: () => supplied(at(everyday, fuse(100), rated(A(63)))),
      },
      sound: {
        what: 'The same behind a switch-fuse of 63 A.',
        told: () =>
          supplied(at(everyday, fuse(100), { ...rated(A(63)), mainSwitch: { rating: A(100), fuseAhead: A(63) } })),
      },
    },
    {
      id: 'switch-fuse-that-nobody-mentions',
      title: 'A switch-fuse in the tails that nobody looked for',
      harm: 'In the meter box stands a fuse of 60 A that the cut-out of 100 A hides. It opens on the first cold night, with the car half charged and the heating off.',
      clause: 'BS 7671:2018+A2:2022, 433.1.1, two sources',
      mustNotSay: 'That the fuse of the cut-out and the main switch are all that the demand has to stay within.',
      check: 'demand-within-main-switch',
      unsafe: {
        what: '100 A fuse, 100 A main switch; nothing is said of a switch-fuse between them.',
        told: () => supplied(at(everyday, fuse(100), { mainSwitch: { rating: A(100) } })),
      },
      sound: {
        what: 'The same, and somebody looked along the tails: there is none.',
        told: () =>
          supplied(at(everyday, fuse(100), { mainSwitch: { rating: A(100), noFuseAhead: known(true, looked) } })),
      },
    },
    {
      ...ofBoard,
      id: 'board-of-half-a-rating',
      title: 'A board whose label is half torn off',
      mustNotSay: 'That it is rated for the larger of what the rest of the label may say.',
      unsafe: {
        what: '80 A fuse, a board of 63 A to 100 A, outgoing devices of 128 A.',
        told: () =>
          supplied(
            at(everyday, fuse(80), rated({ state: 'between', least: amperes(63), most: amperes(100), by: looked })),
          ),
      },
      sound: {
        what: 'The same with two circuits of 32 A: whatever it is, no more can flow.',
        told: () =>
          supplied(
            at(
              everyday.slice(1, 3),
              fuse(80),
              rated({ state: 'between', least: amperes(64), most: amperes(100), by: looked }),
            ),
          ),
      },
    },
    {
      ...ofBoard,
      id: 'garage-board-behind-its-feeder',
      title: 'A garage board of 40 A behind a feeder of 50 A, with a switch of 63 A',
      unsafe: {
        what: 'A garage board marked 40 A behind 50 A, devices of 52 A.',
        told: () => garage(63, undefined, 40),
      },
      sound: { what: 'The same, marked 63 A.', told: () => garage(63, undefined, 63) },
    },
    {
      ...ofBoard,
      id: 'plan-on-a-board-made-for-less',
      title: 'A plan on a board that is marked 63 A behind 80 A',
      unsafe: {
        what: 'Larch Cottage, its board marked 63 A.',
        told: () => planned('easy-home', [['board.rating', { known: '63 A', by: 'marking' }]]),
      },
      sound: {
        what: 'Marked 80 A.',
        told: () => planned('easy-home', [['board.rating', { known: '80 A', by: 'marking' }]]),
      },
    },
    {
      ...ofBoard,
      id: 'board-of-which-nothing-is-said',
      title: 'A board of whose rating nothing is said',
      mustNotSay: 'That the supply is adequate because nobody mentioned what the board is made for.',
      unsafe: {
        what: '100 A fuse, 100 A main switch, outgoing devices of 128 A, not a word of the rating of the board.',
        told: () => {
          const { rating: _, ...board } = at(everyday, fuse(100), {}).board;
          return supplied({ ...at(everyday, fuse(100), {}), board });
        },
      },
      sound: { what: 'The same, marked 100 A.', told: () => supplied(at(everyday, fuse(100), rated(A(100)))) },
    },
    {
      harm: ofBoard.harm,
      clause: ofBoard.clause,
      id: 'board-that-nobody-read',
      title: 'A board whose rating nobody has read',
      mustNotSay: 'That it is as strong as its main switch, without a condition to read it.',
      unsafe: {
        what: 'Larch Cottage, the rating of its board left out.',
        told: () => planned('easy-home', [['board.rating', undefined]]),
      },
      sound: { what: 'Read as 100 A.', told: () => planned('easy-home') },
    },
    {
      id: 'tails-by-demand',
      title: 'Thin tails, judged by the demand',
      harm: 'The demand is an estimate, the fuse is not. 16 mm² tails carry 100 A until their insulation drips into the meter box.',
      clause: 'BS 7671, 433.1.1, two texts',
      mustNotSay: 'That 58 A of demand suits 16 mm² tails behind a 100 A fuse.',
      check: 'tails-overload',
      unsafe: {
        what: '100 A fuse, tails of 16 mm², demand 58 A, outgoing devices of 128 A.',
        told: () => supplied(at(everyday, { ...fuse(100), tails: tails(16) }, {})),
      },
      sound: {
        what: 'The same with tails of 25 mm².',
        told: () => supplied(at(everyday, { ...fuse(100), tails: tails(25) }, {})),
      },
    },
    {
      id: 'tails-of-ten',
      title: 'Tails of 10 mm² behind an 80 A fuse',
      harm: 'Old tails, new heat pump: the bundle behind the meter runs at 90 °C.',
      clause: 'BS 7671, 433.1.1, two texts',
      mustNotSay: 'That they are protected.',
      check: 'tails-overload',
      unsafe: {
        what: '80 A fuse, tails of 10 mm², demand 58 A.',
        told: () => supplied(at(everyday, { ...fuse(80), tails: tails(10) }, {})),
      },
      sound: {
        what: 'The same with the fuse that suits 10 mm²: 60 A, and what the house draws within it.',
        told: () => supplied(at(everyday.slice(0, 3), { ...fuse(60), tails: tails(10) }, switched(63))),
      },
    },
    {
      id: 'tails-to-one-way-fault-not-asked',
      title: 'Small tails to a one-way enclosure, fault current forgotten',
      harm: 'The 40 A device at the end protects against overload; a short circuit in the tails is left to a fuse nobody has compared with them, and the tails flash over beside the meter.',
      clause: 'BS 7671, 433.2.2 with 434.5.2, two texts',
      mustNotSay: 'That protection at the load end is enough by itself.',
      check: 'tails-overload',
      unsafe: {
        what: '100 A fuse, tails of 10 mm² to one 40 A way; nobody has compared fuse and tails at a short circuit.',
        told: () => supplied(at(oneWay, { ...fuse(100), tails: tails(10) }, {}), { premises: 'other' }),
      },
      sound: {
        what: 'The same, compared, and the distributor lets the fuse be relied on.',
        told: () =>
          supplied(
            at(
              oneWay,
              {
                ...fuse(100),
                tails: tails(10),
                tailsFaultProtected: known(true, 'curve of the fuse; letter of the distributor'),
              },
              {},
            ),
            { premises: 'other' },
          ),
      },
    },
    {
      id: 'tails-above-their-devices',
      title: 'Two ways at the end of tails for one',
      harm: 'A second point was added in the same enclosure: 80 A of devices on tails that carry 65 A.',
      clause: 'BS 7671, 433.2.2, two texts',
      mustNotSay: 'That the devices at the end protect the tails.',
      check: 'tails-overload',
      unsafe: {
        what: '100 A fuse, tails of 10 mm², two ways of 40 A, the fuse relied on for faults.',
        told: () =>
          supplied(
            at(
              [of('first', 40, 25, ['L1'], 'other'), of('second', 40, 25, ['L1'], 'other')],
              { ...fuse(100), tails: tails(10), tailsFaultProtected: known(true, looked) },
              {},
            ),
            { premises: 'other' },
          ),
      },
      sound: {
        what: 'The same with tails of 16 mm².',
        told: () =>
          supplied(
            at(
              [of('first', 40, 25, ['L1'], 'other'), of('second', 40, 25, ['L1'], 'other')],
              { ...fuse(100), tails: tails(16), tailsFaultProtected: known(true, looked) },
              {},
            ),
            { premises: 'other' },
          ),
      },
    },
    {
      id: 'no-circuits-listed',
      title: 'A survey that lists no circuits',
      harm: 'A house with a 10 kW shower reads as one that draws nothing. The fuse blows at seven in the morning, or the neutral burns.',
      clause: 'BS 7671, 311.1',
      mustNotSay: 'That the house draws 0 A.',
      unsafe: {
        what: 'A board without any circuit listed, and nobody says that there are none.',
        told: () => {
          const { supply, board } = at([], fuse(100), {});
          const { complete: _unsaid, ...silent } = board;
          return supplied({ supply, board: silent });
        },
      },
      sound: {
        what: 'A new building whose board is empty, as somebody has seen.',
        told: () => supplied(at([], fuse(100), { complete: known(true, 'board new, lid off') })),
      },
    },
    {
      id: 'some-circuits-listed',
      title: 'A list that stops halfway',
      harm: 'The shower is on the second board, behind the coats. It is on no list and in no demand.',
      clause: 'BS 7671, 311.1',
      mustNotSay: 'That what is listed is what there is.',
      unsafe: {
        what: 'Two circuits listed; the surveyor notes that others were not traced.',
        told: () => supplied(at(everyday.slice(0, 2), fuse(100), { complete: known(false, 'two ways not traced') })),
      },
      sound: {
        what: 'The same two circuits, and there are no others.',
        told: () => supplied(at(everyday.slice(0, 2), fuse(100), {})),
      },
    },
    {
      id: 'circuit-that-feeds-nothing',
      title: 'A circuit of which nobody knows what it feeds',
      harm: 'A 32 A way marked “spare?” heats a hot tub.',
      clause: 'BS 7671, 311.1',
      mustNotSay: 'That it draws nothing.',
      unsafe: {
        what: 'A circuit on the board whose loads were not traced.',
        told: () => supplied(at([...everyday.slice(0, 2), { ...of('spare?', 32, 0), feeds: [] }], fuse(100), {})),
      },
      sound: {
        what: 'The same, traced to a heat pump of 6 A.',
        told: () => supplied(at([...everyday.slice(0, 2), of('tub', 32, 6, ['L1'], 'heat-pump')], fuse(100), {})),
      },
    },
    {
      id: 'board-below-not-listed',
      title: 'A board further down of which nothing is listed',
      harm: 'The annexe has storage heaters. The feeder and the service fuse learn of them in January.',
      clause: 'BS 7671, 311.1',
      mustNotSay: 'That the annexe draws nothing.',
      unsafe: {
        what: 'A feeder to an annexe whose board was locked.',
        told: () =>
          supplied(
            at(
              [
                ...everyday.slice(0, 2),
                {
                  ...of('annexe feeder', 40, 0),
                  feeds: [{ kind: 'board', noResidual: known(true, 'seen at the survey'), id: 'annexe', runs: [] }],
                },
              ],
              fuse(100),
              {},
            ),
          ),
      },
      sound: {
        what: 'The same, opened: two heaters, and nothing else.',
        told: () =>
          supplied(
            at(
              [
                ...everyday.slice(0, 2),
                {
                  ...of('annexe feeder', 40, 0),
                  feeds: [
                    {
                      kind: 'board',
                      noResidual: known(true, 'seen at the survey'),
                      id: 'annexe',
                      complete: known(true, looked),
                      runs: [of('annexe heater', 16, 12, ['L1'], 'storage-heating')],
                    },
                  ],
                },
              ],
              fuse(100),
              {},
            ),
          ),
      },
    },
    {
      id: 'plan-without-a-list',
      title: 'A plan for a house nobody has listed',
      harm: 'The point is promised 32 A beside a shower that is in no survey.',
      clause: 'BS 7671, 311.1',
      mustNotSay: 'That the point may run at 32 A.',
      unsafe: {
        what: 'Larch Cottage with an empty list of circuits.',
        told: () =>
          planned('easy-home', [
            ['board.runs', []],
            ['board.complete', undefined],
          ]),
      },
      sound: { what: 'Larch Cottage as surveyed.', told: () => planned('easy-home') },
    },
    {
      id: 'no-way-left',
      title: 'A board without a way left',
      harm: 'The new circuit ends up doubled under the terminal of the cooker: a loose clamp, 50 A behind a 32 A device meant for one cable.',
      clause: 'BS 7671, 314.4, two texts',
      mustNotSay: 'That the point can be connected to this board.',
      check: 'way-of-its-own',
      unsafe: {
        what: 'Larch Cottage with no way left, and no new enclosure planned.',
        told: () => planned('easy-home', [['board.spareWays', { known: 0, by: 'photograph' }]]),
      },
      sound: {
        what: 'The same with an enclosure of its own for the point.',
        told: () =>
          planned('easy-home', [
            ['board.spareWays', { known: 0, by: 'photograph' }],
            ['work.newEnclosure', true],
          ]),
      },
    },
    {
      id: 'way-without-a-device',
      title: 'A way for which no device is made any more',
      harm: 'A device of another make is pressed into the board. Its clamp and the busbar do not meet: they arc under the car’s current.',
      clause: 'BS 7671:2018+A2:2022, 536.4.203, from memory: devices as the maker of the assembly declares them',
      mustNotSay: 'That a free way takes a device of today.',
      check: 'way-of-its-own',
      unsafe: {
        what: 'Larch Cottage with ways left in a board whose maker is gone.',
        told: () => planned('easy-home', [['work.devicesToBeHad', { known: false, by: 'list of the maker' }]]),
      },
      sound: {
        what: 'The same with an enclosure of its own for the point.',
        told: () =>
          planned('easy-home', [
            ['work.devicesToBeHad', { known: false, by: 'list of the maker' }],
            ['work.newEnclosure', true],
          ]),
      },
    },
    {
      id: 'ways-not-counted',
      title: 'Ways that nobody has counted',
      harm: 'The van arrives, the board is full, and something is improvised before dark.',
      clause: 'BS 7671, 314.4, two texts',
      mustNotSay: 'That there is a way.',
      check: 'way-of-its-own',
      unsafe: {
        what: 'Larch Cottage, the spare ways left out of the survey.',
        told: () => planned('easy-home', [['board.spareWays', undefined]]),
      },
      sound: {
        what: 'One way is left, as the photograph shows.',
        told: () => planned('easy-home', [['board.spareWays', { known: 1, by: 'photograph' }]]),
      },
    },
    {
      id: 'two-points-one-way',
      title: 'Two new circuits for one way',
      harm: 'Both points are put on one device: 64 A on 32 A, or a device that is enlarged beyond its cables.',
      clause: 'BS 7671, 314.4, two texts',
      mustNotSay: 'That one way is enough for two circuits.',
      check: 'way-of-its-own',
      unsafe: {
        what: 'Millrace Joinery with one spare way for its two bays.',
        told: () => planned('workshop', [['board.spareWays', { known: 1, by: 'photograph' }]]),
      },
      sound: {
        what: 'The same with two.',
        told: () => planned('workshop', [['board.spareWays', { known: 2, by: 'photograph' }]]),
      },
    },
  ],
};
