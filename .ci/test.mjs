/**
 * The one full test: `npm test`, or `npm cit` from a bare clone. Runs every step, stops at the first that fails, and
 * ends with a line `N passed, N failed, N skipped` that counts tests (a step that fails otherwise counts as one).
 */
import { spawn } from 'node:child_process';
import { rmSync } from 'node:fs';

const steps = ['lint', 'build', 'typecheck', 'check:package', 'size', 'check:layers', 'docs', 'coverage'];
const CLOSING = /^(\d+) passed, (\d+) failed, (\d+) skipped$/;

/** Run one npm script, showing what it prints; gives its exit code and the last closing line seen. */
function run(step) {
  const child = spawn('npm', ['run', '--silent', step], {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, NO_COLOR: '1' },
    shell: process.platform === 'win32',
  });
  let closing;
  let rest = '';
  child.stdout.on('data', (chunk) => {
    process.stdout.write(chunk);
    const lines = (rest + chunk).split(/\r?\n/);
    rest = lines.pop();
    for (const line of lines) closing = CLOSING.exec(line) ?? closing;
  });
  return new Promise((done) => {
    child.on('error', (error) => {
      console.error(error.message);
      done({ code: 1, closing });
    });
    child.on('close', (code) => done({ code: code ?? 1, closing }));
  });
}

rmSync('coverage', { recursive: true, force: true });
let passed = 0;
let failed = 0;
let skipped = 0;
for (const step of steps) {
  console.log(`\n== npm run ${step}`);
  const start = Date.now();
  const { code, closing } = await run(step);
  console.log(`   ${step}: ${code === 0 ? 'done' : 'FAILED'} in ${((Date.now() - start) / 1000).toFixed(1)} s`);
  if (closing) [passed, failed, skipped] = closing.slice(1).map(Number);
  if (code !== 0) {
    failed = Math.max(failed, 1);
    console.error(`\nStopped: "npm run ${step}" failed. Run it alone to see it again.`);
    process.exitCode = 1;
    break;
  }
}
console.log(`\n${passed} passed, ${failed} failed, ${skipped} skipped`);
