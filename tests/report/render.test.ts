import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { describe, expect, it } from 'vitest';
import { grid } from '../../src/report/block.js';
import type { Block } from '../../src/report/index.js';
import { renderFragment, renderHtml, renderMarkdown, renderText } from '../../src/report/index.js';
import { hostileTexts } from '../fuzz/mutate.js';

const report: readonly Block[] = [
  { kind: 'heading', level: 1, text: 'A report' },
  { kind: 'paragraph', text: 'What it is about.' },
  { kind: 'caution', text: 'Mind the step.' },
  { kind: 'verdict', verdict: 'not-determined', text: 'the cut-out is not known' },
  {
    kind: 'table',
    caption: 'Figures',
    head: ['what', 'how much'],
    rows: [
      ['a', '1.09 Ω'],
      ['b', { verdict: 'fail' }],
    ],
    numeric: [1],
  },
  { kind: 'list', items: ['one', 'two'] },
  { kind: 'lines', lines: ['  kept as it is'] },
];

const everyText = (text: string): readonly Block[] => [
  { kind: 'heading', level: 2, text },
  { kind: 'paragraph', text },
  { kind: 'caution', text },
  { kind: 'verdict', verdict: text, text },
  { kind: 'table', caption: text, head: [text, text], rows: [[text, { verdict: text }]] },
  { kind: 'list', items: [text] },
  { kind: 'lines', lines: [text] },
  { kind: 'contents', title: text },
  { kind: 'answer', verdict: 'pass', words: text, text },
  { kind: 'table', caption: text, head: [text, text, text], rows: [[text, '', text]], boxes: [1] },
];

describe('a report', () => {
  it('prints as text with aligned columns', () => {
    expect(renderText(report)).toBe(
      [
        'A report',
        '========',
        '',
        'What it is about.',
        '',
        '! Mind the step.',
        '',
        '[not determined] the cut-out is not known',
        '',
        'Figures',
        'what  how much',
        '----  --------',
        'a       1.09 Ω',
        'b         FAIL',
        '',
        '  - one',
        '  - two',
        '',
        '  kept as it is',
        '',
      ].join('\n'),
    );
  });

  it('prints as Markdown', () => {
    const text = renderMarkdown(report);
    expect(text).toContain('# A report');
    expect(text).toContain('| what | how much |\n| --- | ---: |\n| a | 1.09 Ω |\n| b | FAIL |');
    expect(text).toContain('> **Caution.** Mind the step.');
  });

  it('prints as one self-contained page', () => {
    const page = renderHtml(report, 'A <report>');
    expect(page).toContain('<title>A &#60;report&#62;</title>');
    expect(page).toContain('<td class="n">1.09 Ω</td>');
    expect(page).not.toMatch(/<(script|link|img|iframe)|src=|href=(?!"#)|url\(http/);
  });

  it('says the answer loudest, gives the ways to its chapters and leaves room where a person writes', () => {
    const blocks: readonly Block[] = [
      { kind: 'answer', verdict: 'fail', words: 'Not so', text: 'It fails.' },
      { kind: 'contents', title: 'Contents' },
      { kind: 'heading', level: 2, text: 'First' },
      { kind: 'table', caption: '', head: ['what', 'limit', 'read'], rows: [['Z_s', '1 Ω', '']], boxes: [2] },
      { kind: 'heading', level: 2, text: 'Second' },
    ];
    const text = renderText(blocks);
    expect(text).toMatch(/^#+\n## {2}NOT SO\n#+\nIt fails\.\n\nContents\n {2}First\n {2}Second\n/);
    expect(text).toMatch(/Z_s +1 Ω +\[ +\]/);
    const page = renderHtml(blocks, 'a');
    expect(page).toContain('<a href="#chapter-2">Second</a>');
    expect(page).toContain('<h2 id="chapter-2">Second</h2>');
    // a narrow screen shows rows one by one: each cell says what it is
    expect(page).toContain('<td class="b"><span class="l">read: </span></td>');
    expect(renderMarkdown(blocks)).toContain('**NOT SO**\n\nIt fails.');
  });

  it('as a fragment brings its style, which touches nothing outside it', () => {
    const fragment = renderFragment(report);
    expect(fragment.startsWith('<style>')).toBe(true);
    const style = fragment.slice(7, fragment.indexOf('</style>'));
    const selectors = style
      .replace(/@media[^{]*\{/g, '')
      .match(/[^{}]+(?=\{)/g)
      ?.flatMap((s) => s.split(','))
      .map((s) => s.trim());
    expect(selectors?.length).toBeGreaterThan(30);
    for (const s of selectors ?? []) expect(s).toMatch(/^\.ow-report/);
    expect(fragment).not.toMatch(/<(html|body|head)|@page/);
  });

  it('a running line reaches the style as escapes only', () => {
    const page = renderHtml(report, 'a', '"} body{display:none} </style><script>');
    const style = page.slice(page.indexOf('<style>'), page.indexOf('</head>'));
    expect(style).not.toMatch(/display:none|<script/);
    expect(style.match(/<\/style>/g)).toHaveLength(1);
    expect(style).toContain('@bottom-left { content: "\\22 \\7d \\20 \\62 ');
  });

  it('keeps within 100 columns where words allow it', () => {
    const long = Array.from({ length: 60 }, (_, i) => `word${i}`).join(' ');
    const text = renderText([...everyText(long).slice(1, 6)]);
    for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(101);
  });

  it('never lets a text become markup', () => {
    const nasty = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.constantFrom(
        '<script>alert(1)</script>',
        '"><img src=x onerror=alert(1)>',
        '</td></table>',
        '&lt;b&gt;',
        "' onload='x",
        '](javascript:alert(1))',
        '<!-- -->',
        '\u0000<b>',
        '```\n<b>',
        '| a | b |\n| - | - |',
      ),
    );
    const tags = (page: string) => page.match(/<[a-z!/][^>]*>/gi) ?? [];
    const plain = tags(renderHtml(everyText('plain'), 'plain'));
    fc.assert(
      fc.property(nasty, (text) => {
        // the same tags whatever the text, but for the class that a verdict names
        const found = tags(renderHtml(everyText(`x${text}`), text))
          .map((t) => t.replace(/class="v v-[^"]*"/, 'class="v v-plain"'))
          .filter((t) => !/^<\/?sub>$/.test(t)); // x_0 is a symbol with its index
        expect(found).toEqual(plain);
        expect(renderMarkdown(everyText(`x${text}`).slice(0, 6))).not.toMatch(/<[a-z!/]/i);
      }),
      { numRuns: 300 },
    );
  });

  it('never lets a text become Markdown of its own, wherever it stands', () => {
    const parser = new MarkdownIt({ html: true });
    const shape = (text: string) =>
      parser.parse(renderMarkdown(everyText(text)), {}).flatMap((t) => [
        `${t.type} ${t.tag}`,
        // a text inside is text, whatever it is
        ...(t.children ?? []).map((c) => c.type).filter((type) => !/^text|softbreak/.test(type)),
      ]);
    const plain = shape('plain');
    fc.assert(
      fc.property(fc.oneof(fc.constantFrom(...hostileTexts), fc.string({ unit: 'binary' })), (text) => {
        // an empty heading or paragraph is no markup either; it only has nothing to compare
        if (/[^\p{C}\p{Z}]/u.test(text)) expect(shape(text)).toEqual(plain);
      }),
      { numRuns: 500 },
    );
  });

  it('carries no character that commands a terminal, turns the writing round or is no character', () => {
    const blocks = everyText('a\u001b[31m\u202eb\u2066c\ud800d\ufffee\u2028f\u0007');
    for (const report of [renderText(blocks), renderMarkdown(blocks), renderHtml(blocks, 'a\u202eb')])
      expect(report).not.toMatch(/[^\P{C}\n]|[\u2028\u2029]/u);
  });
});

it('symbols are set with their index lowered in HTML, and what only looks like one is left alone', () => {
  const html = (text: string) => renderHtml([{ kind: 'paragraph', text }], 'x').match(/<p>(.*)<\/p>/)?.[1];
  expect(html('R_1+R_2, Z_s, C_min, I_Δn')).toBe(
    'R<sub>1</sub>+R<sub>2</sub>, Z<sub>s</sub>, C<sub>min</sub>, I<sub>Δn</sub>',
  );
  for (const text of ['plan_b', 'a_b_c', 'x_wide_y', 'a_thing']) expect(html(text)).toBe(text);
});

it('a column in which nothing stands is left out, but for one that a person fills in', () => {
  const rows = [
    ['a', '', '1', ''],
    ['b', '', '2', ''],
  ];
  expect(grid('', ['name', 'depth', 'figure', 'read'], rows, [2], [3])).toEqual([
    {
      kind: 'table',
      caption: '',
      head: ['name', 'figure', 'read'],
      rows: [
        ['a', '1', ''],
        ['b', '2', ''],
      ],
      numeric: [1],
      boxes: [2],
    },
  ]);
});
