import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { britishWords } from '../../src/great-britain.js';
import { known, recorder, unknown } from '../../src/index.js';
import type { OvercurrentKind, Run, Stretch } from '../../src/installation/index.js';
import { orderWords, separateResidual } from '../../src/installation/ordering.js';
import { readSurvey } from '../../src/io/index.js';
import { englishWords } from '../../src/report/index.js';
import { hoursWords } from '../../src/report/plan-work.js';
import { hoursOf, inAll } from '../../src/site/hours.js';
import { commonPractice, type PriceBook, quotationOf } from '../../src/site/index.js';
import { withAllWanted } from '../../src/site/installed.js';
import type { ItemFacts } from '../../src/site/item.js';
import { quantitiesOf } from '../../src/site/quantities.js';
import { settledWork } from '../../src/site/ways.js';
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
const needs: ItemFacts = { electrode: false, surgeProtection: false, limiters: [] };
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
  it('buys no cable that lies there, and a joint box where the new one begins', () => {
    const [first] = run.stretches as [Stretch];
    const armoured = { ...run.cable, construction: 'armoured', cores: 3, protective: 'core' } as const;
    const there: Stretch = { ...first, name: 'there', length: known(metres(12)), cable: armoured, existing: true };
    const joined = { ...run, stretches: [there, { ...first, length: known(metres(18)) }] };
    const bought = quantitiesOf(joined, survey.work, commonPractice, needs, britishWords);
    const count = (key: string) => bought.filter((i) => i.key.startsWith(key)).map((i) => i.quantity);
    // 18 m of route, 10 % waste, 1 m at each end; a gland at the new end of the old cable
    expect(count('cable:')).toEqual([22]);
    expect(count('joint-box')).toEqual([1]);
    expect(count('gland')).toEqual([1]);
    expect(count('fixing:')).toEqual([61]);
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

describe('a device as it is ordered', () => {
  const rcbo = { standard: 'EN 61009', type: 'B' } as const;
  const own = (run.residual ?? [])[0] as NonNullable<typeof run.residual>[number];
  const line = (kind: OvercurrentKind, more: Partial<Run> = {}): string =>
    orderWords({ ...run, ...more, device: { ...run.device, rating: known(amperes(32)), kind: known(kind) } });

  it('is an RCBO by rating, curve, residual part, poles and breaking capacity', () => {
    expect(line(rcbo)).toBe('RCBO 32 A, curve B, 30 mA type A, double pole, 6 kA, EN 61009');
    expect(find('protective-device')?.words).toBe('RCBO 40 A, curve B, 30 mA type A, double pole, 6 kA, EN 61009');
  });
  it('never calls a curve a type, under which another device would be bought', () => {
    for (const type of ['B', 'C', 'D'] as const)
      for (const standard of ['EN 60898', 'EN 61009'] as const)
        expect(line({ standard, type }, { residual: [] })).not.toMatch(/type [BCD]/);
    expect(line(rcbo, { residual: [{ ...own, type: known('B') }] })).toContain('curve B, 30 mA type B,');
  });
  it('says which poles open, and that this is open while nobody knows', () => {
    const poles = (opensAllLive: typeof own.opensAllLive, lines: Run['lines'] = ['L1']) => {
      const { opensAllLive: _, ...rest } = own;
      return line(rcbo, { lines, residual: [{ ...rest, ...(opensAllLive ? { opensAllLive } : {}) }] });
    };
    expect(poles(known(false))).toContain('single pole, neutral not switched');
    expect(poles(known(true), ['L1', 'L2', 'L3'])).toContain('four pole');
    for (const open of [unknown('marking'), undefined]) expect(poles(open)).toContain('poles to be decided');
    expect(line(rcbo, { residual: [] })).toContain('rating and type of its residual current part to be decided');
  });
  it('is an MCB, a fuse, a rewirable fuse, or of a kind to be decided', () => {
    expect(line({ standard: 'EN 60898', type: 'C' })).toBe('MCB 32 A, curve C, single pole, 6 kA, EN 60898');
    expect(line({ standard: 'BS 3871', type: '2' })).toBe('MCB 32 A, type 2, single pole, 6 kA, BS 3871');
    expect(line({ standard: 'BS 88-2' })).toBe('fuse 32 A, 6 kA, BS 88-2');
    expect(line({ standard: 'BS 3036' })).toBe('rewirable fuse 32 A, 6 kA, BS 3036');
    const open = { ...run.device, kind: unknown('marking'), rating: unknown('to be designed') };
    expect(orderWords({ ...run, device: open })).toBe(
      'overcurrent device rating to be decided, kind to be decided, 6 kA',
    );
  });
  it('is an RCD beside an MCB, and one along the circuit beside any', () => {
    const mcb = { ...run.device, kind: known({ standard: 'EN 60898', type: 'B' } as const) };
    const rated = { ...own, ratedCurrent: known(amperes(63)) };
    const late = { ...own, position: 'along-circuit' as const, delay: known('selective' as const) };
    expect(separateResidual({ ...run, device: mcb, residual: [rated] })).toEqual([
      'RCD 63 A, 30 mA type A, double pole',
    ]);
    expect(separateResidual({ ...run, residual: [own, late] })).toEqual([
      'RCD rated current to be decided, 30 mA type A, time-delayed (S), double pole',
    ]);
  });
});

describe('a trench', () => {
  const [stretch] = run.stretches as [Stretch];
  const buried: Run = {
    ...run,
    stretches: [{ ...stretch, name: 'garden', length: known(metres(35)), method: known('D'), containment: 'buried' }],
  };
  const work = { ...survey.work, surface: known('turf-or-soil' as const) };
  const byHand = { ...work, digging: known('hand' as const) };
  const byMachine = { ...work, digging: known('machine' as const) };
  const ofTrench = (w: typeof survey.work, r = buried) =>
    inAll(hoursOf(r, w, commonPractice, needs).tasks.filter((t) => /trench|sand|backfill|reinstatement/.test(t.task)));

  it('of 35 m takes 15 to 20 h by hand, much less by machine, and no clipped cable', () => {
    expect(ofTrench(byHand).typical).toBeGreaterThan(15);
    expect(ofTrench(byHand).typical).toBeLessThan(20);
    expect(ofTrench(byMachine).typical).toBeLessThan(0.7 * ofTrench(byHand).typical);
    const tasks = hoursOf(buried, byHand, commonPractice, needs).tasks.map((t) => t.task);
    expect(tasks).not.toContain('cable, each 10 m clipped');
  });
  it('spans every way to do it while the way is not known, and is likely the longest', () => {
    const open = ofTrench(survey.work);
    const surfaces = ['turf-or-soil', 'paving', 'concrete-or-asphalt'] as const;
    const ways = surfaces.flatMap((s) => [
      ofTrench({ ...byHand, surface: known(s) }),
      ofTrench({ ...byMachine, surface: known(s) }),
    ]);
    expect(open.low).toBeCloseTo(Math.min(...ways.map((w) => w.low)), 9);
    expect(open.typical).toBeCloseTo(Math.max(...ways.map((w) => w.typical)), 9);
    expect(open.high).toBeCloseTo(Math.max(...ways.map((w) => w.high)), 9);
  });
  it('counts its shortest length at the least, its longest at the most', () => {
    const between = { state: 'between' as const, least: metres(30), most: metres(40) };
    const [garden] = buried.stretches as [Stretch];
    const open = ofTrench(byHand, { ...buried, stretches: [{ ...garden, length: between }] });
    const exact = ofTrench(byHand);
    expect([open.low / exact.low, open.typical / exact.typical, open.high / exact.high]).toEqual([
      expect.closeTo(30 / 35, 9),
      expect.closeTo(40 / 35, 9),
      expect.closeTo(40 / 35, 9),
    ]);
    const unmeasured = hoursOf(
      { ...buried, stretches: [{ ...garden, length: unknown('measure it') }] },
      byHand,
      commonPractice,
      needs,
    );
    expect(unmeasured.complete).toBe(false);
  });
  it('needs sand, tape and reinstatement, and a machine where one digs; a duct in the ground too', () => {
    const listed = (r: Run, w: typeof survey.work) =>
      quantitiesOf(r, w, commonPractice, needs, britishWords)
        .filter((i) => /sand|tape|reinstatement|digger|fixing|containment/.test(i.key))
        .map((i) => [i.key, i.quantity]);
    const bed = [
      ['sand', 1.6],
      ['warning-tape', 35],
      ['reinstatement:turf-or-soil', 35],
    ];
    expect(listed(buried, byHand)).toEqual(bed);
    expect(listed(buried, byMachine)).toEqual([...bed, ['digger', 1]]);
    expect(listed(buried, survey.work).at(-1)).toEqual(['reinstatement', undefined]);
    const [garden] = buried.stretches as [Stretch];
    expect(listed({ ...buried, stretches: [{ ...garden, method: known('D1'), containment: 'duct' }] }, byHand)).toEqual(
      [['containment:duct', 39], ...bed],
    );
  });
  it('obeys the rules of a firm', () => {
    const rules = {
      ...commonPractice,
      sandPerMetre: 0,
      hours: { ...commonPractice.hours, 'trench by hand, each m': { low: 1, typical: 2, high: 3 } },
    };
    const dug = hoursOf(buried, byHand, rules, needs).tasks.find((t) => t.task === 'trench by hand, each m');
    expect(dug).toMatchObject({ low: 35, typical: 70, high: 105 });
    expect(quantitiesOf(buried, byHand, rules, needs, britishWords).some((i) => i.key === 'sand')).toBe(false);
  });
});

describe('an enclosure beside the board', () => {
  const keys = (work: Partial<typeof survey.work>) =>
    quantitiesOf(run, { ...survey.work, ...work }, commonPractice, needs, britishWords).map((i) => i.key);
  it('brings its terminal block, tails and earthing conductor along, unless the tails are new anyhow', () => {
    expect(keys({ newEnclosure: known(false) })).not.toContain('enclosure-tails');
    expect(keys({ newEnclosure: known(true) })).toEqual(expect.arrayContaining(['enclosure', 'enclosure-tails']));
    const renewed = keys({ newEnclosure: known(true), replaceTails: true });
    expect(renewed).toContain('tails');
    expect(renewed).not.toContain('enclosure-tails');
  });
  it('is open where nobody knows whether one is needed', () => {
    const { newEnclosure: _, ...work } = survey.work;
    const open = quantitiesOf(run, work, commonPractice, needs, britishWords).filter((i) => i.quantity === undefined);
    expect(open.map((i) => i.key)).toEqual(expect.arrayContaining(['enclosure', 'enclosure-tails']));
  });
  it.each([
    ['a way', known(1), {}, false],
    ['no way', known(0), {}, undefined],
    ['nobody knows how many ways', unknown('photograph of the board'), {}, undefined],
    ['a way, for which no device can be had', known(1), { devicesToBeHad: known(false) }, undefined],
    ['a way, and one is planned all the same', known(1), { newEnclosure: known(true) }, true],
  ])('is settled where there is %s', (_, spareWays, stated, needed) => {
    const { newEnclosure: __, ...work } = survey.work;
    const board = { ...survey.installation.board, spareWays };
    const of = { ...survey, work: { ...work, ...stated }, installation: { ...survey.installation, board } };
    const { newEnclosure } = settledWork(of, withAllWanted(of));
    expect(newEnclosure?.state === 'known' ? newEnclosure.value : undefined).toBe(needed);
  });
});

describe('hours', () => {
  it('rise with everything that comes on top', () => {
    const taskOf = (more: Partial<ItemFacts>, work: Partial<typeof survey.work> = {}) => {
      const before = hoursOf(run, survey.work, commonPractice, needs);
      const after = hoursOf(run, { ...survey.work, ...work }, commonPractice, { ...needs, ...more });
      for (const end of ['low', 'typical', 'high'] as const) expect(after[end]).toBeGreaterThan(before[end]);
      return after.tasks.map((t) => t.task).filter((t) => !before.tasks.some((b) => b.task === t));
    };
    expect(taskOf({ electrode: true })).toEqual(['earth electrode with test']);
    expect(taskOf({ surgeProtection: true })).toEqual(['surge protection']);
    expect(taskOf({ bonding: ['water', 'gas'] })).toEqual(['main bonding conductor, each']);
    expect(taskOf({ earthingConductor: true })).toEqual(['earthing conductor']);
    expect(taskOf({ limiters: [[]] })).toEqual(['load limiter with its current sensor', 'sensor cable, each 10 m']);
    expect(taskOf({}, { newEnclosure: known(true) })).toEqual(['new enclosure with main switch']);
    expect(taskOf({}, { replaceTails: true })).toEqual(['replacement of the tails']);
    expect(taskOf({}, { supplyChange: 'larger-fuse' })).toEqual(['attendance at the change of the supply']);
    expect(taskOf({}, { supplyChange: 'three-phase' })).toEqual([
      'new enclosure with main switch',
      'attendance at the change of the supply',
    ]);
  });
  it('of a sensor cable go by its length, or along the circuit; an unknown length leaves them open', () => {
    const cable = (work: Partial<typeof survey.work>, feeders: readonly Run[] = []) =>
      hoursOf(run, { ...survey.work, ...work }, commonPractice, { ...needs, limiters: [feeders] }).tasks.find(
        (t) => t.task === 'sensor cable, each 10 m',
      );
    expect(cable({})?.times).toBeCloseTo(1.8, 9);
    expect(cable({}, [run])?.times).toBeCloseTo(3.6, 9);
    expect(cable({ sensorCable: known(metres(5)) })?.times).toBe(0.5);
    expect(cable({ sensorCable: unknown('measure it') })?.gaps).toEqual([{ kind: 'fact', fact: 'work.sensorCable' }]);
  });
  it('are told as people know them', () => {
    const told = (low: number, typical: number, high: number) => hoursWords({ low, typical, high }, englishWords);
    expect(told(4.04, 7.027, 11.97)).toBe('7 h (4 to 12)');
    expect(told(0.1, 0.2, 0.4)).toBe('10 min (5 to 25)');
    expect(told(0.25, 1, 2.2)).toBe('1 h (0.5 to 2)');
    expect(told(93, 152, 287)).toBe('150 h (95 to 290)');
    expect(told(0.07, 0.07, 0.07)).toBe('5 min');
  });
  it('and material of a plan count what the survey has and is too small, once for the job', () => {
    const document = structuredClone(surveyDocument('workshop')) as {
      supply: { earthingConductor: unknown; bonding: { what: string; area: unknown }[] };
    };
    document.supply.earthingConductor = '2.5 mm²';
    document.supply.bonding = [
      { what: 'water', area: '4 mm²' },
      { what: 'gas', area: '4 mm²' },
    ];
    const [option] = planInBritain(readSurvey(document), { sheets: 'none', lengths: false }).options;
    const points = option?.points ?? [];
    expect(points.length).toBeGreaterThan(1);
    const words = points.flatMap((p) => p.items).flatMap((i) => (/^bonding|^earthing/.test(i.key) ? [i.words] : []));
    expect(words).toEqual([
      'main bonding conductor with clamp: water',
      'main bonding conductor with clamp: gas',
      'earthing conductor',
    ]);
    const times = (task: string) =>
      points.flatMap((p) => p.hours.tasks).flatMap((t) => (t.task === task ? [t.times] : []));
    expect([times('main bonding conductor, each'), times('earthing conductor')]).toEqual([[2], [1]]);
  });
  it('of a plan are a range for each option, more where a load limiter is fitted', () => {
    const { options } = planInBritain(survey, { sheets: 'none', lengths: false });
    const of = (id: string) => options.find((o) => o.id === id)?.hours;
    const [limited, lower, phases] = ['with-limiter', 'lower-setting', 'three-phase-supply'].map(of);
    for (const h of [limited, lower, phases]) {
      expect(h?.low).toBeLessThan(h?.typical ?? 0);
      expect(h?.typical).toBeLessThan(h?.high ?? 0);
    }
    expect(limited?.typical).toBeGreaterThan(lower?.typical ?? 99);
    expect(phases?.typical).toBeGreaterThan(limited?.typical ?? 99);
  });

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
    for (const end of ['low', 'typical', 'high'] as const)
      expect(option?.hours[end]).toBeCloseTo(
        parts.reduce((sum, p) => sum + (p.hours?.[end] ?? 0), 0),
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
