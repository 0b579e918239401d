import { cells } from './register.js';

/**
 * What a gap calls a fact, and the place of that fact in the register: a name of a thing stands as `…`.
 *
 *     words or role | fact
 */
const rows = `
aheadRating | supply.cutOut.rating
ambientTemperature | stretch.ambient
area of the line conductor | cable.area
breaking capacity | device.breakingCapacity
breaking capacity of the device | device.breakingCapacity
circuits beside … | group.circuits
circuits behind the residual current device | board.complete
circuits of … | board.complete
conditional short-circuit rating | board.conditionalRating
conductorArea | cable.area
containment of … | stretch.containment
current of … | load.current
current to which … falls back without its sensor | control.fallback
cutOutRating | supply.cutOut.rating
depth of … | stretch.depth
detection of 6 mA direct current | chargePoint.directCurrentDetection
deviceGroupFactor | device.groupingFactor
deviceRating | device.rating
direct-current power of … | chargePoint.directPower
earthing arrangement of the charge point | chargePoint.earthing
earthing conductor | supply.earthingConductor
earthing system of the supply | supply.system
efficiency of … | chargePoint.efficiency
electrode of the charge point | electrode.resistance
how the earthing conductor is laid | supply.earthingConductorLaid
insulated length of … | stretch.insulated
joint at the beginning of … | stretch.jointAccessible
joints along what is there of … | run.jointsAccessible
kind of the device ahead | supply.cutOut.kind
length | stretch.length
length of route one way | stretch.length
length of … | stretch.length
limit of … | control.limit
line conductors of the supply | supply.phases
main protective bonding conductors | supply.bonding
mainSwitchRating | board.mainSwitch.rating
switch-fuse ahead of … | board.mainSwitch.noFuseAhead
boardRating | board.rating
measured demand of the premises | supply.meteredDemand.current
measured demand of the premises on … | supply.meteredDemand.current
method of … | stretch.method
metered demand of the supply | supply.meteredDemand.current
neutral of the supply | supply.supplyNeutral
open-PEN detection of equal safety | chargePoint.openPenEqualSafety
phases of the supply | supply.phases
place of the installation | supply.specialLocation
power factor of … | chargePoint.powerFactor
rated current of the assembly | board.rating
rating of an infeed | device.rating
rating of the device of … | device.rating
rating of the device ahead | device.rating
rating of the residual current device | residual.rating
residual current device inside the charge point | chargePoint.noResidual
residual current devices of … | board.noResidual
resistance of the earth electrode | electrode.resistance
resistance of the earth electrode alone | electrode.resistance
separation of the feed | chargePoint.feedSeparated
setting of … | chargePoint.setting
size of the meter tails | supply.tails
spare ways of … | board.spareWays
standing current of … | chargePoint.standingLeakage
tailsArea | supply.tails
terminalTemperature | run.terminalTemperature
time in which … makes room | control.reaction
vehicles on the isolating transformer | chargePoint.vehiclesSeparated
whether the charge point can feed back from the vehicle | chargePoint.bidirectional
whether the cut-out and its service are sound | supply.cutOutSound
whether the service is looped | supply.looped
whether the supply is TN-S as far as the transformer | supply.separateEarthConfirmed
`;

interface Row {
  readonly words: RegExp;
  readonly id: string;
}

let read: readonly Row[] | undefined;

/** The rows, those without a name of a thing first: they say most. */
const all = (): readonly Row[] => {
  read ??= rows
    .trim()
    .split('\n')
    .sort((a, b) => Number(a.includes('…')) - Number(b.includes('…')))
    .map((row) => {
      const [words = '', id = ''] = cells(row);
      return { words: new RegExp(`^${words.replace('…', '(.+)')}$`), id };
    });
  return read;
};

/** A fact of the register, and the name of the thing that it is of. @inline */
export interface FactId {
  /** Where it stands in the register, for `questionOf`. */
  readonly id: string;
  /** Name of the thing that it is a fact of, where the words name one. */
  readonly of?: string;
}

/** The fact of the register that the words or the role of a gap are about. */
export function factIdOf(words: string): FactId | undefined {
  for (const row of all()) {
    const found = row.words.exec(words);
    if (found) return { id: row.id, ...(found[1] === undefined ? {} : { of: found[1] }) };
  }
  return undefined;
}
