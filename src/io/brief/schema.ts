import { type Question, questionnaire } from '../../installation/index.js';

type Json = Record<string, unknown>;

/** What an answer is, for a form: a plain value, or nothing where it is not known. */
function valueSchema(q: Question): Json {
  if (q.answer === 'yes') return { type: 'boolean' };
  if (q.answer === 'choice')
    return { oneOf: (q.choices ?? []).map(({ value, words }) => ({ const: value, title: words })) };
  if (q.answer === 'count') return { type: 'integer', minimum: 0, maximum: 10_000 };
  if (q.answer === 'date') return { type: 'string', format: 'date' };
  if (q.answer === 'clock') return { type: 'string', pattern: '^([01]?\\d|2[0-3]):[0-5]\\d$' };
  const text = { type: 'string', maxLength: 300 };
  return q.answer === 'quantity' || q.answer === 'bond' ? { anyOf: [text, { type: 'number', minimum: 0 }] } : text;
}

const factSchema: Json = {
  title: 'A fact with whoever says so',
  anyOf: [
    {
      type: 'object',
      required: ['known'],
      additionalProperties: false,
      properties: { known: true, by: { type: 'string' } },
    },
    {
      type: 'object',
      required: ['between'],
      additionalProperties: false,
      properties: { between: { type: 'array', minItems: 2, maxItems: 2 }, by: { type: 'string' } },
    },
    { type: 'object', required: ['unknown'], additionalProperties: false, properties: { unknown: true } },
  ],
};

/**
 * The JSON Schema (draft 2020-12) of a brief survey. It makes a form by itself: every answer has its title, its question
 * as description, an example and words for each choice, and under `x-question` its section, unit, whom to ask, what to
 * photograph and whether it is asked first.
 * @returns the schema, plain JSON
 * @example
 * ```ts
 * import { briefJsonSchema } from 'ohmwright/io';
 *
 * briefJsonSchema().title; // => 'ohmwright brief/1'
 * ```
 */
export function briefJsonSchema(): Readonly<Record<string, unknown>> {
  const properties: Json = { format: { const: 'brief/1', title: 'Format' } };
  for (const q of questionnaire()) {
    const { title, question, note, example, section, unit, whom, photo, usual, first, answer, mayBeUnknown } = q;
    properties[q.id] = {
      title,
      description: note === undefined ? question : `${question} ${note}`,
      ...(example === undefined ? {} : { examples: [exampleOf(q, example)] }),
      anyOf: [
        valueSchema(q),
        ...(mayBeUnknown ? [{ type: 'null', title: 'not known' }] : []),
        { $ref: '#/$defs/fact' },
      ],
      'x-question': {
        answer,
        section,
        whom,
        mayBeUnknown,
        ...(first ? { first } : {}),
        ...(unit === undefined ? {} : { unit }),
        ...(photo === undefined ? {} : { photo }),
        ...(usual === undefined ? {} : { usual }),
      },
    };
  }
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'ohmwright brief/1',
    type: 'object',
    required: ['format'],
    additionalProperties: false,
    properties,
    $defs: { fact: factSchema },
  };
}

function exampleOf(q: Question, example: string): unknown {
  if (q.answer === 'yes') return example === 'true';
  if (q.answer === 'count') return Number(example);
  return q.choices?.find((c) => String(c.value) === example)?.value ?? example;
}
