import type { Chapter } from './hazard.js';

/** The chapters of the book. */
export const chapters: readonly Chapter[] = Object.values(
  import.meta.glob<{ readonly chapter: Chapter }>('./*.hazards.ts', { eager: true }),
).map((m) => m.chapter);
