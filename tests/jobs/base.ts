import type { Json } from '../support/surveys.js';

/** Where a stretch runs: reference method and surroundings, in words of the trade. */
const places: Readonly<Record<string, Record<string, Json>>> = {
  'clipped indoors': { method: 'C', ambient: '30 °C', containment: 'clipped', insulated: '0 m' },
  'clipped outdoors': { method: 'C', ambient: '30 °C', containment: 'clipped', insulated: '0 m', outdoors: true },
  'in masonry': { method: 'C', ambient: '30 °C', insulated: '0 m', concealedShallow: false, outdoors: true },
  'above a ceiling': { method: '100', ambient: '30 °C', containment: 'clipped', insulated: '0 m' },
  'in loft insulation': { method: '103', ambient: '30 °C', insulated: '3 m' },
  'on tray': { method: 'E', ambient: '30 °C', containment: 'tray', insulated: '0 m' },
  buried: { method: 'D', ambient: '20 °C', containment: 'buried', outdoors: true, depth: '0.6 m' },
  'in a duct': { method: 'D', ambient: '20 °C', containment: 'duct', outdoors: true, depth: '0.6 m' },
};
/** A stretch in short: where it runs, how many metres (text: not known, and how to learn it), and what differs. */
type ShortStretch = readonly [where: string, metres: number | string, change?: Record<string, Json>];

const cables: Readonly<Record<string, Record<string, Json>>> = {
  'twin and earth': {
    construction: 'flat-twin-and-earth',
    insulation: 'thermoplastic-70',
    cores: 2,
    protective: 'bare-core',
  },
  'two-core without earth': {
    construction: 'multicore',
    insulation: 'thermoplastic-70',
    cores: 2,
    protective: 'none',
  },
  'armoured 3-core': { construction: 'armoured', insulation: 'thermosetting-90', cores: 3, protective: 'core' },
  'armoured 5-core': {
    construction: 'armoured',
    insulation: 'thermosetting-90',
    cores: 5,
    loadedCores: 4,
    protective: 'core',
  },
};
const cableOf = (name: string): Record<string, Json> => {
  const cable = cables[name];
  if (!cable) throw new Error(`no cable is called ${name}`);
  return { ...cable, material: 'copper' };
};

const stretchOf = ([where, metres, change = {}]: ShortStretch): Json => {
  const place = places[where];
  if (!place) throw new Error(`no place of a cable is called ${where}`);
  return {
    name: where,
    length:
      typeof metres === 'number' ? { known: `${metres} m`, by: 'floor plan and photographs' } : { unknown: metres },
    ...place,
    group: {
      arrangement: where === 'buried' ? 'direct-in-ground' : where === 'in a duct' ? 'ducts-in-ground' : 'bunched',
      circuits: 1,
    },
    ...change,
  };
};

/** What circuits feed: purpose, connected current, rating of the device and size of the cable as mostly met with. */
const circuits: Readonly<
  Record<string, readonly [purpose: string, current: string, device: string, area: string, more?: Record<string, Json>]>
> = {
  lights: ['lighting', '6 A', '6 A', '1.5 mm²'],
  ring: ['socket-outlets', '32 A', '32 A', '2.5 mm²', { accessories: 'BS 1363' }],
  'ring upstairs': ['socket-outlets', '32 A', '32 A', '2.5 mm²', { accessories: 'BS 1363' }],
  radial: ['socket-outlets', '20 A', '20 A', '2.5 mm²', { accessories: 'BS 1363' }],
  cooker: ['cooking', '31.3 A', '32 A', '6 mm²', { withSocket: true }],
  'shower 8.5 kW': ['instantaneous-water-heating', '37 A', '40 A', '10 mm²'],
  'shower 9.5 kW': ['instantaneous-water-heating', '41.3 A', '45 A', '10 mm²'],
  immersion: ['thermostatic-water-heating', '13 A', '16 A', '2.5 mm²'],
  'heat pump 12 A': ['heat-pump', '12 A', '20 A', '4 mm²'],
  'heat pump 20 A': ['heat-pump', '20 A', '32 A', '6 mm²'],
  // no meter has seen it yet
  'new heat pump 20 A': ['heat-pump', '20 A', '32 A', '6 mm²'],
  'solar 16 A': ['generation', '16 A', '20 A', '4 mm²'],
};
const circuitOf = (circuit: ShortCircuit, before = ''): Json => {
  if (typeof circuit !== 'string') return existingCircuit(...circuit);
  const found = circuits[circuit];
  if (!found) throw new Error(`no circuit is called ${circuit}`);
  const [purpose, current, rating, area, more = {}] = found;
  return existingCircuit(before + circuit, { purpose, current, ...more }, rating, area);
};
const feederOf = ({ id, feeder, circuits: its, change }: ShortBoard): Json => ({
  id: `feeder of ${id}`,
  lines: feeder.lines ?? ['L1'],
  bathOrShower: { known: false, by: 'followed' },
  existing: true,
  fromTails: { known: false, by: 'board with its cover open' },
  jointsAccessible: { known: true, by: 'followed' },
  device: {
    kind: feeder.kind ?? { standard: 'EN 60898', type: 'B' },
    groupingFactor: 1,
    rating: feeder.device,
    breakingCapacity: '6 kA',
    energyClass: 3,
  },
  cable: { ...cableOf(feeder.cable), area: feeder.area },
  terminalTemperature: { known: '70 °C', by: 'instructions' },
  stretches: feeder.route.map(stretchOf),
  noResidual,
  ...feeder.change,
  feeds: [
    {
      kind: 'board',
      id,
      mainSwitch: { rating: { known: '63 A', by: 'marking' }, noFuseAhead: true },
      conditionalRating: { known: '16 kA', by: 'label' },
      rating: { known: '63 A', by: 'marking' },
      spareWays: { known: 2, by: 'photograph' },
      complete: { known: true, by: 'photograph' },
      surgeProtection: { known: false, by: 'photograph' },
      noResidual,
      runs: its.map((c) => circuitOf(c, `${id} `)),
      ...change,
    },
  ],
});
function existingCircuit(
  id: string,
  load: Record<string, Json>,
  rating: string,
  area: string,
  lines: Json = ['L1'],
  change: Record<string, Json> = {},
): Json {
  return {
    id,
    lines,
    existing: !id.includes('new '),
    ...(id.includes('ring') ? { ring: true } : {}),
    device: { kind: { standard: 'EN 61009', type: 'B' }, rating, breakingCapacity: '6 kA' },
    cable: { ...cableOf('twin and earth'), area },
    stretches: [],
    feeds: [{ kind: 'load', id: `${id} load`, residualType: 'A', lines, standardCircuit: true, ...load }],
    ...change,
  };
}

const photograph = 'photograph';
/** Circuits have devices of their own, and nothing stands ahead of them. */
const noResidual: Json = { known: true, by: 'photograph, cover closed' };
const onSite = { unknown: 'measured on site' };
/** What photographs of meter, cut-out and board show of the commonest supply, and what they do not. */
const seen: Record<string, Json> = {
  system: { known: 'TN-C-S', by: 'photograph of the cut-out: earth taken from the neutral block' },
  phases: { known: 1, by: 'photograph of the meter' },
  nominalVoltage: '230 V',
  frequency: '50 Hz',
  externalImpedance: onSite,
  prospectiveCurrent: onSite,
  cutOut: {
    kind: { known: { standard: 'BS 1361' }, by: 'label on the cut-out' },
    rating: { known: '100 A', by: 'label on the cut-out, photograph' },
  },
  cutOutSound: { known: true, by: photograph },
  looped: { known: false, by: 'photograph: one cable enters the cut-out' },
  metered: true,
  tails: { known: '25 mm²', by: 'photograph: marking on the sheath' },
  earthingConductor: { known: '16 mm²', by: 'photograph with scale' },
  earthingConductorLaid: { known: 'above-ground', by: photograph },
  bonding: [
    { what: 'water', area: { known: '10 mm²', by: 'photograph with scale' } },
    { what: 'gas', area: { known: '10 mm²', by: 'photograph with scale' } },
  ],
  specialLocation: 'none',
};
/** What a visit with a tester adds. */
const measured: Record<string, Json> = {
  externalImpedance: { known: '0.28 Ω', by: 'measured at the main switch' },
  prospectiveCurrent: { known: '0.86 kA', by: 'measured at the main switch' },
  supplyNeutral: { known: '25 mm²', by: 'letter of the network operator' },
};
/** The same of a three-phase supply. */
const measuredThreePhase: Record<string, Json> = {
  phases: { known: 3, by: 'meter and cut-out' },
  externalImpedance: { known: '0.17 Ω', by: 'measured' },
  prospectiveCurrent: { known: '2.7 kA', by: 'measured line to neutral, doubled' },
  cutOut: { kind: { standard: 'BS 88-3' }, rating: { known: '100 A', by: 'cartridge label' } },
  tails: { known: '35 mm²', by: 'marking on the sheath' },
  supplyNeutral: { known: '35 mm²', by: 'letter of the network operator' },
};

interface ShortPoint {
  readonly id?: string;
  readonly from?: string;
  readonly lines?: Json;
  /** Names; with its size one that lies there already. */
  readonly cables?: readonly (string | readonly [name: string, area: string, by: string])[];
  readonly route: readonly ShortStretch[];
  /** What differs of the point itself. */
  readonly point?: Record<string, Json>;
  readonly device?: Record<string, Json>;
  readonly residual?: Json;
  readonly vehicle?: Json;
  /** What differs of the wanted circuit. */
  readonly change?: Record<string, Json>;
}
interface ShortBoard {
  readonly id: string;
  readonly circuits: readonly ShortCircuit[];
  readonly feeder: {
    readonly device: string;
    readonly kind?: Json;
    readonly area: string;
    readonly cable: string;
    readonly lines?: Json;
    readonly route: readonly ShortStretch[];
    readonly change?: Record<string, Json>;
  };
  readonly change?: Record<string, Json>;
}
/** Name of a circuit, or [name, load, rating of the device, area, lines, what differs of the circuit]. */
type ShortCircuit = string | readonly [string, Record<string, Json>, string, string, Json?, Record<string, Json>?];
/** A survey in short: a base, and what differs from it. */
export interface ShortSurvey {
  readonly base: 'by photograph' | 'measured' | 'three-phase';
  readonly premises?: string;
  readonly edition?: string;
  readonly date?: string;
  readonly circuits: readonly ShortCircuit[];
  readonly supply?: Record<string, Json>;
  readonly board?: Record<string, Json>;
  /** Boards behind a feeder. */
  readonly boards?: readonly ShortBoard[];
  readonly points: readonly ShortPoint[];
  /** Highest half hour of a year, with the customary 20 % on top (common practice, no source); it governs then. */
  readonly metered?: string;
  readonly work?: Record<string, Json>;
  /** What is known of the premises, and what the owner wishes. */
  readonly options?: Record<string, Json>;
}

const pointOf = (base: ShortSurvey['base'], p: ShortPoint, i: number): Json => {
  const threePhase = Array.isArray(p.lines) && p.lines.length === 3;
  const residual = {
    position: 'origin-of-circuit',
    type: { known: 'A', by: 'chosen' },
    rating: '30 mA',
    delay: 'general',
    opensAllLive: true,
  };
  return {
    id: p.id ?? `point ${i + 1}`,
    from: p.from ?? 'consumer unit',
    lines: p.lines ?? ['L1'],
    bathOrShower: { known: false, by: 'the way is the designer’s' },
    ...(threePhase ? { thirdHarmonic: { known: 0, by: 'data sheet' } } : {}),
    point: {
      setting: { known: '32 A', by: 'wish of the customer' },
      outdoors: true,
      mode: 3,
      bidirectional: false,
      directCurrentDetection: { known: true, by: 'data sheet of the point' },
      openPenDevice: {
        known: base === 'three-phase' ? 'open-pen-detection-touch-voltage' : 'open-pen-detection-window',
        by: 'data sheet of the point',
      },
      standingLeakage: base === 'by photograph' ? { unknown: 'ask its maker' } : { known: '2 mA', by: 'data sheet' },
      ...(p.point?.residual ? {} : { noResidual: { known: true, by: 'data sheet of the point' } }),
      ...p.point,
    },
    device: {
      kind: threePhase ? { standard: 'EN 60898', type: 'C' } : { standard: 'EN 61009', type: 'B' },
      groupingFactor: { known: 1, by: 'a space is left beside it' },
      breakingCapacity: { known: '6 kA', by: 'catalogue' },
      energyClass: { known: 3, by: 'catalogue' },
      ...p.device,
    },
    residual: p.residual ?? [threePhase ? { ...residual, ratedCurrent: '40 A' } : residual],
    cables: (p.cables ?? ['armoured 3-core']).map((c) =>
      typeof c === 'string' ? cableOf(c) : { ...cableOf(c[0]), area: { known: c[1], by: c[2] } },
    ),
    terminalTemperature: { known: '70 °C', by: 'instructions for device and point' },
    route: p.route.map(stretchOf),
    ...(p.vehicle === undefined ? {} : { vehicle: p.vehicle }),
    ...p.change,
  };
};

/** The survey document that a short survey stands for. All of them are invented, or filled in around the facts of a published case. */
export function surveyOf(title: string, short: ShortSurvey): Json {
  const { base } = short;
  const threePhase = base === 'three-phase';
  return {
    format: 'survey/1',
    about: {
      title,
      invented: true,
      date: short.date ?? '2026-09-21',
      country: 'GB',
      premises: short.premises ?? 'dwelling',
    },
    code: { id: 'BS 7671', edition: short.edition ?? '2018+A2:2022' },
    supply: {
      ...seen,
      ...(base === 'measured' ? measured : threePhase ? measuredThreePhase : {}),
      ...(short.metered === undefined
        ? {}
        : {
            meteredDemand: {
              current: { known: short.metered, by: 'highest half hour of the meter' },
              about: 'half-hour readings of a year',
            },
          }),
      ...short.supply,
    },
    board: {
      kind: 'board',
      id: 'consumer unit',
      mainSwitch: { rating: { known: '100 A', by: 'marking' }, noFuseAhead: true },
      conditionalRating:
        base === 'by photograph' ? { unknown: 'label inside the cover' } : { known: '16 kA', by: 'label' },
      rating: { known: '100 A', by: 'marking' },
      spareWays: { known: 2, by: 'photograph with the lid on' },
      complete: { known: true, by: 'photograph, schedule on the door' },
      surgeProtection: { known: true, by: photograph },
      ...(short.board?.residual ? {} : { noResidual }),
      runs: [...short.circuits.map((c) => circuitOf(c)), ...(short.boards ?? []).map(feederOf)],
      ...short.board,
    },
    wanted: short.points.map((p, i) => pointOf(base, p, i)),
    ...(short.metered === undefined ? {} : { demand: { meteredMargin: '20 %', governing: 'metered-peak' } }),
    ...(short.options === undefined ? {} : { options: short.options }),
    work: {
      mounting: 'wall',
      wallsToDrill: 1,
      newEnclosure: false,
      outletHeight: '900 mm',
      // whoever measures has chosen the limiter that would be fitted, and read its instructions
      ...(base === 'by photograph'
        ? {}
        : {
            limiterKeepsFuse: { known: true, by: 'instructions of the limiter' },
            limiterFallback: { known: '0 A', by: 'instructions of the limiter' },
          }),
      ...short.work,
    },
  };
}
