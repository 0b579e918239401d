/** The night of a plan: batteries that fill, starts, and what neutrals carry. */
import { describe, expect, test } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { operatorPage, planBlocks } from '../../src/report/index.js';
import type { Plan } from '../../src/site/index.js';
import { planInBritain } from '../support/plan.js';
import { type Json, surveyDocument } from '../support/surveys.js';

type Tree = { [key: string]: Json };
function planned(name: string, change: (document: Tree) => void): Plan {
  const document = surveyDocument(name) as Tree;
  change(document);
  return planInBritain(readSurvey(document), { sheets: 'none', lengths: false });
}
const nightOf = (plan: Plan) => plan.options[0]!.night!;

describe('a vehicle whose state of charge is stated', () => {
  const from = (onArrival: string, onDeparture: string) =>
    nightOf(
      planned('easy-home', (d) => {
        const vehicle = (d.wanted as Tree[])[0]!.vehicle as Tree;
        delete vehicle.energy;
        vehicle.battery = { holds: '60 kWh', onArrival, onDeparture };
      }),
    );
  test('charges as one of the same need up to 95 %, and slower beyond', () => {
    // 12 kWh in the battery each: at 230 V, 32 A and 90 %, 1.812 h
    const steady = 12_000 / (230 * 32 * 0.9);
    const [low] = from('50 %', '70 %').vehicles;
    expect((low!.quiet.after as number) / 3600).toBeCloseTo(steady, 6);
    const [full] = from('80 %', '100 %').vehicles;
    // 95 to 100 % by the course: 3 kWh at means of power of 0.896 (2 %), 0.577 (2 %) and 0.168 (1 %) of the largest, by hand
    const at = (share: number, mean: number) => (60_000 * share) / (230 * 32 * 0.9 * mean);
    const logMean = (a: number, b: number) => (a - b) / Math.log(a / b);
    const last = at(0.02, logMean(1, 0.8)) + at(0.02, logMean(0.8, 0.4)) + at(0.01, logMean(0.4, 0.05));
    expect((full!.quiet.after as number) / 3600).toBeCloseTo(at(0.15, 1) + last, 1);
    expect(from('80 %', '100 %').about.join()).toContain('95 %');
    expect(from('50 %', '70 %').vehicles[0]!.quiet.starts).toBe(1);
  });
});

describe('the half hours of a day', () => {
  test('are everything else at its most, and what vehicles take while they charge', () => {
    const night = nightOf(planned('flats', () => undefined));
    const { mean, capacity } = night.halfHours!;
    expect(mean).toHaveLength(48);
    // no vehicle comes before the evening
    const rest = Math.min(...mean);
    expect(mean[25]).toBe(rest);
    const energy = mean.reduce((sum, va) => sum + (va - rest) / 2, 0);
    expect(energy).toBeGreaterThan(0);
    expect(capacity).toBeGreaterThanOrEqual(Math.max(...mean));
    expect(capacity - Math.max(...mean)).toBeLessThan(1000);
    expect(capacity % 1000).toBe(0);
  });
  test('hold the energy that a vehicle takes at the point, and stand on the page of the operator for a site', () => {
    const { halfHours, vehicles } = nightOf(
      planned('easy-home', (d) => {
        ((d.wanted as Tree[])[0]!.vehicle as Tree).energy = '9 kWh';
      }),
    );
    const rest = Math.min(...halfHours!.mean);
    const energy = halfHours!.mean.reduce((sum, va) => sum + (va - rest) / 2, 0);
    expect(vehicles[0]!.busy!.missing).toBe(0);
    // 9 kWh in the battery at 90 % are 10 kWh at the point; the minute in which it is full counts in full
    expect(energy / 1000).toBeCloseTo(10, 0);
    const page = (name: string) => JSON.stringify(operatorPage(planned(name, () => undefined)));
    expect(page('flats')).toContain('Half hours of a day');
    expect(page('easy-home')).not.toContain('Half hours of a day');
  });
});

describe('the neutral ahead of a board', () => {
  const withThird = (share: number | undefined) =>
    planned('flats', (d) => {
      for (const run of (d.board as Tree).runs as Tree[])
        if ((run.feeds as Tree[]).some((o) => o.kind === 'board')) {
          if (share === undefined) delete run.thirdHarmonic;
          else run.thirdHarmonic = { known: share, by: 'measured' };
        }
    });
  test('carries three times the third harmonic of lines that are alike, and is told where that is too much', () => {
    const plan = withThird(0.5);
    const [first] = nightOf(plan).neutrals;
    // 100 A on every line at most, and the device of 100 A ahead
    expect(first!.limit).toBe(100);
    expect(first!.peak).toBeGreaterThan(100);
    expect(first!.peak).toBeLessThanOrEqual(3 * 0.5 * 100 + 1e-6);
    expect(first!.over).toBeGreaterThan(0);
    expect(JSON.stringify(planBlocks(plan))).toMatch(/ N[ :,]/);
  });
  test('is in order with few harmonics, and with none stated no more than the most loaded line', () => {
    for (const share of [0.05, undefined]) {
      const { neutrals } = nightOf(withThird(share));
      expect(neutrals.length).toBeGreaterThan(0);
      expect(neutrals.every((n) => n.over === 0)).toBe(true);
      if (share === undefined) expect(neutrals.every((n) => !('thirdHarmonic' in n))).toBe(true);
      for (const n of neutrals) expect(n.peak).toBeLessThanOrEqual(100 + 1e-6);
    }
  });
});
