import { eachOnce } from '../core/each-once.js';
import { type Fact, factValue, type Gap, isMissing, type Known, type Missing, missing } from '../core/index.js';

/** A quantity of which only the ends are known: what is worked out from it is bounded, not guessed. */
export class Span {
  constructor(
    readonly least: number,
    readonly most: number,
  ) {}
}

/** A figure of a calculation: a number, the span that it lies in, a label or data, or the reasons why it is missing. */
export type Figure = unknown;

/** A span, or the number that both its ends are. */
export const spanOf = (least: number, most: number): number | Span => (least === most ? least : new Span(least, most));
export const leastOf = (v: number | Span): number => (typeof v === 'number' ? v : v.least);
export const mostOf = (v: number | Span): number => (typeof v === 'number' ? v : v.most);
export const isNumeric = (v: unknown): v is number | Span => typeof v === 'number' || v instanceof Span;

/** What a fact says: its value, the span that it lies in, or what is missing. */
export function figureOfFact(name: string, fact: unknown): Figure {
  if (typeof fact !== 'object' || fact === null) return fact;
  const known = fact as Fact<unknown>;
  if (known.state === undefined) return fact;
  if (known.state === 'between' && typeof known.least === 'number')
    return spanOf(known.least, known.most as unknown as number);
  return factValue(name, known);
}

/** What is missing because figures are known only within spans: with the spans narrowed it may be had. */
export interface WideMissing extends Missing {
  /** `blind` where something takes no span at all: narrower ones do not help, or hardly ever. */
  readonly wide: true | 'blind';
}
/** What is missing, as something that may be had with the spans narrowed. */
export const widened = (gone: Missing, wide: WideMissing['wide'] = true): WideMissing => ({ ...gone, wide });
export const isWideMissing = (v: unknown): v is WideMissing =>
  isMissing(v) && (v as Partial<WideMissing>).wide !== undefined;
export const isBlind = (v: unknown): boolean => isWideMissing(v) && v.wide === 'blind';

/** Each gap once, in the order in which they were met. */
export function missingOf(figures: Iterable<unknown>): Missing {
  const gaps: Gap[] = [];
  let wide: WideMissing['wide'] | undefined;
  for (const f of figures) {
    if (!isMissing(f)) continue;
    gaps.push(...f.missing);
    if (isWideMissing(f) && wide !== 'blind') wide = f.wide;
  }
  const all: Missing = { missing: eachOnce(gaps) };
  return wide ? widened(all, wide) : all;
}

const wideGap = (fact: string, obtain: string, wide?: WideMissing['wide']): WideMissing =>
  widened(missing({ kind: 'fact', fact, obtain }), wide);
/** What is said of a figure of which only the ends are known. */
export const spanWords = ({ least, most }: Span): string =>
  `known only within a range, ${+least.toPrecision(4)} to ${+most.toPrecision(4)}`;
/** A span where a single value is asked for. */
export const onlyWithin = (name: string, span: Span): WideMissing => wideGap(name, spanWords(span), 'blind');
/** What is said of a label that is not the same all over a span. */
const turning = 'it depends on a figure that is known only within a range';
/** A label that is not the same all over a span. */
export const turnsWithin = (name: string): WideMissing => wideGap(name, turning);

/** A yes or no that is both within a span: where both ways are known, what holds by either of them is bounded by the two. */
export interface EitherWay extends WideMissing {
  readonly eitherWay: true;
}
export const eitherWay = (name: string): EitherWay => ({ ...turnsWithin(name), eitherWay: true });
export const isEitherWay = (v: unknown): v is EitherWay => isMissing(v) && 'eitherWay' in v;

/** What holds wherever one of several figures does. */
export function joined(name: string, all: readonly unknown[]): unknown {
  if (all.some(isMissing)) return missingOf(all);
  if (all.every(isNumeric)) return spanOf(Math.min(...all.map(leastOf)), Math.max(...all.map(mostOf)));
  if (all.every((v) => v === all[0])) return all[0];
  return all.every((v) => typeof v === 'boolean') ? eitherWay(name) : turnsWithin(name);
}

/** What is missing behind a figure that is none, or the figure where a plain function can take it. */
export const plain = (name: string, v: Figure): Known<unknown> => (v instanceof Span ? onlyWithin(name, v) : v);
