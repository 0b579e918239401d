import { bs7671 } from '../../src/codes/bs7671/index.js';
import { amperes, type Cable, known, type Run, type Stretch, squareMillimetres, unknown } from '../../src/index.js';
import { assessed, type Change, type Chapter, planned, type Told } from './hazard.js';
import { metresOf, premises, soundCircuit, soundHouse, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const looked = 'seen at the survey';

const flat = (area: number): Cable => ({
  construction: 'flat-twin-and-earth',
  material: 'copper',
  insulation: 'thermoplastic-70',
  cores: 2,
  area: known(squareMillimetres(area), looked),
  protective: 'bare-core',
});
const armoured = (area: number): Cable => ({
  construction: 'armoured',
  material: 'copper',
  insulation: 'thermosetting-90',
  cores: 3,
  area: known(squareMillimetres(area), looked),
  protective: 'core',
});
const inTheHouse = (change: Partial<Stretch>) => soundStretch({ name: 'house', length: metresOf(12), ...change });
const { containment: _clipped, ...unseen } = inTheHouse({ cable: flat(6), concealedShallow: known(true, looked) });
const inPlaster: Stretch = unseen;
const toTheDrive = (change: Partial<Stretch> = {}) =>
  soundStretch({
    name: 'drive',
    length: metresOf(18),
    jointAccessible: known(true, 'joint box on the wall of the garage'),
    ...change,
  });
const thereBefore = inTheHouse({ existing: true });
const { jointAccessible: _unsaid, ...goingOn } = toTheDrive();
/** A circuit that was there, whose new point has a residual current device at its origin. */
const oldCircuit: Partial<Run> = { existing: true, fromTails: known(false, looked), ring: false };
const told = (run: Partial<Run>): Told => assessed(code, soundHouse([soundCircuit(run)]), 'ev', premises);
const rated = (current: number): Run['device'] => ({
  ...soundCircuit().device,
  rating: known(amperes(current), looked),
});

/** The first section of a wanted circuit lies there, and goes on from a box on the wall. */
const onOldCable: readonly Change[] = [
  ['wanted.0.route.0.existing', true],
  [
    'wanted.0.route.0.cable',
    {
      construction: 'flat-twin-and-earth',
      material: 'copper',
      insulation: 'thermoplastic-70',
      cores: 2,
      protective: 'bare-core',
      area: { known: '6 mm²', by: looked },
    },
  ],
  ['wanted.0.route.1.jointAccessible', { known: true, by: 'box on the wall' }],
];

/** Fused at 50 A behind BS 88-2, then cores of 16 mm² with a protective conductor of their own in conduit. */
const fused = (area: number): Partial<Run> => ({
  device: {
    kind: known({ standard: 'BS 88-2' }, looked),
    rating: known(amperes(50), looked),
    breakingCapacity: known(amperes(80000), looked),
    groupingFactor: known(1, 'data sheet'),
  },
  cable: armoured(16),
  stretches: [
    inTheHouse({}),
    toTheDrive({
      method: known('B', looked),
      containment: 'conduit',
      cable: {
        construction: 'single-core',
        material: 'copper',
        insulation: 'thermoplastic-70',
        cores: 2,
        area: known(squareMillimetres(16), looked),
        protective: 'separate',
        protectiveArea: known(squareMillimetres(area), looked),
      },
    }),
  ],
});

/** Cables that change along the route. */
export const chapter: Chapter = {
  title: 'A change of cable along the route',
  introduction:
    'What lies there already and what was joined to it are two cables behind one device. The device does not know where one ends: the weaker of the two decides, length by length.',
  hazards: [
    {
      id: 'smaller-cable-beyond-a-joint',
      title: 'A smaller cable beyond a joint, behind the device of the larger one',
      harm: 'The device was chosen for the cable at the board. Beyond the joint the thinner one carries 40 A for hours at a capacity of 37 A, and ages until its insulation burns.',
      clause: 'BS 7671 433.1.1, 433.2.1 (from memory)',
      mustNotSay: 'that the circuit is protected against overload',
      check: 'tabulated-capacity',
      unsafe: {
        what: '10 mm² flat cable to a joint box, 4 mm² flat cable onwards, behind 40 A.',
        told: () =>
          told({
            device: rated(40),
            cable: flat(10),
            stretches: [inTheHouse({}), toTheDrive({ cable: flat(4) })],
          }),
      },
      sound: {
        what: '10 mm² flat cable to a joint box, 6 mm² flat cable onwards, behind 32 A.',
        told: () => told({ cable: flat(10), stretches: [inTheHouse({}), toTheDrive({ cable: flat(6) })] }),
      },
    },
    {
      id: 'smaller-cable-ahead-of-a-joint',
      title: 'A new large cable joined to an old small one',
      harm: 'The extension was sized for the point; the cable that feeds it was there before. The old one overheats in the wall, where nobody looks.',
      clause: 'BS 7671 433.1.1 (from memory)',
      mustNotSay: 'that the circuit is protected against overload',
      check: 'tabulated-capacity',
      unsafe: {
        what: 'An existing 2.5 mm² flat cable, 10 mm² armoured cable joined to it, behind 32 A.',
        told: () =>
          told({
            cable: armoured(10),
            stretches: [inTheHouse({ cable: flat(2.5), existing: true }), toTheDrive()],
          }),
      },
      sound: {
        what: 'An existing 6 mm² flat cable, 10 mm² armoured cable joined to it, behind 32 A.',
        told: () =>
          told({
            cable: armoured(10),
            jointsAccessible: known(true, looked),
            stretches: [inTheHouse({ cable: flat(6), existing: true }), toTheDrive()],
          }),
      },
    },
    {
      id: 'small-protective-conductor-beyond-a-joint',
      title: 'A protective conductor too small for the fault, in the last length alone',
      harm: 'An earth fault at the point melts the thin protective conductor before the fuse opens, and the case of the point stays live.',
      clause: 'BS 7671 543.1.3, 434.5.2 (from memory)',
      mustNotSay: 'that the protective conductor withstands the fault',
      check: 'protective-conductor',
      unsafe: {
        what: '16 mm² armoured cable, then 16 mm² singles in conduit with a protective conductor of 1.5 mm², behind a fuse of 50 A.',
        told: () => told(fused(1.5)),
      },
      sound: {
        what: 'The same with a protective conductor of 16 mm².',
        told: () => told(fused(16)),
      },
    },
    {
      id: 'joint-behind-plaster',
      title: 'A joint that nobody can get at',
      harm: 'A screw of the joint loosens with every charge. It glows behind the plaster until the wall burns.',
      clause: 'BS 7671 526.3 (from memory)',
      mustNotSay: 'that the joint may stay where it is',
      check: 'joint-accessible',
      unsafe: {
        what: '6 mm² flat cable joined to another of its kind by screws, and plastered over.',
        told: () =>
          told({ stretches: [inTheHouse({}), toTheDrive({ jointAccessible: known(false, 'plastered over') })] }),
      },
      sound: {
        what: 'The same joint in a box on the wall.',
        told: () => told({ stretches: [inTheHouse({}), toTheDrive()] }),
      },
    },
    {
      id: 'joint-not-looked-at',
      title: 'A joint of which nobody says where it is',
      harm: 'The cable changes somewhere: it was joined behind something, by somebody, in a way that nobody saw.',
      clause: 'BS 7671 526.3 (from memory)',
      mustNotSay: 'that the joint is in order',
      check: 'joint-accessible',
      unsafe: {
        what: '10 mm² flat cable that goes on as 6 mm²; the joint was not found.',
        told: () =>
          told({
            cable: flat(10),
            stretches: [inTheHouse({}), toTheDrive({ cable: flat(6), jointAccessible: unknown('not found') })],
          }),
      },
      sound: {
        what: 'The same, with the joint found in a box on the wall.',
        told: () => told({ cable: flat(10), stretches: [inTheHouse({}), toTheDrive({ cable: flat(6) })] }),
      },
    },
    {
      id: 'old-cable-goes-on-as-its-like',
      title: 'An old cable that goes on as a new one of its kind',
      harm: 'The two are of one size and one make, so the schedule shows one cable. Between them there is a joint, and nobody says where.',
      clause: 'BS 7671 526.3 (from memory)',
      mustNotSay: 'that there is no joint, because the cable is the same on both sides',
      check: 'joint-accessible',
      unsafe: {
        what: '6 mm² flat cable that was there, and new 6 mm² flat cable onwards; nothing is said of where they meet.',
        told: () => told({ jointsAccessible: known(true, looked), stretches: [thereBefore, goingOn] }),
      },
      sound: {
        what: 'The same, joined in a box on the wall.',
        told: () => told({ jointsAccessible: known(true, looked), stretches: [thereBefore, toTheDrive()] }),
      },
    },
    {
      id: 'old-circuit-that-is-lengthened',
      title: 'An old circuit that is lengthened by a new section',
      harm: 'The circuit is on the list of what was there, so the new end of it is taken for old as well. Where it was joined on, behind the new boards of the eaves, nobody looks again.',
      clause: 'BS 7671 526.3 (from memory)',
      mustNotSay: 'that the new section was there before, because the circuit was',
      check: 'joint-accessible',
      unsafe: {
        what: 'A circuit that was there, and said to be new from the eaves on; nothing is said of where they meet.',
        told: () =>
          told({
            ...oldCircuit,
            jointsAccessible: known(true, 'followed'),
            stretches: [inTheHouse({}), { ...goingOn, existing: false }],
          }),
      },
      sound: {
        what: 'The same, joined in a box on the wall.',
        told: () =>
          told({
            ...oldCircuit,
            jointsAccessible: known(true, 'followed'),
            stretches: [inTheHouse({}), toTheDrive({ existing: false })],
          }),
      },
    },
    {
      id: 'old-cable-that-nobody-followed',
      title: 'An old cable that nobody followed',
      harm: 'It went to the old kitchen once and was joined on behind the new one. For the charge point it carries 32 A through that joint every night.',
      clause: 'BS 7671 526.3 (from memory)',
      mustNotSay: 'that it has no joint out of reach, because nobody mentions one',
      check: 'joint-accessible',
      unsafe: {
        what: 'A circuit of 6 mm² flat cable that was there, taken for the charge point; nobody followed it.',
        told: () => told(oldCircuit),
      },
      sound: {
        what: 'The same, followed from the board to its end.',
        told: () => told({ ...oldCircuit, jointsAccessible: known(true, 'followed') }),
      },
    },
    {
      id: 'plan-on-an-old-cable-that-nobody-followed',
      title: 'A plan on the cable of the old shower, which nobody followed',
      harm: 'The cable that lies there is long enough and large enough. That it was cut and joined when the bathroom was tiled shows when the tiles turn brown.',
      clause: 'BS 7671 526.3 (from memory)',
      mustNotSay: 'that the job may be done as planned',
      check: 'joint-accessible',
      unsafe: {
        what: 'Larch Cottage, the first section in 6 mm² flat cable that is there; nothing is said of its joints.',
        told: () => planned('easy-home', onOldCable),
      },
      sound: {
        what: 'The same, the old cable followed from end to end.',
        told: () =>
          planned('easy-home', [...onOldCable, ['wanted.0.jointsAccessible', { known: true, by: 'followed' }]]),
      },
    },
    {
      id: 'drop-over-both-cables',
      title: 'Each length within the limit, both together beyond it',
      harm: 'The extension was worked out by itself. At the point the voltage falls by more than a twentieth, and the vehicle stops charging or draws more.',
      clause: 'BS 7671 525, Appendix 4, 6.4 (from memory)',
      mustNotSay: 'that the voltage drop is within the limit',
      check: 'voltage-drop',
      unsafe: {
        what: '30 m of 6 mm² flat cable (7.0 V) and 40 m of 10 mm² armoured cable (6.0 V) at 32 A: 5.7 %.',
        told: () =>
          told({
            cable: armoured(10),
            stretches: [inTheHouse({ length: metresOf(30), cable: flat(6) }), toTheDrive({ length: metresOf(40) })],
          }),
      },
      sound: {
        what: '12 m of the one (2.8 V) and 40 m of the other (6.0 V): 3.8 %.',
        told: () =>
          told({
            cable: armoured(10),
            stretches: [inTheHouse({ cable: flat(6) }), toTheDrive({ length: metresOf(40) })],
          }),
      },
    },
    {
      id: 'flat-length-behind-plaster',
      title: 'A flat length, close behind the plaster, of a circuit that is armoured elsewhere',
      harm: 'The armour protects whoever digs. Who drives a nail into the wall meets the flat cable of the same circuit, without a residual current device ahead.',
      clause: 'BS 7671 522.6.202, 522.6.203 (two sources)',
      mustNotSay: 'that the concealed cable is protected',
      check: 'residual-current-concealed-cable',
      unsafe: {
        what: 'Flat cable 30 mm deep in the plaster, then armoured cable; the residual current device stands inside the point alone.',
        told: () =>
          told({
            residual: [],
            device: { ...soundCircuit().device, kind: known({ standard: 'EN 60898', type: 'B' }, looked) },
            noResidual: known(true, looked),
            cable: armoured(6),
            stretches: [inPlaster, toTheDrive()],
          }),
      },
      sound: {
        what: 'The same behind a residual current circuit-breaker of 30 mA at the board.',
        told: () =>
          told({
            cable: armoured(6),
            stretches: [inPlaster, toTheDrive()],
          }),
      },
    },
  ],
};
