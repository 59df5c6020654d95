/**
 * What is kept on this device: one store of documents, and what the screens make of it.
 *
 * What could not be kept or read is said through `onStorageFault`, in words for the person.
 */
import "./left";

export { StoreFault } from "./database";
export { openDocument } from "./documents";
export type { Collision, DocumentChange, DocumentHandle } from "./handle";
export { deleteDocument, listAll, listDocuments, listLatest, listTitles, purgeDeleted, undeleteDocument } from "./collection";
export { ToolDocuments, type FormChange, type FormCollision, type FormDocument } from "./tool-documents";
export type { KeptForm } from "./form-body";
export { keepAnswer, keptAnswers, type KeptAnswer } from "./answer-history";
export { loadSettings, onSettings, saveSettings, type Settings } from "./settings";
export { checkFile, exportAll, importAll } from "./backup";
export { flushed, onStorageFault, storageFault } from "./queue";
export { onWritten } from "./tabs";
