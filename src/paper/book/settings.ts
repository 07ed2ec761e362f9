/** Points (1/72 inch), the drawing unit of pages, in a millimetre and an inch. */
export const POINTS_PER_INCH = 72
export const POINTS_PER_MILLIMETRE: number = 72 / 25.4

/** Sheets of paper upright, points: ISO 216 A4, and 8½ × 11 inches. */
export const PAPERS: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  a4: { width: 210 * POINTS_PER_MILLIMETRE, height: 297 * POINTS_PER_MILLIMETRE },
  letter: { width: 8.5 * POINTS_PER_INCH, height: 11 * POINTS_PER_INCH },
}
export type Paper = 'a4' | 'letter'

/** Sizes of type, points: none under 10, so that a page is read at arm's length in rain. Our own, from what pages are for. */
export const TYPE = { small: 10, line: 11.6, club: 14, number: 16, title: 18 } as const

/** Sizes of the type of a card and of its parts, points. */
export interface CardSetting {
  /** On a sheet upright, or on its side. */
  readonly isUpright: boolean
  readonly columns: number
  readonly type: Readonly<Record<keyof typeof TYPE, number>>
  readonly margin: number
  readonly gap: number
  readonly heading: number
  readonly leastRow: number
  readonly rowPadding: number
  readonly numberWidth: number
  readonly factsWidth: number
  readonly boxWidth: number
  readonly rowsPerColumn: number
}

/**
 * The card: margins that every printer reaches, the gap between columns, and the parts of a hole's row. Two columns of nine
 * on a sheet on its side; four rows stand above the fold across.
 */
export const CARD: CardSetting = {
  isUpright: false,
  columns: 2,
  type: TYPE,
  margin: 22,
  gap: 20,
  heading: 54,
  leastRow: 49,
  rowPadding: 3,
  numberWidth: 36,
  factsWidth: 46,
  boxWidth: 27,
  rowsPerColumn: 9,
}

/** The card in large print: one column on an upright sheet. From 16 points on print counts as large; common practice. */
export const LARGE_CARD: CardSetting = {
  isUpright: true,
  columns: 1,
  type: { small: 16, line: 18.6, club: 21, number: 26, title: 25 },
  margin: 22,
  gap: 0,
  heading: 84,
  leastRow: 66,
  rowPadding: 4,
  numberWidth: 58,
  factsWidth: 76,
  boxWidth: 32,
  rowsPerColumn: 9,
}

/** The card of a junior: few words, so they stand larger. */
export const JUNIOR_CARD: CardSetting = {
  ...CARD,
  type: { small: 12, line: 14, club: 17, number: 20, title: 20 },
  heading: 60,
}

/** Marks at the edges where a sheet is folded, points. */
export const FOLD_MARK = 10

/** Widths of lines, points. */
export const RULE = { fine: 0.4, line: 0.7, heavy: 1.2 } as const

/** The pocket book: its margin in points, and the ground shown beside and beyond the hole in metres. */
export const POCKET = { margin: 14, roomBeside: 40, roomAlong: 15 } as const
