import { Calculator } from '../../src/calculation/index.js';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { aspects, type WiringCode } from '../../src/codes/wiring-code.js';
import { amperes, squareMillimetres } from '../../src/index.js';

const whole = bs7671('2018+A2:2022');
const mine = ['coordination', 'voltage-drop', 'terminal-temperature', 'minimum-size'];
const { contents } = whole.calculator;
const checks = Object.fromEntries(
  aspects.map((a) => [a, mine.includes(a) ? contents.checks[a] : { noRule: 'not part of this code of a test' }]),
) as unknown as typeof contents.checks;

/** A code with the rules on rating and drop only. */
export const smallCode: WiringCode = {
  ...whole,
  id: 'small',
  name: 'BS 7671, rating and drop',
  standing: 'for tests',
  notJudged: 'This code looks at nothing else.',
  inForce: () => 'unknown',
  sizesFor: () => [1.5, 2.5, 4, 6, 10, 16].map((size) => ({ area: squareMillimetres(size) })),
  ratingsFor: () => [6, 10, 16, 20, 25, 32, 40, 50, 63].map(amperes),
  tests: { notEntered: { kind: 'edition', edition: 'a code for tests', explain: 'it asks for no tests' } },
  earthingOptions: () => [],
  calculator: new Calculator({ ...contents, checks }, { document: 'BS 7671', edition: whole.edition }),
};
