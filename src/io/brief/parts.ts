import type { Answer, Written } from './answers.js';

/** A value of a survey document: plain, or in one of the forms of a fact. */
export type FactDocument = Written | Answer;
/** A part of a survey document. @inline */
type Part = Readonly<Record<string, unknown>>;

const sayUnknown: Answer = { unknown: 'not surveyed' };
/** Without what is absent. */
export const present = (part: Part): Part =>
  Object.fromEntries(Object.entries(part).filter(([, v]) => v !== undefined));

/** What is known of a circuit that is there already. @inline */
export interface ExistingCircuit {
  /** What the schedule calls it. */
  readonly name: string;
  readonly purpose: string;
  /** Current that it takes, with its unit, such as `31.3 A`. */
  readonly current: FactDocument;
  readonly lines?: readonly string[];
  /** Rated current of its fuse or circuit-breaker. */
  readonly rating?: FactDocument;
  readonly ring?: boolean;
  /** More of what it feeds: `withSocket`, `accessories`, `standardCircuit`, `plugged` ... */
  readonly load?: Part;
}

/**
 * A circuit that is there already, as a part of a survey document: what the rules read of it, and no more. Its cable and
 * its route are not stated.
 * @param circuit its name, what it is for, and the current that it takes
 * @returns an entry of `board.runs`
 * @example
 * ```ts
 * import { existingCircuit } from 'ohmwright/io';
 *
 * existingCircuit({ name: 'cooker', purpose: 'cooking', current: '31.3 A', rating: '32 A' }).existing; // => true
 * ```
 */
export function existingCircuit(circuit: ExistingCircuit): Part {
  const { name, purpose, current, lines = ['L1'], rating = sayUnknown, ring, load } = circuit;
  return present({
    id: name,
    lines,
    existing: true,
    ring,
    device: { kind: sayUnknown, rating },
    feeds: [{ kind: 'load', id: `${name} load`, purpose, current, lines, ...load }],
  });
}

/** A section of a route. @inline */
export interface RouteSection {
  readonly name: string;
  readonly length: FactDocument;
  /** Reference method of installation; not known when absent. */
  readonly method?: FactDocument;
  /** Ambient temperature, of the ground where it is buried; not known when absent. */
  readonly ambient?: FactDocument;
  /** Circuits side by side, this one included; not known when absent. */
  readonly circuits?: FactDocument;
  /** How they lie beside each other. */
  readonly arrangement?: string;
  /** More of the section: `insulated`, `containment`, `depth`, `outdoors` ... */
  readonly more?: Part;
}

/**
 * A section of a route, as a part of a survey document; what is not stated is not known.
 * @param section its name, its length, and how the cable lies
 * @returns an entry of `wanted[].route`
 * @example
 * ```ts
 * import { routeSection } from 'ohmwright/io';
 *
 * routeSection({ name: 'garage wall', length: '11 m', method: 'C' }).ambient; // => { unknown: 'not surveyed' }
 * ```
 */
export function routeSection(section: RouteSection): Part {
  const {
    name,
    length,
    method = sayUnknown,
    ambient = sayUnknown,
    circuits = sayUnknown,
    arrangement = 'bunched',
    more,
  } = section;
  return present({ name, length, method, ambient, group: { arrangement, circuits }, ...more });
}

/**
 * A circuit-breaker with residual current protection (RCBO) of EN 61009 that opens line and neutral, as parts of a
 * survey document; what its marking would say besides is not known.
 * @param curve its curve
 * @param residualType its type against residual current
 * @returns `device` and `residual` of a wanted point
 * @example
 * ```ts
 * import { rcbo } from 'ohmwright/io';
 *
 * rcbo('B', 'A').device; // => { kind: { standard: 'EN 61009', type: 'B' } }
 * ```
 */
export const rcbo = (
  curve: 'B' | 'C' | 'D',
  residualType: 'A' | 'F' | 'B',
): { readonly device: Part; readonly residual: readonly Part[] } => ({
  device: { kind: { standard: 'EN 61009', type: curve } },
  residual: [
    { position: 'origin-of-circuit', type: residualType, rating: '30 mA', delay: 'general', opensAllLive: true },
  ],
});

/** Flat twin and earth of BS 6004, and armoured cable with three or five cores of BS 5467, as parts of a survey document. */
export const usualCables: { readonly twinAndEarth: Part; readonly armoured: Part; readonly armouredThreePhase: Part } =
  {
    twinAndEarth: {
      construction: 'flat-twin-and-earth',
      material: 'copper',
      insulation: 'thermoplastic-70',
      cores: 2,
      protective: 'bare-core',
    },
    armoured: {
      construction: 'armoured',
      material: 'copper',
      insulation: 'thermosetting-90',
      cores: 3,
      protective: 'core',
    },
    armouredThreePhase: {
      construction: 'armoured',
      material: 'copper',
      insulation: 'thermosetting-90',
      cores: 5,
      loadedCores: 3,
      protective: 'core',
    },
  };
