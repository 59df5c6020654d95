/** Who signs: the customer, and the shop beside; each by name, by hand, or both. */
import { html, type TemplateResult } from "lit";
import type { Hand, Signed, Stroke } from "../job/quote-body";
import { signedWith, today } from "../job/quote-edits";
import { textField } from "../parts/text-field";
import "./signature";

export interface Signing {
  signed: Signed;
  /** What the customer's name stands under. */
  label?: string;
  customer(part: Hand): void;
  /** Draws the customer's hand, or takes it off; it may settle more than the signature. */
  draw?(strokes: Stroke[]): void;
  shop(part: Hand): void;
}

export function signing({ signed, label = "Signed by", customer, draw, shop }: Signing): TemplateResult {
  const { shop: own = {} } = signed;
  const strokes = draw ?? ((drawn: Stroke[]) => customer(signedWith(signed, drawn)));
  const byShop = (part: Hand): void => shop({ ...part, at: own.at ?? today() });
  return html`${hand("The customer signs", label, signed, (by) => customer({ ...signed, by }), strokes)}
    ${hand("The shop signs", "Signed for the shop by", own, (by) => byShop({ ...own, by }), (drawn) => byShop(signedWith(own, drawn)))}`;
}

function hand(who: string, label: string, { by = "", strokes = [] }: Hand, name: (by: string) => void, draw: (strokes: Stroke[]) => void): TemplateResult {
  return html`<div class="signer" role="group" aria-label=${who}>
    ${textField({ label, value: by, put: name })}
    <lp-signature .strokes=${strokes} .by=${by} .put=${draw}></lp-signature>
  </div>`;
}
