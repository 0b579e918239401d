import { termOf } from '../../core/index.js';
import { isRecord, type Question, questionnaire, roleProblem } from '../../installation/index.js';
import { type CanonicalUnit, type Problem, type ProblemId, parseQuantity } from '../../units/index.js';
import { spellings } from '../../units/spellings.js';
import { formatNumber } from '../../units/text.js';
import { SMALLEST } from '../field.js';
import { meantChoice, meantQuantity, nearChoice } from '../near-miss.js';

/** A value as a survey document holds it: text with its unit, a word, a count, yes or no. */
export type Written = string | number | boolean;

/** An answer of a brief survey, in the forms that a fact of a document has. */
export type Answer =
  | { readonly known: Written; readonly by: string }
  | { readonly between: readonly [Written, Written]; readonly by: string }
  | { readonly unknown: string };

/** Answers by the id of their question. */
export type Answers = ReadonlyMap<string, Answer>;

/** Texts that say that something is not known. */
const UNKNOWN = /^(\?+|unknown|not known|don[’']?t know|n\/?k|tbc|-)?$/i;

/** How the fact that a question asks for is obtained, as a report says it. */
export function obtainOf({ whom, question, photo }: Question): string {
  if (whom === 'operator') return `ask the network operator: ${question}`;
  if (whom === 'maker') return `from the data sheet or the marking: ${question}`;
  if (photo !== undefined) return `photograph ${photo}`;
  return whom === 'customer' ? `ask the customer: ${question}` : question;
}

const wrong = (q: Question, id: ProblemId, message: string, write?: Written): Problem => ({
  path: [q.id],
  id,
  message,
  ...(q.choices ? { allowed: q.choices.map((c) => c.value) } : {}),
  ...(write === undefined ? {} : { write }),
});

type ReadValue = { readonly value: Written } | { readonly problem: Problem };

function choiceValue(q: Question, input: unknown): ReadValue {
  const allowed = (q.choices ?? []).map((c) => c.value);
  const value = meantChoice(allowed, input);
  if (value !== undefined) return { value };
  const near = nearChoice(allowed, input);
  const meant = near === undefined ? '' : ` Perhaps '${near}' is meant.`;
  const words = (q.choices ?? []).map((c) => `${c.value === true ? 'yes' : c.value === false ? 'no' : c.value}`);
  return {
    problem: wrong(
      q,
      'not-allowed',
      `is '${String(input).slice(0, 60)}'; it is one of ${words.join(', ')}.${meant}`,
      near,
    ),
  };
}

/** A bare number is in the unit of its question. */
function quantityValue(q: Question, input: unknown): ReadValue {
  const unit = (termOf(q.role ?? '')?.unit ?? '1') as CanonicalUnit;
  const text = typeof input === 'string' ? input.trim() : '';
  const { slip, write } = meantQuantity(unit, input, q.unit);
  const bare = slip === 'no-unit' || slip === 'unit-spelling';
  const written = bare && write !== undefined ? write : text;
  try {
    const value = parseQuantity(written, unit);
    if (value !== 0 && Math.abs(value) < SMALLEST)
      return { problem: wrong(q, 'out-of-range', `cannot be ${written}: no survey finds such a figure`) };
    const problem =
      value < 0 && unit !== '°C' ? `has to be 0 or more; it is ${written}` : roleProblem(q.role ?? '', value);
    return problem === undefined ? { value: written } : { problem: wrong(q, 'out-of-range', problem) };
  } catch {
    const hint =
      slip === 'decimal-comma'
        ? `; a decimal has a point here: write '${write}'`
        : `; a figure in ${[q.unit, ...spellings[unit].map((s) => s.text)].filter((t, i, all) => t && all.indexOf(t) === i).join(', ')} is due`;
    return { problem: wrong(q, slip, `is '${String(input).slice(0, 60)}'${hint}`, write) };
  }
}

const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;
const BRITISH_DAY = /^(\d{1,2})[/.](\d{1,2})[/.](\d{4})$/;

function dayValue(q: Question, text: string): ReadValue {
  // a spreadsheet may have turned the day into the order of the country
  const british = BRITISH_DAY.exec(text);
  const written = british ? `${british[3]}-${british[2]?.padStart(2, '0')}-${british[1]?.padStart(2, '0')}` : text;
  const parts = DAY.exec(written)?.slice(1).map(Number);
  const [year = 0, month = 0, day = 0] = parts ?? [];
  const days = [
    31,
    year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28,
    31,
    30,
    31,
    30,
    31,
    31,
    30,
    31,
    30,
    31,
  ];
  if (parts && day >= 1 && day <= (days[month - 1] ?? 0)) return { value: written };
  return { problem: wrong(q, 'not-a-day', `is '${text.slice(0, 60)}'; a day as yyyy-mm-dd is due`) };
}

function clockValue(q: Question, text: string): ReadValue {
  const [, hours = '', minutes = ''] = /^(\d{1,2}):(\d{2})(?::00)?$/.exec(text) ?? [];
  if (hours !== '' && Number(hours) < 24 && Number(minutes) < 60)
    return { value: `${hours.padStart(2, '0')}:${minutes}` };
  return { problem: wrong(q, 'not-a-time', `is '${text.slice(0, 60)}'; a time of day as hh:mm is due`) };
}

function countValue(q: Question, input: unknown): ReadValue {
  const count = typeof input === 'number' ? input : /^\d+$/.test(String(input).trim()) ? Number(input) : Number.NaN;
  if (Number.isInteger(count) && count >= 0 && count <= 10_000) return { value: count };
  return { problem: wrong(q, 'wrong-kind', `is '${String(input).slice(0, 60)}'; a whole number from 0 is due`) };
}

function plainValue(q: Question, input: unknown): ReadValue {
  // before it is made a text, which an object may refuse
  if (typeof input === 'object')
    return { problem: wrong(q, 'wrong-kind', 'is no plain value, and none of the forms of a fact') };
  const text = String(input).trim();
  if (q.answer === 'choice' || q.answer === 'yes') return choiceValue(q, input);
  if (q.answer === 'quantity') return quantityValue(q, input);
  if (q.answer === 'bond') {
    const word = /^(none|missing)$/i.exec(text)?.[1];
    return word ? { value: word.toLowerCase() } : quantityValue(q, input);
  }
  if (q.answer === 'date') return dayValue(q, text);
  if (q.answer === 'clock') return clockValue(q, text);
  if (q.answer === 'count') return countValue(q, input);
  return text.length <= 300 ? { value: text } : { problem: wrong(q, 'too-long', 'has to have at most 300 characters') };
}

/** The two ends of `20 to 26 m` or `20-26 m`. */
const RANGE = /^([\d.]+)\s*([^\d\s.-]*)\s*(?:to|-|–|\.\.)\s*([\d.]+)\s*(\D*)$/;

function between(
  q: Question,
  ends: readonly unknown[],
  by: string,
): { readonly answer: Answer } | { readonly problem: Problem } {
  const [least, most] = ends.map((end) => plainValue(q, end));
  if (!least || !most || ends.length !== 2)
    return { problem: wrong(q, 'wrong-kind', 'needs two values: least and most') };
  if ('problem' in least) return least;
  if ('problem' in most) return most;
  if (q.answer !== 'quantity')
    return { problem: wrong(q, 'wrong-kind', 'is a range; only a figure with a unit can be one') };
  const unit = (termOf(q.role ?? '')?.unit ?? '1') as CanonicalUnit;
  if (parseQuantity(String(least.value), unit) > parseQuantity(String(most.value), unit))
    return { problem: wrong(q, 'wrong-order', 'is a range; the smaller value comes first') };
  return { answer: { between: [least.value, most.value], by } };
}

/** An answer as it was written, in whatever form. */
export function readAnswer(
  q: Question,
  input: unknown,
  by: string,
): { readonly answer?: Answer } | { readonly problem: Problem } {
  if (input === undefined) return {};
  const form = isRecord(input) ? input : undefined;
  const said = typeof form?.by === 'string' && form.by !== '' ? form.by.slice(0, 300) : by;
  const lacking: Answer = { unknown: typeof form?.unknown === 'string' ? form.unknown.slice(0, 300) : obtainOf(q) };
  const plain = form && 'known' in form ? form.known : input;
  const isUnknown =
    (form && 'unknown' in form) || plain === null || (typeof plain === 'string' && UNKNOWN.test(plain.trim()));
  if (isUnknown)
    return q.mayBeUnknown || plain === null || plain === ''
      ? { answer: lacking }
      : { problem: wrong(q, 'missing', 'has to be answered') };
  if (form && Array.isArray(form.between)) return between(q, form.between, said);
  const [, least, first = '', most, last = ''] = (typeof plain === 'string' && RANGE.exec(plain.trim())) || [];
  if (q.answer === 'quantity' && least !== undefined)
    return between(q, [`${least} ${first || last}`.trim(), `${most} ${last || first}`.trim()], said);
  const read = plainValue(q, plain);
  return 'problem' in read ? read : { answer: { known: read.value, by: said } };
}

/** An answer outside what is usual, as a question to whoever wrote it. */
export function oddness(q: Question, answer: Answer): string | undefined {
  if (!q.usual || 'unknown' in answer) return undefined;
  const [least, most] = q.usual;
  const unit = termOf(q.role ?? '')?.unit as CanonicalUnit | undefined;
  const size = (written: Written): number => {
    if (typeof written === 'number') return written;
    if (!unit || typeof written !== 'string' || !q.unit || /^(none|missing)$/.test(written)) return least;
    return parseQuantity(written, unit) / parseQuantity(`1 ${q.unit}`, unit);
  };
  const ends = 'between' in answer ? answer.between.map(size) : [size(answer.known)];
  if (ends.every((n) => n >= least * (1 - 1e-9) && n <= most * (1 + 1e-9))) return undefined;
  const said = 'between' in answer ? answer.between.join(' to ') : String(answer.known);
  return `${q.title}: is ${said} right? Usual is ${formatNumber(least)} to ${formatNumber(most)}${q.unit ? ` ${q.unit}` : ''}.`;
}

/** The question of an id. */
export const questionById = (id: string): Question | undefined => questionnaire().find((q) => q.id === id);
