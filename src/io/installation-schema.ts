import * as z from 'zod';
import { own } from '../core/own.js';
import {
  type Board,
  type ChargePoint,
  counts,
  type Load,
  labels,
  type Outlet,
  type OvercurrentKind,
  overcurrentTypes,
  type Run,
} from '../installation/index.js';
import type { Bounds } from '../units/index.js';
import { fact, factField, may, must, named, quantityField, record } from './field.js';

export const NAME = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9 ._-]{0,59}$/, 'must be a short name of letters, digits, space, dot, dash');
export const TEXT = z.string().max(500);
export const LINES = z.array(z.enum(labels.line)).min(1).max(3);
export const yes = named('fact.yes-or-no', fact(z.boolean()));

/** One of the labels of a list, which may be numbers. */
const oneOf = <const T extends string | number>(of: readonly T[]): z.ZodType<T> => z.literal([...of]);
/** A number of a kind: whole, unless it is said to be broken. */
export const count = ({ least, above, most, broken }: Bounds & { readonly broken?: true }): z.ZodType<number> => {
  let n = broken ? z.number() : z.number().int('must be a whole number');
  if (least !== undefined) n = n.min(least);
  if (above !== undefined) n = n.gt(above);
  return most === undefined ? n : n.max(most);
};
export const COUNT = count(counts.pieces);

const standards = Object.entries(overcurrentTypes) as unknown as [standard: string, types: readonly string[]][];
const OVERCURRENT = z.union(
  [
    ...standards.flatMap(([standard, types]) =>
      types.length > 0 ? [z.strictObject({ standard: z.literal(standard), type: z.enum(types as [string]) })] : [],
    ),
    z.strictObject({ standard: z.enum(standards.flatMap(([s, types]) => (types.length > 0 ? [] : [s])) as [string]) }),
  ],
  {
    error: () =>
      'must name a product standard, and a type for a circuit-breaker: { "standard": "EN 60898", "type": "B" }',
  },
) as unknown as z.ZodType<OvercurrentKind>;

const device = named(
  'device',
  record({
    kind: must(fact(OVERCURRENT)),
    rating: must(factField('deviceRating')),
    breakingCapacity: may(factField('breakingCapacity')),
    conditionalRating: may(factField('breakingCapacity')),
    energyClass: may(fact(oneOf(labels.energyClass))),
    groupingFactor: may(fact(count(counts.groupingFactor))),
  }),
);
/** A device whose rating is still to be designed. */
export const deviceToDesign = named(
  'deviceToDesign',
  record({
    kind: must(fact(OVERCURRENT)),
    breakingCapacity: may(factField('breakingCapacity')),
    conditionalRating: may(factField('breakingCapacity')),
    energyClass: may(fact(oneOf(labels.energyClass))),
    groupingFactor: may(fact(count(counts.groupingFactor))),
  }),
);

const POSITION = oneOf(labels.position);
const residualShape = {
  position: must(POSITION),
  type: must(fact(oneOf(labels.residualType))),
  rating: must(factField('residualOperatingCurrent')),
  ratedCurrent: may(factField('deviceRating')),
  overloadDeclared: may(yes),
  delay: may(fact(oneOf(labels.delay))),
  delayTime: may(factField('disconnectionTime')),
  opensAllLive: may(yes),
  bidirectional: may(yes),
  pointsServed: may(COUNT),
};
export const residual = named('residual', record(residualShape));
const boardResidual = named('boardResidual', record({ ...residualShape, serves: may(z.array(NAME).max(100)) }));

const cableShape = {
  construction: must(oneOf(labels.construction)),
  material: must(oneOf(labels.material)),
  insulation: must(oneOf(labels.insulation)),
  cores: must(oneOf(labels.coresOfCable)),
  parallel: may(count(counts.parallel)),
  loadedCores: may(fact(count(counts.coresLoaded))),
  protective: must(oneOf(labels.protective)),
  protectiveArea: may(factField('protectiveArea')),
  protectiveImpedance: may(factField('resistancePerMetre20')),
  protectiveMaterial: may(oneOf(labels.protectiveMaterial)),
};
const cable = named('cable', record({ ...cableShape, area: must(factField('conductorArea')) }));
export const cableToDesign = named('cableToDesign', record(cableShape));

const METHOD = oneOf(labels.method);
export const stretch = named(
  'stretch',
  record({
    name: must(TEXT.min(1)),
    length: must(factField('length')),
    method: must(fact(METHOD)),
    ambient: must(factField('ambientTemperature')),
    group: may(
      record({
        arrangement: must(oneOf(labels.arrangement)),
        circuits: must(fact(count(counts.circuits))),
        spacing: may(quantityField('length')),
        lightlyLoaded: may(count(counts.lightlyLoaded)),
        unequal: may(yes),
        tray: may(
          record({
            support: must(oneOf(labels.support)),
            trays: must(oneOf(labels.trays)),
            spaced: must(z.boolean()),
          }),
        ),
        overloads: may(oneOf(labels.overloads)),
      }),
    ),
    insulated: may(factField('insulatedLength')),
    drum: may(oneOf(labels.drum)),
    formation: may(oneOf(labels.formation)),
    soilResistivity: may(factField('soilResistivity')),
    depth: may(factField('depth')),
    concealedShallow: may(yes),
    metalParts: may(yes),
    containment: may(oneOf(labels.containment)),
    outdoors: may(z.boolean()),
  }),
);

const PURPOSE = oneOf(labels.purpose);
const load = named(
  'load',
  record({
    kind: must(z.literal('load')),
    id: must(NAME),
    purpose: must(PURPOSE),
    current: must(factField('connectedCurrent')),
    lines: must(LINES),
    withSocket: may(z.boolean()),
    accessories: may(fact(oneOf(labels.accessories))),
    plugged: may(yes),
    socketRating: may(factField('deviceRating')),
    residualType: may(fact(oneOf(labels.residualType))),
    powerFactor: may(quantityField('powerFactor')),
    holds: may(oneOf(labels.holds)),
    at: may(quantityField('length')),
    standardCircuit: may(z.boolean()),
  }),
);

const electrode = record({
  resistance: must(factField('electrodeResistance')),
  soilResistivity: may(factField('earthResistivity')),
  separation: may(factField('length')),
});

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
  mode: must(oneOf(labels.mode)),
  directCurrentDetection: may(yes),
  residual: may(residual),
  noResidual: may(yes),
  openPenDevice: may(fact(z.enum(labels.openPenDevice, { error: renamed }))),
  earthing: may(z.enum(labels.earthing, { error: renamed })),
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
    noResidual: may(yes),
    ring: may(z.boolean()),
    existing: may(z.boolean()),
    bathOrShower: may(yes),
    thirdHarmonic: may(factField('thirdHarmonic')),
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
  noResidual: may(yes),
  control: may(
    record({
      name: must(TEXT.min(1)),
      limit: must(factField('controlLimit')),
      controls: must(z.array(NAME).max(200)),
      reaction: may(factField('excessTime')),
    }),
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
  system: must(fact(oneOf(labels.system))),
  phases: must(fact(oneOf(labels.phaseCount))),
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
  earthingConductorLaid: may(fact(oneOf(labels.earthingConductorLaid))),
  supplyNeutral: may(factField('supplyNeutralArea')),
  noExtraneousParts: may(yes),
  bonding: may(z.array(record({ what: must(TEXT.min(1)), area: must(factField('bondingArea')) })).max(20)),
  electrode: may(electrode),
  meterPoint: may(fact(z.string().max(40))),
  specialLocation: may(oneOf(labels.specialLocation)),
  meteredDemand: may(record({ current: must(factField('demand')), about: must(TEXT.min(1)) })),
});
