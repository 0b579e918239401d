export * from './voltage-drop.js';
