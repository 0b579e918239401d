import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calculator } from '../../../src/codes/iec60364/contents.js';
import { iec60364 } from '../../../src/codes/iec60364/index.js';
import { assess, hasCode, known, metres, pathTo, recorder, writeSheet } from '../../../src/index.js';
import { arbitraryInstallation } from '../../../src/testing/index.js';
import { verifySheet } from '../../../src/verify/index.js';
import { chargePoint, circuit, house, stretch } from '../../support/house.js';

interface Cited {
  readonly id: string;
  readonly source: { readonly document: string; readonly clause?: string };
}
const isCheck = (of: object): of is Cited => 'id' in of && 'source' in of && 'weight' in of;

/** Every check that a contents list holds, however deep in choices and rows. */
function checksIn(of: unknown, seen = new Set<object>()): readonly Cited[] {
  if (typeof of !== 'object' || of === null || seen.has(of)) return [];
  seen.add(of);
  if (isCheck(of)) return [of];
  return Object.values(of).flatMap((inner) => checksIn(inner, seen));
}

describe('clauses of IEC 60364', () => {
  const all = checksIn((calculator() as unknown as { contents: { checks: unknown } }).contents.checks);

  it('every check cites IEC 60364 with a clause, or the maker', () => {
    expect(all.length).toBeGreaterThan(8);
    const off = all.filter(
      ({ source }) => source.document !== "Maker's data" && !(/^IEC 60364-\d/.test(source.document) && source.clause),
    );
    expect(off.map(({ id, source }) => `${id}: ${source.document} ${source.clause}`)).toEqual([]);
  });

  const run = circuit({
    feeds: [chargePoint],
    stretches: [stretch({ insulated: known(metres(0.1)), method: known('A') }), stretch({ name: 'second' })],
  });

  it('no result cites a national code', () => {
    const found = assess(iec60364('2009'), house([run]), run.id);
    const cited = found.results.map((r) => r.source.document);
    expect(cited.length).toBeGreaterThan(10);
    expect(cited.filter((d) => d.startsWith('BS'))).toEqual([]);
  });

  it('no line of a sheet of any drawn installation cites one, nor says that it goes by one', () => {
    const drawn = [
      ...fc.sample(arbitraryInstallation(), { numRuns: 25, seed: 5 }),
      ...fc.sample(arbitraryInstallation({ open: true }), { numRuns: 25, seed: 7 }),
    ];
    let lines = 0;
    for (const [i, installation] of drawn.entries())
      for (const id of ['ev', 'submain'].filter((r) => pathTo(installation, r))) {
        const sheet = recorder('by IEC 60364');
        const options =
          i % 2 === 0 ? { acceptMemoryFigures: true } : { dropTemperature: 'neighbours-at-full-load' as const };
        try {
          assess(iec60364('2009'), installation, id, options, sheet);
        } catch (error) {
          if (!hasCode(error, 'invalid-input')) throw error;
        }
        const written = JSON.stringify(writeSheet(sheet), (key, value) => {
          if (key === 'source') lines++;
          // where a table was seen in print
          return key === 'note' ? undefined : value;
        });
        expect(written.match(/[^"]*BS 7671[^"]*/g) ?? []).toEqual([]);
      }
    expect(lines).toBeGreaterThan(2000);
  });

  it('a sheet that cites a clause which no code has for a check is refused', () => {
    const sheet = recorder('by IEC 60364');
    assess(iec60364('2009'), house([run]), run.id, {}, sheet);
    const written = JSON.stringify(writeSheet(sheet));
    expect(verifySheet(JSON.parse(written)).problems).toEqual([]);
    const forged = written.replaceAll('"clause":"525, Annex G, Table G.52.1"', '"clause":"525.1"');
    expect(forged).not.toBe(written);
    expect(verifySheet(JSON.parse(forged)).ok).toBe(false);
  });
});
