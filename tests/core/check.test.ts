import { expect, test } from 'vitest';
import { notDetermined, notRequired, span } from '../../src/core/check.js';
import {
  alternatives,
  amperes,
  type CheckResult,
  comparison,
  hasCode,
  judge,
  missing,
  overall,
  type Source,
  statement,
} from '../../src/index.js';

const source: Source = { document: 'Test rules of our own', provenance: 'definition' };
const basis = (id: string) => ({ id, title: id, weight: 'rule', source, caution: 'mind the step' }) as const;
const most = comparison({ ...basis('most'), kind: 'at-most', value: 'designCurrent', limit: 'deviceRating' });
const least = comparison({ ...basis('least'), kind: 'at-least', value: 'designCurrent', limit: 'deviceRating' });
const both = span({ ...basis('both'), value: 'designCurrent', least: 'deviceRating', most: 'capacity' });
const holds = statement(basis('holds'));
const any = alternatives(basis('any'));
const gap = { kind: 'fact', fact: 'deviceRating' } as const;
const A = amperes;
const raw = (value: number) => value as ReturnType<typeof amperes>;

test('a value that misses its limit only by the rounding of binary numbers meets it', () => {
  const sum = A(0.003 + 0.003 + 0.003); // 0.009000000000000001
  expect(sum).not.toBe(0.009);
  expect(judge(most, { designCurrent: sum, deviceRating: A(0.009) })).toMatchObject({ verdict: 'pass', margin: 0 });
  expect(judge(least, { designCurrent: A(0.009), deviceRating: sum })).toMatchObject({ verdict: 'pass', margin: 0 });
  expect(judge(most, { designCurrent: A(32.000000001), deviceRating: A(32) }).verdict).toBe('fail');
});
test('at the limit a value passes, beyond it fails, and the margin says how far', () => {
  expect(judge(most, { designCurrent: A(32), deviceRating: A(32) })).toMatchObject({ verdict: 'pass', margin: 0 });
  expect(judge(most, { designCurrent: A(40), deviceRating: A(32) })).toMatchObject({ verdict: 'fail', margin: -0.25 });
  expect(judge(least, { designCurrent: A(32), deviceRating: A(32) })).toMatchObject({ verdict: 'pass', margin: 0 });
  expect(judge(least, { designCurrent: A(24), deviceRating: A(32) })).toMatchObject({ verdict: 'fail', margin: -0.25 });
  expect(judge(most, { designCurrent: A(0), deviceRating: A(0) })).not.toHaveProperty('margin');
  for (const [value, verdict] of [
    [9, 'fail'],
    [10, 'pass'],
    [20, 'pass'],
    [21, 'fail'],
  ] as const)
    expect(judge(both, { designCurrent: A(value), deviceRating: A(10), capacity: A(20) }).verdict).toBe(verdict);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('%s is a gap, in every place', (bad) => {
  const results = [
    judge(most, { designCurrent: raw(bad), deviceRating: A(32) }),
    judge(most, { designCurrent: A(32), deviceRating: raw(bad) }),
    judge(least, { designCurrent: raw(bad), deviceRating: A(32) }),
    judge(both, { designCurrent: raw(bad), deviceRating: A(1), capacity: A(2) }),
    judge(both, { designCurrent: A(1), deviceRating: raw(bad), capacity: A(2) }),
    judge(both, { designCurrent: A(1), deviceRating: A(1), capacity: raw(bad) }),
  ];
  for (const result of results) {
    expect(result.verdict).toBe('not-determined');
    expect(result.gaps).toMatchObject([{ kind: 'range' }]);
    expect(result).not.toHaveProperty('value');
    expect(JSON.stringify(result)).not.toContain('null');
  }
});

test('a missing value ends in not-determined and names itself', () => {
  expect(judge(most, { designCurrent: A(1), deviceRating: missing(gap) })).toMatchObject({
    verdict: 'not-determined',
    gaps: [gap],
    caution: 'mind the step',
  });
  expect(judge(holds, { holds: missing(gap), because: 'x' })).toMatchObject({ verdict: 'not-determined', gaps: [gap] });
});

test('statements', () => {
  expect(judge(holds, { holds: true, because: 'seen' })).toMatchObject({ verdict: 'pass', because: 'seen' });
  expect(judge(holds, { holds: false, because: 'seen' }).verdict).toBe('fail');
  expect(judge(holds, { holds: true, because: 'seen' }, 'ignored').because).toBe('seen');
});

const result = (verdict: CheckResult['verdict'], weight: 'rule' | 'advice' = 'rule'): CheckResult => ({
  check: `${verdict}-${weight}`,
  title: '',
  verdict,
  weight,
  source,
});

test('any of several: one that passes is enough, an open one keeps it open', () => {
  const verdict = (...of: CheckResult['verdict'][]) => judge(any, { results: of.map((v) => result(v)) }).verdict;
  expect(verdict('fail', 'not-determined', 'pass')).toBe('pass');
  expect(verdict('fail', 'not-determined')).toBe('not-determined');
  expect(verdict('fail', 'not-required')).toBe('fail');
  expect(verdict()).toBe('fail');
});

test('results without a comparison', () => {
  expect(notRequired(most, 'not-applicable', 'no load')).toEqual({
    check: 'most',
    title: 'most',
    weight: 'rule',
    source,
    verdict: 'not-required',
    reason: 'not-applicable',
    because: 'no load',
  });
  expect(notDetermined(most, gap)).toMatchObject({ verdict: 'not-determined', gaps: [gap] });
});

test('overall: fail before not-determined before pass; advice stands beside', () => {
  const of = (...results: CheckResult[]) => overall(results).verdict;
  expect(of()).toBe('not-determined');
  expect(of(result('pass', 'advice'))).toBe('not-determined');
  expect(of(result('not-required'))).toBe('pass');
  expect(of(result('pass'), result('fail', 'advice'))).toBe('pass');
  expect(of(result('pass'), result('not-determined'))).toBe('not-determined');
  expect(of(result('not-determined'), result('fail'))).toBe('fail');
  expect(
    overall([result('fail'), result('not-determined'), result('fail', 'advice'), result('pass', 'advice')]),
  ).toEqual({
    verdict: 'fail',
    failed: [result('fail')],
    undetermined: [result('not-determined')],
    conditional: [],
    advice: [result('fail', 'advice')],
  });
});

test('what is no number, no yes or no, and no list of results is refused, never judged', () => {
  const judged = (c: Parameters<typeof judge>[0], evidence: unknown) => () => judge(c, evidence as never);
  for (const odd of [null, undefined, '16', true, [16], {}, { missing: 'yes' }])
    for (const c of [most, least]) {
      expect(judged(c, { designCurrent: odd, deviceRating: 32 })).toThrow('designCurrent');
      expect(judged(c, { designCurrent: 16, deviceRating: odd })).toThrow('deviceRating');
    }
  expect(judged(both, { designCurrent: 16, deviceRating: 10 })).toThrow('capacity');
  for (const odd of [null, undefined, 'true', 1, {}])
    expect(judged(holds, { holds: odd, because: '' })).toThrow('holds');
  for (const odd of [null, undefined, 'pass', {}, [{ verdict: 'PASS', weight: 'rule' }], [null]])
    expect(judged(any, { results: odd })).toThrow('any');
  for (const odd of [null, undefined, 'pass']) expect(judged(most, odd)).toThrow('an object is due');
});

test('overall takes results of checks and nothing else', () => {
  const of = (results: unknown) => () => overall(results as never);
  for (const verdict of ['PASS', 'Pass', '', undefined, null, true, 'not required'])
    expect(of([result('pass'), { ...result('pass'), verdict }])).toThrow('[1].verdict');
  for (const weight of ['RULE', undefined, 'Advice']) expect(of([{ ...result('fail'), weight }])).toThrow('[0].weight');
  for (const odd of [null, undefined, 'pass', {}, [null], ['pass']]) expect(of(odd)).toThrow();
  try {
    overall([{ verdict: 'PASS' }] as never);
    expect.unreachable();
  } catch (error) {
    expect(hasCode(error, 'invalid-input')).toBe(true);
  }
});
