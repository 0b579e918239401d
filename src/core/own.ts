/**
 * What a record holds under a name that somebody else has chosen; never what every object inherits under names such as
 * `constructor`.
 */
export const own = <T>(record: Readonly<Record<string, T>> | undefined, name: string): T | undefined =>
  record && Object.hasOwn(record, name) ? record[name] : undefined;
