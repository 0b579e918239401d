/** The package as a user installs it: the packed tarball, unpacked into the `node_modules` of a project of its own. */
import { execFileSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, type Metafile } from 'esbuild';
import pkg from '../../package.json' with { type: 'json' };

/** A project in a temporary folder that has the package installed. */
export interface Project {
  readonly dir: string;
  /** Bytes of the packed package. */
  readonly size: number;
  /** Write a file of the project. */
  write(name: string, text: string): string;
  /** Run a program in the project; gives what it prints, and throws with it when it fails. */
  run(program: string, ...args: string[]): string;
  remove(): void;
}

/**
 * Pack the built package and install it. Its dependencies are linked to those of this checkout, so no network is used.
 * @param change edits the installed `package.json`
 */
export function install(change?: (manifest: Record<string, unknown>) => void): Project {
  if (!existsSync('dist/index.js')) throw new Error('dist is missing: run `npm run build` first');
  const dir = mkdtempSync(join(tmpdir(), 'ohmwright-'));
  execFileSync('npm', ['pack', '--silent', '--ignore-scripts', '--pack-destination', dir], { stdio: 'pipe' });
  const tarball = readdirSync(dir).find((f) => f.endsWith('.tgz')) ?? '';
  const { size } = statSync(join(dir, tarball));
  const home = join(dir, 'node_modules', 'ohmwright');
  mkdirSync(home, { recursive: true });
  execFileSync('tar', ['xzf', join(dir, tarball), '-C', home, '--strip-components=1']);
  for (const name of [...Object.keys(pkg.dependencies), ...Object.keys(pkg.peerDependencies)])
    symlinkSync(join(process.cwd(), 'node_modules', name), join(dir, 'node_modules', name), 'junction');
  if (change) {
    const file = join(home, 'package.json');
    const manifest = JSON.parse(readFileSync(file, 'utf8'));
    change(manifest);
    writeFileSync(file, JSON.stringify(manifest));
  }
  writeFileSync(join(dir, 'package.json'), '{ "private": true, "type": "module" }');
  return {
    dir,
    size,
    write(name, text) {
      writeFileSync(join(dir, name), text);
      return join(dir, name);
    },
    run(program, ...args) {
      try {
        return execFileSync(program, args, { cwd: dir, encoding: 'utf8', stdio: 'pipe' });
      } catch (error) {
        const { stdout, stderr } = error as { stdout: string; stderr: string };
        throw new Error(`${program} ${args.join(' ')}\n${stdout}${stderr}`);
      }
    },
    remove: () => rmSync(dir, { recursive: true, force: true }),
  };
}

/** What a bundler makes of a few lines in a project, for the browser: text and the files that went in. */
export async function bundle(
  project: Project,
  contents: string,
  minify = true,
): Promise<{ text: string; inputs: readonly string[]; metafile: Metafile }> {
  const { outputFiles, metafile } = await build({
    stdin: { contents, resolveDir: project.dir },
    absWorkingDir: project.dir,
    bundle: true,
    write: false,
    format: 'esm',
    platform: 'browser',
    minify,
    metafile: true,
    logLevel: 'silent',
  });
  const output = Object.values(metafile.outputs)[0];
  const used = Object.entries(output?.inputs ?? {}).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
  return { text: outputFiles[0]?.text ?? '', inputs: used.map(([path]) => path), metafile };
}
