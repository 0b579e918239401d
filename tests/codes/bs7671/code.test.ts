import { describe, expect, it } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import { aspects } from '../../../src/codes/wiring-code.js';
import { assess } from '../../../src/design/index.js';
import { amperes, known, squareMillimetres } from '../../../src/index.js';
import { circuit, house } from '../../support/house.js';

describe('BS 7671 as a wiring code', () => {
  it('states its edition and that it was withdrawn', () => {
    const code = bs7671('2018+A2:2022');
    expect(code.standing).toContain('withdrawn on 15 October 2026');
    expect([code.inForce('2026-10-14'), code.inForce('2026-10-15')]).toEqual(['in-force', 'withdrawn']);
  });

  it('lists the sizes of the table that serves a cable, and the ratings of a product standard', () => {
    const code = bs7671('2018+A2:2022');
    expect(code.sizesFor(circuit()).map((size) => size.area)).toEqual([1, 1.5, 2.5, 4, 6, 10, 16]);
    expect(code.ratingsFor(circuit()).filter((r) => r >= 32 && r <= 63)).toEqual([32, 40, 50, 63]);
  });

  it('judges every aspect of an ordinary charger circuit', () => {
    const assessment = assess(bs7671('2018+A2:2022'), house([circuit()]), 'ev');
    expect(assessment.aspects.map((a) => a.aspect)).toEqual(aspects);
    expect(JSON.parse(JSON.stringify(assessment))).toEqual(assessment);
  });

  it('judges nothing by an edition whose text was not available', () => {
    const assessment = assess(bs7671('2018+A4:2026'), house([circuit()]), 'ev');
    expect(assessment.overall.verdict).toBe('not-determined');
    expect(assessment.results.every((r) => r.verdict === 'not-determined')).toBe(true);
    expect(assessment.gaps).toEqual([expect.objectContaining({ kind: 'edition', edition: 'BS 7671:2018+A4:2026' })]);
  });

  it('judges no withstand of three conductors in parallel, and does not let them pass', () => {
    const { cable } = circuit();
    const found = assess(bs7671('2018+A2:2022'), house([circuit({ cable: { ...cable, parallel: 3 } })]), 'ev');
    for (const aspect of ['line-withstand', 'protective-conductor'] as const)
      expect(found.aspects.find((a) => a.aspect === aspect)?.verdict).toBe('not-determined');
    expect(found.overall.verdict).not.toBe('pass');
    expect(found.results.filter((r) => r.check === 'parallel-conductors-under-fault')).toHaveLength(2);
  });

  it.each([
    // B32 of class 3 at 6 kA: 45,000 A²s; (115 x 1.5)² = 29,756 A²s, (115 x 2.5)² = 82,656 A²s: one alone has to withstand it
    [1.5, 'not-determined'],
    [2.5, 'pass'],
  ] as const)('of two conductors of %f mm² in parallel either has to withstand a fault alone: %s', (size, verdict) => {
    const cable = { ...circuit().cable, area: known(squareMillimetres(size)), parallel: 2 };
    const found = assess(
      bs7671('2018+A2:2022'),
      house([circuit({ cable })], { prospectiveCurrent: known(amperes(5900)) }),
      'ev',
    );
    expect(found.results.find((r) => r.check === 'line-withstand')?.verdict).toBe(verdict);
  });

  it.each([
    // √45,000 A²s = 212; k of Table 54.3: 115 of copper and 76 of aluminium, in cable of 70 °C: 1.84 mm² and 2.79 mm²
    ['core', undefined, 'not-determined'],
    ['separate', undefined, 'not-determined'],
    ['separate', 'aluminium', 'not-determined'],
    ['separate', 'copper', 'pass'],
  ] as const)('beside lines of aluminium a protective conductor (%s) of %s metal: %s', (protective, metal, verdict) => {
    const cable = {
      ...circuit().cable,
      construction: 'multicore',
      cores: 3,
      material: 'aluminium',
      area: known(squareMillimetres(16)),
      protective,
      protectiveArea: known(squareMillimetres(2.5)),
      ...(metal ? { protectiveMaterial: metal } : {}),
    } as const;
    const found = assess(
      bs7671('2018+A2:2022'),
      house([circuit({ cable })], { prospectiveCurrent: known(amperes(5900)) }),
      'ev',
    );
    const [adiabatic] = found.results.find((r) => r.check === 'protective-conductor')?.alternatives ?? [];
    expect([adiabatic?.check, adiabatic?.verdict]).toEqual(['protective-conductor-adiabatic', verdict]);
  });

  it('a fault in one of two like conductors draws at least what one at the far end draws', () => {
    // along the conductor from the supply, or by the other one and back from the far end
    const seen = (x: number) => 1 / (1 / x + 1 / (2 - x));
    for (let x = 0.01; x < 1; x += 0.01) {
      expect(seen(x)).toBeCloseTo((x * (2 - x)) / 2, 12);
      expect(seen(x)).toBeLessThan(seen(1));
    }
  });
});
