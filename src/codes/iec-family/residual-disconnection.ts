import {
  adjusted,
  by,
  choose,
  chosen,
  compare,
  deciding,
  derive,
  each,
  orElse,
  unjudged,
  when,
} from '../../calculation/index.js';
import {
  type CheckResult,
  type Comparison,
  type Gap,
  isMissing,
  type Known,
  missing,
  notDetermined,
} from '../../core/index.js';
import {
  electrodeAndProtective,
  residualLoopVoltage,
  residualMultipleOf,
  residualTouchVoltage,
} from '../../physics/definitions.js';
import { residualBreakTimes } from '../../products/en61008/break-times.js';
import { ratio } from '../../units/index.js';
import { ofResidualUpstream, type ResidualUpstreamPlace } from './places.js';
import { delayOf, isSetToNone, neverSelective, setDelayOf } from './residual-position.js';

const onTop: Gap = {
  kind: 'fact',
  fact: 'break time of the delayed residual current device',
  obtain: 'from its maker, for the delay that is set',
};

/** The device disconnects within the required time, by the clause of a code. */
type InTime = Comparison<'disconnectionTime', 'requiredTime'>;
/** What the rated residual current raises is within its limit, by the clause of a code. */
type WithinTouch = Comparison<'touchVoltage', 'touchVoltageLimit'>;

/** The break time comes on top of a set delay: the delay alone can condemn, never acquit. */
const condemnsOnly =
  (check: InTime) =>
  (result: CheckResult, { requiredTime }: { readonly requiredTime: Known<number> }) =>
    result.verdict === 'fail'
      ? result
      : notDetermined(check, onTop, ...(isMissing(requiredTime) ? requiredTime.missing : []));

/** The printed row of break times at or below a multiple of the rated residual current. */
const rowBelow = (multiple: number) => {
  const row = [5, 2, 1].find((m) => multiple >= m);
  if (row !== undefined) return ratio(row);
  return missing({
    kind: 'range',
    formula: 'en61008/break-times',
    explain: `the fault current is ${multiple.toPrecision(3)} times the rated residual current; the device is bound to operate from once on`,
  });
};

/**
 * Residual current devices upstream of the circuit: the voltage that each allows, and its break time.
 * @param touchClause clause of the voltage on the electrode
 * @param loopClause clause of the voltage in an earth fault loop
 */
export const residualUpstream = (touchClause: string, loopClause: string) => ({
  residualOperatingCurrent: ofResidualUpstream((d) => d.device.rating, { called: 'residualOperatingCurrent' }),
  electrodeResistance: by(electrodeAndProtective, touchClause, {
    // a loop test of the supply may stand for the electrode: it is never less
    earthElectrode: orElse(
      'earthElectrode',
      ofResidualUpstream((d) => d.circuit.installation.supply.externalImpedance, {
        by: 'external loop impedance in place of the electrode: never less',
      }),
    ),
  }),
  touchVoltage: choose('earthing', {
    TT: by(residualTouchVoltage, touchClause),
    TN: by(residualLoopVoltage, loopClause),
  }),
  delayStated: ofResidualUpstream((d) => d.device.delay !== undefined),
  delay: when(
    'delayStated',
    ofResidualUpstream((d) => delayOf(d.device).delay, { called: 'delay of the residual current device' }),
    // the slower kind is taken; up to 30 mA there is none
    derive(
      ['residualOperatingCurrent'],
      ({ residualOperatingCurrent }) => (residualOperatingCurrent <= neverSelective ? 'general' : 'selective'),
      { direction: { residualOperatingCurrent: 1 } },
    ),
  ),
  residualMultiple: by(residualMultipleOf),
  disconnectionTime: by(residualBreakTimes, undefined, {
    residualMultiple: derive(['residualMultiple'], ({ residualMultiple }) => rowBelow(residualMultiple), {
      direction: { residualMultiple: 1 },
      by: 'printed row at or below it',
    }),
  }),
  delaySet: ofResidualUpstream(({ device }) =>
    setDelayOf(device).state === 'unknown' ? 'not known' : isSetToNone(device) ? 'none' : 'set',
  ),
});

const setDelay = () =>
  ofResidualUpstream((d) => setDelayOf(d.device), {
    called: 'set delay of the residual current device',
    by: 'set delay of the device',
  });

/** Each residual current device upstream: both of its checks have to pass. */
export const residualDevicesDisconnect = (inTime: InTime, withinTouch: WithinTouch) =>
  each(
    'residualUpstream',
    [
      deciding([
        compare(withinTouch),
        chosen('delaySet', {
          set: [
            adjusted(
              compare(inTime, {
                as: {
                  disconnectionTime: setDelay(),
                },
              }),
              ['requiredTime'],
              condemnsOnly(inTime),
            ),
          ],
          none: [compare(inTime)],
          'not known': [unjudged(inTime, setDelay())],
        }),
      ]),
    ],
    // one along the circuit leaves the cable ahead of it
    ({ along }: ResidualUpstreamPlace) => !along,
  );
