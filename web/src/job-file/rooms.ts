/** What hands a job on, takes one in and prints it. */
export { HandOn } from "./hand-on";
export { TakeIn } from "./take-in";
export { JobPaper } from "../job-paper/job-paper";
