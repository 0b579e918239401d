import { own } from '../../core/own.js';
import type { Amperes, Seconds, WattHours } from '../../units/index.js';
import type { AllocationPolicy } from '../allocation/policy.js';
import { type ChargingNetwork, LEAST_CURRENT, type PerLine } from '../network/network.js';
import { inspection } from '../network/refuse.js';
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
  /** Time between two measurements, s, above 0. */
  readonly meterPeriod: Seconds;
  /** Time between two steps of the controller, s, above 0. */
  readonly controllerPeriod: Seconds;
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
  /** Time after which the order by energy received is looked at anew, s, above 0; 900 s when absent. */
  readonly turnPeriod?: Seconds;
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
  /** What each point says, by name. A point that says nothing keeps its command and the current for it is kept free. */
  readonly points: Readonly<
    Record<
      string,
      {
        /** Whether a vehicle wants energy. */
        readonly connected: boolean;
        /** Current that it draws on each line that it uses, A, 0 and up; counted as other load when absent. */
        readonly current?: Amperes;
        /** Largest current that vehicle, cable and schedule allow now, A, 0 and up; the point's own when absent. */
        readonly most?: Amperes;
        /** Energy received so far, Wh, 0 and up. */
        readonly received?: WattHours;
      }
    >
  >;
}

/** Everything that is wrong with settings, against the network that they are for. */
export function inspectSettings(network: ChargingNetwork, settings: ControlSettings): void {
  const found = inspection();
  found.number(settings.meterPeriod, ['meterPeriod'], { above: 0 });
  found.number(settings.controllerPeriod, ['controllerPeriod'], { above: 0 });
  found.number(settings.vehicleReaction, ['vehicleReaction'], { least: 0 });
  found.number(settings.staleAfter, ['staleAfter'], { least: settings.meterPeriod });
  found.number(settings.riseAfter, ['riseAfter'], { least: 0 });
  found.number(settings.resumeAfter, ['resumeAfter'], { least: 0 });
  found.number(settings.riseBy, ['riseBy'], { least: 0, optional: true });
  found.number(settings.turnPeriod, ['turnPeriod'], { above: 0, optional: true });
  const nodes = new Set(network.nodes.map((n) => n.id));
  const metered = new Set<string>();
  settings.meters.forEach((meter, k) => {
    found.when(!nodes.has(meter.node), ['meters', k, 'node'], `there is no node '${meter.node}'`);
    found.when(metered.has(meter.node), ['meters', k, 'node'], `'${meter.node}' has another meter too`);
    metered.add(meter.node);
  });
  if (settings.safe)
    for (const p of network.points) {
      const safe = own(settings.safe, p.id);
      if (found.number(safe, ['safe', p.id], { least: 0 }))
        found.when(
          safe! > 0 && safe! < (p.least ?? LEAST_CURRENT),
          ['safe', p.id],
          `must be 0 or at least ${p.least ?? LEAST_CURRENT} A`,
        );
    }
  found.refuse('The settings of a load control');
}
