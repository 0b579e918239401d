import { endsOf } from '../core/index.js';
import { own } from '../core/own.js';
import { shown } from '../units/index.js';
import { cableOfSection, wasThere } from './by-cable.js';
import type { Cable, Group, Stretch } from './cable.js';
import { labels } from './labels.js';
import type { Line } from './load.js';
import { hasResidual } from './marking.js';
import { cleanly, NOT_COVERED, recordProblems, type Say, type Where } from './record-problems.js';
import type { Outlet, Run } from './tree.js';
import { isKnownAs, isRecord } from './values.js';

/** Runs in which nothing was wrong, for the lines that their supply has. */
const soundRuns = /* @__PURE__ */ new WeakMap<object, readonly Line[]>();

function lineProblems(
  lines: readonly Line[],
  of: readonly Line[],
  within: readonly Line[] | undefined,
  say: Say,
): undefined {
  if (!Array.isArray(lines) || lines.length === 0) return say(['lines'], 'names no line conductor', 'empty');
  const seen = new Set<Line>();
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i] as Line;
    if (!of.includes(line)) say(['lines', i], `is ${shown(line)}; the supply has ${of.join(', ')}`);
    else if (within && !within.includes(line)) say(['lines', i], `is ${line}, which its circuit does not have`);
    else if (seen.has(line)) say(['lines', i], `names ${line} twice`, 'twice');
    seen.add(line);
  }
  // between two lines stands another voltage than U_0: nothing here is worked out for it
  if (seen.size !== 2) return undefined;
  return say(
    ['lines'],
    'are two line conductors: between two lines nothing is covered; a load from two lines to neutral is two loads',
  );
}

/** What is wrong with the number of cores of a cable for the lines of a run, a neutral and a protective core. */
export function coresProblem(cable: Cable, { lines, feeds }: Run): string | undefined {
  const { cores, construction } = cable;
  const single = construction === 'single-core';
  // a motor or heater on three lines may do without a neutral; of single cores those that carry load are counted
  const bare = lines.length === 3 && (single || feeds.every((o) => o.kind === 'load' && o.lines.length === 3));
  const own = cable.protective === 'core' && !single ? 1 : 0;
  const needed = lines.length + (bare ? 0 : 1) + own;
  if (!labels.coresOfCable.includes(cores) || cores >= needed) return undefined;
  const conductors = lines.length === 1 ? 'one line conductor' : 'three line conductors';
  return `is ${cores}; ${conductors}${bare ? '' : ' and neutral'}${own ? ', and a protective core,' : ''} need ${needed}`;
}

/** A protective conductor of steel that is neither armour nor conduit: nothing is entered for it, and copper is many times better. */
const steelProblem = ({ protective, protectiveMaterial }: Cable): string | undefined =>
  protectiveMaterial === 'steel' && ['core', 'bare-core', 'separate'].includes(protective)
    ? `${NOT_COVERED}a protective conductor of steel that is neither armour nor conduit`
    : undefined;

/** A protective conductor that a cable of this construction does not have, or that ends where the section leaves its conduit. */
function protectiveProblem({ construction, protective }: Cable, { containment }: Partial<Stretch>): string | undefined {
  if (!labels.construction.includes(construction)) return undefined;
  if ((protective === 'armour' || protective === 'armour-and-separate') && construction !== 'armoured')
    return `is ${protective}, and a ${construction} cable has no armour`;
  if (protective === 'bare-core' && construction !== 'flat-twin-and-earth')
    return 'is a bare core, which flat twin and earth alone has';
  const open = ['clipped', 'tray', 'catenary', 'free'].includes(containment ?? '');
  return protective === 'conduit' && open
    ? `is conduit, and a section is said to lie without: ${containment}`
    : undefined;
}

/** Below it no load of an installation stays: common practice, no source. Nearly nought would take the drop of a cable away. */
const LEAST_POWER_FACTOR = 0.1;

/** What is wrong with a load or charge point on a run; false where it is not known what it is, or on which lines. */
function outletProblems(outlet: Outlet, of: readonly Line[], within: readonly Line[] | undefined, say: Say): boolean {
  if (!isRecord(outlet)) say([], `is ${shown(outlet)}; a board, a load or a charge point is due`, 'wrong-kind');
  else if (!['board', 'load', 'charge-point'].includes(outlet.kind))
    say(['kind'], `is ${shown(outlet.kind)}; known are board, load, charge-point`, 'not-allowed');
  else if (outlet.kind === 'board') return true;
  else {
    recordProblems(outlet.kind === 'load' ? 'load' : 'chargePoint', outlet, say);
    lineProblems(outlet.lines, of, within, say);
    if (outlet.kind === 'load' && outlet.dwellings !== undefined && outlet.purpose !== 'dwellings')
      say(['dwellings'], 'belongs to a load whose purpose is dwellings');
    if (outlet.kind === 'load' && typeof outlet.powerFactor === 'number' && outlet.powerFactor < LEAST_POWER_FACTOR)
      say(
        ['powerFactor'],
        `is ${outlet.powerFactor}; a load takes active power: ${LEAST_POWER_FACTOR} and up`,
        'out-of-range',
      );
    if (outlet.kind === 'charge-point') {
      for (const key of ['directPower', 'efficiency', 'powerFactor'] as const)
        if (outlet.mode !== 4 && outlet[key] !== undefined) say([key], 'is of charge points of mode 4 alone');
      const most = endsOf(isRecord(outlet.setting) ? outlet.setting : undefined)?.[1];
      if (outlet.minimum !== undefined && most !== undefined && outlet.minimum > most)
        say(['minimum'], `is ${outlet.minimum} A, and the point is set to ${most} A`);
      for (const key of ['value', 'least', 'most'])
        if (isRecord(outlet.setting) && own(outlet.setting, key) === 0)
          say(['setting', key], 'is 0 A; a point is set above that', 'out-of-range');
    }
    return Array.isArray(outlet.lines);
  }
  return false;
}

/** Loads that are tapped beyond the end of their run, where one of the two lengths is wrong, and routes without length. */
function tapProblems({ stretches, feeds, ring }: Run, say: Say): void {
  const ends = (Array.isArray(stretches) ? stretches : []).map((s: Stretch) => {
    const told = endsOf(s?.length);
    return told?.every(Number.isFinite) ? told : ([0, Number.POSITIVE_INFINITY] as const);
  });
  if (ends.length > 0 && ends.every(([, l]) => l === 0)) say(['stretches'], 'come to 0 m; a route has a length');
  const most = ends.reduce((sum, [, l]) => sum + l, 0);
  const least = ends.reduce((sum, [l]) => sum + l, 0);
  for (const [j, o] of feeds.entries()) {
    if (o.kind === 'charge-point' || o.at === undefined || ends.length === 0) continue;
    if (o.at > most) say(['feeds', j, 'at'], `is ${o.at} m, and the run is ${most} m long`);
    // the run to a board ends there, where nothing else hangs on it
    else if (o.kind === 'board' && !ring && feeds.length === 1 && o.at < least)
      say(['feeds', j, 'at'], `is ${o.at} m, and the run, which feeds nothing else, is ${least} m long`);
  }
}

/** What of ways side by side is not worked out. */
function besideProblems({ ring, feeds, residual, device, beside = [] }: Run, say: Say): void {
  const refused = (at: Where, what: string) => say(at, NOT_COVERED + what, 'not-covered');
  const [board, ...more] = feeds;
  if (ring) refused(['ring'], 'a ring beside which other ways run');
  if (!isRecord(board) || board.kind !== 'board' || board.at !== undefined || more.length > 0)
    refused(['feeds'], 'ways side by side that feed anything but one board at their end');
  const kinds = [device, ...beside.map((way) => (isRecord(way) ? way.device : undefined))].map((d) => d?.kind);
  if (
    (residual?.length ?? 0) > 0 ||
    kinds.some((k) => k?.state === 'known' && isRecord(k.value) && hasResidual(k.value))
  )
    refused(
      ['residual'],
      'residual current devices in ways side by side: neutrals do not share as lines do, and they operate without a fault',
    );
}

/** What is wrong with a run and what it feeds, boards apart: in itself, and for the lines that the supply has. */
export function runProblems(run: Run, of: readonly Line[], say: Say): undefined {
  if (soundRuns.get(run) === of) return undefined;
  if (cleanly(say, (note) => problemsWithin(run, of, note)) && isRecord(run)) soundRuns.set(run, of);
}

function problemsWithin(run: Run, of: readonly Line[], say: Say): undefined {
  recordProblems('run', run, say);
  if (!isRecord(run)) return undefined;
  const within = Array.isArray(run.lines) && run.lines.every((l) => of.includes(l)) ? run.lines : undefined;
  lineProblems(run.lines, of, undefined, say);
  if (!Array.isArray(run.feeds)) return say(['feeds'], `is ${shown(run.feeds)}; a list is due`, 'wrong-kind');
  let whole = within !== undefined && run.lines.length !== 2 && isRecord(run.cable);
  for (const [j, outlet] of run.feeds.entries()) {
    const good = outletProblems(outlet, of, within, (at, message, id) => say(['feeds', j, ...at], message, id));
    whole &&= good;
  }
  for (const [i, stretch] of (Array.isArray(run.stretches) ? run.stretches : []).entries()) {
    const group = (isRecord(stretch) ? stretch.group : undefined) as Group | undefined;
    const circuits = group?.circuits?.state === 'known' ? group.circuits.value : Number.POSITIVE_INFINITY;
    const light = group?.lightlyLoaded ?? 0;
    if (typeof light === 'number' && typeof circuits === 'number' && light > circuits)
      say(['stretches', i, 'group', 'lightlyLoaded'], `is ${light} in a group of ${circuits} circuits`);
  }
  for (const [j, o] of run.ring === true ? run.feeds.entries() : [])
    if (isRecord(o) && o.kind === 'board' && o.at === undefined)
      say(
        ['feeds', j, 'at'],
        `${NOT_COVERED}a ring to a board of which nobody says where along it the board stands: after how many metres from one end; two cables to one board are no ring, but parallel, or beside each other behind devices of their own`,
        'not-covered',
      );
  if (Array.isArray(run.beside) && run.beside.length > 0) besideProblems(run, say);
  if (whole) tapProblems(run, say);
  const cores = whole ? coresProblem(run.cable, run) : undefined;
  if (cores) say(['cable', 'cores'], cores);
  const steel = whole ? steelProblem(run.cable) : undefined;
  if (steel) say(['cable', 'protectiveMaterial'], steel, 'not-covered');
  const sections = (Array.isArray(run.stretches) ? run.stretches : []).filter(isRecord) as unknown as Stretch[];
  for (const section of whole ? [{} as Partial<Stretch>, ...sections] : []) {
    const cable = section.cable ?? run.cable;
    const earth = isRecord(cable) ? protectiveProblem(cable as unknown as Cable, section) : undefined;
    if (earth) return say(['cable', 'protective'], earth);
  }
  return whole ? joinProblems(run, say) : undefined;
}

/** What is wrong with a change of cable along a run. */
function joinProblems(run: Run, say: Say): undefined {
  const stretches = (Array.isArray(run.stretches) ? run.stretches : []).filter(isRecord) as unknown as Stretch[];
  for (const [i, { cable, jointAccessible }] of stretches.entries()) {
    const cores = isRecord(cable) ? coresProblem(cable as unknown as Cable, run) : undefined;
    if (cores) say(['stretches', i, 'cable', 'cores'], cores);
    const steel = isRecord(cable) ? steelProblem(cable as unknown as Cable) : undefined;
    if (steel) say(['stretches', i, 'cable', 'protectiveMaterial'], steel, 'not-covered');
    if (i === 0 && jointAccessible !== undefined)
      say(
        ['stretches', i, 'jointAccessible'],
        'is of the first section, which begins at the device: there is no joint',
      );
    const [earlier, here] = [stretches[i - 1], stretches[i]];
    // what is only assumed gives way to what is said of one of them
    const every = run.jointsAccessible as { assumed?: string } | undefined;
    if (earlier && here && isKnownAs(jointAccessible, false) && isKnownAs(every, true) && every?.assumed === undefined)
      if (wasThere(run, earlier) && wasThere(run, here))
        say(['jointsAccessible'], `says that every joint can be got at, and that of ${here.name} cannot`);
  }
  // what is chosen, varied or read for the run would be none of any section
  if (stretches.length > 0 && stretches.every(({ cable }) => cable !== undefined))
    say(['cable'], 'is the cable of no section: each states one of its own');
  if (
    run.ring === true &&
    stretches.some((s) => cableOfSection(run, s) !== run.cable || s.jointAccessible !== undefined)
  )
    say(['ring'], `${NOT_COVERED}a ring whose cable changes along the route`, 'not-covered');
}
