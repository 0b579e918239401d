/** Forgeries of sheets by number: single figures, and several changes that fit one another. */
import fc from 'fast-check';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { assess } from '../../src/design/index.js';
import {
  type CheckResult,
  type Installation,
  overall,
  pathTo,
  recorder,
  type SheetDocument,
  type SheetLine,
  writeSheet,
} from '../../src/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';
import { verifySheet } from '../../src/verify/index.js';
import { premises } from '../hazards/sound.js';
import { tampered } from '../support/tamper.js';

const code = bs7671('2018+A2:2022');

/** The sheet of one circuit, with what it amounts to as its last line. */
export function concluded(installation: Installation): SheetDocument {
  const sheet = recorder('test');
  const run = pathTo(installation, 'submain') ? 'submain' : 'ev';
  assess(code, installation, run, { ...premises, acceptMemoryFigures: true }, sheet);
  return writeSheet(sheet);
}
/** A sheet with other lines. */
export const withLines = (
  sheet: SheetDocument,
  change: (lines: readonly SheetLine[]) => readonly SheetLine[],
): SheetDocument => ({ ...sheet, lines: change(sheet.lines) });
/** What a sheet says that it amounts to. */
export function conclusionOf(sheet: SheetDocument) {
  const line = sheet.lines.at(-1);
  if (line?.kind !== 'overall') throw new Error('no conclusion');
  return line;
}
/** Whether a forgery is noticed, or what it rests on said to be taken as stated. */
export const noticed = (sheet: SheetDocument, check: string | undefined): boolean => {
  const { ok, takenAsStated } = verifySheet(sheet);
  return !ok || takenAsStated.some((s) => s.message.startsWith(`that the result of ${check}, `));
};
/** Parts numbered again, as a forger would who cut one out. */
export const renumbered = (lines: readonly SheetLine[]): readonly SheetLine[] => {
  let n = 0;
  const move = (part: SheetDocument, place: string): SheetDocument => {
    let m = 0;
    const inner = part.lines.map((l) => (l.kind === 'part' ? { ...l, part: move(l.part, `${place}.${++m}`) } : l));
    return { ...part, place, lines: inner };
  };
  return lines.map((l) => (l.kind === 'part' ? { ...l, part: move(l.part, `${++n}`) } : l));
};

const resultOf = (l: SheetLine): CheckResult | undefined =>
  l.kind === 'check' || l.kind === 'result' ? l.result : undefined;
const resultsIn = (sheet: SheetDocument): readonly CheckResult[] =>
  sheet.lines.flatMap((l) => (l.kind === 'part' ? resultsIn(l.part) : (resultOf(l) ?? [])));
/** A sheet in which each result is what a function makes of it, and the whole what then follows. */
function turned(sheet: SheetDocument, turn: (r: CheckResult) => CheckResult): SheetDocument {
  const all = (lines: readonly SheetLine[]): readonly SheetLine[] =>
    lines.map((l) => {
      if (l.kind === 'part') return { ...l, part: { ...l.part, lines: all(l.part.lines) } };
      return l.kind === 'check' || l.kind === 'result' ? ({ ...l, result: turn(l.result) } as SheetLine) : l;
    });
  const changed = withLines(sheet, all);
  const { verdict } = overall(resultsIn(changed));
  return withLines(changed, (l) => [...l.slice(0, -1), { ...conclusionOf(changed), verdict }]);
}
const passing = ({ gaps: _gaps, margin: _margin, ...r }: CheckResult): CheckResult => ({ ...r, verdict: 'pass' });

const cutWithDue = 'a part cut out with the checks that were due in it';
/** The ways to forge more than one figure: each gives a sheet, or nothing where it has nothing to change. */
const ways: Readonly<Record<string, (sheet: SheetDocument, n: number) => SheetDocument | undefined>> = {
  'a part cut out, the rest numbered again'(sheet, n) {
    const parts = sheet.lines.flatMap((l, i) => (l.kind === 'part' && resultsIn(l.part).length > 0 ? [i] : []));
    const cut = parts[n % parts.length];
    return withLines(sheet, (l) => renumbered(l.filter((_, i) => i !== cut)));
  },
  [cutWithDue](sheet, n) {
    const parts = sheet.lines.flatMap((l, i) => (l.kind === 'part' && resultsIn(l.part).length > 0 ? [i] : []));
    const cut = parts[n % parts.length] as number;
    const line = sheet.lines[cut] as SheetLine & { readonly kind: 'part' };
    const gone = new Set(resultsIn(line.part).map((r) => r.check));
    const end = conclusionOf(sheet);
    return withLines(sheet, (l) => [
      ...renumbered(l.filter((_, i) => i !== cut).slice(0, -1)),
      { ...end, due: end.due.filter((d) => !gone.has(d.check)) },
    ]);
  },
  'another conclusion'(sheet, n) {
    const end = conclusionOf(sheet);
    const others = (['pass', 'fail', 'not-determined'] as const).filter((v) => v !== end.verdict);
    return withLines(sheet, (l) => [...l.slice(0, -1), { ...end, verdict: others[n % 2] as 'pass' }]);
  },
  'one result turned, and the conclusion with it'(sheet, n) {
    const bad = resultsIn(sheet).filter((r) => r.verdict === 'fail' || r.verdict === 'not-determined');
    const one = bad[n % Math.max(1, bad.length)];
    return one && turned(sheet, (r) => (r === one ? passing(r) : r));
  },
  'every result turned, and the conclusion with them'(sheet) {
    if (resultsIn(sheet).every((r) => r.verdict === 'pass' || r.verdict === 'not-required')) return undefined;
    return turned(sheet, (r) => (r.verdict === 'fail' || r.verdict === 'not-determined' ? passing(r) : r));
  },
  'what fails made not required'(sheet, n) {
    const counts = conclusionOf(sheet).due;
    const bad = resultsIn(sheet).filter((r) => counts.some((d) => d.check === r.check && d.verdict === r.verdict));
    const failing = bad.filter((r) => r.verdict === 'fail');
    const one = failing[n % Math.max(1, failing.length)];
    if (!one) return undefined;
    const { check, title, weight, source } = one;
    const excused = {
      check,
      title,
      weight,
      source,
      verdict: 'not-required',
      reason: 'not-applicable',
      because: 'not here',
    } as const;
    const all = (lines: readonly SheetLine[]): readonly SheetLine[] =>
      lines.map((l) => {
        if (l.kind === 'part') return { ...l, part: { ...l.part, lines: all(l.part.lines) } };
        return resultOf(l) === one ? { kind: 'result', result: excused } : l;
      });
    const changed = withLines(sheet, all);
    const due = counts.map((d) =>
      d.check === check && d.verdict === 'fail' ? { check, verdict: excused.verdict } : d,
    );
    const results = resultsIn(changed).filter((r) => due.some((d) => d.check === r.check && d.verdict === r.verdict));
    return withLines(changed, (l) => [
      ...l.slice(0, -1),
      { ...conclusionOf(sheet), due, verdict: overall(results).verdict },
    ]);
  },
  'an alternative of another check'(sheet, n) {
    const all = resultsIn(sheet);
    const own = all.filter((r) => r.alternatives !== undefined);
    const one = own[n % Math.max(1, own.length)];
    const other = all.find((r) => r.verdict === 'pass' && !(one?.alternatives ?? []).some((a) => a.check === r.check));
    if (!one || !other) return undefined;
    const { alternatives: _own, ...lone } = other;
    return turned(sheet, (r) => (r === one ? { ...passing(r), alternatives: [lone] } : r));
  },
};

/** Whether what is said of a sheet without its conclusion is that it has none. */
const withoutConclusion = (sheet: SheetDocument): boolean => {
  const { conclusions, takenAsStated } = verifySheet(
    withLines(sheet, (l) => [...l.slice(0, -1), { kind: 'note', text: 'OVERALL: PASS' }]),
  );
  return conclusions.length === 0 && takenAsStated.some((s) => s.message.includes('OVERALL: PASS'));
};

/** Checks that some circuits alone need may be cut out: that nobody can confirm, and it is said. */
const saidOfDue = (sheet: SheetDocument): boolean =>
  verifySheet(sheet).takenAsStated.some((s) =>
    s.message.startsWith('that of the checks that BS 7671 asks for in some'),
  );

/** Forgeries of one sheet. */
const EACH = 25;

/**
 * Forges sheets of drawn installations and says which forgeries nobody notices.
 * @param seed seed of the whole
 * @param from number of the first forgery, a multiple of 25
 * @param to number of the forgery after the last
 */
export function runSlice(seed: number, from: number, to: number) {
  const counts: Record<string, number> = {};
  const found: string[] = [];
  const names = Object.keys(ways);
  for (let first = from; first < to; first += EACH) {
    const own = seed * 1_000_003 + first;
    const [installation] = fc.sample(arbitraryInstallation({ open: first % 50 === 0 }), { numRuns: 1, seed: own });
    // over ranges a sheet is written at one point
    const sheet = concluded(
      JSON.parse(JSON.stringify(installation), (_, v) =>
        v?.state === 'between' ? { state: 'known', value: v.most } : v,
      ) as Installation,
    );
    const singles = [...tampered(sheet, 1)];
    const picks = fc.sample(fc.nat(1_000_000), { numRuns: EACH, seed: own });
    for (const [k, n] of picks.entries()) {
      const name = k === 0 ? 'the conclusion cut away' : k < 16 ? 'one figure' : (names[k % names.length] as string);
      const one = singles[n % singles.length];
      const forged = k === 0 ? sheet : k < 16 ? one?.sheet : ways[name]?.(sheet, n);
      if (!forged) continue;
      counts[name] = (counts[name] ?? 0) + 1;
      const seen =
        k === 0
          ? withoutConclusion(forged)
          : !verifySheet(forged).ok ||
            statedIn(sheet, forged) ||
            onlyAside(sheet, forged) ||
            (name === cutWithDue && saidOfDue(forged));
      if (!seen) found.push(`${first + k}: ${name}${k < 16 ? ` ${one?.what}` : ''}`);
    }
  }
  return { counts, found };
}

/** Whether all that is gone are results of which was said that they stand aside: they count for nothing, there or not. */
function onlyAside(sheet: SheetDocument, forged: SheetDocument): boolean {
  const left = [...resultsIn(forged)];
  const gone = resultsIn(sheet).filter((r) => {
    const at = left.indexOf(r);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  const aside = new Set(verifySheet(sheet).takenAsStated.map((s) => s.message));
  return (
    gone.length > 0 &&
    left.length === 0 &&
    gone.every((r) => aside.has(`that the result of ${r.check}, ${r.verdict}, stands aside`))
  );
}

/** Whether what was forged is something of which the verification says that it takes it as stated, and had not before. */
function statedIn(sheet: SheetDocument, forged: SheetDocument): boolean {
  const [before, now] = [verifySheet(sheet).takenAsStated, verifySheet(forged).takenAsStated];
  const known = new Set(before.map((s) => s.message));
  return now.length > before.length || now.some((s) => !known.has(s.message));
}
