/** The rooms of jobs: what is opened first when anything of a job is. */
import "../screens/jobs";
import "../screens/job";

export { Job } from "./job";
