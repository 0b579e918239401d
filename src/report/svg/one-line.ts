import type { Board, ChargePoint, Installation, Load, OvercurrentDevice, Run } from '../../installation/index.js';
import { runNames } from '../../installation/index.js';
import { isFuse, kindWords, sizeWords } from '../../installation/marking.js';
import { formatIn } from '../../units/index.js';
import { n, picture, text } from './picture.js';

/** Room for one outgoing run, user units. */
const COLUMN = 150;
const ROW = 190;

const amps = (d: OvercurrentDevice): string =>
  d.rating.state === 'known'
    ? formatIn(d.rating.value, 'A')
    : d.rating.state === 'between'
      ? `${d.rating.least} to ${d.rating.most} A`
      : '? A';
const deviceKind = (d: OvercurrentDevice): string => (d.kind.state === 'known' ? kindWords(d.kind.value) : 'kind ?');
const cableWords = (r: Run): string => {
  const size = sizeWords(r.cable);
  // of an existing circuit the number of cores is no more known than the size
  return size === undefined && r.existing ? 'cable ?' : `${r.cable.cores} x ${size ?? '?'}`;
};

// Graphical symbols after IEC 60617, drawn on a vertical line from y to y + 30.
/** Fuse: a rectangle with the line through it. */
const fuse = (x: number, y: number): string =>
  `<path class="ink" d="M${x} ${y}V${y + 30}"/><rect class="ink" x="${x - 5}" y="${y + 6}" width="10" height="18"/>`;
/** Circuit-breaker: an open contact with a cross at its fixed end. */
const breaker = (x: number, y: number): string =>
  `<path class="ink" d="M${x} ${y}V${y + 8}M${x - 3} ${y + 5}L${x + 3} ${y + 11}M${x + 3} ${y + 5}L${x - 3} ${y + 11}M${x} ${y + 24}L${x - 8} ${y + 9}M${x} ${y + 24}V${y + 30}"/>`;
/** Switch-disconnector: an open contact with a bar at its fixed end. */
const disconnector = (x: number, y: number): string =>
  `<path class="ink" d="M${x} ${y}V${y + 8}M${x - 4} ${y + 8}H${x + 4}M${x} ${y + 24}L${x - 8} ${y + 9}M${x} ${y + 24}V${y + 30}"/>`;
/** Residual current: a ring around the line. */
const residual = (x: number, y: number): string =>
  `<ellipse class="ink" cx="${x}" cy="${y}" rx="8" ry="4"/><path class="ink" d="M${x - 8} ${y}H${x - 18}V${y - 24}H${x - 6}" stroke-dasharray="2 2"/>`;
/** Earth. */
const earth = (x: number, y: number): string =>
  `<path class="ink" d="M${x} ${y}V${y + 10}M${x - 9} ${y + 10}H${x + 9}M${x - 6} ${y + 14}H${x + 6}M${x - 3} ${y + 18}H${x + 3}"/>`;
/** Meter: a box with its unit. */
const meter = (x: number, y: number): string =>
  `<path class="ink" d="M${x} ${y}V${y + 6}M${x} ${y + 28}V${y + 34}"/><rect class="ink" x="${x - 14}" y="${y + 6}" width="28" height="22"/>${text(x, y + 21, 'Wh', 'text-anchor="middle" font-size="10"')}`;
/** Socket-outlet of a charge point: half circle with its bar. */
const outlet = (x: number, y: number): string =>
  `<path class="ink" d="M${x} ${y}V${y + 8}M${x - 10} ${y + 18}A10 10 0 0 1 ${x + 10} ${y + 18}M${x - 10} ${y + 8}H${x + 10}"/>`;
const loadEnd = (x: number, y: number): string =>
  `<path class="ink" d="M${x} ${y}V${y + 12}M${x - 4} ${y + 8}L${x} ${y + 16}L${x + 4} ${y + 8}"/>`;

interface Drawn {
  readonly svg: string;
  readonly width: number;
  readonly depth: number;
}

/** Lines for a run: one stroke for each line conductor. */
const strokesFor = (x: number, y: number, count: number): string =>
  count > 1
    ? `<path class="ink" d="${Array.from({ length: count }, (_, i) => `M${x - 4} ${y + i * 4 + 4}L${x + 4} ${y + i * 4 - 4}`).join('')}"/>`
    : '';

const shorten = (words: string, most: number): string => (words.length > most ? `${words.slice(0, most - 1)}…` : words);

function drawOutlets(run: Run, x: number, y: number): string {
  if (run.feeds.some((o) => o.kind === 'board')) return '';
  const points = run.feeds.filter((o): o is ChargePoint => o.kind === 'charge-point');
  const loads = run.feeds.filter((o): o is Load => o.kind === 'load');
  const words = points[0]
    ? `charge point ${points[0].id}`
    : loads.length > 0
      ? loads.map((l) => l.id).join(', ')
      : 'spare';
  return `${points.length > 0 ? outlet(x, y) : loadEnd(x, y)}${text(x + 28, y + 34, shorten(words, 24), 'text-anchor="middle" font-size="10"')}`;
}

/** Runs up to which a diagram shows every one; in larger ones new circuits that look alike stand as one with their number. */
const EVERY = 60;

/** What a diagram shows of an installation. */
interface Shown {
  readonly wanted: ReadonlySet<string>;
  readonly all: boolean;
}

/** Outgoing runs as they are drawn, each with how many stand for it. */
function drawnRuns(board: Board, { wanted, all }: Shown): readonly { readonly run: Run; readonly times: number }[] {
  const found = new Map<string, { run: Run; times: number }>();
  for (const run of board.runs) {
    const single = all || !wanted.has(run.id);
    const looks = single ? run.id : JSON.stringify([run.device.rating, run.device.kind, run.cable, run.lines.length]);
    const before = found.get(looks);
    if (before) before.times += 1;
    else found.set(looks, { run, times: 1 });
  }
  return [...found.values()];
}

/** Boards along a run side by side below it, tapped from one line. */
function drawBoards(run: Run, x: number, y: number, shown: Shown): Drawn | undefined {
  const boards = run.feeds.filter((o): o is Board => o.kind === 'board');
  let left = x - COLUMN / 2;
  let depth = y;
  const parts: string[] = [];
  for (const board of boards) {
    const at = left + COLUMN / 2;
    const inner = drawBoard(board, left, y + 150, shown);
    if (at > x) parts.push(`<path class="ink" d="M${x} ${y + 136}H${at}V${y + 160}"/>`);
    parts.push(inner.svg);
    depth = Math.max(depth, inner.depth);
    left += Math.max(COLUMN, inner.width);
  }
  return boards.length > 0 ? { svg: parts.join(''), width: left - (x - COLUMN / 2), depth } : undefined;
}

function drawBoard(board: Board, left: number, top: number, shown: Shown): Drawn {
  let x = left + COLUMN / 2;
  const parts: string[] = [];
  let depth = top + ROW;
  let lastX = x;
  for (const { run, times } of drawnRuns(board, shown)) {
    const y = top + 12;
    const inner = drawBoards(run, x, y, shown);
    const rcd = run.residual?.some((r) => r.position === 'origin-of-circuit');
    const mark = shown.wanted.has(run.id)
      ? `<rect x="${x - 40}" y="${y - 4}" width="${COLUMN - 8}" height="158" fill="currentColor" fill-opacity=".08" stroke="currentColor" stroke-dasharray="4 3"/>`
      : '';
    parts.push(
      mark,
      run.device.kind.state === 'known' && isFuse(run.device.kind.value) ? fuse(x, y) : breaker(x, y),
      rcd ? residual(x, y + 40) : '',
      `<path class="ink" d="M${x} ${y + 30}V${y + (inner ? 160 : 108)}"/>`,
      strokesFor(x, y + 62, run.lines.length),
      text(x + 12, y + 16, amps(run.device), 'font-size="10"'),
      text(x + 12, y + 28, deviceKind(run.device), 'font-size="9"'),
      text(x + 12, y + 80, cableWords(run), 'font-size="10"'),
      text(x + 12, y + 93, shorten(times > 1 ? `${times} such as ${run.id}` : run.id, 22), 'font-size="9"'),
      drawOutlets(run, x, y + 108),
      inner?.svg ?? '',
    );
    lastX = x;
    if (inner) depth = Math.max(depth, inner.depth);
    x += inner ? Math.max(COLUMN, inner.width) : COLUMN;
  }
  const width = x - COLUMN / 2 - left;
  const bar = `<path class="ink" stroke-width="4" d="M${left + 14} ${top + 10}H${Math.max(lastX + 40, left + 90)}"/>${text(left + COLUMN / 2 + 12, top + 2, board.id, 'font-weight="600" font-size="11"')}`;
  return { svg: bar + parts.join(''), width: Math.max(width, COLUMN), depth };
}

/**
 * A one-line diagram of an installation with the graphical symbols of IEC 60617.
 * @param installation the installation
 * @param title title of the picture
 * @param wanted runs that are new; they are framed
 * @returns an SVG as text
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { readSurvey } from 'ohmwright/io';
 * import { oneLineDiagram } from 'ohmwright/report';
 *
 * oneLineDiagram(readSurvey(survey).installation, 'The house').startsWith('<svg'); // => true
 * ```
 */
export function oneLineDiagram(installation: Installation, title: string, wanted: readonly string[] = []): string {
  const { supply, board } = installation;
  const x = 16 + COLUMN / 2;
  const shown = { wanted: new Set(wanted), all: runNames(installation).length <= EVERY };
  const drawn = drawBoard(board, 16, 218, shown);
  const system = supply.system.state === 'known' ? supply.system.value : 'system ?';
  const head = [
    text(16, 22, title, 'font-weight="600"'),
    text(
      x + 12,
      50,
      `supply ${system}, ${supply.phases.state === 'known' ? supply.phases.value : '?'}-phase, ${formatIn(supply.nominalVoltage, 'V')}`,
      'font-size="11"',
    ),
    `<path class="ink" d="M${x} 36V54"/>`,
    fuse(x, 54),
    text(x + 12, 73, `cut-out ${amps(supply.cutOut)} ${deviceKind(supply.cutOut)}`, 'font-size="10"'),
    meter(x, 84),
    `<path class="ink" d="M${x} 118V140"/>`,
    disconnector(x, 140),
    text(
      x + 12,
      160,
      board.mainSwitch?.rating.state === 'known'
        ? `main switch ${formatIn(board.mainSwitch.rating.value, 'A')}`
        : 'main switch',
      'font-size="10"',
    ),
    `<path class="ink" d="M${x} 170V228"/>`,
    `<path class="ink" d="M${x + 240} 60V84M${x + 222} 60H${x + 258}"/>${text(x + 264, 64, 'main earthing terminal', 'font-size="10"')}`,
    earth(x + 240, 84),
    text(x + 256, 100, system === 'TT' ? 'earth electrode' : 'earth of the supply', 'font-size="10"'),
  ];
  const width = Math.max(560, drawn.width + 70);
  return picture(
    {
      title,
      description: `One-line diagram: supply ${system}, ${board.id} with ${board.runs.length} outgoing runs: ${board.runs.map((r) => r.id).join(', ')}.`,
      width: Number(n(width)),
      height: Number(n(drawn.depth + 10)),
    },
    head.join('') + drawn.svg,
  );
}
