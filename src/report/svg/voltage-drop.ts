import { formatIn } from '../../units/index.js';
import { englishWords, type ReportWords } from '../words/pages.js';
import { axes, END, headed, linear, MIDDLE, n, path, picture, text, WIDTH, wrapped } from './picture.js';

/** What a picture of the voltage drop along a route shows. */
export interface VoltageDropInput {
  readonly title: string;
  /** From the origin on: distance in m, voltage drop in V. */
  readonly points: readonly (readonly [distance: number, drop: number])[];
  /** Largest permitted drop from the origin, V; not drawn where it is not known. */
  readonly limit?: number;
  /** Where one section ends and the next begins, m. */
  readonly sections: readonly { readonly name: string; readonly end: number }[];
  /** Words of the picture; English when absent. */
  readonly words?: ReportWords['pictures'];
}

/**
 * Voltage drop along the route from the origin to the point, against its limit.
 * @param input points, limit and sections; distances in m, voltages in V
 * @returns an SVG as text
 * @example
 * ```ts
 * import { voltageDropPicture } from 'ohmwright/report';
 *
 * const svg = voltageDropPicture({
 *   title: 'The route',
 *   points: [[0, 0], [25, 5.8]],
 *   limit: 11.5,
 *   sections: [{ name: 'hall', end: 25 }],
 * });
 * svg.startsWith('<svg'); // => true
 * ```
 */
export function voltageDropPicture({ title, points, limit, sections, words: given }: VoltageDropInput): string {
  const { drop: say } = given ?? englishWords.pictures;
  const head = headed(title);
  const area = { left: 46, right: 346, top: head.bottom + 22, bottom: head.bottom + 208 };
  const last = points.at(-1) ?? ([0, 0] as const);
  const end = Math.max(1, ...points.map((p) => p[0]), ...sections.map((s) => s.end));
  const x = linear(0, end, area.left, area.right);
  const y = linear(0, Math.max(1, limit ?? 0, ...points.map((p) => p[1])) * 1.12, area.bottom, area.top);
  const bound =
    limit === undefined
      ? ''
      : `<path class="ink" stroke-width="1.5" stroke-dasharray="6 3" d="M${area.left} ${n(y(limit))}H${area.right}"/>${text(area.left + 6, y(limit) + 15, say.limit(formatIn(limit, 'V')))}`;
  let from = 0;
  const marks = sections.map((s, k) => {
    const middle = (x(from) + x(s.end)) / 2;
    from = s.end;
    return `<path class="soft" stroke-width="2" d="M${n(x(s.end))} ${area.top}V${area.bottom}"/>${text(middle, area.top - 5, String(k + 1), MIDDLE)}`;
  });
  const key = sections.flatMap((s, k) => wrapped(`${k + 1}  ${say.section(s.name, formatIn(s.end, 'm'))}`));
  const foot = area.bottom + 54;
  return picture(
    {
      title,
      description: say.about(formatIn(last[1], 'V'), limit === undefined ? undefined : formatIn(limit, 'V')),
      width: WIDTH,
      height: foot + 16 * key.length,
    },
    `${head.svg}${axes(area, x, y, { x: say.distance, y: say.drop })}${marks.join('')}${bound}<path class="ink" stroke-width="2.5" d="${path(points.map(([d, v]) => [x(d), y(v)] as const))}"/>${text(x(last[0]) - 4, y(last[1]) - 8, formatIn(last[1], 'V'), END)}${key.map((words, i) => text(8, foot + 16 * i, words)).join('')}`,
  );
}
