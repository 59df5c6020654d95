/** What is said at the foot of the screen: who says it, how long it stays, how it is raised. */
import type { ReactiveController, ReactiveControllerHost, TemplateResult } from "lit";
import { onToast, type Toast } from "../parts/toast";
import { saying } from "./frame";

/** Milliseconds that plain words stay. */
const STAYS = 6000;
/** Milliseconds that plain words have before other plain words take their place. */
const READ = 2000;

export class Said implements ReactiveController {
  private said: Toast | null = null;
  /** What was offered before plain words came: it stands again after them. */
  private covered: Toast | null = null;
  private raised: Toast | null = null;
  private timer = 0;
  private since = 0;
  private next = 0;

  constructor(private readonly host: ReactiveControllerHost & HTMLElement) {
    host.addController(this);
    onToast((said) => this.hear(said));
  }

  /** Two that come at once are read one after the other; of more the newest is. */
  private hear(said: Toast): void {
    const isPlain = this.said && !this.said.action && !said.action;
    if (isPlain && this.said?.words === said.words) return;
    clearTimeout(this.next);
    const wait = isPlain ? this.since + READ - Date.now() : 0;
    if (wait > 0) this.next = window.setTimeout(() => this.say(said), wait);
    else this.say(said);
  }

  private say(said: Toast | null): void {
    clearTimeout(this.timer);
    this.since = Date.now();
    const isPlain = said && !said.action;
    if (!isPlain) this.covered = null;
    else if (this.said?.action) this.covered = this.said;
    this.said = said;
    if (isPlain) this.timer = window.setTimeout(() => this.say(this.covered), STAYS);
    this.host.requestUpdate();
  }

  /** What was offered to undo belongs to the page that is being left. */
  left(): void {
    this.covered = null;
    if (this.said?.action) this.say(null);
  }

  render(): TemplateResult {
    return saying(this.said, () => {
      const { said } = this;
      this.say(null);
      said?.act();
    });
  }

  /** Shows what is said above whatever was opened last; before the first page there is no place for it. */
  hostUpdated(): void {
    const popover = this.host.querySelector<HTMLElement>(".saying");
    if (!popover || this.raised === this.said) return;
    this.raised = this.said;
    if (popover.matches(":popover-open")) popover.hidePopover();
    if (this.said) popover.showPopover();
  }
}
