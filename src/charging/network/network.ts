import type { Line } from '../../installation/index.js';
import type { Amperes, Ratio, Seconds, WattHours } from '../../units/index.js';

/** A current on each line conductor in the order of `lineConductors`, A; positive towards the loads, negative when power is exported. */
export type PerLine = readonly [Amperes, Amperes, Amperes];

/** A place with a limit that everything behind it shares: intake, board, row of points. */
export interface NetworkNode {
  /** Unique name within the network. */
  readonly id: string;
  /** Name of the node that feeds it; absent for the intake. */
  readonly parent?: string;
  /** Largest current on each line, A, 0 and up; none when absent. */
  readonly limit?: PerLine;
  /** Other load at this node, without what is at nodes behind it and without the points, A; negative for generation. */
  readonly load?: PerLine;
  /**
   * Largest other load that can come at this node and behind it, without the points, A, 0 and up: what a load control
   * keeps free when the meter there is silent. What `load` says here and behind when absent; a metered node that has
   * neither gives no current then.
   */
  readonly worst?: PerLine;
  /** Largest difference between two lines, A, 0 and up; none when absent. */
  readonly unbalance?: Amperes;
  /**
   * Largest current of the neutral, A, 0 and up; none when absent. Loads and vehicles count at unity power factor. It is
   * kept by a polygon of 24 sides within it: to the last ampere with one line loaded or two alike, within 1 % otherwise,
   * within 5 % with third harmonics.
   */
  readonly neutralLimit?: Amperes;
  /** Third-harmonic current over the line current of what is behind it, which adds up in the neutral, 0 to 1; none when absent. */
  readonly thirdHarmonic?: Ratio;
}

/** A charge point and the vehicle at it. */
export interface NetworkPoint {
  /** Unique name within the network. */
  readonly id: string;
  readonly node: string;
  /** Lines that it is connected to, first the one on its own L1 terminal: the phase rotation. */
  readonly lines: readonly Line[];
  /** Largest current, A per line: the smallest of setting, cable and vehicle. */
  readonly most: Amperes;
  /** Smallest current with which it charges, A; 6 A when absent. */
  readonly least?: Amperes;
  /** How many of its lines the vehicle uses, from the L1 terminal on; all when absent. */
  readonly vehicleLines?: 1 | 2 | 3;
  /** Whether a vehicle wants energy; yes when absent. Others count in an equal share only. */
  readonly connected?: boolean;
  /** Weight of its share, above 0; 1 when absent. */
  readonly weight?: Ratio;
  /** Order of service, 1 first; 1 when absent. */
  readonly priority?: number;
  /** Clock value since which it waits, s; 0 when absent. */
  readonly waitingSince?: Seconds;
  /** Energy that it has received, Wh; 0 when absent. */
  readonly received?: WattHours;
}

/** A network of limits and the charge points on it: plain data, made by hand or by `networkOf`. */
export interface ChargingNetwork {
  /** Limits, in any order. */
  readonly nodes: readonly NetworkNode[];
  /** Points, in any order. */
  readonly points: readonly NetworkPoint[];
}

/** The smallest current of a running charge, A. IEC 61851-1. */
export const LEAST_CURRENT = 6;
