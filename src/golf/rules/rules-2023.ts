/**
 * What Marram needs of the Rules of Golf as in force from January 2023, as dated data: numbers with their clauses,
 * in our own words. A referee's ruling and the Committee's Local Rules stand above it.
 * Source: Rules of Golf 2023, Rules 4.3, 14.3, 16 to 19 and 21, and Model Local Rules E-5, G-5, G-11, as collected
 * with their standing in `test/fixtures/reference/rules_2023.json`; a test keeps the two equal.
 */
export const RULES_2023 = {
  edition: 'Rules of Golf, 2023',
  inForceFrom: '2023-01-01',
  /** Minutes of search before a ball is lost. */
  searchMinutes: 3,
  penaltyArea: {
    strokeAndDistance: { clause: '17.1d(1)', colours: ['yellow', 'red'], penaltyStrokes: 1 },
    backOnTheLine: { clause: '17.1d(2)', colours: ['yellow', 'red'], penaltyStrokes: 1, clubLengths: 1 },
    lateral: { clause: '17.1d(3)', colours: ['red'], penaltyStrokes: 1, clubLengths: 2 },
  },
  lostOrOut: {
    strokeAndDistance: { clause: '18.2', penaltyStrokes: 1 },
    /** In force only where the Committee has adopted it. */
    nearFairway: { clause: 'Model Local Rule E-5', localRule: 'E-5', penaltyStrokes: 2 },
  },
  unplayable: {
    strokeAndDistance: { clause: '19.2a', penaltyStrokes: 1 },
    backOnTheLine: { clause: '19.2b', penaltyStrokes: 1, clubLengths: 1 },
    lateral: { clause: '19.2c', penaltyStrokes: 1, clubLengths: 2 },
    inBunker: { clause: '19.3a', penaltyStrokes: 1 },
    outOfBunker: { clause: '19.3b', penaltyStrokes: 2, clubLengths: 1 },
  },
} as const
