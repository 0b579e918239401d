import { type Seconds, seconds } from '../units/index.js';
import type { VehicleNeed } from './survey.js';

const minutesOf = (clock: string): number => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));

/** When a vehicle is plugged in, s since midnight, and how long it stays, s. */
export function stayOf({ arrives, leaves }: Pick<VehicleNeed, 'arrives' | 'leaves'>): {
  readonly arrives: Seconds;
  readonly window: Seconds;
} {
  // who arrives and leaves at the same time of day stands there a whole day
  const window = (minutesOf(leaves) - minutesOf(arrives) + 1440) % 1440 || 1440;
  return { arrives: seconds(minutesOf(arrives) * 60), window: seconds(window * 60) };
}

/** The night that is looked at. */
export interface NightSpan {
  /** Begin, s since midnight: the arrival before which the points stand free for longest. */
  readonly from: number;
  /** How long until the last vehicle has left, at most a day, s. */
  readonly length: number;
  /** Whether some vehicle is always there: then the day before and the day after are looked at as well. */
  readonly endless: boolean;
}

const DAY = 86400;

/** Where a night begins and ends for vehicles that come at the same time every day. */
export function nightSpan(stays: readonly { readonly arrives: number; readonly window: number }[]): NightSpan {
  const since = (from: number, arrives: number) => (from - arrives + DAY) % DAY || DAY;
  const free = (from: number) => Math.min(...stays.map((s) => since(from, s.arrives) - s.window));
  const from = stays.map((s) => s.arrives).sort((a, b) => free(b) - free(a) || a - b)[0] ?? 0;
  const endless = free(from) < 0;
  const length = Math.max(...stays.map((s) => ((s.arrives - from + DAY) % DAY) + s.window));
  return { from, length: endless ? DAY : length, endless };
}

/** Seconds from the begin of a night to an arrival at that time of day. */
export const arrivalIn = ({ from }: NightSpan, arrives: number): number => (arrives - from + DAY) % DAY;
