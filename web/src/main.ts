/** Starts the screens, apart from reading their script: a tap is heard in between. */
import { App } from "./screens/app";

setTimeout(() => customElements.define("lp-app", App));
