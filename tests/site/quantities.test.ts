import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { britishWords } from '../../src/great-britain.js';
import { known, recorder, unknown } from '../../src/index.js';
import { readSurvey } from '../../src/io/index.js';
import { hoursOf } from '../../src/site/hours.js';
import { commonPractice, type PriceBook, quotationOf } from '../../src/site/index.js';
import { quantitiesOf } from '../../src/site/quantities.js';
import { amperes, metres, squareMillimetres } from '../../src/units/index.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocument } from '../support/surveys.js';

const survey = readSurvey(surveyDocument('easy-home'));
const wanted = survey.wanted[0] as (typeof survey.wanted)[number];
const run = {
  ...wanted.run,
  cable: { ...wanted.run.cable, area: known(squareMillimetres(6)) },
  device: { ...wanted.run.device, rating: known(amperes(40)) },
};
const needs = { electrode: false, surgeProtection: false, loadControl: false };
const items = () => quantitiesOf(run, survey.work, commonPractice, needs, britishWords, recorder('Quantities'));
const find = (key: string) => items().find((i) => i.key.startsWith(key));

describe('quantities', () => {
  it('orders the route with waste and a tail at each end', () => {
    // 18 m of route, 10 % waste, 1 m at each end: 21.8 m, to the next whole metre
    expect(find('cable:')).toMatchObject({ quantity: 22, unit: 'm' });
  });
  it('counts fixings stretch by stretch', () => {
    // 6, 11 and 1 m clipped every 300 mm: 6/0.3 + 1 = 21, 11/0.3 + 1 = 37.7, 1/0.3 + 1 = 4.3
    expect(
      items()
        .filter((i) => i.key === 'fixing:clipped')
        .map((i) => i.quantity),
    ).toEqual([21, 38, 5]);
  });
  it('counts a residual current device unless the overcurrent device is known to have one', () => {
    const separate = (kind: typeof run.device.kind) =>
      quantitiesOf({ ...run, device: { ...run.device, kind } }, survey.work, commonPractice, needs, britishWords).some(
        (i) => i.key === 'residual-device',
      );
    expect(run.residual?.map((r) => r.position)).toEqual(['origin-of-circuit']);
    expect(separate(known({ standard: 'EN 61009', type: 'B' }))).toBe(false);
    expect(separate(known({ standard: 'EN 60898', type: 'B' }))).toBe(true);
    expect(separate(unknown('whether EN 61009 is printed on it'))).toBe(true);
  });
  it('leaves an unknown length open and names it', () => {
    const open = {
      ...run,
      stretches: [{ ...(run.stretches[0] as (typeof run.stretches)[number]), length: unknown('measure it') }],
    };
    const cable = quantitiesOf(open, survey.work, commonPractice, needs, britishWords).find((i) =>
      i.key.startsWith('cable:'),
    );
    expect(cable?.quantity).toBeUndefined();
    expect(cable?.gaps?.[0]).toMatchObject({ kind: 'fact', obtain: 'measure it' });
    expect(hoursOf(open, survey.work, commonPractice, needs).complete).toBe(false);
  });
  it('never orders less for a longer route', () => {
    const ordered = (length: number) =>
      quantitiesOf(
        {
          ...run,
          stretches: [{ ...(run.stretches[0] as (typeof run.stretches)[number]), length: known(metres(length)) }],
        },
        survey.work,
        commonPractice,
        needs,
        britishWords,
      )
        .filter((i) => i.key.startsWith('cable:') || i.key.startsWith('fixing:'))
        .reduce((sum, i) => sum + (i.quantity ?? 0), 0);
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        (a, b) => {
          expect(ordered(Math.max(a, b))).toBeGreaterThanOrEqual(ordered(Math.min(a, b)));
        },
      ),
    );
  });
});

describe('hours', () => {
  it('adds up the table for a straightforward job', () => {
    const hours = hoursOf(run, survey.work, commonPractice, needs);
    // trade knowledge: 0.75 + 0.4 + (0.25 and 40 minutes of travel) + 1 + 1.8 x 0.7 + 0.2 + 1 + 0.75 + 0.75
    expect(hours.typical).toBeCloseTo(6.36 + 2 / 3, 9);
    expect(hours.low).toBeLessThan(hours.typical);
    expect(hours.high).toBeGreaterThan(hours.typical);
    expect(hours.complete).toBe(true);
  });
});

describe('several points', () => {
  it('counts what occurs once for a job with the first point only', () => {
    const first = hoursOf(run, survey.work, commonPractice, needs);
    const later = hoursOf(run, survey.work, commonPractice, { ...needs, first: false });
    // 0.75 h of survey, 40 minutes of travel and 0.25 h of setting up
    expect(first.typical - later.typical).toBeCloseTo(1 + 2 / 3, 9);
    const keys = quantitiesOf(run, survey.work, commonPractice, { ...needs, first: false }, britishWords).map(
      (i) => i.key,
    );
    expect(keys).toContain('labels');
    expect(keys).not.toContain('records');
  });
  it('plans one survey, one travel and one set of records for a block of flats, and its new feeders', () => {
    const [option] = planInBritain(readSurvey(surveyDocument('flats')), { sheets: 'none' }).options;
    const parts = [...(option?.points ?? []), ...(option?.feeders ?? [])];
    const times = (task: string) => parts.flatMap((p) => p.hours?.tasks ?? []).filter((t) => t.task === task).length;
    const sets = (key: string) => parts.flatMap((p) => p.items ?? []).filter((i) => i.key === key).length;
    expect([times('survey and quotation'), times('travel and setting up'), sets('records')]).toEqual([1, 1, 1]);
    expect([times('fix and connect the point'), sets('charge-point')]).toEqual([24, 24]);
    // one load control on the tails, one on each charging board's feeder
    const sensors = parts.flatMap((p) => p.items ?? []).filter((i) => i.key === 'current-sensor');
    expect(sensors.reduce((sum, i) => sum + (i.quantity ?? 0), 0)).toBe(3);
    // the feeders of 32 m and 46 m are new: 32 x 1.1 + 2, 46 x 1.1 + 2
    const feeder = (i: number) => option?.feeders[i]?.items?.find((item) => item.key.startsWith('cable:'))?.quantity;
    expect([feeder(0), feeder(1)]).toEqual([38, 53]);
    expect(option?.hours).toBeCloseTo(
      parts.reduce((sum, p) => sum + (p.hours?.typical ?? 0), 0),
      9,
    );
  });
});

describe('a quotation', () => {
  const book: PriceBook = {
    format: 'prices/1',
    currency: 'GBP',
    items: { 'cable:*': 315, 'fixing:*': 12, 'charge-point': 55000, 'protective-device': 3899 },
    hour: 4550,
    taxBasisPoints: 2000,
  };
  it('is in whole coins, its totals the exact sums of its lines', () => {
    const q = quotationOf(items(), hoursOf(run, survey.work, commonPractice, needs), book);
    expect(q.lines.find((l) => l.words.startsWith('flat twin'))?.amount).toBe(22 * 315);
    expect(q.net).toBe(q.lines.reduce((a, l) => a + l.amount, 0));
    expect(q.total).toBe(q.net + q.tax);
    expect(Object.values([q.net, q.tax, q.total]).every(Number.isSafeInteger)).toBe(true);
    // labour 7.027 h at 45.50: 319.7285
    expect(q.lines.at(-1)?.amount).toBe(31973);
    expect(q.open).toEqual(expect.arrayContaining(['labels and notices']));
  });
  it('takes no price from a prototype', () => {
    const q = quotationOf(
      [{ key: 'toString', words: 'x', quantity: 1, unit: 'each', rule: '' }],
      hoursOf(run, survey.work, commonPractice, needs),
      book,
    );
    expect(q.open).toContain('x');
  });
});
