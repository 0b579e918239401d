import { type Amount, type CheckResult, factValue, overall, type Sheet, silent } from '../../core/index.js';
import type { EarthingOption } from '../wiring-code.js';
import {
  balanced,
  builtIn,
  type EarthingQuestion,
  island,
  lowElectrode,
  separation,
  window,
} from './earthing-arrangements.js';
import * as c from './earthing-checks.js';

export type { EarthingQuestion } from './earthing-arrangements.js';

const place = {
  'caravan-park': 'a caravan park',
  marina: 'a marina',
  'construction-site': 'a construction site',
  'filling-station': 'a filling station',
  none: '',
} as const;

/** Judges every permitted arrangement for a charge point outdoors on a PME supply and writes it on a sheet. */
export function writeEarthingOptions(sheet: Sheet, q: EarthingQuestion): readonly EarthingOption[] {
  const phases = factValue('phases of the supply', q.supply.phases);
  const barred = place[q.supply.specialLocation ?? 'none'];
  const option = (
    arrangement: EarthingOption['arrangement'],
    title: string,
    usesSupplyEarth: boolean,
    judge: (part: Sheet) => readonly CheckResult[],
  ): EarthingOption => {
    const part = sheet.part(title);
    const results =
      usesSupplyEarth && barred
        ? [
            part.check(c.combinedEarthAllowed, {
              holds: false,
              because: `the earth of a PME supply is barred in ${barred}, whatever device is added`,
            }),
          ]
        : judge(part);
    const { verdict, failed, undetermined } = overall(results);
    return {
      arrangement,
      title,
      possible: verdict,
      because: reason(results, failed, undetermined),
      figures: figuresOf(results),
      results,
    };
  };
  return [
    option('balanced-three-phase', '(i) Balanced three-phase load', true, (s) => balanced(q, s, phases)),
    option('low-electrode', '(ii) Electrode', true, (s) => lowElectrode(q, s, phases)),
    option('touch-voltage-device', '(iii) Touch-voltage device', true, (s) => [
      s.check(c.touchVoltageDevice, {
        holds: true,
        because: builtIn(
          q,
          'touch-voltage-device',
          'such a device has to be fitted, with a reference of its own to true earth or to three lines',
        ),
      }),
    ]),
    option('line-neutral-window-device', '(iv) Line-neutral window device', true, (s) => window(q, s, phases)),
    option('equal-device', '(v) Device of equal safety', true, (s) => [
      s.check(c.equalDevice, {
        holds: true,
        because: builtIn(q, 'equal-device', 'such a device has to be fitted, its maker showing equal safety'),
      }),
    ]),
    option('tt-island', 'Electrode of its own (TT)', false, (s) => island(q, s)),
    option('electrical-separation', 'Electrical separation', false, (s) => separation(q, s)),
  ];
}

/**
 * Which of the permitted arrangements remain for a charge point outdoors on a PME supply, and why each other fails.
 * Wording of BS 7671:2018 as amended by A1 to A3. Plain JSON; the installation must not be energised on the strength of
 * a calculation alone.
 * @param q supply, charge point, states of load
 * @returns one entry for each arrangement, in the order of the clause
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { earthingOptions } from 'ohmwright/bs7671';
 * import { readSurvey } from 'ohmwright/io';
 *
 * const { installation, wanted } = readSurvey(survey);
 * const outlet = wanted[0]?.run.feeds[0];
 * if (outlet?.kind !== 'charge-point') throw new Error('no point is wanted');
 * earthingOptions({ supply: installation.supply, point: outlet }).length; // => 7
 * ```
 */
export function earthingOptions(q: EarthingQuestion): readonly EarthingOption[] {
  return writeEarthingOptions(silent(), q);
}

const figure = (a: Amount | undefined): readonly Amount[] => (a ? [a] : []);
const figuresOf = (results: readonly CheckResult[]) => results.flatMap((r) => [...figure(r.value), ...figure(r.limit)]);

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
