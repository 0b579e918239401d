import { describe, expect, it } from 'vitest';
import { meterPointCheckDigit } from '../../src/networks/gb-network/meter-point.js';
import { readMeterPoint } from '../../src/networks/index.js';

describe('meter-point number', () => {
  // invented numbers
  it.each([
    '1000000000003',
    '1200000000777',
    '1412345678901',
    '1599999999993',
    '1711111111111',
    '2001020304051',
    '2298765432108',
    '2300000000107',
    '1800000000000',
  ])('%s is plausible', (core) => {
    expect(readMeterPoint(core).result.verdict).toBe('pass');
    expect(readMeterPoint(`S 01 801 0AB ${core}`)).toMatchObject({
      structure: 'full',
      profileClass: '01',
      lineLossClass: '0AB',
    });
  });
  it('says what is wrong', () => {
    expect(readMeterPoint('1412345678902').result.because).toContain('check digit is 1');
    expect(readMeterPoint('141234567890').result.because).toContain('12 characters');
    expect(readMeterPoint('81234567890').structure).toBe('northern-ireland');
    expect(readMeterPoint('').structure).toBe('unreadable');
  });
  it('an independent network has no area', () => {
    const first12 = '240000000000';
    const read = readMeterPoint(`${first12}${meterPointCheckDigit(first12)}`);
    expect(read.result.verdict).toBe('pass');
    expect(read.area).toBeUndefined();
  });

  /** Invented numbers from a linear congruential generator with a fixed seed. */
  let state = 20261125;
  const below = (n: number) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * n);
  };
  const numbers = Array.from({ length: 20000 }, () => {
    const first12 = `${10 + below(14)}${Array.from({ length: 10 }, () => below(10)).join('')}`;
    return `${first12}${meterPointCheckDigit(first12)}`;
  });
  const passes = (core: string) => meterPointCheckDigit(core) === Number(core[12]);

  it('misses between one and two of a hundred single-digit slips', () => {
    let [missed, tried] = [0, 0];
    for (const core of numbers) {
      const at = below(13);
      for (let d = 0; d <= 9; d++) {
        if (String(d) === core[at]) continue;
        tried++;
        if (passes(core.slice(0, at) + d + core.slice(at + 1))) missed++;
      }
    }
    expect(missed / tried).toBeGreaterThan(0.01);
    expect(missed / tried).toBeLessThan(0.02); // published simulation: 0.0166
  });
  it('misses between one and two and a half of a hundred swaps of neighbours before the check digit', () => {
    let [missed, tried] = [0, 0];
    for (const core of numbers) {
      const at = below(11); // among the first twelve digits
      if (core[at] === core[at + 1]) continue;
      tried++;
      if (passes(core.slice(0, at) + core[at + 1] + core[at] + core.slice(at + 2))) missed++;
    }
    expect(missed / tried).toBeGreaterThan(0.01);
    expect(missed / tried).toBeLessThan(0.025); // published simulation: 0.0179
  });
  it.each([
    [3, 8],
    [6, 11],
  ])('never sees a swap of digits %i and %i', (a, b) => {
    for (const core of numbers) {
      const digits = [...core];
      [digits[a - 1], digits[b - 1]] = [digits[b - 1] as string, digits[a - 1] as string];
      expect(passes(digits.join(''))).toBe(true);
    }
  });
  it('is called plausible, never valid', () => {
    const { title, caution } = readMeterPoint('1412345678901').result;
    expect(title).toContain('plausible');
    expect(`${title} ${caution}`).not.toMatch(/\bvalid/);
  });
});
