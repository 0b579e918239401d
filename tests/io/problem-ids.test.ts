/** Every problem of every document that is read has a stable name from one list, and no word of a schema library. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hasCode, problemIds } from '../../src/index.js';
import { questionnaire } from '../../src/installation/index.js';
import {
  readAssumptions,
  readAttestations,
  readBrief,
  readDefaults,
  readEdition,
  readPriceBook,
  readSurvey,
  readTicks,
  readWorkRules,
  usualDefaults,
} from '../../src/io/index.js';
import { ordinaryHome } from '../../src/networks/gb-network/ordinary-home.js';
import { commonPractice } from '../../src/site/index.js';
import { type Json, surveyDocuments } from '../support/surveys.js';

const plain = (value: unknown): Json => JSON.parse(JSON.stringify(value)) as Json;

const plainly = (set: unknown): Json =>
  JSON.parse(JSON.stringify(set).replaceAll('"two-sources"', '"one-source"')) as Json;

/** A whole brief: the example answer of every question. */
const brief: Record<string, Json> = { format: 'brief/1', edition: '2018+A2:2022' };
for (const q of questionnaire()) if (q.example !== undefined) brief[q.id] ??= q.example;

const edition = {
  format: 'edition/1',
  document: 'BS 7671',
  edition: 'invented',
  base: '2018+A3:2024',
  notice: 'INVENTED',
  aspects: {
    'voltage-drop': {
      read: 'X.2',
      by: 'J. Example',
      on: '2026-11-30',
      changes: [{ kind: 'limit', clause: 'X.2', entry: 'dropLimit', was: 0.05, is: 0.04 }],
    },
  },
};
const attested = {
  format: 'attestations/1',
  attestations: [
    { table: 'bs7671/4d5', figures: '01234567', edition: '2018+A2:2022', by: 'J. Example', on: '2026-11-30' },
  ],
};
const ticks = {
  format: 'ticks/1',
  by: 'J. Example',
  on: '2026-11-30',
  copies: { 'BS 7671': '2018+A2:2022' },
  tables: [],
};
const prices = { format: 'prices/1', currency: 'GBP', items: { 'cable:*': 200 }, hour: 5000, taxBasisPoints: 2000 };

/** A sound document of every kind, and what reads it. */
const kinds: readonly (readonly [name: string, sound: Json, read: (document: unknown) => unknown])[] = [
  ...Object.entries(surveyDocuments)
    .filter(([name]) => name !== 'flats')
    .map(([name, document]) => [name, document as Json, readSurvey] as const),
  ['brief', brief, (d) => readBrief(d, usualDefaults)],
  ['defaults', plain(usualDefaults), readDefaults],
  // a firm speaks for itself: what two texts say is none of its own
  ['assumptions', plainly(ordinaryHome), readAssumptions],
  ['edition', plain(edition), readEdition],
  ['attestations', plain(attested), readAttestations],
  ['ticks', plain(ticks), readTicks],
  ['prices', plain(prices), readPriceBook],
  ['work rules', plain(commonPractice), (d) => readWorkRules(d, Object.keys(commonPractice.hours))],
];

/** Every place of a document, as keys from its root. */
function placesOf(value: Json, at: readonly (string | number)[] = []): (readonly (string | number)[])[] {
  if (typeof value !== 'object' || value === null) return [at];
  const inner = Object.entries(value).flatMap(([key, v]) =>
    placesOf(v as Json, [...at, Array.isArray(value) ? Number(key) : key]),
  );
  return at.length > 0 ? [at, ...inner] : inner;
}

/** What stands in the place of something sound; `undefined` leaves it out. */
const damage = fc.constantFrom<(Json | undefined)[]>(
  ...[undefined, null, true, 0, -1, 1e12, 0.5, '', 'PMX', '80 amp', '12,5 m', '7 kW', '32', [], {}, [1, 2, 3]],
  ...[{ known: 'PMX', by: 'a slip' }, { between: ['35 mm²', '16 mm²'] }, { between: [1] }, { unknown: 3 }, { odd: 1 }],
  // what refuses to be made a text
  ...[{ toString: true }, [{ toString: 1 }]],
);

function damaged(document: Json, place: readonly (string | number)[], by: Json | undefined): Json {
  const copy = plain(document);
  let at = copy as Record<string | number, Json>;
  for (const key of place.slice(0, -1)) at = at[key] as Record<string | number, Json>;
  const last = place.at(-1) as string | number;
  if (by === undefined) delete at[last];
  else at[last] = by;
  return copy;
}

/** Words that a schema library says, and nobody else. */
const foreign =
  /invalid (input|value|type|option|string|union|key|element)|expected|received|too (small|big)|unrecognized|must match pattern|\bzod\b|>=|<=/i;

describe.each(kinds)('%s', (_, sound, read) => {
  test('is sound before it is damaged', () => {
    expect(() => read(plain(sound))).not.toThrow();
  });

  test('damaged anywhere it is read, or refused by problems that are all named', () => {
    const places = placesOf(sound);
    let refused = 0;
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.constantFrom(...places), damage), { minLength: 1, maxLength: 3 }), (slips) => {
        // the deepest first, so that what holds a place is not gone before it
        const document = slips
          .sort((a, b) => b[0].length - a[0].length)
          .reduce((d, [place, by]) => {
            try {
              return damaged(d, place, by);
            } catch {
              return d;
            }
          }, sound);
        try {
          read(document);
        } catch (error) {
          if (hasCode(error, 'not-covered') || hasCode(error, 'unknown-definition')) return;
          if (!hasCode(error, 'invalid-input')) throw error;
          refused += 1;
          expect(error.detail.problems.length).toBeGreaterThan(0);
          for (const { id, message } of error.detail.problems) {
            expect(problemIds).toContain(id);
            expect(message).not.toMatch(foreign);
            expect(message).not.toBe('');
          }
        }
      }),
      { numRuns: 250 },
    );
    expect(refused).toBeGreaterThan(20);
  });
});
