import { CalculationError, type Formula, type Relation, termOf } from '../../src/index.js';
import { evaluateWithUnits, readExpression, residualOf } from '../../src/verify/expression.js';
import { withUnit } from '../../src/verify/units.js';
import { expressionsOf, inputsOf, symbolsOf } from './inputs.js';
import { sidesOf, type Walked, walk } from './walk.js';

/** What a proof came to. */
export interface Proof {
  /** Inputs that were tried. */
  readonly tried: number;
  /** Inputs for which code and expression both have a result, and agree. */
  readonly agreed: number;
  /** Of these, inputs for which rounding left nothing in doubt beyond 1e-12 of the result. */
  readonly sharp: number;
  /** Everything that is wrong, at most a few of a kind. */
  readonly problems: readonly string[];
}

/** Agreement that is demanded, relative to the result. */
const demanded = 1e-12;
/** Code may be arranged in another order than the expression: this many times its rounding is allowed. */
const slack = 8;

type Values = Readonly<Record<string, number>>;

/** A number of coherent units: what the general calculator holds inside. */
const coherent = (value: number, unit: string): number => {
  const held = withUnit(value, unit);
  return typeof held === 'number' ? held : (held as unknown as { readonly value: number }).value;
};

const scopeOf = (f: Formula | Relation, values: Values): ReadonlyMap<string, number> =>
  new Map([
    ...Object.entries(values).map(([n, v]) => [n, coherent(v, termOf(n)?.unit ?? '')] as const),
    ...Object.entries(f.constants ?? {}).map(([n, [v, unit]]) => [n, coherent(v, unit)] as const),
  ]);

/** A call gives no result below zero, where the role of the result has none. */
const refused = (result: number | string): boolean => result === 'out-of-range';

/** The result of the code, or why there is none. */
function computed(f: Formula | Relation, values: Values): number | string {
  try {
    const result = f(values as never);
    return Number.isFinite(result) ? result : String(result);
  } catch (error) {
    if (error instanceof CalculationError) return error.code;
    throw error;
  }
}

/** The result of the expression with units, or why there is none. */
function expected(f: Formula, values: Values): number | string {
  try {
    return evaluateWithUnits(f, values);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/**
 * Proves a formula: its code against its expression, evaluated with units by the general calculator, for random inputs
 * and at every edge. A relation is proven by what its terms leave at the solution.
 * @param f the formula or relation
 * @param count how many random inputs
 */
export function prove(f: Formula | Relation, count = 150): Proof {
  const problems: string[] = [];
  const wrong = (values: Values, words: string) => {
    if (problems.length < 3) problems.push(`${words} for ${JSON.stringify(values)}`);
  };
  const trees = expressionsOf(f).map((text) => readExpression(text, symbolsOf(f)).tree);
  const open = new Set(trees.flatMap((tree) => sidesOf(tree).map((side) => side.join(' is never '))));
  const took = (place: string, side: string) => open.delete(`${place} is never ${side}`);
  const walked = (values: Values): Walked => {
    const scope = scopeOf(f, values);
    const found = trees.map((tree) => walk(tree, scope, took));
    return found[0] as Walked;
  };
  const one = coherent(1, termOf(f.output)?.unit ?? '');
  let tried = 0;
  let agreed = 0;
  let sharp = 0;
  for (const values of inputsOf(f, count)) {
    tried++;
    const ours = computed(f, values);
    if (f.kind === 'relation') {
      if (typeof ours === 'string') continue;
      const solved = { ...values, [f.output]: ours };
      walked(solved);
      const residual = residualOf(f, solved);
      if (!(residual <= f.tolerance)) wrong(values, `the terms leave ${residual} of the largest at ${ours}`);
      else agreed++;
      sharp = agreed;
      continue;
    }
    const theirs = expected(f, values);
    if (typeof ours === 'string' && (typeof theirs === 'string' || (refused(ours) && theirs < 0))) continue;
    if (typeof ours === 'string' || typeof theirs === 'string') {
      wrong(values, `the code comes to ${ours}, the expression ${theirs}`);
      continue;
    }
    const noise = (slack * walked(values).noise) / one;
    const difference = Math.abs(ours - theirs);
    if (!(difference <= demanded * Math.abs(theirs) || difference <= noise)) {
      wrong(values, `the code gives ${ours}, the expression ${theirs}`);
      continue;
    }
    agreed++;
    if (noise <= demanded * Math.abs(theirs)) sharp++;
  }
  // inputs that have no result are legitimate, but not most of them
  if (!(agreed > tried / 20)) problems.push(`only ${agreed} of ${tried} inputs have a result`);
  if (!(sharp > tried / 40)) problems.push(`only ${sharp} of ${tried} results are free of cancellation`);
  return { tried, agreed, sharp, problems: [...problems, ...[...open].map((side) => `${f.id}: ${side}`)] };
}
