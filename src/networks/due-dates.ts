import { invalidInput, shown } from '../units/index.js';

const DAY = /^(\d{4})-(\d\d)-(\d\d)$/;
const iso = (date: Date): string => date.toISOString().slice(0, 10);
const lastOf = (year: number, month: number): number => new Date(Date.UTC(year, month, 0)).getUTCDate();

function parts(day: string, path: string): readonly [year: number, month: number, day: number] {
  const found = typeof day === 'string' ? DAY.exec(day) : null;
  const [year, month, date] = found ? [Number(found[1]), Number(found[2]), Number(found[3])] : [0, 0, 0];
  if (!found || month < 1 || month > 12 || date < 1 || date > lastOf(year, month))
    throw invalidInput('a date', [{ path: [path], message: `${shown(day)} is no day, as 2026-11-25` }]);
  return [year, month, date];
}

/**
 * The day that lies a number of days after another.
 * @param days whole days, 0 and up
 */
export function daysAfter(day: string, days: number, path = 'day'): string {
  const [year, month, date] = parts(day, path);
  return iso(new Date(Date.UTC(year, month - 1, date + days)));
}
