import { stated, termOf } from '../../core/index.js';
import { own } from '../../core/own.js';
import { labels } from '../labels.js';
import { choiceWords, otherChoiceWords } from './choice-words.js';
import { registerRows } from './register-rows.js';
import { fieldOf } from './survey-shapes.js';

/** Whom to ask for a fact. @inline */
export type Whom = 'customer' | 'operator' | 'site' | 'maker' | 'firm';

/** One of the values that an answer may have, in words. @inline */
export interface Choice {
  readonly value: string | number | boolean;
  readonly words: string;
}

/** What the register says of a field of a survey. */
export interface FactEntry {
  /** Record and field, such as `supply.system`. */
  readonly id: string;
  readonly title: string;
  readonly whom: Whom;
  /** The question to whoever is asked. */
  readonly question: string;
  readonly photo?: string;
  readonly example?: string;
  /** What else to know. */
  readonly note?: string;
  /** Canonical unit, where it is a quantity. */
  readonly unit?: string;
  readonly choices?: readonly Choice[];
  /** Whether it may be said to be unknown, or left out. */
  readonly mayBeUnknown: boolean;
}

/** The parts of a line of text; a dash is nothing. */
export const cells = (row: string): readonly (string | undefined)[] =>
  row.split(' | ').map((c) => (c.trim() === '-' ? undefined : c.trim()));

/** Values with their words, of a list of labels or of another list of choices. */
export function choicesOf(list: string): readonly Choice[] | undefined {
  const values: readonly (string | number)[] | undefined = own(labels, list);
  if (values) {
    const words: Readonly<Record<string, string>> = choiceWords[list as keyof typeof labels];
    return values.map((value) => ({ value, words: words[value] ?? String(value) }));
  }
  const words = own(otherChoiceWords, list);
  if (!words) return undefined;
  const numbers = list === 'vehicle.onBoardPhases';
  return Object.entries(words).map(([key, said]) => ({
    value: list === 'yes' ? key === 'true' : numbers ? Number(key) : key,
    words: said,
  }));
}

let entries: ReadonlyMap<string, FactEntry> | undefined;

function read(): ReadonlyMap<string, FactEntry> {
  const found = new Map<string, FactEntry>();
  let record = '';
  for (const row of registerRows.trim().split('\n')) {
    if (row.startsWith('= ')) record = row.slice(2).trim();
    if (!row.includes(' | ')) continue;
    const [field = '', title = '', whom = 'firm', question = '', photo, example, note] = cells(row);
    const [how = 'plain', what = ''] = fieldOf(record, field) ?? [];
    const id = `${record}.${field}`;
    const unit = termOf(what)?.unit;
    const choices = choicesOf(what);
    found.set(id, {
      id,
      title,
      whom: whom as Whom,
      question,
      ...stated({ photo, example, note, unit, choices }),
      mayBeUnknown: how.startsWith('fact') || how.endsWith('?'),
    });
  }
  return found;
}

/** The register of facts: every field of a survey, by record and field. */
export function factRegister(): ReadonlyMap<string, FactEntry> {
  entries ??= read();
  return entries;
}

/** Record and field of a place in a survey, and the way to it without indices; undefined where there is none. */
export function placeOf(path: string): { readonly id: string; readonly way: string } | undefined {
  const keys = path
    .replace(/\[\d+\]/g, '')
    .split('.')
    .filter((key) => key !== '' && key !== 'installation' && !/^\d+$/.test(key));
  const from = (record: string, at: number, way: readonly string[]): { id: string; way: string } | undefined => {
    const key = keys[at];
    if (key === undefined) return undefined;
    // a run that is wanted stands in the document as the wanted point itself
    if (record === 'wanted' && key === 'run') return from('wanted', at + 1, way);
    const name = record !== 'wanted' ? key : key === 'stretches' ? 'route' : key === 'cable' ? 'cables' : key;
    const what = record === 'wanted' && name === 'feeds' ? 'chargePoint' : fieldOf(record, name)?.[1];
    if (what === undefined) return undefined;
    const here = [...way, record === 'wanted' && name === 'feeds' ? 'point' : name];
    if (at === keys.length - 1) return { id: `${record}.${name}`, way: here.join('.') };
    const inside = what === 'outlet' ? ['load', 'chargePoint', 'board'] : [what];
    for (const next of inside) {
      const found = from(next, at + 1, here);
      if (found) return found;
    }
    return undefined;
  };
  const first = keys[0] ?? '';
  return from('survey', 0, []) ?? (keys.length > 1 ? from(first, 1, [first]) : undefined);
}
