import { dutyCycleOf } from '../../products/iec61851/pilot-duty-cycle.js';
import type { CableReading } from '../../products/iec62196/cable-coding.js';
import { type Amperes, amperes, type Ratio, ratio } from '../../units/index.js';
import { inspection, isObject } from '../network/refuse.js';
import { offeredCurrentOf } from './offered-current.js';

/** What a charge point puts on its pilot line. @inline */
export interface PilotOffer {
  /** Current that is offered, A; 0 when none is. */
  readonly current: Amperes;
  /** Duty cycle, 1; 1 (a standing voltage) when none is offered. */
  readonly dutyCycle: Ratio;
  /** What keeps the current from being larger; `below-least` when what remains is under 6 A. */
  readonly limitedBy: 'setting' | 'cable' | 'allocation' | 'below-least' | 'cable-not-determined' | 'no-cable';
}

/**
 * What a charge point puts on its pilot line: the smallest of its setting, the cable and the allocation, rounded down to
 * its resolution, nothing under 6 A, and the duty cycle for it. A cable that cannot be told gets nothing.
 * @param values setting and allocation, A, 0 and up; the cable as read; resolution, A, above 0 (1 A when absent)
 * @returns current, A, duty cycle, 1, and what limits it
 * @throws CalculationError `invalid-input` for negative currents or a resolution that is not above 0
 * @example
 * ```ts
 * import { amperes, ohms } from 'ohmwright';
 * import { pilotOffer, readCable } from 'ohmwright/charging';
 *
 * const cable = readCable(ohms(220), 'single-phase');
 * pilotOffer({ setting: amperes(40), cable, allocation: amperes(24.7) }); // => { current: 24, dutyCycle: 0.4, limitedBy: 'allocation' }
 * pilotOffer({ setting: amperes(40), cable, allocation: amperes(5.9) }); // => { current: 0, dutyCycle: 1, limitedBy: 'below-least' }
 * ```
 */
export function pilotOffer(values: {
  readonly setting: Amperes;
  readonly cable: CableReading | 'fixed';
  readonly allocation: Amperes;
  readonly resolution?: Amperes;
}): PilotOffer {
  const found = inspection();
  found.when(!isObject(values), [], 'must be an object');
  found.refuse('The offer of a charge point');
  const { setting, cable, allocation, resolution = amperes(1) } = values;
  found.when(cable !== 'fixed' && !isObject(cable), ['cable'], "must be a reading, or 'fixed'");
  found.number(setting, ['setting'], { least: 0 });
  found.number(allocation, ['allocation'], { least: 0 });
  found.number(resolution, ['resolution'], { above: 0 });
  found.refuse('The offer of a charge point');
  const none = (limitedBy: PilotOffer['limitedBy']): PilotOffer => ({
    current: amperes(0),
    dutyCycle: ratio(1),
    limitedBy,
  });
  if (cable !== 'fixed' && cable.kind !== 'cable')
    return none(cable.kind === 'no-cable' ? 'no-cable' : 'cable-not-determined');
  const cableCurrent = cable === 'fixed' ? setting : cable.current;
  const exact = offeredCurrentOf({ setCurrent: setting, cableCurrent, allocatedCurrent: allocation });
  const steps = Math.floor(exact / resolution + 1e-9);
  // nothing in the table of duty cycles is above 80 A
  const current = amperes(Math.min(80, steps * resolution));
  if (current < 6) return none('below-least');
  const limitedBy =
    allocation <= Math.min(setting, cableCurrent) ? 'allocation' : cableCurrent < setting ? 'cable' : 'setting';
  return { current, dutyCycle: dutyCycleOf({ pilotCurrent: current }), limitedBy };
}
