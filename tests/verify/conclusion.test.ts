/** What a sheet amounts to is tied to its results, and these to what the code asks for: forgeries beyond single numbers. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  alternatives,
  amperes,
  type CheckResult,
  comparison,
  type Installation,
  recorder,
  type SheetDocument,
  type SheetLine,
  type Source,
  statement,
  writeSheet,
} from '../../src/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';
import { verifySheet } from '../../src/verify/index.js';
import { soundHouse } from '../hazards/sound.js';
import { seedOf } from '../support/seed.js';
import { concluded, conclusionOf, noticed, renumbered, runSlice, withLines } from './forgeries.js';

const code = bs7671('2018+A2:2022');
const cited = { document: code.name, edition: code.edition };

const messages = (sheet: SheetDocument, extra?: Parameters<typeof verifySheet>[1]) =>
  verifySheet(sheet, extra).problems.map((p) => p.message);
const honest = concluded(soundHouse());
/** Whether it is said that a check is only stated not to be required. */
const saysOf = (sheet: SheetDocument, check: string): boolean =>
  verifySheet(sheet).takenAsStated.some((s) => s.message.startsWith(`that ${check} is not required`));

describe('an honest sheet', () => {
  test('says what it amounts to, and by which code', () => {
    const { ok, conclusions, problems } = verifySheet(JSON.parse(JSON.stringify(honest)));
    expect(problems).toEqual([]);
    expect(ok).toBe(true);
    expect(conclusions).toMatchObject([{ place: '', verdict: 'pass', code: cited }]);
  });
  test.each([false, true])('of drawn installations, open facts: %s', (open) => {
    fc.assert(
      fc.property(arbitraryInstallation({ open }), (drawn) => {
        // over ranges the sheet is written at one point, and the results are those of all
        const installation = JSON.parse(JSON.stringify(drawn), (_, v) =>
          v?.state === 'between' ? { state: 'known', value: v.most } : v,
        ) as Installation;
        expect(messages(concluded(installation))).toEqual([]);
      }),
      { numRuns: 40, seed: seedOf(open ? 31 : 32) },
    );
  });
  test('that says nothing of the whole is right and amounts to nothing', () => {
    expect(verifySheet({ format: 'sheet/1', place: '', title: 'empty', lines: [] })).toEqual({
      ok: true,
      conclusions: [],
      takenAsStated: [],
      problems: [],
    });
  });
});

describe('a forged conclusion', () => {
  test.each(['fail', 'not-determined', 'PASS'])('another verdict: %s', (verdict) => {
    const forged = withLines(honest, (l) => [
      ...l.slice(0, -1),
      { ...conclusionOf(honest), verdict: verdict as never },
    ]);
    expect(messages(forged)).toContain(`the whole is pass, not ${verdict}`);
  });
  test('each part cut out in turn, the rest renumbered', () => {
    const judged = (l: SheetLine) =>
      l.kind === 'part' && l.part.lines.some((x) => x.kind === 'check' || x.kind === 'result');
    const parts = honest.lines.flatMap((l, i) => (judged(l) ? [i] : []));
    expect(parts.length).toBeGreaterThan(5);
    for (const cut of parts)
      expect(
        messages(withLines(honest, (l) => renumbered(l.filter((_, i) => i !== cut)))).length,
        `part ${cut + 1}`,
      ).toBeGreaterThan(0);
  });
  test('a part cut out, and its checks from those that are due', () => {
    const first = honest.lines[0];
    if (first?.kind !== 'part') throw new Error('no part');
    const gone = new Set(
      first.part.lines.flatMap((l) => (l.kind === 'check' || l.kind === 'result' ? [l.result.check] : [])),
    );
    const line = conclusionOf(honest);
    const forged = withLines(honest, (l) => [
      ...renumbered(l.slice(1, -1)),
      { ...line, due: line.due.filter((d) => !gone.has(d.check)) },
    ]);
    expect(messages(forged).some((m) => m.includes('asks for'))).toBe(true);
  });
  test('a check taken from those that are due while its result stands', () => {
    const line = conclusionOf(honest);
    for (const at of line.due.keys()) {
      const forged = withLines(honest, (l) => [
        ...l.slice(0, -1),
        { ...line, due: line.due.filter((_, i) => i !== at) },
      ]);
      expect(noticed(forged, line.due[at]?.check), line.due[at]?.check).toBe(true);
    }
  });
  test('results that come after it, a second one, a code that is none', () => {
    const [first] = honest.lines;
    const line = conclusionOf(honest);
    expect(messages(withLines(honest, (l) => [...l, line]))).toContain('the whole is concluded twice');
    expect(messages(withLines(honest, (l) => renumbered([line, ...l.slice(0, -1)]))).length).toBeGreaterThan(0);
    expect(first).toBeDefined();
    const forged = withLines(honest, (l) => [
      ...l.slice(0, -1),
      { ...line, code: { document: 'BS 7671', edition: '1066' } },
    ]);
    expect(messages(forged)).toContain('no contents list is of BS 7671:1066');
  });
  test('a check that every circuit needs said to be none of this one; one that some need is taken as stated', () => {
    const excusing = (id: string) =>
      withLines(honest, (lines) => {
        const of = (at: readonly SheetLine[]): readonly SheetLine[] =>
          at.map((l) => {
            if (l.kind === 'part') return { ...l, part: { ...l.part, lines: of(l.part.lines) } };
            if ((l.kind !== 'check' && l.kind !== 'result') || l.result.check !== id) return l;
            const { check, title, weight, source } = l.result;
            const result = { check, title, weight, source, verdict: 'not-required', reason: 'not-applicable' } as const;
            return { kind: 'result', result: { ...result, because: 'the cable is old' } };
          });
        const end = conclusionOf(honest);
        const due = end.due.map((d) => (d.check === id ? { ...d, verdict: 'not-required' as const } : d));
        return [...of(lines.slice(0, -1)), { ...end, due }];
      });
    expect(messages(excusing('load-within-capacity'))).toContain(
      'the check load-within-capacity is required whatever the facts',
    );
    expect(saysOf(excusing('voltage-drop'), 'voltage-drop')).toBe(true);
  });
  test('no code that it was judged by: that nothing else was due is taken as stated', () => {
    const { code: _, ...rest } = conclusionOf(honest);
    const { ok, takenAsStated } = verifySheet(withLines(honest, (l) => [...l.slice(0, -1), rest]));
    expect(ok).toBe(true);
    expect(takenAsStated.map((s) => s.message)).toContain(
      'that nothing else was due: no code is named whose checks have to be here',
    );
  });
  test('a text in the place of what is assumed', () => {
    const forged = withLines(honest, (l) => [
      ...l.slice(0, -1),
      { ...conclusionOf(honest), assumed: 'usual' as never },
    ]);
    expect(messages(forged)).toContain("what is assumed is 'usual'; a list is due");
  });
  const line = conclusionOf(honest);
  const changedAt = (at: number, how: 'drop' | 'repeat' | 'rename') => {
    const due = line.due.flatMap((id, i) =>
      i !== at ? [id] : how === 'drop' ? [] : how === 'repeat' ? [id, id] : [{ ...id, check: `${id.check}x` }],
    );
    return noticed(
      withLines(honest, (l) => [...l.slice(0, -1), { ...line, due }]),
      line.due[at]?.check,
    );
  };
  test('random cuts, swaps and turns of verdicts are noticed', () => {
    fc.assert(
      fc.property(fc.nat(), fc.constantFrom('drop', 'repeat', 'rename'), (n, how) => {
        expect(changedAt(n % line.due.length, how)).toBe(true);
      }),
      { numRuns: 60, seed: seedOf(33) },
    );
  });
  test('a result that stands aside, counted as due beside the one that decides', () => {
    const twice = line.due.findIndex((d) => d.check === 'open-pen-detection-window');
    expect(twice).toBeGreaterThanOrEqual(0);
    expect(changedAt(twice, 'repeat')).toBe(true);
  });
});

describe('an alternative of another check', () => {
  const source: Source = { document: 'Test rules of our own', provenance: 'definition' };
  const basis = (id: string) => ({ id, title: id, weight: 'rule', source }) as const;
  const mine = comparison({ ...basis('mine'), kind: 'at-most', value: 'designCurrent', limit: 'deviceRating' });
  const theirs = comparison({ ...basis('theirs'), kind: 'at-least', value: 'designCurrent', limit: 'deviceRating' });
  const either = alternatives({ ...basis('either'), of: ['mine'] });
  const sheetOf = (pick: (own: CheckResult, other: CheckResult) => readonly CheckResult[]) => {
    const sheet = recorder('test');
    const evidence = {
      designCurrent: sheet.given('designCurrent', amperes(40)),
      deviceRating: sheet.given('deviceRating', amperes(32)),
    };
    const [own, other] = [sheet.check(mine, evidence), sheet.check(theirs, evidence)];
    sheet.check(either, { results: pick(own, other) });
    return writeSheet(sheet);
  };
  test('is none of this one', () => {
    expect(
      messages(
        sheetOf((own) => [own]),
        [mine, theirs, either],
      ),
    ).toEqual([]);
    expect(
      messages(
        sheetOf((own, other) => [own, other]),
        [mine, theirs, either],
      ),
    ).toEqual(['theirs is no alternative of either']);
  });
});

test('what nobody can work out a second time is said: remarks, statements, limits', () => {
  const source: Source = { document: 'Test rules of our own', provenance: 'definition' };
  const labelled = statement({ id: 'labelled', title: 'It is labelled', weight: 'advice', source });
  const below = comparison({
    id: 'below',
    title: 'Below',
    kind: 'at-most',
    value: 'designCurrent',
    limit: 'deviceRating',
    weight: 'rule',
    source,
  });
  const sheet = recorder('test');
  sheet.note('OVERALL: PASS');
  sheet.check(labelled, { holds: true, because: 'seen' });
  sheet.check(below, {
    designCurrent: sheet.given('designCurrent', amperes(16)),
    deviceRating: sheet.given('deviceRating', amperes(32), 'a standard'),
  });
  const { ok, conclusions, takenAsStated } = verifySheet(writeSheet(sheet), [labelled, below]);
  expect(ok).toBe(true);
  expect(conclusions).toEqual([]);
  expect(takenAsStated.map((s) => s.message)).toEqual([
    'a remark: OVERALL: PASS',
    'that labelled holds',
    'the limit deviceRating',
  ]);
});

test('four hundred forgeries by number, single and several at once', () => {
  const { counts, found } = runSlice(seedOf(3), 0, 400);
  expect(found).toEqual([]);
  expect(Object.keys(counts).length).toBe(9);
});
