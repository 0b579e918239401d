import type { Hours } from './hours.js';
import type { Item } from './item.js';

/** A price book: supplied by the firm, none is built in. Money is in whole units of the smallest coin. */
export interface PriceBook {
  readonly format: 'prices/1';
  /** Currency code of ISO 4217. */
  readonly currency: string;
  /** Price of one unit by item key; a key may end in `*` to serve all keys that begin so. */
  readonly items: Readonly<Record<string, number>>;
  /** Price of an hour. */
  readonly hour: number;
  /** Tax in hundredths of a percent: 2000 is 20 %. */
  readonly taxBasisPoints: number;
}

/** A line of a quotation; amounts in the smallest coin. @inline */
export interface PriceLine {
  readonly words: string;
  /** How much of it, in `unit`. */
  readonly quantity: number;
  /** `m`, `each`, `set` or `h`. */
  readonly unit: string;
  /** Price of one unit. */
  readonly each: number;
  /** Quantity times price, rounded. */
  readonly amount: number;
}

/** A quotation; amounts in the smallest coin, totals the exact sums of the lines. */
export interface Quotation {
  /** Currency code of ISO 4217. */
  readonly currency: string;
  readonly lines: readonly PriceLine[];
  /** Items without a price or without a quantity: they are not in the total. */
  readonly open: readonly string[];
  /** Sum of the lines. */
  readonly net: number;
  /** Tax on the sum. */
  readonly tax: number;
  /** Sum with tax. */
  readonly total: number;
  readonly rounding: string;
}

/** Half away from zero, on integers: quantities carry at most three decimals. */
const rounded = (quantity: number, each: number): number => {
  const thousandths = Math.round(quantity * 1000);
  const product = thousandths * each;
  return Math.sign(product) * Math.floor((Math.abs(product) + 500) / 1000);
};

/**
 * Prices items and hours with a firm's price book.
 * @param items items of material
 * @param hours hours by task; the typical estimate is priced
 * @param book the firm's prices
 * @returns lines and sums in the smallest coin, and the items that have no price
 * @example
 * ```ts
 * import { readPriceBook } from 'ohmwright/io';
 * import { quotationOf } from 'ohmwright/site';
 *
 * const book = readPriceBook({ format: 'prices/1', currency: 'GBP', items: { gland: 450 }, hour: 4500, taxBasisPoints: 2000 });
 * const glands = { key: 'gland', words: 'gland', quantity: 2, unit: 'each', rule: 'two for each cable' } as const;
 * const hours = { tasks: [], low: 1, typical: 2, high: 3, complete: true };
 * quotationOf([glands], hours, book).total; // => 11880
 * ```
 */
export function quotationOf(items: readonly Item[], hours: Hours, book: PriceBook): Quotation {
  const priceOf = (key: string): number | undefined => {
    if (Object.hasOwn(book.items, key)) return book.items[key];
    const prefix = Object.keys(book.items)
      .filter((k) => k.endsWith('*') && key.startsWith(k.slice(0, -1)))
      .sort((a, b) => b.length - a.length)[0];
    return prefix === undefined ? undefined : book.items[prefix];
  };
  const open: string[] = [];
  const lines: PriceLine[] = [];
  for (const item of items) {
    const each = priceOf(item.key);
    if (item.quantity === undefined || each === undefined) open.push(item.words);
    else
      lines.push({
        words: item.words,
        quantity: item.quantity,
        unit: item.unit,
        each,
        amount: rounded(item.quantity, each),
      });
  }
  lines.push({
    words: 'labour',
    quantity: Math.round(hours.typical * 1000) / 1000,
    unit: 'h',
    each: book.hour,
    amount: rounded(hours.typical, book.hour),
  });
  if (!hours.complete) open.push('labour of tasks whose extent is not known');
  const net = lines.reduce((sum, l) => sum + l.amount, 0);
  const tax = Math.floor((net * book.taxBasisPoints + 5000) / 10000);
  return {
    currency: book.currency,
    lines,
    open,
    net,
    tax,
    total: net + tax,
    rounding: 'each line and the tax to the nearest smallest coin, half up; totals are exact sums',
  };
}
