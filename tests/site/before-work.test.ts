import { describe, expect, it } from 'vitest';
import { known, unknown } from '../../src/core/index.js';
import { readSurvey } from '../../src/io/index.js';
import { beforeWorkOf } from '../../src/site/before-work.js';
import type { WorkFacts } from '../../src/site/index.js';
import { metres } from '../../src/units/index.js';
import { planInBritain } from '../support/plan.js';
import { surveyDocuments } from '../support/surveys.js';

/** A home in which all of it is settled: common practice, no source. */
const settled: WorkFacts = {
  tenure: known('owner-occupied'),
  newEnclosure: known(false),
  lead: known(metres(5)),
  toInlet: known(metres(3)),
  dataConnection: known('wireless'),
  devicesToBeHad: known(true),
};
const states = (work: WorkFacts) => beforeWorkOf(work).map((b) => [b.id, b.state]);

describe('what to settle before the day of the work', () => {
  it('is nothing where all is settled', () => {
    expect(beforeWorkOf(settled)).toEqual([]);
  });

  it('is whether terminals take the cable, where it is thicker than most are made for', () => {
    const of = (area: number) => beforeWorkOf(settled, { ends: [{ run: 'drive', area }] });
    expect(of(10)).toEqual([]);
    expect(of(16).map((b) => [b.id, b.state, b.whom])).toEqual([['terminals', 'open', 'maker']]);
    expect(of(16)[0]?.words).toContain('drive take conductors of 16 mm²');
  });

  it('is all of it where nobody asked', () => {
    expect(states({})).toEqual([
      ['owner-consent', 'open'],
      ['devices-for-board', 'open'],
      ['lead-reach', 'open'],
      ['data-connection', 'open'],
    ]);
  });

  it.each([
    ['a tenant', { tenure: known('rented') } as const, [['owner-consent', 'open']]],
    ['a tenant whose landlord agrees', { tenure: known('rented'), ownerAgrees: known(true) } as const, []],
    [
      'a landlord who does not',
      { tenure: known('rented'), ownerAgrees: known(false) } as const,
      [['owner-consent', 'in-the-way']],
    ],
    [
      'new tails, and nobody knows how they are made dead',
      { replaceTails: true } as const,
      [
        ['supply-off', 'open'],
        ['isolator', 'open'],
      ],
    ],
    ['new tails behind an isolator', { replaceTails: true, isolation: known('isolator-fitted') } as const, []],
    [
      'new tails while the operator changes the fuse, who can fit an isolator',
      { replaceTails: true, supplyChange: 'larger-fuse' } as const,
      [['isolator', 'open']],
    ],
    [
      'a board whose devices are no longer made',
      { devicesToBeHad: known(false) } as const,
      [['devices-for-board', 'in-the-way']],
    ],
    [
      'the same with an enclosure of its own behind an isolator',
      { devicesToBeHad: known(false), newEnclosure: known(true), isolation: known('isolator-fitted') } as const,
      [],
    ],
    ['a lead that is too short', { toInlet: known(metres(6)) } as const, [['lead-reach', 'in-the-way']]],
    [
      'a lead that may be too short',
      { toInlet: { state: 'between', least: metres(4), most: metres(6) } } as const,
      [['lead-reach', 'open']],
    ],
    ['no network', { dataConnection: known('none') } as const, [['data-connection', 'open']]],
    ['a network that nobody tested', { dataConnection: unknown('test it') } as const, [['data-connection', 'open']]],
  ])('%s', (_, work, due) => {
    expect(states({ ...settled, ...work })).toEqual(due);
  });

  it('stands in each option by the work of that option, and never in its verdict', () => {
    const home = readSurvey(surveyDocuments['easy-home']);
    const [option] = planInBritain(home).options;
    // a circuit in a dwelling is notifiable
    const always = ['building-rules'];
    expect(option?.beforeWork.map((b) => b.id)).toEqual(always);
    const refused = { ...home, work: { ...home.work, tenure: known('rented'), ownerAgrees: known(false) } as const };
    const [other] = planInBritain(refused).options;
    expect(other?.beforeWork.map((b) => b.id)).toEqual(['owner-consent', ...always]);
    expect(other?.overall.verdict).toBe(option?.overall.verdict);
  });

  it('asks about a limiter: readings where the estimate leaves too little, and its fall-back where nobody states it', () => {
    const asked = (left: number, fallbackOpen: boolean) =>
      beforeWorkOf(settled, { limiters: [{ name: 'limiter', room: { left, least: 6 }, fallbackOpen }] }).map(
        (b) => b.id,
      );
    expect(asked(6, false)).toEqual([]);
    expect(asked(5.9, false)).toEqual(['half-hour-readings']);
    expect(asked(20, true)).toEqual(['limiter-fallback']);
    expect(beforeWorkOf(settled, { limiters: [{ name: 'limiter', fallbackOpen: true }] })[0]).toMatchObject({
      whom: 'maker',
    });
  });

  it('names the rules for buildings in dwellings alone, and the fall-back no more once it is stated', () => {
    const home = readSurvey(surveyDocuments['easy-home']);
    const ids = (change: Partial<typeof home>) =>
      planInBritain({ ...home, ...change })
        .options.find((o) => o.id === 'with-limiter')
        ?.beforeWork.map((b) => b.id);
    expect(ids({})).toContain('building-rules');
    const shop = { ...home.about, premises: 'workplace' } as const;
    expect(ids({ about: shop })).not.toContain('building-rules');
    expect(ids({})).not.toContain('limiter-fallback');
    const { limiterFallback: _stated, ...silent } = home.work;
    expect(ids({ work: silent })).toContain('limiter-fallback');
  });

  it('counts the visit of whoever makes the tails dead', () => {
    const cottage = readSurvey(surveyDocuments['tt-cottage']);
    const keys = planInBritain(cottage).options[0]?.points[0]?.items.map((i) => i.key);
    expect(keys).toContain('isolation-visit');
    const work = { ...cottage.work, isolation: known('isolator-fitted') } as const;
    expect(planInBritain({ ...cottage, work }).options[0]?.points[0]?.items.map((i) => i.key)).not.toContain(
      'isolation-visit',
    );
  });
});
