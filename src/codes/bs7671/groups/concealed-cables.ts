import { any, open, when } from '../../../calculation/index.js';
import { contradicted } from '../../../core/contradicted.js';
import { type Fact, known, unknown } from '../../../core/index.js';
import type { Cable, Stretch } from '../../../installation/index.js';
import type { Metres } from '../../../units/index.js';
import { isBuried } from '../../iec-family/facts.js';
import { ofCircuit, ofSection, type SectionPlace } from '../../iec-family/places.js';
import type { CircuitPlace } from '../../wiring-code.js';

/** Depth in a wall from which nails and screws do not reach a cable. BS 7671, 522.6.202. */
const OUT_OF_REACH = 0.05;

/** Earthed metal around the cable itself: armour, or conduit that is its protective conductor. BS 7671, 522.6.204. */
const inEarthedMetal = ({ construction, protective }: Cable): boolean =>
  protective === 'conduit' || (construction === 'armoured' && protective !== 'none');

const methodIs = ({ method }: Stretch, which: RegExp): boolean => method.state === 'known' && which.test(method.value);
/** In an insulated or framed wall, as the tables of methods have it. */
const inHollowWall = (section: Stretch) => methodIs(section, /^(A[12]?|102|103)$/);
/** In free air, or on or in something that is seen; clips hold cables in chases and on studs as well. */
const inSight = (section: Stretch) =>
  methodIs(section, /^[EFG]$/) ||
  (methodIs(section, /^(B[12]?|C)$/) && /^(trunking|tray|catenary|free)$/.test(section.containment ?? ''));

const metalAsked = /* @__PURE__ */ unknown('look into the wall: metal studs count at any depth, fixings do not');
const disagreeing = /* @__PURE__ */ contradicted(
  'its depth, or how it lies, says otherwise: look which of the two is right',
);
const metalInNoWall = /* @__PURE__ */ contradicted(
  'metal parts count in the wall that conceals it, and none is described: look how the cable lies',
);
const depthAsked = /* @__PURE__ */ unknown('how the cable lies, and how deep: drawings, or a detector');

/** Whether a depth in the wall is one that nails reach; undefined where that is not known. */
function within(depth: Fact<Metres> | undefined): boolean | undefined {
  if (depth === undefined || depth.state === 'unknown') return undefined;
  const [least, most] = depth.state === 'known' ? [depth.value, depth.value] : [depth.least, depth.most];
  if (most < OUT_OF_REACH && least > 0) return true;
  return least >= OUT_OF_REACH ? false : undefined;
}

/**
 * Whether a section is concealed in a wall or partition where nails and screws may reach it and nothing but a residual
 * current device is left to protect whoever drives them. BS 7671, 522.6.202 to .204.
 */
export function concealed({
  circuit,
  section,
}: Pick<SectionPlace, 'section'> & { readonly circuit: Pick<CircuitPlace, 'run'> }): Fact<boolean> {
  const { concealedShallow: said, metalParts } = section;
  if (inEarthedMetal(circuit.run.cable) || isBuried(section)) return known(false);
  const shallow = within(section.depth);
  // of a range on both sides of the limit a part contradicts whatever is said
  const ranged = section.depth?.state === 'between' && shallow === undefined;
  if (said?.state === 'known' && said.value)
    return inSight(section) || shallow === false || ranged ? disagreeing : known(true);
  const metal = metalParts ?? metalAsked;
  // what is said of the depth does not answer for metal parts
  if (said?.state === 'known') {
    if ((shallow === true || ranged) && !/^(conduit|trunking)$/.test(section.containment ?? '')) return disagreeing;
    if (inHollowWall(section) || shallow === false || metalParts?.state === 'unknown') return metal;
    return metal.state === 'known' && metal.value ? metalInNoWall : known(false);
  }
  if (metal.state === 'known' && metal.value) return inSight(section) ? metalInNoWall : known(true);
  if (shallow === true && inSight(section)) return disagreeing;
  // a wall where the method has it shallow, of which nobody says how deep
  if (shallow === true || (shallow === undefined && !ranged && methodIs(section, /^102$/))) return known(true);
  if (shallow === false) return metal;
  // nobody measures how deep a cable lies that is seen
  if (inSight(section)) return ranged ? disagreeing : (said ?? known(false));
  return said ?? depthAsked;
}

/** Concealed cables. BS 7671, 522.6.202 to .204. */
export const concealedCables = () => ({
  circuit: {
    concealed: when(
      ofCircuit((c) => c.run.stretches.length > 0),
      any('sections/concealed'),
      open({ kind: 'fact', fact: 'route of the cable', obtain: 'each section, and how the cable lies in it' }),
    ),
  },
  sections: {
    concealed: ofSection(concealed, {
      called: ({ section }) => `whether ${section.name} is concealed less than 50 mm deep, or among metal parts`,
    }),
  },
});
