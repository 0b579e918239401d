import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../src/codes/wiring-code.js';
import {
  amperes,
  type Cable,
  celsius,
  type Installation,
  type Insulation,
  known,
  type Line,
  type OvercurrentDevice,
  ohms,
  type Run,
  type Stretch,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Case, type Chapter, type Hazard } from './hazard.js';
import { metresOf, premises, soundCircuit, soundHouse, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const { energyClass: _marked, ...unmarked } = soundCircuit().device;
const told = (what: string, installation: () => Installation, run = 'ev', options: AssessmentOptions = {}): Case => ({
  what,
  told: () => assessed(code, installation(), run, { ...premises, ...options }),
});
const breaker = (type: 'B' | 'C' | 'D', rating: number, energyClass?: OvercurrentDevice['energyClass']) => ({
  ...unmarked,
  kind: known({ standard: 'EN 61009', type } as const, 'marking'),
  rating: known(amperes(rating), 'marking'),
  ...(energyClass ? { energyClass } : {}),
});
const three = known(3 as const, 'marking');
/** The house with the point behind a device. */
const behind = (what: string, device: OvercurrentDevice, setting = 32): Case =>
  told(what, () => soundHouse([soundCircuit({ device }, { setting: known(amperes(setting)) })]));
/** A circuit close to a transformer: 5 kA at the board. */
const near = (what: string, device: OvercurrentDevice, cable: Partial<Cable>): Case =>
  told(what, () =>
    soundHouse(
      [
        soundCircuit({
          device,
          cable: { ...soundCircuit().cable, construction: 'multicore', cores: 3, protective: 'core', ...cable },
          feeds: [load(14, { id: 'heater', purpose: 'space-heating' })],
        }),
      ],
      { externalImpedance: known(ohms(0.05), 'measured'), prospectiveCurrent: known(amperes(5000), 'measured') },
    ),
  );
/** Twin and earth with its thin protective conductor, for a setting of 16 A. */
const behindThin = (what: string): Case =>
  told(what, () =>
    soundHouse(
      [
        soundCircuit(
          {
            device: breaker('B', 16, three),
            cable: { ...soundCircuit().cable, area: area(2.5), protectiveArea: area(1.5) },
          },
          { setting: known(amperes(16)) },
        ),
      ],
      { prospectiveCurrent: known(amperes(900), 'measured') },
    ),
  );
const area = (of: number) => known(squareMillimetres(of), 'marking');

const energy: Pick<Hazard, 'harm' | 'clause' | 'mustNotSay'> = {
  harm: 'The first hard fault melts the protective conductor before the device has cleared. The metal that it earthed stays live at the next one.',
  clause:
    'BS 7671:2018+A2:2022, 434.5.2, 543.1.3 (two sources); classes of EN 60898-1 from memory, their marking from one source',
  mustNotSay: 'That a circuit-breaker on which no class is marked lets through no more than one of class 3.',
};
const heat: Pick<Hazard, 'harm' | 'clause' | 'mustNotSay' | 'check'> = {
  harm: 'The terminal runs hotter than it was made for, loosens, arcs, and sets the enclosure on fire.',
  clause: 'BS 7671:2018+A2:2022, 512.1.5, from memory',
  mustNotSay: 'That the terminals bear the temperature of the cable, where their makers have not been asked.',
  check: 'terminal-temperature',
};

/** 10 mm² insulated for 90 °C that carries close to all that it may. */
const hot = (
  what: string,
  terminalTemperature: Run['terminalTemperature'],
  insulation: Insulation = 'thermosetting-90',
): Case =>
  told(what, () => {
    const { terminalTemperature: _stated, ...run } = soundCircuit(
      {
        device: { ...breaker('B', 40, three) },
        cable: {
          ...soundCircuit().cable,
          construction: 'multicore',
          cores: 3,
          protective: 'core',
          insulation,
          area: area(6),
        },
      },
      { setting: known(amperes(40)) },
    );
    return soundHouse([{ ...run, ...(terminalTemperature ? { terminalTemperature } : {}) }]);
  });

/** Steel conduit as the earth of a feeder, over 40 m: 20 mm of heavy gauge has about 59 mm². Common practice, no source. */
const inConduit = (what: string, protectiveArea?: Cable['protectiveArea']): Case =>
  feeder(
    what,
    {
      protective: 'conduit',
      protectiveMaterial: 'steel',
      protectiveImpedance: known(4.7e-3 as never, "maker's data"),
      protectiveArea: protectiveArea ?? unknown('ask its maker'),
    },
    40,
  );
/** A feeder of single-core cables in conduit with one protective conductor. */
const feeder = (
  what: string,
  cable: Partial<Cable>,
  length = 210,
  rating = 100,
  route: Partial<Stretch> = { method: known('B', seen), containment: 'trunking' },
  options: AssessmentOptions = {},
): Case => {
  const lines: readonly Line[] = ['L1'];
  return told(
    what,
    () =>
      soundHouse(
        [
          soundCircuit({
            id: 'feeder',
            lines,
            residual: [],
            device: {
              kind: known({ standard: 'BS 88-2' }, 'marking'),
              rating: known(amperes(rating), 'marking'),
              breakingCapacity: known(amperes(50_000), 'marking'),
            },
            cable: {
              construction: 'single-core',
              material: 'copper',
              insulation: 'thermoplastic-70',
              cores: 2,
              protective: 'separate',
              area: area(25),
              protectiveArea: area(16),
              ...cable,
            },
            stretches: [
              soundStretch({
                length: metresOf(length),
                ...route,
                group: { arrangement: 'bunched', circuits: known(1, seen) },
              }),
            ],
            feeds: [
              {
                kind: 'board',
                complete: known(true),
                noResidual: known(true, 'seen at the survey'),
                id: 'barn',
                detached: known(false, 'drawings'),
                runs: [
                  soundCircuit({ id: 'barn heater', feeds: [load(12, { id: 'heater', purpose: 'space-heating' })] }),
                ],
              },
            ],
          }),
        ],
        { externalImpedance: known(ohms(0.1), 'measured'), prospectiveCurrent: known(amperes(2400), 'measured') },
      ),
    'feeder',
    options,
  );
};

/** 25 mm² over 40 m behind a fuse of which the maker states what it lets through at the prospective current. */
const byMaker = (what: string, earth: number): Case =>
  feeder(what, { protectiveArea: area(earth) }, 40, 100, undefined, { makersLetThrough: 30_000 });
const clipped = {
  method: known('E' as const, seen),
  containment: 'clipped',
  concealedShallow: known(false, seen),
} as const;
/** Two cables in parallel, each with its protective core. */
const pair = (size: number): Partial<Cable> => ({
  construction: 'multicore',
  cores: 3,
  protective: 'core',
  area: area(size),
  protectiveArea: area(size),
  parallel: 2,
});

export const chapter: Chapter = {
  title: 'Conductors and terminals that do not survive',
  introduction:
    'A fault lasts a hundredth of a second and leaves its damage where nobody looks. A terminal that is too hot takes years.',
  hazards: [
    {
      ...energy,
      id: 'unmarked-circuit-breaker-and-small-earth',
      title: 'A circuit-breaker without a class, and the small protective conductor of flat cable',
      check: 'protective-conductor',
      unsafe: behind(
        '6 mm² flat cable with 2.5 mm² of earth behind an unmarked 32 A type B, 0.86 kA.',
        breaker('B', 32),
      ),
      sound: behind('The same, marked class 3.', breaker('B', 32, three)),
    },
    {
      ...energy,
      id: 'unmarked-circuit-breaker-of-type-c',
      title: 'An unmarked type C',
      check: 'protective-conductor',
      unsafe: behind('The same behind an unmarked 32 A type C.', breaker('C', 32)),
      sound: behind('The same behind a 32 A type C of class 3.', breaker('C', 32, three)),
    },
    {
      ...energy,
      id: 'class-not-known',
      title: 'A class that could not be read',
      check: 'protective-conductor',
      unsafe: behind('The mark is worn off a 20 A type B.', breaker('B', 20, unknown('take it out')), 20),
      sound: behind('It reads class 3.', breaker('B', 20, three), 20),
    },
    {
      ...energy,
      id: 'class-1',
      title: 'A circuit-breaker of class 1, which has no limit',
      check: 'protective-conductor',
      mustNotSay: 'That class 1 limits the energy.',
      unsafe: behind('The same behind a 32 A type B of class 1.', breaker('B', 32, known(1 as const, 'marking'))),
      sound: behind('The same of class 3.', breaker('B', 32, three)),
    },
    {
      ...energy,
      id: 'thin-earth-near-a-transformer',
      title: 'A protective conductor of 1.5 mm² at 5 kA',
      check: 'protective-conductor',
      clause:
        'BS 7671:2018+A2:2022, 543.1.3; class 3 of EN 60898-1 by the fault level, On-Site Guide Table B7: 1.5 mm² up to 3 kA, 2.5 mm² up to 6 kA, from memory',
      mustNotSay: 'That what does at 3 kA does at 5 kA.',
      unsafe: near('4 mm² with an earth of 1.5 mm² behind 16 A type B of class 3 at 5 kA.', breaker('B', 16, three), {
        area: area(4),
        protectiveArea: area(1.5),
      }),
      sound: behindThin('2.5 mm² with an earth of 1.5 mm² behind the same where 0.9 kA is measured.'),
    },
    {
      ...energy,
      id: 'unmarked-near-a-transformer',
      title: 'Thin line conductors near a transformer',
      check: 'line-withstand',
      harm: 'The fault melts the line conductor itself, and the arc lights what is beside it.',
      unsafe: near('4 mm² behind an unmarked 16 A type B at 5 kA.', breaker('B', 16), { area: area(4) }),
      sound: near('The same of class 3.', breaker('B', 16, three), { area: area(4) }),
    },
    {
      ...energy,
      id: 'class-1-near-a-transformer',
      title: 'A circuit-breaker of class 1 near a transformer',
      check: 'line-withstand',
      harm: 'The fault melts the line conductor itself, and the arc lights what is beside it.',
      unsafe: near('4 mm² behind 16 A type B of class 1 at 5 kA.', breaker('B', 16, known(1 as const, 'marking')), {
        area: area(4),
      }),
      sound: near('The same of class 3.', breaker('B', 16, three), { area: area(4) }),
    },
    {
      ...energy,
      id: 'old-circuit-breaker-near-a-transformer',
      title: 'A circuit-breaker of the seventies near a transformer',
      check: 'line-withstand',
      mustNotSay: 'That it limits energy as those of today do.',
      unsafe: near(
        '4 mm² behind a 15 A circuit-breaker to BS 3871 type 2 at 5 kA.',
        {
          kind: known({ standard: 'BS 3871', type: '2' }, 'marking'),
          rating: known(amperes(15), 'marking'),
          breakingCapacity: known(amperes(6000), 'marking'),
        },
        { area: area(4) },
      ),
      sound: near('Replaced by 16 A type B of class 3.', breaker('B', 16, three), { area: area(4) }),
    },
    {
      ...heat,
      id: 'terminals-nobody-asked-about',
      title: 'Cable for 90 °C in terminals of which nothing is known',
      unsafe: hot('6 mm² for 90 °C at 40 A; nothing is said of the terminals.', undefined),
      sound: hot('The same in terminals for 90 °C.', known(celsius(90), 'instructions of both')),
    },
    {
      ...heat,
      id: 'terminals-not-known',
      title: 'Terminals whose instructions are lost',
      unsafe: hot('6 mm² for 90 °C at 40 A; terminals not known.', unknown('ask the makers')),
      sound: hot(
        'The same in terminals for 70 °C, and the cable is cool enough.',
        known(celsius(70), 'instructions of both'),
      ),
    },
    {
      ...heat,
      id: 'terminals-for-60',
      title: 'Old terminals for 60 °C',
      unsafe: hot(
        '6 mm² for 70 °C at 40 A on terminals for 60 °C.',
        known(celsius(60), 'instructions'),
        'thermoplastic-70',
      ),
      sound: hot('The same on terminals for 70 °C.', known(celsius(70), 'instructions of both'), 'thermoplastic-70'),
    },
    {
      ...heat,
      id: 'terminals-not-known-with-ordinary-cable',
      title: 'Ordinary cable in terminals of which nothing is known',
      unsafe: hot('6 mm² for 70 °C at 40 A; nothing is said of the terminals.', undefined, 'thermoplastic-70'),
      sound: hot('The same on terminals for 70 °C.', known(celsius(70), 'instructions of both'), 'thermoplastic-70'),
    },
    {
      ...energy,
      id: 'one-earth-for-parallel-cables',
      title: 'One protective conductor beside two cables in parallel',
      check: 'automatic-disconnection',
      harm: 'The earth is twice as resistive as was counted: a fault in the barn is not cleared in 5 s, and every gate there is live.',
      clause:
        'Circuit theory: conductors that are there once are not in parallel with themselves; BS 7671:2018+A2:2022, 411.4.4',
      mustNotSay: 'That the earth is divided by the number of cables.',
      unsafe: feeder('Two 25 mm² cables in parallel with one separate earth of 16 mm² over 210 m, 100 A fuse.', {
        parallel: 2,
      }),
      sound: feeder('One 70 mm² cable with an earth of 35 mm².', { area: area(70), protectiveArea: area(35) }),
    },
    {
      ...energy,
      id: 'pair-of-cables-one-of-which-is-hurt',
      title: 'Two thin cables in parallel behind one large fuse',
      check: 'line-withstand',
      harm: 'A spade goes through one of the two. All that the fuse lets through flows in it, from both of its ends; the other one looks sound and is put back into service.',
      clause: 'BS 7671 434.4, from memory; what a fault in one of two like conductors draws: circuit theory',
      mustNotSay: 'That two conductors withstand together what one of them has to carry alone.',
      unsafe: feeder(
        'Two cables of 10 mm² in parallel, 70 A each, behind a fuse of 125 A.',
        pair(10),
        40,
        125,
        clipped,
      ),
      sound: feeder('Two of 16 mm²: one alone withstands what the fuse lets through.', pair(16), 40, 125, clipped),
    },
    {
      ...energy,
      id: 'makers-figure-at-the-far-end',
      title: 'The let-through energy of a fuse at its full fault current, taken for a fault far away',
      check: 'protective-conductor',
      harm: 'Close by, the fuse opens in a few milliseconds. At the end of the cable it takes a second, and the earth wire glows in the loft.',
      clause: 'BS 7671:2018+A2:2022, 434.5.2, 543.1.3, two texts; a fuse lets through more the less flows: its curve',
      mustNotSay: 'That what a maker states at the prospective current holds for every fault.',
      unsafe: byMaker('A fuse of 100 A that lets through 30,000 A²s at 2.4 kA, 40 m with an earth of 6 mm².', 6),
      sound: byMaker('The same with an earth of 10 mm².', 10),
    },
    {
      ...energy,
      id: 'one-conduit-for-parallel-cables',
      title: 'One conduit as the earth of three cables in parallel',
      check: 'automatic-disconnection',
      harm: 'The conduit is counted three times: a fault is not cleared in 5 s.',
      clause:
        'Circuit theory: conductors that are there once are not in parallel with themselves; BS 7671:2018+A2:2022, 411.4.4',
      mustNotSay: 'That the conduit is divided by the number of cables.',
      unsafe: feeder('Three cables of 16 mm² in parallel in a steel conduit of 1.6 mΩ/m, 210 m.', {
        parallel: 3,
        area: area(16),
        protective: 'conduit',
        protectiveImpedance: known(1.6e-3 as never, "maker's data"),
      }),
      sound: feeder('One 70 mm² cable with an earth of 35 mm².', { area: area(70), protectiveArea: area(35) }),
    },
    {
      ...energy,
      id: 'thin-tube-as-earth',
      title: 'A thin steel tube as the earth of a 100 A feeder',
      check: 'protective-conductor',
      harm: 'Before the fuse clears, the tube is red hot along the hayloft.',
      clause: 'BS 7671:2018+A2:2022, 543.1.3, Table 54.5: k of 47, one source',
      mustNotSay: 'That whatever conducts is an earth.',
      unsafe: inConduit('25 mm² singles behind 100 A in a tube with 8 mm² of steel.', area(8)),
      sound: inConduit('The same in conduit of heavy gauge, 59 mm² of steel.', area(59)),
    },
    {
      ...energy,
      id: 'conduit-of-which-nobody-knows-the-wall',
      title: 'A conduit as earth, of which nobody knows how thick its wall is',
      check: 'protective-conductor',
      harm: 'It is of light gauge, and half of it has rusted away.',
      clause: 'BS 7671:2018+A2:2022, 543.1.3, Table 54.5: k of 47, one source',
      mustNotSay: 'That conduit is thick enough because it is conduit.',
      unsafe: inConduit('25 mm² singles behind 100 A in steel conduit of which nobody knows the cross-section.'),
      sound: inConduit('The same, 59 mm² by its maker.', area(59)),
    },
  ],
};
