import { factValue, type Known, missing, type Table, whenKnown } from '../../core/index.js';
import { isJoined } from '../../installation/index.js';
import { flatCableProtective } from '../../products/bs6004/protective-conductors.js';
import { conductorResistance } from '../../products/iec60228/conductor-resistance.js';
import {
  amperes,
  type Metres,
  metres,
  type Ohms,
  type OhmsPerMetre,
  ohms,
  ohmsPerMetre,
  type SquareMillimetres,
  squareMillimetres,
  type Volts,
  volts,
} from '../../units/index.js';
import type { CircuitCase, CircuitFigures, Remedy } from '../wiring-code.js';
import { metalCoefficient, operatingTemperatureOf } from './conductor-constants.js';
import { lengthOf } from './loop-impedance.js';

/** A conductor size and its resistance in normal operation. @inline */
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

/** Sizes of conductor that remedies choose from, mm²: the preferred ones of IEC 60228. */
const sizes = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120] as const;

/**
 * What could be changed on a circuit whose earth fault is not disconnected in time.
 * @param figures figures of its assessment
 * @param minimumVoltageFactor C_min, 1, above 0 to 1
 * @param attested tables that are read in the place of those of the same identifier
 * @returns remedies, or what is missing to state them
 */
export function remediesOf(
  circuit: CircuitCase,
  figures: CircuitFigures,
  minimumVoltageFactor: number,
  attested?: ReadonlyMap<string, Table>,
): Known<readonly Remedy[]> {
  const { run } = circuit;
  const { cable } = run;
  const read = <T extends { readonly id: string }>(t: T) => (attested?.get(t.id) ?? t) as T;
  const unknown = missing({ kind: 'fact', fact: 'figures of disconnection' });
  // conductors and lengths are sought for one cable all the way
  const joined = isJoined(run);
  const area = factValue('area of the line conductor', cable.area);
  const external = factValue('externalImpedance', circuit.installation.supply.externalImpedance);
  const hot = 1 + metalCoefficient * (operatingTemperatureOf(cable.insulation) - 20);
  const perMetre = (size: number, metal: 'copper' | 'aluminium') => {
    const cold = read(conductorResistance).find({
      metal,
      conductorClass: '2',
      conductorArea: squareMillimetres(size),
    });
    return cold === undefined ? undefined : (cold * hot) / (cable.parallel ?? 1) / (run.ring ? 4 : 1);
  };
  const options = (of: (size: number) => number | undefined): SizeOption[] =>
    sizes.flatMap((size) => {
      const r = of(size);
      return r === undefined ? [] : [{ area: squareMillimetres(size), hot: ohmsPerMetre(r) }];
    });
  const returnOf = (size: number) => {
    const smaller =
      cable.protective === 'bare-core'
        ? read(flatCableProtective).find({
            construction: 'flat-twin-and-earth',
            conductorArea: squareMillimetres(size),
          })
        : size;
    return smaller === undefined ? undefined : perMetre(smaller, 'copper');
  };
  return whenKnown(
    [
      area,
      external,
      figures.loopAtOrigin ?? unknown,
      figures.loopImpedance ?? unknown,
      figures.loopImpedanceLimit ?? unknown,
      lengthOf(run),
    ],
    (size, supply, origin, loop, limit, length) =>
      disconnectionRemedies({
        voltage: volts(circuit.nominalVoltage * minimumVoltageFactor),
        origin,
        external: supply,
        loop,
        limit,
        length,
        line: ohmsPerMetre(perMetre(size, cable.material) ?? 0),
        // in a flat cable the protective conductor comes with the cable; armour is not chosen by itself
        protectiveSizes: cable.protective === 'separate' && !joined ? options((s) => perMetre(s, 'copper')) : [],
        cableSizes:
          joined || cable.protective.startsWith('armour')
            ? []
            : options((s) => {
                const [one, back] = [perMetre(s, cable.material), returnOf(s)];
                return s > size && one !== undefined && back !== undefined ? one + back : undefined;
              }),
      }),
  );
}
