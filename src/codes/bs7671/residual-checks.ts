import { advice, moving, rule } from '../../core/index.js';
import { shockCaution } from './disconnection-checks.js';
import { bs } from './source.js';

/** A check that a residual current device is of at most 30 mA. */
const ofThirty = (id: string, title: string, clause: string) =>
  rule({
    id,
    title,
    of: ['residualOperatingCurrent', 'at-most', 'residualLimit'],
    source: bs(clause),
    caution: shockCaution,
  });

/** A charge point has a residual current device of at most 30 mA. BS 7671, 722.531.3.101. */
export const additionalProtection = /* @__PURE__ */ ofThirty(
  'residual-current-rating',
  'A residual current device of at most 30 mA protects the charge point',
  '722.531.3.101',
);

/** Socket-outlets of up to 32 A have a residual current device of at most 30 mA ahead. BS 7671, 411.3.3. */
export const socketsProtected = /* @__PURE__ */ ofThirty(
  'residual-current-socket-outlets',
  'A residual current device of at most 30 mA stands ahead of the socket-outlets',
  '411.3.3',
);

/** Luminaires of a household have a residual current device of at most 30 mA ahead. BS 7671, 411.3.4. */
export const lightingProtected = /* @__PURE__ */ ofThirty(
  'residual-current-lighting',
  'A residual current device of at most 30 mA stands ahead of the luminaires of a household',
  '411.3.4',
);

/** Circuits of a room with a bath or shower have a residual current device of at most 30 mA. BS 7671, 701.411.3.3. */
export const bathroomProtected = /* @__PURE__ */ ofThirty(
  'residual-current-bath-or-shower',
  'A residual current device of at most 30 mA stands ahead of what serves a room with a bath or shower',
  '701.411.3.3',
);

/** A residual current device of at most 30 mA stands ahead of a concealed cable. BS 7671, 522.6.202, .203; 415.1.1. */
export const concealedProtected = /* @__PURE__ */ ofThirty(
  'residual-current-concealed-cable',
  'A residual current device of at most 30 mA stands ahead of the concealed cable',
  '522.6.202; 522.6.203; 415.1.1',
);

/** The type of the device suits the residual current. BS 7671, 722.531.3.101; 531.3.3. */
export const residualTypeSuits = /* @__PURE__ */ rule({
  id: 'residual-current-type',
  title: 'The type of the residual current device suits the residual current of the load',
  source: /* @__PURE__ */ bs('722.531.3.101; 531.3.3'),
  caution: shockCaution,
});

/** The device opens all live conductors. BS 7671, 722.531.3.101. */
export const residualOpensAllLive = /* @__PURE__ */ rule({
  id: 'residual-current-poles',
  title: 'The residual current device opens all live conductors',
  source: /* @__PURE__ */ bs('722.531.3.101'),
  caution: shockCaution,
});

/** The device stands at the origin where the cable depends on it. BS 7671, 411.5.3; 522.6.202. */
export const residualAtOrigin = /* @__PURE__ */ rule({
  id: 'residual-current-position',
  title: 'The residual current device stands upstream of the whole cable',
  source: /* @__PURE__ */ bs('411.5.3; 522.6.202', 'one-source'),
  caution: shockCaution,
});

/** Each point has a device of its own. BS 7671, 722.531.3.101. */
export const oneDevicePerPoint = /* @__PURE__ */ rule({
  id: 'residual-current-one-per-point',
  title: 'Each charge point has a residual current device of its own',
  source: /* @__PURE__ */ bs('722.531.3.101'),
  caution: shockCaution,
});

/** The same where the edition does not ask for one device each. BS 7671:2018+A1:2020, 722.531.3.101. */
export const oneDevicePerPointAdvised = /* @__PURE__ */ advice({
  id: 'residual-current-one-per-point-advised',
  title: 'Each charge point has a residual current device of its own',
  source: /* @__PURE__ */ bs('722.531.3.101'),
});

/** Smooth direct current that points may pass, against a device upstream. BS 7671, 531.3.3; 722.531.3.101. */
export const smoothCurrentBorne = /* @__PURE__ */ rule({
  id: 'smooth-current-upstream',
  title: 'Smooth direct current that the charge points can pass leaves the upstream residual current device working',
  of: ['smoothResidualSum', 'at-most', 'smoothResidualWithstand'],
  source: /* @__PURE__ */ bs('531.3.3; 722.531.3.101'),
  caution: shockCaution,
});

/** Devices in series are selective. BS 7671, 536.4. */
export const residualSelective = /* @__PURE__ */ advice({
  id: 'residual-current-selectivity',
  title: 'A residual current device upstream is delayed and rated at least three times the one below',
  source: /* @__PURE__ */ bs('536.4', 'memory'),
  caution: shockCaution,
});

/** Standing protective-conductor currents against the device. BS 7671, 531.3.2. */
export const standingCurrentBorne = /* @__PURE__ */ rule({
  id: 'standing-current',
  title: 'Standing protective-conductor currents are at most 30 % of the rated residual current',
  of: ['standingCurrentSum', 'at-most', 'standingCurrentLimit'],
  source: /* @__PURE__ */ bs('531.3.2', 'memory'),
  caution: shockCaution,
});

/** The residual current device is not overloaded. BS 7671, 536.4. */
export const residualNotOverloaded = /* @__PURE__ */ rule({
  id: 'residual-current-device-overload',
  title: 'The residual current device carries what the overcurrent devices let through, diversity not counted',
  of: ['residualRatedCurrent', 'at-least', 'residualLoad'],
  source: /* @__PURE__ */ bs('536.4', 'one-source'),
});

/** A device through which power flows both ways suits it. BS 7671, 530.3.201. */
export const residualBothWays = /* @__PURE__ */ rule({
  id: 'residual-current-both-ways',
  title: 'A device through which power can flow both ways is made for it',
  source: { document: 'BS 7671', edition: '2018+A3:2024', clause: '530.3.201', provenance: 'two-sources' },
  caution: shockCaution,
});

/** The same before there was a rule: what its maker says of it. BS 7671, 134.1.1, 510.3. */
export const residualMarkedBothWays = /* @__PURE__ */ rule({
  id: 'residual-current-marked-both-ways',
  title: 'A device through which power can flow both ways is made for it',
  source: /* @__PURE__ */ bs('134.1.1; 510.3', 'memory'),
  caution: shockCaution,
});

/** The board carries supply and generation together. BS 7671, 551.7.2. */
export const boardCarriesInfeed = /* @__PURE__ */ rule({
  id: 'board-rating',
  title: 'The assembly is rated for the supply and everything that generates, together',
  of: ['boardRating', 'at-least', 'boardInfeed'],
  source: /* @__PURE__ */ bs('551.7.2', 'memory'),
});

/** Largest standing protective-conductor current through a residual current device. BS 7671, 531.3.2. */
export const standingCurrentLimitOf = /* @__PURE__ */ moving({
  id: 'standing-current-limit',
  title: 'Largest standing protective-conductor current: 30 % of the rated residual current',
  moves: { residualOperatingCurrent: 1 },
  output: 'standingCurrentLimit',
  expression: 'share * residualOperatingCurrent',
  constants: { share: [0.3, '1'] },
  compute: ({ residualOperatingCurrent }) => 0.3 * residualOperatingCurrent,
  source: /* @__PURE__ */ bs('531.3.2', 'memory'),
});

/**
 * Largest current through a residual current device: what the device ahead lets through, or the devices below together,
 * diversity not counted. BS 7671, 536.4.
 */
export const residualLoadOf = /* @__PURE__ */ moving({
  id: 'residual-current-device-load',
  title: 'Current that the overcurrent devices let through a residual current device',
  moves: { aheadRating: 1, servedRating: 1 },
  output: 'residualLoad',
  expression: 'min(aheadRating, servedRating)',
  compute: ({ aheadRating, servedRating }) => Math.min(aheadRating, servedRating),
  source: /* @__PURE__ */ bs('536.4', 'one-source'),
});
