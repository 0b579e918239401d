/**
 * The check while working, in folders: `npm run check:quick -- site report`. Without names it takes the folders of what was
 * changed since the last commit. Format, layers, the tests of those folders and, with what is kept of the last time, types.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const git = (...args) => execFileSync('git', args, { encoding: 'utf8' }).split('\n').filter(Boolean);
const changed = () =>
  [...git('diff', '--name-only', 'HEAD'), ...git('ls-files', '--others', '--exclude-standard')].flatMap((file) => {
    const [root, folder, ...rest] = file.split('/');
    return (root === 'src' || root === 'tests') && rest.length > 0 ? [folder] : [];
  });
const named = process.argv.slice(2);
const folders = [...new Set(named.length > 0 ? named : changed())].filter((f) => existsSync(`tests/${f}`));
const steps = [
  ['lint'],
  ['check:layers'],
  ...(folders.length > 0 ? [['test:quick', '--', ...folders.map((f) => `tests/${f}/`)]] : []),
  ['typecheck'],
];
for (const step of steps) {
  console.log(`== npm run ${step.join(' ')}`);
  const { status } = spawnSync('npm', ['run', '--silent', ...step], {
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0) process.exit(status ?? 1);
}
