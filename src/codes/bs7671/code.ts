import { missing } from '../../core/index.js';
import { labels, type ReferenceMethod, type Run } from '../../installation/index.js';
import { CalculationError, squareMillimetres } from '../../units/index.js';
import { ratingsFor } from '../iec-family/rated-currents.js';
import { remediesOf } from '../iec-family/remedies.js';
import { circuitFigures, runFigures } from '../iec-family/test-figures.js';
import { timeCurrentLimits } from '../iec-family/time-current-limits.js';
import type { ConductorSize, WiringCode } from '../wiring-code.js';
import { cableForRoute } from './cable-for-route.js';
import { bsMethod, capacityTableFor, capacityTableOf } from './cable-tables.js';
import { calculatorOf } from './calculators.js';
import { earthingOptionsBy } from './earthing-options.js';
import { editionGap, editionInForce, editions, standingOf } from './editions.js';
import { wayOfItsOwn } from './own-way.js';
import { type TestEdition, testPlan } from './test-plan.js';

const sizesFor = (run: Run): readonly ConductorSize[] =>
  (capacityTableOf(run.cable)?.offers('conductorArea') ?? []).map((s) => ({ area: squareMillimetres(s as number) }));

/** Every spelling of the methods that the table of the cable has a column for. */
function methodsFor({ cable, lines }: Run): readonly ReferenceMethod[] | undefined {
  const listed = capacityTableFor(cable, false, lines.length === 1 ? '2' : '3')?.offers('method');
  return listed && labels.method.filter((m) => listed.includes(bsMethod(m)));
}

/**
 * BS 7671 as a wiring code, by edition; there is no default edition.
 * @param edition year and latest amendment, such as `2018+A2:2022`
 * @returns the wiring code, for `assess`, `design` and `permitted`
 * @throws CalculationError `unknown-definition` for an edition that is not entered
 * @example
 * ```ts
 * import { bs7671 } from 'ohmwright/bs7671';
 *
 * bs7671('2018+A2:2022').inForce('2026-11-01'); // => 'withdrawn'
 * bs7671('2011'); // throws unknown-definition
 * ```
 */
export function bs7671(edition: string): WiringCode {
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
  const calculator = calculatorOf(entered);
  return {
    id: 'bs7671',
    name: 'BS 7671',
    edition: entered,
    standing: standingOf(entered),
    inForce: (date) => editionInForce(entered, date),
    sizesFor,
    methodsFor,
    cableForRoute,
    ratingsFor,
    timeCurrentLimits,
    calculator,
    figures: circuitFigures,
    runFigures,
    remedies: (circuit, figures) => (gap ? missing(gap) : remediesOf(circuit, figures, 0.95)),
    ownWay: wayOfItsOwn,
    tests: gap ? { notEntered: gap } : testPlan(entered as TestEdition),
    earthingOptions: earthingOptionsBy(calculator),
  };
}
