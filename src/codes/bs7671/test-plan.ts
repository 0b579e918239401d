import {
  CalculationError,
  celsius,
  milliamperes,
  milliseconds,
  ohms,
  ratio,
  seconds,
  volts,
} from '../../units/index.js';
import type { PlannedKind, TestPlan } from '../verification.js';
import type { Edition } from './editions.js';
import { eightTenthsRule, measuredLimitByRatio } from './measured-loop.js';
import { insulationResistanceLimits, insulationTestVoltages } from './tables/64.js';

// the clauses of 2008 and the sub-clauses of 2018 are recalled; the order stood in two texts
const tests = [
  ['continuity', '612.2.1', '643.2'],
  ['ring-continuity', '612.2.2', '643.2'],
  ['insulation', '612.3', '643.3'],
  ['polarity', '612.6', '643.6'],
  ['electrode', '612.7', '643.7.2'],
  ['loop-impedance', '612.9', '643.7'],
  ['prospective-current', '612.11', '643.7.3'],
  ['residual-current-device', '612.10', '643.8'],
  ['direct-current-detection', '612.10', '643.8'],
  ['phase-sequence', '612.12', '643.9'],
  ['functional', '612.13', '643.10'],
  ['voltage-under-load', '612.14', '643.11'],
] as const;

const order = (edition: '2008' | '2018'): readonly PlannedKind[] =>
  tests.map(([kind, of2008, of2018], i) => ({
    kind,
    state: i < tests.findIndex(([name]) => name === 'loop-impedance') ? 'dead' : 'live',
    clause: edition === '2008' ? of2008 : of2018,
  }));

const general = { multiple: 1, delay: 'general', most: /* @__PURE__ */ milliseconds(300) } as const;
const selective = {
  multiple: 1,
  delay: 'selective',
  least: /* @__PURE__ */ milliseconds(130),
  most: /* @__PURE__ */ milliseconds(500),
} as const;
const five = {
  multiple: 5,
  delay: 'general',
  most: /* @__PURE__ */ milliseconds(40),
  upTo: /* @__PURE__ */ milliamperes(30),
} as const;
const half = { multiple: 0.5, delay: 'general', mustHold: true } as const;

// A2 asks for one alternating test at the rated current; A1 altered Section 722 alone, A3 no test
const residualOf = {
  '2008': [half, general, selective, five],
  '2018': [general, selective, five],
  '2018+A1:2020': [general, selective, five],
  '2018+A2:2022': [general, selective],
  '2018+A3:2024': [general, selective],
} as const satisfies Readonly<Record<TestEdition, TestPlan['residual']>>;

const insulation = (circuit: 'up to 500 V') => ({
  voltage: insulationTestVoltages.get({ quantity: 'test', circuit }),
  least: insulationResistanceLimits.get({ quantity: 'test', circuit }),
});

/** An edition whose tests are known: of 2008 they are all that is entered. */
export type TestEdition = '2008' | Exclude<Edition, '2018+A4:2026'>;

/** The tests of initial verification as an edition of BS 7671 asks for them. */
export function testPlan(edition: TestEdition): TestPlan {
  if (!Object.hasOwn(residualOf, edition))
    throw new CalculationError('unknown-definition', `no tests for edition ${edition}: its text was not available`, {
      kind: 'edition of the tests',
      id: edition,
      known: Object.keys(residualOf),
    });
  return {
    edition: `BS 7671:${edition}`,
    source: { document: 'BS 7671', clause: 'Part 6', provenance: 'two-sources' },
    order: order(edition === '2008' ? '2008' : '2018'),
    insulation: {
      disconnected: insulation('up to 500 V'),
      // 250 V and still 1 MΩ: note of the table, one source
      connected: { voltage: volts(250), least: insulation('up to 500 V').least },
      clause: 'Table 64',
    },
    loop: {
      clause: '411.4.4',
      residualClause: '411.4.5, 411.5.3',
      limitOf: measuredLimitByRatio,
      ruleOfThumb: {
        name: '0.8 rule',
        insulation: 'thermoplastic-70',
        temperature: celsius(70),
        limitOf: eightTenthsRule,
      },
    },
    electrode: { clause: '411.5.3', unstableAbove: ohms(200) },
    touchVoltage: volts(50),
    residual: residualOf[edition],
    directCurrent: { least: milliamperes(3), most: milliamperes(6), time: seconds(10), by: 'IEC 62955' },
    voltage: {
      least: ratio(0.94),
      most: ratio(1.1),
      by: 'statutory range of the supply voltage in Great Britain, from memory',
    },
    deviation: ratio(0.2),
    // common practice, no source: half or twice the figure is another conductor, an open one or a bridge
    farFactor: ratio(2),
    ringDifference: ohms(0.05),
  };
}
