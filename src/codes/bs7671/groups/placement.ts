import { chosen, each, holds, set, weigh } from '../../../calculation/index.js';
import { advice, endsOf, isMissing, type Known, missing, rule, unknown } from '../../../core/index.js';
import { type Stretch, wasThere } from '../../../installation/index.js';
import { type CablePlace, nameOfLength, ofCable, ofCircuit, ofSection } from '../../iec-family/places.js';

/** A cable in the ground is armoured, or lies in a duct. BS 7671, 522.8.10. */
export const cableForGround = /* @__PURE__ */ rule({
  id: 'cable-for-the-ground',
  title: 'A cable in the ground has an earthed armour or metal sheath, or lies in a duct of equal protection',
  source: { document: 'BS 7671', clause: '522.8.10', provenance: 'two-sources' },
  caution: 'A spade through a cable without armour makes the spade live before anything disconnects.',
});

/** A cable in the ground lies deep enough. BS 7671, 522.8.10: no depth in figures. */
export const depthInGround = /* @__PURE__ */ advice({
  id: 'depth-in-the-ground',
  title: 'A cable in the ground lies at least 0.45 m deep, where custom has it',
  source: {
    document: 'BS 7671',
    clause: '522.8.10',
    provenance: 'common-practice',
    note: 'the clause asks for a sufficient depth, without a figure; 0.45 m to 0.6 m are custom',
  },
});

/** A cable in the sun suits it. BS 7671, 522.11. */
export const cableForSun = /* @__PURE__ */ advice({
  id: 'cable-for-the-sun',
  title: 'A cable outdoors suits the sun, or is shielded from it',
  source: {
    document: 'BS 7671',
    clause: '522.11',
    provenance: 'one-source',
    note: 'the clause names no cable; grey sheaths of twin and earth are advised against',
  },
});

/** Smallest depth of custom, m. */
const CUSTOMARY = 0.45;

/** Ways in which no cable lies in the ground. */
const above: readonly unknown[] = ['clipped', 'trunking', 'tray', 'catenary', 'free'];

const seeMethod = (name: string) =>
  missing({
    kind: 'fact',
    fact: `method of ${name}`,
    obtain: 'see whether it lies in the ground, as its method or its containment has it',
  });

function inGround({ name, method, containment }: Stretch): Known<boolean> {
  const byMethod = method.state === 'known' ? method.value.startsWith('D') : undefined;
  const contradicted = byMethod !== undefined && (byMethod ? above.includes(containment) : containment === 'buried');
  return byMethod === undefined || contradicted ? seeMethod(name) : byMethod;
}

function deepEnough({ name, depth, containment }: Stretch): Known<boolean> {
  const ends = endsOf(depth);
  if (ends && ends[0] >= CUSTOMARY) return true;
  if (ends && ends[1] < CUSTOMARY) return false;
  // a duct under a floor or a drive is protected by what lies on it
  if (containment === 'duct' && !ends) return true;
  return missing({ kind: 'fact', fact: `depth of ${name}`, obtain: 'measure it, before the trench is filled' });
}

/** A joint can be got at. BS 7671, 526.3. */
export const jointAccessible = /* @__PURE__ */ rule({
  id: 'joint-accessible',
  title: 'A joint in the route stays accessible, or is of a kind that need not be',
  source: {
    document: 'BS 7671',
    clause: '526.3',
    provenance: 'memory',
    note: 'need not be: made for the ground, encapsulated, compressed, welded or soldered, maintenance-free',
  },
  caution: 'A joint that loosens where nobody can see it glows until something burns.',
});

/** Where cables lie: in the ground, and in the sun. BS 7671 522.8.10, 522.11. */
export const placement = () => ({
  circuit: {
    partlyThere: ofCircuit(({ run }) => run.stretches.some((section) => wasThere(run, section))),
    jointsThere: ofCircuit<boolean>(
      ({ run }) => run.jointsAccessible ?? unknown('follow the cable from the board to its end'),
      { called: ({ run }) => `joints along what is there of ${run.id}` },
    ),
  },
  cables: {
    armoured: ofCable((c) => c.run.cable.construction === 'armoured'),
    flatCable: ofCable((c) => c.run.cable.construction === 'flat-twin-and-earth'),
    jointAccess: ofCable<boolean>(
      ({ run: { stretches } }) =>
        stretches[0]?.jointAccessible ?? unknown('see where it is, and how it is made: its photograph'),
      { called: (c) => `joint at the beginning of ${nameOfLength(c)}` },
    ),
  },
  sections: {
    inGround: ofSection(({ section }) => inGround(section)),
    inSun: ofSection(
      ({ section: { outdoors, containment } }) =>
        outdoors === true && !['conduit', 'trunking', 'duct', 'buried'].includes(containment ?? ''),
    ),
    groundContainment: ofSection(({ section: { containment } }) => containment ?? 'not stated'),
    deepEnough: ofSection(({ section }) => deepEnough(section)),
    protectedInGround: weigh(['armoured', 'groundContainment', 'sectionName'], (v): Known<boolean> => {
      if (v.armoured === true || v.groundContainment === 'duct' || v.groundContainment === 'conduit') return true;
      const name = isMissing(v.sectionName) ? 'the section' : v.sectionName;
      return v.groundContainment === 'not stated'
        ? missing({
            kind: 'fact',
            fact: `how the cable lies in ${name}`,
            obtain: 'in a duct, or directly in the ground',
          })
        : false;
    }),
  },
  checks: [
    chosen('partlyThere', {
      true: [holds(jointAccessible, 'jointsThere', set('along what was there before'))],
      false: [],
    }),
    each(
      'cables',
      [
        holds(
          jointAccessible,
          'jointAccess',
          ofCable((c) => `at the beginning of ${nameOfLength(c)}`),
        ),
      ],
      (c: CablePlace) => c.cableNumber > 0,
    ),
    each('sections', [
      chosen('inGround', {
        true: [
          holds(
            cableForGround,
            'protectedInGround',
            weigh(['armoured'], ({ armoured }) => (armoured === true ? 'armoured' : 'without armour, by how it lies')),
          ),
          holds(
            depthInGround,
            'deepEnough',
            weigh(['sectionName'], ({ sectionName }) => `as measured in ${isMissing(sectionName) ? '' : sectionName}`),
          ),
        ],
        false: [],
      }),
      chosen('flatCable', {
        true: [
          chosen('inSun', {
            true: [
              holds(
                cableForSun,
                set(false),
                weigh(
                  ['sectionName'],
                  (v) => `flat cable outdoors in ${isMissing(v.sectionName) ? '' : v.sectionName}`,
                ),
              ),
            ],
            false: [],
          }),
        ],
        false: [],
      }),
    ]),
  ],
});
