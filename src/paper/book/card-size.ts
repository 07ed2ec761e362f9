import { type CardSetting, PAPERS, type Paper } from './settings.ts'

/** The side of a sheet on which a card stands, points. */
export interface CardSize {
  readonly width: number
  readonly height: number
}

/** The sheet of a card, upright or on its side. */
export function cardSize(paper: Paper, { isUpright }: CardSetting): CardSize {
  const { width, height } = PAPERS[paper]
  return isUpright ? { width, height } : { width: height, height: width }
}

/** The width of one column of a card, points. */
export function columnWidth({ width }: CardSize, { margin, gap, columns }: CardSetting): number {
  return (width - 2 * margin - (columns - 1) * gap) / columns
}
