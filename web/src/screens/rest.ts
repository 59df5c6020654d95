/** What stands below a tool's card: drawn two frames after it, and after each change while it is out of sight. */
import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Answer } from "../contract/contract";

export class Rest implements ReactiveController {
  /** Whether it is drawn at all. */
  isDrawn = false;
  private isAskedFor = false;
  /** The answer whose lists stand there. */
  private answer: Answer | null = null;
  private isSeen = true;
  private isDue = false;
  private readonly watch = new IntersectionObserver(
    (seen) => (this.isSeen = seen[seen.length - 1]?.isIntersecting ?? true),
  );

  /** @param stands whether the card is seen by now */
  constructor(
    private readonly host: ReactiveControllerHost & Element,
    private readonly stands: () => boolean,
  ) {
    host.addController(this);
  }

  hostUpdated(): void {
    const drawn = this.host.querySelector(".rest");
    if (drawn) this.watch.observe(drawn);
    if (this.isAskedFor || !this.stands()) return;
    this.isAskedFor = true;
    this.twoFramesLater(() => (this.isDrawn = true));
  }

  hostDisconnected(): void {
    this.watch.disconnect();
  }

  /** Returns the answer to list: the newest, or where it is out of sight the one before it, which follows. */
  listed(newest: Answer | null): Answer | null {
    if (!this.answer || this.isSeen || this.isDue) this.answer = newest;
    this.isDue = false;
    if (this.answer !== newest) this.twoFramesLater(() => (this.isDue = true));
    return this.answer;
  }

  private twoFramesLater(act: () => void): void {
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        act();
        this.host.requestUpdate();
      }),
    );
  }
}
