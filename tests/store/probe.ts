/** Puts the store where a test can call it, in a page on which the app does not run. */
import * as store from "../../web/src/store/store";

Object.assign(globalThis, { store });
