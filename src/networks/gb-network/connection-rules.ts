import {
  type CheckResult,
  isMissing,
  type Known,
  notRequired,
  overall,
  type Sheet,
  whenKnown,
} from '../../core/index.js';
import { runsOfNames } from '../../core/names.js';
import type { ConnectedDevice, ConnectionDecision, ConnectionFacts, Duty, Route } from '../../demand/connection.js';
import { formEntries } from '../../demand/form.js';
import type { NetworkRules } from '../../demand/network-rules.js';
import { amperes, kilovoltAmperes, voltAmperes } from '../../units/index.js';
import { daysAfter } from '../due-dates.js';
import * as c from './connection-checks.js';
import { meterPointEntry } from './meter-point-entry.js';

const NOTICE_DAYS = 28;
/** ENA process: the operator is told after the work up to this demand, A. */
const NOTICE_CURRENT = 60;

/** Demand against 60 A, 13.8 kVA and the cut-out, line by line. */
function demandResults(facts: ConnectionFacts, sheet: Sheet): CheckResult[] {
  const single = facts.phases === 1;
  const byLine = facts.lines.flatMap(({ line, demand: found }) => {
    const part = sheet.part(line);
    const subject = single ? undefined : line;
    const demand = part.given('demand', found, 'governing method');
    const notifyThreshold = part.given('notifyThreshold', amperes(NOTICE_CURRENT), 'ENA process: 60 A');
    const cutOutRating = part.given('cutOutRating', facts.cutOutRating, 'survey');
    const results = [
      part.check(c.demandForNotice, { demand, notifyThreshold }, subject),
      part.check(c.cutOutForNotice, { demand, cutOutRating }, subject),
    ];
    if (facts.phases === 3) return results;
    // a number of phases that nobody knows may turn out to be one
    const power = whenKnown([found], (i) => voltAmperes(i * facts.nominalVoltage));
    const demandPower = part.given('demandPower', power, `demand at ${facts.nominalVoltage} V`);
    const notifyThresholdPower = part.given('notifyThresholdPower', kilovoltAmperes(13.8), 'ENA process: 13.8 kVA');
    return [...results, part.check(c.powerForNotice, { demandPower, notifyThresholdPower }, subject)];
  });
  if (facts.phases !== 3) return byLine;
  const other = notRequired(c.powerForNotice, 'not-applicable', 'the figure is for single-phase supplies');
  return [...byLine, sheet.result(other)];
}

const not = (fact: Known<boolean>): Known<boolean> => whenKnown([fact], (x) => !x);

function serviceResults(facts: ConnectionFacts, sheet: Sheet): CheckResult[] {
  return [
    sheet.check(c.cutOutIsSound, { holds: facts.cutOutSound, because: 'as surveyed' }),
    sheet.check(c.serviceNotLooped, { holds: not(facts.looped), because: 'as surveyed' }),
    sheet.check(c.supplyIsMetered, { holds: facts.metered, because: 'as surveyed' }),
    // a supply that the plan leaves alone needs no line that says so
    ...(facts.supplyChange === undefined
      ? []
      : [sheet.check(c.supplyStays, { holds: false, because: facts.supplyChange })]),
    sheet.check(c.singleInstallation, { holds: not(facts.programme), because: 'as stated' }),
  ];
}

const isSource = ({ kind }: ConnectedDevice) => kind === 'generation' || kind === 'storage';
const feeds = (d: ConnectedDevice) => isSource(d) || d.bidirectional === true;
const mayFeed = (d: ConnectedDevice) => isSource(d) || d.bidirectional !== false;
const sumOf = (devices: readonly ConnectedDevice[], times: (d: ConnectedDevice) => number): Known<number> =>
  whenKnown(
    devices.map((d) => (isSource(d) ? d.current : whenKnown([d.bidirectional, d.current], (_, current) => current))),
    (...currents) => currents.reduce<number>((sum, i, k) => sum + i * times(devices[k] as ConnectedDevice), 0),
  );

/** Generation and storage: every source on the premises is added up. */
function sourceResults(facts: ConnectionFacts, sheet: Sheet): CheckResult[] {
  const sources = facts.devices.filter(mayFeed);
  const none = 'there is no generation, no storage, and no charge point that feeds back';
  if (sources.length === 0) return [sheet.result(notRequired(c.sourcesForNotice, 'not-applicable', none))];
  const part = sheet.part('Generation and storage');
  const small = facts.lines.map(({ line }) => {
    const own = part.part(line);
    const subject = facts.lines.length > 1 ? line : undefined;
    const sum = sumOf(
      sources.filter((s) => s.lines.includes(line)),
      () => 1,
    );
    const sourceCurrent = own.given('sourceCurrent', whenKnown([sum], amperes), 'all sources on the line together');
    const sourceCurrentLimit = own.given('sourceCurrentLimit', amperes(16), 'EREC G98');
    return own.check(c.sourcesForNotice, { sourceCurrent, sourceCurrentLimit }, subject);
  });
  if (!sources.some((s) => s.bidirectional !== false)) return small;
  const total = sumOf(sources, (s) => s.lines.length * facts.nominalVoltage);
  const sourcePower = part.given('sourcePower', whenKnown([total], voltAmperes), 'all sources together');
  const limit = whenKnown([facts.phases], (n) => kilovoltAmperes(n === 1 ? 17 : 50));
  const sourcePowerLimit = part.given('sourcePowerLimit', limit, 'ENA process: 17 kW single-phase, 50 kW three-phase');
  return [...small, part.check(c.sourcesForOneForm, { sourcePower, sourcePowerLimit })];
}

/** Runs of names up to which a duty names each. */
const MOST_NAMED = 8;

function dutiesOf(route: Route, sources: readonly CheckResult[], facts: ConnectionFacts): Duty[] {
  const fresh = facts.devices.filter((d) => d.isNew);
  const forms = fresh.filter((d) => d.kind === 'charge-point' || d.kind === 'heat-pump');
  const named = (['charge-point', 'heat-pump'] as const).flatMap((kind) => {
    const ids = forms.filter((d) => d.kind === kind).map((d) => d.id);
    const runs = runsOfNames(ids);
    // of many the first and the last: the entries of the form name them
    const few = runs.length > MOST_NAMED ? [ids] : runs;
    return few.flatMap((run) =>
      (run.length > 2 ? [`‘${run[0]}’ to ‘${run.at(-1)}’ (${run.length})`] : run.map((id) => `‘${id}’`)).map(
        (id) => `${kind.replace('-', ' ')} ${id}`,
      ),
    );
  });
  const names = named.join(', ') || 'the installation';
  const duties: Duty[] = [];
  if (route === 'notify-after')
    duties.push({
      id: 'notify',
      what: `Send the form for ${names} to the distributor, one for each device`,
      when: `within ${NOTICE_DAYS} days of installing`,
      source: c.connectionProcess,
      ...(facts.completed === undefined ? {} : { due: daysAfter(facts.completed, NOTICE_DAYS, 'completed') }),
    });
  else
    duties.push({
      id: 'apply',
      what: `Apply to the distributor for ${names}, one form for each device, and wait for the reply`,
      when: 'before connecting',
      source: c.connectionProcess,
    });
  if (!fresh.some(feeds)) return duties;
  const asked = sources.some((r) => r.check === c.sourcesForNotice.id && r.verdict !== 'pass');
  return [
    ...duties,
    asked
      ? {
          id: 'generation-permission',
          what: 'Obtain permission for the generation and storage (G99)',
          when: 'before installing',
          source: { document: 'ENA EREC G99', provenance: 'one-source' },
        }
      : {
          id: 'generation-notice',
          what: 'Tell the distributor of the generation and storage (G98)',
          when: `within ${NOTICE_DAYS} days of commissioning`,
          source: { document: 'ENA EREC G98', provenance: 'memory' },
          ...(facts.completed === undefined ? {} : { due: daysAfter(facts.completed, NOTICE_DAYS, 'completed') }),
        },
  ];
}

/** Rules of the distributors of Great Britain: connect and notify, or apply first. */
export const greatBritain: NetworkRules = /* @__PURE__ */ (() => ({
  id: 'gb-network',
  title: 'Connect and notify, or apply first, in Great Britain',
  country: 'GB',
  noticeUpTo: amperes(NOTICE_CURRENT),
  decide(facts: ConnectionFacts, sheet: Sheet): ConnectionDecision {
    const part = sheet.part('Notify or apply, Great Britain');
    const sources = sourceResults(facts, part);
    const results = [...demandResults(facts, part), ...serviceResults(facts, part), ...sources];
    const { verdict } = overall(results);
    // whether others are planned nearby asks for advice while it is not known; once it is, the distributor comes first;
    // a capacity that nobody knows is a ground for asking by itself
    const route: Route =
      verdict === 'fail' || facts.programme === true || isMissing(facts.cutOutRating)
        ? 'apply-first'
        : verdict === 'not-determined'
          ? 'not-determined'
          : 'notify-after';
    return {
      country: 'GB',
      route,
      ...(route === 'not-determined' || (verdict !== 'fail' && isMissing(facts.cutOutRating))
        ? { meanwhile: 'Do not connect: ask the distributor first for as long as these facts are not known.' }
        : {}),
      results,
      duties: dutiesOf(route, sources, facts),
      cautions: [
        'For dwellings with an existing supply; distributors’ own pages add local rules. A limiter satisfies a distributor only when it says so.',
        'For a three-phase supply 60 A is taken for each line (from memory).',
        'An earlier code of practice gave one calendar month for the notice.',
      ],
    };
  },
  safety: [c.cutOutIsSound.id],
  form: [
    formEntries.address,
    meterPointEntry,
    formEntries.supply,
    formEntries.demand,
    formEntries.devices,
    formEntries.loadControls,
    formEntries.completed,
    formEntries.route,
    formEntries.installer,
  ],
}))();
