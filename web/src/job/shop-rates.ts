/** The shop's own rates, minutes and name: said once, kept on the phone, begun with in every quote. */
import { heldUnder, isObject, type Json, type JsonObject } from "../store/json";
import { openDocument, storageFault, type DocumentHandle } from "../store/store";
import type { Minutes, Rates } from "./quote-body";

const NAME = "shop";

export interface ShopOwn {
  name?: string;
  address?: string;
  phone?: string;
  license?: string;
  /** Of a kept picture. */
  logo?: string;
  rates?: Rates;
  minutes?: Minutes[];
}

let opened: Promise<DocumentHandle> | null = null;

/** Opens it for the life of the page: what is said is kept at once then. */
export function shopDocument(): Promise<DocumentHandle> {
  opened ??= openDocument("settings", NAME);
  opened.catch(() => (opened = null));
  return opened;
}

/** Returns what is kept of the shop; nothing where the storage can't be read. */
export async function shopOwn(): Promise<ShopOwn> {
  try {
    return read((await shopDocument()).body);
  } catch (error) {
    storageFault(error);
    return {};
  }
}

/** Keeps a part of it beside the rest. */
export async function keepShop(part: ShopOwn): Promise<void> {
  try {
    const kept = await shopDocument();
    kept.change({ ...kept.body, ...(part as JsonObject) }, kept.units, "Shop changed");
  } catch (error) {
    storageFault(error);
  }
}

function read(body: JsonObject): ShopOwn {
  const text = (name: string): string => {
    const value = heldUnder(body, name);
    return typeof value === "string" ? value : "";
  };
  const rates = heldUnder(body, "rates");
  const minutes = heldUnder(body, "minutes");
  return {
    name: text("name"), address: text("address"), phone: text("phone"), license: text("license"),
    logo: text("logo"),
    rates: isObject(rates) ? (rates as Rates) : {},
    minutes: Array.isArray(minutes) ? (minutes.filter(isMinutes) as unknown as Minutes[]) : [],
  };
}

function isMinutes(row: Json): boolean {
  return isObject(row) && typeof row["id"] === "string";
}
