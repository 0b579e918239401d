import fc from 'fast-check';
import { type Fact, stated } from '../core/index.js';
import {
  type Board,
  type Cable,
  type ChargePoint,
  type Installation,
  type Line,
  type Load,
  lineConductors,
  type OvercurrentDevice,
  type OvercurrentKind,
  type ResidualDevice,
  type Run,
  type Stretch,
  type Supply,
} from '../installation/index.js';
import {
  amperes,
  celsius,
  hertz,
  kelvinMetresPerWatt,
  metres,
  milliamperes,
  ohms,
  ratio,
  seconds,
  squareMillimetres,
  volts,
} from '../units/index.js';
import { arbitraryFact, type FactChoices } from './quantities.js';

const pick = <const T>(...of: readonly T[]) => fc.constantFrom(...of);
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** A part that is there or not. */
class Maybe {
  constructor(readonly part: fc.Arbitrary<unknown>) {}
}
const maybe = (part: fc.Arbitrary<unknown>) => new Maybe(part);
/** What one cable in ten has. */
const rarely = <T>(part: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: 9, arbitrary: fc.constant(undefined) }, { weight: 1, arbitrary: part });
/** A record of these parts. */
function some<T>(parts: Readonly<Record<string, fc.Arbitrary<unknown> | Maybe>>): fc.Arbitrary<T> {
  const each = Object.entries(parts);
  return fc.record(Object.fromEntries(each.map(([key, p]) => [key, p instanceof Maybe ? p.part : p])), {
    requiredKeys: each.flatMap(([key, p]) => (p instanceof Maybe ? [] : [key])),
  }) as unknown as fc.Arbitrary<T>;
}

const kinds: readonly OvercurrentKind[] = [
  { standard: 'EN 60898', type: 'B' },
  { standard: 'EN 60898', type: 'C' },
  { standard: 'EN 61009', type: 'B' },
  { standard: 'EN 61009', type: 'C' },
  { standard: 'EN 61009', type: 'D' },
  { standard: 'BS 3871', type: '2' },
  { standard: 'BS 88-2' },
  { standard: 'BS 88-3' },
  { standard: 'BS 1361' },
  { standard: 'BS 3036' },
];

/** Overcurrent devices of the kinds that are met in the field. */
function arbitraryDevice(choices: FactChoices = {}): fc.Arbitrary<OvercurrentDevice> {
  return some<OvercurrentDevice>({
    kind: arbitraryFact(pick(...kinds), choices),
    rating: arbitraryFact(pick(6, 16, 20, 32, 40, 50, 63, 100).map(amperes), choices),
    breakingCapacity: maybe(arbitraryFact(pick(1500, 3000, 6000, 10_000).map(amperes), choices)),
    conditionalRating: maybe(arbitraryFact(pick(10_000, 16_000).map(amperes), choices)),
    energyClass: maybe(
      arbitraryFact(pick('1', '2', '3'), choices).map(
        (f) => (f.state === 'known' ? { ...f, value: Number(f.value) } : f) as Fact<1 | 2 | 3>,
      ),
    ),
    groupingFactor: maybe(arbitraryFact(fc.oneof(fc.constant(1), double(0.6, 1)), choices)),
  });
}

/** Residual current devices. */
function arbitraryResidual(choices: FactChoices = {}): fc.Arbitrary<ResidualDevice> {
  return some<ResidualDevice>({
    position: pick('origin-of-installation', 'origin-of-circuit', 'along-circuit', 'inside-equipment'),
    type: arbitraryFact(pick('AC', 'A', 'F', 'B'), choices),
    rating: arbitraryFact(pick(30, 100, 300).map(milliamperes), choices),
    ratedCurrent: maybe(arbitraryFact(pick(40, 63, 80, 100).map(amperes), choices)),
    overloadDeclared: maybe(arbitraryFact(fc.boolean(), choices)),
    delay: maybe(arbitraryFact(pick('general', 'selective'), choices)),
    delayTime: maybe(arbitraryFact(pick(0, 0.06, 0.3).map(seconds), choices)),
    opensAllLive: maybe(arbitraryFact(fc.boolean(), choices)),
    bidirectional: maybe(arbitraryFact(fc.boolean(), choices)),
    pointsServed: maybe(pick(1, 2)),
  });
}

/** Constructions of cable with the insulations, cores and protective conductors that go with them. */
const cables: readonly Pick<Cable, 'construction' | 'insulation' | 'cores' | 'protective'>[] = [
  { construction: 'flat-twin-and-earth', insulation: 'thermoplastic-70', cores: 2, protective: 'bare-core' },
  { construction: 'single-core', insulation: 'thermoplastic-70', cores: 2, protective: 'separate' },
  { construction: 'single-core', insulation: 'thermosetting-90', cores: 4, protective: 'separate' },
  { construction: 'multicore', insulation: 'thermoplastic-70', cores: 3, protective: 'core' },
  { construction: 'multicore', insulation: 'thermosetting-90', cores: 5, protective: 'core' },
  { construction: 'multicore', insulation: 'thermoplastic-70', cores: 4, protective: 'separate' },
  { construction: 'armoured', insulation: 'thermosetting-90', cores: 2, protective: 'armour' },
  { construction: 'armoured', insulation: 'thermosetting-90', cores: 3, protective: 'core' },
  { construction: 'armoured', insulation: 'thermoplastic-70', cores: 4, protective: 'armour' },
  { construction: 'armoured', insulation: 'thermosetting-90', cores: 3, protective: 'armour-and-separate' },
  { construction: 'flexible', insulation: 'thermosetting-60', cores: 3, protective: 'core' },
  { construction: 'single-core', insulation: 'thermoplastic-70', cores: 2, protective: 'conduit' },
];

/** Cables of the constructions that are met in houses, with a core for each line and the neutral. */
function arbitraryCable(three: boolean, choices: FactChoices = {}): fc.Arbitrary<Cable> {
  const needed = (c: (typeof cables)[number]) => (three ? 4 : 2) + (c.protective === 'core' ? 1 : 0);
  const parts = fc.record({
    kind: pick(...cables.filter((c) => c.cores >= needed(c))),
    material: fc.oneof({ weight: 6, arbitrary: pick('copper' as const) }, pick('aluminium' as const)),
    area: arbitraryFact(pick(1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 95).map(squareMillimetres), choices),
    parallel: rarely(pick(2)),
    loadedCores: rarely(arbitraryFact(pick(3, 6, 12), choices)),
    protectiveArea: fc.option(arbitraryFact(pick(1.5, 4, 10, 16).map(squareMillimetres), choices), { nil: undefined }),
  });
  return parts.map(({ kind, material, area, parallel, loadedCores, protectiveArea }) => ({
    ...kind,
    material,
    area,
    ...stated({ parallel, loadedCores, protectiveArea }),
  }));
}

/** A conduit that is the protective conductor goes all the way with its cable. */
const inItsConduit = (run: Run): Run => ({
  ...run,
  stretches: run.stretches.map((s) =>
    s.containment && (s.cable ?? run.cable).protective === 'conduit' ? { ...s, containment: 'conduit' } : s,
  ),
});

type OneCable = Omit<Stretch, 'cable' | 'existing' | 'jointAccessible'>;
/** Stretches of a route, in air or in the ground. */
function arbitraryStretch(choices: FactChoices = {}): fc.Arbitrary<Stretch> {
  const group = some<NonNullable<Stretch['group']>>({
    arrangement: pick(
      'bunched',
      'single-layer-wall',
      'single-layer-tray',
      'single-layer-ceiling',
      'direct-in-ground',
      'ducts-in-ground',
    ),
    circuits: arbitraryFact(pick(1, 2, 3, 6), choices),
    unequal: maybe(arbitraryFact(fc.boolean(), choices)),
    overloads: maybe(pick('simultaneous', 'not-simultaneous')),
    lightlyLoaded: maybe(pick(0, 1)),
    tray: maybe(
      fc.record({
        support: pick('perforated tray', 'vertical perforated tray', 'ladder, cleats'),
        trays: pick(1, 2),
        spaced: fc.boolean(),
      }),
    ),
  });
  return some<OneCable>({
    name: pick('loft', 'wall', 'garden', 'cupboard'),
    length: arbitraryFact(double(0.5, 80).map(metres), choices),
    method: arbitraryFact(pick('A', 'B', 'C', 'C', 'D', 'E', 'F', '100', '101', '102', '103'), choices),
    ambient: arbitraryFact(pick(10, 20, 25, 30, 35, 45, 55).map(celsius), choices),
    group: maybe(group),
    insulated: maybe(arbitraryFact(pick(0, 0.05, 0.3, 2).map(metres), choices)),
    drum: maybe(pick('none', 'radial, ventilated', 'ventilated cylindrical, 2 layers')),
    formation: maybe(pick('flat-touching', 'trefoil')),
    soilResistivity: maybe(arbitraryFact(pick(0.7, 1, 2.5).map(kelvinMetresPerWatt), choices)),
    depth: maybe(arbitraryFact(pick(0.02, 0.07, 0.5, 0.7, 1).map(metres), choices)),
    concealedShallow: maybe(arbitraryFact(fc.boolean(), choices)),
    metalParts: maybe(arbitraryFact(fc.boolean(), choices)),
    containment: maybe(pick('clipped', 'conduit', 'trunking', 'tray', 'duct', 'buried', 'free')),
    outdoors: maybe(fc.boolean()),
  });
}

const linesOf = (three: boolean): readonly Line[] => (three ? lineConductors : [lineConductors[0]]);

/** Charge points. */
function arbitraryChargePoint(three: boolean, choices: FactChoices = {}): fc.Arbitrary<ChargePoint> {
  const electrode = some<NonNullable<ChargePoint['electrode']>>({
    resistance: arbitraryFact(double(1, 300).map(ohms), choices),
    separation: maybe(arbitraryFact(double(0.5, 20).map(metres), choices)),
  });
  return some<ChargePoint>({
    kind: pick('charge-point'),
    id: pick('point'),
    lines: pick(linesOf(three)),
    setting: arbitraryFact(pick(10, 16, 20, 32).map(amperes), choices),
    outdoors: arbitraryFact(fc.boolean(), choices),
    mode: pick(3),
    minimum: maybe(pick(6).map(amperes)),
    directCurrentDetection: maybe(arbitraryFact(fc.boolean(), choices)),
    residual: maybe(arbitraryResidual(choices).map((r) => ({ ...r, position: 'inside-equipment' as const }))),
    openPenDevice: maybe(
      arbitraryFact(
        pick('none', 'open-pen-detection-touch-voltage', 'open-pen-detection-window', 'open-pen-detection-other'),
        choices,
      ),
    ),
    earthing: maybe(
      pick(
        'balanced-three-phase',
        'low-electrode',
        'open-pen-detection-touch-voltage',
        'open-pen-detection-window',
        'open-pen-detection-other',
        'tt-earthing',
        'electrical-separation',
        'supply-earth',
      ),
    ),
    electrode: maybe(electrode),
    feedSeparated: maybe(arbitraryFact(fc.boolean(), choices)),
    vehiclesSeparated: maybe(arbitraryFact(pick(0, 1, 2), choices)),
    bidirectional: maybe(fc.boolean()),
    standingLeakage: maybe(arbitraryFact(pick(1, 3.5).map(milliamperes), choices)),
  });
}

/** Loads other than charge points. */
function arbitraryLoad(three: boolean, choices: FactChoices = {}): fc.Arbitrary<Load> {
  return some<Load>({
    kind: pick('load'),
    id: pick('load'),
    purpose: pick('lighting', 'socket-outlets', 'cooking', 'instantaneous-water-heating', 'heat-pump', 'other'),
    current: arbitraryFact(double(1, 45).map(amperes), choices),
    lines: pick(linesOf(three)),
    withSocket: maybe(fc.boolean()),
    accessories: maybe(arbitraryFact(pick('BS 1363', 'other'), choices)),
    plugged: maybe(arbitraryFact(fc.boolean(), choices)),
    socketRating: maybe(arbitraryFact(pick(13, 32, 63).map(amperes), choices)),
    residualType: maybe(arbitraryFact(pick('AC', 'A', 'F', 'B'), choices)),
  });
}

/**
 * Runs that feed a charge point or a load.
 * @param three whether the run is three-phase
 * @param choices whether facts may be open
 * @returns a generator for fast-check
 */
export function arbitraryRun(three: boolean, choices: FactChoices = {}): fc.Arbitrary<Run> {
  const point = arbitraryChargePoint(three, choices);
  const run = some<Run>({
    id: pick('ev'),
    lines: pick(linesOf(three)),
    device: arbitraryDevice(choices),
    residual: maybe(fc.array(arbitraryResidual(choices), { minLength: 1, maxLength: 2 })),
    cable: arbitraryCable(three, choices),
    stretches: fc.array(arbitraryStretch(choices), { minLength: 1, maxLength: 3 }),
    thirdHarmonic: maybe(arbitraryFact(fc.oneof(fc.constant(0), double(0, 0.6)).map(ratio), choices)),
    terminalTemperature: maybe(arbitraryFact(pick(70, 90).map(celsius), choices)),
    ring: maybe(fc.boolean()),
    bathOrShower: maybe(arbitraryFact(fc.boolean(), choices)),
    feeds: fc.oneof({ weight: 3, arbitrary: point }, arbitraryLoad(three, choices)).map((o) => [o]),
  });
  if (!choices.joined) return run.map(inItsConduit);
  const join = fc.record({
    cable: arbitraryCable(three, choices),
    jointAccessible: arbitraryFact(fc.boolean(), choices),
  });
  return fc.tuple(run, fc.array(join, { minLength: 2, maxLength: 2 })).map(
    ([{ ring: _ring, ...one }, joins]): Run =>
      inItsConduit({
        ...one,
        stretches: one.stretches.map((s, i) => ({ ...s, ...(i > 0 ? joins[i - 1] : {}) })),
      }),
  );
}

/**
 * Supplies.
 * @param three whether the supply is three-phase
 * @param choices whether facts may be open
 * @returns a generator for fast-check
 */
export function arbitrarySupply(three: boolean, choices: FactChoices = {}): fc.Arbitrary<Supply> {
  const area = arbitraryFact(pick(4, 6, 10, 16, 25, 35).map(squareMillimetres), choices);
  return some<Supply>({
    system: arbitraryFact(pick('TN-S', 'TN-C-S', 'TN-C-S', 'TT'), choices),
    phases: pick({ state: 'known', value: three ? 3 : 1 } as const),
    nominalVoltage: pick(230).map(volts),
    frequency: pick(50).map(hertz),
    externalImpedance: arbitraryFact(double(0.05, 100).map(ohms), choices),
    externalImpedanceConfirmed: maybe(arbitraryFact(fc.boolean(), choices)),
    separateEarthConfirmed: maybe(arbitraryFact(fc.boolean(), choices)),
    prospectiveCurrent: arbitraryFact(double(200, 16_000).map(amperes), choices),
    cutOut: fc.record({
      kind: arbitraryFact(pick({ standard: 'BS 88-3' }, { standard: 'BS 1361' }), choices),
      rating: arbitraryFact(pick(60, 80, 100).map(amperes), choices),
    }) as fc.Arbitrary<OvercurrentDevice>,
    looped: arbitraryFact(fc.boolean(), choices),
    tails: maybe(area),
    tailsFaultProtected: maybe(arbitraryFact(fc.boolean(), choices)),
    earthingConductor: maybe(area),
    earthingConductorLaid: maybe(
      arbitraryFact(pick('above-ground', 'above-ground-protected', 'buried', 'buried-protected'), choices),
    ),
    supplyNeutral: maybe(area),
    noExtraneousParts: maybe(arbitraryFact(fc.boolean(), choices)),
    bonding: maybe(fc.array(fc.record({ what: pick('water', 'gas'), area }), { maxLength: 2 })),
    electrode: maybe(fc.record({ resistance: arbitraryFact(double(1, 500).map(ohms), choices) })),
    specialLocation: maybe(pick('caravan-park', 'filling-station', 'none')),
  });
}

/**
 * Installations with one circuit `ev`, from the board at the origin or behind a feeder `submain`. What is drawn need
 * not be good practice: rules have to answer for all of it.
 * @param choices whether facts may be open
 * @returns a generator for fast-check
 */
export function arbitraryInstallation(choices: FactChoices = {}): fc.Arbitrary<Installation> {
  return fc.boolean().chain((three) =>
    fc
      .record({
        supply: arbitrarySupply(three, choices),
        run: three ? fc.boolean().chain((all) => arbitraryRun(all, choices)) : arbitraryRun(false, choices),
        feeder: fc.option(arbitraryRun(three, choices), { nil: undefined }),
        residual: fc.option(arbitraryResidual(choices), { nil: undefined }),
        conditional: fc.option(arbitraryFact(pick(10_000, 16_000).map(amperes), choices), { nil: undefined }),
        surge: fc.option(arbitraryFact(fc.boolean(), choices), { nil: undefined }),
        detached: fc.option(arbitraryFact(fc.boolean(), choices), { nil: undefined }),
        extraneousParts: fc.option(arbitraryFact(fc.boolean(), choices), { nil: undefined }),
        bonding: fc.option(arbitraryFact(pick(4, 10, 16).map(squareMillimetres), choices), { nil: undefined }),
        complete: fc.option(arbitraryFact(fc.boolean(), choices), { nil: undefined }),
      })
      .map(
        ({
          supply,
          run,
          feeder,
          residual,
          conditional,
          surge,
          detached,
          extraneousParts,
          bonding,
          complete,
        }): Installation => {
          const extras = stated({
            residual: residual && [residual],
            conditionalRating: conditional,
            surgeProtection: surge,
            complete,
          });
          if (!feeder) return { supply, board: { kind: 'board', id: 'db', runs: [run], ...extras } };
          const garage: Board = {
            kind: 'board',
            id: 'garage',
            runs: [run],
            ...extras,
            ...stated({ detached, extraneousParts, bonding }),
          };
          // no ring feeds a board
          const { ring: _ring, ...way } = feeder;
          const submain: Run = { ...way, id: 'submain', feeds: [garage] };
          return { supply, board: { kind: 'board', id: 'db', runs: [submain] } };
        },
      ),
  );
}
