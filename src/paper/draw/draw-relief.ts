import type { Hole } from '#golf/course/hole.ts'
import type { Relief } from '#golf/strategy/relief.ts'
import { clauseWords, optionWords, reliefSentence, situationWords } from '#golf/strategy/relief-words.ts'
import { drawSurvey } from './draw-hole.ts'
import type { Drawing } from './drawing.ts'
import type { HoleDrawingOptions } from './hole-drawing-options.ts'
import { drawReliefInset, insetSheet, insetWindow } from './relief/draw-relief-inset.ts'
import { drawReliefHeading, drawReliefLegend, HEADING_HEIGHT } from './relief/draw-relief-legend.ts'
import { drawReliefMarks } from './relief/draw-relief-marks.ts'
import { rulerOf } from './ruler.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { layOutSheet } from './sheet.ts'

/** What of a hole's drawing can be chosen here. */
export type ReliefDrawingOptions = Pick<HoleDrawingOptions, 'units' | 'courseName' | 'credit' | 'height'>

/**
 * What the Rules give one ball, as a chart: the hole with the ball's way, its point of crossing and the lettered spots;
 * beside it the ground that matters drawn large with the relief areas hatched, and the options by their letters.
 */
export function drawRelief(hole: Hole, relief: Relief, options: ReliefDrawingOptions = {}): Drawing {
  const { chartWidth, columnWidth, columnGap, height: usual } = DRAW_SETTINGS.relief
  const height = options.height ?? usual
  const sheet = layOutSheet(hole, { width: chartWidth, height })
  const ruler = rulerOf(options.units)
  const survey = drawSurvey(hole, sheet, options)
  const left = chartWidth + columnGap
  const { top } = sheet.frame
  const inset = insetSheet(relief, { left: left + 3, top: top + HEADING_HEIGHT + 3, side: columnWidth - 6 })
  return {
    width: left + columnWidth + columnGap,
    height,
    title: `Hole ${hole.ref}, ${situationWords(relief.situation)}`,
    description: describe(relief),
    shapes: [
      ...survey.ground,
      insetWindow(inset, sheet),
      drawReliefMarks(relief, sheet, hole.pin),
      ...survey.furniture,
      ...drawReliefHeading(relief, { left, top, width: columnWidth }),
      ...drawReliefInset(hole, relief, inset, ruler),
      ...drawReliefLegend(
        relief,
        { left, top: top + HEADING_HEIGHT + columnWidth + 14, width: columnWidth },
        ruler,
      ),
    ],
  }
}

/** The options in sentences, for people who cannot see the drawing. */
function describe(relief: Relief): string {
  const listed = relief.options.map(
    ({ letter, kind, clause, strokes }) =>
      `${letter}: ${optionWords(kind)}, ${clauseWords(clause)}${strokes === null ? '' : `, expected score ${strokes.toFixed(2)}`}.`,
  )
  return [reliefSentence(relief), ...listed].join(' ')
}
