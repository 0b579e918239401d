import { Calculator, contents } from '../../calculation/index.js';
import type { Gap, Source } from '../../core/index.js';
import { conductors } from '../iec-family/conductors.js';
import { sharedFacts } from '../iec-family/facts.js';
import { figuresOf } from '../iec-family/figures-of.js';
import { notEnteredGroups } from '../iec-family/not-entered.js';
import { circuitScopes } from '../iec-family/scopes.js';
import { coordination } from './groups/coordination.js';
import { terminals } from './groups/terminals.js';
import { voltageDrop } from './groups/voltage-drop.js';

/** What stands in the way of the other parts. */
export const gap: Gap = {
  kind: 'edition',
  edition: 'IEC 60364, other parts than 5-52',
  explain: 'the rules were not available; consult the standard itself, or the national code',
};
const source: Source = { document: 'IEC 60364', provenance: 'memory', note: 'text not available' };

/** IEC 60364 as a contents list, as far as its rules were available. */
const list = () => {
  const facts = sharedFacts();
  const rating = coordination();
  const terminal = terminals();
  const way = conductors();
  const drop = voltageDrop();
  return contents({
    scopes: circuitScopes,
    figures: figuresOf(facts, rating, way, drop, terminal),
    checks: {
      ...notEnteredGroups(source, gap),
      coordination: rating.checks,
      'voltage-drop': drop.checks,
      'terminal-temperature': terminal.checks,
    },
  });
};

type List = ReturnType<typeof list>;
let made: Calculator<List['checks']> | undefined;
/** What calculates circuits by IEC 60364; laid out when first asked for. */
export const calculator = (): Calculator<List['checks']> => {
  made ??= new Calculator(list());
  return made;
};
