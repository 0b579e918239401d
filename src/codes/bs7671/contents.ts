import { Calculator, contents } from '../../calculation/index.js';
import { conductors } from '../iec-family/conductors.js';
import { sharedFacts } from '../iec-family/facts.js';
import { circuitScopes } from '../iec-family/places.js';
import { minimumSize } from './groups/minimum-size.js';

/** BS 7671 as a contents list: where each figure comes from, and the checks by group. */
const list = () => {
  const facts = sharedFacts();
  const way = conductors();
  const size = minimumSize();
  return contents({
    scopes: circuitScopes,
    figures: {
      circuit: { ...facts.circuit, ...size.circuit },
      sections: facts.sections,
      runs: { ...facts.runs, ...way.runs },
      runSections: way.runSections,
      temperatures: way.temperatures,
      conductors: way.conductors,
      returns: way.returns,
    },
    checks: {
      'minimum-size': size.checks,
    },
  });
};

let made: Calculator | undefined;
/** What calculates circuits by BS 7671; laid out when first asked for. */
export const calculator = (): Calculator => {
  made ??= new Calculator(list());
  return made;
};
