import { stated, unknown } from '../core/index.js';
import { type ChargePoint, NOT_COVERED, notCoveredOf, type Run } from '../installation/index.js';
import { CUSTOMARY_MARGIN } from '../site/demand-options.js';
import { type Survey, TO_BE_DESIGNED, type WantedPoint } from '../site/survey.js';
import { surveyProblems } from '../site/survey-problems.js';
import { CalculationError, invalidInput, type Problem, ratio, wattHours } from '../units/index.js';
import { eachWanted, withEachHeld } from './groups.js';
import { migrate } from './migrate.js';
import { readAll } from './read-all.js';
import { scan } from './scan.js';
import { type SurveyDocument, surveySchema } from './survey-schema.js';

const HALF_HOUR_MS = 1_800_000;

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
  const { data, problems, among } = readAll(surveySchema, current);
  const survey = data && arrange(data);
  const crossed = survey && data ? surveyProblems(survey).map((found) => atEntry(found, data)) : [];
  const other = crossed.find((p) => p.message.startsWith(NOT_COVERED));
  if (other) throw notCovered(other.message.slice(NOT_COVERED.length));
  // a run that is wanted and its point are one in the document: what is wrong with both is said once
  const later = new Map(
    crossed
      .map(inDocument)
      .filter(among)
      .map((p) => [JSON.stringify(p), p]),
  );
  const all = [...problems, ...later.values()];
  if (all.length > 0 || !survey) throw invalidInput('the survey', all);
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
    throw invalidInput('the survey', [
      { path: [], id: 'not-json', message: `is not JSON: ${(error as Error).message}` },
    ]);
  }
  return readSurvey(document);
}

/** What this library does not cover is refused by name, before anything else is said of the document. */
function refuse(document: unknown): void {
  const supply = (document as { supply?: unknown } | null)?.supply;
  if (typeof supply !== 'object' || supply === null) return;
  for (const [, what] of notCoveredOf(supply)) throw notCovered(what);
}

/** A problem of one of many points at the entry that stands for them. */
function atEntry({ path: [first, i, ...rest], message }: Problem, { wanted }: SurveyDocument): Problem {
  const at = first === 'wanted' && typeof i === 'number' ? eachWanted(wanted)[i]?.at : undefined;
  const path = [first, ...(at === undefined ? [i] : [at]), ...rest].filter((key) => key !== undefined);
  return { path, message };
}

/** A problem where it stands in the document: there the run of a wanted point is not put together yet. */
function inDocument(problem: Problem): Problem {
  const { path } = problem;
  const at = (...place: Problem['path']): Problem => ({ ...problem, path: place });
  const [first, i, inside, key, ...rest] = path;
  if (first === 'installation') return at(...path.slice(1));
  if (first !== 'wanted' || inside !== 'run' || i === undefined) return problem;
  if (key === 'cable') return at('wanted', i, 'cables', 0, ...rest);
  if (key === 'stretches') return at('wanted', i, 'route', ...rest);
  if (key !== 'feeds') return at('wanted', i, key ?? 'id', ...rest);
  const [, field, ...deeper] = rest;
  const itself = field === 'id' || field === 'lines' || field === undefined;
  return at('wanted', i, ...(itself ? [field ?? 'point'] : ['point', field]), ...deeper);
}

const notCovered = (what: string) => new CalculationError('not-covered', `not covered: ${what}`, { what });

/** Half hours one after another become readings with their starts; the customary margin counts where none is stated. */
function demandOf({ halfHours, ...rest }: NonNullable<SurveyDocument['demand']>): NonNullable<Survey['demand']> {
  if (!halfHours) return rest;
  const from = Date.parse(halfHours.from);
  const readings = halfHours.wattHours.map((energy, i) => ({
    start: new Date(from + i * HALF_HOUR_MS).toISOString(),
    energy: wattHours(energy),
  }));
  const margin = halfHours.margin ?? ratio(CUSTOMARY_MARGIN);
  return { ...rest, readings: { readings, season: halfHours.season, margin } };
}

function arrange(d: SurveyDocument): Survey {
  const { operation: _o, currentKind: _c, ...supply } = d.supply;
  return {
    format: d.format,
    about: d.about,
    code: d.code,
    installation: { supply, board: withEachHeld(d.board, d.wanted) },
    wanted: eachWanted(d.wanted).map(({ wanted: w }): WantedPoint => {
      const {
        id,
        from,
        lines,
        point,
        device,
        residual,
        jointsAccessible,
        bathOrShower,
        thirdHarmonic,
        cables,
        route,
        terminalTemperature,
        vehicle,
      } = w;
      const chargePoint: ChargePoint = { kind: 'charge-point', id, lines, ...point };
      const undecided = unknown(TO_BE_DESIGNED);
      const choices = cables.map((c) => ({ ...c, area: c.area ?? undecided }));
      const run: Run = {
        id: `${id} circuit`,
        lines,
        device: { ...device, rating: undecided },
        ...stated({ residual, jointsAccessible, bathOrShower, thirdHarmonic }),
        cable: choices[0] as Run['cable'],
        stretches: route,
        ...stated({ terminalTemperature }),
        feeds: [chargePoint],
      };
      return { from, run, cables: choices, ...stated({ vehicle }) };
    }),
    options: d.options ?? {},
    ...(d.demand ? { demand: demandOf(d.demand) } : {}),
    work: d.work ?? {},
  };
}
