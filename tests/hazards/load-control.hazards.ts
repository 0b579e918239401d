import { excessTimeOf } from '../../src/charging/definitions.js';
import { type ChargingNetwork, type ControlSettings, controllerOf, judgeMainFuse } from '../../src/charging/index.js';
import type { CheckResult } from '../../src/core/index.js';
import { amperes, type Board, known as fact, overall, seconds } from '../../src/index.js';
import { chargePoint, circuit, house, load } from '../support/house.js';
import type { Json } from '../support/surveys.js';
import { type Change, type Chapter, planned, supplied, type Told } from './hazard.js';

/** What a check says by itself. */
const judged = (result: CheckResult): Told => ({ verdict: result.verdict, results: [result] });

/** Gates of a gG fuse of 80 A, from memory: it carries 215 A for 10 s, and 100 A for ever. */
const fuse = { gates: [{ current: 215, time: 10 }], nonFusing: amperes(100) };
/** A vehicle follows in 5 s, a point changes its duty cycle within 10 s. */
const followed = { pointReaction: seconds(10), vehicleReaction: seconds(5) };
const slow = excessTimeOf({ meterPeriod: seconds(10), controllerPeriod: seconds(1), ...followed });
const quick = excessTimeOf({ meterPeriod: seconds(1), controllerPeriod: seconds(1), ...followed });

const line = (a: number) => [amperes(a), amperes(0), amperes(0)] as const;
const settings: ControlSettings = {
  policy: { rule: 'max-min-amperes' },
  meters: [{ node: 'intake', measures: 'everything', positive: 'import' }],
  meterPeriod: seconds(1),
  controllerPeriod: seconds(1),
  ...followed,
  staleAfter: seconds(10),
  riseAfter: seconds(0),
  resumeAfter: seconds(600),
};
/** What the set-up says, and whether the line stays within its limit beside the worst load once the meter is silent. */
const silenced = (network: ChargingNetwork, worst: number): Told => {
  const { start, step, notes } = controllerOf(network, settings);
  const house = {
    at: seconds(0),
    nodes: { intake: line(10) },
    points: { drive: { connected: true, current: amperes(0) } },
  };
  const { commands } = step(step(start, house, seconds(0)).state, undefined, seconds(11));
  if (worst + commands.drive! > network.nodes[0]!.limit![0]) return { verdict: 'fail', results: [] };
  return { verdict: notes.length > 0 ? 'not-determined' : 'pass', results: [] };
};
const drive = { id: 'drive', node: 'intake', lines: ['L1'], most: amperes(32) } as const;

const known = (value: Json): Json => ({ known: value, by: 'instructions of the limiter' });
const stated = known(true);
const pauses = known('0 A');
const none = known(false);
const gG: readonly Change[] = [['supply.cutOut.kind', { known: { standard: 'BS 88-2' }, by: 'label' }]];
/** A limiter that is there already. */
const limiter = (limit: string, rest: Record<string, Json>, controls: Json = ['drive']): Json => ({
  name: 'limiter',
  limit,
  controls,
  ...rest,
});
const garage = (rest: Record<string, Json>): readonly Change[] => [
  ['supply.externalImpedance', '0.4 Ω'],
  ['board.runs.5.stretches.1.length', '20 m'],
  ['board.runs.5.feeds.0.control', limiter('40 A', rest, ['garage point'])],
];

/** Two halls of thirty points with a control each, and other load, against the cut-out. */
const twoHalls = (rating: number): Told => {
  const lines = ['L1', 'L2', 'L3'] as const;
  const wide = { ...circuit().cable, construction: 'multicore', cores: 5, protective: 'core' } as const;
  const of = <T>(value: T) => fact(value, 'seen at the survey');
  const hall = (id: string): Board => ({
    kind: 'board',
    id,
    complete: of(true),
    control: {
      name: `control of ${id}`,
      limit: of(amperes(250)),
      controls: Array.from({ length: 30 }, (_, k) => `${id} ${k}`),
    },
    runs: Array.from({ length: 30 }, (_, k) => {
      const on = [lines[k % 3] as 'L1'];
      return circuit({ id: `circuit ${id} ${k}`, lines: on, feeds: [{ ...chargePoint, id: `${id} ${k}`, lines: on }] });
    }),
  });
  const feeder = (board: Board) => circuit({ id: `feeder to ${board.id}`, lines, cable: wide, feeds: [board] });
  const others = load(60, { id: 'lamps', purpose: 'lighting', lines });
  const site = house(
    [feeder(hall('hall 1')), feeder(hall('hall 2')), circuit({ lines, cable: wide, feeds: [others] })],
    {
      phases: of(3),
      cutOut: { kind: of({ standard: 'BS 88-2' }), rating: of(amperes(rating)) },
    },
  );
  const { results } = supplied(site, { premises: 'other', governing: 'connected-load' });
  const own = results.filter((r) => r.check === 'demand-within-cut-out');
  return { verdict: overall(own).verdict, results: own };
};

export const chapter: Chapter = {
  title: 'Load controls that come too late, or not at all',
  introduction:
    'A load control lets vehicles charge with what the house leaves. Between the kettle and the vehicle stand a meter, a controller, a point and a car, each of which takes its time, and each of which may fall silent.',
  hazards: [
    {
      id: 'main-fuse-heated-by-a-slow-load-control',
      title: 'A load control that lets more through than the main fuse carries',
      harm: 'Every time the shower goes on, the fuse of the distributor runs above its rating while the car is still being told. One evening it opens: the house is dark, and nobody in it may replace the fuse.',
      clause:
        'IEC 61851-1:2017, Table A.6 (10 s for the point, 5 s for the vehicle); gates of IEC 60269-1, from memory',
      mustNotSay: 'That the fuse carries the excess.',
      check: 'main-fuse-carries-excess',
      unsafe: {
        what: 'A fuse of 80 A, the limit set to all 80 A, read every 10 s, beside loads that rise by 40 A.',
        told: () => judged(judgeMainFuse({ limit: amperes(80), rise: amperes(40), time: slow, ...fuse })),
      },
      sound: {
        what: 'The same with the limit at 65 A, read every second.',
        told: () => judged(judgeMainFuse({ limit: amperes(65), rise: amperes(40), time: quick, ...fuse })),
      },
    },
    {
      id: 'main-fuse-of-unknown-kind-behind-a-load-control',
      title: 'A main fuse of which nobody knows what it carries',
      harm: 'The limit is set by the number on the carrier. Behind it sits another fuse, which opens, or holds when it should not.',
      clause: 'gates and non-fusing current of IEC 60269-1, from memory',
      mustNotSay: 'That the fuse carries the excess.',
      check: 'main-fuse-carries-excess',
      unsafe: {
        what: 'A limit of 65 A, read every second, on a fuse whose kind has not been read.',
        told: () => judged(judgeMainFuse({ limit: amperes(65), rise: amperes(40), time: quick })),
      },
      sound: {
        what: 'The same on a gG fuse of 80 A.',
        told: () => judged(judgeMainFuse({ limit: amperes(65), rise: amperes(40), time: quick, ...fuse })),
      },
    },
    {
      id: 'silent-meter-beside-a-load-that-nobody-stated',
      title: 'A meter that falls silent beside a load that nobody has stated',
      harm: 'The car goes on at 32 A while the oven and the shower come on: 102 A on a fuse of 80 A, with nobody watching.',
      clause: 'common practice of load control, no source',
      mustNotSay: 'That the control is set up, or that the car may go on at 32 A.',
      unsafe: {
        what: 'A meter at a fuse of 80 A, the worst load of the house, 70 A, not stated.',
        told: () => silenced({ nodes: [{ id: 'intake', limit: line(80) }], points: [drive] }, 70),
      },
      sound: {
        what: 'The same with the demand of the house, 70 A, stated as the worst load: the car falls to 10 A.',
        told: () => silenced({ nodes: [{ id: 'intake', limit: line(80), worst: line(70) }], points: [drive] }, 70),
      },
    },
    {
      id: 'load-control-beside-a-fuse-that-nobody-judged',
      title: 'A limiter set to the rating of the fuse, of which nobody knows how fast it is',
      harm: 'The oven and the shower come on while the car takes 32 A: 102 A on a fuse of 80 A. How long, nobody asked; one evening the fuse opens.',
      clause: 'common practice of load control, no source',
      mustNotSay: 'That the plan passes because there is a load control.',
      check: 'main-fuse-excess-known',
      unsafe: {
        what: 'A limiter of 80 A at the origin beside a demand of 70 A, fuse of 80 A; its data sheet has not been read.',
        told: () => planned('easy-home', [['board.control', limiter('80 A', {})]]),
      },
      sound: {
        what: 'The same; its maker states that, so set, it keeps a fuse of 80 A from operating.',
        told: () => planned('easy-home', [['board.control', limiter('80 A', { keepsFuse: stated, fallback: pauses })]]),
      },
    },
    {
      id: 'load-control-without-its-sensor',
      title: 'A limiter that goes on charging when its sensor is lost',
      harm: 'The clamp has slipped off the tails. The car draws 16 A beside a house that is cooking, and the fuse of the distributor opens at supper time.',
      clause: 'common practice of load control, no source: what is spare has to be at least the fall-back current',
      mustNotSay: 'That the limiter protects the fuse, sensor or not.',
      check: 'load-control-fails-safe',
      unsafe: {
        what: 'A limiter of 80 A beside a demand of 70 A, fuse of 80 A; without its sensor the point goes on at 16 A.',
        told: () => planned('easy-home', [['board.control', limiter('80 A', { keepsFuse: stated, fallback: '16 A' })]]),
      },
      sound: {
        what: 'The same; without its sensor the point goes on at 6 A.',
        told: () => planned('easy-home', [['board.control', limiter('80 A', { keepsFuse: stated, fallback: '6 A' })]]),
      },
    },
    {
      id: 'load-control-whose-fall-back-nobody-stated',
      title: 'A limiter of which nobody asked what it does without its sensor',
      harm: 'The battery of the radio clamp is flat. The car goes on at 32 A beside a house that takes 70 A.',
      clause: 'common practice of load control, no source',
      mustNotSay: 'That a limiter protects the fuse, whatever becomes of its sensor or its link.',
      unsafe: {
        what: 'A limiter of 80 A beside a demand of 70 A, fuse of 80 A; what it leaves running is not stated.',
        told: () => planned('easy-home', [['board.control', limiter('80 A', { keepsFuse: stated })]]),
      },
      sound: {
        what: 'The same; by its instructions the point pauses.',
        told: () => planned('easy-home', [['board.control', limiter('80 A', { keepsFuse: stated, fallback: pauses })]]),
      },
    },
    {
      id: 'load-control-of-a-garage-whose-fall-back-nobody-stated',
      title: 'A limiter in the garage of which nobody asked what it does without its link',
      harm: 'The cable between the clamp and the charge point is cut with the hedge. Car and heater run together until the feeder opens.',
      clause: 'common practice of load control, no source',
      mustNotSay: 'That only a limiter at the main fuse has to fail safe.',
      unsafe: {
        what: 'A limiter at the garage board set to 40 A behind a device of 50 A; what it leaves running is not stated.',
        told: () => planned('garage-submain', garage({ keepsFuse: stated })),
      },
      sound: {
        what: 'The same; by its instructions the point pauses.',
        told: () => planned('garage-submain', garage({ keepsFuse: stated, fallback: pauses })),
      },
    },
    {
      id: 'slow-load-control-beside-the-main-fuse',
      title: 'A limiter that takes a minute',
      harm: 'For a minute each evening the fuse of the distributor carries more than it is made for, until it opens.',
      clause: 'gates of IEC 60269-1, from memory; linear heating of a fuse',
      mustNotSay: 'That the fuse carries the excess.',
      check: 'main-fuse-carries-excess',
      unsafe: {
        what: 'A gG fuse of 80 A, a limiter of 80 A that makes room within 60 s, its maker saying nothing of the fuse.',
        told: () =>
          planned('easy-home', [
            ...gG,
            ['board.control', limiter('80 A', { keepsFuse: none, reaction: known('60 s'), fallback: pauses })],
          ]),
      },
      sound: {
        what: 'The same within 8 s.',
        told: () =>
          planned('easy-home', [
            ...gG,
            ['board.control', limiter('80 A', { keepsFuse: none, reaction: known('8 s'), fallback: pauses })],
          ]),
      },
    },
    {
      id: 'load-control-of-a-garage-that-nobody-judged',
      title: 'A limiter in the garage that may come too late for the device of its feeder',
      harm: 'The heater in the garage comes on while the car charges. The device of the feeder opens, with the freezer on it, while everybody is away.',
      clause: 'common practice of load control, no source',
      mustNotSay: 'That the garage passes because a limiter stands in it.',
      check: 'main-fuse-excess-known',
      unsafe: {
        what: 'A limiter at the garage board set to 40 A behind a device of 50 A, of which nothing else is known.',
        told: () => planned('garage-submain', garage({})),
      },
      sound: {
        what: 'The same; its maker states that it keeps that device from operating.',
        told: () => planned('garage-submain', garage({ keepsFuse: stated, fallback: pauses })),
      },
    },
    {
      id: 'controls-of-two-boards-beside-each-other',
      title: 'Two halls, each held to 250 A, behind 500 A beside other load',
      harm: 'Each control keeps its hall within its limit, and both together overload the cut-out: it opens every evening.',
      clause: 'Circuit theory: what two boards are held to adds up; BS 7671:2018+A2:2022, 433.1.1, two sources',
      mustNotSay: 'That the supply carries what one of the controls holds.',
      check: 'demand-within-cut-out',
      unsafe: {
        what: 'Thirty points of 32 A in each of two halls, held to 250 A each, beside 60 A, behind 500 A: 560 A.',
        told: () => twoHalls(500),
      },
      sound: { what: 'The same behind 630 A.', told: () => twoHalls(630) },
    },
  ],
};
