import { type Formula, type FormulaDefinition, formula } from './formula.js';
import type { Name, Vocabulary } from './vocabulary/index.js';

/** What a formula says of itself beside its inputs and its code. */
type Own<I extends Name, O extends Name> = Omit<FormulaDefinition<I, O>, 'inputs' | 'direction' | 'expression'>;
type Values<I extends Name> = Readonly<Record<I, number>>;

/** A formula of which it is known for every input which way the result moves with it. */
export const moving = <const I extends Name, O extends Name>({
  moves,
  ...own
}: Own<I, O> & {
  readonly moves: { readonly [N in I]: 1 | -1 | 'either' };
  readonly expression: string;
  readonly compute: (values: Pick<Vocabulary, I>) => number;
}): Formula<I, O> => formula({ ...own, inputs: Object.keys(moves) as I[], direction: moves });

// a page that imports one formula of these kinds pays for the lines of its kind: what an entry offers by name is a `formula`
const moves = (up: readonly Name[], down: readonly Name[]) =>
  Object.fromEntries([...up.map((name) => [name, 1]), ...down.map((name) => [name, -1])]) as never;

/** A formula that multiplies some inputs, and divides by the product of others. */
export const multiplied = <const I extends Name, O extends Name, const J extends Name = never>({
  times,
  over = [],
  ...own
}: Own<I | J, O> & { readonly times: readonly I[]; readonly over?: readonly J[] }): Formula<I | J, O> => {
  const product = (names: readonly (I | J)[], of: Values<I | J>) => names.reduce((y, name) => y * of[name], 1);
  return moving({
    ...own,
    moves: moves(times, over),
    expression: times.join(' * ') + (over[0] ? ` / ${over[1] ? `(${over.join(' * ')})` : over}` : ''),
    compute: (of: Values<I | J>) => product(times, of) / product(over, of),
  });
};

/** A formula that adds some inputs, and takes others away. */
export const added = <const I extends Name, O extends Name, const J extends Name = never>({
  plus,
  minus = [],
  ...own
}: Own<I | J, O> & { readonly plus: readonly I[]; readonly minus?: readonly J[] }): Formula<I | J, O> =>
  moving({
    ...own,
    moves: moves(plus, minus),
    expression: [plus.join(' + '), ...minus].join(' - '),
    compute: (of: Values<I | J>) =>
      minus.reduce(
        (y, name) => y - of[name],
        plus.reduce((y, name) => y + of[name], 0),
      ),
  });
