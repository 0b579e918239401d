import { type Attestations, type AttestedTables, attestedTables, missing, type Table } from '../../core/index.js';
import { labels, type ReferenceMethod, type Run } from '../../installation/index.js';
import { CalculationError, invalidInput, shown, squareMillimetres } from '../../units/index.js';
import type { EditionDifferences } from '../edition-differences.js';
import { broughtStanding, figuresEntered, figuresOf, notEnteredOf } from '../iec-family/brought-edition.js';
import { ratingsFor } from '../iec-family/rated-currents.js';
import { remediesOf } from '../iec-family/remedies.js';
import { lawsOfTable } from '../iec-family/table-laws.js';
import { circuitFigures, runFigures } from '../iec-family/test-figures.js';
import { timeCurrentLimits } from '../iec-family/time-current-limits.js';
import { notJudgedWords } from '../not-judged.js';
import type { ConductorSize, WiringCode } from '../wiring-code.js';
import { cableForRoute } from './cable-for-route.js';
import { bsMethod, capacityTableOf, capacityTablesFor } from './cable-tables.js';
import { calculatorBrought, calculatorOf, calculatorWith } from './calculators.js';
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
  /** Editions whose text is not entered here, as somebody who holds them wrote down what differs; `readEdition` gives them. */
  readonly editions?: readonly EditionDifferences[];
  /** Tables of other publications that the attestations may be of, besides those that the code reads. */
  readonly tables?: readonly Table[];
}

/** Tables as attestations have them, by the laws of their figures. */
const attestedBy = (tables: readonly Table[], edition: string, attestations: readonly Attestations[]): AttestedTables =>
  attestedTables(attestations, {
    tables,
    document: 'BS 7671',
    edition,
    lawsOf: lawsOfTable,
    beside: [table412, table414, table431, table542, table543, table544, table545] as unknown as readonly Table[],
  });

/**
 * Tables that the contents list of an edition reads, and others, as a firm has them: compared with its copy, then changed
 * by the edition that it brought.
 */
function tablesOf(
  read: Edition,
  edition: string,
  { attestations = [], tables = [] }: BroughtToCode,
  differences: EditionDifferences | undefined,
): AttestedTables | undefined {
  if (attestations.length === 0 && !differences) return undefined;
  const entered = [...new Set([...calculatorOf(read).lists.tables, ...tables])];
  const compared = attestedBy(entered, edition, attestations);
  if (!differences) return compared;
  const before = entered.map((t) => compared.tables.get(t.id) ?? t);
  const changed = attestedBy(before, edition, [figuresOf(differences, before)]);
  return {
    tables: new Map([...compared.tables, ...changed.tables]),
    remarks: [...compared.remarks, ...changed.remarks],
    aside: compared.aside,
  };
}

/** The edition that somebody brought, where that is the one to judge by, and the edition that it differs from. */
function broughtEdition(edition: string, { editions: all = [] }: BroughtToCode) {
  const own = all.filter((e) => e.edition === edition && e.document === 'BS 7671');
  const [differences] = own;
  if (!differences) return undefined;
  const base = editions.find((e) => e.edition === differences.base && e.text === 'available')?.edition;
  const problems = [
    ...(own.length > 1 ? [{ path: ['edition'], message: `${edition} is brought ${own.length} times` }] : []),
    ...(base ? [] : [{ path: ['base'], message: `${differences.base} is not entered` }]),
    ...(editions.some((e) => e.edition === edition && e.text === 'available')
      ? [
          {
            path: ['edition'],
            message: `the text of ${edition} is entered: what its print has otherwise is an attestation`,
          },
        ]
      : []),
  ];
  if (problems.length > 0 || !base) throw invalidInput(`the differences of BS 7671:${edition}`, problems);
  return { differences, base };
}

/** Every spelling of the methods that the tables of the cable have a column for. */
function methodsFor({ cable, lines }: Run): readonly ReferenceMethod[] | undefined {
  const tables = capacityTablesFor(cable, false, lines.length === 1 ? '2' : '3');
  if (tables.length === 0) return undefined;
  const listed = tables.flatMap((t) => t.offers('method'));
  return labels.method.filter((m) => listed.includes(bsMethod(m)));
}

/**
 * BS 7671 as a wiring code, by edition; there is no default edition.
 * @param edition year and latest amendment, such as `2018+A2:2022`
 * @param brought figures that a firm compared with its own copy, and editions that it holds: they count for this code alone
 * @returns the wiring code, for `assess`, `design` and `permitted`
 * @throws CalculationError `unknown-definition` for an edition that is neither entered nor brought; `invalid-input` for
 * attestations of cells that are not there, corrections of a table that is not read, and differences that do not fit
 * their base; `contradicting-attestations`, and `correction-breaks-law` where a corrected figure breaks a law and
 * nobody says why it stands
 * @example
 * ```ts
 * import { bs7671 } from 'ohmwright/bs7671';
 *
 * bs7671('2018+A2:2022').inForce('2026-11-01'); // => 'withdrawn'
 * bs7671('2011'); // throws unknown-definition
 * ```
 */
export function bs7671(edition: string, brought: BroughtToCode = {}): WiringCode {
  const own = broughtEdition(edition, brought);
  const entered = editions.find((e) => e.edition === edition)?.edition;
  const read = own?.base ?? entered;
  if (!read) {
    const known = editions.map((e) => e.edition);
    throw new CalculationError(
      'unknown-definition',
      `BS 7671:${typeof edition === 'string' ? edition : shown(edition)} is not entered; there is ${known.join(', ')}`,
      {
        kind: 'edition',
        id: edition,
        known,
      },
    );
  }
  const attested = tablesOf(read, edition, brought, own?.differences);
  const shared = {
    id: 'bs7671',
    name: 'BS 7671',
    edition,
    notJudged: notJudgedWords,
    inForce: (date: string) => (entered ? editionInForce(entered, date) : 'unknown'),
    sizesFor,
    methodsFor,
    cableForRoute,
    ratingsFor,
    timeCurrentLimits,
    runFigures,
    ownWay: wayOfItsOwn,
    ...(attested ? { attested } : {}),
  } as const;
  if (own) {
    const { differences } = own;
    const calculator = calculatorBrought(read, differences, attested?.tables ?? new Map());
    const gap = notEnteredOf(differences);
    return {
      ...shared,
      standing: broughtStanding(differences),
      calculator,
      figures: (calculation) => figuresEntered(circuitFigures(calculation), differences),
      remedies: (circuit, figures) =>
        differences.aspects.disconnection ? remediesOf(circuit, figures, 0.95, attested?.tables) : missing(gap),
      tests: { notEntered: gap },
      earthingOptions: differences.aspects['charge-point-earthing'] ? earthingOptionsBy(calculator) : () => [],
    };
  }
  const gap = editionGap(read);
  const calculator = attested ? calculatorWith(read, attested.tables) : calculatorOf(read);
  return {
    ...shared,
    standing: standingOf(read),
    calculator,
    figures: circuitFigures,
    remedies: (circuit, figures) => (gap ? missing(gap) : remediesOf(circuit, figures, 0.95, attested?.tables)),
    tests: gap ? { notEntered: gap } : testPlan(read as TestEdition),
    earthingOptions: earthingOptionsBy(calculator),
  };
}
