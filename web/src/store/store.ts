/**
 * What is kept on this device. Every function resolves only after its transaction is complete and
 * throws a StoreFault, with words for the person, when this device could not do it.
 */
export { StoreFault, type KeptAnswer } from "./database";
export { loadForm, saveForm } from "./forms";
export { keepAnswer, keptAnswers } from "./answer-history";
export { loadSettings, saveSettings, type Settings } from "./settings";
export { exportAll, importAll } from "./backup";
