// A form from the schema of the brief survey: nothing here knows a question. Answers are read in the page, planned in a worker.
import { briefJsonSchema, questionOf, readBrief, usualDefaults } from 'ohmwright/io';

const { properties } = briefJsonSchema();
const form = document.getElementById('form');
const worker = new Worker(new URL('form-worker.mjs', import.meta.url), { type: 'module' });
let asked = 0;
let told = 0;

const make = (tag, attributes = {}, ...inside) => {
  const element = Object.assign(document.createElement(tag), attributes);
  element.append(...inside);
  return element;
};

/** What an answer is typed or chosen in. */
function control(id, { anyOf, examples, 'x-question': { answer, unit } }) {
  const choices =
    answer === 'yes'
      ? [
          { const: true, title: 'yes' },
          { const: false, title: 'no' },
        ]
      : anyOf.find((s) => s.oneOf)?.oneOf;
  if (choices) {
    const unknown = make('option', { value: '' }, 'not known');
    return make('select', { id }, unknown, ...choices.map((c) => make('option', { value: String(c.const) }, c.title)));
  }
  const types = { date: 'date', clock: 'time', count: 'number' };
  const placeholder = examples ? `such as ${examples[0]}` : (unit ?? '');
  return make('input', { id, type: types[answer] ?? 'text', placeholder });
}

const sections = Map.groupBy
  ? Map.groupBy(Object.entries(properties), ([, p]) => p['x-question']?.section)
  : Object.entries(properties).reduce((all, entry) => {
      const section = entry[1]['x-question']?.section;
      return all.set(section, [...(all.get(section) ?? []), entry]);
    }, new Map());

function field([id, property]) {
  const { title, description, 'x-question': about } = property;
  const label = make('label', { htmlFor: id }, about.unit ? `${title} (${about.unit})` : title);
  const photo = about.photo ? ` Photograph ${about.photo}.` : '';
  const input = control(id, property);
  input.setAttribute('aria-describedby', `${id}-hint ${id}-problem`);
  const hint = make('p', { id: `${id}-hint` }, description + photo);
  return make(
    'div',
    { className: 'field' },
    label,
    hint,
    input,
    make('p', { id: `${id}-problem`, className: 'problem' }),
  );
}

for (const [section, questions] of sections) {
  if (section === undefined) continue;
  const first = questions.filter(([, p]) => p['x-question'].first);
  const others = questions.filter(([, p]) => !p['x-question'].first);
  const more = make('details', {}, make('summary', {}, `More on: ${section}`), ...others.map(field));
  form.append(make('fieldset', {}, make('legend', {}, section), ...first.map(field), ...(others.length ? [more] : [])));
}

const show = (id, ...inside) => document.getElementById(id).replaceChildren(...inside);

/** Reads the answers; what is wrong stands beside its field, what is right goes to the worker. */
function answer() {
  const brief = { format: 'brief/1' };
  for (const id of Object.keys(properties)) {
    const value = document.getElementById(id)?.value.trim();
    if (value) brief[id] = value;
  }
  for (const problem of document.querySelectorAll('.problem')) problem.textContent = '';
  try {
    const { survey, questions } = readBrief(brief, usualDefaults);
    asked += 1;
    worker.postMessage({ number: asked, survey, questions });
  } catch (error) {
    const problems = error.detail?.problems;
    if (!problems) throw error;
    for (const { path, message } of problems) document.getElementById(`${path[0]}-problem`)?.append(`This ${message}`);
    const titles = problems.map(({ path }) => properties[path[0]]?.title ?? String(path[0]));
    show('answer', make('strong', {}, 'No plan yet'), `Still needed: ${titles.join(', ')}.`);
  }
}

worker.addEventListener('message', ({ data: { number, verdict, title, work, facts, questions } }) => {
  if (number < told) return; // an answer to what was typed before
  told = number;
  show('answer', make('strong', {}, verdict), `${title}. ${work}`);
  const asks = facts.flatMap((fact) => questionOf(fact)?.question ?? []);
  show('next', ...[...questions, ...new Set(asks)].slice(0, 5).map((q) => make('li', {}, q)));
});

let waiting;
form.addEventListener('input', () => {
  clearTimeout(waiting);
  waiting = setTimeout(answer, 30); // several keys in one go are planned once
});
form.addEventListener('submit', (event) => event.preventDefault());
