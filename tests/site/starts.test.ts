import { expect, test } from 'vitest';
import { amperes, known, ohms, ratio, type Supply, unknown } from '../../src/index.js';
import { startQuestions } from '../../src/site/starts.js';
import { circuit, house, load } from '../support/house.js';

const all = ['L1', 'L2', 'L3'] as const;
const workshop = (change: Parameters<typeof load>[1], current = 28, supply: Partial<Supply> = {}) =>
  house(
    [
      circuit({
        id: 'machine',
        lines: all,
        cable: { ...circuit().cable, construction: 'multicore', cores: 5, protective: 'core' },
        feeds: [load(current, { id: 'machine', purpose: 'motor', lines: all, ...change })],
      }),
    ],
    { phases: known(3), externalImpedance: known(ohms(0.2)), ...supply },
  );
const said = (...of: Parameters<typeof workshop>) => startQuestions(workshop(...of)).map((q) => q.question);

test('a start that changes the voltage at the origin by more than 3.3 % is asked about, a softer one is not', () => {
  // IEC 61000-3-3: 3.3 % of 230 V over 0.2 Ω: 37.95 A
  expect(said({ startCurrent: known(amperes(37)) })).toEqual([]);
  // 84 A x 0.2 Ω / 230 V = 7.3 %
  expect(said({ startCurrent: known(amperes(84)) })[0]).toMatch(
    /84 A change .* by up to 7\.3 %\. Up to 37 A change it by 3\.3 %/,
  );
  expect(said({ startCurrent: known(amperes(84)) })[0]).not.toContain('207 V');
  // 168 A: 14.6 %, below 207 V
  expect(said({ startCurrent: known(amperes(168)) })[0]).toContain('below 207 V');
});

test('a welder is judged by its heat, and its flicker is asked about', () => {
  // 40 A for a quarter of the time heat like 20 A
  const welder = { startCurrent: known(amperes(40)), workingShare: known(ratio(0.25)) };
  const [flicker, ...more] = said(welder, 20);
  expect(flicker).toContain('flicker');
  expect(more).toEqual([]);
  expect(said(welder, 15)[1]).toMatch(/Is 15 A right for machine\? 40 A for 25 % of the time heat a cable like 20 A/);
});

test('nothing is said of what nobody knows', () => {
  expect(said({})).toEqual([]);
  expect(said({ startCurrent: unknown() })).toEqual([]);
  expect(said({ startCurrent: known(amperes(90)) }, 28, { externalImpedance: unknown() })).toEqual([]);
});
