/** The rooms of jobs: what is opened first when anything of a job is. */
import "../screens/in-job";
import "../screens/jobs";
import "../screens/job";
import "../screens/keep";
import "../job-sheets/job-sheet";
import "../quote/quote";
import "../screens/stock";
import "../screens/take-pieces";

export { Job } from "./job";
