import { Calculator, type Contents, contents, type Groups, type Lines, type Scopes } from '../../calculation/index.js';
import type { Table } from '../../core/index.js';
import type { EditionDifferences } from '../edition-differences.js';
import { broughtContents } from '../iec-family/brought-edition.js';
import { notEnteredGroups } from '../iec-family/not-entered.js';
import { circuitScopes } from '../iec-family/scopes.js';
import type { WiringCode } from '../wiring-code.js';
import { bs7671Contents } from './contents.js';
import { a1Contents } from './editions/a1-2020.js';
import { a2Contents } from './editions/a2-2022.js';
import { a3Contents } from './editions/a3-2024.js';
import { type Edition, editionGap } from './editions.js';

/** The contents list of an edition whose text could not be had: nothing can be judged by it, aspect by aspect. */
const closed = (edition: Edition) => () => {
  const source = { document: 'BS 7671', edition, provenance: 'memory', note: 'text not available' } as const;
  const gap = editionGap(edition);
  if (!gap) throw new Error(`the text of ${edition} is entered`);
  return contents({ scopes: circuitScopes, figures: {}, checks: notEnteredGroups(source, gap) });
};

type Checks = WiringCode['calculator']['contents']['checks'];
type List<G extends Groups> = Contents<Scopes, { readonly [list: string]: Lines }, G>;
/** The contents lists of the editions. */
const lists: Readonly<Record<Edition, () => List<Checks>>> = {
  '2018': bs7671Contents,
  '2018+A1:2020': a1Contents,
  '2018+A2:2022': a2Contents,
  '2018+A3:2024': a3Contents,
  '2018+A4:2026': /* @__PURE__ */ closed('2018+A4:2026'),
};

const code = (edition: Edition) => ({ document: 'BS 7671', edition });
/** What calculates circuits by an edition, with tables that are read in the place of those that are entered. */
export const calculatorWith = (edition: Edition, tables: ReadonlyMap<string, Table>): Calculator<Checks> =>
  new Calculator(lists[edition](), code(edition), tables);

/** What calculates circuits by an edition whose differences somebody brought. */
export const calculatorBrought = (
  base: Edition,
  differences: EditionDifferences,
  tables: ReadonlyMap<string, Table>,
): Calculator<Checks> =>
  new Calculator(
    broughtContents(lists[base]() as never, differences) as never,
    { document: 'BS 7671', edition: differences.edition },
    tables,
  );

const made = /* @__PURE__ */ new Map<Edition, Calculator<Checks>>();
/** What calculates circuits by an edition, laid out when first used. */
export function calculatorOf(edition: Edition): Calculator<Checks> {
  let calculator = made.get(edition);
  if (!calculator) {
    calculator = new Calculator(lists[edition](), code(edition));
    made.set(edition, calculator);
  }
  return calculator;
}
