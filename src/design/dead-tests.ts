import { isMissing, type Known, whenKnown } from '../core/index.js';
import { byCable } from '../installation/index.js';
import { ringLineNeutral, ringLineProtective } from '../physics/index.js';
import { formatIn, type Ohms, ohms } from '../units/index.js';
import { atLeast, lacking, maybe, near, type PlannedReading, runAt, type TestCase } from './planned-reading.js';

/** What is to be read over each cable, of a circuit that changes its cable along the route. */
function eachLength(input: TestCase): string {
  const parts = byCable(input.circuit.run);
  if (parts.length < 2) return '';
  const each = parts.map((part) => {
    const { both } = runAt(input, part, 'test');
    return `${isMissing(both) ? 'not known' : formatIn(both, 'Ω', 3)} from ${part.stretches[0]?.name}`;
  });
  return ` Of it, cable by cable: ${each.join(', ')}.`;
}

export function continuity(input: TestCase): readonly PlannedReading[] {
  const cold = runAt(input, input.circuit.run, 'test');
  return [
    {
      id: 'continuity',
      what: 'R_1+R_2: line and protective conductor linked at the board, read at the farthest point',
      ...maybe(cold.both, 'continuityExpected', 'Ω'),
      ...near(cold.both, input),
      alternative: 'protectiveContinuity',
      note: `At ${input.testTemperature} °C.${eachLength(input)} A lower reading may have found a parallel path, a higher one a bad joint or another length.`,
    },
    {
      id: 'protectiveContinuity',
      what: 'R_2: protective conductor alone, with a wander lead',
      ...maybe(cold.protective, 'continuityExpected', 'Ω'),
      ...near(cold.protective, input),
      alternative: 'continuity',
    },
  ];
}

export function ring(input: TestCase): readonly PlannedReading[] {
  const { run } = input.circuit;
  if (run.ring !== true) return [];
  const { line, protective } = runAt(input, run, 'test');
  // a run is reckoned from its board to the farthest point: a quarter of each conductor from end to end
  const ends = (quarter: Known<Ohms>): Known<Ohms> => whenKnown([quarter], (r) => ohms(4 * r));
  const lineNeutral = whenKnown([ends(line)], (r) =>
    ringLineNeutral({ ringLineResistance: r, ringNeutralResistance: r }),
  );
  const lineProtective = whenKnown([ends(line), ends(protective)], (r1, r2) =>
    ringLineProtective({ ringLineResistance: r1, ringProtectiveResistance: r2 }),
  );
  const by = `ends of one size may differ by ${input.plan.ringDifference} Ω`;
  return [
    {
      id: 'ringLine',
      what: 'r_1: ends of the line conductor',
      ...maybe(ends(line), 'ringLineResistance', 'Ω'),
      ...near(ends(line), input),
    },
    {
      id: 'ringNeutral',
      what: 'r_n: ends of the neutral conductor',
      ...maybe(ends(line), 'ringNeutralResistance', 'Ω'),
      ...near(ends(line), input),
      note: by,
    },
    {
      id: 'ringProtective',
      what: 'r_2: ends of the protective conductor',
      ...maybe(ends(protective), 'ringProtectiveResistance', 'Ω'),
      ...near(ends(protective), input),
    },
    {
      id: 'crossLineNeutral',
      what: 'line and neutral cross-connected: the same at every point',
      ...maybe(lineNeutral, 'crossConnectedResistance', 'Ω'),
      ...near(lineNeutral, input),
    },
    {
      id: 'crossLineProtective',
      what: 'line and protective conductor cross-connected: the largest value is R_1+R_2',
      ...maybe(lineProtective, 'crossConnectedResistance', 'Ω'),
      ...near(lineProtective, input),
    },
  ];
}

export function insulation(input: TestCase): readonly PlannedReading[] {
  const { disconnected, connected, clause } = input.plan.insulation;
  const plugged = input.electronics === 'connected';
  const test = plugged ? connected : disconnected;
  const limits = atLeast(test.least, 'insulationResistanceLimit', 'Ω', `${input.plan.edition}, ${clause}`);
  const note = plugged
    ? `At ${test.voltage} V d.c. with the live conductors together: electronics stay connected.`
    : `At ${test.voltage} V d.c. before electronics and surge protection are connected.`;
  const rest = { limits, note, ...lacking(test.least) };
  const toEarth = { id: 'insulationEarth', what: 'live conductors together to earth', ...rest };
  return plugged ? [toEarth] : [{ id: 'insulationLive', what: 'between live conductors', ...rest }, toEarth];
}
