import type { WiringCode } from '../codes/wiring-code.js';
import { type CheckResult, missing, type Sheet } from '../core/index.js';
import type { Cable } from '../installation/index.js';
import type { WantedPoint } from './survey.js';
import { inGround } from './trench.js';

/** A cable that may be used, but not for the way in which the route is laid. @inline */
export interface UnsuitableCable {
  /** How it is built, in words. */
  readonly cable: string;
  readonly because: string;
}

const wordsOf = ({ construction }: Cable): string => `${construction.replaceAll('-', ' ')} cable`;

/** Why a cable cannot be rated on a route; undefined where it can, or where that is not known. */
function reason(code: WiringCode, { run }: WantedPoint, cable: Cable): string | undefined {
  const methods = code.methodsFor?.({ ...run, cable });
  const barred = methods
    ? run.stretches.filter(
        (s) => s.cable === undefined && s.method.state === 'known' && !methods.includes(s.method.value),
      )
    : [];
  if (barred.length === 0) return undefined;
  return barred
    .map((s) => {
      const method = s.method.state === 'known' ? s.method.value : '';
      return inGround(s) && cable.construction !== 'armoured'
        ? `${s.name}: not for burial, use armoured cable or a duct`
        : `${s.name}: it is not rated for method ${method}`;
    })
    .join('; ');
}

/** The cables that may be used on the route of a point, and those that are not for it. */
export function cablesFor(code: WiringCode, wanted: WantedPoint) {
  const suited: Cable[] = [];
  const unsuitable: UnsuitableCable[] = [];
  for (const cable of wanted.cables) {
    const because = reason(code, wanted, cable);
    if (because === undefined) suited.push(cable);
    else unsuitable.push({ cable: wordsOf(cable), because });
  }
  return { suited, unsuitable };
}

/** What is said where no cable that may be used is for the route. */
export function noCableResult(
  { cableForRoute }: WiringCode,
  unsuitable: readonly UnsuitableCable[],
  sheet: Sheet,
): readonly CheckResult[] {
  if (!cableForRoute) return [];
  const words = unsuitable.map((u) => `${u.cable}: ${u.because}`).join('. ');
  return [
    sheet.check(cableForRoute, {
      holds: missing({ kind: 'fact', fact: 'a cable for the route', obtain: words }),
      because: words,
    }),
  ];
}
