/** Facts that everyday jobs turn on: what is assumed and fails, a cable that is kept, a sensor that cannot be fitted, a circuit that is out of use. */
import { describe, expect, it } from 'vitest';
import { inGreatBritain, ordinaryHome } from '../../src/great-britain.js';
import { readSurvey } from '../../src/io/index.js';
import { nextQuestions, type Plan, withChanges } from '../../src/site/index.js';
import { type ShortSurvey, surveyOf } from '../jobs/base.js';
import { wholePlanInBritain } from '../support/plan.js';
import type { Json } from '../support/surveys.js';

const brief = { sheets: 'none', lengths: false } as const;
const seen = <T>(known: T) => ({ known, by: 'seen' });
const cutOut = (rating: string) => ({ kind: { standard: 'BS 1361' }, rating: seen(rating) });
const home: ShortSurvey = {
  base: 'measured',
  metered: '20 A',
  circuits: ['lights', 'ring', 'cooker'],
  supply: { cutOut: cutOut('80 A') },
  points: [{ route: [['clipped outdoors', 10]] }],
};
const surveyed = (short: ShortSurvey) => readSurvey(surveyOf('an everyday job', short));
const planned = (short: ShortSurvey): Plan => {
  const assumed = short.base === 'by photograph' ? { assumptions: ordinaryHome } : {};
  return wholePlanInBritain(surveyed(short), { ...brief, ...assumed });
};
const option = (plan: Plan, id: string) => plan.options.find((o) => o.id === id);

describe('what would fail by an assumption alone', () => {
  // BS 7671, 551.7.2: the board carries the fuse and the solar together, 100 + 20 A by their devices
  const solar = (rating: Record<string, string | boolean>): ShortSurvey => ({
    base: 'by photograph',
    circuits: ['lights', 'ring', 'cooker', 'solar 16 A'],
    board: { rating },
    points: [{ route: [['clipped outdoors', 12]] }],
  });

  it('is open, and is asked for', () => {
    const short = solar({ unknown: 'label inside the cover' });
    const found = option(planned(short), 'as-wanted');
    expect(found?.overall.verdict).toBe('not-determined');
    expect(found?.overall.undetermined.map((r) => r.check)).toEqual(['board-overload', 'board-rating']);
    expect(found?.conditions.map((c) => c.assumption)).not.toContain('ordinary-home/board-100');
    if (!found) return;
    const [question] = nextQuestions(surveyed(short), found, inGreatBritain('2018+A2:2022'));
    expect(question).toMatchObject({ fact: 'board.rating', decides: true });
    expect(question?.answers.map((a) => [a.value, a.verdict])).toEqual([
      [60, 'fail'],
      [80, 'fail'],
      [100, 'fail'],
      [125, 'conditional'],
    ]);
  });

  it('fails once it is known, and passes on the other conditions with a board that is rated for both', () => {
    expect(option(planned(solar({ known: '100 A', by: 'label' })), 'as-wanted')?.overall.verdict).toBe('fail');
    expect(option(planned(solar({ known: '125 A', by: 'label' })), 'as-wanted')?.overall.verdict).toBe('conditional');
  });
});

describe('a switch-fuse ahead of a board that is fed from both sides', () => {
  // 551.7.2: 80 A and the 20 A of the solar are the 100 A of the board; 100 A and 20 A are not
  const solar = (
    mainSwitch: Record<string, Json>,
    circuits: ShortSurvey['circuits'] = ['lights', 'ring'],
  ): ShortSurvey => ({
    base: 'measured',
    circuits: [...circuits, 'solar 16 A'],
    board: { mainSwitch: { rating: seen('100 A'), noFuseAhead: mainSwitch.fuseAhead === undefined, ...mainSwitch } },
    points: [{ route: [['clipped outdoors', 12]] }],
  });
  const failed = (short: ShortSurvey) => option(planned(short), 'as-wanted')?.overall.failed.map((r) => r.check);

  it('keeps both within its rating, where it is small enough', () => {
    expect(failed(solar({}))).toEqual(['board-rating']);
    expect(failed(solar({ fuseAhead: seen('100 A') }))).toEqual(['board-rating']);
    expect(failed(solar({ fuseAhead: seen('80 A') }))).toEqual([]);
    // one that nobody read makes nothing better
    expect(option(planned(solar({ fuseAhead: { unknown: 'its label' } })), 'as-wanted')?.overall.failed).not.toEqual(
      [],
    );
  });

  it('is no way past a demand that is above it', () => {
    // 36 A by the guide, a shower of 37 A and the car: 105 A; with the solar board as it is the fuse of 80 A would carry it
    const big = solar({ fuseAhead: seen('80 A') }, ['lights', 'ring', 'shower 8.5 kW']);
    const judged = option(planned(big), 'as-wanted')?.overall;
    expect([...(judged?.failed ?? []), ...(judged?.undetermined ?? [])].map((r) => r.check)).toContain(
      'demand-within-main-switch',
    );
  });

  it('is offered, and gives what was offered', () => {
    const short = solar({});
    const offer = planned(short).remedies.find((o) => o.remedies.some((r) => r.id === 'fuse-ahead'));
    expect(offer).toMatchObject({ option: 'as-wanted', verdict: 'pass' });
    const then = wholePlanInBritain(withChanges(surveyed(short), offer?.changes ?? []), { ...brief, remedies: false });
    expect(option(then, 'as-wanted')?.overall.verdict).toBe('pass');
  });
});

describe('a cable that lies there already', () => {
  const kept = (area: string): ShortSurvey => ({
    ...home,
    points: [
      {
        cables: [['armoured 3-core', area, 'printed on the sheath']],
        route: [['buried', 18, { soilResistivity: '2.5 K·m/W' }]],
      },
    ],
  });
  const circuit = (plan: Plan) => option(plan, 'as-wanted')?.points[0];

  it('is judged at its size and at no other', () => {
    // 1.5 mm² carries less than 32 A however it is laid (BS 7671, Table 4E4A, column of method C: 27 A)
    const small = planned(kept('1.5 mm²'));
    expect(option(small, 'as-wanted')?.overall.verdict).toBe('fail');
    expect(circuit(small)?.design.passedOver.every((p) => p.candidate.area === 1.5)).toBe(true);
    const sound = planned(kept('6 mm²'));
    expect(option(sound, 'as-wanted')?.overall.verdict).toBe('pass');
    expect(circuit(sound)?.design.chosen?.area).toBe(6);
  });

  it('is neither bought nor laid, and is tested before it is relied on', () => {
    const point = circuit(planned(kept('6 mm²')));
    expect(point?.cableKept).toBe(true);
    expect(point?.items.filter((i) => /^(cable|trench|fixing|containment)/.test(i.key))).toEqual([]);
    expect(point?.hours.tasks.filter((t) => /trench|cable/.test(t.task))).toEqual([]);
    const told = option(planned(kept('6 mm²')), 'as-wanted')?.beforeWork.find((b) => b.id === 'kept-cable');
    expect(told?.words).toContain('insulation resistance');
  });

  it('gives way to a new one where that is offered beside it', () => {
    const [point] = kept('1.5 mm²').points;
    const both = planned({
      ...home,
      points: [{ ...point, cables: [...(point?.cables ?? []), 'armoured 3-core'], route: point?.route ?? [] }],
    });
    expect(option(both, 'as-wanted')?.overall.verdict).toBe('pass');
    expect(circuit(both)?.cableKept).toBeUndefined();
  });
});

describe('a limiter for which no sensor can be fitted', () => {
  const small: ShortSurvey = { ...home, metered: '30 A', supply: { cutOut: cutOut('60 A') } };
  it('is not offered; a lower setting is', () => {
    const plan = planned({ ...small, work: { sensorPossible: seen(false) } });
    expect(plan.discarded.find((d) => d.id === 'with-limiter')?.because).toContain('no current sensor');
    expect(plan.options[0]?.id).toBe('lower-setting');
    expect(JSON.stringify(plan.remedies)).not.toContain('load limiter');
  });
  it('is offered where one can', () => {
    const plan = planned({ ...small, work: { sensorPossible: seen(true) } });
    expect(plan.options[0]?.id).toBe('with-limiter');
  });
});

describe('a limiter that loses its sensor', () => {
  // 40 A x 1.2 = 48 A on 60 A leave 12 A
  const home60 = (limiterFallback: Record<string, string | boolean>): ShortSurvey => ({
    ...home,
    metered: '40 A',
    supply: { cutOut: cutOut('60 A') },
    work: { limiterFallback },
  });
  it.each([
    ['16 A', 'fail'],
    ['12 A', 'pass'],
    ['0 A', 'pass'],
  ])('and leaves the point at %s: %s', (current, verdict) => {
    expect(option(planned(home60({ known: current, by: 'instructions' })), 'with-limiter')?.overall.verdict).toBe(
      verdict,
    );
  });
  it('passes on the condition that it pauses, where the instructions do not say', () => {
    const found = option(planned(home60({ unknown: 'ask its maker' })), 'with-limiter');
    expect(found?.overall.verdict).toBe('conditional');
    expect(found?.conditions).toMatchObject([{ assumption: 'load-control/pauses-without-its-sensor', value: 0 }]);
    // one that leaves the point running is known to be none that is wanted: one that pauses is offered
    const runs = home60({ known: '16 A', by: 'instructions' });
    const plan = planned(runs);
    const offer = plan.remedies.find((o) => o.remedies.some((r) => r.id === 'limiter-that-pauses'));
    expect(offer?.verdict).toBe('pass');
    const then = withChanges(surveyed(runs), offer?.changes ?? []);
    expect(wholePlanInBritain(then, brief).options.some((o) => o.overall.verdict === 'pass')).toBe(true);
  });
  it('need not be asked about, where the points may run on in full', () => {
    // 20 A x 1.2 and 32 A are 56 A
    const plan = planned({
      ...home60({ unknown: 'ask its maker' }),
      metered: '20 A',
      board: { control: { name: 'limiter', limit: '60 A', controls: ['point 1'], keepsFuse: seen(true) } },
    });
    expect(option(plan, 'as-wanted')?.overall.verdict).toBe('pass');
  });
});

it('offers a limiter for the notice once', () => {
  // 45 A x 1.2 + 32 A = 86 A on 100 A: within the fuse, and more than the operator is only told of
  const plan = planned({ ...home, metered: '40 A', supply: {} });
  expect(option(plan, 'with-limiter')?.changes.join()).toContain('60 A');
  expect(plan.remedies.flatMap((o) => o.remedies.map((r) => r.id))).not.toContain('limiter-for-notice');
});

describe('what was there of a route that goes on as something new', () => {
  const twinAndEarth = {
    construction: 'flat-twin-and-earth',
    material: 'copper',
    insulation: 'thermoplastic-70',
    cores: 2,
    protective: 'bare-core',
    area: '6 mm²',
  };
  const goesOn = (base: ShortSurvey['base'], change: Record<string, Json> = {}): ShortSurvey => ({
    ...(base === 'measured' ? home : { base, circuits: ['lights', 'ring'] }),
    points: [
      {
        route: [
          ['clipped indoors', 9, { existing: true, cable: twinAndEarth }],
          ['clipped outdoors', 12, { jointAccessible: seen(true) }],
        ],
        change,
      },
    ],
  });

  it('is asked for its joints, and passes once somebody followed it', () => {
    const found = option(planned(goesOn('measured')), 'as-wanted');
    expect(found?.overall.undetermined.map((r) => r.check)).toEqual(['joint-accessible']);
    if (!found) return;
    const [question] = nextQuestions(surveyed(goesOn('measured')), found, inGreatBritain('2018+A2:2022'));
    expect(question).toMatchObject({ fact: 'run.jointsAccessible', decides: true });
    const followed = planned(goesOn('measured', { jointsAccessible: seen(true) }));
    expect(option(followed, 'as-wanted')?.overall.verdict).toBe('pass');
  });

  it('passes on condition in an ordinary home, and fails with a joint that cannot be got at', () => {
    const found = option(planned(goesOn('by photograph')), 'as-wanted');
    expect(found?.overall.verdict).toBe('conditional');
    expect(found?.conditions.map((c) => c.assumption)).toContain('ordinary-home/joints-within-reach');
    const out = option(planned(goesOn('by photograph', { jointsAccessible: seen(false) })), 'as-wanted');
    expect(out?.overall.failed.map((r) => r.check)).toEqual(['joint-accessible']);
  });

  it('has a joint that is known to be out of reach, whatever is usual', () => {
    const short = goesOn('by photograph');
    const [point] = short.points;
    const [first] = point?.route ?? [];
    const beyond = [
      'clipped indoors',
      3,
      { name: 'beyond', existing: true, cable: twinAndEarth, jointAccessible: seen(false) },
    ];
    const plan = planned({
      ...short,
      points: [{ ...point, route: [first, beyond, ...(point?.route.slice(1) ?? [])] } as (typeof short.points)[number]],
    });
    expect(option(plan, 'as-wanted')?.overall.failed.map((r) => r.check)).toEqual(['joint-accessible']);
  });
});

describe('a switch-fuse ahead of the board of which nobody says anything', () => {
  const unsaid = (mainSwitch: Record<string, Json>): ShortSurvey => ({ ...home, board: { mainSwitch } });

  it('leaves open what the demand has to stay within, not the overload of the switch; whether there is one is asked first', () => {
    const short = unsaid({ rating: seen('100 A') });
    const found = option(planned(short), 'as-wanted');
    expect(found?.overall.undetermined.map((r) => r.check)).toEqual(['demand-within-main-switch']);
    expect(found?.unknown.filter((u) => u.decides).map((u) => u.fact)).toEqual(['switch-fuse ahead of consumer unit']);
    if (!found) return;
    const questions = nextQuestions(surveyed(short), found, inGreatBritain('2018+A2:2022'));
    expect(questions.map((q) => q.fact)).toEqual(['mainSwitch.noFuseAhead']);
    // where there is one, its fuse is read
    const there = unsaid({ rating: seen('100 A'), noFuseAhead: seen(false) });
    const then = option(planned(there), 'as-wanted');
    const [next] = then ? nextQuestions(surveyed(there), then, inGreatBritain('2018+A2:2022')) : [];
    expect(next).toMatchObject({ fact: 'mainSwitch.fuseAhead', decides: true });
  });

  it('does not take away the protection of a smaller fuse ahead of it', () => {
    // 80 A in the cut-out, a switch of 80 A: a switch-fuse of 100 A between them changes nothing; one of 80 A behind 100 A does not protect 63 A
    const of = (rating: string, fuseAhead: string, cut: string) =>
      option(
        planned({
          ...home,
          supply: { cutOut: cutOut(cut) },
          board: { rating: seen(rating), mainSwitch: { rating: seen(rating), fuseAhead: seen(fuseAhead) } },
        }),
        'as-wanted',
      )?.overall.failed.map((r) => r.check);
    expect(of('80 A', '100 A', '80 A')).toEqual([]);
    expect(of('63 A', '80 A', '100 A')).toContain('main-switch-overload');
  });

  it('stays where a new board is put in place of the old one', () => {
    const none = {
      ...home,
      board: { spareWays: seen(0), mainSwitch: { rating: seen('100 A'), fuseAhead: seen('63 A') } },
    };
    const survey = surveyed(none);
    const offer = planned(none).remedies.find((o) => o.remedies.some((r) => r.id === 'new-board'));
    const then = withChanges(survey, offer?.changes ?? []).installation.board.mainSwitch;
    expect(then).toMatchObject({ rating: { value: 100 }, fuseAhead: { value: 63 } });
  });
});
