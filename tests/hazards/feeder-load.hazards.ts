import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../src/codes/wiring-code.js';
import { amperes, type Board, known, type Run, seconds } from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Case, type Chapter } from './hazard.js';
import { armoured, breaker, garageFeeder, pointAlone, socketCircuit } from './residual-circuits.js';
import { metresOf, premises, soundHouse, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const heater: Run = socketCircuit({
  id: 'heater',
  device: breaker(32),
  residual: [],
  cable: armoured(6),
  feeds: [load(25, { id: 'heater', purpose: 'space-heating', residualType: known('AC', 'its maker') })],
});
/** A cable to a board with a point of 32 A, and what else is said. */
const told = (
  what: string,
  of: {
    readonly run: string;
    readonly area: number;
    readonly length: number;
    readonly beside?: readonly Run[];
    readonly control?: NonNullable<Board['control']>;
    readonly complete?: boolean;
    readonly options?: AssessmentOptions;
  },
): Case => ({
  what,
  told: () => {
    const { area, length, beside = [], control, options, complete = true } = of;
    const garage: Board = {
      kind: 'board',
      id: 'garage',
      noResidual: known(true, seen),
      complete: known(complete, seen),
      detached: known(false, seen),
      conditionalRating: known(amperes(16_000), seen),
      runs: [pointAlone(), ...beside],
      ...(control ? { control } : {}),
    };
    const feeder = garageFeeder({
      device: breaker(50),
      cable: armoured(area),
      stretches: [soundStretch({ length: metresOf(length), metalParts: known(false, seen) })],
      feeds: [garage],
    });
    return assessed(code, soundHouse([feeder]), of.run, { ...premises, makersLetThrough: 12_000, ...options });
  },
});
const limiter = (limit: number) => ({
  name: 'limiter',
  limit: known(amperes(limit), 'its display'),
  controls: ['point'],
  reaction: known(seconds(5), 'data sheet'),
});
const feeder = { run: 'garage feeder', area: 16, length: 10 } as const;

export const chapter: Chapter = {
  title: 'What a distribution circuit carries',
  introduction: 'A distribution circuit carries what is behind it, whatever is declared of it.',
  hazards: [
    {
      id: 'declared-demand-below-the-point-behind-it',
      title: 'A demand of 10 A declared for a cable behind which a vehicle charges with 32 A',
      harm: 'The voltage at the point falls further than anyone worked out, and the lights of the garage with it.',
      clause: 'BS 7671:2018+A2:2022 722.311.201, two sources: no diversity for charge points; 525, Appendix 4, 6.4',
      mustNotSay: 'That the drop is that of 10 A.',
      check: 'voltage-drop',
      unsafe: told('6 mm² over 45 m, 10 A declared.', {
        run: 'ev',
        area: 6,
        length: 45,
        options: { feederDemand: { 'garage feeder': amperes(10) } },
      }),
      sound: told('16 mm² over 45 m, 10 A declared: 32 A count.', {
        run: 'ev',
        area: 16,
        length: 45,
        options: { feederDemand: { 'garage feeder': amperes(10) } },
      }),
    },
    {
      id: 'declared-demand-below-what-a-control-lets-through',
      title: 'A demand of 10 A declared for a cable to a board that is held at 45 A',
      harm: 'The control lets the vehicle have all that it asks for while nothing else runs, and the voltage at the point falls further than anyone worked out.',
      clause: 'BS 7671:2018+A2:2022 722.311.201, two sources: curtailed load counts as curtailed; 525, Appendix 4, 6.4',
      mustNotSay: 'That a control that may pause a vehicle keeps it from charging.',
      check: 'voltage-drop',
      unsafe: told('6 mm² over 45 m, 10 A declared, the board held at 45 A.', {
        run: 'ev',
        area: 6,
        length: 45,
        control: limiter(45),
        options: { feederDemand: { 'garage feeder': amperes(10) } },
      }),
      sound: told('The same, held at 10 A.', {
        run: 'ev',
        area: 6,
        length: 45,
        control: limiter(10),
        options: { feederDemand: { 'garage feeder': amperes(10) } },
      }),
    },
    {
      id: 'control-with-a-limit-above-the-device',
      title: 'A load control at the garage that is set above the device ahead',
      harm: 'The device of the cable is overloaded every evening, opens in the night, or ages until it does not.',
      clause: 'BS 7671:2018+A2:2022 433.1.1, 722.311.201, two sources; the limit is that of the whole board',
      mustNotSay: 'That the control keeps the cable within 50 A.',
      check: 'device-carries-load',
      unsafe: told('A point of 32 A and a heater of 25 A behind 50 A, the board held at 60 A.', {
        ...feeder,
        beside: [heater],
        control: limiter(60),
      }),
      sound: told('The same, the board held at 45 A.', { ...feeder, beside: [heater], control: limiter(45) }),
    },
    {
      id: 'control-below-what-it-cannot-pause',
      title: 'A load control with a limit that the heaters alone exceed',
      harm: 'The vehicle is paused and the cable is overloaded all the same.',
      clause:
        'BS 7671:2018+A2:2022 433.1.1, 722.311.201, two sources; what a control can do follows from what it pauses',
      mustNotSay: 'That the board draws no more than the limit.',
      check: 'device-carries-load',
      unsafe: told('Three heaters of 25 A behind 50 A, the board held at 40 A.', {
        ...feeder,
        beside: [1, 2, 3].map((i) => ({
          ...heater,
          id: `heater circuit ${i}`,
          feeds: [load(25, { id: `heater ${i}`, purpose: 'space-heating', residualType: known('AC', 'its maker') })],
        })),
        control: limiter(40),
      }),
      sound: told('One heater.', { ...feeder, beside: [heater], control: limiter(40) }),
    },
    {
      id: 'board-of-which-a-part-is-listed',
      title: 'A cable to a board of which a part is listed',
      harm: 'The kiln that nobody wrote down overloads the device of the cable, and the voltage at the point falls away.',
      clause: 'BS 7671:2018+A2:2022 433.1.1, 525, two sources',
      mustNotSay: 'That the cable carries what is listed and no more.',
      check: 'device-carries-load',
      unsafe: told('A point of 32 A is listed, and it is said that there is more.', { ...feeder, complete: false }),
      sound: told('The same, the list complete.', feeder),
    },
    {
      id: 'drop-of-a-cable-to-a-board-of-which-a-part-is-listed',
      title: 'The drop of a cable to a board of which a part is listed',
      harm: 'With all of the workshop at work the point sees less voltage than it works at, and its protection with it.',
      clause:
        'BS 7671:2018+A2:2022 525, Appendix 4, 6.4, two sources: at the rating of the device, 50 A, it drops too much',
      mustNotSay: 'That the drop is that of what is listed.',
      check: 'voltage-drop',
      unsafe: told('55 m of 16 mm² behind 50 A, a point of 32 A listed, and there is more.', {
        run: 'ev',
        area: 16,
        length: 55,
        complete: false,
      }),
      sound: told('The same, the list complete.', { run: 'ev', area: 16, length: 55 }),
    },
  ],
};
