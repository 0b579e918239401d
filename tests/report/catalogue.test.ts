/** Every text of the reports comes from the catalogue: with another one, none of our English is left. */
import { describe, expect, it, test } from 'vitest';
import { ordinaryHome } from '../../src/great-britain.js';
import { readSurvey } from '../../src/io/index.js';
import {
  type Block,
  customerPage,
  decisionHeadings,
  decisionRow,
  designFile,
  englishWords,
  installerPage,
  operatorPage,
  planBlocks,
  type ReportWords,
  recordBlocks,
  renderHtml,
  renderMarkdown,
  renderText,
  sheetBlocks,
  testerPage,
} from '../../src/report/index.js';
import { decisionOf, type Plan, recordsOf } from '../../src/site/index.js';
import { examplePlan, planInBritain } from '../support/plan.js';
import { surveyDocument, surveyDocuments } from '../support/surveys.js';

const MARK = '¤';

/** Each entry as a mark, with what the entry is given beside it. */
function marked(entry: unknown): unknown {
  if (typeof entry === 'string') return MARK;
  if (typeof entry === 'function')
    return (...given: readonly unknown[]) =>
      [MARK, ...given.flat().filter((g) => typeof g === 'string' || typeof g === 'number')].join(' ');
  if (Array.isArray(entry)) return entry.map(marked);
  return Object.fromEntries(Object.entries(entry as object).map(([id, inside]) => [id, marked(inside)]));
}
/** The same words in other records. */
const copied = (entry: unknown): unknown =>
  typeof entry === 'object' && entry !== null && !Array.isArray(entry)
    ? Object.fromEntries(Object.entries(entry).map(([id, inside]) => [id, copied(inside)]))
    : entry;
const mark = () => MARK;
const all = marked(englishWords) as ReportWords;
/** What is looked up by a word of ours: the word is no text. */
const marks: ReportWords = {
  ...all,
  said: mark,
  long: {
    ...all.long,
    label: mark,
    work: { ...all.long.work, likely: (value) => value, quantity: (value) => String(value) },
    steps: { ...all.long.steps },
  },
  pictures: { ...all.pictures, oneLine: { ...all.pictures.oneLine, curve: mark } },
};

const reports = (plan: Plan, words: ReportWords): Readonly<Record<string, readonly Block[]>> => {
  const records = recordsOf(plan);
  const sheet = plan.options[0]?.sheet;
  return {
    customer: customerPage(plan, { words }),
    installer: installerPage(plan, { words }),
    tester: testerPage(plan, { words }),
    operator: operatorPage(plan, { words }),
    design: designFile(plan, { words }),
    plan: planBlocks(plan, { words }),
    ...(sheet ? { sheet: sheetBlocks(sheet, 2, words) } : {}),
    ...(records ? { records: recordBlocks(records, words) } : {}),
  };
};

const lettersIn = (text: string): readonly string[] => text.match(/\p{L}{3,}/gu) ?? [];
/** What the survey itself says: names of circuits, places and people are nobody's to translate. */
const ofSurvey = (document: unknown): readonly string[] =>
  typeof document === 'string'
    ? lettersIn(document)
    : typeof document === 'object' && document !== null
      ? Object.values(document).flatMap(ofSurvey)
      : [];
const drawn = (blocks: readonly Block[]): string =>
  blocks
    .flatMap((b) => (b.kind === 'figure' ? [...b.svg.matchAll(/<(text|title|desc)\b[^>]*>([^<]*)</g)] : []))
    .map(([, , text]) => text)
    .join('\n');

/** Names and symbols in expressions of a sheet: what they stand for is said beside them, and a program reads them. */
const symbolsOf = (node: unknown): readonly string[] =>
  typeof node === 'object' && node !== null
    ? Object.entries(node).flatMap(([key, inside]) =>
        /^(name|symbol|expression|from|to|parts)$/.test(key) ? lettersIn(String(inside)) : symbolsOf(inside),
      )
    : [];

/** Letters that are no words: units, symbols and names of tests. */
const noWords = new Set(['kWh', 'kVA', 'MVA', 'max', 'min', 'cos', 'MCB', 'RCD', 'RCBO']);

function left(plan: Plan, document: unknown): Readonly<Record<string, readonly string[]>> {
  const own = new Set(ofSurvey(document));
  const symbols = symbolsOf(plan.options[0]?.sheet);
  const found = Object.entries(reports(plan, marks)).map(([name, blocks]) => {
    const said = `${renderText(blocks)}\n${drawn(blocks)}`;
    const sheet = new Set(/sheet/.test(name) ? symbols : []);
    const ours = lettersIn(said).filter((word) => !own.has(word) && !noWords.has(word) && !sheet.has(word));
    return [name, [...new Set(ours)]] as const;
  });
  return Object.fromEntries(found.filter(([, words]) => words.length > 0));
}

describe.each(Object.keys(surveyDocuments))('%s', (name) => {
  it('has no word of ours left where a catalogue marks them all', () => {
    expect(left(examplePlan(name), surveyDocument(name))).toEqual({});
  });

  it('says the same with a copy of the English catalogue as without one', () => {
    const plan = examplePlan(name);
    const [handed, unasked] = [reports(plan, copied(englishWords) as ReportWords), reports(plan, englishWords)];
    for (const [report, blocks] of Object.entries(unasked))
      expect(renderText(handed[report] ?? [])).toBe(renderText(blocks));
  });
});

it('what is assumed, offered and put right is told in the words of the catalogue too', () => {
  const document = surveyDocument('easy-home') as { readonly installation?: unknown; readonly supply?: object };
  const survey = readSurvey({
    ...document,
    supply: { ...document.supply, externalImpedance: { unknown: 'not measured' } },
  });
  const plan = planInBritain(survey, { assumptions: ordinaryHome, remedies: true, lengths: true, sheets: 'first' });
  expect(plan.options.some((o) => o.conditions.length > 0)).toBe(true);
  expect(left(plan, document)).toEqual({});
});

test('a spreadsheet of decisions has its headings and its cells from the catalogue', () => {
  expect(decisionHeadings(marks)).toEqual(decisionHeadings().map(() => MARK));
  const decision = decisionOf(examplePlan('easy-home'));
  const row = decisionRow('INV-001', { decision, questions: ['Is that so?'], problem: 'is missing' }, marks);
  expect(row).toHaveLength(decisionHeadings().length);
  expect(row.flatMap(lettersIn)).toEqual(['INV']);
  // in another order of columns the cells follow their headings
  const { problem, ...others } = englishWords.decision;
  const words: ReportWords = { ...englishWords, decision: { problem, ...others } };
  expect(decisionHeadings(words)[0]).toBe('Problem');
  expect(decisionRow('A-2', { problem: 'is missing' }, words).slice(0, 2)).toEqual(['is missing', 'A-2']);
});

test('days are in words of the catalogue on every page', () => {
  const plan = examplePlan('easy-home');
  for (const [name, blocks] of Object.entries(reports(plan, englishWords)))
    if (!/sheet|records/.test(name)) {
      expect(renderText(blocks), name).toContain('21 September 2026');
      expect(renderText(blocks), name).not.toMatch(/\d{4}-\d\d-\d\d/);
    }
  const words: ReportWords = { ...englishWords, day: (...parts) => parts.join('/') };
  expect(renderText(customerPage(plan, { words }))).toContain('2026/9/21');
});

test('printers use the words that the blocks bear', () => {
  const blocks = designFile(examplePlan('easy-home'), { words: marks });
  for (const text of [renderText(blocks), renderMarkdown(blocks)])
    expect(text).not.toMatch(/picture|Caution|not determined/i);
  const html = renderHtml(blocks, 'x', 'x', 'cy');
  expect(html).toContain('<html lang="cy">');
  expect(html.replace(/<style>.*?<\/style>/gs, '')).not.toMatch(/Caution|not determined/);
});

test('a text of a plan is handed over with an identifier', () => {
  const asked = new Map<string, string>();
  const words: ReportWords = {
    ...englishWords,
    said: (text, id) => {
      asked.set(id, text);
      return text;
    },
  };
  renderText(designFile(examplePlan('easy-home'), { words }));
  expect(asked.get('option:with-limiter')).toMatch(/load limiter/);
  expect(asked.get('check:voltage-drop')).toMatch(/voltage drop/);
  expect([...asked.keys()].filter((id) => !/^[a-z-]+(:.+)?$/.test(id))).toEqual([]);
});
