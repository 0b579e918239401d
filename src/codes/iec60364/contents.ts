import { Calculator, contents, together } from '../../calculation/index.js';
import { conductors } from '../iec-family/conductors.js';
import { sharedFacts } from '../iec-family/facts.js';
import { circuitScopes } from '../iec-family/places.js';
import { coordination } from './groups/coordination.js';
import { terminals } from './groups/terminals.js';
import { voltageDrop } from './groups/voltage-drop.js';

/** IEC 60364 as a contents list, as far as its rules were available. */
const list = () => {
  const facts = sharedFacts();
  const rating = coordination();
  const terminal = terminals();
  const way = conductors();
  const drop = voltageDrop();
  return contents({
    scopes: circuitScopes,
    figures: {
      circuit: together(facts.circuit, rating.circuit, drop.circuit, terminal.circuit),
      sections: together(facts.sections, rating.sections),
      runs: together(facts.runs, way.runs, drop.runs),
      runSections: way.runSections,
      rates: drop.rates,
      runLines: drop.runLines,
      pieces: drop.pieces,
      lines: drop.lines,
      sequences: drop.sequences,
      temperatures: way.temperatures,
      conductors: way.conductors,
      returns: way.returns,
    },
    checks: {
      coordination: rating.checks,
      'voltage-drop': drop.checks,
      'terminal-temperature': terminal.checks,
    },
  });
};

let made: Calculator | undefined;
/** What calculates circuits by IEC 60364; laid out when first asked for. */
export const calculator = (): Calculator => {
  made ??= new Calculator(list());
  return made;
};
