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
