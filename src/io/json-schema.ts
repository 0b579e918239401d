import * as z from 'zod';
import { factForms } from './field.js';
import { outletKinds, outletSchema, surveySchema } from './schema.js';

/**
 * The JSON Schema (draft 2020-12) of the survey document, for editors and other languages. It describes the shape; rules
 * between fields, such as names that must exist, are told by `readSurvey` alone.
 */
export function surveyJsonSchema(): Readonly<Record<string, unknown>> {
  const convert = (schema: z.ZodType): Record<string, unknown> => {
    const { $schema: _, ...rest } = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any', override }) as Record<
      string,
      unknown
    >;
    return rest;
  };
  const outlets = { $ref: '#/$defs/outlet' };
  const override = ({ zodSchema, jsonSchema }: { zodSchema: unknown; jsonSchema: Record<string, unknown> }): void => {
    const forms = factForms.get(zodSchema as z.ZodType);
    if (forms) jsonSchema.anyOf = forms.map((form) => convert(form));
    if (zodSchema === outletSchema) Object.assign(jsonSchema, outlets);
  };
  const survey = convert(surveySchema);
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'ohmwright survey/1',
    ...survey,
    $defs: { ...(survey.$defs as object | undefined), outlet: { oneOf: outletKinds.map(convert) } },
  };
}
