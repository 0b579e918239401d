import { type CheckBasis, type Comparison, comparison, type SameUnit, type Statement, statement } from './check.js';
import type { Name } from './vocabulary/index.js';

type Own = Omit<CheckBasis, 'weight'>;
/** A value, how it is held against its limit, and the limit. */
type Held<V extends Name, L extends Name> = readonly [value: V, kind: Comparison['kind'], limit: L];

/** Defines a check of a weight: of a plain statement, or that a value is at most, or at least, its limit. */
interface Defines {
  <const V extends Name, const L extends SameUnit<V>>(own: Own & { readonly of: Held<V, L> }): Comparison<V, L>;
  (own: Own): Statement;
}

const weighing = (weight: CheckBasis['weight']): Defines =>
  (({ of, ...own }: Own & { readonly of?: Held<Name, never> }) => {
    if (!of) return statement({ ...own, weight });
    const [value, kind, limit] = of;
    return comparison({ ...own, weight, kind, value, limit });
  }) as Defines;

/** A rule, which decides the verdict of the whole. */
export const rule = /* @__PURE__ */ weighing('rule');
/** Advice, which is reported beside it. */
export const advice = /* @__PURE__ */ weighing('advice');
