/** An invented contents list: a load on several sections of a route, with a rule on warmth and one on the drop. */
import {
  anyOf,
  by,
  Calculator,
  choose,
  compare,
  contents,
  deciding,
  derive,
  each,
  fact,
  holds,
  largest,
  set,
  smallest,
  sum,
  when,
  whereSmallest,
} from '../../src/calculation/index.js';
import {
  alternatives,
  amperes,
  comparison,
  type Fact,
  formula,
  metres,
  ratio,
  statement,
  table,
  volts,
  voltsPerAmpereMetre,
} from '../../src/index.js';

const source = { document: 'invented', provenance: 'definition' } as const;

export const capacityOf = formula({
  id: 'toy-capacity',
  title: 'Capacity as laid',
  inputs: ['tabulatedCapacity', 'ambientFactor'],
  output: 'capacity',
  expression: 'tabulatedCapacity * ambientFactor',
  direction: { tabulatedCapacity: 1, ambientFactor: 1 },
  compute: ({ tabulatedCapacity, ambientFactor }) => tabulatedCapacity * ambientFactor,
  source,
});
export const dropOf = formula({
  id: 'toy-drop',
  title: 'Drop along a length',
  inputs: ['dropRate', 'designCurrent', 'length'],
  output: 'voltageDrop',
  expression: 'dropRate * designCurrent * length',
  direction: { dropRate: 1, designCurrent: 1, length: 1 },
  compute: ({ dropRate, designCurrent, length }) => dropRate * designCurrent * length,
  source,
});
export const shareOf = formula({
  id: 'toy-share',
  title: 'Drop as a share of the voltage',
  inputs: ['totalDrop', 'nominalVoltage'],
  output: 'dropRatio',
  expression: 'totalDrop / nominalVoltage',
  direction: { totalDrop: 1, nominalVoltage: -1 },
  compute: ({ totalDrop, nominalVoltage }) => totalDrop / nominalVoltage,
  source,
});
/** Falls to 40 °C and stays there: no direction is said of it. */
export const wavering = formula({
  id: 'toy-wavering',
  title: 'A figure without a direction',
  inputs: ['ambientTemperature'],
  output: 'groupFactor',
  expression: '(ambientTemperature - middle)^2 / span^2',
  constants: { middle: [40, 'K'], span: [60, 'K'] },
  compute: ({ ambientTemperature }) => (ambientTemperature - 40) ** 2 / 3600,
  source,
});
export const ambientFactors = table({
  id: 'toy/ambient',
  title: 'Factors',
  axes: [{ name: 'ambientTemperature', unit: '°C', between: 'next-up' }],
  columns: [[]],
  rows: [
    [20, 1.1],
    [30, 1],
    [40, 0.8],
    [60, 0.5],
  ],
  cell: 'ambientFactor',
  unit: '1',
  source,
});

export const carries = comparison({
  id: 'toy-carries',
  title: 'The section carries the load',
  kind: 'at-least',
  value: 'capacity',
  limit: 'designCurrent',
  weight: 'rule',
  source,
});
export const dropLimited = comparison({
  id: 'toy-drop-limited',
  title: 'The drop is limited',
  kind: 'at-most',
  value: 'dropRatio',
  limit: 'dropLimit',
  weight: 'rule',
  source,
});
export const short = comparison({
  id: 'toy-short',
  title: 'The route is short',
  kind: 'at-most',
  value: 'length',
  limit: 'insulatedLength',
  weight: 'rule',
  source,
});
export const eitherWay = alternatives({
  id: 'toy-either',
  title: 'Short, or of little drop',
  weight: 'rule',
  source,
});
export const cool = statement({ id: 'toy-cool', title: 'It is cool', weight: 'advice', source });

export interface ToySection {
  readonly name: string;
  readonly length: Fact<ReturnType<typeof metres>>;
  readonly ambient: Fact<number>;
}
export interface ToyCircuit {
  readonly load: Fact<ReturnType<typeof amperes>>;
  readonly system: Fact<'TN-S' | 'TT'>;
  readonly sections: readonly ToySection[];
}
interface Place {
  readonly circuit: ToyCircuit;
  readonly section: ToySection;
}

export const scopes = {
  circuit: { things: (): readonly unknown[] => [] },
  sections: {
    within: 'circuit',
    things: (circuit: ToyCircuit): readonly Place[] => circuit.sections.map((section) => ({ circuit, section })),
    title: ({ section }: Place) => section.name,
  },
} as const;

export const figures = {
  circuit: {
    designCurrent: fact((c: ToyCircuit) => c.load),
    system: fact((c: ToyCircuit) => c.system),
    nominalVoltage: set(volts(230), 'invented'),
    length: sum('sections/length'),
    insulatedLength: set(metres(10), 'invented'),
    dropRate: set(voltsPerAmpereMetre(0.01), 'invented'),
    totalDrop: sum('sections/voltageDrop'),
    dropRatio: by(shareOf, 'D 1'),
    dropLimit: choose('system', {
      'TN-S': set(ratio(0.05), 'invented'),
      'TN-C-S': set(ratio(0.05), 'invented'),
      TT: set(ratio(0.03), 'invented'),
      IT: set(ratio(0.03), 'invented'),
    }),
    capacity: smallest('sections/capacity', { clause: 'C 2' }),
    ambientTemperature: largest('sections/ambientTemperature'),
    sectionName: whereSmallest('sections/capacity', 'sectionName'),
    buried: derive(['ambientTemperature'], ({ ambientTemperature }) => ambientTemperature > 45, {
      direction: { ambientTemperature: 1 },
    }),
    groupFactor: by(wavering),
    ambientFactor: when('buried', set(ratio(0.5)), set(ratio(1))),
  },
  sections: {
    sectionName: fact((p: Place) => p.section.name),
    length: fact((p: Place) => p.section.length),
    ambientTemperature: fact((p: Place) => p.section.ambient as Fact<never>),
    tabulatedCapacity: set(amperes(40), 'invented'),
    ambientFactor: by(ambientFactors, 'C 1'),
    capacity: by(capacityOf, 'C 1'),
    voltageDrop: by(dropOf, 'D 1'),
  },
} as const;

export const checks = {
  warmth: [
    each('sections', [compare(carries, { because: fact((p: Place) => p.section.name) })]),
    holds(
      cool,
      derive(['buried'], ({ buried }) => !buried),
      set('by the warmest section'),
    ),
  ],
  drop: [compare(dropLimited), anyOf(eitherWay, [compare(short), deciding([compare(dropLimited)])])],
  nothing: { noRule: 'invented' },
} as const;

export const list = () => contents({ scopes, figures, checks });
export const calculator = () => new Calculator(list());
