/** Tuning numbers of the hole desk. All are our own choices unless a source is named. */
export const DESK_SETTINGS = {
  /** Scale of the wind, m/s, and its step. A fresh breeze ends at 10.7 m/s on the Beaufort scale; golf is played a little beyond. */
  mostWind: 15,
  windStep: 1,
  /** Step of the wind's direction, degrees. */
  windFromStep: 10,
  /** Firmness from soft to firm (`day/1`), and its step. */
  softest: 0.4,
  firmest: 1.7,
  firmnessStep: 0.1,
  /** Scale of the green speed, feet of the ramp test, and its step: most greens are cut to 7 to 13 (common practice). */
  slowestGreen: 6,
  fastestGreen: 14,
  greenSpeedStep: 0.5,
  /** The markers may be put so far ahead or back, metres. */
  furthestMarkers: 40,
  /** Scale of the player's spread: what the ruler of flips looks through. */
  tightest: 0.6,
  widest: 1.6,
  spreadStep: 0.1,
  /** A side of a hazard may be moved so far, metres. */
  furthestHazard: 100,
  /** The chart is enlarged at most so many times, by so much with each press of its buttons. */
  largestScale: 16,
  enlargeStep: 1.6,
  /** So long after the last turn of a wheel the chart is engraved anew, ms. */
  wheelRestMilliseconds: 160,
  /** What is only for paper is drawn anew so long after the last change of the hole or its marks, ms. */
  settleMilliseconds: 400,
  /** A press that moves less than this is a tap, CSS pixels. */
  tapPixels: 6,
  /** The aim may be dragged this far to each side of the first leg, degrees. */
  widestAim: 60,
  /** Small and large step of the aim by button and key, in the reader's units (yards or metres). */
  aimStep: 1,
  aimLargeStep: 5,
  /** Step of the pin by button and key, metres: about one pace. */
  pinStep: 0.9144,
  /** A chart narrower than this has no title block: it would hide the hole, and the head of the page says it. CSS pixels. */
  titleWidth: 480,
  /** Rows of clubs shown before the rest is asked for. */
  clubRows: 5,
  /** So long a club glides to its new place in the table, ms. */
  glideMilliseconds: 240,
  /** Coarse and fine step of the cross with which shots are put down, in the reader's units. */
  shotStep: 5,
  shotFineStep: 1,
  /** In full sun the lines of every drawing are so many times as heavy. */
  sunLineWeight: 1.6,
  /** In large print what is read is so many times as large; the style sheet enlarges the page itself by the same. */
  largePrintScale: 1.25,
  /** Shots shown before the rest is asked for. */
  shotRows: 10,
  /** Steps of undo are kept over a reload so long after the last edit, ms. */
  keepStepsMilliseconds: 400,
  /** Edits of one kind within this time are one step of undo, ms: a drag is one step. */
  oneEditMilliseconds: 800,
} as const
