import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../src/io/index.js';
import { planBlocks, renderText } from '../../src/report/index.js';
import { planInBritain } from '../support/plan.js';
import { type Json, surveyDocument, surveyDocuments } from '../support/surveys.js';

type Tree = { [key: string]: Json };
const changed = (name: string, change: (document: Tree) => void) => {
  const document = surveyDocument(name);
  change(document);
  return planInBritain(readSurvey(document), { sheets: 'none', lengths: false });
};
const at = (tree: Json | undefined, ...path: readonly (string | number)[]): Tree =>
  path.reduce((node, key) => (node as Tree)[key as string] as Tree, tree as Tree);

describe('answers that a person can rest on', () => {
  it('does not pass a job behind an unsafe cut-out, nor behind one that nobody has seen', () => {
    const unsafe = changed('workshop', (d) => Object.assign(at(d, 'supply'), { cutOutSound: false }));
    expect(unsafe.options[0]?.overall.failed.map((r) => r.check)).toEqual(['cut-out-is-sound']);
    const unseen = changed('workshop', (d) => delete at(d, 'supply').cutOutSound);
    expect(unseen.options[0]?.overall.undetermined.map((r) => r.check)).toEqual(['cut-out-is-sound']);
  });

  it('names no size where load, device and cable could not be judged', () => {
    const plan = changed('easy-home', (d) => Object.assign(at(d, 'code'), { edition: '2018+A4:2026' }));
    for (const { points } of plan.options) {
      expect(points[0]?.run.cable.area.state).toBe('unknown');
      expect(points[0]?.items.find((i) => i.key.startsWith('cable:'))?.words).toContain('size to be decided');
    }
    expect(renderText(planBlocks(plan))).not.toContain('1 mm²');
  });

  it('shows the real obstacle where no candidate remains, not a cable that is too small besides', () => {
    const [point] = changed('tt-cottage', () => undefined).options[0]?.points ?? [];
    expect(point?.design.outcome).toBe('none');
    // 4 mm² fails at its terminals too: 30 °C + 60 K x (32 A / 37.2 A)^2 under the eaves is above 70 °C
    expect(point?.run.cable.area).toMatchObject({ value: 6 });
    expect(point?.assessment.overall.failed.map((r) => r.check)).toEqual(['smooth-current-upstream']);
  });

  it('gives the loop of a TT circuit the limit of its residual current device', () => {
    const [point] = changed('tt-cottage', () => undefined).options[0]?.points ?? [];
    const loop = point?.tests.tests.flatMap((t) => t.readings).find((r) => r.id === 'loop');
    // 50 V over 30 mA; the overcurrent device would ask for 1.37 Ω, which no rod reaches
    expect(loop?.limits.filter((l) => l.kind === 'at-most').map((l) => Math.round(l.amount?.value ?? 0))).toEqual([
      1667,
    ]);
    expect(loop?.expected?.value).toBeLessThan(50 / 0.03);
    const [home] = changed('easy-home', () => undefined).options[0]?.points ?? [];
    const tn = home?.tests.tests.flatMap((t) => t.readings).find((r) => r.id === 'loop');
    // 0.28 + (1.366 - 0.28) x 0.98 / 1.2, and 0.8 x 1.366
    expect(tn?.limits.filter((l) => l.kind === 'at-most').map((l) => l.amount?.value.toFixed(2))).toEqual([
      '1.17',
      '1.09',
    ]);
  });

  it('leaves open what a residual current device has to carry while the fuse ahead is not known', () => {
    const check = (d: ReturnType<typeof changed>) =>
      d.options[0]?.points[0]?.assessment.results.find((r) => r.check === 'residual-current-device-overload');
    // 6 + 32 + 32 + 32 + 32 A below an 80 A device
    expect(check(changed('tt-cottage', () => undefined))?.verdict).toBe('not-determined');
    const rated = (rating: string) =>
      changed('tt-cottage', (d) => Object.assign(at(d, 'supply', 'cutOut'), { rating }));
    expect(check(rated('80 A'))?.verdict).toBe('pass');
    expect(check(rated('100 A'))?.verdict).toBe('fail');
  });

  it('lists ways to earth a point only where there is a PEN conductor to break', () => {
    const [cottage] = changed('tt-cottage', () => undefined).options;
    expect(cottage?.points[0]?.earthing).toEqual([]);
    const [home] = changed('easy-home', () => undefined).options;
    expect(home?.points[0]?.earthing).toHaveLength(6);
    const [indoors] = changed('easy-home', (d) =>
      Object.assign(at(d, 'wanted', 0, 'point'), { outdoors: false }),
    ).options;
    expect(indoors?.points[0]?.earthing).toEqual([]);
  });

  it('draws no band for a fuse without gates, and plans all the same', () => {
    const small = changed('easy-home', (d) =>
      Object.assign(at(d, 'supply'), { cutOut: { kind: { standard: 'BS 88-2' }, rating: '2 A' } }),
    );
    const asWanted = small.options.find((o) => o.id === 'as-wanted');
    expect(asWanted?.points[0]?.timeCurrent?.series).toHaveLength(1);
  });

  it('takes a vehicle that leaves at the time of day at which it came to stand there a day', () => {
    const plan = changed('easy-home', (d) => Object.assign(at(d, 'wanted', 0, 'vehicle'), { leaves: '18:30' }));
    expect(plan.options[0]?.points[0]?.chargeTime?.window).toBe(86400);
  });

  it.each(Object.keys(surveyDocuments))('%s: each caution stands in the report once, in full', (name) => {
    const plan = planInBritain(readSurvey(surveyDocument(name)), { sheets: 'none', lengths: false });
    const [option] = plan.options;
    const flat = renderText(planBlocks(plan)).replace(/\s+/g, ' ');
    const own = [
      plan.code.standing,
      ...(option?.cautions ?? []),
      ...(option?.points[0]?.tests.cautions.slice(1) ?? []),
    ];
    expect(own.length).toBeGreaterThan(10);
    for (const caution of own) {
      // a caution that holds another is told without what was said already
      const parts = own
        .filter((o) => o !== caution && caution.includes(o))
        .reduce((rest, o) => rest.replace(o, ''), caution);
      expect(flat.split(parts.trim()).length - 1, parts).toBe(1);
    }
  });
});
