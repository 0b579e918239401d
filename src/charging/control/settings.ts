import { own } from '../../core/own.js';
import { type Amperes, type Seconds, seconds, shown, type WattHours } from '../../units/index.js';
import { type AllocationPolicy, inspectPolicy } from '../allocation/policy.js';
import { type ChargingNetwork, LEAST_CURRENT, type PerLine } from '../network/network.js';
import { type Inspection, isObject } from '../network/refuse.js';
import type { SafeCurrents } from './safe-currents.js';

/** A meter at a node. @inline */
export interface ControlMeter {
  readonly node: string;
  /** Whether it sees everything that passes the node, or the load other than the points. */
  readonly measures: 'everything' | 'other-load';
  /** Which direction it counts as positive: towards the loads, or towards the supply. */
  readonly positive: 'import' | 'export';
}

/** How a controller behaves. Nothing here has a default that is not the careful one. */
export interface ControlSettings {
  /** How current is shared; always in whole steps, and the clock of a rotation is the controller's. */
  readonly policy: Omit<AllocationPolicy, 'stage'>;
  /** Meters; other load of nodes without one is what the network states. */
  readonly meters: readonly ControlMeter[];
  /** Time from one measurement until the next one has arrived, s, above 0. */
  readonly meterPeriod: Seconds;
  /** Time between two steps of the controller, s, above 0. */
  readonly controllerPeriod: Seconds;
  /** Time in which a point passes a new command on to its vehicle, s, 0 and up; 10 s, as IEC 61851-1 allows it, when absent. */
  readonly pointReaction?: Seconds;
  /** Time in which a vehicle follows a changed offer, s, 0 and up: 5 s by IEC 61851-1. */
  readonly vehicleReaction: Seconds;
  /** Age of the last good measurement at which every point falls to its safe current, s, at least the meter period. */
  readonly staleAfter: Seconds;
  /** For how long more must be available before a running point gets it, s, 0 and up. */
  readonly riseAfter: Seconds;
  /** For how long its smallest current must be available before a point that was paused for want of it runs again, s. */
  readonly resumeAfter: Seconds;
  /** Smallest rise of a running point that is worth a command, A, 0 and up; 1 A when absent. */
  readonly riseBy?: Amperes;
  /** Time after which the order of waiting or of energy received is looked at anew, s, above 0; 900 s when absent. */
  readonly turnPeriod?: Seconds;
  /**
   * For how long stamps that are out of place must run evenly with the clock before they count again, s, at least the age
   * of `staleAfter`; 60 s, or that age, when absent. After a jump of a clock the controller shares again within this time,
   * two measurements and two of its own steps.
   */
  readonly recoverAfter?: Seconds;
  /** Whether power exported by generation counts as room beyond the limit; no when absent. */
  readonly exportCounts?: boolean;
  /** Safe currents, A; from the network and its stated load as the worst when absent. */
  readonly safe?: SafeCurrents;
}

/** What is measured at one moment. */
export interface ControlMeasurement {
  /** Clock value at which it was taken, s. */
  readonly at: Seconds;
  /** Current by metered node on each line, A, in the direction that the meter counts. */
  readonly nodes: Readonly<Record<string, PerLine>>;
  /**
   * What each point says, by name. A point that says nothing keeps its command for the time of `staleAfter` and is told its safe
   * current then; what it may draw is kept free.
   */
  readonly points: Readonly<
    Record<
      string,
      {
        /** Whether a vehicle wants energy. */
        readonly connected: boolean;
        /**
         * Current that it draws on each line that it uses, A, 0 and up. A point that is metered with the rest and does not
         * say gets its safe current and no more, and counts as other load.
         */
        readonly current?: Amperes;
        /** Largest current that vehicle, cable and schedule allow now, A, 0 and up; the point's own when absent. */
        readonly most?: Amperes;
        /** Energy received so far, Wh, 0 and up. */
        readonly received?: WattHours;
      }
    >
  >;
}

/** Time in which a point passes a command on, as IEC 61851-1 Table A.6 allows it, s. */
const POINT_REACTION = 10;
/** Least time of recovery where none is given, s. */
const RECOVER_AFTER = 60;

/** Time in which a point passes a command on, s. */
export const pointReactionOf = (settings: Pick<ControlSettings, 'pointReaction'>): Seconds =>
  settings.pointReaction ?? seconds(POINT_REACTION);

/** Time in which point and vehicle together follow a command, s. */
export const reactionOf = (settings: Pick<ControlSettings, 'pointReaction' | 'vehicleReaction'>): number =>
  pointReactionOf(settings) + settings.vehicleReaction;

/** For how long stamps must run evenly before they count again, s. */
export const recoverAfterOf = ({ recoverAfter, staleAfter }: ControlSettings): number =>
  recoverAfter ?? Math.max(RECOVER_AFTER, staleAfter);

/** Everything that is wrong with settings, against the network that they are for; undefined for one that is none. */
export function inspectSettings(
  network: ChargingNetwork | undefined,
  settings: ControlSettings,
  found: Inspection,
  root: readonly string[] = [],
): void {
  if (!isObject(settings)) {
    found.when(true, root, 'must be the settings of a load control');
    return;
  }
  const at = (...path: (string | number)[]) => [...root, ...path];
  inspectPolicy(settings.policy, found, at('policy') as string[]);
  found.number(settings.meterPeriod, at('meterPeriod'), { above: 0 });
  found.number(settings.controllerPeriod, at('controllerPeriod'), { above: 0 });
  found.number(settings.pointReaction, at('pointReaction'), { least: 0, optional: true });
  found.number(settings.vehicleReaction, at('vehicleReaction'), { least: 0 });
  found.number(settings.staleAfter, at('staleAfter'), { least: settings.meterPeriod });
  found.number(settings.riseAfter, at('riseAfter'), { least: 0 });
  found.number(settings.resumeAfter, at('resumeAfter'), { least: 0 });
  found.number(settings.riseBy, at('riseBy'), { least: 0, optional: true });
  found.number(settings.turnPeriod, at('turnPeriod'), { above: 0, optional: true });
  found.number(settings.recoverAfter, at('recoverAfter'), { least: settings.staleAfter, optional: true });
  if (settings.exportCounts !== undefined)
    found.when(typeof settings.exportCounts !== 'boolean', at('exportCounts'), 'must be true or false');
  const nodes = network && new Set(network.nodes.map((n) => n.id));
  const metered = new Set<string>();
  if (found.list(settings.meters, at('meters')))
    settings.meters.forEach((meter, k) => {
      const path = at('meters', k);
      found.when(
        nodes !== undefined && !nodes.has(meter.node),
        [...path, 'node'],
        `there is no node ${shown(meter.node)}`,
      );
      found.when(metered.has(meter.node), [...path, 'node'], `${shown(meter.node)} has another meter too`);
      metered.add(meter.node);
      found.label(meter.measures, [...path, 'measures'], ['everything', 'other-load']);
      found.label(meter.positive, [...path, 'positive'], ['import', 'export']);
    });
  if (settings.safe === undefined || !network) return;
  for (const p of network.points) {
    const least = p.least ?? LEAST_CURRENT;
    const safe = own(settings.safe, p.id);
    if (found.number(safe, at('safe', p.id), { least: 0 }))
      found.when(safe! > 0 && safe! < least, at('safe', p.id), `must be 0 or at least ${least} A`);
  }
}
