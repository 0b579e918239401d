import { invalidInput, type Problem, shown } from '../units/index.js';

/** What an argument has to be: what is wrong with a value, by the path to it. */
export type Due = (value: unknown, path: readonly (string | number)[]) => readonly Problem[];

const said = (value: unknown): string => (value === undefined ? 'is missing' : `is ${shown(value)}`);

const unless = (holds: boolean, value: unknown, path: readonly (string | number)[], due: string): readonly Problem[] =>
  holds ? [] : [{ path: [...path], message: `${said(value)}; ${due}` }];

/** A number; the example says how it is made. */
export const numberDue =
  (example: string): Due =>
  (value, path) =>
    unless(typeof value === 'number' && !Number.isNaN(value), value, path, `a number is due, such as ${example}`);

/** One of these values, which are looked up when they are asked for: a bundler takes no look-up for harmless. */
export const oneOf =
  (those: () => readonly (string | number | boolean)[]): Due =>
  (value, path) => {
    const of = those();
    if (of.includes(value as string)) return [];
    return unless(false, value, path, `${of.map((v) => (typeof v === 'string' ? `'${v}'` : v)).join(' | ')} is due`);
  };

/** What may be left out. */
export const mayBe =
  (due: Due): Due =>
  (value, path) =>
    value === undefined ? [] : due(value, path);

/** A list. */
export const listOf =
  (due: Due, example: string): Due =>
  (value, path) =>
    Array.isArray(value)
      ? value.flatMap((v, i) => due(v, [...path, i]))
      : unless(false, value, path, `a list is due, such as ${example}`);

/** An object of such fields; `whole` refuses fields of other names, which would change nothing unnoticed. */
export const fieldsDue =
  (fields: Readonly<Record<string, Due>>, example: string, whole = false): Due =>
  (value, path) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value))
      return unless(false, value, path, `an object is due, such as ${example}`);
    const given = value as Readonly<Record<string, unknown>>;
    const strange = whole ? Object.keys(given).filter((name) => !Object.hasOwn(fields, name)) : [];
    return [
      ...Object.entries(fields).flatMap(([name, due]) => due(given[name], [...path, name])),
      ...strange.map((name) => ({
        path: [...path, name],
        message: `is no field of it; its fields are ${Object.keys(fields).join(', ')}`,
      })),
    ];
  };

/**
 * Refuses arguments that are not what they have to be, all at once, for callers whom no compiler tells.
 * @throws CalculationError `invalid-input`
 */
export function argumentsDue(
  of: string,
  ...given: readonly (readonly [name: string, value: unknown, due: Due])[]
): void {
  const problems = given.flatMap(([name, value, due]) => due(value, [name]));
  if (problems.length > 0) throw invalidInput(`what ${of} is handed`, problems);
}
