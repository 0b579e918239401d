import { advice, alternatives, moving, rule, type Source } from '../../core/index.js';
import { shockCaution } from './disconnection-checks.js';

const clause = (where: string, provenance: Source['provenance'] = 'two-sources', note?: string): Source => ({
  document: 'BS 7671',
  clause: where,
  provenance,
  ...(note ? { note } : {}),
});

/** The charge point outdoors is not left on the earth of a PME supply alone. BS 7671, 722.411.4.1. */
export const chargePointEarthed = /* @__PURE__ */ alternatives({
  weight: 'rule',
  caution: shockCaution,
  id: 'charge-point-earthing',
  title: 'A charge point outdoors on a PME supply has one of the permitted arrangements',
  source: /* @__PURE__ */ clause('722.411.4.1'),
});

/**
 * A place in which a combined neutral and earth is barred. Electricity Safety, Quality and Continuity Regulations
 * 2002, regulation 9(4); BS 7671 Sections 704, 708, 709.
 */
export const combinedEarthAllowed = /* @__PURE__ */ rule({
  id: 'combined-earth-allowed',
  title: 'The place permits the earth of a PME supply',
  source: {
    document: 'Electricity Safety, Quality and Continuity Regulations 2002',
    clause: 'regulation 9(4); BS 7671 Sections 704, 708, 709',
    provenance: 'memory',
  },
  caution: shockCaution,
});

/**
 * A place for which rules are entered: a filling station, indoors or outdoors, is designed by a specialist. Guidance for
 * filling stations, hazard zones, earths of separate supplies, emergency switch.
 */
export const placeCovered = /* @__PURE__ */ rule({
  id: 'charge-point-place',
  title: 'The place of the charge point is one that the rules entered here cover',
  source: {
    document: 'guidance for filling stations',
    clause: 'hazard zones, earths of separate supplies, emergency switch',
    provenance: 'memory',
    note: 'no clause of BS 7671; the guidance was not seen',
  },
  caution: shockCaution,
});

/** Every declared state of load is balanced well enough. BS 7671, 722.411.4.1 (i). */
export const balancedKeepsLimit = /* @__PURE__ */ rule({
  id: 'open-pen-balanced-load',
  title: 'With the PEN conductor open and no electrode, no state of load raises exposed metal above the limit',
  of: ['touchVoltage', 'at-most', 'touchVoltageLimit'],
  source: /* @__PURE__ */ clause('722.411.4.1 (i)'),
  caution: shockCaution,
});

/** The arrangement is for three-phase installations. BS 7671, 722.411.4.1 (i). */
export const threePhaseInstallation = /* @__PURE__ */ rule({
  id: 'three-phase-installation',
  title: 'The installation has three phases and feeds other loads as well',
  source: /* @__PURE__ */ clause('722.411.4.1 (i)'),
  caution: shockCaution,
});

/** The states of load are declared. BS 7671, 722.411.4.1 (i), (ii). */
export const loadStatesDeclared = /* @__PURE__ */ rule({
  id: 'load-states-declared',
  title: 'The states of load of the installation are declared',
  source: /* @__PURE__ */ clause('722.411.4.1 (i), (ii)'),
  caution: shockCaution,
});

/** The electrode against the resistive-load equation. BS 7671, 722.411.4.1 (ii), Annex A722. */
export const electrodeKeepsLimit = /* @__PURE__ */ rule({
  id: 'open-pen-low-electrode',
  title: 'The electrode keeps exposed metal within the limit with the PEN conductor open, load as a resistance',
  of: ['electrodeResistance', 'at-most', 'electrodeLimit'],
  source: /* @__PURE__ */ clause('722.411.4.1 (ii), Annex A722', 'one-source', 'equation recalled'),
  caution: shockCaution,
});

/** There is an electrode at all. BS 7671, 722.411.4.1 (ii). */
export const electrodeThere = /* @__PURE__ */ rule({
  id: 'open-pen-electrode-there',
  title: 'An electrode is connected to the main earthing terminal',
  source: /* @__PURE__ */ clause('722.411.4.1 (ii)'),
  caution: shockCaution,
});

/** The electrode against a charger that holds its current. */
export const electrodeForHeldCurrent = /* @__PURE__ */ advice({
  id: 'open-pen-held-current',
  title: 'The electrode keeps the limit for a charger that holds its current',
  of: ['electrodeResistance', 'at-most', 'electrodeLimit'],
  source: { document: 'physics', provenance: 'derived' },
  caution: shockCaution,
});

/** The electrode against a charger that holds its power, at the lowest supply voltage. */
export const electrodeForHeldPower = /* @__PURE__ */ advice({
  id: 'open-pen-held-power',
  title: 'The electrode keeps the limit for a charger that holds its power, at the lowest supply voltage',
  of: ['electrodeResistance', 'at-most', 'electrodeLimit'],
  source: { document: 'physics', provenance: 'derived' },
  caution: shockCaution,
});

/** Open-PEN detection by touch voltage. BS 7671, 722.411.4.1 (iii). */
export const openPenDetectionTouchVoltage = /* @__PURE__ */ rule({
  id: 'open-pen-detection-touch-voltage',
  title: 'Open-PEN detection disconnects live and protective conductors when exposed metal is above 70 V to earth',
  source: /* @__PURE__ */ clause('722.411.4.1 (iii)'),
  caution: shockCaution,
});

/** Open-PEN detection by the voltage of line to neutral. BS 7671, 722.411.4.1 (iv). */
export const openPenDetectionWindow = /* @__PURE__ */ rule({
  id: 'open-pen-detection-window',
  title: 'Open-PEN detection disconnects live and protective conductors outside 207 to 253 V line to neutral',
  source: /* @__PURE__ */ clause('722.411.4.1 (iv)'),
  caution: shockCaution,
});

/** What such a device cannot see on three phases. */
export const windowSeesOpenPen = /* @__PURE__ */ advice({
  id: 'line-neutral-window-sight',
  title: 'The voltage of the line that is watched shows that the PEN conductor is open',
  source: { document: 'physics', clause: 'star point of the loads', provenance: 'derived' },
  caution: shockCaution,
});

/** That device is for single-phase installations only. BS 7671:2018+A1:2020, 722.411.4.1 (iv). */
export const singlePhaseInstallation = /* @__PURE__ */ rule({
  id: 'single-phase-installation',
  title: 'The installation has a single phase',
  source: /* @__PURE__ */ clause('722.411.4.1 (iv)'),
  caution: shockCaution,
});

/** What the window leaves for voltage drop at the lowest supply voltage. BS 7671, 722.411.4.1 (iv). */
export const windowLeavesDrop = /* @__PURE__ */ advice({
  id: 'line-neutral-window-margin',
  title: 'The voltage drop leaves the reading inside the window at the lowest supply voltage',
  of: ['totalDrop', 'at-most', 'windowMargin'],
  source: /* @__PURE__ */ clause('722.411.4.1 (iv), from the lowest supply voltage down to 207 V', 'derived'),
  caution: shockCaution,
});

/** Open-PEN detection of another kind, of equal safety. BS 7671, 722.411.4.1 (v). */
export const openPenDetectionOther = /* @__PURE__ */ rule({
  id: 'open-pen-detection-other',
  title: 'Open-PEN detection of another kind gives safety equal to the others and does not reclose on the fault',
  source: /* @__PURE__ */ clause('722.411.4.1 (v)'),
  caution: shockCaution,
});

/** Nothing of the earth of the supply reaches a charge point on TT earthing. BS 7671, 722.411.4.1; 542.1.3. */
export const ttFeedSeparated = /* @__PURE__ */ rule({
  id: 'tt-feed-separated',
  title: 'Armour and protective conductor of the feed are separated from the earth of the charge point',
  source: /* @__PURE__ */ clause('722.411.4.1; 542.1.3', 'one-source'),
  caution: shockCaution,
});

/** No one touches both earthing systems. BS 7671, 411.3.1.1; 417.3. */
export const ttOutOfReach = /* @__PURE__ */ rule({
  id: 'tt-out-of-reach',
  title: 'Metal on the earth of the supply is out of reach from the charge point on TT earthing',
  of: ['earthSeparation', 'at-least', 'requiredSeparation'],
  source: /* @__PURE__ */ clause('411.3.1.1; 417.3', 'one-source', 'the distance quoted for arm’s reach'),
  caution: shockCaution,
});

/** Buried electrodes of two systems are apart. Guidance of one network operator, buried separation. */
export const ttElectrodesApart = /* @__PURE__ */ advice({
  id: 'tt-electrodes-apart',
  title: 'Buried metal of the two earthing systems is well apart',
  of: ['earthSeparation', 'at-least', 'requiredSeparation'],
  source: { document: 'guidance of one network operator', clause: 'buried separation', provenance: 'one-source' },
  caution: shockCaution,
});

/** The electrode of a charge point on TT earthing and the residual current device. BS 7671, 411.5.3. */
export const ttTouchLimit = /* @__PURE__ */ rule({
  id: 'tt-touch-voltage',
  title: 'The rated residual current raises at most 50 V on the electrode of the charge point',
  of: ['touchVoltage', 'at-most', 'touchVoltageLimit'],
  source: { document: 'BS 7671', clause: '411.5.3', provenance: 'two-sources' },
  caution: shockCaution,
});

/** A stable electrode. BS 7671, Table 41.5, note. */
export const ttElectrodeStable = /* @__PURE__ */ advice({
  id: 'tt-electrode-stable',
  title: 'The electrode of the charge point is low enough to be stable',
  of: ['electrodeResistance', 'at-most', 'electrodeLimit'],
  source: { document: 'BS 7671', clause: 'Table 41.5, note', provenance: 'one-source' },
  caution: shockCaution,
});

/** One transformer for one vehicle. BS 7671, 722.413.1.2. */
export const oneVehicleSeparated = /* @__PURE__ */ rule({
  id: 'one-vehicle-separated',
  title: 'An isolating transformer supplies one vehicle only',
  source: /* @__PURE__ */ clause('722.413.1.2', 'memory'),
  caution: shockCaution,
});

/** Lowest voltage of a supply in Great Britain. Electricity Safety, Quality and Continuity Regulations 2002. */
export const lowestSupplyVoltage = /* @__PURE__ */ moving({
  id: 'lowest-supply-voltage',
  title: 'Lowest voltage of a public supply in Great Britain',
  moves: { nominalVoltage: 1 },
  output: 'minimumSupplyVoltage',
  expression: 'permitted * nominalVoltage',
  constants: { permitted: [0.94, '1'] },
  compute: ({ nominalVoltage }) => 0.94 * nominalVoltage,
  source: {
    document: 'Electricity Safety, Quality and Continuity Regulations 2002',
    clause: 'regulation 27: 230 V -6 % +10 %',
    provenance: 'memory',
  },
});
