/** Tuning numbers of the course room: unit, meaning, source. */

/** Ground within this distance of the hole line belongs to the hole, metres. Our assumption: beyond what the widest usual pattern reaches. */
export const CORRIDOR_HALF_WIDTH_METRES = 90

/** Tee markers stand within this distance of the stretch of line they start, metres. Our assumption: back tees behind the line's start and tees built to its side. */
export const TEE_NEAR_METRES = 40

/** Forward markers stand at most so far up the hole, metres, and at most that share of the line. Our assumption. */
export const TEE_STRETCH_METRES = 150
export const TEE_STRETCH_SHARE = 0.45

/** A bend nearer to the markers than this does not set the direction of the hole frame, metres. Our assumption. */
export const BEND_TOO_NEAR_METRES = 15

/** A green outside which the line ends is still the hole's own within this distance, metres. Our assumption. */
export const GREEN_NEAR_METRES = 25

/** How far in from the front or back edge the hole is cut when asked for by name: 4 yards, the least distance from an edge that the Course Rating System Manual (2020) assumes. */
export const PIN_MARGIN_METRES: number = 4 * 0.9144

/** The same as a share of the depth, for greens too shallow for the margin. Our assumption. */
export const PIN_MARGIN_DEPTH_SHARE: number = 1 / 3

/** A hole location may be typed or dragged so far beyond the surveyed edge before it is refused, metres. Our assumption: the width of a traced line. */
export const PIN_EDGE_TOLERANCE_METRES = 0.5

/** One pace on a pin sheet, metres: one yard, common practice. */
export const PACE_METRES = 0.9144

/** Edges of hazards are measured at places at most so far apart, metres. Our assumption: half of it is the largest error along the line, at a bend. */
export const EDGE_STEP_METRES = 1

/** Hazards are measured up to so far behind the pin, metres. Our assumption: an overhit approach. */
export const BEYOND_PIN_METRES = 60

/** Fairway widths are told at every such distance, metres: the step of the product's own `measure`. */
export const WIDTH_STEP_METRES = 20

/** The pinch is looked for at every such distance, metres. Our assumption. */
export const PINCH_STEP_METRES = 2

/** A pinch nearer to the tee than this narrows nobody's shot, metres. Our assumption. */
export const PINCH_FROM_METRES = 100

/** Neither the rounded ends of a fairway nor its neck before the green are a pinch, metres from each. Our assumption. */
export const FAIRWAY_END_METRES = 20

/** Fairway that lies wholly further off the line than this is another hole's, metres. Our assumption. */
export const FAIRWAY_NEAR_METRES = 30

/** Widths, and distances off the line, that differ by less are the same, metres. Our assumption: far under the accuracy of any survey. */
export const PINCH_TIE_METRES = 0.05

/**
 * What a day on a course can be. Our assumption throughout: wide enough for every day on which golf is played, narrow
 * enough to catch a wrong unit (a temperature in Fahrenheit, a pressure in inches of mercury, a wind in km/h).
 */
export const DAY_RANGES = {
  windMetresPerSecond: { from: 0, to: 40, unit: 'm/s' },
  windFromDegrees: { from: 0, to: 360, unit: 'degrees from north' },
  temperatureCelsius: { from: -30, to: 55, unit: '°C' },
  altitudeMetres: { from: -450, to: 5000, unit: 'm' },
  pressureHectopascal: { from: 500, to: 1100, unit: 'hPa' },
  firmness: { from: 0.2, to: 2.5, unit: 'times the normal run' },
  greenSpeedFeet: { from: 4, to: 16, unit: 'feet' },
  pinPaces: { from: 0, to: 80, unit: 'paces' },
  teeMovedMetres: { from: -150, to: 150, unit: 'm' },
} as const

/** A hole line shorter or longer than this is no hole, metres. Common practice: the shortest pitch-and-putt hole and the longest par 6 lie well inside. */
export const HOLE_LENGTH_METRES = { least: 60, most: 700 } as const

/** Refs that are numbers run from 1 to this. Our assumption: at most two courses of 18 in one file. */
export const HIGHEST_REF = 36

/** The card closes with the line within the larger of these, metres and share of the card. Our assumption: markers stand some metres off their plate. */
export const CARD_CLOSES_METRES = 5
export const CARD_CLOSES_SHARE = 0.03

/** A green so far from the line's end is somewhere else, not a line drawn short, metres. Our assumption. */
export const GREEN_ASTRAY_METRES = 100

/** What lies further than this from every hole line has no part in play, metres. Our assumption. */
export const FAR_FROM_HOLES_METRES = 300

/** A piece of ground smaller than this is a slip of the hand, square metres. Our assumption: a pot bunker has 3 or more. */
export const LEAST_AREA_SQUARE_METRES = 0.2

/** What the numbers of the ground can be. Our assumption, wide. */
export const GROUND_RANGES = {
  fallPercent: { from: 0, to: 20 },
  fallTowardDegrees: { from: 0, to: 360 },
  heightMetres: { from: 0, to: 100 },
  crownBaseMetres: { from: 0, to: 30 },
  densityPerMetre: { from: 0, to: 10 },
  elevationMetres: { from: -450, to: 5000 },
} as const

/** Pars a hole can have. Common practice. */
export const PARS = { least: 3, most: 6 } as const

/** Slope Ratings run from 55 to 155: Course Rating System. */
export const SLOPE_RATINGS = { least: 55, most: 155 } as const

/** A grid with longer cells says nothing of the slope of a green, metres. Our assumption: a green is about 30 m across, so such a cell holds it whole. */
export const COARSEST_SLOPE_CELL_METRES = 30

/** A spot height so near a green tells of its shape too, metres. Our assumption: the apron, with run-offs and false fronts. */
export const SPOT_APRON_METRES = 8

/** Spot heights hold a plane when they lie so far from the line nearest to them, root mean square metres. Our assumption: a level read to a centimetre then gives the slope across to about 1 per cent. */
export const LEAST_SPOT_SPREAD_METRES = 1

/** No more spot heights than this shape one green. Our assumption: one every two paces; a grid says more than that better. */
export const MOST_SPOTS = 150

/**
 * How much a surface through spot heights may miss them to bend less, square metres. Our assumption: on a green it moves
 * the surface by about a millimetre, and keeps two spots in nearly one place from making a step.
 */
export const SPOT_SMOOTHING_SQUARE_METRES = 1

/** Beyond the measured heights a green goes over into the plane that fits them best within this, metres. Our assumption: the depth of an apron and the ground around it. */
export const CONTOURS_FADE_METRES = 15

/** Cells of a grid that shows the contours of a green, metres. Our assumption: a tier's face is some 3 m long; under half a metre a file grows without saying more. */
export const GREEN_GRID_CELL_METRES = { from: 0.5, to: 3 } as const

/** No green has more heights in its grid. Our assumption: 50 m by 50 m at half a metre. */
export const MOST_GRID_NODES = 10_000

/**
 * A green steeper than this is a slip of the survey, per cent. The mean: a ball on a green of 9 ft comes to rest on no
 * slope over 8.7 per cent (decelerations of 0.559 / 9 g against 5/7 of the slope, see docs/method.md). Anywhere: our
 * assumption, the mown face of a tier.
 */
export const STEEPEST_GREEN = { meanPercent: 8, anywherePercent: 30 } as const

/** A typed mean fall and the measured heights of a green agree within this, per cent. Our assumption: a fall read by eye. */
export const SAME_FALL_PERCENT = 1.5

/** A grid's heights are taken over a green at places so far apart to fit its mean fall, metres. Our assumption: finer than any cell that gives only a fall. */
export const FALL_SAMPLES_METRES = 2

/** A green's own grid reaches so far beyond its outline, metres. Our assumption: the apron on which chips land. */
export const GREEN_GRID_MARGIN_METRES = 4

/**
 * Trees and scrub where the course file is silent: height, metres, and chance per metre of flight through the crowns of
 * being caught. Our assumption, after woods beside fairways; held against no published figure.
 */
export const CROWN_DEFAULTS = {
  trees: { heightMetres: 12, densityPerMetre: 0.06 },
  scrub: { heightMetres: 1.5, densityPerMetre: 0.4 },
  tree: { heightMetres: 10, densityPerMetre: 0.15 },
} as const
/** Lowest branches of trees as a share of their height, and at most, metres: a stand in play is walked under. Our assumption. Scrub reaches the ground. */
export const CROWN_BASE_SHARE = 0.25
export const HIGHEST_DEFAULT_CROWN_BASE_METRES = 3
/** Radius of a single tree's crown as a share of its height. Our assumption, as the picture draws it. */
export const CROWN_RADIUS_SHARE = 0.3
/** Chance per metre under the lowest branches, trunks and low twigs, as a share of the crown's. Our assumption. */
export const TRUNK_DENSITY_SHARE = 0.25
/** Single trees this near to the hole line, metres, are among its measures. Our assumption: a wide drive finds them. */
export const TREES_NEAR_LINE_METRES = 30
