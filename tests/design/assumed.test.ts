/** What rests on assumed facts is found with what does not depend on them kept: it has to come to the same as from the start. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { resultsAsSaid } from '../../src/design/assess.js';
import { assess } from '../../src/design/index.js';
import { inGreatBritain, ordinaryHome } from '../../src/great-britain.js';
import { amperes, between, type CheckResult, ohms, squareMillimetres } from '../../src/index.js';
import { conditionally, type Installation } from '../../src/installation/index.js';
import { csvText, readBriefRows, readDefaults } from '../../src/io/index.js';
import { assumeSurvey } from '../../src/site/assumed-survey.js';
import { decidedRun, withAddedRun } from '../../src/site/index.js';
import { houses } from '../package/houses.js';

const { code } = inGreatBritain('2018+A2:2022');
const defaults = readDefaults(JSON.parse(readFileSync('docs/examples/defaults.json', 'utf8')));
const { rows } = readBriefRows(csvText(houses(6, 3)), defaults);

/** Where what is not asked by assumed facts stands is a matter of groups. */
const sorted = (results: readonly CheckResult[]) => results.map((r) => JSON.stringify(r)).sort();

for (const [i, { brief }] of rows.entries())
  test(`of the drawn house ${i + 1}, by single values and over ranges`, () => {
    if (!brief) return expect.fail('the row is read');
    const { survey } = brief;
    const { installation, wanted } = assumeSurvey(survey, ordinaryHome);
    const [point] = wanted;
    if (!point) return expect.fail('a point is wanted');
    const run = decidedRun(point, point.run.cable, squareMillimetres(6), amperes(32));
    const built = withAddedRun(installation, point.from, run);
    const ranged: Installation = {
      ...built,
      supply: { ...built.supply, externalImpedance: between(ohms(0.1), ohms(0.5)) },
    };
    for (const house of [built, ranged])
      for (const id of [run.id, ...installation.board.runs.map((r) => r.id)].slice(0, 3)) {
        const as = (of: Installation) => resultsAsSaid(code, of, id, {});
        expect(sorted(assess(code, house, id).results)).toEqual(sorted(conditionally(house, as(house), as)));
      }
  });
