import type { Route } from '../../demand/connection.js';
import type { BeforeWork } from '../../site/before-work.js';
import type { OptionPlan } from '../../site/index.js';
import type { Task } from '../../site/work-rules.js';
import { writtenDay } from '../../units/text.js';
import { longWords } from './long.js';
import { pictureWords } from './pictures.js';
import { sheetWords } from './sheet.js';

type Decided = OptionPlan['overall']['verdict'];

/** One of something, or several. */
const counted = (n: number, one: string, several: string): string => (n === 1 ? one : several);

const capital = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;

/** The sign before an amount of a currency; its code where it has none here. */
const signs: Readonly<Record<string, string>> = { GBP: '£', EUR: '€', USD: '$' };

const english = {
  customer: {
    title: (job: string) => `Customer: ${job}`,
    answer: {
      pass: 'Yes, it can be done',
      conditional: 'Yes, once it is confirmed on site',
      fail: 'No, not as described',
      'not-determined': 'Not decided yet',
    } satisfies Record<Decided, string>,
    get: 'What you get',
    point: (names: string, amps: string, power: string | undefined) =>
      `${names}: up to ${amps}${power ? `, about ${power}` : ''}.`,
    charge: (time: string, window: string, inTime: boolean) =>
      `A charge as described takes ${time} at full current; the car stands for ${window}${inTime ? '' : ', which is too short'}.`,
    lacking: (energy: string) => `With everything else at its highest all night it would be ${energy} short.`,
    held: 'When a lot is switched on at once, the car charges more slowly or waits.',
    beside: (what: string) => `Also: ${what}.`,
    where: 'Where it goes',
    route: (names: string, board: string, sections: readonly string[]) =>
      `${names}, from ${board}: ${sections.join('; then ')}.`,
    height: (metres: string, mounting: string | undefined) =>
      `Outlet ${metres} above the ground${mounting ? `, on a ${mounting}` : ''}.`,
    when: 'When',
    hours: (hours: string) => `The job takes about ${hours}, paperwork and travel included.`,
    after: {
      'apply-first': 'Work starts when the network operator has agreed.',
      'notify-before': 'The network operator is told before the work.',
      'notify-after': 'No consent is needed first: we tell the network operator after the work.',
      'no-duty': 'The network operator need not be told.',
      'not-determined': 'Whether the network operator has to agree first is not known yet.',
    } satisfies Record<Route, string>,
    cost: 'What it costs',
    noPrice: 'The price is quoted separately.',
    undecided: 'There is no price before it is decided.',
    price: {
      net: 'Material and labour',
      soFar: 'Material and labour, as far as it is priced',
      tax: 'Tax',
      total: 'Total',
      line: 'What',
      amount: 'Amount',
      open: (what: string) => `Not priced yet, so that the sum is no offer: ${what}.`,
    },
    need: 'What we need from you',
    answerOf: (fact: string, how: string) => `${fact}: ${how}`,
    entry: (title: string, how: string) => `${title} (${how})`,
    more: (n: number) => `${n} more ${counted(n, 'fact', 'facts')}, which we find out ourselves.`,
    before: {
      'owner-consent': 'If the premises are not yours: the owner’s agreement in writing.',
      'half-hour-readings': 'The half-hour readings of your meter, a year of them.',
      'lead-reach': 'A picture of the parked car: the lead has to reach it.',
      'data-connection': 'How the charge point gets to the internet.',
    } as Readonly<Partial<Record<BeforeWork['id'], string>>>,
    off: 'Access to meter and board; the power is off for part of the day.',
    confirmed: (n: number) =>
      `On the day we first confirm ${n} ${counted(n, 'thing', 'things')} that nobody has looked at yet.`,
    others: (n: number) => `There ${counted(n, 'is one other way', `are ${n} other ways`)} to do it: ask us.`,
    seen: 'Seen on existing circuits',
    seenWords: (circuits: string) =>
      `These do not meet today’s rules: ${circuits}. They are not part of this work; have them looked at.`,
  },
  installer: {
    title: (job: string) => `Installer: ${job}`,
    answer: {
      pass: 'Pass',
      conditional: 'Pass on conditions',
      fail: 'Fail: do not install this',
      'not-determined': 'Not decided: do not install yet',
    } satisfies Record<Decided, string>,
    before: 'To settle before the day',
    open: 'To find out first',
    confirm: 'To confirm before anything is installed',
    confirmWords:
      'Nobody has looked at these. If one is found otherwise, stop: what is found is entered and judged anew.',
    confirmHead: ['what', 'assumed', 'stands for', 'how', 'found'],
    asAssumed: 'what is assumed',
    circuit: 'Circuit and settings',
    named: (name: string, words: string) => `${name}: ${words}.`,
    cable: (words: string) => `Cable: ${words}.`,
    device: (words: string) => `Device: ${words}.`,
    setting: (amps: string) => `Set the charge point to ${amps}.`,
    earthing: (words: string) => `Earthing: ${words}.`,
    earthingOpen: 'Earthing: to be chosen.',
    limiter: (name: string, amps: string) => `Set to ${amps}: ${name}.`,
    limiters: (n: number, first: string, last: string) => `${n} load controls, ‘${first}’ to ‘${last}’`,
    inTurn: (lines: string) => `in turn, from the first of each row on: ${lines}, and so on`,
    feeder: 'feeder',
    lines: (words: string) => `Lines: ${words}.`,
    longest: (metres: string) => `Longest route: ${metres}.`,
    route: 'Route',
    routeHead: ['section', 'length', 'method', 'how', 'depth'],
    routeNote: 'Lengths in proportion.',
    order: 'Order of work',
    tasks: {
      // done before or apart
      'survey and quotation': '',
      'notification paperwork': '',
      'travel and setting up': '',
      'isolation, tails and protective device': 'Isolate, prove dead; fit the device.',
      'cable, each 10 m clipped': 'Run the cable.',
      'cable laid in a trench, each 10 m': 'Lay the cable in the trench.',
      'wall hole and sealing, each': 'Drill the wall, sleeve and seal.',
      'load limiter with its current sensor': 'Fit the load limiter and its sensor.',
      'sensor cable, each 10 m': 'Run the sensor cable.',
      'attendance at the change of the supply': 'Be there when the operator changes the supply.',
      'replacement of the tails': 'Replace the tails.',
      'new enclosure with main switch': 'Fit the new enclosure with its main switch.',
      'board at the end of a feeder': 'Fit the board at the end of the feeder.',
      'earthing conductor': 'Run the earthing conductor.',
      'main bonding conductor, each': 'Run the main bonding conductors.',
      'earth electrode with test': 'Drive the earth electrode and test it.',
      'surge protection': 'Fit the surge protection.',
      'trench by hand, each m': 'Dig the trench.',
      'trench by machine, each m': 'Dig the trench.',
      'sand bedding and warning tape, each m': 'Bed the cable in sand, lay the warning tape.',
      'backfill, each m': 'Backfill.',
      'reinstatement of turf or soil, each m': 'Make good the surface.',
      'reinstatement of paving, each m': 'Make good the surface.',
      'reinstatement of concrete or asphalt, each m': 'Make good the surface.',
      'fix and connect the point': 'Fix and connect the charge point.',
      'dead and live tests': 'Test dead, then live: the tester’s page.',
      'settings, handover and certificate': 'Make the settings, hand over, certify.',
    } as Readonly<Partial<Record<Task, string>>>,
    other: (task: string) => `${capital(task)}.`,
    operator: (duty: string) => `${duty}: the operator’s page.`,
    inAll: (hours: string) => `In all about ${hours}.`,
    material: 'Material',
    materialHead: ['quantity', 'item'],
    openQuantity: 'open',
    heed: 'Points to watch',
    heeded: (title: string, why: string) => `Advice not met: ${title} (${why}).`,
    failed: (title: string, why: string) => `Not met: ${title} (${why}).`,
    asked: (area: string, rating: string, obtain: string) =>
      `Before a larger cable is bought, ask for the let-through energy of the ${rating} device (${obtain}): with it ${area} may do.`,
  },
  tester: {
    title: (job: string) => `Tester: ${job}`,
    answer: {
      pass: 'The design passes',
      conditional: 'The design passes on conditions',
      fail: 'The design fails: do not energise',
      'not-determined': 'The design is not decided: do not energise',
    } satisfies Record<Decided, string>,
    circuit: (name: string) => (/circuit|feeder/i.test(name) ? capital(name) : `Circuit ${name}`),
    state: (at: string, electronics: string) =>
      `Conductors at ${at}; electronics ${electronics} during the insulation test.`,
    head: ['no.', 'reading', 'expected', 'at least', 'at most', 'read'],
    each: 'read',
    done: 'in order?',
    residual: (reading: string) => `RCD, ${reading}`,
    once: 'Read once',
    holds: (reading: string) => `${reading}: must not trip`,
    dead: 'dead',
    live: 'live',
    thumb: (by: string, limit: string) => `Z_s beyond ${limit} (${by}) asks for a second look.`,
    tabulated: (limit: string) => `The table’s ${limit} is for warm conductors: not for the meter.`,
    none: (gaps: string) => `The tests of this edition are not entered here: ${gaps}.`,
    boxes: (state: string) => `Readings, ${state} tests`,
    manyBoxes: (n: number) =>
      `${n} circuits: read each of them, and enter it in the schedule of test results of its board, which the records of the job prepare.`,
    across: (own: boolean) =>
      `Expected: the smallest and the largest of the circuits. Limits: the strictest of them${own ? ', or of each circuit below' : ''}.`,
    point: 'charge point',
    line: 'line',
    expected: (reading: string) => `${reading} expected`,
    within: (reading: string) => `${reading} expected, and its limits`,
    figureWithin: (figure: string, least: string, most: string) => `${figure} (${least}–${most})`,
    below: 'below',
    /** Short names of readings, by identifier. */
    readings: {
      continuity: 'R_1+R_2',
      protectiveContinuity: 'R_2',
      insulationLive: 'insulation, live to live',
      insulationEarth: 'insulation, live to earth',
      polarity: 'polarity',
      externalLoop: 'Z_e',
      loop: 'Z_s',
      prospective: 'I_pf',
      directTrip: 'd.c. at which it trips',
      directTime: 'd.c. break time',
      functional: 'functions and controls',
      voltage: 'voltage without load',
      loadedVoltage: 'voltage under load',
    } as Readonly<Record<string, string>>,
    byDesign: 'The readings decide.',
    signed: 'Tested by, on, with:',
  },
  operator: {
    title: (job: string) => `Network operator: ${job}`,
    answer: {
      'apply-first': 'Application before the work',
      'notify-before': 'Notice before the work',
      'notify-after': 'Notice after the work',
      'no-duty': 'No notice is asked for',
      'not-determined': 'Not decided yet',
    } satisfies Record<Route, string>,
    duties: 'What to do, and by when',
    form: 'Entries for the form, in a layout of our own',
    formHead: ['field', 'entry'],
    devices: 'Devices',
    device: 'device',
    halfHours: 'Half hours of a day',
    halfHoursNote:
      'kVA, mean of each half hour, all vehicles charging in one night and everything else at its maximum demand throughout: no forecast, a bound',
    capacity: (least: string) => `Capacity that covers them: ${least}.`,
    decides: 'What decides the route',
    decidesHead: ['', 'condition', 'figures'],
    judged: {
      pass: 'met',
      fail: 'not met',
      conditional: 'met on conditions',
      'not-determined': 'open',
      'not-required': 'does not apply',
    },
    met: (n: number) => `${n} ${counted(n, 'condition is', 'conditions are')} met.`,
  },
  /** A day as people write it, from year, month and day. */
  day: writtenDay,
  judged: (reference: string | undefined, day: string, code: string, invented: boolean) =>
    `${invented ? 'Invented example. ' : ''}${reference ? `${reference}, surveyed` : 'Surveyed'} ${day}, judged by ${code}.`,
  notInstallation:
    'A calculation, not an installation: to be checked on site, carried out, tested and certified by competent persons.',
  noOption: 'No way to do it was found.',
  points: (names: readonly string[], n: number) => `${counted(n, 'Charge point', 'Charge points')} ${names.join(', ')}`,
  several: (first: string, last: string, n: number) => `${first} to ${last} (${n})`,
  range: (least: string, most: string) => `${least} to ${most}`,
  /** Headings of a spreadsheet of decisions, in the order of its columns. */
  decision: {
    reference: 'Reference',
    verdict: 'Verdict',
    option: 'Option',
    operator: 'Network operator',
    cable: 'Cable',
    device: 'Device',
    least: 'Hours, least',
    likely: 'Hours, likely',
    most: 'Hours, most',
    net: 'Net',
    currency: 'Currency',
    unpriced: 'Without a price',
    conditions: 'To confirm on site',
    missing: 'Facts that are missing',
    questions: 'Look again',
    problem: 'Problem',
  },
  long: longWords,
  sheet: sheetWords,
  pictures: pictureWords,
  verdicts: {
    pass: 'pass',
    conditional: 'pass on conditions',
    fail: 'FAIL',
    'not-determined': 'not determined',
    'not-required': 'not required',
  } as Readonly<Record<string, string>>,
  caution: 'Caution.',
  picture: 'picture',
  /**
   * What a plan says itself: titles of options and checks, reasons, gaps, items, tasks. It is named by a kind and, where it
   * has one, an identifier after a colon, such as `check:voltage-drop`; what is given back is printed.
   */
  said: (text: string, _id: string): string => text,
  money: (amount: string, currency: string) =>
    `${Object.hasOwn(signs, currency) ? signs[currency] : `${currency} `}${amount.replace(/\B(?=(\d{3})+(?!\d))(?<!\.\d*)/g, ',')}`,
};

type EnglishWords = typeof english;

/** The words of all reports, by identifier: a second language is another value of this type. */
export interface ReportWords extends EnglishWords {}

/** The words of all reports in English; what a plan says itself passes through `said`. */
export const englishWords: ReportWords = english;
