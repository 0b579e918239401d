import { formatIn } from '../../units/index.js';
import { englishWords, type ReportWords } from '../words/pages.js';
import { MIDDLE, n, picture, text, WIDTH, wrapped } from './picture.js';

/** A section of a route as it is drawn. @inline */
export interface RouteSection {
  readonly name: string;
  /** Length one way, m. */
  readonly length: number;
  /** Depth below the ground, m; above the ground when absent. */
  readonly depth?: number;
  /** Reference method of installation. */
  readonly method?: string;
  readonly outdoors?: boolean;
}

/** What a picture of a route shows. */
export interface RoutePictureInput {
  readonly title: string;
  /** Board that it leaves. */
  readonly from: string;
  /** What it feeds. */
  readonly to: string;
  /** Sections from the board on. */
  readonly sections: readonly RouteSection[];
  /** Words of the picture; English when absent. */
  readonly words?: ReportWords['pictures'];
}

const [LEFT, RIGHT, ABOVE, GROUND, DEEP] = [26, 334, 96, 116, 172];
/** Width that a section gets at least, so that its number has room. */
const LEAST = 26;

/** Where sections begin and end: in proportion to their lengths, the short ones as wide as their number. */
function places(sections: readonly RouteSection[]): readonly (readonly [number, number])[] {
  const room = RIGHT - LEFT - 16;
  const least = Math.min(LEAST, room / Math.max(1, sections.length));
  const total = sections.reduce((sum, s) => sum + s.length, 0) || 1;
  const raw = sections.map((s) => Math.max(least, (s.length / total) * room));
  const over = raw.reduce((a, b) => a + b, 0) - room;
  const spare = raw.reduce((sum, w) => sum + (w - least), 0);
  let at = LEFT + 8;
  return raw.map((w) => {
    const width = spare > 0 ? w - (over * (w - least)) / spare : w;
    const from = at;
    at += width;
    return [from, at] as const;
  });
}

/**
 * The route of a circuit, section by section: lengths in proportion, what lies in the ground below it at its depth.
 * @param input names and sections; lengths and depths in m
 * @returns an SVG as text
 * @example
 * ```ts
 * import { routePicture } from 'ohmwright/report';
 *
 * const svg = routePicture({
 *   title: 'The route',
 *   from: 'board',
 *   to: 'drive',
 *   sections: [{ name: 'garage', length: 7 }, { name: 'drive, ducted', length: 9, depth: 0.6 }],
 * });
 * svg.startsWith('<svg'); // => true
 * ```
 */
export function routePicture({ title, from, to, sections, words: given }: RoutePictureInput): string {
  const { route: say } = given ?? englishWords.pictures;
  const deepest = Math.max(0.1, ...sections.map((s) => s.depth ?? 0));
  const heightOf = ({ depth }: RouteSection): number =>
    depth === undefined ? ABOVE : GROUND + 14 + ((DEEP - GROUND - 20) * depth) / deepest;
  const at = places(sections);
  const line = sections.map((s, i) => {
    const [x0, x1] = at[i] ?? [LEFT, RIGHT];
    const y = heightOf(s);
    return `${i === 0 ? `M${n(x0)} ${n(y)}` : `L${n(x0)} ${n(y)}`}L${n(x1)} ${n(y)}`;
  });
  const anyDeep = sections.some((s) => s.depth !== undefined);
  const marks = sections.map((s, i) => {
    const [x0, x1] = at[i] ?? [LEFT, RIGHT];
    const [x, y] = [(x0 + x1) / 2, heightOf(s)];
    const end = i < sections.length - 1 ? `<path class="ink" d="M${n(x1)} ${n(ABOVE - 5)}v10"/>` : '';
    const depth =
      s.depth === undefined
        ? ''
        : `<path class="ink" stroke-dasharray="2 2" d="M${n(x)} ${GROUND}V${n(y - 9)}"/>${text(x, GROUND - 5, say.deep(formatIn(s.depth, 'm')), MIDDLE)}`;
    return `${s.depth === undefined ? end : ''}${depth}<circle class="plate" cx="${n(x)}" cy="${n(y)}" r="9"/>${text(x, y + 4, String(i + 1), MIDDLE)}`;
  });
  const key = sections.flatMap((s, i) =>
    wrapped(
      [
        `${i + 1}  ${say.section(s.name, formatIn(s.length, 'm'))}`,
        ...(s.depth === undefined ? [] : [say.deep(formatIn(s.depth, 'm'))]),
        ...(s.method === undefined ? [] : [say.method(s.method)]),
        ...(s.outdoors ? [say.outdoors] : []),
      ].join(', '),
    ),
  );
  const base = anyDeep ? DEEP + 14 : GROUND + 12;
  const box = (x: number, words: string, anchor: string) =>
    `<rect class="plate" x="${x - 8}" y="${ABOVE - 14}" width="16" height="28"/>${text(anchor === '' ? x - 8 : x + 8, ABOVE - 26, words, anchor)}`;
  const ground = anyDeep
    ? `<path class="ink" stroke-width="1" d="M${LEFT - 18} ${GROUND}H${RIGHT + 18}"/>${Array.from({ length: 9 }, (_, k) => `<path class="soft" d="M${LEFT + k * 38} ${GROUND}l-7 8"/>`).join('')}${text(LEFT - 16, DEEP + 6, say.ground)}`
    : '';
  const heads = wrapped(title, 46);
  const top = heads.map((words, i) => text(8, 18 + 16 * i, words, 'font-weight="600"')).join('');
  return picture(
    {
      title,
      description: say.about(
        from,
        to,
        sections
          .map((s) =>
            [
              say.section(s.name, formatIn(s.length, 'm')),
              ...(s.depth === undefined ? [] : [say.deep(formatIn(s.depth, 'm'))]),
            ].join(', '),
          )
          .join('; '),
      ),
      width: WIDTH,
      height: base + 10 + 16 * key.length,
    },
    `${top}${ground}<path class="ink" stroke-width="2.5" d="${line.join('')}"/>${box(LEFT, from, '')}${box(RIGHT, to, 'text-anchor="end"')}${marks.join('')}${key.map((words, i) => text(8, base + 14 + 16 * i, words)).join('')}`,
  );
}
