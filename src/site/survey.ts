import type { AssessmentOptions } from '../codes/wiring-code.js';
import type { Fact } from '../core/index.js';
import type { DemandOptions, MeterReadings } from '../demand/index.js';
import type { Cable, Installation, Run } from '../installation/index.js';
import type { Amperes, Metres, Ratio, Seconds, WattHours } from '../units/index.js';
import type { BatteryNeed } from './energy-needed.js';

/** What a vehicle needs, for charge times and for the load of the night. */
export interface VehicleNeed {
  /** Energy needed in the battery, Wh. */
  readonly energy: Fact<WattHours>;
  /** The battery from which that follows, where the survey says how full it comes and leaves. */
  readonly battery?: BatteryNeed;
  /** Largest current of the on-board charger, A per line. */
  readonly onBoardCurrent: Fact<Amperes>;
  /** Line conductors that the on-board charger uses. */
  readonly onBoardPhases: Fact<1 | 2 | 3>;
  /** When it is plugged in, `hh:mm`. */
  readonly arrives: string;
  /** When it has to be ready, `hh:mm`. */
  readonly leaves: string;
  /** Share of the energy taken that reaches the battery. */
  readonly efficiency: Fact<Ratio>;
}

/** How a size or rating is learnt that the plan itself has to find. */
export const TO_BE_DESIGNED = 'to be designed';

/** A charge point that is wanted: everything but the conductor size and the device rating, which are to be designed. */
export interface WantedPoint {
  /** Name of the board that it is to be fed from. */
  readonly from: string;
  /** The run with its route; the area of its cable and the rating of its device are unknown until designed. */
  readonly run: Run;
  /** Cables that may be used, in the order in which they are preferred; one of a known size lies there already and is kept. */
  readonly cables: readonly Cable[];
  readonly vehicle?: VehicleNeed;
}

/** Facts about the work that quantities and hours are taken from. */
export interface WorkFacts {
  readonly mounting?: 'wall' | 'post';
  /** Walls to drill for each point. */
  readonly wallsToDrill?: Fact<number>;
  /** Whether a new enclosure is needed, because the board has no way for the circuit. */
  readonly newEnclosure?: Fact<boolean>;
  /** Whether an earth electrode is to be installed. */
  readonly electrode?: boolean;
  /** Whether the conductors between the meter and the installation are to be replaced. */
  readonly replaceTails?: boolean;
  /** How trenches are dug; hours span both when it is not known. */
  readonly digging?: Fact<'hand' | 'machine'>;
  /** What trenches are dug through and has to be made good; hours span all of them when it is not known. */
  readonly surface?: Fact<'turf-or-soil' | 'paving' | 'concrete-or-asphalt'>;
  /** Length of the cable from the current sensor of a load limiter to the limiter, m; along the circuit when absent. */
  readonly sensorCable?: Fact<Metres>;
  /** Whether a current sensor can be fitted on the tails and joined to the charge point; nobody has looked when absent. */
  readonly sensorPossible?: Fact<boolean>;
  /** Longest time in which a load limiter that is offered makes room, vehicles included, s, by its data sheet; not known when absent. */
  readonly limiterReaction?: Fact<Seconds>;
  /** Whether the maker of a load limiter that is offered states that it keeps the fuse from operating; not known when absent. */
  readonly limiterKeepsFuse?: Fact<boolean>;
  /** Current that each charge point still draws on a line when a load limiter that is offered has lost its sensor, A; not asked for when absent. */
  readonly limiterFallback?: Fact<Amperes>;
  /** What the network operator changes, so that somebody has to be there; three phases ask for an enclosure with a main switch. */
  readonly supplyChange?: 'larger-fuse' | 'three-phase' | 'own-service' | 'sound-cut-out';
  /** Travelling, there and back, in minutes. */
  readonly travelMinutes?: number;
  /** Height of the outlet above the ground, m. */
  readonly outletHeight?: Fact<Metres>;
  /** Who has a say in the building. */
  readonly tenure?: Fact<'owner-occupied' | 'rented' | 'shared-building'>;
  /** Whether the owner, or whoever manages a shared building, agrees in writing. */
  readonly ownerAgrees?: Fact<boolean>;
  /** By whom, or by what, the tails are made dead for work ahead of the main switch. */
  readonly isolation?: Fact<'isolator-fitted' | 'supplier' | 'network-operator'>;
  /** Length of the charging lead, m. */
  readonly lead?: Fact<Metres>;
  /** Way of the lead from the outlet to the inlet of the vehicle as it is parked, m. */
  readonly toInlet?: Fact<Metres>;
  /** How the charge point reaches its service. */
  readonly dataConnection?: Fact<'wired' | 'wireless' | 'mobile' | 'none'>;
  /** Whether the device that the circuit needs can still be had for the board, by its maker's list. */
  readonly devicesToBeHad?: Fact<boolean>;
  /** Make and model of the charge point, in the words of the firm. */
  readonly model?: string;
}

/** When an enclosure is counted. */
export const ENCLOSURE_RULE = 'where the board has no way for the circuit, or a single phase only';
/** Whether an enclosure is fitted. */
export const enclosureNeeded = ({ supplyChange, newEnclosure }: WorkFacts): Fact<boolean> | undefined =>
  supplyChange === 'three-phase' ? { state: 'known', value: true } : newEnclosure;

/** A survey of premises: what is there, what is wanted, and the code to be applied. */
export interface Survey {
  readonly format: 'survey/1';
  readonly about: {
    readonly title: string;
    /** Reference of the firm's own. */
    readonly reference?: string;
    /** Set for examples: the scenario is invented. */
    readonly invented?: boolean;
    /** Day of the survey, `yyyy-mm-dd`. */
    readonly date: string;
    /** Country whose network rules apply, ISO 3166. */
    readonly country: string;
    /** Dwelling, small site, or flats. */
    readonly premises: 'dwelling' | 'small-shop' | 'hotel' | 'workplace' | 'flats';
    /** Number of dwellings on the supply, for flats. */
    readonly dwellings?: number;
  };
  /** Wiring code and edition; there is no default. */
  readonly code: { readonly id: string; readonly edition: string };
  readonly installation: Installation;
  readonly wanted: readonly WantedPoint[];
  readonly options: AssessmentOptions;
  /** Choices on the demand of the existing installation. */
  readonly demand?: {
    /** Margin on a metered peak, as a ratio; the customary one when absent, which is printed as such. */
    readonly meteredMargin?: Ratio;
    /** Half-hour readings of the supply meter; those of a whole year govern. */
    readonly readings?: MeterReadings;
    /** Constants of the operator for the demand of many dwellings, all of one kind. */
    readonly dwellings?: NonNullable<DemandOptions['dwellings']>;
    /** Standard of the board at the origin, where its rated diversity is to be used. */
    readonly assembly?: NonNullable<DemandOptions['assembly']>;
    /** Factors of the user's own: k_u by purpose, k_s by name of board. */
    readonly factors?: NonNullable<DemandOptions['factors']>;
    /** Name of the demand method that shall govern instead of the stated rule. */
    readonly governing?: string;
  };
  /** Facts for quantities and hours. */
  readonly work: WorkFacts;
}
