/** Who signs: the customer, and the shop beside; each by name, by hand, or both. */
import { html, nothing, type TemplateResult } from "lit";
import type { Job } from "../job/job";
import type { Hand, Signed, Stroke } from "../job/quote-body";
import { signedWith, today } from "../job/quote-edits";
import { textField } from "../parts/text-field";
import "./signature";

export interface Signing {
  job: Job;
  signed: Signed;
  /** What the customer's name stands under. */
  label?: string;
  customer(part: Hand): void;
  /** Draws the customer's hand, or takes it off; it may settle more than the signature. */
  draw?(strokes: Stroke[]): void;
  shop(part: Hand): void;
}

export function signing({ job, signed, label = "Signed by", customer, draw, shop }: Signing): TemplateResult {
  const { shop: own = {} } = signed;
  const strokes = draw ?? ((drawn: Stroke[]) => customer(signedWith(signed, drawn)));
  const byShop = (part: Hand): void => shop({ ...part, at: own.at ?? today() });
  const known = signersOf(job);
  return html`${hand("The customer signs", { label, known: known.customer }, signed, (by) => customer({ ...signed, by }), strokes)}
    ${hand("The shop signs", { label: "Signed for the shop by", known: known.shop }, own, (by) => byShop({ ...own, by }), (drawn) => byShop(signedWith(own, drawn)))}`;
}

/** Who signed for each side last, and the job's customer: a name is said once. */
function signersOf({ body: { customer, quote } }: Job): { customer: string; shop: string } {
  const papers: Signed[] = [quote?.signed ?? {}, ...[...(quote?.extras ?? [])].reverse(), quote?.agreed ?? {}];
  return {
    customer: papers.find(({ by }) => by)?.by ?? customer?.name ?? "",
    shop: papers.find(({ shop }) => shop?.by)?.shop?.by ?? "",
  };
}

type Naming = { label: string; known: string };

function hand(who: string, { label, known }: Naming, { by = "", strokes = [] }: Hand, name: (by: string) => void, draw: (strokes: Stroke[]) => void): TemplateResult {
  return html`<div class="signer" role="group" aria-label=${who}>
    ${textField({ label, value: by, put: name })}
    ${by || !known ? nothing : html`<button type="button" @click=${() => name(known)}>${known}</button>`}
    <lp-signature .strokes=${strokes} .by=${by} .put=${draw}></lp-signature>
  </div>`;
}
