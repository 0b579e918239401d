/** The text of every page by file name, made from the source. */
export function makeHandbook(): Promise<Readonly<Record<string, string>>>;
/** What is checked in, by file name. */
export function readHandbook(): Readonly<Record<string, string>>;
