/** Words that nobody in the trade uses, private jargon and praise: in no source, no test name, no guide. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

/** What is not said, and what is said instead. */
const notSaid: readonly (readonly [words: RegExp, instead: string])[] = [
  [/\bharden(s|ed|ing)?\b|\brobust(ly|ness)?\b/i, 'say what it withstands'],
  [
    /\b(seamless|blazing|powerful|cutting[- ]edge|world[- ]class|state[- ]of[- ]the[- ]art|best[- ]in[- ]class|game[- ]chang)/i,
    'say what it does',
  ],
  [/\b(leverag(e|es|ing)|utili[sz]e[sd]?|streamlin(e|ed|es)|effortless(ly)?)\b/i, 'use'],
  [
    /\b(open copper|behind open|touch voltage device|equal device|TT island|lost PEN|PEN conductor is lost)\b/i,
    'not yet sized; open-PEN detection; TT earthing for the charge point; open PEN',
  ],
  [
    /\b(change against the survey|candidates before it|what it takes for granted)\b/i,
    'differs from the survey; ruled out; assumes',
  ],
  [/\bto be driven\b/i, 'to be installed'],
  [/\b(aluminum|gray|meter tail wire|breaker panel|load center|ground wire|ground rod|hot wire)\b/i, 'British words'],
  [/\b(simply|just|easily|obviously|of course)\b,? (call|use|add|pass|write)\b/i, 'leave it out'],
  [/\bPEN (fault )?detector\b/i, 'open-PEN detection'],
  [/\bproblem\(s\)|\bitem\(s\)|\bfile\(s\)/i, 'no plural is glued: say the number in words'],
];

/** Where such a word stands for a reason: a former name that is still understood, or the list itself. */
const allowed: readonly RegExp[] = [
  /src\/io\/near-miss\.ts: aluminum: 'aluminium'/,
  /tests\/(report\/)?words\.test\.ts/,
];

const files = (folder: string, ending: RegExp): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => ending.test(path))
    .map((path) => `${folder}/${path}`);
const guides = readdirSync('docs').filter((f) => /^first-steps-.*\.md$/.test(f));
const texts = [
  ...files('src', /\.ts$/),
  ...files('docs/examples', /^[^/]+\.(mjs|html)$/),
  ...guides.map((f) => `docs/${f}`),
  'README.md',
  'DEVELOPERS.md',
];

test('no text of the library says what nobody says', () => {
  const found = texts.flatMap((file) =>
    readFileSync(file, 'utf8')
      .split('\n')
      .flatMap((line) =>
        notSaid.flatMap(([words, instead]) => {
          const hit = words.exec(line)?.[0];
          const where = `${file}: ${line.trim()}`;
          return hit !== undefined && !allowed.some((a) => a.test(where)) ? [`${where} (${hit}: ${instead})`] : [];
        }),
      ),
  );
  expect(found).toEqual([]);
});

test('the list finds what it is for', () => {
  const finds = (text: string) => notSaid.some(([words]) => words.test(text));
  for (const text of ['a robust check', 'a TT island', '3 problem(s)', 'copper or aluminum', 'behind open EN 60898'])
    expect([text, finds(text)]).toEqual([text, true]);
  for (const text of [
    'TT earthing for the charge point',
    '3 problems',
    'an open PEN conductor',
    'colour',
    'a bare conductor',
  ])
    expect([text, finds(text)]).toEqual([text, false]);
});
