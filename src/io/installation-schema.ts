import * as z from 'zod';
import { own } from '../core/own.js';
import {
  type Board,
  type ChargePoint,
  type Load,
  lineConductors,
  type Outlet,
  type Run,
} from '../installation/index.js';
import { fact, factField, may, must, named, quantityField, record } from './field.js';

export const NAME = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9 ._-]{0,59}$/, 'must be a short name of letters, digits, space, dot, dash');
export const TEXT = z.string().max(500);
export const LINES = z.array(z.enum(lineConductors)).min(1).max(3);
export const COUNT = z.number().int('must be a whole number').min(0).max(10000);
export const yes = named('fact.yes-or-no', fact(z.boolean()));

const OVERCURRENT = z.union(
  [
    z.strictObject({ standard: z.enum(['EN 60898', 'EN 61009']), type: z.enum(['B', 'C', 'D']) }),
    z.strictObject({ standard: z.literal('BS 3871'), type: z.enum(['1', '2', '3']) }),
    z.strictObject({ standard: z.enum(['BS 88-2', 'BS 88-3', 'BS 1361', 'BS 1362', 'BS 3036']) }),
  ],
  {
    error: () =>
      'must name a product standard, and a type for a circuit-breaker: { "standard": "EN 60898", "type": "B" }',
  },
);

const device = named(
  'device',
  record({
    kind: must(fact(OVERCURRENT)),
    rating: must(factField('deviceRating')),
    breakingCapacity: may(factField('breakingCapacity')),
    conditionalRating: may(factField('breakingCapacity')),
    energyClass: may(fact(z.union([z.literal(1), z.literal(2), z.literal(3)]))),
    groupingFactor: may(fact(z.number().gt(0).max(1))),
  }),
);
/** A device whose rating is still to be designed. */
export const deviceToDesign = named(
  'deviceToDesign',
  record({
    kind: must(fact(OVERCURRENT)),
    breakingCapacity: may(factField('breakingCapacity')),
    conditionalRating: may(factField('breakingCapacity')),
    energyClass: may(fact(z.union([z.literal(1), z.literal(2), z.literal(3)]))),
    groupingFactor: may(fact(z.number().gt(0).max(1))),
  }),
);

const POSITION = z.enum(['origin-of-installation', 'origin-of-circuit', 'along-circuit', 'inside-equipment']);
const residualShape = {
  position: must(POSITION),
  type: must(fact(z.enum(['AC', 'A', 'F', 'B']))),
  rating: must(factField('residualOperatingCurrent')),
  ratedCurrent: may(factField('deviceRating')),
  overloadDeclared: may(yes),
  delay: may(fact(z.enum(['general', 'selective']))),
  delayTime: may(factField('disconnectionTime')),
  opensAllLive: may(yes),
  bidirectional: may(yes),
  pointsServed: may(COUNT),
};
export const residual = named('residual', record(residualShape));
const boardResidual = named('boardResidual', record({ ...residualShape, serves: may(z.array(NAME).max(100)) }));

const cableShape = {
  construction: must(z.enum(['flat-twin-and-earth', 'single-core', 'multicore', 'armoured', 'flexible'])),
  material: must(z.enum(['copper', 'aluminium'])),
  insulation: must(z.enum(['thermoplastic-70', 'thermosetting-90', 'thermosetting-60'])),
  cores: must(z.union([z.literal(2), z.literal(3), z.literal(4), z.literal(5)])),
  parallel: may(COUNT.min(1).max(20)),
  loadedCores: may(fact(COUNT.min(1).max(100))),
  protective: must(z.enum(['core', 'bare-core', 'separate', 'armour', 'armour-and-separate', 'conduit', 'none'])),
  protectiveArea: may(factField('protectiveArea')),
  protectiveImpedance: may(factField('resistancePerMetre20')),
  protectiveMaterial: may(z.enum(['copper', 'aluminium', 'steel'])),
};
const cable = named('cable', record({ ...cableShape, area: must(factField('conductorArea')) }));
export const cableToDesign = named('cableToDesign', record(cableShape));

const METHOD = z.enum([
  'A',
  'A1',
  'A2',
  'B',
  'B1',
  'B2',
  'C',
  'D',
  'D1',
  'D2',
  'E',
  'F',
  'G',
  '100',
  '101',
  '102',
  '103',
]);
export const stretch = named(
  'stretch',
  record({
    name: must(TEXT.min(1)),
    length: must(factField('length')),
    method: must(fact(METHOD)),
    ambient: must(factField('ambientTemperature')),
    group: may(
      record({
        arrangement: must(
          z.enum([
            'bunched',
            'single-layer-wall',
            'single-layer-tray',
            'single-layer-ladder',
            'single-layer-ceiling',
            'direct-in-ground',
            'ducts-in-ground',
          ]),
        ),
        circuits: must(fact(COUNT.min(1).max(100))),
        spacing: may(quantityField('length')),
        lightlyLoaded: may(COUNT.max(100)),
        unequal: may(z.boolean()),
        tray: may(
          record({
            support: must(
              z.enum(['perforated tray', 'vertical perforated tray', 'unperforated tray', 'ladder, cleats']),
            ),
            trays: must(z.union([z.literal(1), z.literal(2), z.literal(3), z.literal(6)])),
            spaced: must(z.boolean()),
          }),
        ),
        overloads: may(z.enum(['simultaneous', 'not-simultaneous'])),
      }),
    ),
    insulated: may(factField('insulatedLength')),
    drum: may(
      z.enum([
        'radial, ventilated',
        'radial, unventilated',
        'ventilated cylindrical, 1 layer',
        'ventilated cylindrical, 2 layers',
        'ventilated cylindrical, 3 layers',
        'ventilated cylindrical, 4 layers',
      ]),
    ),
    formation: may(z.enum(['flat-touching', 'trefoil', 'spaced-horizontal', 'spaced-vertical'])),
    soilResistivity: may(factField('soilResistivity')),
    depth: may(factField('depth')),
    concealedShallow: may(yes),
    metalParts: may(yes),
    containment: may(z.enum(['clipped', 'conduit', 'trunking', 'tray', 'duct', 'buried', 'catenary', 'free'])),
    outdoors: may(z.boolean()),
  }),
);

const PURPOSE = z.enum([
  'lighting',
  'socket-outlets',
  'cooking',
  'instantaneous-water-heating',
  'thermostatic-water-heating',
  'space-heating',
  'floor-heating',
  'storage-heating',
  'heat-pump',
  'motor',
  'air-conditioning',
  'charge-point',
  'generation',
  'storage',
  'other',
]);
const load = named(
  'load',
  record({
    kind: must(z.literal('load')),
    id: must(NAME),
    purpose: must(PURPOSE),
    current: must(factField('connectedCurrent')),
    lines: must(LINES),
    withSocket: may(z.boolean()),
    accessories: may(fact(z.enum(['BS 1363', 'other']))),
    plugged: may(yes),
    socketRating: may(factField('deviceRating')),
    residualType: may(fact(z.enum(['AC', 'A', 'F', 'B']))),
    powerFactor: may(quantityField('powerFactor')),
    holds: may(z.enum(['current', 'power'])),
    at: may(quantityField('length')),
    standardCircuit: may(z.boolean()),
  }),
);

const electrode = record({
  resistance: must(factField('electrodeResistance')),
  soilResistivity: may(factField('earthResistivity')),
  separation: may(factField('length')),
});

const OPEN_PEN_DETECTION = [
  'open-pen-detection-touch-voltage',
  'open-pen-detection-window',
  'open-pen-detection-other',
] as const;
/** Words of earlier versions, and what the trade says instead. */
const formerWords: Readonly<Record<string, string>> = {
  'touch-voltage-device': 'open-pen-detection-touch-voltage',
  'line-neutral-window-device': 'open-pen-detection-window',
  'equal-device': 'open-pen-detection-other',
  'tt-island': 'tt-earthing',
};
const renamed = ({ input }: { readonly input?: unknown }): string | undefined => {
  const now = typeof input === 'string' ? own(formerWords, input) : undefined;
  return now === undefined ? undefined : `'${input}' is now called '${now}'`;
};

export const pointShape = {
  setting: must(factField('chargeCurrent')),
  minimum: may(quantityField('chargeCurrent')),
  outdoors: must(yes),
  mode: must(z.union([z.literal(2), z.literal(3), z.literal(4)])),
  directCurrentDetection: may(yes),
  residual: may(residual),
  openPenDevice: may(fact(z.enum(['none', ...OPEN_PEN_DETECTION], { error: renamed }))),
  earthing: may(
    z.enum(
      [
        'balanced-three-phase',
        'low-electrode',
        ...OPEN_PEN_DETECTION,
        'tt-earthing',
        'electrical-separation',
        'supply-earth',
      ],
      { error: renamed },
    ),
  ),
  electrode: may(electrode),
  feedSeparated: may(yes),
  vehiclesSeparated: may(fact(COUNT)),
  bidirectional: may(z.boolean()),
  standingLeakage: may(factField('chargeCurrent')),
  power: may(quantityField('chargePower')),
};
const chargePoint = named(
  'chargePoint',
  record({
    kind: must(z.literal('charge-point')),
    id: must(NAME),
    lines: must(LINES),
    ...pointShape,
  }),
);

const outlet: z.ZodType<Outlet> = z.lazy(() => anOutlet);
const run: z.ZodType<Run> = named(
  'run',
  record({
    id: must(NAME),
    lines: must(LINES),
    device: must(device),
    residual: may(z.array(residual).max(10)),
    ring: may(z.boolean()),
    existing: may(z.boolean()),
    bathOrShower: may(yes),
    cable: must(cable),
    stretches: must(z.array(stretch).max(100)),
    terminalTemperature: may(factField('terminalTemperature')),
    pointsShare: may(TEXT.min(1)),
    feeds: must(z.array(outlet).max(200)),
  }) as unknown as z.ZodType<Run>,
);
const boardShape = {
  kind: must(z.literal('board')),
  id: must(NAME),
  mainSwitch: may(record({ rating: must(factField('deviceRating')), overloadDeclared: may(yes) })),
  conditionalRating: may(factField('breakingCapacity')),
  rating: may(factField('deviceRating')),
  residual: may(z.array(boardResidual).max(20)),
  control: may(
    record({ name: must(TEXT.min(1)), limit: must(factField('controlLimit')), controls: must(z.array(NAME).max(200)) }),
  ),
  spareWays: may(fact(COUNT)),
  surgeProtection: may(yes),
  detached: may(yes),
  extraneousParts: may(yes),
  bonding: may(factField('bondingArea')),
  complete: may(yes),
  runs: must(z.array(run).max(200)),
};
export const board = record(boardShape) as unknown as z.ZodType<Board>;
// dispatch on `kind`, so that the problems are those of the kind that was meant
const anOutlet = z.unknown().transform((input, ctx): Outlet => {
  const kind = (input as { kind?: unknown } | null)?.kind;
  const schema = kind === 'board' ? board : kind === 'charge-point' ? chargePoint : load;
  const result = (schema as z.ZodType<Outlet>).safeParse(input);
  if (result.success) return result.data;
  for (const issue of result.error.issues) ctx.issues.push({ ...issue, input } as never);
  return z.NEVER;
}) as unknown as z.ZodType<Outlet>;
/** The kinds of outlet, for the generated JSON Schema. */
export const outletKinds: readonly z.ZodType[] = [
  board,
  load as z.ZodType<Load>,
  chargePoint as unknown as z.ZodType<ChargePoint>,
];
export const outletSchema = anOutlet;

export const supply = record({
  operation: may(z.enum(['grid', 'island'])),
  currentKind: may(z.enum(['ac', 'dc'])),
  system: must(fact(z.enum(['TN-S', 'TN-C-S', 'TT', 'IT']))),
  phases: must(fact(z.union([z.literal(1), z.literal(3)]))),
  nominalVoltage: must(quantityField('nominalVoltage')),
  frequency: must(quantityField('frequency')),
  externalImpedance: must(factField('externalImpedance')),
  externalImpedanceConfirmed: may(yes),
  prospectiveCurrent: must(factField('prospectiveCurrent')),
  cutOut: must(device),
  cutOutSound: may(yes),
  looped: must(yes),
  metered: may(yes),
  tails: may(factField('tailsArea')),
  tailsFaultProtected: may(yes),
  earthingConductor: may(factField('earthingConductorArea')),
  earthingConductorLaid: may(
    fact(
      z.enum([
        'above-ground',
        'above-ground-protected',
        'buried',
        'buried-against-damage',
        'buried-against-corrosion',
        'buried-protected',
      ]),
    ),
  ),
  supplyNeutral: may(factField('supplyNeutralArea')),
  noExtraneousParts: may(yes),
  bonding: may(z.array(record({ what: must(TEXT.min(1)), area: must(factField('bondingArea')) })).max(20)),
  electrode: may(electrode),
  meterPoint: may(fact(z.string().max(40))),
  specialLocation: may(z.enum(['caravan-park', 'marina', 'construction-site', 'filling-station', 'none'])),
  meteredDemand: may(record({ current: must(factField('demand')), about: must(TEXT.min(1)) })),
});
