import { isKnownAs } from './values.js';

/** Facts that say that there is none of what another field describes. */
export const denials = [
  ['noResidual', 'residual', 'no residual current device'],
  ['noFuseAhead', 'fuseAhead', 'no switch-fuse ahead'],
] as const;

/** What is described of a thing although it is said that there is none: the fact that says so, and its words. */
export function deniedIn(of: Readonly<Record<string, unknown>>): readonly [fact: string, words: string] | undefined {
  for (const [fact, field, words] of denials) {
    const described = of[field];
    if (isKnownAs(of[fact], true) && (Array.isArray(described) ? described.length > 0 : described !== undefined))
      return [fact, words];
  }
  return undefined;
}
