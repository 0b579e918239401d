export * from './pilot-duty-bands.js';
export * from './pilot-duty-cycle.js';
export * from './pilot-states.js';
export * from './timing.js';
