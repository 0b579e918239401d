/**
 * Documents in and out: schemas, versions, and every problem of a document with its path.
 *
 * @module
 */
export {};
