/** Starts the screens. */
import "./screens/app";
