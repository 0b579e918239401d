import type { ChargePoint, Installation, Run } from '../../src/installation/index.js';
import type { Json } from '../support/surveys.js';

type Object_ = { [key: string]: Json };

/** Suffix that names the canonical unit of a number, by the key that it stands under. */
const units: Readonly<Record<string, string>> = {
  nominalVoltage: 'V',
  frequency: 'Hz',
  externalImpedance: 'ohm',
  prospectiveCurrent: 'A',
  rating: 'A',
  ratedCurrent: 'A',
  breakingCapacity: 'A',
  conditionalRating: 'A',
  current: 'A',
  setting: 'A',
  minimum: 'A',
  standingLeakage: 'A',
  delayTime: 's',
  tails: 'mm2',
  earthingConductor: 'mm2',
  supplyNeutral: 'mm2',
  area: 'mm2',
  protectiveArea: 'mm2',
  resistance: 'ohm',
  separation: 'm',
  length: 'm',
  insulated: 'm',
  depth: 'm',
  ambient: 'C',
  soilResistivity: 'Km_per_W',
  terminalTemperature: 'C',
};

/** What the survey document has no field for. */
const unspoken = new Set(['thirdHarmonic', 'formation', 'unequal', 'lightlyLoaded', 'tray']);

function factOf(fact: Object_): Json {
  const by = typeof fact.by === 'string' ? { by: fact.by } : {};
  if (fact.state === 'known') return { known: fact.value as Json, ...by };
  if (fact.state === 'between') return { between: [fact.least as Json, fact.most as Json], ...by };
  return { unknown: typeof fact.obtain === 'string' ? fact.obtain : true };
}

/** Plain data of the library as a survey document writes it: facts in their short forms, units named by the keys. */
function written(node: unknown): Json {
  if (Array.isArray(node)) return node.map(written);
  if (typeof node !== 'object' || node === null) return node as Json;
  if ('state' in node) return factOf(node as Object_);
  const out: Object_ = {};
  for (const [key, value] of Object.entries(node)) {
    if (unspoken.has(key) || value === undefined) continue;
    const unit = units[key];
    const bare = typeof value === 'object' && value !== null && 'state' in value ? value : undefined;
    const number =
      typeof value === 'number' || typeof (bare as { value?: unknown; least?: unknown })?.value === 'number';
    const ranged = typeof (bare as { least?: unknown } | undefined)?.least === 'number';
    out[unit && (number || ranged) ? `${key}_${unit}` : key] = written(value);
  }
  return out;
}

const without = (node: Json, ...keys: readonly string[]): Object_ =>
  Object.fromEntries(Object.entries(node as Object_).filter(([k]) => !keys.includes(k.replace(/_[A-Za-z0-9]+$/, ''))));

/**
 * A random installation as a survey document: its circuit `ev` becomes what is wanted, the rest what exists.
 * @param base a document that gives what an installation does not have
 * @param installation an installation with a circuit `ev`
 */
export function documentOf(base: Object_, installation: Installation): Object_ {
  let wantedRun: Run | undefined;
  let from = installation.board.id;
  const board = JSON.parse(JSON.stringify(installation.board), (_key, node) => {
    if (node?.kind !== 'board') return node;
    const ev = (node.runs as Run[]).find((r) => r.id === 'ev');
    if (ev) {
      wantedRun = ev;
      from = node.id;
    }
    return { ...node, runs: (node.runs as Run[]).filter((r) => r.id !== 'ev') };
  });
  const run = wantedRun as Run;
  const cable = without(written(run.cable), 'area');
  const point = run.feeds.find((o): o is ChargePoint => o.kind === 'charge-point');
  const wanted: Object_ = {
    id: 'point',
    from,
    lines: [...run.lines],
    point: point
      ? without(written(point), 'kind', 'id', 'lines')
      : { setting: '32 A', outdoors: true, mode: 3, directCurrentDetection: true },
    device: without(written(run.device), 'rating'),
    ...(run.residual ? { residual: written(run.residual) } : {}),
    cables: [cable],
    route: written(run.stretches),
    ...(run.terminalTemperature ? (written({ terminalTemperature: run.terminalTemperature }) as Object_) : {}),
  };
  return { ...base, supply: written(installation.supply), board: written(board), wanted: [wanted] };
}
