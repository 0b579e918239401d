import type { Seconds } from '../../units/index.js';
import { type AllocationPolicy, inspectPolicy } from '../allocation/policy.js';
import { type ControlSettings, inspectSettings, pointReactionOf } from '../control/settings.js';
import { type Inspection, inspection, inspectNetwork, isObject } from '../network/refuse.js';
import { type ChargingPeriod, inspectPeriod } from '../time/period.js';
import { inspectProfiles } from '../time/profiles.js';
import { inspectSessions } from '../time/sessions.js';
import { inspectHours } from '../time/windows.js';
import { inspectSources, type SiteSources } from './sources.js';

/** Current is shared anew at the begin of every step; vehicles follow at once. @inline */
export interface SharingAtOnce {
  /** How current is shared; the clock of a rotation is that of the simulation. */
  readonly policy: AllocationPolicy;
  /** For how long its smallest current must be available before a paused point runs again, s; 0 when absent. */
  readonly resumeAfter?: Seconds;
  /**
   * How long a point that has begun goes on running at least, s, unless a limit leaves it no current; 0 when absent. It is
   * served ahead of those that wait, whatever their priority.
   */
  readonly leastOn?: Seconds;
  /** Starts of a vehicle, 1 and up, from which on it is paused only where a limit leaves it no current; any number when absent. */
  readonly mostStarts?: number;
}

/** What is simulated. Clock values are s since midnight of the first day. */
export interface SimulationInput extends ChargingPeriod {
  /**
   * How current is shared: anew at every step, or by a load control with its meters, periods and holds, all of them
   * whole numbers of steps. A load control is taken to know limits and the lines that each vehicle uses; what it does
   * not meter it takes from the network.
   */
  readonly control: SharingAtOnce | ControlSettings;
  /** Solar power, batteries and limits of export, at most one entry for a node; where current is shared at once only. */
  readonly sources?: readonly SiteSources[];
  /** Whether currents are kept step by step, for pictures; no when absent. */
  readonly keepSeries?: boolean;
}

/** Most steps of one simulation: a year in steps of six seconds. */
const MOST_STEPS = 5.5e6;

/** Throws `invalid-input` with everything that is wrong with a simulation. */
export function inspectSimulation(input: SimulationInput): void {
  const found = inspection();
  found.when(!isObject(input), [], 'must be what is to be simulated');
  found.refuse('The simulation');
  const { network, step, control } = input;
  const sound = inspectNetwork(network, found);
  inspectPeriod(input, MOST_STEPS, `ends at ${input.to} s, not after its begin at ${input.from} s`, found);
  if (!isObject(control)) found.when(true, ['control'], 'must be a policy or the settings of a load control');
  else if ('meters' in control) {
    inspectSettings(sound ? network : undefined, control, found, ['control']);
    inspectPeriods(control, step, found);
  } else {
    inspectPolicy(control.policy, found, ['control', 'policy']);
    found.number(control.resumeAfter, ['control', 'resumeAfter'], { least: 0, optional: true });
    found.number(control.leastOn, ['control', 'leastOn'], { least: 0, optional: true });
    if (found.number(control.mostStarts, ['control', 'mostStarts'], { least: 1, optional: true }))
      found.when(!Number.isInteger(control.mostStarts ?? 1), ['control', 'mostStarts'], 'must be a whole number');
  }
  if (sound) {
    inspectSources(input, found);
    found.when(
      input.sources !== undefined && isObject(control) && 'meters' in control,
      ['sources'],
      'cannot be dispatched beside the delays of a load control: share at once',
    );
    inspectSessions(network, input.sessions, found);
    inspectProfiles(network, input.load ?? [], input, found, 'load');
    inspectProfiles(network, input.limits ?? [], input, found, 'limits');
  }
  inspectHours(input.hours, found);
  found.refuse('The simulation');
}

function inspectPeriods(control: ControlSettings, step: number, found: Inspection): void {
  for (const name of ['meterPeriod', 'controllerPeriod', 'pointReaction', 'vehicleReaction'] as const) {
    const time = name === 'pointReaction' ? pointReactionOf(control) : control[name];
    const steps = time / step;
    // what is no number or too small has been named
    found.when(
      Math.abs(steps - Math.round(steps)) > 1e-6,
      ['control', name],
      `must be a whole number of steps of ${step} s`,
    );
  }
}
