import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  type Board,
  type ChargePoint,
  type Installation,
  known,
  type Line,
  type Outlet,
  type Run,
  squareMillimetres,
} from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Case, type Chapter, type Hazard } from './hazard.js';
import { premises, soundCircuit, soundHouse, soundPoint } from './sound.js';

const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const three: readonly Line[] = ['L1', 'L2', 'L3'];
const point = (id: string, amps: number, change: Partial<ChargePoint> = {}) =>
  soundPoint({ id, setting: known(amperes(amps)), ...change });

const told = (what: string, installation: () => Installation): Case => ({
  what,
  told: () => assessed(code, installation(), 'ev', premises),
});
const feeding = (what: string, feeds: readonly Outlet[], change: Partial<Run> = {}): Case =>
  told(what, () => soundHouse([soundCircuit({ feeds, ...change })]));
const alone = (what: string, amps = 32): Case => feeding(what, [point('point', amps)]);
const large: Partial<Run> = {
  cable: { ...soundCircuit().cable, area: known(squareMillimetres(10)) },
  device: { ...soundCircuit().device, rating: known(amperes(40)) },
};
const garage: Board = {
  kind: 'board',
  noResidual: known(true, 'seen at the survey'),
  id: 'garage',
  runs: [soundCircuit({ id: 'garage light', feeds: [load(1, { id: 'lamp', purpose: 'lighting' })] })],
};
/** A three-phase circuit in multicore cable. */
const threePhase = (what: string, feeds: readonly Outlet[]): Case => {
  const run = soundCircuit();
  const cable = {
    ...run.cable,
    construction: 'multicore',
    cores: 5,
    loadedCores: known(4),
    protective: 'core',
  } as const;
  return told(what, () => soundHouse([{ ...run, lines: three, cable, feeds }], { phases: known(3, seen) }));
};

const common: Pick<Hazard, 'harm' | 'clause' | 'mustNotSay' | 'check'> = {
  harm: 'A car draws its full current for ten hours. What shares its cable comes on top, until the device opens in the night, or the cable is hot for hours just below that.',
  clause:
    'BS 7671:2018+A2:2022, 314.4 (two sources) and that each point has a final circuit of its own (two sources without a number; 722.533.101 from memory)',
  mustNotSay: 'That the circuit may feed anything besides the point.',
  check: 'own-circuit',
};

export const chapter: Chapter = {
  title: 'Charge points that share a circuit',
  introduction: 'Each charge point has a final circuit of its own, with its own device.',
  hazards: [
    {
      ...common,
      id: 'point-with-socket-outlets',
      title: 'A point added to the circuit of the garage sockets',
      unsafe: feeding('A point of 16 A and socket-outlets on one circuit of 32 A.', [
        point('point', 16),
        load(13, { id: 'sockets', purpose: 'socket-outlets', accessories: known('BS 1363', seen) }),
      ]),
      sound: alone('The point of 16 A on a circuit of its own.', 16),
    },
    {
      ...common,
      id: 'point-with-a-shower',
      title: 'A point on the circuit of the shower',
      unsafe: feeding(
        'A point of 16 A and a shower of 24 A behind 40 A.',
        [point('point', 16), load(24, { id: 'shower', purpose: 'instantaneous-water-heating' })],
        large,
      ),
      sound: alone('The point of 32 A on a circuit of its own.'),
    },
    {
      ...common,
      id: 'point-with-a-lamp',
      title: 'A point that also feeds the lamp over the drive',
      unsafe: feeding('A point of 20 A and a lamp on one circuit.', [
        point('point', 20),
        load(1, { id: 'lamp', purpose: 'lighting' }),
      ]),
      sound: alone('The point of 20 A on a circuit of its own.', 20),
    },
    {
      ...common,
      id: 'two-points-behind-one-device',
      title: 'Two points behind one circuit-breaker',
      unsafe: feeding('Two points of 16 A on one circuit of 32 A.', [point('left', 16), point('right', 16)]),
      sound: told('Two circuits, a point on each.', () =>
        soundHouse([
          soundCircuit({}, { setting: known(amperes(16)) }),
          soundCircuit({ id: 'second' }, { id: 'second point', setting: known(amperes(16)) }),
        ]),
      ),
    },
    {
      ...common,
      id: 'three-points-behind-one-device',
      title: 'Three small points on one circuit',
      unsafe: feeding('Three points of 10 A on one circuit of 32 A.', [
        point('left', 10),
        point('middle', 10),
        point('right', 10),
      ]),
      sound: alone('One point of 10 A on a circuit of its own.', 10),
    },
    {
      ...common,
      id: 'two-points-with-a-declaration',
      title: 'Two points behind one device, with a declaration of their maker',
      mustNotSay: 'That a declaration which nobody has judged takes the place of two circuits.',
      unsafe: feeding(
        'Two points of 16 A; their maker declares that they share 32 A between them.',
        [point('left', 16), point('right', 16)],
        { pointsShare: 'maker (invented): the pair shares 32 A by its own control' },
      ),
      sound: alone('One point of 32 A on a circuit of its own.'),
    },
    {
      ...common,
      id: 'declaration-that-covers-no-sockets',
      title: 'A declaration for points, and a socket-outlet on the same circuit',
      unsafe: feeding(
        'A point and socket-outlets; something is declared of points that share.',
        [point('point', 16), load(10, { id: 'sockets', purpose: 'socket-outlets' })],
        { pointsShare: 'maker (invented): two points may share' },
      ),
      sound: alone('The point on a circuit of its own.', 16),
    },
    {
      ...common,
      id: 'point-and-board-on-one-feeder',
      title: 'A point tapped from the feeder of the garage board',
      unsafe: feeding('One run feeds a point of 16 A and the garage board.', [point('point', 16), garage]),
      sound: told('The point and the feeder each from the house board.', () =>
        soundHouse([
          soundCircuit({}, { setting: known(amperes(16)) }),
          soundCircuit({ id: 'garage feeder', residual: [], feeds: [garage] }),
        ]),
      ),
    },
    {
      ...common,
      id: 'point-listed-as-a-load',
      title: 'A point that is listed among the loads',
      unsafe: feeding('A load for charging of 16 A and a heater of 10 A on one circuit.', [
        load(16, { id: 'charging', purpose: 'charge-point' }),
        load(10, { id: 'heater', purpose: 'space-heating' }),
      ]),
      sound: alone('The point on a circuit of its own.', 16),
    },
    {
      ...common,
      id: 'two-points-on-three-phases',
      title: 'Single-phase points on two lines of one three-phase circuit',
      unsafe: threePhase('A point on L1 and a point on L2 behind one three-pole device.', [
        point('left', 32),
        point('right', 32, { lines: ['L2'] }),
      ]),
      sound: threePhase('One three-phase point of 16 A.', [point('point', 16, { lines: three })]),
    },
    {
      ...common,
      id: 'point-listed-as-a-load-alone',
      title: 'A point that is listed as a load, alone on its circuit',
      harm: 'Nothing is asked of its earth, its direct current and its residual current device: the vehicle outdoors is live when the neutral of the street is lost.',
      clause: 'BS 7671:2018+A2:2022, Section 722: what it asks is asked of charge points',
      mustNotSay: 'That a circuit passes which feeds a charge point of which nothing is known.',
      unsafe: feeding('A load for charging of 32 A behind an RCBO of 30 mA, type A.', [
        load(32, { id: 'charging', purpose: 'charge-point', residualType: known('A', 'its maker') }),
      ]),
      sound: alone('The same, described as a charge point.'),
    },
  ],
};
