/** What stands beside the verdict on the new work: existing circuits, load controls, readings that do not agree. */
import { expect, test } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { planBlocks, renderText } from '../../src/report/index.js';
import { changedSurvey } from '../hazards/hazard.js';
import { planInBritain } from '../support/plan.js';
import type { Json } from '../support/surveys.js';

const planned = (changes: readonly (readonly [string, Json | undefined])[], survey = 'easy-home') =>
  planInBritain(readSurvey(changedSurvey(survey, changes)), { sheets: 'none', lengths: false });
const none = { known: true, by: 'photograph with the cover off' };

test('an existing circuit that fails rules of today is an observation, and blocks nothing', () => {
  // sockets without a device of 30 mA: 411.3.3, two sources
  const plan = planned([
    ['board.runs.1.noResidual', none],
    ['board.runs.1.device.kind', { known: { standard: 'EN 60898', type: 'B' }, by: 'seen' }],
    ['board.runs.1.bathOrShower', { known: true, by: 'seen' }],
  ]);
  const { observations, options } = plan;
  const ring = observations.find((o) => o.run === 'ring downstairs');
  expect(ring?.failed.map((r) => r.check)).toContain('residual-current-position');
  expect(options[0]?.overall.verdict).toBe('pass');
  expect(renderText(planBlocks(plan))).toContain('existing circuits');
  // of circuits whose devices nobody looked at nothing is known
  expect(planned([]).observations.flatMap((o) => o.failed.map((r) => r.check))).not.toContain(
    'residual-current-position',
  );
});

test('a feeder that the new work relies on is judged with it, and is no observation', () => {
  const { observations, options } = planned([], 'garage-submain');
  expect(observations.map((o) => o.run)).not.toContain('garage submain');
  expect(options[0]?.feeders.map((f) => f.run)).toEqual(['garage submain']);
});

const gG = { known: { standard: 'BS 88-2' }, by: 'label' };
const control = (changes: readonly (readonly [string, Json | undefined])[]) =>
  planned(changes).options.find((o) => o.id === 'with-limiter');

test('a plan that rests on a load control says whether the fuse of the supply carries the excess', () => {
  // the maker of the limiter says so: the survey states it
  const excess = (of: ReturnType<typeof control>) => of?.control.filter((r) => r.check !== 'load-control-fails-safe');
  expect(control([])?.control.map((r) => [r.check, r.verdict])).toEqual([
    ['load-control-fails-safe', 'pass'],
    ['main-fuse-excess-known', 'pass'],
  ]);
  const limiter = 'load limiter of the charge points, current sensors on the meter tails';
  const silent = control([['work.limiterKeepsFuse', undefined]]);
  expect(excess(silent)?.map((r) => [r.verdict, r.gaps?.map((g) => g.kind === 'fact' && g.fact)])).toEqual([
    [
      'not-determined',
      [
        `whether the maker of ${limiter} states that it keeps the main fuse from operating`,
        `time in which ${limiter} makes room`,
      ],
    ],
  ]);
  expect(silent?.overall.verdict).toBe('not-determined');
  // gates of a gG fuse of 80 A, IEC 60269-1, from memory: 215 A for 10 s, 100 A for ever
  const stated = (time: string) =>
    control([
      ['supply.cutOut.kind', gG],
      ['work.limiterKeepsFuse', undefined],
      ['work.limiterReaction', { known: time, by: 'data sheet' }],
    ]);
  expect(excess(stated('8 s'))?.map((r) => r.verdict)).toEqual(['pass']);
  expect(stated('8 s')?.overall.verdict).toBe('pass');
  expect(excess(stated('60 s'))?.map((r) => r.verdict)).toEqual(['fail']);
  expect(stated('60 s')?.overall.verdict).toBe('fail');
});

test('readings that do not agree stand at the top and open the verdict', () => {
  const plan = planned([['supply.externalImpedance', { known: '2.5 Ω', by: 'meter' }]]);
  expect(plan.options[0]?.unknown.some((u) => u.disagree)).toBe(true);
  const blocks = planBlocks(plan);
  const verdict = blocks.findIndex((b) => b.kind === 'answer');
  const said = blocks.findIndex((b) => b.kind === 'list' && b.items.some((i) => i.startsWith('These do not agree')));
  expect(said).toBeGreaterThan(-1);
  expect(said).toBeLessThan(verdict);
  expect(JSON.stringify(blocks[verdict])).toContain('Some of what is stated cannot be true together');
});
