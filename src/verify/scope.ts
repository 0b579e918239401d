import type { Gap } from '../core/index.js';

/** The latest value of a role or an axis, and whether a line has used it. */
export interface Cell {
  /** What was written: a number, a label, or why there is none. */
  readonly value: number | string | readonly Gap[];
  /** Place and words of the line, for a problem that names it. */
  readonly line: number;
  /** Whether it was taken down rather than worked out, so that some line has to use it. */
  readonly mustServe: boolean;
  /** Whether a later line has used it. */
  used: boolean;
}

/** Values that a line of a part can see: those of the part, then those that stood above it when it was opened. */
export class Scope {
  private readonly own = new Map<string, Cell>();
  private readonly seen: ReadonlyMap<string, Cell>;
  private readonly cells: Cell[] = [];

  constructor(seen: ReadonlyMap<string, Cell> = new Map()) {
    this.seen = seen;
  }

  /** Takes down a value under a role, or a label under `label:` and its axis. */
  set(name: string, cell: Cell): void {
    this.own.set(name, cell);
    this.cells.push(cell);
  }

  /** The latest value, from here or from above. */
  latest(name: string): Cell | undefined {
    return this.own.get(name) ?? this.seen.get(name);
  }

  /** The latest value of this part itself. */
  ownLatest(name: string): Cell | undefined {
    return this.own.get(name);
  }

  /** What a part that is opened now sees. */
  view(): ReadonlyMap<string, Cell> {
    return new Map([...this.seen, ...this.own]);
  }

  /** Everything that is seen, for a search by value. */
  all(): readonly Cell[] {
    return [...this.seen.values(), ...this.cells];
  }

  /** Values that were taken down here and that no line has used. */
  idle(): readonly Cell[] {
    return this.cells.filter((c) => c.mustServe && !c.used);
  }
}

/** The name under which the labels of an axis stand. */
export const labelName = (axis: string): string => `label:${axis}`;
