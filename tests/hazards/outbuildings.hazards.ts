import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  type Board,
  known,
  metres,
  ohms,
  type Run,
  type Stretch,
  type Supply,
  squareMillimetres,
} from '../../src/index.js';
import { assessed, type Chapter, type Told } from './hazard.js';
import { metresOf, premises, soundCircuit, soundHouse, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const looked = 'seen at the survey';

/** An armoured feeder of 16 mm² to the board of a garage. */
const feeder = (board: Partial<Board>): Run =>
  soundCircuit({
    id: 'garage feeder',
    residual: [],
    device: {
      kind: known({ standard: 'BS 88-2' }),
      rating: known(amperes(50)),
      breakingCapacity: known(amperes(80000)),
    },
    cable: {
      construction: 'armoured',
      material: 'copper',
      insulation: 'thermosetting-90',
      cores: 3,
      area: known(squareMillimetres(16), looked),
      protective: 'core',
    },
    stretches: [soundStretch({ length: metresOf(15) })],
    feeds: [
      {
        kind: 'board',
        noResidual: known(true, 'seen at the survey'),
        id: 'garage',
        complete: known(true, looked),
        conditionalRating: known(amperes(16000), looked),
        runs: [soundCircuit({ stretches: [soundStretch({ length: metresOf(5) })] })],
        ...board,
      },
    ],
  });
const garage = (board: Partial<Board>, supply: Partial<Supply> = {}): Told =>
  assessed(code, soundHouse([feeder(board)], supply), 'ev', premises);
/** The feeder for itself, whatever hangs on that board. */
const feederAlone = (board: Partial<Board>): Told =>
  assessed(code, soundHouse([feeder({ runs: [], ...board })]), 'garage feeder', premises);
const bond = (area: number): Partial<Board> => ({ bonding: known(squareMillimetres(area), looked) });
const sheath: Partial<Supply> = { system: known('TN-S', looked), externalImpedance: known(ohms(0.4), 'measured') };
const away: Partial<Board> = { detached: known(true, looked), extraneousParts: known(true, 'water pipe of steel') };

const inGround = (change: Partial<Stretch>): Stretch =>
  soundStretch({
    method: known('D', looked),
    depth: known(metres(0.6), looked),
    soilResistivity: known(2.5 as never, 'assumed'),
    ambient: known(20 as never, looked),
    length: metresOf(10),
    ...change,
  });
const armoured: Run['cable'] = {
  construction: 'armoured',
  material: 'copper',
  insulation: 'thermosetting-90',
  cores: 3,
  area: known(squareMillimetres(6), looked),
  protective: 'core',
};
const buried = (cable: Run['cable'], change: Partial<Stretch>): Told =>
  assessed(code, soundHouse([soundCircuit({ cable, stretches: [inGround(change)] })]), 'ev', premises);
const flat = soundCircuit().cable;
const clause544 = 'BS 7671, 544.1.1 and Table 54.8, one text';
const clause522 = 'BS 7671, 522.8.10, two texts';

export const chapter: Chapter = {
  title: 'Other buildings, and the ground between',
  introduction:
    'A garage at the end of the garden has pipes and soil of its own. The earth of the house goes there with the feeder, and so does the neutral current of the street when the PEN conductor is open.',
  hazards: [
    {
      id: 'garage-with-thin-bonding',
      title: 'A water pipe in the garage, bonded by 4 mm²',
      harm: 'With the PEN conductor open the current of the street leaves by that pipe. 4 mm² glows inside the wooden wall.',
      clause: clause544,
      mustNotSay: 'That a bonding conductor for a TN-S house suits a PME garage.',
      check: 'outbuilding-bonding',
      unsafe: {
        what: 'PME, a detached garage with a steel pipe, bonded by 4 mm².',
        told: () => garage({ ...away, ...bond(4) }),
      },
      sound: { what: 'The same, bonded by 10 mm².', told: () => garage({ ...away, ...bond(10) }) },
    },
    {
      id: 'garage-bonding-not-read',
      title: 'A bonding conductor nobody has looked at',
      harm: 'There may be none. The pipe and the point are an arm’s length apart, at two potentials.',
      clause: clause544,
      mustNotSay: 'That the pipe is bonded.',
      check: 'outbuilding-bonding',
      unsafe: {
        what: 'PME, a detached garage with a steel pipe; the conductor was not read.',
        told: () => garage(away),
      },
      sound: { what: 'The same, read as 16 mm².', told: () => garage({ ...away, ...bond(16) }) },
    },
    {
      id: 'garage-metal-not-looked-for',
      title: 'A garage where nobody looked for pipes',
      harm: 'Behind the boxes a standpipe comes out of the ground.',
      clause: clause544,
      mustNotSay: 'That there is no metal, because none is mentioned.',
      check: 'outbuilding-bonding',
      unsafe: {
        what: 'PME, a detached garage of which no more is said.',
        told: () => garage({ detached: known(true, looked) }),
      },
      sound: {
        what: 'The same, looked for, and nothing found.',
        told: () => garage({ detached: known(true, looked), extraneousParts: known(false, 'wooden floor, no pipes') }),
      },
    },
    {
      id: 'board-of-which-nobody-says-where',
      title: 'A board behind a feeder, somewhere',
      harm: 'It is in the greenhouse.',
      clause: clause544,
      mustNotSay: 'Anything better than for a board in another building.',
      check: 'outbuilding-bonding',
      unsafe: { what: 'PME, a board behind a feeder; the building is not stated.', told: () => garage({}) },
      sound: {
        what: 'The same, in the hall of the house itself.',
        told: () => garage({ detached: known(false, looked) }),
      },
    },
    {
      id: 'feeder-of-which-nobody-says-where-it-ends',
      title: 'A new feeder, and nobody said to which building',
      harm: 'It ends in a greenhouse of steel. Its earth is that of the street, and so is its voltage when the PEN conductor is open.',
      clause: clause544,
      mustNotSay: 'That a distribution circuit is complete without the bonding of the building that it feeds.',
      check: 'outbuilding-bonding',
      unsafe: {
        what: 'PME, the feeder assessed for itself; nothing is said of the building.',
        told: () => feederAlone({}),
      },
      sound: {
        what: 'The same to a wooden shed in which somebody looked for metal.',
        told: () => feederAlone({ detached: known(true, looked), extraneousParts: known(false, 'no pipes') }),
      },
    },
    {
      id: 'feeder-to-a-building-with-thin-bonding',
      title: 'A new feeder to a workshop with a steel frame, bonded by 6 mm²',
      harm: 'The frame stands in the ground. 6 mm² carries what the neutral of the street should carry.',
      clause: clause544,
      mustNotSay: 'That the bonding of the workshop is judged with its circuits alone.',
      check: 'outbuilding-bonding',
      unsafe: {
        what: 'PME, the feeder assessed for itself; steel frame bonded by 6 mm².',
        told: () => feederAlone({ ...away, ...bond(6) }),
      },
      sound: { what: 'The same by 10 mm².', told: () => feederAlone({ ...away, ...bond(10) }) },
    },
    {
      id: 'garage-on-cable-sheath-with-thin-bonding',
      title: 'The same garage on a cable-sheath earth',
      harm: 'No PEN to break, and still a tap at 100 V beside the earthed case of the charge point for as long as a fault flows.',
      clause: 'BS 7671, 411.3.1.2 and 544.1.1, one text; half of the earthing conductor that is due, at least 6 mm²',
      mustNotSay: 'That only PME asks for bonding at another building.',
      check: 'outbuilding-bonding',
      unsafe: {
        what: 'TN-S, Z_e 0.4 Ω, a detached garage with a steel pipe, bonded by 4 mm².',
        told: () => garage({ ...away, ...bond(4) }, sheath),
      },
      sound: {
        what: 'The same by 10 mm²: half of the 16 mm² that 25 mm² tails ask for are 8.',
        told: () => garage({ ...away, ...bond(10) }, sheath),
      },
    },
    {
      id: 'garage-on-cable-sheath-not-bonded',
      title: 'A pipe in the garage that nobody has bonded',
      harm: 'The surveyor saw it and wrote down that there is no conductor.',
      clause: 'BS 7671, 411.3.1.2 and 544.1.1, one text',
      mustNotSay: 'That what is missing is not known.',
      check: 'outbuilding-bonding',
      unsafe: {
        what: 'TN-S, a detached garage with a steel pipe and no conductor to it.',
        told: () => garage({ ...away, ...bond(0) }, sheath),
      },
      sound: {
        what: 'The same where the floor is of wood and no pipe comes in.',
        told: () => garage({ detached: known(true, looked), extraneousParts: known(false, 'looked for') }, sheath),
      },
    },
    {
      id: 'flat-cable-in-the-ground',
      title: 'Twin and earth under the lawn',
      harm: 'A spade, or a mole, or ten wet winters: the sheath opens and the soil is live around it.',
      clause: clause522,
      mustNotSay: 'That the cable is sound because it carries the current.',
      check: 'cable-for-the-ground',
      unsafe: { what: 'Flat cable buried directly, 0.6 m deep.', told: () => buried(flat, { containment: 'buried' }) },
      sound: { what: 'Armoured cable in the same trench.', told: () => buried(armoured, { containment: 'buried' }) },
    },
    {
      id: 'cable-under-the-drive-not-said-how',
      title: 'A cable under the drive, in a duct or not',
      harm: 'Somebody thought that there was a duct. There was sand.',
      clause: clause522,
      mustNotSay: 'That it lies in a duct.',
      check: 'cable-for-the-ground',
      unsafe: {
        what: 'A sheathed cable without armour in the ground; how it lies is not stated.',
        told: () => {
          const { containment: _unsaid, ...bare } = inGround({});
          const cable: Run['cable'] = { ...armoured, construction: 'multicore' };
          return assessed(code, soundHouse([soundCircuit({ cable, stretches: [bare] })]), 'ev', premises);
        },
      },
      sound: { what: 'Armoured cable, buried.', told: () => buried(armoured, { containment: 'buried' }) },
    },
  ],
};
