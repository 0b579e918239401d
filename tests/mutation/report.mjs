/** Writes docs/mutation.md from the recorded results and the reasons: `node tests/mutation/report.mjs`. */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const kept = 'tests/mutation/results.json';

export function writeReport() {
  const all = JSON.parse(readFileSync(kept, 'utf8'));
  // why a change makes no difference, or none that matters: by file and change, as a person has found
  const explained = JSON.parse(readFileSync('tests/mutation/explained.json', 'utf8'));
  const why = ({ at, change }) => explained[at.replace(/:\d+$/, '')]?.[change];
  const rows = Object.entries(all)
    .sort()
    .map(([name, r]) => {
      const score = r.tried > 0 ? ((100 * r.noticed) / r.tried).toFixed(1) : '';
      const told = r.unnoticed.filter(why).length;
      return `| ${name} | ${r.date} | ${r.share} | ${r.seed} | ${r.tests} | ${r.tried} | ${r.noticed} | ${r.survived} | ${r.notReached} | ${score} | ${told} |`;
    });
  writeFileSync(
    'docs/mutation.md',
    `# Mutation testing

The code was changed in small ways, one at a time, and it was counted whether a test notices. A share of the changes was
drawn by a seed. Not counted: words for people, tables (see [digit-slip.md](digit-slip.md)), and what runs once when a
module loads. Where the tests of some folders alone were asked, the score is a lower bound. Written by
\`npm run mutation -- DATE FOLDER SHARE SEED TESTS\`. Aim: 85 %. The last column counts the changes that nobody noticed and
that make no difference, or none that matters, or that a later test notices, as is said below. They lower the score like
any other.

| folder | date | share | seed | tests asked | tried | noticed | survived | not reached | score, % | explained |
| ------ | ---- | ----: | ---: | ----------- | ----: | ------: | -------: | ----------: | -------: | --------: |
${rows.join('\n')}

## What no test noticed

${Object.values(all)
  .flatMap((r) => r.unnoticed)
  .sort((a, b) => (a.at + a.change < b.at + b.change ? -1 : 1))
  .map((u) => `- \`${u.at}, ${u.change.replaceAll('`', "'")}\`${why(u) ? `: ${why(u)}` : ''}`)
  .join('\n')}
`,
  );
  execFileSync('npx', ['biome', 'check', '--write', kept, 'docs/mutation.md'], { stdio: 'ignore' });
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) writeReport();
