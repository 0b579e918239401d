import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import type { Night } from '../../src/site/night.js';
import type { OptionId } from '../../src/site/option-id.js';
import { planInBritain } from '../support/plan.js';
import { type Json, surveyDocument } from '../support/surveys.js';

type Tree = { [key: string]: Json };

function nightOfChanged(name: string, change: (document: Tree) => void, id?: OptionId): Night {
  const document = surveyDocument(name) as Tree;
  change(document);
  const { options } = planInBritain(readSurvey(document), { sheets: 'none', lengths: false });
  const night = (id === undefined ? options[0] : options.find((o) => o.id === id))?.night;
  if (!night) throw new Error('no night');
  return night;
}

const vehicle = (document: Tree, k = 0): Tree => (document.wanted as Tree[])[k]?.vehicle as Tree;
const sums = ({ load }: Night): readonly number[] =>
  (load?.minutes ?? []).map((_, k) => (load?.bands ?? []).reduce((sum, b) => sum + (b.current[k] ?? 0), 0));

describe('a night of charging', () => {
  it('is what the energy balance gives, quiet and busy', () => {
    const [alone] = nightOfChanged('easy-home', () => undefined, 'with-limiter').vehicles;
    // 30 kWh in the battery at 230 V and 90 %: 32 A; or the 80 - 70.15 A that are left, for 12.5 h
    expect((alone?.quiet.after ?? 0) / 3600).toBeCloseTo(30000 / (230 * 32 * 0.9), 9);
    expect(alone?.quiet.missing).toBe(0);
    expect(alone?.busy?.after).toBeUndefined();
    expect(alone?.busy?.missing).toBeCloseTo(30000 - 230 * (80 - 70.15) * 0.9 * 12.5, 4);
    expect(alone?.busy?.waited).toBe(0);
  });

  it('lets a point that nothing holds charge at its full current, beside the house, above the fuse', () => {
    const night = nightOfChanged('easy-home', () => undefined, 'as-wanted');
    expect(night.vehicles[0]?.busy).toEqual(night.vehicles[0]?.quiet);
    expect(night.load?.limit).toBe(80);
    expect(Math.max(...sums(night))).toBeCloseTo(70.15 + 32, 9);
    expect(night.about.join()).toContain('no load control');
  });

  it('shares evenly what a control leaves, three lines and one alike', () => {
    const night = nightOfChanged('workshop', (d) => {
      for (const k of [0, 1]) Object.assign(vehicle(d, k), { arrives: '08:00', leaves: '17:00' });
    });
    const { load } = night;
    expect(Math.max(...sums(night))).toBeLessThanOrEqual((load?.limit ?? 0) + 1e-9);
    // while both charge and the limit binds, both have the same current
    const [one, two] = [load?.bands[1]?.current[0] ?? 0, load?.bands[2]?.current[0] ?? 0];
    expect(one).toBeCloseTo(two, 9);
    expect(one + two + (load?.bands[0]?.current[0] ?? 0)).toBeCloseTo(load?.limit ?? 0, 9);
  });

  it('holds every line of the flats below the limit of every control', () => {
    const night = nightOfChanged('flats', () => undefined);
    expect(night.vehicles).toHaveLength(24);
    expect(Math.max(...sums(night))).toBeLessThanOrEqual((night.load?.limit ?? 0) + 1e-9);
    for (const { quiet, busy } of night.vehicles) {
      expect(quiet.missing).toBe(0);
      expect(busy?.after ?? Number.POSITIVE_INFINITY).toBeGreaterThanOrEqual(quiet.after ?? 0);
    }
  });

  it('lets a vehicle that comes after midnight share with those of the evening before', () => {
    const [, late] = nightOfChanged('workshop', (d) => {
      Object.assign(vehicle(d, 0), { arrives: '18:00', leaves: '07:00', energy: '150 kWh' });
      Object.assign(vehicle(d, 1), { arrives: '00:30', leaves: '06:00', energy: '150 kWh' });
    }).vehicles;
    // 80 - 56 A on the worst line, half of them for each: 5.5 h at 12 A on its lines, 90 %
    expect(late?.busy?.missing).toBeCloseTo(150000 - 12 * 230 * 0.9 * 5.5, 4);
  });

  it('gives every day the same night where some vehicle is always there', () => {
    const { vehicles, load } = nightOfChanged('workshop', (d) => {
      Object.assign(vehicle(d, 0), { arrives: '08:00', leaves: '20:00', energy: '150 kWh' });
      Object.assign(vehicle(d, 1), { arrives: '18:00', leaves: '09:00', energy: '150 kWh' });
    });
    expect(load?.minutes).toHaveLength(24 * 12);
    for (const { busy } of vehicles) expect(busy?.missing).toBeGreaterThan(0);
    // the hour from 08:00 and the two from 18:00 are shared, the others are not
    const at = (clock: number, k: number) =>
      load?.bands[k]?.current[load.minutes.findIndex((m) => m % 1440 === clock * 60)];
    expect(at(8, 1)).toBeCloseTo(12, 9);
    expect(at(8, 2)).toBeCloseTo(12, 9);
    expect(at(19, 1)).toBeCloseTo(12, 9);
    expect(at(12, 2)).toBe(0);
    expect(at(3, 1)).toBe(0);
    expect(at(3, 2)).toBeGreaterThan(12);
  });

  it('tells for how long nothing keeps the supply below its limit', () => {
    const [over, ...others] = nightOfChanged('easy-home', () => undefined, 'as-wanted').over;
    expect(others).toEqual([]);
    // until the battery is full: 30 kWh at 230 V, 32 A and 90 %, to the minute
    const minutes = Math.ceil((30000 / (230 * 32 * 0.9)) * 60);
    expect(over).toMatchObject({ line: 'L1', limit: 80, over: minutes * 60 });
    expect(over?.peak).toBeCloseTo(70.15 + 32, 9);
    for (const held of ['workshop', 'flats']) expect(nightOfChanged(held, () => undefined).over).toEqual([]);
  });

  it('names a limit that is not known, and judges the others', () => {
    const night = nightOfChanged(
      'easy-home',
      (d) => Object.assign((d.supply as Tree).cutOut as Tree, { rating: { unknown: 'ask the network operator' } }),
      'as-wanted',
    );
    expect(night.gaps).toEqual([{ kind: 'fact', fact: 'cutOutRating', obtain: 'ask the network operator' }]);
    // 102.15 A through a main switch of 100 A
    expect(night.over).toMatchObject([{ limit: 100, limitBy: 'rating of the main switch of consumer unit' }]);
  });

  it('never makes a vehicle later, nor leaves it with less, for a higher limit of its control', () => {
    fc.assert(
      fc.property(fc.integer({ min: 50, max: 100 }), fc.integer({ min: 0, max: 40 }), (limit, more) => {
        const at = (amps: number) => {
          const night = nightOfChanged('workshop', (d) => {
            Object.assign((d.board as Tree).control as Tree, { limit: `${amps} A` });
            (d.wanted as Tree[]).splice(1);
            ((d.board as Tree).control as Tree).controls = ['bay 1'];
          });
          expect(Math.max(...sums(night))).toBeLessThanOrEqual(
            Math.max(amps, night.load?.bands[0]?.current[0] ?? 0) + 1e-9,
          );
          const [v] = night.vehicles;
          const { after, missing = 0 } = v?.busy ?? {};
          return { after: after ?? Number.POSITIVE_INFINITY, missing };
        };
        const [less, greater] = [at(limit), at(limit + more)];
        expect(greater.missing).toBeLessThanOrEqual(less.missing + 1e-6);
        expect(greater.after).toBeLessThanOrEqual(less.after + 1e-6);
      }),
      { numRuns: 8 },
    );
  });

  it('takes a point of whose vehicle nothing is stated to charge throughout, beside all else at its most', () => {
    const night = nightOfChanged('workshop', (d) => {
      Object.assign(vehicle(d, 0), { arrives: '08:00', leaves: '17:00', energy: '150 kWh' });
      delete (d.wanted as Tree[])[1]?.vehicle;
    });
    expect(night.vehicles).toHaveLength(1);
    expect(night.vehicles[0]?.busy?.missing).toBeCloseTo(150000 - 12 * 230 * 3 * 0.9 * 9, 4);
    expect(night.about.join()).toContain('bay 2 nothing is stated');
  });

  it('does not share for a control that a point is named to and its neighbours are not', () => {
    const night = nightOfChanged('flats', (d) => {
      const control = (d.board as Tree).control as { controls: string[] };
      control.controls = control.controls.filter((p) => p !== 'bay 1');
    });
    expect(night.gaps.map((g) => (g.kind === 'fact' ? g.fact : ''))).toContain(
      'whether load controller of the points, current sensors on the tails holds bay 1',
    );
    expect(night.vehicles.map((v) => v.point)).not.toContain('bay 1');
  });

  it('leaves out who shares a control with a vehicle of which facts are open, and says which', () => {
    const night = nightOfChanged('workshop', (d) => {
      vehicle(d, 0).onBoardCurrent = { unknown: 'vehicle handbook' };
    });
    expect(night.vehicles).toEqual([]);
    expect(night.load).toBeUndefined();
    expect(night.gaps).toEqual([
      { kind: 'fact', fact: 'on-board current of the vehicle at bay 1', obtain: 'vehicle handbook' },
    ]);
  });

  it('gives the quiet night alone where the demand of everything else is open', () => {
    const night = nightOfChanged('easy-home', (d) => {
      const cooker = ((d.board as Tree).runs as Tree[]).find((r) => r.id === 'cooker');
      const [load] = (cooker?.feeds ?? []) as Tree[];
      Object.assign(load as Tree, { current: { unknown: 'rating plate' } });
    });
    expect(night.vehicles[0]?.quiet.after).toBeGreaterThan(0);
    expect(night.vehicles[0]?.busy).toBeUndefined();
    expect(night.load).toBeUndefined();
    expect(night.gaps).toMatchObject([{ kind: 'fact', obtain: 'rating plate' }]);
  });

  it('never gives less for more current, nor more energy than is needed', () => {
    const energy = fc.integer({ min: 1, max: 90 });
    const current = fc.integer({ min: 6, max: 32 });
    const clock = fc.integer({ min: 0, max: 23 }).map((h) => `${String(h).padStart(2, '0')}:10`);
    fc.assert(
      fc.property(energy, current, current, clock, clock, (kWh, a, b, arrives, leaves) => {
        const at = (amps: number) =>
          nightOfChanged('easy-home', (d) => {
            Object.assign(vehicle(d), { energy: `${kWh} kWh`, onBoardCurrent: `${amps} A`, arrives, leaves });
          }).vehicles[0];
        const [less, more] = [at(Math.min(a, b)), at(Math.max(a, b))];
        for (const night of ['quiet', 'busy'] as const) {
          const [l, m] = [less?.[night], more?.[night]];
          expect(m?.missing ?? 0).toBeLessThanOrEqual((l?.missing ?? 0) + 1e-6);
          expect(l?.missing).toBeGreaterThanOrEqual(0);
          expect(l?.missing).toBeLessThanOrEqual(kWh * 1000);
          expect(l?.after === undefined).toBe((l?.missing ?? 0) > 0);
          if (l?.after !== undefined) {
            expect(l.after).toBeLessThanOrEqual(less?.window ?? 0);
            // no faster than the full current allows
            expect(l.after / 3600).toBeGreaterThanOrEqual((kWh * 1000) / (230 * Math.min(a, b) * 0.9) - 1e-9);
          }
        }
      }),
      { numRuns: 12 },
    );
  });
});
