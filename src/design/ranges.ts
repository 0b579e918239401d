import { type Name, type RangeFact, termOf } from '../core/index.js';
import type { Installation } from '../installation/index.js';
import type { RangedFact } from './assess-at.js';

/** A range in the tree, with what is known of it. */
export interface Range extends RangedFact {
  /** Whether only whole numbers make sense. */
  readonly whole: boolean;
}

type Tree = Readonly<Record<string, unknown>>;

/** Roles of facts by the name of their property; areas and ratings are left out: nothing is monotone in them. */
const roles: Readonly<Record<string, Name>> = {
  externalImpedance: 'externalImpedance',
  prospectiveCurrent: 'prospectiveCurrent',
  length: 'length',
  insulated: 'insulatedLength',
  current: 'designCurrent',
  setting: 'designCurrent',
  circuits: 'circuitsInGroup',
  resistance: 'electrodeResistance',
  separation: 'earthSeparation',
  thirdHarmonic: 'thirdHarmonic',
  terminalTemperature: 'terminalTemperature',
};

const isRange = (node: unknown): node is RangeFact<number> =>
  typeof node === 'object' && node !== null && (node as { state?: unknown }).state === 'between';

function roleOf(key: string, parent: Tree): Name | undefined {
  const method = parent.method as { readonly value?: unknown } | undefined;
  if (key === 'ambient') return String(method?.value).startsWith('D') ? 'groundTemperature' : 'ambientTemperature';
  // the resistivity of an electrode's soil is another one
  if (key === 'soilResistivity') return method ? 'soilResistivity' : undefined;
  return roles[key];
}

/** Walks a tree and hands every range to `meet`; what it returns takes the place of the range. */
function walk(node: unknown, meet: (range: RangeFact<number>, key: string, parent: Tree, where: string) => unknown) {
  const into = (value: unknown, key: string, parent: Tree, where: string): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (isRange(value)) return value.least < value.most ? meet(value, key, parent, where) : value;
    if (Array.isArray(value)) {
      let changed = false;
      const items = value.map((item) => {
        const now = into(item, key, parent, where);
        if (now !== item) changed = true;
        return now;
      });
      return changed ? items : value;
    }
    const tree = value as Tree;
    const name = tree.id ?? tree.name;
    const here = typeof name === 'string' ? name : where;
    let copy: Record<string, unknown> | undefined;
    for (const k in tree) {
      const now = into(tree[k], k, tree, here);
      if (now === tree[k]) continue;
      copy ??= { ...tree };
      copy[k] = now;
    }
    return copy ?? tree;
  };
  return into(node, '', {}, '');
}

/** Facts of an installation that are known only within a range, in the order of the tree. */
export function rangesOf(installation: Installation): readonly Range[] {
  const found: Range[] = [];
  walk(installation, (range, key, parent, where) => {
    const role = roleOf(key, parent);
    const term = role === undefined ? undefined : termOf(role);
    const what = term?.words ?? key;
    const name = where ? `${what}, ${where}` : what;
    const twin = found.filter((f) => f.name === name || f.name.startsWith(`${name} (`)).length;
    found.push({
      name: twin === 0 ? name : `${name} (${twin + 1})`,
      ...(role === undefined ? {} : { role }),
      ...(term === undefined ? {} : { unit: term.unit }),
      least: range.least,
      most: range.most,
      whole: role === 'circuitsInGroup',
    });
    return range;
  });
  return found;
}

/**
 * The installation with every range at one value, which tells when it is read.
 * @param installation the installation
 * @param values a value for each range, in the order of the tree
 * @param read is told the place of the range whose value is read
 */
export function pinned(
  installation: Installation,
  values: readonly number[],
  read: (place: number) => void,
): Installation {
  let next = 0;
  return walk(installation, (range) => {
    const place = next++;
    return {
      state: 'known',
      get value() {
        read(place);
        return values[place];
      },
      ...(range.by === undefined ? {} : { by: range.by }),
    };
  }) as Installation;
}
