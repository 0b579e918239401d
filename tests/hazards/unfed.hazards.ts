import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  type Board,
  known,
  type Line,
  type Outlet,
  ohms,
  type Run,
  type Supply,
  squareMillimetres,
} from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Case, type Chapter, type Hazard } from './hazard.js';
import { metresOf, premises, soundCircuit, soundHouse, soundPoint, soundStretch } from './sound.js';

const CIRCUIT_BREAKER: Run['device']['kind'] = known({ standard: 'EN 60898', type: 'B' }, 'marking');
const code = bs7671('2018+A2:2022');
const three: readonly Line[] = ['L1', 'L2', 'L3'];
const shed: Board = {
  kind: 'board',
  complete: known(true),
  noResidual: known(true, 'seen at the survey'),
  detached: known(true, 'seen at the survey'),
  extraneousParts: known(false, 'looked: no pipes'),
  id: 'shed',
  runs: [soundCircuit({ id: 'lamp circuit', feeds: [load(2, { id: 'lamp', purpose: 'lighting' })] })],
};
const told = (
  what: string,
  feeds: readonly Outlet[],
  of: { readonly rating?: number; readonly area?: number; readonly supply?: Partial<Supply> } & Partial<Run> = {},
): Case => ({
  what,
  told: () => {
    const { rating = 40, area = 10, supply = {}, ...change } = of;
    const run = soundCircuit();
    const own: Run = {
      ...run,
      residual: [],
      device: { ...run.device, kind: CIRCUIT_BREAKER, rating: known(amperes(rating), 'marking') },
      cable: {
        ...run.cable,
        construction: 'multicore',
        cores: 5,
        loadedCores: known(4),
        protective: 'core',
        area: known(squareMillimetres(area), 'marking'),
      },
      stretches: [soundStretch({ length: metresOf(25) })],
      ...change,
      feeds,
    };
    return assessed(code, soundHouse([own], supply), 'ev', { ...premises, makersLetThrough: 12_000 });
  },
});
const weak: Partial<Supply> = { externalImpedance: known(ohms(0.8), 'measured') };
const fuse: Run['device'] = {
  kind: known({ standard: 'BS 88-2' }, 'marking'),
  rating: known(amperes(40), 'marking'),
  breakingCapacity: known(amperes(50_000), 'marking'),
};

const common: Pick<Hazard, 'harm' | 'clause' | 'mustNotSay' | 'check'> = {
  harm: 'At the end of the cable somebody wires a socket-outlet. Its metal stays live for five seconds, where 0.4 s was the limit.',
  clause: 'BS 7671:2018+A2:2022, 411.3.2.2, Table 41.1; two sources',
  mustNotSay: 'That a run which feeds nothing that is known is a distribution circuit with 5 s.',
  check: 'automatic-disconnection',
};

export const chapter: Chapter = {
  title: 'Runs of which nobody says what they feed',
  introduction: 'What a circuit feeds decides how fast a fault has to be cleared and how much it carries.',
  hazards: [
    {
      ...common,
      id: 'run-without-load-behind-40',
      title: 'A spare run behind 40 A',
      unsafe: told('10 mm² behind 40 A, nothing entered at its end.', []),
      sound: told('The same, which feeds a shower of 38 A.', [
        load(38, { id: 'shower', purpose: 'instantaneous-water-heating' }),
      ]),
    },
    {
      ...common,
      id: 'run-without-load-behind-a-fuse',
      title: 'A spare run behind a 40 A fuse',
      unsafe: told('10 mm² behind a 40 A fuse, Z_e 0.28 Ω, nothing entered at its end.', [], { device: fuse }),
      sound: told('The same, which feeds the board of the shed.', [shed], { device: fuse }),
    },
    {
      ...common,
      id: 'run-without-load-behind-32',
      title: 'A run behind 32 A without a load',
      unsafe: told('6 mm² behind 32 A, nothing entered at its end.', [], { rating: 32, area: 6 }),
      sound: told('The same, which feeds a heater of 20 A.', [load(20, { id: 'heater', purpose: 'space-heating' })], {
        rating: 32,
        area: 6,
      }),
    },
    {
      ...common,
      id: 'run-without-load-on-three-phases',
      title: 'A three-phase run without a load',
      unsafe: told('10 mm² on three lines behind 40 A, nothing entered.', [], {
        lines: three,
        supply: { phases: known(3, 'meter') },
      }),
      sound: told(
        'The same, which feeds a motor of 20 A.',
        [load(20, { id: 'motor', purpose: 'motor', lines: three })],
        {
          lines: three,
          supply: { phases: known(3, 'meter') },
        },
      ),
    },
    {
      ...common,
      id: 'run-without-load-on-a-weak-supply',
      title: 'A run without a load on a weak supply',
      unsafe: told('10 mm² behind a 40 A fuse, Z_e 0.8 Ω, nothing entered.', [], { device: fuse, supply: weak }),
      sound: told('The board of the shed, on a supply of 0.28 Ω.', [shed], { device: fuse }),
    },
    {
      ...common,
      id: 'load-of-nothing-passes-no-cable',
      title: 'A cable that is too small, with nothing entered at its end',
      check: 'device-carries-load',
      harm: 'A load of nothing is within every capacity: the cable is chosen for no current at all.',
      clause: 'BS 7671:2018+A2:2022, 433.1.1 (i); two sources',
      mustNotSay: 'That the device carries the load because there is none.',
      unsafe: told('6 mm² behind 32 A, nothing entered.', [], { rating: 32, area: 6 }),
      sound: told('The same with its point of 32 A and an RCBO.', [soundPoint()], {
        rating: 32,
        area: 6,
        residual: soundCircuit().residual ?? [],
      }),
    },
  ],
};
