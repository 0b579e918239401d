import { type Attestations, attestedTables, missing, type Table } from '../../core/index.js';
import type { Run } from '../../installation/index.js';
import { CalculationError, squareMillimetres } from '../../units/index.js';
import { ratingsFor } from '../iec-family/rated-currents.js';
import { remediesOf } from '../iec-family/remedies.js';
import { lawsOfTable } from '../iec-family/table-laws.js';
import { circuitFigures, runFigures } from '../iec-family/test-figures.js';
import { timeCurrentLimits } from '../iec-family/time-current-limits.js';
import type { ConductorSize, WiringCode } from '../wiring-code.js';
import { capacityTableOf } from './cable-tables.js';
import { calculatorOf, calculatorWith } from './calculators.js';
import { earthingOptionsBy } from './earthing-options.js';
import { type Edition, editionGap, editionInForce, editions, standingOf } from './editions.js';
import { wayOfItsOwn } from './own-way.js';
import { table412 } from './tables/41-2.js';
import { table414 } from './tables/41-4.js';
import { table431 } from './tables/43-1.js';
import { table542 } from './tables/54-2.js';
import { table543 } from './tables/54-3.js';
import { table544 } from './tables/54-4.js';
import { table545 } from './tables/54-5.js';
import { type TestEdition, testPlan } from './test-plan.js';

const sizesFor = (run: Run): readonly ConductorSize[] =>
  (capacityTableOf(run.cable)?.offers('conductorArea') ?? []).map((s) => ({ area: squareMillimetres(s as number) }));

/** What a firm brings to a code. */
export interface BroughtToCode {
  /** Figures that somebody compared with the print, as `readAttestations` gives them. */
  readonly attestations?: readonly Attestations[];
  /** Tables of other publications that the attestations may be of, besides those that the code reads. */
  readonly tables?: readonly Table[];
}

/** Tables that the contents list of an edition reads, and others, as attestations have them. */
function attestedBy(edition: Edition, { attestations = [], tables = [] }: BroughtToCode) {
  if (attestations.length === 0) return undefined;
  return attestedTables(attestations, {
    tables: [...new Set([...calculatorOf(edition).lists.tables, ...tables])],
    document: 'BS 7671',
    edition,
    lawsOf: lawsOfTable,
    beside: [table412, table414, table431, table542, table543, table544, table545] as unknown as readonly Table[],
  });
}

/**
 * BS 7671 as a wiring code, by edition; there is no default edition.
 * @param edition year and latest amendment, such as `2018+A2:2022`
 * @param brought figures that a firm compared with its own copy: they count for this code alone
 * @returns the wiring code, for `assess`, `design` and `permitted`
 * @throws CalculationError `unknown-definition` for an edition that is not entered; `invalid-input` for attestations of
 * cells that are not there, or corrections of a table that is not read, `contradicting-attestations`, and `correction-breaks-law` where a corrected
 * figure breaks a law and nobody says why it stands
 * @example
 * ```ts
 * import { bs7671 } from 'ohmwright/bs7671';
 *
 * bs7671('2018+A2:2022').inForce('2026-11-01'); // => 'withdrawn'
 * bs7671('2011'); // throws unknown-definition
 * ```
 */
export function bs7671(edition: string, brought: BroughtToCode = {}): WiringCode {
  const entered = editions.find((e) => e.edition === edition)?.edition;
  if (!entered) {
    const known = editions.map((e) => e.edition);
    throw new CalculationError(
      'unknown-definition',
      `BS 7671:${edition} is not entered; there is ${known.join(', ')}`,
      {
        kind: 'edition',
        id: edition,
        known,
      },
    );
  }
  const gap = editionGap(entered);
  const attested = attestedBy(entered, brought);
  const calculator = attested ? calculatorWith(entered, attested.tables) : calculatorOf(entered);
  return {
    id: 'bs7671',
    name: 'BS 7671',
    edition: entered,
    standing: standingOf(entered),
    ...(attested ? { attested } : {}),
    inForce: (date) => editionInForce(entered, date),
    sizesFor,
    ratingsFor,
    timeCurrentLimits,
    calculator,
    figures: circuitFigures,
    runFigures,
    remedies: (circuit, figures) => (gap ? missing(gap) : remediesOf(circuit, figures, 0.95, attested?.tables)),
    ownWay: wayOfItsOwn,
    tests: gap ? { notEntered: gap } : testPlan(entered as TestEdition),
    earthingOptions: earthingOptionsBy(calculator),
  };
}
