import { stated, unknown } from '../core/index.js';
import { type Board, type ChargePoint, outletsBelow, pathsOf, type Run } from '../installation/index.js';
import type { Survey, WantedPoint } from '../site/survey.js';
import { CalculationError, invalidInput, type Problem } from '../units/index.js';
import { migrate } from './migrate.js';
import { problemsOf } from './problems.js';
import { scan } from './scan.js';
import { type SurveyDocument, surveySchema } from './survey-schema.js';

/**
 * Reads a survey document: plain data as JSON holds it, with units in text or under keys that name them.
 * @param document a parsed JSON document of format `survey/1`
 * @returns the survey, every quantity in its canonical unit
 * @throws CalculationError `invalid-input` with every problem and its path; `not-covered` for what is refused by name
 * @example
 * ```ts
 * import { readSurvey } from 'ohmwright/io';
 *
 * readSurvey({ format: 'survey/1' }); // throws invalid-input
 * ```
 */
export function readSurvey(document: unknown): Survey {
  const found = scan(document);
  if (found.length > 0) throw invalidInput('the survey', found);
  const current = migrate(document);
  refuse(current);
  const result = surveySchema.safeParse(current);
  if (!result.success) throw invalidInput('the survey', problemsOf(result.error));
  const survey = arrange(result.data);
  refuseCovered(survey);
  const crossed = crossCheck(survey);
  if (crossed.length > 0) throw invalidInput('the survey', crossed);
  return survey;
}

/**
 * Reads a survey from JSON text.
 * @param text the text of a survey document
 * @returns the survey, for `planOf`
 * @throws CalculationError `invalid-input` when it is no JSON, and as `readSurvey` does
 * @example
 * ```ts
 * import { parseSurvey } from 'ohmwright/io';
 *
 * parseSurvey('{ "format": '); // throws invalid-input
 * ```
 */
export function parseSurvey(text: string): Survey {
  let document: unknown;
  try {
    document = JSON.parse(text);
  } catch (error) {
    throw invalidInput('the survey', [{ path: [], message: `is not JSON: ${(error as Error).message}` }]);
  }
  return readSurvey(document);
}

/** What this library does not cover is refused by name, before anything else is said of the document. */
function refuse(document: unknown): void {
  const supply = (document as { supply?: { operation?: unknown; currentKind?: unknown } } | null)?.supply;
  if (supply?.operation === 'island') throw notCovered('operation as an island, without the network');
  if (supply?.currentKind === 'dc') throw notCovered('supplies and circuits of direct current');
}

/** What reads well and is not covered all the same. */
function refuseCovered({ installation, wanted }: Survey): void {
  const { supply, board } = installation;
  if (supply.system.state === 'known' && supply.system.value === 'IT') throw notCovered('IT systems');
  if (supply.nominalVoltage !== 230)
    throw notCovered(`a nominal voltage of ${supply.nominalVoltage} V line to earth; public supplies have 230 V`);
  if (supply.frequency !== 50) throw notCovered(`a frequency of ${supply.frequency} Hz; public supplies have 50 Hz`);
  const points = [...outletsBelow(board), ...wanted.flatMap((w) => outletsBelow(w.run))].flatMap((o) =>
    o.kind === 'charge-point' ? [o] : [],
  );
  for (const { id, mode } of points) {
    if (mode === 2) throw notCovered(`charging mode 2, from a socket-outlet (${id})`);
    if (mode === 4) throw notCovered(`charging mode 4, with direct current (${id})`);
  }
}

const notCovered = (what: string) => new CalculationError('not-covered', `not covered: ${what}`, { what });

function arrange(d: SurveyDocument): Survey {
  const { operation: _o, currentKind: _c, ...supply } = d.supply;
  return {
    format: d.format,
    about: d.about,
    code: d.code,
    installation: { supply, board: d.board },
    wanted: d.wanted.map((w): WantedPoint => {
      const { id, from, lines, point, device, residual, bathOrShower, cables, route, terminalTemperature, vehicle } = w;
      const chargePoint: ChargePoint = { kind: 'charge-point', id, lines, ...point };
      const undecided = unknown('to be designed');
      const choices = cables.map((c) => ({ ...c, area: undecided }));
      const run: Run = {
        id: `${id} circuit`,
        lines,
        device: { ...device, rating: undecided },
        ...stated({ residual, bathOrShower }),
        cable: choices[0] as Run['cable'],
        stretches: route,
        ...stated({ terminalTemperature }),
        feeds: [chargePoint],
      };
      return { from, run, cables: choices, ...stated({ vehicle }) };
    }),
    options: d.options ?? {},
    ...stated({ demand: d.demand }),
    work: d.work ?? {},
  };
}

/** What no schema of one object can see: names that are unique and names that exist, lines that the supply has. */
function crossCheck(survey: Survey): Problem[] {
  const problems: Problem[] = [];
  const boards = new Map<string, number>();
  const runs = new Map<string, number>();
  const outlets = new Map<string, number>();
  const count = (map: Map<string, number>, name: string) => map.set(name, (map.get(name) ?? 0) + 1);
  const visit = (board: Board): void => {
    count(boards, board.id);
    for (const run of board.runs) {
      count(runs, run.id);
      for (const o of run.feeds) o.kind === 'board' ? visit(o) : count(outlets, o.id);
    }
  };
  visit(survey.installation.board);
  survey.wanted.forEach((w, i) => {
    count(runs, w.run.id);
    for (const o of w.run.feeds) count(outlets, o.id);
    if (!boards.has(w.from))
      problems.push({
        path: ['wanted', i, 'from'],
        message: `there is no board called '${w.from}'; there is ${[...boards.keys()].map((b) => `'${b}'`).join(', ')}`,
      });
  });
  for (const [kind, map] of [
    ['boards', boards],
    ['runs', runs],
    ['loads or charge points', outlets],
  ] as const)
    for (const [name, n] of map)
      if (n > 1) problems.push({ path: [], message: `'${name}' names ${n} ${kind}; a name may be used once` });

  const { phases } = survey.installation.supply;
  const everyRun = [
    ...pathsOf(survey.installation).map((p) => ({ path: ['board'] as (string | number)[], run: p.run })),
    ...survey.wanted.map((w, i) => ({ path: ['wanted', i, 'lines'] as (string | number)[], run: w.run })),
  ];
  for (const { path, run } of everyRun) {
    const twice = run.lines.length !== new Set(run.lines).size;
    if (twice) problems.push({ path, message: `'${run.id}' names a line conductor twice` });
    if (run.lines.length === 2)
      problems.push({ path, message: `'${run.id}' uses two line conductors; a run uses one or three` });
    if (phases.state === 'known' && phases.value === 1 && run.lines.some((l) => l !== 'L1'))
      problems.push({
        path,
        message: `'${run.id}' uses ${run.lines.join(', ')}, but the supply has one line conductor, L1`,
      });
    for (const { name, group } of run.stretches)
      if (group?.lightlyLoaded && group.circuits.state === 'known' && group.lightlyLoaded > group.circuits.value)
        problems.push({
          path,
          message: `'${name}' of '${run.id}' has ${group.lightlyLoaded} lightly loaded circuits in a group of ${group.circuits.value}`,
        });
    for (const o of run.feeds)
      if (o.kind === 'charge-point') {
        const { setting } = o;
        const least = Math.max(6, o.minimum ?? 6);
        const most = setting.state === 'known' ? setting.value : setting.state === 'between' ? setting.least : least;
        if (most < least)
          problems.push({ path, message: `'${o.id}' is set below ${least} A, the smallest current that it can offer` });
      }
    for (const o of run.feeds)
      if (o.kind !== 'board' && o.lines.some((l) => !run.lines.includes(l)))
        problems.push({ path, message: `'${o.id}' uses line conductors that '${run.id}' does not have` });
  }
  survey.wanted.forEach((w, i) => {
    w.cables.forEach((cable, j) => {
      const own = cable.protective === 'core' ? 1 : 0;
      const needed = w.run.lines.length + 1 + own;
      if (cable.cores < needed)
        problems.push({
          path: ['wanted', i, 'cables', j, 'cores'],
          message: `is ${cable.cores}; ${w.run.lines.length === 1 ? 'one line conductor' : 'three line conductors'} and neutral${own ? ', and a protective core,' : ''} need ${needed}`,
        });
    });
  });
  return problems;
}
