/**
 * The whole job, from the survey to options, quantities and records.
 *
 * @module
 */
export {};
