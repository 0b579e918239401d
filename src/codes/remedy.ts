import type { Amperes, Metres, Ohms, SquareMillimetres } from '../units/index.js';

/** What could be changed when an earth fault is not disconnected in time, with the figure that it would need. @inline */
export type Remedy =
  | {
      /** A larger protective conductor. */
      readonly change: 'protective-conductor';
      /** Smallest size that would do, mm². */
      readonly area: SquareMillimetres;
    }
  | {
      /** Larger line conductors with the protective conductor that goes with them. */
      readonly change: 'cable';
      /** Smallest size that would do, mm². */
      readonly area: SquareMillimetres;
    }
  | {
      /** A device that operates at a smaller current, such as type B in place of C. */
      readonly change: 'device';
      /** Largest current that it may need, A. */
      readonly operatingCurrent: Amperes;
    }
  | {
      /** A shorter route, or a board that is nearer. */
      readonly change: 'route';
      /** Longest route, m. */
      readonly length: Metres;
    }
  | {
      /** A lower external impedance, from the distributor. */
      readonly change: 'supply';
      /** Largest external impedance, Ω. */
      readonly externalImpedance: Ohms;
    }
  | {
      /** A residual current device at the origin of the circuit. */
      readonly change: 'residual-current-device';
      /** Largest rated residual current, A. */
      readonly rating: Amperes;
    };
