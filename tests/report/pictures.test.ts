import fc from 'fast-check';
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import {
  demandPicture,
  nightLoadPicture,
  oneLineDiagram,
  routePicture,
  timeCurrentPicture,
  voltageDropPicture,
} from '../../src/report/index.js';
import { surveyDocuments } from '../support/surveys.js';

const clean = (svg: string): void => {
  expect(XMLValidator.validate(svg), svg.slice(0, 300)).toBe(true);
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
  const root = (new XMLParser({ ignoreAttributes: false }).parse(svg) as { svg: Record<string, unknown> }).svg;
  expect(root['@_role']).toBe('img');
  expect(root.title).toBeDefined();
  expect(root.desc).toBeDefined();
};

const words = fc.oneof(fc.string({ maxLength: 20 }), fc.constantFrom('<b>', '"', '</svg>', "a'b&c"));
const amps = fc.double({ min: 0.001, max: 1e5, noNaN: true });
const seconds = fc.double({ min: 0.001, max: 1e4, noNaN: true });
const point = fc.tuple(amps, seconds);

describe('pictures are well-formed, titled and finite, whatever they show', () => {
  it('time-current', () => {
    const series = fc.record({
      name: words,
      points: fc.array(point, { minLength: 1, maxLength: 5 }),
      slower: fc.array(point, { minLength: 1, maxLength: 5 }),
    });
    fc.assert(
      fc.property(
        words,
        fc.array(series, { maxLength: 4 }),
        fc.array(fc.record({ name: words, current: amps }), { maxLength: 3 }),
        (title, s, marks) => clean(timeCurrentPicture({ title, series: s, marks, times: [{ name: 't', time: 0.4 }] })),
      ),
      { numRuns: 60 },
    );
  });

  it('voltage drop along the route', () => {
    const drops = fc.array(
      fc.tuple(fc.double({ min: 0, max: 500, noNaN: true }), fc.double({ min: 0, max: 60, noNaN: true })),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(words, drops, fc.boolean(), (title, points, limited) =>
        clean(
          voltageDropPicture({
            title,
            points,
            sections: [{ name: 'one', end: 5 }],
            ...(limited ? { limit: 11.5 } : {}),
          }),
        ),
      ),
      { numRuns: 60 },
    );
  });

  it('route with its sections and depths', () => {
    const section = fc.record(
      {
        name: words,
        length: fc.double({ min: 0, max: 5000, noNaN: true }),
        depth: fc.double({ min: 0, max: 3, noNaN: true }),
        method: fc.constantFrom('C', 'D'),
        outdoors: fc.boolean(),
      },
      { requiredKeys: ['name', 'length'] },
    );
    fc.assert(
      fc.property(words, fc.array(section, { minLength: 1, maxLength: 30 }), (title, sections) =>
        clean(routePicture({ title, from: title, to: 'drive', sections })),
      ),
      { numRuns: 60 },
    );
  });

  it('demand by method', () => {
    fc.assert(
      fc.property(
        words,
        fc.array(fc.record({ name: words, current: amps, uncut: amps }, { requiredKeys: ['name', 'current'] }), {
          minLength: 1,
          maxLength: 6,
        }),
        (title, bars) => clean(demandPicture({ title, bars, limits: [{ name: 'cut-out', current: 80 }] })),
      ),
      { numRuns: 60 },
    );
  });

  it('load of the night', () => {
    fc.assert(
      fc.property(words, fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 10 }), (title, steps, vehicles) => {
        const minutes = Array.from({ length: steps }, (_, i) => 1080 + 15 * i);
        const bands = Array.from({ length: vehicles }, (_, k) => ({
          name: `car ${k}`,
          current: minutes.map(() => 6 + k),
        }));
        clean(nightLoadPicture({ title, minutes, bands, limit: 60 }));
      }),
      { numRuns: 60 },
    );
  });

  it.each(Object.keys(surveyDocuments))('one-line diagram of %s names every run', (name) => {
    const survey = readSurvey(surveyDocuments[name]);
    const svg = oneLineDiagram(survey.installation, survey.about.title);
    clean(svg);
    for (const run of survey.installation.board.runs) expect(svg).toContain(run.id.slice(0, 20));
  });
});
