import { isObject } from '../network/refuse.js';
import type { ControlState } from './memory.js';

type Unread = Readonly<Record<string, unknown>>;
const number = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
const may = (value: unknown): boolean => value === undefined || number(value);
const current = (value: unknown): boolean => number(value) && value >= 0;
const record = (value: unknown): value is Unread => isObject(value);

const isStamps = (stamps: unknown): boolean => {
  if (!record(stamps) || !number(stamps.shift) || !may(stamps.ahead)) return false;
  const pair = (value: unknown, one: string, two: string) =>
    value === undefined || (record(value) && number(value[one]) && number(value[two]));
  return pair(stamps.seen, 'at', 'clock') && pair(stamps.wrong, 'since', 'lag');
};

const isMemory = (point: unknown): boolean => {
  if (!record(point) || !current(point.command) || !current(point.received)) return false;
  const { lingers, rises, wantsSince, heard } = point;
  const held = lingers === undefined || (record(lingers) && current(lingers.current) && number(lingers.until));
  const rising = rises === undefined || (record(rises) && current(rises.to) && number(rises.since));
  return held && rising && may(wantsSince) && may(heard);
};

/** Whether something is the state of a control, as it was kept or handed on: not what a file or a link has made of it. */
export function isState(given: unknown): given is ControlState {
  if (!record(given)) return false;
  const { clock, running, measuredAt, notBefore, missed, turn, points } = given;
  return (
    current(running) &&
    current(missed) &&
    [clock, measuredAt, notBefore, turn].every(may) &&
    // nothing was measured after the last step
    !(number(measuredAt) && number(clock) && measuredAt > clock) &&
    isStamps(given.stamps) &&
    record(points) &&
    Object.values(points).every(isMemory)
  );
}
