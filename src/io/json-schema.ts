import * as z from 'zod';
import { stated } from '../core/index.js';
import { factForms, registerNames, schemaNames } from './field.js';
import { outletKinds, outletSchema } from './installation-schema.js';
import { RECORD, withWords } from './schema-words.js';
import { surveySchema } from './survey-schema.js';

type Json = Record<string, unknown>;

/**
 * The JSON Schema (draft 2020-12) of the survey document, for editors and other languages. It describes the shape; rules
 * between fields, such as names that must exist, are told by `readSurvey` alone. Every field has its title, its question
 * as description, examples and words for each choice from the register of facts; `x-question` says whom to ask, what to
 * photograph and in which unit.
 * @returns the schema, plain JSON
 * @example
 * ```ts
 * import { surveyJsonSchema } from 'ohmwright/io';
 *
 * surveyJsonSchema().$schema; // => 'https://json-schema.org/draft/2020-12/schema'
 * ```
 */
export function surveyJsonSchema(): Readonly<Record<string, unknown>> {
  const defs: Record<string, Json> = {};
  const convert = (root: z.ZodType): Json => {
    const override = ({ zodSchema, jsonSchema }: { zodSchema: unknown; jsonSchema: Json }): void => {
      const record = registerNames.get(zodSchema as z.ZodType);
      if (record !== undefined) jsonSchema[RECORD] = record;
      const json = replacement(zodSchema as z.ZodType, zodSchema === root);
      if (!json) return;
      for (const key of Object.keys(jsonSchema)) delete jsonSchema[key];
      Object.assign(jsonSchema, json);
    };
    const {
      $schema: _,
      $defs: _inner,
      ...rest
    } = z.toJSONSchema(root, { io: 'input', unrepresentable: 'any', override });
    return rest as Json;
  };
  /** What stands for a schema that is said once, or whose forms are known here only. */
  const replacement = (schema: z.ZodType, isRoot: boolean): Json | undefined => {
    if (schema === outletSchema) return { $ref: '#/$defs/outlet' };
    const forms = factForms.get(schema);
    const { name, description } = schemaNames.get(schema) ?? {};
    if (name !== undefined && !isRoot) {
      if (!defs[name]) {
        defs[name] = {}; // holds the place: schemas may refer to each other
        defs[name] = { ...stated({ description }), ...convert(schema) };
      }
      return { $ref: `#/$defs/${name}` };
    }
    return forms && { anyOf: forms.map((form) => replacement(form, false) ?? convert(form)) };
  };
  const survey = convert(surveySchema);
  defs.outlet = {};
  defs.outlet = { oneOf: outletKinds.map((kind) => replacement(kind, false) ?? convert(kind)) };
  return withWords({
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'ohmwright survey/1',
    ...survey,
    $defs: defs,
  });
}
