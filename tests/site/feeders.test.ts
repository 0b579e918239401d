import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { planInBritain } from '../support/plan.js';
import { type Json, surveyDocument } from '../support/surveys.js';

type Tree = { [key: string]: Json };
const garage = () => {
  const document = surveyDocument('garage-submain');
  // ranges take their time, and nothing here is about them
  (document.supply as Tree).externalImpedance = '0.45 Ω';
  const submain = ((document.board as Tree).runs as Tree[]).find((r) => r.id === 'garage submain') as Tree;
  const [, garden] = submain.stretches as Tree[];
  (garden as Tree).length = '38 m';
  return { document, submain };
};
const planned = (document: Tree) => planInBritain(readSurvey(document), { sheets: 'none', lengths: false });

describe('feeders on the way to a point', () => {
  it('are judged at the demand of what is below them, and the options follow from it', () => {
    const plan = planned(garage().document);
    const wanted = plan.options.find((o) => o.id === 'as-wanted');
    const [feeder] = wanted?.feeders ?? [];
    // On-Site Guide Table A2: 66 % of 2 A of lighting, 20 A of sockets in full, and the point in full
    expect(feeder?.demand.worst).toBeCloseTo(0.66 * 2 + 20 + 32, 9);
    expect(feeder?.demand.limit).toBe(50);
    expect(wanted?.overall.failed.map((r) => r.check)).toEqual(['device-carries-load', 'grouped-device']);
    expect(plan.options.map((o) => [o.id, o.overall.verdict, o.changes.join()])).toEqual([
      ['with-limiter', 'pass', 'load limiter with current sensors on garage submain, set to 50 A'],
      ['lower-setting', 'pass', 'setting of charge point ‘garage point’ lowered to 28 A'],
      ['as-wanted', 'fail', ''],
    ]);
    expect(plan.options[0]?.feeders[0]?.demand.worst).toBe(50);
  });

  it('carry no more than the meter of the supply has seen, unless something feeds in', () => {
    const worst = (change: (document: Tree) => void) => {
      const { document } = garage();
      (document.supply as Tree).meteredDemand = { current: '10 A', about: 'half hours of a year' };
      document.demand = { meteredMargin: '20 %', governing: 'metered-peak' };
      change(document);
      return planned(document).options.find((o) => o.id === 'as-wanted')?.feeders[0]?.demand.worst;
    };
    // 10 A with 20 %, and the point in full; by the guide the garage alone is 21.3 A
    expect(worst(() => undefined)).toBeCloseTo(10 * 1.2 + 32, 9);
    const solar = (document: Tree) => {
      const { runs } = document.board as { runs: Tree[] };
      const like = runs.find((r) => r.id === 'cooker') as Tree;
      const feeds = [{ kind: 'load', id: 'panels', purpose: 'generation', current: '16 A', lines: ['L1'] }];
      runs.push({ ...structuredClone(like), id: 'solar', feeds });
    };
    expect(worst(solar)).toBeCloseTo(0.66 * 2 + 20 + 32, 9);
    // nor where nobody says that every circuit is listed
    expect(worst((document) => delete (document.board as Tree).complete)).toBeCloseTo(0.66 * 2 + 20 + 32, 9);
  });

  it('go with the points that they feed where a new supply has three lines', () => {
    const { document } = garage();
    const { supply } = document as { supply: Tree };
    supply.cutOut = { kind: { standard: 'BS 1361' }, rating: '60 A' };
    supply.meteredDemand = { current: '55 A', about: 'half hours of a year' };
    const option = planned(document).options.find((o) => o.id === 'three-phase-supply');
    expect(option?.changes.join()).toContain('on L2, with garage submain and all that it feeds, the house stays on L1');
    const { runs = [] } = option?.installation.board ?? {};
    const [submain] = runs.filter((r) => r.id === 'garage submain');
    expect(submain?.lines).toEqual(['L2']);
    expect(submain?.feeds.flatMap((o) => (o.kind === 'board' ? o.runs.map((r) => r.lines.join()) : []))).toEqual([
      'L2',
      'L2',
      'L2',
    ]);
    expect(runs.filter((r) => r !== submain).every((r) => r.lines.join() === 'L1')).toBe(true);
  });

  it('count a switch-fuse ahead of their board: the switch behind it is protected by it, and the demand stays within it', () => {
    const of = (fuseAhead?: string) => {
      const { document, submain } = garage();
      const [board] = submain.feeds as Tree[];
      (board as Tree).mainSwitch = {
        rating: '32 A',
        ...(fuseAhead === undefined ? { noFuseAhead: true } : { fuseAhead }),
      };
      (document.wanted as Tree[]).forEach((w) => {
        ((w as Tree).point as Tree).setting = '10 A';
      });
      const feeder = planned(document).options.find((o) => o.id === 'as-wanted')?.feeders[0];
      const verdict = (check: string) => feeder?.demand.results.find((r) => r.check === check)?.verdict;
      return [verdict('main-switch-overload'), verdict('demand-within-main-switch'), feeder?.demand.limit];
    };
    // 21.3 A and the point at 10 A: 31.3 A; the feeder's device is 50 A
    expect(of()).toEqual(['fail', 'pass', 32]);
    expect(of('32 A')).toEqual(['pass', 'pass', 32]);
    expect(of('30 A')).toEqual(['pass', 'fail', 30]);
  });

  it('fail the plan when an earth fault on them is not cleared in time', () => {
    const { document, submain } = garage();
    (submain.device as Tree).kind = { standard: 'EN 60898', type: 'C' };
    const [best] = planned(document).options;
    // Z_s 0.45 + 44 m x 2 x 1.83 mΩ/m, hot, against 0.95 x 230 V / (10 x 50 A) = 0.437 Ω
    expect(best?.overall.failed.map((r) => r.check)).toContain('automatic-disconnection');
    expect(best?.feeders[0]?.overall.verdict).toBe('fail');
    expect(best?.points[0]?.assessment.overall.verdict).toBe('pass');
  });

  it('leave the plan open while the main switch at their end is not known', () => {
    const { document, submain } = garage();
    const [board] = submain.feeds as Tree[];
    delete (board as Tree).mainSwitch;
    const [best] = planned(document).options;
    expect(best?.overall.undetermined.map((r) => r.check)).toContain('demand-within-main-switch');
    expect(JSON.stringify(best?.unknown)).toContain('main switch of garage board');
  });

  it('carry no more than their device where a control at the origin does not see them', () => {
    const flats = surveyDocument('flats');
    for (const run of (flats.board as Tree).runs as Tree[])
      for (const fed of run.feeds as Tree[]) if (fed.kind === 'board') delete fed.control;
    const [wanted] = planned(flats).options;
    // four points of 32 A on a line, behind 100 A
    expect(wanted?.feeders.map((f) => f.demand.worst)).toEqual([128, 128]);
    expect(wanted?.overall.verdict).toBe('fail');
    const [kept] = planned(surveyDocument('flats')).options;
    expect(kept?.feeders.map((f) => [f.demand.worst, f.overall.verdict])).toEqual([
      [100, 'pass'],
      [100, 'pass'],
    ]);
  });
});
