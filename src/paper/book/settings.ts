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

/**
 * The card, points: margins that every printer reaches, the gap between columns, and the parts of a hole's row. Two columns
 * of nine on a sheet on its side; four rows stand above the fold across.
 */
export const CARD = {
  margin: 22,
  gap: 20,
  heading: 54,
  leastRow: 49,
  rowPadding: 3,
  numberWidth: 36,
  factsWidth: 46,
  boxWidth: 27,
  rowsPerColumn: 9,
  foldMark: 10,
} as const

/** Widths of lines, points. */
export const RULE = { fine: 0.4, line: 0.7, heavy: 1.2 } as const

/** The pocket book: its margin in points, and the ground shown beside and beyond the hole in metres. */
export const POCKET = { margin: 14, roomBeside: 40, roomAlong: 15 } as const
