/** The rooms of jobs: what is opened first when anything of a job is. */
import "../screens/jobs";
import "../screens/job";
import "../screens/keep";

export { Job } from "./job";
