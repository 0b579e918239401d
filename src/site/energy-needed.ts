import { between, endsOf, type Fact, known, unknown } from '../core/index.js';
import { type Ratio, type WattHours, wattHours } from '../units/index.js';

/** A battery as it comes and as it is to leave. @inline */
export interface BatteryNeed {
  /** Energy that it holds when full, Wh. */
  readonly holds: Fact<WattHours>;
  /** State of charge when plugged in, 1. */
  readonly onArrival: Fact<Ratio>;
  /** State of charge that is wanted on departure, 1. */
  readonly onDeparture: Fact<Ratio>;
}

const percent = (value: number): string => `${+(100 * value).toPrecision(3)} %`;

/** Energy that a battery needs from its state of charge on arrival to that on departure, Wh; 0 Wh where it has enough. */
export function energyOfBattery({ holds: full, onArrival, onDeparture }: BatteryNeed): Fact<WattHours> {
  const open = [full, onArrival, onDeparture].find((f) => f.state === 'unknown');
  if (open?.state === 'unknown')
    return unknown(open.obtain ?? 'ask what the battery holds, and how full it comes and leaves');
  const [holds, from, to] = [endsOf(full), endsOf(onArrival), endsOf(onDeparture)] as readonly (readonly [
    number,
    number,
  ])[];
  const at = (end: 0 | 1): WattHours =>
    wattHours((holds?.[end] as number) * Math.max(0, (to?.[end] as number) - (from?.[end === 0 ? 1 : 0] as number)));
  const by = `${+((holds?.[1] as number) / 1000).toPrecision(4)} kWh from ${percent(from?.[0] as number)} to ${percent(to?.[1] as number)}`;
  return at(0) === at(1) ? known(at(1), by) : between(at(0), at(1), by);
}
