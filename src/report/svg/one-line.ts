import { runsOfNames } from '../../core/names.js';
import { waysOf } from '../../installation/beside.js';
import {
  type Board,
  byCable,
  type ChargePoint,
  type Installation,
  type Load,
  type OvercurrentDevice,
  type ResidualDevice,
  type Run,
} from '../../installation/index.js';
import { curveWords, deviceName, hasResidual, isFuse, sizeWords } from '../../installation/marking.js';
import { formatIn } from '../../units/index.js';
import { englishWords, type ReportWords } from '../words/pages.js';
import { END, headed, n, picture, text, WIDTH } from './picture.js';
import {
  bar,
  breaker,
  disconnector,
  earth,
  fork,
  fuse,
  loadEnd,
  meter,
  outlet,
  residual,
  ring,
  strokes,
} from './symbols.js';

/** Height of a row, and room for its symbols, user units. */
const ROW = 42;
const SYMBOLS = 104;
/** How far a board stands in from the one that feeds it; deeper ones stay where there is room. */
const [IN, DEEPEST] = [20, 110];

type Say = ReportWords['pictures']['oneLine'];

const amps = (rating: OvercurrentDevice['rating'], say: Say): string =>
  rating.state === 'known'
    ? formatIn(rating.value, 'A')
    : rating.state === 'between'
      ? say.between(String(rating.least), formatIn(rating.most, 'A'))
      : `${say.open} A`;
const deviceWords = (d: OvercurrentDevice, say: Say): string => {
  if (d.kind.state !== 'known') return say.kindOpen(amps(d.rating, say));
  const kind = d.kind.value;
  const name = deviceName(kind);
  const curve = curveWords(kind);
  return say.device(
    say.names[name] ?? name,
    amps(d.rating, say),
    curve === undefined ? kind.standard : say.curve(curve),
  );
};
const cableWords = (r: Run, say: Say): string => {
  // of an existing circuit the number of cores is no more known than the size
  const words = byCable(r).map(({ cable }) => {
    const size = sizeWords(cable);
    return size === undefined && r.existing ? say.cableOpen : say.cable(cable.cores, size ?? say.open);
  });
  return words.join(' + ');
};
const residualWords = ({ rating, type }: ResidualDevice, say: Say): string =>
  say.residual(
    rating.state === 'known' ? formatIn(rating.value, 'A') : say.open,
    type.state === 'known' ? type.value : undefined,
  );
const shorten = (words: string, most: number): string => (words.length > most ? `${words.slice(0, most - 1)}…` : words);
/** Characters that have room from a place to the right edge, by the size of the font. */
const room = (x: number, font = 11): number => Math.max(8, Math.floor((WIDTH - 6 - x) / (font * 0.56)));

/** Drawn so far, and the height that it takes. */
interface Sheet {
  readonly say: Say;
  readonly parts: string[];
  y: number;
}

/** What a run is called, with what it feeds. */
function rowName({ id, feeds }: Run, say: Say): string {
  const points = feeds.filter((o): o is ChargePoint => o.kind === 'charge-point').map((p) => p.id);
  const loads = feeds.filter((o): o is Load => o.kind === 'load').map((l) => l.id);
  const fed = points.length > 0 ? say.point(points.join(', ')) : loads.join(', ');
  return fed === '' || id.includes(fed) || fed === id ? id : say.run(id, fed);
}

/** A run with what its row is called, and whether it ends where the row above it does. */
interface Row {
  readonly run: Run;
  readonly name: string;
  readonly joined?: true;
}

/** Rows of a board: runs to charge points that are alike, and named by numbers that count on, are one row. */
function rowsOf(runs: readonly Run[], say: Say): readonly Row[] {
  const likeness = (r: Run): string | undefined =>
    r.feeds.length === 1 && r.feeds[0]?.kind === 'charge-point'
      ? [deviceWords(r.device, say), cableWords(r, say), r.lines.length].join()
      : undefined;
  const groups: Run[][] = [];
  for (const run of runs) {
    const last = groups.at(-1);
    if (last?.[0] && likeness(run) !== undefined && likeness(last[0]) === likeness(run)) last.push(run);
    else groups.push([run]);
  }
  return groups.flatMap((group) =>
    runsOfNames(group.map((r) => r.feeds[0]?.id ?? r.id)).flatMap((names) => {
      const of = names.map((name) => group.find((r) => (r.feeds[0]?.id ?? r.id) === name) as Run);
      return names.length > 2 && of[0]
        ? [{ run: of[0], name: say.runs(names[0] ?? '', names.at(-1) ?? '', names.length) }]
        : of.map((run) => ({ run, name: rowName(run, say) }));
    }),
  );
}

function drawRow(sheet: Sheet, x: number, row: Row, wanted: ReadonlySet<string>, depth: number): void {
  const { run, name } = row;
  const { say } = sheet;
  const y = sheet.y + ROW / 2;
  const boards = run.feeds.filter((o): o is Board => o.kind === 'board');
  const { kind } = run.device;
  const known = kind.state === 'known' ? kind.value : undefined;
  const ways = waysOf(run).slice(1);
  const own = (run.residual ?? []).some((r) => r.position === 'origin-of-circuit') || (known && hasResidual(known));
  const end = x + SYMBOLS - 14;
  const words = x + SYMBOLS + 4;
  if (wanted.has(run.id))
    sheet.parts.push(
      `<rect x="${n(x + 6)}" y="${n(sheet.y + 2)}" width="${n(WIDTH - x - 10)}" height="${ROW - 4}" fill="currentColor" fill-opacity=".08" stroke="currentColor" stroke-dasharray="4 3"/>`,
    );
  const details = say.details(deviceWords(run.device, say), cableWords(run, say), run.ring === true);
  sheet.parts.push(
    known && isFuse(known) ? fuse(x + 10, y) : breaker(x + 10, y),
    own ? residual(x + 50, y) : '',
    run.ring
      ? boards.length > 0
        ? fork(x + 58, y) + strokes(x + 72, y - 8, run.lines.length)
        : ring(x + 58, y, end)
      : `<path class="ink" d="M${n(x + 40)} ${n(y)}H${n(end)}"/>${strokes(x + 72, y, run.lines.length)}`,
    `<path class="ink" d="M${n(x)} ${n(y)}H${n(x + 10)}"/>`,
    boards.length > 0 || run.ring || row.joined
      ? ''
      : run.feeds.some((o) => o.kind === 'charge-point')
        ? outlet(end, y)
        : loadEnd(end, y),
    text(words, y - 3, shorten(name, room(words)), 'font-size="11"'),
    text(words, y + 12, shorten(details, room(words, 10.5)), 'font-size="10.5"'),
  );
  sheet.y += ROW;
  // further ways to the same board, each from its own device
  for (const way of ways) drawRow(sheet, x, { run: { ...way, feeds: [] }, name: way.id, joined: true }, wanted, depth);
  if (ways.length > 0) sheet.parts.push(`<path class="ink" d="M${n(end)} ${n(y)}V${n(y + ways.length * ROW)}"/>`);
  drawFed(sheet, [x, end], y + ways.length * ROW, run, boards, wanted, depth);
}

/**
 * The boards that a run feeds, one below the other, tapped from a line beside their busbars; a ring comes back to its
 * device by a second line, and its boards stand in the order in which they are met.
 */
function drawFed(
  sheet: Sheet,
  [x, end]: readonly [number, number],
  y: number,
  { ring: closed }: Run,
  boards: readonly Board[],
  wanted: ReadonlySet<string>,
  depth: number,
): void {
  if (boards.length === 0) return;
  const inner = Math.min(x + IN, Math.max(x, DEEPEST));
  // where there is no room beside the busbar, the line stays where the run ends
  const [back, out] =
    inner > x ? [x + 7, closed ? x + 13 : boards.length > 1 ? x + 10 : inner] : [end, closed ? end - 6 : end];
  const first = sheet.y + (closed ? 8 : 4);
  let last = first;
  for (const board of closed ? [...boards].sort((a, b) => (a.at ?? 0) - (b.at ?? 0)) : boards) {
    const tap = sheet.y + (closed ? 8 : 4);
    last = tap;
    sheet.parts.push(`<path class="ink" d="M${n(out)} ${n(tap)}H${n(inner)}V${n(tap + 8)}"/>`);
    sheet.y = tap - 4;
    drawBoard(sheet, inner, board, wanted, depth + 1);
  }
  sheet.parts.push(
    closed
      ? `<path class="ink" d="M${n(end - 24)} ${n(y + 8)}H${n(end - 8)}V${n(first)}H${n(out)}V${n(last + 6)}H${n(back)}V${n(first - 6)}H${n(end)}V${n(y - 8)}H${n(end - 24)}"/>`
      : `<path class="ink" d="M${n(end)} ${n(y)}V${n(first)}H${n(out)}V${n(last)}"/>`,
  );
}

/** A load control with its limit. */
const limiterWords = ({ control }: Board, say: Say): string =>
  say.limiter(control?.limit.state === 'known' ? formatIn(control.limit.value, 'A') : undefined);

/** A board from its main switch down: busbar, devices that serve several ways, and its rows. */
function drawBoard(sheet: Sheet, x: number, board: Board, wanted: ReadonlySet<string>, depth = 0): void {
  const { parts, say } = sheet;
  const serving = board.residual ?? [];
  const whole = serving.filter((r) => !r.serves);
  const name = board.at === undefined ? board.id : say.at(board.id, formatIn(board.at, 'm'));
  sheet.y += 12;
  parts.push(
    text(
      x + 14,
      sheet.y + 6,
      shorten(depth > 0 && board.control ? `${name}, ${limiterWords(board, say)}` : name, room(x + 14, 12)),
      'font-weight="600"',
    ),
    ...whole.map(
      (r, i) =>
        `${text(x + 14, sheet.y + 22 + 15 * i, residualWords(r, say), 'font-size="10.5"')}${bar(x, sheet.y + 12 + 15 * i, true)}`,
    ),
  );
  const top = sheet.y;
  sheet.y += 12 + 15 * whole.length;
  const rest = new Set(board.runs.map((r) => r.id));
  const bus = (from: number, at: number) =>
    parts.push(
      `<path class="ink" stroke-width="3.5" d="M${n(at)} ${n(from)}V${n(Math.max(sheet.y - ROW / 2, from + 16))}"/>`,
    );
  let last = sheet.y;
  for (const r of serving.filter((s) => s.serves)) {
    const runs = board.runs.filter((run) => r.serves?.includes(run.id) && rest.delete(run.id));
    if (runs.length === 0) continue;
    const y = sheet.y + 12;
    parts.push(
      `<path class="ink" d="M${n(x)} ${n(y)}H${n(x + 16)}V${n(y + 12)}"/>`,
      residual(x + 9, y),
      text(x + 30, y + 4, residualWords(r, say), 'font-size="10.5"'),
    );
    last = y;
    sheet.y += 24;
    const from = sheet.y;
    for (const row of rowsOf(runs, say)) drawRow(sheet, x + 16, row, wanted, depth);
    bus(from, x + 16);
  }
  const direct = board.runs.filter((run) => rest.has(run.id));
  let end = last;
  for (const row of rowsOf(direct, say)) {
    end = sheet.y + ROW / 2;
    drawRow(sheet, x, row, wanted, depth);
  }
  parts.push(`<path class="ink" stroke-width="3.5" d="M${n(x)} ${n(top + 2)}V${n(Math.max(end, top + 18))}"/>`);
}

/** Supply, cut-out, meter and main switch, with the main earthing terminal and what it is connected to. */
function drawOrigin({ supply, board }: Installation, x: number, top: number, say: Say): string {
  const system = supply.system.state === 'known' ? supply.system.value : undefined;
  const lines = supply.phases.state === 'known' ? supply.phases.value : undefined;
  const [met, at] = [262, top + 96];
  const dash = 'stroke-dasharray="6 2 1 2"';
  const size = (area: { state: string; value?: number } | undefined) =>
    area?.state === 'known' && area.value !== undefined ? formatIn(area.value, 'mm²') : undefined;
  const bonded = (supply.bonding ?? []).map((b) => [b.what, size(b.area)].filter(Boolean).join(' ')).join(', ');
  const conductor = say.conductor(size(supply.earthingConductor));
  const source =
    system === 'TT'
      ? `<path class="ink" ${dash} d="M${met + 12} ${at}V${at + 8}"/>${earth(met + 12, at + 8)}${text(WIDTH - 6, at - 22, say.toElectrode(conductor), `${END} font-size="10.5"`)}`
      : `<path class="ink" ${dash} d="M${x} ${top + 10}H${met}V${at}"/>${text(x + 14, top + 6, system === undefined ? say.earthOpen : conductor, 'font-size="10.5"')}`;
  return [
    text(
      8,
      top - 8,
      say.supply(system, String(lines ?? say.open), formatIn(supply.nominalVoltage, 'V')),
      'font-size="11"',
    ),
    `<path class="ink" d="M${x} ${top}V${top + 14}"/>`,
    `<g transform="translate(${x} ${top + 14}) rotate(90)">${fuse(0, 0)}</g>`,
    strokes(x, top + 12, lines ?? 1, true),
    text(x + 14, top + 34, shorten(say.cutOut(deviceWords(supply.cutOut, say)), 34), 'font-size="10.5"'),
    meter(x, top + 44),
    ...(board.control
      ? [
          `<ellipse class="ink" cx="${n(x)}" cy="${n(top + 74.5)}" rx="6" ry="2.5"/><path class="ink" stroke-dasharray="2 2" d="M${n(x + 6)} ${n(top + 74.5)}h14"/>`,
          text(x + 24, top + 77, limiterWords(board, say), 'font-size="10.5"'),
        ]
      : []),
    `<g transform="translate(${x} ${top + 78}) rotate(90)">${disconnector(0, 0)}</g>`,
    text(
      x + 14,
      top + 98,
      say.mainSwitch(
        board.mainSwitch?.rating.state === 'known' ? formatIn(board.mainSwitch.rating.value, 'A') : undefined,
      ),
      'font-size="10.5"',
    ),
    `<path class="ink" d="M${x} ${top + 108}V${top + 122}"/>`,
    source,
    `<path class="ink" stroke-width="3" d="M${met - 22} ${at}H${met + 22}"/>`,
    text(WIDTH - 6, at - 8, say.terminal, `${END} font-size="10.5"`),
    `<path class="ink" ${dash} d="M${met - 12} ${at}V${top + 116}H${x}"/>`,
    bonded === '' ? '' : text(WIDTH - 6, top + 132, shorten(say.bonded(bonded), 36), `${END} font-size="10.5"`),
  ].join('');
}

/**
 * A one-line diagram of an installation with the graphical symbols of IEC 60617.
 * @param installation the installation
 * @param title title of the picture
 * @param wanted names of runs that are framed, such as the new ones
 * @param words words of the picture; English when absent
 * @returns an SVG as text; charge points that are alike and numbered are one row
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { readSurvey } from 'ohmwright/io';
 * import { oneLineDiagram } from 'ohmwright/report';
 *
 * oneLineDiagram(readSurvey(survey).installation, 'Larch Cottage').startsWith('<svg'); // => true
 * ```
 */
export function oneLineDiagram(
  installation: Installation,
  title: string,
  wanted: readonly string[] = [],
  words: ReportWords['pictures'] = englishWords.pictures,
): string {
  const { oneLine: say } = words;
  const { board, supply } = installation;
  const head = headed(title);
  const x = 20;
  const top = head.bottom + 22;
  const sheet: Sheet = { say, parts: [], y: top + 112 };
  drawBoard(sheet, x, board, new Set(wanted));
  const system = supply.system.state === 'known' ? supply.system.value : undefined;
  return picture(
    {
      title,
      description: say.about(
        system,
        board.id,
        board.runs.map((r) => r.id),
      ),
      width: WIDTH,
      height: Number(n(sheet.y + 10)),
    },
    head.svg + drawOrigin(installation, x, top, say) + sheet.parts.join(''),
  );
}
