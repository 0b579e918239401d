import type { Known, Sheet } from '../../core/index.js';
import type { DemandLoad } from '../../demand/loads.js';
import { applicable, type DemandMethod, inFull, notApplicable, onLine } from '../../demand/method.js';
import type { Purpose } from '../../installation/index.js';
import type { Amperes } from '../../units/index.js';
import { tableA2 } from './a2.js';
import { circuitsOf, demandOfRow } from './allowances.js';
import { largestAndShare } from './formulas.js';

/** Purposes that come on top in full. */
const onTop: readonly Purpose[] = [
  'instantaneous-water-heating',
  'thermostatic-water-heating',
  'floor-heating',
  'storage-heating',
  'heat-pump',
  'storage',
];
const isStandard = (l: DemandLoad) =>
  (l.purpose === 'socket-outlets' || l.purpose === 'lighting') && l.standardCircuit !== false;

/** Standard circuits in full, and the cookers as one circuit after their own allowance. */
function ranked(loads: readonly DemandLoad[], sheet: Sheet): readonly Sheet[] {
  const parts = circuitsOf(loads.filter(isStandard)).map((entry) => {
    const circuit = sheet.part(entry.title);
    circuit.gather('sum', 'demand', 'demand', inFull(entry.loads, 'demand', '', circuit));
    return circuit;
  });
  const cookers = loads.filter((l) => l.purpose === 'cooking');
  return cookers.length === 0 ? parts : [...parts, demandOfRow('cooking', 'dwelling', cookers, sheet)];
}

function ruled(loads: readonly DemandLoad[], sheet: Sheet): Known<Amperes> {
  const parts = ranked(loads, sheet);
  if (parts.length === 0) return sheet.gather('sum', 'demand', 'existingDemand', []);
  const largestCurrent = sheet.gather('largest', 'demand', 'largestCurrent', parts);
  const allCurrents = sheet.gather('sum', 'demand', 'allCurrents', parts);
  const premises = sheet.label('premises', 'dwelling');
  const purposeRow = sheet.label('purposeRow', 'standard-circuits');
  const part = sheet.label('part', 'others');
  const demandFactor = sheet.look(tableA2, { premises, part, purposeRow });
  return sheet.step(largestAndShare, { largestCurrent, allCurrents, demandFactor });
}

/** The one-line rule for a dwelling: the largest circuit in full and 40 % of every other, after the cooker's own allowance. */
export const oneLineRule: DemandMethod = {
  id: 'one-line-rule',
  title: 'Largest circuit in full and 40 % of every other',
  source: {
    document: 'On-Site Guide',
    clause: 'Table A2, standard circuits; repeated by a trade body',
    provenance: 'two-sources',
  },
  assumption:
    'Standard final circuits and the cooker only; the circuits are ranked after the cooker’s own allowance. Water heaters, ' +
    'showers, storage and floor heating, heat pumps and stores come on top in full. Socket circuits and lighting are ' +
    'standard circuits unless the survey says otherwise.',
  countBands: false,
  divisible: true,
  applies: (c, options) => {
    if (options.premises !== 'dwelling') return notApplicable(`the rule is for dwellings, not for ${options.premises}`);
    const outside = c.loads.filter((l) => !isStandard(l) && l.purpose !== 'cooking' && !onTop.includes(l.purpose));
    return outside.length === 0
      ? applicable
      : notApplicable(`the rule has no place for ${outside.map((l) => `${l.id} (${l.purpose})`).join(', ')}`);
  },
  existing: (loads, line, _c, _options, sheet) => {
    const all = onLine(loads, line);
    const circuits = sheet.part('standard circuits and cooker');
    ruled(all, circuits);
    const added = inFull(
      all.filter((l) => onTop.includes(l.purpose)),
      'existingDemand',
      ', in full',
      sheet,
    );
    return sheet.gather('sum', 'existingDemand', 'existingDemand', [circuits, ...added]);
  },
};
