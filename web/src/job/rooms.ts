/** The rooms of jobs: what is opened first when anything of a job is; the quote comes when it is opened. */
import "../screens/in-job";
import "../screens/jobs";
import "../screens/job";
import "../screens/keep";
import "../job-sheets/job-sheet";
import "../screens/stock";
import "../screens/take-pieces";

export { Job } from "./job";
