import type { Source } from '../core/index.js';
import { judgementsOf } from './calculation.js';
import type { Contents } from './contents.js';
import { checksOf, type Judgement } from './judgement.js';
import type { Line } from './line.js';

/** What a contents list asks of whoever judges by it. */
export interface Asked {
  /** Checks of which every circuit has a result, whatever its facts. */
  readonly always: ReadonlySet<string>;
  /** For each check that any of several passes, those that may pass it; of one that a function draws up nothing is said. */
  readonly alternatives: ReadonlyMap<string, ReadonlySet<string>>;
  /** Checks with results that count nowhere by themselves: those of alternatives, and of each of several ways. */
  readonly aside: ReadonlySet<string>;
  /** Checks with more results than count: of several one decides, or one is adjusted. */
  readonly repeated: ReadonlySet<string>;
  /** Checks that may come as not required, by facts or as a function has it: of no other is that a result. */
  readonly excused: ReadonlySet<string>;
  /** Where each check is asked for: a check that several codes share stands in a clause of each. */
  readonly cited: ReadonlyMap<string, readonly Source[]>;
}

/** The checks of which there is a result, whatever the facts are. */
function always({ how }: Judgement): readonly string[] {
  switch (how.kind) {
    case 'judge':
    case 'any-of':
    case 'unjudged':
      return [how.check.id];
    case 'adjust':
      return always(how.of);
    case 'unless-failed':
      return how.first.flatMap(always);
    default:
      return [];
  }
}

/** Judgements within one, without those of a check that any of several passes. */
function within({ how }: Judgement): readonly Judgement[] {
  switch (how.kind) {
    case 'deciding':
      return how.of;
    case 'unless-failed':
      return [...how.first, ...how.then];
    case 'each':
      return how.judgements;
    case 'choose':
      return Object.values(how.of).flat();
    case 'adjust':
      return [how.of];
    default:
      return [];
  }
}

/** The checks of a judgement that facts may excuse; what adjusts a result may excuse it too. */
function excusedIn(judgement: Judgement): readonly string[] {
  const { how } = judgement;
  if (how.kind === 'adjust') return checksOf([how.of]).map((c) => c.id);
  const own = how.kind === 'unjudged' || ('applies' in how && how.applies !== undefined) ? [how.check.id] : [];
  return [...own, ...(how.kind === 'any-of' ? how.of : within(judgement)).flatMap(excusedIn)];
}

/** The checks that a judgement may give the results of; undefined where a function draws them up. */
function possible(judgement: Judgement): readonly string[] | undefined {
  const { how } = judgement;
  if ('check' in how) return [how.check.id];
  if (how.kind === 'results') return undefined;
  const all = within(judgement).map(possible);
  return all.every((ids) => ids !== undefined) ? all.flat() : undefined;
}

/** Checks that are worked out as a figure, for lines and checks to weigh. */
const weighed = ({ how }: Line): readonly Judgement[] =>
  how.kind === 'judged' ? Object.values(how.of as Readonly<Record<string, readonly Judgement[]>>).flat() : [];

/**
 * What a contents list asks of whoever judges by it: sheets are held against it.
 * @param list a contents list
 */
export function askedBy({ checks, figures }: Contents): Asked {
  const groups = Object.entries(checks).flatMap(([group, of]) => judgementsOf(group, of));
  const lines = Object.values(figures as Readonly<Record<string, Readonly<Record<string, Line>> | undefined>>);
  const asFigures = lines.flatMap((of) => Object.values(of ?? {}).flatMap(weighed));
  const alternatives = new Map<string, Set<string>>();
  const drawnUp = new Set<string>();
  const aside = new Set<string>();
  const repeated = new Set<string>();
  const cited = new Map<string, readonly Source[]>();
  const open = [...groups, ...asFigures];
  for (let j = open.pop(); j; j = open.pop()) {
    open.push(...within(j));
    const { how } = j;
    if ('check' in how) cited.set(how.check.id, [...(cited.get(how.check.id) ?? []), how.check.source]);
    if (how.kind === 'deciding' || how.kind === 'adjust') for (const id of possible(j) ?? []) repeated.add(id);
    if (how.kind !== 'any-of') continue;
    open.push(...how.of);
    const ids = how.of.map(possible);
    if (ids.includes(undefined)) drawnUp.add(how.check.id);
    const known = alternatives.get(how.check.id) ?? new Set();
    for (const id of ids.flatMap((of) => of ?? [])) {
      known.add(id);
      aside.add(id);
    }
    alternatives.set(how.check.id, known);
  }
  for (const id of asFigures.flatMap((j) => possible(j) ?? [])) aside.add(id);
  for (const id of drawnUp) alternatives.delete(id);
  const excused = new Set([...groups, ...asFigures].flatMap(excusedIn));
  return { always: new Set(groups.flatMap(always)), alternatives, aside, repeated, excused, cited };
}
