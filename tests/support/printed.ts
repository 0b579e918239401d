import { inflateSync } from 'node:zlib';

/** The text of each page of a PDF as Chromium writes it: fonts with a table of what each glyph stands for. */
export function printedPages(pdf: Buffer): readonly string[] {
  const objects = new Map<string, string>();
  for (const [, id = '', body = ''] of pdf.toString('latin1').matchAll(/(\d+) 0 obj\s([\s\S]*?)\sendobj/g))
    objects.set(id, body);
  const streamOf = (id: string): string => {
    const object = objects.get(id) ?? '';
    const at = object.indexOf('stream');
    if (at < 0) return '';
    const start = at + (object[at + 6] === '\r' ? 8 : 7);
    const bytes = Buffer.from(object.slice(start, object.lastIndexOf('endstream')), 'latin1');
    return (object.slice(0, at).includes('FlateDecode') ? inflateSync(bytes) : bytes).toString('latin1');
  };
  const references = (text: string): readonly string[] => [...text.matchAll(/(\d+) 0 R/g)].map(([, id = '']) => id);
  const glyphsOf = (id: string): ReadonlyMap<string, string> => {
    const glyphs = new Map<string, string>();
    const table = streamOf(id);
    const text = (hex: string) =>
      (hex.match(/.{4}/g) ?? []).map((h) => String.fromCharCode(Number.parseInt(h, 16))).join('');
    for (const [, chars = ''] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
      for (const [, from = '', to = ''] of chars.matchAll(/<(\w+)>\s*<(\w+)>/g))
        glyphs.set(from.toUpperCase(), text(to));
    for (const [, ranges = ''] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
      for (const [, from = '', to = '', first = ''] of ranges.matchAll(/<(\w+)>\s*<(\w+)>\s*<(\w+)>/g))
        for (let k = 0, glyph = Number.parseInt(from, 16); glyph <= Number.parseInt(to, 16); k++, glyph++)
          glyphs.set(
            glyph.toString(16).padStart(4, '0').toUpperCase(),
            String.fromCharCode(Number.parseInt(first, 16) + k),
          );
    return glyphs;
  };
  return [...objects.values()]
    .filter((o) => /\/Type\s*\/Page\b/.test(o))
    .map((page) => {
      const fonts = new Map<string, ReadonlyMap<string, string>>();
      const [, listed = ''] = /\/Font\s*<<([\s\S]*?)>>/.exec(page) ?? [];
      for (const [, name = '', id = ''] of listed.matchAll(/\/(\w+)\s+(\d+) 0 R/g)) {
        const [, table] = /\/ToUnicode\s+(\d+) 0 R/.exec(objects.get(id) ?? '') ?? [];
        if (table) fonts.set(name, glyphsOf(table));
      }
      const [, contents = ''] = /\/Contents\s*(\[[^\]]*\]|\d+ 0 R)/.exec(page) ?? [];
      let font: ReadonlyMap<string, string> | undefined;
      let text = '';
      const drawn = references(contents).map(streamOf).join('\n');
      for (const [, name, hex] of drawn.matchAll(/\/(\w+)\s+[\d.]+\s+Tf|<([0-9A-Fa-f]+)>|\bET\b/g)) {
        if (name !== undefined) font = fonts.get(name);
        else if (hex !== undefined)
          text += (hex.match(/.{4}/g) ?? []).map((g) => font?.get(g.toUpperCase()) ?? '?').join('');
        else text += '\n';
      }
      return text;
    });
}
