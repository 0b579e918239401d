import type { Calculator, Edited, Line, Placed } from '../calculation/index.js';
import type { SheetLine } from '../core/index.js';

/** A line of a contents list as a sheet can show it: of several ways each. */
interface Way {
  readonly name: string;
  readonly line: Line;
}

/** Lines of contents lists by their address: an identifier without its circuit and the numbers of its things. */
type Addresses = ReadonlyMap<string, readonly Way[]>;

const addressOf = (id: string): string => id.slice(id.lastIndexOf('/') + 1).replace(/\[\d+\]/g, '');

const placeOf = ({ list, within, name }: Placed): string => {
  let lists = '';
  for (let at = list; at.above; at = at.above) lists = `${at.name}.${lists}`;
  return `${lists}${within === undefined ? '' : `${within}:`}${name}`;
};

function waysOf(line: Line): readonly Line[] {
  const { how } = line;
  switch (how.kind) {
    case 'choose':
      return Object.values(how.of).flatMap(waysOf);
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
  readonly addresses: Addresses;
  readonly editions: readonly Edited[];
}

/** What contents lists have. */
export function listedIn(calculators: readonly Calculator[]): Listed {
  const found = new Map<string, Way[]>();
  for (const { lists } of calculators)
    for (const list of lists.lists.values())
      for (const placed of list.lines) {
        const at = placeOf(placed);
        const ways = waysOf(placed.node.line).map((line) => ({ name: placed.name, line }));
        found.set(at, [...(found.get(at) ?? []), ...ways]);
      }
  return { addresses: found, editions: calculators.flatMap(({ code }) => (code ? [code] : [])) };
}

/** What is wrong with a line that has an identifier, held against the contents lists. */
export function notListed(line: SheetLine, { addresses }: Listed): string | undefined {
  if (line.id === undefined || line.kind === 'check' || line.kind === 'result') return undefined;
  const ways = addresses.get(addressOf(line.id));
  if (!ways) return `no contents list has a line ${line.id}`;
  const fitting = ways.filter((way) => fits(line, way));
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
      return name === line.name && how.kind === 'same';
    case 'label':
      return name === line.name && (how.kind !== 'set' || how.value === line.value);
    case 'given':
      return name === line.name && (how.kind !== 'set' || ('gives' in line && how.value === line.gives.value));
    default:
      return true;
  }
}
