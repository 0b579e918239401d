/**
 * One fact made worse for a check never turns that check from fail into pass; a fact that is
 * not known never passes what was not passed before; what has no order may stand in any.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checksOf } from '../../src/calculation/index.js';
import { bs7671 } from '../../src/codes/bs7671/index.js';
import type { CheckResult, Name } from '../../src/core/index.js';
import { Working } from '../../src/design/working.js';
import type { Installation } from '../../src/installation/index.js';
import { arbitraryInstallation } from '../../src/testing/index.js';
import { hasCode } from '../../src/units/index.js';

const code = bs7671('2018+A2:2022');
type Tree = { [key: string]: unknown };

const heat = [
  'conventional-overload',
  'device-carries-load',
  'infeed-within-capacity',
  'line-neutral-fault-clears',
  'line-withstand',
  'load-within-capacity',
  'tabulated-capacity',
  'terminal-temperature',
  'voltage-drop',
  'voltage-window',
];
const faultsToBreak = [
  'breaking-capacity',
  'conditional-breaking-capacity',
  'own-breaking-capacity',
  'discrimination-with-cut-out',
  'discrimination-with-feeder-device',
];
const overcurrent = ['automatic-disconnection', 'disconnection-by-overcurrent-device', 'line-neutral-fault-clears'];

/** Which way a fact moves, and the checks that it then makes worse, whatever else is so. */
const worseWith: readonly (readonly [fact: Name, way: 'up' | 'down', checks: readonly string[]])[] = [
  ['designCurrent', 'up', [...heat, 'grouped-device']],
  ['ambientTemperature', 'up', [...heat, 'ring-capacity']],
  ['groundTemperature', 'up', [...heat, 'ring-capacity']],
  ['circuitsInGroup', 'up', [...heat, 'ring-capacity']],
  ['soilResistivity', 'up', [...heat, 'ring-capacity']],
  ['insulatedLength', 'up', [...heat, 'ring-capacity']],
  ['length', 'up', [...overcurrent, 'voltage-drop', 'voltage-window']],
  ['length', 'down', faultsToBreak],
  ['prospectiveCurrent', 'up', faultsToBreak],
  ['prospectiveCurrent', 'down', ['line-neutral-fault-clears']],
  ['externalImpedance', 'up', [...overcurrent, 'disconnection-by-residual-current-device']],
  [
    'electrodeResistance',
    'up',
    [
      'automatic-disconnection',
      'electrode-stability',
      'open-pen-held-current',
      'open-pen-held-power',
      'open-pen-low-electrode',
      'touch-voltage-at-residual-current',
      'tt-electrode-stable',
      'tt-touch-voltage',
    ],
  ],
  [
    'residualOperatingCurrent',
    'up',
    [
      'disconnection-by-residual-current-device',
      'residual-current-bath-or-shower',
      'residual-current-concealed-cable',
      'residual-current-lighting',
      'residual-current-rating',
      'residual-current-socket-outlets',
      'touch-voltage-at-residual-current',
      'tt-touch-voltage',
    ],
  ],
  ['standingCurrentSum', 'up', ['standing-current']],
  ['residualRatedCurrent', 'down', ['residual-current-device-overload']],
  ['terminalTemperature', 'down', ['terminal-temperature']],
  ['earthSeparation', 'down', ['tt-electrodes-apart', 'tt-out-of-reach']],
  ['earthingConductorArea', 'down', ['earthing-conductor']],
  ['bondingArea', 'down', ['main-bonding-conductor', 'outbuilding-bonding']],
];
const isWorse = (check: string, role: Name | undefined, way: 'up' | 'down') =>
  worseWith.some(([fact, direction, checks]) => fact === role && direction === way && checks.includes(check));

/** Results by aspect, check and count. */
function judged(installation: Installation) {
  const results = new Map<string, CheckResult>();
  for (const { aspect, results: own } of new Working(code, installation, 'ev', {}).judged()) {
    const count = new Map<string, number>();
    for (const r of own) {
      const nth = count.get(r.check) ?? 0;
      count.set(r.check, nth + 1);
      results.set(`${aspect} ${r.check} ${nth}`, r);
    }
  }
  return results;
}

/** Roles of surveyed facts, by the key under which they stand and what stands around them. */
function roleOf(key: string, parent: Tree, above: string): Name | undefined {
  const inGround = String((parent.method as { value?: unknown } | undefined)?.value ?? '').startsWith('D');
  const roles: Readonly<Record<string, Name>> = {
    externalImpedance: 'externalImpedance',
    prospectiveCurrent: 'prospectiveCurrent',
    length: 'length',
    insulated: 'insulatedLength',
    circuits: 'circuitsInGroup',
    resistance: 'electrodeResistance',
    separation: 'earthSeparation',
    setting: 'designCurrent',
    current: 'designCurrent',
    thirdHarmonic: 'thirdHarmonic',
    terminalTemperature: 'terminalTemperature',
    earthingConductor: 'earthingConductorArea',
    ratedCurrent: 'residualRatedCurrent',
    standingLeakage: 'standingCurrentSum',
  };
  if (key === 'ambient') return inGround ? 'groundTemperature' : 'ambientTemperature';
  if (key === 'soilResistivity') return parent.method ? 'soilResistivity' : undefined;
  if (key === 'area') return above === 'bonding' ? 'bondingArea' : undefined;
  if (key === 'rating') return above === 'residual' ? 'residualOperatingCurrent' : undefined;
  return roles[key];
}

interface Place {
  readonly path: readonly string[];
  readonly role: Name | undefined;
}

/** Every known fact of an installation, with its role where it has one. */
function places(node: unknown, path: readonly string[] = [], parent: Tree = {}): Place[] {
  if (typeof node !== 'object' || node === null) return [];
  if ((node as Tree).state === 'known') {
    const key = path.at(-1) ?? '';
    const above =
      [...path]
        .slice(0, -1)
        .reverse()
        .find((k) => !/^\d+$/.test(k)) ?? '';
    return [{ path, role: roleOf(key, parent, above) }];
  }
  return Object.entries(node).flatMap(([key, inner]) =>
    places(inner, [...path, key], Array.isArray(node) ? parent : (node as Tree)),
  );
}

/** The tree with the fact at a place changed. */
function changed<T>(node: T, [key, ...rest]: readonly string[], change: (fact: Tree) => unknown): T {
  if (key === undefined) return change(node as Tree) as T;
  if (Array.isArray(node))
    return node.map((v, i) => (String(i) === key ? changed(v, rest, change) : v)) as unknown as T;
  return { ...node, [key]: changed((node as Tree)[key], rest, change) };
}

const scaled = (fact: Tree, direction: 'up' | 'down', by: number): Tree => {
  const value = fact.value as number;
  const whole = Number.isInteger(value) && value < 10;
  const moved = direction === 'up' ? value + Math.abs(value) * by : value - Math.abs(value) * by;
  return { ...fact, value: whole ? (direction === 'up' ? Math.ceil(moved) : Math.max(1, Math.floor(moved))) : moved };
};

/** What is outside its role's range is refused, and compares with nothing. */
function within<T>(judge: () => T): T | undefined {
  try {
    return judge();
  } catch (error) {
    if (hasCode(error, 'out-of-range') || hasCode(error, 'invalid-input')) return undefined;
    throw error;
  }
}

describe('one fact made worse', () => {
  it('is told of checks that the code has', () => {
    const known = Object.values(code.calculator.contents.checks)
      .flatMap((of) => ('noRule' in of || 'notEntered' in of ? [] : checksOf(of)))
      .map(({ id }) => id);
    expect(worseWith.flatMap(([, , checks]) => checks).filter((id) => !known.includes(id))).toEqual([]);
  });

  it('turns no check that it makes worse from fail into pass', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        arbitraryInstallation(),
        fc.double({ min: 0.02, max: 3, noNaN: true }),
        fc.nat(),
        (drawn, by, pick) => {
          const before = judged(drawn);
          const named = places(drawn).filter((p) => p.role !== undefined);
          for (let k = 0; k < Math.min(6, named.length); k++) {
            const { path, role } = named[(pick + k * 7) % named.length] as Place;
            for (const direction of ['up', 'down'] as const) {
              const share = direction === 'down' ? Math.min(by, 0.95) : by;
              const moved = changed(drawn, path, (fact) => scaled(fact, direction, share));
              const after = within(() => judged(moved));
              if (!after) continue;
              for (const [key, result] of before) {
                if (result.verdict !== 'fail' || !isWorse(result.check, role, direction)) continue;
                compared++;
                expect([path.join('.'), direction, key, after.get(key)?.verdict]).not.toEqual([
                  path.join('.'),
                  direction,
                  key,
                  'pass',
                ]);
              }
            }
          }
        },
      ),
      { numRuns: 100, endOnFailure: true },
    );
    expect(compared).toBeGreaterThan(100);
  });
});

const rank = ['fail', 'not-determined', 'pass', 'not-required'];

/**
 * The worst verdict of every check: how many results it has may change with what is known. What contradicts each other does
 * so no longer where one of the two is not known.
 */
function worst(results: ReadonlyMap<string, CheckResult>): Map<string, string> {
  const found = new Map<string, string>();
  for (const { check, verdict, gaps = [] } of results.values()) {
    if (gaps.some((gap) => gap.kind === 'fact' && gap.disagree)) continue;
    const other = found.get(check);
    if (other === undefined || rank.indexOf(verdict) < rank.indexOf(other)) found.set(check, verdict);
  }
  return found;
}

describe('a fact that is not known', () => {
  it('passes nothing that was not passed with it', () => {
    let compared = 0;
    fc.assert(
      fc.property(arbitraryInstallation({ open: true }), fc.nat(), (drawn, pick) => {
        // ranges are judged elsewhere
        const plain = JSON.parse(JSON.stringify(drawn), (_k, v) =>
          v?.state === 'between' ? { state: 'known', value: v.most } : v,
        ) as Installation;
        const before = judged(plain);
        const all = places(plain);
        for (let k = 0; k < Math.min(8, all.length); k++) {
          const { path } = all[(pick + k * 5) % all.length] as Place;
          // a loop of TT that was not measured is judged by its electrode, which may say something else
          if (path.join('.') === 'supply.externalImpedance' && plain.supply.electrode) continue;
          const after = worst(judged(changed(plain, path, () => ({ state: 'unknown', obtain: 'look' }))));
          for (const [check, verdict] of worst(before)) {
            if (verdict !== 'fail' && verdict !== 'not-determined') continue;
            compared++;
            expect([path.join('.'), check, verdict, after.get(check)].join(' ')).not.toMatch(/ pass$/);
          }
        }
      }),
      { numRuns: 100, endOnFailure: true },
    );
    expect(compared).toBeGreaterThan(100);
  });
});
