/**
 * The style of a report, all of it under one class: it may stand inside another page. Texts of the survey never reach it.
 * Ink on paper and on every shade keeps a contrast of 7 to 1 or more, in light and dark.
 */
export const REPORT_STYLE = `
.ow-report { --ink: #1b1b1b; --paper: #fff; --soft: #505050; --rule: #b5b5b5; --shade: #f1f1f1; color-scheme: light dark; font: 16px/1.45 system-ui, sans-serif; color: var(--ink); background: var(--paper); max-width: 58rem; margin: 0 auto; padding: 1rem; box-sizing: border-box; overflow-wrap: break-word; }
@media (prefers-color-scheme: dark) { .ow-report { --ink: #e8e8e8; --paper: #161616; --soft: #b4b4b4; --rule: #5a5a5a; --shade: #242424; } }
.ow-report h1, .ow-report h2, .ow-report h3, .ow-report h4 { line-height: 1.2; margin: 1.6rem 0 .5rem; }
.ow-report h1 { font-size: 1.45rem; margin-top: 0; } .ow-report h2 { font-size: 1.2rem; border-bottom: 1px solid var(--rule); padding-bottom: .2rem; } .ow-report h3, .ow-report h4 { font-size: 1.05rem; }
.ow-report p, .ow-report ul, .ow-report ol { margin: .5rem 0; } .ow-report ul { padding-left: 1.2rem; } .ow-report ol { padding-left: 1.7rem; } .ow-report li { margin: .25rem 0; }
.ow-report .answer { background: var(--ink); color: var(--paper); padding: .7rem 1rem .8rem; margin: 1rem 0; border: 3px solid var(--ink); }
.ow-report .answer strong { display: block; font-size: 2.1rem; line-height: 1.15; letter-spacing: .01em; } .ow-report .answer-fail, .ow-report .answer-not-determined { background: var(--paper); color: var(--ink); border-width: 6px; } .ow-report .answer-not-determined { border-style: dashed; }
.ow-report table { border-collapse: collapse; width: 100%; margin: .6rem 0 1rem; font-variant-numeric: tabular-nums; font-size: .94rem; }
.ow-report caption { text-align: left; color: var(--soft); padding-bottom: .3rem; }
.ow-report th, .ow-report td { text-align: left; vertical-align: top; padding: .28rem .6rem .28rem 0; border-bottom: 1px solid var(--rule); }
.ow-report th { font-weight: 600; } .ow-report .n { text-align: right; } .ow-report td.n { white-space: nowrap; } .ow-report .l { display: none; }
.ow-report .b { border: 1.5px solid var(--ink); min-width: 4.2rem; height: 1.9rem; padding-left: .4rem; }
.ow-report .v { font-weight: 700; white-space: nowrap; } .ow-report .v-fail { text-decoration: underline; text-decoration-thickness: 2px; } .ow-report .v-not-determined { font-style: italic; }
.ow-report .caution { border-left: 4px solid var(--ink); background: var(--shade); padding: .5rem .8rem; margin: .7rem 0; }
.ow-report nav { columns: 2; margin: .6rem 0; } .ow-report nav p { margin: .15rem 0; } .ow-report nav a { color: inherit; }
.ow-report pre { background: var(--shade); padding: .6rem .8rem; white-space: pre-wrap; font-size: 13px; }
.ow-report figure { margin: 1rem 0; } .ow-report figure svg { width: 100%; max-width: 30rem; height: auto; } .ow-report figcaption { color: var(--soft); font-size: .9rem; }
.ow-report .dense { font-size: .8rem; } .ow-report .dense th, .ow-report .dense td { padding: .2rem .3rem .2rem 0; } .ow-report .dense .b { min-width: 2.2rem; } .ow-report .dense .b, .ow-report .dense .b + * { padding-left: .1rem; }
@media (min-width: 60rem) { .ow-report .dense .b, .ow-report .dense .b + * { padding-left: .3rem; } }
.ow-report sub { font-size: .75em; line-height: 0; } .ow-report .dense sub { font-size: inherit; vertical-align: -.2em; }
@media screen and (max-width: 52rem) { .ow-report .dense .b { min-width: 1.4rem; } }
@media screen and (max-width: 40rem) {
.ow-report .answer strong { font-size: 1.7rem; } .ow-report nav { columns: 1; }
.ow-report .wide thead { display: none; } .ow-report .wide, .ow-report .wide tbody, .ow-report .wide tr, .ow-report .wide caption { display: block; } .ow-report .wide td { display: inline-block; }
.ow-report .wide tr { border-bottom: 1px solid var(--rule); padding: .4rem 0; } .ow-report .wide td { border: 0; padding: .1rem 1rem .1rem 0; text-align: left; } .ow-report .wide .b { border: 1.5px solid var(--ink); padding: .2rem .4rem; min-width: 8rem; }
.ow-report .wide .l { display: inline; color: var(--soft); } .ow-report .wide .e { display: none; }
}
@media print {
.ow-report { --ink: #000; --paper: #fff; --soft: #444; --rule: #999; --shade: #f1f1f1; max-width: none; padding: 0; font-size: 9pt; line-height: 1.3; } .ow-report table, .ow-report figcaption { font-size: 8.5pt; } .ow-report thead { break-after: avoid; }
.ow-report .answer { background: none; color: #000; } .ow-report .answer strong { font-size: 17pt; }
.ow-report table { margin: .3rem 0 .5rem; } .ow-report .b { height: 6mm; } .ow-report th.b { height: auto; } .ow-report .dense { font-size: 7pt; } .ow-report .dense .b { min-width: 10mm; } .ow-report .dense td.b { height: 4.5mm; } .ow-report .dense th, .ow-report .dense td { padding: .05rem .2rem .05rem 0; } .ow-report .dense td { white-space: nowrap; } .ow-report .dense .b, .ow-report .dense .b + * { padding-left: .2rem; }
.ow-report h1, .ow-report h2, .ow-report h3, .ow-report h4, .ow-report caption { break-after: avoid; } .ow-report tr, .ow-report figure, .ow-report .caution, .ow-report .answer { break-inside: avoid; } .ow-report h1 { font-size: 13pt; } .ow-report h2 { font-size: 11pt; margin: .7rem 0 .3rem; } .ow-report p, .ow-report ul, .ow-report ol { margin: .3rem 0; } .ow-report li { margin: .1rem 0; } .ow-report .answer { padding: .35rem .7rem; margin: .5rem 0; } .ow-report .caution { padding: .3rem .6rem; margin: .4rem 0; } .ow-report th, .ow-report td { padding: .15rem .5rem .15rem 0; } .ow-report figure { display: inline-block; width: 48%; vertical-align: top; margin: .3rem 0; } .ow-report figure svg { max-width: 82mm; }
}
`;

/** A text as a string of a style sheet, every character of it escaped. */
const styleString = (text: string): string =>
  `"${[...text].map((c) => `\\${(c.codePointAt(0) ?? 32).toString(16)} `).join('')}"`;

/** What every printed sheet of paper has: margins, a running reference, and its number. */
export const pageStyle = (running: string): string => `
body { margin: 0; } @media screen { html { background: #fff; } } @media screen and (prefers-color-scheme: dark) { html { background: #161616; } }
@page { size: A4; margin: 16mm 15mm 18mm; @bottom-left { content: ${styleString(running)}; font: 8pt system-ui, sans-serif; } @bottom-right { content: counter(page) " / " counter(pages); font: 8pt system-ui, sans-serif; } }
`;
