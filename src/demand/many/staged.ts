import { endsOf, type Gap, type Known, knownOf, type Sheet, stated } from '../../core/index.js';
import { own } from '../../core/own.js';
import { type Dwellings, type Line, shareOfLine } from '../../installation/index.js';
import { type Amperes, ratio, voltAmperes, wattHours } from '../../units/index.js';
import type { DemandCase, DemandLoad } from '../loads.js';
import {
  type Applicability,
  applicable,
  type DemandMethod,
  type DemandOptions,
  inFull,
  notApplicable,
  onLine,
} from '../method.js';
import type { GroupMethod } from './dwellings.js';
import { groupActiveCurrentOfLine, groupCurrentOfLine } from './formulas.js';
import type { DwellingGroup } from './group.js';

/** Power factor of dwellings together, where a method gives active power. Common practice, no source. */
const POWER_FACTOR = 0.95;

type Several = DemandLoad & { readonly dwellings: Dwellings };
const isSeveral = (load: DemandLoad): load is Several => load.dwellings !== undefined;

/** Dwellings that are alike but for what one takes at most: the number of all of them decides their coincidence. */
interface Kind {
  readonly loads: readonly Several[];
  readonly group: DwellingGroup;
}

/** Largest power of all dwellings of a load, VA; undefined where it is not known. */
function powerOf({ dwellings: d }: Several, voltage: number): number | undefined {
  const each = endsOf(d.each)?.[1];
  return each === undefined ? undefined : d.count * each * voltage * (knownOf(d.phases) ?? 1);
}

function kindsOf(loads: readonly DemandLoad[], c: DemandCase, { dwellings: own = {} }: DemandOptions): readonly Kind[] {
  const kinds = new Map<string, Several[]>();
  for (const load of loads.filter(isSeveral)) {
    const { heating, electricWater } = load.dwellings;
    const key = JSON.stringify([knownOf(heating), knownOf(electricWater)]);
    kinds.set(key, [...(kinds.get(key) ?? []), load]);
  }
  return [...kinds.values()].map((alike) => {
    const { heating, electricWater } = (alike[0] as Several).dwellings;
    const count = alike.reduce((sum, l) => sum + l.dwellings.count, 0);
    const powers = alike.map((l) => powerOf(l, c.installation.supply.nominalVoltage));
    const heated = knownOf(heating);
    const whole = powers.every((p): p is number => p !== undefined) ? powers.reduce((a, b) => a + b, 0) : undefined;
    return {
      loads: alike,
      group: {
        dwellings: count,
        ...stated({
          each: whole === undefined ? undefined : voltAmperes(whole / count),
          heating: heated,
          storageHeating: heated && heated === 'night-storage',
          electricWaterHeating: knownOf(electricWater),
          // constants of the user's are of one kind
          afterDiversity: kinds.size === 1 ? own.afterDiversity : undefined,
          coincidence: kinds.size === 1 ? own.coincidence : undefined,
          energy:
            kinds.size === 1 && own.energy
              ? { annual: wattHours(own.energy.each * count), linear: own.energy.linear, root: own.energy.root }
              : undefined,
        }),
      },
    };
  });
}

/** The fact of a survey that answers what a method asks of a group. */
const answers = { storageHeating: 'heating', heating: 'heating', electricWaterHeating: 'electricWater' } as const;

/** Facts of dwellings that nobody has stated, of those that a method asks for. */
const openFacts = (asked: readonly Gap[], loads: readonly Several[]): readonly Gap[] =>
  loads.flatMap(({ id, dwellings }) =>
    asked.flatMap((gap): readonly Gap[] => {
      const key = gap.kind === 'fact' ? own(answers, gap.fact) : undefined;
      if (!key) return [];
      const fact = dwellings[key] ?? { state: 'unknown' as const };
      if (fact.state !== 'unknown') return [];
      return [{ kind: 'fact', fact: `${key} of ${id}`, ...stated({ obtain: fact.obtain }) }];
    }),
  );

function appliesTo(method: GroupMethod, c: DemandCase, options: DemandOptions): Applicability {
  const kinds = kindsOf(c.loads, c, options);
  if (kinds.length === 0) return notApplicable('no dwellings are listed');
  const said = kinds.map((kind) => method.applies(kind.group));
  const open = said.find((a) => a.verdict === 'not-determined');
  const not = said.find((a) => a.verdict === 'not-applicable');
  if (not) return not;
  if (!open) return applicable;
  const gaps = openFacts(open.gaps, c.loads.filter(isSeveral));
  return { verdict: 'not-determined', because: open.because, gaps: gaps.length > 0 ? gaps : open.gaps };
}

/** Share of the demand of a kind that a line takes: of each load by its power, the odd dwellings on this line. */
function lineShareOf(method: GroupMethod, { loads, group }: Kind, line: Line, voltage: number): number {
  const allowance = Math.max(1, group.afterDiversity?.unbalance ?? 1);
  const powers = loads.map((l) => powerOf(l, voltage));
  const weights = powers.every((p): p is number => p !== undefined) ? powers : loads.map((l) => l.dwellings.count);
  const all = weights.reduce((a, b) => a + b, 0);
  // a method that allows for unbalance spreads all of them as evenly as whole dwellings go, as far as its allowance is not enough
  const spread = (lines: number) => {
    const alike = loads.filter((l) => l.lines.length === lines && knownOf(l.dwellings.phases) !== 3);
    const count = alike.reduce((sum, l) => sum + l.dwellings.count, 0);
    return count > 0 ? Math.max(1 / lines, Math.ceil(count / lines) / count / allowance) : 1 / lines;
  };
  const onIt = loads.reduce((sum, l, i) => {
    if (!l.lines.includes(line)) return sum;
    const { length } = l.lines;
    const share = method.unbalanceIncluded ? spread(length) : shareOfLine(l.dwellings, length);
    return sum + share * (weights[i] as number);
  }, 0);
  return all > 0 ? Math.min(1, onIt / all) : 0;
}

function kindOnLine(method: GroupMethod, kind: Kind, line: Line, c: DemandCase, part: Sheet): Known<Amperes> {
  const { nominalVoltage: voltage } = c.installation.supply;
  const found = method.demand(kind.group, part) as Known<never>;
  const groupLineShare = part.given(
    'groupLineShare',
    ratio(lineShareOf(method, kind, line, voltage)),
    method.unbalanceIncluded
      ? 'spread evenly, as far as whole dwellings and the allowance for unbalance go'
      : 'the line that has most of them',
  );
  const nominalVoltage = part.given('nominalVoltage', voltage);
  if (method.unit === 'VA') return part.step(groupCurrentOfLine, { groupPower: found, groupLineShare, nominalVoltage });
  const powerFactor = part.given(
    'powerFactor',
    ratio(POWER_FACTOR),
    'customary of dwellings: common practice, no source',
  );
  return part.step(groupActiveCurrentOfLine, { groupActivePower: found, powerFactor, groupLineShare, nominalVoltage });
}

/**
 * A method for many dwellings as one for the demand of an installation or a part of it: dwellings by the number of them
 * below the place that is asked of, kind by kind; every other load in full.
 * @param method the method for like dwellings
 * @returns a method for the demand of what hangs below a place
 * @example
 * ```ts
 * import { riserMethod } from 'ohmwright/networks';
 * import { dwellingsByStage } from 'ohmwright/demand';
 *
 * dwellingsByStage(riserMethod).divisible; // => true
 * ```
 */
export const dwellingsByStage = (method: GroupMethod): DemandMethod => ({
  id: method.id,
  title: method.title,
  source: method.source,
  assumption: `${method.assumption} Counted are all dwellings below the place that is asked of, kind by kind; other loads come on top in full.${method.unit === 'W' ? ` Power factor ${POWER_FACTOR}.` : ''}`,
  countBands: method.countBands,
  divisible: true,
  applies: (c, options) => appliesTo(method, c, options),
  existing: (loads, line, c, options, sheet) => {
    const parts = kindsOf(loads, c, options).map((kind) => {
      const part = sheet.part(kind.loads.map((l) => l.id).join(', '));
      // a part of what is asked of may hold fewer than the method is for: they count in full
      if (method.applies(kind.group).verdict === 'applicable') kindOnLine(method, kind, line, c, part);
      else
        part.gather(
          'sum',
          'existingDemand',
          'existingDemand',
          inFull(onLine(kind.loads, line), 'existingDemand', ', in full', part),
        );
      return part;
    });
    const others = inFull(
      onLine(
        loads.filter((l) => !isSeveral(l)),
        line,
      ),
      'existingDemand',
      ', in full',
      sheet,
    );
    return sheet.gather('sum', 'existingDemand', 'existingDemand', [...parts, ...others]);
  },
});
