/** Faults judged by hand: what flows, what the device lets through, and whether conductors and device stand it. */
import type { OvercurrentDevice, ResidualDevice } from '../../src/index.js';
import { anyOf, atLeast, atMost, deciding, holds, notRequired, open, type Result, reaches } from './by-hand-checks.js';
import {
  at,
  type Circuit,
  type Conductors,
  cell,
  impedance,
  isPoint,
  isSocket,
  known,
  step,
  tripOf,
} from './by-hand-facts.js';
import { armour, breakTimes, classThree } from './by-hand-tables.js';

/** Delay as marked; where nothing is marked only a device of up to 30 mA is sure to be general. */
export const delayOf = (r: ResidualDevice) =>
  r.delay ? known(r.delay) : known(r.rating) <= 0.03 ? 'general' : 'selective';

export function disconnection(circuit: Circuit, results: Result[]) {
  const { run, nominal, rating } = circuit;
  let loopAtOrigin = circuit.externalImpedance;
  let loopImpedance = circuit.externalImpedance;
  for (const c of circuit.conductors) {
    loopAtOrigin = loopImpedance;
    loopImpedance += impedance(at(c.operating, c.line) + at(c.operating, c.protective), c.reactance);
  }
  const sockets = run.feeds.some((o) => isSocket(o) || (o.kind !== 'board' && isPoint(o)));
  const required = rating <= (sockets ? 63 : 32) ? 0.4 : 5;
  const limit = (nominal * 0.95) / tripOf(run.device)[1];
  const overcurrent = atMost('disconnection-by-overcurrent-device', loopImpedance, limit);
  const ways = [overcurrent];
  for (const { device } of circuit.upstream) {
    const rated = known(device.rating);
    const multiple = nominal / loopImpedance / rated;
    const [once, twice, fiveTimes] = breakTimes[delayOf(device)];
    const time = multiple >= 5 ? fiveTimes : multiple >= 2 ? twice : multiple >= 1 ? once : Number.NaN;
    ways.push(
      deciding(
        atMost('touch-voltage-at-residual-current', loopImpedance * rated, 50),
        atMost('disconnection-by-residual-current-device', time, required),
      ),
    );
  }
  const check = 'disconnection-without-residual-current-device';
  const cannotSay = overcurrent.verdict === 'not-determined' && !ways.some((w) => w.verdict === 'pass');
  results.push(
    anyOf('automatic-disconnection', ways),
    cannotSay ? open(check, 'advice') : holds(check, overcurrent.verdict === 'pass', 'advice'),
  );
  return { loopAtOrigin, loopImpedance, loopImpedanceLimit: limit };
}

/** Largest current at the origin, A: feeders cold, by line and neutral or by line and all that is earthed. */
export function prospectiveAtOrigin({ installation, feeders, conductors, nominal }: Circuit): number {
  let resistance = 0;
  feeders.forEach(({ cable }, i) => {
    const { area, length, line, protective } = conductors[i] as Conductors;
    const steel = cable.construction === 'armoured' ? (cell(armour[cable.cores], area) / 1000) * length : undefined;
    const earth = steel === undefined ? protective : (protective * steel) / (protective + steel);
    resistance += Math.min(2 * line, line + earth);
  });
  return nominal / impedance(nominal / known(installation.supply.prospectiveCurrent), resistance);
}

/** Heat of the direct-current component over 0.1 s at 50 Hz with the peak factor 1.8. IEC 60909-0, factor m. */
const decay = 50 * 0.1 * Math.log(1.8 - 1);
const thermalFactor = Math.expm1(4 * decay) / (2 * decay);

/** Energy that the circuit-breaker lets through, A²s; NaN where nothing bounds it. */
function letThrough(
  device: OvercurrentDevice,
  current: number,
  largest: number,
  residual?: ResidualDevice,
  prospective?: number,
): number {
  if (current < tripOf(device)[1]) {
    if (!residual || residual.delayTime !== undefined || current < 5 * known(residual.rating)) return Number.NaN;
    return current * current * (delayOf(residual) === 'general' ? 0.04 : 0.15);
  }
  const guarded = Math.max(current, largest);
  const bound = guarded * guarded * 0.1 * (1 + thermalFactor);
  const capacity = known(device.breakingCapacity);
  const marked = device.energyClass ? known(device.energyClass) : 3;
  const { type } = known(device.kind) as { readonly type: string };
  // by the fault level, for protective conductors
  const level = Math.max(guarded, prospective ?? Number.POSITIVE_INFINITY);
  const read = [3000, 6000].find((l) => level <= l && capacity > l) ?? capacity;
  const limits = classThree[type]?.[read];
  if (marked !== 3 || guarded > capacity || !limits) return bound;
  const limit = step(limits, known(device.rating));
  return Number.isNaN(limit) ? bound : Math.min(limit, bound);
}

/** The energy is a bound: what does not withstand it need not fail. */
const acquitOnly = (r: Result): Result => (r.verdict === 'fail' ? open(r.check) : r);

export function breaking({ run, board }: Circuit, current: number): Result {
  const ways = [atLeast('own-breaking-capacity', known(run.device.breakingCapacity), current)];
  for (const declared of [run.device.conditionalRating, board.conditionalRating])
    if (declared) ways.push(atLeast('conditional-breaking-capacity', known(declared), current));
  if (ways.length === 1) ways.push(open('conditional-breaking-capacity'));
  return anyOf('breaking-capacity', ways);
}

export function lineWithstand(
  { run, own, conductors, nominal, externalImpedance, rating }: Circuit,
  capacity: number,
  prospective: number,
  broken: Result,
  results: Result[],
): void {
  const { device } = run;
  const check = 'line-conductor-behind-overload-device';
  const first =
    broken.verdict !== 'pass'
      ? open(check)
      : device.energyClass && known(device.energyClass) === 1
        ? notRequired(check)
        : atMost(check, rating, capacity);
  let loop = externalImpedance;
  for (const c of conductors) loop += 2 * at(c.operating, c.line);
  const smallest = (nominal * 0.95) / loop;
  const withstand = (own.k * own.area) ** 2;
  const end = (current: number) =>
    acquitOnly(atLeast('line-conductor-adiabatic', withstand, letThrough(device, current, 0)));
  results.push(
    anyOf('line-withstand', [first, deciding(end(prospective), end(smallest))]),
    atLeast('line-neutral-fault-clears', smallest, tripOf(device)[1], 'advice'),
  );
}

export function protectiveConductor(
  { run, own, conductors, nominal, externalImpedance, upstream }: Circuit,
  loopImpedance: number,
  prospective: number,
  results: Result[],
): void {
  let feeders = 0;
  for (let i = 0; i < conductors.length - 1; i++) {
    const { line, protective, reactance } = conductors[i] as Conductors;
    feeders += impedance(line + protective, reactance);
  }
  const largest = (nominal * 1.1) / impedance(externalImpedance, feeders);
  const smallest = (nominal * 0.95) / loopImpedance;
  const residual = upstream.at(-1)?.device;
  const end = (current: number, guard: number) => {
    const least = Math.sqrt(letThrough(run.device, current, guard, residual, prospective)) / own.k;
    return acquitOnly(atLeast('protective-conductor-adiabatic', own.protectiveArea, least));
  };
  const tabulated = own.area <= 16 ? own.area : own.area <= 35 ? 16 : own.area / 2;
  results.push(
    anyOf('protective-conductor', [
      deciding(end(largest, prospective), end(smallest, 0)),
      atLeast('protective-conductor-by-table', own.protectiveArea, tabulated),
    ]),
  );
}

/** Whether the device ahead holds while the largest fault opens that of the circuit; fuses are left to their makers. */
export function discrimination(
  check: string,
  ahead: OvercurrentDevice,
  { device }: Circuit['run'],
  current: number,
): Result {
  const { standard } = known(ahead.kind);
  if (standard !== 'EN 60898' && standard !== 'EN 61009') return open(check, 'advice');
  const [held] = tripOf(ahead);
  if (!reaches(held, current) || current < tripOf(device)[1]) return open(check, 'advice');
  return atMost(check, current, held, 'advice');
}
