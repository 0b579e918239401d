/** The layer rules catch what they are there for, and nothing else: one made-up source tree, with each file's verdict. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, test } from 'vitest';

/** Importing file, what it imports, and the rule that forbids it (none: allowed). */
const imports: readonly (readonly [from: string, to: string, rule?: string])[] = [
  ['src/physics/a.ts', 'src/design/b.ts', 'physics-imports-downwards'],
  ['src/demand/a.ts', 'src/charging/b.ts', 'demand-imports-downwards'],
  ['src/charging/a.ts', 'src/demand/b.ts', 'charging-imports-downwards'],
  ['src/site/a.ts', 'src/io/b.ts', 'site-imports-downwards'],
  ['src/report/a.ts', 'src/verify/b.ts', 'report-imports-downwards'],
  ['src/io/a.ts', 'src/verify/b.ts', 'io-stays-beside'],
  ['src/io/b.ts', 'src/report/b.ts', 'io-stays-beside'],
  ['src/verify/a.ts', 'src/report/b.ts', 'verify-stays-beside'],
  ['src/testing/a.ts', 'src/verify/b.ts', 'testing-stays-beside'],
  ['src/codes/bs7671/a.ts', 'src/codes/iec60364/b.ts', 'codes-keep-apart'],
  ['src/codes/iec60364/a.ts', 'src/codes/bs7671/b.ts', 'codes-keep-apart'],
  ['src/codes/iec-family/a.ts', 'src/codes/bs7671/b.ts', 'what-codes-share-knows-no-code'],
  ['src/products/bs88/a.ts', 'src/codes/iec-family/b.ts', 'products-imports-downwards'],
  ['src/demand/b.ts', 'src/codes/bs7671/b.ts', 'demand-imports-downwards'],
  ['src/demand/c.ts', 'src/guidance/on-site-guide/b.ts', 'demand-imports-downwards'],
  ['src/demand/d.ts', 'src/networks/gb-network/b.ts', 'demand-imports-downwards'],
  ['src/charging/b.ts', 'src/codes/iec-family/b.ts', 'charging-imports-downwards'],
  ['src/charging/c.ts', 'src/networks/gb-network/b.ts', 'charging-imports-downwards'],
  ['src/demand/e.ts', 'src/products/bs88/b.ts', 'engines-know-no-national-product'],
  ['src/charging/d.ts', 'src/products/en60898/b.ts', 'engines-know-no-national-product'],
  ['src/guidance/on-site-guide/a.ts', 'src/networks/gb-network/b.ts', 'guidance-imports-downwards'],
  ['src/design/b.ts', 'src/codes/iec-family/b.ts', 'neutral-layers-know-the-interface-of-codes-only'],
  ['src/site/c.ts', 'src/codes/bs7671/b.ts', 'neutral-layers-know-the-interface-of-codes-only'],
  ['src/site/d.ts', 'src/networks/gb-network/b.ts', 'neutral-layers-know-the-interface-of-codes-only'],
  ['src/report/c.ts', 'src/products/bs88/b.ts', 'neutral-layers-know-the-interface-of-codes-only'],
  ['src/report/d.ts', 'src/guidance/on-site-guide/b.ts', 'neutral-layers-know-the-interface-of-codes-only'],
  ['src/io/e.ts', 'src/great-britain.ts', 'nobody-imports-an-entry'],
  ['src/index.ts', 'src/codes/bs7671/b.ts', 'root-entry-is-small'],
  ['src/core/a.ts', 'src/helpers/b.ts', 'no-unknown-folder'],
  ['src/core/b.ts', 'zod', 'zod-only-in-io'],
  ['src/physics/b.ts', 'mathjs', 'mathjs-only-in-verify'],
  ['src/core/c.ts', 'vite', 'no-other-packages'],
  ['src/core/d.ts', 'node:fs', 'no-node-built-ins'],
  ['src/units/a.ts', 'src/units/b.ts', 'no-cycles'],
  ['src/units/b.ts', 'src/units/a.ts'], // one report a cycle
  ['src/core/e.ts', 'src/units/c.ts'],
  ['src/design/a.ts', 'src/charging/b.ts'],
  ['src/products/bs88/c.ts', 'src/core/e.ts'],
  ['src/demand/f.ts', 'src/products/iec61439/b.ts'],
  ['src/charging/e.ts', 'src/products/iec61851/b.ts'],
  ['src/guidance/on-site-guide/c.ts', 'src/demand/b.ts'],
  ['src/networks/gb-network/c.ts', 'src/charging/b.ts'],
  ['src/codes/bs7671/d.ts', 'src/guidance/on-site-guide/b.ts'],
  ['src/products/bs5467/a.ts', 'src/products/iec60228/b.ts'],
  ['src/codes/iec-family/b.ts', 'src/products/bs88/b.ts'],
  ['src/codes/bs7671/c.ts', 'src/codes/iec-family/b.ts'],
  ['src/site/b.ts', 'src/codes/wiring-code.ts'],
  ['src/great-britain.ts', 'src/codes/bs7671/b.ts'],
  ['src/io/c.ts', 'zod'],
  ['src/io/d.ts', 'src/site/b.ts'],
  ['src/verify/b.ts', 'mathjs'],
  ['src/testing/b.ts', 'fast-check'],
];

const specifier = (from: string, to: string): string =>
  to.startsWith('src/')
    ? `${'../'.repeat(from.split('/').length - 2) || './'}${to.slice(4).replace('.ts', '.js')}`
    : to;

test('each forbidden import is reported by its rule, and no other', () => {
  const root = process.cwd();
  const dir = mkdtempSync(join(tmpdir(), 'ohmwright-layers-'));
  const write = (name: string, text: string) => {
    mkdirSync(dirname(join(dir, name)), { recursive: true });
    writeFileSync(join(dir, name), text);
  };
  try {
    for (const [, to] of imports) if (to.startsWith('src/')) write(to, 'export type T = 1;\n');
    for (const [from, to] of imports) {
      const what = to.startsWith('src/') ? 'type { T as U }' : '* as U'; // types count
      write(from, `import ${what} from '${specifier(from, to)}';\nexport { U };\nexport type T = 1;\n`);
    }
    write('tsconfig.json', '{ "compilerOptions": { "module": "NodeNext" } }');
    symlinkSync(join(root, 'node_modules'), join(dir, 'node_modules'), 'junction');
    write(
      'package.json',
      JSON.stringify({ type: 'module', dependencies: { mathjs: '*', zod: '*', 'fast-check': '*', vite: '*' } }),
    );
    const cli = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
    const args = [cli, 'src', '--output-type', 'json', '--config', join(root, '.dependency-cruiser.mjs')];
    const out = execFileSync(process.execPath, args, { cwd: dir, encoding: 'utf8', maxBuffer: 1 << 26 });
    const { violations } = JSON.parse(out).summary as { violations: { from: string; rule: { name: string } }[] };
    expect(violations.map((v) => `${v.from}: ${v.rule.name}`).sort()).toEqual(
      imports.flatMap(([from, , rule]) => (rule ? [`${from}: ${rule}`] : [])).sort(),
    );
  } finally {
    rmSync(dir, { recursive: true, force: true });
  }
}, 60_000);
