import type { Seconds } from '../../units/index.js';
import type { ChargingNetwork, PerLine } from '../network/network.js';
import { type Inspection, THREE_CURRENTS } from '../network/refuse.js';

/** Values that change with time; after the last value the first one comes again. */
export interface RepeatingProfile<V> {
  /** Values in order. */
  readonly values: readonly V[];
  /** For how long each value holds, s: a whole number of steps; one step when absent. */
  readonly every?: Seconds;
  /** Clock value at which the first value begins, s: a whole number of steps from the begin; the begin when absent. */
  readonly from?: Seconds;
}

/** Currents on the lines of a node that change with time, A. */
export interface CurrentProfile extends RepeatingProfile<PerLine> {
  readonly node: string;
}

/** The time that is looked at, in steps. */
export interface StepClock {
  /** Begin, s since midnight of the first day. */
  readonly from: Seconds;
  /** Length of a step, s, above 0. */
  readonly step: Seconds;
}

/** Which value of a profile, of currents or of anything, holds in a step, as a function of the number of the step. */
export function valueInStep(
  { values, every, from }: RepeatingProfile<unknown>,
  clock: StepClock,
): (step: number) => number {
  const count = values.length;
  const steps = every === undefined ? 1 : Math.round(every / clock.step);
  const ahead = from === undefined ? 0 : Math.round((clock.from - from) / clock.step);
  return (step) => {
    const place = Math.floor((step + ahead) / steps) % count;
    return place < 0 ? place + count : place;
  };
}

const wholeSteps = (time: number, step: number): boolean => Math.abs(time / step - Math.round(time / step)) < 1e-6;

/** Everything that is wrong with the times of a profile. */
export function inspectTimes(
  { every, from }: RepeatingProfile<unknown>,
  path: readonly (string | number)[],
  clock: StepClock,
  found: Inspection,
): void {
  if (every !== undefined && found.number(every, [...path, 'every'], { above: 0 }) && clock.step > 0)
    found.when(
      !wholeSteps(every, clock.step) || every < clock.step / 2,
      [...path, 'every'],
      `must be a whole number of steps of ${clock.step} s`,
    );
  if (from !== undefined && found.number(from, [...path, 'from'], {}) && clock.step > 0)
    found.when(
      !wholeSteps(clock.from - from, clock.step),
      [...path, 'from'],
      `must be a whole number of steps of ${clock.step} s from the begin, ${clock.from} s`,
    );
}

/** Everything that is wrong with profiles; limits may not be negative, other load may. */
export function inspectProfiles(
  network: ChargingNetwork,
  profiles: readonly CurrentProfile[],
  clock: StepClock,
  found: Inspection,
  kind: 'load' | 'limits',
): void {
  if (!found.list(profiles, [kind])) return;
  const nodes = new Set(network.nodes.map((n) => n.id));
  const seen = new Set<string>();
  const ends = kind === 'limits' ? { least: 0 } : {};
  profiles.forEach((profile, k) => {
    const { node, values } = profile;
    const path = [kind, k];
    found.when(!nodes.has(node), [...path, 'node'], `there is no node '${node}'`);
    found.when(seen.has(node), [...path, 'node'], `'${node}' has another profile too`);
    seen.add(node);
    inspectTimes(profile, path, clock, found);
    if (!Array.isArray(values) || values.length === 0) {
      found.when(true, [...path, 'values'], 'must have at least one value');
      return;
    }
    values.forEach((value, j) => {
      if (!Array.isArray(value)) {
        found.when(true, [...path, 'values', j], THREE_CURRENTS);
        return;
      }
      if (
        value.length === 3 &&
        value.every((current) => Number.isFinite(current) && !(current < (ends.least ?? current)))
      )
        return;
      found.when(value.length !== 3, [...path, 'values', j], THREE_CURRENTS);
      value.forEach((current, p) => {
        found.number(current, [...path, 'values', j, p], ends);
      });
    });
  });
}
