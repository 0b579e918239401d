import { bs7671 } from '../../src/codes/bs7671/index.js';
import { known, ohmsPerMetre, type Run, squareMillimetres } from '../../src/index.js';
import type { Chapter } from './hazard.js';
import { breaker, pointAlone, rcd, slow, socketCircuit, told, tt } from './residual-circuits.js';
import { metresOf, soundCircuit, soundPoint, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const none = { noResidual: known(true, seen) };
const some = { noResidual: known(false, seen) };
/** A circuit-breaker ahead of a point in which there is no residual current device. */
const bare = { device: breaker(32), residual: [] };
/** A cable of 6 mm² with a protective core of this size. */
const cored = (area: number, change: Partial<Run['cable']> = {}): Run => {
  const { cable } = soundCircuit();
  return soundCircuit({ cable: { ...cable, ...change, protectiveArea: known(squareMillimetres(area), seen) } });
};
/** The same circuit in armoured cable of two cores. */
const armoured = (change: Partial<Run['cable']>): Run => {
  const { protectiveArea: _area, ...cable } = soundCircuit().cable;
  return soundCircuit({
    cable: { ...cable, construction: 'armoured', insulation: 'thermosetting-90', protective: 'armour', ...change },
  });
};
/** The same in single cores and steel conduit, the second section as it is said to lie. */
const inSteel = (containment: 'clipped' | 'conduit'): Run =>
  soundCircuit({
    cable: {
      ...soundCircuit().cable,
      construction: 'single-core',
      protective: 'conduit',
      protectiveMaterial: 'steel',
      protectiveImpedance: known(ohmsPerMetre(4.7e-3), "maker's data"),
      protectiveArea: known(squareMillimetres(59), "maker's data"),
    },
    stretches: ['conduit' as const, containment].map((how, i) =>
      soundStretch({ name: `section ${i + 1}`, method: known('B', seen), containment: how, length: metresOf(8) }),
    ),
  });
const { residual: _inside, ...point } = soundPoint();
const withoutInside: Partial<Run> = { feeds: [{ ...point, ...none }] };

const common = {
  clause: 'Facts that contradict each other decide nothing: common practice, no source',
  mustNotSay: 'That the more favourable of two statements is the true one.',
} as const;

export const chapter: Chapter = {
  title: 'Described, and said not to be there',
  introduction:
    'One photograph shows a residual current device, one note says that there is none. Whoever relies on the better of the two relies on a device that may not exist.',
  hazards: [
    {
      ...common,
      id: 'circuit-device-described-and-denied',
      title: 'An RCBO that the note beside it denies',
      harm: 'A circuit-breaker looks like an RCBO from the front. The vehicle stands on a wet drive, and nothing opens at 30 mA.',
      unsafe: {
        what: 'A point behind a device of 30 mA that is described, of which it is also said that there is none.',
        told: () => told(code, [soundCircuit({ ...withoutInside, ...none })]),
      },
      sound: {
        what: 'The same, the device being described and nothing said against it.',
        told: () => told(code, [soundCircuit({ ...withoutInside })]),
      },
    },
    {
      ...common,
      id: 'board-device-described-and-denied',
      title: 'A device of a TT house that somebody did not find',
      harm: 'On a rod of 40 Ω a circuit-breaker never opens. The pipe of the wash basin stays live until somebody touches it.',
      unsafe: {
        what: 'TT: a slow device of 300 mA described on the board, and a note that the board has none.',
        told: () => told(code, [pointAlone()], tt, { residual: [slow()], ...none }),
      },
      sound: {
        what: 'The same device, and no such note.',
        told: () => told(code, [pointAlone()], tt, { residual: [slow()] }),
      },
    },
    {
      ...common,
      id: 'point-device-described-and-denied',
      title: 'A data sheet that says yes on one page and no on the other',
      harm: 'The type with a device inside and the type without differ by one letter. The cheaper one was delivered.',
      unsafe: {
        what: 'A point behind a circuit-breaker, a device inside described, and its maker said to build in none.',
        told: () => told(code, [pointAlone({}, none)]),
      },
      sound: { what: 'The same, the device inside being described alone.', told: () => told(code, [pointAlone()]) },
    },
    {
      ...common,
      id: 'device-said-to-be-there-and-not-described',
      title: 'There is one, and nobody says which',
      harm: 'It is an old one of type AC. The direct current of the vehicle blinds it.',
      check: 'smooth-current-upstream',
      mustNotSay: 'That a device of which nothing is known disturbs nothing.',
      unsafe: {
        what: 'A point with its own device inside; at the origin of the circuit a device said to be there, not described.',
        told: () => told(code, [pointAlone(some)]),
      },
      sound: {
        what: 'The same, the device at the origin described: 30 mA, type A.',
        told: () => told(code, [pointAlone({ residual: [rcd(30)], ...some })]),
      },
    },
    {
      ...common,
      id: 'rcbo-of-which-the-residual-part-is-not-described',
      title: 'An RCBO of which the half is described',
      harm: 'The merchant had type AC in stock. Six milliamperes of direct current, and it no longer opens for anybody.',
      clause: 'BS 7671:2018+A2:2022, 531.3.3 and 722.531.3.101, two sources',
      check: 'smooth-current-upstream',
      mustNotSay: 'That the residual current part of an RCBO is of no account because the point has a device inside.',
      unsafe: {
        what: 'An RCBO of 32 A, type and rated residual current not stated, ahead of a point with a device of its own.',
        told: () => told(code, [soundCircuit({ residual: [] })]),
      },
      sound: {
        what: 'A circuit-breaker in its place.',
        told: () => told(code, [soundCircuit({ ...bare })]),
      },
    },
    {
      ...common,
      id: 'sockets-behind-a-device-that-is-denied',
      title: 'Socket-outlets of a garage behind a device that may not exist',
      harm: 'The mower goes over its cable.',
      unsafe: {
        what: 'Socket-outlets behind a device of 30 mA that is described and denied.',
        told: () => told(code, [socketCircuit(none)]),
      },
      sound: { what: 'The same, described alone.', told: () => told(code, [socketCircuit()]) },
    },
    {
      ...common,
      id: 'protective-core-larger-than-its-line',
      title: 'Twin and earth whose bare core is said to be 10 mm²',
      harm: 'Somebody wrote down the size of the next cable on the drum. The core is one of 2.5 mm², and its loop four times what was reckoned with.',
      unsafe: {
        what: 'Twin and earth of 6 mm², its bare core stated as 10 mm².',
        told: () => told(code, [cored(10)]),
      },
      sound: { what: 'The same, stated as 2.5 mm².', told: () => told(code, [cored(2.5)]) },
    },
    {
      ...common,
      id: 'protective-core-as-large-as-its-line',
      title: 'Twin and earth whose bare core is said to be as large as its lines',
      harm: 'A reading of the loop that is too high is put down to the street.',
      unsafe: {
        what: 'Twin and earth of 6 mm², its bare core stated as 6 mm².',
        told: () => told(code, [cored(6)]),
      },
      sound: {
        what: 'A cable of three like cores, the protective one stated as 6 mm².',
        told: () => told(code, [cored(6, { construction: 'multicore', cores: 3, protective: 'core' })]),
      },
    },
    {
      ...common,
      id: 'armour-of-a-cable-without-armour',
      title: 'The armour of a cable that has none',
      harm: 'A black sheathed cable of two cores was taken for an armoured one. No conductor comes back from the case of the heater, and a fault leaves it live.',
      unsafe: {
        what: 'A sheathed cable of two cores without armour, its armour stated as the protective conductor.',
        told: () => told(code, [armoured({ construction: 'multicore' })]),
      },
      sound: { what: 'An armoured cable of two cores.', told: () => told(code, [armoured({})]) },
    },
    {
      ...common,
      id: 'bare-core-of-an-armoured-cable',
      title: 'The bare core of an armoured cable',
      harm: 'Two entries of the schedule were mixed up. Of two cores of an armoured cable both carry load, and the bare one that was reckoned with is not there.',
      unsafe: {
        what: 'An armoured cable of two cores, a bare core stated as the protective conductor.',
        told: () => told(code, [armoured({ protective: 'bare-core' })]),
      },
      sound: { what: 'Its armour stated.', told: () => told(code, [armoured({})]) },
    },
    {
      ...common,
      id: 'conduit-that-ends-on-the-way',
      title: 'A conduit that is the earth, and ends on the way',
      harm: 'The steel conduit ends in the ceiling of the workshop. From there the single cores are clipped to the joists, and no earth goes with them.',
      unsafe: {
        what: 'Single cores with their steel conduit as protective conductor, one section of them clipped.',
        told: () => told(code, [inSteel('clipped')]),
      },
      sound: { what: 'In conduit all the way.', told: () => told(code, [inSteel('conduit')]) },
    },
  ],
};
