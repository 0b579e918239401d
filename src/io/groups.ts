import { type Board, type Line, lineConductors } from '../installation/index.js';
import type { SurveyDocument } from './survey-schema.js';

type WantedEntry = SurveyDocument['wanted'][number];

/** A wanted point of a document, with the place of the entry that it comes from. */
export interface Entry {
  readonly wanted: WantedEntry;
  readonly at: number;
}

const nameOf = (id: string, k: number): string => `${id} ${k + 1}`;

/** Its line conductor where the points of a group take them in turn: from the one that is named, on. */
const turned = (lines: readonly Line[], k: number): readonly Line[] =>
  lines.map((line) => lineConductors[(lineConductors.indexOf(line) + k) % lineConductors.length] as Line);

/** Every point of a survey on its own: an entry that stands for a number of them is written out. */
export const eachWanted = (wanted: SurveyDocument['wanted']): readonly Entry[] =>
  wanted.flatMap((entry, at): readonly Entry[] => {
    const { count, inTurn, ...one } = entry;
    if (count === undefined) return [{ wanted: one, at }];
    return Array.from({ length: count }, (_, k) => ({
      wanted: { ...one, id: nameOf(one.id, k), lines: inTurn === true ? [...turned(one.lines, k)] : one.lines },
      at,
    }));
  });

/** The board with its load controls, and those below, holding each point of a group that they name. */
export function withEachHeld(board: Board, wanted: SurveyDocument['wanted']): Board {
  const groups = new Map(wanted.flatMap((w) => (w.count === undefined ? [] : [[w.id, w.count] as const])));
  if (groups.size === 0) return board;
  const written = (at: Board): Board => ({
    ...at,
    ...(at.control
      ? {
          control: {
            ...at.control,
            controls: at.control.controls.flatMap((id) => {
              const count = groups.get(id);
              return count === undefined ? [id] : Array.from({ length: count }, (_, k) => nameOf(id, k));
            }),
          },
        }
      : {}),
    runs: at.runs.map((run) =>
      run.feeds.some((o) => o.kind === 'board')
        ? { ...run, feeds: run.feeds.map((o) => (o.kind === 'board' ? written(o) : o)) }
        : run,
    ),
  });
  return written(board);
}
