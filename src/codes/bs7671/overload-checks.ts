import { alternatives, rule } from '../../core/index.js';
import type { OverloadRules } from '../../demand/rules.js';
import { bs, entered } from './source.js';

/** The main switch is protected against overload, diversity not counted. BS 7671, 536.4.202, 536.4.3.2. */
export const mainSwitchProtected = /* @__PURE__ */ alternatives({
  id: 'main-switch-overload',
  title: 'The main switch is protected against overload, not by diversity alone',
  weight: 'rule',
  source: /* @__PURE__ */ bs('536.4.202, 536.4.3.2'),
  caution: 'A circuit that is added later, on a spare way, counts in the sum of the outgoing devices.',
});

/** The main switch against the overcurrent device ahead. BS 7671, 536.4.202. */
export const mainSwitchBehindDevice = /* @__PURE__ */ rule({
  id: 'main-switch-behind-device',
  title: 'The rated current of the main switch is at least that of the overcurrent device ahead',
  of: ['mainSwitchRating', 'at-least', 'aheadRating'],
  source: /* @__PURE__ */ bs('536.4.202'),
});

/** The main switch against the devices of the outgoing circuits together. BS 7671, 536.4.202. */
export const mainSwitchAboveDevices = /* @__PURE__ */ rule({
  id: 'main-switch-above-devices',
  title: 'The rated current of the main switch is at least the sum of the outgoing devices',
  of: ['mainSwitchRating', 'at-least', 'servedRating'],
  source: /* @__PURE__ */ bs('536.4.202'),
});

/** What the maker of the main switch declares. BS 7671, 536.4.202. */
export const mainSwitchDeclared = /* @__PURE__ */ rule({
  id: 'main-switch-declared',
  title: 'The maker declares the main switch protected against overload where it stands',
  source: /* @__PURE__ */ bs('536.4.202'),
});

const board = {
  document: 'BS 7671',
  edition: entered,
  clause: '512.1.2, 536.4.3.2',
  provenance: 'memory',
  note: 'the rated current of an assembly, and that its busbars may be made for less than its incoming switch: BS EN 61439-1, 5.3.1, from memory',
} as const;

/** The board is protected against overload, diversity not counted. BS 7671, 512.1.2, 536.4.3.2. */
export const boardProtected = /* @__PURE__ */ alternatives({
  id: 'board-overload',
  title: 'The board is protected against overload, not by diversity alone',
  weight: 'rule',
  source: board,
  caution: 'A circuit that is added later, on a spare way, counts in the sum of the outgoing devices.',
});

/** The board against the overcurrent device ahead. BS 7671, 512.1.2. */
export const boardBehindDevice = /* @__PURE__ */ rule({
  id: 'board-behind-device',
  title: 'The rated current of the board is at least that of the overcurrent device ahead',
  of: ['boardRating', 'at-least', 'aheadRating'],
  source: board,
});

/** The board against the devices of the outgoing circuits together. BS 7671, 512.1.2. */
export const boardAboveDevices = /* @__PURE__ */ rule({
  id: 'board-above-devices',
  title: 'The rated current of the board is at least the sum of the outgoing devices',
  of: ['boardRating', 'at-least', 'servedRating'],
  source: board,
});

/** What the maker of the board declares. BS 7671, 512.1.2. */
export const boardDeclared = /* @__PURE__ */ rule({
  id: 'board-declared',
  title: 'The maker declares the board protected against overload where it stands',
  source: board,
});

/** A residual current device at the origin is protected against overload. BS 7671, 536.4.202, 536.4.3.2. */
export const originResidualProtected = /* @__PURE__ */ alternatives({
  id: 'residual-device-at-origin-overload',
  title: 'The residual current device at the origin is protected against overload, not by diversity alone',
  weight: 'rule',
  source: /* @__PURE__ */ bs('536.4.202, 536.4.3.2'),
  caution: 'A circuit that is added later, on a spare way, counts in the sum of the outgoing devices.',
});

/** It against the overcurrent device ahead. BS 7671, 536.4.202. */
export const originResidualBehindDevice = /* @__PURE__ */ rule({
  id: 'residual-device-at-origin-behind-device',
  title: 'The rated current of the residual current device is at least that of the overcurrent device ahead',
  of: ['residualRatedCurrent', 'at-least', 'aheadRating'],
  source: /* @__PURE__ */ bs('536.4.202'),
});

/** It against the devices that it serves together. BS 7671, 536.4.202. */
export const originResidualAboveDevices = /* @__PURE__ */ rule({
  id: 'residual-device-at-origin-above-devices',
  title: 'The rated current of the residual current device is at least the sum of the devices that it serves',
  of: ['residualRatedCurrent', 'at-least', 'servedRating'],
  source: /* @__PURE__ */ bs('536.4.202'),
});

/** What the maker of that device declares. BS 7671, 536.4.202. */
export const originResidualDeclared = /* @__PURE__ */ rule({
  id: 'residual-device-at-origin-declared',
  title: 'The maker declares the residual current device protected against overload where it stands',
  source: /* @__PURE__ */ bs('536.4.202'),
});

/** The meter tails are protected against overload. BS 7671, 433.1.1, 433.2.2. */
export const tailsProtected = /* @__PURE__ */ alternatives({
  id: 'tails-overload',
  title: 'The meter tails are protected against overload, by the fuse ahead or at their load end',
  weight: 'rule',
  source: /* @__PURE__ */ bs('433.1.1, 433.2.2'),
  caution: 'BS 7671 has no clause on tails alone; that they are at most 3 m long is asked by distributors.',
});

/** The tails behind the fuse ahead. BS 7671, 433.1.1. */
export const tailsBehindFuse = /* @__PURE__ */ rule({
  id: 'tails-behind-fuse',
  title: 'The tails carry at least the rated current of the fuse ahead',
  of: ['tailsCapacity', 'at-least', 'aheadRating'],
  source: /* @__PURE__ */ bs('433.1.1'),
});

/** The tails ahead of the devices at their load end. BS 7671, 433.2.2. */
export const tailsAboveDevices = /* @__PURE__ */ rule({
  id: 'tails-above-devices',
  title: 'The tails carry at least the sum of the outgoing devices at their load end',
  of: ['tailsCapacity', 'at-least', 'servedRating'],
  source: /* @__PURE__ */ bs('433.2.2'),
});

/** The fuse ahead protects the tails against fault current. BS 7671, 434.5.2. */
export const tailsFaultProtected = /* @__PURE__ */ rule({
  id: 'tails-fault-protection',
  title: 'The fuse ahead protects the tails against fault current, and the distributor lets it be relied on',
  source: /* @__PURE__ */ bs('434.5.2'),
});

/** What protects a main switch. */
export const mainSwitchOverload: OverloadRules<'mainSwitchRating'> = {
  protected: mainSwitchProtected,
  ahead: mainSwitchBehindDevice,
  below: mainSwitchAboveDevices,
  declared: mainSwitchDeclared,
};
/** What protects a board. */
export const boardOverload: OverloadRules<'boardRating'> = {
  protected: boardProtected,
  ahead: boardBehindDevice,
  below: boardAboveDevices,
  declared: boardDeclared,
};
/** What protects a residual current device at the origin. */
export const residualOverload: OverloadRules<'residualRatedCurrent'> = {
  protected: originResidualProtected,
  ahead: originResidualBehindDevice,
  below: originResidualAboveDevices,
  declared: originResidualDeclared,
};
/** What protects the tails. */
export const tailsOverload: OverloadRules<'tailsCapacity'> = {
  protected: tailsProtected,
  ahead: tailsBehindFuse,
  below: tailsAboveDevices,
  declared: tailsFaultProtected,
};
