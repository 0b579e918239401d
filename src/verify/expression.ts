import type { MathNode } from 'mathjs';
import type { Constants, Formula, Relation } from '../core/index.js';
import { termOf } from '../core/index.js';
import { general, numberIn, withUnit } from './units.js';

const functions = new Set([
  'abs',
  'acos',
  'asin',
  'atan',
  'ceil',
  'cos',
  'exp',
  'floor',
  'log',
  'max',
  'min',
  'round',
  'sin',
  'sqrt',
  'tan',
]);
const operators = new Set(
  'add subtract multiply divide pow unaryMinus smaller smallerEq larger largerEq equal unequal and or not'.split(' '),
);

/** What stands in a tree of the general calculator, by the type of the node. */
interface Node extends MathNode {
  readonly fn?: { readonly name?: string } | string;
  readonly name?: string;
  readonly value?: unknown;
}

/**
 * Refuses what an expression may not hold: everything but numbers, known symbols, arithmetic, comparisons, conditions
 * and a few functions. A symbol that has no value must be an error: the calculator would take it for a unit.
 */
function inspect(tree: MathNode, known: ReadonlySet<string>): void {
  tree.traverse((any: MathNode, path: string, parent: MathNode | null) => {
    const node = any as Node;
    switch (node.type) {
      case 'ConstantNode':
        if (typeof node.value !== 'number') throw new Error(`${String(node.value)} is no number`);
        return;
      case 'SymbolNode':
        if (path === 'fn' && parent?.type === 'FunctionNode') return;
        if (!known.has(node.name ?? '')) throw new Error(`${node.name} has no value`);
        return;
      case 'OperatorNode':
        if (!operators.has(String(node.fn))) throw new Error(`the operator ${String(node.fn)} is not allowed`);
        return;
      case 'FunctionNode': {
        const name = typeof node.fn === 'object' ? node.fn.name : undefined;
        if (!functions.has(name ?? '')) throw new Error(`the function ${name} is not allowed`);
        return;
      }
      case 'ParenthesisNode':
      case 'ConditionalNode':
      case 'RelationalNode':
        return;
      default:
        throw new Error(`${node.type} is not allowed`);
    }
  });
}

/** An expression, read and inspected. */
export interface Read {
  readonly tree: MathNode;
  /** Its value for these symbols. */
  readonly evaluate: (scope: Map<string, unknown>) => unknown;
}

const read = /* @__PURE__ */ new Map<string, Read>();

/**
 * Reads an expression under the allow-list.
 * @param text the expression, at most 2000 characters
 * @param symbols names that have a value
 * @throws Error naming what is not allowed or has no value
 */
export function readExpression(text: string, symbols: readonly string[]): Read {
  const key = `${symbols.join(' ')} : ${text}`;
  const known = read.get(key);
  if (known) return known;
  if (text.length > 2000) throw new Error('the expression is too long');
  const tree = general.parse(text);
  inspect(tree, new Set(symbols));
  const code = tree.compile();
  const made: Read = { tree, evaluate: (scope) => code.evaluate(scope) };
  read.set(key, made);
  return made;
}

const unitOf = (name: string): string => {
  const term = termOf(name);
  if (!term) throw new Error(`there is no role ${name}`);
  return term.unit;
};

/** Values and constants with their units. */
function scopeOf(values: Readonly<Record<string, number>>, constants: Constants = {}): Map<string, unknown> {
  const scope = new Map<string, unknown>();
  for (const [name, value] of Object.entries(values)) scope.set(name, withUnit(value, unitOf(name)));
  for (const [name, [value, unit]] of Object.entries(constants)) {
    if (scope.has(name)) throw new Error(`${name} is both an input and a constant`);
    scope.set(name, withUnit(value, unit));
  }
  return scope;
}

/**
 * Evaluates the expression of a formula with units, apart from its code.
 * @param values its inputs, each in its canonical unit
 * @returns the result in its canonical unit
 * @throws Error when units do not fit, a symbol has no value, or the result is not finite
 */
export function evaluateWithUnits(
  formula: Pick<Formula, 'expression' | 'constants' | 'output'>,
  values: Readonly<Record<string, number>>,
): number {
  const scope = scopeOf(values, formula.constants);
  return numberIn(readExpression(formula.expression, [...scope.keys()]).evaluate(scope), unitOf(formula.output));
}

/**
 * The residual of a relation at a solution, over its largest term.
 * @param values its inputs and its output, each in its canonical unit
 * @throws Error when a term is of another unit than the first, or is not finite
 */
export function residualOf(relation: Pick<Relation, 'terms' | 'constants'>, values: Readonly<Record<string, number>>) {
  const scope = scopeOf(values, relation.constants);
  const symbols = [...scope.keys()];
  const terms = relation.terms.map((text) => readExpression(text, symbols).evaluate(scope));
  const first = terms[0];
  const inFirst = (term: unknown): number => {
    const [a, b] = [term, first] as { toNumber(u: unknown): number; formatUnits(): string; value: number }[];
    const value =
      typeof term === 'number' && typeof first === 'number'
        ? term
        : (a as { toNumber(u: unknown): number }).toNumber((b as { formatUnits(): string }).formatUnits());
    if (!Number.isFinite(value)) throw new Error(`a term is ${value}`);
    return value;
  };
  const numbers = terms.map(inFirst);
  const largest = Math.max(...numbers.map(Math.abs));
  const residual = Math.abs(numbers.reduce((a, b) => a + b, 0));
  return largest === 0 ? 0 : residual / largest;
}
