import * as z from 'zod';
import { type Name, termOf } from '../core/index.js';
import { own } from '../core/own.js';
import { around } from '../installation/facts/survey-shapes.js';
import {
  type Board,
  type Cable,
  type ChargePoint,
  choicesOf,
  counts,
  dwellingsAtOnce,
  type Load,
  labels,
  type Outlet,
  type OvercurrentDevice,
  type OvercurrentKind,
  overcurrentTypes,
  type ResidualDevice,
  type Run,
  type Stretch,
  type Supply,
  shapes,
  standardWords,
} from '../installation/index.js';
import type { Bounds } from '../units/index.js';
import { CHOICE, type Field, fact, factField, may, must, named, quantityField, record } from './field.js';

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

/** Fields that a document does not say, or not everywhere. */
const NOT_READ: readonly string[] = ['cable.sizeName', 'residual.serves'];
/** How many a list may hold, where it is less than others. */
const MOST: Readonly<Record<string, number>> = {
  residual: 10,
  beside: 9,
  stretches: 100,
  bonding: 20,
};

/** Records that the JSON Schema says once. */
const NAMED: readonly string[] = ['device', 'residual', 'cable', 'stretch', 'dwellingGroup'];

type Shape = Readonly<Record<string, readonly [how: string, what: string]>>;
type Fields = Readonly<Record<string, Field<unknown>>>;

export const recordOf = <T>(of: string, fields: Fields): z.ZodType<T> => record(of, fields) as unknown as z.ZodType<T>;

const shaped = new Map<string, z.ZodType>();
/** The record of a shape, made once. */
export function shapeOf<T>(shape: string): z.ZodType<T> {
  const made = shaped.get(shape) ?? recordOf<T>(shape, fieldsOf(shape));
  shaped.set(shape, made);
  return (NAMED.includes(shape) ? named(shape, made) : made) as z.ZodType<T>;
}

function schemaOf(what: string, text: z.ZodType): z.ZodType {
  if (own(labels, what)) return oneOf<string | number>(labels[what as keyof typeof labels]);
  if (own(counts, what)) return count(counts[what as keyof typeof counts]);
  if (own(shapes, what) ?? own(around, what)) return shapeOf(what);
  if (what.includes('.')) return z.enum(choicesOf(what)?.map(({ value }) => String(value)) ?? []);
  if (what === 'overcurrentKind') return OVERCURRENT;
  return what === 'yes' ? z.boolean() : text;
}

function readBy(key: string, how: string, what: string): z.ZodType | Omit<Field<unknown>, 'required'> {
  const isFact = how.startsWith('fact');
  if (termOf(what)) return isFact ? factField(what as Name) : quantityField(what as Name);
  if (isFact) return what === 'yes' ? yes : fact(schemaOf(what, TEXT));
  // a list of texts is one of names
  if (how.startsWith('list')) return z.array(schemaOf(what, NAME)).max(MOST[key] ?? 200);
  return schemaOf(what, key === 'id' ? NAME : TEXT.min(1));
}

/** The fields of a record of a survey as a document has them: those of its shape, but for some. */
export const fieldsOf = (shape: string, ...but: readonly string[]): Fields =>
  Object.fromEntries(
    Object.entries(own<Shape>(shapes, shape) ?? own(around, shape) ?? {}).flatMap(([key, [how, what]]) => {
      if (but.includes(key) || NOT_READ.includes(`${shape}.${key}`)) return [];
      const field = readBy(key, how, what);
      return [[key, how.endsWith('?') ? may(field) : must(field)]];
    }),
  );

/** A device whose rating is still to be designed. */
export const deviceToDesign = named(
  'deviceToDesign',
  recordOf<Omit<OvercurrentDevice, 'rating'>>('device', fieldsOf('device', 'rating')),
);
export const residual = shapeOf<ResidualDevice>('residual');
const boardResidual = named(
  'boardResidual',
  recordOf('residual', { ...fieldsOf('residual'), serves: may(z.array(NAME).max(100)) }),
);
/** One with a size lies there already, and is kept. */
export const cableToDesign = named(
  'cableToDesign',
  recordOf<Omit<Cable, 'area'> & Partial<Cable>>('cable', {
    ...fieldsOf('cable'),
    area: may(factField('conductorArea')),
  }),
);
export const stretch = shapeOf<Stretch>('stretch');

const loadRecord = named(
  'load',
  recordOf<Omit<Load, 'current'> & Partial<Load>>('load', {
    kind: must(z.literal('load')),
    ...fieldsOf('load'),
    current: may(factField('connectedCurrent')),
    lines: must(LINES),
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

/** A charge point that is wanted, which has its name and lines from what is said around it. */
export const wantedPoint = recordOf<Omit<ChargePoint, 'kind' | 'id' | 'lines'>>(
  'chargePoint',
  fieldsOf('chargePoint', 'id'),
);
const chargePoint = named(
  'chargePoint',
  recordOf<ChargePoint>('chargePoint', {
    kind: must(z.literal('charge-point')),
    ...fieldsOf('chargePoint'),
    lines: must(LINES),
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
const run = named(
  'run',
  recordOf<Omit<Run, 'cable' | 'stretches'> & Partial<Run>>('run', {
    ...fieldsOf('run'),
    lines: must(LINES),
    cable: may(shapeOf('cable')),
    stretches: may(z.array(stretch).max(100)),
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
  }),
) as z.ZodType<Run>;
export const board = named(
  'board',
  recordOf<Board>('board', {
    kind: must(z.literal('board')),
    ...fieldsOf('board'),
    residual: may(z.array(boardResidual).max(20)),
    runs: must(z.array(run).max(200)),
  }),
);
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

export const supply = recordOf<Supply & { readonly operation?: string; readonly currentKind?: string }>('supply', {
  operation: may(z.enum(['grid', 'island'])),
  currentKind: may(z.enum(['ac', 'dc'])),
  ...fieldsOf('supply'),
  meterPoint: may(fact(z.string().max(40))),
});
