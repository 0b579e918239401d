export * from './cable-coding.js';
