/**
 * Units, formulas, tables, checks, facts and sheets; the installation model; the design of circuits.
 *
 * @module
 */
export {};
