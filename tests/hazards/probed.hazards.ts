import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  type Board,
  type Cable,
  type ChargePoint,
  celsius,
  kelvinMetresPerWatt,
  known,
  type Line,
  metres,
  ohms,
  type Run,
  ratio,
  type Stretch,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import type { Chapter } from './hazard.js';
import { armoured, breaker, garageFeeder, pointAlone, rcd, slow, told, tt } from './residual-circuits.js';
import { metresOf, soundCircuit, soundPoint, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const looked = 'seen at the survey';
const seventy = known(celsius(70), 'instructions of the point');

/** A point on an earth of its own, behind a device of 30 mA. */
const islanded = (point: Partial<ChargePoint>): Run =>
  soundCircuit({ feeds: [soundPoint({ openPenDevice: known('none', looked), ...point })] });
const rod = (away: number): Partial<ChargePoint> => ({
  earthing: 'tt-earthing',
  electrode: { resistance: known(ohms(50), 'measured'), separation: known(metres(away), 'measured') },
});

/** 4 mm² armoured cable in a duct. */
const inDuct = (change: Partial<Stretch>): Run =>
  pointAlone({
    cable: armoured(4),
    terminalTemperature: seventy,
    stretches: [
      soundStretch({
        method: known('D1', looked),
        containment: 'duct',
        depth: known(metres(0.6), looked),
        soilResistivity: known(kelvinMetresPerWatt(2.5), 'measured'),
        ambient: known(celsius(20), 'customary'),
        ...change,
      }),
    ],
  });
const ducts = (circuits: number): Partial<Stretch> => ({
  group: { arrangement: 'ducts-in-ground', circuits: known(circuits, looked), unequal: known(false, looked) },
});

const lines: readonly Line[] = ['L1', 'L2', 'L3'];
const fiveCores = (area: number): Cable => ({
  construction: 'armoured',
  material: 'copper',
  insulation: 'thermosetting-90',
  cores: 5,
  loadedCores: known(3, looked),
  area: known(squareMillimetres(area), looked),
  protective: 'core',
});
/** A three-phase point on armoured cable. */
const three = (harmonic: number): Run =>
  soundCircuit({
    lines,
    device: breaker(32),
    residual: [],
    cable: fiveCores(6),
    terminalTemperature: seventy,
    thirdHarmonic: known(ratio(harmonic), 'data sheet'),
    feeds: [
      soundPoint({
        lines,
        openPenDevice: known('open-pen-detection-touch-voltage', looked),
        earthing: 'open-pen-detection-touch-voltage',
      }),
    ],
  });
const threePhase = {
  phases: known(3 as const, looked),
  prospectiveCurrent: known(amperes(2000), 'measured'),
  externalImpedance: known(ohms(0.25), 'measured'),
};

/** A garage with charge points and nothing else. */
const garage = (count: number): readonly Run[] => [
  garageFeeder({
    feeds: [
      {
        kind: 'board',
        id: 'garage',
        complete: known(true, looked),
        noResidual: known(true, looked),
        detached: known(true, looked),
        extraneousParts: known(false, looked),
        conditionalRating: known(amperes(16_000), 'its label'),
        runs: [1, 2].slice(0, count).map((n) => pointAlone({ id: `point ${n}`, feeds: [soundPoint({ id: `p${n}` })] })),
      },
    ],
  }),
];

/** The circuit of a point that leaves the tails behind a switch-fuse of its own, ahead of the board. */
const fromTails = (change: Partial<Run> = {}): Run => pointAlone({ fromTails: known(true, looked), ...change });
const strong = {
  externalImpedance: known(ohms(0.025), 'measured'),
  prospectiveCurrent: known(amperes(12_000), 'measured'),
};
const hidden = fromTails({ stretches: [soundStretch({ concealedShallow: known(true, looked) })] });
const withDevice = (serves?: readonly string[]): Partial<Board> => ({
  residual: [{ ...rcd(30, { position: 'origin-of-installation' }), ...(serves ? { serves } : {}) }],
});
const withSlow = (serves?: readonly string[]): Partial<Board> => ({
  residual: [{ ...slow({ rating: known(amperes(0.1), looked) }), ...(serves ? { serves } : {}) }],
});

const plastered = pointAlone({ stretches: [soundStretch({ concealedShallow: known(true, looked) })] });
/** Single cores in conduit that is no protective conductor. */
const inConduit = (protectiveMaterial: 'copper' | 'steel'): Run =>
  pointAlone({
    cable: {
      construction: 'single-core',
      material: 'copper',
      insulation: 'thermoplastic-70',
      cores: 2,
      area: known(squareMillimetres(6), looked),
      protective: 'separate',
      protectiveArea: known(squareMillimetres(2.5), looked),
      protectiveMaterial,
    },
    stretches: [soundStretch({ method: known('B', looked), containment: 'conduit' })],
  });

export const chapter: Chapter = {
  title: 'What an inspector tried',
  introduction:
    'Other cables, other places, other earths: each tried from outside, on a library that does not know what is wrong.',
  hazards: [
    {
      id: 'rod-beside-metal-on-the-earth-of-the-supply',
      title: 'A rod for the point, a metre from the water pipe',
      harm: 'With the neutral of the street lost the pipe is at 200 V. One hand on it and one on the car.',
      clause: 'BS 7671:2018+A2:2022, 411.3.1.1 and 417.3; arm’s reach, one source',
      mustNotSay: 'That the point is safe because it has an earth of its own.',
      check: 'tt-out-of-reach',
      unsafe: {
        what: 'A rod of 50 Ω; a pipe on the earth of the supply 1 m from the point.',
        told: () => told(code, [islanded(rod(1))]),
      },
      sound: { what: 'The same; the nearest such metal is 12 m away.', told: () => told(code, [islanded(rod(12))]) },
    },
    {
      id: 'two-vehicles-behind-one-isolating-transformer',
      title: 'One isolating transformer, two vehicles',
      harm: 'A fault in each, and the two cars are at the full voltage to each other.',
      clause: 'BS 7671:2018+A2:2022, 722.413.1.2: one vehicle, from memory',
      mustNotSay: 'That separation protects two vehicles at once.',
      check: 'one-vehicle-separated',
      unsafe: {
        what: 'Electrical separation, two vehicles behind the transformer.',
        told: () => told(code, [islanded({ earthing: 'electrical-separation', vehiclesSeparated: known(2, looked) })]),
      },
      sound: {
        what: 'One vehicle.',
        told: () => told(code, [islanded({ earthing: 'electrical-separation', vehiclesSeparated: known(1, looked) })]),
      },
    },
    {
      id: 'point-that-leaks-half-of-what-opens-its-device',
      title: 'A point that leaks 12 mA, behind 30 mA',
      harm: 'It opens on the first wet morning, and the next one who is called takes a device of 300 mA from the van.',
      clause: 'BS 7671:2018+A2:2022, 531.3.2: 30 % of the rated residual current, from memory',
      mustNotSay: 'That a device of 30 mA stays closed on 12 mA of standing current.',
      check: 'standing-current',
      unsafe: {
        what: 'Standing leakage of 12 mA by the data sheet.',
        told: () => told(code, [soundCircuit({}, { standingLeakage: known(amperes(0.012), 'data sheet') })]),
      },
      sound: {
        what: 'Of 6 mA.',
        told: () => told(code, [soundCircuit({}, { standingLeakage: known(amperes(0.006), 'data sheet') })]),
      },
    },
    {
      id: 'four-ducts-side-by-side',
      title: 'Four cables in ducts that touch',
      harm: 'Each warms its neighbours under the drive all night. The fault shows years later, as a wet hole.',
      clause: 'BS 7671:2018+A2:2022, Appendix 4, Table 4C3, from memory',
      mustNotSay: 'That a cable in a duct carries the same beside three others.',
      check: 'tabulated-capacity',
      unsafe: { what: '4 mm² armoured in the middle of four ducts, 32 A.', told: () => told(code, [inDuct(ducts(4))]) },
      sound: {
        what: '10 mm² armoured there.',
        told: () => told(code, [{ ...inDuct(ducts(4)), cable: armoured(10) }]),
      },
    },
    {
      id: 'soil-that-nobody-measured',
      title: 'A duct through builder’s rubble',
      harm: 'Dry rubble holds the heat of the cable like a blanket.',
      clause: 'BS 7671:2018+A2:2022, Appendix 4, Table 4B3, from memory',
      mustNotSay: 'That the ground is as good as the tables take it.',
      check: 'tabulated-capacity',
      unsafe: {
        what: '4 mm² armoured in a duct, the resistivity of the soil not known.',
        told: () => told(code, [inDuct({ soilResistivity: unknown('measure it, or take the worst') })]),
      },
      sound: {
        what: '6 mm² in soil of 2.5 K·m/W.',
        told: () => told(code, [{ ...inDuct({}), cable: armoured(6) }]),
      },
    },
    {
      id: 'harmonics-in-the-neutral-of-a-three-phase-point',
      title: 'A charge point whose neutral carries more than its lines',
      harm: 'Nothing protects the neutral, and it is in the same sheath.',
      clause: 'BS 7671:2018+A2:2022, 523.6.3 and Appendix 4, 5.5, from memory',
      mustNotSay: 'That three loaded conductors are three.',
      unsafe: {
        what: '6 mm², 32 A on three lines, 45 % of third harmonics by the data sheet.',
        told: () => told(code, [three(0.45)], threePhase),
      },
      sound: { what: 'No third harmonics.', told: () => told(code, [three(0)], threePhase) },
    },
    {
      id: 'second-point-on-the-feeder-of-a-garage',
      title: 'A second car in the garage',
      harm: 'Every evening when both come home the feeder opens; one evening somebody fits a larger fuse.',
      clause: 'BS 7671:2018+A2:2022, 433.1.1, two sources',
      mustNotSay: 'That two vehicles do not charge at once.',
      check: 'device-carries-load',
      unsafe: {
        what: 'A feeder behind 50 A, two points of 32 A at its end, nothing that curtails them.',
        told: () => told(code, garage(2)),
      },
      sound: {
        what: 'One point.',
        told: () => told(code, garage(1)),
      },
    },
    {
      id: 'route-of-no-length',
      title: 'A route of 0 m',
      harm: 'Nobody measured it. With no length there is no voltage drop, and every fault is cleared at once.',
      clause: 'A nought is no measurement: common practice, no source',
      mustNotSay: 'Drop and disconnection of a cable that has no length.',
      unsafe: {
        what: 'A route whose only stretch is 0 m long.',
        told: () => told(code, [soundCircuit({ stretches: [soundStretch({ length: metresOf(0) })] })]),
      },
      sound: {
        what: 'Half a metre: the point hangs beside the board.',
        told: () => told(code, [soundCircuit({ stretches: [soundStretch({ length: metresOf(0.5) })] })]),
      },
    },
    {
      id: 'tails-ahead-of-a-marked-board',
      title: 'A switch-fuse in the tails, and a mark on the board behind it',
      harm: 'The board is made for 16 kA, the box beside the meter is not. Its device bursts in the first fault.',
      clause: 'BS 7671:2018+A2:2022, 434.5.1 and 536.5, two sources',
      mustNotSay: 'That the rating of the board holds for an enclosure of its own ahead of it.',
      check: 'breaking-capacity',
      unsafe: {
        what: '12 kA, a device of 6 kA in an enclosure of its own in the tails, the board marked 16 kA.',
        told: () => told(code, [fromTails()], strong),
      },
      sound: {
        what: 'The same, its maker declaring 16 kA for that enclosure with its device.',
        told: () =>
          told(
            code,
            [fromTails({ device: { ...breaker(32), conditionalRating: known(amperes(16_000), 'its label') } })],
            strong,
          ),
      },
    },
    {
      id: 'tails-ahead-of-the-device-of-the-board',
      title: 'A circuit from the tails, and a residual current device on the board behind them',
      harm: 'The device sits in the board, and the cable in the plaster does not pass it. The nail for a picture finds 230 V.',
      clause: 'BS 7671:2018+A2:2022, 522.6.202, two sources',
      mustNotSay: 'That a device on the board protects what leaves the tails ahead of it.',
      check: 'residual-current-position',
      unsafe: {
        what: 'From the tails, flat cable in the plaster, 30 mA on the board, 30 mA inside the point.',
        told: () => told(code, [hidden], {}, withDevice()),
      },
      sound: {
        what: 'The same, the device standing ahead of both: the survey names the circuits that it serves.',
        told: () => told(code, [hidden], {}, withDevice(['ev'])),
      },
    },
    {
      id: 'tt-tails-ahead-of-the-slow-device',
      title: 'TT, a circuit from the tails, and the slow device on the board',
      harm: 'On a rod of 40 Ω nothing opens. Whatever is earthed in the house is live until somebody draws the fuse.',
      clause: 'BS 7671:2018+A2:2022, 411.5.2, two sources',
      mustNotSay: 'That a fault in the new cable is cleared by a device that it does not pass.',
      check: 'automatic-disconnection',
      unsafe: {
        what: 'TT, from the tails, 100 mA, type S, on the board.',
        told: () => told(code, [fromTails()], tt, withSlow()),
      },
      sound: {
        what: 'The same device in the tails ahead of both, as the survey names.',
        told: () => told(code, [fromTails()], tt, withSlow(['ev'])),
      },
    },
    {
      id: 'protective-conductor-of-steel',
      title: 'A steel wire as protective conductor, reckoned as copper',
      harm: 'Steel resists eight times what copper does. The case stays live for as long as somebody holds it.',
      clause: 'Physics: resistivity of steel; BS 7671:2018+A2:2022, 411.4.4, two sources',
      mustNotSay: 'That 2.5 mm² of steel clear a fault like 2.5 mm² of copper.',
      unsafe: {
        what: 'Single cores of 6 mm² in plastic conduit, a steel wire of 2.5 mm² as protective conductor, 32 A type B.',
        told: () => told(code, [inConduit('steel')]),
      },
      sound: { what: 'The same with copper.', told: () => told(code, [inConduit('copper')]) },
    },
    {
      id: 'device-of-the-board-that-is-not-on-it',
      title: 'A residual current device on the list of the board that sits in a point',
      harm: 'The list was typed off a photograph of the point. The cable in the plaster has nothing ahead of it.',
      clause: 'BS 7671:2018+A2:2022, 522.6.202, two sources',
      mustNotSay: 'That a device inside equipment protects the cable that leads there.',
      check: 'residual-current-position',
      unsafe: {
        what: 'Flat cable in the plaster; 30 mA on the list of the board, said to be inside equipment.',
        told: () => told(code, [plastered], {}, { residual: [rcd(30, { position: 'inside-equipment' })] }),
      },
      sound: {
        what: 'The same device on the board.',
        told: () => told(code, [plastered], {}, { residual: [rcd(30, { position: 'origin-of-installation' })] }),
      },
    },
    {
      id: 'tails-or-board-residual-device',
      title: 'A circuit from the tails, or from a way of the board that has the residual current device',
      harm: 'It leaves the tails. The device that was counted on sits on a board that its current never sees.',
      clause: 'BS 7671:2018+A2:2022, 522.6.202, 415.1.1, two sources; physics: a device sees what flows through it',
      mustNotSay: 'That a circuit of which nobody has seen where it leaves is behind the devices of the board.',
      check: 'residual-current-concealed-cable',
      unsafe: {
        what: 'Flat cable in the plaster, 30 mA on the board; whether it leaves the tails is not known.',
        told: () => told(code, [{ ...hidden, fromTails: unknown('follow it to where it leaves') }], {}, withDevice()),
      },
      sound: {
        what: 'The same, seen to leave a way of the board.',
        told: () => told(code, [{ ...hidden, fromTails: known(false, looked) }], {}, withDevice()),
      },
    },
    {
      id: 'tails-or-board-fault-rating',
      title: 'A circuit from the tails, or from a way of the board that is marked 16 kA',
      harm: 'The switch-fuse in the tails has a circuit-breaker of 6 kA in a box of which nobody declared anything. At 12 kA it bursts.',
      clause: 'BS 7671:2018+A2:2022, 434.5.1, two sources; 536.5, from memory',
      mustNotSay: 'That what is declared of the board holds for a device that may stand elsewhere.',
      check: 'breaking-capacity',
      unsafe: {
        what: '12 kA, a device of 6 kA, the board marked 16 kA; whether the circuit leaves the tails is not known.',
        told: () => told(code, [pointAlone({ fromTails: unknown('follow it to where it leaves') })], strong),
      },
      sound: {
        what: 'The same, seen to leave a way of the board.',
        told: () => told(code, [pointAlone({ fromTails: known(false, looked) })], strong),
      },
    },
  ],
};
