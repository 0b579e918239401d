import { factValue, type Known, silent, whenKnown } from '../../core/index.js';
import type { SupplyTransformer } from '../../installation/index.js';
import { largestParallelLoad } from '../../physics/power/parallel.js';
import { transformerCurrentOf, transformerCurrentWithHarmonics } from '../../physics/power/transformers.js';
import { type Amperes, ratio, type VoltAmperes, voltAmperes } from '../../units/index.js';

/** Rated current of the transformer of a supply on each line, or of all that work in parallel, A. */
export function currentOfTransformer(transformer: SupplyTransformer): Known<Amperes> {
  const { voltage, harmonicLossFactor } = transformer;
  const of = (what: string) => `${what} of the transformer`;
  const volts = factValue(of('rated voltage'), voltage);
  const harmonics = harmonicLossFactor ? factValue(of('harmonic loss factor'), harmonicLossFactor) : ratio(1);
  return whenKnown([ratingOf(transformer, of), volts, harmonics], (transformerRating, transformerVoltage, factor) =>
    transformerCurrentWithHarmonics({
      transformerCurrent: transformerCurrentOf({ transformerRating, transformerVoltage }),
      harmonicLossFactor: factor,
    }),
  );
}

/** Of unlike transformers in parallel the one that is full first sets the load of all. */
function ratingOf(
  { rating, impedanceVoltage, loss, parallel = 1, beside = [] }: SupplyTransformer,
  of: (what: string) => string,
): Known<VoltAmperes> {
  if (beside.length === 0) return whenKnown([factValue(of('rated power'), rating)], (s) => voltAmperes(s * parallel));
  const each = [...Array.from({ length: parallel }, () => ({ rating, impedanceVoltage, loss })), ...beside].map((t) =>
    whenKnown(
      [
        factValue(of('rated power'), t.rating),
        factValue(of('impedance voltage'), t.impedanceVoltage),
        factValue(of('loss'), t.loss),
      ],
      (size, u, lost) => ({ rating: size, impedanceVoltage: u, loss: lost }),
    ),
  );
  const units = whenKnown(each, (...all) => all);
  return whenKnown([silent().run(largestParallelLoad, units)], voltAmperes);
}
