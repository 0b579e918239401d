import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('../../docs/examples/surveys/', import.meta.url));

/** A JSON document, as parsed. */
export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

/** The invented surveys that the documentation shows, by name. */
export const surveyDocuments: Readonly<Record<string, Json>> = Object.fromEntries(
  readdirSync(folder)
    .filter((f) => f.endsWith('.json'))
    .map((f) => [f.replace('.json', ''), JSON.parse(readFileSync(folder + f, 'utf8')) as Json]),
);

/** A fresh copy of one of them, to change at will. */
export const surveyDocument = (name: string): { [key: string]: Json } =>
  structuredClone(surveyDocuments[name]) as { [key: string]: Json };
