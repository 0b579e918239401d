/** A page of the handbook. */
export interface PagePlan {
  /** File name without its ending. */
  readonly name: string;
  /** Heading. */
  readonly title: string;
  /** Beginnings of the paths, from `src/`, of the modules whose definitions stand on it. */
  readonly from: readonly string[];
}

const t = 'codes/bs7671/tables/';

/** The pages in the order of the index; a definition stands on the first that takes its module. */
export const pagePlans: readonly PagePlan[] = [
  {
    name: 'demand',
    title: 'Maximum demand',
    from: [
      'demand/formulas',
      'codes/bs7671/demand',
      'guidance/on-site-guide/formulas',
      'networks/gb-network/supply-checks',
    ],
  },
  {
    name: 'demand-of-many',
    title: 'Demand of many dwellings and charge points',
    from: [
      'demand/many',
      'networks/nfc14100',
      'networks/nordic-network',
      'networks/gb-network/after-diversity',
      'networks/gb-network/dwelling-demand',
      'guidance/din18015',
    ],
  },
  {
    name: 'rating',
    title: 'Current-carrying capacity and overload',
    from: [
      'codes/iec-family/capacity',
      'codes/iec-family/conductor-size',
      'codes/iec-family/e52',
      'codes/iec-family/rated',
    ],
  },
  {
    name: 'voltage-drop',
    title: 'Voltage drop',
    from: ['physics/voltage-drop', 'codes/iec-family/voltage-drop', 'physics/four-wire'],
  },
  {
    name: 'heat-balance',
    title: 'Heat balance of cables',
    from: ['physics/heat', 'products/iec60502'],
  },
  {
    name: 'conductor-temperature',
    title: 'Conductor temperature and resistance',
    from: ['codes/iec-family/conductor-temperature'],
  },
  { name: 'cable-heat', title: 'Heat of cables: capacity from first principles', from: ['physics/heat'] },
  {
    name: 'fault-currents',
    title: 'Fault currents and breaking capacity',
    from: [
      'physics/fault-current',
      'physics/short-circuit',
      'physics/meshed-peak',
      'codes/bs7671/breaking',
      'products/iec60909',
    ],
  },
  {
    name: 'site-supply',
    title: 'Transformers, networks, motors and power quality',
    from: ['physics/power', 'demand/transformer-check'],
  },
  {
    name: 'earth-fault-loop',
    title: 'Earth fault loop and disconnection',
    from: ['physics/loop', 'physics/ring', 'codes/iec-family/measured-loop', 'codes/iec-family/disconnection'],
  },
  {
    name: 'thermal-withstand',
    title: 'Thermal withstand and protective conductors',
    from: ['physics/adiabatic', 'codes/bs7671/earthing-conductor', 'codes/bs7671/withstand'],
  },
  { name: 'time-current', title: 'Time-current curves', from: ['physics/time-current'] },
  { name: 'earth-electrodes', title: 'Earth electrodes', from: ['physics/electrodes', 'guidance/bs7430'] },
  { name: 'open-pen', title: 'Open PEN conductor', from: ['physics/open-pen'] },
  {
    name: 'charging',
    title: 'Charge points: control and pilot',
    from: ['charging/', 'products/iec61851', 'products/iec62196', 'networks/gb-smart-charging'],
  },
  {
    name: 'mounting-heights',
    title: 'Mounting heights',
    from: [
      'demand/mounting',
      'guidance/approved-document-m',
      'guidance/fr-accessibility',
      'guidance/pas1899',
      'guidance/charging-code-of-practice',
    ],
  },
  { name: 'site', title: 'The site: quantities, hours, charging time', from: ['site/'] },
  {
    name: 'bs7671-earthing',
    title: 'BS 7671: earthing and charging equipment',
    from: ['codes/bs7671/earthing', 'codes/bs7671/rules/earthing', `${t}722`, `${t}54-8`],
  },
  { name: 'bs7671-residual-current', title: 'BS 7671: residual-current protection', from: ['codes/bs7671/residual'] },
  {
    name: 'bs7671-other',
    title: 'BS 7671: surges, arcs and other rules',
    from: ['codes/bs7671/rules', `${t}52-`, `${t}64`],
  },
  {
    name: 'bs7671-tables-disconnection',
    title: 'BS 7671 tables: disconnection',
    from: [`${t}41`, `${t}fuse`, `${t}rated`],
  },
  { name: 'bs7671-tables-adiabatic', title: 'BS 7671 tables: values of k', from: [`${t}43`, `${t}54-`] },
  { name: 'bs7671-tables-factors', title: 'BS 7671 tables: rating factors', from: [`${t}4b`, `${t}4c`, `${t}4f-`] },
  { name: 'bs7671-tables-4d', title: 'BS 7671 tables: 70 °C thermoplastic cables', from: [`${t}4d`] },
  { name: 'bs7671-tables-4e', title: 'BS 7671 tables: 90 °C thermosetting cables', from: [`${t}4e`] },
  { name: 'bs7671-tables-4f-4j', title: 'BS 7671 tables: flexible cables and aluminium', from: [`${t}4`] },
  { name: 'bs7671', title: 'BS 7671: more', from: ['codes/bs7671'] },
  {
    name: 'iec60364-tables-capacity',
    title: 'IEC 60364-5-52 tables: current-carrying capacity',
    from: [2, 3, 4, 5, 10, 11, 12, 13].map((n) => `codes/iec60364/tables/b52-${n}.`),
  },
  { name: 'iec60364', title: 'IEC 60364-5-52: factors and power laws', from: ['codes/iec60364'] },
  { name: 'iec-family', title: 'IEC 60364 and BS 7671: shared', from: ['codes/iec-family'] },
  { name: 'on-site-guide', title: 'On-Site Guide', from: ['guidance/on-site-guide'] },
  {
    name: 'conductors',
    title: 'Conductors and cables',
    from: [
      'products/iec60228',
      'products/iec60502',
      'products/iec60949',
      'products/bs5467',
      'products/bs6004',
      'products/vde0298',
    ],
  },
  { name: 'circuit-breakers', title: 'Circuit-breakers', from: ['products/en60898', 'products/bs3871'] },
  { name: 'fuses', title: 'Fuses', from: ['products/bs88', 'products/bs1361', 'products/bs1362'] },
  {
    name: 'residual-current-devices',
    title: 'Residual-current devices',
    from: ['products/en61008', 'products/iec62955'],
  },
  { name: 'assemblies', title: 'Assemblies', from: ['products/iec61439'] },
  { name: 'gb-network', title: 'Distribution networks in Great Britain', from: ['networks/gb-network'] },
  { name: 'de-network', title: 'Distribution networks in Germany', from: ['networks/de-network'] },
];

/**
 * The page of a module; a publication that has none yet gets one of its own.
 * @param module path from `src/`
 */
export function pageOf(module: string): PagePlan {
  const found = pagePlans.find((p) => p.from.some((from) => module.startsWith(from)));
  if (found) return found;
  const name = module.replace(/^(codes|products|networks|guidance)\//, '').split('/')[0] as string;
  return { name, title: name, from: [module] };
}
