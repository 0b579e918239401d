import type { UnknownItem } from '../site/unknown-facts.js';
import type { ReportWords } from './words/pages.js';

/** An identifier of a kind: by the place of the fact in the register, or by its role; the kind alone where it has neither. */
const idOf = (kind: string, { id, role }: UnknownItem): string => [kind, id ?? role].filter(Boolean).join(':');

/** A fact that is not known, in words. */
export const factOf = (u: UnknownItem, w: ReportWords): string => w.said(u.fact, idOf('fact', u));

/** How to obtain it. */
export const obtainOf = (u: UnknownItem, w: ReportWords): string | undefined =>
  u.obtain === undefined ? undefined : w.said(u.obtain, idOf('obtain', u));
