/**
 * Charging of electric vehicles: pilot signal, allocation, control, schedules and simulation.
 *
 * @module
 */
export {};
