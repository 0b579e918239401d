// An estimator's batch: every survey of a folder to one line of CSV, priced when a price book is given.
// node docs/examples/batch-to-csv.mjs docs/examples/surveys [prices.json] > jobs.csv
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inGreatBritain } from 'ohmwright/great-britain';
import { parseSurvey, readPriceBook } from 'ohmwright/io';
import { planOf, quotationOf } from 'ohmwright/site';

const [folder = 'docs/examples/surveys', prices] = process.argv.slice(2);
const book = prices && readPriceBook(JSON.parse(readFileSync(prices, 'utf8')));
// a text that begins like a formula is no formula: spreadsheets run what they take for one
const harmless = (text) => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);
const cell = (value) => `"${harmless(String(value ?? '')).replaceAll('"', '""')}"`;
const line = (...cells) => console.log(cells.map(cell).join(','));

line(
  'file',
  'verdict',
  'option',
  'operator',
  'cable',
  'device',
  'hours, least',
  'hours, likely',
  'hours, most',
  'net, smallest coin',
  'without a price',
  'missing facts',
  'problem',
);
for (const file of readdirSync(folder)
  .filter((f) => f.endsWith('.json'))
  .sort()) {
  try {
    const survey = parseSurvey(readFileSync(join(folder, file), 'utf8'));
    const plan = planOf(survey, { ...inGreatBritain(survey.code.edition), sheets: 'none' });
    const [option] = plan.options;
    const runs = option.points.map((p) => p.run);
    const known = (fact) => (fact.state === 'known' ? fact.value : 'open');
    const parts = [...option.points, ...option.feeders.filter((f) => f.items)]; // feeders that are new are paid for too
    const quotes = book ? parts.map((p) => quotationOf(p.items, p.hours, book)) : [];
    line(
      file,
      option.overall.verdict,
      option.title,
      option.notification.decision.route,
      [...new Set(runs.map((r) => `${r.cable.construction} ${known(r.cable.area)} mm²`))].join('; '),
      [...new Set(runs.map((r) => `${known(r.device.rating)} A`))].join('; '),
      ...[option.hours.low, option.hours.typical, option.hours.high].map((h) => h.toFixed(1)),
      quotes.length > 0 ? quotes.reduce((sum, q) => sum + q.net, 0) : '',
      [...new Set(quotes.flatMap((q) => q.open))].join('; '), // the net is too low by these
      option.unknown
        .filter((u) => u.decides)
        .map((u) => u.fact)
        .join('; '),
      '',
    );
  } catch (error) {
    line(file, ...Array(11).fill(''), error.message);
  }
}
