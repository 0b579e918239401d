import { known, stated } from '../../core/index.js';
import type { Cable, Stretch } from '../../installation/index.js';
import { squareMillimetres } from '../../units/index.js';
import type { WantedPoint } from '../survey.js';
import { inGround } from '../trench.js';
import { type Change, laidAnew, PUT_THERE, type Situation, type SurveyRemedy, withEachWanted } from './remedy.js';
import { armoured, flatCable } from './route.js';

/** Sections with a cable of their own, or a joint, get the cable of the circuit: it is laid anew all the way. */
function oneCable({ survey }: Situation): readonly Change[] {
  const joined = (s: Stretch) => s.cable !== undefined || s.jointAccessible !== undefined || s.existing === true;
  // where the cable itself lies there already, it is another remedy that replaces it
  const kept = ({ cables }: WantedPoint) => cables.every(({ area }) => area.state === 'known');
  const changed = survey.wanted.filter((w) => w.run.stretches.some(joined) && !kept(w));
  if (changed.length === 0) return [];
  return [
    {
      survey: withEachWanted(survey, (w) =>
        changed.includes(w) ? { ...w, run: { ...w.run, stretches: w.run.stretches.map(laidAnew) } } : w,
      ),
      what: `one new cable all the way, without a joint: ${changed.map((w) => w.run.id).join(', ')}`,
    },
  ];
}

/** Sizes that are tried beyond a joint, mm², smallest first: those that are bought for charge points. Common practice, no source. */
const beyond = [4, 6, 10, 16] as const;

const isArmoured = ({ construction }: Cable): boolean => construction === 'armoured';

/** Another cable from a section onwards, by its size: what is changed of the wanted, and from which section on. */
function goingOn(
  { survey }: Situation,
  from: (w: WantedPoint) => number,
  before: (w: WantedPoint) => WantedPoint,
  words: string,
): readonly Change[] {
  const changed = survey.wanted.filter((w) => from(w) > 0);
  if (changed.length === 0) return [];
  const names = changed.map((w) => `${w.run.id} from ${w.run.stretches[from(w)]?.name}`);
  return beyond.map((size): Change => {
    const goesOn = (w: WantedPoint): WantedPoint => {
      const at = from(w);
      if (at <= 0) return w;
      const cable: Cable = { ...armoured(w.run.lines.length), area: known(squareMillimetres(size), PUT_THERE) };
      const stretches = w.run.stretches.map((s, i): Stretch => {
        if (i < at) return s;
        return { ...laidAnew(s), cable, ...stated({ jointAccessible: i === at ? known(true, PUT_THERE) : undefined }) };
      });
      const first = before(w);
      return { ...first, run: { ...first.run, stretches } };
    };
    return {
      survey: withEachWanted(survey, goesOn),
      what: `${words}joint box, and armoured cable of ${size} mm² onwards: ${names.join(', ')}`,
    };
  });
}

/** Where the route goes into the ground after a section that does not: armoured from there on, behind another that may be used. */
const armouredFromThere = (at: Situation): readonly Change[] =>
  goingOn(
    at,
    ({ cables, run: { stretches } }) =>
      cables.every(isArmoured) || stretches.some((s) => s.cable) ? -1 : stretches.findIndex(inGround),
    (w) => {
      const cables = w.cables.filter((c) => !isArmoured(c));
      return { ...w, cables, run: { ...w.run, cable: cables[0] as Cable } };
    },
    '',
  );

/** Where only armoured cable was thought of, and it is not made for the first sections: flat cable indoors, armoured onwards. */
function flatIndoors(at: Situation): readonly Change[] {
  const suits = ({ cables, run: { lines, stretches } }: WantedPoint) =>
    lines.length === 1 &&
    cables.every((c) => isArmoured(c) && c.area.state === 'unknown') &&
    !stretches.some((s) => s.cable ?? s.existing);
  const leaves = (w: WantedPoint) => w.run.stretches.findIndex((s) => inGround(s) || s.outdoors === true);
  const flat = (w: WantedPoint): WantedPoint => ({
    ...w,
    cables: [flatCable],
    run: { ...w.run, cable: flatCable },
  });
  const indoors = at.survey.wanted.filter((w) => suits(w) && leaves(w) < 0);
  if (indoors.length > 0)
    return [
      {
        survey: withEachWanted(at.survey, (w) => (indoors.includes(w) ? flat(w) : w)),
        what: `flat twin and earth in place of armoured cable: ${indoors.map((w) => w.run.id).join(', ')}`,
      },
    ];
  return goingOn(at, (w) => (suits(w) ? leaves(w) : -1), flat, 'flat twin and earth indoors, ');
}

/** Remedies at a change of cable along the route. */
export const jointRemedies: readonly SurveyRemedy[] = [
  {
    id: 'change-of-cable',
    title: 'Another cable from a joint onwards',
    checks: ['cable-for-the-ground', 'cable-for-the-route'],
    whenOpen: true,
    ways: armouredFromThere,
  },
  {
    id: 'flat-cable-indoors',
    title: 'Flat cable indoors',
    checks: ['cable-for-the-route'],
    whenOpen: true,
    ways: flatIndoors,
  },
  {
    id: 'one-cable',
    title: 'A new cable in place of one that is joined to what is there',
    checks: [
      'tabulated-capacity',
      'load-within-capacity',
      'voltage-drop',
      'automatic-disconnection',
      'conventional-overload',
      'terminal-temperature',
      'line-withstand',
      'protective-conductor',
      'minimum-size',
      'joint-accessible',
    ],
    ways: oneCable,
  },
];
