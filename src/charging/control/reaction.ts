import type { CheckResult } from '../../core/index.js';
import { comparison, formula, type Gap, judge, notDetermined } from '../../core/index.js';
import { type CurvePoint, timeAt } from '../../physics/index.js';
import { type Amperes, CalculationError, type Seconds, seconds } from '../../units/index.js';

/**
 * Longest time for which a rise of the other load can show above the limit. Sum of the delays in a row. Delays in a
 * row.
 */
export const excessTimeOf = /* @__PURE__ */ formula({
  id: 'excess-time',
  title: 'Longest time from a rise of the other load until points and vehicles have made room',
  inputs: ['meterPeriod', 'controllerPeriod', 'pointReaction', 'vehicleReaction'],
  output: 'excessTime',
  expression: 'meterPeriod + controllerPeriod + pointReaction + vehicleReaction',
  compute: ({ meterPeriod, controllerPeriod, pointReaction, vehicleReaction }) =>
    meterPeriod + controllerPeriod + pointReaction + vehicleReaction,
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

/** The main fuse does not operate while the excess lasts. Time-current curve of the fuse. */
export const mainFuseCarriesExcess = /* @__PURE__ */ comparison({
  id: 'main-fuse-carries-excess',
  title: 'The main fuse carries the excess for as long as it can last',
  weight: 'rule',
  kind: 'at-most',
  value: 'excessTime',
  limit: 'operatingTime',
  source: { document: 'Time-current curve of the fuse', provenance: 'definition' },
  caution:
    'A curve holds for a fuse that was cold before. Excess that comes again and again heats it up; the network operator decides on the fuse.',
  worse: { excessTime: 'up', operatingTime: 'down' },
});

/**
 * Whether the main fuse carries the excess of a load control.
 * @param excess `current` on the line while the excess lasts, A; `time` that it can last, s; the fuse `rating`, A,
 * and
 * the points of its curve before which it does not operate, where there is one
 * @returns the result; `not-determined` without a curve that reaches to this current
 * @example
 * ```ts
 * import { amperes, seconds } from 'ohmwright';
 * import { judgeMainFuse } from 'ohmwright/charging';
 *
 * const excess = { current: amperes(92), time: seconds(16), rating: amperes(60) };
 * judgeMainFuse(excess).verdict; // => 'not-determined'
 * judgeMainFuse({ ...excess, curve: [{ current: 90, time: 600 }, { current: 120, time: 60 }] }).verdict; // => 'pass'
 * ```
 */
export function judgeMainFuse(excess: {
  readonly current: Amperes;
  readonly time: Seconds;
  readonly rating: Amperes;
  readonly curve?: readonly CurvePoint[];
}): CheckResult {
  const { current, time, rating, curve } = excess;
  const gap = (explain: string): Gap => ({
    kind: 'fact',
    fact: 'time-current curve of the main fuse',
    obtain: explain,
  });
  if (!curve || curve.length === 0)
    return notDetermined(mainFuseCarriesExcess, gap(`a curve of the ${rating} A fuse that reaches to ${current} A`));
  try {
    return judge(mainFuseCarriesExcess, { excessTime: time, operatingTime: seconds(timeAt(curve, current)) });
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    return notDetermined(mainFuseCarriesExcess, gap(error.message));
  }
}
