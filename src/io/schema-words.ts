import { type Choice, choicesOf, type FactEntry, factRegister } from '../installation/index.js';
import { CHOICE } from './field.js';

type Json = Record<string, unknown>;

/** Under this key a schema that is being made says which record of the register it is of. */
export const RECORD = 'x-record';

/** Replaces lists of allowed values by the same values with their words. */
function sayChoices(at: unknown, choices: readonly Choice[]): void {
  if (typeof at !== 'object' || at === null) return;
  const json = at as Json;
  const allowed = Array.isArray(json.enum) ? json.enum : 'const' in json ? [json.const] : undefined;
  if (allowed?.every((value) => choices.some((c) => c.value === value))) {
    delete json.enum;
    delete json.const;
    json.oneOf = allowed.map((value) => ({ const: value, title: choices.find((c) => c.value === value)?.words }));
    return;
  }
  for (const [key, inner] of Object.entries(json)) if (key !== 'properties') sayChoices(inner, choices);
  // the forms of a fact hold the value under keys of their own
  const forms = json.properties as Json | undefined;
  if (forms?.known) sayChoices(forms.known, choices);
  if (forms?.between) sayChoices(forms.between, choices);
}

/** An example as the document holds it. */
function exampleOf({ example, choices, unit }: FactEntry): unknown {
  if (example === undefined) return undefined;
  const choice = choices?.find((c) => String(c.value) === example);
  if (choice) return choice.value;
  return unit === undefined && /^\d+(\.\d+)?$/.test(example) && example.length < 9 ? Number(example) : example;
}

function sayOf(property: Json, entry: FactEntry): void {
  const { title, question, note, whom, photo, unit, choices } = entry;
  property.title = title;
  property.description = note === undefined ? question : `${question} ${note}`;
  const example = exampleOf(entry);
  if (example !== undefined && property.type !== 'array') property.examples = [example];
  property['x-question'] = {
    whom,
    ...(photo === undefined ? {} : { photo }),
    ...(unit === undefined ? {} : { unit }),
  };
  if (choices) sayChoices(property, choices);
}

/** The schema with the words of the register: titles, questions, examples and words for choices. */
export function withWords(schema: Json): Json {
  const walk = (at: unknown): void => {
    if (typeof at !== 'object' || at === null) return;
    const json = at as Json;
    const record = json[RECORD];
    delete json[RECORD];
    for (const [key, property] of Object.entries((json.properties ?? {}) as Record<string, Json>)) {
      const [field = '', ...rest] = key.split('_');
      const unit = rest.join('_');
      const entry = factRegister().get(`${record}.${field}`);
      // a key that names its unit needs no more than that beside what the plain one says
      if (entry && unit) property.title = `${entry.title}, ${unit}`;
      else if (entry) sayOf(property, entry);
    }
    for (const inner of Object.values(json)) walk(inner);
  };
  walk(schema);
  for (const [name, json] of Object.entries((schema.$defs ?? {}) as Record<string, Json>)) {
    const choices = name.startsWith(CHOICE) ? choicesOf(name.slice(CHOICE.length)) : undefined;
    if (choices) sayChoices(json, choices);
  }
  return schema;
}
