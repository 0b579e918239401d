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
/** Each of these keys is there or not; the others always are. */
const some = <T, K extends keyof T>(parts: { [P in keyof T]-?: fc.Arbitrary<T[P]> }, sometimes: readonly K[]) =>
  fc.record(parts, {
    requiredKeys: (Object.keys(parts) as (keyof T)[]).filter((k) => !sometimes.includes(k as K)),
  }) as unknown as fc.Arbitrary<T>;

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
  return some<OvercurrentDevice, 'breakingCapacity' | 'conditionalRating' | 'energyClass' | 'groupingFactor'>(
    {
      kind: arbitraryFact(pick(...kinds), choices),
      rating: arbitraryFact(pick(6, 16, 20, 32, 40, 50, 63, 100).map(amperes), choices),
      breakingCapacity: arbitraryFact(pick(1500, 3000, 6000, 10_000).map(amperes), choices),
      conditionalRating: arbitraryFact(pick(10_000, 16_000).map(amperes), choices),
      energyClass: arbitraryFact(pick('1', '2', '3'), choices).map(
        (f) => (f.state === 'known' ? { ...f, value: Number(f.value) } : f) as Fact<1 | 2 | 3>,
      ),
      groupingFactor: arbitraryFact(fc.oneof(fc.constant(1), double(0.6, 1)), choices),
    },
    ['breakingCapacity', 'conditionalRating', 'energyClass', 'groupingFactor'],
  );
}

/** Residual current devices. */
function arbitraryResidual(choices: FactChoices = {}): fc.Arbitrary<ResidualDevice> {
  return some<ResidualDevice, Exclude<keyof ResidualDevice, 'position' | 'type' | 'rating'>>(
    {
      position: pick('origin-of-installation', 'origin-of-circuit', 'along-circuit', 'inside-equipment'),
      type: arbitraryFact(pick('AC', 'A', 'F', 'B'), choices),
      rating: arbitraryFact(pick(30, 100, 300).map(milliamperes), choices),
      ratedCurrent: arbitraryFact(pick(40, 63, 80, 100).map(amperes), choices),
      overloadDeclared: arbitraryFact(fc.boolean(), choices),
      delay: arbitraryFact(pick('general', 'selective'), choices),
      delayTime: arbitraryFact(pick(0, 0.06, 0.3).map(seconds), choices),
      opensAllLive: arbitraryFact(fc.boolean(), choices),
      bidirectional: arbitraryFact(fc.boolean(), choices),
      pointsServed: pick(1, 2),
    },
    ['ratedCurrent', 'overloadDeclared', 'delay', 'delayTime', 'opensAllLive', 'bidirectional', 'pointsServed'],
  );
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
    parallel: fc.option(pick(2), { nil: undefined, freq: 9 }),
    loadedCores: fc.option(arbitraryFact(pick(3, 6, 12), choices), { nil: undefined, freq: 9 }),
    protectiveArea: fc.option(arbitraryFact(pick(1.5, 4, 10, 16).map(squareMillimetres), choices), { nil: undefined }),
  });
  return parts.map(({ kind, material, area, parallel, loadedCores, protectiveArea }) => ({
    ...kind,
    material,
    area,
    ...stated({ parallel, loadedCores, protectiveArea }),
  }));
}

type OneCable = Omit<Stretch, 'cable' | 'existing' | 'jointAccessible'>;
/** Stretches of a route, in air or in the ground. */
function arbitraryStretch(choices: FactChoices = {}): fc.Arbitrary<Stretch> {
  const group = some<NonNullable<Stretch['group']>, 'unequal' | 'overloads' | 'lightlyLoaded' | 'tray'>(
    {
      arrangement: pick(
        'bunched',
        'single-layer-wall',
        'single-layer-tray',
        'single-layer-ceiling',
        'direct-in-ground',
        'ducts-in-ground',
      ),
      circuits: arbitraryFact(pick(1, 2, 3, 6), choices),
      unequal: arbitraryFact(fc.boolean(), choices),
      overloads: pick('simultaneous', 'not-simultaneous'),
      lightlyLoaded: pick(0, 1),
      tray: fc.record({
        support: pick('perforated tray', 'vertical perforated tray', 'ladder, cleats'),
        trays: pick(1, 2),
        spaced: fc.boolean(),
      }),
    } as never,
    ['unequal', 'overloads', 'lightlyLoaded', 'tray'],
  );
  return some<OneCable, Exclude<keyof OneCable, 'name' | 'length' | 'method' | 'ambient'>>(
    {
      name: pick('loft', 'wall', 'garden', 'cupboard'),
      length: arbitraryFact(double(0.5, 80).map(metres), choices),
      method: arbitraryFact(pick('A', 'B', 'C', 'C', 'D', 'E', 'F', '100', '101', '102', '103'), choices),
      ambient: arbitraryFact(pick(10, 20, 25, 30, 35, 45, 55).map(celsius), choices),
      group,
      insulated: arbitraryFact(pick(0, 0.05, 0.3, 2).map(metres), choices),
      drum: pick('none', 'radial, ventilated', 'ventilated cylindrical, 2 layers'),
      formation: pick('flat-touching', 'trefoil'),
      soilResistivity: arbitraryFact(pick(0.7, 1, 2.5).map(kelvinMetresPerWatt), choices),
      depth: arbitraryFact(pick(0.02, 0.07, 0.5, 0.7, 1).map(metres), choices),
      concealedShallow: arbitraryFact(fc.boolean(), choices),
      metalParts: arbitraryFact(fc.boolean(), choices),
      containment: pick('clipped', 'conduit', 'trunking', 'tray', 'duct', 'buried', 'free'),
      outdoors: fc.boolean(),
    },
    [
      'group',
      'insulated',
      'drum',
      'formation',
      'soilResistivity',
      'depth',
      'concealedShallow',
      'metalParts',
      'containment',
      'outdoors',
    ],
  );
}

const linesOf = (three: boolean): readonly Line[] => (three ? lineConductors : [lineConductors[0]]);

/** Charge points. */
function arbitraryChargePoint(three: boolean, choices: FactChoices = {}): fc.Arbitrary<ChargePoint> {
  const electrode = some<NonNullable<ChargePoint['electrode']>, 'separation' | 'soilResistivity'>(
    {
      resistance: arbitraryFact(double(1, 300).map(ohms), choices),
      separation: arbitraryFact(double(0.5, 20).map(metres), choices),
    } as never,
    ['separation'],
  );
  return some<ChargePoint, Exclude<keyof ChargePoint, 'kind' | 'id' | 'lines' | 'setting' | 'outdoors' | 'mode'>>(
    {
      kind: pick('charge-point'),
      id: pick('point'),
      lines: pick(linesOf(three)),
      setting: arbitraryFact(pick(10, 16, 20, 32).map(amperes), choices),
      outdoors: arbitraryFact(fc.boolean(), choices),
      mode: pick(3),
      minimum: pick(6).map(amperes),
      directCurrentDetection: arbitraryFact(fc.boolean(), choices),
      residual: arbitraryResidual(choices).map((r) => ({ ...r, position: 'inside-equipment' as const })),
      openPenDevice: arbitraryFact(
        pick('none', 'open-pen-detection-touch-voltage', 'open-pen-detection-window', 'open-pen-detection-other'),
        choices,
      ),
      earthing: pick(
        'balanced-three-phase',
        'low-electrode',
        'open-pen-detection-touch-voltage',
        'open-pen-detection-window',
        'open-pen-detection-other',
        'tt-earthing',
        'electrical-separation',
        'supply-earth',
      ),
      electrode,
      feedSeparated: arbitraryFact(fc.boolean(), choices),
      vehiclesSeparated: arbitraryFact(pick(0, 1, 2), choices),
      bidirectional: fc.boolean(),
      standingLeakage: arbitraryFact(pick(1, 3.5).map(milliamperes), choices),
    } as never,
    [
      'minimum',
      'directCurrentDetection',
      'residual',
      'openPenDevice',
      'earthing',
      'electrode',
      'feedSeparated',
      'vehiclesSeparated',
      'bidirectional',
      'standingLeakage',
    ],
  );
}

/** Loads other than charge points. */
function arbitraryLoad(three: boolean, choices: FactChoices = {}): fc.Arbitrary<Load> {
  return some<Load, Exclude<keyof Load, 'kind' | 'id' | 'purpose' | 'current' | 'lines'>>(
    {
      kind: pick('load'),
      id: pick('load'),
      purpose: pick('lighting', 'socket-outlets', 'cooking', 'instantaneous-water-heating', 'heat-pump', 'other'),
      current: arbitraryFact(double(1, 45).map(amperes), choices),
      lines: pick(linesOf(three)),
      withSocket: fc.boolean(),
      accessories: arbitraryFact(pick('BS 1363', 'other'), choices),
      plugged: arbitraryFact(fc.boolean(), choices),
      socketRating: arbitraryFact(pick(13, 32, 63).map(amperes), choices),
      residualType: arbitraryFact(pick('AC', 'A', 'F', 'B'), choices),
    } as never,
    ['withSocket', 'accessories', 'plugged', 'socketRating', 'residualType'],
  );
}

/**
 * Runs that feed a charge point or a load.
 * @param three whether the run is three-phase
 * @param choices whether facts may be open
 * @returns a generator for fast-check
 */
export function arbitraryRun(three: boolean, choices: FactChoices = {}): fc.Arbitrary<Run> {
  const point = arbitraryChargePoint(three, choices);
  const run = some<Run, 'residual' | 'thirdHarmonic' | 'terminalTemperature' | 'ring' | 'bathOrShower'>(
    {
      id: pick('ev'),
      lines: pick(linesOf(three)),
      device: arbitraryDevice(choices),
      residual: fc.array(arbitraryResidual(choices), { minLength: 1, maxLength: 2 }),
      cable: arbitraryCable(three, choices),
      stretches: fc.array(arbitraryStretch(choices), { minLength: 1, maxLength: 3 }),
      thirdHarmonic: arbitraryFact(fc.oneof(fc.constant(0), double(0, 0.6)).map(ratio), choices),
      terminalTemperature: arbitraryFact(pick(70, 90).map(celsius), choices),
      ring: fc.boolean(),
      bathOrShower: arbitraryFact(fc.boolean(), choices),
      feeds: fc.oneof({ weight: 3, arbitrary: point }, arbitraryLoad(three, choices)).map((o) => [o]),
    } as never,
    ['residual', 'thirdHarmonic', 'terminalTemperature', 'ring', 'bathOrShower'],
  );
  if (!choices.joined) return run;
  const join = fc.record({
    cable: arbitraryCable(three, choices),
    jointAccessible: arbitraryFact(fc.boolean(), choices),
  });
  return fc.tuple(run, fc.array(join, { minLength: 2, maxLength: 2 })).map(
    ([{ ring: _ring, ...one }, joins]): Run => ({
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
  return some<
    Supply,
    | 'externalImpedanceConfirmed'
    | 'separateEarthConfirmed'
    | 'tails'
    | 'tailsFaultProtected'
    | 'earthingConductor'
    | 'earthingConductorLaid'
    | 'supplyNeutral'
    | 'noExtraneousParts'
    | 'bonding'
    | 'electrode'
    | 'specialLocation'
  >(
    {
      system: arbitraryFact(pick('TN-S', 'TN-C-S', 'TN-C-S', 'TT'), choices),
      phases: pick({ state: 'known', value: three ? 3 : 1 } as const),
      nominalVoltage: pick(230).map(volts),
      frequency: pick(50).map(hertz),
      externalImpedance: arbitraryFact(double(0.05, 100).map(ohms), choices),
      externalImpedanceConfirmed: arbitraryFact(fc.boolean(), choices),
      separateEarthConfirmed: arbitraryFact(fc.boolean(), choices),
      prospectiveCurrent: arbitraryFact(double(200, 16_000).map(amperes), choices),
      cutOut: fc.record({
        kind: arbitraryFact(pick({ standard: 'BS 88-3' }, { standard: 'BS 1361' }), choices),
        rating: arbitraryFact(pick(60, 80, 100).map(amperes), choices),
      }) as fc.Arbitrary<OvercurrentDevice>,
      looped: arbitraryFact(fc.boolean(), choices),
      tails: area,
      tailsFaultProtected: arbitraryFact(fc.boolean(), choices),
      earthingConductor: area,
      earthingConductorLaid: arbitraryFact(
        pick('above-ground', 'above-ground-protected', 'buried', 'buried-protected'),
        choices,
      ),
      supplyNeutral: area,
      noExtraneousParts: arbitraryFact(fc.boolean(), choices),
      bonding: fc.array(fc.record({ what: pick('water', 'gas'), area }), { maxLength: 2 }),
      electrode: fc.record({ resistance: arbitraryFact(double(1, 500).map(ohms), choices) }),
      specialLocation: pick('caravan-park', 'filling-station', 'none'),
    } as never,
    [
      'externalImpedanceConfirmed',
      'separateEarthConfirmed',
      'tails',
      'tailsFaultProtected',
      'earthingConductor',
      'earthingConductorLaid',
      'supplyNeutral',
      'noExtraneousParts',
      'bonding',
      'electrode',
      'specialLocation',
    ],
  );
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
