import { type CheckResult, type Gap, isMissing, type Known, whenKnown } from '../../core/index.js';
import { own } from '../../core/own.js';
import { lineCurrentsOf, rising } from '../../installation/index.js';
import { amperes, type Ratio, type Volts } from '../../units/index.js';
import type { CircuitCase } from '../wiring-code.js';
import { opened } from './opened.js';

/** Largest drop that a stated departure is heard for: 8 % of a private supply and 0.5 % for a long route, from memory. */
const largestDeparture = 0.085;

/** A limit that is looser than the code's: a departure of the designer, as a ratio; 0 where none is stated or heard. */
export function statedDeparture(stated: number, ofCode: number): number {
  return stated > ofCode && stated <= largestDeparture ? stated : 0;
}

/** What is not known of the loads behind the distribution circuits, in whose place the rating of their device stands. */
export function unknownBehindFeeders({ path, options }: CircuitCase): readonly Gap[] {
  return path.feeders.flatMap((feeder) => {
    if (own(options.feederDemand, feeder.id) !== undefined) return [];
    const known = rising(feeder, (f) => whenKnown(lineCurrentsOf(f, f.lines), (..._) => amperes(0)));
    return typeof known === 'object' && 'missing' in known ? known.missing : [];
  });
}

/** What a verdict on the voltage drop is seen in the light of. */
interface Light {
  readonly unknownBehind: unknown;
  readonly dropDeparture: unknown;
  readonly dropRatio: Known<Ratio>;
  readonly dropLimit: Known<Ratio>;
  readonly nominalVoltage: Known<Volts>;
  readonly dropAlong: Known<readonly { readonly drop: Known<Volts> }[]>;
}

/**
 * A drop that is too large is open where it rests on ratings that stand in for loads, unless the circuit alone drops too
 * much, and where a designer states a looser limit and has to answer for it.
 */
export function dropVerdict(result: CheckResult, v: Light): CheckResult {
  if (result.verdict !== 'fail') return result;
  const gaps = v.unknownBehind as readonly Gap[];
  const last = isMissing(v.dropAlong) ? undefined : v.dropAlong.at(-1)?.drop;
  const alone =
    typeof last === 'number' && !isMissing(v.nominalVoltage) && !isMissing(v.dropLimit)
      ? last / v.nominalVoltage > v.dropLimit
      : false;
  if (gaps.length > 0 && !alone)
    return opened(result, gaps, 'Too much where a distribution circuit ahead carries the rating of its device.');
  const departure = v.dropDeparture as number;
  if (isMissing(v.dropRatio) || v.dropRatio > departure) return result;
  const percent = (r: number) => `${Number((100 * r).toPrecision(3))} %`;
  return opened(result, [
    {
      kind: 'fact',
      fact: 'departure from the limit of the voltage drop',
      obtain: `the drop is ${percent(v.dropRatio)} and a limit of ${percent(departure)} is stated, looser than the code's: that all equipment works safely at it (525.1) is for the designer to show in writing`,
    },
  ]);
}

/** A voltage outside the window is open where it rests on ratings that stand in for loads. */
export function windowVerdict(result: CheckResult, { unknownBehind }: Pick<Light, 'unknownBehind'>): CheckResult {
  const gaps = unknownBehind as readonly Gap[];
  return result.verdict === 'fail' && gaps.length > 0 ? opened(result, gaps) : result;
}
