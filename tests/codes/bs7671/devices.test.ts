import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import type { Aspect, AssessmentOptions } from '../../../src/codes/wiring-code.js';
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
  squareMillimetres,
} from '../../../src/index.js';
import { residualUpstream } from '../../../src/installation/residual-upstream.js';
import { caseOf, circuit, house } from '../../support/house.js';
import { figuresOf, judged } from '../../support/judged.js';

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
    feeds: [{ kind: 'board', noResidual: known(true), id: 'garage-board', runs: [inner] }],
    ...change,
  });
const judge = (group: Aspect, installation: Installation, id = 'ev', options: AssessmentOptions = {}) => {
  const code = bs7671('2018+A2:2022');
  const c = caseOf(installation, id, options);
  return { results: judged(code, group, c), figures: figuresOf(code, c) };
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
    judge('disconnection', house([run]), id, options).figures.loopImpedanceLimit;
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
    const { results } = judge('disconnection', house([fuse('BS 88-3', 63)]));
    expect(results[0]?.verdict).toBe('not-determined');
    expect(JSON.stringify(results[0])).toMatch(/has no cell/);
  });
  test('on TT a submain has 1 s: the current of a fuse lies on the line between its points', () => {
    const run = submain(circuit(), { device: { kind: known({ standard: 'BS 88-2' }), rating: known(amperes(32)) } });
    const tt = { system: known('TT' as const), externalImpedance: known(ohms(60)) };
    const { figures, results } = judge('disconnection', house([run], tt), 'garage', { fuseEdition: '2011' });
    expect(figures.loopImpedanceLimit).toBeCloseTo(218.5 / 179.829242, 6);
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
    const inside = judge('disconnection', house([circuit({ device, existing: true })]));
    expect(inside.results[0]?.verdict).toBe('not-determined');
  });
  test('old breakers by their upper band; an unknown kind is named', () => {
    const old = circuit({
      existing: true,
      device: { kind: known({ standard: 'BS 3871', type: '2' }), rating: known(amperes(30)) },
    });
    expect(limit(old)).toBeCloseTo(218.5 / 210, 10);
    const { results } = judge(
      'disconnection',
      house([circuit({ device: { kind: { state: 'unknown' }, rating: known(amperes(30)) } })]),
    );
    expect(JSON.stringify(results[0])).toMatch(/kind of the overcurrent device/);
  });
  test('a delayed device can be too late by its delay alone; else its maker is asked', () => {
    const delayed = (delay: number) => {
      const device = { ...rcd('origin-of-circuit', 300), delayTime: known(delay as never) };
      const tt = { system: known('TT' as const), externalImpedance: known(ohms(60)) };
      return judge('disconnection', house([circuit({ residual: [device] })], tt)).results[0]?.verdict;
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
      const run = {
        ...unknownRoute,
        feeds: [{ kind: 'board', noResidual: known(true), id: 'b', runs: [own] } as const],
      };
      return by(
        judge('breaking-capacity', house([run], { prospectiveCurrent: known(amperes(current)) })).results,
        'breaking-capacity',
      )?.verdict;
    };
    expect([at(1200), at(16000)]).toEqual(['pass', 'not-determined']);
  });
  test('a feeder reduces the prospective current, and its device is judged for discrimination', () => {
    const at = (current: number) =>
      judge('breaking-capacity', house([submain(circuit())], { prospectiveCurrent: known(amperes(current)) }));
    const { results, figures } = at(16000);
    expect(figures.prospectiveAtOrigin as number).toBeLessThan(16000);
    // 20 m of 16 mm²: 23 mΩ a core, 70 mΩ of armour beside the core that returns, at right angles to 230 V/16 kA
    const back = 1 / (1 / 0.023 + 1 / 0.07);
    expect(figures.prospectiveAtOrigin).toBeCloseTo(230 / Math.hypot(230 / 16000, 0.023 + back), 6);
    expect(by(results, 'breaking-capacity')?.verdict).toBe('pass');
    expect(by(results, 'discrimination-with-feeder-device')?.verdict).toBe('not-determined');
    expect(by(at(300).results, 'discrimination-with-feeder-device')?.verdict).toBe('pass');
    expect(by(at(300).results, 'breaking-capacity')?.because).toMatch(/upper bound/);
    expect(by(judge('breaking-capacity', house([circuit()])).results, 'breaking-capacity')?.because).toBeUndefined();
    // 150 A is below five times 32 A: neither device is bound to open first
    expect(by(at(150).results, 'discrimination-with-feeder-device')?.verdict).toBe('not-determined');
  });
  test('the largest current behind a feeder is never less than its line-neutral or its earth fault', () => {
    const cables: Partial<Run['cable']>[] = [
      { protective: 'core' },
      { protective: 'armour' },
      { protective: 'armour-and-separate', protectiveArea: known(squareMillimetres(25)) },
      { construction: 'multicore', protective: 'separate', protectiveArea: known(squareMillimetres(50)) },
      { construction: 'multicore', protective: 'conduit' },
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...cables),
        fc.double({ min: 0.01, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: Math.PI / 2, noNaN: true }),
        fc.constantFrom('TN-S' as const, 'TT' as const),
        (cable, source, angle, system) => {
          const feeder = submain(circuit(), { cable: { ...submain(circuit()).cable, ...cable } });
          const s = { prospectiveCurrent: known(amperes(230 / source)), system: known(system) };
          const found = judge('breaking-capacity', house([feeder], s)).figures.prospectiveAtOrigin as number;
          const size = (r: number) => Math.hypot(source * Math.cos(angle) + r, source * Math.sin(angle));
          // 16 mm² 1.15, 25 mm² 0.727, 50 mm² 0.387, armour of 3 cores 3.5 mΩ/m, 20 m; conduit of no resistance
          const core = 0.023;
          const beside = (r: number) => 1 / (1 / 0.07 + 1 / r);
          const back = [beside(core), 0.07, beside(0.01454), 0.00774, 0][cables.indexOf(cable)] as number;
          expect(found).toBeGreaterThanOrEqual((230 / size(2 * core)) * (1 - 1e-12));
          if (system === 'TN-S') expect(found).toBeGreaterThanOrEqual((230 / size(core + back)) * (1 - 1e-12));
        },
      ),
      { numRuns: 200 },
    );
  });
  test('discrimination of fuses goes by the gates of gG, for fuses that have them, as far as they reach', () => {
    // IEC 60269-1 Table 3: 32 A melts in 0.1 s at 350 A, 100 A does not at 820 A
    const verdict = (standard: 'BS 88-2' | 'BS 1361' | 'BS 3036', current: number, accept = true) => {
      const device = { kind: known({ standard }), rating: known(amperes(32)) };
      const supply = { prospectiveCurrent: known(amperes(current)) };
      const options = accept ? { acceptMemoryFigures: true } : {};
      return by(
        judge('breaking-capacity', house([circuit({ device })], supply), 'ev', options).results,
        'discrimination-with-cut-out',
      )?.verdict;
    };
    expect([340, 360, 810, 830].map((i) => verdict('BS 88-2', i))).toEqual([
      'not-determined',
      'pass',
      'pass',
      'not-determined',
    ]);
    expect(verdict('BS 88-2', 500, false)).toBe('not-determined');
    expect([verdict('BS 1361', 500), verdict('BS 3036', 500)]).toEqual(['not-determined', 'not-determined']);
    const old = { cutOut: { kind: known({ standard: 'BS 1361' as const }), rating: known(amperes(100)) } };
    const behindOld = judge(
      'breaking-capacity',
      house([circuit()], { ...old, prospectiveCurrent: known(amperes(500)) }),
      'ev',
      { acceptMemoryFigures: true },
    );
    expect(by(behindOld.results, 'discrimination-with-cut-out')?.verdict).toBe('not-determined');
  });
});
