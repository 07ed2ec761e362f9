/** Handicap index taken for each level of Broadie's table of 2008, by its column. */
export const LEVELS = { tour: -5, 'low (70-83)': 6, 'mid (84-97)': 16, 'high (98-120)': 31 } as const
