import { by, chosen, compare, derive, each } from '../../../calculation/index.js';
import { rule, unknown } from '../../../core/index.js';
import { rectifierCurrentOf } from '../../../physics/power/rectifier.js';
import { ratio } from '../../../units/index.js';
import { ofPoint } from '../../iec-family/places.js';
import { bs } from '../source.js';

/** What a charge point of mode 4 takes at its largest power is within its setting. BS 7671, 311.1, 722.311. */
export const directCurrentWithinSetting = /* @__PURE__ */ rule({
  id: 'direct-current-within-setting',
  title: 'The setting covers what the unit takes at its largest direct-current power',
  of: ['rectifierCurrent', 'at-most', 'chargeCurrent'],
  source: /* @__PURE__ */ bs('311.1, 722.311', 'memory'),
  caution:
    'The circuit is designed for the setting: a unit that takes more for hours heats its cable and device, and no diversity is left to hide it.',
});

const onItsPlate = /* @__PURE__ */ unknown('its rating plate or data sheet, at the power that it is set to');

/** Charge points of mode 4: a rectifier, whose direct-current power says what its circuit carries. */
export const modeFour = () => ({
  points: {
    directOutputPower: ofPoint(({ point }) => point.directPower ?? onItsPlate, {
      called: ({ point }) => `direct-current power of ${point.id}`,
    }),
    rectifierEfficiency: ofPoint(({ point }) => point.efficiency ?? onItsPlate, {
      called: ({ point }) => `efficiency of ${point.id}`,
    }),
    powerFactor: ofPoint(({ point }) => point.powerFactor ?? onItsPlate, {
      called: ({ point }) => `power factor of ${point.id}`,
    }),
    phases: ofPoint(({ point }) => ratio(point.lines.length)),
    rectifierCurrent: by(rectifierCurrentOf),
  },
  checks: [
    each('points', [
      chosen(
        derive(['chargingMode'], ({ chargingMode }) => chargingMode === 4),
        { true: [compare(directCurrentWithinSetting)], false: [] },
      ),
    ]),
  ] as const,
});
