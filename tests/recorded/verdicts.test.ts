/** What the rules say of drawn installations, and that whatever stays open says what is missing. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import { iec60364 } from '../../src/codes/iec60364/index.js';
import type { AssessmentOptions, WiringCode } from '../../src/codes/wiring-code.js';
import { assess } from '../../src/design/index.js';
import {
  type CheckResult,
  type Gap,
  hasCode,
  type Installation,
  known,
  pathTo,
  recorder,
  type Verdict,
  writeSheet,
} from '../../src/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';
import { recordOf, type Said } from '../support/recorded.js';

const options: readonly AssessmentOptions[] = [
  { acceptMemoryFigures: true },
  {},
  { acceptMemoryFigures: true, dropTemperature: 'group-at-same-load' },
  { acceptMemoryFigures: true, dropLimit: 0.04, fuseEdition: '2008', premises: { kind: known('dwelling') } },
];
const codes = { bs7671: bs7671('2018+A2:2022'), iec60364: iec60364('2009') } as const;

/** Half of the installations are known throughout. */
const drawn: readonly Installation[] = [
  ...fc.sample(arbitraryInstallation(), { numRuns: 70, seed: 41 }),
  ...fc.sample(arbitraryInstallation({ open: true }), { numRuns: 70, seed: 43 }),
];
const flat = (results: readonly CheckResult[]): CheckResult[] =>
  results.flatMap((r) => [r, ...flat(r.alternatives ?? [])]);
const names = (results: readonly CheckResult[], verdict: Verdict) =>
  [...new Set(results.flatMap((r) => (r.verdict === verdict && r.weight === 'rule' ? [r.check] : [])))].join(' ');
const gapIsWhole = (gap: Gap): boolean => {
  const said = gap.kind === 'fact' ? gap.fact : gap.explain;
  return ['fact', 'cell', 'range', 'edition'].includes(gap.kind) && said.trim() !== '' && !/undefined|null/.test(said);
};

/** What a code says of one circuit; undefined where there is none of that name. */
function sayOf(
  code: WiringCode,
  installation: Installation,
  run: string,
  choice?: AssessmentOptions,
): Said | undefined {
  if (!pathTo(installation, run)) return undefined;
  const sheet = recorder('recorded');
  try {
    const { results, figures } = assess(code, installation, run, choice, sheet);
    const summary = `${run} fail: ${names(results, 'fail')}; open: ${names(results, 'not-determined')}`;
    return { summary, all: { results, figures, sheet: writeSheet(sheet) } };
  } catch (error) {
    if (!hasCode(error, 'invalid-input')) throw error;
    return { summary: `${run} refused`, all: error.message };
  }
}

// worked out inside the test, so that a tool that follows which test reaches what sees it
test.each(Object.entries(codes))(
  '%s says what it said, and what is missing wherever it leaves something open',
  async (name, code) => {
    const said = drawn.flatMap((installation, i) =>
      ['ev', 'submain'].flatMap((run) => sayOf(code, installation, run, options[i % options.length]) ?? []),
    );
    const results = said.flatMap(({ all }) => flat((all as { results?: CheckResult[] }).results ?? []));
    expect(results.length).toBeGreaterThan(2000);
    const halfSaid = results.filter(
      (r) =>
        !(r.gaps ?? []).every(gapIsWhole) ||
        (r.verdict === 'not-determined' && !flat([r]).some((x) => x.gaps?.length)) ||
        (r.verdict === 'not-required' && !r.because),
    );
    expect(halfSaid).toEqual([]);
    await expect(recordOf(name, said)).toMatchFileSnapshot(`${name}.txt`);
  },
);
