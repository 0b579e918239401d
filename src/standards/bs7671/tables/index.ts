export * from './4d5.js';
