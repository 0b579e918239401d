import type { MathNode } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { definitions } from '../../src/verify/definitions.js';
import { readExpression } from '../../src/verify/expression.js';
import { expressionsOf, symbolsOf } from './inputs.js';
import { prove } from './prove.js';

const named = definitions.formulas.map((f) => [f.id, f] as const);

describe.each(named)('%s', (_, f) => {
  test('its code is its expression, with units, at random and at every edge; every side is taken', () => {
    expect(prove(f).problems).toEqual([]);
  });

  test('its definition uses each of its inputs and constants, and nothing else', () => {
    const used = new Set<string>();
    for (const text of expressionsOf(f))
      readExpression(text, symbolsOf(f)).tree.traverse((node: MathNode, path: string) => {
        if (node.type === 'SymbolNode' && path !== 'fn') used.add((node as unknown as { name: string }).name);
      });
    expect([...used].sort()).toEqual([...symbolsOf(f)].sort());
    expect(f.id).toMatch(/^[a-z0-9]+([-.][a-z0-9]+)*$/);
    for (const name of Object.keys((f.valid ?? {}) as object)) expect(f.inputs).toContain(name);
    for (const text of [f.title, f.source.document]) expect(text).toMatch(/\S/);
    expect(f.title).not.toMatch(/\.$/);
    if (f.kind === 'relation') expect(f.tolerance).toBeLessThanOrEqual(1e-8);
  });
});

test('there are formulas to prove', () => expect(named.length).toBeGreaterThan(100));
