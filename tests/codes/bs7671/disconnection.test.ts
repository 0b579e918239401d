import { describe, expect, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';

import {
  amperes,
  known,
  metres,
  ohms,
  overall,
  type ResidualDevice,
  type Run,
  recorder,
  type Supply,
  squareMillimetres,
  unknown,
  writeSheet,
} from '../../../src/index.js';
import { caseOf, chargePoint, circuit, house, plainBreaker } from '../../support/house.js';
import { figuresOf, judged } from '../../support/judged.js';

const code = bs7671('2018+A2:2022');

const run = (installation = house([circuit()]), id = 'ev', options = {}) => {
  const c = caseOf(installation, id, options);
  const results = judged(code, 'disconnection', c);
  return { results, figures: figuresOf(code, c), verdict: overall(results).verdict, first: results[0] };
};

describe('automatic disconnection', () => {
  test('a charge point on PME in 6 mm² flat cable is disconnected by its breaker', () => {
    const { figures, verdict, first } = run();
    // R_1+R_2 of 6/2.5 mm²: 10.49 mΩ/m at 20 °C, times 1.2; Z_e 0.35
    expect(figures.lineAndProtectiveCold).toBeCloseTo(0.2098, 12);
    expect(figures.loopImpedance).toBeCloseTo(0.35 + 0.2098 * 1.2, 12);
    expect(figures.loopImpedanceLimit).toBeCloseTo(218.5 / 160, 12);
    expect(verdict).toBe('pass');
    expect(first?.caution).toMatch(/must not be energised on the strength of a calculation alone/);
  });

  test('a run that feeds a board and an outlet of its own has the shorter time of the outlet', () => {
    const board = { kind: 'board', noResidual: known(true), id: 'garage', runs: [] } as const;
    const timeOf = (feeds: Run['feeds']) =>
      code.calculator.of(caseOf(house([circuit({ feeds })]), 'ev')).figure('requiredTime');
    // Table 41.1 and 411.3.2.3: 0.4 s for the point, 5 s for a distribution circuit alone
    expect(timeOf([chargePoint])).toBe(0.4);
    expect(timeOf([board])).toBe(5);
    expect(timeOf([board, chargePoint])).toBe(0.4);
  });

  test('a submain adds its own line and protective conductors', () => {
    const submain = circuit({
      id: 'garage',
      cable: {
        construction: 'armoured',
        material: 'copper',
        insulation: 'thermosetting-90',
        cores: 3,
        area: known(squareMillimetres(10)),
        protective: 'armour-and-separate',
        protectiveArea: known(squareMillimetres(10)),
      },
      feeds: [{ kind: 'board', noResidual: known(true), id: 'garage-board', runs: [circuit()] }],
    });
    expect(run(house([submain])).verdict).toBe('not-determined'); // recalled armour has to be accepted
    const { figures, first } = run(house([submain]), 'ev', { acceptMemoryFigures: true });
    expect(first?.alternatives?.[0]?.because).toMatch(/armour from memory \(grade C\)/);
    const line = 1.83e-3 * 20 * 1.28;
    const armour = 4.0e-3 * 20 * (1 + 0.0045 * 60);
    const feeder = line + 1 / (1 / armour + 1 / line);
    expect(figures.loopAtOrigin).toBeCloseTo(0.35 + feeder, 12);
    expect(figures.loopImpedance).toBeCloseTo(0.35 + feeder + 0.2098 * 1.2, 12);
  });

  test('too long for the breaker: it fails, or rests on a residual current device upstream with a warning', () => {
    const long = circuit({
      device: plainBreaker,
      stretches: [{ ...circuit().stretches[0]!, length: known(metres(100)) }],
    });
    expect(run(house([long])).verdict).toBe('fail');
    const inside: ResidualDevice = { position: 'inside-equipment', type: known('A'), rating: known(amperes(0.03)) };
    expect(run(house([{ ...long, residual: [inside] }])).verdict).toBe('fail');
    const upstream: ResidualDevice = { ...inside, position: 'origin-of-circuit' };
    const { verdict, results } = run(house([{ ...long, residual: [upstream] }]));
    expect(verdict).toBe('pass');
    expect(results[1]).toMatchObject({
      check: 'disconnection-without-residual-current-device',
      verdict: 'fail',
      weight: 'advice',
    });
  });

  test('TT: 0.2 s by a 30 mA device at the origin of the circuit, electrode 120 Ω', () => {
    const rcbo = circuit({
      residual: [{ position: 'origin-of-circuit', type: known('A'), rating: known(amperes(0.03)) }],
    });
    const tt: Partial<Supply> = {
      system: known('TT'),
      externalImpedance: unknown(),
      electrode: { resistance: known(ohms(120)) },
    };
    const { verdict, results } = run(house([rcbo], tt));
    expect(verdict).toBe('pass');
    expect(results[1]).toMatchObject({ check: 'electrode-stability', verdict: 'pass' });
    expect(run(house([rcbo], { ...tt, electrode: { resistance: known(ohms(1700)) } })).verdict).toBe('fail');
    expect(run(house([rcbo], { ...tt, electrode: { resistance: known(ohms(250)) } })).results[1]?.verdict).toBe('fail');
    expect(run(house([rcbo], { ...tt, electrode: { resistance: unknown('measure it') } })).verdict).toBe(
      'not-determined',
    );
  });

  test('an unknown external impedance ends in not-determined and names it', () => {
    const { verdict, first } = run(house([circuit()], { externalImpedance: unknown('measure at the origin') }));
    expect(verdict).toBe('not-determined');
    expect(JSON.stringify(first)).toMatch(/externalImpedance/);
  });

  test('the silent sheet and the recorder come to the same results', () => {
    const sheet = recorder('Automatic disconnection');
    const c = caseOf(house([circuit()]), 'ev');
    expect(judged(code, 'disconnection', c, sheet)).toEqual(judged(code, 'disconnection', c));
    expect(JSON.parse(JSON.stringify(writeSheet(sheet)))).toEqual(writeSheet(sheet));
  });

  test('between the exact and the printed limit there is a named note', () => {
    // B32: exact 1.365625, printed 1.37
    const rest = 1.367 - 0.2098 * 1.2;
    const { first } = run(house([circuit()], { externalImpedance: known(ohms(rest)) }));
    expect(first?.alternatives?.[0]).toMatchObject({ verdict: 'fail' });
    expect(first?.alternatives?.[0]?.because).toMatch(/Between exact and printed limit: 1.367 Ω/);
  });
});
