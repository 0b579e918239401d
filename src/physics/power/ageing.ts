import { added, evaluate, formula, moving, procedure } from '../../core/index.js';
import {
  type Celsius,
  celsius,
  invalidInput,
  type Kelvins,
  kelvins,
  type Problem,
  type Ratio,
  ratio,
  type Seconds,
  seconds,
} from '../../units/index.js';

/** Rise of the top oil of a transformer at a steady load. IEC 60076-7. */
export const oilRiseOf = /* @__PURE__ */ formula({
  id: 'transformer-oil-rise',
  title: 'Rise of the top oil at a steady load',
  inputs: ['ratedOilRise', 'lossRatio', 'loadShare', 'oilExponent'],
  output: 'oilRise',
  expression: 'ratedOilRise * ((1 + lossRatio * loadShare^2) / (1 + lossRatio))^oilExponent',
  compute: ({ ratedOilRise, lossRatio: r, loadShare: k, oilExponent }) =>
    ratedOilRise * ((1 + r * k * k) / (1 + r)) ** oilExponent,
  source: {
    document: 'IEC 60076-7',
    clause: 'top-oil temperature',
    provenance: 'one-source',
    note: 'stands in open research code that cites it',
  },
});

/** Rise of the hot spot of the winding above the top oil at a steady load. IEC 60076-7. */
export const hotSpotGradientOf = /* @__PURE__ */ formula({
  id: 'transformer-hot-spot-gradient',
  title: 'Rise of the hot spot above the top oil at a steady load',
  inputs: ['ratedHotSpotGradient', 'loadShare', 'windingExponent'],
  output: 'hotSpotGradient',
  expression: 'ratedHotSpotGradient * loadShare^windingExponent',
  compute: ({ ratedHotSpotGradient, loadShare, windingExponent }) =>
    ratedHotSpotGradient * loadShare ** windingExponent,
  source: {
    document: 'IEC 60076-7',
    clause: 'hot-spot temperature',
    provenance: 'one-source',
    note: 'stands in open research code that cites it',
  },
});

/** Temperature of the hot spot of the winding. IEC 60076-7. */
export const hotSpotTemperatureOf = /* @__PURE__ */ added({
  id: 'transformer-hot-spot',
  title: 'Temperature of the hot spot of the winding',
  plus: ['ambientTemperature', 'oilRise', 'hotSpotGradient'],
  output: 'hotSpotTemperature',
  signed: true,
  source: { document: 'IEC 60076-7', clause: 'hot-spot temperature', provenance: 'memory' },
});

/** Rate of ageing of paper that is not thermally upgraded: twice for each 6 K, 1 at 98 °C. IEC 60076-7. */
export const ageingRateOfPlainPaper = /* @__PURE__ */ moving({
  id: 'ageing-rate-plain-paper',
  title: 'Rate of ageing of paper that is not thermally upgraded',
  moves: { hotSpotTemperature: 1 },
  output: 'ageingRate',
  expression: '2^((hotSpotTemperature / kelvin - 98) / 6)',
  constants: { kelvin: [1, 'K'] },
  compute: ({ hotSpotTemperature }) => 2 ** ((hotSpotTemperature - 98) / 6),
  valid: { hotSpotTemperature: { least: -50, most: 180 } },
  source: {
    document: 'IEC 60076-7',
    clause: 'relative ageing rate',
    provenance: 'one-source',
    note: 'stands in open research code that cites it; made for 80 to 140 °C',
  },
});

/** Rate of ageing of thermally upgraded paper: 1 at 110 °C. IEC 60076-7. */
export const ageingRateOfUpgradedPaper = /* @__PURE__ */ moving({
  id: 'ageing-rate-upgraded-paper',
  title: 'Rate of ageing of thermally upgraded paper',
  moves: { hotSpotTemperature: 1 },
  output: 'ageingRate',
  expression: 'exp(15000 / (110 + 273) - 15000 / (hotSpotTemperature / kelvin + 273))',
  constants: { kelvin: [1, 'K'] },
  compute: ({ hotSpotTemperature }) => Math.exp(15000 / (110 + 273) - 15000 / (hotSpotTemperature + 273)),
  valid: { hotSpotTemperature: { least: -50, most: 180 } },
  source: {
    document: 'IEC 60076-7',
    clause: 'relative ageing rate',
    provenance: 'one-source',
    note: 'stands in open research code that cites it; made for 80 to 140 °C',
  },
});

/** How a transformer warms: figures of its heat run, or those of its kind. @inline */
export interface TransformerWarmth {
  /** Rise of the top oil at rated load, K. */
  readonly ratedOilRise: Kelvins;
  /** Rise of the hot spot above the top oil at rated load, K. */
  readonly ratedHotSpotGradient: Kelvins;
  /** Loss at rated current over loss without load, 1. */
  readonly lossRatio: Ratio;
  /** Exponent of the losses in the rise of the oil, 1. */
  readonly oilExponent: Ratio;
  /** Exponent of the current in the rise of the hot spot, 1. */
  readonly windingExponent: Ratio;
  /** Time constant of the oil, s. */
  readonly oilTime: Seconds;
  /** Time constant of the winding, s. */
  readonly windingTime: Seconds;
  /** Constants k_11, k_21 and k_22 of the thermal model, 1. */
  readonly k: readonly [k11: number, k21: number, k22: number];
}

/**
 * A distribution transformer in oil with natural cooling, by IEC 60076-7 as recalled: 98 °C at the hot spot at rated load
 * and 20 °C. The figures of a heat run go before it.
 */
export const distributionTransformer: TransformerWarmth = /* @__PURE__ */ (() => ({
  ratedOilRise: kelvins(55),
  ratedHotSpotGradient: kelvins(23),
  lossRatio: ratio(5),
  oilExponent: ratio(0.8),
  windingExponent: ratio(1.6),
  oilTime: seconds(10_800),
  windingTime: seconds(240),
  k: [1, 1, 2] as const,
}))();

/** The load of a transformer in a day that repeats. */
export interface TransformerDay {
  readonly warmth: TransformerWarmth;
  /** Load over rated power in each hour of the day: 24 numbers from 0. */
  readonly load: readonly number[];
  /** Temperature of the air, °C: one for the day, or 24. */
  readonly ambient: Celsius | readonly number[];
  /** Whether the paper of the winding is thermally upgraded. */
  readonly upgradedPaper: boolean;
}

function problemsOf({ warmth, load, ambient }: TransformerDay): readonly Problem[] {
  const problems: Problem[] = [];
  if (!Array.isArray(load) || load.length !== 24 || !load.every((v) => Number.isFinite(v) && v >= 0 && v <= 3))
    problems.push({ path: ['load'], message: 'must be 24 numbers from 0 to 3' });
  const air = Array.isArray(ambient) ? ambient : [ambient];
  if (!(air.length === 1 || air.length === 24) || !air.every((v) => Number.isFinite(v)))
    problems.push({ path: ['ambient'], message: 'must be one temperature or 24' });
  for (const name of [
    'ratedOilRise',
    'ratedHotSpotGradient',
    'oilExponent',
    'windingExponent',
    'oilTime',
    'windingTime',
  ] as const)
    if (!(Number.isFinite(warmth?.[name]) && warmth[name] > 0))
      problems.push({ path: ['warmth', name], message: 'must be above 0' });
  if (!(warmth?.lossRatio >= 0)) problems.push({ path: ['warmth', 'lossRatio'], message: 'must be from 0' });
  if (!(Array.isArray(warmth?.k) && warmth.k.length === 3 && warmth.k[0] > 0 && warmth.k[1] >= 1 && warmth.k[2] > 0))
    problems.push({ path: ['warmth', 'k'], message: 'must be three: k_11 above 0, k_21 from 1, k_22 above 0' });
  return problems;
}

const STEP = 300;
const PER_HOUR = 12;

/** Hot spot every five minutes of a day that has repeated for long, by exact steps of constant load. */
function hotSpots(day: TransformerDay): readonly number[] {
  const problems = problemsOf(day);
  if (problems.length > 0) throw invalidInput('the day of a transformer', problems);
  const { warmth, load, ambient } = day;
  const [k11, k21, k22] = warmth.k;
  const air = (hour: number) =>
    Array.isArray(ambient) ? (ambient.length === 1 ? ambient[0] : ambient[hour]) : ambient;
  const follow = (time: number) => 1 - Math.exp(-STEP / time);
  const [oil, up, down] = [
    follow(k11 * warmth.oilTime),
    follow(k22 * warmth.windingTime),
    follow(warmth.oilTime / k22),
  ];
  const steady = load.map((loadShare, hour) => ({
    oil: (air(hour) as number) + oilRiseOf({ ...warmth, loadShare: ratio(loadShare) }),
    gradient: hotSpotGradientOf({ ...warmth, loadShare: ratio(loadShare) }),
  }));
  let [top, first, second] = [steady[0]?.oil as number, 0, 0];
  let day24: number[] = [];
  // the oil forgets a day: ten are more than enough for any time constant up to half a day
  for (let d = 0; d < 10; d++) {
    day24 = [];
    for (const { oil: end, gradient } of steady)
      for (let i = 0; i < PER_HOUR; i++) {
        top += oil * (end - top);
        first += up * (k21 * gradient - first);
        second += down * ((k21 - 1) * gradient - second);
        day24.push(top + first - second);
      }
  }
  return day24;
}

/** Largest temperature of the hot spot of a transformer in a day that repeats. IEC 60076-7. */
export const hottestSpot = /* @__PURE__ */ procedure({
  id: 'transformer-hottest-spot',
  title: 'Largest temperature of the hot spot in a day',
  output: 'hotSpotTemperature',
  signed: true,
  method: 'exponential course of oil and winding, five minutes at a time, until days are alike',
  source: { document: 'IEC 60076-7', clause: 'difference and exponential equations', provenance: 'one-source' },
  run: (day: TransformerDay) => Math.max(...hotSpots(day)),
});

/** Mean rate at which the insulation of a transformer ages in a day that repeats, over the normal one. IEC 60076-7. */
export const ageingOfDay = /* @__PURE__ */ procedure({
  id: 'transformer-ageing',
  title: 'Rate of ageing of a transformer over a day',
  output: 'ageingRate',
  method:
    'mean of the rates of ageing at the temperature of the hot spot, five minutes at a time, until days are alike',
  source: { document: 'IEC 60076-7', clause: 'loss of life', provenance: 'one-source' },
  run: (day: TransformerDay) => {
    const rate = day?.upgradedPaper ? ageingRateOfUpgradedPaper : ageingRateOfPlainPaper;
    const all = hotSpots(day);
    return all.reduce((sum, t) => sum + evaluate(rate, { hotSpotTemperature: celsius(t) }), 0) / all.length;
  },
});
