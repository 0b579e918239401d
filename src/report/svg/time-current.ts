import { formatIn, formatNumber } from '../../units/index.js';
import { englishWords, type ReportWords } from '../words/pages.js';
import {
  axes,
  END,
  headed,
  legend,
  lineSample,
  logarithmic,
  n,
  path,
  picture,
  strokes,
  text,
  WIDTH,
} from './picture.js';

/** A curve, or a band between two curves, on a time-current picture. @inline */
export interface TimeCurrentSeries {
  /** What the legend says. */
  readonly name: string;
  /** Points: current in A, time in s. For a band, its faster edge. */
  readonly points: readonly (readonly [current: number, time: number])[];
  /** The slower edge of a band: between the gates of a standard there is no one curve. */
  readonly slower?: readonly (readonly [current: number, time: number])[];
}

/** What a time-current picture shows. */
export interface TimeCurrentInput {
  readonly title: string;
  /** Curves and bands. */
  readonly series: readonly TimeCurrentSeries[];
  /** Currents that are marked, such as the earth fault current. */
  readonly marks: readonly { readonly name: string; readonly current: number }[];
  /** Times that are marked, such as the required disconnection time. */
  readonly times?: readonly { readonly name: string; readonly time: number }[];
  /** Words of the picture; English when absent. */
  readonly words?: ReportWords['pictures'];
}

/** A mark of an axis, large ones as a power of ten. */
const power = (v: number): string =>
  v < 10_000
    ? formatNumber(v)
    : `10${[...String(Math.round(Math.log10(v)))].map((d) => '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(d)]).join('')}`;

/**
 * Time-current curves with the fault current marked, both axes logarithmic.
 * @param input curves, bands and marks; currents in A, times in s, all above zero
 * @returns an SVG as text
 * @example
 * ```ts
 * import { timeCurrentPicture } from 'ohmwright/report';
 *
 * const svg = timeCurrentPicture({
 *   title: 'The fuse',
 *   series: [{ name: 'fuse', points: [[100, 10], [400, 0.1]] }],
 *   marks: [{ name: 'earth fault current', current: 300 }],
 *   times: [{ name: 'required', time: 0.4 }],
 * });
 * svg.startsWith('<svg'); // => true
 * ```
 */
export function timeCurrentPicture(input: TimeCurrentInput): string {
  const { times: say } = input.words ?? englishWords.pictures;
  const points = input.series.flatMap((s) => [...s.points, ...(s.slower ?? [])]).filter(([i, t]) => i > 0 && t > 0);
  const currents = [...points.map((p) => p[0]), ...input.marks.map((m) => m.current)].filter((v) => v > 0);
  const times = [...points.map((p) => p[1]), ...(input.times ?? []).map((t) => t.time)].filter((v) => v > 0);
  const decade = (v: number, up: boolean) => 10 ** (up ? Math.ceil(Math.log10(v)) : Math.floor(Math.log10(v)));
  const head = headed(input.title);
  const area = { left: 46, right: 346, top: head.bottom + 8, bottom: head.bottom + 328 };
  const x = logarithmic(
    decade(Math.min(...currents, 10), false),
    decade(Math.max(...currents, 100), true),
    area.left,
    area.right,
  );
  const y = logarithmic(
    decade(Math.min(...times, 0.1), false),
    decade(Math.max(...times, 100), true),
    area.bottom,
    area.top,
  );
  const place = ([i, t]: readonly [number, number]) => [x(i), y(t)] as const;
  const drawn = input.series.map((s, k) => {
    const dash = strokes[k % strokes.length] ?? '';
    const stroke = `stroke-width="2"${dash ? ` stroke-dasharray="${dash}"` : ''}`;
    if (!s.slower) return `<path class="ink" ${stroke} d="${path(s.points.map(place))}"/>`;
    const outline = path([...s.points, ...[...s.slower].reverse()].map(place));
    return `<path d="${outline}Z" fill="currentColor" fill-opacity="${n(0.1 + 0.06 * (k % 3))}"/><path class="ink" ${stroke} d="${path(s.points.map(place))}"/><path class="ink" ${stroke} d="${path(s.slower.map(place))}"/>`;
  });
  const marks = input.marks.map((m, k) => {
    const right = x(m.current) > (area.left + area.right) / 2;
    return `<path class="ink" stroke-width="1.5" d="M${n(x(m.current))} ${area.top}V${area.bottom}"/>${text(x(m.current) + (right ? -4 : 4), area.top + 14 + 17 * k, say.mark(m.name, formatIn(m.current, 'A')), right ? END : '')}`;
  });
  const limits = (input.times ?? []).map(
    (t) =>
      `<path class="ink" stroke-width="1" stroke-dasharray="3 3" d="M${area.left} ${n(y(t.time))}H${area.right}"/>${text(area.left + 4, y(t.time) - 5, say.mark(t.name, formatIn(t.time, 's')))}`,
  );
  const key = legend(
    8,
    area.bottom + 56,
    input.series.map((s, k) => ({ sample: lineSample(strokes[k % strokes.length] ?? ''), words: s.name })),
  );
  return picture(
    {
      title: input.title,
      description: say.about(
        input.series.map((s) => s.name).join(', '),
        input.marks.map((m) => say.mark(m.name, formatIn(m.current, 'A'))).join(', '),
      ),
      width: WIDTH,
      height: area.bottom + 52 + key.height,
    },
    `${head.svg}${axes(area, x, y, { x: say.current, y: say.time }, { x: power, y: power })}${drawn.join('')}${marks.join('')}${limits.join('')}${key.svg}`,
  );
}
