import { factValue, isMissing, type Known, type Missing, missing, type Sheet } from '../../core/index.js';
import type { OvercurrentDevice, ResidualDevice } from '../../installation/index.js';
import {
  boundedFaultEnergy,
  directComponentFactor,
  faultEnergy,
  operatingCurrentFromMultiple,
  timeOnCurve,
} from '../../physics/index.js';
import { oldInstantaneousBands } from '../../products/bs3871/instantaneous-bands.js';
import { energyLimits } from '../../products/en60898/energy-limiting-classes.js';
import { instantaneousBands } from '../../products/en60898/instantaneous-bands.js';
import {
  type AmpereSquaredSeconds,
  type Amperes,
  ampereSquaredSeconds,
  amperes,
  hertz,
  ratio,
  seconds,
} from '../../units/index.js';
import type { AssessmentOptions } from '../wiring-code.js';
import type { FuseCurrent } from './operating-current.js';
import { delayOf } from './residual-position.js';

/** Energy that a device lets through at a fault current. */
export interface DeviceEnergy {
  /** I²t, A²s, or what is missing. */
  readonly energy: Known<AmpereSquaredSeconds>;
  /** Whether it is an upper bound only: what does not withstand it need not fail. */
  readonly bound: boolean;
  /** What it rests on. */
  readonly because: string;
}

/** What the energy is asked for. */
export interface EnergyQuestion {
  readonly device: OvercurrentDevice;
  /** The fault current, A. */
  readonly current: Known<Amperes>;
  /** The largest current that the fault could be, where the current itself rests on a declared impedance, A. */
  readonly largest?: Known<Amperes>;
  /** A residual current device that sees this fault. */
  readonly residual?: ResidualDevice;
  readonly options: AssessmentOptions;
  /** How the wiring code reads fuses. */
  readonly fuseCurrent: FuseCurrent;
}

const gap = (fact: string, obtain: string): Missing => missing({ kind: 'fact', fact, obtain });
const makers = 'let-through energy of the device at the prospective current, from its maker';

function makersValue(sheet: Sheet, value: number): DeviceEnergy {
  const energy = sheet.given('letThrough', ampereSquaredSeconds(value), "the maker's figure");
  return { energy, bound: false, because: "Rests on the maker's let-through energy." };
}

/** Energy of a current that flows for a known time. */
function timed(
  sheet: Sheet,
  current: Known<Amperes>,
  time: number,
  by: string,
  bound: boolean,
  because: string,
): DeviceEnergy {
  const faultCurrent = sheet.given('faultCurrent', current);
  const faultTime = sheet.given('faultTime', seconds(time), by);
  return { energy: sheet.step(faultEnergy, { faultCurrent, faultTime }), bound, because };
}

/** Upper bound for a fault that is cleared in less than 0.1 s, with the largest direct-current component of low voltage. */
function boundBelowTenth(sheet: Sheet, current: Known<Amperes>): Known<AmpereSquaredSeconds> {
  const faultCurrent = sheet.given('faultCurrent', current);
  const faultTime = sheet.given('faultTime', seconds(0.1), 'a circuit-breaker has to trip in less: EN 60898-1 Table 7');
  const peakFactor = sheet.given('peakFactor', ratio(1.8), 'IEC 60909-0, need not exceed 1.8 at low voltage');
  const frequency = sheet.given('frequency', hertz(50));
  const thermalFactor = sheet.step(directComponentFactor, { peakFactor, frequency, faultTime });
  return sheet.step(boundedFaultEnergy, { faultCurrent, faultTime, thermalFactor });
}

/** The class limit of a circuit-breaker: class 3 unless it is marked otherwise. */
function classLimit(
  sheet: Sheet,
  device: OvercurrentDevice,
  type: 'B' | 'C' | 'D',
  current: Known<Amperes>,
  options: AssessmentOptions,
): DeviceEnergy {
  const none = (missingValue: Missing): DeviceEnergy => ({ energy: missingValue, bound: true, because: '' });
  const marked = device.energyClass ? factValue('energy limiting class', device.energyClass) : 3;
  const energyClass = isMissing(marked) ? 3 : marked;
  if (energyClass === 1 || type === 'D') return none(gap('let-through energy', makers));
  if (energyClass === 2 && options.acceptMemoryFigures !== true)
    return none(
      gap('let-through energy', `${makers}; the limits of class 2 are recalled figures and have to be accepted`),
    );
  const capacity = device.breakingCapacity
    ? factValue('breaking capacity of the device', device.breakingCapacity)
    : gap('breaking capacity of the device', 'in the rectangle on its front');
  if (isMissing(capacity)) return none(capacity);
  if (!isMissing(current) && current > capacity)
    return none(gap('let-through energy', `${makers}: the prospective current is above its breaking capacity`));
  const label = sheet.label('type', type);
  const classLabel = sheet.label(
    'energyClass',
    energyClass === 2 ? '2' : '3',
    device.energyClass && !isMissing(marked) ? 'as marked' : 'class 3 taken: the class that the trade is supplied with',
  );
  const breakingCapacity = sheet.given('breakingCapacity', capacity);
  const deviceRating = sheet.given('deviceRating', device.rating);
  const energy = sheet.look(energyLimits, { type: label, energyClass: classLabel, breakingCapacity, deviceRating });
  return {
    energy,
    bound: true,
    because: `Rests on the limit of energy limiting class ${energyClass} of EN 60898-1, a figure from memory (grade C): compare with the maker's.`,
  };
}

function breakerEnergy(sheet: Sheet, q: EnergyQuestion, kind: { standard: string; type: string }): DeviceEnergy {
  const band = sheet.part('Instantaneous trip');
  const edge = band.label('edge', 'upper');
  const deviceMultiple =
    kind.standard === 'BS 3871'
      ? band.look(oldInstantaneousBands, { edge, type: band.label('type', kind.type as '1') })
      : band.look(instantaneousBands, { edge, type: band.label('type', kind.type as 'B') });
  const deviceRating = band.given('deviceRating', q.device.rating);
  const operating = band.step(operatingCurrentFromMultiple, { deviceMultiple, deviceRating });
  if (isMissing(operating)) return { energy: operating, bound: true, because: '' };
  if (isMissing(q.current)) return { energy: q.current, bound: true, because: '' };
  if (q.current < operating) {
    const r = q.residual;
    const rated = r ? factValue('rating of the residual current device', r.rating) : undefined;
    if (r && rated !== undefined && !isMissing(rated) && r.delayTime === undefined && q.current >= 5 * rated) {
      const { delay } = delayOf(r);
      const general = delay.state === 'known' && delay.value === 'general';
      return timed(
        sheet,
        q.current,
        general ? 0.04 : 0.15,
        'break time of the residual current device at five times its rated current, EN 61008-1',
        true,
        'Rests on the residual current device: the fault current is below the instantaneous trip of the circuit-breaker.',
      );
    }
    return {
      energy: gap(
        'operating time of the circuit-breaker',
        `the fault current of ${q.current.toPrecision(4)} A is below its instantaneous trip: its standard bounds the time only loosely; take the maker's curve`,
      ),
      bound: true,
      because: '',
    };
  }
  const boundPart = sheet.part('Cleared in less than 0.1 s');
  // a declared impedance may be higher than the real one: the prospective current guards the bound
  const guarded = largerOf(q.current, q.largest);
  const bound = boundBelowTenth(boundPart, guarded);
  const gathered = (parts: readonly Sheet[]) => sheet.gather('smallest', 'letThrough', 'letThrough', parts);
  if (kind.standard === 'BS 3871') return { energy: gathered([boundPart]), bound: true, because: restsOnTenth };
  const classPart = sheet.part('Energy limiting class');
  const limit = classLimit(classPart, q.device, kind.type as 'B', guarded, q.options);
  // without a class limit the bound may still acquit
  if (isMissing(limit.energy)) return { energy: gathered([boundPart]), bound: true, because: restsOnTenth };
  const byClass = isMissing(bound) || limit.energy <= bound;
  return { energy: gathered([boundPart, classPart]), bound: true, because: byClass ? limit.because : restsOnTenth };
}

const largerOf = (current: Amperes, other: Known<Amperes> | undefined): Amperes =>
  other === undefined || isMissing(other) || other < current ? current : other;

const restsOnTenth =
  'Rests on the bound of a fault cleared in less than 0.1 s with the largest direct-current component of IEC 60909-0.';

function fuseEnergy(sheet: Sheet, q: EnergyQuestion, standard: Parameters<FuseCurrent>[2]): DeviceEnergy {
  const quick = q.fuseCurrent(sheet.part('Fuse at 0.4 s'), q.device, standard, seconds(0.4));
  const slow = q.fuseCurrent(sheet.part('Fuse at 5 s'), q.device, standard, seconds(5));
  if (isMissing(q.current)) return { energy: q.current, bound: false, because: '' };
  if (isMissing(slow)) return { energy: slow, bound: false, because: '' };
  if (q.current < slow)
    return {
      energy: gap(
        'operating time of the fuse',
        `the fault current of ${q.current.toPrecision(4)} A takes it longer than 5 s; the adiabatic equation ends there`,
      ),
      bound: false,
      because: '',
    };
  const because = 'Rests on operating currents of the fuse worked back from printed loop impedances.';
  if (!isMissing(quick) && q.current <= quick) {
    const part = sheet.part('Time of the fuse');
    const operatingTime = part.run(timeOnCurve, {
      points: [
        { current: quick as number, time: 0.4 },
        { current: slow as number, time: 5 },
      ],
      current: q.current as number,
    });
    return timed(sheet, q.current, operatingTime as number, 'from the curve', false, because);
  }
  const [current, time] = isMissing(quick) ? [slow, 5] : [quick, 0.4];
  return timed(
    sheet,
    amperes(current),
    time,
    'the last published point: at a larger current a fuse lets through no more',
    true,
    because,
  );
}

/**
 * Writes the energy that a device lets through at a fault current: below 0.1 s the class limit or a bound, for fuses
 * from the published points. `letThrough` is the latest value of the sheet afterwards.
 */
export function writeDeviceEnergy(sheet: Sheet, q: EnergyQuestion): DeviceEnergy {
  if (q.options.makersLetThrough !== undefined) return makersValue(sheet, q.options.makersLetThrough);
  const kind = factValue('kind of the overcurrent device', q.device.kind);
  const result: DeviceEnergy = isMissing(kind)
    ? { energy: kind, bound: true, because: '' }
    : kind.standard === 'EN 60898' || kind.standard === 'EN 61009' || kind.standard === 'BS 3871'
      ? breakerEnergy(sheet, q, kind)
      : fuseEnergy(sheet, q, kind.standard);
  if (isMissing(result.energy)) sheet.given('letThrough', result.energy);
  return result;
}
