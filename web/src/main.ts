/** Starts the screens. */
import "./screens/app";

document.body.append(document.createElement("lp-app"));
