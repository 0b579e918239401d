import { type Fact, isMissing, type Known, known } from '../core/index.js';
import { byTransformer } from '../demand/transformer.js';
import type { Supply, SupplyTransformer } from '../installation/index.js';
import type { Span } from '../physics/power/transformer-supply.js';
import { amperes, formatIn, ohms } from '../units/index.js';
import type { SanityQuestion } from './sanity-question.js';
import type { Survey } from './survey.js';

/** Share by which a reading may be beside what was worked out before anybody is asked: that of an instrument. */
const INSTRUMENT = 0.1;

const upwards = (value: number): number => {
  const step = 10 ** (Math.floor(Math.log10(value)) - 3);
  return Math.ceil(value / step - 1e-9) * step;
};

const platesWords = ({ rating, impedanceVoltage: u, parallel = 1 }: SupplyTransformer): string =>
  `${parallel > 1 ? `${parallel} of ` : ''}${rating.state === 'known' ? formatIn(rating.value, 'VA') : 'a range of ratings'}, u_k ${u.state === 'known' ? `${+(u.value * 100).toPrecision(3)} %` : 'within a range'}`;

/**
 * A survey whose open figures at the origin follow from its transformer: the largest impedance, and the largest current.
 * A reading is never replaced.
 */
export function withTransformer(survey: Survey): Survey {
  const { supply } = survey.installation;
  const found = byTransformer(supply);
  if (!found || !supply.transformer) return survey;
  const { externalImpedance: z, prospectiveCurrent: i } = found;
  const by = (unit: string, { least, most }: Span) =>
    `worked out by IEC 60909-0 from the transformer (${platesWords(supply.transformer as SupplyTransformer)}): ${formatIn(least, unit)} to ${formatIn(most, unit)}, the larger is taken; to be confirmed by measurement`;
  const impedance =
    supply.externalImpedance.state === 'unknown' && !isMissing(z)
      ? { externalImpedance: known(ohms(upwards(z.most)), by('Ω', z)) }
      : {};
  const current =
    supply.prospectiveCurrent.state === 'unknown' && !isMissing(i)
      ? { prospectiveCurrent: known(amperes(upwards(i.most)), by('A', i)) }
      : {};
  return {
    ...survey,
    installation: { ...survey.installation, supply: { ...supply, ...impedance, ...current } },
  };
}

/** Readings at the origin that do not go with the transformer: they stand, and somebody is asked. */
export function transformerQuestions(supply: Supply): readonly SanityQuestion[] {
  const found = byTransformer(supply);
  if (!found) return [];
  const ask = (what: string, unit: string, fact: Fact<number>, span: Known<Span>): readonly SanityQuestion[] => {
    if (isMissing(span) || fact.state === 'unknown' || fact.by?.startsWith('worked out')) return [];
    const [low, high] = fact.state === 'known' ? [fact.value, fact.value] : [fact.least, fact.most];
    if (high >= span.least * (1 - INSTRUMENT) && low <= span.most * (1 + INSTRUMENT)) return [];
    return [
      {
        of: what,
        question: `Does the ${what} of ${formatIn(low, unit)} go with the transformer? From its plate follow ${formatIn(span.least, unit)} to ${formatIn(span.most, unit)}. The reading stands; often it is of another place, of one with parallel paths, or the plate of another transformer.`,
        provenance: 'derived',
      },
    ];
  };
  return [
    ...ask('external impedance', 'Ω', supply.externalImpedance, found.externalImpedance),
    ...ask('prospective current', 'A', supply.prospectiveCurrent, found.prospectiveCurrent),
  ];
}
