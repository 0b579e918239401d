import type { MathNode } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { CalculationError, type Formula, formula, relation } from '../../src/index.js';
import { definitions } from '../../src/verify/definitions.js';
import { readExpression } from '../../src/verify/expression.js';
import { symbolsOf } from './inputs.js';
import { prove } from './prove.js';

const source = { document: 'invented for this test', provenance: 'definition' } as const;
const about = { id: 'wrong', title: 'Wrong', source } as const;

describe('the proof objects to', () => {
  test('a result that differs in the tenth digit', () => {
    const f = formula({
      ...about,
      inputs: ['designCurrent', 'loopImpedance'],
      output: 'touchVoltage',
      expression: 'designCurrent * loopImpedance',
      compute: ({ designCurrent, loopImpedance }) => designCurrent * loopImpedance * (1 + 1e-10),
    });
    expect(prove(f).problems[0]).toContain('the code gives');
  });

  test('an expression of another unit, or of none', () => {
    const same = { ...about, inputs: ['designCurrent', 'loopImpedance'], output: 'touchVoltage' } as const;
    const compute = (v: { designCurrent: number; loopImpedance: number }) => v.designCurrent * v.loopImpedance;
    const power = formula({ ...same, expression: 'designCurrent^2 * loopImpedance', compute });
    expect(prove(power).problems[0]).toMatch(/Units do not match/);
    const bare = formula({
      ...same,
      expression: 'designCurrent / designCurrent + 0 * loopImpedance / loopImpedance',
      compute,
    });
    expect(prove(bare).problems[0]).toMatch(/not a value in V/);
    const foreign = formula({ ...same, expression: 'designCurrent * loopImpedance * L / L', compute });
    expect(() => prove(foreign)).toThrow('L has no value');
  });

  test('an infinite result, in the code or in the expression', () => {
    const code = formula({
      ...about,
      inputs: ['designCurrent', 'loopImpedance'],
      output: 'touchVoltage',
      expression: 'designCurrent * loopImpedance',
      compute: ({ designCurrent, loopImpedance }) =>
        designCurrent > 100 ? Number.POSITIVE_INFINITY : designCurrent * loopImpedance,
    });
    expect(prove(code).problems[0]).toContain('the code comes to out-of-range');
    const text = formula({
      ...about,
      inputs: ['designCurrent', 'loopImpedance'],
      output: 'touchVoltage',
      expression: 'designCurrent * loopImpedance / 0',
      compute: ({ designCurrent, loopImpedance }) => designCurrent * loopImpedance,
    });
    expect(prove(text).problems[0]).toContain('Infinity');
  });

  test('a refusal of the code where the expression has a result', () => {
    const f = formula({
      ...about,
      inputs: ['designCurrent', 'loopImpedance'],
      output: 'touchVoltage',
      expression: 'designCurrent * loopImpedance',
      compute: ({ designCurrent, loopImpedance }) => {
        if (designCurrent > 1000)
          throw new CalculationError('no-solution', 'refused', { method: 'wrong', values: { designCurrent } });
        return designCurrent * loopImpedance;
      },
    });
    expect(prove(f).problems[0]).toContain('the code comes to no-solution');
  });

  test('a wrong branch that random inputs hardly reach', () => {
    const f = formula({
      ...about,
      inputs: ['conductorArea'],
      output: 'protectiveArea',
      constants: { first: [16, 'mm²'] },
      expression: 'conductorArea <= first ? conductorArea : conductorArea / 2',
      compute: ({ conductorArea }) => (conductorArea < 16 ? conductorArea : conductorArea / 2),
    });
    expect(prove(f).problems[0]).toContain('the code gives 8, the expression 16');
  });

  test('a side that is never taken: of a condition, a min, an abs', () => {
    const same = { ...about, inputs: ['conductorArea'], output: 'protectiveArea' } as const;
    const compute = ({ conductorArea }: { conductorArea: number }) => conductorArea;
    const constants = { none: [0, 'mm²'] } as const;
    const condition = 'conductorArea >= none ? conductorArea : none';
    expect(prove(formula({ ...same, constants, expression: condition, compute })).problems).toEqual([
      'wrong: conductorArea >= none is never false',
    ]);
    expect(prove(formula({ ...same, constants, expression: 'max(conductorArea, none)', compute })).problems).toEqual([
      'wrong: max(conductorArea, none) is never argument 2',
    ]);
    expect(prove(formula({ ...same, expression: 'abs(conductorArea)', compute })).problems).toEqual([
      'wrong: abs(conductorArea) is never negative',
    ]);
  });

  test('a solution that leaves a residual, and a relation that hardly ever has one', () => {
    const same = {
      ...about,
      inputs: ['designCurrent', 'loopImpedance'],
      output: 'touchVoltage',
      terms: ['touchVoltage', '-designCurrent * loopImpedance'],
      tolerance: 1e-10,
    } as const;
    const near = relation({ ...same, solve: (v) => v.designCurrent * v.loopImpedance * (1 + 1e-9) });
    expect(prove(near).problems[0]).toContain('the terms leave');
    const rare = relation({
      ...same,
      solve: (v) => {
        throw new CalculationError('no-solution', 'refused', { method: 'wrong', values: { ...v } });
      },
    });
    expect(prove(rare).problems[0]).toMatch(/^only 0 of \d+ inputs have a result/);
  });
});

const swaps: Readonly<Record<string, string>> = {
  '+': '-',
  '-': '+',
  '*': '/',
  '<': '>',
  '<=': '>=',
  '>': '<',
  '>=': '<=',
};

/** Expressions that differ from one in a single place: an operator, a number, a function, the sides of a condition. */
function* slipsOf(f: Formula): Generator<string> {
  const tree = readExpression(f.expression, symbolsOf(f)).tree;
  const places: MathNode[] = [];
  tree.traverse((node) => {
    places.push(node);
  });
  const withPlace = (at: MathNode, make: (node: never) => string) => {
    const inside = (node: MathNode): string | undefined => (node === at ? `(${make(node as never)})` : undefined);
    const write = (node: MathNode): string =>
      node.toString({ handler: (n: MathNode) => inside(n), parenthesis: 'all' });
    return write(tree);
  };
  for (const place of places) {
    if (place.type === 'ConstantNode') yield withPlace(place, (n: { value: number }) => String(n.value + 1));
    if (place.type === 'OperatorNode')
      yield withPlace(place, (n: { op: string; args: MathNode[] }) =>
        n.args.length === 2 && swaps[n.op]
          ? `(${n.args[0]}) ${swaps[n.op]} (${n.args[1]})`
          : n.args.length === 1
            ? String(n.args[0])
            : `(${n.args[0]}) * (${n.args[1]})`,
      );
    if (place.type === 'FunctionNode')
      yield withPlace(place, (n: { name: string; args: MathNode[] }) =>
        n.name === 'min' || n.name === 'max'
          ? `${n.name === 'min' ? 'max' : 'min'}(${n.args.join(', ')})`
          : n.name === 'sqrt'
            ? String(n.args[0])
            : `sqrt(${n.name}(${n.args.join(', ')}))`,
      );
    if (place.type === 'ConditionalNode')
      yield withPlace(
        place,
        (n: { condition: MathNode; trueExpr: MathNode; falseExpr: MathNode }) =>
          `(${n.condition}) ? (${n.falseExpr}) : (${n.trueExpr})`,
      );
  }
}

test('a slip in any place of any expression of the library is noticed', () => {
  let slips = 0;
  const missed: string[] = [];
  for (const f of definitions.formulas) {
    if (f.kind !== 'formula') continue;
    for (const expression of slipsOf(f)) {
      slips++;
      const changed = Object.assign((values: never) => f(values), { ...f, expression }) as unknown as Formula;
      if (!prove(changed, 20).problems.some((p) => p.startsWith('the code'))) missed.push(`${f.id}: ${expression}`);
    }
  }
  expect(slips).toBeGreaterThan(500);
  expect(missed).toEqual([]);
});
