import { describe, expect, test } from 'vitest';
import {
  amperes,
  type CheckResult,
  type Installation,
  known,
  milliamperes,
  ohms,
  pathTo,
  type ResidualDevice,
  type Run,
  silent,
  squareMillimetres,
} from '../../../src/index.js';
import { breakingCapacity, disconnection, residualUpstream } from '../../../src/standards/bs7671/index.js';
import type { AssessmentOptions, Findings } from '../../../src/standards/wiring-code.js';
import { caseOf, circuit, house } from '../../support/house.js';

const rcd = (position: ResidualDevice['position'], rating = 30): ResidualDevice => ({
  position,
  type: known('A'),
  rating: known(milliamperes(rating)),
});
const submain = (inner: Run, change: Partial<Run> = {}): Run =>
  circuit({
    id: 'garage',
    device: {
      kind: known({ standard: 'EN 60898', type: 'C' }),
      rating: known(amperes(63)),
      breakingCapacity: known(amperes(10000)),
    },
    cable: {
      construction: 'armoured',
      material: 'copper',
      insulation: 'thermosetting-90',
      cores: 3,
      area: known(squareMillimetres(16)),
      protective: 'core',
    },
    feeds: [{ kind: 'board', id: 'garage-board', runs: [inner] }],
    ...change,
  });
const judge = (rule: typeof disconnection, installation: Installation, id = 'ev', options: AssessmentOptions = {}) => {
  const findings: Findings = {};
  return { results: rule(caseOf(installation, id, options), findings, silent()), findings };
};
const by = (results: readonly CheckResult[], id: string) => results.find((r) => r.check === id);

describe('residual current devices that stand upstream of the cable', () => {
  const upstream = (installation: Installation, id = 'ev') => {
    const path = pathTo(installation, id);
    return path ? residualUpstream(path).length : -1;
  };
  test('at the board for the runs it serves, at a feeder, at the origin of the circuit; not along it or in the point', () => {
    expect(upstream(house([circuit()], {}, { residual: [rcd('origin-of-circuit')] }))).toBe(1);
    expect(upstream(house([circuit()], {}, { residual: [{ ...rcd('origin-of-circuit'), serves: ['other'] }] }))).toBe(
      0,
    );
    expect(upstream(house([submain(circuit(), { residual: [rcd('origin-of-circuit', 100)] })]))).toBe(1);
    expect(upstream(house([submain(circuit({ residual: [rcd('origin-of-circuit')] }))]), 'garage')).toBe(0);
    expect(upstream(house([circuit({ residual: [rcd('along-circuit'), rcd('inside-equipment')] })]))).toBe(0);
  });
});

describe('disconnection of other circuits and devices', () => {
  const limit = (run: Run, options: AssessmentOptions = {}, id = 'ev') =>
    judge(disconnection, house([run]), id, options).findings.loopImpedanceLimit;
  const fuse = (standard: 'BS 88-2' | 'BS 88-3' | 'BS 1361' | 'BS 3036', rating: number, existing = true) =>
    circuit({ existing, device: { kind: known({ standard }), rating: known(amperes(rating)) } });

  test('the edition of a fuse counts where the prints differ; without it the heavier current', () => {
    expect(limit(fuse('BS 88-2', 25), { fuseEdition: '2008' })).toBeCloseTo(218.5 / 159.7, 10);
    expect(limit(fuse('BS 88-2', 25), { fuseEdition: '2011' })).toBeCloseTo(218.5 / 170.4, 10);
    expect(limit(fuse('BS 88-2', 25))).toBeCloseTo(218.5 / 170.4, 10);
    expect(limit(fuse('BS 88-2', 20))).toBeCloseTo(218.5 / 129.9, 10);
  });
  test('rewirable and old cartridge fuses', () => {
    expect(limit(fuse('BS 3036', 30))).toBeCloseTo(218.5 / 211, 10);
    expect(limit(fuse('BS 1361', 30))).toBeCloseTo(218.5 / 200, 10);
  });
  test('a submain has 5 s, and a larger fuse its current for that time', () => {
    const run = submain(circuit(), { device: { kind: known({ standard: 'BS 88-3' }), rating: known(amperes(63)) } });
    expect(limit(run, {}, 'garage')).toBeCloseTo(218.5 / 319.4, 10);
  });
  test('a fuse above 32 A on a final circuit has no printed current for 0.4 s: not determined, and it says so', () => {
    const { results } = judge(disconnection, house([fuse('BS 88-3', 63)]));
    expect(results[0]?.verdict).toBe('not-determined');
    expect(JSON.stringify(results[0])).toMatch(/has no cell/);
  });
  test('on TT a submain has 1 s: the current of a fuse lies on the line between its points', () => {
    const run = submain(circuit(), { device: { kind: known({ standard: 'BS 88-2' }), rating: known(amperes(32)) } });
    const tt = { system: known('TT' as const), externalImpedance: known(ohms(60)) };
    const { findings, results } = judge(disconnection, house([run], tt), 'garage', { fuseEdition: '2011' });
    expect(findings.loopImpedanceLimit).toBeCloseTo(218.5 / 179.829242, 6);
    expect(results[0]?.verdict).toBe('fail');
  });
  test('a fixed load above 32 A is outside Table 41.1, a charge point up to 63 A inside', () => {
    const load = {
      kind: 'load',
      id: 'heater',
      purpose: 'space-heating',
      current: known(amperes(38)),
      lines: ['L1'],
    } as const;
    const device = { kind: known({ standard: 'BS 3036' } as const), rating: known(amperes(45)) };
    expect(limit(circuit({ device, feeds: [load], existing: true }))).toBeCloseTo(218.5 / 144.7, 10);
    const inside = judge(disconnection, house([circuit({ device, existing: true })]));
    expect(inside.results[0]?.verdict).toBe('not-determined');
  });
  test('old breakers by their upper band; an unknown kind is named', () => {
    const old = circuit({
      existing: true,
      device: { kind: known({ standard: 'BS 3871', type: '2' }), rating: known(amperes(30)) },
    });
    expect(limit(old)).toBeCloseTo(218.5 / 210, 10);
    const { results } = judge(
      disconnection,
      house([circuit({ device: { kind: { state: 'unknown' }, rating: known(amperes(30)) } })]),
    );
    expect(JSON.stringify(results[0])).toMatch(/kind of the overcurrent device/);
  });
  test('a delayed device can be too late by its delay alone; else its maker is asked', () => {
    const delayed = (delay: number) => {
      const device = { ...rcd('origin-of-circuit', 300), delayTime: known(delay as never) };
      const tt = { system: known('TT' as const), externalImpedance: known(ohms(60)) };
      return judge(disconnection, house([circuit({ residual: [device] })], tt)).results[0]?.verdict;
    };
    expect(delayed(0.3)).toBe('fail');
    expect(delayed(0.06)).toBe('not-determined');
  });
});

describe('devices in series', () => {
  test('a feeder of unknown length is left out: it can acquit the device behind it, not condemn it', () => {
    const unknownRoute = submain(circuit(), {
      stretches: [{ ...circuit().stretches[0]!, length: { state: 'unknown' } }],
    });
    const at = (current: number) => {
      const own = circuit({ device: { ...circuit().device, conditionalRating: known(amperes(6000)) } });
      const run = { ...unknownRoute, feeds: [{ kind: 'board', id: 'b', runs: [own] } as const] };
      return by(
        judge(breakingCapacity, house([run], { prospectiveCurrent: known(amperes(current)) })).results,
        'breaking-capacity',
      )?.verdict;
    };
    expect([at(1200), at(16000)]).toEqual(['pass', 'not-determined']);
  });
  test('a feeder reduces the prospective current, and its device is judged for discrimination', () => {
    const at = (current: number) =>
      judge(breakingCapacity, house([submain(circuit())], { prospectiveCurrent: known(amperes(current)) }));
    const { results, findings } = at(16000);
    expect(findings.prospectiveAtOrigin as number).toBeLessThan(16000);
    // 20 m of 16 mm²: 46 mΩ there and back, at right angles to 230 V/16 kA
    expect(findings.prospectiveAtOrigin).toBeCloseTo(230 / Math.hypot(230 / 16000, 2 * 1.15e-3 * 20), 6);
    expect(by(results, 'breaking-capacity')?.verdict).toBe('pass');
    expect(by(results, 'discrimination-with-feeder-device')?.verdict).toBe('not-determined');
    expect(by(at(300).results, 'discrimination-with-feeder-device')?.verdict).toBe('pass');
  });
});
