import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { oneLineDiagram } from '../../src/report/index.js';
import { withAllWanted } from '../../src/site/index.js';

const diagram = (name: string): string => {
  const file = new URL(`../../docs/examples/surveys/sites/${name}.json`, import.meta.url);
  const survey = readSurvey(JSON.parse(readFileSync(file, 'utf8')));
  return oneLineDiagram(
    withAllWanted(survey),
    name,
    survey.wanted.map((w) => w.run.id),
  );
};

it('every board along a riser is drawn, tapped from one line', () => {
  const svg = diagram('tower');
  for (let n = 1; n <= 8; n++) expect(svg).toContain(`>floor ${n}<`);
});
it('many new circuits that look alike stand as one, with their number', () => {
  const svg = diagram('car-park');
  expect(svg.match(/10 × deck/g)).toHaveLength(20);
  const width = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]);
  expect(width).toBeLessThan(400); // as wide as a telephone, however many there are
});
