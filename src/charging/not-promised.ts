/** What a policy does not promise, by name. @inline */
export type NotPromised =
  | 'own-current-may-fall-when-capacity-rises'
  | 'neighbours-may-get-less-when-one-limit-rises'
  | 'others-may-get-less-when-a-vehicle-leaves'
  | 'turns-differ-between-rows'
  | 'not-the-largest-number-served'
  | 'unbalance-lowers-without-optimum'
  | 'unused-shares-are-lost';

/** What a schedule does not promise, by name. @inline */
export type ScheduleNotPromised = 'may-miss-what-can-be-met' | 'not-the-best-with-smallest-currents';

/** What a simulation does not promise, by name. @inline */
export type SimulationNotPromised = 'less-energy-may-come-from-more-capacity';

/** What shares of current, schedules and simulations do not promise, in words. */
export const notPromisedWords: Readonly<Record<NotPromised | ScheduleNotPromised | SimulationNotPromised, string>> = {
  'own-current-may-fall-when-capacity-rises':
    'A single current may fall when capacity rises: 17 A serve two vehicles at 8 A and 9 A, 18 A serve three at 6 A each.',
  'neighbours-may-get-less-when-one-limit-rises':
    'Raising the limit of one row may lower the currents of its neighbours, which share the limit above with it.',
  'others-may-get-less-when-a-vehicle-leaves':
    'When a vehicle leaves, those on its lines get more; a vehicle on other lines may get less, because three-phase vehicles take more there.',
  'turns-differ-between-rows':
    'Turns are equal among the points of one node; rows that share a limit may get different shares of the time.',
  'not-the-largest-number-served':
    'Who waits is decided in order, not by the largest number that could run: a three-phase vehicle served first may keep several single-phase ones waiting.',
  'unbalance-lowers-without-optimum':
    'With limits on unbalance or of neutrals the currents are lowered until they hold; beyond the continuous stage no optimum is claimed.',
  'unused-shares-are-lost': 'A share that a point cannot use is not given to others.',
  'may-miss-what-can-be-met':
    'Who is served first is decided at each moment without looking ahead: a vehicle may leave short that another schedule would have served.',
  'not-the-best-with-smallest-currents':
    'Where a vehicle gets nothing or at least its smallest current, no fast method is known for the best schedule: this one keeps every limit, and the best lies between its figures and the bound.',
  'less-energy-may-come-from-more-capacity':
    'More capacity at one moment may mean less energy in the end: 18 A serve three vehicles at 6 A each where 17 A serve two at 8 A and 9 A, and when those two leave early, the third, which had the night before it, has taken what they miss.',
};
