import { formatIn } from '../../units/index.js';
import { escapeHtml } from '../render-html.js';
import { linear, n, picture, text } from './picture.js';

/** What a picture of demand by method shows. */
export interface DemandPictureInput {
  /** Title. */
  readonly title: string;
  /** A bar for each method, A; the one that governs is marked. */
  readonly bars: readonly { readonly name: string; readonly current: number; readonly governs?: boolean }[];
  /** Limits that are marked, A. */
  readonly limits: readonly { readonly name: string; readonly current: number }[];
}

/**
 * Maximum demand by each method, against the limits of the supply.
 * @param input bars and limits, A
 * @returns an SVG as text
 */
export function demandPicture(input: DemandPictureInput): string {
  const [left, right, top] = [250, 690, 60];
  const bottom = top + input.bars.length * 34;
  const most = Math.max(1, ...input.bars.map((b) => b.current), ...input.limits.map((l) => l.current));
  const x = linear(0, most * 1.1, left, right);
  const bars = input.bars.map((b, k) => {
    const y = top + k * 34 + 5;
    return `<rect x="${left}" y="${y}" width="${n(x(b.current) - left)}" height="22" fill="currentColor" fill-opacity="${b.governs ? 0.55 : 0.22}" stroke="currentColor"/>${text(left - 8, y + 15, b.governs ? `${b.name} (governs)` : b.name, 'text-anchor="end"')}${text(x(b.current) + 5, y + 15, formatIn(b.current, 'A'))}`;
  });
  const limits = input.limits.map(
    (l, k) =>
      `<path class="ink" stroke-width="1.5" stroke-dasharray="6 3" d="M${n(x(l.current))} ${top - 4}V${bottom}"/>${text(x(l.current), top - 10 - 14 * (k % 2), `${l.name} ${formatIn(l.current, 'A')}`, 'text-anchor="middle"')}`,
  );
  const axis = `<path class="ink" d="M${left} ${top}V${bottom}H${right}"/>${x.ticks.map((v) => text(x(v), bottom + 16, String(v), 'text-anchor="middle"')).join('')}${text((left + right) / 2, bottom + 34, 'maximum demand per line, A', 'text-anchor="middle"')}`;
  return picture(
    {
      title: input.title,
      description: `Maximum demand by method: ${input.bars.map((b) => `${b.name} ${formatIn(b.current, 'A')}`).join(', ')}; limits: ${input.limits.map((l) => `${l.name} ${formatIn(l.current, 'A')}`).join(', ')}.`,
      width: 740,
      height: bottom + 46,
    },
    `<text x="16" y="22" font-weight="600">${escapeHtml(input.title)}</text>${axis}${bars.join('')}${limits.join('')}`,
  );
}
