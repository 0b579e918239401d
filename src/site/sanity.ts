import type { Fact } from '../core/index.js';
import { pathsOf, type Stretch } from '../installation/index.js';
import { formatIn } from '../units/index.js';
import { alikeIn } from './alike.js';
import { type Customary, customary } from './customary.js';
import { withAllWanted } from './installed.js';
import type { PriceBook } from './price.js';
import type { SanityQuestion } from './sanity-question.js';
import { startQuestions } from './starts.js';
import type { Survey } from './survey.js';
import { transformerQuestions } from './transformer.js';
import { inGround } from './trench.js';

type Asked =
  | { readonly state: string; readonly value?: unknown; readonly least?: number; readonly most?: number }
  | undefined;

const inUnit = (value: number, unit: string): string => (unit === '' ? `${value}` : formatIn(value, unit));

/** Whether a figure, or an end of its range, is outside. */
function outside(of: string, fact: Asked, c: Customary): readonly SanityQuestion[] {
  const [least, most] = c.range;
  const ends = fact?.state === 'known' ? [fact.value] : fact?.state === 'between' ? [fact.least, fact.most] : [];
  const odd = ends.find((v): v is number => typeof v === 'number' && (v < least || v > most));
  if (odd === undefined) return [];
  return [
    {
      of,
      question: `Is ${inUnit(odd, c.unit)} right for ${of}? Customary for the ${c.words} is ${inUnit(least, c.unit)} to ${inUnit(most, c.unit)}. Often it is ${c.slip}.`,
      provenance: 'common-practice',
    },
  ];
}

const plain = (value: number | undefined): Asked => (value === undefined ? undefined : { state: 'known', value });

const total = (stretches: readonly Stretch[]): Fact<number> | undefined => {
  const lengths = stretches.map((s) => s.length);
  if (!lengths.every((l): l is Exclude<Fact<never>, { state: 'unknown' }> => l.state !== 'unknown')) return undefined;
  const end = (which: 'least' | 'most') =>
    lengths.reduce((sum, l) => sum + (l.state === 'known' ? Number(l.value) : Number(l[which])), 0);
  return { state: 'between', least: end('least'), most: end('most') };
};

/** How far below U_0/Z_e the prospective current of one line may be; that between three lines is well above it. */
const [ONE_LINE, THREE_LINES] = [1.6, 1.2];

/** On TT the loop holds the electrode, so that it is hardly below it. */
function loopBelowElectrode({ supply }: Survey['installation']): readonly SanityQuestion[] {
  const { externalImpedance: z, electrode, system } = supply;
  const r = electrode?.resistance;
  if (z.state !== 'known' || r?.state !== 'known' || system.state !== 'known' || system.value !== 'TT') return [];
  if (z.value * 1.25 >= r.value) return [];
  return [
    {
      of: 'external impedance and electrode',
      question: `Was the loop measured with the bonding connected? It holds the electrode of ${formatIn(r.value, 'Ω')}, and ${formatIn(z.value, 'Ω')} was written down.`,
      provenance: 'common-practice',
    },
  ];
}

/** The two readings at the origin belong together: the fault current to earth cannot be above the prospective current by much. */
function readingsApart({ supply }: Survey['installation']): readonly SanityQuestion[] {
  const { externalImpedance: z, prospectiveCurrent: i, system, nominalVoltage, phases } = supply;
  if (z.state !== 'known' || i.state !== 'known' || system.state !== 'known' || system.value === 'TT') return [];
  const toEarth = nominalVoltage / z.value;
  const three = phases.state === 'known' && phases.value === 3;
  if (i.value >= (three ? THREE_LINES * toEarth : toEarth / ONE_LINE) && i.value <= toEarth * 4) return [];
  return [
    {
      of: 'external impedance and prospective current',
      question: `Do the two readings belong together? ${formatIn(z.value, 'Ω')} gives ${formatIn(toEarth, 'A')} to earth, and ${formatIn(i.value, 'A')} was written down. Often one of them is of another place or in another unit${three ? ', or the current is that of one line, which is about half of that between three' : ''}.`,
      provenance: 'common-practice',
    },
  ];
}

/**
 * Questions about figures of a survey that are outside what is customary. Nothing is refused and no verdict changes: the
 * figures may be right.
 * @param survey the survey
 * @param prices the firm's price book, to be asked about as well
 * @returns the questions, each with where it arises and how well the custom is known
 * @throws CalculationError `invalid-input` for a transformer whose plate cannot be
 * @example
 * ```ts
 * import survey from './easy-home.json' with { type: 'json' };
 * import { readSurvey } from 'ohmwright/io';
 * import { sanityQuestions } from 'ohmwright/site';
 *
 * sanityQuestions(readSurvey(survey)).length; // => 0
 * ```
 */
export function sanityQuestions(survey: Survey, prices?: PriceBook): readonly SanityQuestion[] {
  const { supply } = survey.installation;
  const rod = supply.system.state === 'known' && supply.system.value === 'TT';
  const home = survey.about.premises === 'dwelling';
  const found: SanityQuestion[] = [
    // a transformer that is known says what goes with it
    ...(supply.transformer
      ? []
      : [
          ...outside(
            'the external impedance',
            supply.externalImpedance,
            rod ? customary.externalImpedanceOfRod : customary.externalImpedance,
          ),
          ...outside('the prospective current', supply.prospectiveCurrent, customary.prospectiveCurrent),
        ]),
    ...loopBelowElectrode(survey.installation),
    ...(supply.transformer ? [] : readingsApart(survey.installation)),
    ...transformerQuestions(supply),
    ...startQuestions(survey.installation),
    ...(home ? outside('the tails', supply.tails, customary.tailsArea) : []),
    ...(home ? outside('the fuse of the cut-out', supply.cutOut.rating, customary.cutOutRating) : []),
    ...(home ? outside('the metered peak', supply.meteredDemand?.current, customary.meteredCurrent) : []),
    ...outside('travelling', plain(survey.work.travelMinutes), customary.travelMinutes),
    ...(prices ? outside('the price of an hour', plain(prices.hour), customary.hourPrice) : []),
  ];
  const installation = withAllWanted(survey);
  // of wanted points that are alike one is asked about
  const others = new Set(alikeIn(survey, installation).flatMap(([, ...more]) => more.map((w) => w.run)));
  for (const { run } of pathsOf(installation)) {
    if (others.has(run)) continue;
    const length = total(run.stretches);
    if (length && run.stretches.length > 0)
      found.push(...outside(`the route of ${run.id}`, length, customary.routeLength));
    for (const s of run.stretches)
      found.push(
        ...outside(
          `the temperature of ${s.name}`,
          s.ambient,
          inGround(s) ? customary.groundTemperature : customary.airTemperature,
        ),
      );
    for (const o of run.feeds) {
      if (o.kind === 'charge-point')
        found.push(...outside(`the setting of ${o.id}`, o.setting, customary.chargeCurrent));
      if (o.kind === 'load' && !o.dwellings)
        found.push(...outside(`the load ${o.id}`, o.current, customary.connectedCurrent));
    }
  }
  return found;
}
