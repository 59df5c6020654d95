/** Short words at the foot of the screen, perhaps with one thing to do about them. */
export interface Said {
  words: string;
  action: string;
  act: () => void;
}

let show: (said: Said) => void = () => undefined;

/** Lets `on` show what is said; there is one screen to say it on. */
export function onSaid(on: (said: Said) => void): void {
  show = on;
}

/** Says `words`; with `action` they stay until it is taken or other words come. */
export function say(words: string, action = "", act: () => void = () => undefined): void {
  show({ words, action, act });
}
