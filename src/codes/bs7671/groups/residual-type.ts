import { choose, chosen, derive, each, holds, missingOf, same, set, weigh } from '../../../calculation/index.js';
import { type Fact, factValue, isMissing, type Known, known, type Missing, unknown } from '../../../core/index.js';
import { type ChargePoint, type Load, onSocket, outletsBelow } from '../../../installation/index.js';
import { ofCircuit } from '../../iec-family/places.js';
import * as c from '../residual-checks.js';

export const typeWords = { called: 'type of the residual current device' };
export const detectionWords = { called: 'detection of 6 mA direct current' };
/** What the cable of a vehicle that is plugged into a socket-outlet does, whatever stands ahead. */
export const byCable = /* @__PURE__ */ known(true, 'IEC 62752, one source: the cable of the vehicle opens at 6 mA');
export const detectionAsked = /* @__PURE__ */ unknown('the charge point’s instructions');

const types = ['AC', 'A', 'F', 'B'] as const;
type TypeFact = Fact<(typeof types)[number]>;

/** Equipment that converters feed or that converts itself: its maker alone says what residual current it has. */
const byMaker: readonly Load['purpose'][] = [
  'heat-pump',
  'motor',
  'air-conditioning',
  'charge-point',
  'generation',
  'storage',
];

/** Type of residual current device that an outlet asks for at least; where type AC is for general purposes, by its purpose too. */
const typeAskedBy = (o: Load | ChargePoint, generalPurposes: boolean): TypeFact => {
  if (o.kind === 'charge-point') return known('A');
  if (generalPurposes && o.residualType?.state !== 'known' && !byMaker.includes(o.purpose)) return known('AC');
  // what is plugged in later has no instructions here: type AC is left for fixed equipment
  const socket = o.purpose === 'cooking' ? o.withSocket : onSocket(o);
  if (socket !== false && !generalPurposes && o.residualType?.state === 'known' && o.residualType.value === 'AC')
    return socket
      ? known('A')
      : unknown(
          `look whether ${o.purpose === 'cooking' ? `the unit of ${o.id} has` : `${o.id} is plugged into`} a socket-outlet`,
        );
  if (o.residualType) return o.residualType;
  return unknown(
    `the instructions of ${o.id}: which type stands ahead of it; A for electronics of which they say nothing`,
  );
};

/** What the verdict on a type rests on. */
const typeBecause =
  (generalPurposes: boolean) =>
  (v: { readonly residualType: (typeof types)[number]; readonly typesAsked: readonly TypeFact[] }) => {
    if (v.residualType === 'AC' && !generalPurposes)
      return 'type AC is left for fixed equipment that is known to have no direct-current component';
    if (v.residualType === 'B') return 'type B detects smooth direct current too';
    const least = Math.max(...v.typesAsked.map((t) => (t.state === 'known' ? types.indexOf(t.value) : 0)));
    return `what is fed asks for type ${types[least]} at least`;
  };

/** Whether smooth direct current of a charge point is detected, by the device or beside it. */
export const smoothDetected = () =>
  choose('residualType', {
    AC: set(false),
    A: same('directCurrentDetection'),
    F: same('directCurrentDetection'),
    B: set(true),
  });

/** Types that the outlets of a circuit ask for. */
export const typesOfCircuit = (generalPurposes: boolean) => ({
  // charge points of the circuit itself have checks of their own, apart from socket-outlets
  typesAsked: ofCircuit(({ run }) =>
    run.feeds
      .flatMap((o) => (o.kind === 'charge-point' && o.mode !== 2 ? [] : o.kind === 'board' ? outletsBelow(o) : [o]))
      .map((o) => typeAskedBy(o, generalPurposes)),
  ),
  // heaters of water may have no direct-current component: of them alone type AC may do
  onlyHeaters: ofCircuit(
    ({ run }) =>
      generalPurposes ||
      outletsBelow(run).every(
        (o) => o.kind === 'charge-point' || o.residualType || o.purpose.endsWith('water-heating'),
      ),
  ),
});

/** Whether a device has the type that is asked for. */
export const typeSuits = () =>
  // where a maker has to say it, type B does in any case, and type AC in none
  weigh(
    ['residualType', 'typesAsked', 'onlyHeaters'],
    ({ residualType: type, typesAsked: asked, onlyHeaters }): Known<boolean> => {
      if (isMissing(type) || isMissing(asked)) return missingOf([type, asked]);
      const rank = types.indexOf(type);
      const [open] = asked.flatMap((t) => (t.state === 'known' ? [] : [factValue(typeWords.called, t)]));
      if (asked.some((t) => t.state === 'known' && types.indexOf(t.value) > rank)) return false;
      if (open === undefined || type === 'B') return true;
      return type === 'AC' && onlyHeaters !== true ? false : (open as Missing);
    },
  );

/** The type of each device upstream suits what is fed. */
export const typeFits = (generalPurposes: boolean) =>
  chosen(
    derive(['typesAsked'], ({ typesAsked }) => typesAsked.some((t) => t.state !== 'known' || t.value !== 'AC')),
    {
      true: [
        each('residualUpstream', [
          holds(c.residualTypeSuits, 'typeSuits', derive(['residualType', 'typesAsked'], typeBecause(generalPurposes))),
        ]),
      ],
      false: [],
    },
  );
