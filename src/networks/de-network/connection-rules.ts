import { type CheckResult, isMissing, type Known, notRequired, type Sheet, whenKnown } from '../../core/index.js';
import type { ConnectedDevice, ConnectionDecision, ConnectionFacts, Duty, Route } from '../../demand/connection.js';
import { formEntries } from '../../demand/form.js';
import type { NetworkRules } from '../../demand/network-rules.js';
import { amperes, kilovoltAmperes, type VoltAmperes, voltAmperes } from '../../units/index.js';
import { daysAfter } from '../due-dates.js';
import * as c from './connection-checks.js';
import { unbalanceCaps } from './unbalance.js';

const powerOf = (d: ConnectedDevice, facts: ConnectionFacts): Known<VoltAmperes> =>
  whenKnown([d.current], (i) => voltAmperes(i * facts.nominalVoltage * d.lines.length));

/** Rated powers in sum; of devices under one cap the cap counts where it is lower. */
function equipmentSum(points: readonly ConnectedDevice[], facts: ConnectionFacts): Known<VoltAmperes> {
  const capped = facts.jointLimits.filter((j) => !isMissing(j.limit));
  const free = points.filter((p) => !capped.some((j) => j.devices.includes(p.id)));
  const groups = capped.map((j) => {
    const its = points.filter((p) => j.devices.includes(p.id));
    const lines = new Set(its.flatMap((p) => p.lines)).size;
    return whenKnown([j.limit, ...its.map((p) => powerOf(p, facts))], (limit, ...powers) =>
      Math.min(
        (limit as number) * facts.nominalVoltage * lines,
        powers.reduce<number>((a, b) => a + b, 0),
      ),
    );
  });
  return whenKnown([...free.map((p) => powerOf(p, facts)), ...groups], (...all) =>
    voltAmperes(all.reduce<number>((a, b) => a + b, 0)),
  );
}

function unbalanceOf(points: readonly ConnectedDevice[]): Known<number> {
  return whenKnown(
    points.map((p) => p.current),
    (...currents) => {
      const sums = ['L1', 'L2', 'L3'].map((line) =>
        currents.reduce<number>((sum, i, k) => sum + (points[k]?.lines.includes(line) ? i : 0), 0),
      );
      return Math.max(...sums) - Math.min(...sums);
    },
  );
}

function controllable(points: readonly ConnectedDevice[], facts: ConnectionFacts, sheet: Sheet): CheckResult[] {
  if (facts.completed !== undefined && daysAfter(facts.completed, 0, 'completed') < '2024-01-01')
    return [sheet.result(notRequired(c.belowControllable, 'not-applicable', 'commissioned before 2024-01-01'))];
  return points.map((p) => {
    const part = sheet.part(p.id);
    const equipmentPower = part.given('equipmentPower', powerOf(p, facts), 'rated current at the nominal voltage');
    const equipmentPowerLimit = part.given('equipmentPowerLimit', kilovoltAmperes(4.2), 'EnWG § 14a: 4.2 kW');
    return part.check(c.belowControllable, { equipmentPower, equipmentPowerLimit });
  });
}

const duty = (id: string, what: string, document: string, clause: string): Duty => ({
  id,
  what,
  when: 'before commissioning',
  source: { document, clause, provenance: 'two-sources' },
});

/** Rules of the network operators of Germany for charging equipment. */
export const germany: NetworkRules = /* @__PURE__ */ (() => ({
  id: 'de-network',
  title: 'Notice, consent, unbalance and control of charging equipment in Germany',
  country: 'DE',
  decide(facts: ConnectionFacts, sheet: Sheet): ConnectionDecision {
    const part = sheet.part('Charging equipment, Germany');
    const points = facts.devices.filter((d) => d.kind === 'charge-point');
    const sum = equipmentSum(points, facts);
    const against = (check: typeof c.belowNotice, kva: number, title: string) => {
      const own = part.part(title);
      const equipmentPower = own.given(
        'equipmentPower',
        sum,
        'all charge points; a common cap counts instead of its points',
      );
      const equipmentPowerLimit = own.given('equipmentPowerLimit', kilovoltAmperes(kva), `${kva} kVA`);
      return own.check(check, { equipmentPower, equipmentPowerLimit });
    };
    const notice = against(c.belowNotice, 3.6, 'Notice');
    const consent = against(c.belowConsent, 12, 'Consent');
    const lines = part.part('Unbalance');
    const unbalance = lines.given('unbalance', whenKnown([unbalanceOf(points)], amperes), 'charge points');
    const country = lines.label('country', 'DE');
    const cap = lines.label('cap', 'charge points');
    const unbalanceLimit = lines.look(unbalanceCaps, { cap, country });
    const balanced = lines.check(c.unbalanceWithinCap, { unbalance, unbalanceLimit });
    const control = controllable(points, facts, part);
    const route: Route =
      consent.verdict === 'fail' || balanced.verdict === 'fail'
        ? 'apply-first'
        : consent.verdict === 'not-determined' || balanced.verdict === 'not-determined'
          ? 'not-determined'
          : notice.verdict === 'fail'
            ? 'notify-before'
            : 'no-duty';
    const duties = [
      ...(notice.verdict === 'pass' ? [] : [duty('notify', 'Notify the network operator', 'NAV', '§ 19 (2)')]),
      ...(consent.verdict === 'pass'
        ? []
        : [duty('consent', 'Obtain the consent of the network operator', 'NAV', '§ 19 (2)')]),
      ...(control.some((r) => r.verdict === 'fail' || r.verdict === 'not-determined')
        ? [duty('controllable', 'Make the charge point controllable by the network operator', 'EnWG', '§ 14a')]
        : []),
    ];
    return {
      country: 'DE',
      route,
      ...(route === 'not-determined' ? { meanwhile: 'Ask the network operator before the work.' } : {}),
      results: [notice, consent, balanced, ...control],
      duties,
      cautions: [
        'Network operators publish further conditions. That a common cap counts instead of its points is the practice of operators seen in one text.',
      ],
    };
  },
  safety: [],
  form: [
    formEntries.address,
    formEntries.supply,
    formEntries.demand,
    formEntries.devices,
    formEntries.loadControls,
    formEntries.completed,
    formEntries.route,
    formEntries.installer,
  ],
}))();
