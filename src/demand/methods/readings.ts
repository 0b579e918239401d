import { invalidInput, type Problem } from '../../units/index.js';
import type { MeterReadings } from '../method.js';

/** Length of a metering interval, s. */
export const HALF_HOUR = 1800;
const ISO = /^(\d{4})-(\d\d)-(\d\d)T\d\d:\d\d(?::\d\d(?:\.0+)?)?(?:Z|[+-]\d\d:\d\d)$/;

/** Seconds since 1970 of an ISO time with an offset, or undefined; a day that the month does not have is no time. */
function instant(text: string): number | undefined {
  const found = typeof text === 'string' ? ISO.exec(text) : null;
  if (!found) return undefined;
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])];
  if (month < 1 || month > 12 || day < 1 || day > new Date(Date.UTC(year, month, 0)).getUTCDate()) return undefined;
  const at = Date.parse(text);
  return Number.isNaN(at) ? undefined : at / 1000;
}

/** What is wrong with the order of the times. */
function checkTimes(meter: MeterReadings, problems: Problem[]): void {
  let last: number | undefined;
  const seen = new Set<number>();
  for (const [i, { start }] of meter.readings.entries()) {
    const at = instant(start);
    const say = (message: string) => problems.push({ path: ['readings', i, 'start'], message });
    if (at === undefined) {
      say(`${String(start)} is no time with an offset, as 2026-01-05T17:30:00Z`);
      continue;
    }
    if (at % HALF_HOUR !== 0) say(`${start} is not the start of a half-hour`);
    if (seen.has(at)) say(`${start} is there twice`);
    else if (last !== undefined && at < last) say(`${start} is out of order`);
    else if (last !== undefined && at - last > HALF_HOUR)
      say(`${Math.round((at - last) / HALF_HOUR) - 1} reading(s) are lacking before ${start}`);
    seen.add(at);
    last = last === undefined ? at : Math.max(last, at);
  }
}

/** Checks half-hour readings: every start a time, half an hour apart, energies 0 Wh and up. */
export function checkReadings(meter: MeterReadings): void {
  const problems: Problem[] = [];
  if (meter.readings.length === 0) problems.push({ path: ['readings'], message: 'holds no reading' });
  if (typeof meter.season !== 'string' || meter.season.trim() === '')
    problems.push({ path: ['season'], message: 'is empty: a measured demand states its season' });
  if (!(meter.margin >= 0 && meter.margin <= 2))
    problems.push({ path: ['margin'], message: `is ${meter.margin}; a margin is 0 to 2` });
  meter.readings.forEach(({ energy }, i) => {
    if (!(Number.isFinite(energy) && energy >= 0))
      problems.push({ path: ['readings', i, 'energy'], message: `is ${energy} Wh; an import is 0 Wh and up` });
  });
  checkTimes(meter, problems);
  if (problems.length > 0) throw invalidInput('the half-hour readings', problems);
}

/** Whole days that readings cover. */
export const daysCovered = (meter: MeterReadings): number => Math.floor(meter.readings.length / 48);
