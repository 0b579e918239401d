import { known, stated } from '../../core/index.js';
import type { Cable, Stretch } from '../../installation/index.js';
import { squareMillimetres } from '../../units/index.js';
import type { WantedPoint } from '../survey.js';
import { inGround } from '../trench.js';
import { type Change, PUT_THERE, type Situation, type SurveyRemedy, withEachWanted } from './remedy.js';
import { armoured } from './route.js';

/** Sections with a cable of their own, or a joint, get the cable of the circuit: it is laid anew all the way. */
function oneCable({ survey }: Situation): readonly Change[] {
  const joined = (s: Stretch) => s.cable !== undefined || s.jointAccessible !== undefined || s.existing === true;
  const anew = ({ cable: _cable, existing: _existing, jointAccessible: _joint, ...rest }: Stretch): Stretch => rest;
  const changed = survey.wanted.filter((w) => w.run.stretches.some(joined));
  if (changed.length === 0) return [];
  return [
    {
      survey: withEachWanted(survey, (w) => ({
        ...w,
        run: { ...w.run, stretches: w.run.stretches.map((s) => (joined(s) ? anew(s) : s)) },
      })),
      what: `one new cable all the way, without a joint: ${changed.map((w) => w.run.id).join(', ')}`,
    },
  ];
}

/** Sizes that are tried beyond a joint, mm², smallest first: those that are bought for charge points. Common practice, no source. */
const beyond = [4, 6, 10, 16] as const;

/** Where the route goes into the ground after a section that does not, and no cable that may be used is armoured. */
function armouredFromThere({ survey }: Situation): readonly Change[] {
  const from = ({ cables, run: { stretches } }: WantedPoint) =>
    cables.some((c) => c.construction === 'armoured') || stretches.some((s) => s.cable)
      ? -1
      : stretches.findIndex(inGround);
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
        return { ...s, cable, ...stated({ jointAccessible: i === at ? known(true, PUT_THERE) : undefined }) };
      });
      return { ...w, run: { ...w.run, stretches } };
    };
    return {
      survey: withEachWanted(survey, goesOn),
      what: `joint box, and armoured cable of ${size} mm² onwards: ${names.join(', ')}`,
    };
  });
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
