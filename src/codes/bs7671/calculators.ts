import { Calculator, type Contents } from '../../calculation/index.js';
import { bs7671Contents } from './contents.js';
import { a1Contents } from './editions/a1-2020.js';
import { a2Contents } from './editions/a2-2022.js';
import type { Edition } from './editions.js';

/** The contents lists of the editions whose text is entered. */
const lists: Readonly<Record<EnteredEdition, () => Contents>> = {
  '2018': bs7671Contents,
  '2018+A1:2020': a1Contents,
  '2018+A2:2022': a2Contents,
  '2018+A3:2024': a2Contents,
};
/** An edition whose text is entered. */
export type EnteredEdition = Exclude<Edition, '2018+A4:2026'>;
const isEntered = (edition: Edition): edition is EnteredEdition => edition in lists;

const made = /* @__PURE__ */ new Map<Edition, Calculator>();
/** What calculates circuits by an edition, laid out when first used; undefined for one whose text is not entered. */
export function calculatorOf(edition: Edition): Calculator | undefined {
  const ready = made.get(edition);
  if (ready || !isEntered(edition)) return ready;
  const calculator = new Calculator(lists[edition](), { document: 'BS 7671', edition });
  made.set(edition, calculator);
  return calculator;
}
