import * as z from 'zod';
import {
  type Board,
  type ChargePoint,
  counts,
  dwellingsAtOnce,
  type Load,
  labels,
  type Outlet,
  type OvercurrentKind,
  overcurrentTypes,
  type Run,
  standardWords,
} from '../installation/index.js';
import type { Bounds } from '../units/index.js';
import { CHOICE, fact, factField, may, must, named, quantityField, record } from './field.js';

export const NAME = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9 ._-]{0,59}$/, 'must be a short name of letters, digits, space, dot, dash');
export const TEXT = z.string().max(500);
export const yes = named('fact.yes-or-no', fact(z.boolean()));

/** One of the labels of a list, which may be numbers; a list of the installation has a name, so that the JSON Schema says it once. */
const oneOf = <const T extends string | number>(of: readonly T[]): z.ZodType<T> => {
  const name = Object.entries(labels).find(([, list]) => (list as readonly unknown[]) === of)?.[0];
  const schema = z.literal([...of]);
  return name === undefined ? schema : named(`${CHOICE}${name}`, schema);
};
export const LINES = z.array(oneOf(labels.line)).min(1).max(3);
/** A number of a kind: whole, unless it is said to be broken. */
export const count = ({ least, above, most, broken }: Bounds & { readonly broken?: true }): z.ZodType<number> => {
  let n = broken ? z.number() : z.number().int('must be a whole number');
  if (least !== undefined) n = n.min(least);
  if (above !== undefined) n = n.gt(above);
  return most === undefined ? n : n.max(most);
};
export const COUNT = count(counts.pieces);

const standards = Object.entries(overcurrentTypes) as unknown as [standard: string, types: readonly string[]][];
const standard = (names: readonly string[]) =>
  z.literal([...names]).meta({ oneOf: names.map((name) => ({ const: name, title: standardWords(name) })) });
const OVERCURRENT = named(
  'overcurrentKind',
  z.union([
    ...standards.flatMap(([name, types]) =>
      types.length > 0 ? [z.strictObject({ standard: standard([name]), type: z.enum(types as [string]) })] : [],
    ),
    z.strictObject({ standard: standard(standards.flatMap(([s, types]) => (types.length > 0 ? [] : [s]))) }),
  ]),
) as unknown as z.ZodType<OvercurrentKind>;

const device = named(
  'device',
  record('device', {
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
  record('device', {
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
  pointsServed: may(count(counts.pointsServed)),
};
export const residual = named('residual', record('residual', residualShape));
const boardResidual = named(
  'boardResidual',
  record('residual', { ...residualShape, serves: may(z.array(NAME).max(100)) }),
);

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
const cable = named('cable', record('cable', { ...cableShape, area: must(factField('conductorArea')) }));
/** One with a size lies there already, and is kept. */
export const cableToDesign = named(
  'cableToDesign',
  record('cable', { ...cableShape, area: may(factField('conductorArea')) }),
);

const METHOD = oneOf(labels.method);
export const stretch = named(
  'stretch',
  record('stretch', {
    name: must(TEXT.min(1)),
    length: must(factField('length')),
    method: must(fact(METHOD)),
    ambient: must(factField('ambientTemperature')),
    cable: may(cable),
    existing: may(z.boolean()),
    jointAccessible: may(yes),
    group: may(
      record('group', {
        arrangement: must(oneOf(labels.arrangement)),
        circuits: must(fact(count(counts.circuits))),
        spacing: may(quantityField('length')),
        lightlyLoaded: may(count(counts.lightlyLoaded)),
        unequal: may(yes),
        tray: may(
          record('tray', {
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
const dwellings = named(
  'dwellingGroup',
  record('dwellingGroup', {
    count: must(count(counts.dwellingCount)),
    each: must(factField('connectedCurrent')),
    heating: must(fact(oneOf(labels.heating))),
    electricWater: may(yes),
    phases: may(fact(oneOf(labels.phaseCount))),
  }),
);
const loadRecord = named(
  'load',
  record('load', {
    kind: must(z.literal('load')),
    id: must(NAME),
    purpose: must(PURPOSE),
    current: may(factField('connectedCurrent')),
    lines: must(LINES),
    withSocket: may(z.boolean()),
    accessories: may(fact(oneOf(labels.accessories))),
    plugged: may(yes),
    socketRating: may(factField('deviceRating')),
    residualType: may(fact(oneOf(labels.residualType))),
    powerFactor: may(quantityField('powerFactor')),
    startCurrent: may(factField('startCurrent')),
    workingShare: may(factField('workingShare')),
    holds: may(oneOf(labels.holds)),
    at: may(quantityField('length')),
    standardCircuit: may(z.boolean()),
    dwellings: may(dwellings),
  }),
);
/** Dwellings take what all of them take at once; every other load says its current. */
const load = loadRecord.transform(({ current, ...read }, ctx) => {
  const { dwellings: several, lines } = read;
  if (current !== undefined) return { ...read, current };
  if (several) return { ...read, current: dwellingsAtOnce(several, lines.length as 1 | 2 | 3) };
  ctx.addIssue({
    code: 'custom',
    path: ['current'],
    message: 'is missing; write current or current_A or current_mA or current_kA',
    params: { id: 'missing' },
  });
  return z.NEVER;
});

const electrode = record('electrode', {
  resistance: must(factField('electrodeResistance')),
  soilResistivity: may(factField('earthResistivity')),
  separation: may(factField('length')),
});

export const pointShape = {
  setting: must(factField('chargeCurrent')),
  minimum: may(quantityField('chargeCurrent')),
  outdoors: must(yes),
  mode: must(oneOf(labels.mode)),
  socket: may(fact(oneOf(labels.socket))),
  socketRating: may(factField('deviceRating')),
  directCurrentDetection: may(yes),
  residual: may(residual),
  noResidual: may(yes),
  openPenDevice: may(fact(oneOf(labels.openPenDevice))),
  earthing: may(oneOf(labels.earthing)),
  electrode: may(electrode),
  feedSeparated: may(yes),
  vehiclesSeparated: may(fact(COUNT)),
  bidirectional: may(z.boolean()),
  standingLeakage: may(factField('chargeCurrent')),
  power: may(quantityField('chargePower')),
  directPower: may(factField('directOutputPower')),
  efficiency: may(factField('rectifierEfficiency')),
  powerFactor: may(factField('powerFactor')),
};
const chargePoint = named(
  'chargePoint',
  record('chargePoint', {
    kind: must(z.literal('charge-point')),
    id: must(NAME),
    lines: must(LINES),
    ...pointShape,
  }),
);

const outlet: z.ZodType<Outlet> = z.lazy(() => anOutlet);
const notSurveyed = { state: 'unknown', obtain: 'not surveyed' } as const;
/** What stands for cable and route of an existing circuit whose survey leaves them out: no rule of the new work reads them. */
const unsurveyed: Pick<Run, 'cable' | 'stretches'> = {
  cable: {
    construction: 'multicore',
    material: 'copper',
    insulation: 'thermoplastic-70',
    cores: 5,
    area: notSurveyed,
    protective: 'separate',
    protectiveArea: notSurveyed,
  },
  stretches: [{ name: 'not surveyed', length: notSurveyed, method: notSurveyed, ambient: notSurveyed }],
};
const runSchema = record('run', {
  id: must(NAME),
  lines: must(LINES),
  device: must(device),
  residual: may(z.array(residual).max(10)),
  noResidual: may(yes),
  ring: may(z.boolean()),
  beside: may(
    z
      .array(
        record('wayBeside', {
          id: must(NAME),
          device: must(device),
          stretches: must(z.array(stretch).max(100)),
        }),
      )
      .max(9),
  ),
  existing: may(z.boolean()),
  outOfUse: may(yes),
  fromTails: may(yes),
  bathOrShower: may(yes),
  thirdHarmonic: may(factField('thirdHarmonic')),
  cable: may(cable),
  stretches: may(z.array(stretch).max(100)),
  terminalTemperature: may(factField('terminalTemperature')),
  pointsShare: may(TEXT.min(1)),
  feeds: must(z.array(outlet).max(200)),
}).transform((read, ctx) => {
  const { existing, feeds } = read;
  const mayLeaveOut = existing === true && feeds.every((o) => o.kind === 'load');
  for (const key of ['cable', 'stretches'] as const)
    if (read[key] === undefined && !mayLeaveOut)
      ctx.addIssue({
        code: 'custom',
        path: [key],
        message: 'is missing; only an existing circuit that feeds nothing but loads may leave it out',
        params: { id: 'missing' },
      });
  return { ...unsurveyed, ...read };
});
const run = named('run', runSchema as unknown as z.ZodType<Run>);
const boardShape = {
  kind: must(z.literal('board')),
  at: may(quantityField('length')),
  id: must(NAME),
  mainSwitch: may(
    record('mainSwitch', {
      rating: must(factField('deviceRating')),
      overloadDeclared: may(yes),
      fuseAhead: may(factField('deviceRating')),
    }),
  ),
  conditionalRating: may(factField('breakingCapacity')),
  rating: may(factField('deviceRating')),
  residual: may(z.array(boardResidual).max(20)),
  noResidual: may(yes),
  control: may(
    record('control', {
      name: must(TEXT.min(1)),
      limit: must(factField('controlLimit')),
      controls: must(z.array(NAME).max(200)),
      reaction: may(factField('excessTime')),
      keepsFuse: may(yes),
      fallback: may(factField('chargeCurrent')),
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
export const board = record('board', boardShape) as unknown as z.ZodType<Board>;
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
  loadRecord as unknown as z.ZodType<Load>,
  chargePoint as unknown as z.ZodType<ChargePoint>,
];
export const outletSchema = anOutlet;

const transformer = record('transformer', {
  rating: must(factField('transformerRating')),
  voltage: must(factField('transformerVoltage')),
  impedanceVoltage: must(factField('transformerImpedanceVoltage')),
  loss: must(factField('transformerLoss')),
  gridFaultPower: must(factField('gridFaultPower')),
  owner: must(oneOf(labels.transformerOwner)),
  parallel: may(count(counts.parallel)),
  beside: may(
    z
      .array(
        record('besideTransformer', {
          rating: must(factField('transformerRating')),
          impedanceVoltage: must(factField('transformerImpedanceVoltage')),
          loss: must(factField('transformerLoss')),
        }),
      )
      .max(9),
  ),
  harmonicLossFactor: may(factField('harmonicLossFactor')),
  atOrigin: may(yes),
  cable: may(
    record('transformerCable', {
      material: must(oneOf(labels.material)),
      length: must(factField('length')),
      area: must(factField('conductorArea')),
      protectiveArea: must(factField('protectiveArea')),
      parallel: may(count(counts.parallel)),
    }),
  ),
});

export const supply = record('supply', {
  operation: may(z.enum(['grid', 'island'])),
  currentKind: may(z.enum(['ac', 'dc'])),
  system: must(fact(oneOf(labels.system))),
  phases: must(fact(oneOf(labels.phaseCount))),
  nominalVoltage: must(quantityField('nominalVoltage')),
  frequency: must(quantityField('frequency')),
  externalImpedance: must(factField('externalImpedance')),
  externalImpedanceConfirmed: may(yes),
  separateEarthConfirmed: may(yes),
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
  bonding: may(z.array(record('bonded', { what: must(TEXT.min(1)), area: must(factField('bondingArea')) })).max(20)),
  electrode: may(electrode),
  meterPoint: may(fact(z.string().max(40))),
  specialLocation: may(oneOf(labels.specialLocation)),
  transformer: may(transformer),
  meteredDemand: may(record('meteredDemand', { current: must(factField('demand')), about: must(TEXT.min(1)) })),
});
