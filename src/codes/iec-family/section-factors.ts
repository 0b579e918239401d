import { by, derive, type Line, orElse, set, when } from '../../calculation/index.js';
import { contradicted } from '../../core/contradicted.js';
import { type Fact, type Known, known, missing, type Table, unknown } from '../../core/index.js';
import { type Metres, metres, type Ratio, ratio } from '../../units/index.js';
import type { soilFactors } from './factor-forms.js';
import { isBuried } from './facts.js';
import { ofSection, type SectionPlace } from './places.js';

/** Largest depth for which the figures of cables in the ground are, m. */
const deepest = 0.8;

/**
 * Factor for the soil around cables in the ground: deeper than 0.8 m they carry less than the tables say, and the
 * factors for it are not entered.
 */
export const soilFactor = <N extends string>(
  table: Table<(typeof soilFactors)['axes'], 'soilFactor'>,
  laying: Line<N, 'ducts' | 'direct'>,
) => ({
  depth: ofSection(({ section }) => section.depth ?? unknown('measure it, before the trench is filled'), {
    called: ({ section }) => `depth of ${section.name}`,
  }),
  soilResistivity: ofSection(
    ({ section }) => section.soilResistivity ?? unknown('assume 2.5 K·m/W by stating it, or have the soil measured'),
  ),
  laying,
  soilFactor: when(
    'buried',
    when(
      derive(['depth'], ({ depth }) => depth <= deepest, { direction: { depth: -1 } }),
      by(table),
      derive(
        ['depth'],
        ({ depth }): Known<Ratio> =>
          missing({
            kind: 'cell',
            table: table.id,
            explain: `the figures for cables in the ground hold down to ${deepest} m; factors for greater depth, here ${depth} m, are not entered`,
            source: table.source,
          }),
      ),
    ),
    set(ratio(1), 'not in the ground'),
  ),
});

/** Length in thermal insulation; in the ground there is none. */
function insulatedLengthOf({ section }: SectionPlace): Fact<Metres> {
  const { insulated } = section;
  if (insulated?.state === 'unknown') return insulated;
  if (!isBuried(section))
    return (
      insulated ?? unknown('see whether and over what length insulation surrounds the cable; 0 m where it does not')
    );
  return insulated === undefined || (insulated.state === 'known' && insulated.value === 0)
    ? known(metres(0), 'in the ground')
    : contradicted('it lies in the ground, where no thermal insulation surrounds it: see which of the two is right');
}

/** Whether and how thermal insulation around the cable counts. */
export const thermalInsulation = (containedBy: RegExp, besideBy: RegExp) => ({
  insulatedLength: ofSection(insulatedLengthOf, { called: ({ section }) => `insulated length of ${section.name}` }),
  insulationCounts: ofSection(({ section: { method } }) => {
    if (method.state === 'known' && containedBy.test(method.value)) return 'in the method';
    return method.state === 'known' && besideBy.test(method.value) ? 'beside the method' : 'by a factor';
  }),
});
/** Whether the length in thermal insulation is none; one that is not known counts as some. */
export const uninsulated = () =>
  orElse(
    derive(['insulatedLength'], ({ insulatedLength }) => insulatedLength === 0, { direction: { insulatedLength: -1 } }),
    set(false),
  );
