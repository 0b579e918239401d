import { endsOf, knownOf } from '../core/index.js';
import type { Whom } from '../installation/index.js';
import { formatIn } from '../units/index.js';
import { enclosureNeeded, type WorkFacts } from './survey.js';

/** What has to be settled before the day of the work, and is no rule of a code: common practice, no source. @inline */
export interface BeforeWork {
  readonly id:
    | 'owner-consent'
    | 'supply-off'
    | 'isolator'
    | 'half-hour-readings'
    | 'limiter-fallback'
    | 'building-rules'
    | 'lead-reach'
    | 'data-connection'
    | 'devices-for-board'
    | 'kept-cable'
    | 'terminals';
  /** Whether it is open, or known to stand in the way. */
  readonly state: 'open' | 'in-the-way';
  /** Whom to ask. */
  readonly whom: Whom;
  /** What to do, as a sentence without its stop. */
  readonly words: string;
}

function ownerConsent({ tenure, ownerAgrees }: WorkFacts): readonly BeforeWork[] {
  const [whose, agrees] = [knownOf(tenure), knownOf(ownerAgrees)];
  if (whose === 'owner-occupied' || agrees === true) return [];
  const by = { id: 'owner-consent', whom: 'customer' } as const;
  if (agrees === false)
    return [
      { ...by, state: 'in-the-way', words: 'The owner does not agree: nothing can be installed until that is settled' },
    ];
  const words =
    whose === undefined
      ? 'Ask whether the customer owns the building; a tenant, or one of several owners, needs consent in writing'
      : whose === 'rented'
        ? 'Get the owner’s consent in writing'
        : 'Get the consent of whoever manages the building in writing, for the route and for the parking place';
  return [{ ...by, state: 'open', words }];
}

/** Whether something is done ahead of the main switch, where the installation cannot be made dead from within. */
const aheadOfMainSwitch = (work: WorkFacts): boolean =>
  work.replaceTails === true || knownOf(enclosureNeeded(work)) === true;

/** Whether the visit of somebody else is needed, for the tails to be made dead. */
export const visitToIsolate = (work: WorkFacts): boolean =>
  aheadOfMainSwitch(work) &&
  !work.supplyChange &&
  ['supplier', 'network-operator'].includes(knownOf(work.isolation) ?? '');

function supplyOff(work: WorkFacts): readonly BeforeWork[] {
  // whoever changes the supply makes it dead
  if (!aheadOfMainSwitch(work) || work.supplyChange) return [];
  const by = knownOf(work.isolation);
  if (by === 'isolator-fitted') return [];
  const only = 'nobody else breaks a seal or draws the service fuse';
  const whose = by === 'supplier' ? 'electricity supplier' : 'network operator';
  return [
    by === undefined
      ? {
          id: 'supply-off',
          state: 'open',
          whom: 'customer',
          words: `Find out how the tails are made dead: by an isolator that is fitted, by the electricity supplier or by the network operator; ${only}`,
        }
      : {
          id: 'supply-off',
          state: 'open',
          whom: 'operator',
          words: `Book the ${whose} to make the tails dead; ${only}`,
        },
  ];
}

/** Whoever makes the tails dead can fit what saves the next visit. */
function isolator(work: WorkFacts): readonly BeforeWork[] {
  if (!aheadOfMainSwitch(work) || knownOf(work.isolation) === 'isolator-fitted') return [];
  return [
    {
      id: 'isolator',
      state: 'open',
      whom: 'operator',
      words:
        'Have a double-pole isolator fitted between meter and tails while they are dead, by the electricity supplier or the network operator: nobody has to come again then',
    },
  ];
}

/** A load limiter of an option, as far as something is to be asked about it. */
export interface LimiterAsked {
  readonly name: string;
  /** What the estimate of the demand leaves the charge points on the line that is loaded most, A, and their least current together. */
  readonly room?: { readonly left: number; readonly least: number };
  /** Whether nobody stated what the charge points draw when it has lost its sensor. */
  readonly fallbackOpen: boolean;
}

const roomLeft = ({ room }: LimiterAsked): readonly BeforeWork[] =>
  room && room.left < room.least
    ? [
        {
          id: 'half-hour-readings',
          state: 'open',
          whom: 'customer',
          words: `Get the half-hour readings of a year: by the estimate ${Math.max(0, Math.floor(room.left))} A are left for charging while everything else runs, and below ${room.least} A it pauses; the readings show how often`,
        },
      ]
    : [];

/** Of many load controls one question. */
function fallbackAsked(limiters: readonly LimiterAsked[]): readonly BeforeWork[] {
  const open = limiters.flatMap(({ name, fallbackOpen }) => (fallbackOpen ? [name] : []));
  const [first] = open;
  if (first === undefined) return [];
  const [of, its] =
    open.length === 1
      ? ['maker of the load limiter', 'it has lost its sensor']
      : [`makers of the ${open.length} load limiters, ‘${first}’ to ‘${open.at(-1)}’,`, 'one has lost its sensor'];
  return [
    {
      id: 'limiter-fallback',
      state: 'open',
      whom: 'maker',
      words: `Ask the ${of} what each charge point goes on drawing once ${its}: it has to pause, or to draw no more than everything else leaves`,
    },
  ];
}

function leadReach({ lead, toInlet }: WorkFacts): readonly BeforeWork[] {
  const by = { id: 'lead-reach', whom: 'customer' } as const;
  if (!lead || !toInlet)
    return [
      {
        ...by,
        state: 'open',
        words:
          'Ask for a picture of the parked car with the place of the charge point, and see that the lead reaches the inlet',
      },
    ];
  const [reach, way] = [endsOf(lead), endsOf(toInlet)];
  if (reach && way && reach[0] >= way[1]) return [];
  if (reach && way && reach[1] < way[0])
    return [
      {
        ...by,
        state: 'in-the-way',
        words: `The lead of ${formatIn(reach[1], 'm')} does not reach the inlet ${formatIn(way[0], 'm')} away: a longer lead, another place, or the car parked the other way round`,
      },
    ];
  return [
    {
      ...by,
      state: 'open',
      words: 'Measure the way from the charge point to the inlet, and the lead: whether it reaches is not certain',
    },
  ];
}

function dataConnection({ dataConnection: fact }: WorkFacts): readonly BeforeWork[] {
  const how = knownOf(fact);
  if (how !== undefined && how !== 'none') return [];
  return [
    {
      id: 'data-connection',
      state: 'open',
      whom: 'customer',
      words:
        how === 'none'
          ? 'Without a data connection the charge point follows no tariff and gets no updates: agree that with the customer'
          : 'Ask how the charge point reaches the internet, and test the signal where it is to hang',
    },
  ];
}

function devicesForBoard(work: WorkFacts): readonly BeforeWork[] {
  if (knownOf(enclosureNeeded(work)) === true || knownOf(work.devicesToBeHad) === true) return [];
  const by = { id: 'devices-for-board', whom: 'maker' } as const;
  const only = 'a device of another make only where the maker of the board declares it';
  return [
    knownOf(work.devicesToBeHad) === false
      ? {
          ...by,
          state: 'in-the-way',
          words: `The device can no longer be had for the board: plan an enclosure of its own beside it; ${only}`,
        }
      : {
          ...by,
          state: 'open',
          words: `See from make and age of the board whether its device can still be had; ${only}`,
        },
  ];
}

/** A cable that is kept is tested before it is relied on, wherever it came from. */
const keptCables = (runs: readonly string[]): readonly BeforeWork[] =>
  runs.map((run) => ({
    id: 'kept-cable',
    state: 'open',
    whom: 'site',
    words: `Look at the cable that is kept for ${run} from end to end, and test it dead before anything is ordered: continuity of every conductor, insulation resistance between all of them. A joint in it that nobody mentions has to be found, and to stay accessible; without all of that a new one is laid`,
  }));

/** Largest conductor that terminals of charge points and of devices for boards are mostly made for, mm²: common practice, no source. */
const EASY_TERMINALS = 10;

/** A cable that was chosen for its drop may be too thick for what it ends in. */
const terminals = (ends: readonly CableEnd[]): readonly BeforeWork[] =>
  ends
    .filter(({ area }) => area > EASY_TERMINALS)
    .map(({ run, area }) => ({
      id: 'terminals',
      state: 'open',
      whom: 'maker',
      words: `Read in the instructions whether device and charge point of ${run} take conductors of ${area} mm², and their entries the gland; where they do not, plan an enclosure with terminals beside it and the last metre in a smaller cable that the device still protects`,
    }));

/** A new circuit and the size of its line conductors, mm². */
interface CableEnd {
  readonly run: string;
  readonly area: number;
}

/** What an option brings along that has to be settled beside the facts about its work. */
export interface AlsoBefore {
  /** Circuits whose cable lies there already. */
  readonly kept?: readonly string[];
  /** Circuits and the size of their conductors. */
  readonly ends?: readonly CableEnd[];
  readonly limiters?: readonly LimiterAsked[];
  /** What the rules for buildings ask of whoever adds a circuit here, as a sentence without its stop. */
  readonly buildingRules?: string | undefined;
}

/**
 * What is to be settled before the day of the work; what is in order is left out, what stands in the way comes first.
 * @param work the facts about the work of an option
 * @param also what the option brings along
 */
export function beforeWorkOf(
  work: WorkFacts,
  { kept = [], ends = [], limiters = [], buildingRules }: AlsoBefore = {},
): readonly BeforeWork[] {
  const all: readonly BeforeWork[] = [
    ...keptCables(kept),
    ...terminals(ends),
    ...limiters.flatMap(roomLeft),
    ...fallbackAsked(limiters),
    ...ownerConsent(work),
    ...supplyOff(work),
    ...isolator(work),
    ...devicesForBoard(work),
    ...leadReach(work),
    ...dataConnection(work),
    ...(buildingRules === undefined
      ? []
      : [{ id: 'building-rules', state: 'open', whom: 'firm', words: buildingRules } as const]),
  ];
  return [...all.filter((b) => b.state === 'in-the-way'), ...all.filter((b) => b.state === 'open')];
}
