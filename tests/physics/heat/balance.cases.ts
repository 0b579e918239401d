import { celsius, hertz, kelvinMetresPerWatt, metres, millimetres, ohmsPerMetre } from '../../../src/index.js';
import {
  type HeatBalance,
  type HeatCable,
  type HeatCase,
  type HeatSurroundings,
  heatBalance,
} from '../../../src/physics/heat/index.js';
import type { PublishedCase } from '../../support/published.js';

const source = {
  document: 'IEC 60287, equations as recalled',
  where: 'rating of one cable, computed independently',
} as const;

/** Ground of the tables of IEC 60364-5-52. */
const ground = {
  groundTemperature: celsius(20),
  soilResistivity: kelvinMetresPerWatt(2.5),
  burialDepth: metres(0.7),
} as const;
const air = (formation: 'one-spaced' | 'one-on-wall'): HeatSurroundings => ({
  where: 'air',
  ambientTemperature: celsius(30),
  formation,
});

interface Build {
  readonly r20: number;
  readonly conductor: number;
  readonly insulation: number;
  readonly laidUp: number;
  readonly sheath: number;
  readonly overall: number;
  readonly material?: 'PVC';
  readonly shape?: 'sector';
  readonly bedding?: number;
  readonly wire?: number;
}

const cable = (cores: 2 | 3 | 4, b: Build): HeatCable => ({
  metal: 'copper',
  resistancePerMetre20: ohmsPerMetre(b.r20),
  shape: b.shape ?? 'round',
  conductorDiameter: millimetres(b.conductor),
  insulation: { material: b.material ?? 'XLPE', thickness: millimetres(b.insulation) },
  cores,
  laidUpDiameter: millimetres(b.laidUp),
  ...(b.bedding === undefined ? {} : { bedding: { material: 'PVC', thickness: millimetres(b.bedding) } }),
  ...(b.wire === undefined ? {} : { armour: { wireDiameter: millimetres(b.wire) } }),
  sheath: { material: 'PVC', thickness: millimetres(b.sheath) },
  overallDiameter: millimetres(b.overall),
});

type Expected = Partial<Record<Exclude<keyof HeatBalance, 'cautions'>, number>>;
type Row = readonly [
  id: string,
  cable: HeatCable,
  loaded: 2 | 3,
  surroundings: HeatSurroundings,
  hot: number,
  expected: Expected,
];

const rows: readonly Row[] = [
  [
    '3x2.5-xlpe-ground',
    cable(3, { r20: 0.00741, conductor: 2.01, insulation: 0.7, laidUp: 7.347527, sheath: 1.8, overall: 10.947527 }),
    3,
    { where: 'ground', ...ground },
    90,
    {
      computedCapacity: 30.0412823861,
      acResistancePerMetre: 0.00944851325029,
      skinFactor: 9.21283454806e-7,
      proximityFactor: 1.43362045496e-6,
      coreThermalResistance: 0.639238387121,
      sheathThermalResistance: 0.317315002255,
      externalThermalResistance: 2.20598532113,
    },
  ],
  [
    '3x95-xlpe-ground',
    cable(3, {
      r20: 0.000193,
      conductor: 11.4,
      insulation: 1.1,
      laidUp: 29.30392,
      sheath: 2.0256372,
      overall: 33.3551944,
    }),
    3,
    { where: 'ground', ...ground },
    90,
    {
      computedCapacity: 218.770745457,
      acResistancePerMetre: 0.000247499613137,
      coreThermalResistance: 0.312336385775,
      sheathThermalResistance: 0.103046633638,
      externalThermalResistance: 1.762648651,
    },
  ],
  [
    '2x6-pvc-on-wall',
    cable(2, {
      material: 'PVC',
      r20: 0.00308,
      conductor: 3.12,
      insulation: 1,
      laidUp: 10.24,
      sheath: 1.8,
      overall: 13.84,
    }),
    2,
    air('one-on-wall'),
    70,
    {
      computedCapacity: 47.5468623009,
      coreThermalResistance: 0.772209724699,
      sheathThermalResistance: 0.23973614962,
      externalThermalResistance: 1.77474565168,
      surfaceTemperature: 59.5718655536,
    },
  ],
  [
    '3x16-xlpe-air',
    cable(3, { r20: 0.00115, conductor: 4.65, insulation: 0.7, laidUp: 13.035935, sheath: 1.8, overall: 16.635935 }),
    3,
    air('one-spaced'),
    90,
    {
      computedCapacity: 96.1859403404,
      coreThermalResistance: 0.403504598239,
      sheathThermalResistance: 0.194053913733,
      externalThermalResistance: 1.14546471365,
      surfaceTemperature: 76.6261484598,
    },
  ],
  [
    '3x16-xlpe-armoured-air',
    cable(3, {
      r20: 0.00115,
      conductor: 4.65,
      insulation: 0.7,
      laidUp: 13.035935,
      bedding: 1,
      wire: 1.25,
      sheath: 2.0320325,
      overall: 21.6,
    }),
    3,
    air('one-spaced'),
    90,
    {
      computedCapacity: 99.6256400478,
      coreThermalResistance: 0.403504598239,
      beddingThermalResistance: 0.113583493869,
      sheathThermalResistance: 0.165872165471,
      externalThermalResistance: 0.959379552714,
      armourLossFactor: 0.000582769959718,
    },
  ],
  [
    '4x95-xlpe-armoured-air',
    cable(4, {
      r20: 0.000193,
      conductor: 11.4,
      insulation: 1.1,
      laidUp: 28.3147210867,
      bedding: 1.2,
      wire: 2,
      sheath: 3.49263945664,
      overall: 41.7,
      shape: 'sector',
    }),
    3,
    air('one-spaced'),
    90,
    {
      computedCapacity: 308.415441562,
      acResistancePerMetre: 0.000247142457217,
      proximityFactor: 0.00290259400514,
      coreThermalResistance: 0.199270277426,
      beddingThermalResistance: 0.0647443937791,
      sheathThermalResistance: 0.145895182174,
      externalThermalResistance: 0.565806241299,
      armourLossFactor: 0.011096380003,
    },
  ],
  [
    '3x25-xlpe-duct',
    cable(3, { r20: 0.000727, conductor: 5.9, insulation: 0.9, laidUp: 16.59119, sheath: 1.8, overall: 20.19119 }),
    3,
    {
      where: 'duct',
      ...ground,
      duct: { kind: 'plastic', wall: 'PVC duct', innerDiameter: millimetres(63), outerDiameter: millimetres(68) },
    },
    90,
    {
      computedCapacity: 96.3845855401,
      coreThermalResistance: 0.406550958333,
      sheathThermalResistance: 0.156269892952,
      externalThermalResistance: 2.41672249639,
    },
  ],
];

const units: Readonly<Record<string, string>> = {
  computedCapacity: 'A',
  acResistancePerMetre: 'Ω/m',
  skinFactor: '1',
  proximityFactor: '1',
  armourLossFactor: '1',
  surfaceTemperature: '°C',
};

const outsideOf: Readonly<Record<HeatSurroundings['where'], readonly string[]>> = {
  air: ['free-air-thermal-resistance', 'surface-rise', 'surface-share', 'heat-dissipation', 'inner-thermal-resistance'],
  ground: ['ground-thermal-resistance', 'buried-thermal-resistance'],
  duct: [
    'ducted-thermal-resistance',
    'duct-gap-thermal-resistance',
    'medium-temperature',
    'duct-thermal-resistance',
    'inner-thermal-resistance',
  ],
};

/** The formulas that stand behind a figure of a balance, the one that gives it first. */
function exercisedBy(cable: HeatCable, { where }: HeatSurroundings, name: string): readonly string[] {
  const sector = cable.shape === 'sector';
  switch (name) {
    case 'computedCapacity':
      return ['balanced-capacity', where === 'air' ? 'permissible-rise-in-air' : 'permissible-rise-in-ground'];
    case 'acResistancePerMetre':
      return ['ac-resistance', 'resistance-at-temperature'];
    case 'skinFactor':
      return ['skin-factor', 'skin-argument'];
    case 'proximityFactor':
      return ['proximity-factor-three', 'core-spacing'];
    case 'coreThermalResistance':
      return sector
        ? ['sector-cores-thermal-resistance', 'sector-radius']
        : ['touching-cores-thermal-resistance', 'touching-cores-factor', 'insulation-ratio'];
    case 'externalThermalResistance':
      return outsideOf[where];
    case 'armourLossFactor':
      return [
        ...(sector ? ['armour-loss-sectors', 'sector-radius'] : ['armour-loss-round', 'core-axis-radius']),
        ...['armour-layer-resistance', 'armour-layer-area', 'armour-mean-diameter', 'armour-temperature'],
      ];
    case 'surfaceTemperature':
      return ['surface-temperature', 'surface-rise'];
    default:
      return ['shell-thermal-resistance'];
  }
}

/** The printed armour losses rest on a fixed temperature of the armour that is not stated, ours on the balance. */
const share = (cable: HeatCable, name: string) =>
  !cable.armour ? 1e-9 : name === 'armourLossFactor' ? 0.03 : name.endsWith('Resistance') ? 5e-5 : 2e-4;

/** Ratings from the heat balance and the thermal resistances behind them. */
export const cases: readonly PublishedCase[] = rows.flatMap(
  ([id, build, loadedConductors, surroundings, hot, expected]) => {
    const heat: HeatCase = {
      cable: build,
      loadedConductors,
      surroundings,
      operatingTemperature: celsius(hot),
      frequency: hertz(50),
    };
    return Object.entries(expected).map(
      ([name, published]): PublishedCase => ({
        id: `heat-balance-${id}-${name.replace(/[A-Z]/g, (c) => `-${c.toLowerCase()}`)}`,
        about: `${name.replace(/[A-Z]/g, (c) => ` ${c.toLowerCase()}`)} of a cable ${id.replaceAll('-', ' ')}`,
        source,
        provenance: 'derived',
        exercises: exercisedBy(build, surroundings, name),
        ours: () => heatBalance(heat)[name as keyof Expected] as number,
        published,
        unit: units[name] ?? 'K·m/W',
        tolerance: published * share(build, name),
      }),
    );
  },
);
