import { bs7671 } from '../../src/codes/bs7671/index.js';
import {
  amperes,
  type Cable,
  type ChargePoint,
  celsius,
  known,
  type Run,
  ratio,
  type Stretch,
  type Supply,
  seconds,
  squareMillimetres,
} from '../../src/index.js';
import { assessed, type Case, type Chapter, type Hazard } from './hazard.js';
import { breaker, inside, lightCircuit, rcd, showerCircuit, tt } from './residual-circuits.js';
import { premises, soundCircuit, soundHouse, soundPoint, soundStretch } from './sound.js';

const code = bs7671('2018+A2:2022');
const seen = 'seen at the survey';
const options = { ...premises, makersLetThrough: 5000 };

/** Something without one of its fields: nobody wrote it down. */
function silentOn<T extends object>(from: T, ...keys: readonly (keyof T)[]): T {
  const left = { ...from };
  for (const key of keys) delete left[key];
  return left;
}
/** What the first of these circuits is told. */
const told = (what: string, run: Run, supply: Partial<Supply> = {}): Case => ({
  what,
  told: () => assessed(code, soundHouse([run], supply), run.id, options),
});
const along = (stretch: Stretch, change: Partial<Run> = {}): Run => soundCircuit({ stretches: [stretch], ...change });
const { device } = soundCircuit();

const area = (mm2: number) => known(squareMillimetres(mm2), seen);
/** A flexible cable of three cores for 90 °C. */
const flexible: Cable = {
  construction: 'flexible',
  material: 'copper',
  insulation: 'thermosetting-90',
  cores: 3,
  area: area(10),
  protective: 'core',
};
const inAir: Partial<Stretch> = { containment: 'free', ambient: known(celsius(30), seen) };
/** Five cores for three phases and neutral. */
const fiveCores: Cable = {
  construction: 'multicore',
  material: 'copper',
  insulation: 'thermoplastic-70',
  cores: 5,
  area: area(10),
  protective: 'core',
};
const threePhase = (cable: Cable, change: Partial<Run> = {}): Run =>
  soundCircuit({
    lines: ['L1', 'L2', 'L3'],
    cable,
    feeds: [soundPoint({ lines: ['L1', 'L2', 'L3'] })],
    ...change,
  });
const threePhases: Partial<Supply> = { phases: known(3, seen) };
const bunched = (change: Partial<NonNullable<Stretch['group']>> = {}): Stretch =>
  soundStretch({ group: { arrangement: 'bunched', circuits: known(2, seen), unequal: known(false, seen), ...change } });
const tenSquare: Cable = { ...soundCircuit().cable, area: area(10) };

/** Three circuits of multicore cable on trays. */
const onTrays = (tray?: NonNullable<Stretch['group']>['tray']): Run =>
  threePhase(
    { ...fiveCores, loadedCores: known(4, seen) },
    {
      stretches: [
        soundStretch({
          method: known('E', seen),
          containment: 'tray',
          group: {
            arrangement: 'single-layer-tray',
            circuits: known(3, seen),
            unequal: known(false, seen),
            ...(tray ? { tray } : {}),
          },
        }),
      ],
    },
  );

const heat: Pick<Hazard, 'harm' | 'clause'> = {
  harm: 'The cable is hotter than its insulation bears, for the ten hours of every night. It ages, and the first to notice is the smoke.',
  clause: 'BS 7671:2018+A2:2022, 523.1, Appendix 4, from memory',
};
const unsaid = 'That what nobody wrote down is not there.';

export const chapter: Chapter = {
  title: 'What nobody wrote down',
  introduction:
    'A form that is left empty says nothing. Whoever found that there is no other circuit, no insulation and no delay writes that down: a nought is a finding, and a gap is none.',
  hazards: [
    {
      id: 'neighbours-not-counted',
      title: 'Nobody counted the cables beside it',
      ...heat,
      mustNotSay: unsaid,
      check: 'tabulated-capacity',
      unsafe: told(
        '6 mm² clipped direct behind 32 A, nothing said of other circuits.',
        along(silentOn(soundStretch(), 'group')),
      ),
      sound: told('The same, seen to run alone.', along(soundStretch())),
    },
    {
      id: 'insulation-not-looked-for',
      title: 'Clipped to a joist, and nobody looked for loft insulation',
      harm: 'Half a metre under mineral wool halves what a cable may carry. The charge of a night is enough to char it.',
      clause: 'BS 7671:2018+A2:2022, 523.9, Table 52.2, from memory',
      mustNotSay: 'That no insulation lies on it.',
      check: 'tabulated-capacity',
      unsafe: told('Method C, nothing said of insulation.', along(silentOn(soundStretch(), 'insulated'))),
      sound: told('Method C, 0 m of it in insulation.', along(soundStretch())),
    },
    {
      id: 'cable-left-on-its-drum',
      title: 'A flexible cable, perhaps still on its drum',
      harm: 'Four layers on a drum carry a third of what the cable carries stretched out. The inner turns melt together.',
      clause: 'BS 7671:2018+A2:2022, Tables 4F, notes; one source',
      mustNotSay: 'That it is stretched out.',
      check: 'tabulated-capacity',
      unsafe: told('10 mm² flexible cable, nothing said of a drum.', along(soundStretch(inAir), { cable: flexible })),
      sound: told('The same without a drum.', along(soundStretch({ ...inAir, drum: 'none' }), { cable: flexible })),
    },
    {
      id: 'small-among-large',
      title: 'A small cable in a bunch, of which nobody compared the sizes',
      ...heat,
      clause: 'IEC 60364-5-52 B.52.5: 1/√n for circuits of very unequal size',
      mustNotSay: 'That the factor for equal circuits holds.',
      check: 'tabulated-capacity',
      unsafe: told('Two circuits bunched, nothing said of their sizes.', along(silentOnSizes(), { cable: tenSquare })),
      sound: told('The same, of about one size.', along(bunched(), { cable: tenSquare })),
    },
    {
      id: 'trays-that-nobody-described',
      title: 'A cable on a tray, and perhaps others above it',
      ...heat,
      clause:
        'BS 7671:2018+A2:2022, Appendix 4, Tables 4C1 (one tray) and 4C4 (trays one above the other), from memory',
      mustNotSay: 'That there is one tray.',
      check: 'tabulated-capacity',
      unsafe: told('Three circuits on trays, of which nothing is said.', onTrays(), threePhases),
      sound: told(
        'The same on one perforated tray.',
        onTrays({ support: 'perforated tray', trays: 1, spaced: false }),
        threePhases,
      ),
    },
    {
      id: 'cores-of-others-in-the-cable',
      title: 'A cable of five cores or more, shared with others',
      ...heat,
      mustNotSay: 'That no other circuit uses its cores.',
      check: 'tabulated-capacity',
      unsafe: told(
        'Multicore of five cores or more, nothing said of those that carry load.',
        threePhase(fiveCores),
        threePhases,
      ),
      sound: told(
        'The same with four that do.',
        threePhase({ ...fiveCores, loadedCores: known(4, seen) }),
        threePhases,
      ),
    },
    {
      id: 'harmonics-not-asked-for',
      title: 'A three-phase point of which nobody asked what its neutral carries',
      harm: 'Third harmonics of three phases add up in the neutral, which no device protects: it is the hottest of the cores.',
      clause: 'BS 7671:2018+A2:2022, 523.6.3, Appendix 4, 5.5; IEC 60364-5-52 Annex E',
      mustNotSay: 'That the neutral carries little.',
      check: 'load-within-capacity',
      unsafe: told(
        'Three phases and neutral, third harmonics not stated.',
        silentOn(threePhase({ ...fiveCores, loadedCores: known(4, seen) }), 'thirdHarmonic'),
        threePhases,
      ),
      sound: told(
        'The same with none, by the data sheet.',
        threePhase({ ...fiveCores, loadedCores: known(4, seen) }, { thirdHarmonic: known(ratio(0), 'data sheet') }),
        threePhases,
      ),
    },
    {
      id: 'breakers-side-by-side',
      title: 'Eight RCBOs side by side, all of them charging',
      harm: 'Each warms the next. They open at three in the morning, or their terminals burn because somebody fits the next larger.',
      clause: "Maker's data, factor for devices side by side",
      mustNotSay: 'That a 32 A device carries 32 A all night beside others.',
      check: 'grouped-device',
      unsafe: told(
        '32 A behind 32 A, nothing said of its neighbours.',
        soundCircuit({ device: silentOn(device, 'groupingFactor') }),
      ),
      sound: told(
        'The same beside a blank, which its maker lets carry 32 A.',
        soundCircuit({ device: { ...device, groupingFactor: known(1, 'instructions of the maker') } }),
      ),
    },
    {
      id: 'earthing-conductor-out-of-sight',
      title: 'An earthing conductor that goes into the floor',
      harm: 'Bare copper in wet screed is gone after ten years, and every metal case of the house with it.',
      clause: 'BS 7671:2018+A2:2022, 542.3.1, Table 54.1, from memory',
      mustNotSay: 'That 16 mm² suffices wherever it lies.',
      check: 'earthing-conductor',
      unsafe: told('16 mm², nothing said of how it is laid.', soundCircuit(), {
        earthingConductorLaid: undefined as never,
      }),
      sound: told('16 mm² in sight.', soundCircuit(), { earthingConductorLaid: known('above-ground', seen) }),
    },
    {
      id: 'delay-not-read',
      title: 'A residual current device of 100 mA with a dial that nobody read',
      harm: 'Set to one second, it leaves the case of a faulty washing machine live for a second. The heart does not wait.',
      clause: 'BS 7671:2018+A2:2022, 411.3.2.4: 0.2 s on TT',
      mustNotSay: 'That it opens in 0.15 s.',
      unsafe: told('TT, 100 mA in addition to 30 mA, neither marking nor dial read.', onTt({}), tt),
      sound: told(
        'The same, general, without a dial.',
        onTt({ delay: known('general', seen), delayTime: known(seconds(0), seen) }),
        tt,
      ),
    },
    {
      id: 'rated-current-not-read',
      title: 'A residual current device for half of a board, of which nobody read the rated current',
      harm: 'Its contacts carry 100 A and are made for 40 A. They weld, and it does not open when it has to.',
      clause: 'BS 7671:2018+A2:2022, 536.4, one source',
      mustNotSay: 'That it carries whatever the fuse ahead lets through.',
      check: 'residual-current-device-overload',
      unsafe: onBoard('On the board, its rated current not read.', true),
      sound: onBoard('The same, marked 100 A.', false),
    },
    {
      id: 'one-device-inside-for-two-sockets',
      title: 'A point with two sockets and one device inside, perhaps',
      harm: 'The leakage of two cars adds up in one device: it trips the one that is fine, until somebody bridges it.',
      clause: 'BS 7671:2018+A2:2022, 722.531.3.1, two sources',
      mustNotSay: 'That the device inside serves one socket.',
      check: 'residual-current-one-per-point',
      unsafe: told('30 mA inside the point, nothing said of what it serves.', ownInside({})),
      sound: told('The same, which serves one.', ownInside({ pointsServed: 1 })),
    },
    {
      id: 'direct-current-of-lamps',
      title: 'Lamps of which nobody read the instructions',
      harm: 'Smooth direct current blinds the device ahead. It sits there with its test button and sees no fault any more.',
      clause: 'BS 7671:2018+A2:2022, 531.3.3, two sources',
      mustNotSay: 'That type A suits whatever hangs there.',
      check: 'residual-current-type',
      unsafe: told('Lamps behind type A, nothing said by their maker.', silentLamps()),
      sound: told('Lamps whose instructions ask for type A.', lightCircuit()),
    },
    {
      id: 'electronic-shower-behind-type-ac',
      title: 'A shower behind type AC, and its instructions lost',
      harm: 'Electronic showers have rectifiers. Type AC does not see what leaks from them, in the wettest place of the house.',
      clause: 'BS 7671:2018+A2:2022, 531.3.3, two sources',
      mustNotSay: 'That a shower is a plain heater.',
      check: 'residual-current-type',
      unsafe: told('Shower behind type AC, nothing said by its maker.', silentShower()),
      sound: told('Shower behind type A, whose maker asks for no more.', showerCircuit()),
    },
    {
      id: 'car-that-feeds-the-house',
      title: 'A point that may feed back, behind a device for one direction',
      harm: 'Fed from the wrong side, the electronics of an RCBO burn, and it does not open again: not for a fault either.',
      clause: 'BS 7671:2018+A2:2022, 551.7.1, from memory',
      mustNotSay: 'That current flows one way only.',
      check: 'residual-current-marked-both-ways',
      unsafe: told(
        'Nothing said of feeding back, nothing of the directions of the RCBO.',
        soundCircuit({}, backwards()),
      ),
      sound: told('A point that cannot feed back.', soundCircuit({}, { bidirectional: false })),
    },
    {
      id: 'buried-by-containment-alone',
      title: 'Flat cable said to be buried, with the method of a clipped one',
      harm: 'Whoever digs there next spring drives a spade into live copper.',
      clause: 'BS 7671:2018+A2:2022, 522.8.10, two sources',
      mustNotSay: 'That it is clipped to a wall, or that it lies in the ground.',
      check: 'cable-for-the-ground',
      unsafe: told('Flat cable, method C, containment: buried.', along(soundStretch({ containment: 'buried' }))),
      sound: told('Flat cable, method C, clipped.', along(soundStretch())),
    },
  ],
};

function silentOnSizes(): Stretch {
  const { group, ...rest } = bunched();
  return group ? { ...rest, group: silentOn(group, 'unequal') } : rest;
}
function onTt(change: Parameters<typeof rcd>[1]): Run {
  return soundCircuit({
    residual: [rcd(100, change)],
    feeds: [soundPoint({ residual: inside(30) })],
  });
}
function ownInside(change: Parameters<typeof rcd>[1]): Run {
  const residual = silentOn(inside(30), 'pointsServed');
  return soundCircuit({
    device: { ...device, kind: known({ standard: 'EN 60898', type: 'B' }, seen), rating: known(amperes(32), seen) },
    residual: [],
    feeds: [soundPoint({ residual: { ...residual, ...change } })],
  });
}
function onBoard(what: string, silent: boolean): Case {
  const device = rcd(30, { position: 'origin-of-installation' });
  const residual = [silent ? silentOn(device, 'ratedCurrent') : device];
  const run = soundCircuit({ device: breaker(32), residual: [] });
  return { what, told: () => assessed(code, soundHouse([run], {}, { residual }), run.id, options) };
}
function silentLamps(): Run {
  const run = lightCircuit();
  return { ...run, feeds: run.feeds.map((o) => silentOn(o, 'residualType' as never)) };
}
function silentShower(): Run {
  const run = showerCircuit({ residual: [rcd(30, { type: known('AC', seen) })] });
  return { ...run, feeds: run.feeds.map((o) => silentOn(o, 'residualType' as never)) };
}
function backwards(): Partial<ChargePoint> {
  return { bidirectional: undefined as never };
}
