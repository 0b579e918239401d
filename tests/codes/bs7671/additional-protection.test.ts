import { describe, expect, it } from 'vitest';
import { concealed } from '../../../src/codes/bs7671/groups/concealed-cables.js';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../../src/codes/wiring-code.js';
import {
  between,
  type Cable,
  known,
  type Load,
  metres,
  milliamperes,
  type ResidualDevice,
  type Run,
  type Stretch,
  unknown,
} from '../../../src/index.js';
import { barePoint, caseOf, circuit, house, load, stretch } from '../../support/house.js';
import { judged } from '../../support/judged.js';

const code = bs7671('2018+A2:2022');
const device = (rating: ResidualDevice['rating'], change: Partial<ResidualDevice> = {}): ResidualDevice => ({
  position: 'origin-of-circuit',
  type: known('A'),
  rating,
  opensAllLive: known(true),
  ...change,
});
const mA = (i: number) => known(milliamperes(i));
const verdicts = (run: Run, options: AssessmentOptions = {}) =>
  Object.fromEntries(
    judged(code, 'residual-current', caseOf(house([run]), 'ev', options)).map((r) => [r.check, r.verdict]),
  );

describe('a concealed section, BS 7671 522.6.202 to .204', () => {
  const of = (section: Partial<Stretch>, cable: Partial<Cable> = {}) => {
    const run = circuit({ cable: { ...circuit().cable, ...cable }, stretches: [stretch(section)] });
    const found = concealed({
      circuit: caseOf(house([run]), 'ev'),
      section: run.stretches[0] as Stretch,
    });
    return found.state === 'known' ? found.value : found.state;
  };
  const deep = { depth: known(metres(0.05)) };
  it('is what is said of it, unless a depth speaks against it', () => {
    expect(of({ concealedShallow: known(true) })).toBe(true);
    expect(of({ concealedShallow: known(false) })).toBe(false);
    expect(of({ concealedShallow: known(false), depth: known(metres(0.02)) })).toBe('unknown');
    expect(of({ concealedShallow: known(false), depth: known(metres(0.02)), containment: 'conduit' })).toBe(false);
    expect(of({ concealedShallow: unknown(), depth: known(metres(0.02)) })).toBe(true);
  });
  it('goes by the depth in the wall, and at any depth by metal parts', () => {
    const timber = { metalParts: known(false) };
    expect(of({ depth: known(metres(0.0499)) })).toBe(true);
    expect(of({ ...deep })).toBe('unknown');
    expect(of({ ...deep, ...timber })).toBe(false);
    expect(of({ ...deep, metalParts: known(true) })).toBe(true);
    expect(of({ ...timber, depth: between(metres(0.01), metres(0.04)) })).toBe(true);
    expect(of({ ...timber, depth: between(metres(0.05), metres(0.08)) })).toBe(false);
    expect(of({ ...timber, depth: between(metres(0.04), metres(0.06)) })).toBe('unknown');
    expect(of({ ...timber, depth: unknown() })).toBe('unknown');
    expect(of({ ...timber, depth: known(metres(0)) })).toBe('unknown');
    expect(of({ ...deep, concealedShallow: known(false), metalParts: known(true) })).toBe(true);
    // neither a framed wall nor a depth is described
    expect(of({ concealedShallow: known(false), metalParts: known(true) })).toBe('unknown');
  });
  it('goes by the method where nothing else is said', () => {
    const by = (method: 'A1' | 'B' | 'C' | 'D' | 'E' | '100' | '102' | '103', change: Partial<Stretch> = {}) =>
      of({ method: known(method), ...change });
    expect(by('102')).toBe(true);
    expect(by('102', { ...deep, metalParts: known(false) })).toBe(false);
    for (const method of ['A1', 'B', 'C', '100', '103'] as const) expect(by(method)).toBe('unknown');
    expect(by('C', { containment: 'clipped' })).toBe('unknown');
    expect(by('A1', { containment: 'trunking' })).toBe('unknown');
    expect(by('B', { containment: 'trunking' })).toBe(false);
    expect(by('E', { containment: 'clipped' })).toBe(false);
    expect(by('E', { concealedShallow: unknown() })).toBe('unknown');
    expect(by('D', { depth: known(metres(0.02)), concealedShallow: known(true) })).toBe(false);
    expect(of({ method: unknown(), containment: 'tray' })).toBe('unknown');
    // said not to be shallow, and in a framed wall all the same: the studs may be of metal
    expect(by('103', { concealedShallow: known(false) })).toBe('unknown');
    expect(by('A1', { concealedShallow: known(false), metalParts: known(false) })).toBe(false);
  });
  it('is exempt in earthed metal, and in no other armour or conduit', () => {
    const said = { concealedShallow: known(true) };
    expect(of(said, { construction: 'armoured', protective: 'core' })).toBe(false);
    expect(of(said, { construction: 'armoured', protective: 'armour' })).toBe(false);
    expect(of(said, { construction: 'armoured', protective: 'none' })).toBe(true);
    expect(of(said, { construction: 'single-core', protective: 'conduit' })).toBe(false);
    expect(of({ ...said, containment: 'conduit' }, { construction: 'single-core', protective: 'separate' })).toBe(true);
  });
});

describe('what nobody has to know', () => {
  const silent = { feeds: [load(10)] } as const;
  it('how the cable lies, behind a device of 30 mA', () => {
    const found = verdicts(circuit({ ...silent, residual: [device(mA(30))] }));
    expect(found['residual-current-concealed-cable']).toBe('pass');
    expect(found['residual-current-bath-or-shower']).toBe('pass');
    expect(found['residual-current-position']).toBe('pass');
  });
  it('it stays open behind 100 mA and behind none', () => {
    for (const residual of [[device(mA(100))], []]) {
      const found = verdicts(circuit({ ...silent, residual }));
      expect(found['residual-current-concealed-cable']).toBe('not-determined');
      expect(found['residual-current-bath-or-shower']).toBe('not-determined');
    }
  });
  it('what is known fails behind 100 mA', () => {
    const stretches = [stretch({ concealedShallow: known(true) })];
    const found = verdicts(circuit({ ...silent, stretches, bathOrShower: known(true), residual: [device(mA(100))] }));
    expect(found['residual-current-concealed-cable']).toBe('fail');
    expect(found['residual-current-bath-or-shower']).toBe('fail');
  });
});

describe('luminaires, BS 7671 411.3.4', () => {
  const of = (kind: NonNullable<AssessmentOptions['premises']>['kind'], rating: number) =>
    verdicts(circuit({ residual: [device(mA(rating))], feeds: [load(4, { purpose: 'lighting' })] }), {
      premises: { kind },
    })['residual-current-lighting'];
  it('of a household', () => {
    for (const kind of ['dwelling', 'multiple-occupation', 'higher-risk-residential'] as const) {
      expect(of(known(kind), 100)).toBe('fail');
      expect(of(known(kind), 30)).toBe('pass');
    }
  });
  it('of no household, and where that is argued', () => {
    expect(of(known('other'), 100)).toBeUndefined();
    for (const kind of [known('care-home'), known('student-accommodation'), unknown()] as const) {
      expect(of(kind, 100)).toBe('not-determined');
      expect(of(kind, 30)).toBe('pass');
    }
  });
});

describe('a device whose rating or delay is not known', () => {
  const inside = (change: Partial<ResidualDevice>): Run =>
    circuit({
      residual: [device(mA(100))],
      feeds: [{ ...barePoint, residual: device(mA(30), { position: 'inside-equipment', pointsServed: 1, ...change }) }],
    });
  it('leaves open what a 100 mA device ahead of it would fail', () => {
    for (const change of [{ rating: unknown() }, { delay: unknown() }]) {
      const found = verdicts(inside(change));
      expect(found['residual-current-rating']).toBe('not-determined');
      expect(found['residual-current-one-per-point']).toBe('not-determined');
    }
    expect(verdicts(inside({}))['residual-current-rating']).toBe('pass');
    expect(verdicts(inside({ rating: mA(100) }))['residual-current-rating']).toBe('fail');
    expect(verdicts(inside({ rating: between(milliamperes(100), milliamperes(300)) }))['residual-current-rating']).toBe(
      'fail',
    );
  });
  it('is no device of its own where it is slow, or serves others', () => {
    const own = (change: Partial<ResidualDevice>) => verdicts(inside(change))['residual-current-one-per-point'];
    expect(own({})).toBe('pass');
    expect(own({ rating: mA(100) })).toBe('fail');
    // up to 30 mA there is no selective device: the marking is read again
    expect(own({ delay: known('selective') })).toBe('not-determined');
    expect(own({ pointsServed: 2 })).toBe('fail');
  });
});

describe('type of the device by what the makers of the loads say, BS 7671 531.3.3', () => {
  const of = (type: 'AC' | 'A' | 'F' | 'B', loads: readonly Load[]) =>
    verdicts(circuit({ residual: [device(mA(30), { type: known(type) })], feeds: loads }))['residual-current-type'];
  const pump = (residualType?: Load['residualType']) =>
    load(10, { purpose: 'heat-pump', id: 'pump', ...(residualType ? { residualType } : {}) });
  it('is open for A and F, and B suits in any case', () => {
    expect(['AC', 'A', 'F', 'B'].map((t) => of(t as 'A', [pump()]))).toEqual([
      'fail',
      'not-determined',
      'not-determined',
      'pass',
    ]);
  });
  it('is the highest that is asked for', () => {
    const asks = (t: 'AC' | 'A' | 'F' | 'B') => pump(known(t));
    expect(of('A', [asks('A')])).toBe('pass');
    expect(of('A', [asks('F')])).toBe('fail');
    expect(of('F', [asks('F'), load(5)])).toBe('pass');
    expect(of('A', [pump(), { ...asks('B'), id: 'second' }])).toBe('fail');
    expect(of('AC', [asks('AC')])).toBeUndefined();
    expect(of('AC', [asks('AC'), load(5)])).toBe('fail');
  });
});
