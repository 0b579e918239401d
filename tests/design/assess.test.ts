import { describe, expect, it } from 'vitest';
import {
  amperes,
  assess,
  type Board,
  celsius,
  hasCode,
  known,
  metres,
  type Run,
  ratio,
  recorder,
  squareMillimetres,
  unknown,
  writeSheet,
} from '../../src/index.js';
import { chargePoint, circuit, house } from '../support/house.js';
import { smallCode } from '../support/small-code.js';

const find = (a: ReturnType<typeof assess>, check: string) => a.results.find((r) => r.check === check);

describe('assess', () => {
  it('judges a circuit by every aspect, and silent and recorded runs agree', () => {
    const installation = house([circuit()]);
    const quiet = assess(smallCode, installation, 'ev');
    const sheet = recorder('ev');
    const loud = assess(smallCode, installation, 'ev', {}, sheet);
    expect(loud).toEqual(quiet);
    expect(quiet.overall.verdict).toBe('pass');
    expect(quiet.aspects).toHaveLength(15);
    // 7.3 mV/A/m, 32 A, 20 m: 4.672 V of 230 V
    expect(find(quiet, 'voltage-drop')?.value?.value).toBeCloseTo(4.672 / 230, 12);
    expect(JSON.parse(JSON.stringify(quiet))).toEqual(quiet);
    expect(writeSheet(sheet)).toBeDefined();
  });

  it('names a run that does not exist', () => {
    try {
      assess(smallCode, house([circuit()]), 'no');
      expect.unreachable();
    } catch (error) {
      expect(hasCode(error, 'unknown-definition') && error.detail.known).toEqual(['ev']);
    }
  });

  it('ends in not-determined for each unknown fact, once', () => {
    const run = circuit({
      cable: { ...circuit().cable, area: unknown('measure the cores') },
      stretches: [{ name: 'route', length: unknown(), method: unknown(), ambient: unknown() }],
      device: { ...circuit().device, rating: unknown(), kind: unknown() },
    });
    const found = assess(smallCode, house([run]), 'ev');
    expect(found.overall.verdict).toBe('not-determined');
    expect(found.overall.failed).toEqual([]);
    expect(new Set(found.gaps.map((g) => JSON.stringify(g))).size).toBe(found.gaps.length);
    expect(found.gaps.some((g) => g.kind === 'fact' && g.obtain === 'measure the cores')).toBe(true);
  });

  it('adds up what a feeder feeds, by line, and lets its demand be declared', () => {
    const load = (id: string, amps: number) => ({
      kind: 'load' as const,
      id,
      purpose: 'other' as const,
      current: known(amperes(amps)),
      lines: ['L1' as const],
    });
    const garage: Board = {
      kind: 'board',
      complete: known(true),
      noResidual: known(true),
      id: 'garage',
      runs: [circuit(), circuit({ id: 'light', feeds: [load('lamp', 6)] })],
    };
    const feeder: Run = circuit({ id: 'submain', feeds: [garage] });
    const installation = house([feeder]);
    expect(find(assess(smallCode, installation, 'submain'), 'device-carries-load')?.limit?.value).toBe(38);
    const declared = assess(smallCode, installation, 'submain', { feederDemand: { submain: amperes(30) } });
    expect(find(declared, 'device-carries-load')?.verdict).toBe('pass');
    // the drop from the origin counts the feeder at the rating of its device, 32 A, and the circuit
    const inner = assess(smallCode, installation, 'ev');
    expect(inner.figures.totalDrop).toBeCloseTo(2 * 4.672, 10);
    const held = house([
      circuit({
        id: 'submain',
        feeds: [{ ...garage, control: { name: 'limit', limit: known(amperes(10)), controls: ['point'] } }],
      }),
    ]);
    // the limit is that of the whole board: 6 A of the lamp leave 4 A for the point
    expect(find(assess(smallCode, held, 'submain'), 'device-carries-load')?.limit?.value).toBe(10);
  });

  it('rates every stretch with its own factors and names the governing one', () => {
    const stretch = (name: string, change: object) => ({
      name,
      length: known(metres(5)),
      method: known('C' as const),
      ambient: known(celsius(30)),
      group: { arrangement: 'bunched' as const, circuits: known(1) },
      insulated: known(metres(0)),
      ...change,
    });
    const run = circuit({
      stretches: [
        stretch('warm loft', { ambient: known(celsius(40)) }),
        stretch('bunched', { group: { arrangement: 'bunched', circuits: known(3), unequal: known(false) } }),
      ],
    });
    const found = assess(smallCode, house([run]), 'ev');
    expect(found.figures.governingStretch).toBe('bunched');
    // 47 A times C_g 0.70, never times C_a of the other stretch
    expect(found.figures.capacity).toBeCloseTo(47 * 0.7, 10);
  });

  it('does not take C_i on top of a method that contains the insulation', () => {
    const run = circuit({
      stretches: [
        {
          name: 'loft',
          length: known(metres(20)),
          method: known('103'),
          ambient: known(celsius(30)),
          group: { arrangement: 'bunched' as const, circuits: known(1) },
          insulated: known(metres(3)),
        },
      ],
    });
    const found = assess(smallCode, house([run]), 'ev');
    expect(found.figures.capacity).toBeCloseTo(23.5, 10);
    expect(find(found, 'insulation-counted-once')?.verdict).toBe('pass');
    expect(find(found, 'tabulated-capacity')?.verdict).toBe('fail');
  });

  it('judges terminals by the temperature at the load', () => {
    const run = circuit({
      cable: {
        construction: 'multicore',
        material: 'copper',
        insulation: 'thermosetting-90',
        cores: 3,
        area: known(squareMillimetres(2.5)),
        protective: 'core',
      },
    });
    const hot = assess(smallCode, house([run]), 'ev');
    expect(find(hot, 'terminal-temperature')?.verdict).toBe('fail');
    const light = { ...chargePoint, setting: known(amperes(10)) };
    const cool = assess(smallCode, house([{ ...run, feeds: [light] }]), 'ev');
    expect(find(cool, 'terminal-temperature')?.verdict).toBe('pass');
    expect(ratio(1)).toBe(1);
  });
});
