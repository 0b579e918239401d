import { type Gap, missing, type Source } from '../../core/index.js';
import type { Run } from '../../installation/index.js';
import { CalculationError, squareMillimetres } from '../../units/index.js';
import { closedRule } from '../iec-family/closed-rules.js';
import { ratingsFor } from '../iec-family/rated-currents.js';
import { remediesOf } from '../iec-family/remedies.js';
import { externalImpedance, runFigures } from '../iec-family/test-figures.js';
import { timeCurrentLimits } from '../iec-family/time-current-limits.js';
import { aspects, type ConductorSize, type WiringCode } from '../wiring-code.js';
import { capacityTableOf } from './cable-tables.js';
import { calculatorOf } from './calculators.js';
import { earthingOptionsBy } from './earthing-options.js';
import { type Edition, editionGap, editionInForce, editions, standingOf } from './editions.js';
import { wayOfItsOwn } from './own-way.js';
import { type TestEdition, testPlan } from './test-plan.js';

const sizesFor = (run: Run): readonly ConductorSize[] =>
  (capacityTableOf(run.cable)?.offers('conductorArea') ?? []).map((s) => ({ area: squareMillimetres(s as number) }));

const rules = (): WiringCode['rules'] => ({
  'origin-facts': { finds: [] },
  coordination: { finds: ['capacity', 'governingFigures', 'hottestConductor', 'governingStretch'] },
  'voltage-drop': {
    finds: ['totalDrop', 'dropAlong', 'lowestSupply', 'dropLimit', 'voltageAtLowestSupply', 'voltageAtHighestSupply'],
  },
  disconnection: { finds: ['lineAndProtectiveCold', 'loopAtOrigin', 'loopImpedance', 'loopImpedanceLimit'] },
  'residual-current': { finds: [] },
  'line-withstand': { finds: [] },
  'protective-conductor': { finds: ['protectiveArea'] },
  'breaking-capacity': { finds: ['prospectiveAtOrigin'] },
  'terminal-temperature': { finds: [] },
  'minimum-size': { finds: [] },
  placement: { finds: [] },
  'earthing-and-bonding': { finds: [] },
  'charge-point-earthing': { finds: [] },
  'surge-protection': { finds: [] },
  'arc-detection': { finds: [] },
});

/** What an edition says whose text could not be had: nothing can be judged by it, aspect by aspect. */
function closedRules(edition: Edition, gap: Gap): WiringCode['rules'] {
  const code = `BS 7671:${edition}`;
  const source: Source = { document: 'BS 7671', edition, provenance: 'memory', note: 'text not available' };
  return Object.fromEntries(
    aspects.map((a) => [a, closedRule(a, code, source, gap)]),
  ) as unknown as WiringCode['rules'];
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
    ratingsFor,
    timeCurrentLimits,
    runFigures,
    externalImpedance,
    remedies: (circuit, findings) => (gap ? missing(gap) : remediesOf(circuit, findings, 0.95)),
    ownWay: wayOfItsOwn,
    tests: gap ? { notEntered: gap } : testPlan(entered as TestEdition),
    earthingOptions: calculator ? earthingOptionsBy(calculator) : () => [],
    rules: gap ? closedRules(entered, gap) : rules(),
    ...(calculator ? { calculator } : {}),
  };
}
