import {
  type Amount,
  type CheckResult,
  citation,
  factWords,
  type Gap,
  type SheetDocument,
  type SheetLine,
  type Source,
  termOf,
  type Written,
} from '../core/index.js';
import { formatIn } from '../units/index.js';
import { type Block, grid, heading, paragraph, verdictWords } from './block.js';
import { englishWords, type ReportWords } from './words/pages.js';

/** Ratios that the trade states in percent. */
const inPercent: ReadonlySet<string> = new Set(['dropRatio', 'dropLimit']);
const amount = (a: Amount | Written): string =>
  inPercent.has(a.name) ? `${formatIn(a.value * 100, '1', 4)} %` : formatIn(a.value, a.unit, 4);

/** Why a value could not be had, in words. */
export function gapWords(gap: Gap, w: ReportWords): string {
  switch (gap.kind) {
    case 'fact': {
      const fact = w.said(factWords(gap.fact), `fact:${gap.fact}`);
      return w.sheet.notKnown(fact, gap.obtain === undefined ? undefined : w.said(gap.obtain, `obtain:${gap.fact}`));
    }
    case 'cell':
    case 'range':
      return w.said(gap.explain, 'gap');
    case 'edition':
      return w.sheet.inEdition(w.said(gap.explain, 'gap'), gap.edition);
    default: {
      const never: never = gap;
      return never;
    }
  }
}

/** Several gaps in a line. */
export const gapsWords = (gaps: readonly Gap[] | undefined, w: ReportWords): string =>
  (gaps ?? []).map((gap) => gapWords(gap, w)).join('; ');

/** The expression with symbols of the trade in place of names. */
function symbolic(expression: string, uses: readonly Written[]): string {
  return [...uses]
    .sort((a, b) => b.name.length - a.name.length)
    .reduce((text, { name, symbol }) => text.replace(new RegExp(`\\b${name}\\b`, 'g'), symbol), expression)
    .replace(/ \* /g, ' · ');
}

const result = (line: { readonly gives: Written } | { readonly blocked: readonly Gap[] }, w: ReportWords): string =>
  'gives' in line ? `${line.gives.symbol} = ${amount(line.gives)}` : w.sheet.notDetermined(gapsWords(line.blocked, w));

/** A margin in percent as far as that says something; beyond it how many times the limit the value is. */
function margshown(margin: number, { sheet }: ReportWords): string {
  const times = 1 + Math.abs(margin);
  if (times > 10) return sheet.manyTimes;
  return times > 2 ? sheet.times(formatIn(times, '1', 2)) : sheet.percent(formatIn(margin * 100, '1', 2));
}

/** What was compared in a check, in figures. */
export function comparisonWords(r: CheckResult, w: ReportWords): string {
  if (r.verdict === 'not-determined') return gapsWords(r.gaps, w) || alternativeWords(r, w);
  const because = r.because && w.said(r.because, `because:${r.check}`);
  const with_ = (figures: string) => (because ? w.sheet.because(figures, because) : figures);
  if (r.value && r.limit && r.most) return with_(w.sheet.between(amount(r.value), amount(r.limit), amount(r.most)));
  if (r.value && r.limit) {
    const figures = w.sheet.against(amount(r.value), amount(r.limit));
    return with_(r.margin === undefined ? figures : w.sheet.margin(figures, margshown(r.margin, w)));
  }
  return because ?? alternativeWords(r, w);
}

/** The alternatives of a result: those that pass if one does, else all, each with its figures. */
function alternativeWords(r: CheckResult, w: ReportWords): string {
  const all = r.alternatives ?? [];
  const passing = all.filter((a) => a.verdict === 'pass' || a.verdict === 'conditional');
  return (passing.length > 0 ? passing : all)
    .map((a) => w.long.named(w.said(a.title, `check:${a.check}`), comparisonWords(a, w)))
    .join('; ');
}

/** The code that a circuit is judged by. */
type Code = { readonly document: string; readonly edition: string };

/** By which clause of the code a figure is used, and where its definition comes from. */
function cited(
  { clause, source }: { readonly clause?: string; readonly source: Source },
  code: Code | undefined,
): string {
  const own = citation(source);
  if (clause === undefined || source.document === code?.document) return own;
  return `${code ? citation({ ...source, ...code, clause }) : clause}; ${own}`;
}

function row(line: Exclude<SheetLine, { kind: 'part' }>, w: ReportWords, code: Code | undefined): readonly string[] {
  const { sheet } = w;
  const kind = sheet.kinds[line.kind] ?? '';
  const by = (words: string | undefined) => (words === undefined ? '' : w.said(words, 'by'));
  switch (line.kind) {
    case 'given':
      return [kind, w.said(line.words, `given:${line.name}`), result(line, w), by(line.by)];
    case 'label':
      return [
        kind,
        w.said(line.name, `label:${line.name}`),
        line.value === undefined ? sheet.notDetermined(gapsWords(line.blocked, w)) : w.said(line.value, 'label'),
        by(line.by),
      ];
    case 'look':
      return [
        kind,
        sheet.named(
          w.said(line.title, `table:${line.table}`),
          Object.entries(line.keys)
            .map(([k, v]) => w.said(`${k} ${v}`, 'key'))
            .join(', '),
        ),
        result(line, w),
        sheet.known(
          w.said(citation(line.source), 'source'),
          line.attested === undefined
            ? w.said(line.provenance ?? line.source.provenance, 'provenance')
            : sheet.attested(line.attested),
        ),
      ];
    case 'step':
      return [
        kind,
        sheet.named(
          w.said(line.title, `formula:${line.formula}`),
          symbolic(line.expression, [...line.uses, ...('gives' in line ? [line.gives] : [])]),
        ),
        result(line, w),
        w.said(cited(line, code), 'source'),
      ];
    case 'run':
      return [
        kind,
        sheet.named(w.said(line.title, `procedure:${line.procedure}`), w.said(line.method, 'method')),
        result(line, w),
        w.said(cited(line, code), 'source'),
      ];
    case 'gather':
      return [
        kind,
        sheet.gathered(w.said(line.how, 'how'), w.said(line.from, `given:${line.from}`), line.parts.join(', ')),
        result(line, w),
        '',
      ];
    case 'check':
    case 'result':
      return [
        verdictWords(line.result.verdict, w),
        w.said(line.result.title, `check:${line.result.check}`),
        comparisonWords(line.result, w),
        w.said(citation(line.result.source), 'source'),
      ];
    case 'same':
      return ['', w.said(termOf(line.name)?.words ?? line.name, `given:${line.name}`), result(line, w), sheet.asAbove];
    case 'overall':
      return [kind, sheet.checks(line.due.length), '', verdictWords(line.verdict, w)];
    case 'note':
      return [kind, w.said(line.text, 'note'), '', ''];
    default: {
      const never: never = line;
      return never;
    }
  }
}

/**
 * A calculation sheet as blocks: every line with its figures and its source.
 * @param sheet a written sheet
 * @param level level of its heading
 * @param words words of the sheet; English when absent
 * @returns blocks, for any of the renderers
 * @example
 * ```ts
 * import { amperes, recorder, writeSheet } from 'ohmwright';
 * import { sheetBlocks } from 'ohmwright/report';
 *
 * const sheet = recorder('A load');
 * sheet.given('designCurrent', amperes(32), 'setting of the point');
 * sheetBlocks(writeSheet(sheet))[0]?.kind; // => 'heading'
 * ```
 */
export function sheetBlocks(
  sheet: SheetDocument,
  level: 1 | 2 | 3 | 4 = 2,
  words: ReportWords = englishWords,
): readonly Block[] {
  const concluded = sheet.lines.some((l) => l.kind === 'overall');
  return [...blocksOf(sheet, level, words), ...(concluded ? [paragraph(words.sheet.stated)] : [])];
}

function blocksOf(sheet: SheetDocument, level: 1 | 2 | 3 | 4, words: ReportWords, above?: Code): readonly Block[] {
  const code = sheet.lines.find((l) => l.kind === 'overall')?.code ?? above;
  const title = words.said(sheet.title, 'part');
  const blocks: Block[] = [heading(level, sheet.place ? `${sheet.place} ${title}` : title)];
  let rows: (readonly string[])[] = [];
  const flush = () => {
    blocks.push(...grid('', words.sheet.head, rows));
    rows = [];
  };
  for (const line of sheet.lines) {
    if (line.kind === 'part') {
      flush();
      blocks.push(...blocksOf(line.part, Math.min(4, level + 1) as 1 | 2 | 3 | 4, words, code));
    } else rows.push(row(line, words, code));
  }
  flush();
  return blocks;
}
