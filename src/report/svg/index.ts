export { type DemandPictureInput, demandPicture } from './bars.js';
export { type NightLoadInput, nightLoadPicture } from './night-load.js';
export { oneLineDiagram } from './one-line.js';
export { type RoutePictureInput, routePicture } from './route.js';
export { type TimeCurrentInput, timeCurrentPicture } from './time-current.js';
export { type VoltageDropInput, voltageDropPicture } from './voltage-drop.js';
