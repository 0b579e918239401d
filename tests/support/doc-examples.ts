/**
 * Turns the fenced `ts` blocks of the documents and of the doc comments into tests, one file for each file that has
 * some. Within a block, the line that ends an expression may say what it gives:
 *
 *     expr; // => value      equal (numbers within one part in 10^9)
 *     expr; // ≈ 1.087       equal when rounded to the decimals shown
 *     expr; // throws code   throws an error whose `code` (or else `name`) is this
 *
 * `const x = expr; // => value` works too. `./name.json` is the invented survey of that name. A block fenced as `ts no-run` is shown, never run.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';

const OUT = 'tests/generated/';
const FENCE = /^([ \t]*(?:\* )?)```ts\n([\s\S]*?)^\1```/gm;
const IMPORT = /^import [\s\S]*?;[ \t]*\n/gm;
const NAMED = /^import (type )?\{([\s\S]*?)\} from ('[^']+');/;
const SURVEY = /'\.\/([\w-]+\.json)'/;
const CLAIM = /^(.*?);?[ \t]*\/\/ (=>|≈|throws) (.+)$/;
const BINDING = /^(?:const|let) (\w+)[^=]*=/;

/** Files under `dir` that end in `ext`, generated documents left out. */
const list = (root: string, dir: string, ext: string): string[] =>
  existsSync(root + dir)
    ? readdirSync(root + dir, { recursive: true, encoding: 'utf8' })
        .filter((file) => file.endsWith(ext) && !/^(api|handbook)\//.test(file))
        .map((file) => `${dir}/${file}`)
    : [];

/** One statement with its claim, as test code. */
function claim(statement: string, kind: string, value: string): string {
  if (kind === 'throws') return `await claimed.throws(async () => { ${statement}; }, ${JSON.stringify(value.trim())});`;
  const call = kind === '≈' ? 'claimed.near' : 'claimed.equal';
  const expected = kind === '≈' ? JSON.stringify(value.trim()) : value;
  const name = BINDING.exec(statement)?.[1];
  return name ? `${statement}; ${call}(${name}, ${expected});` : `${call}(${statement.trimStart()}, ${expected});`;
}

/** The statements of a block with their claims made into checks. */
function body(code: string): string {
  const done: string[] = [];
  let open: string[] = []; // lines of the statement that has not ended yet
  for (const line of code.split('\n')) {
    const found = CLAIM.exec(line);
    if (found) {
      const [, last = '', kind = '', value = ''] = found;
      done.push(claim([...open, last].join('\n'), kind, value));
      open = [];
    } else {
      open.push(line);
      if (/^\s*$|[;{}]\s*$|^\s*\/\//.test(line)) {
        done.push(...open);
        open = [];
      }
    }
  }
  return [...done, ...open].join('\n');
}

/** The test file for one document or source file, or nothing when it has no block to run. */
export function testFile(file: string, text: string): string | undefined {
  const named = new Map<string, Set<string>>();
  const imports = new Set<string>();
  const tests: string[] = [];
  for (const match of text.matchAll(FENCE)) {
    const [, prefix = '', block = ''] = match;
    const code = block
      .split('\n')
      .map((line) => (line.startsWith(prefix) ? line.slice(prefix.length) : ''))
      .join('\n');
    for (const [statement] of code.matchAll(IMPORT)) {
      const [, type = '', names, from = ''] = NAMED.exec(statement) ?? [];
      if (names === undefined) imports.add(statement.trim().replace(SURVEY, `'../../docs/examples/surveys/$1'`));
      else {
        const known = named.get(from) ?? named.set(from, new Set()).get(from);
        for (const name of names.split(',').map((n) => n.trim())) if (name) known?.add(type + name);
      }
    }
    const line = text.slice(0, match.index).split('\n').length;
    tests.push(`test('${file}:${line}', async () => {\n${body(code.replace(IMPORT, ''))}\n});\n`);
  }
  if (tests.length === 0) return undefined;
  for (const [from, names] of named) imports.add(`import { ${[...names].join(', ')} } from ${from};`);
  return `import { test } from 'vitest';
import * as claimed from '../support/claimed.js';
${[...imports].join('\n')}
void claimed;
${tests.join('')}`;
}

/** Bring `tests/generated/` up to date. Only what changed is touched, so that two runs may share a checkout. */
export function writeDocExamples(root: string): void {
  mkdirSync(root + OUT, { recursive: true });
  const stale = new Set(readdirSync(root + OUT));
  for (const file of ['README.md', ...list(root, 'docs', '.md'), ...list(root, 'src', '.ts')]) {
    if (!existsSync(root + file)) continue;
    const test = testFile(file, readFileSync(root + file, 'utf8'));
    if (test === undefined) continue;
    const name = `${file.replace(/\W/g, '_')}.test.ts`;
    stale.delete(name);
    const path = root + OUT + name;
    if (!existsSync(path) || readFileSync(path, 'utf8') !== test) writeFileSync(path, test);
  }
  for (const name of stale) rmSync(root + OUT + name, { force: true });
}
