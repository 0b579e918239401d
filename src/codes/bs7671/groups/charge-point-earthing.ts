import {
  by,
  choose,
  derive,
  largest,
  none,
  orElse,
  same,
  set,
  smallest,
  weigh,
  when,
} from '../../../calculation/index.js';
import { type CheckResult, type Gap, isMissing, type Known, missing, overall, unknown } from '../../../core/index.js';
import { type ChargePointEarthing, outletsBelow } from '../../../installation/index.js';
import { earthingWords } from '../../../installation/marking.js';
import { arithmeticSum, openPenElectrodeLimit, vectorSum, windowMarginOf } from '../../../physics/definitions.js';
import { openPenFloating } from '../../../physics/index.js';
import { amperes, ohms, ratio } from '../../../units/index.js';
import { declaredStates, type LoadStatePlace, ofCircuit, ofLoadState, ofPoint } from '../../iec-family/places.js';
import type { LoadState } from '../../wiring-code.js';
import { lowestSupplyVoltage } from '../earthing-checks.js';
import { publishedElectrodeLimit } from '../open-pen.js';
import { openPenLimits } from '../tables/722-touch-voltage.js';
import { lineNeutralWindow } from '../tables/722-window.js';

const barredPlaces = {
  'caravan-park': 'a caravan park',
  marina: 'a marina',
  'construction-site': 'a construction site',
  'filling-station': 'a filling station',
} as const;
type Place = keyof typeof barredPlaces | 'farm' | 'swimming-pool' | 'other' | 'none';

const nothing = [0, 0, 0] as unknown as LoadState['currents'];
const lineNames = ['L1', 'L2', 'L3'] as const;

/** Whether an arrangement is not ruled out. */
const remains = (offers: Readonly<Record<string, readonly CheckResult[]>>, arrangement: string): boolean =>
  overall(offers[arrangement] ?? []).verdict !== 'fail';

const remainingWords = (arrangements: readonly string[]): string =>
  arrangements.map((a) => earthingWords[a as ChargePointEarthing]).join(', ');

/** Whether the point draws its current from a line in a state of load. */
const pointOn = ({ point, vehicle }: LoadStatePlace, k: 0 | 1 | 2): boolean =>
  (vehicle ?? point.lines).includes(lineNames[k]);

/**
 * Current of a line: as declared, without the point where its vehicle leaves the line alone; of the point alone its setting
 * on the lines that the vehicle is on, a single phase being one.
 */
const lineCurrent = (k: 0 | 1 | 2) =>
  choose(
    ofLoadState((state): 'declared' | 'declared, less the point' | 'alone' => {
      if (!state.declared) return 'alone';
      return state.point.lines.includes(lineNames[k]) && !pointOn(state, k) ? 'declared, less the point' : 'declared';
    }),
    {
      declared: ofLoadState(({ declared }) => amperes(declared?.currents[k] ?? 0), { by: 'declared state of load' }),
      'declared, less the point': derive(
        ['stateCurrents', 'chargeCurrent'],
        ({ stateCurrents, chargeCurrent }) => amperes(Math.max(0, stateCurrents[k] - chargeCurrent)),
        { direction: { chargeCurrent: -1 }, by: 'declared state of load, the vehicle not on this line' },
      ),
      alone: choose('loadPhases', {
        1: k === 0 ? same('chargeCurrent') : set(amperes(0)),
        3: when(
          ofLoadState((state) => pointOn(state, k)),
          same('chargeCurrent'),
          set(amperes(0)),
        ),
      }),
    },
  );

const placeNotStated = /* @__PURE__ */ unknown(
  'say whether it is a caravan park, a marina, a construction site, a filling station, a farm, a swimming pool, or none of them',
);
/** Places with rules of their own that are not entered: what has to be designed, and by what. */
const ownRules: Partial<Record<Place, readonly [place: string, obtain: string]>> = {
  'filling-station': [
    'a filling station',
    'a specialist in filling stations: hazard zones, earths that are joined, the emergency switch',
  ],
  farm: [
    'a farm',
    'Section 705: bonding of all metal that animals can touch, devices of at most 300 mA for every circuit, the earth of a PME supply only over a bonded grid in the floor',
  ],
  'swimming-pool': [
    'a swimming pool',
    'Section 702: zones, bonding of all metal within them, the earth of a PME supply there only with a specialist',
  ],
  other: ['the place', 'the section of Part 7, or the guidance, that is for it'],
};
/** What is open in such a place; undefined in any other. */
function designOf(place: Place): Gap | undefined {
  const [where, obtain] = ownRules[place] ?? [];
  return obtain === undefined
    ? undefined
    : {
        kind: 'fact',
        fact: `design of the charge point for ${where}`,
        obtain: `${obtain}; no rule for it is entered here`,
      };
}

const separateAsked: Gap = {
  kind: 'fact',
  fact: 'whether the supply is TN-S as far as the transformer',
  obtain:
    'ask the distributor; cables in the street are repaired with combined conductors: until it is confirmed the supply is treated as PME (common practice, code of practice for charging equipment), so a charge point with open-PEN detection settles it as well',
};
const arrangementBy = [
  'outdoors',
  'system',
  'statedEarthing',
  'separateEarth',
  'earthingChosen',
  'specialLocation',
] as const;
/** Whether a measure against an open PEN is there that a PME supply of this place allows; the place is asked for by the measure. */
const measures = (of: { readonly earthingChosen: unknown; readonly specialLocation: unknown }): boolean =>
  of.earthingChosen !== 'none' &&
  of.earthingChosen !== 'supply-earth' &&
  (isMissing(of.specialLocation) || of.specialLocation === 'none');

/** Whether the clause asks for an arrangement. */
const needed = () => weigh(['arrangementNeeded'], ({ arrangementNeeded }) => arrangementNeeded === true);

/** What the earthing of charge points outdoors on a PME supply is judged by. BS 7671 722.411.4.1, Annex A722. */
export const chargePointEarthing = () => ({
  circuit: {
    feedsChargePoint: ofCircuit((circuit) => circuit.feedsChargePoint),
    supplyPhases: ofCircuit((circuit) => circuit.installation.supply.phases, { called: 'phases of the supply' }),
    // on an unknown number of phases the single phase is the harder case
    loadPhases: orElse('supplyPhases', set(1)),
    otherLoads: ofCircuit(({ installation: { board } }): Known<boolean> => {
      if (outletsBelow(board).some((o) => o.kind === 'load' && o.purpose !== 'generation')) return true;
      if (board.complete?.state === 'known' && board.complete.value) return false;
      return missing({ kind: 'fact', fact: `circuits of ${board.id}`, obtain: 'list every circuit that leaves it' });
    }),
    specialLocation: ofCircuit(({ installation: { supply } }) => supply.specialLocation ?? placeNotStated, {
      called: 'place of the installation',
    }),
    separateEarth: ofCircuit(({ installation: { supply } }): Known<boolean | 'own transformer' | 'not said'> => {
      if (supply.transformer?.owner === 'customer') return 'own transformer';
      const said = supply.separateEarthConfirmed;
      return said?.state === 'known' ? said.value : 'not said';
    }),
    combinedEarthAllowed: derive(['specialLocation'], ({ specialLocation: place }): Known<boolean> => {
      if (place === 'none' || place in barredPlaces) return place === 'none';
      const open = designOf(place);
      return open ? missing(open) : false;
    }),
    combinedEarthBarred: derive(
      ['specialLocation'],
      ({ specialLocation }) =>
        `the earth of a PME supply is barred in ${(barredPlaces as Partial<Record<Place, string>>)[specialLocation]}, whatever device is added`,
    ),
    placeCovered: derive(['specialLocation'], ({ specialLocation }): Known<true> => {
      const open = designOf(specialLocation);
      return open ? missing(open) : true;
    }),
    electrodeResistance: ofCircuit(
      (circuit) =>
        circuit.installation.supply.electrode?.resistance ??
        missing({
          kind: 'fact',
          fact: 'electrode of the installation',
          obtain: 'measure it, disconnected from every other earth',
        }),
    ),
    sourceFactor: set(ratio(1.1), 'Annex A722, C_max: every figure stands for 1.1 U_0'),
    minimumSupplyVoltage: by(lowestSupplyVoltage),
    windowLower: by(lineNeutralWindow, '722.411.4.1 (iv)', { end: set('lower') }),
    windowMargin: by(windowMarginOf),
  },
  points: {
    outdoors: ofPoint(({ point }) => point.outdoors, { called: 'whether a vehicle can be charged outdoors' }),
    arrangementNeeded: weigh(arrangementBy, (of): Known<true | string> => {
      const { outdoors, system, statedEarthing, specialLocation } = of;
      // an earth of its own beside that of the supply is judged wherever it is stated
      const own = statedEarthing === 'tt-earthing' || statedEarthing === 'electrical-separation';
      if (own && system !== 'TT') return true;
      // 704.411.3.1 bars the earth of a PME supply for the whole of a construction site
      const inside = outdoors === false && specialLocation !== 'construction-site';
      if (inside && !isMissing(specialLocation)) return 'No vehicle can be charged outdoors.';
      switch (system) {
        case 'TT':
          return 'The supply is TT: there is no PEN conductor to break.';
        case 'TN-S':
          if (of.separateEarth === 'own transformer')
            return 'The supply is TN-S from a transformer of its own: there is no PEN conductor to break.';
          if (of.separateEarth === true)
            return 'The supply is TN-S, as the distributor confirms: there is no PEN conductor to break.';
          if (inside && isMissing(specialLocation)) return specialLocation;
          // in the street it is repaired with combined cable: a measure that a PME supply asks for does on either
          return of.separateEarth === false || measures(of) ? true : missing(separateAsked);
        case 'IT':
          return missing({
            kind: 'fact',
            fact: 'earthing arrangement on an IT supply',
            obtain: 'the clause speaks of PME only; have it designed',
          });
        default:
          // a supply that is not known is taken for PME
          return inside && isMissing(specialLocation) ? specialLocation : true;
      }
    }),
    chargeCurrent: ofPoint(({ point }) => point.setting, { called: 'setting of the charge point' }),
    pointLines: ofPoint(({ point }) => point.lines),

    // (i), (ii): exposed metal with the PEN conductor open, state of load by state of load
    declaredCurrents: ofPoint((place) => declaredStates(place).map(({ currents }) => currents)),
    touchVoltage: largest('loadStates/touchVoltage'),
    touchVoltageLimit: by(openPenLimits, '722.411.4.1 (ii)', { earthing: set('low-electrode') }),
    electrodeNeeded: derive(
      ['touchVoltage', 'touchVoltageLimit'],
      ({ touchVoltage, touchVoltageLimit }): true | string =>
        touchVoltage > touchVoltageLimit ||
        'No state of load raises exposed metal above the limit without an electrode.',
      { direction: { touchVoltage: 1 } },
    ),
    electrodeLimit: smallest('loadStates/electrodeLimit'),
    // a setting that is not known is counted in no state
    pointDeclared: orElse(
      derive(
        ['chargeCurrent', 'loadPhases', 'pointLines', 'declaredCurrents'],
        ({ chargeCurrent, loadPhases, pointLines, declaredCurrents }) => {
          const lines = loadPhases === 1 ? (['L1'] as const) : pointLines;
          return declaredCurrents.some((i) =>
            lines.every((line) => (i[Number(line[1]) - 1] as number) >= chargeCurrent),
          );
        },
        { direction: { chargeCurrent: -1 } },
      ),
      set(false),
    ),
    loadStatesLack: derive(
      ['touchVoltage', 'pointDeclared', 'declaredCurrents'],
      ({ pointDeclared, declaredCurrents }) =>
        pointDeclared ? 'nothing' : declaredCurrents.length === 0 ? 'states' : 'point',
      { direction: { touchVoltage: 1 } },
    ),

    // (iii) to (v): the device of the point
    openPenDevice: ofPoint(({ point }) => point.openPenDevice ?? unknown('the charge point’s instructions'), {
      called: 'open-PEN detection of the charge point',
    }),
    openPenEqualSafety: ofPoint(
      ({ point }) =>
        point.openPenEqualSafety ?? unknown('the declaration of its maker: safety equal, no closing on the fault'),
      { called: 'open-PEN detection of equal safety' },
    ),

    // an electrode of its own, or an isolating transformer
    pointElectrodeResistance: ofPoint(
      ({ point }) => point.electrode?.resistance ?? unknown('measure it, disconnected from every other earth'),
      { called: 'electrode of the charge point' },
    ),
    earthSeparation: ofPoint(({ point }) => point.electrode?.separation ?? unknown('measure it on site'), {
      called: 'distance to metal on the earth of the supply',
    }),
    feedSeparated: ofPoint(({ point }) => point.feedSeparated ?? unknown('how armour and cpc end at the point'), {
      called: 'separation of the feed',
    }),
    vehiclesSeparated: ofPoint(({ point }) => point.vehiclesSeparated ?? unknown('one transformer a vehicle'), {
      called: 'vehicles on the isolating transformer',
    }),

    // of all of them the one that is chosen
    statedEarthing: ofPoint(({ point }) => point.earthing ?? 'none'),
    earthingChosen: weigh(['statedEarthing', 'openPenDevice'], ({ statedEarthing: stated, openPenDevice: built }) =>
      stated !== 'none' ? stated : isMissing(built) ? 'none' : built,
    ),
    earthingRemaining: derive(['earthingOffers'], ({ earthingOffers }) =>
      Object.keys(earthingOffers).filter((a) => remains(earthingOffers, a)),
    ),
    earthingJudged: when(
      needed(),
      // where the chosen one remains, the others need not be judged
      derive(['earthingChosen', 'earthingOffers'], ({ earthingChosen, earthingOffers }) =>
        earthingChosen in earthingOffers &&
        [earthingChosen, ...Object.keys(earthingOffers)].some((a) => remains(earthingOffers, a))
          ? earthingChosen
          : 'none',
      ),
      set('none'),
    ),
    notEarthed: derive(
      ['earthingChosen', 'earthingOffers', 'earthingRemaining'],
      ({ earthingChosen, earthingOffers, earthingRemaining }) => {
        const remaining = remainingWords(earthingRemaining) || 'none';
        if (earthingChosen === 'supply-earth')
          return `the earth of the supply alone is not permitted; remaining: ${remaining}`;
        if (earthingChosen === 'none' && earthingRemaining.length > 0)
          return `the charge point has no open-PEN detection, and nothing in its place is planned; remaining: ${remaining}`;
        return earthingChosen === 'none' || earthingChosen in earthingOffers
          ? 'no arrangement remains'
          : `${earthingWords[earthingChosen]}: no arrangement of this edition; remaining: ${remaining}`;
      },
    ),
    arrangementChosen: when(
      needed(),
      weigh(
        ['earthingChosen', 'openPenDevice', 'earthingRemaining'],
        ({ earthingChosen, openPenDevice, earthingRemaining }): Known<true | string> =>
          // one that is known to have none, with nothing in its place, is without a measure
          isMissing(earthingRemaining)
            ? earthingRemaining
            : earthingChosen === 'none' && isMissing(openPenDevice) && earthingRemaining.length > 0
              ? missing({
                  kind: 'fact',
                  fact: 'earthing arrangement of the charge point',
                  obtain: `choose one; remaining: ${remainingWords(earthingRemaining)}`,
                })
              : true,
      ),
      same('arrangementNeeded'),
    ),
  },
  loadStates: {
    stateCurrents: ofLoadState(({ declared }) => declared?.currents ?? nothing),
    lineCurrent1: lineCurrent(0),
    lineCurrent2: lineCurrent(1),
    lineCurrent3: lineCurrent(2),
    arithmeticSumCurrent: by(arithmeticSum),
    vectorSumCurrent: choose('loadPhases', { 1: same('arithmeticSumCurrent'), 3: by(vectorSum, 'Annex A722') }),
    touchVoltage: by(openPenFloating),
    stateNeedsElectrode: derive(
      ['touchVoltage', 'touchVoltageLimit'],
      ({ touchVoltage, touchVoltageLimit }) => touchVoltage > touchVoltageLimit,
      { direction: { touchVoltage: 1 } },
    ),
    electrodeLimit: when(
      'stateNeedsElectrode',
      choose('loadPhases', {
        1: by(publishedElectrodeLimit, 'Annex A722', { installationCurrent: 'arithmeticSumCurrent' }),
        3: by(openPenElectrodeLimit, '722.411.4.1 (ii)', {
          sourceElectrodeResistance: set(
            ohms(0),
            'own load only: electrodes and load of others never improve the verdict, a break further upstream adds the current of the neighbours',
          ),
        }),
      }),
      none('exposed metal stays within the limit without an electrode'),
    ),
  },
});
