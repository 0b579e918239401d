import type { OptionPlan, PointPlan } from '../site/index.js';
import type { Charged, Night, NightLoad, VehicleNight } from '../site/night.js';
import { formatIn } from '../units/index.js';
import { type Block, caution, grid, heading, list, paragraph } from './block.js';
import { gapWords } from './sheet.js';
import { nightLoadPicture } from './svg/index.js';
import { clock } from './svg/night-load.js';

const energy = (wattHours: number): string => `${formatIn(wattHours / 1000, '1', 3)} kWh`;

/** How charging goes: after which time it is done, or what is lacking. */
const chargedWords = ({ after, missing, waited }: Charged): string =>
  after !== undefined
    ? formatIn(after, 's')
    : `not full when it leaves, ${energy(missing)} lacking${waited > 0 ? `, ${formatIn(waited, 's')} of it without current` : ''}`;

const vehicleAt = (night: Night | undefined, point: string): VehicleNight | undefined =>
  night?.vehicles.find((v) => v.point === point);

/** How long a vehicle charges: at full current, beside the others, and in the busiest night. */
export function chargeBlocks({ point, chargeTime }: PointPlan, night: Night | undefined): readonly Block[] {
  if (chargeTime?.seconds === undefined) return [];
  const { seconds, window, about } = chargeTime;
  const late = seconds > window ? ', longer than the vehicle stands there' : '';
  const found = vehicleAt(night, point);
  const shared = found && (found.quiet.after ?? Number.POSITIVE_INFINITY) > seconds * 1.001;
  return [
    paragraph(
      `Time to charge, of the ${formatIn(window, 's')} between plugging in and leaving: ${formatIn(seconds, 's')}${late}. It rests on ${about}.`,
    ),
    ...list([
      ...(shared ? [`With everything but the vehicles at rest: ${chargedWords(found.quiet)}`] : []),
      ...(found?.busy
        ? [`While everything else draws its maximum demand throughout: ${chargedWords(found.busy)}`]
        : []),
    ]),
  ];
}

/** Of several vehicles the one that is worst off: at full current, and in the busiest night. */
export function longestCharge({ points, night }: OptionPlan): string {
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
  const plain = `${formatIn(seconds, 's')} of ${formatIn(window, 's')}`;
  if (seconds > window) return `${plain}, longer than the vehicle stands there`;
  const busy = vehicleAt(night, worst.point)?.busy;
  const same = busy === undefined || (busy.after !== undefined && busy.after <= seconds * 1.001);
  return same ? plain : `${plain}; with all else at its maximum demand: ${chargedWords(busy)}`;
}

/** Bands that can be told apart; what is beyond them is added up. */
const BANDS = 8;

function banded({ bands }: NightLoad): NightLoad['bands'] {
  if (bands.length <= BANDS) return bands;
  const shown = bands.slice(0, BANDS - 1);
  const others = bands.slice(BANDS - 1);
  const sum = (others[0]?.current ?? []).map((_, k) => others.reduce((a, b) => a + (b.current[k] ?? 0), 0));
  return [...shown, { name: `${others.length} other charge points`, current: sum }];
}

/** Time of day of the first whole minute not before it. */
const clockAt = (seconds: number): string => clock(Math.ceil(seconds / 60 - 1e-6));

/** When a vehicle is ready, or what it lacks. */
const readyWords = (arrives: number, charged: Charged | undefined): string =>
  charged === undefined
    ? 'not known'
    : `${charged.after === undefined ? `${energy(charged.missing)} lacking` : clockAt(arrives + charged.after)}${charged.waited > 0 ? `, ${formatIn(charged.waited, 's')} without current` : ''}`;

const overWords = ({ place, line, limit, limitBy, peak, over }: Night['over'][number]): string =>
  `${place}, ${line}: up to ${formatIn(peak, 'A')} while everything else draws its maximum demand, above ${formatIn(limit, 'A')}, ${limitBy}, for ${formatIn(over, 's')} of the night. Nothing holds it back.`;

/** Names that stand one by one in a row; of more the first and the last. */
const NAMED = 4;

/** A row for every vehicle; those that fare alike share one. */
function vehicleRows(vehicles: Night['vehicles']): readonly (readonly string[])[] {
  const alike = new Map<string, { readonly names: string[]; readonly cells: readonly string[] }>();
  for (const v of vehicles) {
    const cells = [
      clockAt(v.arrives),
      clockAt(v.arrives + v.window),
      readyWords(v.arrives, v.quiet),
      readyWords(v.arrives, v.busy),
    ];
    const key = cells.join('|');
    const row = alike.get(key) ?? { names: [], cells };
    row.names.push(v.point);
    alike.set(key, row);
  }
  return [...alike.values()].map(({ names, cells }) => [
    names.length > NAMED ? `${names.length}: ${names[0]} to ${names.at(-1)}` : names.join(', '),
    ...cells,
  ]);
}

/** The night in which all vehicles charge, as a picture with its assumptions. */
export function nightBlocks(night: Night | undefined): readonly Block[] {
  if (!night) return [];
  const { vehicles, load, over, about, gaps } = night;
  return [
    heading(2, 'All vehicles charging'),
    ...list([...about, ...gaps.map((gap) => `${gapWords(gap)}: what rests on it is left out`)]),
    ...grid(
      'Ready at. A demand is known, but no course of it over the day: as a rule real nights lie between the two',
      [
        'charge point',
        'plugged in',
        'leaves',
        'everything else at rest',
        'everything else at its maximum demand throughout',
      ],
      vehicleRows(vehicles),
    ),
    ...over.map((o) => caution(overWords(o))),
    ...(load
      ? [
          {
            kind: 'figure' as const,
            svg: nightLoadPicture({
              title: `Load with all vehicles charging, ${load.place}`,
              minutes: load.minutes,
              bands: banded(load),
              limit: load.limit,
            }),
            caption: `Limit: ${load.limitBy}. Everything else is taken at its estimated maximum demand throughout.`,
          },
        ]
      : []),
  ];
}
