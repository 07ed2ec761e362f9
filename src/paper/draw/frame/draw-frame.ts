import type { Shape, Step } from '../drawing.ts'
import type { Ruler } from '../ruler.ts'
import { DRAW_SETTINGS } from '../settings.ts'
import type { Sheet } from '../sheet.ts'
import { rectangleSteps } from '../steps.ts'

/** Width of the scale along the frame, units. */
const BAR = 5

/**
 * The frame of a chart: a neat line, and along both sides a scale in alternating bars of 25 with figures each
 * 50, measured straight up the first leg from the markers.
 */
export function drawFrame(sheet: Sheet, ruler: Ruler): Shape[] {
  const { left, top, right, bottom } = sheet.frame
  const level = (count: number): number => sheet.toSheet([0, count * ruler.metres])[1]
  const [lowest, highest] = [
    Math.ceil(sheet.toHole([0, bottom])[1] / ruler.metres / 25) - 1,
    Math.floor(sheet.toHole([0, top])[1] / ruler.metres / 25) + 1,
  ]
  const bars: Step[] = []
  const ticks: Step[] = []
  const figures: Shape[] = []
  for (let index = lowest; index <= highest; index += 1) {
    const [low, high] = [
      Math.max(top, Math.min(bottom, level(index * 25))),
      Math.max(top, Math.min(bottom, level((index + 1) * 25))),
    ]
    if (index >= 0 && index % 2 === 0 && low > high)
      bars.push(
        ...rectangleSteps(left - BAR, high, BAR, low - high),
        ...rectangleSteps(right, high, BAR, low - high),
      )
    if (index < 0 || low !== level(index * 25)) continue
    ticks.push(['M', left - BAR - 3, low], ['L', left - BAR, low])
    if (index % 2 === 0)
      figures.push({
        kind: 'text',
        text: (index * 25).toString(),
        at: [left - BAR - 5, low + 3.5],
        size: DRAW_SETTINGS.smallType,
        paint: 'ink',
        face: 'sans',
        anchor: 'end',
      })
  }
  const middle = (top + bottom) / 2
  return [
    { kind: 'path', steps: bars, fill: 'ink' },
    { kind: 'path', steps: ticks, stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine } },
    {
      kind: 'path',
      steps: [
        ...rectangleSteps(left, top, right - left, bottom - top),
        ...rectangleSteps(left - BAR, top - BAR, right - left + 2 * BAR, bottom - top + 2 * BAR),
      ],
      stroke: { paint: 'ink', width: DRAW_SETTINGS.fineLine },
    },
    {
      kind: 'path',
      steps: rectangleSteps(
        left - BAR - 2,
        top - BAR - 2,
        right - left + 2 * BAR + 4,
        bottom - top + 2 * BAR + 4,
      ),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.hairline },
    },
    ...figures,
    {
      kind: 'text',
      text: `${ruler.word} from the markers`,
      at: [10, middle],
      size: DRAW_SETTINGS.smallType,
      paint: 'ink',
      face: 'serif-italic',
      anchor: 'middle',
      turn: -90,
    },
  ]
}
