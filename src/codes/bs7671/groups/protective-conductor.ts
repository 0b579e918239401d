import {
  adjusted,
  anyOf,
  by,
  choose,
  chosen,
  compare,
  deciding,
  derive,
  each,
  open,
  same,
  set,
  sum,
  weigh,
} from '../../../calculation/index.js';
import { type Gap, missing } from '../../../core/index.js';
import type { Cable, Stretch } from '../../../installation/index.js';
import { adiabaticAreaOfShare, armourShare, separateShare } from '../../../physics/definitions.js';
import { adiabaticArea } from '../../../physics/index.js';
import { armourAreas } from '../../../products/bs5467/armour.js';
import { ratio, squareMillimetres } from '../../../units/index.js';
import {
  type CablePlace,
  type FaultPlace,
  ofCable,
  type RunPlace,
  type TemperaturePlace,
} from '../../iec-family/places.js';
import type { CircuitPlace } from '../../wiring-code.js';
import { tabulatedProtective, tabulatedProtectiveOther } from '../protective-sizes.js';
import {
  protectiveByTable,
  protectiveConductorCheck,
  protectiveWithstands,
  separateProtectiveLarge,
} from '../withstand-checks.js';
import { cooler } from './factor-k.js';
import { byBounds, notJudgedInParallel, parallelOf } from './line-withstand.js';

const noProtective: Gap = {
  kind: 'fact',
  fact: 'protective conductor of the run',
  obtain: 'the run has none; find out why',
};
const ofConduit: Gap = {
  kind: 'fact',
  fact: 'cross-section and impedance of the conduit',
  obtain: 'from the maker of the conduit',
};
const ofArmour: Gap = {
  kind: 'fact',
  fact: 'area of the armour',
  obtain: 'from the maker of the cable; the figure here is recalled (grade C) and has to be accepted',
};

/** Where the area of an armour comes from: that of two-core cable is seen in print, the others are recalled. */
function armourAreaFromOf({ run: { cable }, options }: CircuitPlace) {
  if (cable.protective === 'armour' && cable.protectiveArea) return 'survey';
  return isRecalled(cable) && options.acceptMemoryFigures !== true ? 'to accept' : 'table';
}
const isRecalled = ({ cores, protective, protectiveArea }: Cable) =>
  cores !== 2 && !(protective === 'armour' && protectiveArea !== undefined);

/** A protective conductor of its own needs 4 mm² unless it is enclosed over the whole route. */
function separateAloneOf({ run: { stretches } }: CircuitPlace) {
  const inside = ({ containment }: Stretch) => ['conduit', 'trunking', 'duct'].includes(containment ?? '');
  if (stretches.every(inside)) return 'It lies in an enclosure over the whole route.';
  const silentOn = stretches.filter((s) => s.containment === undefined);
  if (stretches.some((s) => !inside(s) && s.containment !== undefined)) return true;
  return missing(
    ...silentOn.map((s): Gap => ({ kind: 'fact', fact: `containment of ${s.name}`, obtain: 'enclosed or not' })),
  );
}

const own = { among: (r: RunPlace, here: CablePlace) => r.run === here.run };
const ownHot = { among: (t: TemperaturePlace, here: CablePlace) => t.run === here.run && t.at === 'operating' };

/** Large enough by the adiabatic equation at both ends, or by the table; of two paths each for its share of the current. */
const largeEnough = (
  protectiveArea: 'protectiveArea' | 'armourArea',
  protectiveFactor: 'protectiveFactor' | 'armourFactor',
  share?: typeof armourShare | typeof separateShare,
) =>
  anyOf(
    protectiveConductorCheck,
    [
      deciding([
        each(
          'faults',
          [
            byBounds(
              compare(protectiveWithstands, {
                as: {
                  protectiveArea,
                  minimumProtectiveArea: share
                    ? by(adiabaticAreaOfShare, '543.1.3', {
                        adiabaticFactor: protectiveFactor,
                        pathShare: by(share),
                      })
                    : by(adiabaticArea, '543.1.3', { adiabaticFactor: protectiveFactor }),
                },
                because: protectiveFactor === 'armourFactor' ? 'armourRests' : 'energyRests',
              }),
            ),
          ],
          ({ conductor }: FaultPlace) => conductor === 'protective',
        ),
      ]),
      adjusted(
        compare(protectiveByTable, {
          applies: derive(['pairInParallel'], ({ pairInParallel }) =>
            pairInParallel ? 'Either of two conductors in parallel is judged alone, by the adiabatic equation.' : true,
          ),
          as: {
            protectiveArea,
            minimumProtectiveArea: by(tabulatedProtectiveOther, 'Table 54.7', {
              tabulatedProtectiveArea: by(tabulatedProtective, 'Table 54.7'),
              protectiveFactor,
            }),
          },
        }),
        ['realLoad'],
        cooler,
      ),
    ],
    { because: 'cableName' },
  );

/** A protective conductor of its own: 2.5 mm² where it is protected against mechanical damage, 4 mm² where it is not. */
const lasting = () =>
  compare(separateProtectiveLarge, {
    as: {
      minimumProtectiveArea: set(
        squareMillimetres(4),
        'BS 7671 543.1.1: not enclosed and taken as not protected against mechanical damage',
      ),
    },
    applies: ofCable(separateAloneOf),
    because: 'cableName',
  });

/** Size of the protective conductor. BS 7671 543.1. */
export const protectiveConductor = () => ({
  cables: {
    protectiveKind: ofCable((c) => c.run.cable.protective),
    protectiveNotWorkedOut: ofCable(
      (c) => parallelOf(c) > 2 || (parallelOf(c) === 2 && c.run.cable.protective === 'armour-and-separate'),
    ),
    armourAreaFrom: ofCable(armourAreaFromOf),
    armourArea: choose('armourAreaFrom', {
      survey: ofCable((c) => c.run.cable.protectiveArea ?? missing(ofArmour), {
        called: 'area of the armour',
        by: 'area of the armour, as surveyed',
      }),
      table: by(armourAreas, undefined, { cores: ofCable((c) => ratio(c.run.cable.cores)) }),
      'to accept': open(ofArmour),
    }),
    protectiveArea: choose('protectiveKind', {
      core: sum('runs/protectiveArea', own),
      'bare-core': sum('runs/protectiveArea', own),
      separate: sum('runs/protectiveArea', own),
      'armour-and-separate': sum('runs/protectiveArea', own),
      armour: same('armourArea'),
      conduit: ofCable((c) => c.run.cable.protectiveArea ?? missing(ofConduit), {
        called: 'cross-section of the conduit',
        by: 'cross-section of the conduit, by its maker',
      }),
      none: open(noProtective),
    }),
    armourResistance: sum('temperatures/armourResistance', ownHot),
    separateResistance: sum('temperatures/separateResistance', ownHot),
    armourRecalled: ofCable((c) => isRecalled(c.run.cable)),
  },
  faults: {
    armourRests: weigh(
      ['energyRests', 'armourRecalled'],
      ({ energyRests, armourRecalled }) =>
        [
          ...(typeof energyRests === 'string' ? [energyRests] : []),
          ...(armourRecalled === true
            ? ['Rests on the area of steel wire armour from memory (grade C), accepted by option.']
            : []),
        ].join(' ') || (false as const),
    ),
  },
  checks: [
    each('cables', [
      chosen('protectiveNotWorkedOut', {
        true: notJudgedInParallel(),
        false: [
          chosen('protectiveKind', {
            core: [largeEnough('protectiveArea', 'protectiveFactor')],
            'bare-core': [largeEnough('protectiveArea', 'protectiveFactor')],
            separate: [largeEnough('protectiveArea', 'protectiveFactor'), lasting()],
            armour: [largeEnough('protectiveArea', 'armourFactor')],
            'armour-and-separate': [
              largeEnough('armourArea', 'armourFactor', armourShare),
              largeEnough('protectiveArea', 'protectiveFactor', separateShare),
              lasting(),
            ],
            conduit: [largeEnough('protectiveArea', 'protectiveFactor')],
            none: [anyOf(protectiveConductorCheck, [], { applies: open(noProtective), because: 'cableName' })],
          }),
        ],
      }),
    ]),
  ],
});
