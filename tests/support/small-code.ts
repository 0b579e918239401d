import { coordination, minimumSize, terminalTemperature, voltageDrop } from '../../src/codes/bs7671/index.js';
import { externalImpedance, runFigures } from '../../src/codes/iec-family/test-figures.js';
import { aspects, type NotRequired, type Rule, type WiringCode } from '../../src/codes/wiring-code.js';
import { amperes, missing, squareMillimetres } from '../../src/index.js';

const mine: Readonly<Record<string, Rule>> = {
  coordination,
  'voltage-drop': voltageDrop,
  'terminal-temperature': terminalTemperature,
  'minimum-size': minimumSize,
};
const none: NotRequired = { notRequired: 'not part of this code of a test' };

/** A code with the rules on rating and drop only. */
export const smallCode: WiringCode = {
  id: 'small',
  name: 'BS 7671, rating and drop',
  edition: '2018+A2:2022',
  standing: 'for tests',
  inForce: () => 'unknown',
  sizesFor: () => [1.5, 2.5, 4, 6, 10, 16].map((size) => ({ area: squareMillimetres(size) })),
  ratingsFor: () => [6, 10, 16, 20, 25, 32, 40, 50, 63].map(amperes),
  timeCurrentLimits: () => undefined,
  runFigures,
  externalImpedance,
  remedies: () => missing({ kind: 'fact', fact: 'remedies' }),
  tests: { notEntered: { kind: 'edition', edition: 'a code for tests', explain: 'it asks for no tests' } },
  earthingOptions: () => [],
  rules: Object.fromEntries(aspects.map((a) => [a, mine[a] ?? none])) as unknown as WiringCode['rules'],
};
