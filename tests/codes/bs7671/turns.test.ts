/** What decides whether a rule is asked for at all, and with which figure: each side of the turn. */
import { describe, expect, it, test } from 'vitest';
import { bs7671 } from '../../../src/codes/bs7671/index.js';
import type { AssessmentOptions } from '../../../src/codes/wiring-code.js';
import {
  amperes,
  assess,
  type Board,
  type CheckResult,
  type Installation,
  known,
  metres,
  ohms,
  type Run,
  type Stretch,
  type Supply,
  squareMillimetres,
  unknown,
} from '../../../src/index.js';
import { chargePoint, circuit, house, load, stretch } from '../../support/house.js';

const a2 = bs7671('2018+A2:2022');
const all = (results: readonly CheckResult[]): readonly CheckResult[] =>
  results.flatMap((r) => [r, ...all(r.alternatives ?? [])]);
const judged = (installation: Installation, run: string, options: AssessmentOptions = {}, code = a2) => {
  const results = all(assess(code, installation, run, options).results);
  return (check: string) => results.find((r) => r.check === check);
};
const facts = (r: CheckResult | undefined) => r?.gaps?.map((g) => ('fact' in g ? g.fact : g.kind));
const of = (run: Run, supply: Partial<Supply> = {}, board: Partial<Board> = {}, options: AssessmentOptions = {}) =>
  judged(house([run], supply, board), run.id, options);

test('lighting of a household asks for a residual current device, other loads and other premises do not: 411.3.4', () => {
  const asked = (purpose: 'lighting' | 'other', premises: 'dwelling' | 'other') =>
    of(
      circuit({ feeds: [load(3, { purpose })] }),
      {},
      {},
      { premises: { kind: known(premises) } },
    )('residual-current-lighting')?.verdict;
  expect(asked('lighting', 'dwelling')).toBe('not-determined');
  expect(asked('other', 'dwelling')).toBeUndefined();
  expect(asked('lighting', 'other')).toBeUndefined();
});

describe('cable on a drum, notes of Tables 4F', () => {
  const wound = (change: Partial<Stretch>) =>
    of(
      circuit({
        cable: {
          ...circuit().cable,
          construction: 'flexible',
          insulation: 'thermosetting-90',
          protective: 'core',
          cores: 3,
        },
        stretches: [stretch({ method: known('E'), ...change })],
        feeds: [load(10)],
      }),
    )('load-within-capacity');
  it('is asked for of flexible cable, and counts 0.85 on a ventilated radial drum', () => {
    expect(facts(wound({}))).toEqual(['drum of route']);
    const straight = wound({ drum: 'none' });
    expect(straight?.verdict).toBe('pass');
    expect(wound({ drum: 'radial, ventilated' })?.limit?.value).toBeCloseTo(
      0.85 * (straight?.limit?.value as number),
      10,
    );
  });
  it('is not asked for of cable that is fixed', () =>
    expect(of(circuit())('load-within-capacity')?.gaps).toBeUndefined());
});

test('insulation halves the 47 A of method C from half a metre up: 523.9, Table 52.2', () => {
  const at = (length: number) =>
    of(circuit({ stretches: [stretch({ insulated: known(metres(length)) })] }))('load-within-capacity')?.limit?.value;
  expect([at(0.5), at(2)]).toEqual([23.5, 23.5]);
});

describe('an electrode beside the earth of the supply, 722.411.4.1 (ii)', () => {
  const low = (resistance: number, options: AssessmentOptions = {}) =>
    of(
      circuit({ feeds: [{ ...chargePoint, earthing: 'low-electrode' }] }),
      { electrode: { resistance: known(ohms(resistance)) } },
      {},
      options,
    );
  it('is compared with 70 V over the 32 A of the point held, and with the power held', () => {
    // by hand: 70/32 = 2.1875 Ω
    expect(low(2.18)('open-pen-held-current')).toMatchObject({ verdict: 'pass', limit: { value: 2.1875 } });
    expect(low(2.19)('open-pen-held-current')?.verdict).toBe('fail');
    expect(low(1)('open-pen-held-power')?.verdict).toBe('pass');
  });
  it('asks for a state of load in which the point runs at its full setting', () => {
    const state = (current: number) =>
      low(1, { loadStates: [{ name: 'evening', currents: [amperes(current), amperes(0), amperes(0)] }] });
    expect(facts(low(1)('load-states-declared'))).toEqual(['states of load of the installation']);
    expect(facts(state(31)('load-states-declared'))).toEqual([
      'a state of load in which the charge point runs at its full setting',
    ]);
    expect(state(32)('load-states-declared')).toBeUndefined();
  });
});

test('whether other loads balance three phases is open until every circuit is listed: 722.411.4.1 (i) of 2018', () => {
  const run = circuit({ feeds: [{ ...chargePoint, earthing: 'balanced-three-phase' }] });
  const at = (complete: boolean) =>
    judged(
      house([run], { phases: known(3) }, { complete: known(complete) }),
      run.id,
      {},
      bs7671('2018+A1:2020'),
    )('three-phase-installation');
  expect(at(true)?.verdict).toBe('fail');
  expect(facts(at(false))).toEqual(['circuits of db']);
});

describe('line conductors behind a device that protects against overload, 435.1', () => {
  const behind = (run: Run, supply: Partial<Supply> = {}, board: Partial<Board> = {}) =>
    of(run, supply, board)('line-conductor-behind-overload-device');
  it('are not held to be protected where it cannot break the fault', () => {
    const strong = { prospectiveCurrent: known(amperes(12_000)), externalImpedance: known(ohms(0.02)) };
    expect(facts(behind(circuit(), strong))).toEqual(['conditional short-circuit rating']);
    const board = { conditionalRating: known(amperes(10_000)) };
    expect(facts(behind(circuit(), strong, board))).toEqual(['breaking capacity that is enough']);
    expect(behind(circuit())?.verdict).toBe('pass');
  });
  it('are not held to be so by a device of which nobody knows the kind', () => {
    const run = circuit({ device: { ...circuit().device, kind: unknown('look') } });
    expect(facts(behind(run))).toEqual(['kind of the overcurrent device']);
  });
});

test('readings at the origin are not compared on a system that nobody knows', () => {
  expect(facts(of(circuit(), { system: unknown('look') })('origin-readings-agree'))).toEqual([
    'earthing system of the supply',
  ]);
});

describe('protective conductor, 543.1', () => {
  it('is judged by the adiabatic equation and by Table 54.7, and says what its energy rests on', () => {
    const by = of(circuit({ feeds: [load(10)] }));
    expect(by('protective-conductor-adiabatic')?.because).toMatch(/energy limiting class 3 of EN 60898-1/);
    const cable = { construction: 'armoured', insulation: 'thermosetting-90', protective: 'armour' } as const;
    const armour = of(
      circuit({ cable: { ...circuit().cable, ...cable }, feeds: [load(10)] }),
      {},
      {},
      { acceptMemoryFigures: true },
    );
    expect(armour('protective-conductor-adiabatic')?.because).toMatch(/energy limiting class 3 of EN 60898-1/);
    // 6 mm² of line conductor ask for 6 mm²; a 2.5 mm² core is less
    expect(by('protective-conductor-by-table')).toMatchObject({ verdict: 'fail', value: { value: 2.5 } });
  });
});

test('a board in another building is bonded by the conductor that is surveyed there: 544.1.1', () => {
  const at = (size: number | undefined) => {
    const submain: Run = {
      ...circuit(),
      id: 'submain',
      feeds: [
        {
          kind: 'board',
          id: 'garage',
          complete: known(true),
          noResidual: known(true),
          detached: known(true),
          extraneousParts: known(true),
          ...(size === undefined ? {} : { bonding: known(squareMillimetres(size)) }),
          runs: [circuit()],
        },
      ],
    };
    return judged(house([submain]), 'ev')('outbuilding-bonding');
  };
  // by the PME supply: 10 mm² up to 35 mm² of supply neutral, Table 54.8
  expect([at(10)?.verdict, at(6)?.verdict]).toEqual(['pass', 'fail']);
  expect(facts(at(undefined))).toEqual(['bonding conductor to the building of garage']);
});
