import { controlFailsSafe, mainFuseExcessKnown } from '../charging/definitions.js';
import { judgeMainFuse } from '../charging/index.js';
import type { WiringCode } from '../codes/wiring-code.js';
import {
  type CheckResult,
  type Fact,
  factValue,
  type Gap,
  isMissing,
  type Known,
  missing,
  notDetermined,
  type Sheet,
  unknown,
  whenKnown,
} from '../core/index.js';
import { type Board, lineConductors, type OvercurrentDevice, outletsBelow } from '../installation/index.js';
import { type Amperes, amperes, type Seconds } from '../units/index.js';

/** A range is taken at the end that heats the fuse more. */
const upper = <V extends number>(name: string, fact: Fact<V>): Known<V> =>
  fact.state === 'between' ? fact.most : factValue(name, fact);

/** A board with a load control, the device ahead of it, and the other load that may rise beside the points. */
export interface Controlled {
  readonly board: Board;
  /** The fuse of the supply, or the device of the feeder. */
  readonly ahead: OvercurrentDevice;
  /** That device in words. */
  readonly aheadWords: string;
  /** Largest demand without the charge points on a line, A. */
  readonly existing: Known<Amperes>;
}

/** All other load that may rise at once: what is there without charge points, and points that the control does not hold. */
function riseOf({ board, existing }: Controlled): Known<Amperes> {
  const held = board.control?.controls ?? [];
  const free = outletsBelow(board).flatMap((o) =>
    o.kind === 'charge-point' && !held.includes(o.id) ? [upper(`setting of ${o.id}`, o.setting)] : [],
  );
  const all = [existing, ...free];
  const gaps = all.flatMap((v) => (isMissing(v) ? v.missing : []));
  const [first, ...more] = gaps;
  return first ? missing(first, ...more) : amperes((all as readonly number[]).reduce((sum, v) => sum + v, 0));
}

/**
 * Whether the device ahead of a load control carries what it lets through while other load rises: at most all of that load,
 * within the time that the control takes. Whoever makes the control may state it; it may be worked out; or limit and other
 * load together stay within the rating of the device. While nobody knows, nobody has said that the fuse holds.
 */
export const controlResults = (
  code: Pick<WiringCode, 'timeCurrentLimits'>,
  at: Controlled,
  sheet: Sheet,
): readonly CheckResult[] => [...fallbackResults(at, sheet), ...excessResults(code, at, sheet)];

/** The other load, the points that are not held, and what those that are held still draw, against the device ahead. */
function fallbackResults(at: Controlled, sheet: Sheet): readonly CheckResult[] {
  const { control } = at.board;
  if (!control) return [];
  const fallback = upper(
    `current to which ${control.name} falls back without its sensor`,
    control.fallback ?? unknown('its instructions: what each charge point draws once the sensor or the link is lost'),
  );
  const rise = riseOf(at);
  const { rating: ahead } = at.ahead;
  const rating = ahead.state === 'between' ? ahead.least : factValue(`rating of ${at.aheadWords}`, ahead);
  const held = outletsBelow(at.board).filter((o) => o.kind === 'charge-point' && control.controls.includes(o.id));
  const on = Math.max(
    ...lineConductors.map((line) => held.filter((o) => 'lines' in o && o.lines.includes(line)).length),
  );
  const atMost = whenKnown(
    held.map((o) => ('setting' in o ? upper(`setting of ${o.id}`, o.setting) : amperes(0))),
    (...settings) => amperes(Math.max(0, ...(settings as readonly number[]))),
  );
  // where all of them at their full settings do no harm, nobody has to know it
  const harmless = whenKnown([atMost, rise, rating], (i, other, most) => other + on * i <= most) === true;
  const left = harmless ? atMost : fallback;
  // of a control that leaves nothing running the other load is none of its business: supply and feeder are judged for that
  const paused = left === 0;
  const holds = paused ? true : whenKnown([left, rise, rating], (i, other, most) => other + on * i <= most);
  const words = whenKnown(
    [left, rise, rating],
    (i, other, most) => `${whole(other)} A, and ${on} x ${whole(i)} A, against ${whole(most)} A of ${at.aheadWords}`,
  );
  return [
    sheet.check(controlFailsSafe, {
      holds,
      because: paused ? 'it leaves nothing running' : isMissing(words) ? '' : words,
    }),
  ];
}

const whole = (amps: number): number => Math.round(amps * 10) / 10;

function excessResults(
  { timeCurrentLimits }: Pick<WiringCode, 'timeCurrentLimits'>,
  at: Controlled,
  sheet: Sheet,
): readonly CheckResult[] {
  const { control, id } = at.board;
  if (!control) return [];
  const { name, keepsFuse } = control;
  const stated = (because: string) => [sheet.check(mainFuseExcessKnown, { holds: true, because })];
  const limit = upper(`limit of ${name}`, control.limit);
  const rise = riseOf(at);
  const { rating: fact } = at.ahead;
  const rating = fact.state === 'between' ? fact.least : factValue(`rating of ${at.aheadWords}`, fact);
  if (!isMissing(limit) && !isMissing(rise) && !isMissing(rating) && limit + rise <= rating)
    return stated(`${name}: limit and other load of ${id} together are at most the rating of ${at.aheadWords}`);
  if (keepsFuse?.state === 'known' && keepsFuse.value)
    return stated(`${name}: its maker states that it keeps ${at.aheadWords} from operating`);
  const time: Known<Seconds> = upper(
    `time in which ${name} makes room`,
    control.reaction ?? {
      state: 'unknown',
      obtain: 'its data sheet: from a rise of the load until points and vehicles have followed, 15 s of these for them',
    },
  );
  const zone = timeCurrentLimits(at.ahead);
  const held = [...(zone?.fast ?? [])].sort((a, b) => b.time - a.time);
  const [longest, ...gates] = held;
  const gaps = [limit, time, rise].flatMap((v) => (isMissing(v) ? v.missing : []));
  const [first] = gaps;
  const known = { limit, rise, time } as { limit: Amperes; rise: Amperes; time: Seconds };
  const fuse = longest ? { gates, nonFusing: amperes(longest.current) } : {};
  const result = first ? undefined : judgeMainFuse({ ...known, ...fuse });
  if (result && result.verdict !== 'not-determined') return [sheet.result(result)];
  const word: Gap = {
    kind: 'fact',
    fact: `whether the maker of ${name} states that it keeps ${at.aheadWords} from operating`,
    obtain:
      keepsFuse?.state === 'unknown' && keepsFuse.obtain !== undefined
        ? keepsFuse.obtain
        : 'its instructions: for which fuse it is made, set to which part of its rating',
  };
  // what the maker says decides by itself; once it is known that nothing is said, the rest is asked for
  const silent = keepsFuse?.state === 'known';
  const [open = word, ...others] = [...(silent ? [] : [word]), ...(result?.gaps ?? gaps)];
  return [sheet.result(notDetermined(mainFuseExcessKnown, open, ...others))];
}
