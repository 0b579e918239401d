import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../../src/io/index.js';
import { planBlocks, renderText } from '../../../src/report/index.js';
import { type Survey, withChanges } from '../../../src/site/index.js';
import { type Change, changedSurvey } from '../../hazards/hazard.js';
import { wholePlanInBritain } from '../../support/plan.js';
import { type Json, surveyDocument } from '../../support/surveys.js';

const brief = { sheets: 'none', lengths: false } as const;
const metered: Change = ['demand', { governing: 'metered-peak' }];
const surveyOf = (name: string, ...changes: Change[]): Survey => readSurvey(changedSurvey(name, changes));
const shower: Json = {
  id: 'shower',
  lines: ['L1'],
  existing: true,
  device: { kind: { standard: 'EN 61009', type: 'B' }, rating: '40 A', breakingCapacity: '6 kA' },
  cable: {
    construction: 'flat-twin-and-earth',
    material: 'copper',
    insulation: 'thermoplastic-70',
    cores: 2,
    protective: 'bare-core',
    area: '10 mm²',
  },
  stretches: [],
  feeds: [
    {
      kind: 'load',
      id: 'shower unit',
      purpose: 'instantaneous-water-heating',
      current: '37 A',
      lines: ['L1'],
      residualType: 'A',
      standardCircuit: true,
    },
  ],
};
const runs = (surveyDocument('easy-home').board as { runs: Json[] }).runs;
/** 100 A, two rings, cooker, 8.5 kW shower, gas heating, nothing measured. */
const commonest: readonly Change[] = [
  ['supply.cutOut.rating', '100 A'],
  ['board.runs', [...runs, shower]],
  ['supply.meteredDemand', undefined],
];

describe('the commonest house', () => {
  const plan = wholePlanInBritain(surveyOf('easy-home', ...commonest), brief);
  const option = (id: string) => plan.options.find((o) => o.id === id);

  it('is asked to be measured, with what the measurement has to show', () => {
    // On-Site Guide: 70.15 A, and the shower in full: 107.15 A; 100 A less 32 A of the car, and with a limiter all of 100 A
    expect(option('as-wanted')?.overall.verdict).toBe('not-determined');
    expect(option('as-wanted')?.measure).toMatchObject([{ most: 68, mostRead: 56.6 }]);
    expect(option('as-wanted')?.measure?.[0]?.estimated).toBeCloseTo(107.15, 2);
    expect(option('with-limiter')?.measure).toMatchObject([{ most: 100, mostRead: 83.3 }]);
    expect(renderText(planBlocks(plan)).replace(/\s+/g, ' ')).toContain('Measure the demand first');
  });

  it.each([
    ['just within', '56.6 A', 'pass'],
    ['just beyond', '56.7 A', 'fail'],
  ] as const)('is decided by the measurement: %s what was asked for', (_, current, verdict) => {
    const measured = surveyOf('easy-home', ...commonest.slice(0, 2), metered, [
      'supply.meteredDemand',
      { current: { known: current, by: 'logger' }, about: 'a week of January' },
    ]);
    const then = wholePlanInBritain(measured, { ...brief, remedies: false }).options.find((o) => o.id === 'as-wanted');
    expect(then?.overall.verdict).toBe(verdict);
  });

  it('fails where what is to be connected is too much by itself', () => {
    const two = surveyOf(
      'easy-home',
      ...commonest,
      ['wanted.0.point.setting', '63 A'],
      ['supply.cutOut.rating', '60 A'],
    );
    const then = wholePlanInBritain(two, { ...brief, remedies: false }).options.find((o) => o.id === 'as-wanted');
    expect(then?.overall.failed.map((r) => r.check)).toContain('demand-within-cut-out');
  });
});

describe('several remedies at once', () => {
  const worn: readonly Change[] = [
    metered,
    ['supply.bonding.0.area', '6 mm²'],
    ['board.spareWays', 0],
    ['board.surgeProtection', false],
  ];
  const survey = surveyOf('easy-home', ...worn);
  const plan = wholePlanInBritain(survey, brief);
  const [best] = plan.options;

  it('lead the plan where nothing passes without them, each with its line', () => {
    expect(best?.overall.verdict).toBe('pass');
    expect([...(best?.remedies ?? [])].map((r) => r.id).sort()).toEqual([
      'main-bonding',
      'second-board',
      'surge-protection',
    ]);
    // by hand from the labour table: survey 0.75, notice 0.4, travel 40 min + 0.25, device 1, cable 18 m at 0.7 h each
    // 10 m, wall 0.2, point 1, tests 0.75, handover 0.75, enclosure 1.5; bonding 2, surge protection 0.5
    const circuit = 0.75 + 0.4 + 40 / 60 + 0.25 + 1 + 1.8 * 0.7 + 0.2 + 1 + 0.75 + 0.75 + 1.5;
    const wanted = plan.options.find((o) => o.remedies && o.id.startsWith('as-wanted'));
    expect(wanted?.hours.typical).toBeCloseTo(circuit + 2 + 0.5, 9);
    // a limiter saves the wait for the operator: that one leads
    expect(best?.id).toMatch(/^with-limiter/);
    expect(best?.notification.decision.route).toBe('notify-after');
    expect(renderText(planBlocks(plan))).toContain('What can be put right');
  });

  it('are each needed: without one of them the plan does not pass', () => {
    const [offer] = plan.remedies;
    for (const path of ['bonding', 'surgeProtection', 'newEnclosure']) {
      const others = (offer?.changes ?? []).filter((c) => !c.path.includes(path));
      expect(others.length).toBeLessThan(offer?.changes.length ?? 0);
      const then = wholePlanInBritain(withChanges(survey, others), { ...brief, remedies: false });
      expect(then.options[0]?.overall.verdict).not.toBe('pass');
    }
  });

  it('are small data beside the plan', () => {
    expect(JSON.stringify(plan.remedies).length).toBeLessThan(JSON.stringify(plan).length / 20);
    expect(JSON.parse(JSON.stringify(plan.remedies))).toEqual(plan.remedies);
  });

  it('are not sought where nobody asks for them', () => {
    const without = wholePlanInBritain(survey, { ...brief, remedies: false });
    expect(without.remedies).toEqual([]);
    expect(without.options.every((o) => o.remedies === undefined)).toBe(true);
  });
});

describe('routes to the network operator', () => {
  it('a limiter at 60 A lets the operator be told after the work', () => {
    const plan = wholePlanInBritain(surveyOf('easy-home'), brief);
    const offer = plan.remedies.find((o) => o.remedies.some((r) => r.id === 'limiter-for-notice'));
    expect(offer).toMatchObject({ verdict: 'pass', route: 'notify-after', routeBefore: 'apply-first' });
    expect(offer?.remedies.at(-1)?.what).toContain('60 A');
  });
});

describe('feeders', () => {
  it('a garage whose feeder is too small is offered a lower setting, a larger feeder, or a circuit of its own', () => {
    const settled = surveyOf(
      'garage-submain',
      ['supply.externalImpedance', '0.4 Ω'],
      ['board.runs.5.stretches.1.length', '38 m'],
    );
    const plan = wholePlanInBritain(settled, brief);
    const ids = plan.remedies.flatMap((o) => (o.option === 'as-wanted' ? o.remedies.map((r) => r.id) : []));
    expect(ids).toEqual(expect.arrayContaining(['lower-setting', 'larger-feeder', 'own-circuit']));
  });
});

describe('cables that are not for the route', () => {
  it('are named with the reason, and the candidate that leads is none of them', () => {
    const flatInGround = surveyOf('easy-home', metered, ['wanted.0.route.1.method', 'D']);
    const [point] = wholePlanInBritain(flatInGround, { ...brief, remedies: false }).options[0]?.points ?? [];
    expect(point?.unsuitable?.[0]).toMatchObject({ cable: 'flat twin and earth cable' });
    expect(point?.unsuitable?.[0]?.because).toContain('not for burial');
    // armoured cable has no rating under a ceiling with insulation, so that none is left and that is what is said
    expect(point?.cableResults[0]).toMatchObject({ check: 'cable-for-the-route', verdict: 'not-determined' });
  });

  it('a bonding conductor that is too small is what the report shows, not a cable that is too small besides', () => {
    const plan = wholePlanInBritain(surveyOf('easy-home', metered, ['supply.bonding.0.area', '6 mm²']), {
      ...brief,
      remedies: false,
    });
    expect([...new Set(plan.options[0]?.overall.failed.map((r) => r.check))]).toEqual(['main-bonding-conductor']);
  });
});
