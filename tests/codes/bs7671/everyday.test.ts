/** The figures that are looked for most, against printed ones. */
import { describe, expect, it } from 'vitest';
import {
  adiabaticSize,
  cableCapacity,
  capacityTables,
  circuitVoltageDrop,
  correctionFactorTables,
  disconnectionTime,
  dwellingDemand,
  longestDisconnectionTime,
  maxZs,
  voltageDropTables,
} from '../../../src/codes/bs7671/index.js';
import {
  adiabaticFactor,
  amperes,
  celsius,
  hasCode,
  metres,
  seconds,
  squareMillimetres,
  volts,
} from '../../../src/index.js';
import { verifySheet } from '../../../src/verify/index.js';

const twinAndEarth = (area: number) =>
  ({
    construction: 'flat-twin-and-earth',
    material: 'copper',
    insulation: 'thermoplastic-70',
    area: squareMillimetres(area),
  }) as const;
const alone = { method: 'C', loaded: 2, ambient: celsius(30), circuits: 1, insulated: metres(0) } as const;

const code = (work: () => unknown): string => {
  try {
    work();
    return 'nothing thrown';
  } catch (error) {
    for (const known of ['no-cell', 'not-covered', 'out-of-range'] as const) if (hasCode(error, known)) return known;
    throw error;
  }
};

describe('against printed figures', () => {
  it('the smallest protective conductor: a UK college textbook, page 251, example 2', () => {
    expect(adiabaticSize(amperes(90), seconds(0.4), adiabaticFactor(115)).value).toBeCloseTo(0.495, 3);
  });

  it('the demand of a cooker of 12 kW with a socket: a UK college textbook, page 298', () => {
    const { value } = dwellingDemand({ cookers: [{ current: amperes(52.17), withSocket: true }] });
    expect(value).toBeCloseTo(27.65, 2);
  });

  it('the drop of a shower circuit of 4 mm²: a guide to the 16th edition, 4.3.11', () => {
    const drop = circuitVoltageDrop(twinAndEarth(4), {
      system: 'single-phase',
      current: amperes(25),
      length: metres(16),
    });
    expect(drop.value).toBeCloseTo(4.4, 10);
    expect(drop.text).toBe('4.4 V');
  });

  it('maximum Zs as printed from Amendment 3:2015 on: 7.28 Ω and 1.37 Ω', () => {
    expect(maxZs({ standard: 'EN 60898', curve: 'B', rating: amperes(6) }, 0.4).value).toBe(7.28);
    expect(maxZs({ standard: 'EN 61009', curve: 'B', rating: amperes(32) }, 5).text).toBe('1.37 Ω');
  });

  it('the factor for 40 °C in a roof space, 0.87: Electric wiring: domestic, kiln in a workshop', () => {
    const cool = cableCapacity(twinAndEarth(6), alone).value;
    expect(cableCapacity(twinAndEarth(6), { ...alone, ambient: celsius(40) }).value / cool).toBeCloseTo(0.87, 10);
  });
});

describe('each figure', () => {
  const figures = [
    cableCapacity(twinAndEarth(6), { ...alone, circuits: 3, arrangement: 'bunched', insulated: metres(2) }),
    circuitVoltageDrop(twinAndEarth(6), { system: 'single-phase', current: amperes(32), length: metres(18) }),
    maxZs({ standard: 'BS 1361', rating: amperes(80) }, 5),
    longestDisconnectionTime('TT', 'final', volts(230)),
    adiabaticSize(amperes(860), seconds(0.1), adiabaticFactor(115)),
    dwellingDemand({ lighting: amperes(8), socketCircuits: [amperes(32), amperes(32)], showers: [amperes(37)] }),
  ];

  it('comes with its source, and with a sheet that another library works out alike', () => {
    for (const { sources, sheet, text } of figures) {
      expect(sources.length, text).toBeGreaterThan(0);
      expect(sources.join('; ')).toMatch(/BS 7671|On-Site Guide/);
      expect([text, verifySheet(sheet).problems]).toEqual([text, []]);
    }
  });

  it('half a metre of insulation and three metres take the same half away', () => {
    const by = (insulated: number) => cableCapacity(twinAndEarth(6), { ...alone, insulated: metres(insulated) }).value;
    expect(by(0.5)).toBe(by(3));
    expect(by(3) / by(0)).toBeCloseTo(0.5, 10);
  });
});

it('flat cable where its own table has no column is read from that of multicore cable', () => {
  const inTrunking = cableCapacity(twinAndEarth(6), { ...alone, method: 'B' });
  expect(inTrunking.text).toBe('38 A');
  expect(inTrunking.sources[0]).toContain('Table 4D2A');
});

describe('what is left open or cannot be is told by name', () => {
  it.each([
    ['a size that is not made', 'no-cell', () => cableCapacity(twinAndEarth(7), alone)],
    [
      'a method that the cable has no figures for',
      'no-cell',
      () => cableCapacity(twinAndEarth(6), { ...alone, method: 'F' }),
    ],
    [
      'insulation that is not mentioned',
      'not-covered',
      () => cableCapacity(twinAndEarth(6), { ...alone, insulated: undefined } as never),
    ],
    [
      'insulation that the method has already',
      'not-covered',
      () => cableCapacity(twinAndEarth(6), { ...alone, method: '101', insulated: metres(1) }),
    ],
    ['how circuits lie together', 'not-covered', () => cableCapacity(twinAndEarth(6), { ...alone, circuits: 3 })],
    [
      'a cable without tables',
      'not-covered',
      () => cableCapacity({ ...twinAndEarth(6), material: 'aluminium' }, alone),
    ],
    ['a rating that no table has', 'no-cell', () => maxZs({ standard: 'BS 88-3', rating: amperes(7) }, 0.4)],
    [
      'a current that need not open the device',
      'not-covered',
      () => disconnectionTime({ standard: 'EN 60898', curve: 'B', rating: amperes(32) }, amperes(35)),
    ],
    [
      'a time beyond the adiabatic equation',
      'out-of-range',
      () => adiabaticSize(amperes(100), seconds(6), adiabaticFactor(115)),
    ],
  ])('%s: %s', (_, expected, work) => {
    expect(code(work)).toBe(expected);
  });

  it('a breaker opens at once above its band, and not before', () => {
    const device = { standard: 'EN 60898', curve: 'B', rating: amperes(32) } as const;
    expect(disconnectionTime(device, amperes(160)).value).toBe(0.1);
    expect(disconnectionTime(device, amperes(159)).value).toBeGreaterThan(0.1);
  });
});

it('tables are found by the words of the trade', () => {
  expect(capacityTables.twinAndEarth.id).toBe('bs7671/4d5');
  expect(voltageDropTables.armouredThermosetting.id).toBe('bs7671/4e4b');
  for (const group of [capacityTables, voltageDropTables, correctionFactorTables])
    for (const [name, table] of Object.entries(group)) expect([name, table.source.document]).toEqual([name, 'BS 7671']);
});

describe('a caller whom no compiler tells hears which argument it is, what is due, and an example', () => {
  const cable = twinAndEarth(6);
  const breaker = { standard: 'EN 60898', curve: 'B', rating: 32 };
  it.each<[string, (...given: never[]) => unknown, unknown[], string[]]>([
    [
      'a device in words',
      maxZs,
      ['B32', 0.4],
      ["device: is 'B32'; an object is due, such as { standard: 'EN 60898', cur"],
    ],
    ['nothing', maxZs, [], ['device: is missing', 'time: is missing; 0.4 | 5 is due']],
    ['a time that no table has', maxZs, [breaker, 1], ['time: is 1; 0.4 | 5 is due']],
    ['a time as text', maxZs, [breaker, '0.4'], ["time: is '0.4'; 0.4 | 5 is due"]],
    [
      'a rating as text',
      maxZs,
      [{ ...breaker, rating: '32' }, 5],
      ["device.rating: is '32'; a number is due, such as a"],
    ],
    ['a curve that is none', maxZs, [{ ...breaker, curve: 'E' }, 5], ["device.curve: is 'E'; 'B' | 'C' | 'D' is due"]],
    ['no curve', maxZs, [{ ...breaker, curve: undefined }, 5], ['device.curve: is missing']],
    [
      'a curve of a fuse',
      maxZs,
      [{ ...breaker, standard: 'BS 88-3' }, 5],
      ["device.standard: is 'BS 88-3'; 'EN 60898' |"],
    ],
    [
      'another name of a standard',
      maxZs,
      [{ standard: 'BS3036', rating: 30 }, 5],
      ["device.standard: is 'BS3036'; 'EN 60"],
    ],
    ['no cable', cableCapacity, [], ['cable: is missing', 'installed: is missing']],
    [
      'a cable by a short name',
      cableCapacity,
      [{ ...cable, construction: 'T&E' }, alone],
      ["cable.construction: is 'T&E'"],
    ],
    [
      'an area as text',
      cableCapacity,
      [{ ...cable, area: '6' }, alone],
      ["cable.area: is '6'; a number is due, such as squ"],
    ],
    [
      'a number of conductors as text',
      cableCapacity,
      [cable, { ...alone, loaded: '3' }],
      ["installed.loaded: is '3'; 2 | 3"],
    ],
    [
      'circuits without a number',
      cableCapacity,
      [cable, { ...alone, circuits: undefined }],
      ['installed.circuits: is missing'],
    ],
    [
      'a method that is none',
      cableCapacity,
      [cable, { ...alone, method: 'clipped' }],
      ["installed.method: is 'clipped'"],
    ],
    ['a circuit by its current', circuitVoltageDrop, [cable, 32], ['circuit: is 32; an object is due']],
    [
      'a system in short',
      circuitVoltageDrop,
      [cable, { system: '1ph', current: 32, length: 9 }],
      ["circuit.system: is '1ph'"],
    ],
    ['TN-S for TN', longestDisconnectionTime, ['TN-S', 'final', 230], ["system: is 'TN-S'; 'TN' | 'TT' is due"]],
    ['a voltage as text', longestDisconnectionTime, ['TN', 'final', '230'], ["nominalVoltage: is '230'"]],
    ['a current that is none', disconnectionTime, [breaker, Number.NaN], ['current: is NaN; a number is due']],
    ['figures as text', adiabaticSize, ['860', '0.1', 115], ["current: is '860'", "time: is '0.1'"]],
    ['loads in words', dwellingDemand, ['cooker'], ["loads: is 'cooker'; an object is due, such as { lighting"]],
    ['no loads', dwellingDemand, [], ['loads: is missing']],
    [
      'a misspelt load',
      dwellingDemand,
      [{ shower: [37] }],
      ['loads.shower: is no field of it; its fields are lighting'],
    ],
    ['one load for a list', dwellingDemand, [{ showers: 37 }], ['loads.showers: is 37; a list is due']],
    ['a cooker by its current', dwellingDemand, [{ cookers: [7] }], ['loads.cookers[0]: is 7; an object is due']],
    [
      'a socket in words',
      dwellingDemand,
      [{ cookers: [{ current: 30, withSocket: 'yes' }] }],
      ["loads.cookers[0].withSocket: is 'yes'"],
    ],
  ])('%s', (_, called, given, told) => {
    let error: unknown;
    try {
      called(...(given as never[]));
    } catch (thrown) {
      error = thrown;
    }
    expect(hasCode(error, 'invalid-input')).toBe(true);
    for (const line of told) expect((error as Error).message).toContain(`\n  ${line}`);
    // as many as are named, and no more
    expect((error as Error).message.split('\n')).toHaveLength(told.length + 1);
  });
});
