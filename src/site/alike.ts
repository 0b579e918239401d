import { type Board, type Installation, pathTo, type Run } from '../installation/index.js';
import type { Survey, WantedPoint } from './survey.js';

/** Charge points up to which each is planned on its own, alike or not. */
export const FEW = 3;

/** Facts of a run without what it is called and what it feeds. */
const ofRun = ({ id: _, feeds: __, ...facts }: Run) => facts;

/** What boards and circuits come to without their names: two that hold the same, in whatever order, say the same. */
class Nameless {
  private readonly said = new Map<object, string>();

  board(board: Board, held: readonly (readonly string[])[] = []): string {
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
    this.said.set(board, all);
    return all;
  }
}

/** All that the plan of a point can turn on, but for names: what it is, and what stands around it on every level. */
function factsOf({ run, cables, vehicle }: WantedPoint, installation: Installation, nameless: Nameless): string {
  const names = run.feeds.map((o) => o.id);
  const { boards = [], feeders = [] } = pathTo(installation, run.id) ?? {};
  nameless.board(installation.board);
  const way = boards.map((b) => [
    nameless.board(b),
    b.control?.controls.some((id) => names.includes(id)) ?? false,
    (b.residual ?? []).map((r) => r.serves?.includes(run.id) ?? true),
    // what is still to be fitted to a board is counted board by board
    b.surgeProtection?.state === 'known' && b.surgeProtection.value ? '' : b.id,
  ]);
  return JSON.stringify([way, feeders.map(ofRun), ofRun(run), run.feeds.map(({ id: _, ...o }) => o), cables, vehicle]);
}

/**
 * Wanted points by what decides their plan: those of a list are alike in every fact but names, their own and those of the boards
 * on their way, so that one calculation serves them. Of few points each stands alone.
 * @param survey the survey
 * @param installation its installation with all that is wanted
 */
export function alikeIn(survey: Survey, installation: Installation): readonly (readonly WantedPoint[])[] {
  const { loadStates, feederDemand } = survey.options;
  if (survey.wanted.length <= FEW || loadStates || feederDemand) return survey.wanted.map((w) => [w]);
  const found = new Map<string, WantedPoint[]>();
  const nameless = new Nameless();
  for (const wanted of survey.wanted) {
    const facts = factsOf(wanted, installation, nameless);
    const before = found.get(facts);
    if (before) before.push(wanted);
    else found.set(facts, [wanted]);
  }
  return [...found.values()];
}
