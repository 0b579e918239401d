import type { OptionPlan, PointPlan } from '../site/index.js';
import type { Charged, Night, NightLoad, VehicleNight } from '../site/night.js';
import { formatIn } from '../units/index.js';
import { type Block, caution, grid, heading, list, paragraph } from './block.js';
import { gapWords } from './sheet.js';
import { nightLoadPicture } from './svg/index.js';
import { clock } from './svg/night-load.js';
import type { ReportWords } from './words/pages.js';

const energy = (wattHours: number, w: ReportWords): string => w.long.night.energy(formatIn(wattHours / 1000, '1', 3));
/** A time without current, where there is any. */
const waiting = (seconds: number): string | undefined => (seconds > 0 ? formatIn(seconds, 's') : undefined);

/** How charging goes: after which time it is done, or what is lacking. */
const chargedWords = ({ after, missing, waited }: Charged, w: ReportWords): string =>
  after !== undefined ? formatIn(after, 's') : w.long.night.lacking(energy(missing, w), waiting(waited));

const vehicleAt = (night: Night | undefined, point: string): VehicleNight | undefined =>
  night?.vehicles.find((v) => v.point === point);

/** How long a vehicle charges: at full current, beside the others, and in the busiest night. */
export function chargeBlocks(
  { point, chargeTime }: PointPlan,
  night: Night | undefined,
  w: ReportWords,
): readonly Block[] {
  if (chargeTime?.seconds === undefined) return [];
  const { seconds, window, about } = chargeTime;
  const words = w.long.night;
  const found = vehicleAt(night, point);
  const shared = found && (found.quiet.after ?? Number.POSITIVE_INFINITY) > seconds * 1.001;
  return [
    paragraph(
      words.time(formatIn(seconds, 's'), formatIn(window, 's'), seconds > window, w.said(about, 'charge-time')),
    ),
    ...list([
      ...(shared ? [words.quiet(chargedWords(found.quiet, w))] : []),
      ...(found?.busy ? [words.busy(chargedWords(found.busy, w))] : []),
    ]),
  ];
}

/** Of several vehicles the one that is worst off: at full current, and in the busiest night. */
export function longestCharge({ points, night }: OptionPlan, w: ReportWords): string {
  const strain = (p: PointPlan): number => {
    const busy = vehicleAt(night, p.point)?.busy;
    const { seconds = 0, window = 1 } = p.chargeTime ?? {};
    if (busy && busy.after === undefined) return 1e6 + busy.missing;
    return (busy?.after ?? seconds) / window;
  };
  const timed = points.filter((p) => p.chargeTime?.seconds !== undefined);
  const [worst] = [...timed].sort((a, b) => strain(b) - strain(a));
  const { seconds, window = 0 } = worst?.chargeTime ?? {};
  if (!worst || seconds === undefined) return '';
  const words = w.long.night;
  const plain = words.longest(formatIn(seconds, 's'), formatIn(window, 's'));
  if (seconds > window) return words.tooLong(plain);
  const busy = vehicleAt(night, worst.point)?.busy;
  const same = busy === undefined || (busy.after !== undefined && busy.after <= seconds * 1.001);
  return same ? plain : words.withOthers(plain, chargedWords(busy, w));
}

/** Bands that can be told apart; what is beyond them is added up. */
const BANDS = 8;

function banded({ bands: all }: NightLoad, w: ReportWords): NightLoad['bands'] {
  const [house, ...vehicles] = all;
  const bands = house ? [{ ...house, name: w.said(house.name, 'band') }, ...vehicles] : [];
  if (bands.length <= BANDS) return bands;
  const shown = bands.slice(0, BANDS - 1);
  const others = bands.slice(BANDS - 1);
  const sum = (others[0]?.current ?? []).map((_, k) => others.reduce((a, b) => a + (b.current[k] ?? 0), 0));
  return [...shown, { name: w.long.night.otherPoints(others.length), current: sum }];
}

/** Time of day of the first whole minute not before it. */
const clockAt = (seconds: number): string => clock(Math.ceil(seconds / 60 - 1e-6));

/** When a vehicle is ready, or what it lacks. */
const readyWords = (arrives: number, charged: Charged | undefined, w: ReportWords): string =>
  charged === undefined
    ? w.long.notKnown
    : w.long.night.ready(
        charged.after === undefined ? undefined : clockAt(arrives + charged.after),
        energy(charged.missing, w),
        waiting(charged.waited),
      );

const neutralWords = ({ place, peak, limit, feeder, over }: Night['neutrals'][number], w: ReportWords): string =>
  w.long.night.over(
    w.said(place, 'place'),
    'N',
    formatIn(peak, 'A'),
    limit === undefined ? w.long.notKnown : formatIn(limit, 'A'),
    w.said(`rating of the device of ${feeder}`, 'limit'),
    formatIn(over, 's'),
  );

const overWords = ({ place, line, limit, limitBy, peak, over }: Night['over'][number], w: ReportWords): string =>
  w.long.night.over(
    w.said(place, 'place'),
    line,
    formatIn(peak, 'A'),
    formatIn(limit, 'A'),
    w.said(limitBy, 'limit'),
    formatIn(over, 's'),
  );

/** Names that stand one by one in a row; of more the first and the last. */
const NAMED = 4;

/** A row for every vehicle; those that fare alike share one. */
function vehicleRows(vehicles: Night['vehicles'], w: ReportWords): readonly (readonly string[])[] {
  const alike = new Map<string, { readonly names: string[]; readonly cells: readonly string[] }>();
  for (const v of vehicles) {
    const cells = [
      clockAt(v.arrives),
      clockAt(v.arrives + v.window),
      readyWords(v.arrives, v.quiet, w),
      readyWords(v.arrives, v.busy, w),
    ];
    const key = cells.join('|');
    const row = alike.get(key) ?? { names: [], cells };
    row.names.push(v.point);
    alike.set(key, row);
  }
  return [...alike.values()].map(({ names, cells }) => [
    names.length > NAMED ? w.long.night.names(names[0] ?? '', names.at(-1) ?? '', names.length) : names.join(', '),
    ...cells,
  ]);
}

/** The night in which all vehicles charge, as a picture with its assumptions. */
export function nightBlocks(night: Night | undefined, w: ReportWords): readonly Block[] {
  if (!night) return [];
  const { vehicles, load, over, neutrals, about, gaps } = night;
  const { night: words } = w.long;
  return [
    heading(2, words.title),
    ...list([...about.map((a) => w.said(a, 'night')), ...gaps.map((gap) => words.leftOut(gapWords(gap, w)))]),
    ...grid(words.table, words.head, vehicleRows(vehicles, w)),
    ...over.map((o) => caution(overWords(o, w))),
    ...neutrals.filter((n) => n.over > 0).map((n) => caution(neutralWords(n, w))),
    ...(load
      ? [
          {
            kind: 'figure' as const,
            svg: nightLoadPicture({
              title: words.picture(w.said(load.place, 'place')),
              minutes: load.minutes,
              bands: banded(load, w),
              limit: load.limit,
              words: w.pictures,
            }),
            caption: words.pictureNote(w.said(load.limitBy, 'limit')),
          },
        ]
      : []),
  ];
}
