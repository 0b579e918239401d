import { type Asked, askedBy, type Calculator, type Edited, type Line, type Placed } from '../calculation/index.js';
import type { SheetDocument, SheetLine } from '../core/index.js';

/** A line of a contents list as a sheet can show it: of several ways each. */
interface Way {
  readonly name: string;
  readonly line: Line;
}

/** Lines of contents lists by their address: an identifier without its circuit and the numbers of its things. */
export type Addresses = ReadonlyMap<string, readonly Way[]>;

const addressOf = (id: string): string => id.slice(id.lastIndexOf('/') + 1).replace(/\[\d+\]/g, '');

/** Addresses of a line: things that may be all there is of the one above stand with it then. */
const placesOf = ({ list, within, name }: Placed): readonly string[] => {
  let places = [`${within === undefined ? '' : `${within}:`}${name}`];
  for (let at = list; at.above; at = at.above) {
    const own = places.map((place) => `${at.name}.${place}`);
    places = at.scope.whole ? [...own, ...places] : own;
  }
  return places;
};

function waysOf(line: Line): readonly Line[] {
  const { how } = line;
  switch (how.kind) {
    case 'choose':
      // none where it is not known which is to be taken
      return [{ how: { kind: 'open', gaps: [] } }, ...Object.values(how.of).flatMap(waysOf)];
    case 'or-else':
      return [{ how: { kind: 'same', as: '' } }, ...waysOf(how.then)];
    case 'between-steps':
      return waysOf(how.of);
    default:
      return [line];
  }
}

/** What sheets are held against: the lines of contents lists, and the editions that their results may cite. */
export interface Listed {
  readonly codes: readonly Addresses[];
  readonly editions: readonly Edited[];
  /** What each contents list asks for, where it is of a code. */
  readonly asked: readonly { readonly of: Edited | undefined; readonly asked: Asked }[];
}

/** What contents lists have. */
export function listedIn(calculators: readonly Calculator[]): Listed {
  return {
    codes: calculators.map(addressesOf),
    editions: calculators.flatMap(({ code }) => (code ? [code] : [])),
    asked: calculators.map(({ code, contents }) => ({ of: code, asked: askedBy(contents) })),
  };
}

/** Checks that may pass one that any of several passes, by any contents list; undefined where none says. */
export function alternativesOf(check: string, { asked }: Listed): ReadonlySet<string> | undefined {
  const said = asked.flatMap((a) => a.asked.alternatives.get(check) ?? []);
  return said.length === 0 ? undefined : new Set(said.flatMap((ids) => [...ids]));
}

function addressesOf({ lists }: Calculator): Addresses {
  const found = new Map<string, Way[]>();
  for (const list of lists.lists.values())
    for (const placed of list.lines) {
      const ways = waysOf(placed.node.line).map((line) => ({ name: placed.name, line }));
      for (const at of placesOf(placed)) found.set(at, [...(found.get(at) ?? []), ...ways]);
    }
  return found;
}

const circuitOf = (id: string): string => id.slice(0, id.lastIndexOf('/') + 1);

/** The contents list by which each circuit of a sheet is worked out: all its lines stand in one, or most do. */
export function listsOf(document: SheetDocument, { codes }: Listed): (id: string) => Addresses {
  const circuits = new Map<string, SheetLine[]>();
  const walk = (lines: readonly SheetLine[]): void => {
    for (const line of lines) {
      if (line?.kind === 'part') walk(line.part?.lines ?? []);
      if (typeof line?.id !== 'string') continue;
      const circuit = circuitOf(line.id);
      const own = circuits.get(circuit);
      if (own) own.push(line);
      else circuits.set(circuit, [line]);
    }
  };
  walk(document.lines);
  const listOf = new Map<string, Addresses>();
  for (const [circuit, lines] of circuits) {
    const whole = codes.find((code) => lines.every((line) => !notListed(line, code)));
    const misfits = codes.map((code) => (whole ? 0 : lines.filter((line) => notListed(line, code)).length));
    listOf.set(circuit, whole ?? (codes[misfits.indexOf(Math.min(...misfits))] as Addresses));
  }
  return (id) => listOf.get(circuitOf(id)) as Addresses;
}

/** What is wrong with a line that has an identifier, held against the contents lists. */
export function notListed(line: SheetLine, addresses: Addresses): string | undefined {
  if (line.id === undefined || line.kind === 'check' || line.kind === 'result') return undefined;
  const ways = addresses.get(addressOf(line.id));
  if (!ways) return `no contents list has a line ${line.id}`;
  // a constant is known by who says it: another way may give any number, this one does not
  const constants = ways.filter(
    ({ line: { how } }) => line.kind === 'given' && how.kind === 'set' && how.by === line.by,
  );
  const stated = line.kind === 'given' && line.by !== undefined && constants.length > 0;
  const fitting = (stated ? constants : ways).filter((way) => fits(line, way));
  if (fitting.length === 0) return `the contents list has another line in the place of ${line.id}`;
  if (!fitting.some((way) => way.line.clause === line.clause))
    return `the contents list cites another clause for ${line.id}`;
  return undefined;
}

function fits(line: SheetLine, { name, line: { how } }: Way): boolean {
  switch (line.kind) {
    case 'step':
      return how.kind === 'apply' && how.by.id === line.formula;
    case 'look':
      return how.kind === 'apply' && how.by.id === line.table;
    case 'run':
      return how.kind === 'run' && how.procedure.id === line.procedure;
    case 'gather':
      return name === line.to && how.kind === 'gather' && how.how === line.how;
    case 'same':
      return name === line.name && (how.kind === 'same' || how.kind === 'at');
    case 'label':
      if (how.kind === 'choose') return name === line.name && 'blocked' in line;
      return name === line.name && (how.kind !== 'set' || how.value === line.value);
    case 'given':
      if (name !== line.name || how.kind === 'apply' || how.kind === 'run') return false;
      if (how.kind === 'open') return 'blocked' in line;
      return how.kind !== 'set' || ('gives' in line && how.value === line.gives.value);
    default:
      return true;
  }
}
