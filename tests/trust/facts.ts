import type { Fact } from '../../src/core/index.js';
import type { Installation } from '../../src/index.js';
import { counts, type Field, labels, shapes } from '../../src/installation/index.js';

/** A fact where it stands in an installation. */
export interface Found {
  /** Its way from the installation down. */
  readonly path: readonly (string | number)[];
  /** Record and field, as the register has them. */
  readonly name: string;
  readonly field: Field;
  /** What it may be: labels, yes and no, or quantities from small to large. */
  readonly choices: readonly unknown[];
}

type Tree = Readonly<Record<string | number, unknown>>;

/** Quantities that occur in surveys, by role; others are taken between the bounds of their role. */
const usual: Readonly<Record<string, readonly number[]>> = {
  length: [0.5, 5, 25, 120],
  insulatedLength: [0, 0.05, 0.3, 2],
  ambientTemperature: [10, 30, 50, 65],
  soilResistivity: [0.7, 1, 2.5, 3],
  earthResistivity: [20, 100, 1000],
  depth: [0.02, 0.1, 0.5, 0.8, 2],
  deviceRating: [6, 20, 32, 63, 100],
  breakingCapacity: [3000, 6000, 10_000, 16_000],
  conductorArea: [1.5, 2.5, 6, 16],
  protectiveArea: [1, 1.5, 2.5, 6],
  residualOperatingCurrent: [0.01, 0.03, 0.1, 0.3],
  connectedCurrent: [1, 6, 16, 32],
  chargeCurrent: [0.001, 0.004, 6, 16, 32],
  externalImpedance: [0.05, 0.28, 0.35, 0.8, 20],
  prospectiveCurrent: [200, 860, 6000, 16_000],
  electrodeResistance: [2, 20, 150, 500],
  tailsArea: [10, 16, 25],
  earthingConductorArea: [2.5, 6, 10, 16],
  supplyNeutralArea: [16, 25, 35, 70],
  bondingArea: [2.5, 4, 6, 10, 25],
  thirdHarmonic: [0, 0.1, 0.33, 0.45],
  terminalTemperature: [60, 70, 90],
  disconnectionTime: [0, 0.04, 0.3],
  resistancePerMetre20: [0.0005, 0.003, 0.02],
  controlLimit: [16, 32, 60],
  demand: [10, 40, 90],
};
/** Others, of which every one is tried. */
const whole: Readonly<Record<string, readonly number[]>> = {
  powerFactor: [0.5, 0.8, 1],
  chargePower: [1400, 7000, 22_000],
};
const is = <T>(value: T): Fact<T> => ({ state: 'known', value, by: 'drawn' });
const residual = (position: string, type: string, rating: number, more: object = {}) => ({
  position,
  type: is(type),
  rating: is(rating),
  opensAllLive: is(true),
  ...more,
});
/** Records that may turn out to be there. */
const records: Readonly<Record<string, readonly unknown[]>> = {
  residual: [
    residual('origin-of-circuit', 'A', 0.03, { ratedCurrent: is(100), bidirectional: is(true) }),
    residual('origin-of-circuit', 'AC', 0.03, { ratedCurrent: is(100), bidirectional: is(false) }),
    residual('origin-of-circuit', 'AC', 0.1, { ratedCurrent: is(16), delay: is('selective'), delayTime: is(0.3) }),
    residual('inside-equipment', 'AC', 0.01, { opensAllLive: is(false), pointsServed: 2 }),
    residual('inside-equipment', 'A', 0.03, { pointsServed: 1 }),
    { position: 'along-circuit', type: { state: 'unknown' }, rating: { state: 'unknown' } },
  ],
  electrode: [
    { resistance: is(2), separation: is(20) },
    { resistance: is(150), separation: is(0.5) },
    { resistance: is(500) },
    { resistance: { state: 'unknown' } },
  ],
  tray: [
    { support: 'perforated tray', trays: 1, spaced: true },
    { support: 'unperforated tray', trays: 3, spaced: false },
    { support: 'ladder, cleats', trays: 6, spaced: false },
  ],
  group: [
    { arrangement: 'bunched', circuits: is(1) },
    { arrangement: 'bunched', circuits: is(6), unequal: is(true) },
    { arrangement: 'single-layer-tray', circuits: is(3), unequal: is(false) },
    { arrangement: 'ducts-in-ground', circuits: is(4), unequal: is(false) },
  ],
  mainSwitch: [{ rating: is(16) }, { rating: is(100) }, { rating: { state: 'unknown' } }],
  bonded: [
    { what: 'water', area: is(2.5) },
    { what: 'water', area: is(10) },
  ],
};
const numbers: Readonly<Record<string, readonly number[]>> = {
  parallel: [1, 2, 4],
  coresLoaded: [2, 3, 7],
  circuits: [1, 2, 6, 12],
  lightlyLoaded: [0, 1],
  pieces: [0, 1, 2, 5],
  groupingFactor: [0.6, 0.8, 1],
};

function choicesOf(what: string): readonly unknown[] {
  if (what === 'yes') return [true, false];
  if (what in labels) return labels[what as keyof typeof labels];
  if (what in counts) return numbers[what] ?? [];
  return usual[what] ?? whole[what] ?? records[what] ?? [];
}

/** Every fact of the register in an installation, and where one might stand that is left out. */
export function factsOf(installation: Installation): readonly Found[] {
  const found: Found[] = [];
  const visit = (shape: keyof typeof shapes, node: unknown, path: readonly (string | number)[]) => {
    if (typeof node !== 'object' || node === null) return;
    for (const [key, field] of Object.entries(shapes[shape]) as [string, Field][]) {
      const [how, what] = field;
      const value = (node as Tree)[key];
      if (what in shapes) {
        if (how.startsWith('list'))
          ((value as unknown[]) ?? []).forEach((v, i) => {
            visit(what as 'run', v, [...path, key, i]);
          });
        else visit(what as 'run', value, [...path, key]);
      }
      found.push({ path: [...path, key], name: `${shape}.${key}`, field, choices: choicesOf(what) });
    }
  };
  const board = (node: Installation['board'], path: readonly (string | number)[]) => {
    visit('board', node, path);
    node.runs.forEach((run, i) => {
      const at = [...path, 'runs', i];
      visit('run', run, at);
      run.feeds.forEach((o, j) => {
        const here = [...at, 'feeds', j];
        if (o.kind === 'board') board(o, here);
        else visit(o.kind === 'load' ? 'load' : 'chargePoint', o, here);
      });
    });
  };
  visit('supply', installation.supply, ['supply']);
  board(installation.board, ['board']);
  return found;
}

/** The installation with something else at a place; undefined leaves it out. */
export function changedAt(
  installation: Installation,
  path: readonly (string | number)[],
  value: unknown,
): Installation {
  const put = (node: unknown, rest: readonly (string | number)[]): unknown => {
    const [key, ...more] = rest as [string | number, ...(string | number)[]];
    // with one of two facts the record that holds the other may be gone
    if (node === undefined) return undefined;
    const next = more.length === 0 ? value : put((node as Tree)[key], more);
    if (Array.isArray(node)) return node.map((item, i) => (i === key ? next : item));
    const { [key]: _old, ...others } = node as Tree;
    return next === undefined ? others : { ...others, [key]: next };
  };
  return put(installation, path) as Installation;
}

/** What a fact is made of a value, as its field holds it. */
export const asHeld = ([how]: Field, value: unknown): unknown =>
  how.startsWith('fact') ? is(value) : how.startsWith('list') ? [value] : value;
