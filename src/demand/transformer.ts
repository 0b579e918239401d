import type { Fact } from '../core/index.js';
import { factValue, isMissing, type Known, missing, type Sheet, silent, whenKnown } from '../core/index.js';
import type { Supply, SupplyTransformer, TransformerCable } from '../installation/index.js';
import { add, complex, divide, magnitude } from '../physics/complex.js';
import type { ParallelTransformer } from '../physics/power/parallel.js';
import {
  type Span,
  type TransformerSupply,
  type TransformerSupplyInput,
  transformerSupply,
} from '../physics/power/transformer-supply.js';
import { conductorResistance } from '../products/iec60228/conductor-resistance.js';
import { voltageFactors } from '../products/iec60909/voltage-factors.js';
import type { SquareMillimetres } from '../units/index.js';

/** How far the impedance voltage of a plate may be from the measured one, as a ratio. IEC 60076-1, tolerances. */
const PLATE = 0.1;
/** How far the loss may be above that of the plate. IEC 60076-1, tolerances. */
const LOSS = 0.15;
/** Reactance of a cable of low voltage, Ω/m: common practice, no source. */
const REACTANCE = 8e-5;
/** Temperature of a loaded cable at worst, °C: cross-linked insulation. */
const HOTTEST = 90;
/** What follows from a transformer at the origin. */
export interface ByTransformer {
  /** Loop of line and earth, Ω. */
  readonly externalImpedance: Known<Span>;
  /** The larger of the three-phase current and that to earth, A. */
  readonly prospectiveCurrent: Known<Span>;
}

const spanOf = (name: string, fact: Fact<number>): Known<Span> =>
  fact.state === 'between'
    ? { least: fact.least, most: fact.most }
    : whenKnown([factValue(name, fact)], (v) => ({ least: v, most: v }));

const factor = (of: 'most' | 'least'): number => voltageFactors.find({ case: of, tolerance: '+10 %' }) as number;

/** A transformer and those in parallel with it, by their plates, which have to be read: how they share turns on all of them. */
export function parallelUnits(
  { rating, impedanceVoltage, loss, parallel = 1, beside = [] }: SupplyTransformer,
  sheet: Sheet = silent(),
): Known<readonly Required<ParallelTransformer>[]> {
  const all = [...Array.from({ length: parallel }, () => ({ rating, impedanceVoltage, loss })), ...beside];
  const each = all.map((t, i) => {
    const name = `transformer${i < parallel ? '' : ` beside it, ${i - parallel + 1}`}`;
    const part = sheet.part(`Plate of the ${name}`);
    const of = (what: string) => `${what} of the ${name}`;
    return whenKnown(
      [
        part.given('transformerRating', factValue(of('rated power'), t.rating)),
        part.given('transformerImpedanceVoltage', factValue(of('impedance voltage'), t.impedanceVoltage)),
        part.given('transformerLoss', factValue(of('loss'), t.loss)),
      ],
      (size, u, lost) => ({ rating: size, impedanceVoltage: u, loss: lost }),
    );
  });
  return whenKnown(each, (...units) => units as readonly Required<ParallelTransformer>[]);
}

/** One transformer in the place of several in parallel: their admittances together, on the sum of their ratings. */
function together(units: readonly Required<ParallelTransformer>[], shift: number) {
  const rating = units.reduce((sum, t) => sum + t.rating, 0);
  const admittance = units
    .map((t) => {
      const [u, r] = [t.impedanceVoltage * (1 + shift), t.loss / t.rating];
      return divide(complex(t.rating / rating), complex(r, Math.sqrt(Math.max(0, u * u - r * r))));
    })
    .reduce(add);
  const impedance = divide(complex(1), admittance);
  return { rating, impedanceVoltage: magnitude(impedance), loss: impedance.re * rating };
}

interface Lengthened {
  readonly shortest: NonNullable<TransformerSupplyInput['cable']>;
  readonly longest: NonNullable<TransformerSupplyInput['cable']>;
}

function cableOf({ material, length, area, protectiveArea, parallel = 1 }: TransformerCable): Known<Lengthened> {
  const of = (what: string) => `${what} of the cable from the transformer`;
  const perMetre = (fact: Fact<SquareMillimetres>, what: string): Known<number> =>
    whenKnown([factValue(what, fact)], (conductorArea): Known<number> => {
      const found = conductorResistance.find({ metal: material, conductorClass: '2', conductorArea });
      return found ?? missing({ kind: 'fact', fact: what, obtain: 'a size of IEC 60228, class 2' });
    });
  const each = [perMetre(area, of('conductor')), perMetre(protectiveArea, of('protective conductor'))] as const;
  return whenKnown([spanOf(of('length'), length), ...each], (lengths, line, protective): Lengthened => {
    const at = (metres: number) => ({
      line: { resistance: (line * metres) / parallel, reactance: (REACTANCE * metres) / parallel },
      protective: { resistance: (protective * metres) / parallel, reactance: (REACTANCE * metres) / parallel },
    });
    return { shortest: at(lengths.least), longest: at(lengths.most) };
  });
}

/** What lies between its terminals and the origin; nothing where somebody says so. */
const wayOf = ({ cable, atOrigin }: SupplyTransformer): Known<Lengthened | 'none'> =>
  cable
    ? cableOf(cable)
    : atOrigin?.state === 'known' && atOrigin.value
      ? 'none'
      : missing({
          kind: 'fact',
          fact: 'cable from the transformer to the origin',
          obtain: 'follow it, or see that the main board stands at the terminals',
        });

/** The plate of the one transformer, each of several alike, or of one that stands for unlike ones in parallel. */
function plateOf(
  t: SupplyTransformer,
  of: (what: string) => string,
): readonly [Known<Span>, Known<Span>, Known<Span>, Known<Span>] {
  const voltage = spanOf(of('rated voltage'), t.voltage);
  if (!t.beside?.length)
    return [
      spanOf(of('rated power'), t.rating),
      voltage,
      spanOf(of('impedance voltage'), t.impedanceVoltage),
      spanOf(of('loss'), t.loss),
    ];
  const { parallel = 1 } = t;
  const units = parallelUnits(t);
  // each plate may be off by its own tenth: all at the same end bound what they do together
  const span = (key: 'impedanceVoltage' | 'loss' | 'rating', share = 1) =>
    whenKnown([units], (all): Span => {
      const [low, high] = [together(all, -PLATE)[key], together(all, PLATE)[key]];
      const plain = together(all, 0)[key];
      return key === 'impedanceVoltage'
        ? { least: low / (1 - PLATE), most: high / (1 + PLATE) }
        : { least: Math.min(low, high, plain) / share, most: Math.max(low, high, plain) / share };
    });
  return [span('rating', parallel), voltage, span('impedanceVoltage'), span('loss', parallel)];
}

/**
 * What a transformer of the survey gives at the origin; what is not known of the grid counts as strong for the largest
 * current, and leaves the impedance open.
 */
export function byTransformer({ transformer: t, nominalVoltage }: Supply): ByTransformer | undefined {
  if (!t) return undefined;
  const { parallel = 1 } = t;
  const of = (what: string) => `${what} of the transformer`;
  const plate = plateOf(t, of);
  const grid = spanOf('fault level of the grid at the transformer', t.gridFaultPower);
  const at = (which: 'least' | 'most', level: Span, cable: TransformerSupplyInput['cable']) =>
    whenKnown(plate, (rating, voltage, u, loss): Known<TransformerSupply> => {
      // the loss of a plate is the resistive part of its impedance voltage
      if ((loss.most * (1 + LOSS)) / rating.least > u.least * (1 - PLATE))
        return missing({
          kind: 'fact',
          fact: of('loss'),
          obtain: 'look at the plate again: so large a loss is more than the impedance voltage allows',
        });
      // the weaker end of a plate that is known within a range only, for the larger impedance; the stronger for the current
      const [size, volts] = which === 'most' ? [rating.least, voltage.most] : [rating.most, voltage.least];
      return transformerSupply({
        lineVoltage: Math.sqrt(3) * nominalVoltage,
        transformer: {
          rating: size * parallel,
          voltage: volts,
          impedanceVoltage: { least: u.least * (1 - PLATE), most: u.most * (1 + PLATE) },
          loss: { least: loss.least * parallel, most: loss.most * (1 + LOSS) * parallel },
        },
        gridFaultPower: level,
        voltageFactor: { least: factor('least'), most: factor('most') },
        ...(cable ? { cable, hottest: HOTTEST } : {}),
      });
    });
  const way = wayOf(t);
  const shortest = isMissing(way) || way === 'none' ? undefined : way.shortest;
  const longest = isMissing(way) || way === 'none' ? undefined : way.longest;
  const strongest: Span = isMissing(grid) ? { least: Number.MAX_VALUE, most: Number.POSITIVE_INFINITY } : grid;
  const strong = at('least', strongest, shortest);
  const weak = whenKnown([grid, way], (level, _way) => at('most', level, longest));
  // what the plate leaves open is said once
  if (isMissing(strong)) return { externalImpedance: strong, prospectiveCurrent: strong };
  const { least } = strong.externalImpedance;
  return {
    externalImpedance: whenKnown([weak], (w) => ({ least, most: w.externalImpedance.most })),
    prospectiveCurrent: {
      least: isMissing(weak) ? 0 : Math.max(weak.threePhase.least, weak.lineEarth.least),
      most: Math.max(strong.threePhase.most, strong.lineEarth.most),
    },
  };
}
