import {
  type Contents,
  checksOf,
  type Groups,
  type Judgement,
  type Line,
  type Lines,
  none,
  type Scopes,
  unjudged,
} from '../../calculation/index.js';
import {
  type Attestations,
  type Check,
  type Comparison,
  fingerprintOf,
  type Gap,
  missing,
  type Source,
  type Statement,
  type Table,
  termOf,
} from '../../core/index.js';
import { invalidInput, type Problem } from '../../units/index.js';
import type { EditionChange, EditionDifferences } from '../edition-differences.js';
import { type Aspect, aspects, type CircuitFigures } from '../wiring-code.js';

type List = Contents<Scopes, { readonly [list: string]: Lines }, Groups>;
type Change<K extends EditionChange['kind']> = Extract<EditionChange, { readonly kind: K }>;
interface Placed {
  readonly change: EditionChange;
  readonly aspect: Aspect;
  readonly path: readonly (string | number)[];
  readonly source: Source;
}

/** What stands in the way where an aspect of the edition was not entered. */
export const notEnteredOf = ({ document, edition }: EditionDifferences): Gap => ({
  kind: 'edition',
  edition: `${document}:${edition}`,
  explain: 'this aspect of the edition was not entered; consult the standard itself',
});

function changesOf(d: EditionDifferences): readonly Placed[] {
  return aspects.flatMap((aspect) => {
    const entered = d.aspects[aspect];
    return (entered?.changes ?? []).map((change, i) => ({
      change,
      aspect,
      path: ['aspects', aspect, 'changes', i],
      source: {
        document: d.document,
        edition: d.edition,
        clause: change.clause,
        provenance: 'attested' as const,
        note: `entered by ${entered?.by}, ${entered?.on}`,
      },
    }));
  });
}

/** Figures that the edition changes, as attestations of its copy: the laws of their tables hold for them too. */
export function figuresOf(d: EditionDifferences, tables: Iterable<Table>): Attestations {
  const known = new Map([...tables].map((t) => [t.id, t]));
  const foreign = changesOf(d).flatMap(({ change, path }) => {
    const document = change.kind === 'figure' ? known.get(change.table)?.source.document : undefined;
    return document === undefined || document === d.document
      ? []
      : [{ path: [...path, 'table'], message: `is a table of ${document}, which ${d.document} does not print` }];
  });
  if (foreign.length > 0) throw invalidInput(`the differences of ${d.document}:${d.edition}`, foreign);
  return {
    format: 'attestations/1',
    attestations: changesOf(d).flatMap(({ change, aspect }) => {
      const t = change.kind === 'figure' ? known.get(change.table) : undefined;
      if (change.kind !== 'figure') return [];
      const { column, row, printed, despite, table } = change;
      const { by, on } = d.aspects[aspect] as { by: string; on: string };
      const correction = { column, row, printed, ...(despite === undefined ? {} : { despite }) };
      const figures = t ? fingerprintOf(t) : '';
      return [{ table, figures, edition: d.edition, by, on, cells: [], corrections: [correction] }];
    }),
  };
}

/** Whether something is a line: what a part of a line or a check may be instead of a name. */
const isLine = (v: unknown): v is Line => typeof v === 'object' && v !== null && 'how' in v;

/**
 * A line with a constant in it changed, wherever it stands under the name, or under it with `OfCode` where the code's limit
 * is weighed against the user's; counts what was changed.
 */
function withLimit<T>(
  v: T,
  { entry, was, is, clause }: Change<'limit'>,
  by: string,
  under: boolean,
  seen: { n: number },
): T {
  if (Array.isArray(v)) return v.map((x) => withLimit(x, { entry, was, is, clause } as never, by, under, seen)) as T;
  if (typeof v !== 'object' || v === null) return v;
  if (isLine(v) && v.how.kind === 'set' && under && v.how.value === was) {
    seen.n++;
    return { ...v, how: { kind: 'set', value: is, by } };
  }
  // definitions are left alone: what they read are the parts beside them
  const how =
    'kind' in v && 'from' in v && 'by' in v
      ? (v as { by: { inputs?: string[]; axes?: { name: string }[] } }).by
      : undefined;
  const inputs = how?.inputs ?? how?.axes?.map((a) => a.name) ?? [];
  return Object.fromEntries(
    Object.entries(v).map(([key, x]) => {
      if (key === 'by' || key === 'check' || key === 'procedure' || typeof x === 'function') return [key, x];
      if (key === 'from' && Array.isArray(x))
        return [
          key,
          x.map((p, i) =>
            withLimit(p, { kind: 'limit', entry, was, is, clause }, by, under || inputs[i] === entry, seen),
          ),
        ];
      return [
        key,
        withLimit(
          x,
          { kind: 'limit', entry, was, is, clause },
          by,
          under || key === entry || key === `${entry}OfCode`,
          seen,
        ),
      ];
    }),
  ) as T;
}

/** A judgement without a check that falls away; what any of several passes is left alone. */
function without(j: Judgement, id: string, why: string, seen: { n: number }): Judgement {
  const { how } = j;
  if ((how.kind === 'judge' || how.kind === 'any-of') && how.check.id === id) {
    seen.n++;
    return unjudged(how.check as Check, none(why)) as Judgement;
  }
  const inner = (of: readonly Judgement[]) => of.map((x) => without(x, id, why, seen));
  switch (how.kind) {
    case 'deciding':
      return { how: { ...how, of: inner(how.of) } };
    case 'each':
      return { how: { ...how, judgements: inner(how.judgements) } };
    case 'unless-failed': {
      const [first, then] = [inner(how.first), inner(how.then)];
      return { how: { kind: how.kind, first, then } };
    }
    case 'choose':
      return { how: { ...how, of: Object.fromEntries(Object.entries(how.of).map(([k, of]) => [k, inner(of)])) } };
    case 'adjust': {
      const before = seen.n;
      const of = without(how.of, id, why, seen);
      return seen.n > before ? of : j;
    }
    default:
      return j;
  }
}

function newCheck({ change, source, path }: Placed, list: List, problems: Problem[]): Judgement | undefined {
  if (change.kind === 'to-confirm') {
    const check: Statement = { kind: 'holds', id: change.check, title: change.title, weight: change.weight, source };
    return unjudged(check, {
      how: { kind: 'open', gaps: [{ kind: 'fact', fact: change.title, obtain: change.confirm }] },
    });
  }
  if (change.kind !== 'at-most' && change.kind !== 'at-least') return undefined;
  const { kind, check: id, title, value, limit, is, weight } = change;
  const root = Object.entries(list.scopes).find(([, s]) => s.within === undefined)?.[0] ?? '';
  const wrong = (key: string, message: string) => problems.push({ path: [...path, key], message });
  // what a circuit of one cable has once is a figure of each of its cables
  const [ofEach] =
    Object.entries(list.scopes).find(([name, s]) => s.whole && value in (list.figures[name] ?? {})) ?? [];
  if (!ofEach && !(value in (list.figures[root] ?? {}))) wrong('value', `${value} is no figure of a circuit`);
  if (value === limit) wrong('limit', 'has to be another role than the value');
  if (termOf(value)?.unit !== termOf(limit)?.unit) wrong('limit', `is in another unit than ${value}`);
  const check: Comparison = { kind, id, title, value, limit, weight, source };
  const evidence = {
    [value]: value,
    [limit]: { how: { kind: 'set', value: is, by: `${source.document} ${source.clause}` } } as Line,
  };
  const judged: Judgement = { how: { kind: 'judge', check, evidence } };
  return ofEach ? { how: { kind: 'each', of: ofEach, judgements: [judged] } } : judged;
}

/**
 * The contents list of an edition that somebody brought: that of its base with what was entered, and every aspect that was
 * not entered open.
 * @param base contents list of the base
 * @param d the differences
 */
export function broughtContents(base: List, d: EditionDifferences): List {
  const problems: Problem[] = [];
  const source = { document: d.document, edition: d.edition, provenance: 'memory', note: 'not entered' } as const;
  const gap = notEnteredOf(d);
  let { figures } = base;
  const checks = Object.fromEntries(
    aspects.map((a) => [a, d.aspects[a] ? (base.checks[a] as Groups[string]) : { notEntered: gap, source }]),
  ) as Record<Aspect, Groups[string]>;
  for (const placed of changesOf(d)) {
    const { change, aspect, path, source: own } = placed;
    const group = checks[aspect];
    const judgements = Array.isArray(group) ? (group as readonly Judgement[]) : [];
    const ids = new Set(checksOf(judgements).map((c) => c.id));
    const seen = { n: 0 };
    const words = `${d.document}:${d.edition}, ${change.clause}, ${own.note}`;
    switch (change.kind) {
      case 'figure':
        break;
      case 'limit':
        figures = withLimit(figures, change, words, false, seen);
        for (const a of aspects) checks[a] = withLimit(checks[a], change, words, false, seen);
        if (seen.n === 0) problems.push({ path, message: `the base states no ${change.entry} of ${change.was}` });
        break;
      case 'falls-away':
        checks[aspect] = judgements.map((j) => without(j, change.check, `It falls away: ${words}.`, seen));
        if (seen.n === 0)
          problems.push({ path, message: `the base has no check ${change.check} in ${aspect} that can fall away` });
        break;
      default: {
        if (ids.has(change.check))
          problems.push({ path: [...path, 'check'], message: `there is a check ${change.check} already` });
        const added = newCheck(placed, base, problems);
        if (added) checks[aspect] = [...judgements, added];
      }
    }
  }
  if (problems.length > 0) throw invalidInput(`the differences of ${d.document}:${d.edition}`, problems);
  return { scopes: base.scopes, figures, checks };
}

/** The aspect by whose rules a figure of a circuit comes about. */
const aspectOf: Readonly<Record<keyof CircuitFigures, Aspect>> = {
  capacity: 'coordination',
  hottestConductor: 'coordination',
  governingStretch: 'coordination',
  voltageAtLowestSupply: 'voltage-drop',
  voltageAtHighestSupply: 'voltage-drop',
  totalDrop: 'voltage-drop',
  dropAlong: 'voltage-drop',
  dropLimit: 'voltage-drop',
  lowestSupply: 'voltage-drop',
  externalImpedance: 'disconnection',
  lineAndProtectiveCold: 'disconnection',
  loopAtOrigin: 'disconnection',
  loopImpedance: 'disconnection',
  loopImpedanceLimit: 'disconnection',
  prospectiveAtOrigin: 'breaking-capacity',
  protectiveArea: 'protective-conductor',
};

/** Figures of a circuit, those left open whose aspect was not entered. */
export function figuresEntered(all: CircuitFigures, d: EditionDifferences): CircuitFigures {
  const gap = missing(notEnteredOf(d));
  return Object.fromEntries(
    Object.entries(all).map(([name, v]) => [name, d.aspects[aspectOf[name as keyof CircuitFigures]] ? v : gap]),
  ) as CircuitFigures;
}

/** What has to be said of an edition that somebody brought. */
export function broughtStanding(d: EditionDifferences): string {
  const entered = aspects.filter((a) => d.aspects[a]);
  const who = [...new Set(entered.map((a) => `${d.aspects[a]?.by}, ${d.aspects[a]?.on}`))].join('; ');
  const open = aspects.filter((a) => !d.aspects[a]);
  const rest =
    open.length === 0 ? 'Every aspect is entered.' : `Not entered, and open: ${open.join(', ').replaceAll('-', ' ')}.`;
  return `${d.notice} ${d.document}:${d.edition} is judged here by what was entered over ${d.base} (${who || 'nobody'}). ${rest} The edition in force, local codes and licensed practice decide.`;
}
