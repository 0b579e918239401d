export * from './calculation.js';
export type { Edited } from './compile.js';
export * from './contents.js';
export * from './judgement.js';
export type { Labels } from './labels.js';
export * from './line.js';
export * from './lists.js';
export * from './value.js';
export { Writer } from './written.js';
