import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  type Amperes,
  amperes,
  type Board,
  type Fact,
  known,
  type Line,
  type Load,
  type Outlet,
  type ResidualDevice,
  type Run,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Case, type Chapter, type Hazard } from './hazard.js';
import { premises, soundCircuit, soundHouse, soundPoint } from './sound.js';

const CIRCUIT_BREAKER: Run['device']['kind'] = known({ standard: 'EN 60898', type: 'B' }, 'marking');
const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const three: readonly Line[] = ['L1', 'L2', 'L3'];
const source = (amps: number, change: Partial<Load> = {}): Load =>
  load(amps, { id: 'inverter', purpose: 'generation', plugged: known(false, seen), ...change });
const heater = (amps: number, change: Partial<Load> = {}): Load =>
  load(amps, { id: 'heater', purpose: 'space-heating', ...change });

/** A circuit on a board that is rated for supply and source together. */
const told = (
  what: string,
  feeds: readonly Outlet[],
  of: {
    readonly area?: number;
    readonly rating?: number;
    /** What differs of the board. */
    readonly board?: Partial<Board>;
  } & Partial<Pick<Run, 'lines' | 'residual' | 'ring'>> = {},
): Case => ({
  what,
  told: () => {
    const run = soundCircuit();
    const { area = 2.5, rating = 20, lines = ['L1'], board: itsOwn = {}, ...rest } = of;
    const own: Run = {
      ...run,
      residual: [],
      ...rest,
      lines,
      device: {
        ...run.device,
        kind: of.residual ? run.device.kind : CIRCUIT_BREAKER,
        rating: known(amperes(rating), 'marking'),
      },
      cable: {
        ...run.cable,
        construction: 'multicore',
        cores: lines.length === 3 ? 5 : 3,
        ...(lines.length === 3 ? { loadedCores: known(4) } : {}),
        protective: 'core',
        area: known(squareMillimetres(area), 'marking'),
      },
      feeds,
    };
    const supply = lines.length === 3 ? { phases: known(3 as const, seen) } : {};
    const board = { rating: known(amperes(160), 'marking'), ...itsOwn };
    return assessed(code, soundHouse([own], supply, board), 'ev', { ...premises, makersLetThrough: 12_000 });
  },
});
/** A board of 100 A behind a switch-fuse. */
const fusedBoard = (fuseAhead: Fact<Amperes>): Partial<Board> => ({
  rating: known(amperes(100), 'marking'),
  mainSwitch: { rating: known(amperes(100), seen), fuseAhead },
});
/** The point on the board of the house; two sources on another one, which leaves the tails ahead of it. */
const apart = (what: string, fuse: number, boardRating: Board['rating'] = known(amperes(100), 'label')): Case => ({
  what,
  told: () => {
    const run = soundCircuit();
    const sourceRun = (id: string): Run => ({
      ...run,
      id,
      existing: true,
      device: { ...run.device, rating: known(amperes(20), 'marking') },
      feeds: [source(16, { id: `${id} inverter` })],
    });
    const feeder: Run = {
      ...run,
      id: 'to the sources',
      existing: true,
      jointsAccessible: known(true, 'followed'),
      residual: [],
      noResidual: known(true, seen),
      fromTails: known(true, seen),
      device: { ...run.device, rating: known(amperes(fuse), 'marking') },
      feeds: [
        {
          kind: 'board',
          id: 'sources',
          ...(boardRating ? { rating: boardRating } : {}),
          noResidual: known(true, seen),
          runs: [sourceRun('solar'), sourceRun('battery')],
        },
      ],
    };
    return assessed(code, soundHouse([run, feeder], {}, { rating: known(amperes(100), 'label') }), 'ev', premises);
  },
});
const device = (opensAllLive: ResidualDevice['opensAllLive']): Pick<Run, 'residual'> => ({
  residual: [
    {
      position: 'origin-of-circuit',
      type: known('B', seen),
      rating: known(amperes(0.03), seen),
      delay: known('general', seen),
      bidirectional: known(true, seen),
      ...(opensAllLive ? { opensAllLive } : {}),
    },
  ],
});

const common: Pick<Hazard, 'harm' | 'clause' | 'mustNotSay' | 'check'> = {
  harm: 'Supply and source feed the cable together. The device sees the one and not the other: the cable burns while nothing opens.',
  clause:
    'BS 7671:2018+A2:2022, 551.7.2 (first condition in two texts of 2008, the others from memory; wording of 2022 not seen)',
  mustNotSay: 'That the cable is protected because the device is small enough for it.',
  check: 'infeed-within-capacity',
};
const fixed: Pick<Hazard, 'check' | 'harm' | 'mustNotSay'> = {
  check: 'infeed-fixed',
  harm: 'Somebody pulls the plug and touches its pins while the source still feeds them.',
  mustNotSay: 'That a source may be plugged in among loads.',
};
const allLive: Pick<Hazard, 'check' | 'harm' | 'mustNotSay'> = {
  check: 'infeed-opens-all-live',
  harm: 'After an earth fault the neutral stays connected, and the source goes on feeding the person who touches the fault.',
  mustNotSay: 'That a device which opens the line alone protects a circuit with a source.',
};

export const chapter: Chapter = {
  title: 'Sources on circuits with loads',
  introduction:
    'A device protects a cable against what comes from the supply. Where a source feeds in behind it, the cable has to carry both.',
  hazards: [
    {
      ...common,
      id: 'sources-apart-on-a-board-too-small',
      title: 'Sources on a board of their own that is too small for them',
      check: 'board-rating',
      harm: 'The busbar carries what the fuse and both sources feed into it, and no device sees the sum. It overheats in its enclosure.',
      clause: 'BS 7671:2018+A2:2022, 551.7.2, from memory',
      mustNotSay: 'That what stands on a board of its own is no matter, whatever that board bears.',
      unsafe: apart('Two sources behind 20 A each and a switch-fuse of 80 A, on a board of 100 A.', 80),
      sound: apart('The same behind a switch-fuse of 45 A.', 45),
    },
    {
      ...common,
      id: 'sources-apart-on-a-board-not-read',
      title: 'Sources on a board of their own whose rating nobody has read',
      check: 'board-rating',
      harm: 'The busbar carries what the fuse and both sources feed into it, and no device sees the sum. It overheats in its enclosure.',
      clause: 'BS 7671:2018+A2:2022, 551.7.2, from memory',
      mustNotSay: 'That a board bears what is connected to it.',
      unsafe: apart('The rating of their board is not known.', 45, unknown('its label')),
      sound: apart('It reads 100 A, behind a switch-fuse of 45 A.', 45),
    },
    {
      ...common,
      id: 'inverter-on-a-heater-circuit',
      title: 'An inverter connected to the circuit of a heater',
      unsafe: told('2.5 mm² (27 A) behind 20 A: a heater of 16 A and an inverter of 16 A.', [heater(16), source(16)]),
      sound: told('The same in 6 mm², which carries 20 A and 16 A.', [heater(16), source(16)], { area: 6 }),
    },
    {
      ...common,
      id: 'battery-on-a-water-heater-circuit',
      title: 'A battery on the circuit of a water heater',
      unsafe: told(
        '4 mm² behind 32 A: a water heater of 13 A and a battery of 16 A.',
        [
          load(13, { id: 'water', purpose: 'thermostatic-water-heating' }),
          source(16, { id: 'battery', purpose: 'storage' }),
        ],
        { area: 4, rating: 32 },
      ),
      sound: told('The battery alone on that circuit.', [source(16, { id: 'battery', purpose: 'storage' })], {
        area: 4,
        rating: 32,
      }),
    },
    {
      ...common,
      id: 'two-inverters-and-a-load',
      title: 'Two small inverters that add up',
      unsafe: told('2.5 mm² behind 20 A: two inverters of 5 A and a heater.', [
        heater(10),
        source(5),
        source(5, { id: 'second inverter' }),
      ]),
      sound: told('One of them, on 2.5 mm².', [heater(10), source(5)]),
    },
    {
      ...common,
      id: 'source-whose-current-is-not-known',
      title: 'A source whose rating plate nobody has read',
      mustNotSay: 'That it feeds in nothing.',
      unsafe: told(
        '6 mm² behind 20 A: a heater and a source of unknown current.',
        [heater(10), source(0, { current: unknown('rating plate') })],
        { area: 6 },
      ),
      sound: told('The plate reads 16 A.', [heater(10), source(16)], { area: 6 }),
    },
    {
      ...common,
      id: 'source-and-load-on-different-lines',
      title: 'A source on one line of a three-phase circuit',
      unsafe: told(
        '2.5 mm² behind 20 A on three lines: a heater on L1, a source of 16 A on L2.',
        [heater(10), source(16, { lines: ['L2'] })],
        { lines: three },
      ),
      sound: told('The same in 6 mm².', [heater(10), source(16, { lines: ['L2'] })], { lines: three, area: 6 }),
    },
    {
      ...common,
      id: 'source-on-a-ring',
      title: 'An inverter on a ring of socket-outlets',
      unsafe: told(
        '2.5 mm² ring behind 32 A: socket-outlets and an inverter of 4 A.',
        [load(20, { id: 'sockets', purpose: 'socket-outlets', accessories: known('BS 1363', seen) }), source(4)],
        { ring: true, rating: 32, ...device(known(true, seen)) },
      ),
      sound: told('The inverter on a circuit of its own.', [source(4)]),
    },
    {
      ...common,
      id: 'vehicle-that-feeds-back-among-loads',
      title: 'A vehicle that feeds back into a circuit with a heater',
      unsafe: told(
        '4 mm² behind 32 A: a point that feeds back 16 A and a heater of 13 A.',
        [soundPoint({ setting: known(amperes(16)), bidirectional: true }), heater(13)],
        { area: 4, rating: 32, ...device(known(true, seen)) },
      ),
      sound: told('The heater alone.', [heater(13)], { area: 4, rating: 32 }),
    },
    {
      ...common,
      ...fixed,
      id: 'plug-in-set-on-a-radial',
      title: 'A balcony set plugged into a radial',
      unsafe: told('2.5 mm² behind 20 A: a heater, and a set of 3.5 A by plug.', [
        heater(10),
        source(3.5, { plugged: known(true, seen) }),
      ]),
      sound: told('The same set wired in.', [heater(10), source(3.5)]),
    },
    {
      ...common,
      ...fixed,
      id: 'source-whose-connection-is-not-known',
      title: 'A source of which nobody says how it is connected',
      unsafe: told('2.5 mm² behind 20 A: a heater, and a source of 3.5 A; by plug or not is left out.', [
        heater(10),
        load(3.5, { id: 'inverter', purpose: 'generation' }),
      ]),
      sound: told('The same, seen to be wired in.', [heater(10), source(3.5)]),
    },
    {
      ...common,
      ...allLive,
      id: 'residual-device-that-opens-the-line-alone',
      title: 'A single-pole RCBO ahead of a source among loads',
      unsafe: told('6 mm² behind a 20 A RCBO that leaves the neutral connected.', [heater(10), source(16)], {
        area: 6,
        ...device(known(false, seen)),
      }),
      sound: told('The same behind an RCBO that opens line and neutral.', [heater(10), source(16)], {
        area: 6,
        ...device(known(true, seen)),
      }),
    },
    {
      ...common,
      ...allLive,
      id: 'residual-device-of-unknown-poles',
      title: 'An RCBO whose poles nobody has looked at',
      unsafe: told('6 mm² behind a 20 A RCBO; whether it opens the neutral is not known.', [heater(10), source(16)], {
        area: 6,
        ...device(undefined),
      }),
      sound: told('No residual current device is needed here, and there is none.', [heater(10), source(16)], {
        area: 6,
      }),
    },
    {
      id: 'board-fed-from-both-sides',
      title: 'A board of 100 A between a fuse of 100 A and the sun',
      harm: 'At noon the roof gives 20 A and the street 100 A, and the busbar of the board, made for 100 A, carries what no device sees.',
      clause: 'BS 7671:2018+A2:2022, 551.7.2, from memory',
      mustNotSay: 'That a switch-fuse helps whatever is in it.',
      check: 'board-rating',
      unsafe: told(
        'Inverter of 16 A behind 20 A; of a switch-fuse in the tails nobody has read the fuse.',
        [source(16)],
        {
          area: 6,
          board: fusedBoard(unknown('its label')),
        },
      ),
      sound: told('The same, the fuse in it being of 80 A.', [source(16)], {
        area: 6,
        board: fusedBoard(known(amperes(80), 'label')),
      }),
    },
  ],
};
