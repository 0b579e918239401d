import { refuseNumbers } from '../../core/refuse-numbers.js';
import type { Ratio } from '../../units/index.js';
import { pilotCurrentOf } from './pilot-duty-cycle.js';

/** What a vehicle reads in a duty cycle. */
export type PilotReading =
  /** A current is offered, A. */
  | { readonly meaning: 'current'; readonly current: ReturnType<typeof pilotCurrentOf> }
  /** About 5 %: charging needs digital communication. */
  | { readonly meaning: 'digital-communication' }
  /** 100 %: connected, but no charging is offered. */
  | { readonly meaning: 'not-offered' }
  /** A duty cycle that is not allowed: no charging. */
  | { readonly meaning: 'not-allowed' };

/**
 * What a vehicle reads in a duty cycle, by the bands of IEC 61851-1:2017 Table A.8.
 * @param dutyCycle measured duty cycle, 1, 0 to 1
 * @returns the current offered, A, or why there is none
 * @throws CalculationError `invalid-input` where a reading is no number
 * @example
 * ```ts
 * import { percent } from 'ohmwright';
 * import { readPilot } from 'ohmwright/charging';
 *
 * readPilot(percent(50)); // => { meaning: 'current', current: 30 }
 * readPilot(percent(5)); // => { meaning: 'digital-communication' }
 * readPilot(percent(2)); // => { meaning: 'not-allowed' }
 * ```
 */
export function readPilot(dutyCycle: Ratio): PilotReading {
  refuseNumbers('the duty cycle of a control pilot', { dutyCycle });
  if (dutyCycle >= 0.08 && dutyCycle <= 0.97) return { meaning: 'current', current: pilotCurrentOf({ dutyCycle }) };
  if (dutyCycle >= 0.03 && dutyCycle <= 0.07) return { meaning: 'digital-communication' };
  return { meaning: dutyCycle === 1 ? 'not-offered' : 'not-allowed' };
}
