/**
 * The built package on whatever Node runs this: every entry as ES module and as CommonJS, and the five surveys to the
 * reports that are checked in, byte by byte. `npm run check:newest-node` runs it on a newer Node from the registry.
 */
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const root = new URL('../../', import.meta.url);
const manifest = JSON.parse(readFileSync(new URL('package.json', root), 'utf8'));
const require = createRequire(import.meta.url);
const names = (module) =>
  Object.keys(module)
    .filter((k) => k !== 'module.exports' && k !== 'default')
    .sort();

const entries = Object.keys(manifest.exports).filter((path) => !path.endsWith('.json'));
for (const path of entries) {
  const specifier = `ohmwright${path.slice(1)}`;
  const esm = await import(specifier);
  assert.ok(names(esm).length > 0, specifier);
  assert.deepEqual(names(require(specifier)), names(esm), specifier);
}

const [{ readSurvey }, { planOf }, { inGreatBritain }, { planBlocks, renderMarkdown }, { verifySheet }] =
  await Promise.all(['io', 'site', 'great-britain', 'report', 'verify'].map((name) => import(`ohmwright/${name}`)));
const examples = new URL('docs/examples/', root);
const surveys = readdirSync(new URL('surveys', examples)).filter((f) => f.endsWith('.json'));
for (const file of surveys) {
  const survey = readSurvey(JSON.parse(readFileSync(new URL(`surveys/${file}`, examples), 'utf8')));
  const plan = planOf(survey, inGreatBritain(survey.code.edition));
  const kept = readFileSync(new URL(`reports/${file.replace('.json', '.plan.md')}`, examples), 'utf8');
  assert.equal(renderMarkdown(planBlocks(plan)), kept, file);
  const sheet = plan.options[0]?.sheet;
  assert.ok(sheet && verifySheet(sheet).ok, file);
}
process.stdout.write(
  `Node ${process.version}: ${entries.length} entries both ways, ${surveys.length} surveys to the same bytes, sheets verified.\n`,
);
