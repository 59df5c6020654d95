/** The shop's own rates, minutes and name: said once, kept on the phone, begun with in every quote. */
import { heldUnder, isObject, type Json, type JsonObject } from "../store/json";
import { openDocument, storageFault } from "../store/store";
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

/** Returns what is kept of the shop; nothing where the storage can't be read. */
export async function shopOwn(): Promise<ShopOwn> {
  try {
    const kept = await openDocument("settings", NAME);
    const { body } = kept;
    kept.close();
    return read(body);
  } catch (error) {
    storageFault(error);
    return {};
  }
}

/** Keeps a part of it beside the rest. */
export async function keepShop(part: ShopOwn): Promise<void> {
  try {
    const kept = await openDocument("settings", NAME);
    kept.change({ ...kept.body, ...(part as JsonObject) }, kept.units, "Shop changed");
    kept.close();
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
