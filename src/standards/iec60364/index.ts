/**
 * IEC 60364, low-voltage electrical installations, by edition.
 *
 * @module
 */
export {};
