import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  known,
  type Load,
  metres,
  type Outlet,
  type OvercurrentDevice,
  type Run,
  type Stretch,
  squareMillimetres,
  unknown,
} from '../../src/index.js';
import { load } from '../support/house.js';
import { assessed, type Case, type Chapter, type Hazard } from './hazard.js';
import { garageFeeder } from './residual-circuits.js';
import { metresOf, premises, soundCircuit, soundHouse, soundPoint, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const sockets = (change: Partial<Load> = {}): Load =>
  load(26, { id: 'sockets', purpose: 'socket-outlets', accessories: known('BS 1363', seen), ...change });
const { accessories: _unsaid, ...plain } = sockets();

/** A ring in flat cable behind a device; the maker's let-through energy of the device is at hand. */
const ring = (
  what: string,
  feeds: readonly Outlet[],
  of: {
    readonly area?: number;
    readonly rating?: number;
    readonly kind?: OvercurrentDevice['kind'];
    readonly stretch?: Partial<Stretch>;
    readonly ring?: boolean;
  } = {},
): Case => ({
  what,
  told: () => {
    const run = soundCircuit();
    const own: Run = {
      ...run,
      ring: of.ring ?? true,
      device: {
        ...run.device,
        kind: of.kind ?? run.device.kind,
        rating: known(amperes(of.rating ?? 32), 'marking'),
      },
      cable: { ...run.cable, area: known(squareMillimetres(of.area ?? 2.5), 'marking') },
      stretches: [soundStretch({ length: metresOf(40), ...of.stretch })],
      feeds,
    };
    return assessed(code, soundHouse([own]), 'ev', { ...premises, makersLetThrough: 12_000 });
  },
});

const common: Pick<Hazard, 'harm' | 'clause' | 'mustNotSay' | 'check'> = {
  harm: 'Nothing protects the cable against overload: one leg of the ring carries more than it bears, and starts a fire in floor or wall.',
  clause: 'BS 7671:2018+A2:2022, 433.1.204 and 433.1.1; two sources',
  mustNotSay: 'That the cable may be smaller than the device asks because it is a ring.',
  check: 'tabulated-capacity',
};
/** A circuit of a cooker that was there, with a residual current device along it. */
const cooker = (what: string, change: Partial<Run>): Case => ({
  what,
  told: () => {
    const run = soundCircuit();
    const own: Run = {
      ...run,
      existing: true,
      fromTails: known(false, 'seen'),
      jointsAccessible: known(true, 'followed'),
      device: { ...run.device, kind: known({ standard: 'EN 60898', type: 'B' }, 'marking') },
      residual: (run.residual ?? []).map((r) => ({ ...r, position: 'along-circuit' as const })),
      feeds: [load(30, { id: 'cooker', purpose: 'cooking', withSocket: true, residualType: known('A', 'its maker') })],
      ...change,
    };
    return assessed(code, soundHouse([own]), 'ev', { ...premises, makersLetThrough: 12_000 });
  },
});
const proper = ring('2.5 mm² ring of socket-outlets to BS 1363 behind 32 A.', [sockets()]);

export const chapter: Chapter = {
  title: 'Rings that are not ring final circuits',
  introduction:
    'A ring final circuit is the one place where the device may be larger than the cable. It holds for what it was thought for, and for nothing else.',
  hazards: [
    {
      id: 'ring-that-feeds-a-board',
      title: 'A ring to the board of the garage',
      harm: 'Fault currents at the far board are those of two cables, and its devices are made for what one lets through: one of them bursts.',
      clause: 'BS 7671:2018+A2:2022, 434.5.1, from memory; rings are for socket-outlets: 433.1.204, two sources',
      mustNotSay: 'What devices behind a ring to a board have to break, and that the drop on it is a quarter.',
      unsafe: {
        what: '16 mm² armoured cable to a garage and back, said to be a ring.',
        told: () => assessed(code, soundHouse([garageFeeder({ ring: true })]), 'garage feeder', premises),
      },
      sound: {
        what: 'One cable to the garage.',
        told: () => assessed(code, soundHouse([garageFeeder()]), 'garage feeder', premises),
      },
    },
    {
      ...common,
      id: 'ring-in-cable-of-1-5',
      title: 'A ring in 1.5 mm² flat cable',
      unsafe: ring('1.5 mm² ring behind 32 A, method C, where 1.5 mm² carries 20 A.', [sockets()], { area: 1.5 }),
      sound: proper,
    },
    {
      ...common,
      id: 'ring-in-cable-of-1-5-behind-30',
      title: 'An old ring in 1.5 mm² behind a 30 A circuit-breaker',
      unsafe: ring('1.5 mm² ring behind 30 A.', [sockets()], { area: 1.5, rating: 30 }),
      sound: ring('2.5 mm² ring behind 30 A.', [sockets()], { rating: 30 }),
    },
    {
      ...common,
      id: 'ring-that-feeds-a-charge-point',
      title: 'A charge point on a ring',
      unsafe: ring('2.5 mm² ring behind 32 A with a point of 32 A.', [soundPoint()]),
      sound: ring('A radial of 6 mm² for the point.', [soundPoint()], {
        area: 6,
        ring: false,
        stretch: { length: metresOf(20) },
      }),
    },
    {
      ...common,
      id: 'ring-that-feeds-a-small-charge-point',
      title: 'A charge point of 13 A between socket-outlets on a ring',
      check: 'own-circuit',
      unsafe: ring('2.5 mm² ring behind 32 A: socket-outlets, and a point set to 13 A.', [
        sockets(),
        soundPoint({ setting: known(amperes(13)) }),
      ]),
      sound: proper,
    },
    {
      ...common,
      id: 'ring-for-a-fixed-heater',
      title: 'A fixed heater on a ring of its own',
      unsafe: ring('2.5 mm² ring behind 32 A for a heater of 30 A.', [load(30, { purpose: 'space-heating' })]),
      sound: ring('The same in 6 mm², which carries 32 A in either leg.', [load(30, { purpose: 'space-heating' })], {
        area: 6,
      }),
    },
    {
      ...common,
      id: 'heater-among-sockets-on-a-ring',
      title: 'A heater of 16 A wired straight to a ring of socket-outlets',
      unsafe: ring('2.5 mm² ring behind 32 A: socket-outlets, and 16 A without a fuse of its own.', [
        sockets({ current: known(amperes(13)) }),
        load(16, { id: 'heater', purpose: 'space-heating', accessories: known('BS 1363') }),
      ]),
      sound: ring('The same with 12 A behind a fused connection unit.', [
        sockets({ current: known(amperes(13)) }),
        load(12, { id: 'heater', purpose: 'space-heating', accessories: known('BS 1363', seen) }),
      ]),
    },
    {
      ...common,
      id: 'ring-of-industrial-sockets',
      title: 'A ring of industrial socket-outlets, without fuses in their plugs',
      unsafe: ring('2.5 mm² ring behind 32 A with socket-outlets that are not to BS 1363.', [
        sockets({ accessories: known('other', seen) }),
      ]),
      sound: proper,
    },
    {
      ...common,
      id: 'ring-whose-sockets-nobody-saw',
      title: 'A ring whose socket-outlets nobody has seen',
      check: 'ring-capacity',
      unsafe: ring('2.5 mm² ring behind 32 A; the accessories are not known.', [
        sockets({ accessories: unknown('walk round the house') }),
      ]),
      sound: proper,
    },
    {
      ...common,
      id: 'ring-whose-accessories-are-left-out',
      title: 'A ring of which the accessories are left out',
      check: 'ring-capacity',
      unsafe: ring('2.5 mm² ring behind 32 A; nothing is said of the accessories.', [plain]),
      sound: proper,
    },
    {
      ...common,
      id: 'ring-behind-40',
      title: 'A ring behind 40 A',
      unsafe: ring('2.5 mm² ring behind 40 A.', [sockets()], { rating: 40 }),
      sound: ring('6 mm² ring behind 40 A: 433.1.1 is met without the rule.', [sockets()], { area: 6, rating: 40 }),
    },
    {
      ...common,
      id: 'ring-under-loft-insulation',
      title: 'A ring with a leg under loft insulation',
      check: 'ring-capacity',
      unsafe: ring('2.5 mm² ring behind 32 A, method 100, 3 m surrounded.', [sockets()], {
        stretch: { method: known('100', seen), insulated: known(metres(3), 'tape') },
      }),
      sound: ring('The same above the insulation.', [sockets()], {
        stretch: { method: known('100', seen), insulated: known(metres(0), seen) },
      }),
    },
    {
      ...common,
      id: 'ring-in-deep-insulation',
      title: 'A ring beside deep insulation, where it carries less than 20 A',
      check: 'ring-capacity',
      unsafe: ring('2.5 mm² ring behind 32 A, method 101: 17 A.', [sockets()], {
        stretch: { method: known('101', seen), insulated: known(metres(0), seen) },
      }),
      sound: ring('The same by method 102: 21 A.', [sockets()], {
        stretch: { method: known('102', seen), insulated: known(metres(0), seen) },
      }),
    },
    {
      id: 'device-in-one-leg-of-what-may-be-a-ring',
      title: 'A residual current device in the cable of a cooker, of which nobody has seen whether it is a ring',
      harm: 'The device stands in one leg. Whoever touches the live case of the cooker is fed by the other one.',
      clause: 'Circuit theory: a ring is fed from both of its ends; BS 7671:2018+A2:2022, 411.3.3, two texts',
      mustNotSay: 'That the device stands ahead of the cooker.',
      check: 'residual-current-socket-outlets',
      unsafe: cooker('A cooker unit with a socket-outlet, 30 mA along its cable, no word on whether it is a ring.', {}),
      sound: cooker('The same, seen to be no ring.', { ring: false }),
    },
  ],
};
