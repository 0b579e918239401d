import { formatNumber } from '../../units/index.js';
import { escapeHtml } from '../render-html.js';

/** A scale from a value to a place on the picture. */
export interface Scale {
  /** Place of a value, in user units. */
  (value: number): number;
  /** Values at which the axis is marked. */
  readonly ticks: readonly number[];
  /** Values between the marks that get a faint line. */
  readonly minor: readonly number[];
}

/** A straight scale; marks at round numbers. */
export function linear(from: number, to: number, start: number, end: number): Scale {
  const span = to - from || 1;
  const raw = span / 5;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5, 10].find((m) => m * power >= raw) ?? 10) * power;
  const ticks: number[] = [];
  for (let k = Math.ceil(from / step - 1e-9); k * step <= to + span * 1e-9; k++)
    ticks.push(Number((k * step).toPrecision(10)));
  return Object.assign((v: number) => start + ((v - from) / span) * (end - start), { ticks, minor: [] });
}

/** A logarithmic scale; marks at powers of ten. Both ends must be above zero. */
export function logarithmic(from: number, to: number, start: number, end: number): Scale {
  const [a, b] = [Math.log10(from), Math.log10(to)];
  const ticks: number[] = [];
  const minor: number[] = [];
  for (let p = Math.floor(a); p <= Math.ceil(b); p++) {
    for (let m = 1; m < 10; m++) {
      const v = Number((m * 10 ** p).toPrecision(10));
      if (v < from * (1 - 1e-9) || v > to * (1 + 1e-9)) continue;
      (m === 1 ? ticks : minor).push(v);
    }
  }
  return Object.assign((v: number) => start + ((Math.log10(v) - a) / (b - a || 1)) * (end - start), { ticks, minor });
}

/** A number of the drawing, short: two decimals are finer than any screen. */
export const n = (value: number): string => String(Math.round(value * 100) / 100);

/** Points as a path. */
export const path = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], i) => `${i ? 'L' : 'M'}${n(x)} ${n(y)}`).join('');

/** A text of the drawing. */
export const text = (x: number, y: number, words: string, more = ''): string =>
  `<text x="${n(x)}" y="${n(y)}" ${more}>${escapeHtml(words)}</text>`;

/** Width of a picture, user units: about that of a telephone, so that its texts stay as large as they are drawn. */
export const WIDTH = 360;
/** A text about its middle, and one that ends at its place. */
export const MIDDLE = 'text-anchor="middle"';
export const END = 'text-anchor="end"';

/** Breaks words into lines of at most so many characters, the later ones indented. */
export function wrapped(words: string, most = 54): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words.split(/\s+/)) {
    if (line !== '' && `${line} ${word}`.length > most) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  const all = [...lines, line].map((l) => (l.length > most ? `${l.slice(0, most - 1)}…` : l));
  return all.map((l, i) => (i === 0 ? l : `\u00a0\u00a0\u00a0${l}`));
}

/** Ways to tell series apart without colour. */
export const strokes = ['', '7 4', '2 3', '10 3 2 3', '1 4', '12 5', '5 2 1 2 1 2'] as const;
/** Fills that stay apart in greyscale: each a hatch of its own. */
export const hatches: readonly string[] = [
  '<path d="M0 8L8 0" stroke="currentColor" stroke-width="1"/>',
  '<path d="M0 0L8 8" stroke="currentColor" stroke-width="1"/>',
  '<circle cx="4" cy="4" r="1.2" fill="currentColor"/>',
  '<path d="M0 4H8" stroke="currentColor" stroke-width="1"/>',
  '<path d="M4 0V8" stroke="currentColor" stroke-width="1"/>',
  '<path d="M0 4H8M4 0V8" stroke="currentColor" stroke-width=".7"/>',
  '<path d="M0 8L8 0M0 0L8 8" stroke="currentColor" stroke-width=".6"/>',
  '<rect width="8" height="8" fill="currentColor" fill-opacity=".25"/>',
];

/** What every picture has. */
export interface PictureFrame {
  /** Title, also for screen readers. */
  readonly title: string;
  /** What it shows, for screen readers. */
  readonly description: string;
  /** Width and height, user units. */
  readonly width: number;
  readonly height: number;
}

/** A name for ids that is the same for the same title. */
export function slug(title: string): string {
  const letters = title
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60);
  const sum = [...title].reduce((h, c) => Math.imul(h ^ (c.codePointAt(0) ?? 0), 16777619) >>> 0, 2166136261);
  return `${letters || 'picture'}-${sum.toString(36)}`;
}

/** Wraps the inside of a picture: size, title, description, colours for light, dark and paper. */
export function picture(frame: PictureFrame, inside: string): string {
  const id = slug(frame.title);
  // a text keeps clear of what it stands on
  const style =
    '.ow-picture{color:#1b1b1b;background:#fff;font:12px system-ui,sans-serif}.ow-picture text{fill:currentColor;stroke:#fff;stroke-width:4px;stroke-linejoin:round;paint-order:stroke}' +
    '.ow-picture .soft{stroke:currentColor;stroke-opacity:.18;fill:none}.ow-picture .ink{stroke:currentColor;fill:none}.ow-picture .plate{stroke:currentColor;fill:#fff}' +
    '@media (prefers-color-scheme:dark){.ow-picture{color:#e6e6e6;background:#161616}.ow-picture .plate{fill:#161616}.ow-picture text{stroke:#161616}}@media print{.ow-picture{color:#000;background:#fff}.ow-picture .plate{fill:#fff}.ow-picture text{stroke:#fff}}';
  return `<svg xmlns="http://www.w3.org/2000/svg" class="ow-picture" role="img" aria-labelledby="${id}-title ${id}-desc" viewBox="0 0 ${frame.width} ${frame.height}" width="${frame.width}" height="${frame.height}"><title id="${id}-title">${escapeHtml(frame.title)}</title><desc id="${id}-desc">${escapeHtml(frame.description)}</desc><style>${style}</style>${inside}</svg>`;
}

/** The area of a chart inside its margins. */
export interface Area {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Grid, marks and titles of both axes. */
export function axes(
  area: Area,
  x: Scale,
  y: Scale,
  titles: { readonly x: string; readonly y: string },
  write: { x?: (v: number) => string; y?: (v: number) => string } = {},
): string {
  const { left, right, top, bottom } = area;
  const vertical = [...x.minor, ...x.ticks].map((v) => `M${n(x(v))} ${top}V${bottom}`).join('');
  const horizontal = [...y.minor, ...y.ticks].map((v) => `M${left} ${n(y(v))}H${right}`).join('');
  const writeX = write.x ?? ((v: number) => formatNumber(v));
  const writeY = write.y ?? ((v: number) => formatNumber(v));
  return [
    `<path class="soft" d="${vertical}${horizontal}"/>`,
    `<path class="ink" d="M${left} ${top}V${bottom}H${right}"/>`,
    ...x.ticks.map((v) => text(x(v), bottom + 16, writeX(v), 'text-anchor="middle"')),
    ...y.ticks.map((v) => text(left - 6, y(v) + 4, writeY(v), 'text-anchor="end"')),
    text((left + right) / 2, bottom + 34, titles.x, 'text-anchor="middle"'),
    `<text transform="translate(${left - 34} ${n((top + bottom) / 2)}) rotate(-90)" text-anchor="middle">${escapeHtml(titles.y)}</text>`,
  ].join('');
}

/** Title of a picture, in as many lines as it needs, and where the picture begins below it. */
export function headed(title: string): { readonly svg: string; readonly bottom: number } {
  const lines = wrapped(title, 44);
  const svg = lines.map((words, i) => text(8, 18 + 16 * i, words, 'font-weight="600"')).join('');
  return { svg, bottom: 18 + 16 * lines.length };
}

/** A legend below the chart: a sample and words for each series, one below the other. */
export function legend(
  x: number,
  y: number,
  entries: readonly { readonly sample: string; readonly words: string }[],
): { readonly svg: string; readonly height: number } {
  let at = y;
  const svg = entries
    .map(({ sample, words }) => {
      const lines = wrapped(words, 46);
      const here = at;
      at += 16 * lines.length + 3;
      return `<g transform="translate(${n(x)} ${n(here)})">${sample}${lines.map((line, i) => text(36, 4 + 16 * i, line)).join('')}</g>`;
    })
    .join('');
  return { svg, height: at - y };
}

/** Legend sample of a line. */
export const lineSample = (dash: string, width = 2): string =>
  `<path class="ink" d="M0 0H28" stroke-width="${width}"${dash ? ` stroke-dasharray="${dash}"` : ''}/>`;
