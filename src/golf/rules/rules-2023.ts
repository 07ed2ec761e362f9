/**
 * What Marram needs of the Rules of Golf as in force from January 2023, as dated data: numbers with their clauses,
 * in our own words. A referee's ruling and the Committee's Local Rules stand above it.
 * Source: Rules of Golf 2023, Rules 4.3, 14.3, 16 to 19 and 21, and Model Local Rules E-5, G-5, G-11, as collected
 * with their standing in `test/fixtures/reference/rules_2023.json`; a test keeps the two equal.
 */
export const RULES_2023 = {
  edition: 'Rules of Golf, 2023',
  inForceFrom: '2023-01-01',
  /** The ball is played as it lies unless a Rule says otherwise; in a penalty area too. Clauses from memory. */
  asItLies: { clause: '9.1', penaltyAreaClause: '17.1b' },
  /** Free relief in the general area; a path is one when its surface is made and the Committee has not said otherwise. */
  immovableObstruction: { clause: '16.1b', penaltyStrokes: 0, clubLengths: 1 },
  /**
   * Where a stroke is played again: anywhere in the teeing area, which is so many club-lengths deep; elsewhere within
   * one club-length of the spot, not nearer the hole, in the same area of the course; on a green at the spot.
   * Clause and sizes from memory.
   */
  previousSpot: { clause: '14.6', clubLengths: 1, teeingAreaClubLengths: 2 },
  /** Minutes of search before a ball is lost. */
  searchMinutes: 3,
  penaltyArea: {
    strokeAndDistance: { clause: '17.1d(1)', colours: ['yellow', 'red'], penaltyStrokes: 1 },
    backOnTheLine: { clause: '17.1d(2)', colours: ['yellow', 'red'], penaltyStrokes: 1, clubLengths: 1 },
    lateral: { clause: '17.1d(3)', colours: ['red'], penaltyStrokes: 1, clubLengths: 2 },
  },
  lostOrOut: {
    strokeAndDistance: { clause: '18.2', penaltyStrokes: 1 },
    /**
     * In force only where the Committee has adopted it. The relief area lies between the lines from the hole through
     * the ball's reference point and through the nearest fairway not nearer the hole, with so many club-lengths
     * outside each, not nearer the hole than the ball's reference point, in the general area. That shape is from memory.
     */
    nearFairway: {
      clause: 'Model Local Rule E-5',
      localRule: 'E-5',
      penaltyStrokes: 2,
      sideClubLengths: 2,
    },
  },
  unplayable: {
    strokeAndDistance: { clause: '19.2a', penaltyStrokes: 1 },
    backOnTheLine: { clause: '19.2b', penaltyStrokes: 1, clubLengths: 1 },
    lateral: { clause: '19.2c', penaltyStrokes: 1, clubLengths: 2 },
    inBunker: { clause: '19.3a', penaltyStrokes: 1 },
    outOfBunker: { clause: '19.3b', penaltyStrokes: 2, clubLengths: 1 },
  },
  /** What a device may do while a round is played; everything may be done before it. */
  devices: {
    clause: '4.3a(1) to (3)',
    /** Distance and direction, forecasts, temperature, what was gathered beforehand, recording for afterwards. */
    allowed: ['distance', 'direction', 'forecast', 'temperature', 'prepared-advice', 'recording'],
    /** Elevation, a line or club for where the ball lies, aligning, wind measured there, this round's own shots. */
    notAllowed: ['elevation', 'advice-for-position', 'alignment', 'measured-wind', 'round-statistics'],
    /** In force where the Committee forbids devices altogether. */
    noDistanceLocalRule: 'G-5',
  },
  /** What may be carried on paper while a round is played. */
  greenBook: {
    clause: 'Clarification 4.3a/1',
    /** 3/8 inch for 5 yards: a green is drawn no larger than 1 to this. */
    scaleDenominator: 480,
    pageInches: [4.25, 7],
    /** A single sheet may be larger when it holds so many holes, each green to scale. */
    largerSheetHoles: 9,
    /** In force where the Committee allows only an approved book: then ours is text alone. */
    approvedOnlyLocalRule: 'G-11',
  },
} as const
