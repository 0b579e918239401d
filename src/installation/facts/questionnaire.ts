import { own } from '../../core/own.js';
import { otherChoiceWords } from './choice-words.js';
import { questionRows } from './question-rows.js';
import { type Choice, cells, choicesOf, type FactEntry, factRegister, placeOf, type Whom } from './register.js';

/** A question of the questionnaire, or of the register, to be shown or asked. */
export interface Question {
  /** Its name in a brief survey, such as `mainFuse`; of the register, record and field. */
  readonly id: string;
  /** A short heading: of a column, or beside a field of a form. */
  readonly title: string;
  /** Heading under which it is asked. */
  readonly section?: string;
  /** Whether it is one of the few that are asked first. */
  readonly first?: boolean;
  readonly question: string;
  readonly whom: Whom;
  /** What to photograph. */
  readonly photo?: string;
  readonly example?: string;
  /** What else to know. */
  readonly note?: string;
  /** What an answer is. */
  readonly answer: 'text' | 'date' | 'clock' | 'yes' | 'count' | 'bond' | 'choice' | 'quantity' | 'record';
  /** Unit in which a bare number is read. */
  readonly unit?: string;
  /** Role in the vocabulary, of a quantity. */
  readonly role?: string;
  readonly choices?: readonly Choice[];
  /** Least and most that is usual, in the unit: outside somebody should look again. Common practice, no source. */
  readonly usual?: readonly [least: number, most: number];
  /** Facts that the answer sets, as paths in the survey document. */
  readonly sets: readonly string[];
  /** Whether the answer may be that it is not known. */
  readonly mayBeUnknown: boolean;
}

const plainAnswers = ['text', 'date', 'clock', 'yes', 'count'] as const;
type Answer = Pick<Question, 'answer' | 'unit' | 'role' | 'choices'>;

/** What an answer of the kind that a line names is. */
function answerOf(kind: string): Answer {
  const plain = plainAnswers.find((p) => p === kind);
  if (plain === 'yes') return { answer: 'yes', choices: choicesOf('yes') ?? [] };
  if (plain) return { answer: plain };
  const [unit = '', role] = kind.split(' ');
  if (role === undefined) return { answer: 'choice', choices: choicesOf(kind) ?? [] };
  return unit === 'bond' ? { answer: 'bond', unit: 'mm²', role } : { answer: 'quantity', unit, role };
}

const stated = (from: Partial<Record<'photo' | 'example' | 'note', string | undefined>>) =>
  Object.fromEntries(Object.entries(from).filter(([, value]) => value !== undefined)) as {
    photo?: string;
    example?: string;
    note?: string;
  };

let questions: readonly Question[] | undefined;

function read(): readonly Question[] {
  const found: Question[] = [];
  let section = '';
  for (const row of questionRows.trim().split('\n')) {
    if (row.startsWith('= ')) section = row.slice(2).trim();
    if (!row.includes(' | ')) continue;
    const [name = '', title = '', kind = 'text', usual, whom, question, photo, example, sets = ''] = cells(row);
    const paths = sets.split(', ');
    const place = placeOf(paths[0] ?? '');
    const entry = factRegister().get(place?.id ?? '');
    const [least, most] = (usual ?? '').split('..').map(Number);
    found.push({
      id: name.replace('*', ''),
      title,
      section,
      ...(name.endsWith('*') ? { first: true } : {}),
      question: question ?? entry?.question ?? '',
      whom: (whom as Whom | undefined) ?? entry?.whom ?? 'customer',
      ...stated({ photo: photo ?? entry?.photo, example: example ?? entry?.example, note: entry?.note }),
      ...answerOf(kind),
      ...(least === undefined || most === undefined ? {} : { usual: [least, most] as const }),
      sets: paths,
      mayBeUnknown: name !== 'date*' && name !== 'edition',
    });
  }
  return found;
}

/**
 * The questionnaire of a remote survey: what to ask, of whom, what to photograph, what an answer may be and which facts
 * it sets. The reader of a brief survey, its schema, the columns of its spreadsheet, the form among the examples and the
 * guides all read it.
 * @returns the questions, in the order in which they are best asked
 * @example
 * ```ts
 * import { questionnaire } from 'ohmwright/io';
 *
 * questionnaire().find((q) => q.id === 'mainFuse')?.unit; // => 'A'
 * ```
 */
export function questionnaire(): readonly Question[] {
  questions ??= read();
  return questions;
}

/** A question from an entry of the register. */
function fromEntry(entry: FactEntry, way: string): Question {
  const { id, title, question, whom, photo, example, note, unit, choices, mayBeUnknown } = entry;
  const yes = choices?.length === 2 && choices.every((c) => typeof c.value === 'boolean');
  return {
    id,
    title,
    question,
    whom,
    ...stated({ photo, example, note }),
    answer: yes ? 'yes' : choices ? 'choice' : unit === undefined ? 'text' : 'quantity',
    ...(unit === undefined ? {} : { unit }),
    ...(choices ? { choices } : {}),
    sets: [way],
    mayBeUnknown,
  };
}

/** The only entry whose field is called so, or is a quantity of that role. */
function entryByName(name: string): FactEntry | undefined {
  const called = [...factRegister().values()].filter((e) => e.id.endsWith(`.${name}`));
  return called.length === 1 ? called[0] : undefined;
}

/**
 * The question that finds out a fact: that of the questionnaire where one sets it, otherwise that of the register.
 * @param fact a fact by its place in a survey (`supply.externalImpedance`, `wanted[0].route[1].length`,
 * `installation.board.runs[2].device.rating`), by record and field (`stretch.length`), or by a role that one field alone
 * has (`externalImpedance`)
 * @returns the question, or undefined where there is no such fact
 * @example
 * ```ts
 * import { questionOf } from 'ohmwright/io';
 *
 * questionOf('supply.externalImpedance')?.id; // => 'ze'
 * questionOf('board.runs[2].device.rating')?.question; // => 'How many amperes are printed on it?'
 * questionOf('colour'); // => undefined
 * ```
 */
export function questionOf(fact: string): Question | undefined {
  const place = placeOf(fact);
  const entry = factRegister().get(place?.id ?? '') ?? (fact.includes('.') ? undefined : entryByName(fact));
  if (!entry) return undefined;
  const ways = place ? [place.way, entry.id] : [entry.id];
  const asked = questionnaire().find((q) => q.sets.some((path) => ways.includes(path)));
  return asked ?? fromEntry(entry, place?.way ?? entry.id);
}

/** Words for a standard of overcurrent devices. */
export const standardWords = (standard: string): string =>
  own(otherChoiceWords.overcurrentStandard, standard) ?? standard;
