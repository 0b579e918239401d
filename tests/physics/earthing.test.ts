import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { publishedElectrodeLimit, vectorSumPrinted } from '../../src/codes/bs7671/definitions.js';
import * as o from '../../src/index.js';
import * as physics from '../../src/physics/definitions.js';
import { lineOfRodsFactor, openPen, windowSight } from '../../src/physics/index.js';
import type { OpenPenLoad, OpenPenState } from '../../src/physics/open-pen-network.js';
import { expectPublished } from '../support/expect-published.js';
import { seedOf } from '../support/seed.js';
import { cases } from './earthing.cases.js';
import { openPenByNodes, openPenCases } from './star.js';

test.each(cases.map((c) => [c.id, c] as const))('%s', (_, c) => {
  expectPublished(c);
});
test('every case has a name of its own', () => expect(new Set(cases.map((c) => c.id)).size).toBe(cases.length));

const near = (ours: number, due: number, relative = 1e-9) =>
  expect(Math.abs(ours - due)).toBeLessThanOrEqual(relative * Math.max(Math.abs(due), 1e-3));
const star = (i: readonly number[]) => i.map((current, k) => ({ line: (k + 1) as 1 | 2 | 3, current }));
const at = (loads: readonly OpenPenLoad[], electrodes: number[], c = 1, sourceElectrode = 0) =>
  openPen({ nominalVoltage: 230, sourceFactor: c, loads, electrodes, sourceElectrode });

describe('open PEN conductor, independent figures', () => {
  test.each([
    [10, 133.818181818, 13.3818181818, 96.1818181818],
    [20, 169.195402299, 8.45977011494, 60.8045977011],
    [200, 222.021116139, 1.11010558069, 7.97888386124],
  ])('32 A on a rod of %d Ω', (r, touch, earth, load) => {
    const s = at(star([32]), [r]);
    near(s.touchVoltage, touch);
    near(s.earthCurrent, earth);
    near(s.lineNeutral[0], load);
  });
  test('32 A on a rod of 20 Ω at 253 V leaves 186 V', () => near(at(star([32]), [20], 1.1).touchVoltage, 186, 0.002));

  test.each([
    [0, 2.74931693989, 0],
    [5, 4.6618852459, 75.0769230769],
    [20, 10.3995901639, 134.620689655],
  ])('electrode of the network %d Ω', (rb, limit, source) => {
    const sums = { vectorSumCurrent: o.amperes(32), arithmeticSumCurrent: o.amperes(32) };
    const ra = physics.openPenElectrodeLimit({
      touchVoltageLimit: o.volts(70),
      sourceFactor: o.ratio(1.1),
      nominalVoltage: o.volts(230),
      sourceElectrodeResistance: o.ohms(rb),
      ...sums,
    });
    near(ra, limit);
    const s = at(star([32]), [ra], 1.1, rb);
    near(s.touchVoltage, 70);
    near(s.sourceNeutral, source);
    near(
      physics.openPenSourceVoltage({
        touchVoltage: o.volts(70),
        electrodeResistance: ra,
        sourceElectrodeResistance: o.ohms(rb),
      }),
      source,
    );
  });

  test.each<[number[], number, number, number[]]>([
    [[32, 32, 0], 115, 97.4834437086, [199.18584287, 199.18584287, 345]],
    [[60, 40, 20], 66.3952809568, 60.5888495423, [175.66540164, 239.391589939, 289.410320019]],
    [[40, 30, 25], 32.0275158708, 28.5691456124, [200.011772507, 238.138556935, 255.073722437]],
    [[32, 32, 32], 0, 0, [230, 230, 230]],
  ])('three phases %j', (i, floating, rod, lineNeutral) => {
    const free = at(star(i), []);
    near(free.touchVoltage, floating);
    near(at(star(i), [20]).touchVoltage, rod);
    for (const [k, v] of lineNeutral.entries()) near(free.lineNeutral[k] as number, v);
  });

  test.each<[number, number, number[]]>([
    [3, 117.011128776, [112.988871224, 305.784505618, 305.784505618]],
    [6, 78.4648187633, [151.535181237, 277.675415007, 277.675415007]],
    [24, 26.3610315186, [203.638968481, 244.249751754, 244.249751754]],
  ])('a street of %d dwellings', (n, touch, lineNeutral) => {
    const each = Array.from({ length: n }, (_, k) => ({ line: ((k % 3) + 1) as 1 | 2 | 3, current: 8 }));
    const s = at([...each, { line: 1, current: 32 }], Array(n).fill(100));
    near(s.touchVoltage, touch);
    for (const [k, v] of lineNeutral.entries()) near(s.lineNeutral[k] as number, v);
  });

  test('held current and held power', () => {
    for (const [i, r] of [
      [16, 4.375],
      [20, 3.5],
      [40, 1.75],
      [32, 2.1875],
    ] as const) {
      const v = { touchVoltageLimit: o.volts(70), installationCurrent: o.amperes(i) };
      near(physics.heldCurrentElectrodeLimit(v), r);
      const published = publishedElectrodeLimit({
        ...v,
        nominalVoltage: o.volts(230),
        sourceFactor: o.ratio(1.1),
      });
      near(r / published, 0.795652173913);
      near(at([{ line: 1, current: i, holds: 'current' }], [r]).touchVoltage, 70);
    }
    const s = at([{ line: 1, current: 32, holds: 'power' }], [1]);
    near(s.touchVoltage, 38.4167120058);
    near(s.lineNeutral[0], 191.583287994);
    const p = { supplyVoltage: o.volts(230), heldPower: o.watts(7360) };
    near(physics.heldPowerTouchVoltage({ ...p, electrodeResistance: o.ohms(1) }), 38.4167120058);
    near(physics.heldPowerCollapse(p), 1.796875);
    near(physics.heldPowerTouchVoltage({ ...p, electrodeResistance: o.ohms(1.796875) }), 115);
    expect(() => at([{ line: 1, current: 32, holds: 'power' }], [1.8])).toThrow('no operating point');
    expect(at([{ line: 1, current: 32, holds: 'power' }], [1.79]).touchVoltage).toBeLessThan(115);
    expect(() => at([{ line: 1, current: 32, holds: 'current' }], [7.2])).toThrow('no operating point');
    expect(() => at([{ line: 1, current: 32, holds: 'current' }], [])).toThrow('no operating point');
  });

  test('electrode, print style against exact', () => {
    for (const [i, style, exact] of [
      [[32, 0, 0], 2.74931693989, 2.74931693989],
      [[52, 20, 20], 2.74931693989, 9.72222222222],
      [[32, 32, 0], 2.74937742686, 4.45243362832],
      [[60, 40, 20], undefined, 44.2092613888],
      [[40, 30, 25], 6.650543323, undefined],
    ] as const) {
      const lines = {
        lineCurrent1: o.amperes(i[0]),
        lineCurrent2: o.amperes(i[1]),
        lineCurrent3: o.amperes(i[2]),
      };
      const common = { touchVoltageLimit: o.volts(70), nominalVoltage: o.volts(230), sourceFactor: o.ratio(1.1) };
      if (style) near(publishedElectrodeLimit({ ...common, installationCurrent: vectorSumPrinted(lines) }), style);
      const sums = { vectorSumCurrent: physics.vectorSum(lines), arithmeticSumCurrent: physics.arithmeticSum(lines) };
      const ours = () => physics.openPenElectrodeLimit({ ...common, ...sums, sourceElectrodeResistance: o.ohms(0) });
      if (exact) near(ours(), exact);
      // every electrode is small enough: there is no limit, and no negative one is told
      else expect(ours).toThrow('electrodeLimit');
    }
  });

  test('what a line-neutral monitor cannot see', () => {
    for (const [i, neutral, reading] of [
      [[100, 60, 140], 53.1, [236.1, 277.3, 185.9]],
      [[60, 100, 20], 88.5, [246.4, 159.6, 309.8]],
      [[50, 80, 20], 79.7, [243.4, 165.9, 301.6]],
      [[100, 100, 40], 57.5, [207.3, 207.3, 287.5]],
    ] as const) {
      const s = at(star(i), []);
      expect(Math.abs(s.touchVoltage - neutral)).toBeLessThanOrEqual(0.0501);
      for (const [k, v] of reading.entries())
        expect(Math.abs((s.lineNeutral[k] as number) - v)).toBeLessThanOrEqual(0.0501);
      const sight = windowSight(
        { nominalVoltage: 230, sourceFactor: 1, loads: star(i), electrodes: [] },
        1,
        [207, 253],
        70,
      );
      expect(sight.blind).toBe(neutral > 70);
    }
    near(physics.undetectedVoltageOf({ supplyVoltage: o.volts(230), windowUpper: o.volts(253) }), 126.968356324);
    // one phase: 70 V on the metal leaves 160 V, which the window does see
    near(at(star([32]), [3.14453125]).lineNeutral[0], 160);
    near(at(star([52, 20, 20]), [17.5]).lineNeutral[0], 160);
  });

  test('malformed cases name all problems', () => {
    expect(() =>
      openPen({ nominalVoltage: 0, sourceFactor: 2, loads: [{ line: 1, current: -1 }], electrodes: [0] }),
    ).toThrow('5 problem');
  });
});

const amps = fc.double({ min: 0.5, max: 200, noNaN: true });
const ohm = fc.double({ min: 0.05, max: 500, noNaN: true });

describe('open PEN conductor against a general nodal solution', () => {
  test('1,000 random resistive cases', () => {
    fc.assert(
      fc.property(openPenCases, (c) => {
        const [ours, theirs] = [openPen(c), openPenByNodes(c)];
        near(ours.touchVoltage, theirs.touchVoltage, 1e-8);
        near(ours.sourceNeutral, theirs.sourceNeutral, 1e-8);
      }),
      { numRuns: 1000, seed: seedOf(722) },
    );
  });

  test('held loads: the balance of powers closes', () => {
    fc.assert(
      fc.property(fc.tuple(amps, amps, amps), fc.double({ min: 0.05, max: 2, noNaN: true }), (i, r) => {
        const loads = star(i).map((l, k) => ({ ...l, holds: (['resistance', 'current', 'power'] as const)[k] }));
        let s: OpenPenState;
        try {
          s = at(loads as OpenPenLoad[], [r]);
        } catch (error) {
          if (o.hasCode(error, 'no-solution')) return;
          throw error;
        }
        // currents lie along their own voltages, so their sum is found from the magnitudes and the shift
        const [u1, u2, u3] = s.lineNeutral;
        const y = [i[0] / 230, i[1] / u2, (i[2] * 230) / u3 ** 2] as const;
        const e = [0, -120, 120].map((d) => [Math.cos((d * Math.PI) / 180) * 230, Math.sin((d * Math.PI) / 180) * 230]);
        const sum = [0, 1].map((axis) => e.reduce((t, v, k) => t + (v[axis] as number) * (y[k] as number), 0));
        const w = Math.hypot(sum[0] as number, sum[1] as number) / (1 / r + y[0] + y[1] + y[2]);
        expect(Math.abs(w - s.touchVoltage)).toBeLessThanOrEqual(1e-7 * 230);
        expect(u1).toBeGreaterThan(0);
      }),
      { numRuns: 500, seed: seedOf(5) },
    );
  });
});

describe('directions', () => {
  test('resistive: load added on the lightest phase up to the mean of the others never raises the voltage', () => {
    fc.assert(
      fc.property(
        amps,
        amps,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.option(ohm),
        (a, b, x, y, r) => {
          const mean = (a + b) / 2;
          const lightest = Math.min(a, b);
          const from = x * lightest;
          const to = from + y * (mean - from);
          const v = (c: number) => at(star([a, b, c]), r === null ? [] : [r]).touchVoltage;
          expect(v(to)).toBeLessThanOrEqual(v(from) * (1 + 1e-9) + 1e-9);
        },
      ),
      { numRuns: 500, seed: seedOf(6) },
    );
  });
  test('beyond it may', () => {
    const v = (c: number) => at(star([10, 10, c]), [20]).touchVoltage;
    expect(v(10)).toBeLessThan(1e-9);
    expect(v(20)).toBeGreaterThan(v(10) + 20);
  });
  test('a larger electrode resistance never lowers the voltage, load is a resistance', () => {
    fc.assert(
      fc.property(amps, amps, amps, ohm, ohm, (a, b, c, r, s) => {
        const v = (x: number) => at(star([a, b, c]), [x]).touchVoltage;
        expect(v(Math.max(r, s))).toBeGreaterThanOrEqual(v(Math.min(r, s)) - 1e-9);
      }),
      { numRuns: 300, seed: seedOf(7) },
    );
  });
});

describe('electrodes, independent figures', () => {
  const rho = { earthResistivity: o.ohmMetres(100) };
  const m = o.metres;
  test('rods', () => {
    near(physics.rodResistance({ ...rho, electrodeLength: m(1.2), electrodeDiameter: m(0.016) }), 71.5790026789);
    near(physics.rodResistance({ ...rho, electrodeLength: m(3), electrodeDiameter: m(0.0127) }), 34.7180970369);
    const single = physics.rodResistance({ ...rho, electrodeLength: m(2.4), electrodeDiameter: m(0.016) });
    for (const [n, s, factor, due] of [
      [2, 2.4, 1, 23.5087661524],
      [3, 2.4, 1.66, 17.1314310799],
      [4, 3, 2.15, 12.9480451494],
    ] as const) {
      const spacingRatio = physics.rodSpacingRatio({ ...rho, singleRodResistance: single, rodSpacing: m(s) });
      near(
        physics.parallelRods({
          singleRodResistance: single,
          rodFactor: o.ratio(factor),
          spacingRatio,
          rodCount: o.ratio(n),
        }),
        due,
      );
    }
    for (const [n, own, recalled] of [
      [3, 1.66666666667, 1.66],
      [4, 2.16666666667, 2.15],
      [10, 3.85793650794, 3.81],
    ] as const) {
      near(lineOfRodsFactor(n), own);
      expect(Math.abs(lineOfRodsFactor(n) / recalled - 1)).toBeLessThan(0.02);
    }
    expect(lineOfRodsFactor(1)).toBe(0);
  });
  test('wire, strip, plate, grid, two electrodes', () => {
    const wire = (l: number, d: number, h: number) =>
      physics.wireResistance({ ...rho, electrodeLength: m(l), electrodeDiameter: m(d), burialDepth: m(h) });
    near(wire(20, 0.008, 0.6), 8.57526727883);
    near(wire(5, 0.02, 0.5), 23.5561741702);
    const strip = physics.stripResistance({
      ...rho,
      electrodeLength: m(20),
      stripWidth: m(0.025),
      burialDepth: m(0.6),
    });
    near(strip, wire(20, 0.0125, 0.6));
    // without the end terms the equivalent wire is 8.220 Ω; the older strip form would be 7.866 Ω
    expect(strip).toBeGreaterThan(8.22012328672);
    near(physics.plateResistance({ ...rho, plateArea: o.squareMetres(0.36) }), 73.8522437877);
    near(physics.plateResistance({ ...rho, plateArea: o.squareMetres(1) }), 44.3113462726);
    const grid = { earthResistivity: o.ohmMetres(400), plateArea: o.squareMetres(4900), electrodeLength: m(1540) };
    near(physics.gridResistance(grid), 2.79116883117);
    near(physics.gridResistanceAtDepth({ ...grid, burialDepth: m(0.5) }), 2.77569366288);
    near(
      physics.twoElectrodes({
        firstElectrodeResistance: o.ohms(20),
        secondElectrodeResistance: o.ohms(30),
        mutualResistance: o.ohms(3),
      }),
      13.4318181818,
    );
    near(physics.mutualResistanceOf({ ...rho, rodSpacing: m(0.5) }), 31.8309886184);
  });
  test('a ring of wire is near a plate of its area and above it', () => {
    const ring = physics.ringResistance({
      ...rho,
      ringDiameter: m(10),
      electrodeDiameter: m(0.01),
      burialDepth: m(0.5),
    });
    expect(ring).toBeGreaterThan(physics.plateResistance({ ...rho, plateArea: o.squareMetres(78.54) }));
    expect(ring).toBeLessThan(10);
  });
});
