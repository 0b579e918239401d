import { type CheckResult, comparison, formula, judge, notRequired } from '../../core/index.js';
import type { Insulation } from '../../installation/index.js';
import { type Celsius, celsius, type Ohms, perKelvin } from '../../units/index.js';
import { metalCoefficient, operatingTemperatureOf } from '../iec-family/conductor-constants.js';
import { shockCaution } from './disconnection-checks.js';
import { bs } from './source.js';

/**
 * Largest reading of the loop impedance at the temperature of the test: the exact temperature form. BS 7671, Appendix
 * 3.
 */
export const measuredLimitExact = /* @__PURE__ */ formula({
  id: 'measured-limit-exact',
  title: 'Largest reading of the loop impedance, exact in temperature',
  inputs: [
    'loopImpedanceLimit',
    'externalImpedance',
    'temperatureCoefficient',
    'testTemperature',
    'operatingTemperature',
  ],
  output: 'measuredLimit',
  expression:
    '(loopImpedanceLimit - externalImpedance) * (1 + temperatureCoefficient * (testTemperature - reference)) / (1 + temperatureCoefficient * (operatingTemperature - reference)) + externalImpedance',
  constants: { reference: [20, 'K'] },
  compute: ({
    loopImpedanceLimit,
    externalImpedance,
    temperatureCoefficient: a,
    testTemperature,
    operatingTemperature,
  }) =>
    ((loopImpedanceLimit - externalImpedance) * (1 + a * (testTemperature - 20))) /
      (1 + a * (operatingTemperature - 20)) +
    externalImpedance,
  source: /* @__PURE__ */ bs('Appendix 3', 'derived'),
});

/** Largest reading of the loop impedance by the rule of thumb 0.8. For 70 °C conductors only. BS 7671, Appendix 3. */
export const eightTenthsRule = /* @__PURE__ */ formula({
  id: 'eight-tenths-rule',
  title: 'Largest reading of the loop impedance by the 0.8 rule',
  inputs: ['loopImpedanceLimit'],
  output: 'measuredLimit',
  expression: '0.8 * loopImpedanceLimit',
  compute: ({ loopImpedanceLimit }) => 0.8 * loopImpedanceLimit,
  source: /* @__PURE__ */ bs('Appendix 3'),
});

/**
 * Largest reading of the loop impedance by division by 1.24, as guide tables print it. For 70 °C conductors only. On-
 * Site Guide, Appendix B.
 */
export const divisionRule = /* @__PURE__ */ formula({
  id: 'division-by-1.24',
  title: 'Largest reading of the loop impedance by division by 1.24',
  inputs: ['loopImpedanceLimit'],
  output: 'measuredLimit',
  expression: 'loopImpedanceLimit / 1.24',
  compute: ({ loopImpedanceLimit }) => loopImpedanceLimit / 1.24,
  source: { document: 'On-Site Guide', clause: 'Appendix B', provenance: 'one-source' },
});

/** Loop impedance in normal operation from a reading at the temperature of the test. BS 7671, Appendix 3. */
export const designFromMeasured = /* @__PURE__ */ formula({
  id: 'design-from-measured',
  title: 'Loop impedance in normal operation from a reading',
  inputs: [
    'measuredImpedance',
    'externalImpedance',
    'temperatureCoefficient',
    'testTemperature',
    'operatingTemperature',
  ],
  output: 'loopImpedance',
  expression:
    '(measuredImpedance - externalImpedance) * (1 + temperatureCoefficient * (operatingTemperature - reference)) / (1 + temperatureCoefficient * (testTemperature - reference)) + externalImpedance',
  constants: { reference: [20, 'K'] },
  compute: ({
    measuredImpedance,
    externalImpedance,
    temperatureCoefficient: a,
    testTemperature,
    operatingTemperature,
  }) =>
    ((measuredImpedance - externalImpedance) * (1 + a * (operatingTemperature - 20))) /
      (1 + a * (testTemperature - 20)) +
    externalImpedance,
  source: /* @__PURE__ */ bs('Appendix 3', 'derived'),
});

const measuredCheck = (id: string, title: string, weight: 'rule' | 'advice') =>
  comparison({
    id,
    title,
    kind: 'at-most',
    value: 'measuredImpedance',
    limit: 'measuredLimit',
    weight,
    source: bs('Appendix 3'),
    caution: shockCaution,
  });

/** A reading of the loop impedance against the exact temperature form. BS 7671, Appendix 3. */
export const measuredExact = /* @__PURE__ */ measuredCheck(
  'measured-loop-impedance',
  'The loop impedance as read leaves room for the warmth of normal operation',
  'rule',
);
/** A reading of the loop impedance against the 0.8 rule. BS 7671, Appendix 3. */
export const measuredEightTenths = /* @__PURE__ */ measuredCheck(
  'measured-loop-impedance-0.8',
  'The loop impedance as read meets the 0.8 rule',
  'advice',
);
/** A reading of the loop impedance against the division by 1.24. BS 7671, Appendix 3. */
export const measuredDivision = /* @__PURE__ */ measuredCheck(
  'measured-loop-impedance-1.24',
  'The loop impedance as read meets the division by 1.24',
  'advice',
);

/** A reading and what it is compared with. @inline */
export interface MeasuredLoop {
  /** Loop impedance as read, Ω. */
  readonly measured: Ohms;
  /** Largest loop impedance in normal operation, Ω. */
  readonly limit: Ohms;
  /** External loop impedance, Ω: the part that does not warm up with the circuit. */
  readonly external: Ohms;
  /** Temperature of the conductors at the test, °C. */
  readonly testTemperature: Celsius;
  /** Insulation of the conductors, which sets their temperature in normal operation. */
  readonly insulation: Insulation;
}

/**
 * Compares a reading of the loop impedance with its limit: the exact temperature form always, the 0.8 rule and the
 * division by 1.24 by name for 70 °C conductors only.
 * @param m the reading, its limit, and the temperatures
 * @returns three results; the exact form decides
 * @throws CalculationError `invalid-input` for a reading or limit that is no number
 * @example
 * ```ts
 * import { celsius, ohms } from 'ohmwright';
 * import { compareMeasured } from 'ohmwright/bs7671';
 *
 * const results = compareMeasured({ measured: ohms(1.1), limit: ohms(1.366), external: ohms(0.35), testTemperature: celsius(10), insulation: 'thermoplastic-70' });
 * results.map((r) => r.verdict); // => ['pass', 'fail', 'pass']
 * ```
 */
export function compareMeasured(m: MeasuredLoop): readonly CheckResult[] {
  const measuredImpedance = m.measured;
  const exact = measuredLimitExact({
    loopImpedanceLimit: m.limit,
    externalImpedance: m.external,
    temperatureCoefficient: perKelvin(metalCoefficient),
    testTemperature: m.testTemperature,
    operatingTemperature: celsius(operatingTemperatureOf(m.insulation)),
  });
  const results = [judge(measuredExact, { measuredImpedance, measuredLimit: exact })];
  if (m.insulation !== 'thermoplastic-70') {
    const why = 'The rule of thumb holds for conductors of 70 °C; at 90 °C it would let the limit be exceeded.';
    return [
      ...results,
      notRequired(measuredEightTenths, 'not-applicable', why),
      notRequired(measuredDivision, 'not-applicable', why),
    ];
  }
  const limitOf = { loopImpedanceLimit: m.limit };
  return [
    ...results,
    judge(measuredEightTenths, { measuredImpedance, measuredLimit: eightTenthsRule(limitOf) }),
    judge(measuredDivision, { measuredImpedance, measuredLimit: divisionRule(limitOf) }),
  ];
}

/**
 * Largest reading of the loop impedance, from the resistance of the whole path at the test over that when hot. BS
 * 7671, Appendix 3.
 */
export const measuredLimitByRatio = /* @__PURE__ */ formula({
  id: 'measured-limit-by-ratio',
  title: 'Largest reading of the loop impedance, by the ratio of cold to hot resistance',
  inputs: ['loopImpedanceLimit', 'externalImpedance', 'temperatureRatio'],
  output: 'measuredLimit',
  expression: '(loopImpedanceLimit - externalImpedance) * temperatureRatio + externalImpedance',
  compute: ({ loopImpedanceLimit, externalImpedance, temperatureRatio }) =>
    (loopImpedanceLimit - externalImpedance) * temperatureRatio + externalImpedance,
  source: /* @__PURE__ */ bs('Appendix 3', 'derived'),
});
