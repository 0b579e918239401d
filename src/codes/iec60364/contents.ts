import { Calculator, contents } from '../../calculation/index.js';
import { sharedFacts } from '../iec-family/facts.js';
import { circuitScopes } from '../iec-family/places.js';
import { coordination } from './groups/coordination.js';
import { terminals } from './groups/terminals.js';

/** IEC 60364 as a contents list, as far as its rules were available. */
const list = () => {
  const facts = sharedFacts();
  const rating = coordination();
  const terminal = terminals();
  const { circuit, sections } = circuitScopes;
  return contents({
    scopes: { circuit, sections },
    figures: {
      circuit: { ...facts.circuit, ...rating.circuit, ...terminal.circuit },
      sections: { ...facts.sections, ...rating.sections },
    },
    checks: {
      coordination: rating.checks,
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
