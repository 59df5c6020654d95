/** The pad of keys for the field in hand. */
import type { TemplateResult } from "lit";
import type { Input } from "../contract/contract";
import type { FormController } from "../form/controller";
import { idOf, nameOf } from "../form/paths";
import { glance } from "../parts/answer";
import { pad } from "../parts/pad";

/** Returns the pad for `input`, whose field is in hand. */
export function formPad(form: FormController, input: Input): TemplateResult {
  const { field, session, active } = form;
  return pad({
    input,
    name: nameOf(session.declaration, active),
    field: session.field(active) ?? { name: input.name },
    split: session.pad,
    entry: field.entry,
    message: form.message(active),
    isFresh: field.isFresh,
    isLast: field.isLast,
    scale: session.scale,
    glance: glance(session),
    press: (change) => field.press(change),
    pick: (over, parts) => void field.pick(over, parts),
    next: () => field.next(),
    close: () => field.close(),
    keyboard: () => ownKeyboard(active),
  });
}

/** The phone decides at focus whether its keyboard comes up. */
function ownKeyboard(active: string): void {
  const field = document.getElementById(idOf(active));
  if (!(field instanceof HTMLInputElement)) return;
  field.blur();
  field.inputMode = "text";
  field.focus();
  field.addEventListener("blur", () => (field.inputMode = "none"), { once: true });
}
