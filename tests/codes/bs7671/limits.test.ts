/** Rules on both sides of their limits: what decides on safety turns there and nowhere else. */
import { describe, expect, it, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import {
  amperes,
  assess,
  celsius,
  kelvinMetresPerWatt,
  known,
  type Load,
  metres,
  milliamperes,
  ohms,
  type ResidualDevice,
  type Run,
  type Stretch,
  type Supply,
  squareMillimetres,
  unknown,
} from '../../../src/index.js';
import { chargePoint, circuit, house, load, stretch } from '../../support/house.js';

const code = bs7671('2018+A2:2022');
const results = (run: Run, supply: Partial<Supply> = {}) => assess(code, house([run], supply), run.id).results;
const found = (run: Run, check: string, supply: Partial<Supply> = {}) =>
  results(run, supply).find((r) => r.check === check);
const residual = (change: Partial<ResidualDevice> = {}): ResidualDevice => ({
  position: 'origin-of-circuit',
  type: known('A'),
  rating: known(milliamperes(30)),
  opensAllLive: known(true),
  bidirectional: known(true),
  ...change,
});
const behind = (rating: number, purpose: Load['purpose']) =>
  circuit({
    device: { ...circuit().device, rating: known(amperes(rating)) },
    residual: [residual()],
    feeds: [load(20, { purpose })],
  });

describe('time to disconnect, BS 7671 411.3.2.2 to 411.3.2.4', () => {
  // 0.4 s by Table 41.1 on TN at 230 V, 5 s beyond: fixed equipment up to 32 A, socket-outlets up to 63 A
  it.each([
    [32, 'other', 0.4],
    [35, 'other', 5],
    [63, 'socket-outlets', 0.4],
    [64, 'socket-outlets', 5],
  ] as const)('behind %d A for %s: %d s', (rating, purpose, seconds) => {
    const both = found(behind(rating, purpose), 'automatic-disconnection')?.alternatives ?? [];
    const own = both.find((r) => r.check === 'disconnection-by-residual-current-device');
    expect(own?.limit?.value).toBe(seconds);
  });
});

test('a residual current device of 30 mA stands ahead of socket-outlets, BS 7671 411.3.3, 415.1.1', () => {
  const at = (rating: number) =>
    found(
      circuit({
        residual: [residual({ rating: known(milliamperes(rating)) })],
        feeds: [load(20, { purpose: 'socket-outlets' })],
      }),
      'residual-current-socket-outlets',
    )?.verdict;
  expect([at(30), at(30.5)]).toEqual(['pass', 'fail']);
});

test('a ring is of 2.5 mm² at least, else it is a circuit like any other, BS 7671 433.1.204', () => {
  const checks = (area: number) =>
    results(
      circuit({
        ring: true,
        cable: { ...circuit().cable, area: known(squareMillimetres(area)) },
        feeds: [load(20, { purpose: 'socket-outlets', accessories: known('BS 1363') })],
      }),
    ).map((r) => r.check);
  expect(checks(2.5)).toContain('ring-capacity');
  expect(checks(1.5)).not.toContain('ring-capacity');
});

test('a cable is rated in a duct or in the soil as method and containment agree, BS 7671 Table 4B3', () => {
  const soil = {
    ambient: known(celsius(20)),
    depth: known(metres(0.6)),
    soilResistivity: known(kelvinMetresPerWatt(1.5)),
  };
  const armoured = { construction: 'armoured', insulation: 'thermosetting-90', protective: 'armour' } as const;
  const at = (change: Partial<Stretch>) =>
    found(
      circuit({ cable: { ...circuit().cable, ...armoured }, stretches: [stretch({ ...soil, ...change })] }),
      'load-within-capacity',
    );
  // 1.5 K·m/W: 1.1 in ducts, 1.28 in the soil
  const [duct, buried] = [at({ method: known('D1') }), at({ method: known('D2'), containment: 'buried' })];
  expect(at({ method: known('D'), containment: 'duct' })?.limit).toEqual(duct?.limit);
  expect((buried?.limit?.value as number) / (duct?.limit?.value as number)).toBeCloseTo(1.28 / 1.1, 10);
  expect(at({ method: known('D1'), containment: 'buried' })?.verdict).toBe('not-determined');
});

test('an external impedance is customary up to 0.35 Ω on TN-C-S and 0.8 Ω on TN-S, ENA ER P23/1', () => {
  const at = (z: number, system: 'TN-C-S' | 'TN-S', confirmed?: boolean) =>
    found(circuit(), 'external-impedance-customary', {
      system: known(system),
      externalImpedance: known(ohms(z)),
      prospectiveCurrent: known(amperes(700)),
      ...(confirmed === undefined ? {} : { externalImpedanceConfirmed: known(confirmed) }),
    });
  expect(at(0.35, 'TN-C-S')?.verdict).toBe('pass');
  expect(at(0.36, 'TN-C-S')).toMatchObject({
    verdict: 'not-determined',
    gaps: [expect.objectContaining({ obtain: expect.stringContaining('0.36 Ω is above the customary 0.35 Ω') })],
  });
  expect(at(0.36, 'TN-C-S', true)?.verdict).toBe('pass');
  expect(at(0.36, 'TN-C-S', false)?.verdict).toBe('not-determined');
  expect(at(0.36, 'TN-S')?.verdict).toBe('pass');
  const noSystem = found(circuit(), 'external-impedance-customary', { system: unknown('look') });
  expect(noSystem?.gaps).toEqual([{ kind: 'fact', fact: 'earthing system of the supply', obtain: 'look' }]);
});

test('a socket-outlet to BS 1363 carries 10 A for hours, an industrial one what is marked on it', () => {
  const at = (setting: number, change: object) =>
    found(
      circuit({ feeds: [{ ...chargePoint, mode: 2, setting: known(amperes(setting)), ...change }] }),
      'socket-outlet-for-hours',
    );
  const bs = { socket: known('BS 1363') };
  expect([at(10, bs)?.verdict, at(10.1, bs)?.verdict]).toEqual(['pass', 'fail']);
  const industrial = { socket: known('EN 60309'), socketRating: known(amperes(16)) };
  expect([at(16, industrial)?.verdict, at(16.1, industrial)?.verdict]).toEqual(['pass', 'fail']);
  expect(at(10, {})?.gaps).toMatchObject([{ fact: 'kind of the socket-outlet' }]);
  expect(at(10, { socket: known('EN 60309') })?.gaps).toMatchObject([{ fact: 'rating of the socket-outlet' }]);
});

describe('type of residual current device, BS 7671 531.3.3', () => {
  it.each([
    ['AC', 'A', 'fail'],
    ['A', 'A', 'pass'],
    ['A', 'F', 'fail'],
    ['A', 'B', 'fail'],
    ['F', 'A', 'pass'],
    ['F', 'F', 'pass'],
    ['F', 'B', 'fail'],
    ['B', 'F', 'pass'],
    ['B', 'B', 'pass'],
  ] as const)('type %s where type %s is asked: %s', (type, asked, verdict) => {
    const run = circuit({
      residual: [residual({ type: known(type) })],
      feeds: [load(20, { residualType: known(asked) })],
    });
    expect(found(run, 'residual-current-type')?.verdict).toBe(verdict);
  });
  it('says what it rests on', () => {
    const because = (type: 'AC' | 'A' | 'B') =>
      found(
        circuit({ residual: [residual({ type: known(type) })], feeds: [load(20, { residualType: known('A') })] }),
        'residual-current-type',
      )?.because;
    expect(because('AC')).toMatch(/no direct-current component/);
    expect(because('A')).toBe('what is fed asks for type A at least');
    expect(because('B')).toMatch(/smooth direct current/);
  });
});

describe('a source on a circuit with loads, BS 7671 551.7.2', () => {
  const source = (change: Partial<Load>): Load => ({ ...load(16), id: 'source', purpose: 'generation', ...change });
  const fixed = (change: Partial<Load>) =>
    found(circuit({ feeds: [load(5), source(change)] }), 'infeed-fixed')?.verdict;
  it('is wired in', () => {
    expect(fixed({ plugged: known(false) })).toBe('pass');
    expect(fixed({ plugged: known(true) })).toBe('fail');
    expect(fixed({})).toBe('not-determined');
    expect(fixed({ plugged: unknown('look') })).toBe('not-determined');
  });
  it('adds on the line that sources load most, not over the lines', () => {
    const run = circuit({
      lines: ['L1', 'L2', 'L3'],
      cable: { ...circuit().cable, construction: 'armoured', cores: 4, protective: 'armour' },
      feeds: [
        load(5),
        source({ plugged: known(false) }),
        source({ id: 'other', lines: ['L2'], current: known(amperes(10)), plugged: known(false) }),
      ],
    });
    // 32 A of the device and 16 A on L1
    expect(found(run, 'infeed-within-capacity', { phases: known(3) })?.limit?.value).toBe(48);
  });
});

describe('a cable that is concealed, BS 7671 522.6.202', () => {
  const asked = (change: Partial<Stretch>) =>
    found(circuit({ stretches: [stretch(change)], feeds: [load(10)] }), 'residual-current-concealed-cable')?.gaps?.map(
      (g) => ('fact' in g ? g.fact : g.kind),
    );
  const device = 'residual current device of the circuit';
  const route = 'whether route is concealed less than 50 mm deep, or among metal parts';
  it('is not asked for where it is seen', () => {
    for (const containment of ['trunking', 'tray', 'catenary'] as const)
      for (const method of ['B2', 'C'] as const) expect(asked({ method: known(method), containment })).toBeUndefined();
    expect(asked({ method: known('E') })).toBeUndefined();
  });
  it('is less than 50 mm deep, where nothing is left to ask of the wall', () => {
    expect(asked({ depth: known(metres(0.049)) })).toEqual([device]);
    expect(asked({ depth: known(metres(0.05)) })).toEqual([route, device]);
    expect(asked({})).toEqual([route, device]);
  });
  it('lies in a hollow wall by method 102, whatever is said of its depth', () => {
    expect(asked({ method: known('102') })).toEqual([device]);
  });
});
