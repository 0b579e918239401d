import { chosen, derive, holds, set, weigh } from '../../../calculation/index.js';
import { type Known, missing, statement } from '../../../core/index.js';
import type { Supply } from '../../../installation/index.js';
import { bs } from '../source.js';

/** What a special location asks of a circuit is met. BS 7671, Part 7. */
export const specialPlaceMet = /* @__PURE__ */ statement({
  id: 'special-place',
  title: 'The circuit meets what Part 7 asks of the place',
  weight: 'rule',
  source: /* @__PURE__ */ bs('Part 7', 'memory'),
  caution:
    'In such places people are wet, barefoot or in contact with the ground: what is safe in a house may kill there.',
});

/** What is for each place: the section of Part 7, or the guidance; no rule of them is entered. */
const rulesOf: Readonly<Record<Exclude<NonNullable<Supply['specialLocation']>, 'none'>, readonly [string, string]>> = {
  'caravan-park': [
    'Section 708, caravan parks',
    'each socket-outlet with a residual current device of its own, the earth of a PME supply for no caravan',
  ],
  marina: [
    'Section 709, marinas',
    'each socket-outlet with a residual current device of its own, the earth of a PME supply for no boat',
  ],
  'construction-site': ['Section 704, construction sites', 'reduced low voltage, devices of at most 500 mA or 30 mA'],
  'filling-station': [
    'the guidance for filling stations',
    'hazard zones, earths that are joined, the emergency switch',
  ],
  farm: ['Section 705, farms', 'devices for every circuit, bonding of all metal that animals can touch'],
  'swimming-pool': ['Section 702, swimming pools', 'zones, and bonding of all metal within them'],
  other: ['the section of Part 7, or the guidance, that is for it', 'what it asks of the circuit'],
};

/** Circuits of special locations that feed no charge point; those of charge points are asked about by their earthing. */
export const specialPlace = () => ({
  circuit: {
    placeMet: derive(['specialLocation'], ({ specialLocation: place }): Known<true> => {
      if (place === 'none') return true;
      const [section, obtain] = rulesOf[place];
      return missing({
        kind: 'fact',
        fact: `design of the circuit by ${section}`,
        obtain: `${obtain}; no rule of it is entered here: by somebody who knows such places`,
      });
    }),
  },
  checks: [
    chosen(
      weigh(
        ['feedsChargePoint', 'specialLocation'],
        (v) => v.feedsChargePoint === true || v.specialLocation === 'none',
      ),
      { true: [], false: [holds(specialPlaceMet, 'placeMet', set('it is met'))] },
    ),
  ] as const,
});
