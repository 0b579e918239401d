import { formatIn } from '../../units/index.js';
import { englishWords, type ReportWords } from '../words/pages.js';
import { END, headed, linear, MIDDLE, n, picture, text, WIDTH, wrapped } from './picture.js';

/** What a picture of demand by method shows. */
export interface DemandPictureInput {
  readonly title: string;
  /** A bar for each method, A; the one that governs is marked. */
  readonly bars: readonly {
    readonly name: string;
    readonly current: number;
    /** The demand that a load limiter cuts, A: what there would be without it. */
    readonly uncut?: number;
    readonly governs?: boolean;
  }[];
  /** Limits that are marked, A. */
  readonly limits: readonly { readonly name: string; readonly current: number }[];
  /** Words of the picture; English when absent. */
  readonly words?: ReportWords['pictures'];
}

/**
 * Maximum demand by each method, before and after a load limiter, against the limits of the supply.
 * @param input bars and limits, A
 * @returns an SVG as text
 * @example
 * ```ts
 * import { demandPicture } from 'ohmwright/report';
 *
 * const svg = demandPicture({
 *   title: 'Demand',
 *   bars: [{ name: 'by allowances', current: 80, uncut: 102, governs: true }],
 *   limits: [{ name: 'service fuse', current: 80 }],
 * });
 * svg.startsWith('<svg'); // => true
 * ```
 */
export function demandPicture(input: DemandPictureInput): string {
  const { demand: say } = input.words ?? englishWords.pictures;
  const head = headed(input.title);
  // the largest on top: no line then runs through the words of another
  const marked = [...new Set(input.limits.map((l) => l.current))]
    .sort((a, b) => b - a)
    .map((current) => ({
      current,
      words: say.limit(
        input.limits.flatMap((l) => (l.current === current ? [l.name] : [])),
        formatIn(current, 'A'),
      ),
    }));
  const [left, right] = [10, 350];
  const top = head.bottom + 8 + 16 * marked.length;
  const most = Math.max(
    1,
    ...input.bars.map((b) => Math.max(b.current, b.uncut ?? 0)),
    ...input.limits.map((l) => l.current),
  );
  const x = linear(0, most * 1.15, left, right);
  let y = top + 4;
  const bars = input.bars.map((b) => {
    const lines = wrapped(b.governs ? say.governs(b.name) : b.name, 52);
    const words = lines.map((line, i) => text(left + 4, y + 13 + 15 * i, line)).join('');
    const at = y + 15 * lines.length + 4;
    y = at + 30;
    const cut = b.uncut !== undefined && b.uncut > b.current ? b.uncut : undefined;
    const over =
      cut === undefined
        ? text(x(b.current) + 5, at + 14, formatIn(b.current, 'A'))
        : `<rect x="${n(x(b.current))}" y="${at}" width="${n(x(cut) - x(b.current))}" height="19" fill="none" stroke="currentColor" stroke-dasharray="3 2"/>${text(x(b.current) - 5, at + 14, formatIn(b.current, 'A'), END)}${text(x(cut) + 4, at + 14, formatIn(cut, 'A'))}`;
    return `${words}<rect x="${left}" y="${at}" width="${n(x(b.current) - left)}" height="19" fill="currentColor" fill-opacity="${b.governs ? 0.45 : 0.18}" stroke="currentColor"/>${over}`;
  });
  const bottom = y + 2;
  const limits = marked.map(({ current, words }, k) => {
    const at = top - 6 - 16 * (marked.length - 1 - k);
    const width = words.length * 6.6;
    const beyondMiddle = x(current) > (left + right) / 2;
    // where there is no room on its side the text begins at the edge
    const place = !beyondMiddle ? x(current) + 5 : Math.max(2, x(current) - 5 - width);
    return `<path class="ink" stroke-width="1.5" stroke-dasharray="6 3" d="M${n(x(current))} ${at - 10}V${bottom}"/>${text(place, at, words)}`;
  });
  const axis = `<path class="ink" d="M${left} ${top}V${bottom}H${right}"/>${x.ticks.map((v) => text(x(v), bottom + 16, String(v), MIDDLE)).join('')}${text((left + right) / 2, bottom + 34, say.axis, MIDDLE)}`;
  const anyCut = input.bars.some((b) => b.uncut !== undefined && b.uncut > b.current);
  const note = anyCut ? text(left, bottom + 54, say.cut) : '';
  return picture(
    {
      title: input.title,
      description: say.about(
        input.bars
          .map((b) =>
            say.bar(b.name, formatIn(b.current, 'A'), b.uncut === undefined ? undefined : formatIn(b.uncut, 'A')),
          )
          .join(', '),
        input.limits.map((l) => say.limit([l.name], formatIn(l.current, 'A'))).join(', '),
      ),
      width: WIDTH,
      height: bottom + (anyCut ? 62 : 42),
    },
    `${head.svg}${axis}${limits.join('')}${bars.join('')}${note}`,
  );
}
