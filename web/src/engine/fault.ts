/** The core did not answer, its worker was ended and a new one starts; words for the person. */
export class CoreFault extends Error {
  override name = "CoreFault";
}

export const TOO_LONG =
  "This took too long and was stopped. Check the numbers just entered; nothing typed is lost.";
export const BROKE =
  "Something broke while working this out, so there is no answer to trust. " +
  "Change a number to try again; nothing typed is lost.";
export const NOT_STARTED =
  "The part that works out answers could not be loaded. " +
  "Open Longpoint once with a connection, then it works without.";
export const NO_WORKER =
  "This browser can't run the part that works out answers. " +
  "Open Longpoint in a current browser; what is kept here stays.";
