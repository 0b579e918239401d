/** What rules do exactly at their limits, and what they leave alone. */
import { describe, expect, it, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../../src/codes/wiring-code.js';
import {
  amperes,
  assess,
  type Board,
  between,
  known,
  type Load,
  milliamperes,
  ohms,
  type ResidualDevice,
  type Run,
  ratio,
  recorder,
  seconds,
  unknown,
  writeSheet,
} from '../../../src/index.js';
import { caseOf, chargePoint, circuit, house } from '../../support/house.js';
import { judged } from '../../support/judged.js';

const code = bs7671('2018+A2:2022');
const load = (change: Partial<Load> = {}): Load => ({
  kind: 'load',
  id: 'sockets',
  purpose: 'socket-outlets',
  current: known(amperes(20)),
  lines: ['L1'],
  ...change,
});
const found = (run: Run, check: string, supply = {}, options: AssessmentOptions = {}) =>
  assess(code, house([run], supply), run.id, options).results.find((r) => r.check === check);

test('additional protection asks for 30 mA, BS 7671 722.531.3.101, 411.3.3', () => {
  const behind = (rating: number) =>
    circuit({
      residual: [
        {
          position: 'origin-of-circuit',
          type: known('A'),
          rating: known(milliamperes(rating)),
          opensAllLive: known(true),
          bidirectional: known(true),
        },
      ],
      feeds: [{ ...chargePoint, directCurrentDetection: known(true) }],
    });
  expect(found(behind(30), 'residual-current-rating')).toMatchObject({ verdict: 'pass', limit: { value: 0.03 } });
  expect(found(behind(30.1), 'residual-current-rating')?.verdict).toBe('fail');
});

describe('arc detection, BS 7671 421.1.7', () => {
  const premises: AssessmentOptions = { premises: { kind: known('care-home'), arcDetection: known(false) } };
  const verdict = (run: Run) => judged(code, 'arc-detection', caseOf(house([run]), run.id, premises))[0]?.verdict;
  const sockets = (rating: number, change: Partial<Run> = {}) =>
    circuit({ device: { ...circuit().device, rating: known(amperes(rating)) }, feeds: [load()], ...change });
  it('is asked of single-phase circuits with socket-outlets up to 32 A, whatever the rating of the device', () => {
    const rated = (a: number) => ({ feeds: [load({ purpose: 'socket-outlets', socketRating: known(amperes(a)) })] });
    expect(verdict(sockets(32))).toBe('fail');
    expect(verdict(sockets(40))).toBe('fail');
    expect(verdict(sockets(32, rated(32)))).toBe('fail');
    expect(verdict(sockets(32, rated(32.1)))).toBe('not-required');
    const either = between(amperes(16), amperes(63));
    const open = { feeds: [load({ purpose: 'socket-outlets', socketRating: either })] };
    expect(verdict(sockets(32, open))).toBe('not-determined');
    expect(verdict(sockets(32, { lines: ['L1', 'L2', 'L3'] }))).toBe('not-required');
    expect(verdict(sockets(32, { feeds: [load({ purpose: 'lighting' })] }))).toBe('not-required');
    expect(verdict(sockets(32, { feeds: [load({ purpose: 'cooking', withSocket: true })] }))).toBe('fail');
    expect(verdict(sockets(32, { feeds: [load({ purpose: 'cooking', withSocket: false })] }))).toBe('not-required');
    expect(verdict(sockets(32, { feeds: [load({ purpose: 'cooking' })] }))).toBe('not-determined');
  });
  it('is not asked of a feeder, though sockets are behind it', () => {
    const garage: Board = {
      kind: 'board',
      noResidual: known(true),
      id: 'garage',
      runs: [{ ...sockets(20), id: 'garage sockets' }],
    };
    expect(verdict(sockets(32, { feeds: [garage] }))).toBe('not-required');
    // a socket-outlet of its own makes the difference
    expect(verdict(sockets(32, { feeds: [garage, load({ purpose: 'socket-outlets' })] }))).toBe('fail');
  });
});

describe('disconnection by a 32 A type B device, BS 7671 411.4.4 and Table 41.3', () => {
  // 0.95 x 230 V / 160 A is 1.3656 ohm; the table prints 1.37 ohm
  const at = (zs: number) => {
    const plain = assess(code, house([circuit()]), 'ev').figures.loopImpedance as number;
    return assess(code, house([circuit()], { externalImpedance: known(ohms(0.35 + zs - plain)) }), 'ev').results;
  };
  const preferred = (zs: number) => at(zs).find((r) => r.check === 'disconnection-without-residual-current-device');
  const all = (zs: number) => JSON.stringify(at(zs).filter((r) => r.check === 'automatic-disconnection'));
  it('says that a value between the exact and the printed limit lies there', () => {
    expect(all(1.368)).toMatch(/1\.37/);
    expect(all(1.36)).not.toMatch(/1\.37/);
  });
  it('says whether it rests on a residual current device', () => {
    const texts = [1.36, 1.5].map((zs) => preferred(zs)?.because);
    expect(texts[0]).toBe('Disconnection does not rest on a residual current device.');
    expect(texts[1]).not.toBe(texts[0]);
  });
});

describe('the exact voltage at the end of a circuit', () => {
  const voltage = (feeds: Run['feeds']) => {
    const { figures } = assess(code, house([circuit({ feeds })]), 'ev');
    return [figures.voltageAtLowestSupply as number, figures.voltageAtHighestSupply as number];
  };
  it('is the same for two loads at one place as for one of their sum', () => {
    const [half, other] = [load({ current: known(amperes(10)) }), load({ id: 'more', current: known(amperes(10)) })];
    voltage([half, other]).forEach((v, i) => {
      expect(v).toBeCloseTo(voltage([load()])[i] ?? 0, 9);
      expect(v).toBeLessThan(voltage([half])[i] ?? 0);
    });
  });
  it('of a run that feeds a board and a load counts the current of both', () => {
    const garage: Board = {
      kind: 'board',
      noResidual: known(true),
      id: 'garage',
      runs: [{ ...circuit({ feeds: [load()] }), id: 'garage sockets' }],
    };
    const near = load({ id: 'near', current: known(amperes(10)) });
    const at = (feeds: Run['feeds'], amps: number) => {
      const options: AssessmentOptions = { feederDemand: { ev: amperes(amps) } };
      return assess(code, house([circuit({ feeds })]), 'ev', options).figures.voltageAtLowestSupply as number;
    };
    expect(at([garage, near], 30)).toBeCloseTo(at([garage], 30), 9);
    expect(at([garage, near], 30)).toBeLessThan(voltage([near])[0] ?? 0);
  });
  it('is the supply’s, 216.2 to 253 V in Great Britain, where next to nothing is drawn', () => {
    const [lowest, highest] = voltage([load({ current: known(amperes(0.01)) })]);
    expect(lowest).toBeCloseTo(0.94 * 230, 2);
    expect(highest).toBeCloseTo(1.1 * 230, 2);
  });
  it('takes a load whose power factor is not stated at 1', () => {
    expect(voltage([load({ holds: 'power' })])).toEqual(voltage([load({ holds: 'power', powerFactor: ratio(1) })]));
    expect(voltage([load({ holds: 'power' })])).not.toEqual(
      voltage([load({ holds: 'power', powerFactor: ratio(0.8) })]),
    );
  });
});

describe('what is not known stays open', () => {
  it('the rating of the device, on which the disconnection time rests', () => {
    const open = circuit({ device: { ...circuit().device, rating: unknown('its marking') } });
    const result = found(open, 'automatic-disconnection');
    expect(result?.verdict).toBe('not-determined');
    expect(JSON.stringify(result)).toContain('its marking');
  });
  it('a protective conductor that the cable does not give', () => {
    const separate = circuit({ cable: { ...circuit().cable, construction: 'single-core', protective: 'separate' } });
    expect(found(separate, 'protective-conductor')?.verdict).toBe('not-determined');
    expect(found(circuit(), 'protective-conductor')?.verdict).toBe('pass');
  });
  it('the residual current device of socket-outlets, and of no lighting', () => {
    const behind = (purpose: Load['purpose']) => circuit({ feeds: [load({ purpose })] });
    expect(found(behind('socket-outlets'), 'residual-current-socket-outlets')?.verdict).toBe('not-determined');
    expect(found(behind('lighting'), 'residual-current-socket-outlets')).toBeUndefined();
  });
});

test('under A1 the window device is judged itself where the supply has one phase, and only there', () => {
  const results = (phases: 1 | 3) => {
    const option = bs7671('2018+A1:2020')
      .earthingOptions(caseOf(house([circuit()], { phases: known(phases) }), 'ev'), chargePoint)
      .find((o) => o.arrangement === 'open-pen-detection-window');
    return [option?.possible, option?.results.length];
  };
  expect(results(1)).toEqual(['pass', 2]);
  expect(results(3)).toEqual(['fail', 1]);
});

test('a 32 A gG fuse has to blow within 5 s: BS 7671:2008, Table 41.4 prints 1.84 ohm at 230 V', () => {
  const fused = circuit({ device: { kind: known({ standard: 'BS 88-2' }), rating: known(amperes(32)) } });
  const advice = found(fused, 'line-neutral-fault-clears');
  expect(advice?.limit?.value).toBeCloseTo(230 / 1.84, 6);
});

test('a cooker unit with a socket-outlet on 40 A has 0.4 s, one without 5 s: BS 7671 411.3.2.2 and .3', () => {
  const time = (change: Partial<Load>) => {
    const device = { ...circuit().device, rating: known(amperes(40)) };
    const run = circuit({ device, feeds: [load({ purpose: 'cooking', ...change })] });
    const sheet = recorder('times');
    assess(code, house([run]), run.id, {}, sheet);
    return /"name":"requiredTime"[^}]*"value":([\d.]+)/.exec(JSON.stringify(writeSheet(sheet)))?.[1];
  };
  expect(time({ withSocket: true })).toBe('0.4');
  expect(time({ withSocket: false })).toBe('5');
  // of a unit nobody looked at it is open between 32 A and 63 A
  expect(time({})).toBeUndefined();
  expect(time({ purpose: 'socket-outlets' })).toBe('0.4');
});

test('the electrode of a point is judged by the smallest undelayed device ahead of it', () => {
  const device = (rating: number): ResidualDevice => ({
    position: 'along-circuit',
    type: known('A'),
    rating: known(milliamperes(rating)),
  });
  // 1 Ω, so that the touch voltage in V is the rated residual current in A
  const earthed = { ...chargePoint, electrode: { resistance: known(ohms(1)) } };
  const ahead = (...devices: ResidualDevice[]) => {
    const run = circuit({ residual: devices, feeds: [earthed] });
    return code
      .earthingOptions(caseOf(house([run]), run.id), earthed)
      .find((o) => o.arrangement === 'tt-earthing')
      ?.results.find((r) => r.check === 'tt-touch-voltage')?.value?.value;
  };
  expect(ahead(device(100), device(30))).toBe(0.03);
  expect(ahead(device(30), device(100))).toBe(0.03);
  const general = { ...device(100), delay: known('general' as const) };
  expect(ahead({ ...device(30), delayTime: known(seconds(0.5)) }, general)).toBe(0.1);
  // nobody knows whether a delay is set on it
  expect(ahead({ ...device(30), delayTime: known(seconds(0.5)) }, device(100))).toBeUndefined();
});

test('a run may bear a name that every object inherits', () => {
  const under = (id: string) => {
    const garage: Board = {
      kind: 'board',
      noResidual: known(true),
      id: 'garage',
      runs: [{ ...circuit({ feeds: [load()] }), id: 'garage sockets' }],
    };
    const feeder = { ...circuit({ feeds: [garage] }), id };
    return [{}, { feederDemand: { [id]: amperes(30) } }].map((options) =>
      JSON.stringify(assess(code, house([feeder]), id, options)).replaceAll(id, 'x'),
    );
  };
  for (const id of ['hasOwnProperty', 'constructor', '__proto__']) expect(under(id)).toEqual(under('feeder one'));
});
