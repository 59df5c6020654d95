/**
 * Everything on the page that an eye or a thumb would object to, in words: what is cut off, what
 * overlaps, what is smaller than `least` pixels to tap.
 */
(least) => {
  const found = [];
  const told = (element) => {
    const words = element.textContent.trim().replace(/\s+/g, " ").slice(0, 60);
    const { left, top, right, bottom } = element.getBoundingClientRect();
    const place = [left, top, right, bottom].map(Math.round).join(" ");
    return `${element.localName}.${element.getAttribute("class")} "${words}" at ${place}`;
  };
  const shown = (selector) =>
    [...document.querySelectorAll(selector)].filter((element) =>
      element.checkVisibility({ visibilityProperty: true }),
    );

  // A pixel of tolerance: boxes end on fractions of pixels, scroll sizes are whole ones.
  const isHidden = (way) => way === "hidden" || way === "clip";
  const cutOff = (element) => {
    const { overflowX, overflowY } = getComputedStyle(element);
    const { scrollWidth, clientWidth, scrollHeight, clientHeight } = element;
    if (isHidden(overflowX) && scrollWidth > clientWidth + 1) {
      found.push(`cut off at the side: ${told(element)}`);
    }
    if (isHidden(overflowY) && scrollHeight > clientHeight + 1) {
      found.push(`cut off below: ${told(element)}`);
    }
  };
  const beside = (element, left, right, words) => {
    const box = element.getBoundingClientRect();
    if (box.width > 0 && (box.right > right + 1 || box.left < left - 1)) {
      found.push(`beside ${words}: ${told(element)}`);
    }
  };
  const besideOf = (element, around, words) => {
    const { left, right } = around.getBoundingClientRect();
    beside(element, left, right, words);
  };
  const overlap = (one, other) => {
    const [a, b] = [one, other].map((element) => element.getBoundingClientRect());
    const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
    const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
    if (wide > 1 && high > 1) found.push(`overlapping: ${told(one)} and ${told(other)}`);
  };
  const apart = (elements) =>
    elements.forEach((one, at) => elements.slice(at + 1).forEach((other) => overlap(one, other)));

  const wide = document.scrollingElement.scrollWidth;
  if (wide > innerWidth) found.push(`the page is ${wide} wide`);

  // Names beside "More" and a fold's gist are a foretaste that ends in dots: a tap shows it all.
  const hidden = ".unseen, .unseen *, .fold-names, .gist, .gist *";
  for (const element of shown(`body *:not(svg, svg *, input, select, ${hidden})`)) {
    cutOff(element);
    beside(element, 0, innerWidth, "the page");
    const holders = ".field, .line, .rowline, .key, .card, .chip, .caution";
    const around = element.parentElement.closest(holders);
    if (around) besideOf(element, around, "its card");
  }

  apart(
    shown(
      ".field, .message, .rowline, .addrow, .fold-inputs, #answer, .result lp-drawing, .block, " +
        ".cautions > .caution, .fold, .rest > .actions",
    ),
  );
  apart(shown("#answer .headline > *, #answer .big, #answer .besidefigure, #answer .strip"));
  for (const line of shown("button.line, .summary, .head, .glance, .dock, .entryline, .pad")) {
    apart([...line.children].filter((each) => !each.matches(".unseen")));
  }

  // A control's label is part of its target: a tap on it is a tap on the control.
  for (const target of shown("button, a[href], input, select, textarea, summary, [role=slider]")) {
    const boxes = [target, ...(target.labels ?? [])].map((each) => each.getBoundingClientRect());
    const most = (side) => Math.max(...boxes.map((box) => box[side]));
    const fewest = (side) => Math.min(...boxes.map((box) => box[side]));
    const [width, height] = [most("right") - fewest("left"), most("bottom") - fewest("top")];
    if (Math.min(width, height) < least - 0.01) {
      found.push(`only ${width} x ${height} to tap: ${target.id || told(target)}`);
    }
  }

  for (const drawing of shown("svg.drawing:not(.thumbnail)")) {
    const holder = drawing.closest("lp-drawing");
    for (const letters of drawing.querySelectorAll("text")) {
      besideOf(letters, holder, "its drawing");
    }
  }
  return found;
}
