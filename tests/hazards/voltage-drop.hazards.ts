import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../src/codes/wiring-code.js';
import {
  amperes,
  type Cable,
  type Installation,
  known,
  type Outlet,
  ratio,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Case, type Chapter, type Hazard } from './hazard.js';
import { breaker } from './residual-circuits.js';
import { metresOf, premises, soundCircuit, soundHouse, soundPoint, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const told = (what: string, installation: () => Installation, options: AssessmentOptions = {}): Case => ({
  what,
  told: () => assessed(code, installation(), 'ev', { ...premises, makersLetThrough: 12_000, ...options }),
});
const cableOf = (area: number): Cable => ({
  ...soundCircuit().cable,
  construction: 'multicore',
  cores: 3,
  protective: 'core',
  area: known(squareMillimetres(area), 'marking'),
});
/** A circuit of a length in a cable. */
const over = (
  what: string,
  length: number,
  of: { readonly area?: number; readonly feeds?: readonly Outlet[]; readonly dropLimit?: number } = {},
): Case =>
  told(
    what,
    () =>
      soundHouse([
        soundCircuit({
          cable: cableOf(of.area ?? 6),
          stretches: [soundStretch({ length: metresOf(length) })],
          ...(of.feeds ? { feeds: of.feeds } : {}),
        }),
      ]),
    of.dropLimit === undefined ? {} : { dropLimit: of.dropLimit },
  );
const pump = (powerFactor: number): Outlet =>
  load(30, { id: 'pump', purpose: 'motor', powerFactor: ratio(powerFactor), residualType: known('A', 'its maker') });
const lamps: readonly Outlet[] = [load(20, { id: 'floodlights', purpose: 'lighting' })];

const departure: Pick<Hazard, 'harm' | 'clause' | 'mustNotSay' | 'check'> = {
  harm: 'The voltage at the point falls so low that contactors and locks drop out, or stay half closed and burn. Nobody has said that the equipment works at it.',
  clause: 'BS 7671:2018+A2:2022, 525.1 and Appendix 4, 6.4: 3 % and 5 %; 8 % and 0.5 % for long routes from memory',
  mustNotSay: 'That a drop beyond the figures of the code passes because a looser limit was typed in.',
  check: 'voltage-drop',
};
/** The point behind a feeder whose board has another circuit as well. */
const beside = (what: string, other: Outlet, of: { readonly area?: number; readonly feeder?: number } = {}): Case =>
  told(what, () =>
    soundHouse([
      soundCircuit({
        id: 'feeder',
        residual: [],
        device: breaker(63),
        cable: cableOf(of.area ?? 16),
        stretches: [soundStretch({ length: metresOf(of.feeder ?? 60) })],
        feeds: [
          {
            kind: 'board',
            complete: known(true),
            noResidual: known(true, 'seen at the survey'),
            id: 'barn',
            detached: known(false, 'drawings'),
            conditionalRating: known(amperes(16_000), 'marking'),
            runs: [
              soundCircuit({}, { setting: known(amperes(16)) }),
              soundCircuit({ id: 'neighbour', device: breaker(32), residual: [], feeds: [other] }),
            ],
          },
        ],
      }),
    ]),
  );

export const chapter: Chapter = {
  title: 'Voltage that does not arrive',
  introduction:
    'The figures of the code for voltage drop are those at which equipment is deemed to work. Who goes beyond them answers for it.',
  hazards: [
    {
      id: 'power-factor-of-next-to-nothing',
      title: 'A pump with a power factor of 0.02',
      harm: 'A slip of the pen takes the whole drop of the cable away. The pump does not start, and its winding burns.',
      clause: 'definition of the power factor; that no load stays below 0.1 is common practice, no source',
      mustNotSay: 'That a long cable has no drop because its load takes no active power.',
      unsafe: over('6 mm² over 70 m for a pump of 30 A, power factor 0.02.', 70, { feeds: [pump(0.02)] }),
      sound: over('16 mm² over 70 m, power factor 0.8.', 70, { area: 16, feeds: [pump(0.8)] }),
    },
    {
      ...departure,
      id: 'drop-limit-loosened-a-little',
      title: 'Six percent instead of five',
      unsafe: over('6 mm² over 55 m at 32 A, a limit of 6 % typed in.', 55, { dropLimit: 0.06 }),
      sound: over('10 mm² over 55 m.', 55, { area: 10, dropLimit: 0.06 }),
    },
    {
      ...departure,
      id: 'drop-limit-of-ninety-percent',
      title: 'Ninety percent',
      unsafe: over('6 mm² over 55 m at 32 A, a limit of 90 % typed in.', 55, { dropLimit: 0.9 }),
      sound: over('6 mm² over 20 m with the limit of the code.', 20),
    },
    {
      ...departure,
      id: 'drop-limit-of-eight-percent',
      title: 'Eight percent on a public supply',
      unsafe: over('6 mm² over 70 m, a limit of 8 %.', 70, { dropLimit: 0.08 }),
      sound: over('16 mm² over 70 m.', 70, { area: 16, dropLimit: 0.08 }),
    },
    {
      ...departure,
      id: 'drop-limit-of-lighting-loosened',
      title: 'The limit of power used for lighting',
      harm: 'Lamps flicker and go out when something else starts; somebody falls on the stairs.',
      unsafe: over('6 mm² over 60 m for 20 A of floodlights, a limit of 5 %.', 60, { feeds: lamps, dropLimit: 0.05 }),
      sound: over('10 mm² over 60 m.', 60, { feeds: lamps, area: 10, dropLimit: 0.05 }),
    },
    {
      ...departure,
      id: 'drop-beyond-a-tighter-limit',
      title: 'A tighter limit that is not kept',
      mustNotSay: 'That the figure of the code is enough where a tighter one is asked.',
      unsafe: over('6 mm² over 45 m, a limit of 3 % asked.', 45, { dropLimit: 0.03 }),
      sound: over('10 mm² over 45 m, 3 % asked.', 45, { area: 10, dropLimit: 0.03 }),
    },
    {
      ...departure,
      id: 'neighbour-behind-the-feeder-not-known',
      title: 'A neighbour behind the feeder whose current nobody knows',
      mustNotSay: 'That the feeder carries the point alone.',
      unsafe: beside(
        '16 mm² feeder over 60 m behind 63 A; the neighbour is not known.',
        load(0, { id: 'kiln', current: unknown('rating plate') }),
      ),
      sound: beside('The neighbour draws 10 A.', load(10, { id: 'kiln' })),
    },
    {
      ...departure,
      id: 'feeder-too-small-for-its-device',
      title: 'The same where the feeder holds by the rating of its device',
      mustNotSay: 'That the feeder carries the point alone.',
      unsafe: beside(
        '16 mm² feeder over 60 m; a second point whose setting is not known.',
        soundPoint({ id: 'second', setting: unknown('app') }),
      ),
      sound: beside(
        '35 mm² feeder over 30 m: the rating of its device is borne.',
        soundPoint({ id: 'second', setting: unknown('app') }),
        { area: 35, feeder: 30 },
      ),
    },
  ],
};
