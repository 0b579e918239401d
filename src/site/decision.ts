import type { Fact } from '../core/index.js';
import { byCable } from '../installation/index.js';
import { sizeWords } from '../installation/marking.js';
import type { OptionPlan, Plan } from './plan.js';
import { type PriceBook, quotationOf } from './price.js';
import { wholeJob } from './whole-job.js';

/** What a plan came to, in the words of one row of a spreadsheet. */
export interface Decision {
  /** Reference of the job, or its title. */
  readonly reference: string;
  /** Verdict on the best option. */
  readonly verdict: string;
  /** What that option is. */
  readonly option: string;
  /** Whether the network operator is told, or asked first. */
  readonly operator: string;
  /** Cable of each circuit, each once. */
  readonly cable: string;
  /** Rated current of each device, each once. */
  readonly device: string;
  /** Hours: least, likely and most, h. */
  readonly hours: readonly [least: number, likely: number, most: number];
  /** Net price as a decimal number; only where the option does not fail, is decided, and everything in it has a price. */
  readonly net?: string;
  /** Currency of the price, a code of ISO 4217. */
  readonly currency?: string;
  /** What has no price, or no quantity. */
  readonly unpriced: readonly string[];
  /** What to confirm on site where it passes only on condition. */
  readonly conditions: readonly string[];
  /** Facts that a rule waits for. */
  readonly missing: readonly string[];
}

/** Currencies whose smallest coin is no hundredth, by ISO 4217. */
const places: Readonly<Record<string, number>> = { JPY: 0, KRW: 0, ISK: 0, BHD: 3, JOD: 3, KWD: 3, OMR: 3, TND: 3 };

/** An amount of smallest coins as a decimal number of the currency: 98604 pence are 986.04 pounds. */
export function decimalOf(coins: number, currency: string): string {
  const digits = Object.hasOwn(places, currency) ? (places[currency] ?? 2) : 2;
  return (coins / 10 ** digits).toFixed(digits);
}

const open = (fact: Fact<number>, unit: string): string =>
  fact.state === 'known'
    ? `${fact.value} ${unit}`
    : fact.state === 'between'
      ? `${fact.least} to ${fact.most} ${unit}`
      : 'open';
const once = (words: readonly string[]): string => [...new Set(words)].join('; ');

function priceOf(option: OptionPlan, book: PriceBook): Pick<Decision, 'net' | 'currency' | 'unpriced'> {
  // feeders that are new are paid for too, and what is put right
  const { items, hours } = wholeJob(option);
  const { open: unpriced, net } = quotationOf(items, hours, book);
  const decided = option.overall.verdict !== 'fail' && option.overall.verdict !== 'not-determined';
  return {
    ...(decided && unpriced.length === 0 ? { net: decimalOf(net, book.currency) } : {}),
    currency: book.currency,
    unpriced,
  };
}

/** The route; where it waits for facts that are assumed, what it comes to with them. */
function operatorWords({ notification: { decision } }: OptionPlan): string {
  const { route, onceConfirmed } = decision;
  return onceConfirmed === undefined ? route : `${onceConfirmed}, once confirmed`;
}

/**
 * What the best option of a plan came to, for one row of a spreadsheet.
 * @param plan a plan
 * @param book prices of the firm; no price is given without them
 * @returns plain data; undefined where the plan has no option
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { inGreatBritain } from 'ohmwright/great-britain';
 * import { readSurvey } from 'ohmwright/io';
 * import { decisionOf, planOf } from 'ohmwright/site';
 *
 * decisionOf(planOf(readSurvey(survey), inGreatBritain('2018+A2:2022')))?.cable; // => 'flat twin and earth 6 mm²'
 * ```
 */
export function decisionOf(plan: Plan, book?: PriceBook): Decision | undefined {
  const [option] = plan.options;
  if (!option) return undefined;
  const runs = option.points.map((p) => p.run);
  const { low, typical, high } = option.hours;
  return {
    reference: plan.about.reference ?? plan.about.title,
    verdict: option.overall.verdict,
    option: option.title,
    operator: operatorWords(option),
    cable: once(
      runs.map((run) =>
        byCable(run)
          .map(({ cable }) => `${cable.construction.replaceAll('-', ' ')} ${sizeWords(cable) ?? 'size open'}`)
          .join(' + '),
      ),
    ),
    device: once(runs.map(({ device }) => open(device.rating, 'A'))),
    hours: [low, typical, high],
    ...(book ? priceOf(option, book) : { unpriced: [] }),
    conditions: option.conditions.map((c) => `${c.title}: ${c.words}`),
    missing: option.unknown.filter((u) => u.decides).map((u) => u.fact),
  };
}
