import { formatIn } from '../../units/index.js';
import { englishWords, type ReportWords } from '../words/pages.js';
import { axes, hatches, headed, legend, linear, lineSample, n, picture, slug, WIDTH } from './picture.js';

/** What a picture of the load of a night shows. */
export interface NightLoadInput {
  readonly title: string;
  /** Minutes after midnight of the first day at which each step begins. */
  readonly minutes: readonly number[];
  /** Bands from the bottom up: the house, then each vehicle; A at each step. */
  readonly bands: readonly { readonly name: string; readonly current: readonly number[] }[];
  /** The limit at each step, A, or one for all. */
  readonly limit: number | readonly number[];
  /** Words of the picture; English when absent. */
  readonly words?: ReportWords['pictures'];
}

/** Time of day, `hh:mm`, of a minute after midnight of the first day. */
export const clock = (minute: number): string =>
  `${String(Math.floor(minute / 60) % 24).padStart(2, '0')}:${String(Math.round(minute) % 60).padStart(2, '0')}`;

/** A band between two courses, in pieces where it has any height; steps of the same height are drawn as one. */
function bandPath(
  low: readonly number[],
  high: readonly number[],
  begin: (i: number) => number,
  end: (i: number) => number,
  y: (value: number) => number,
): string {
  const at = (values: readonly number[], i: number): number => values[i] ?? 0;
  const pieces: string[] = [];
  let [up, down]: [string[], string[]] = [[], []];
  const close = () => {
    if (up.length > 0) pieces.push(`M${up.join('L')}L${down.reverse().join('L')}Z`);
    [up, down] = [[], []];
  };
  for (let i = 0; i < low.length; ) {
    const first = i;
    while (i < low.length && at(low, i) === at(low, first) && at(high, i) === at(high, first)) i++;
    const [x0, x1] = [n(begin(first)), n(end(i - 1))];
    if (at(high, first) <= at(low, first)) close();
    else {
      up.push(`${x0} ${n(y(at(high, first)))}L${x1} ${n(y(at(high, first)))}`);
      down.push(`${x1} ${n(y(at(low, first)))}L${x0} ${n(y(at(low, first)))}`);
    }
  }
  close();
  return pieces.join('');
}

/**
 * Load of the night stacked by vehicle, against the limit.
 * @param input steps in minutes, bands and limit in A
 * @returns an SVG as text
 * @example
 * ```ts
 * import { nightLoadPicture } from 'ohmwright/report';
 *
 * const svg = nightLoadPicture({
 *   title: 'The night',
 *   minutes: [0, 30],
 *   bands: [{ name: 'house', current: [8, 6] }],
 *   limit: 80,
 * });
 * svg.startsWith('<svg'); // => true
 * ```
 */
export function nightLoadPicture(input: NightLoadInput): string {
  const { night: say } = input.words ?? englishWords.pictures;
  const head = headed(input.title);
  const area = { left: 46, right: 346, top: head.bottom + 8, bottom: head.bottom + 238 };
  const steps = input.minutes.length;
  const width = steps > 1 ? (input.minutes[1] ?? 0) - (input.minutes[0] ?? 0) : 1;
  const [from, to] = [input.minutes[0] ?? 0, (input.minutes.at(-1) ?? 0) + width];
  const limitAt = (i: number): number => (typeof input.limit === 'number' ? input.limit : (input.limit[i] ?? 0));
  const sums = input.minutes.map((_, i) => input.bands.reduce((a, b) => a + Math.max(0, b.current[i] ?? 0), 0));
  const most = Math.max(1, ...sums, ...input.minutes.map((_, i) => limitAt(i)));
  const hour = 60 * Math.max(1, Math.ceil((to - from) / 60 / 6));
  const hours = Array.from(
    { length: Math.floor(to / hour) - Math.ceil(from / hour) + 1 },
    (_, k) => (Math.ceil(from / hour) + k) * hour,
  );
  const x = Object.assign(linear(from, to, area.left, area.right), { ticks: hours });
  const y = linear(0, most * 1.08, area.bottom, area.top);
  const id = slug(input.title);
  const end = (i: number): number => x((input.minutes[i] ?? 0) + width);
  const floor = new Array<number>(steps).fill(0);
  const bands = input.bands.map((b, k) => {
    const low = [...floor];
    for (let i = 0; i < steps; i++) floor[i] = (floor[i] ?? 0) + Math.max(0, b.current[i] ?? 0);
    return `<path d="${bandPath(low, floor, (i) => x(input.minutes[i] ?? 0), end, y)}" fill="${k === 0 ? 'currentColor' : `url(#${id}-h${(k - 1) % hatches.length})`}"${k === 0 ? ' fill-opacity=".3"' : ''} stroke="currentColor" stroke-width=".6"/>`;
  });
  const limit = input.minutes
    .flatMap((m, i) => {
      const here = limitAt(i);
      const same = i > 0 && i < steps - 1 && limitAt(i - 1) === here && limitAt(i + 1) === here;
      return same ? [] : [`${i ? 'L' : 'M'}${n(x(m))} ${n(y(here))}L${n(end(i))} ${n(y(here))}`];
    })
    .join('');
  const defs = hatches
    .map((h, k) => `<pattern id="${id}-h${k}" width="8" height="8" patternUnits="userSpaceOnUse">${h}</pattern>`)
    .join('');
  const sample = (k: number) =>
    `<rect y="-7" width="28" height="13" fill="${k === 0 ? 'currentColor' : `url(#${id}-h${(k - 1) % hatches.length})`}"${k === 0 ? ' fill-opacity=".3"' : ''} stroke="currentColor" stroke-width=".6"/>`;
  const key = legend(8, area.bottom + 56, [
    ...input.bands.map((b, k) => ({ sample: sample(k), words: b.name })),
    { sample: lineSample('8 3', 2.5), words: say.limit },
  ]);
  return picture(
    {
      title: input.title,
      description: say.about(
        clock(from),
        clock(to),
        formatIn(Math.max(...sums, 0), 'A'),
        formatIn(Math.max(...input.minutes.map((_, i) => limitAt(i)), 0), 'A'),
        input.bands.map((b) => b.name).join(', '),
      ),
      width: WIDTH,
      height: area.bottom + 52 + key.height,
    },
    `<defs>${defs}</defs>${head.svg}${axes(area, x, y, { x: say.time, y: say.current }, { x: clock })}${bands.join('')}<path class="ink" stroke-width="2.5" stroke-dasharray="8 3" d="${limit}"/>${key.svg}`,
  );
}
