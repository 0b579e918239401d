/**
 * What applies in Great Britain, as one set: BS 7671 and the demand of the On-Site Guide, the distributors' rules, heights
 * of the code of practice, words of the trade.
 *
 * @module ohmwright/great-britain
 */
import { type BroughtToCode, bs7671 } from './codes/bs7671/code.js';
import { bs7671Demand } from './codes/bs7671/demand.js';
import type { Table } from './core/index.js';
import { codeOfPracticeMounting } from './guidance/charging-code-of-practice/heights.js';
import { tableA2, tableA2First } from './guidance/on-site-guide/a2.js';
import { greatBritain } from './networks/gb-network/connection-rules.js';
import { meterTails } from './networks/gb-network/meter-tails.js';
import type { Applicable, TradeWords } from './site/applicable.js';

export { ordinaryHome } from './networks/gb-network/ordinary-home.js';

/** Words of the trade in Great Britain. */
export const britishWords: TradeWords = {
  tails: 'meter tails',
  newTails: 'meter tails 25 mm², set',
  meterPoint: 'meter-point number',
  userTest: 'Press the test button of the residual current device every six months.',
  // Building Regulations 2010, Part P, from memory; Scotland has rules of its own
  circuitInDwelling:
    'In England and Wales a new circuit in a dwelling is notifiable (Part P): certify it by the firm’s registration with a scheme of competent persons, or notify building control before the work',
};

/** Tables that a plan reads and the contents lists of the code do not. */
const readElsewhere = () => [tableA2, tableA2First, meterTails] as unknown as readonly Table[];

/**
 * What applies to premises in Great Britain, for `planOf`.
 * @param edition edition of BS 7671, by year and latest amendment
 * @param brought figures that a firm compared with its own copies, of BS 7671, of Table A2 of the On-Site Guide, and of
 * what distributors say of meter tails
 * @returns wiring code, demand, network operator, heights and words
 * @throws CalculationError `unknown-definition` for an edition that is not entered; `invalid-input`,
 * `contradicting-attestations` or `correction-breaks-law` for attestations that cannot be taken
 * @example
 * ```ts
 * import { inGreatBritain } from 'ohmwright/great-britain';
 *
 * inGreatBritain('2018+A2:2022').network.country; // => 'GB'
 * ```
 */
export const inGreatBritain = (edition: string, brought: BroughtToCode = {}): Applicable => ({
  code: bs7671(edition, { ...brought, tables: [...readElsewhere(), ...(brought.tables ?? [])] }),
  demand: bs7671Demand,
  network: greatBritain,
  mounting: codeOfPracticeMounting,
  words: britishWords,
});
