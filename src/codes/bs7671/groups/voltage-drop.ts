import { by, choose, type Line, set, weigh } from '../../../calculation/index.js';
import { isMissing, missing, type Table } from '../../../core/index.js';
import { ratio, type VoltsPerAmpereMetre, volts } from '../../../units/index.js';
import { type DropRules, voltageDropOf } from '../../iec-family/drop.js';
import { bsMethod, cableTables, dropTableFor, noTable } from '../cable-tables.js';
import { dropRateCorrected } from '../capacity.js';
import { dropWithinLimit, insideWindow } from '../clauses.js';

type Rate = Line<'cable' | 'conductorArea' | 'phaseSystem' | 'dropFormation', VoltsPerAmpereMetre>;

/** A printed drop, by those of the keys that its table has axes for. */
function printed(table: Table, part: string): Rate {
  const keys: Readonly<Record<string, Line | string>> = {
    system: 'phaseSystem',
    component: set(part),
    formation: 'dropFormation',
    build: set('multicore'),
  };
  const own = Object.fromEntries(Object.entries(keys).filter(([axis]) => table.axes.some((a) => a.name === axis)));
  return by(table, `Table ${table.source.clause ?? ''}`, own as never) as unknown as Rate;
}

/** Drop per ampere and metre from the table for the cable. BS 7671 Appendix 4, Tables 4D to 4J. */
function rate(part: 'r' | 'x' | 'z'): Rate {
  const ways = new Map<string, Rate>();
  for (const { drop, dropFactor } of cableTables)
    for (const printedPart of drop ? ['r', 'x', 'z'] : []) {
      const plain = printed(drop as unknown as Table, printedPart);
      ways.set(
        `${drop?.id} ${printedPart} ${dropFactor?.[0] ?? 1}`,
        !dropFactor
          ? plain
          : (by(dropRateCorrected, dropFactor[1], {
              resistiveRate: plain,
              temperatureCorrection: set(ratio(dropFactor[0]), dropFactor[1]),
            }) as unknown as Rate),
      );
    }
  const table = weigh(['cable', 'conductorArea', 'phaseSystem'], ({ cable, conductorArea, phaseSystem }) => {
    if (isMissing(cable)) return cable;
    const found = dropTableFor(cable, isMissing(conductorArea) ? undefined : conductorArea, String(phaseSystem), part);
    return found ? `${found.drop.id} ${found.part} ${found.dropFactor?.[0] ?? 1}` : noTable(cable);
  });
  return choose(table as Line<'cable' | 'conductorArea' | 'phaseSystem', string>, Object.fromEntries(ways)) as Rate;
}

/** Voltage drop from the origin. BS 7671 525, Appendix 4, 6. */
const rules: DropRules = {
  rate,
  formation: (section, three) => {
    const method = section ? section.method : undefined;
    if (method?.state === 'unknown')
      return missing({
        kind: 'fact',
        fact: `method of ${section?.name}`,
        ...(method.obtain ? { obtain: method.obtain } : {}),
      });
    const letter = method?.state === 'known' ? bsMethod(method.value) : 'C';
    if (letter === 'A' || letter === 'B') return 'enclosed';
    if (section?.formation?.startsWith('spaced') || letter === 'G') return 'spaced';
    return three && section?.formation !== 'flat-touching' ? 'trefoil' : 'flat-touching';
  },
  wholeRateUpTo: 16,
  limit: { lighting: 0.03, other: 0.05, by: 'BS 7671 Appendix 4, 6.4, public low-voltage supply' },
  supply: {
    least: /* @__PURE__ */ volts(216.2),
    most: /* @__PURE__ */ volts(253),
    by: 'Electricity Safety, Quality and Continuity Regulations 2002: 230 V -6 % +10 %',
  },
  window: {
    low: /* @__PURE__ */ volts(207),
    high: /* @__PURE__ */ volts(253),
    by: 'BS 7671:2018+A1:2020 722.411.4.1 (iv): 207 V to 253 V',
  },
  clauses: { drop: 'Appendix 4, 6', limit: '525' },
  dropWithinLimit,
  insideWindow,
};
export const voltageDrop = () => voltageDropOf(rules);
