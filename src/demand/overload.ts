import {
  type CheckResult,
  endsOf,
  type Fact,
  factValue,
  type Known,
  type Missing,
  missing,
  type Sheet,
  stated,
} from '../core/index.js';
import { type Board, foundNoFuseAhead, type Line, leavesTails, type Run } from '../installation/index.js';
import type { Amperes } from '../units/index.js';
import type { OverloadRules } from './rules.js';

/** Of a range the end that is worse. */
export const endOf = <T extends number>(fact: Fact<T>, end: 'least' | 'most'): Fact<T> =>
  fact.state === 'between'
    ? {
        state: 'known',
        value: fact[end],
        ...stated({ by: fact.by && `${fact.by}, ${end === 'least' ? 'lower' : 'upper'} end of the range` }),
      }
    : fact;

/** A range of a rating is taken at its lower end: nothing is taken stronger than it may be. */
export const lower = <T extends number>(fact: Fact<T> | undefined, obtain: string): Fact<T> =>
  fact === undefined || (fact.state === 'unknown' && fact.obtain === undefined)
    ? { state: 'unknown', obtain }
    : endOf(fact, 'least');

/** The main switch of a board by itself, and what a demand has to stay within: the lesser of it and of a switch-fuse ahead. */
export function mainSwitchOf({ id, mainSwitch }: Board): {
  readonly own: Fact<Amperes>;
  readonly least: Fact<Amperes> | Missing;
} {
  const own = lower(mainSwitch?.rating, 'label of the main switch');
  if (own.state !== 'known' || foundNoFuseAhead(mainSwitch)) return { own, least: own };
  const fused = lower(mainSwitch?.fuseAhead, 'see whether one stands there, and read its fuse');
  if (fused.state === 'known') return { own, least: own.value <= fused.value ? own : fused };
  return { own, least: factValue(`switch-fuse ahead of ${id}`, fused) as Missing };
}

/**
 * What stands around the main switch of a board: a switch-fuse that is known stands between it and the device ahead, which
 * protects it as before where that is smaller; and what leaves the tails ahead of the board does not pass it.
 */
export function aroundSwitch(around: Around): Around {
  const fused = around.board.mainSwitch?.fuseAhead;
  const most = endsOf(around.ahead)?.[1] ?? Number.POSITIVE_INFINITY;
  return {
    ...around,
    ...(fused?.state === 'known' && fused.value < most ? { ahead: fused, aheadName: 'switch-fuse' } : {}),
    serves: (run) => !leavesTails(run),
  };
}

/** What carries several circuits and has a rated current of its own. */
type Carries = 'mainSwitchRating' | 'boardRating' | 'residualRatedCurrent';

/** What stands around a switch or a length of cable that carries several circuits, on one line. */
export interface Around {
  readonly line: Line;
  /** Rating of the overcurrent device ahead, and what that is called. */
  readonly ahead: Fact<Amperes>;
  readonly aheadName: string;
  /** The board, whose circuits it carries. */
  readonly board: Board;
  /** Which of them, where it is not all. */
  serves?(run: Run): boolean;
}

/** A rated current against the device ahead, and against the devices below together, on a part of the sheet. */
export function aheadAndBelow<L extends Carries | 'tailsCapacity'>(
  rules: OverloadRules<L>,
  own: { readonly [K in L]: Known<Amperes> },
  { line, ahead, aheadName, board, serves = () => true }: Around,
  sheet: Sheet,
): { readonly ahead: CheckResult; readonly below: CheckResult } {
  const aheadRating = sheet.given('aheadRating', endOf(ahead, 'most'), aheadName);
  const byAhead = sheet.check(rules.ahead, { ...own, aheadRating } as never);
  const below = board.runs.filter((r) => r.lines.includes(line) && serves(r));
  const parts = below.map((run) => {
    const part = sheet.part(run.id);
    part.given('deviceRating', factOf(run), 'device of the circuit, in full');
    return part;
  });
  const summed = sheet.gather('sum', 'deviceRating', 'servedRating', parts);
  const servedRating = board.complete?.state === 'known' && board.complete.value ? summed : notListed(board);
  return { ahead: byAhead, below: sheet.check(rules.below, { ...own, servedRating } as never) };
}

const factOf = ({ id, device: { rating } }: Run): Fact<Amperes> | Known<Amperes> =>
  rating.state === 'unknown' ? factValue(`rating of the device of ${id}`, rating) : endOf(rating, 'most');

const notListed = ({ id }: Board) =>
  missing({
    kind: 'fact',
    fact: `circuits of ${id}`,
    obtain: 'list every circuit that leaves it, and say that the list is complete',
  });

/**
 * Whether a switch, a board, or a residual current device without overcurrent protection, is protected against overload by the
 * devices around it. A load control that holds the board within its rating is for the maker to accept.
 */
export function switchOverload<L extends Carries>(
  rules: OverloadRules<L>,
  own: { readonly [K in L]: Known<Amperes> },
  declared: Fact<boolean> | undefined,
  around: Around,
  sheet: Sheet,
  subject?: string,
): CheckResult {
  const { ahead, below } = aheadAndBelow(rules, own, around, sheet);
  const rated = Object.values(own)[0] as Known<Amperes>;
  const { control, id } = around.board;
  const held = control !== undefined && !(control.limit.state === 'known' && control.limit.value > (rated as number));
  const says =
    declared !== undefined
      ? factValue(`what the maker of the switch of ${id} declares`, declared)
      : held &&
        missing({
          kind: 'fact',
          fact: `whether the maker accepts ${control.name} as protection of the switch against overload`,
          obtain: 'ask the maker of the board: a load control is no overcurrent device',
        });
  const byMaker = sheet.check(rules.declared, {
    holds: says,
    because: says === true ? 'as the maker declares' : 'no declaration of the maker is named',
  });
  return sheet.check(rules.protected, { results: [ahead, below, byMaker] }, subject);
}

/**
 * The same of the board itself, whose busbars carry what its main switch carries, and may be made for less: a rating that nobody
 * states is not known. What is declared of the switch is declared by the maker of the board.
 */
export function boardOverload(
  rules: OverloadRules<'boardRating'> | undefined,
  around: Around,
  sheet: Sheet,
  subject?: string,
): readonly CheckResult[] {
  const { rating, mainSwitch } = around.board;
  if (!rules) return [];
  const part = sheet.part('Overload of the board');
  const boardRating = part.given('boardRating', lower(rating, 'its rating plate'));
  return [switchOverload(rules, { boardRating }, mainSwitch?.overloadDeclared, around, part, subject)];
}
