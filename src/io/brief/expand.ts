import { isRecord, questionnaire, questionOf } from '../../installation/index.js';
import type { Survey } from '../../site/survey.js';
import { hasCode, invalidInput, type Problem, parseQuantity, pathText, shown } from '../../units/index.js';
import { readSurvey } from '../read-survey.js';
import { scan } from '../scan.js';
import { type Answer, type Answers, obtainOf, oddness, questionById, type Written } from './answers.js';
import { answersOf, type FirmDefaults } from './defaults.js';
import { existingCircuit, present, routeSection } from './parts.js';

/** A part of a survey document. @inline */
type Part = Readonly<Record<string, unknown>>;

/** What reading a brief survey came to. */
export interface BriefSurvey {
  /** The full survey as a document of format `survey/1`, to be kept or gone on with. */
  readonly document: Part;
  readonly survey: Survey;
  /** Answers that are outside what is usual, each as a question to whoever wrote it. */
  readonly questions: readonly string[];
}

/** Answers with the way back to their questions. */
class Said {
  constructor(private readonly answers: Answers) {}

  /** The answer as a fact; not known, with how to obtain it, where there is none. */
  fact(id: string): Answer {
    const question = questionById(id);
    return this.answers.get(id) ?? { unknown: question ? obtainOf(question) : id };
  }

  /** The fact, where something was answered. */
  maybe(id: string): Answer | undefined {
    return this.answers.get(id);
  }

  /** The value, where it is known. */
  value(id: string): Written | undefined {
    const answer = this.answers.get(id);
    return answer && 'known' in answer ? answer.known : undefined;
  }

  /** Whether a length, a power or a count was answered, and is more than nothing. */
  isThere(id: string): boolean {
    const answer = this.answers.get(id);
    if (!answer || 'unknown' in answer) return false;
    const most = 'between' in answer ? answer.between[1] : answer.known;
    return Number.parseFloat(String(most)) > 0;
  }
}

/** Current at 230 V of a power as it was answered. */
function currentOf(answer: Answer): Answer {
  const amperes = (written: Written) =>
    /A$/.test(String(written))
      ? String(written)
      : `${Math.round((parseQuantity(String(written), 'W') / 230) * 1000) / 1000} A`;
  if ('unknown' in answer) return answer;
  if ('between' in answer) return { between: [amperes(answer.between[0]), amperes(answer.between[1])], by: answer.by };
  return {
    known: amperes(answer.known),
    by: `${answer.by}: ${answer.known}${/W$/.test(String(answer.known)) ? ' at 230 V' : ''}`,
  };
}

/** Loads by their question: what they are for, and what else is said of them. */
const loads: readonly (readonly [id: string, name: string, purpose: string, more?: Part])[] = [
  ['cooker', 'cooker', 'cooking', { standardCircuit: true }],
  ['shower', 'shower', 'instantaneous-water-heating'],
  ['secondShower', 'second shower', 'instantaneous-water-heating'],
  ['immersionHeater', 'immersion heater', 'thermostatic-water-heating'],
  ['electricHeating', 'electric heating', 'space-heating'],
  ['storageHeating', 'storage heaters', 'storage-heating'],
  ['heatPump', 'heat pump', 'heat-pump'],
  ['otherLoad', 'other load', 'other'],
  ['solar', 'solar panels', 'generation'],
];
/** Circuits that are counted: their rating is the most that each can take. */
const counted: readonly (readonly [id: string, name: string, purpose: string, rating: string, more?: Part])[] = [
  ['lightingCircuits', 'lights', 'lighting', '6 A'],
  ['ringCircuits', 'ring', 'socket-outlets', '32 A', { accessories: 'BS 1363' }],
  ['radialCircuits', 'radial', 'socket-outlets', '20 A', { accessories: 'BS 1363' }],
];

function circuits(said: Said): readonly Part[] {
  const found: Part[] = [];
  for (const [id, name, purpose, rating, more] of counted) {
    const answer = said.maybe(id);
    const count = Number(said.value(id) ?? 0);
    for (let i = 1; i <= count; i++)
      found.push(
        existingCircuit({
          name: count === 1 ? name : `${name} ${i}`,
          purpose,
          current: { known: rating, by: 'rating of the circuit: the most that it takes' },
          rating: { known: rating, by: answer && 'by' in answer ? answer.by : '' },
          ring: id === 'ringCircuits',
          load: { ...more, standardCircuit: true },
        }),
      );
  }
  for (const [id, name, purpose, more] of loads) {
    const answer = said.maybe(id);
    if (!answer || (!('unknown' in answer) && !said.isThere(id))) continue;
    // a socket beside the cooker switch counts for more: it is left out only where somebody says that there is none
    const socket = id === 'cooker' ? { withSocket: said.value('cookerSocket') !== false } : {};
    const rating = id === 'solar' ? said.maybe('solarDevice') : undefined;
    found.push(
      existingCircuit({
        name,
        purpose,
        current: currentOf(answer),
        ...(rating ? { rating } : {}),
        load: { ...more, ...socket },
      }),
    );
  }
  return found;
}

/** What is bonded, and whether somebody looked and found nothing to bond. */
function bondingOf(said: Said): Part {
  const all = (['water', 'gas', 'other'] as const).map((what) => ({
    what,
    answer: said.fact(`${what}Bond`),
    value: said.value(`${what}Bond`),
  }));
  return {
    bonding: all
      .filter(({ value }) => value !== 'none')
      .map(({ what, answer, value }) => ({
        what,
        area: value === 'missing' ? { known: '0 mm²', by: 'answered: not bonded' } : answer,
      })),
    ...(all.every(({ value }) => value === 'none')
      ? { noExtraneousParts: { known: true, by: 'no metal water, gas or other service answered' } }
      : {}),
  };
}

function supply(said: Said): Part {
  const { fact, maybe } = { fact: (id: string) => said.fact(id), maybe: (id: string) => said.maybe(id) };
  const kind = said.value('mainFuseKind');
  const location = said.value('specialLocation');
  const resistance = maybe('electrode');
  const measured = maybe('measuredDemand');
  return present({
    system: fact('earthing'),
    phases: fact('phases'),
    nominalVoltage: '230 V',
    frequency: '50 Hz',
    externalImpedance: fact('ze'),
    prospectiveCurrent: fact('ipf'),
    cutOut: {
      kind:
        kind === undefined
          ? { unknown: obtained('mainFuseKind') }
          : { known: { standard: kind }, by: byOf(maybe('mainFuseKind')) },
      rating: fact('mainFuse'),
    },
    cutOutSound: fact('cutOutSound'),
    looped: fact('looped'),
    metered: true,
    tails: fact('tails'),
    earthingConductor: fact('earthingConductor'),
    earthingConductorLaid: fact('earthingConductorLaid'),
    supplyNeutral: fact('supplyNeutral'),
    ...bondingOf(said),
    electrode: resistance && { resistance },
    meterPoint: fact('meterPoint'),
    specialLocation: location,
    meteredDemand: measured && { current: measured, about: String(said.value('measuredOver') ?? 'not said') },
  });
}

const byOf = (answer: Answer | undefined): string => (answer && 'by' in answer ? answer.by : 'brief survey');
const obtained = (id: string): string => {
  const question = questionById(id);
  return question ? obtainOf(question) : id;
};

const sections = ['loft', 'indoors', 'wallsOutside', 'buried'] as const;

/** The route, section by section, for a cable that may go into lofts as twin and earth or not. */
function route(said: Said, twinAndEarth: boolean): readonly Part[] {
  const there = sections.filter((id) => {
    const answer = said.maybe(id);
    return answer && ('unknown' in answer || said.isThere(id));
  });
  const ambient = said.fact('ambient');
  const beside = said.fact('circuitsBeside');
  if (there.length === 0)
    return [
      routeSection({
        name: 'route',
        length: { unknown: 'pace the route out, section by section' },
        ambient,
        circuits: beside,
      }),
    ];
  const insulated = said.fact('insulated');
  const firstInside = there.find((id) => id === 'loft' || id === 'indoors');
  return there.map((id) => {
    const length = said.fact(id);
    const by = byOf(length);
    if (id === 'buried')
      return routeSection({
        name: 'in the ground',
        length,
        method: { known: 'D', by },
        circuits: beside,
        arrangement: 'direct-in-ground',
        ambient: { unknown: 'temperature of the ground' },
        more: present({
          containment: 'buried',
          outdoors: true,
          depth: said.maybe('depth'),
          soilResistivity: { unknown: 'nature of the soil' },
        }),
      });
    const outside = id === 'wallsOutside';
    return routeSection({
      name: { loft: 'loft or floor', indoors: 'walls indoors', wallsOutside: 'walls outdoors' }[id],
      length,
      method: { known: id === 'loft' && twinAndEarth ? '100' : 'C', by },
      ambient,
      circuits: beside,
      more: {
        containment: 'clipped',
        ...(outside ? { outdoors: true } : {}),
        // the length that was asked for is that of the whole route
        insulated: outside
          ? { known: '0 m', by: 'outdoors' }
          : id === firstInside || 'unknown' in insulated
            ? insulated
            : { known: '0 m', by: byOf(insulated) },
      },
    });
  });
}

function wanted(said: Said, { fits }: FirmDefaults): Part {
  const three = said.value('chargePhases') === 3;
  const outdoors = (['wallsOutside', 'buried'] as const).some((id) => {
    const answer = said.maybe(id);
    return answer !== undefined && ('unknown' in answer || said.isThere(id));
  });
  const cables = three ? fits.cablesThreePhase : outdoors ? fits.cablesOutdoors : fits.cablesIndoors;
  const [energy, arrives, leaves] = [said.maybe('energy'), said.value('arrives'), said.value('leaves')];
  return present({
    id: 'charge point',
    from: 'consumer unit',
    lines: three ? ['L1', 'L2', 'L3'] : ['L1'],
    point: present({
      setting: said.fact('chargeCurrent'),
      outdoors: said.fact('outdoors'),
      mode: 3,
      directCurrentDetection: said.fact('detects6mA'),
      openPenDevice: said.fact('openPen'),
      bidirectional: said.value('bidirectional'),
      standingLeakage: said.fact('leakage'),
    }),
    device: fits.device,
    residual: fits.residual,
    cables,
    terminalTemperature: said.fact('terminals'),
    route: route(said, cables[0]?.construction === 'flat-twin-and-earth'),
    vehicle:
      energy && arrives !== undefined && leaves !== undefined
        ? {
            energy,
            onBoardCurrent: said.fact('vehicleCurrent'),
            onBoardPhases: said.fact('vehiclePhases'),
            arrives,
            leaves,
            efficiency: said.fact('efficiency'),
          }
        : undefined,
  });
}

function work(said: Said): Part {
  const travel = said.value('travelMinutes');
  return present({
    mounting: said.value('mounting'),
    wallsToDrill: said.maybe('walls'),
    digging: said.maybe('digging'),
    surface: said.maybe('surface'),
    sensorCable: said.maybe('sensorCable'),
    travelMinutes: travel,
    outletHeight: said.maybe('outletHeight'),
    tenure: said.maybe('tenure'),
    ownerAgrees: said.maybe('ownerAgrees'),
    isolation: said.maybe('isolation'),
    lead: said.maybe('lead'),
    toInlet: said.maybe('toInlet'),
    dataConnection: said.maybe('dataConnection'),
    devicesToBeHad: said.maybe('devicesToBeHad'),
    model: said.value('model'),
  });
}

function documentOf(said: Said, defaults: FirmDefaults): Part {
  const reference = said.value('reference');
  const margin = said.value('demandMargin');
  return present({
    format: 'survey/1',
    about: present({
      title: reference === undefined ? 'Charge point' : `Charge point ${reference}`,
      reference,
      date: said.value('date'),
      country: 'GB',
      premises: said.value('premises'),
    }),
    code: { id: 'BS 7671', edition: said.value('edition') },
    supply: supply(said),
    board: present({
      kind: 'board',
      id: 'consumer unit',
      mainSwitch: { rating: said.fact('mainSwitch') },
      conditionalRating: said.fact('boardFaultRating'),
      rating: said.fact('boardRating'),
      spareWays: said.fact('spareWays'),
      surgeProtection: said.fact('surgeProtection'),
      complete: said.fact('allListed'),
      runs: circuits(said),
    }),
    wanted: [wanted(said, defaults)],
    demand: margin === undefined ? undefined : { meteredMargin: margin },
    work: work(said),
  });
}

const needed = ['date', 'edition', 'premises'] as const;

/**
 * Reads a brief survey: answers to some ten questions of the questionnaire, by their ids. What it does not say, the
 * firm's defaults say; what neither says is not known, with how to obtain it.
 *
 * On three phases every load is taken to be on the line of a single-phase charge point, which is the worst case.
 * @param document a parsed JSON document of format `brief/1`
 * @param defaults the firm's, such as `readDefaults` gives, or `usualDefaults`
 * @returns the full survey, as a document and for `planOf`, and answers that somebody should look at again
 * @throws CalculationError `invalid-input` with every problem, its path the id of the question
 * @example
 * ```ts
 * import { readBrief, usualDefaults } from 'ohmwright/io';
 *
 * const brief = { format: 'brief/1', date: '2026-09-21', edition: '2018+A2:2022', earthing: 'PME', mainFuse: '80 A', indoors: '12 m' };
 * readBrief(brief, usualDefaults).survey.installation.supply.system; // => { state: 'known', value: 'TN-C-S', by: 'brief survey' }
 * readBrief({ ...brief, indoors: '12,5 m' }, usualDefaults); // throws invalid-input
 * ```
 */
export function readBrief(document: unknown, defaults: FirmDefaults): BriefSurvey {
  const found = scan(document);
  if (found.length > 0) throw invalidInput('the brief survey', found);
  if (!isRecord(document))
    throw invalidInput('the brief survey', [{ path: [], id: 'wrong-kind', message: 'is no object in braces' }]);
  if (!isRecord(defaults) || !isRecord(defaults.answers))
    throw invalidInput('the brief survey', [
      { path: ['defaults'], message: `is ${shown(defaults)}; defaults of a firm are due` },
    ]);
  const { format, ...given } = document;
  const problems: Problem[] = [];
  if (format !== 'brief/1')
    problems.push({ path: ['format'], id: 'not-allowed', message: "has to be 'brief/1'", allowed: ['brief/1'] });
  const own = answersOf(given, 'brief survey');
  const firm = answersOf(defaults.answers, defaults.name);
  problems.push(...own.problems, ...firm.problems);
  const answers = new Map(firm.answers);
  // what the survey leaves open the firm's default answers; an open default answers nothing
  for (const [id, answer] of own.answers) if (!('unknown' in answer) || !answers.has(id)) answers.set(id, answer);
  const said = new Said(answers);
  for (const id of needed)
    if (said.value(id) === undefined && !problems.some((p) => p.path[0] === id))
      problems.push({ path: [id], id: 'missing', message: `is missing: ${questionById(id)?.question ?? id}` });
  if (problems.length > 0) throw invalidInput('the brief survey', problems);
  const full = documentOf(said, defaults);
  const questions = [...own.answers].flatMap(([id, answer]) => {
    const question = questionById(id);
    return question ? (oddness(question, answer) ?? []) : [];
  });
  return { document: full, survey: readFull(full), questions };
}

/** Reads the full survey; what is wrong with it is told of the question that it comes from. */
function readFull(full: Part): Survey {
  try {
    return readSurvey(full);
  } catch (error) {
    if (!hasCode(error, 'invalid-input')) throw error;
    const asked = new Set(questionnaire().map((q) => q.id));
    throw invalidInput(
      'the brief survey',
      error.detail.problems.map((p) => {
        // the value of a fact is asked for as the fact
        const fact = p.path.at(-1) === 'known' ? p.path.slice(0, -1) : p.path;
        const id = (questionOf(pathText(p.path)) ?? questionOf(pathText(fact)))?.id ?? '';
        return asked.has(id) ? { ...p, path: [id] } : p;
      }),
    );
  }
}

/**
 * A survey of which nothing is known yet but the day and the edition: every fact says how it is obtained.
 * @param day day of the survey, as yyyy-mm-dd
 * @param edition edition of the wiring rules, as `survey.code.edition` names it
 * @param defaults what the firm fits
 * @returns a document of format `survey/1`, to be filled in
 * @throws CalculationError `invalid-input` where day or edition is none
 * @example
 * ```ts
 * import { blankSurvey, readSurvey, usualDefaults } from 'ohmwright/io';
 *
 * readSurvey(blankSurvey('2026-09-21', '2018+A2:2022', usualDefaults)).installation.supply.looped.state; // => 'unknown'
 * ```
 */
export const blankSurvey = (day: string, edition: string, defaults: FirmDefaults): Part =>
  readBrief({ format: 'brief/1', date: day, edition }, defaults).document;
