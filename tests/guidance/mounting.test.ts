import { describe, expect, it } from 'vitest';
import { type HeightRules, mountingResults } from '../../src/demand/index.js';
import {
  accessibleMounting,
  buildingMounting,
  codeOfPracticeMounting,
  frenchMounting,
} from '../../src/guidance/index.js';
import { known, millimetres, unknown } from '../../src/index.js';

describe('mounting', () => {
  const verdicts = (rules: HeightRules, outlet: number) =>
    mountingResults(rules, { outlet: known(millimetres(outlet)) }).map((r) => r.verdict)[0];
  it.each([
    ['code of practice', 750, 1200, codeOfPracticeMounting],
    ['accessible points', 750, 1000, accessibleMounting],
    ['accessible equipment in France', 900, 1300, frenchMounting],
  ] as const)('%s: %i to %i mm', (_, least, greatest, rules) => {
    expect([least - 1, least, greatest, greatest + 1].map((h) => verdicts(rules, h))).toEqual([
      'fail',
      'pass',
      'pass',
      'fail',
    ]);
  });
  it('900 mm meets every British figure for the outlet', () => {
    expect([codeOfPracticeMounting, accessibleMounting].map((rules) => verdicts(rules, 900))).toEqual(['pass', 'pass']);
  });
  it('judges controls, display and the gas meter, and keeps unknown apart', () => {
    const results = mountingResults(accessibleMounting, {
      controls: known(millimetres(900)),
      display: known(millimetres(1250)),
      outlet: unknown('measure'),
      gasMeter: known(millimetres(100)),
    });
    expect(results.map((r) => r.verdict)).toEqual(['not-determined', 'pass', 'pass', 'fail']);
    expect(results.every((r) => r.weight === 'advice')).toBe(true);
    expect(mountingResults(buildingMounting, { display: known(millimetres(1250)) })[0]).toMatchObject({
      reason: 'no-rule',
    });
  });
});
