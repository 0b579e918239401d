import { isCalendarDay, timeOfDay } from '../../core/calendar.js';
import { own } from '../../core/own.js';
import { shown } from '../../units/index.js';
import { factProblems, type Say } from '../record-problems.js';
import { isRecord, valueProblem, valueProblemId } from '../values.js';
import { choicesOf } from './register.js';
import { around } from './survey-shapes.js';

const forms: Readonly<
  Record<string, readonly [is: (value: unknown) => boolean, due: string, id: 'not-a-day' | 'not-a-time']>
> = {
  date: [isCalendarDay, 'it is a day as yyyy-mm-dd', 'not-a-day'],
  clock: [(value) => typeof value === 'string' && timeOfDay.test(value), 'it is a time of day as hh:mm', 'not-a-time'],
};

/** What is wrong with a plain value of a survey: one of its choices, a text of a form, a number, or what stands in an installation too. */
function plainProblem(what: string, value: unknown, say: Say): undefined {
  const form = own(forms, what);
  const choices = what.includes('.') ? choicesOf(what) : undefined;
  if (form && !form[0](value)) return say([], `is ${shown(value)}; ${form[1]}`, form[2]);
  if (choices && !choices.some((c) => c.value === value))
    return say([], `is ${shown(value)}; known are ${choices.map((c) => c.value).join(', ')}`, 'not-allowed');
  if (what === 'number' && !Number.isFinite(value)) return say([], `is ${shown(value)}; a number is due`, 'wrong-kind');
  if (form || choices || what === 'number') return undefined;
  const problem = valueProblem(what, value);
  return problem ? say([], problem, valueProblemId(what, value)) : undefined;
}

/** The same of a fact whose value is one of several choices. */
function choiceProblem(what: string, fact: unknown, say: Say): undefined {
  if (isRecord(fact) && fact.state === 'known')
    return plainProblem(what, fact.value, (at, message, id) => say(['value', ...at], message, id));
  return isRecord(fact) && fact.state === 'unknown'
    ? undefined
    : say([], `is ${shown(fact)}; a fact is due: it is known or unknown`, 'wrong-kind');
}

/**
 * What is wrong with a record of a survey that stands around the installation.
 * @param record name of the record
 * @param elsewhere fields that are looked at elsewhere
 */
export function aroundProblems(record: string, value: unknown, say: Say, elsewhere: readonly string[] = []): undefined {
  if (!isRecord(value)) return say([], `is ${shown(value)}; an object is due`, 'wrong-kind');
  for (const [key, [how, what]] of Object.entries(own(around, record) ?? {})) {
    if (elsewhere.includes(key)) continue;
    const item = value[key];
    const here: Say = (at, message, id) => say([key, ...at], message, id);
    if (item === undefined) {
      if (!how.endsWith('?')) here([], 'is missing', 'missing');
    } else if (how.startsWith('fact')) (what.includes('.') ? choiceProblem : factProblems)(what, item, here);
    else if (own(around, what)) aroundProblems(what, item, here);
    else plainProblem(what, item, here);
  }
}
