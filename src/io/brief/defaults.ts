import { isRecord, questionnaire } from '../../installation/index.js';
import { invalidInput, type Problem, type ProblemId } from '../../units/index.js';
import { keyWords } from '../problems.js';
import { scan } from '../scan.js';
import { type Answer, questionById, readAnswer } from './answers.js';
import { rcbo, usualCables } from './parts.js';

/** A part of a survey document. @inline */
type Part = Readonly<Record<string, unknown>>;

/** What a firm fits and takes for settled where a brief survey does not say otherwise: a document, to be kept by the firm. */
export interface FirmDefaults {
  readonly format: 'defaults/1';
  /** Who says so; it stands beside each fact. */
  readonly name: string;
  /** Answers to questions of the questionnaire, by id. */
  readonly answers: Readonly<Record<string, unknown>>;
  /** What it fits, in the words of a survey document. */
  readonly fits: {
    /** Fuse or circuit-breaker of the new circuit. */
    readonly device: Part;
    readonly residual: readonly Part[];
    /** Cables for a route that stays indoors, the best liked first. */
    readonly cablesIndoors: readonly Part[];
    /** Cables for a route of which a part is outdoors or in the ground. */
    readonly cablesOutdoors: readonly Part[];
    /** Cables for three phases. */
    readonly cablesThreePhase: readonly Part[];
  };
}

/**
 * Choices that are usual in the trade, to start from; common practice, no source. A firm keeps its own document of this form.
 * It answers no question about the premises.
 */
export const usualDefaults: FirmDefaults = {
  format: 'defaults/1',
  name: 'common practice, no source',
  answers: { premises: 'dwelling', chargeCurrent: '32 A', chargePhases: 1, mounting: 'wall' },
  fits: /* @__PURE__ */ (() => ({
    ...rcbo('B', 'A'),
    cablesIndoors: [usualCables.twinAndEarth, usualCables.armoured],
    cablesOutdoors: [usualCables.armoured],
    cablesThreePhase: [usualCables.armouredThreePhase],
  }))(),
};

const parts = ['device', 'residual', 'cablesIndoors', 'cablesOutdoors', 'cablesThreePhase'] as const;

/** The answers of a document by question, or what is wrong with them. */
export function answersOf(
  given: Readonly<Record<string, unknown>>,
  by: string,
  within: readonly string[] = [],
): { readonly answers: Map<string, Answer>; readonly problems: readonly Problem[] } {
  const answers = new Map<string, Answer>();
  const problems: Problem[] = [];
  const ids = questionnaire().map((q) => q.id);
  for (const [id, input] of Object.entries(given)) {
    const question = questionById(id);
    if (!question) {
      problems.push({ path: [...within], id: 'unknown-key', message: keyWords([id], ids) });
      continue;
    }
    const read = readAnswer(question, input, by);
    if ('problem' in read) problems.push({ ...read.problem, path: [...within, id] });
    else if (read.answer) answers.set(id, read.answer);
  }
  return { answers, problems };
}

/**
 * Reads a firm's defaults for brief surveys.
 * @param document a parsed JSON document of format `defaults/1`
 * @returns the defaults; what it does not name of what the firm fits is that of `usualDefaults`
 * @throws CalculationError `invalid-input` with every problem and its path
 * @example
 * ```ts
 * import { readDefaults } from 'ohmwright/io';
 *
 * readDefaults({ format: 'defaults/1', name: 'our van stock', answers: { ambient: '30 °C' } }).name; // => 'our van stock'
 * readDefaults({ format: 'defaults/1', name: 'x', answers: { mainFuze: '80 A' } }); // throws invalid-input
 * ```
 */
export function readDefaults(document: unknown): FirmDefaults {
  const problems: Problem[] = [...scan(document)];
  const say = (path: Problem['path'], id: ProblemId, message: string) => problems.push({ path, id, message });
  if (!isRecord(document))
    throw invalidInput('the defaults', [{ path: [], id: 'wrong-kind', message: 'is no object in braces' }]);
  const { format, name, answers = {}, fits = {} } = document;
  if (format !== 'defaults/1') say(['format'], 'not-allowed', "has to be 'defaults/1'");
  if (typeof name !== 'string' || name === '' || name.length > 300)
    say(['name'], 'missing', 'has to be text: who says so');
  if (!isRecord(answers)) say(['answers'], 'wrong-kind', 'has to be an object in braces');
  else problems.push(...answersOf(answers, 'defaults', ['answers']).problems);
  const more = Object.keys(document).filter((k) => !['format', 'name', 'answers', 'fits'].includes(k));
  if (more.length > 0) say([], 'unknown-key', keyWords(more, ['format', 'name', 'answers', 'fits']));
  if (!isRecord(fits)) say(['fits'], 'wrong-kind', 'has to be an object in braces');
  else {
    const strange = Object.keys(fits).filter((k) => !(parts as readonly string[]).includes(k));
    if (strange.length > 0) say(['fits'], 'unknown-key', keyWords(strange, parts));
    for (const part of parts)
      if (fits[part] !== undefined && (part === 'device' ? !isRecord(fits[part]) : !Array.isArray(fits[part])))
        say(['fits', part], 'wrong-kind', part === 'device' ? 'has to be an object in braces' : 'has to be a list');
  }
  if (problems.length > 0) throw invalidInput('the defaults', problems);
  return {
    format: 'defaults/1',
    name: name as string,
    answers: { ...usualDefaults.answers, ...(answers as Record<string, unknown>) },
    fits: { ...usualDefaults.fits, ...(fits as Partial<FirmDefaults['fits']>) },
  };
}
