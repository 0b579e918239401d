/** `docs/hazards.md` is what the hazards say of themselves. After a change: `npm run generated`. */
import { expect, test } from 'vitest';
import { chapters } from './chapters.js';
import type { Told } from './hazard.js';

const words: Readonly<Record<Told['verdict'], string>> = {
  conditional: 'pass on conditions',
  pass: 'pass',
  fail: 'fail',
  'not-determined': 'not determined: something that decides is not known',
  'not-required': 'not required',
};
const anchorOf = (title: string) =>
  title
    .toLowerCase()
    .replace(/[^a-z0-9 -]/g, '')
    .replaceAll(' ', '-');

test('the hazard book', async () => {
  const lines = [
    '# Hazards, and their sound twins',
    '',
    `${chapters.reduce((n, c) => n + c.hazards.length, 0)} ways in which people are hurt or property burns, each with what is wrong, what must not be said of it, and beside it the sound`,
    'installation that has to pass. Every one is judged anew whenever the tests run, and so is its twin: refusing everything would be',
    'as wrong as passing it. All installations are invented. Clauses are those of the edition that is named; nothing is judged by BS',
    '7671:2018+A4:2026, whose text was not available. The edition in force, local rules and licensed practice decide.',
    '',
    ...chapters.map((c) => `- [${c.title}](#${anchorOf(c.title)}) (${c.hazards.length})`),
  ];
  for (const { title, introduction, hazards } of chapters) {
    lines.push('', `## ${title}`, '', introduction);
    for (const h of hazards) {
      const told = h.unsafe.told();
      lines.push(
        '',
        `### ${h.title}`,
        '',
        h.harm,
        '',
        `- **What is built:** ${h.unsafe.what}`,
        `- **What must not be said:** ${h.mustNotSay}`,
        `- **Verdict:** ${told.refused ? `refused: ${told.refused}` : words[told.verdict]}${h.check ? `, by \`${h.check}\`` : ''}`,
        `- **Clause:** ${h.clause}`,
        `- **The sound twin, which passes:** ${h.sound.what}`,
      );
    }
  }
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot('../../docs/hazards.md');
});
