import { same } from '../core/same.js';
import type { Cable, Stretch } from './cable.js';
import type { Run } from './tree.js';

/** Whether a section was there before: by what is said of it, else with all of its run. */
export const wasThere = (run: Run, section: Stretch): boolean => (section.existing ?? run.existing) === true;

/** The cable of a section: its own, or that of the run. */
export const cableOfSection = ({ cable }: Run, section: Stretch): Cable => section.cable ?? cable;

const found = /* @__PURE__ */ new WeakMap<Run, readonly Run[]>();

/**
 * A run as it changes its cable along the route: one for each length of a cable, with that cable and its sections; the run
 * itself where one cable lies all the way. A joint begins another length, of the same cable too: one that is described, or
 * where what was there before meets what is new.
 */
export function byCable(run: Run): readonly Run[] {
  const already = found.get(run);
  if (already) return already;
  const lengths: { readonly cable: Cable; readonly stretches: Stretch[] }[] = [];
  for (const section of run.stretches) {
    const cable = cableOfSection(run, section);
    const last = lengths.at(-1);
    const before = last?.stretches.at(-1);
    const joined =
      section.jointAccessible !== undefined || (before && wasThere(run, before) !== wasThere(run, section));
    if (last && !joined && same(last.cable, cable)) last.stretches.push(section);
    else lengths.push({ cable, stretches: [section] });
  }
  const [only] = lengths;
  const whole = lengths.length === 0 || (lengths.length === 1 && only?.cable === run.cable);
  const parts = whole ? [run] : lengths.map((part): Run => ({ ...run, ...part }));
  found.set(run, parts);
  return parts;
}

/** Whether a run changes its cable along the route, or has a joint. */
export const isJoined = (run: Run): boolean => byCable(run).length > 1;
