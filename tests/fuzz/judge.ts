import { XMLValidator } from 'fast-xml-parser';
import MarkdownIt from 'markdown-it';
import { type DefaultTreeAdapterTypes, parse } from 'parse5';
import { readSurvey } from '../../src/io/index.js';
import {
  customerPage,
  designFile,
  installerPage,
  operatorPage,
  planBlocks,
  renderHtml,
  renderMarkdown,
  renderText,
  testerPage,
} from '../../src/report/index.js';
import type { Plan } from '../../src/site/index.js';
import { CalculationError } from '../../src/units/index.js';
import { planInBritain } from '../support/plan.js';
import type { Json } from '../support/surveys.js';

type Node = DefaultTreeAdapterTypes.ChildNode;

/** What became of a case: where it ended, and what is wrong with that; nothing, if all is well. */
export interface Outcome {
  /** Such as `refused: invalid-input` or `planned: fail`. */
  readonly ended: string;
  /** Breaches of what must hold. */
  readonly breaches: readonly string[];
}

/** The elements and attributes that reports are made of; anything else came from a text. */
const elements = new Set(
  'html head meta title style body article nav a h1 h2 h3 h4 p sub strong ul ol li table caption thead tbody tr th td span pre figure figcaption svg desc path rect circle ellipse text g defs pattern'.split(
    ' ',
  ),
);
const attributes = new Set(
  'href lang charset name content class scope xmlns role aria-labelledby viewBox width height id x y cx cy r rx ry d fill fill-opacity stroke stroke-width stroke-dasharray text-anchor font-size font-weight transform patternUnits'.split(
    ' ',
  ),
);

/** What a page holds that no report writes. */
function strangers(html: string): string[] {
  const found: string[] = [];
  const page = parse(html, { onParseError: (e) => found.push(`HTML: ${e.code}`) });
  const visit = (node: Node | DefaultTreeAdapterTypes.Document): void => {
    if (node.nodeName === '#comment') found.push('HTML: a comment');
    if ('tagName' in node) {
      if (!elements.has(node.tagName)) found.push(`HTML: element ${node.tagName.slice(0, 40)}`);
      for (const { name, value } of node.attrs) {
        if (!attributes.has(name)) found.push(`HTML: attribute ${name.slice(0, 40)}`);
        if (name === 'href' && !/^#chapter-\d+$/.test(value)) found.push('HTML: a way out of the page');
        if (/javascript:|expression\(|url\((?!#)/i.test(value))
          found.push(`HTML: attribute value ${value.slice(0, 40)}`);
      }
      // texts reach no style
      const [first] = node.childNodes;
      if (node.tagName === 'style' && first && 'value' in first && /zqx/.test(first.value)) found.push('HTML: style');
    }
    if ('childNodes' in node) for (const inner of node.childNodes) visit(inner);
  };
  visit(page);
  return found;
}

const markdown = new MarkdownIt({ html: true });
const plainMarks = new Set(
  'heading_open heading_close paragraph_open paragraph_close inline bullet_list_open bullet_list_close ordered_list_open ordered_list_close list_item_open list_item_close blockquote_open blockquote_close table_open table_close thead_open thead_close tbody_open tbody_close tr_open tr_close th_open th_close td_open td_close text text_special strong_open strong_close em_open em_close softbreak'.split(
    ' ',
  ),
);

/** What a Markdown text holds that no report writes: HTML, links, pictures, code, rules, and headings of its own. */
function strangeMarks(text: string, headings: number): string[] {
  const found: string[] = [];
  const tokens = markdown.parse(text, {});
  for (const token of tokens) {
    if (!plainMarks.has(token.type)) found.push(`Markdown: ${token.type}`);
    for (const inner of token.children ?? []) if (!plainMarks.has(inner.type)) found.push(`Markdown: ${inner.type}`);
  }
  const seen = tokens.filter((t) => t.type === 'heading_open').length;
  if (seen !== headings) found.push(`Markdown: ${seen} headings of ${headings}`);
  return found;
}

function notFinite(value: unknown, path: string, found: string[]): void {
  if (typeof value === 'number' && !Number.isFinite(value)) found.push(`${path} is ${value}`);
  if (value === undefined && path.endsWith(']')) found.push(`${path} is undefined`);
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) notFinite(inner, `${path}[${key}]`, found);
}

/** What no printed line may hold. */
const UNPRINTABLE = /[^\P{Cc}\n]|[\p{Cs}\u2028\u2029\u202a-\u202e\u2066-\u2069\ufffe\uffff]/u;

function reportsOf(plan: Plan) {
  const pages = [customerPage, installerPage, testerPage, operatorPage, designFile];
  const blocks = [...planBlocks(plan, { sheet: true }), ...pages.flatMap((page) => page(plan))];
  return {
    blocks,
    text: renderText(blocks),
    markdown: renderMarkdown(blocks),
    html: renderHtml(blocks, plan.about.title),
  };
}

function breachesOf(plan: Plan, document: string): string[] {
  const found: string[] = [];
  notFinite(plan, 'plan', found);
  const { blocks, text, markdown: marked, html } = reportsOf(plan);
  for (const [name, report] of Object.entries({ text, marked, html })) {
    const odd = UNPRINTABLE.exec(report);
    if (odd) found.push(`${name}: character ${odd[0].charCodeAt(0).toString(16)}`);
    // what a text of the survey says, the report repeats
    for (const [word] of report.matchAll(/\bNaN\b|\bundefined\b|\[object |Infinity/g))
      if (!document.includes(word)) found.push(`${name}: says ${word}`);
  }
  found.push(...strangers(html), ...strangeMarks(marked, blocks.filter((b) => b.kind === 'heading').length));
  for (const block of blocks)
    if (block.kind === 'figure' && XMLValidator.validate(block.svg) !== true) found.push('SVG: not well-formed');
  return found;
}

const forbidden = (node: unknown, depth = 0): boolean =>
  typeof node === 'object' &&
  node !== null &&
  depth < 60 &&
  (['__proto__', 'constructor', 'prototype'].some((k) => Object.hasOwn(node, k)) ||
    Object.values(node).some((inner) => forbidden(inner, depth + 1)));

const prototypes = [
  Object.prototype,
  Array.prototype,
  Function.prototype,
  String.prototype,
  Number.prototype,
  Map.prototype,
];
const surface = (): string => prototypes.map((p) => Object.getOwnPropertyNames(p).length).join(' ');

/** What the library may throw for a survey, beside a plan: what is unknown by name, such as a format, is told on reading. */
const typed: Readonly<Record<string, readonly string[]>> = {
  reading: ['invalid-input', 'not-covered', 'unknown-definition'],
  planning: ['invalid-input', 'not-covered'],
};

/**
 * Runs a survey document through reading, planning and the three reports, and says what breaks its promises.
 * @param document a survey document, or what pretends to be one
 * @param options whether permitted lengths are worked out too, and whether everything is done twice and compared
 */
export function runCase(document: Json, options: { readonly lengths: boolean; readonly twice: boolean }): Outcome {
  const breaches: string[] = [];
  const before = JSON.stringify(document);
  const face = surface();
  let ended = 'planned';
  let stage = 'reading';
  try {
    const survey = readSurvey(document);
    if (forbidden(document)) breaches.push('a key that reaches a prototype was read');
    stage = 'planning';
    const plan = planInBritain(survey, { lengths: options.lengths });
    stage = 'reporting';
    ended = `planned: ${plan.options[0]?.overall.verdict ?? 'no option'}`;
    breaches.push(...breachesOf(plan, before));
    if (options.twice) {
      const again = planInBritain(readSurvey(JSON.parse(before)), { lengths: options.lengths });
      if (JSON.stringify(again) !== JSON.stringify(plan)) breaches.push('another plan the second time');
      const [first, second] = [reportsOf(plan), reportsOf(again)];
      for (const form of ['text', 'markdown', 'html'] as const)
        if (first[form] !== second[form]) breaches.push(`${form}: other bytes the second time`);
    }
  } catch (error) {
    const code = error instanceof CalculationError ? error.code : undefined;
    ended = `refused: ${code ?? 'not a typed error'}`;
    if (code === undefined || !typed[stage]?.includes(code))
      breaches.push(
        `${stage}: ${error instanceof Error ? (error.stack ?? error.message).split('\n').slice(0, 6).join(' | ') : String(error)}`,
      );
    if (error instanceof CalculationError && code === 'invalid-input') {
      const { problems } = error.detail as { problems: readonly { path: readonly unknown[]; message: string }[] };
      if (problems.length === 0) breaches.push('no problem is named');
      if (!problems.every((p) => Array.isArray(p.path) && p.message.length > 0))
        breaches.push('a problem without path or words');
    }
    if (stage === 'planning') ended += ', by the planner';
  }
  if (JSON.stringify(document) !== before) breaches.push('the document was changed');
  if (surface() !== face) breaches.push('a prototype was changed');
  return { ended, breaches };
}
