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
import { type Block, grid, heading, verdictWords } from './block.js';

/** Ratios that the trade states in percent. */
const inPercent: ReadonlySet<string> = new Set(['dropRatio', 'dropLimit']);
const amount = (a: Amount | Written): string =>
  inPercent.has(a.name) ? `${formatIn(a.value * 100, '1', 4)} %` : formatIn(a.value, a.unit, 4);

/** Why a value could not be had, in words. */
export function gapWords(gap: Gap): string {
  switch (gap.kind) {
    case 'fact':
      return `${factWords(gap.fact)} is not known${gap.obtain ? ` (${gap.obtain})` : ''}`;
    case 'cell':
    case 'range':
      return gap.explain;
    case 'edition':
      return `${gap.explain} (${gap.edition})`;
    default: {
      const never: never = gap;
      return never;
    }
  }
}

/** The expression with symbols of the trade in place of names. */
function symbolic(expression: string, uses: readonly Written[]): string {
  return [...uses]
    .sort((a, b) => b.name.length - a.name.length)
    .reduce((text, { name, symbol }) => text.replace(new RegExp(`\\b${name}\\b`, 'g'), symbol), expression)
    .replace(/ \* /g, ' · ');
}

const result = (line: { readonly gives: Written } | { readonly blocked: readonly Gap[] }): string =>
  'gives' in line
    ? `${line.gives.symbol} = ${amount(line.gives)}`
    : `not determined: ${line.blocked.map(gapWords).join('; ')}`;

/** A margin in percent as far as that says something; beyond it how many times the limit the value is. */
const marginWords = (margin: number): string => {
  const times = 1 + Math.abs(margin);
  if (times > 10) return 'more than ten times the limit';
  return times > 2 ? `${formatIn(times, '1', 2)} times the limit` : `margin ${formatIn(margin * 100, '1', 2)} %`;
};

/** What was compared in a check, in figures. */
export function comparisonWords(r: CheckResult): string {
  if (r.verdict === 'not-determined') return (r.gaps ?? []).map(gapWords).join('; ') || alternativeWords(r);
  const more = r.because ? ` (${r.because})` : '';
  if (r.value && r.limit && r.most) return `${amount(r.value)} against ${amount(r.limit)} to ${amount(r.most)}${more}`;
  if (r.value && r.limit) {
    const over = r.margin === undefined ? '' : `, ${marginWords(r.margin)}`;
    return `${amount(r.value)} against ${amount(r.limit)}${over}${more}`;
  }
  return r.because ?? alternativeWords(r);
}

/** The alternatives of a result: those that pass if one does, else all, each with its figures. */
function alternativeWords(r: CheckResult): string {
  const all = r.alternatives ?? [];
  const passing = all.filter((a) => a.verdict === 'pass' || a.verdict === 'conditional');
  return (passing.length > 0 ? passing : all).map((a) => `${a.title}: ${comparisonWords(a)}`).join('; ');
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

function row(line: Exclude<SheetLine, { kind: 'part' }>, code?: Code): readonly [string, string, string, string] {
  switch (line.kind) {
    case 'given':
      return ['given', `${line.words}`, result(line), line.by ?? ''];
    case 'label':
      return [
        'given',
        line.name,
        line.value ?? `not determined: ${(line.blocked ?? []).map(gapWords).join('; ')}`,
        line.by ?? '',
      ];
    case 'look':
      return [
        'table',
        `${line.title}: ${Object.entries(line.keys)
          .map(([k, v]) => `${k} ${v}`)
          .join(', ')}`,
        result(line),
        `${citation(line.source)} (${line.attested === undefined ? (line.provenance ?? line.source.provenance) : `attested by ${line.attested}`})`,
      ];
    case 'step':
      return [
        'step',
        `${line.title}: ${symbolic(line.expression, [...line.uses, ...('gives' in line ? [line.gives] : [])])}`,
        result(line),
        cited(line, code),
      ];
    case 'run':
      return ['procedure', `${line.title}: ${line.method}`, result(line), cited(line, code)];
    case 'gather':
      return ['gather', `${line.how} of ${line.from} over parts ${line.parts.join(', ')}`, result(line), ''];
    case 'check':
    case 'result':
      return [
        verdictWords(line.result.verdict),
        line.result.title,
        comparisonWords(line.result),
        citation(line.result.source),
      ];
    case 'same':
      return ['', termOf(line.name)?.words ?? line.name, result(line), 'as above'];
    case 'overall':
      return ['overall', `${line.due.length} checks`, '', verdictWords(line.verdict)];
    case 'note':
      return ['note', line.text, '', ''];
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
export function sheetBlocks(sheet: SheetDocument, level: 1 | 2 | 3 | 4 = 2): readonly Block[] {
  return blocksOf(sheet, level);
}

function blocksOf(sheet: SheetDocument, level: 1 | 2 | 3 | 4, above?: Code): readonly Block[] {
  const code = sheet.lines.find((l) => l.kind === 'overall')?.code ?? above;
  const blocks: Block[] = [heading(level, sheet.place ? `${sheet.place} ${sheet.title}` : sheet.title)];
  let rows: (readonly string[])[] = [];
  const flush = () => {
    blocks.push(...grid('', ['line', 'what', 'result', 'source'], rows));
    rows = [];
  };
  for (const line of sheet.lines) {
    if (line.kind === 'part') {
      flush();
      blocks.push(...blocksOf(line.part, Math.min(4, level + 1) as 1 | 2 | 3 | 4, code));
    } else rows.push(row(line, code));
  }
  flush();
  return blocks;
}
