import type { MathNode } from 'mathjs';
import { type Formula, type Relation, termOf, vocabulary } from '../../src/index.js';
import { readExpression } from '../../src/verify/expression.js';

/** A repeatable source of numbers from 0 to 1. */
export function numbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** The magnitudes that a unit takes in this trade. */
const usual: Readonly<Record<string, readonly [number, number]>> = {
  A: [0.005, 20_000],
  V: [0.5, 1000],
  Ω: [0.001, 2000],
  'Ω/m': [2e-5, 0.05],
  'V/(A·m)': [1e-4, 0.05],
  m: [0.05, 500],
  'mm²': [0.5, 400],
  '°C': [-20, 250],
  W: [1, 200_000],
  VA: [1, 200_000],
  Wh: [1, 200_000],
  s: [0.005, 40_000],
  'A²s': [10, 1e8],
  Hz: [16, 400],
  'A·√s/mm²': [20, 250],
  'J/(K·mm³)': [1e-3, 5e-3],
  Ω·mm: [1e-5, 3e-4],
  '1/K': [1e-3, 6e-3],
  'm²/s': [1e-7, 1e-6],
  '1': [0.01, 50],
};

type Provable = Formula | Relation;

/** Bounds of an input: of its role and of the formula. */
export function boundsOf(f: Provable, name: string) {
  const valid = (f.valid as Readonly<Record<string, object>> | undefined)?.[name];
  return { ...termOf(name), ...valid } as { least?: number; most?: number; above?: number; unit: string };
}

/** Edges of an input: its bounds and every plain number with which the expression compares it, and their neighbours. */
function edgesOf(f: Provable, name: string, compared: readonly number[]): number[] {
  const { least, most, above } = boundsOf(f, name);
  const edges = [least, most, above === undefined ? undefined : above + Math.max(1e-6, Math.abs(above) * 1e-6)];
  const near = compared.flatMap((c) => [c, c * (1 - 1e-6), c * (1 + 1e-6)]);
  return [...edges.filter((e) => e !== undefined), ...near].filter(
    (e) =>
      (least === undefined || e >= least) && (most === undefined || e <= most) && (above === undefined || e > above),
  );
}

/** A value of an input, spread over its decades. */
function drawn(f: Provable, name: string, random: () => number): number {
  const { least, most, above, unit } = boundsOf(f, name);
  const [low, high] = usual[unit] ?? [0.01, 100];
  const from = least ?? above ?? low;
  const to = most ?? Math.max(high, Math.abs(from) * 1000);
  if (from >= 0 && random() < 0.6) {
    const bottom = Math.max(from, Math.min(low, to / 1e6)) || to / 1e6;
    return Math.min(to, bottom * (to / bottom) ** random());
  }
  return from + (to - from) * Math.max(1e-9, random());
}

const isNumber = (node: MathNode): node is MathNode & { value: number } => node.type === 'ConstantNode';

/** Numbers, and constants by name, with which an expression compares anything. */
function comparedIn(tree: MathNode, constants: Readonly<Record<string, readonly [number, string]>>): number[] {
  const found: number[] = [];
  tree.traverse((node: MathNode) => {
    const { fn, args } = node as unknown as { fn?: unknown; args?: readonly MathNode[] };
    if (node.type !== 'OperatorNode' || !/smaller|larger|equal/i.test(String(fn))) return;
    for (const arg of args ?? [])
      arg.traverse((inner: MathNode) => {
        const name = (inner as unknown as { name?: string }).name;
        if (isNumber(inner)) found.push(inner.value);
        else if (name && Object.hasOwn(constants, name)) found.push((constants[name] as readonly [number, string])[0]);
      });
  });
  return found;
}

/** The expressions of a formula or relation. */
export const expressionsOf = (f: Provable): readonly string[] => (f.kind === 'formula' ? [f.expression] : f.terms);
/** The names that stand in them. */
export const symbolsOf = (f: Provable): readonly string[] => [
  ...f.inputs,
  ...(f.kind === 'relation' ? [f.output] : []),
  ...Object.keys(f.constants ?? {}),
];

/**
 * Inputs of a formula: random ones, every edge of every input among random others, and inputs of one unit made equal.
 * @param f the formula
 * @param count how many random ones
 */
export function* inputsOf(f: Provable, count: number): Generator<Record<string, number>> {
  const random = numbers([...f.id].reduce((sum, c) => (sum * 31 + c.charCodeAt(0)) | 0, 7));
  const compared = expressionsOf(f).flatMap((e) => comparedIn(readExpression(e, symbolsOf(f)).tree, f.constants ?? {}));
  const all = () => Object.fromEntries(f.inputs.map((n) => [n, drawn(f, n, random)]));
  for (let i = 0; i < count; i++) yield all();
  for (const name of f.inputs)
    for (const edge of edgesOf(f, name, compared)) for (let i = 0; i < 4; i++) yield { ...all(), [name]: edge };
  const unitOf = (n: string) => vocabulary[n as keyof typeof vocabulary].unit;
  for (const a of f.inputs)
    for (const b of f.inputs)
      if (a < b && unitOf(a) === unitOf(b))
        for (const k of [1, 1 - 1e-6, 1 + 1e-6, 0.5, 2]) {
          const values = all();
          const { least, most, above } = boundsOf(f, b);
          const value = (values[a] as number) * k;
          const fits =
            (least === undefined || value >= least) &&
            (most === undefined || value <= most) &&
            (above === undefined || value > above);
          if (fits) yield { ...values, [b]: value };
        }
}
