import { describe, expect, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import type { AssessmentOptions, LoadState } from '../../../src/codes/wiring-code.js';
import { stated } from '../../../src/core/index.js';
import {
  amperes,
  type ChargePoint,
  known,
  metres,
  milliamperes,
  ohms,
  type ResidualDevice,
  type Run,
  recorder,
  type Supply,
  seconds,
  unknown,
  writeSheet,
} from '../../../src/index.js';
import { verifySheet } from '../../../src/verify/index.js';
import { caseOf, chargePoint, circuit, house, load } from '../../support/house.js';
import { judged } from '../../support/judged.js';

const three: Partial<Supply> = { phases: known(3) };
const state = (a: number, b: number, c: number): LoadState => ({
  name: `${a}/${b}/${c} A`,
  currents: [amperes(a), amperes(b), amperes(c)],
});
// balance asks for loads other than charge points
const other = circuit({ id: 'other', feeds: [load(10)] });
// the edition that has all seven arrangements
const a1 = bs7671('2018+A1:2020');
const caseWith = (p: Partial<ChargePoint>, s: Partial<Supply>, o: AssessmentOptions = {}, run: Partial<Run> = {}) =>
  caseOf(house([circuit({ feeds: [{ ...chargePoint, ...p }], ...run }), other], s), 'ev', o);
const options = (
  s: Partial<Supply>,
  p: Partial<ChargePoint> = {},
  o: AssessmentOptions = {},
  run: Partial<Run> = {},
  code = a1,
) =>
  Object.fromEntries(
    code.earthingOptions(caseWith(p, s, o, run), { ...chargePoint, ...p }).map((x) => [x.arrangement, x]),
  );
const judge = (p: Partial<ChargePoint>, s: Partial<Supply> = {}, o: AssessmentOptions = {}) =>
  judged(a1, 'charge-point-earthing', caseWith(p, s, o)).map((r) => [r.check, r.verdict]);
/** A transformer of which nobody read the plate. */
const transformer: NonNullable<Supply['transformer']> = {
  rating: unknown(),
  voltage: unknown(),
  impedanceVoltage: unknown(),
  loss: unknown(),
  gridFaultPower: unknown(),
  owner: 'customer',
};
const rcd = (change: Partial<ResidualDevice> = {}): ResidualDevice => ({
  position: 'origin-of-circuit',
  type: known('A'),
  rating: known(milliamperes(30)),
  ...change,
});

describe('which arrangements remain', () => {
  test('single phase: no balance, the window remains, an ordinary rod does not', () => {
    const o = options({ electrode: { resistance: known(ohms(20)) } });
    expect(o['balanced-three-phase']?.possible).toBe('fail');
    expect(o['low-electrode']?.possible).toBe('fail');
    expect(o['low-electrode']?.figures[1]?.value).toBeCloseTo(2.74931693989, 9);
    expect(o['open-pen-detection-touch-voltage']?.possible).toBe('pass');
    expect(o['open-pen-detection-window']?.possible).toBe('pass');
    expect(o['tt-earthing']?.possible).toBe('not-determined');
    expect(o['electrical-separation']?.possible).toBe('not-determined');
    expect(JSON.parse(JSON.stringify(o))).toEqual(o);
  });

  test('three phases: the window is out, a single-phase point that can run alone spoils the balance', () => {
    const states = { loadStates: [state(60, 30, 30)] };
    const o = options(three, {}, states);
    expect(o['open-pen-detection-window']?.possible).toBe('fail');
    expect(o['open-pen-detection-window']?.because).toContain('inside 207 to 253 V');
    expect(o['balanced-three-phase']?.possible).toBe('fail');
    expect(o['balanced-three-phase']?.figures[0]?.value).toBeCloseTo(253, 6);
    const tied = { ...states, pointNeverAlone: 'contactor that opens without the other load' };
    const kept = options(three, {}, tied)['balanced-three-phase'];
    expect(kept?.possible).toBe('pass');
    expect(kept?.figures[0]?.value).toBeCloseTo(63.25, 6);
    const uneven = options(three, {}, { ...tied, loadStates: [state(60, 30, 30), state(100, 40, 40)] });
    expect(uneven['balanced-three-phase']?.possible).toBe('fail');
    expect(uneven['balanced-three-phase']?.figures[0]?.value).toBeCloseTo(84.333333, 5);
  });

  test('a three-phase point is judged by the vehicle that uses one of its lines, or two', () => {
    const point = { lines: ['L1', 'L2', 'L3'] as const };
    // alone on one line it leaves the neutral with nothing against it
    expect(options(three, point)['balanced-three-phase']?.possible).toBe('fail');
    const states = { loadStates: [state(80, 70, 70)] };
    expect(options(three, point, states)['balanced-three-phase']?.possible).toBe('fail');
    const tied = { ...states, pointNeverAlone: 'contactor that opens without the other load' };
    // 80, 38 and 38 A: 42 A of 156 A; 253 V × 42/156 = 68.1 V
    const kept = options(three, point, tied)['balanced-three-phase'];
    expect(kept?.possible).toBe('pass');
    expect(kept?.figures[0]?.value).toBeCloseTo((253 * 42) / 156, 6);
    const low = { loadStates: [state(70, 60, 60)], pointNeverAlone: 'contactor' };
    expect(options(three, point, low)['balanced-three-phase']?.possible).toBe('fail');
    // within the limit without an electrode, but (ii) is an arrangement by an electrode
    expect(options(three, point, tied)['low-electrode']?.possible).toBe('not-determined');
    const rod = { ...three, electrode: { resistance: known(ohms(5)) } };
    expect(options(rod, point, tied)['low-electrode']?.possible).toBe('pass');
  });

  test('an electrode that passes the published equation but not a held current or power says so', () => {
    const o = options({ electrode: { resistance: known(ohms(2.5)) } }, {}, { loadStates: [state(32, 0, 0)] });
    expect(o['low-electrode']?.possible).toBe('pass');
    const advice = o['low-electrode']?.results.filter((r) => r.weight === 'advice');
    expect(advice?.map((r) => r.verdict)).toEqual(['fail', 'fail']);
    expect(advice?.[0]?.limit?.value).toBeCloseTo(2.1875, 9);
    expect(advice?.[1]?.limit?.value).toBeCloseTo(1.39, 2);
    expect(o['low-electrode']?.because).toContain('holds its power');
  });

  test('without the demand of the installation the electrode is not judged good; the point alone can judge it bad', () => {
    expect(options({ electrode: { resistance: known(ohms(1)) } })['low-electrode']?.possible).toBe('not-determined');
    expect(options({ electrode: { resistance: known(ohms(3)) } })['low-electrode']?.possible).toBe('fail');
    expect(options({})['low-electrode']?.possible).toBe('not-determined');
    const busy = options({ electrode: { resistance: known(ohms(1)) } }, {}, { loadStates: [state(100, 0, 0)] });
    expect(busy['low-electrode']?.possible).toBe('fail');
  });

  test('TT earthing: separation of feed, reach, electrode', () => {
    const good: Partial<ChargePoint> = {
      electrode: { resistance: known(ohms(80)), separation: known(metres(4)) },
      feedSeparated: known(true),
    };
    const of = (p: Partial<ChargePoint>) =>
      options({}, { ...good, ...p }, {}, { residual: [rcd()] })['tt-earthing']?.possible;
    expect(of({})).toBe('pass');
    expect(of({ feedSeparated: known(false) })).toBe('fail');
    expect(of({ electrode: { resistance: known(ohms(80)), separation: known(metres(2.4)) } })).toBe('fail');
    expect(of({ electrode: { resistance: known(ohms(1700)), separation: known(metres(4)) } })).toBe('fail');
    expect(of({ electrode: { resistance: known(ohms(80)) } })).toBe('not-determined');
  });

  test('declared states that leave the point out answer nothing', () => {
    // the point draws 32 A: a declared 20 A, or 32 A on another line, has it standing still
    const low = { electrode: { resistance: known(ohms(1)) } };
    const of = (states: LoadState[], rest: object = {}) => options(low, {}, { loadStates: states, ...rest });
    expect(of([state(20, 0, 0)])['low-electrode']?.possible).toBe('not-determined');
    expect(of([state(20, 0, 0)])['low-electrode']?.because).toContain('runs at its full setting');
    expect(of([state(20, 0, 0), state(52, 0, 0)])['low-electrode']?.possible).toBe('pass');
    const tied = { pointNeverAlone: 'interlock', loadStates: [state(20, 30, 30)] };
    expect(options(three, {}, tied)['balanced-three-phase']?.possible).toBe('not-determined');
  });

  test('TT earthing: a device inside the point, or one with a set delay, does not protect it', () => {
    const onTt: Partial<ChargePoint> = {
      earthing: 'tt-earthing',
      electrode: { resistance: known(ohms(80)), separation: known(metres(4)) },
      feedSeparated: known(true),
    };
    const touch = (own: readonly ResidualDevice[], inside?: ResidualDevice) =>
      judged(
        a1,
        'charge-point-earthing',
        caseWith({ ...onTt, ...(inside ? { residual: inside } : {}) }, {}, {}, { residual: own }),
      ).find((r) => r.check === 'tt-touch-voltage')?.verdict;
    expect(touch([rcd()])).toBe('pass');
    expect(touch([rcd({ position: 'along-circuit' })])).toBe('pass');
    expect(touch([], rcd({ position: 'inside-equipment' }))).toBe('not-determined');
    expect(touch([rcd({ delayTime: known(seconds(0.3)) })])).toBe('not-determined');
    expect(touch([rcd({ rating: known(amperes(1)) }), rcd({ rating: unknown() })])).toBe('not-determined');
    // 80 ohms and 1 A are 80 V, whatever stands inside
    const slow = rcd({ rating: known(amperes(1)), delay: known('general') });
    expect(touch([slow], rcd({ position: 'inside-equipment' }))).toBe('fail');
  });

  test('where PME is barred only what does without its earth remains', () => {
    for (const place of ['caravan-park', 'marina'] as const) {
      const all = Object.values(options({ specialLocation: place }));
      expect(all.filter((o) => o.possible !== 'fail').map((o) => o.arrangement)).toEqual([
        'tt-earthing',
        'electrical-separation',
      ]);
      expect(all[2]?.because).toContain('barred');
    }
  });

  test('one vehicle on a transformer', () => {
    expect(options({}, { vehiclesSeparated: known(1) })['electrical-separation']?.possible).toBe('pass');
    expect(options({}, { vehiclesSeparated: known(2) })['electrical-separation']?.possible).toBe('fail');
  });
});

describe('the rule', () => {
  test('the earth of the supply alone fails; nothing chosen is not determined', () => {
    expect(judge({ earthing: 'supply-earth' })).toEqual([['charge-point-earthing', 'fail']]);
    expect(judge({})).toEqual([['charge-point-earthing', 'not-determined']]);
    // known to have none, and nothing in its place
    expect(judge({ openPenDevice: known('none') })).toEqual([['charge-point-earthing', 'fail']]);
  });
  test('a device that is there passes; one that is chosen has to be there', () => {
    expect(judge({ openPenDevice: known('open-pen-detection-touch-voltage') })).toEqual([
      ['open-pen-detection-touch-voltage', 'pass'],
    ]);
    expect(judge({ earthing: 'open-pen-detection-touch-voltage', openPenDevice: known('none') })).toEqual([
      ['open-pen-detection-touch-voltage', 'fail'],
    ]);
    expect(judge({ earthing: 'open-pen-detection-other' })).toEqual([['open-pen-detection-other', 'not-determined']]);
  });
  test.each([
    [undefined, 'not-determined'],
    [unknown('ask the maker'), 'not-determined'],
    [known(false), 'fail'],
    [known(true), 'pass'],
  ] as const)(
    'a device of another kind of which the maker shows equal safety %j: %s',
    (openPenEqualSafety, verdict) => {
      const openPenDevice = known('open-pen-detection-other' as const);
      expect(judge({ openPenDevice, ...stated({ openPenEqualSafety }) })).toEqual([
        ['open-pen-detection-other', verdict],
      ]);
      // without such a device a declaration is none
      expect(
        judge({
          earthing: 'open-pen-detection-other',
          openPenDevice: known('none'),
          ...stated({ openPenEqualSafety }),
        }),
      ).toEqual([['open-pen-detection-other', 'fail']]);
    },
  );
  test('a device that watches one of three lines', () => {
    expect(judge({ openPenDevice: known('open-pen-detection-window') }, three)).toEqual([
      ['single-phase-installation', 'fail'],
      ['line-neutral-window-margin', 'pass'],
    ]);
  });
  test('TN-S is taken for PME until the distributor confirms it, or the transformer is the owner’s', () => {
    const tnS = (supply: Partial<Supply>, point: Partial<ChargePoint> = {}) =>
      judge(point, { system: known('TN-S'), ...supply })[0]?.[1];
    expect(tnS({})).toBe('not-determined');
    expect(tnS({}, { earthing: 'supply-earth' })).toBe('not-determined');
    expect(tnS({}, { openPenDevice: known('open-pen-detection-touch-voltage') })).toBe('pass');
    expect(tnS({ separateEarthConfirmed: known(true) })).toBe('not-required');
    expect(tnS({ separateEarthConfirmed: known(false) }, { earthing: 'supply-earth' })).toBe('fail');
    expect(tnS({ transformer })).toBe('not-required');
    expect(tnS({ transformer: { ...transformer, owner: 'operator' } })).toBe('not-determined');
  });
  test('indoors and TT ask for nothing; an unknown system is taken for PME and never failed', () => {
    expect(judge({ outdoors: known(false) })[0]?.[1]).toBe('not-required');
    expect(judge({}, { system: known('TT') })[0]?.[1]).toBe('not-required');
    expect(judge({ earthing: 'supply-earth' }, { system: unknown() })[0]?.[1]).toBe('not-determined');
    expect(judge({ openPenDevice: known('open-pen-detection-touch-voltage') }, { system: unknown() })[0]?.[1]).toBe(
      'pass',
    );
  });
  test('the edition whose text was not available gives no verdict', () => {
    const a4 = bs7671('2018+A4:2026');
    expect(judged(a4, 'charge-point-earthing', caseWith({}, {}))[0]).toMatchObject({
      verdict: 'not-determined',
      gaps: [{ kind: 'edition' }],
    });
    expect(options({}, {}, {}, {}, a4)).toEqual({});
  });
  test('every failing check carries the caution, and the sheet keeps all arrangements', () => {
    const sheet = recorder('Earthing');
    const low = caseWith({ earthing: 'low-electrode' }, { electrode: { resistance: known(ohms(20)) } });
    const results = judged(a1, 'charge-point-earthing', low, sheet);
    expect(results.some((r) => r.verdict === 'fail')).toBe(true);
    for (const r of results.filter((x) => x.verdict === 'fail'))
      expect(r.caution).toContain('must not be energised on the strength of a calculation alone');
    const parts = writeSheet(sheet).lines.flatMap((l) => (l.kind === 'part' ? [l.part.title] : []));
    for (const title of ['low electrode', 'tt earthing', 'open pen detection other'])
      expect(parts).toContain(`point, ${title}`);
    expect(verifySheet(writeSheet(sheet)).problems).toEqual([]);
  });
});
