/** The words of the pictures. */
export const pictureWords = {
  demand: {
    axis: 'maximum demand per line, A',
    cut: 'dashed: without the load limiter',
    limit: (names: readonly string[], amps: string) => `${names.join(', ')} ${amps}`,
    bar: (name: string, amps: string, uncut: string | undefined) =>
      `${name} ${amps}${uncut === undefined ? '' : `, ${uncut} without the load limiter`}`,
    about: (bars: string, limits: string) => `Maximum demand by method: ${bars}; limits: ${limits}.`,
    governs: (name: string) => `${name} (governs)`,
  },
  night: {
    time: 'time of day',
    current: 'current, A',
    limit: 'limit',
    about: (from: string, to: string, most: string, limit: string, bands: string) =>
      `Load from ${from} to ${to}, highest ${most} against a limit of ${limit}; bands: ${bands}.`,
  },
  route: {
    deep: (depth: string) => `${depth} deep`,
    section: (name: string, length: string) => `${name}: ${length}`,
    method: (method: string) => `method ${method}`,
    outdoors: 'outdoors',
    ground: 'ground',
    about: (from: string, to: string, sections: string) => `Route from ${from} to ${to}: ${sections}.`,
  },
  drop: {
    distance: 'distance from the origin, m',
    drop: 'voltage drop, V',
    limit: (limit: string) => `limit ${limit}`,
    section: (name: string, end: string) => `${name}, to ${end}`,
    about: (drop: string, limit: string | undefined) =>
      `Voltage drop along the route: ${drop} at its end${limit === undefined ? '' : `, against a limit of ${limit}`}.`,
  },
  times: {
    current: 'current, A',
    time: 'time, s',
    mark: (name: string, amount: string) => `${name} ${amount}`,
    about: (devices: string, marks: string) => `Time-current curves of ${devices}; marked: ${marks}.`,
  },
  oneLine: {
    open: '?',
    between: (least: string, most: string) => `${least} to ${most}`,
    kindOpen: (rating: string) => `${rating}, kind ?`,
    names: {
      RCBO: 'RCBO',
      MCB: 'MCB',
      fuse: 'fuse',
      'rewirable fuse': 'rewirable fuse',
    } as Readonly<Record<string, string>>,
    curve: (curve: string) => curve,
    device: (name: string, rating: string, curve: string) => `${name} ${rating}, ${curve}`,
    cable: (cores: number, size: string) => `${cores} × ${size}`,
    cableOpen: 'cable ?',
    residual: (rating: string, type: string | undefined) => `RCD ${rating}${type ? ` type ${type}` : ''}`,
    point: (names: string) => `charge point ${names}`,
    run: (name: string, feeds: string) => `${name}: ${feeds}`,
    runs: (first: string, last: string, n: number) => `${n} × ${first} to ${last}`,
    details: (device: string, cable: string, ring: boolean) => `${ring ? 'ring, ' : ''}${device}, ${cable}`,
    supply: (system: string | undefined, lines: string, voltage: string) =>
      `supply ${system ?? 'system ?'}, ${lines}-phase, ${voltage}`,
    cutOut: (device: string) => `cut-out: ${device}`,
    mainSwitch: (rating: string | undefined) => (rating ? `main switch ${rating}` : 'main switch'),
    conductor: (size: string | undefined) => (size ? `earthing conductor ${size}` : 'earthing conductor'),
    toElectrode: (conductor: string) => `${conductor} to the electrode`,
    earthOpen: 'earth ?',
    terminal: 'main earthing terminal',
    at: (board: string, distance: string) => `${board}, at ${distance}`,
    bonded: (what: string) => `bonded: ${what}`,
    limiter: (limit: string | undefined) => (limit ? `load limiter ${limit}` : 'load limiter'),
    about: (system: string | undefined, board: string, runs: readonly string[]) =>
      `One-line diagram: supply ${system ?? 'of a system that is not known'}, ${board} with ${runs.length} outgoing ${runs.length === 1 ? 'circuit' : 'circuits'}: ${runs.join(', ')}.`,
  },
};
