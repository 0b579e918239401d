import { type Board, type Installation, pathTo, type Run } from '../installation/index.js';
import type { Survey, WantedPoint } from './survey.js';

/** Charge points up to which each is planned on its own, alike or not. */
export const FEW = 3;

/** Facts of a run without what it is called and what it feeds. */
const ofRun = ({ id: _, feeds: __, ...facts }: Run) => facts;

/** What boards and circuits come to without their names: two that hold the same, in whatever order, say the same. */
class Nameless {
  private readonly said = new Map<Board, number>();
  private readonly known = new Map<string, number>();

  /** A number for all that a board comes to: the same for boards that are alike. */
  board(board: Board, held: readonly (readonly string[])[] = []): number {
    const before = this.said.get(board);
    if (before !== undefined) return before;
    const { id: _, runs, control, residual, ...facts } = board;
    const inside = control ? [...held, control.controls] : held;
    const own = [control && [control.limit, control.reaction], residual?.map(({ serves: __, ...r }) => r)];
    const outgoing = runs.map((run) =>
      JSON.stringify([
        ofRun(run),
        residual?.map((r) => r.serves?.includes(run.id) ?? true),
        run.feeds.map((o) => {
          if (o.kind === 'board') return this.board(o, inside);
          const { id, ...outlet } = o;
          return [outlet, inside.map((names) => names.includes(id))];
        }),
      ]),
    );
    const all = JSON.stringify([facts, own, outgoing.sort()]);
    const number = this.known.get(all) ?? this.known.size;
    this.known.set(all, number);
    this.said.set(board, number);
    return number;
  }
}

/** All that the assessment of a run can turn on, but for names: what it is and feeds, and what stands around it on every level. */
function factsOf(id: string, installation: Installation, nameless: Nameless): string {
  nameless.board(installation.board);
  const { boards = [], feeders = [], run } = pathTo(installation, id) ?? {};
  const names = run?.feeds.map((o) => o.id) ?? [];
  const way = boards.map((b) => [
    nameless.board(b),
    b.control?.controls.some((held) => names.includes(held)) ?? false,
    (b.residual ?? []).map((r) => r.serves?.includes(id) ?? true),
    // what is still to be fitted to a board is counted board by board
    b.surgeProtection?.state === 'known' && b.surgeProtection.value ? '' : b.id,
  ]);
  const fed = run?.feeds.map((o) => {
    if (o.kind === 'board') return nameless.board(o);
    const { id: _, ...outlet } = o;
    return outlet;
  });
  return JSON.stringify([way, feeders.map(ofRun), run && ofRun(run), fed]);
}

function grouped<T>(all: readonly T[], facts: (of: T) => string): readonly (readonly T[])[] {
  const found = new Map<string, T[]>();
  for (const of of all) {
    const key = facts(of);
    const before = found.get(key);
    if (before) before.push(of);
    else found.set(key, [of]);
  }
  return [...found.values()];
}

/** Whether each point and feeder stands alone: of few, and where choices name runs. */
const eachAlone = ({ wanted, options }: Survey): boolean =>
  wanted.length <= FEW || [options.loadStates, options.feederDemand, options.demandBeyond].some((o) => o !== undefined);

/**
 * Wanted points by what decides their plan: those of a list are alike in every fact but names, their own and those of the boards
 * on their way, so that one calculation serves them. Of few points each stands alone.
 * @param survey the survey
 * @param installation its installation with all that is wanted
 */
export function alikeIn(survey: Survey, installation: Installation): readonly (readonly WantedPoint[])[] {
  if (eachAlone(survey)) return survey.wanted.map((w) => [w]);
  const nameless = new Nameless();
  return grouped(survey.wanted, ({ run, cables, vehicle }) =>
    JSON.stringify([factsOf(run.id, installation, nameless), cables, vehicle]),
  );
}

/** Runs of an installation by what decides their assessment, as points are. */
export function alikeRuns(
  survey: Survey,
  installation: Installation,
  runs: readonly string[],
): readonly (readonly string[])[] {
  if (eachAlone(survey)) return runs.map((id) => [id]);
  const nameless = new Nameless();
  return grouped(runs, (id) => factsOf(id, installation, nameless));
}
