/** Formulas and tables of the whole job. */
export * from './formulas.js';
export * from './tables/labour.js';
