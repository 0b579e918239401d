// A firm's own requirement beside the code's: no more than 4 % voltage drop to a charge point, as advice.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { comparison, judge, overall, ratio } from 'ohmwright';
import { inGreatBritain } from 'ohmwright/great-britain';
import { readSurvey } from 'ohmwright/io';
import { planOf } from 'ohmwright/site';

const firmsDrop = comparison({
  id: 'firms-own-drop',
  title: 'The voltage drop is within the firm’s own limit',
  kind: 'at-most',
  value: 'dropRatio',
  limit: 'dropLimit',
  weight: 'rule',
  source: { document: 'Rules of the firm (invented)', provenance: 'common-practice' },
});

const file = fileURLToPath(new URL('surveys/easy-home.json', import.meta.url));
const survey = readSurvey(JSON.parse(readFileSync(file, 'utf8')));
const plan = planOf(survey, inGreatBritain(survey.code.edition));
for (const { point, assessment } of plan.options[0].points) {
  const drop = assessment.results.find((r) => r.check === 'voltage-drop')?.value;
  const own = judge(firmsDrop, { dropRatio: ratio(drop.value), dropLimit: ratio(0.04) });
  console.log(
    `${point}: ${own.verdict}, margin ${(own.margin * 100).toFixed(1)} %; with the code's rules: ${overall([...assessment.results, own]).verdict}`,
  );
}
