import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { Findings } from '../../src/codes/wiring-code.js';
import { judgeAspects } from '../../src/design/assess-at.js';
import { RangedPoints } from '../../src/design/ranged-points.js';
import { pinned, rangesOf } from '../../src/design/ranges.js';
import { silent } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { withAllWanted } from '../../src/site/index.js';
import { type Json, surveyDocument } from '../support/surveys.js';

const code = bs7671('2018+A2:2022');

/** A house with its garage, facts of several aspects known only within a range. */
function ranged() {
  const document = surveyDocument('garage-submain');
  const supply = document.supply as { [key: string]: Json };
  supply.externalImpedance = { between: ['0.2 Ω', '0.9 Ω'] };
  supply.prospectiveCurrent = { between: ['400 A', '6000 A'] };
  const [wanted] = document.wanted as { route: { [key: string]: Json }[] }[];
  for (const stretch of wanted?.route ?? []) stretch.ambient = { between: ['15 °C', '40 °C'] };
  return withAllWanted(readSurvey(document));
}

it('gives at every point what judging there afresh gives, in whatever order points are asked', () => {
  const installation = ranged();
  const ranges = rangesOf(installation);
  expect(ranges.length).toBeGreaterThanOrEqual(4);
  // few values each, so that points share what an aspect reads
  const point = fc.tuple(
    ...ranges.map((r) => fc.constantFrom(0, 0.5, 1).map((share) => r.least + (r.most - r.least) * share)),
  );
  for (const run of ['garage point circuit', 'garage submain'])
    fc.assert(
      fc.property(fc.array(point, { minLength: 12, maxLength: 20 }), (asked) => {
        const points = new RangedPoints(code, installation, run, {});
        for (const values of asked) {
          const found = points.at(values);
          const findings: Findings = {};
          const fixed = pinned(installation, values, () => undefined);
          const judged = judgeAspects(code, fixed, run, {}, silent(), findings);
          expect(found.outcomes.map((o) => [...o.byKey.values()])).toEqual(judged.map((j) => j.results));
          expect(found.findings).toEqual(findings);
        }
      }),
      { numRuns: 12 },
    );
});
