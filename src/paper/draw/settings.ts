/**
 * Tuning numbers of the drawings. Lengths are drawing units: one CSS pixel on a screen, one point on a page.
 * All are our own choices of engraving, made by eye, except where a source is named.
 */
export const DRAW_SETTINGS = {
  /** Size of a hole's sheet when the caller does not say, units: a portrait page of about 3 to 4. */
  sheetWidth: 620,
  sheetHeight: 860,
  /** Room inside the frame for its scale and figures, units. */
  frameMargin: { left: 40, right: 16, top: 16, bottom: 26 },
  /** Ground shown behind the markers, beyond the green and to each side of the line, metres. */
  roomBehindTeeMetres: 14,
  roomBeyondGreenMetres: 22,
  roomBesideLineMetres: 45,
  /** How much of the hole title and compass may hide before they are left out; the scale of `emptiestPlace`. */
  titleLimit: 260,
  compassLimit: 100,
  /** Widths of lines, units. */
  hairline: 0.45,
  fineLine: 0.7,
  line: 1,
  heavyLine: 1.6,
  /** Paper between the two lines round a tee, units. */
  teeGap: 1.2,
  /** Sizes of type, units. */
  smallType: 10,
  type: 12,
  titleType: 34,
  /** Type that is read at two yards from a printed page: capitals about 2.7 mm high, 5 minutes of arc (common practice for plain sight). */
  farType: 15,
  /** Sand: distance between dots in the middle and their radius, units; closer towards the lip. */
  sandSpacing: 3.1,
  sandDotRadius: 0.48,
  /** Water: distance between full wave lines, height and length of a wave, units. */
  waterSpacing: 7.2,
  waterAmplitude: 0.85,
  waterWavelength: 11,
  /** Rough: distance between strokes and their length, units. */
  roughSpacing: 10.5,
  roughStroke: 3.4,
  heavySpacing: 5.6,
  heavyStroke: 5.6,
  firstCutSpacing: 8,
  firstCutStroke: 1.7,
  /** Rough thins out away from the hole: full up to the first distance from the line, none beyond the second, metres. */
  roughFullMetres: 30,
  roughGoneMetres: 95,
  /** Woods: distance between crowns and their radius, units; scrub: distance between tufts. */
  crownSpacing: 12,
  crownRadius: 5.4,
  tuftSpacing: 10,
  /** A single tree of unknown crown, metres. */
  loneCrownMetres: 3.5,
  /** Out of bounds: depth of the hatched edge and distance of its lines, units. */
  hatchDepth: 11,
  hatchSpacing: 4.4,
  /** Letters along the edge of a penalty area: distance between them, units. */
  letterSpacing: 92,
  /** Distance between the lines of a hatched relief area, units. */
  reliefHatchSpacing: 5.2,
  /** The chart of a relief: widths of hole and column, the gap between them, and the height, units. */
  relief: { chartWidth: 440, columnWidth: 300, columnGap: 14, height: 700 },
  /** Height between two contour lines of a green, metres. */
  greenContourMetres: 0.1,
  /** Heights of a green are taken so far apart to draw them, metres. */
  greenContourCellMetres: 1,
  /** Shares of finishes inside the two isolines. */
  isolineShares: [0.5, 0.9],
  /** Sample finishes drawn of a pattern. */
  sampleCount: 64,
  /** Cells across the density of a pattern, along its longer side. */
  densityCells: 96,
  /** Factor of the kernel's width; the rule of thumb for one axis is 0.9, wider is calmer. */
  densitySmoothing: 1.35,
  /** Half the spread of an arc at a stock carry, radians. */
  arcHalfAngle: 0.28,
  /** Step of the contour lines of expected score, strokes. */
  valueContourStep: 0.25,
  /**
   * A range: the nearest and furthest ground shown, and the ground to each side, as shares of the club's usual length;
   * room for the scale at its foot, units.
   */
  range: { nearestShare: 0.28, furthestShare: 1.36, besideShare: 0.24, sideScale: 14 },
  /** Height of a row of cost bars, units. */
  barRow: 26,
  /** The cost at which a bar fills its room: least and most, strokes. */
  leastFullCost: 0.3,
  mostFullCost: 0.8,
} as const
