import { by, choose, derive, factOf, run, set } from '../../../calculation/index.js';
import { currentOnCurve } from '../../../physics/definitions.js';
import { seconds } from '../../../units/index.js';
import type { CircuitPlace } from '../../wiring-code.js';
import { fuseOperatingCurrents } from '../tables/fuse-operating-currents.js';

/** A fuse as made to one of the editions of BS 88-2 that it may be made to; of another standard it stands once. */
export interface FusePlace {
  readonly circuit: CircuitPlace;
  /** Standard of 2010, or of 2008. */
  readonly bs88: 'BS 88-2' | 'BS 88-2.2';
}

/** Editions of BS 88-2: of an existing fuse that does not tell, both. */
function editionsOf({ run: { device, existing }, options }: CircuitPlace): readonly FusePlace['bs88'][] {
  const { kind } = device;
  if (kind.state !== 'known' || kind.value.standard !== 'BS 88-2') return ['BS 88-2'];
  if (options.fuseEdition === undefined && existing === true) return ['BS 88-2', 'BS 88-2.2'];
  return [options.fuseEdition === '2008' ? 'BS 88-2.2' : 'BS 88-2'];
}

/** What fuses are read by. */
export const fuseScope = {
  within: 'circuit',
  things: (circuit: CircuitPlace): readonly FusePlace[] => editionsOf(circuit).map((bs88) => ({ circuit, bs88 })),
  title: ({ circuit: { run }, bs88 }: FusePlace) =>
    run.device.kind.state === 'known' && run.device.kind.value.standard !== 'BS 88-2'
      ? `fuse to ${run.device.kind.value.standard}`
      : `fuse to ${bs88}`,
} as const;

const ofFuse = /* @__PURE__ */ factOf<FusePlace>();

const appendix3 = 'Appendix 3';

/** Current that operates a fuse: within 0.4 s, within 5 s and within the required time. BS 7671 Appendix 3. */
export const fuses = () => ({
  bs88: ofFuse((f) => f.bs88),
  fuseStandard: derive(['deviceKind', 'bs88'], ({ deviceKind, bs88 }) =>
    deviceKind.standard === 'BS 88-2' ? bs88 : deviceKind.standard,
  ),
  quickOperatingCurrent: by(fuseOperatingCurrents, appendix3, {
    device: 'fuseStandard',
    operatingTime: set(seconds(0.4)),
  }),
  slowOperatingCurrent: by(fuseOperatingCurrents, appendix3, {
    device: 'fuseStandard',
    operatingTime: set(seconds(5)),
  }),
  requiredTimeIs: derive(['requiredTime'], ({ requiredTime }) =>
    requiredTime > 0.4 && requiredTime < 5 ? 'between' : 'printed',
  ),
  operatingCurrent: choose('requiredTimeIs', {
    printed: by(fuseOperatingCurrents, appendix3, { device: 'fuseStandard', operatingTime: 'requiredTime' }),
    between: run(
      currentOnCurve,
      ['quickOperatingCurrent', 'slowOperatingCurrent', 'requiredTime'],
      ({ quickOperatingCurrent, slowOperatingCurrent, requiredTime }) => ({
        points: [
          { current: quickOperatingCurrent, time: 0.4 },
          { current: slowOperatingCurrent, time: 5 },
        ],
        time: requiredTime,
      }),
    ),
  }),
});
