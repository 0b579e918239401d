import type { Bounds } from '../units/index.js';
import type {
  CableConstruction,
  ConductorMaterial,
  Drum,
  Group,
  GroupArrangement,
  Insulation,
  ProtectiveConductorKind,
  ReferenceMethod,
  Stretch,
} from './cable.js';
import type { DevicePosition, OvercurrentKind } from './device.js';
import { type ChargePointEarthing, type DwellingHeating, lineConductors, purposes } from './load.js';
import type { EarthingConductorLaid, EarthingSystem, Supply, SupplyTransformer } from './supply.js';

type Tray = NonNullable<Group['tray']>;

/** Every label that a fact of an installation may be, by what it is a label of; readers of documents take them from here. */
export const labels = {
  system: ['TN-S', 'TN-C-S', 'TT', 'IT'],
  phaseCount: [1, 3],
  transformerOwner: ['operator', 'customer'],
  earthingConductorLaid: [
    'above-ground',
    'above-ground-protected',
    'buried',
    'buried-against-damage',
    'buried-against-corrosion',
    'buried-protected',
  ],
  specialLocation: [
    'caravan-park',
    'marina',
    'construction-site',
    'filling-station',
    'farm',
    'swimming-pool',
    'other',
    'none',
  ],
  energyClass: [1, 2, 3],
  position: ['origin-of-installation', 'origin-of-circuit', 'along-circuit', 'inside-equipment'],
  residualType: ['AC', 'A', 'F', 'B'],
  delay: ['general', 'selective'],
  construction: ['flat-twin-and-earth', 'single-core', 'multicore', 'armoured', 'flexible'],
  material: ['copper', 'aluminium'],
  insulation: ['thermoplastic-70', 'thermosetting-90', 'thermosetting-60'],
  coresOfCable: [2, 3, 4, 5],
  protective: ['core', 'bare-core', 'separate', 'armour', 'armour-and-separate', 'conduit', 'none'],
  protectiveMaterial: ['copper', 'aluminium', 'steel'],
  method: ['A', 'A1', 'A2', 'B', 'B1', 'B2', 'C', 'D', 'D1', 'D2', 'E', 'F', 'G', '100', '101', '102', '103'],
  arrangement: [
    'bunched',
    'single-layer-wall',
    'single-layer-tray',
    'single-layer-ladder',
    'single-layer-ceiling',
    'direct-in-ground',
    'ducts-in-ground',
  ],
  support: ['perforated tray', 'vertical perforated tray', 'unperforated tray', 'ladder, cleats'],
  trays: [1, 2, 3, 6],
  overloads: ['simultaneous', 'not-simultaneous'],
  drum: [
    'none',
    'radial, ventilated',
    'radial, unventilated',
    'ventilated cylindrical, 1 layer',
    'ventilated cylindrical, 2 layers',
    'ventilated cylindrical, 3 layers',
    'ventilated cylindrical, 4 layers',
  ],
  formation: ['flat-touching', 'trefoil', 'spaced-horizontal', 'spaced-vertical'],
  containment: ['clipped', 'conduit', 'trunking', 'tray', 'duct', 'buried', 'catenary', 'free'],
  purpose: purposes,
  holds: ['current', 'power'],
  heating: ['not-electric', 'direct-electric', 'night-storage', 'heat-pump'],
  accessories: ['BS 1363', 'other'],
  line: lineConductors,
  mode: [2, 3, 4],
  socket: ['BS 1363', 'EN 60309'],
  openPenDevice: ['none', 'open-pen-detection-touch-voltage', 'open-pen-detection-window', 'open-pen-detection-other'],
  earthing: [
    'balanced-three-phase',
    'low-electrode',
    'open-pen-detection-touch-voltage',
    'open-pen-detection-window',
    'open-pen-detection-other',
    'tt-earthing',
    'electrical-separation',
    'supply-earth',
  ],
} as const satisfies Labels;

/** The types that the labels are those of; that each list has them all is shown by a test of types. */
export interface Labels {
  readonly system: readonly EarthingSystem[];
  readonly phaseCount: readonly (1 | 3)[];
  readonly transformerOwner: readonly SupplyTransformer['owner'][];
  readonly earthingConductorLaid: readonly EarthingConductorLaid[];
  readonly specialLocation: readonly NonNullable<Supply['specialLocation']>[];
  readonly energyClass: readonly (1 | 2 | 3)[];
  readonly position: readonly DevicePosition[];
  readonly residualType: readonly ('AC' | 'A' | 'F' | 'B')[];
  readonly delay: readonly ('general' | 'selective')[];
  readonly construction: readonly CableConstruction[];
  readonly material: readonly ConductorMaterial[];
  readonly insulation: readonly Insulation[];
  readonly coresOfCable: readonly (2 | 3 | 4 | 5)[];
  readonly protective: readonly ProtectiveConductorKind[];
  readonly protectiveMaterial: readonly (ConductorMaterial | 'steel')[];
  readonly method: readonly ReferenceMethod[];
  readonly arrangement: readonly GroupArrangement[];
  readonly support: readonly Tray['support'][];
  readonly trays: readonly Tray['trays'][];
  readonly overloads: readonly NonNullable<Group['overloads']>[];
  readonly drum: readonly Drum[];
  readonly formation: readonly NonNullable<Stretch['formation']>[];
  readonly containment: readonly NonNullable<Stretch['containment']>[];
  readonly purpose: readonly (typeof purposes)[number][];
  readonly holds: readonly ('current' | 'power')[];
  readonly heating: readonly DwellingHeating[];
  readonly accessories: readonly ('BS 1363' | 'other')[];
  readonly line: readonly (typeof lineConductors)[number][];
  readonly mode: readonly (2 | 3 | 4)[];
  readonly socket: readonly ('BS 1363' | 'EN 60309')[];
  readonly openPenDevice: readonly (
    | 'none'
    | 'open-pen-detection-touch-voltage'
    | 'open-pen-detection-window'
    | 'open-pen-detection-other'
  )[];
  readonly earthing: readonly ChargePointEarthing[];
}

/** Product standards of overcurrent devices, with the types that each has; fuses have none. */
export const overcurrentTypes = {
  'EN 60898': ['B', 'C', 'D'],
  'EN 61009': ['B', 'C', 'D'],
  'BS 3871': ['1', '2', '3'],
  'BS 88-2': [],
  'BS 88-3': [],
  'BS 1361': [],
  'BS 1362': [],
  'BS 3036': [],
} as const satisfies Readonly<Record<OvercurrentKind['standard'], readonly string[]>>;

/** What plain numbers may be; where nothing else is said whole ones. */
export const counts = {
  parallel: { least: 1, most: 20 },
  coresLoaded: { least: 1, most: 100 },
  circuits: { least: 1, most: 100 },
  lightlyLoaded: { least: 0, most: 100 },
  pieces: { least: 0, most: 10_000 },
  pointsServed: { least: 1, most: 10_000 },
  alikePoints: { least: 2, most: 500 },
  dwellingCount: { least: 1, most: 10_000 },
  groupingFactor: { above: 0, most: 1, broken: true },
} as const satisfies Readonly<Record<string, Bounds & { readonly broken?: true }>>;
