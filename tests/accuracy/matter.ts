/// <reference types="vite/types/importMeta.d.ts" />
import { type Definitions, isDefinition, sortDefinitions } from '../../src/verify/definitions.js';
import type { Definition } from '../../src/verify/index.js';
import { type PagePlan, pageOf, pagePlans } from '../handbook/pages.js';
import { caseFiles } from '../support/case-files.js';
import type { CrossCheck } from '../support/cross-check.js';
import type { PublishedCase } from '../support/published.js';

/** Everything that the report says of one trade topic. */
export interface Topic {
  readonly title: string;
  readonly definitions: Definitions;
  readonly cases: readonly PublishedCase[];
  readonly crossChecks: readonly CrossCheck[];
}

/** Digits of a table that were changed, and how many of the changes its guards notice. */
export interface SlipScore {
  readonly slips: number;
  readonly noticed: string;
}

const modules = import.meta.glob<Readonly<Record<string, unknown>>>(
  '../../src/{physics,codes,products,networks,guidance,installation,demand,charging,design,site}/**/*.ts',
  { eager: true },
);
const crossFiles = import.meta.glob<{ readonly crossChecks: readonly CrossCheck[] }>('../**/*.cross.ts', {
  eager: true,
});
const [slipText] = Object.values(
  import.meta.glob<string>('../../docs/digit-slip.md', { eager: true, query: '?raw', import: 'default' }),
);

/** All cross-checks, in order of their files. */
export const crossChecks: readonly CrossCheck[] = Object.entries(crossFiles)
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .flatMap(([, file]) => file.crossChecks);

/** The page of every definition, by the module that holds it. */
function pagesOfDefinitions(): ReadonlyMap<Definition, PagePlan> {
  const found = new Map<Definition, PagePlan>();
  for (const [path, exports] of Object.entries(modules).sort(([a], [b]) => (a < b ? -1 : 1)))
    if (!/\/(index|definitions)\.ts$/.test(path))
      for (const value of Object.values(exports))
        if (isDefinition(value) && !found.has(value)) found.set(value, pageOf(path.replace('../../src/', '')));
  return found;
}

/** The topics of the handbook, each with what belongs to it. */
export function topics(): readonly Topic[] {
  const pages = pagesOfDefinitions();
  const byId = new Map([...pages].map(([d, page]) => [d.id, page] as const));
  const cases = caseFiles.flatMap((f) => f.cases);
  const pageOfCase = (c: PublishedCase) => c.exercises.map((id) => byId.get(id)).find((page) => page !== undefined);
  const stray = cases.filter((c) => pageOfCase(c) === undefined).map((c) => c.id);
  if (stray.length > 0) throw new Error(`no definition is exercised by ${stray.join(', ')}`);
  const plans = [...new Set([...pagePlans, ...pages.values()].map((p) => p.name))];
  const lost = crossChecks.filter((c) => !plans.includes(c.topic)).map((c) => c.id);
  if (lost.length > 0) throw new Error(`there is no topic for ${lost.join(', ')}`);
  return plans.flatMap((name) => {
    const own = [...pages].filter(([, page]) => page.name === name);
    const title = own[0]?.[1].title ?? name;
    const topic: Topic = {
      title,
      definitions: sortDefinitions(own.map(([d]) => d)),
      cases: cases.filter((c) => pageOfCase(c)?.name === name),
      crossChecks: crossChecks.filter((c) => c.topic === name),
    };
    return own.length > 0 || topic.crossChecks.length > 0 ? [topic] : [];
  });
}

/** The scores that `npm run digit-slip` has recorded, by table; under `all` those of each group. */
export function slipScores(): ReadonlyMap<string, readonly SlipScore[]> {
  const found = new Map<string, SlipScore[]>();
  for (const [, id, slips, noticed] of (slipText ?? '').matchAll(
    /^\|\s*\**([^|*]+?)\**\s*\|\s*(\d+)\s*\|\s*\**([\d.]+)\**\s*\|/gm,
  ))
    found.set(id as string, [...(found.get(id as string) ?? []), { slips: Number(slips), noticed: noticed as string }]);
  if (!found.has('all')) throw new Error('docs/digit-slip.md holds no scores');
  return found;
}
