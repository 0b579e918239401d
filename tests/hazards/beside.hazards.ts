import { bs7671 } from '../../src/codes/bs7671/index.js';
import { amperes, type Board, known, type Line, metres, ohms, type Run, squareMillimetres } from '../../src/index.js';
import { circuit, load, stretch } from '../support/house.js';
import { assessed, type Case, type Chapter, type Hazard } from './hazard.js';
import { premises, soundHouse } from './sound.js';

const seen = 'seen at the survey';
const all: readonly Line[] = ['L1', 'L2', 'L3'];
const fuse = (rating: number): Run['device'] => ({
  kind: known({ standard: 'BS 88-2' }, seen),
  rating: known(amperes(rating), seen),
  breakingCapacity: known(amperes(80_000), seen),
  groupingFactor: known(1, seen),
});
const route = (length: number) => [
  stretch({ length: known(metres(length), seen), method: known('E', seen), concealedShallow: known(false, seen) }),
];
const workshop = (current: number): Board => ({
  kind: 'board',
  id: 'workshop board',
  mainSwitch: {
    rating: known(amperes(400), seen),
    overloadDeclared: known(true, seen),
    noFuseAhead: known(true, seen),
  },
  complete: known(true, seen),
  noResidual: known(true, seen),
  detached: known(false, seen),
  runs: [
    circuit({
      id: 'press',
      existing: true,
      fromTails: known(false, seen),
      jointsAccessible: known(true, seen),
      lines: all,
      device: fuse(current),
      cable: {
        ...circuit().cable,
        construction: 'multicore',
        cores: 4,
        protective: 'core',
        area: known(squareMillimetres(95), seen),
      },
      noResidual: known(true, seen),
      feeds: [load(current, { id: 'press', purpose: 'motor', lines: all })],
    }),
  ],
});
/** Two cables of 50 mm² to the workshop, each behind a device of its own. */
const two = (
  what: string,
  lengths: readonly [number, number],
  of: {
    readonly current?: number;
    readonly rating?: number;
    readonly impedance?: number;
    readonly device?: Run['device'];
  } = {},
): Case => ({
  what,
  told: () => {
    const device = of.device ?? fuse(of.rating ?? 125);
    const run = circuit({
      id: 'feeder',
      lines: all,
      device,
      noResidual: known(true, seen),
      bathOrShower: known(false, seen),
      cable: {
        construction: 'multicore',
        material: 'copper',
        insulation: 'thermosetting-90',
        cores: 5,
        loadedCores: known(3, seen),
        area: known(squareMillimetres(50), seen),
        protective: 'core',
      },
      stretches: route(lengths[0]),
      beside: [{ id: 'second feeder', device, stretches: route(lengths[1]) }],
      feeds: [workshop(of.current ?? 160)],
    });
    const house = soundHouse([run], {
      system: known('TN-S', seen),
      phases: known(3, seen),
      externalImpedance: known(ohms(of.impedance ?? 0.1), seen),
      prospectiveCurrent: known(amperes(230 / (of.impedance ?? 0.1)), seen),
      cutOut: { kind: known({ standard: 'BS 88-2' }, seen), rating: known(amperes(315), seen) },
    });
    return assessed(bs7671('2018+A2:2022'), house, 'feeder', premises);
  },
});

const common: Pick<Hazard, 'clause'> = {
  clause: 'BS 7671:2018+A2:2022, 433.4.2, 434.4 and Appendix 10, from memory; shares and loops by circuit theory',
};

export const chapter: Chapter = {
  title: 'Two feeders side by side',
  introduction:
    'Two cables to one board do not halve the current because there are two of them, and a fault in one of them is fed by the other as well.',
  hazards: [
    {
      ...common,
      id: 'feeders-side-by-side-of-unequal-length',
      title: 'A second feeder that goes round three sides of the yard',
      harm: 'The short cable takes three quarters of the current: its fuse blows every cold morning, and the next one up is put in, which the cable does not bear.',
      mustNotSay: 'That two fuses of 125 A carry 180 A whatever the lengths.',
      check: 'device-carries-load',
      unsafe: two('180 A over two ways of 25 m and 75 m, 125 A each: 135 A and 45 A.', [25, 75], { current: 180 }),
      sound: two('The same over two ways of 50 m: 90 A each.', [50, 50], { current: 180 }),
    },
    {
      ...common,
      id: 'feeders-side-by-side-halve-the-fault',
      title: 'Two feeders, each of which alone would clear a fault at the far board',
      harm: 'Each device sees half of the fault current: neither opens within 5 s, and all metal in the workshop stays live.',
      mustNotSay: 'That a fault at the far board is cleared because one feeder alone would clear it.',
      check: 'automatic-disconnection',
      unsafe: two('Two ways of 60 m on a supply of 0.2 Ω, 125 A each: each sees 0.4 Ω ahead of its cable.', [60, 60], {
        impedance: 0.2,
      }),
      sound: two('The same on a supply of 0.1 Ω.', [60, 60]),
    },
    {
      ...common,
      id: 'residual-devices-side-by-side',
      title: 'A residual current circuit-breaker in each of two feeders',
      harm: 'Lines and neutrals share unequally: both operate without a fault, and somebody bridges them.',
      mustNotSay: 'That each of the two is protected by its own residual current device.',
      unsafe: two('Two ways of 50 m, each behind a residual current circuit-breaker of 125 A.', [50, 50], {
        device: { ...fuse(125), kind: known({ standard: 'EN 61009', type: 'B' }, seen) },
      }),
      sound: two('The same behind fuses.', [50, 50]),
    },
  ],
};
