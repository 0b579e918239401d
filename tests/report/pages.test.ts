/** What each reader's page has to say, and what it must leave to the others. */
import { describe, expect, it } from 'vitest';
import { kindsOfNames, namesInShort, runsOfNames } from '../../src/core/names.js';
import { ordinaryHome } from '../../src/great-britain.js';
import { readPriceBook, readSurvey } from '../../src/io/index.js';
import { cellText } from '../../src/report/block.js';
import {
  type Block,
  customerPage,
  designFile,
  englishWords,
  installerPage,
  operatorPage,
  planBlocks,
  renderText,
  testerPage,
} from '../../src/report/index.js';
import type { Plan, PointPlan } from '../../src/site/index.js';
import { examplePlan, planInBritain } from '../support/plan.js';
import { type Json, surveyDocument, surveyDocuments } from '../support/surveys.js';

/** The texts of a report one after the other, rows of tables cell by cell. */
const said = (blocks: readonly Block[]): string =>
  blocks
    .flatMap((b): readonly string[] => {
      if (b.kind === 'table') return [b.caption, ...b.rows.flat().map(cellText)];
      if (b.kind === 'list') return b.items;
      if (b.kind === 'answer') return [b.words.toUpperCase(), b.text];
      return 'text' in b ? [b.text] : [];
    })
    .join(' ')
    .replace(/\s+/g, ' ');
const tables = (blocks: readonly Block[]) => blocks.flatMap((b) => (b.kind === 'table' ? [b] : []));
/** Words as people count them: what has a letter in it. */
const words = (blocks: readonly Block[]): number =>
  renderText(blocks)
    .split(/\s+/)
    .filter((w) => /\p{L}/u.test(w)).length;

const pages = { customerPage, installerPage, testerPage, operatorPage };

describe.each(Object.keys(surveyDocuments))('the pages of %s', (name) => {
  it.each(Object.keys(pages))('%s gives the answer first, and says how the edition stands', (page) => {
    const blocks = pages[page as keyof typeof pages](examplePlan(name));
    expect(blocks.slice(0, 2).map((b) => b.kind)).toEqual(['heading', 'answer']);
    // withdrawn on 15 October 2026; the text of the edition that took its place is not in here
    expect(said(blocks)).toMatch(/withdrawn on 15 October 2026.*BS 7671:2018\+A4:2026; its text was not available/);
    expect(said(blocks)).toContain('Invented example');
  });

  it('the design file names every chapter in its contents, and is far shorter than the whole', () => {
    const plan = examplePlan(name);
    const file = designFile(plan);
    const chapters = file.flatMap((b) => (b.kind === 'heading' && b.level === 2 ? [b.text] : []));
    const text = renderText(file);
    const contents = text.slice(text.indexOf('Contents\n'), text.indexOf('\n\n', text.indexOf('Contents\n')));
    for (const chapter of chapters) expect(contents).toContain(chapter.slice(0, 60));
    expect(words(file)).toBeLessThan(words(planBlocks(plan)));
  });

  it('the design file has every result that is not met or open, and counts the rest', () => {
    const [option] = examplePlan(name).options;
    const text = said(designFile(examplePlan(name)));
    for (const point of option?.points ?? []) {
      for (const r of point.assessment.results)
        if (r.verdict === 'fail' || r.verdict === 'not-determined') expect(text).toContain(r.title);
    }
  });

  it('the design file gives each caution once', () => {
    const text = said(designFile(examplePlan(name)));
    for (const caution of examplePlan(name).options[0]?.cautions ?? [])
      expect(text.split(caution.replace(/\s+/g, ' ')).length, caution).toBe(
        // of two cautions one may hold the other
        1 + (examplePlan(name).options[0]?.cautions ?? []).filter((c) => c.includes(caution)).length,
      );
  });
});

/** The easy home as wanted, with a limiter of which its maker says all that is asked: the option in which everything is known. */
function easyHome(): Plan {
  const plan = examplePlan('easy-home');
  const [option] = plan.options.filter((o) => o.id === 'with-limiter');
  if (!option) throw new Error('no option with a limiter');
  return { ...plan, options: [{ ...option, unknown: [], overall: { ...option.overall, verdict: 'pass' } }] };
}

describe('an easy home', () => {
  it('the customer reads what, where, when and what is needed, and no figure of the trade', () => {
    const plan = easyHome();
    // what is seen on what is there: the owner has to be told
    const seen = plan.options[0]?.points[0]?.assessment.results.slice(0, 1) ?? [];
    const text = said(customerPage({ ...plan, observations: [{ run: 'ring downstairs', failed: seen }] }));
    expect(text).toContain('YES, IT CAN BE DONE');
    expect(text).toContain('Charge point ‘drive’: up to 32 A, about 7.4 kW.'); // 32 A x 230 V
    expect(text).toContain('garage wall');
    expect(text).toContain('Work starts when the network operator has agreed.');
    expect(text).toContain('Address of the premises');
    expect(text).toContain('ring downstairs');
    expect(text).not.toMatch(/Z_s|R_1|mm²|curve B|\bRCBO\b|522\.|margin/);
  });

  it('a price is named only with the prices of the firm, as money, with its tax', () => {
    expect(said(customerPage(easyHome()))).toContain('The price is quoted separately.');
    expect(said(customerPage(easyHome()))).not.toContain('£');
    const prices = readPriceBook({
      format: 'prices/1',
      currency: 'GBP',
      items: {
        'cable:*': 315,
        'fixing:*': 12,
        'charge-point': 55000,
        'protective-device': 3900,
        'wall-sleeve': 900,
        labels: 600,
        records: 0,
        'current-sensor': 4200,
        'sensor-cable': 90,
      },
      hour: 4550,
      taxBasisPoints: 2000,
    });
    // 22 m at 3.15, 64 fixings at 0.12, 39 + 550 + 9 + 42 + 6, 18 m at 0.90: 739.18; 8.927 h at 45.50: 406.18; tax 20 %
    const text = said(customerPage(easyHome(), { prices }));
    expect(text).toMatch(/Material and labour £1,145\.36 Tax £229\.07 Total £1,374\.43/);
    const { 'charge-point': _point, ...rest } = prices.items;
    const without = said(customerPage(easyHome(), { prices: { ...prices, items: rest } }));
    expect(without).toContain('so that the sum is no offer: charge point, as specified');
    // 550.00 less
    expect(without).toContain('Material and labour, as far as it is priced £595.36');
    expect(without).not.toMatch(/Tax|Total/);
  });

  it('the installer reads settings, route, order of work and material', () => {
    const text = said(installerPage(easyHome()));
    expect(text).toContain('6 mm², copper; protected by RCBO 32 A, curve B, 30 mA type A, double pole');
    expect(text).toContain('Set the charge point to 32 A.');
    expect(text).toMatch(/Set to 80 A: load limiter/);
    expect(text).toMatch(/hall ceiling, under joists 6 m 100 clipped/);
    // 6 + 11 + 1 m, 10 % more, 1 m at each end: 21.8 m
    expect(text).toContain('22 m flat twin and earth 2-core 6 mm²');
    expect(text).toContain('A cable outdoors suits the sun'); // advice that is not met
    const steps = text.slice(text.indexOf('Order of work'));
    const order = ['Application before', 'prove dead', 'Run the cable', 'Fix and connect', 'Test dead', 'hand over'];
    const at = order.map((step) => steps.indexOf(step));
    expect(at).not.toContain(-1);
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(text).not.toMatch(/£|Address of the premises/);
  });

  it('the tester has one box for each reading, one figure in each cell, and no limit that says nothing', () => {
    const plan = easyHome();
    const blocks = testerPage(plan);
    const [table] = tables(blocks);
    const readings = plan.options[0]?.points[0]?.tests.tests.flatMap((t) => t.readings) ?? [];
    expect(table?.rows).toHaveLength(readings.length);
    expect(table?.boxes).toEqual([(table?.head.length ?? 0) - 1]);
    for (const row of table?.rows ?? [])
      for (const cell of row.slice(2)) expect(String(cell)).toMatch(/^([\d.]+ [kMm]?[AΩVs]|in order\?|)$/);
    const rowOf = (reading: string) => table?.rows.find((r) => r[1] === reading)?.map(String);
    // 18 m of 6/2.5 mm²: 3.08 + 7.41 mΩ/m at 20 °C, 2 % less at 15 °C; with Z_e 0.28 Ω
    expect(rowOf('R_1+R_2')?.[2]).toBe('0.185 Ω');
    expect(rowOf('Z_s')?.[2]).toBe('0.465 Ω');
    expect(rowOf('Z_e')?.[3]).toBe('');
    const text = said(blocks);
    expect(text).toContain('Reconnect the earthing conductor before anything is energised.');
    expect(text).toContain('Live testing can kill');
    expect(text).not.toContain('0.001 Ω');
  });

  it('the operator has every entry of the form, those that are missing by where they are found', () => {
    const plan = easyHome();
    const blocks = operatorPage(plan);
    const text = said(blocks);
    const heads = `${text} ${tables(blocks)
      .flatMap((t) => t.head)
      .join(' ')}`;
    for (const field of plan.options[0]?.notification.fields ?? []) {
      expect(heads).toContain(field.title.replace('drive: ', ''));
      if ('missing' in field) expect(text).toContain(`missing: ${field.missing}`);
    }
    expect(text).toContain('APPLICATION BEFORE THE WORK');
    expect(text).not.toMatch(/fixings|R_1\+R_2|£/);
  });

  it('takes at most 1,200 words over the four pages', () => {
    const all = Object.values(pages).map((page) => words(page(examplePlan('easy-home'))));
    expect(all.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(1200);
  });

  it('prints the calculation sheet on demand only', () => {
    const plan = examplePlan('easy-home');
    expect(words(designFile(plan, { sheet: true }))).toBeGreaterThan(words(designFile(plan)) + 500);
  });

  it('speaks other words where they are handed in', () => {
    const other = { ...englishWords, customer: { ...englishWords.customer, need: 'Was wir von Ihnen brauchen' } };
    const text = said(customerPage(easyHome(), { words: other }));
    expect(text).toContain('Was wir von Ihnen brauchen');
    expect(text).not.toContain(englishWords.customer.need);
  });
});

describe('what fails or is open', () => {
  it('is no yes to the customer, nothing to install, nothing to energise, and has no price', () => {
    const plan = examplePlan('tt-cottage');
    expect(plan.options[0]?.overall.verdict).toBe('fail');
    const prices = { format: 'prices/1', currency: 'GBP', items: {}, hour: 100, taxBasisPoints: 0 } as const;
    const customer = said(customerPage(plan, { prices }));
    expect(customer).toContain('NO, NOT AS DESCRIBED');
    expect(customer).toContain('There is no price before it is decided.');
    const installer = said(installerPage(plan));
    expect(installer).toContain('FAIL: DO NOT INSTALL THIS');
    for (const r of plan.options[0]?.overall.failed ?? []) expect(installer).toContain(`Not met: ${r.title}`);
    expect(said(testerPage(plan))).toContain('THE DESIGN FAILS: DO NOT ENERGISE');
  });

  it('that facts are open stands before the work, with how each is obtained', () => {
    const document = surveyDocument('easy-home') as { supply: Record<string, Json> };
    document.supply.externalImpedance = { unknown: 'measure at the main switch' };
    const plan = planInBritain(readSurvey(document), { lengths: false, sheets: 'none' });
    const text = said(installerPage(plan));
    expect(text).toContain('NOT DECIDED: DO NOT INSTALL YET');
    for (const u of plan.options[0]?.unknown ?? []) if (u.decides) expect(text).toContain(u.fact);
    expect(text.indexOf('To find out first')).toBeLessThan(text.indexOf('Order of work'));
  });

  it('what was assumed has a box each on the installer’s page, before the work; what is known has none', () => {
    const document = surveyDocument('easy-home') as { supply: Record<string, Json> };
    document.supply.externalImpedance = { unknown: true };
    document.supply.prospectiveCurrent = { unknown: true };
    const plan = planInBritain(readSurvey(document), { lengths: false, limits: false, assumptions: ordinaryHome });
    const [option] = plan.options;
    expect(option?.overall.verdict).toBe('conditional');
    const blocks = installerPage(plan);
    const boxes = tables(blocks).filter((t) => t.boxes);
    expect(boxes.flatMap((t) => t.rows.map((r) => r[0]))).toEqual(option?.conditions.map((c) => c.title));
    expect(said(blocks)).toMatch(/0\.35 Ω.*Order of work/); // customary on TN-C-S (PME)
    expect(said(customerPage(plan))).toContain('YES, ONCE IT IS CONFIRMED ON SITE');
    expect(said(customerPage(plan))).toMatch(/we first confirm \d+ things? that nobody has looked at yet/);
    expect(tables(installerPage(easyHome())).filter((t) => t.boxes)).toEqual([]);
  });
});

describe('many charge points', () => {
  const chapters = (plan: Plan): readonly string[] =>
    designFile(plan).flatMap((b) =>
      b.kind === 'heading' && b.level === 2 && /^Charge point/.test(b.text) ? [b.text] : [],
    );
  /** The flats, with one charge point changed. */
  const withChanged = (change: (point: PointPlan) => PointPlan): Plan => {
    const plan = examplePlan('flats');
    const options = plan.options.map((o) => ({
      ...o,
      points: o.points.map((p) => (p.point === 'bay 7' ? change(p) : p)),
    }));
    return { ...plan, options };
  };

  it('that are alike are one chapter, by the one that is nearest to its limit', () => {
    expect(chapters(examplePlan('flats'))).toEqual(['Charge points ‘bay 1’ to ‘bay 24’ (24)']);
    // the farthest bays of the board that is farther off
    expect(said(designFile(examplePlan('flats')))).toContain('Figures and pictures of ‘bay 24’');
    expect(chapters(examplePlan('workshop'))).toHaveLength(2); // three-phase and single-phase
  });

  it('one that ends otherwise, or is built otherwise, is not folded away', () => {
    const fails = withChanged((p) => ({
      ...p,
      assessment: {
        ...p.assessment,
        aspects: p.assessment.aspects.map((a) => (a.aspect === 'voltage-drop' ? { ...a, verdict: 'fail' } : a)),
      },
    }));
    expect(chapters(fails)).toContain('Charge point ‘bay 7’');
    const larger = withChanged((p) => ({
      ...p,
      run: { ...p.run, cable: { ...p.run.cable, cores: 4 } },
    }));
    expect(chapters(larger)).toContain('Charge point ‘bay 7’');
    expect(said(installerPage(larger))).toContain('4-core');
  });

  it('a worse result of one of them is the one that is printed', () => {
    const [first] = examplePlan('flats').options[0]?.points ?? [];
    const drop = first?.assessment.results.find((r) => r.check === 'voltage-drop');
    if (!drop) throw new Error('no drop');
    const worse = withChanged((p) => ({
      ...p,
      assessment: {
        ...p.assessment,
        results: p.assessment.results.map((r) =>
          r.check === 'voltage-drop' ? { ...drop, verdict: 'fail', because: 'an invented failure' } : r,
        ),
      },
    }));
    expect(said(designFile(worse))).toContain('an invented failure');
    expect(said(designFile(examplePlan('flats')))).not.toContain('an invented failure');
  });

  it('the tester has a row for each, with its own expected figures and a box for each reading', () => {
    const blocks = testerPage(examplePlan('flats'));
    const [origin, ...grids] = tables(blocks).filter((t) => t.boxes);
    expect(origin?.rows.map((r) => r[0])).toEqual(['Z_e']); // of the supply: read once
    expect(grids).toHaveLength(2); // dead and live
    const readings = examplePlan('flats').options[0]?.points[0]?.tests.tests.flatMap((t) => t.readings) ?? [];
    expect(grids.reduce((sum, t) => sum + (t.boxes?.length ?? 0), 0)).toBe(readings.length - 1);
    for (const { rows, boxes = [] } of grids) {
      expect(rows.map((r) => r[0])).toEqual(Array.from({ length: 24 }, (_, i) => `bay ${i + 1}`));
      for (const row of rows) for (const b of boxes) expect(row[b]).toBe('');
    }
    const column = grids[0]?.head.indexOf('R_1+R_2 expected, and its limits') ?? -1;
    expect(new Set(grids[0]?.rows.map((r) => r[column])).size).toBe(12); // twelve lengths, each twice
  });

  it('the installer has every setting of a load control, and the way of each new feeder', () => {
    const text = said(installerPage(examplePlan('flats')));
    const settings = text.match(/Set to [\d.]+ A: load controller[^.]*/g) ?? [];
    expect(settings.flatMap((line) => line.split('; '))).toHaveLength(3); // at the origin and on both charging boards
    expect(text.match(/tray under the slab/g)).toHaveLength(2);
    // a residual current device beside a circuit-breaker is named with it
    expect(said(installerPage(examplePlan('workshop')))).toContain('Device: RCD 40 A, 30 mA type A, four pole.');
  });

  it('the limit of several is the strictest of them', () => {
    const points = examplePlan('flats').options[0]?.points ?? [];
    const most = points.flatMap((p) =>
      p.tests.tests.flatMap((t) =>
        t.readings.flatMap((r) =>
          r.id === 'loop'
            ? r.limits.flatMap((l) => (l.kind === 'at-most' && !l.thumb ? [l.amount?.value ?? 0] : []))
            : [],
        ),
      ),
    );
    const [limits] = tables(testerPage(examplePlan('flats')));
    const row = limits?.rows.find((r) => r[1] === 'Z_s');
    expect(Number.parseFloat(String(row?.[4]))).toBeCloseTo(Math.min(...most), 2);
  });
});

it('names whose numbers count on are told together, others are not', () => {
  expect(runsOfNames(['bay 1', 'bay 2', 'bay 3', 'bay 5', 'yard', 'yard 2'])).toEqual([
    ['bay 1', 'bay 2', 'bay 3'],
    ['bay 5'],
    ['yard'],
    ['yard 2'],
  ]);
  expect(runsOfNames([])).toEqual([]);
  expect(kindsOfNames(['bay 10', 'bay 2', 'yard', 'row 1.2', 'bay 1']).flat()).toEqual([
    'bay 1',
    'bay 2',
    'bay 10',
    'yard',
    'row 1.2',
  ]);
  expect(namesInShort(['bay 4', 'bay 1', 'yard', 'row 1.1', 'row 1.2'])).toEqual([
    'bay 1, 4',
    'yard',
    'row 1.1, row 1.2',
  ]);
});
