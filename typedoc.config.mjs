import { readFileSync } from 'node:fs';

const entries = JSON.parse(readFileSync(new URL('./entries.config.json', import.meta.url), 'utf8'));

export default {
  entryPoints: Object.values(entries).map((entry) => entry.source),
  out: 'docs/api',
  name: 'ohmwright',
  readme: 'README.md',
  projectDocuments: ['docs/first-steps-*.md'],
  includeVersion: true,
  navigation: { includeGroups: true, includeCategories: false, compactFolders: false },
  sort: ['source-order'],
  sortEntryPoints: false,
  disableSources: true,
  excludeInternal: true,
  excludeExternals: true,
  treatWarningsAsErrors: true,
  intentionallyNotExported: ['TableDefinition.axes'], // seen where a type is read off a table's axes
  requiredToBeDocumented: ['Function', 'Class', 'Interface', 'TypeAlias', 'Variable', 'Method', 'Accessor'],
  validation: { notExported: true, invalidLink: true, notDocumented: true },
};
