/**
 * Share of the course handicap that a player keeps in each form of play, per cent. A list is what each partner gives
 * to the side's one handicap, lowest handicap first. Source: Rules of Handicapping 2024, Appendix C.
 */
export const HANDICAP_ALLOWANCES = {
  'Individual stroke play': 95,
  'Individual Stableford': 95,
  'Individual par/bogey': 95,
  'Individual maximum score': 95,
  'Four-ball stroke play': 85,
  'Four-ball Stableford': 85,
  'Four-ball par/bogey': 90,
  'Individual match play': 100,
  'Four-ball match play': 90,
  Foursomes: [50, 50],
  Greensomes: [60, 40],
  'Pinehurst/Chapman': [60, 40],
  'Best 1 of 4 stroke play': 75,
  'Best 2 of 4 stroke play': 85,
  'Best 3 of 4 stroke play': 100,
  'All 4 of 4 stroke play': 100,
  'Scramble 4': [25, 20, 15, 10],
  'Scramble 3': [30, 20, 10],
  'Scramble 2': [35, 15],
  'Total of 2 match play': 100,
  'Best 1 of 4 par/bogey': 75,
  'Best 2 of 4 par/bogey': 80,
  'Best 3 of 4 par/bogey': 90,
  '4 of 4 par/bogey': 100,
} as const
