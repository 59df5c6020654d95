import { withStyle } from "../parts/style";

/** Brings the rooms of jobs with what they wear, and the quote's where that part is opened. */
export async function bringRooms(part: string): Promise<typeof import("./rooms")> {
  const quote = part === "quote" && import("../quote/quote");
  const [rooms] = await Promise.all([import("./rooms"), withStyle("job"), quote]);
  return rooms;
}
