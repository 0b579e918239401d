export * from './4-many-cores.js';
