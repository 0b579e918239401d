/** Invented houses, as an estimator's spreadsheet has them after a telephone call: drawn from a seed, none of them real. */

/** A generator of numbers from 0 to 1 (a linear congruential one with the constants of Numerical Recipes). */
function drawing(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

const headings = [
  'Reference',
  'Day of the survey',
  'Earthing arrangement',
  'Phases',
  'Main fuse (A)',
  'Looped service',
  'Meter tails (mm²)',
  'Earthing conductor (mm²)',
  'Bonding of water',
  'Bonding of gas',
  'Bonding of other metal',
  'Rating of the board (A)',
  'Spare ways',
  'lightingCircuits',
  'ringCircuits',
  'cooker',
  'shower',
  'immersionHeater',
  'electricHeating',
  'storageHeating',
  'heatPump',
  'solar',
  'solarDevice',
  'cutOutSound',
  'allListed',
  'chargeCurrent',
  'outdoors',
  'loft',
  'indoors',
  'wallsOutside',
  'buried',
] as const;

/**
 * A sheet of houses, headings first. How often something is met is invented, and leans on nothing but what a mixed street
 * looks like: mostly PME, a quarter TN-S, a few rods; every second shower electric; one heating in eight by a heat pump;
 * 3 to 40 m of route. What a customer often cannot say is often left empty.
 */
export function houses(count: number, seed: number): readonly (readonly string[])[] {
  const draw = drawing(seed);
  /** One of the values, each as often as its number says. */
  const pick = <T>(...of: readonly (readonly [value: T, often: number])[]): T => {
    let left = draw() * of.reduce((sum, [, often]) => sum + often, 0);
    for (const [value, often] of of) {
      left -= often;
      if (left < 0) return value;
    }
    return (of[0] as readonly [T, number])[0];
  };
  const metres = (least: number, most: number) => `${Math.round(least + draw() * (most - least))} m`;
  const rows = Array.from({ length: count }, (_, i): readonly string[] => {
    // one photograph shows the arrangement, the fuse and the state of the cut-out; where there is none, none of them is known
    const photo = pick([true, 95], [false, 5]);
    const arrangement = pick(['PME', 68], ['TN-S', 28], ['TT', 4]);
    const earthing = photo ? arrangement : '';
    const phases = pick(['1', 97], ['3', 3]);
    const rating = phases === '3' ? '80' : pick(['60', 16], ['80', 36], ['100', 48]);
    const fuse = photo ? rating : '';
    const heating = pick(['gas', 82], ['heat pump', 12], ['storage', 4], ['direct', 2]);
    const solar = pick([true, 7], [false, 93]);
    const buried = pick([true, 18], [false, 82]);
    const loft = pick([true, 25], [false, 75]);
    return [
      `INV-${String(i + 1).padStart(3, '0')}`,
      '21/09/2026',
      earthing,
      phases,
      fuse,
      pick(['no', 60], ['yes', 5], ['', 35]),
      pick(['25', 40], ['16', 8], ['', 52]),
      pick(['16', 45], ['10', 6], ['', 49]),
      pick(['10 mm²', 55], ['none', 30], ['missing', 3], ['', 12]),
      heating === 'gas' ? pick(['10 mm²', 80], ['missing', 4], ['', 16]) : 'none',
      pick(['none', 92], ['', 8]),
      pick(['100', 55], ['', 45]),
      pick(['0', 14], ['1', 25], ['2', 30], ['4', 16], ['', 15]),
      pick(['1', 20], ['2', 60], ['3', 20]),
      pick(['1', 25], ['2', 60], ['3', 15]),
      pick(['0', 25], ['3 kW', 25], ['7.2 kW', 30], ['10.5 kW', 20]),
      pick(['0', 52], ['7.5 kW', 10], ['8.5 kW', 22], ['9.5 kW', 12], ['10.5 kW', 4]),
      pick(['0', 70], ['3 kW', 30]),
      heating === 'direct' ? pick(['6 kW', 1], ['9 kW', 1]) : '0',
      heating === 'storage' ? pick(['7 kW', 1], ['10 kW', 1]) : '0',
      heating === 'heat pump' ? pick(['13 A', 1], ['20 A', 2], ['25 A', 1]) : '0 A',
      solar ? '3.68 kW' : '0',
      solar ? '16 A' : '',
      photo ? 'yes' : '',
      pick(['yes', 94], ['', 6]),
      pick(['32 A', 94], ['16 A', 6]),
      pick(['yes', 90], ['no', 10]),
      loft ? metres(3, 12) : '0 m',
      metres(1, 14),
      metres(0, 16),
      buried ? metres(3, 14) : '0 m',
    ];
  });
  return [headings, ...rows];
}
