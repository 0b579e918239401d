import type { MathNode } from 'mathjs';

/** What a walk through an expression in plain numbers found. */
export interface Walked {
  /** The value, in coherent units. */
  readonly value: number;
  /** How far rounding alone may carry the value: first-order error analysis, in the same unit. */
  readonly noise: number;
}

interface Node extends MathNode {
  readonly fn: { readonly name: string } | string;
  readonly name: string;
  readonly value: number;
  readonly args: readonly Node[];
  readonly content: Node;
  readonly condition: Node;
  readonly trueExpr: Node;
  readonly falseExpr: Node;
}

/** Relative rounding of one operation; twice that of a double, as units are converted on the way. */
const u = 2 ** -52;

const functions: Readonly<Record<string, (x: number) => readonly [value: number, slope: number]>> = {
  sqrt: (x) => [Math.sqrt(x), 0.5 / Math.sqrt(x)],
  exp: (x) => [Math.exp(x), Math.exp(x)],
  log: (x) => [Math.log(x), 1 / x],
  sin: (x) => [Math.sin(x), 1],
  cos: (x) => [Math.cos(x), 1],
  tan: (x) => [Math.tan(x), 1 + Math.tan(x) ** 2],
  asin: (x) => [Math.asin(x), 1 / Math.sqrt(1 - x * x)],
  acos: (x) => [Math.acos(x), 1 / Math.sqrt(1 - x * x)],
  atan: (x) => [Math.atan(x), 1 / (1 + x * x)],
};
const steps: Readonly<Record<string, (x: number) => number>> = {
  ceil: Math.ceil,
  floor: Math.floor,
  round: Math.round,
};
const comparisons: Readonly<Record<string, (a: number, b: number) => boolean>> = {
  smaller: (a, b) => a < b,
  smallerEq: (a, b) => a <= b,
  larger: (a, b) => a > b,
  largerEq: (a, b) => a >= b,
  equal: (a, b) => a === b,
  unequal: (a, b) => a !== b,
};

/**
 * Walks an expression in plain numbers of coherent units: it notes every side that a condition, a min, a max or an abs
 * takes, and bounds what rounding may do to the result. It knows nothing of units; the general calculator does.
 * @param tree the expression
 * @param scope values of the symbols, in coherent units
 * @param took called with the text of the place and the side that was taken
 */
export function walk(
  tree: MathNode,
  scope: ReadonlyMap<string, number>,
  took: (place: string, side: string) => void = () => {},
): Walked {
  const holds = (node: Node): boolean => {
    if (node.type === 'ParenthesisNode') return holds(node.content);
    const fn = String(node.fn);
    const decide = (): boolean => {
      if (fn === 'and') return holds(node.args[0] as Node) && holds(node.args[1] as Node);
      if (fn === 'or') return holds(node.args[0] as Node) || holds(node.args[1] as Node);
      if (fn === 'not') return !holds(node.args[0] as Node);
      const compare = comparisons[fn];
      if (!compare) throw new Error(`${node.toString()} is no condition that can be walked`);
      return compare(visit(node.args[0] as Node).value, visit(node.args[1] as Node).value);
    };
    const answer = decide();
    took(node.toString(), answer ? 'true' : 'false');
    return answer;
  };
  const visit = (node: Node): Walked => {
    switch (node.type) {
      case 'ConstantNode':
        return { value: node.value, noise: 0 };
      case 'SymbolNode': {
        const value = scope.get(node.name);
        if (value === undefined) throw new Error(`${node.name} has no value`);
        return { value, noise: 2 * u * Math.abs(value) };
      }
      case 'ParenthesisNode':
        return visit(node.content);
      case 'ConditionalNode':
        return holds(node.condition) ? visit(node.trueExpr) : visit(node.falseExpr);
      case 'OperatorNode':
        return operator(node);
      case 'FunctionNode':
        return applied(node);
      default:
        throw new Error(`${node.type} cannot be walked`);
    }
  };
  const operator = (node: Node): Walked => {
    const [a, b = a] = node.args.map(visit) as [Walked, Walked?];
    const made = (value: number, noise: number): Walked => ({ value, noise: noise + u * Math.abs(value) });
    switch (String(node.fn)) {
      case 'add':
        return made(a.value + b.value, a.noise + b.noise);
      case 'subtract':
        return made(a.value - b.value, a.noise + b.noise);
      case 'unaryMinus':
        return { value: -a.value, noise: a.noise };
      case 'multiply':
        return made(a.value * b.value, Math.abs(a.value) * b.noise + Math.abs(b.value) * a.noise);
      case 'divide': {
        const value = a.value / b.value;
        return made(value, (a.noise + Math.abs(value) * b.noise) / Math.abs(b.value));
      }
      case 'pow': {
        const value = a.value ** b.value;
        const byBase = a.value === 0 ? 0 : Math.abs((value * b.value) / a.value) * a.noise;
        const byExponent = b.noise === 0 ? 0 : Math.abs(value * Math.log(Math.abs(a.value))) * b.noise;
        return made(value, byBase + byExponent + u * Math.abs(value));
      }
      default:
        throw new Error(`${String(node.fn)} cannot be walked`);
    }
  };
  const applied = (node: Node): Walked => {
    const name = typeof node.fn === 'object' ? node.fn.name : node.fn;
    const args = node.args.map(visit);
    const [first] = args as [Walked];
    const smooth = functions[name];
    if (smooth) {
      const [value, slope] = smooth(first.value);
      // a sine of a large angle, or a root of nothing, is as uncertain as its argument
      const noise = first.noise === 0 ? 0 : Math.min(Math.abs(slope) * first.noise, Math.abs(value) + 1);
      return { value, noise: noise + 2 * u * Math.abs(value) };
    }
    const step = steps[name];
    if (step) {
      const value = step(first.value);
      const near = step(first.value - 16 * first.noise) !== step(first.value + 16 * first.noise);
      return { value, noise: near ? 1 : 0 };
    }
    if (name === 'abs') {
      if (first.value !== 0) took(node.toString(), first.value < 0 ? 'negative' : 'positive');
      return { value: Math.abs(first.value), noise: first.noise };
    }
    if (name === 'min' || name === 'max') {
      const value = Math[name](...args.map((a) => a.value));
      const best = args.flatMap((a, i) => (a.value === value ? [i] : []));
      if (best.length === 1) took(node.toString(), `argument ${(best[0] as number) + 1}`);
      return { value, noise: Math.max(...args.map((a) => a.noise)) };
    }
    throw new Error(`${name} cannot be walked`);
  };
  return visit(tree as Node);
}

/**
 * Every side that an expression can take: places and sides as `walk` calls them.
 * @param tree the expression
 */
export function sidesOf(tree: MathNode): readonly (readonly [place: string, side: string])[] {
  const sides: (readonly [string, string])[] = [];
  const conditions = (any: MathNode): void => {
    let node = any as Node;
    while (node.type === 'ParenthesisNode') node = node.content;
    sides.push([node.toString(), 'true'], [node.toString(), 'false']);
    if (['and', 'or', 'not'].includes(String(node.fn))) for (const arg of node.args) conditions(arg);
  };
  tree.traverse((any: MathNode) => {
    const node = any as Node;
    if (node.type === 'ConditionalNode') conditions(node.condition);
    if (node.type !== 'FunctionNode' || typeof node.fn !== 'object') return;
    if (node.fn.name === 'abs') sides.push([node.toString(), 'negative'], [node.toString(), 'positive']);
    if (node.fn.name === 'min' || node.fn.name === 'max')
      node.args.forEach((_, i) => {
        sides.push([node.toString(), `argument ${i + 1}`]);
      });
  });
  return sides;
}
