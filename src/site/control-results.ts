import { mainFuseExcessKnown } from '../charging/definitions.js';
import { judgeMainFuse } from '../charging/index.js';
import type { WiringCode } from '../codes/wiring-code.js';
import {
  type CheckResult,
  type Fact,
  factValue,
  type Gap,
  isMissing,
  type Known,
  notDetermined,
  type Sheet,
} from '../core/index.js';
import { type Demand, existingOnLines } from '../demand/index.js';
import type { Installation } from '../installation/index.js';
import { type Amperes, amperes } from '../units/index.js';

/** A range is taken at the end that heats the fuse more. */
const upper = <V extends number>(name: string, fact: Fact<V>): Known<V> =>
  fact.state === 'between' ? fact.most : factValue(name, fact);

const largestOf = (demand: Demand): Known<Amperes> => {
  const lines = existingOnLines(demand);
  return isMissing(lines) ? lines : amperes(Math.max(...lines));
};

/**
 * Whether the fuse of the supply carries what the load control at the origin lets through while other load rises: at most
 * all of that load, within the time that the control takes. While that cannot be judged it stands as advice, with the
 * facts that are missing: the fuse protects what is behind it in any case, and whoever fits the control is told what to ask.
 */
export function controlResults(
  { timeCurrentLimits }: Pick<WiringCode, 'timeCurrentLimits'>,
  { supply, board }: Installation,
  demand: Demand,
  sheet: Sheet,
): readonly CheckResult[] {
  const { control } = board;
  if (!control) return [];
  const limit = upper(`limit of ${control.name}`, control.limit);
  const time = upper(
    `time in which ${control.name} makes room`,
    control.reaction ?? {
      state: 'unknown',
      obtain: 'its data sheet: from a rise of the load until points and vehicles have followed, 15 s of these for them',
    },
  );
  const rise = largestOf(demand);
  const zone = timeCurrentLimits(supply.cutOut);
  const held = [...(zone?.fast ?? [])].sort((a, b) => b.time - a.time);
  const [longest, ...gates] = held;
  const gaps = [limit, time, rise].flatMap((v) => (isMissing(v) ? v.missing : []));
  const [first] = gaps;
  const known = { limit, rise, time } as { limit: Amperes; rise: Amperes; time: never };
  const fuse = longest ? { gates, nonFusing: amperes(longest.current) } : {};
  const result = first ? undefined : judgeMainFuse({ ...known, ...fuse });
  if (result && result.verdict !== 'not-determined') return [sheet.result(result)];
  const [open = first, ...others] = result?.gaps ?? gaps;
  return [sheet.result(notDetermined(mainFuseExcessKnown, open as Gap, ...others))];
}
