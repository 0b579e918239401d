import type { CheckResult } from '../../core/index.js';
import { aspectTitles } from '../../design/assessment.js';
import type { OptionPlan } from '../../site/index.js';
import type { StageDemand } from '../../site/stages.js';

type Decided = OptionPlan['overall']['verdict'];

/** The words of the long reports: the design file, and the plan with everything in it. */
export const longWords = {
  title: (job: string) => `Design file: ${job}`,
  contents: 'Contents',
  invented: 'Invented example: no such premises exist.',
  judged: (day: string, reference: string | undefined, code: string, standing: string) =>
    `Surveyed on ${day}${reference ? `, reference ${reference}` : ''}. Judged by ${code}, ${standing}.`,
  standings: {
    'in-force': 'which was in force on that day',
    withdrawn: 'which was already withdrawn on that day',
    'not-yet': 'which was not yet in force on that day',
  } as Readonly<Record<string, string>>,
  standingOpen: 'whose standing on that day is not known',
  answers: {
    pass: 'Every rule that was judged is met.',
    conditional:
      'Every rule that was judged is met, on conditions: facts that nobody has looked at were assumed, and have to be confirmed.',
    fail: 'At least one rule is not met: the work must not go ahead as described.',
    'not-determined': 'Not decided: facts are missing, and nothing is guessed in their place.',
  } satisfies Record<Decided, string>,
  contradiction: 'Some of what is stated cannot be true together, and nothing that rests on it is decided.',
  disagree: (fact: string, obtain: string) => `These do not agree: ${fact}: ${obtain}`,
  lookAgain: 'look again',
  notMet: (title: string, figures: string) => `Not met: ${title} (${figures})`,
  diagram: (job: string) => `${job}: one-line diagram`,
  diagramNote: 'One-line diagram; what is new is framed.',
  cautions: 'Cautions',
  head: ['verdict', 'requirement', 'figures', 'source'],
  rules: 'Rules',
  advice: 'Advice',
  worst: 'Rules; of several sections or circuits the worst',
  met: (n: number, nearest: string) => `${n} met${nearest ? `; nearest to its limit: ${nearest}` : ''}`,
  /** What a check comes to in a line. */
  named: (title: string, figures: string) => `${title}: ${figures}`,
  duty: (what: string, by: string | undefined, when: string) => `${what}, ${by ? `by ${by}` : when}`,
  /** Titles of the groups of checks. */
  aspects: aspectTitles,

  seen: 'Seen on existing circuits',
  seenWords:
    'These do not meet today’s rules and are no part of the new work: tell the owner, and have them looked at by a competent person.',
  seenHead: ['circuit', 'requirement', 'figures', 'source'],
  unknown: 'What is not known, and what it blocks',
  unknownHead: ['fact', 'how to obtain it', 'blocks'],
  adviceOnly: (blocks: string) => `advice only: ${blocks}`,

  ways: 'Ways to do it',
  ranked: (by: string) => `Ranked: ${by}`,
  waysHead: [
    'verdict',
    'option',
    'changes',
    'not met, or open',
    'operator',
    'time to charge',
    'hours: likely (least to most)',
  ],
  none: 'none',
  andMore: (first: string, n: number) => `${first}, and ${n} more`,
  subject: 'Subject to what is not known yet',
  subjectHead: ['option', 'open'],
  notOffered: 'Not offered',
  notOfferedHead: ['option', 'because'],

  remedies: 'What can be put right',
  remediesNote: 'Each assessed as a whole; hours of the whole job, likely and least to most',
  remediesHead: ['verdict', 'what is done', 'subject to', 'operator', 'hours'],
  insteadOf: (route: string, before: string) => `${route}, not ${before}`,

  conditions: {
    title: 'To confirm on site before the work',
    note: 'Nobody has looked at these. The option stands only as far as each of them is found as assumed, or within its limit with the others as assumed; the limits are no permission, and what is found is entered and judged anew.',
    head: ['what', 'assumed', 'the design stands for', 'how', 'found', 'assumed after'],
    asAssumed: 'what is assumed',
    practice: 'common practice, no source',
    atLeast: (limit: string, otherwise: string) => `at least ${limit}; below it ${otherwise}`,
    atMost: (limit: string, otherwise: string) => `at most ${limit}; above it ${otherwise}`,
    instead: (construction: string, area: string, rating: string) => `${construction} ${area} behind ${rating} instead`,
    open: (because: string) => `open: ${because.charAt(0).toLowerCase()}${because.slice(1)}`,
    advised: (because: string) =>
      `the rules are met, but no longer what is advised: ${because.charAt(0).toLowerCase()}${because.slice(1)}`,
  },

  steps: {
    title: 'What to do next',
    measure: (line: string | undefined, read: string, most: string, estimated: string) =>
      `Measure the demand first${line ? ` on ${line}` : ''}: at most ${read} read, without the charge points, leaves room (${most} with the customary margin on top); the estimate says ${estimated}`,
    findOut: (fact: string, obtain: string | undefined) => `Find out ${fact}${obtain ? `: ${obtain}` : ''}`,
    findOutMore: (n: number) => `Find out ${n} ${n === 1 ? 'fact' : 'facts'} more, listed below`,
    letThrough: (point: string, rating: string, obtain: string, area: string) =>
      `Before a larger cable for charge point ‘${point}’ is bought, ask for the let-through energy of the ${rating} device (${obtain}): with it ${area} may do`,
    confirm: (titles: string, more: number) =>
      `Confirm on site before anything is installed: ${titles}${more > 0 ? `, and ${more} more` : ''}, as listed below`,
    beside: (changes: string) => `Also: ${changes}`,
    install: (points: string, circuit: string) => `Install ${points}: ${circuit}`,
    points: (names: readonly string[]) =>
      `${names.length === 1 ? 'charge point' : 'charge points'} ${names.map((name) => `‘${name}’`).join(', ')}`,
    manyPoints: (n: number) => `${n} charge points`,
    earthing: (circuit: string, earthing: string) => `${circuit}; earthing: ${earthing}`,
    earthingOpen: 'to be chosen from the ways below',
  },
  builtIn: (earthing: string) => `${earthing}, built in`,

  supply: {
    title: 'Supply',
    carries: 'the supply carries house and charge points',
    takenBy: (method: string) => `The demand is taken by: ${method}.`,
    order: (by: string) => `The order: ${by}.`,
    limiter: (because: string) => `Load limiter: ${because}.`,
    demand: 'Maximum demand by each method',
    demandHead: ['method', 'line', 'without charge points', 'with charge points', 'assumptions'],
    known: (without: number) =>
      `Maximum demand${without > 0 ? `; ${without} more ${without === 1 ? 'method does' : 'methods do'} not apply here` : ''}`,
    /** Without a load limiter; and where it holds something back, what there would be without it beside what there is. */
    knownHead: ['method', 'line', 'without charge points', 'with charge points'],
    limitedHead: [
      'method',
      'line',
      'without charge points',
      'with charge points',
      'with charge points and load limiter',
    ],
    picture: 'Maximum demand by method, worst line',
    pictureNote: 'The governing method is marked.',
    control: 'Load control at the origin',
    setting: (point: string, setting: string) =>
      `Largest setting of charge point ‘${point}’ that fits without a load limiter: ${setting}`,
  },
  notKnown: 'not known',
  yes: 'yes',
  no: 'no',
  /** A word that stands for a choice. */
  label: (label: string) => label.replaceAll('-', ' '),
  /** What a limit of the supply is called in the picture. */
  limits: {
    cutOutRating: 'cut-out rating',
    mainSwitchRating: 'main switch rating',
  } as Readonly<Record<string, string>>,

  operator: {
    title: 'Network operator',
    route: (route: string) => `Route: ${route}.`,
    entries: 'The entries of its form are on the operator’s page.',
    decides: 'What decides the route',
    decidesMet: (n: number) => `What decides the route; ${n} more ${n === 1 ? 'condition is' : 'conditions are'} met`,
    head: ['', 'condition', 'figures', 'source'],
    form: 'Entries for the form, in a layout of our own',
    formHead: ['field', 'entry'],
    missing: (how: string) => `missing: ${how}`,
    judged: {
      pass: 'met',
      fail: 'not met',
      conditional: 'met on conditions',
      'not-determined': 'open',
      'not-required': 'does not apply',
    } satisfies Record<CheckResult['verdict'], string>,
  },

  stages: {
    title: 'Demand by stage, on the most loaded line',
    head: [
      'riser or feeder',
      'dwellings',
      'charge points',
      'demand',
      'without charge points',
      'carries',
      '',
      'by other methods',
    ],
    like: (first: string, n: number) => `${first}, and ${n} more like it`,
    note: 'A riser or feeder that no new charge point hangs on is no part of the verdict on the new work; where it is too small, tell the owner.',
    advice: {
      carries: 'carries it',
      'limiter-helps': 'too small for it, unless a load control holds the charge points back',
      'too-small': 'too small without the charge points already',
      'not-determined': 'open: a fact is missing',
    } satisfies Record<StageDemand['advice'], string>,
  },

  feeder: {
    title: (names: string) =>
      /^feeder\b/i.test(names) ? `${names.charAt(0).toUpperCase()}${names.slice(1)}` : `Feeder ${names}`,
    same: (names: readonly string[]) =>
      `The same for ${names.length} more, alike in every fact but names, each with this material and these hours: ${names.join(', ')}.`,
    carries: 'the feeder carries what it feeds, new charge points included',
    eachCarries: 'each of them carries what it feeds, new charge points included',
    loaded: (run: string, worst: string, existing: string, limit: string) =>
      `${run.charAt(0).toUpperCase()}${run.slice(1)}: ${worst} on its most loaded line, ${existing} of it without the charge points; it carries ${limit}.`,
    why: (worst: string, existing: string, method: string, limit: string) =>
      `${worst} on its most loaded line, ${existing} of it without the charge points; ${method}. It carries ${limit}: the least of its device and the main switches that it feeds.`,
    demand: 'Demand',
  },

  point: {
    title: (point: string) => `Charge point ‘${point}’`,
    same: (names: readonly string[]) =>
      `The same for ${names.length} more, alike in every fact: ${names.join(', ')}. Their names stand in place of this one’s; material and hours are those of this one, and of each of the others below.`,
    others: (n: number, hours: string) => `Each of the ${n} others: ${hours}.`,
    figuresOf: (point: string) =>
      `Figures and pictures of ‘${point}’, which has the largest voltage drop; verdicts of all.`,
    stretch: (name: string) => `The section that decides the size: ${name}.`,
    cable: (construction: string, cores: number, size: string, material: string) =>
      `${construction} cable, ${cores}-core, ${size}, ${material}`,
    triedCable: (construction: string, cores: number, material: string, insulation: string) =>
      [construction, `${cores}-core`, material, insulation].join(', '),
    sizeOpen: 'size to be decided',
    circuit: (cable: string, device: string) => `${cable}; protected by ${device}`,
    cables: 'Cables that may be used',
    tried: 'Cables and devices that were tried before, and the first requirement that each does not meet',
    triedHead: ['cable', 'size', 'device', 'verdict', 'because, at the smallest device'],
    lengths: (from: string, to: string, beyond: string | undefined) =>
      `Permitted length of the route: ${from} to ${to}${beyond ? `; beyond it: ${beyond}` : ''}.`,
    times: (point: string) => `Devices and fault currents of charge point ‘${point}’`,
    timesNote: 'Bands between the gates of the product standards: a device may operate anywhere inside its band.',
    drop: (point: string) => `Voltage drop to charge point ‘${point}’`,
    dropNote: 'By the tabulated drop, every cable taken as warm as it may become; to neutral.',
    earthing: 'Earthing of the charge point',
    earthingHead: ['verdict', 'arrangement', 'because'],
  },

  night: {
    title: 'All vehicles charging',
    energy: (kWh: string) => `${kWh} kWh`,
    lacking: (energy: string, waited: string | undefined) =>
      `not full when it leaves, ${energy} lacking${waited ? `, ${waited} of it without current` : ''}`,
    time: (seconds: string, window: string, late: boolean, about: string) =>
      `Time to charge: ${seconds} of the ${window} between plugging in and leaving${late ? ', longer than the vehicle stands there' : ''}. Taken: ${about}.`,
    quiet: (charged: string) => `With everything but the vehicles at rest: ${charged}`,
    busy: (charged: string) => `While everything else draws its maximum demand throughout: ${charged}`,
    longest: (seconds: string, window: string) => `${seconds} of ${window}`,
    tooLong: (times: string) => `${times}, longer than the vehicle stands there`,
    withOthers: (times: string, charged: string) => `${times}; with all else at its maximum demand: ${charged}`,
    otherPoints: (n: number) => `${n} other charge points`,
    ready: (at: string | undefined, lacking: string, waited: string | undefined) =>
      `${at ?? `${lacking} lacking`}${waited ? `, ${waited} without current` : ''}`,
    over: (place: string, line: string, peak: string, limit: string, by: string, time: string) =>
      `${place}, ${line}: up to ${peak} while everything else draws its maximum demand, above ${limit}, ${by}, for ${time} of the night. Nothing holds it back.`,
    names: (first: string, last: string, n: number) => `${n}: ${first} to ${last}`,
    leftOut: (gap: string) => `${gap}: what rests on it is left out`,
    table: 'Ready at. A demand is known, but no course of it over the day: as a rule real nights lie between the two',
    head: [
      'charge point',
      'plugged in',
      'leaves',
      'everything else at rest',
      'everything else at its maximum demand throughout',
    ],
    picture: (place: string) =>
      `All vehicles charging while everything else draws its maximum demand all night, ${place}`,
    pictureNote: (limitBy: string) =>
      `Limit: ${limitBy}. No night is like this: everything else is taken at its estimated maximum demand throughout.`,
  },

  work: {
    material: 'Material',
    materialHead: ['quantity', 'item', 'rule'],
    hours: 'Hours',
    hoursNote: 'Likely, and least to most. Common practice, no source; a firm replaces it with its own',
    hoursHead: ['task', 'hours', 'rule'],
    open: 'open',
    inAll: 'in all',
    inAllOpen: 'in all, what is open left out',
    /** Hours as people know them, the likely value first. */
    likely: (value: string, unit: 'h' | 'min') => `${value} ${unit}`,
    estimate: (likely: string, least: string, most: string) => `${likely} (${least} to ${most})`,
    quantity: (value: number, unit: string) => (unit === 'each' ? `${value}` : `${value} ${unit}`),
  },
};
