import type { Axis } from '../../src/core/axis.js';
import { citation, type Provenance, type Source, termOf } from '../../src/index.js';
import { symbolHtml } from './tex.js';

const provenances: Readonly<Record<Provenance, string>> = {
  attested: 'compared with the print by a user, who is named',
  'two-sources': 'seen in two independent texts',
  'one-source': 'seen in one text',
  memory: 'from memory, not seen',
  derived: 'derived',
  'common-practice': 'common practice, no source',
  definition: 'true by definition or by the laws of physics',
};

/** How well something is known, in words. */
export const provenanceWords = (p: Provenance): string => provenances[p];

/** Text that stands between bars of a Markdown table, or in running text. */
export const escaped = (text: string): string => text.replace(/([|*])/g, '\\$1').replace(/</g, '&lt;');

/** A note as a sentence; words that begin with a sign or a symbol stay as they are. */
const sentence = (text: string): string => {
  const begun = /^[a-z]{2}/.test(text) ? text[0]?.toUpperCase() + text.slice(1) : text;
  return /[.!?]$/.test(begun) ? begun : `${begun}.`;
};

/** A source with its provenance and its note. */
export const sourceLine = (s: Source): string =>
  `${escaped(citation(s))} (${provenanceWords(s.provenance)}).${s.note ? ` ${escaped(sentence(s.note))}` : ''}`;

/** Bounds in words, as the vocabulary words them. */
export function rangeWords({ least, most, above }: { least?: number; most?: number; above?: number }): string {
  const from = above !== undefined && (least === undefined || above >= least) ? `above ${above}` : least;
  if (from === undefined) return most === undefined ? 'any' : `up to ${most}`;
  if (most !== undefined) return `${from} to ${most}`;
  return above === from || typeof from === 'string' ? from.toString() : `${from} and up`;
}

/** Symbol of a role, or its name. */
export const symbolOf = (name: string): string => symbolHtml(escaped(termOf(name)?.symbol ?? name));
/** Unit of a role, for people. */
export const unitWords = (unit: string): string => (unit === '1' ? '–' : unit);

/** One axis of a table in words. */
export function axisWords(axis: Axis): string {
  if ('labels' in axis) return `\`${axis.name}\`: ${axis.labels.map(escaped).join(', ')}`;
  const clause = axis.allowedBy ? `, by ${escaped(axis.allowedBy)}` : '';
  const between = {
    exact: 'only the values listed',
    'next-up': `between two values the larger counts${clause}`,
    linear: `between two values a straight line${clause}`,
  }[axis.between];
  const below = axis.below === 'first' ? '; below the first value the first counts' : '';
  const unit = axis.unit === '1' ? '' : `, ${axis.unit}`;
  return `\`${axis.name}\`: ${termOf(axis.name)?.words ?? ''} ${symbolOf(axis.name)}${unit}; ${between}${below}`;
}
