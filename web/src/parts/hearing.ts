/** Hears of something for as long as an element is on the page. */
import type { ReactiveController, ReactiveControllerHost } from "lit";

export class Hearing implements ReactiveController {
  private stop: () => void = () => undefined;

  /** @param start begins to listen and returns how to stop that; `host` is drawn by what it hears */
  constructor(host: ReactiveControllerHost, private readonly start: () => () => void) {
    host.addController(this);
  }

  hostConnected(): void {
    this.stop = this.start();
  }

  hostDisconnected(): void {
    this.stop();
  }
}
