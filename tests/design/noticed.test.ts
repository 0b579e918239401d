/** What a small change of the code went unnoticed by, once: readings held against each other, and what is varied. */
import { describe, expect, it, test } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/code.js';
import { judgeReadings } from '../../src/design/judge-readings.js';
import {
  assess,
  celsius,
  known,
  metres,
  milliamperes,
  ohms,
  permitted,
  type Run,
  type Supply,
  unknown,
} from '../../src/index.js';
import { circuit, house, load, stretch } from '../support/house.js';
import { smallCode } from '../support/small-code.js';
import { sheetOf } from '../support/test-sheet.js';

const _code = bs7671('2018+A2:2022');
const said = (sheet: ReturnType<typeof sheetOf>, readings: Record<string, number>) =>
  judgeReadings(sheet, readings).contradictions.map((c) => c.id);

describe('readings against each other', () => {
  it('Z_e may read above its design by a fifth of it or by 0.05 Ω, whichever is more', () => {
    const of = (designed: number, read: number) =>
      said(sheetOf({}, { externalImpedance: known(ohms(designed)) }), { externalLoop: read });
    // 0.05 Ω is more than a fifth of 0.1 Ω, and less than a fifth of 0.35 Ω
    expect([of(0.1, 0.14), of(0.1, 0.16)]).toEqual([[], ['external-above-design']]);
    expect([of(0.35, 0.41), of(0.35, 0.43)]).toEqual([[], ['external-above-design']]);
    expect(of(0.35, 0.1)).toEqual([]);
  });

  it('a fall under load is as calculated, more than that, or more than circuit and supply account for', () => {
    const of = (loadedVoltage: number, change: Partial<Run> = {}) =>
      said(sheetOf(change), { voltage: 240, loadedVoltage });
    // 20 m, 32 A, 7.3 mV/A/m: about 4 V cold; the supply may fall by 5 % of 230 V
    expect([of(239), of(232), of(215)]).toEqual([
      [],
      ['drop-larger-than-calculated'],
      ['drop-larger-than-calculated', 'fall-beyond-supply'],
    ]);
    // of a route whose length nobody knows, what the supply alone may fall by is known still
    const unmeasured = { stretches: [stretch({ length: unknown('measure') })] };
    expect([of(239, unmeasured), of(215, unmeasured)]).toEqual([[], ['fall-beyond-supply']]);
  });

  it('a prospective current of more than twice the earth fault current is wrong on one phase, of four times on three', () => {
    const of = (prospective: number, supply: Partial<Supply>) =>
      said(sheetOf({}, supply), { prospective, externalLoop: 0.23 }).includes('prospective-beyond-loop');
    // 230 V over 0.23 Ω: 1000 A to earth; a fault between lines meets two of three phases
    expect([of(1900, {}), of(2100, {})]).toEqual([false, true]);
    for (const phases of [known(3 as const), unknown('look')])
      expect([of(3900, { phases }), of(4100, { phases })]).toEqual([false, true]);
    // with an earth of its own the two readings are of two loops
    expect(of(4100, { system: known('TN-S') })).toBe(false);
  });

  it('a reading that was not taken is open only where it decides something', () => {
    const open = judgeReadings(sheetOf(), {}).results.map((r) => r.check);
    expect(open).toContain('reading-polarity');
    expect(open).not.toContain('reading-loadedVoltage');
  });

  it('the break time of a general device is at most what its standard says, at its rated current in mA', () => {
    const reading = sheetOf()
      .tests.flatMap((t) => t.readings)
      .find((r) => r.id === 'residual1At1');
    expect(reading?.what).toMatch(/1 × 30 mA/);
    // EN 61008-1, Table 1: 300 ms, and no least time but the millisecond that an instrument shows
    expect(reading?.limits.map((l) => [l.kind, l.amount?.value])).toEqual([
      ['at-most', 0.3],
      ['at-least', 0.001],
    ]);
  });

  it('a selective device has a least time besides: EN 61008-1, Table 1', () => {
    const residual = [
      {
        position: 'origin-of-circuit' as const,
        type: known('A' as const),
        rating: known(milliamperes(100)),
        delay: known('selective' as const),
      },
    ];
    const reading = sheetOf({ residual })
      .tests.flatMap((t) => t.readings)
      .find((r) => r.id === 'residual1At1');
    expect(reading?.limits.map((l) => [l.kind, l.amount?.value])).toEqual([
      ['at-least', 0.13],
      ['at-most', 0.5],
    ]);
  });
});

describe('what is varied', () => {
  const loads = (...of: readonly number[]) => of.map((current, i) => load(current, { id: `load ${i + 1}` }));
  const passing = (run: Partial<Run>, question: Parameters<typeof permitted>[3]) =>
    permitted(smallCode, house([circuit(run)]), 'ev', question);
  const verdicts = (found: ReturnType<typeof permitted>) => found.intervals.map((i) => i.verdict);
  const most = (found: ReturnType<typeof permitted>) =>
    found.intervals.filter((i) => i.verdict === 'pass').at(-1)?.to.value;

  it('several loads grow in proportion, to what the device of 32 A carries', () => {
    for (const feeds of [loads(20), loads(12, 8), loads(3, 15)]) {
      const found = passing({ feeds }, { vary: 'load' });
      expect(found.gaps).toEqual([]);
      expect(most(found)).toBeCloseTo(32, 2);
    }
    expect(passing({ feeds: loads(0, 0) }, { vary: 'load' }).gaps).toMatchObject([{ fact: 'load of ev' }]);
  });

  it('a route of several sections grows in proportion, with what is tapped along it', () => {
    const half = stretch({ length: known(metres(10)) });
    const stretches = [half, { ...half, name: 'second' }];
    // 5 % of 230 V over 7.3 mV/A/m and 20 A
    expect(most(passing({ feeds: loads(20), stretches }, { vary: 'length' }))).toBeCloseTo(11.5 / (0.0073 * 20), 1);
    // half of the current leaves half way: three quarters of the drop
    const [near, far] = loads(10, 10);
    const feeds = [
      { ...near, at: metres(10) },
      { ...far, at: metres(20) },
    ] as Run['feeds'];
    expect(most(passing({ feeds, stretches }, { vary: 'length' }))).toBeCloseTo(11.5 / (0.0073 * 15), 1);
  });

  it('the temperature of air and that of the ground are asked of their own sections', () => {
    expect(passing({ feeds: loads(20) }, { vary: 'ambient' }).gaps).toEqual([]);
    expect(passing({ feeds: loads(20) }, { vary: 'ground' }).gaps).toMatchObject([{ fact: 'stretch in the ground' }]);
  });

  it('lengths that pass by an assumed fact alone pass on conditions, others do not', () => {
    const by = { assumed: 'invented: warmth' } as const;
    const warm = { ...known(celsius(30)), ...by };
    expect(
      verdicts(passing({ feeds: loads(20), stretches: [stretch({ ambient: warm })] }, { vary: 'length' })),
    ).toEqual(['conditional']);
    // no rule of this code reads the loop of the supply
    const elsewhere = house([circuit({ feeds: loads(20) })], { externalImpedance: { ...known(ohms(0.35)), ...by } });
    expect(verdicts(permitted(smallCode, elsewhere, 'ev', { vary: 'length' }))).toEqual(['pass']);
  });

  it('around an assumed nothing, 20 of its unit are examined; what nothing is assumed by is a gap', () => {
    const insulated = { ...known(metres(0)), assumed: 'invented: no insulation' } as const;
    const ask = (assumption: string) =>
      passing({ feeds: loads(20), stretches: [stretch({ insulated })] }, { vary: 'assumed', assumption });
    expect(ask('invented: no insulation').examined).toEqual({ least: 0, most: 20 });
    expect(ask('invented: nothing')).toMatchObject({ intervals: [], gaps: [{ fact: 'invented: nothing' }] });
  });
});

test('a condition names the facts that are assumed', () => {
  const ambient = { ...known(celsius(30)), assumed: 'invented: warmth' } as const;
  const found = assess(smallCode, house([circuit({ feeds: [load(20)], stretches: [stretch({ ambient })] })]), 'ev');
  expect(found.conditions?.[0]?.facts).toEqual(['ambient temperature of air, route']);
});
