import { isMissing, type Known, recorder, type Sheet } from '../core/index.js';
import { byCable, isPlugged, type Run, type Stretch } from '../installation/index.js';
import { sizeWords } from '../installation/marking.js';
import { orderWords, separateResidual } from '../installation/ordering.js';
import { metres, ratio } from '../units/index.js';
import type { TradeWords } from './applicable.js';
import { visitToIsolate } from './before-work.js';
import { cableToOrder, fixingsAlong } from './formulas.js';
import type { Item, ItemFacts } from './item.js';
import { ENCLOSURE_RULE, enclosureNeeded, type WorkFacts } from './survey.js';
import { inGround, sensorCable, trenchItems } from './trench.js';
import type { WorkRules } from './work-rules.js';

type Add = (key: string, words: string, quantity: number, rule: string, unit?: Item['unit']) => void;

const adder =
  (items: Item[]): Add =>
  (key, words, quantity, rule, unit = 'each') =>
    items.push({ key, words, quantity, unit, rule });

/** Cable, fixings, containment, device and glands of a run. */
function runItems(run: Run, work: WorkFacts, rules: WorkRules, sheet: Sheet, kept = false): Item[] {
  const parts = byCable(run);
  const last = parts.length - 1;
  const items = parts.flatMap((part, i) =>
    lengthItems(part, work, rules, sheet, kept, Number(i > 0) + Number(i < last)),
  );
  const each = adder(items);
  if (last > 0 && !kept) each('joint-box', 'joint box with terminals, accessible', last, 'one where the cable changes');
  each('protective-device', orderWords(run), 1, 'one for the circuit');
  for (const words of separateResidual(run))
    each('residual-device', words, 1, 'where the overcurrent device has no such part');
  return items;
}

/** Cable, fixings, containment and glands of the length of a cable; of what lies there already its new ends alone. */
function lengthItems(run: Run, work: WorkFacts, rules: WorkRules, sheet: Sheet, kept: boolean, joints: number): Item[] {
  const { cable } = run;
  const laid = run.stretches.filter((s) => s.existing !== true);
  const isThere = run.stretches.length > 0 && laid.length === 0;
  const size = sizeWords(cable) ?? 'size to be decided';
  const sort = `${cable.construction.replaceAll('-', ' ')} ${cable.cores}-core ${size}, ${cable.material}, ${cable.insulation.replace('-', ' ')} °C`;
  const items: Item[] =
    kept || isThere
      ? []
      : [
          measured(
            `cable:${cable.construction}:${cable.cores}:${size}`,
            sort,
            'm',
            orderLength(laid, rules, sheet),
            `route + ${rules.wasteShare * 100} % + ${rules.terminationLength} m at each end`,
          ),
          ...fixings(laid, rules, sheet),
          ...containment(laid, rules),
          ...laid.filter(inGround).flatMap((s) => trenchItems(s, work, rules)),
        ];
  if (cable.construction === 'armoured')
    adder(items)(
      'gland',
      `gland for ${cable.cores}-core armoured cable ${size}`,
      isThere ? joints : rules.glandsPerArmouredCable,
      isThere ? 'one at each joint' : 'one at each end',
    );
  return items;
}

/** What occurs once for a job, however many points it has. */
function jobItems(items: Item[], work: WorkFacts, needs: ItemFacts, words: TradeWords): void {
  const each = adder(items);
  conditional(
    items,
    enclosureNeeded(work),
    (yes) => (yes ? 1 : 0),
    {
      key: 'enclosure',
      words: 'enclosure with main switch, and supply terminal block',
      unit: 'set',
      rule: ENCLOSURE_RULE,
    },
    'work.newEnclosure',
  );
  if (!work.replaceTails)
    conditional(
      items,
      enclosureNeeded(work),
      (yes) => (yes ? 1 : 0),
      {
        key: 'enclosure-tails',
        words: `${words.tails} and earthing conductor from the terminal block to the enclosure`,
        unit: 'set',
        rule: ENCLOSURE_RULE,
      },
      'work.newEnclosure',
    );
  if (visitToIsolate(work))
    each('isolation-visit', 'visit to make the tails dead and live again', 1, 'for work ahead of the main switch');
  if (work.replaceTails) each('tails', words.newTails, 1, 'where the tails are replaced', 'set');
  if (needs.electrode)
    each(
      'electrode',
      'earth rod with clamp, inspection pit and earthing conductor',
      1,
      'the earthing arrangement needs an electrode',
      'set',
    );
  for (const what of needs.bonding ?? [])
    each('bonding', `main bonding conductor with clamp: ${what}`, 1, 'the one that is there is too small', 'set');
  if (needs.earthingConductor)
    each('earthing-conductor', 'earthing conductor', 1, 'the one that is there is too small', 'set');
  each('records', 'certificate, test sheets and user instructions', 1, 'once for the job', 'set');
}

/**
 * Items of material for one charge point circuit, from the stretches of its route; what occurs once for a job goes with
 * its first point.
 */
export function quantitiesOf(
  run: Run,
  work: WorkFacts,
  rules: WorkRules,
  needs: ItemFacts,
  words: TradeWords,
  sheet: Sheet = recorder('Quantities'),
): readonly Item[] {
  const items = runItems(run, work, rules, sheet, needs.cableKept);
  const each = adder(items);
  const plugged = run.feeds.some((o) => o.kind === 'charge-point' && isPlugged(o));
  each(
    plugged ? 'socket-outlet' : 'charge-point',
    plugged
      ? 'socket-outlet for the vehicle, weatherproof where it is outdoors'
      : `charge point, ${work.model ?? 'as specified'}`,
    1,
    'one for each charge point wanted',
  );
  conditional(
    items,
    work.wallsToDrill,
    (n) => n,
    { key: 'wall-sleeve', words: 'wall sleeve with weather seal', unit: 'set', rule: 'one for each wall drilled' },
    'work.wallsToDrill',
  );
  if (needs.surgeProtection) each('surge-protection', 'surge protective device', 1, 'required and not there');
  items.push(...limiterItems(run, work, needs));
  if (work.mounting === 'post')
    each('post', 'post and base for the charge point', 1, 'the charge point stands free', 'set');
  each('labels', 'labels and notices', 1, 'one for each circuit', 'set');
  if (needs.first !== false) jobItems(items, work, needs, words);
  return items.filter((item) => item.quantity !== 0);
}

/** Items of material for a new feeder and the boards at its end. */
export function feederQuantitiesOf(
  run: Run,
  work: WorkFacts,
  rules: WorkRules,
  sheet: Sheet = recorder('Quantities'),
): readonly Item[] {
  const items = runItems(run, work, rules, sheet);
  const each = adder(items);
  for (const o of run.feeds)
    if (o.kind === 'board') {
      const rating = o.mainSwitch?.rating.state === 'known' ? `, main switch ${o.mainSwitch.rating.value} A` : '';
      each(
        'board',
        rating ? `distribution board${rating}` : `distribution board ${o.id}`,
        1,
        'one at the end of the feeder',
        'set',
      );
      if (o.surgeProtection?.state === 'known' && o.surgeProtection.value)
        each('surge-protection', 'surge protective device of a distribution board', 1, 'as the survey specifies');
    }
  each('labels', 'labels and notices', 1, 'one for each circuit', 'set');
  return items;
}

/** A current sensor for each load limiter, and its cable. */
const limiterItems = (run: Run, work: WorkFacts, { limiters }: ItemFacts): readonly Item[] =>
  limiters.flatMap((feeders): readonly Item[] => {
    const { extent, rule } = sensorCable(run, work, feeders);
    return [
      {
        key: 'current-sensor',
        words: 'current sensor of the load limiter',
        quantity: 1,
        unit: 'set',
        rule: 'the option rests on a load limiter',
      },
      {
        key: 'sensor-cable',
        words: 'cable for the current sensor',
        unit: 'm',
        rule,
        ...(extent === undefined
          ? { gaps: [{ kind: 'fact' as const, fact: 'work.sensorCable' }] }
          : { quantity: Math.ceil(extent.most - 1e-9) }),
      },
    ];
  });

const measured = (key: string, words: string, unit: Item['unit'], value: Known<number>, rule: string): Item =>
  isMissing(value)
    ? { key, words, unit, rule, gaps: value.missing }
    : { key, words, unit, rule, quantity: Math.ceil(value - 1e-9) };

function orderLength(stretches: readonly Stretch[], rules: WorkRules, sheet: Sheet): Known<number> {
  const parts = stretches.map((s) => {
    const part = sheet.part(s.name);
    part.given('length', typical(s.length));
    return part;
  });
  const length = sheet.gather('sum', 'length', 'length', parts);
  const wasteShare = sheet.given('wasteShare', ratio(rules.wasteShare), rules.source);
  const terminationLength = sheet.given('terminationLength', metres(rules.terminationLength), rules.source);
  return sheet.step(cableToOrder, { length, wasteShare, terminationLength });
}

/** Material is ordered for the longest route that is possible. */
const typical = (f: Stretch['length']): Stretch['length'] =>
  f.state === 'between' ? { state: 'known', value: f.most, ...(f.by ? { by: `${f.by}, the longest` } : {}) } : f;

function fixings(stretches: readonly Stretch[], rules: WorkRules, sheet: Sheet): Item[] {
  return stretches.flatMap((s) => {
    const spacing = rules.fixingSpacing[s.containment ?? ''];
    if (spacing === undefined || inGround(s)) return [];
    const part = sheet.part(`Fixings: ${s.name}`);
    const length = part.given('length', typical(s.length));
    const fixingSpacing = part.given('fixingSpacing', metres(spacing), rules.source);
    const n = part.step(fixingsAlong, { length, fixingSpacing });
    return [
      measured(`fixing:${s.containment}`, `fixings, ${s.containment}: ${s.name}`, 'each', n, `every ${spacing} m`),
    ];
  });
}

function containment(stretches: readonly Stretch[], rules: WorkRules): Item[] {
  return stretches.flatMap((s) => {
    if (!s.containment || ['clipped', 'free', 'buried'].includes(s.containment)) return [];
    const f = typical(s.length);
    const rule = `length of the stretch + ${rules.wasteShare * 100} %`;
    const key = `containment:${s.containment}`;
    const words = `${s.containment}: ${s.name}`;
    return [
      f.state === 'known'
        ? { key, words, unit: 'm' as const, rule, quantity: Math.ceil(f.value * (1 + rules.wasteShare)) }
        : { key, words, unit: 'm' as const, rule, gaps: [{ kind: 'fact' as const, fact: `length of ${s.name}` }] },
    ];
  });
}

function conditional<T>(
  items: Item[],
  fact: { readonly state: string; readonly value?: T } | undefined,
  count: (v: T) => number,
  item: Omit<Item, 'quantity' | 'gaps'>,
  name: string,
): void {
  if (fact === undefined || fact.state === 'unknown') items.push({ ...item, gaps: [{ kind: 'fact', fact: name }] });
  else if (fact.state === 'known') items.push({ ...item, quantity: count(fact.value as T) });
}
