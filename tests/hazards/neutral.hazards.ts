import { bs7671 } from '../../src/codes/bs7671/index.js';
import { amperes, type Cable, known, type Line, ohms, type Run, type Supply } from '../../src/index.js';
import { load } from '../support/house.js';
import type { Case, Chapter } from './hazard.js';
import { armoured, breaker, garageFeeder, pointAlone, told } from './residual-circuits.js';
import { soundCircuit, soundPoint } from './sound.js';

const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const three: readonly Line[] = ['L1', 'L2', 'L3'];
const threePhase: Partial<Supply> = { phases: known(3, seen), prospectiveCurrent: known(amperes(1600), 'measured') };
/** Armoured cable of 6 mm², one of its cores protective. */
const cores = (number: Cable['cores']): Cable => ({
  ...armoured(6),
  cores: number,
  ...(number === 5 ? { loadedCores: known(4, seen) } : {}),
});
const charging = (what: string, cable: Cable, lines: readonly Line[] = ['L1']): Case => ({
  what,
  told: () =>
    told(code, [soundCircuit({ lines, cable, feeds: [soundPoint({ lines })] })], lines.length === 3 ? threePhase : {}),
});
const motor: Run = soundCircuit({
  id: 'lift',
  lines: three,
  device: breaker(16),
  residual: [],
  cable: cores(4),
  feeds: [load(10, { id: 'lift motor', purpose: 'motor', lines: three, residualType: known('AC', 'its maker') })],
});

/** A point in the garage on this line, behind a distribution circuit on L1 of a three-phase supply. */
const inGarage = (what: string, line: Line): Case => ({
  what,
  told: () =>
    told(code, [garageFeeder({}, [pointAlone({ lines: [line] }, { lines: [line] })])], {
      ...threePhase,
      externalImpedance: known(ohms(0.28), 'measured'),
    }),
});

export const chapter: Chapter = {
  title: 'A conductor that is not there',
  introduction:
    'A cable that has one core too few is found out on the day, and then the earth is used as the neutral, or nothing as the earth.',
  hazards: [
    {
      id: 'three-phase-point-without-neutral',
      title: 'A three-phase charge point on a cable of four cores, one of them the earth',
      harm: 'A vehicle that charges on one line returns its current by the earth, or the point stands without one.',
      clause: 'BS 7671:2018+A2:2022 314.4, 543.4.1; IEC 61851-1: points have a neutral; from memory',
      mustNotSay: 'that four cores, one of them protective, are three lines and neutral',
      unsafe: charging('Four cores, one of them protective.', cores(4), three),
      sound: charging('Five cores.', cores(5), three),
    },
    {
      id: 'two-cores-one-of-them-protective',
      title: 'A charge point on a cable of two cores, one of them the earth',
      harm: 'Line and earth are there and no neutral: somebody takes the armour for one.',
      clause: 'BS 7671:2018+A2:2022 543.4.1, from memory',
      mustNotSay: 'that a line and a protective core feed a point',
      unsafe: charging('Two cores, one of them protective.', cores(2)),
      sound: charging('Three cores, one of them protective.', cores(3)),
    },
    {
      id: 'motor-on-three-cores-one-of-them-protective',
      title: 'A three-phase motor on three cores, one of them the earth',
      harm: 'One line is missing: the motor hums and burns, or its frame is made live.',
      clause: 'BS 7671:2018+A2:2022 543.1.1, from memory',
      mustNotSay: 'that three cores, one of them protective, are three lines',
      unsafe: {
        what: 'Three cores, one of them protective.',
        told: () => told(code, [{ ...motor, cable: cores(3) }], threePhase),
      },
      sound: { what: 'Four: a motor has no neutral.', told: () => told(code, [motor], threePhase) },
    },
    {
      id: 'line-that-the-feeder-does-not-have',
      title: 'A point in the garage on a line that does not come to the garage',
      harm: 'What the vehicle draws is counted on no conductor: the cable to the garage is judged without it, and carries it.',
      clause: 'Circuit theory: a current flows in a conductor',
      mustNotSay: 'that a distribution circuit on L1 carries nothing of what hangs on L2 behind it',
      unsafe: inGarage('A distribution circuit on L1, the point behind it on L2.', 'L2'),
      sound: inGarage('Both on L1.', 'L1'),
    },
  ],
};
