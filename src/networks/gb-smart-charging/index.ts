export * from './peak-hours.js';
export * from './start-delay.js';
