import { readFileSync } from 'node:fs';

const entries = JSON.parse(readFileSync(new URL('./entries.config.json', import.meta.url), 'utf8'));

export default Object.entries(entries).map(([path, { limit }]) => ({
  name: path === '.' ? 'ohmwright' : path.replace('.', 'ohmwright'),
  path: `dist/${path === '.' ? 'index' : path.slice(2)}.js`,
  import: '*',
  limit,
}));
