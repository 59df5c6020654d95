/** Line drawings of the house, 24 by 24. */
export const LINES: { [name: string]: string } = {
  // A sheet of paper with lines.
  job: "M5 3h14v18H5zM8.5 8h7M8.5 12h7M8.5 16h4",
  // A stack of boards on two stickers.
  yard: "M3 6h18v3.5H3zM3 14.5h18V18H3zM7 9.5v5M17 9.5v5",
  // A piece cut to a long point.
  saw: "M3 19h17V5zM8 19v-3.5",
  // A door standing in its frame.
  site: "M4 21V3h16v18M4 21h3M17 21h3M8 21V6.5h8V21M13.5 13v2",
  earlier: "M12 21a9 9 0 1 0-8.5-6M3 9.5V15h5M12 7v5.5l3.5 2",
  add: "M12 5v14M5 12h14",
  up: "M12 19V5M6 11l6-6 6 6",
  down: "M12 5v14M6 13l6 6 6-6",
  back: "M15 5l-7 7 7 7",
  handle: "M5 8h14M5 12h14M5 16h14",
  erase: "M9 6h11v12H9l-6-6zM12.5 9.5l4 5M16.5 9.5l-4 5",
  close: "M6 6l12 12M18 6L6 18",
  more: "M6 9l6 6 6-6",
  less: "M6 15l6-6 6 6",
  undo: "M9 4L4 9l5 5M4 9h10a5 5 0 0 1 0 10h-4",
  redo: "M15 4l5 5-5 5M20 9H10a5 5 0 0 0 0 10h4",
  camera: "M3 8h4l2-3h6l2 3h4v12H3zM12 17a3.5 3.5 0 1 0 0-7 3.5 3.5 0 0 0 0 7z",
};
