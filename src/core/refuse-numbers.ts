import { invalidInput } from '../units/index.js';

/** Refuses readings that are no numbers, each by its name; what is infinite is a reading. */
export function refuseNumbers(what: string, values: Readonly<Record<string, unknown>>): void {
  const problems = Object.entries(values).flatMap(([name, value]) =>
    typeof value === 'number' && !Number.isNaN(value) ? [] : [{ path: [name], message: 'must be a number' }],
  );
  if (problems.length > 0) throw invalidInput(what, problems);
}
