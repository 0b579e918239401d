import { procedure } from '../../core/index.js';
import {
  CalculationError,
  invalidInput,
  type Millimetres,
  metres,
  type Problem,
  ratio,
  type SquareMillimetres,
} from '../../units/index.js';
import {
  conduitCableTerms,
  conduitTermsLong,
  conduitTermsStraight,
  trunkingCableTerms,
  trunkingTerms,
} from './appendix-e.js';

/** Single-core cables of one kind. @inline */
export interface ContainedCable {
  /** Cross-section of the conductor, mm². */
  readonly conductorArea: SquareMillimetres;
  readonly conductor: 'solid' | 'stranded';
  /** How many of them, 1 and up. */
  readonly count: number;
}

/** A run of conduit and what is drawn into it. @inline */
export interface ConduitRun {
  readonly cables: readonly ContainedCable[];
  /** Length between two places to draw in, m, above 0. */
  readonly length: number;
  /** Bends between these places: 0 to 4. */
  readonly bends: number;
}

/** What is wrong with a list of cables. */
function cableProblems(cables: readonly ContainedCable[]): readonly Problem[] {
  if (!Array.isArray(cables) || cables.length === 0) return [{ path: ['cables'], message: 'must be at least one' }];
  return cables.flatMap(({ count }: ContainedCable, i) =>
    Number.isInteger(count) && count >= 1
      ? []
      : [{ path: ['cables', i, 'count'], message: 'must be a whole number from 1' }],
  );
}

const termsOf = (cables: readonly ContainedCable[], term: (c: ContainedCable) => number) =>
  cables.reduce((sum, c) => sum + c.count * term(c), 0);

/**
 * Smallest conduit for single-core cables of 70 °C by the terms of the On-Site Guide, Appendix E: a method of drawing in.
 * Grouping of the circuits inside is judged elsewhere.
 */
export const smallestConduit = /* @__PURE__ */ procedure({
  id: 'smallest-conduit',
  title: 'Smallest conduit for single-core cables',
  output: 'conduitDiameter',
  method: 'terms of the cables added; the smallest conduit whose term for the length and the bends is no less',
  source: { document: 'On-Site Guide', clause: 'Appendix E', provenance: 'one-source' },
  run: ({ cables, length, bends }: ConduitRun) => {
    const problems = [...cableProblems(cables)];
    if (!(Number.isFinite(length) && length > 0)) problems.push({ path: ['length'], message: 'must be above 0 m' });
    if (!(Number.isInteger(bends) && bends >= 0 && bends <= 4))
      problems.push({ path: ['bends'], message: 'must be 0 to 4; more need a box between' });
    if (problems.length > 0) throw invalidInput('a run of conduit', problems);
    const short = bends === 0 && length <= 3;
    const run = short ? 'straight to 3 m' : 'longer or with bends';
    const sum = termsOf(cables, ({ conductorArea, conductor }) =>
      conduitCableTerms.get({ run, conductor, conductorArea }),
    );
    const table = short ? conduitTermsStraight : conduitTermsLong;
    for (const conduitDiameter of table.offers('conduitDiameter') as readonly Millimetres[]) {
      const term = short
        ? conduitTermsStraight.find({ run: 'straight to 3 m', conduitDiameter })
        : conduitTermsLong.find({ bends: ratio(bends), conduitDiameter, length: metres(length) });
      if (term !== undefined && term >= sum) return conduitDiameter;
    }
    throw new CalculationError('no-solution', `no conduit of the guide has a term of ${sum} for this run`, {
      method: 'smallest-conduit',
      values: { sum, length, bends },
    });
  },
});

/** Cables in trunking. @inline */
export interface TrunkingFill {
  readonly cables: readonly ContainedCable[];
  readonly insulation: 'thermoplastic' | 'thermosetting';
  /** Width and height of the trunking, mm, such as `100x50`. */
  readonly size: (typeof trunkingTerms)['axes'][1]['labels'][number];
}

/** Share of the term of a trunking that single-core cables take: 1 at most. On-Site Guide, Appendix E. */
export const trunkingUse = /* @__PURE__ */ procedure({
  id: 'trunking-use',
  title: 'Share of the term of a trunking that cables take',
  output: 'capacityUse',
  method: 'terms of the cables added, over the term of the trunking',
  source: { document: 'On-Site Guide', clause: 'Appendix E', provenance: 'memory' },
  run: ({ cables, insulation, size }: TrunkingFill) => {
    const problems = cableProblems(cables);
    if (problems.length > 0) throw invalidInput('cables in trunking', problems);
    const sum = termsOf(cables, ({ conductorArea, conductor }) =>
      trunkingCableTerms.get({ insulation, conductor, conductorArea }),
    );
    return sum / trunkingTerms.get({ use: 'term', size });
  },
});
