import type { CheckResult } from '../../core/index.js';
import { added, evaluate, formula, type Gap, judge, notDetermined, rule } from '../../core/index.js';
import type { CurvePoint } from '../../physics/time-current.js';
import { type Amperes, amperes, invalidInput, type Seconds, seconds } from '../../units/index.js';
import { inspection, isObject } from '../network/refuse.js';

/**
 * Longest time for which a rise of the other load can show above the limit. Sum of the delays in a row. Delays in a
 * row.
 */
export const excessTimeOf = /* @__PURE__ */ added({
  id: 'excess-time',
  title: 'Longest time from a rise of the other load until points and vehicles have made room',
  plus: ['meterPeriod', 'controllerPeriod', 'pointReaction', 'vehicleReaction'],
  output: 'excessTime',
  source: { document: 'Delays in a row', provenance: 'definition' },
});

/**
 * Current to which each of several points may fall when the meter or the controller is silent. Equal parts of what is
 * left. Common practice of load control.
 */
export const safeCurrentOf = /* @__PURE__ */ formula({
  id: 'safe-current',
  title: 'Safe current of each point beside the worst other load',
  inputs: ['sharedCapacity', 'worstOtherLoad', 'pointsSharing'],
  output: 'safeCurrent',
  expression: 'max(sharedCapacity - worstOtherLoad, nothing) / pointsSharing',
  constants: { nothing: [0, 'A'] },
  compute: ({ sharedCapacity, worstOtherLoad, pointsSharing }) =>
    Math.max(sharedCapacity - worstOtherLoad, 0) / pointsSharing,
  source: { document: 'Common practice of load control', provenance: 'common-practice' },
});

/** Heat of what the course of a rise brings above the limit. Follows from the promise of a load control. */
export const excessHeatOf = /* @__PURE__ */ formula({
  id: 'excess-heat',
  title: 'Heat of the excess of a rising load',
  inputs: ['controlLimit', 'loadRise', 'excessTime', 'gateTime'],
  output: 'excessHeat',
  expression: '(2 * controlLimit + loadRise) * loadRise * max(excessTime, gateTime)',
  compute: ({ controlLimit, loadRise, excessTime, gateTime }) =>
    (2 * controlLimit + loadRise) * loadRise * Math.max(excessTime, gateTime),
  source: {
    document: 'promise of a load control',
    provenance: 'derived',
    note: 'the excess is never more than the load has risen within the excess time, so it comes to no more than rise times excess time; a current that lasts for less than the time of the gate counts as if it lasted so long',
  },
});

/** Heat that a fuse takes up beside the current that it carries already. Linear heating of a fuse. */
export const carriedHeatOf = /* @__PURE__ */ formula({
  id: 'carried-heat',
  title: 'Heat that a fuse carries beside the limit',
  inputs: ['gateCurrent', 'gateTime', 'controlLimit', 'nonFusingCurrent'],
  output: 'carriedHeat',
  expression: 'gateCurrent^2 * gateTime * max(one - (controlLimit / nonFusingCurrent)^2, zero)',
  constants: { one: [1, '1'], zero: [0, '1'] },
  compute: ({ gateCurrent, gateTime, controlLimit, nonFusingCurrent }) =>
    gateCurrent ** 2 * gateTime * Math.max(1 - (controlLimit / nonFusingCurrent) ** 2, 0),
  source: {
    document: 'linear heating of a fuse',
    provenance: 'derived',
    note: 'the element is taken to melt at one temperature, its heating to add up, and what is warm to cool; the current of the limit has heated it to its share of the conventional non-fusing current',
  },
});

/** The main fuse carries what a load control lets through above its limit. Linear heating of a fuse. */
export const mainFuseCarriesExcess = /* @__PURE__ */ rule({
  id: 'main-fuse-carries-excess',
  title: 'The main fuse carries the excess of a rising load',
  of: ['excessHeat', 'at-most', 'carriedHeat'],
  source: { document: 'linear heating of a fuse', provenance: 'derived' },
  caution:
    'For one rise; rises that follow one another before the fuse has cooled count together. The network operator decides on the fuse.',
});

/**
 * The device ahead of a load control carries what it lets through: by its maker, or by their figures. Common practice of
 * load control.
 */
export const mainFuseExcessKnown = /* @__PURE__ */ rule({
  id: 'main-fuse-excess-known',
  title: 'It is known that the fuse carries what the load control lets through',
  source: { document: 'common practice of load control', provenance: 'common-practice' },
  caution: 'A main fuse that operates leaves the premises without supply until the network operator comes.',
});

/**
 * What a load control lets through when it has lost its sensor is no more than the device ahead carries. Common practice of
 * load control, no source.
 */
export const controlFailsSafe = /* @__PURE__ */ rule({
  id: 'load-control-fails-safe',
  title:
    'Without its sensor the load control leaves the charge points no more than the device ahead carries beside the other load',
  source: { document: 'common practice of load control', provenance: 'common-practice' },
  caution: 'A main fuse that operates leaves the premises without supply until the network operator comes.',
});

/**
 * Whether the main fuse carries what a load control lets through while other load rises. The fuse is taken to carry the
 * whole limit already.
 * @param excess `limit` that the control keeps, A; `rise` of the other load at most, A, of rises that follow one another
 * the sum; `time` that the control promises, s; of the fuse the `gates` before which it does not operate and its
 * conventional `nonFusing` current, A, as far as they are known
 * @returns the result, by the gate that says most; `not-determined` without gates or non-fusing current
 * @throws CalculationError `invalid-input` with the path of each current or time that is negative or no finite number
 * @example
 * ```ts
 * import { amperes, seconds } from 'ohmwright';
 * import { judgeMainFuse } from 'ohmwright/charging';
 *
 * const excess = { limit: amperes(95), rise: amperes(40), time: seconds(17) };
 * judgeMainFuse(excess).verdict; // => 'not-determined'
 * // a gG fuse of 100 A, from memory
 * const fuse = { gates: [{ current: 290, time: 10 }], nonFusing: amperes(125) };
 * judgeMainFuse({ ...excess, ...fuse }).verdict; // => 'pass'
 * judgeMainFuse({ ...excess, rise: amperes(90), ...fuse }).verdict; // => 'fail'
 * ```
 */
export function judgeMainFuse(excess: {
  readonly limit: Amperes;
  readonly rise: Amperes;
  readonly time: Seconds;
  readonly gates?: readonly CurvePoint[];
  readonly nonFusing?: Amperes;
}): CheckResult {
  const found = inspection();
  if (!isObject(excess)) throw invalidInput('the excess', [{ path: [], message: 'must be an object' }]);
  const { limit, rise, time, gates = [], nonFusing } = excess;
  found.number(limit, ['limit'], { least: 0 });
  found.number(rise, ['rise'], { least: 0 });
  found.number(time, ['time'], { least: 0 });
  found.number(nonFusing, ['nonFusing'], { above: 0, optional: true });
  if (found.list(gates, ['gates']))
    gates.forEach((gate, i) => {
      found.number(gate.current, ['gates', i, 'current'], { least: 0 });
      found.number(gate.time, ['gates', i, 'time'], { least: 0 });
    });
  found.refuse('the excess');
  const gap = (fact: string, obtain: string): Gap => ({ kind: 'fact', fact, obtain });
  const gaps = [
    ...(gates.length > 0
      ? []
      : [gap('time-current gates of the main fuse', 'type and rating of the fuse, with the gates of its standard')]),
    ...(nonFusing === undefined
      ? [gap('conventional non-fusing current of the main fuse', 'type and rating of the fuse, with its standard')]
      : []),
  ];
  const [first, ...more] = gaps;
  if (first || nonFusing === undefined) return notDetermined(mainFuseCarriesExcess, first as Gap, ...more);
  const sides = gates.map(({ current, time: held }) => {
    const gateTime = seconds(held);
    return {
      excessHeat: evaluate(excessHeatOf, { controlLimit: limit, loadRise: rise, excessTime: time, gateTime }),
      carriedHeat: evaluate(carriedHeatOf, {
        gateCurrent: amperes(current),
        gateTime,
        controlLimit: limit,
        nonFusingCurrent: nonFusing,
      }),
    };
  });
  // each gate is true by itself: the one that leaves most decides
  const best = sides.reduce((a, b) => (b.carriedHeat - b.excessHeat > a.carriedHeat - a.excessHeat ? b : a));
  return judge(mainFuseCarriesExcess, best);
}
