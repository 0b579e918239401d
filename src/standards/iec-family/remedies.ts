import {
  type Amperes,
  amperes,
  type Metres,
  metres,
  type Ohms,
  type OhmsPerMetre,
  ohms,
  type SquareMillimetres,
  type Volts,
} from '../../units/index.js';

/** What could be changed when an earth fault is not disconnected in time, with the figure that it would need. */
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

/** A conductor size and its resistance in normal operation. */
export interface SizeOption {
  /** Size, mm². */
  readonly area: SquareMillimetres;
  /** Resistance per metre in normal operation, Ω/m. */
  readonly hot: OhmsPerMetre;
}

/** What a circuit that fails is made of. */
export interface DisconnectionFailure {
  /** Nominal voltage to earth times C_min, V. */
  readonly voltage: Volts;
  /** Impedance ahead of the run, hot, Ω: of the supply and the feeders. */
  readonly origin: Ohms;
  /** Impedance of the supply alone, Ω. */
  readonly external: Ohms;
  /** Loop impedance at the far end, hot, Ω. */
  readonly loop: Ohms;
  /** Largest loop impedance, Ω. */
  readonly limit: Ohms;
  /** Length of the run, m. */
  readonly length: Metres;
  /** Resistance of the line conductor per metre, hot, Ω/m. */
  readonly line: OhmsPerMetre;
  /** Sizes of protective conductor to choose from, ascending. */
  readonly protectiveSizes: readonly SizeOption[];
  /** Sizes of cable, line and protective conductor together per metre, ascending. */
  readonly cableSizes: readonly SizeOption[];
}

/**
 * What could be changed when an earth fault is not disconnected in time, ranked from what touches the circuit least in
 * its nature to what leans on a mechanism or on others: conductors, device, route, residual current device, supply. A
 * remedy that cannot help is left out; a circuit that passes gets none.
 * @param f the figures of the circuit
 * @returns remedies, each with the figure it would need
 * @example
 * ```ts
 * import { metres, ohms, ohmsPerMetre, volts } from 'ohmwright';
 * import { disconnectionRemedies } from 'ohmwright/bs7671';
 *
 * const [first] = disconnectionRemedies({ voltage: volts(218.5), origin: ohms(0.35), external: ohms(0.35), loop: ohms(1.6), limit: ohms(1.3656), length: metres(100), line: ohmsPerMetre(0.0037), protectiveSizes: [], cableSizes: [] });
 * first?.change; // => 'device'
 * ```
 */
export function disconnectionRemedies(f: DisconnectionFailure): readonly Remedy[] {
  if (f.loop <= f.limit) return [];
  const found: Remedy[] = [];
  const room = f.limit - f.origin;
  const perMetre = f.length > 0 ? room / f.length : 0;
  const protective = f.protectiveSizes.find((s) => f.line + s.hot <= perMetre);
  if (protective) found.push({ change: 'protective-conductor', area: protective.area });
  const cable = f.cableSizes.find((s) => s.hot <= perMetre);
  if (cable) found.push({ change: 'cable', area: cable.area });
  found.push({ change: 'device', operatingCurrent: amperes(f.voltage / f.loop) });
  const own = f.loop - f.origin;
  if (room > 0 && own > 0) found.push({ change: 'route', length: metres((f.length * room) / own) });
  found.push({ change: 'residual-current-device', rating: amperes(50 / f.loop) });
  const external = f.external - (f.loop - f.limit);
  if (external > 0) found.push({ change: 'supply', externalImpedance: ohms(external) });
  return found;
}
