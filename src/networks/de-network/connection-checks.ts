import { advice, rule } from '../../core/index.js';

/** No notice is needed up to 3.6 kVA of charging equipment. NAV, § 19 (2); VDE-AR-N 4100. */
export const belowNotice = /* @__PURE__ */ advice({
  id: 'de-below-notice',
  title: 'Charging equipment is at most 3.6 kVA, so that no notice is needed',
  of: ['equipmentPower', 'at-most', 'equipmentPowerLimit'],
  source: { document: 'NAV', clause: '§ 19 (2); VDE-AR-N 4100', provenance: 'two-sources' },
});

/** No consent is needed up to 12 kVA in sum. NAV, § 19 (2). */
export const belowConsent = /* @__PURE__ */ rule({
  id: 'de-below-consent',
  title: 'Charging equipment behind one connection is at most 12 kVA in sum, so that no consent is needed',
  of: ['equipmentPower', 'at-most', 'equipmentPowerLimit'],
  source: { document: 'NAV', clause: '§ 19 (2)', provenance: 'two-sources' },
});

/** The charge points of the lines differ by at most 20 A. VDE-AR-N 4100, unbalance. */
export const unbalanceWithinCap = /* @__PURE__ */ rule({
  id: 'de-unbalance',
  title: 'Currents of the charge points on the lines differ by at most 20 A (4.6 kVA)',
  of: ['unbalance', 'at-most', 'unbalanceLimit'],
  source: {
    document: 'VDE-AR-N 4100',
    clause: 'unbalance',
    provenance: 'two-sources',
    note: '4.6 kVA for a device: one text',
  },
});

/**
 * A charge point of at most 4.2 kW need not be controllable by the network operator. EnWG, § 14a, commissioned from
 * 2024-01-01.
 */
export const belowControllable = /* @__PURE__ */ advice({
  id: 'de-below-controllable',
  title: 'The charge point is at most 4.2 kW, so that it need not be controllable',
  of: ['equipmentPower', 'at-most', 'equipmentPowerLimit'],
  source: { document: 'EnWG', clause: '§ 14a, commissioned from 2024-01-01', provenance: 'two-sources' },
});
