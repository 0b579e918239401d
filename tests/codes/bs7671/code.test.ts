import { describe, expect, it } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import { aspects } from '../../../src/codes/wiring-code.js';
import { assess } from '../../../src/design/index.js';
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

  it('judges no withstand of conductors in parallel, and does not let them pass', () => {
    const { cable } = circuit();
    const found = assess(bs7671('2018+A2:2022'), house([circuit({ cable: { ...cable, parallel: 2 } })]), 'ev');
    for (const aspect of ['line-withstand', 'protective-conductor'] as const)
      expect(found.aspects.find((a) => a.aspect === aspect)?.verdict).toBe('not-determined');
    expect(found.overall.verdict).not.toBe('pass');
    expect(found.results.filter((r) => r.check === 'parallel-conductors-under-fault')).toHaveLength(2);
  });
});
