/** Every tool's declaration, thumbnail and worked example, there before the core has started. */
export { catalog } from "longpoint:catalog";
