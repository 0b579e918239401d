import { formatIn } from '../../units/index.js';
import { escapeHtml } from '../render-html.js';
import { linear, n, picture, text } from './picture.js';

/** What a picture of demand by method shows. */
export interface DemandPictureInput {
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
 * @example
 * ```ts
 * import { demandPicture } from 'ohmwright/report';
 *
 * const svg = demandPicture({
 *   title: 'Demand',
 *   bars: [{ name: 'by allowances', current: 62, governs: true }],
 *   limits: [{ name: 'service fuse', current: 80 }],
 * });
 * svg.startsWith('<svg'); // => true
 * ```
 */
export function demandPicture(input: DemandPictureInput): string {
  // the largest on top: no line then runs through the words of another
  const marked = [...new Set(input.limits.map((l) => l.current))]
    .sort((a, b) => b - a)
    .map((current) => ({
      current,
      words: input.limits.flatMap((l) => (l.current === current ? [l.name] : [])).join(', '),
    }));
  const [left, right, row] = [40, 690, 42];
  const top = 44 + 15 * marked.length;
  const bottom = top + input.bars.length * row;
  const most = Math.max(1, ...input.bars.map((b) => b.current), ...input.limits.map((l) => l.current));
  const x = linear(0, most * 1.1, left, right);
  const bars = input.bars.map((b, k) => {
    const y = top + k * row + 18;
    return `<rect x="${left}" y="${y}" width="${n(x(b.current) - left)}" height="19" fill="currentColor" fill-opacity="${b.governs ? 0.55 : 0.22}" stroke="currentColor"/>${text(left + 4, y - 4, b.governs ? `${b.name} (governs)` : b.name)}${text(x(b.current) + 5, y + 14, formatIn(b.current, 'A'))}`;
  });
  const limits = marked.map(({ current, words }, k) => {
    const y = top - 6 - 15 * (marked.length - 1 - k);
    const beyondMiddle = x(current) > (left + right) / 2;
    return `<path class="ink" stroke-width="1.5" stroke-dasharray="6 3" d="M${n(x(current))} ${y - 10}V${bottom}"/>${text(x(current) + (beyondMiddle ? -5 : 5), y, `${words} ${formatIn(current, 'A')}`, beyondMiddle ? 'text-anchor="end"' : '')}`;
  });
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
