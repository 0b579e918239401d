/** What is neutral names no nation: neither a country, nor a publication of one, nor a term that only one uses. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../src/', import.meta.url));
/** Folders that name no nation. */
const neutral = ['calculation', 'charging', 'demand', 'design', 'report', 'site'];

const words: readonly RegExp[] = [
  /\b(Great Britain|Britain|British|United Kingdom|UK|England|Scotland|Scottish|Wales|Welsh|Ireland|Irish)\b/,
  /\b(Germany|German|France|French|Austrian?|Swiss|Switzerland|Nordic|Europe|European|American?|United States)\b/,
  /'(GB|UK|IE|DE|AT|CH|FR|US)'/,
  /\b(BS|BS EN|EN|PAS|NF C|DIN|VDE|NFPA|SI) ?\d/,
  /\b(On-Site Guide|Guidance Note|Approved Document|Code of Practice|IET|ENA|EREC|G98|G99|ER P\d|NAV|EnWG|VDE)\b/,
  /\b(bs7671|iec60364|gb-|de-network|nfc14100|MPAN|PME|DNO|Part M\b|[Mm]eter tails)/,
  // regulations and tables of a code
  /\b[3-7]\d\d\.\d{1,3}(\.\d+)*\b|\bTable [4-7]/,
];
/** The source without the examples of its doc comments, in which a caller hands in what is national. */
const neutralText = (text: string): string => text.replace(/^ *\* @example\n( *\*(?!\/).*\n)*/gm, '');
const nationalIn = (folder: string, recursive = true) =>
  readdirSync(root + folder, { recursive, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .flatMap((path) =>
      neutralText(readFileSync(`${root}${folder}/${path}`, 'utf8'))
        .split('\n')
        .filter((line) => words.some((word) => word.test(line)))
        .map((line) => `${folder}/${path}: ${line.trim()}`),
    );

test.each(neutral)('%s', (folder) => {
  expect(nationalIn(folder)).toEqual([]);
});

test('what the neutral layers know of the codes', () => {
  expect(nationalIn('codes', false)).toEqual([]);
});

test.each(['codes/iec-family', 'physics'])(
  '%s cites no code of a nation, beyond saying where a table was seen',
  (folder) => {
    const naming = readdirSync(root + folder, { recursive: true, encoding: 'utf8' })
      .filter((path) => path.endsWith('.ts'))
      .flatMap((path) =>
        readFileSync(`${root}${folder}/${path}`, 'utf8')
          .split('\n')
          .filter((line) => /\bBS 7671|\b2018\+A/.test(line) && !/^ *note: /.test(line))
          .map((line) => `${path}: ${line.trim()}`),
      );
    expect(naming).toEqual([]);
  },
);

test('the search finds what national folders name, and skips examples alone', () => {
  for (const folder of ['codes/bs7671', 'guidance/on-site-guide', 'networks/de-network', 'networks/nfc14100'])
    expect([folder, nationalIn(folder).length > 0]).toEqual([folder, true]);
  const doc = '/**\n * Says it.\n * @example\n * ```ts\n * ask(bs7671);\n * ```\n */\nconst country = 1;\n';
  expect(neutralText(doc)).toBe('/**\n * Says it.\n */\nconst country = 1;\n');
});
