/** Graphical symbols after IEC 60617, drawn from left to right on a line at height y, 30 units long where nothing else is said. */
import { n, text } from './picture.js';

const ink = (d: string, more = ''): string => `<path class="ink" ${more}d="${d}"/>`;

/** Fuse: a rectangle with the line through it. */
export const fuse = (x: number, y: number): string =>
  `${ink(`M${n(x)} ${n(y)}H${n(x + 30)}`)}<rect class="ink" x="${n(x + 6)}" y="${n(y - 5)}" width="18" height="10"/>`;
/** Circuit-breaker: an open contact with a cross at its fixed end. */
export const breaker = (x: number, y: number): string =>
  ink(
    `M${n(x)} ${n(y)}H${n(x + 8)}M${n(x + 5)} ${n(y - 3)}L${n(x + 11)} ${n(y + 3)}M${n(x + 5)} ${n(y + 3)}L${n(x + 11)} ${n(y - 3)}M${n(x + 24)} ${n(y)}L${n(x + 9)} ${n(y - 8)}M${n(x + 24)} ${n(y)}H${n(x + 30)}`,
  );
/** Switch-disconnector: an open contact with a bar at its fixed end. */
export const disconnector = (x: number, y: number): string =>
  ink(
    `M${n(x)} ${n(y)}H${n(x + 8)}M${n(x + 8)} ${n(y - 4)}V${n(y + 4)}M${n(x + 24)} ${n(y)}L${n(x + 9)} ${n(y - 8)}M${n(x + 24)} ${n(y)}H${n(x + 30)}`,
  );
/** Residual current: a ring around the line. */
export const residual = (x: number, y: number): string =>
  `<ellipse class="ink" cx="${n(x)}" cy="${n(y)}" rx="4" ry="8"/>`;
/** Residual current around a busbar. */
export const bar = (x: number, y: number, ringed: boolean): string =>
  ringed ? `<ellipse class="ink" cx="${n(x)}" cy="${n(y)}" rx="8" ry="4"/>` : '';
/** Earth, below its place. */
export const earth = (x: number, y: number): string =>
  ink(`M${n(x)} ${n(y)}v8M${n(x - 9)} ${n(y + 8)}h18M${n(x - 6)} ${n(y + 12)}h12M${n(x - 3)} ${n(y + 16)}h6`);
/** Meter, below its place: a box with its unit. */
export const meter = (x: number, y: number): string =>
  `${ink(`M${n(x)} ${n(y)}v6M${n(x)} ${n(y + 28)}v6`)}<rect class="ink" x="${n(x - 14)}" y="${n(y + 6)}" width="28" height="22"/>${text(x, y + 21, 'Wh', 'text-anchor="middle" font-size="10.5"')}`;
/** Socket-outlet of a charge point: half circle with its bar, at the end of a line. */
export const outlet = (x: number, y: number): string =>
  ink(`M${n(x)} ${n(y - 9)}V${n(y + 9)}M${n(x + 10)} ${n(y - 9)}A9 9 0 0 0 ${n(x + 10)} ${n(y + 9)}`);
/** A load: an arrow at the end of a line. */
export const loadEnd = (x: number, y: number): string =>
  ink(`M${n(x)} ${n(y - 4)}L${n(x + 9)} ${n(y)}L${n(x)} ${n(y + 4)}`);
/** A ring circuit: out by one leg and back by the other, to the same device 18 units before. */
export const ring = (x: number, y: number, end: number): string =>
  ink(
    `M${n(x - 18)} ${n(y)}H${n(x)}M${n(x)} ${n(y)}L${n(x + 8)} ${n(y - 8)}H${n(end - 4)}A8 8 0 0 1 ${n(end - 4)} ${n(y + 8)}H${n(x + 8)}L${n(x)} ${n(y)}`,
  );
/** Where both legs of a ring leave their device, 18 units before, 8 units above and below its line. */
export const fork = (x: number, y: number): string =>
  ink(`M${n(x - 18)} ${n(y)}H${n(x)}M${n(x + 8)} ${n(y - 8)}L${n(x)} ${n(y)}L${n(x + 8)} ${n(y + 8)}`);
/** One stroke across a line for each line conductor; none for a single one. */
export const strokes = (x: number, y: number, count: number, upright = false): string =>
  count > 1
    ? ink(
        Array.from({ length: count }, (_, i) =>
          upright ? `M${n(x - 4)} ${n(y - 4 * i + 3)}l8 -6` : `M${n(x + 4 * i - 3)} ${n(y + 4)}l6 -8`,
        ).join(''),
      )
    : '';
