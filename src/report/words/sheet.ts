import type { SheetLine } from '../../core/index.js';

/** The words of calculation sheets, test sheets and records. */
export const sheetWords = {
  head: ['line', 'what', 'result', 'source'],
  kinds: {
    given: 'given',
    label: 'given',
    look: 'table',
    step: 'step',
    run: 'procedure',
    gather: 'gather',
    overall: 'overall',
    note: 'note',
  } as Readonly<Partial<Record<SheetLine['kind'], string>>>,
  named: (title: string, what: string) => `${title}: ${what}`,
  gathered: (how: string, from: string, parts: string) => `${how} of ${from} over parts ${parts}`,
  asAbove: 'as above',
  stated:
    'A second calculation confirms the figures of this sheet, its results and what they amount to. It cannot confirm what is stated: the facts given, remarks, what somebody says, and that of the checks that some circuits need no other was due.',
  checks: (n: number) => `${n} ${n === 1 ? 'check' : 'checks'}`,
  attested: (by: string) => `attested by ${by}`,
  known: (source: string, how: string) => `${source} (${how})`,
  notDetermined: (gaps: string) => `not determined: ${gaps}`,
  notKnown: (fact: string, obtain: string | undefined) => `${fact} is not known${obtain ? ` (${obtain})` : ''}`,
  inEdition: (gap: string, edition: string) => `${gap} (${edition})`,
  because: (figures: string, why: string) => `${figures} (${why})`,
  between: (value: string, least: string, most: string) => `${value} against ${least} to ${most}`,
  against: (value: string, limit: string) => `${value} against ${limit}`,
  margin: (figures: string, margin: string) => `${figures}, ${margin}`,
  percent: (percent: string) => `margin ${percent} %`,
  times: (times: string) => `${times} times the limit`,
  manyTimes: 'more than ten times the limit',

  tests: {
    title: (circuit: string) => `Tests of ${circuit}`,
    inOrder: (circuit: string) => `Tests of ${circuit}, in order`,
    none: (edition: string, gaps: string) => `The tests of ${edition} are not entered here: ${gaps}.`,
    state: (edition: string, at: string, electronics: string) =>
      `Edition ${edition}; conductors at ${at}; electronics ${electronics} during the insulation test. The last column is for the readings.`,
    head: ['no.', 'test', 'what', 'expected', 'limit', 'read'],
    kind: (test: string, state: string) => `${test} (${state})`,
    sides: { 'at-most': 'at most', 'at-least': 'at least', 'must-not-trip': 'must not trip' },
    limit: (side: string, amount: string) => `${side} ${amount}`,
    tabulated: (limit: string) => `The largest Z_s of the tables is ${limit}, for warm conductors: not for the meter`,
    thumb: (by: string, limit: string) => `By ${by}: ${limit}`,
  },

  records: {
    title: (option: string) => `Records: ${option}`,
    note: 'Data for certificates and forms, in a layout of our own. They are no certificate: that is issued by the person who inspected and tested.',
    supply: 'Supply and earthing',
    head: ['field', 'entry'],
    circuit: (point: string) => `Circuit of charge point ‘${point}’`,
    judged: 'Readings judged',
    judgedHead: ['reading', 'verdict', 'why'],
    contradiction: (readings: readonly string[], meaning: string) => `${readings.join(' and ')}: ${meaning}`,
    owing: (what: string) => `still owing: ${what}`,
    householder: 'For the householder',
  },
};
