import * as charging from '../charging/definitions.js';
import * as bs7671 from '../codes/bs7671/definitions.js';
import * as iec60364 from '../codes/iec60364/definitions.js';
import type { Check, Formula, Procedure, Relation, Table } from '../core/index.js';
import * as demand from '../demand/definitions.js';
import * as guidance from '../guidance/definitions.js';
import * as networks from '../networks/definitions.js';
import * as physics from '../physics/definitions.js';
import * as heat from '../physics/heat/definitions.js';
import * as power from '../physics/power/definitions.js';
import * as products from '../products/definitions.js';
import * as site from '../site/definitions.js';

/** What a sheet may quote. */
export type Definition = Formula | Relation | Procedure | Table | Check;

const checkKinds: readonly unknown[] = ['at-most', 'at-least', 'within', 'holds', 'any-of'];

/** Whether a value is a formula, a relation, a procedure, a table or a check. */
export function isDefinition(value: unknown): value is Definition {
  if ((typeof value !== 'object' && typeof value !== 'function') || value === null) return false;
  const { kind, id, title, source } = value as { kind?: unknown; id?: unknown; title?: unknown; source?: unknown };
  if (typeof id !== 'string' || typeof title !== 'string' || typeof source !== 'object') return false;
  return typeof value === 'function'
    ? kind === 'formula' || kind === 'relation' || kind === 'procedure'
    : kind === 'table' || checkKinds.includes(kind);
}

/** Definitions by kind. */
export interface Definitions {
  readonly formulas: readonly (Formula | Relation)[];
  readonly procedures: readonly Procedure[];
  readonly tables: readonly Table[];
  readonly checks: readonly Check[];
}

/** Sorts definitions by their kind, each once. */
export function sortDefinitions(all: readonly Definition[]): Definitions {
  const once = [...new Set(all)];
  const of = <T>(...kinds: readonly unknown[]) => once.filter((d) => kinds.includes(d.kind)) as unknown as readonly T[];
  return {
    formulas: of('formula', 'relation'),
    procedures: of('procedure'),
    tables: of('table'),
    checks: of(...checkKinds),
  };
}

/** Every definition of this library. */
export const definitions: Definitions = /* @__PURE__ */ (() =>
  sortDefinitions(
    [charging, bs7671, iec60364, demand, guidance, networks, physics, heat, power, products, site]
      .flatMap((folder) => Object.values<unknown>(folder))
      .filter(isDefinition),
  ))();
