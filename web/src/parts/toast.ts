/** Short words at the foot of the screen, perhaps with one thing to do about them. */
export interface Toast {
  words: string;
  action: string;
  act: () => void;
}

let show: (said: Toast) => void = () => undefined;

/** Lets `on` show what is said; there is one screen to say it on. */
export function onToast(on: (said: Toast) => void): void {
  show = on;
}

/** Says `words`; with `action` they stay until it is taken or other words come. */
export function toast(words: string, action = "", act: () => void = () => undefined): void {
  show({ words, action, act });
}
