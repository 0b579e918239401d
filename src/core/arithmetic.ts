import { type Formula, type FormulaDefinition, formula } from './formula.js';
import type { Name, Vocabulary } from './vocabulary/index.js';

/** What a formula says of itself beside its inputs and its code. */
type Own<I extends Name, O extends Name> = Omit<FormulaDefinition<I, O>, 'inputs' | 'direction' | 'expression'>;
/** The inputs, and which way the result moves with each. */
type Moves<I extends Name> = { readonly [N in I]: 1 | -1 | 'either' };

/** A formula of which it is known for every input which way the result moves with it. */
export function moving<const I extends Name, O extends Name>({
  moves,
  ...own
}: Own<I, O> & {
  readonly moves: Moves<I>;
  readonly expression: string;
  readonly compute: (values: Pick<Vocabulary, I>) => number;
}): Formula<I, O> {
  return formula({ ...own, inputs: Object.keys(moves) as I[], direction: moves });
}

const each = <I extends Name, D extends 1 | -1>(names: readonly I[], way: D): Moves<I> =>
  Object.fromEntries(names.map((name) => [name, way])) as never;

/** A formula that multiplies some inputs, and divides by the product of others. */
export function multiplied<const I extends Name, O extends Name, const J extends Name = never>({
  times,
  over = [],
  ...own
}: Own<I | J, O> & { readonly times: readonly I[]; readonly over?: readonly J[] }): Formula<I | J, O> {
  const divisor = over.length > 1 ? ` / (${over.join(' * ')})` : over.map((name) => ` / ${name}`).join('');
  return moving<I | J, O>({
    ...own,
    moves: { ...each<I | J, 1>(times, 1), ...each(over, -1) },
    expression: times.join(' * ') + divisor,
    compute: (values) => {
      const v: Readonly<Record<I | J, number>> = values;
      let [above, below] = [1, 1];
      for (const name of times) above *= v[name];
      for (const name of over) below *= v[name];
      return above / below;
    },
  });
}

/** A formula that adds some inputs, and takes others away. */
export function added<const I extends Name, O extends Name, const J extends Name = never>({
  plus,
  minus = [],
  ...own
}: Own<I | J, O> & { readonly plus: readonly I[]; readonly minus?: readonly J[] }): Formula<I | J, O> {
  return moving<I | J, O>({
    ...own,
    moves: { ...each<I | J, 1>(plus, 1), ...each(minus, -1) },
    expression: [plus.join(' + '), ...minus].join(' - '),
    compute: (values) => {
      const v: Readonly<Record<I | J, number>> = values;
      let result = 0;
      for (const name of plus) result += v[name];
      for (const name of minus) result -= v[name];
      return result;
    },
  });
}
