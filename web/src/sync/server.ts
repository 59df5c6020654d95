/** The shop's server, as a phone asks it. */
import { address } from "../engine/site-url";
import { isObject } from "../store/json";
import type { Heard, State } from "../store/tables";

/** Milliseconds after which a request is given up: a network may hang. */
const PATIENCE = 30_000;

/** It was not reached, or can't answer now: to be asked again later. */
export class Unreached extends Error {}
/** It was restored from a backup since it was asked who is signed in: to be asked again later. */
export class Restored extends Unreached {}
/** Nobody is signed in on this device. */
export class SignedOut extends Error {}
/** There is no server here that keeps anything. */
export class NoServer extends Error {}

export interface Me {
  epoch: string;
  person: { name: string; role: string };
  device: { id: number; title: string };
}

/** A document as it stands on the server; one that is deleted has no state. */
export interface ServerDocument {
  id: string;
  kind: string;
  rev: number;
  change_id: string;
  deleted: boolean;
  by: string;
  units?: State["units"];
  schema?: number;
  body?: State["body"];
}

export interface Changes extends Heard {
  restored: boolean;
  changes: ServerDocument[];
  more: boolean;
}

/** What came of a change that was sent. */
export type Sent =
  | { is: "taken"; rev: number }
  | { is: "moved"; current: ServerDocument }
  | { is: "unknown" }
  | { is: "restored" }
  | { is: "refused"; words: string };

export function stateOf({ deleted, units, schema, body }: ServerDocument): State | null {
  return deleted || !units || !schema || !body ? null : { units, schema, body };
}

async function ask(path: string, init: RequestInit = {}): Promise<{ status: number; said: unknown }> {
  let response: Response;
  try {
    const given = { ...init, cache: "no-store" as const, signal: AbortSignal.timeout(PATIENCE) };
    response = await fetch(address(`api/${path}`), given);
    const isJson = response.headers.get("content-type")?.startsWith("application/json");
    const said: unknown = isJson ? await response.json() : null;
    return answered(response.status, said);
  } catch (error) {
    if (error instanceof Error && [Unreached, SignedOut].some((kind) => error instanceof kind)) throw error;
    throw new Unreached("not reached", { cause: error });
  }
}

function answered(status: number, said: unknown): { status: number; said: unknown } {
  if (status === 401 && isObject(said)) throw new SignedOut();
  if (status === 429 || (status >= 500 && status !== 507)) throw new Unreached(String(status));
  return { status, said };
}

/** Returns who is signed in. Throws NoServer where there is none that keeps anything. */
export async function me(): Promise<Me> {
  const { status, said } = await ask("me");
  if (status !== 200 || !isObject(said)) throw new NoServer();
  return said as unknown as Me;
}

export async function changes({ since, last }: Heard): Promise<Changes> {
  const query = new URLSearchParams({ since: String(since), last });
  const { status, said } = await ask(`changes?${query}`);
  if (status !== 200 || !isObject(said)) throw new Unreached(String(status));
  return said as unknown as Changes;
}

/**
 * Sends a change that was made to a revision; null begins a document, a state of null deletes one.
 *
 * A server that was restored from a backup counts revisions again: the epoch says which are meant.
 */
export async function send(
  name: string, epoch: string, rev: number | null, changeId: string, state: State | null,
): Promise<Sent> {
  const path = `documents/${encodeURIComponent(name)}?epoch=${encodeURIComponent(epoch)}`;
  const condition: HeadersInit = rev === null ? { "If-None-Match": "*" } : { "If-Match": `"${rev}"` };
  const { status, said } = state
    ? await ask(path, {
        method: "PUT",
        headers: { ...condition, "Content-Type": "application/json" },
        body: JSON.stringify({ change_id: changeId, ...state }),
      })
    : await ask(`${path}&change_id=${changeId}`, { method: "DELETE", headers: condition });
  if (!isObject(said)) throw new Unreached(String(status));
  if (status === 200 || status === 201) return { is: "taken", rev: Number(said["rev"]) };
  if (status === 412) return { is: "moved", current: said["current"] as unknown as ServerDocument };
  if (status === 409) return { is: "restored" };
  if (status === 404 && rev !== null) return { is: "unknown" };
  return { is: "refused", words: wordsOf(said) };
}

/** The first sentence of a refusal: that of a field where there is one. */
function wordsOf(said: object): string {
  const found = JSON.stringify(said).match(/"errors":.*?\["((?:[^"\\]|\\.)*)"/)?.[1];
  return found ?? String((said as { message?: string }).message ?? "The shop's server did not take it.");
}
