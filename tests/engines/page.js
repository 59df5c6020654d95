/** What a driver asks of the page it drives: a bag of functions, each of plain values. */
({
  plain: (text) => text.replace(/\s+/g, " ").trim(),

  name(element) {
    const label = element.labels?.[0] ?? element;
    return this.plain(element.getAttribute("aria-label") ?? label.textContent);
  },

  /** What is shown of `css` under these words, if any: under these alone, or else with these in it. */
  found(css, words = "") {
    const isShown = (element) => element.checkVisibility({ visibilityProperty: true });
    const shown = [...document.querySelectorAll(css)].filter(isShown);
    const exact = words ? shown.filter((element) => this.name(element) === words) : [];
    return exact.length > 0 ? exact : shown.filter((element) => this.name(element).includes(words));
  },

  box(element) {
    const { left, top, width, height } = element.getBoundingClientRect();
    return [left, top, width, height];
  },

  /** The box of the one element where a finger reaches its middle; words that say why not. */
  place(css, words) {
    const found = this.found(css, words);
    if (found.length !== 1) return `${found.length} found`;
    const [element] = found;
    const over = () => {
      const [left, top, width, height] = this.box(element);
      return document.elementFromPoint(left + width / 2, top + height / 2);
    };
    const own = [element, ...(element.labels ?? [])];
    const isReached = () => own.some((each) => each.contains(over()));
    if (!isReached()) element.scrollIntoView({ block: "center", behavior: "instant" });
    return isReached() ? this.box(element) : `${over()?.outerHTML.slice(0, 200)} lies over it`;
  },

  boxes(css) {
    return [...document.querySelectorAll(css)].map((element) => this.box(element));
  },

  /** Whether the words stand, in this order, in one element that is shown. */
  says(css, words) {
    const holds = (text) =>
      words.reduce((at, each) => (at < 0 ? at : text.indexOf(each, at)), 0) >= 0;
    return this.found(css).some((element) => holds(this.plain(element.textContent)));
  },

  gone(css, words) {
    return this.found(css, words).length === 0;
  },

  holds(css, value) {
    const elements = document.querySelectorAll(css);
    return elements.length === 1 && elements[0].value === value;
  },

  /** Whether a document that is kept here says this. */
  async keeps(text) {
    const done = (request) =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await done(indexedDB.open("longpoint"));
    const kept = await done(database.transaction("documents").objectStore("documents").getAll());
    database.close();
    return JSON.stringify(kept).includes(JSON.stringify(text));
  },

  /** The value of the one control, all of it chosen, once it has the focus. */
  choose(css) {
    const control = document.querySelector(css);
    if (control === null || control !== document.activeElement) return false;
    control.select();
    return true;
  },

  /** How much wider than the screen the page is with all folds open, once it is laid out. */
  async sideways() {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
    for (let frame = 0; frame < 2; frame += 1) await new Promise(requestAnimationFrame);
    const { scrollWidth, clientWidth } = document.scrollingElement;
    return scrollWidth - clientWidth;
  },

  words() {
    return `${location.hash}, ${document.title}: ${this.plain(document.body.innerText).slice(0, 800)}`;
  },
})
