import type { Fact } from '../core/index.js';
import type { Amperes, Metres, Ratio, Watts } from '../units/index.js';
import type { ResidualDevice } from './device.js';
import type { Electrode } from './supply.js';

/** The line conductors of a supply, in the order of their phases. */
export const lineConductors = ['L1', 'L2', 'L3'] as const;

/** A line conductor. */
export type Line = (typeof lineConductors)[number];

/** What loads are for. */
export const purposes = [
  'lighting',
  'socket-outlets', // ring or radial
  'cooking',
  'instantaneous-water-heating', // showers too
  'thermostatic-water-heating',
  'space-heating',
  'floor-heating',
  'storage-heating',
  'heat-pump',
  'motor',
  'air-conditioning',
  'charge-point',
  'dwellings', // several, behind cut-outs or meters of their own
  'generation',
  'storage',
  'other',
] as const;

/** What a load is for; demand methods treat purposes differently. */
export type Purpose = (typeof purposes)[number];

/** How dwellings are heated, as far as it decides what they take together. @inline */
export type DwellingHeating = 'not-electric' | 'direct-electric' | 'night-storage' | 'heat-pump';

/** Like dwellings that hang on one place of a circuit, a riser or a floor. */
export interface Dwellings {
  /** How many, whole, 1 and up. */
  readonly count: number;
  /** Largest current of one, A per line: the rating of its cut-out, or what is contracted. */
  readonly each: Fact<Amperes>;
  readonly heating: Fact<DwellingHeating>;
  /** Whether their water is heated electrically; not known when absent. */
  readonly electricWater?: Fact<boolean>;
  /** Line conductors of one; taken for single-phase when absent, which loads the lines less evenly. */
  readonly phases?: Fact<1 | 3>;
}

/** A load, or a source, at the end of a circuit or along it. */
export interface Load {
  readonly kind: 'load';
  /** Unique name within the installation. */
  readonly id: string;
  readonly purpose: Purpose;
  /** Connected load, A per line used; of dwellings all of them at once (`dwellingsAtOnce`). */
  readonly current: Fact<Amperes>;
  readonly lines: readonly Line[];
  /** Whether a cooker unit has a socket-outlet; of a cooker not known when absent. */
  readonly withSocket?: boolean;
  /** Standard of the socket-outlets, or of the accessory that connects it; not known when absent. */
  readonly accessories?: Fact<'BS 1363' | 'other'>;
  /** Whether it is connected by plug and socket-outlet; of a source not known when absent, of a load not said. */
  readonly plugged?: Fact<boolean>;
  /** Rated current of its socket-outlets, A; taken for at most 32 A when absent, for which more is asked. */
  readonly socketRating?: Fact<Amperes>;
  /** Least type of residual current device that its maker permits ahead of it; not known when absent. */
  readonly residualType?: Fact<'AC' | 'A' | 'F' | 'B'>;
  readonly powerFactor?: Ratio;
  /** Largest current for a moment, A per line used: of a motor at its start, by its starter; of a welder while it welds. Not known when absent. */
  readonly startCurrent?: Fact<Amperes>;
  /** Share of the time in which a load that works by turns, such as a welder, draws that current; its `current` is that of the same heat. */
  readonly workingShare?: Fact<Ratio>;
  /** Whether it keeps its current or its power when the voltage falls. */
  readonly holds?: 'current' | 'power';
  /** Distance from the start of the run at which it is tapped, m; at the end when absent. */
  readonly at?: Metres;
  /** Whether the circuit is a standard final circuit in the sense of the one-line dwelling rule. */
  readonly standardCircuit?: boolean;
  /** Of the purpose `dwellings`: how many there are, and of what kind. */
  readonly dwellings?: Dwellings;
}

/**
 * Share of like dwellings that the most loaded of their lines has: single-phase ones spread as evenly as their number
 * allows.
 */
export const shareOfLine = ({ count, phases }: Dwellings, lines: number): number =>
  phases?.state === 'known' && phases.value === 3 ? 1 / lines : Math.ceil(count / lines) / count;

/** What open-PEN detection watches: the voltage of exposed metal to earth, the voltage of line to neutral, or something else. @inline */
export type OpenPenDetection =
  | 'open-pen-detection-touch-voltage'
  | 'open-pen-detection-window'
  | 'open-pen-detection-other';

/** How an outdoor charge point on a PME supply is to be made safe; names of our own for the permitted arrangements. @inline */
export type ChargePointEarthing =
  | 'balanced-three-phase'
  | 'low-electrode'
  | OpenPenDetection
  | 'tt-earthing'
  | 'electrical-separation'
  | 'supply-earth'; // indoors, or a supply that is not PME

/** A charge point for electric vehicles. */
export interface ChargePoint {
  readonly kind: 'charge-point';
  /** Unique name within the installation. */
  readonly id: string;
  /** Line conductors that it is connected to, first the one that its own L1 terminal is on. */
  readonly lines: readonly Line[];
  /** Largest current that it is set to, A per line. */
  readonly setting: Fact<Amperes>;
  /** Smallest current that it can offer, A. */
  readonly minimum?: Amperes;
  /** Whether a vehicle that stands outdoors may be charged from it, wherever the point itself hangs. */
  readonly outdoors: Fact<boolean>;
  /** Charging mode of IEC 61851-1. */
  readonly mode: 2 | 3 | 4;
  /** Of mode 2: the socket-outlet that the cable of the vehicle is plugged into; not known when absent. Of a unit of mode 4 that is not fixed: its own. */
  readonly socket?: Fact<'BS 1363' | 'EN 60309'>;
  /** Rated current of that socket-outlet, A, where it is industrial. */
  readonly socketRating?: Fact<Amperes>;
  /** Whether it has a 6 mA direct-current detector of its own. */
  readonly directCurrentDetection?: Fact<boolean>;
  /** Residual current device inside it. */
  readonly residual?: ResidualDevice;
  /** Whether its instructions say that there is none inside; not known when absent and none is described. */
  readonly noResidual?: Fact<boolean>;
  /** Open-PEN detection built in. */
  readonly openPenDevice?: Fact<'none' | OpenPenDetection>;
  /** Of open-PEN detection of another kind: whether its maker shows safety equal to the others; not known when absent. */
  readonly openPenEqualSafety?: Fact<boolean>;
  /** Arrangement that has been chosen, if any. */
  readonly earthing?: ChargePointEarthing;
  /** Electrode of its own, where it has TT earthing. */
  readonly electrode?: Electrode;
  /** Whether armour and protective conductor of the feed are separated from the earth of the point as well. */
  readonly feedSeparated?: Fact<boolean>;
  /** Vehicles that its isolating transformer supplies, where it is separated electrically. */
  readonly vehiclesSeparated?: Fact<number>;
  /** Whether it can feed back from the vehicle; not known when absent. */
  readonly bidirectional?: boolean;
  /** Largest standing protective-conductor current, A. */
  readonly standingLeakage?: Fact<Amperes>;
  /** Rated power, W, where it is stated instead of a current. */
  readonly power?: Watts;
  /** Of mode 4: largest direct-current power that it is set to give, W; not known when absent. */
  readonly directPower?: Fact<Watts>;
  /** Of mode 4: its efficiency at that power; not known when absent. */
  readonly efficiency?: Fact<Ratio>;
  /** Of mode 4: its power factor at that power; not known when absent. */
  readonly powerFactor?: Fact<Ratio>;
}

/** Whether a load is, or is plugged into, a socket-outlet that is no part of a cooker unit; undefined where that is not known. */
export function onSocket({ purpose, plugged, socketRating, accessories }: Load): boolean | undefined {
  if (purpose === 'socket-outlets') return true;
  if (purpose === 'cooking') return false;
  if (plugged?.state === 'known') return plugged.value;
  // an accessory to BS 1363 may be a fused connection unit as well
  const household = accessories?.state === 'known' && accessories.value === 'BS 1363';
  return socketRating !== undefined || (plugged !== undefined || household ? undefined : false);
}

/** Whether a point is plugged into a socket-outlet: a cable of mode 2, or a movable unit of mode 4 whose socket-outlet is described. */
export const isPlugged = ({ mode, socket }: ChargePoint): boolean => mode === 2 || (mode === 4 && socket !== undefined);
