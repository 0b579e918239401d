import { type Formula, type FormulaDefinition, formula } from './formula.js';
import type { Name } from './vocabulary/index.js';

type Own<I extends Name, O extends Name> = Pick<
  FormulaDefinition<I, O>,
  'id' | 'title' | 'output' | 'valid' | 'signed' | 'source'
>;

/** A formula of two lists of inputs: the result moves up with each of the first, down with each of the second. */
const arithmetic = <I extends Name, O extends Name>(
  own: Own<I, O>,
  up: readonly I[],
  down: readonly I[],
  expression: string,
  compute: (values: Readonly<Record<I, number>>) => number,
): Formula<I, O> =>
  formula({
    ...own,
    inputs: [...up, ...down],
    expression,
    direction: Object.fromEntries([...up.map((name) => [name, 1]), ...down.map((name) => [name, -1])]),
    compute,
  });

/** A formula that multiplies some inputs, and divides by the product of others. */
export function multiplied<const I extends Name, O extends Name, const J extends Name = never>({
  times,
  over = [],
  ...own
}: Own<I | J, O> & { readonly times: readonly I[]; readonly over?: readonly J[] }): Formula<I | J, O> {
  const divisor = over.length > 1 ? ` / (${over.join(' * ')})` : over.map((name) => ` / ${name}`).join('');
  return arithmetic<I | J, O>(own, times, over, times.join(' * ') + divisor, (v) => {
    let [above, below] = [1, 1];
    for (const name of times) above *= v[name];
    for (const name of over) below *= v[name];
    return above / below;
  });
}

/** A formula that adds some inputs, and takes others away. */
export function added<const I extends Name, O extends Name, const J extends Name = never>({
  plus,
  minus = [],
  ...own
}: Own<I | J, O> & { readonly plus: readonly I[]; readonly minus?: readonly J[] }): Formula<I | J, O> {
  return arithmetic<I | J, O>(own, plus, minus, [plus.join(' + '), ...minus].join(' - '), (v) => {
    let result = 0;
    for (const name of plus) result += v[name];
    for (const name of minus) result -= v[name];
    return result;
  });
}
