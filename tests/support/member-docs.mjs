// After the build: what a member of a collection is, its unit, its range and its source, as comments in the declarations,
// where editors look for them. The declarations of collections follow from definitions, whose comments do not come along.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const { citation, termOf } = await import(pathToFileURL('dist/index.js').href);
const entries = Object.keys(JSON.parse(readFileSync('entries.config.json', 'utf8')));

/** Unit and range of a figure. */
function unitOf(name) {
  const { unit = '', least, above, most } = termOf(name) ?? {};
  const from = above === undefined ? least : `above ${above}`;
  const range =
    from === undefined ? '' : most !== undefined ? `${from} to ${most}` : above === undefined ? `${from} and up` : from;
  return [unit === '1' && range !== '' ? '' : unit, range].filter(Boolean).join(' ');
}

/** What is said of a definition in a line. */
function about(it) {
  const source = it.source ? ` ${citation(it.source)} (${it.source.provenance}).` : '';
  // keys and names of figures stand in the type beside it
  const result = it.cell ?? it.output;
  if (result) return `${it.title}: ${unitOf(result)}.${source}`;
  return `${it.title} (${it.weight ?? it.kind}).${source}`;
}

const collections = new Map();
for (const path of entries) {
  const module = await import(pathToFileURL(`dist/${path === '.' ? 'index' : path.slice(2)}.js`).href);
  for (const [name, value] of Object.entries(module)) {
    const members = typeof value === 'object' && value !== null ? Object.entries(value) : [];
    if (members.length > 0 && members.every(([, m]) => typeof m?.kind === 'string' && typeof m.title === 'string'))
      collections.set(name, new Map(members));
  }
}

for (const file of readdirSync('dist').filter((f) => f.endsWith('.d.cts'))) {
  let members;
  const lines = readFileSync(`dist/${file}`, 'utf8').split('\n');
  const commented = lines.flatMap((line) => {
    members = collections.get(/^declare const (\w+): \{$/.exec(line)?.[1]) ?? (line === '};' ? undefined : members);
    const [, quoted, plain] = /^ {4}readonly (?:"([^"]+)"|(\w+)): /.exec(line) ?? [];
    const member = members?.get(quoted ?? plain);
    return member ? [`    /** ${about(member).replaceAll('*/', '* /')} */`, line] : [line];
  });
  // one space a level: the file is read by programs
  writeFileSync(
    `dist/${file}`,
    commented.map((line) => line.replace(/^(?: {4})+/, (s) => ' '.repeat(s.length / 4))).join('\n'),
  );
}
