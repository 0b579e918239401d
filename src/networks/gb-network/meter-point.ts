import { advice, type CheckResult, judge, type Source } from '../../core/index.js';
import { invalidInput } from '../../units/index.js';
import { distributionAreas } from './distributors.js';

const WEIGHTS = [3, 5, 7, 13, 17, 19, 23, 29, 31, 37, 41, 43] as const;
const source: Source = {
  document: 'industry data',
  clause: 'check digit of the meter-point administration number',
  provenance: 'one-source',
};

/**
 * The number is built like a meter-point number and its check digit agrees. Industry data, check digit of the meter-
 * point administration number.
 */
export const meterPointPlausible = /* @__PURE__ */ advice({
  id: 'meter-point-plausible',
  title: 'The meter-point number is plausible',
  source,
  caution:
    'Plausible, not proven: the digit lets about one slip in sixty through, and never sees a swap of the 3rd and 8th or the 6th and 11th digit.',
});

/** What a meter-point number says. @inline */
export interface MeterPoint {
  readonly structure: 'core' | 'full' | 'northern-ireland' | 'unreadable';
  /** The core of 13 digits. */
  readonly core?: string;
  /** First two digits of the core. */
  readonly distributor?: string;
  /** Area of the distributor; absent for independent networks, whose area is not in the number. */
  readonly area?: string;
  /** Profile class, first two digits of a full number. */
  readonly profileClass?: string;
  /** Meter time-switch code of a full number. */
  readonly timeSwitchCode?: string;
  /** Line loss factor class of a full number. */
  readonly lineLossClass?: string;
  /** Whether it is plausible, and what is wrong. */
  readonly result: CheckResult;
}

/**
 * The check digit that belongs to the first twelve digits of a core.
 * @param first12 twelve digits, or more, of which the first twelve count
 * @returns the thirteenth digit, 0 to 9
 */
export function meterPointCheckDigit(first12: string): number {
  if (typeof first12 !== 'string' || !/^\d{12}/.test(first12))
    throw invalidInput('a meter-point number', [{ path: ['first12'], message: 'must begin with twelve digits' }]);
  const sum = WEIGHTS.reduce((total, weight, i) => total + weight * Number(first12[i]), 0);
  return (sum % 11) % 10;
}

const say = (holds: boolean, because: string): CheckResult => judge(meterPointPlausible, { holds, because });

/**
 * Reads a meter-point administration number: structure, check digit, distributor. It can be found plausible, never valid.
 * @param text 13 digits, or 21 characters with the top line; spaces, hyphens and a leading S may stand between
 * @returns its parts and the result of the check
 * @throws CalculationError `invalid-input` where it is no text
 * @example
 * ```ts
 * import { readMeterPoint } from 'ohmwright/networks';
 *
 * const read = readMeterPoint('14 1234 5678 901');
 * read.result.verdict; // => 'pass'
 * read.area; // => 'West Midlands'
 * readMeterPoint('14 1234 5678 902').result.because; // => 'the last digit is 2, the check digit is 1'
 * ```
 */
export function readMeterPoint(text: string): MeterPoint {
  if (typeof text !== 'string')
    throw invalidInput('a meter-point number', [{ path: ['text'], message: 'must be a text' }]);
  const plain = text.replace(/[\s-]/g, '').replace(/^S(?=[0-9])/i, '');
  if (/^\d{11}$/.test(plain))
    return {
      structure: 'northern-ireland',
      result: say(false, '11 digits are a number of Northern Ireland, whose check is not known here'),
    };
  const full = /^(\d{2})(\d{3})([0-9A-Z]{3})(\d{13})$/i.exec(plain);
  const core = full?.[4] ?? (/^\d{13}$/.test(plain) ? plain : undefined);
  if (core === undefined)
    return {
      structure: 'unreadable',
      result: say(false, `${plain.length} characters; a number has 13 digits, or 21 characters with its top line`),
    };
  const distributor = core.slice(0, 2);
  const area = distributionAreas[distributor];
  const digit = meterPointCheckDigit(core);
  const last = Number(core[12]);
  const holds = digit === last && Number(distributor) >= 10;
  const because =
    digit !== last
      ? `the last digit is ${last}, the check digit is ${digit}`
      : Number(distributor) < 10
        ? `distributors begin at 10, here ${distributor}`
        : area
          ? 'structure and check digit agree'
          : 'structure and check digit agree; an independent network, whose area is not in the number';
  return {
    structure: full ? 'full' : 'core',
    core,
    distributor,
    ...(area === undefined ? {} : { area }),
    ...(full ? { profileClass: full[1], timeSwitchCode: full[2], lineLossClass: full[3] } : {}),
    result: say(holds, because),
  };
}
