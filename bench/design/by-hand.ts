/**
 * A circuit judged by BS 7671:2018+A2:2022 in straight-line code, as somebody would write it who needs this answer and
 * no other: the anchor that `assess` is measured against. It knows single-phase TN installations whose facts are all
 * known, copper cable of two constructions in air, and circuit-breakers; feeders may stand ahead of the circuit.
 */
import type { Board, ChargePoint, Installation, Load, ResidualDevice } from '../../src/index.js';
import { atLeast, atMost, holds, notRequired, open, type Result, reaches, within } from './by-hand-checks.js';
import {
  at,
  type Circuit,
  type Conductors,
  cell,
  circuitOf,
  isLighting,
  isPoint,
  isSocket,
  known,
  loadOf,
  outletsBelow,
  step,
} from './by-hand-facts.js';
import {
  breaking,
  delayOf,
  disconnection,
  discrimination,
  lineWithstand,
  prospectiveAtOrigin,
  protectiveConductor,
} from './by-hand-faults.js';
import {
  ambientFactors,
  type BySize,
  besideInsulation,
  bondingAreas,
  capacities,
  containInsulation,
  dropRates,
  groupFactors,
  insulationFactors,
  type Steps,
  slowFuseCurrents,
  smoothWithstand,
} from './by-hand-tables.js';

/** What is read at the origin agrees with itself, and is customary. */
function originFacts({ supply }: Installation, results: Result[]): void {
  const [z, i, u] = [known(supply.externalImpedance), known(supply.prospectiveCurrent), supply.nominalVoltage];
  const pme = known(supply.system) === 'TN-C-S';
  const agree = i * z >= 0.8 * u && (!pme || i * z <= 2 * u);
  results.push(agree ? holds('origin-readings-agree', true) : open('origin-readings-agree'));
  const customary = z <= (pme ? 0.35 : 0.8);
  results.push(customary ? holds('external-impedance-customary', true) : open('external-impedance-customary'));
}

function coordination({ run, own, designCurrent, rating }: Circuit, results: Result[]) {
  results.push(atLeast('device-carries-load', rating, designCurrent));
  if (run.feeds.some((o) => o.kind !== 'board' && isPoint(o))) {
    const share = run.device.groupingFactor ? rating * known(run.device.groupingFactor) : Number.NaN;
    results.push(atLeast('grouped-device', share, designCurrent));
  }
  const { construction, insulation } = run.cable;
  if (construction !== 'flat-twin-and-earth' && construction !== 'armoured')
    throw new Error('by hand, two cables only');
  const columns: Readonly<Record<string, BySize>> = capacities[construction];
  const ambients = ambientFactors[insulation] as Steps;
  let capacityOfRoute = Number.POSITIVE_INFINITY;
  let hottest = Number.NEGATIVE_INFINITY;
  for (const section of run.stretches) {
    const method = known(section.method);
    const ambient = known(section.ambient);
    const tabulated = cell(columns[method], own.area);
    let factors = step(ambients, ambient);
    if (section.group) {
      const circuits = known(section.group.circuits);
      if (circuits > 1) factors *= step(groupFactors[section.group.arrangement] as Steps, circuits);
    }
    if (section.insulated) {
      const insulated = known(section.insulated);
      if (containInsulation.has(method)) results.push(holds('insulation-counted-once', true));
      else if (insulated > 0) {
        const surrounded = own.area > 10 ? Number.NaN : step(insulationFactors, Math.min(insulated, 0.5));
        // a method in a wall or a ceiling has part of it already
        factors *= besideInsulation.has(method)
          ? Math.min(1, (surrounded * cell(columns.C as BySize, own.area)) / tabulated)
          : surrounded;
      }
    }
    const capacity = tabulated * factors;
    results.push(
      atLeast('tabulated-capacity', tabulated, rating / factors),
      atMost('load-within-capacity', designCurrent, capacity),
      atMost('conventional-overload', 1.45 * rating, 1.45 * capacity),
    );
    capacityOfRoute = Math.min(capacityOfRoute, capacity);
    const temperature = ambient + (designCurrent / capacity) ** 2 * (own.operating - ambient);
    hottest = Math.max(hottest, temperature > 1200 ? Number.NaN : temperature); // no conductor is that hot
  }
  return { capacity: capacityOfRoute, hottest };
}

/** A run of the way as voltage drop sees it: one conductor there, one back. */
interface Piece {
  readonly r: number;
  readonly x: number;
  /** Current that leaves at its end, A, in phase with the voltage there. */
  readonly leaving: number;
}

/** Supply voltage that leaves a voltage at the end of the way: from the end back to the source. */
function supplyFor(atEnd: number, pieces: readonly Piece[]): number {
  let [re, im, flowRe, flowIm] = [atEnd, 0, 0, 0];
  for (let i = pieces.length - 1; i >= 0; i--) {
    const { r, x, leaving } = pieces[i] as Piece;
    const voltage = Math.sqrt(re * re + im * im);
    flowRe += (leaving * re) / voltage;
    flowIm += (leaving * im) / voltage;
    re += 2 * (r * flowRe - x * flowIm);
    im += 2 * (x * flowRe + r * flowIm);
  }
  return Math.sqrt(re * re + im * im);
}

/** Voltage at the end of the way for a supply voltage: currents are held, so that both move almost alike. */
function voltageAtEnd(supply: number, pieces: readonly Piece[]): number {
  let voltage = supply;
  for (let round = 0; round < 50 && voltage > 0; round++) {
    const missing = supply - supplyFor(voltage, pieces);
    voltage += missing;
    if (Math.abs(missing) <= 1e-13 * supply) return voltage;
  }
  return Number.NaN; // the load cannot be served
}

const hasWindow = (p: ChargePoint) => p.openPenDevice && known(p.openPenDevice) === 'open-pen-detection-window';

function voltageDrop(circuit: Circuit, hottest: number, results: Result[]) {
  const { runs, run, conductors, nominal } = circuit;
  const currents = runs.map((r) => (r === run ? circuit.designCurrent : Math.min(loadOf(r), known(r.device.rating))));
  let totalDrop = 0;
  const pieces = runs.map((r, i): Piece => {
    const { area, length, line, operating } = conductors[i] as Conductors;
    const current = currents[i] as number;
    totalDrop += (cell(dropRates[r.cable.construction as 'armoured'], area) / 1000) * current * length;
    const temperature = r === run && Number.isFinite(hottest) ? hottest : operating;
    return { r: at(temperature, line), x: 0.08e-3 * length, leaving: current - (currents[i + 1] ?? 0) };
  });
  results.push(atMost('voltage-drop', totalDrop / nominal, run.feeds.some(isLighting) ? 0.03 : 0.05));
  const voltageAtLowestSupply = voltageAtEnd(216.2, pieces);
  const voltageAtHighestSupply = voltageAtEnd(253, pieces);
  if (circuit.points.some(hasWindow))
    results.push(
      within('voltage-window', voltageAtLowestSupply, 207, 253, 'advice'),
      within('voltage-window', voltageAtHighestSupply, 207, 253, 'advice'),
    );
  return { totalDrop, voltageAtLowestSupply, voltageAtHighestSupply };
}

const isPrompt = (r: ResidualDevice) => r.delayTime === undefined && (!r.delay || known(r.delay) === 'general');

const seesSmooth = ({ type }: ResidualDevice, point?: ChargePoint): boolean =>
  known(type) === 'B' || (point !== undefined && known(type) !== 'AC' && known(point.directCurrentDetection));

const ofThirtyPrompt = (d: ResidualDevice) => isPrompt(d) && known(d.rating) <= 0.03;

/** Whether a device gives additional protection and suits in all else. */
const suits = (d: ResidualDevice, point?: ChargePoint): boolean =>
  ofThirtyPrompt(d) && seesSmooth(d, point) && known(d.opensAllLive);

/**
 * The device that protects, of a charge point or a cable: of the prompt ones of at most 30 mA that suit in all else, else of
 * the prompt ones, else of all, the most sensitive.
 */
function protecting(devices: readonly ResidualDevice[], point?: ChargePoint): ResidualDevice | undefined {
  const prompt = devices.filter(ofThirtyPrompt);
  const suited = prompt.filter((d) => suits(d, point));
  const of = suited.length > 0 ? suited : prompt.length > 0 ? prompt : devices;
  let best: ResidualDevice | undefined;
  for (const d of of) if (!best || known(d.rating) < known(best.rating)) best = d;
  return best;
}

/** Whether a device of at most 30 mA is among these. */
function ofThirty(check: string, device: ResidualDevice | undefined): Result {
  if (!device || (known(device.rating) <= 0.03 && !isPrompt(device))) return open(check);
  return atMost(check, known(device.rating), 0.03);
}

/** Whether somebody says that no device stands inside a point. */
const isWithout = ({ residual, noResidual }: ChargePoint): boolean =>
  !residual && noResidual !== undefined && known(noResidual);

function residualOfPoint(point: ChargePoint, { upstream }: Circuit, results: Result[]): void {
  const every = upstream.map((u) => u.device);
  if (point.residual) every.push(point.residual);
  const device = protecting(every, point);
  if (!device) {
    results.push(open('residual-current-rating'));
    return;
  }
  const ofOne = (d: ResidualDevice) => ofThirtyPrompt(d) && (d.pointsServed ?? 1) <= 1;
  const isOwn =
    (point.residual !== undefined && ofOne(point.residual)) || upstream.some((u) => u.alone && ofOne(u.device));
  // where none suits in all, one inside of which nobody says whether it is there may be the one that protects
  const insideOpen = !point.residual && !isWithout(point);
  const cannotSay = insideOpen && !every.some((d) => suits(d, point));
  const orOpen = (r: Result): Result => (cannotSay ? open(r.check) : r);
  results.push(
    ofThirty('residual-current-rating', device),
    orOpen(holds('residual-current-type', seesSmooth(device, point))),
    orOpen(holds('residual-current-poles', known(device.opensAllLive))),
    holds('residual-current-one-per-point', isOwn),
  );
}

const isAtOrigin = ({ position }: ResidualDevice) => position === 'origin-of-circuit';

const feedsBack = (o: Load | ChargePoint) =>
  isPoint(o) ? o.bidirectional === true : o.purpose === 'generation' || o.purpose === 'storage';

function residualCurrent(circuit: Circuit, results: Result[]): void {
  const { installation, run, board, feeders, points, upstream, rating } = circuit;
  const exempt = run.cable.construction === 'armoured';
  const shallow = !exempt && run.stretches.some((s) => known(s.concealedShallow));
  if (shallow)
    results.push(ofThirty('residual-current-concealed-cable', protecting(upstream.map(({ device }) => device))));
  for (const point of points) residualOfPoint(point, circuit, results);
  const place = 'residual-current-position';
  results.push(shallow ? holds(place, upstream.length > 0) : notRequired(place));
  for (const { device, points: through } of upstream) {
    const type = known(device.type);
    if (type === 'B' || through.length === 0) continue;
    let sum = 0;
    for (const p of through) sum += known(p.directCurrentDetection) ? 0.006 : Number.NaN;
    results.push(atMost('smooth-current-upstream', sum, smoothWithstand[type]));
  }
  const behind = [...upstream];
  for (const p of points) if (p.residual) behind.push({ device: p.residual, points: [p], alone: true });
  for (let i = 1; i < behind.length; i++) {
    const above = (behind[i - 1] as (typeof behind)[number]).device;
    const below = (behind[i] as (typeof behind)[number]).device;
    const selective = delayOf(above) === 'selective' && reaches(known(above.rating), 3 * known(below.rating));
    results.push(holds('residual-current-selectivity', selective, 'advice'));
  }
  const standing = 'standing-current';
  for (const { device, points: through } of upstream) {
    if (through.length === 0) continue;
    let sum = 0;
    for (const p of through) sum += known(p.standingLeakage);
    results.push(atMost(standing, sum, 0.3 * known(device.rating)));
  }
  for (const point of points) {
    const { residual, standingLeakage } = point;
    if (isWithout(point)) continue;
    // where nobody says whether one stands inside, it may be one of 10 mA
    const borne = atMost(standing, known(standingLeakage), 0.3 * (residual ? known(residual.rating) : 0.01));
    results.push(residual || borne.verdict === 'pass' ? borne : open(standing));
  }
  // the residual part of a circuit-breaker is protected by it
  const partOfBreaker = known(run.device.kind).standard === 'EN 61009' ? run.residual?.find(isAtOrigin) : undefined;
  for (const { device } of upstream)
    if (device !== partOfBreaker) {
      const carries = device.ratedCurrent ? known(device.ratedCurrent) : Number.NaN;
      results.push(atLeast('residual-current-device-overload', carries, rating));
    }
  const marked = 'residual-current-marked-both-ways';
  const bothWays = (device?: ResidualDevice) =>
    device?.bidirectional && known(device.bidirectional) ? holds(marked, true) : open(marked);
  if (points.some(feedsBack)) for (const { device } of upstream) results.push(bothWays(device));
  for (const point of points) if (feedsBack(point) && !isWithout(point)) results.push(bothWays(point.residual));
  const infeeds = board.runs.filter((r) => outletsBelow(r).some(feedsBack));
  if (infeeds.length > 0) {
    let infeed: number = known((feeders.at(-1)?.device ?? installation.supply.cutOut).rating);
    for (const r of infeeds) infeed += known(r.device.rating);
    results.push(atLeast('board-rating', known(board.rating), infeed));
  }
}

/** Gives the least area of a main bonding conductor, mm². */
function earthingAndBonding({ supply }: Installation, results: Result[]): number {
  const tails = known(supply.tails);
  const byTails = tails <= 16 ? tails : tails <= 35 ? 16 : tails / 2;
  const pme = known(supply.system) === 'TN-C-S';
  const bonding = pme ? step(bondingAreas, known(supply.supplyNeutral)) : Math.min(Math.max(byTails / 2, 6), 25);
  // by calculation too, where the least voltage melts the fuse of the cut-out within 5 s
  const melts = cell(slowFuseCurrents, known(supply.cutOut.rating));
  const clears = 0.95 * supply.nominalVoltage >= known(supply.externalImpedance) * melts;
  const byFault = clears ? Math.min(byTails, (Math.sqrt(5) * melts) / 143) : byTails;
  const least = Math.max(4, byFault, pme ? bonding : 0);
  results.push(atLeast('earthing-conductor', known(supply.earthingConductor), least));
  if (!supply.bonding) results.push(open('main-bonding-conductor'));
  else if (supply.bonding.length === 0) results.push(notRequired('main-bonding-conductor'));
  else for (const { area } of supply.bonding) results.push(atLeast('main-bonding-conductor', known(area), bonding));
  return bonding;
}

/** A board behind a feeder stands in another building, unless it is said not to. */
function outbuilding(least: number, { detached, extraneousParts, bonding }: Board): Result {
  const check = 'outbuilding-bonding';
  const isNo = (fact: typeof detached) => fact !== undefined && !known(fact);
  if (isNo(detached) || isNo(extraneousParts)) return notRequired(check);
  if (!detached || !extraneousParts || !bonding) return open(check);
  return atLeast(check, known(bonding), least);
}

const devices = ['open-pen-detection-touch-voltage', 'open-pen-detection-window', 'open-pen-detection-other'];

function earthingOfPoints({ installation, points }: Circuit, totalDrop: number, results: Result[]): void {
  const { supply } = installation;
  const check = 'charge-point-earthing';
  if (points.length === 0) results.push(notRequired(check));
  for (const point of points) {
    const fitted = point.openPenDevice ? known(point.openPenDevice) : 'none';
    const arrangement = point.earthing ?? (fitted === 'none' ? undefined : fitted);
    const windowed = arrangement === 'open-pen-detection-window';
    const barred = supply.specialLocation !== undefined && supply.specialLocation !== 'none';
    // without a word of the distributor a TN-S supply may be combined in the street: a measure against that does for both
    const separate = known(supply.system) === 'TN-S';
    if (!known(point.outdoors)) results.push(notRequired(check));
    else if (separate && (arrangement === undefined || barred)) results.push(open(check));
    else if (arrangement === undefined) results.push(holds(check, false));
    else if (!devices.includes(arrangement)) throw new Error('by hand, devices only');
    else if (barred) results.push(holds('combined-earth-allowed', false));
    else if (arrangement === 'open-pen-detection-other' && fitted === arrangement && !point.openPenEqualSafety)
      results.push(open(arrangement));
    else results.push(holds(arrangement, fitted === arrangement));
    if (windowed)
      results.push(atMost('line-neutral-window-margin', totalDrop, 0.94 * supply.nominalVoltage - 207, 'advice'));
  }
}

/** What is judged of a circuit, and the figures that are handed on. */
export interface Judged {
  readonly run: string;
  readonly verdict: 'pass' | 'fail' | 'not-determined';
  readonly results: readonly Result[];
  readonly figures: Readonly<Record<string, number>>;
}

/**
 * Judges a circuit by every group of checks, in the order of the library.
 * @param installation the installation
 * @param id name of the circuit
 */
export function judgeByHand(installation: Installation, id: string): Judged {
  const circuit = circuitOf(installation, id);
  const { run, boards, feeders, own } = circuit;
  const { cutOut } = installation.supply;
  const results: Result[] = [];

  originFacts(installation, results);
  const { capacity, hottest } = coordination(circuit, results);
  if (circuit.points.length > 0) results.push(holds('own-circuit', run.feeds.length === 1));
  const drop = voltageDrop(circuit, hottest, results);
  const loop = disconnection(circuit, results);
  residualCurrent(circuit, results);

  const prospective = prospectiveAtOrigin(circuit);
  const broken = breaking(circuit, prospective);
  lineWithstand(circuit, capacity, prospective, broken, results);
  protectiveConductor(circuit, loop.loopImpedance, prospective, results);
  results.push(broken, discrimination('discrimination-with-cut-out', cutOut, run, prospective));
  for (const f of feeders)
    results.push(discrimination('discrimination-with-feeder-device', f.device, run, prospective));

  const terminals = run.terminalTemperature ? known(run.terminalTemperature) : 70;
  results.push(atMost('terminal-temperature', hottest, terminals));
  results.push(atLeast('minimum-size', own.area, run.feeds.every(isLighting) ? 1 : 1.5));
  if (run.cable.construction === 'flat-twin-and-earth')
    for (const { outdoors, containment } of run.stretches)
      if (outdoors === true && !['conduit', 'trunking', 'duct', 'buried'].includes(containment ?? ''))
        results.push(holds('cable-for-the-sun', false, 'advice'));
  const leastBonding = earthingAndBonding(installation, results);
  for (const board of boards.slice(1)) results.push(outbuilding(leastBonding, board));
  earthingOfPoints(circuit, drop.totalDrop, results);
  const surge = boards.some((b) => b.surgeProtection && known(b.surgeProtection));
  results.push(surge ? holds('surge-protection', true) : open('surge-protection'));
  const arcs = run.feeds.some(isSocket);
  results.push(arcs ? open('arc-detection') : notRequired('arc-detection'));

  let verdict: Judged['verdict'] = 'pass';
  for (const r of results) {
    if (r.weight !== 'rule') continue;
    if (r.verdict === 'fail') verdict = 'fail';
    else if (r.verdict === 'not-determined' && verdict === 'pass') verdict = 'not-determined';
  }
  const figures = {
    designCurrent: circuit.designCurrent,
    capacity,
    hottest,
    totalDrop: drop.totalDrop,
    voltageAtLowestSupply: drop.voltageAtLowestSupply,
    voltageAtHighestSupply: drop.voltageAtHighestSupply,
    loopAtOrigin: loop.loopAtOrigin,
    loopImpedance: loop.loopImpedance,
    loopImpedanceLimit: loop.loopImpedanceLimit,
    lineAndProtectiveCold: own.line + own.protective,
    protectiveArea: own.protectiveArea,
    prospectiveAtOrigin: prospective,
  };
  return { run: run.id, verdict, results, figures };
}
