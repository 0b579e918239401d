import * as z from 'zod';
import { type Fact, type Name, stated, termOf, type Vocabulary } from '../core/index.js';
import { roleProblem } from '../installation/index.js';
import { CalculationError, type CanonicalUnit, hasCode, type ProblemId, parseQuantity } from '../units/index.js';
import { keyWords, noteQuantity } from './problems.js';

/** The forms behind a fact's schema, for the generated JSON Schema. */
export const factForms = new WeakMap<z.ZodType, readonly z.ZodType[]>();

/** How the name of a schema begins whose values are choices of a list. */
export const CHOICE = 'choice.';

/** Names of schemas and what is said of them there, so that the JSON Schema says each once. */
export const schemaNames = new WeakMap<z.ZodType, { readonly name: string; readonly description?: string }>();

/** Gives a schema the name under which the JSON Schema defines it. */
export function named<T>(name: string, schema: z.ZodType<T>, description?: string): z.ZodType<T> {
  schemaNames.set(schema, { name, ...stated({ description }) });
  return schema;
}

/** Suffixes of keys that name the unit of a bare number, by canonical unit: `length_m`. */
const suffixes: { readonly [U in CanonicalUnit]?: Readonly<Record<string, number>> } = {
  A: { A: 1, mA: 1e-3, kA: 1e3 },
  V: { V: 1 },
  Ω: { ohm: 1, mohm: 1e-3 },
  m: { m: 1, mm: 1e-3 },
  'mm²': { mm2: 1 },
  '°C': { C: 1 },
  W: { W: 1, kW: 1e3 },
  VA: { VA: 1, kVA: 1e3 },
  Wh: { kWh: 1e3 },
  s: { s: 1, ms: 1e-3 },
  'K·m/W': { Km_per_W: 1 },
  Ω·m: { ohm_m: 1 },
  '1': { ratio: 1, percent: 0.01 },
  Hz: { Hz: 1 },
};

/** One field of a document object. */
export interface Field<T, Required extends boolean = boolean> {
  /** Schema of the value under the plain key. */
  readonly schema: z.ZodType<T>;
  /** For quantities: schemas of the value under a key with a unit suffix. */
  readonly withSuffix?: Readonly<Record<string, z.ZodType<T>>>;
  readonly required: Required;
}

type Shape = Readonly<Record<string, Field<unknown>>>;
type RequiredKeys<S extends Shape> = { [K in keyof S]: S[K] extends Field<unknown, true> ? K : never }[keyof S];
type ValueOf<F> = F extends Field<infer T> ? T : never;
/** What a document object reads as. */
export type Read<S extends Shape> = { readonly [K in RequiredKeys<S>]: ValueOf<S[K]> } & {
  readonly [K in Exclude<keyof S, RequiredKeys<S>>]?: ValueOf<S[K]>;
};

/** A field that must be there. */
export const must = <T>(field: z.ZodType<T> | Omit<Field<T>, 'required'>): Field<T, true> =>
  field instanceof z.ZodType ? { schema: field, required: true } : { ...field, required: true };
/** A field that may be absent. */
export const may = <T>(field: z.ZodType<T> | Omit<Field<T>, 'required'>): Field<T, false> =>
  field instanceof z.ZodType ? { schema: field, required: false } : { ...field, required: false };

/** Records of the register of facts by the objects that read them, for the words in the JSON Schema. */
export const registerNames = new WeakMap<z.ZodType, string>();

/**
 * A strict object of fields; quantities may stand under a plain key as text or under a key that names their unit.
 * @param of its name in the register of facts
 */
export function record<S extends Shape>(of: string, shape: S): z.ZodType<Read<S>> {
  const keys: Record<string, z.ZodType> = {};
  for (const [name, field] of Object.entries(shape)) {
    keys[name] = field.required && !field.withSuffix ? field.schema : field.schema.optional();
    for (const [suffix, schema] of Object.entries(field.withSuffix ?? {}))
      keys[`${name}_${suffix}`] = schema.optional();
  }
  const fold = (raw: Record<string, unknown>, ctx: z.RefinementCtx): unknown => {
    const out: Record<string, unknown> = {};
    for (const [name, field] of Object.entries(shape)) {
      const spelled = [name, ...Object.keys(field.withSuffix ?? {}).map((s) => `${name}_${s}`)];
      const present = spelled.filter((key) => raw[key] !== undefined);
      if (present.length > 1)
        ctx.addIssue({
          code: 'custom',
          path: [name],
          message: `stands there ${present.length} times: ${present.join(', ')}`,
          params: { id: 'twice' },
        });
      if (present.length === 0 && field.required)
        ctx.addIssue({
          code: 'custom',
          path: [name],
          message: `is missing; write ${spelled.join(' or ')}`,
          params: { id: 'missing' },
        });
      if (present.length > 0) out[name] = raw[present[0] as string];
    }
    return out;
  };
  const object = z.strictObject(keys, {
    error: (issue) =>
      issue.code === 'unrecognized_keys' ? keyWords(issue.keys as string[], Object.keys(keys)) : undefined,
  });
  registerNames.set(object, of);
  return object.transform(fold) as unknown as z.ZodType<Read<S>>;
}

const problem = (ctx: z.RefinementCtx, message: string, id: ProblemId = 'out-of-range'): never => {
  ctx.addIssue({ code: 'custom', message, params: { id } });
  return z.NEVER;
};

/** A size, in canonical units, below which a figure that somebody wrote down is a slip of the pen. */
export const SMALLEST = 1e-9;

function checked(name: Name, value: number, ctx: z.RefinementCtx): number {
  if (value !== 0 && Math.abs(value) < SMALLEST)
    return problem(ctx, `${termOf(name)?.words ?? name} cannot be ${value}: no survey finds such a figure`);
  const wrong = roleProblem(name, value);
  return wrong === undefined ? value : problem(ctx, wrong);
}

const textSchema = (name: Name): z.ZodType<number> =>
  z
    .unknown()
    .transform((text, ctx) => {
      // a ratio has no unit that could be mistaken: it may be a bare number or a text such as '90 %'
      if (typeof text === 'number' && termOf(name)?.unit === '1') return checked(name, text, ctx);
      try {
        return checked(name, parseQuantity(text as string, termOf(name)?.unit as CanonicalUnit), ctx);
      } catch (error) {
        if (typeof text === 'string' && !hasCode(error, 'unreadable-quantity')) {
          if (error instanceof CalculationError) return problem(ctx, error.message);
          throw error;
        }
        return noteQuantity(ctx, name, text);
      }
    })
    .meta({ type: termOf(name)?.unit === '1' ? ['string', 'number'] : 'string' }) as unknown as z.ZodType<number>;

// dividing by 1000 rounds correctly where multiplying by 0.001 does not
const scale = (value: number, factor: number): number => (factor < 1 ? value / Math.round(1 / factor) : value * factor);
const numberSchema = (name: Name, factor: number): z.ZodType<number> =>
  z
    .number({ error: () => 'must be a number; the key names its unit' })
    .transform((value, ctx) => checked(name, scale(value, factor), ctx));

/** A quantity of a role of the vocabulary: text with a unit, or a number under a key that names the unit. */
export function quantityField<N extends Name>(name: N): Omit<Field<Vocabulary[N]>, 'required'> {
  return spell(name, (schema) => schema as unknown as z.ZodType<Vocabulary[N]>);
}

/** A surveyed quantity: the same, as a fact. */
export function factField<N extends Name>(name: N): Omit<Field<Fact<Vocabulary[N]>>, 'required'> {
  return spell(name, (schema) => fact(schema) as unknown as z.ZodType<Fact<Vocabulary[N]>>);
}

function spell<T>(name: Name, wrap: (schema: z.ZodType<number>) => z.ZodType<T>): Omit<Field<T>, 'required'> {
  const { words, unit } = termOf(name) ?? {};
  const listed = suffixes[unit as CanonicalUnit] ?? {};
  const keyed = Object.entries(listed).map(([suffix, factor]) => {
    const schema = wrap(numberSchema(name, factor));
    return [suffix, named(`${name}_${suffix}`, schema, `${words}, in the unit that the key names`)];
  });
  return {
    schema: named(name, wrap(textSchema(name)), `${words}, with its unit (${unit})`),
    withSuffix: Object.fromEntries(keyed),
  };
}

const BY = named('fact.by', z.string().min(1).max(300));
const unknown = named(
  'fact.unknown',
  z
    .strictObject({ unknown: z.union([z.literal(true), BY]) })
    .transform((f) => ({ state: 'unknown', ...(f.unknown === true ? {} : { obtain: f.unknown }) })),
);

/**
 * A fact: the bare value, `{ known, by }`, `{ between: [least, most], by }`, or `{ unknown: how to obtain it }`; `assumed`
 * names the assumption where nobody looked.
 * @param value schema of the value
 */
export function fact<T>(value: z.ZodType<T>): z.ZodType<Fact<T>> {
  const forms = {
    known: z
      .strictObject({ known: value, by: BY.optional(), assumed: BY.optional() })
      .transform((f) => ({ state: 'known', value: f.known, ...stated({ by: f.by, assumed: f.assumed }) })),
    between: z
      .strictObject({ between: z.tuple([value, value]), by: BY.optional(), assumed: BY.optional() })
      .transform((f, ctx) => {
        const [least, most] = f.between;
        if (typeof least !== 'number' || typeof most !== 'number')
          return problem(ctx, 'only a quantity can lie between two values', 'wrong-kind');
        if (least > most) return problem(ctx, 'the smaller value comes first', 'wrong-order');
        return { state: 'between', least, most, ...stated({ by: f.by, assumed: f.assumed }) };
      }),
    unknown,
    bare: value.transform((v) => ({ state: 'known', value: v })),
  };
  const choice = schemaNames.get(value)?.name;
  // dispatch by shape, so that the problems are those of the form that was meant
  const read = z.unknown().transform((input, ctx): unknown => {
    const is = (key: string) => typeof input === 'object' && input !== null && Object.hasOwn(input, key);
    const form = is('known') ? forms.known : is('between') ? forms.between : is('unknown') ? forms.unknown : forms.bare;
    const result = (form as z.ZodType).safeParse(input);
    if (result.success) return result.data;
    for (const issue of result.error.issues) ctx.issues.push({ ...issue, input } as never);
    return z.NEVER;
  });
  const isChoice = choice?.startsWith(CHOICE);
  factForms.set(read, [value, forms.known, ...(isChoice ? [] : [forms.between]), forms.unknown]);
  if (isChoice) named(`fact.${choice?.slice(CHOICE.length)}`, read);
  return read as unknown as z.ZodType<Fact<T>>;
}
