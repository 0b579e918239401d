/** The invented surveys of larger sites, planned whole. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { planBlocks } from '../../src/report/index.js';
import type { Plan } from '../../src/site/index.js';
import { planInBritain } from '../support/plan.js';

const folder = fileURLToPath(new URL('../../docs/examples/surveys/sites/', import.meta.url));
const plans = new Map<string, Plan>();
const planned = (name: string): Plan => {
  const before = plans.get(name);
  if (before) return before;
  const plan = planInBritain(readSurvey(JSON.parse(readFileSync(`${folder}${name}.json`, 'utf8'))));
  plans.set(name, plan);
  return plan;
};
/** Points of a plan, each with those that it stands for. */
const counted = (plan: Plan) =>
  (plan.options[0]?.points ?? []).reduce((sum, p) => sum + 1 + (p.alike?.points.length ?? 0), 0);

describe('larger sites', () => {
  it.each(readdirSync(folder).map((f) => f.replace('.json', '')))('%s passes, and says that it is invented', (name) => {
    const plan = planned(name);
    expect(plan.about.invented).toBe(true);
    expect(plan.options[0]?.overall.verdict).toBe('pass');
    expect(plan.questions).toEqual([]);
    // a chapter for each calculation, not for each point
    const chapters = planBlocks(plan).filter((b) => b.kind === 'heading' && b.text.startsWith('Charge point'));
    expect(chapters).toHaveLength(plan.options[0]?.points.length as number);
    expect(chapters.length).toBeLessThanOrEqual(12);
  });
  it('40 flats: the riser that carries them is judged, though no point hangs on it', () => {
    const stages = planned('tower').options[0]?.stages ?? [];
    // 2 kW x 40 + 12 kW = 92 kW, at 0.95 96.8 kVA; lines have 14, 13 and 13 flats: 96.8 x 14/40 / 230 V = 147.4 A
    const riser = stages.find((s) => s.run === 'riser');
    expect(riser).toMatchObject({ dwellings: 40, points: 0, advice: 'carries', limit: 250 });
    expect(riser?.demand as number).toBeCloseTo(147.4, 0);
    // a floor: 2 x 5 + 12 = 22 kW, two of five on a line: 40.3 A
    expect(stages.find((s) => s.run === 'meters of floor 1')?.demand as number).toBeCloseTo(40.3, 0);
    expect(planned('tower').options[0]?.feeders.map((f) => f.run)).toEqual(['feeder to the yard']);
    // and is no observation either: its flats do not all take 60 A at once
    expect(planned('tower').observations).toEqual([]);
  });
  it('200 bays: few calculations, every bay counted, limits kept at every level', () => {
    const plan = planned('car-park');
    expect(counted(plan)).toBe(200);
    // four decks whose feeders differ, and three lines on each
    expect(plan.options[0]?.points).toHaveLength(12);
    expect(plan.options[0]?.feeders).toHaveLength(8);
    const over = plan.options[0]?.night?.over;
    expect(over).toEqual([]);
  });
  it('60 vans and two points of 22 kW', () => {
    expect(counted(planned('depot'))).toBe(60);
    expect(counted(planned('welding-shop'))).toBe(2);
  });
  it('the main board of the car park is supplied by its own transformer, and its figures follow from that', () => {
    const { supply } = planned('car-park').options[0]?.installation ?? {};
    expect(supply?.externalImpedance).toMatchObject({
      state: 'known',
      by: expect.stringContaining('800 kVA, u_k 6 %'),
    });
    const checked = planned('car-park').options[0]?.supply.results.filter(
      (r) => r.check === 'demand-within-transformer',
    );
    expect(checked?.map((r) => r.verdict)).toEqual(['pass', 'pass', 'pass']);
  });
});
