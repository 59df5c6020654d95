/** Draws a long list part by part: the next once what is there was seen. */
import type { ReactiveController, ReactiveControllerHost } from "lit";

export class Growing implements ReactiveController {
  private isDue = false;

  /**
   * @param most rows that are drawn at first, and from then on so far; all of them in the end
   * @param more rows that come with each part
   * @param total how many rows there are by now
   */
  constructor(
    private readonly host: ReactiveControllerHost,
    public most: number,
    private readonly more: number,
    private readonly total: () => number,
  ) {
    host.addController(this);
  }

  hostUpdated(): void {
    if (this.isDue || this.most >= this.total()) return;
    this.isDue = true;
    requestAnimationFrame(() => setTimeout(() => this.grow()));
  }

  private grow(): void {
    this.isDue = false;
    const most = this.most + this.more;
    this.most = most < this.total() ? most : Infinity;
    this.host.requestUpdate();
  }
}
