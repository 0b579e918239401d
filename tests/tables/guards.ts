import { type Guard, objections, type Printed } from '../../src/core/laws.js';

export * from '../../src/core/laws.js';

const reading = (digits: string): number => Number(digits);

/** Every table that differs from this one by one digit of one cell, with the cell's place. */
export function* slips(
  table: Printed,
): Generator<{ readonly slipped: Printed; readonly row: number; readonly column: number }> {
  for (let row = 0; row < table.rows.length; row++) {
    const cells = table.rows[row] ?? [];
    for (let column = 0; column < cells.length - 1; column++) {
      const value = cells[column + 1];
      if (typeof value !== 'number') continue;
      const text = String(value);
      for (let at = 0; at < text.length; at++) {
        if (text[at] === '.') continue;
        for (const digit of '0123456789') {
          if (digit === text[at]) continue;
          const wrong = reading(text.slice(0, at) + digit + text.slice(at + 1));
          const changed = cells.map((v, i) => (i === column + 1 ? wrong : v));
          yield {
            slipped: { ...table, rows: table.rows.map((r, i) => (i === row ? changed : r)) },
            row,
            column,
          };
        }
      }
    }
  }
}

/** How many one-digit slips the guards notice: the list of their objections is no longer the one of the print. */
export function digitSlipScore(table: Printed, guards: readonly Guard[]): { slips: number; noticed: number } {
  const before = objections(table, guards);
  let [count, noticed] = [0, 0];
  for (const { slipped } of slips(table)) {
    count++;
    const now = objections(slipped, guards);
    if (now.size !== before.size || [...now].some((o) => !before.has(o))) noticed++;
  }
  return { slips: count, noticed };
}
