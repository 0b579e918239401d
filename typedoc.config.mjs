import { readFileSync } from 'node:fs';
import ts from 'typescript';

const entries = JSON.parse(readFileSync(new URL('./entries.config.json', import.meta.url), 'utf8'));

/** Functions of the catalogue of words of reports, by their places: each is a sentence and says itself what it is. */
function wordsOfReports() {
  const pictures = [
    'DemandPictureInput',
    'NightLoadInput',
    'RoutePictureInput',
    'TimeCurrentInput',
    'VoltageDropInput',
  ];
  const files = {
    pages: ['ReportWords'],
    long: ['ReportWords.long.__type'],
    sheet: ['ReportWords.sheet.__type'],
    pictures: ['ReportWords.pictures.__type', ...pictures.map((input) => `${input}.words.__type`)],
  };
  return Object.entries(files).flatMap(([name, homes]) => {
    const file = new URL(`./src/report/words/${name}.ts`, import.meta.url);
    const parsed = ts.createSourceFile(file.pathname, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest);
    const catalogue = parsed.statements
      .filter(ts.isVariableStatement)
      .flatMap((statement) => statement.declarationList.declarations)
      .find((declaration) => ['english', `${name.replace(/s$/, '')}Words`].includes(declaration.name.text));
    const within = (value, way) => {
      if (ts.isSatisfiesExpression(value) || ts.isAsExpression(value)) return within(value.expression, way);
      if (ts.isArrowFunction(value)) return homes.map((home) => `ohmwright/report.${home}.${way.join('.__type.')}`);
      if (!ts.isObjectLiteralExpression(value)) return [];
      return value.properties.flatMap((p) =>
        p.initializer && !p.jsDoc ? within(p.initializer, [...way, p.name.text]) : [],
      );
    };
    return within(catalogue.initializer, []);
  });
}

export default {
  entryPoints: Object.values(entries).map((entry) => entry.source),
  out: 'docs/api',
  name: 'ohmwright',
  readme: 'README.md',
  projectDocuments: ['docs/first-steps-*.md'],
  includeVersion: true,
  navigation: { includeGroups: true, includeCategories: false, compactFolders: false },
  sort: ['source-order'],
  sortEntryPoints: false,
  disableSources: true,
  excludeInternal: true,
  excludeExternals: true,
  treatWarningsAsErrors: true,
  // words of which a type is made, helper types of inference, and what is seen whole in the members of what is exported;
  // other types that only occur within others carry @inline, and are shown where they occur
  intentionallyNotExported: [
    ...['aspects', 'lineConductors', 'purposes', 'Products', 'Quotients', 'Terms'],
    ...[
      'Axis',
      'Calculation',
      'Calculator',
      'Gathering',
      'Group',
      'Keys',
      'KnownKeys',
      'SheetLineOfKind',
      'StepValues',
    ],
    ...['AspectVerdict', 'Basis', 'BasisFact', 'Entry', 'PermittedInterval', 'Question', 'RangeReport'],
    ...['FormulaDefinition', 'ProcedureDefinition', 'RelationDefinition', 'UnitOf'],
    // the members of a collection are those of a module, and stand in the handbook
    ...['OfKind', 'Tables', '__module'],
    ...['PointAtIntake', 'SafeCurrents', 'StayAtIntake'],
  ],
  intentionallyNotDocumented: ['ohmwright.Recorder.part', ...wordsOfReports()], // a part, as Sheet.part says
  requiredToBeDocumented: ['Function', 'Class', 'Interface', 'TypeAlias', 'Variable', 'Method', 'Accessor'],
  validation: { notExported: true, invalidLink: true, notDocumented: true },
};
