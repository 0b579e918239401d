import { cableTables } from '../../../src/codes/bs7671/cable-tables.js';
import { amperes, ohms, ratio, squareMillimetres, type Table, volts } from '../../../src/index.js';
import { temperatureFactorOfResistance, voltageAtConstantCurrent } from '../../../src/physics/definitions.js';
import { conductorResistance } from '../../../src/products/definitions.js';
import type { CrossCheck, CrossResult } from '../../support/cross-check.js';
import { temperatureOf } from '../../tables/laws.js';

/** Tables of voltage drop, with the temperature, the metal and the class of conductor that they stand for. */
const dropTables = [
  ...new Map(
    cableTables.flatMap(({ drop, dropFactor, insulation, material, construction }) =>
      drop === undefined || dropFactor
        ? []
        : [[drop, [drop, temperatureOf[insulation], material, construction === 'flexible' ? '5' : '2'] as const]],
    ),
  ).values(),
];

/** Temperature coefficients of IEC 60287-1-1, 1/K. */
const coefficients = { copper: 3.93e-3, aluminium: 4.03e-3 } as const;
const supply = 230;

const within = (differences: readonly number[], least: number, most: number): CrossResult => ({
  compared: differences.length,
  agreed: differences.filter((d) => d >= least && d <= most).length,
  differences,
});
/** Above this, alternating current crowds to the surface and towards its neighbours, and resistance rises, mm². */
const crowding = 120;

/** The columns of a table by component, with their other keys. */
const columnsOf = (t: Pick<Table, 'columns'>, component: string) =>
  t.columns.flatMap((key, i) => (key.at(-1) === component || key.length === 1 ? [[key, i] as const] : []));

/** The drop by resistance alone over that of the table, for every cell that prints it. */
function* againstResistance(which: (conductorClass: string, size: number) => boolean): Generator<number> {
  for (const [t, temperature, metal, conductorClass] of dropTables)
    for (const component of ['r', 'z'])
      for (const [key, i] of columnsOf(t, component)) {
        for (const row of t.rows) {
          const [size, cell] = [row[0] as number, row[i + 1]];
          if (typeof cell !== 'number' || (component === 'z' && size > 16) || !which(conductorClass, size)) continue;
          const at20 = conductorResistance.find({
            metal,
            conductorClass,
            conductorArea: squareMillimetres(size),
          });
          if (at20 === undefined) continue;
          const warm = temperatureFactorOfResistance({
            temperatureCoefficient: coefficients[metal] as never,
            conductorTemperature: temperature as never,
          });
          const conductors = key[0] === 'three-phase' ? Math.sqrt(3) : 2;
          yield cell / (t.per ?? 1) / (conductors * at20 * warm) - 1;
        }
      }
}

/** The drop by resistive and reactive part over the exact one, for runs that lose 5 % at power factors from 0.8 to 1. */
function* againstPhasors(): Generator<number> {
  for (const [t] of dropTables)
    for (const [key, i] of columnsOf(t, 'r')) {
      const x = t.columns.findIndex((k) => k.join() === [...key.slice(0, -1), 'x'].join());
      for (const row of t.rows) {
        const [r, other] = [row[i + 1], row[x + 1]];
        if ((row[0] as number) > crowding) continue;
        if (x < 0 || typeof r !== 'number' || typeof other !== 'number' || key[0] !== 'single-phase') continue;
        for (const powerFactor of [0.8, 0.9, 1]) {
          const reactiveFactor = Math.sqrt(1 - powerFactor ** 2);
          const perAmpere = (r * powerFactor + other * reactiveFactor) / (t.per ?? 1);
          const length = (0.05 * supply) / (100 * perAmpere);
          const left = voltageAtConstantCurrent({
            supplyVoltage: volts(supply),
            resistance: ohms((r / (t.per ?? 1)) * length),
            reactance: ohms((other / (t.per ?? 1)) * length),
            designCurrent: amperes(100),
            powerFactor: ratio(powerFactor),
            reactiveFactor: ratio(reactiveFactor),
          });
          yield (100 * perAmpere * length) / (supply - left) - 1;
        }
      }
    }
}

export const crossChecks: readonly CrossCheck[] = [
  {
    id: 'drop-tables-resistance',
    about: `tabulated drop by resistance, rigid conductors up to ${crowding} mm² (4D1B, 4D2B, 4D4B, 4D5, 4E1B, 4E2B, 4E4B, 4J4B)`,
    against: 'resistance of IEC 60228 at operating temperature, two conductors or √3',
    topic: 'voltage-drop',
    demanded: '4 % of the drop',
    leastShare: 0.98,
    run: () => within([...againstResistance((c, size) => c === '2' && size <= crowding)], -0.04, 0.04),
  },
  {
    id: 'drop-tables-resistance-large',
    about: `the same above ${crowding} mm², where alternating current does not fill the conductor`,
    against: 'the same resistance, which is that to direct current: the table has to lie above it',
    topic: 'voltage-drop',
    demanded: 'no more than 2.5 % below',
    leastShare: 1,
    run: () => within([...againstResistance((c, size) => c === '2' && size > crowding)], -0.025, 1),
  },
  {
    id: 'drop-tables-resistance-flexible',
    about: 'the same for flexible conductors (4F2B, 4F3B)',
    against: 'resistance of IEC 60228 at operating temperature',
    topic: 'voltage-drop',
    demanded: '6 % of the drop',
    leastShare: 0.85,
    run: () => within([...againstResistance((c, size) => c === '5' && size <= crowding)], -0.06, 0.06),
  },
  {
    id: 'drop-tables-phasors',
    about: `drop of 5 % from the resistive and reactive parts of the tables, up to ${crowding} mm², power factors 0.8 to 1`,
    against: 'the exact voltage by phasors',
    topic: 'voltage-drop',
    demanded: '2.5 % of the drop',
    leastShare: 1,
    run: () => within([...againstPhasors()], -0.025, 0),
  },
];
