/** What is said of the open job in words that pass. */
import type { Refused } from "../contract/contract";
import { toast } from "../parts/toast";

/** Says why something can't be laid into a job. */
export function sayWhy({ errors }: Refused): null {
  toast(errors.map(({ message }) => message).join(" "));
  return null;
}

/** Returns a failed request as a refusal in these words. */
export function refused(message: string): Refused {
  return { ok: false, errors: [{ field: "", message, missing: false, instead: [] }] };
}

/** Says that another window changed the same of the job, and offers the other's way. */
export function sayCollision(isMine: boolean, takeOther: () => void): void {
  const words = "This job was changed in another window of Longpoint";
  if (isMine) toast(`${words} too. What was said here stands.`, "Take the other", takeOther);
  else toast(`${words}.`, "Take mine back", takeOther);
}
