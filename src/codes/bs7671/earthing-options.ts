import type { Calculator } from '../../calculation/index.js';
import { type Amount, type CheckResult, overall } from '../../core/index.js';
import { earthingWords } from '../../installation/marking.js';
import type { PointPlace } from '../iec-family/places.js';
import type { EarthingOption, WiringCode } from '../wiring-code.js';

/** Places of the arrangements in 722.411.4.1, and what the clause adds to their name. */
const places: Readonly<Partial<Record<EarthingOption['arrangement'], readonly [before: string, after: string]>>> = {
  'balanced-three-phase': ['(i) ', ''],
  'low-electrode': ['(ii) ', ''],
  'open-pen-detection-touch-voltage': ['(iii) ', ''],
  'open-pen-detection-window': ['(iv) ', ''],
  'open-pen-detection-other': ['(v) ', ', of equal safety'],
};
const titleOf = (arrangement: EarthingOption['arrangement']): string => {
  const [before, after] = places[arrangement] ?? ['', ''];
  return `${before}${earthingWords[arrangement]}${after}`;
};

/** The arrangements for a point as the contents list judges them: none indoors, nor on a supply without a PEN conductor to break. */
export const earthingOptionsBy =
  (calculator: Pick<Calculator, 'of'>): WiringCode['earthingOptions'] =>
  (circuit, point) => {
    const calculation = calculator.of(circuit);
    const own = calculation.things('points').find(({ place }) => (place as PointPlace).point.id === point.id);
    if (!own || typeof own.figure('arrangementNeeded') === 'string') return [];
    const offers = (own.figure('earthingOffers') ?? {}) as Readonly<
      Record<EarthingOption['arrangement'], readonly CheckResult[]>
    >;
    return (Object.keys(offers) as EarthingOption['arrangement'][]).map((arrangement) => {
      const results = offers[arrangement];
      const { verdict, failed, undetermined } = overall(results);
      return {
        arrangement,
        title: titleOf(arrangement),
        possible: verdict,
        because: reason(results, failed, undetermined),
        figures: results.flatMap((r) => [...figure(r.value), ...figure(r.limit)]),
        results,
      };
    });
  };

const figure = (a: Amount | undefined): readonly Amount[] => (a ? [a] : []);

const written = (r: CheckResult): string => {
  if (r.value && r.limit)
    return `${r.title}: ${+r.value.value.toPrecision(4)} ${r.value.unit} against ${+r.limit.value.toPrecision(4)} ${r.limit.unit}`;
  const gaps = (r.gaps ?? []).map((g) => (g.kind === 'fact' ? g.fact : g.explain));
  return gaps.length > 0 ? `not known: ${gaps.join(', ')}` : (r.because ?? r.title);
};

function reason(
  results: readonly CheckResult[],
  failed: readonly CheckResult[],
  undetermined: readonly CheckResult[],
): string {
  const decisive =
    failed.length > 0 ? failed : undetermined.length > 0 ? undetermined : results.filter((r) => r.weight === 'rule');
  const advised = results.filter((r) => r.weight === 'advice' && r.verdict === 'fail');
  return [...new Set([...decisive, ...(failed.length > 0 ? [] : advised)].map(written))].join('; ');
}
