import type { Season } from '#golf/round/season.ts'
import { partWords } from '#golf/round/season-words.ts'
import { NAMED_STROKES } from '#golf/round/settings.ts'
import { costText } from '#golf/strategy/cost-text.ts'
import type { Drawing, Shape } from './drawing.ts'
import { rowText } from './row-text.ts'
import { DRAW_SETTINGS } from './settings.ts'
import { circleSteps, lineSteps } from './steps.ts'

const NAME_ROOM = 162
const FIGURE_ROOM = 40
const PAD_STROKES = 0.05

/**
 * How the parts of the game were struck in a season, one row each: a mark on a whisker as long as so few strokes leave it
 * uncertain, the figure at the end, strokes a round. The line down all rows is what the profile expects; a whisker that keeps
 * clear of it is more than chance. Parts of too few strokes are left out.
 */
export function drawSeason({ parts, rounds, findings }: Season, width = 420): Drawing {
  const sure = new Set(findings.flatMap((finding) => (finding.kind === 'part' ? [finding.part.part] : [])))
  const intervals = parts
    .filter(({ count }) => count >= NAMED_STROKES)
    .map(({ part, strokes, low, high }) => ({
      name: partWords(part),
      value: strokes / rounds,
      low: low / rounds,
      high: high / rounds,
      isSure: sure.has(part),
    }))
  const row = DRAW_SETTINGS.barRow
  const ends = [0, ...intervals.flatMap(({ low, high }) => [low, high])]
  const [least, most] = [Math.min(...ends) - PAD_STROKES, Math.max(...ends) + PAD_STROKES]
  const room = width - NAME_ROOM - FIGURE_ROOM
  const at = (strokes: number): number => NAME_ROOM + ((strokes - least) / (most - least)) * room
  const foot = intervals.length * row
  const shapes: Shape[] = [
    {
      kind: 'path',
      steps: lineSteps([at(0), 0], [at(0), foot]),
      stroke: { paint: 'ink', width: DRAW_SETTINGS.line },
    },
    ...intervals.flatMap(({ name, value, low, high, isSure }, index): Shape[] => {
      const middle = index * row + row / 2
      const whisker = [
        ...lineSteps([at(low), middle], [at(high), middle]),
        ...lineSteps([at(low), middle - 4], [at(low), middle + 4]),
        ...lineSteps([at(high), middle - 4], [at(high), middle + 4]),
      ]
      return [
        rowText(name, [0, middle + 4], isSure ? 'serif-bold' : 'serif'),
        { kind: 'path', steps: whisker, stroke: { paint: 'ink', width: DRAW_SETTINGS.line } },
        {
          kind: 'path',
          steps: circleSteps([at(value), middle], 4),
          fill: isSure ? 'ink' : 'paper',
          stroke: { paint: 'ink', width: DRAW_SETTINGS.line },
        },
        rowText(costText(value), [width, middle + 4], isSure ? 'sans-bold' : 'sans', 'end'),
      ]
    }),
    rowText('← fewer', [NAME_ROOM, foot + 14], 'serif'),
    rowText('more →', [NAME_ROOM + room, foot + 14], 'serif', 'end'),
  ]
  return {
    width,
    height: foot + row,
    title: 'Struck against the profile, strokes a round',
    description: intervals
      .map(
        ({ name, value, low, high, isSure }) =>
          `${name}: ${costText(value)}, between ${costText(low)} and ${costText(high)}${isSure ? ', more than chance' : ''}.`,
      )
      .join(' '),
    shapes,
  }
}
