/** Formulas, tables and checks of the demand, the adequacy of the supply and the mounting. */
export * from './formulas.js';
export { coincidentCount, coincidentPowerOf } from './many/coincidence.js';
export * from './many/formulas.js';
export { clearOfGasMeter } from './mounting.js';
export { demandWithinTransformer } from './transformer-check.js';
