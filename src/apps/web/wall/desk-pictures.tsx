import type { Hole } from '#golf/course/hole.ts'
import type { Plan, PlanOption } from '#golf/strategy/plan.ts'
import { clubWords } from '#golf/strategy/plan-sentence.ts'
import { drawCostBars } from '#paper/draw/draw-cost-bars.ts'
import { drawFlipScale } from '#paper/draw/draw-flip-scale.ts'
import { drawHole } from '#paper/draw/draw-hole.ts'
import type { HoleDrawingOptions } from '#paper/draw/hole-drawing-options.ts'
import type { Desk, Reader } from '../desk/desk.ts'
import { type RulerScale, valueOn } from '../desk/ruler.ts'
import { GoingCurves } from '../going/going-curves.tsx'
import type { NamedHazard } from '../hazard-words.ts'
import type { Situation } from '../planning/use-planning.ts'
import { scaleWords } from '../scale-words.ts'
import { costHeading, unbroken, verdict } from '../words.ts'
import type { WallPicture } from './wall.tsx'

/** What is on the desk, as far as the wall shows it. */
export interface Shown {
  readonly plan: Plan
  readonly option: PlanOption
  readonly hole: Hole
  /** The hole as it was surveyed, which the scales count from. */
  readonly surveyed: Hole
  readonly desk: Desk
  readonly situation: Situation
  readonly reader: Reader
  readonly hazards: readonly NamedHazard[]
  readonly scales: readonly RulerScale[]
  readonly survey: HoleDrawingOptions
  readonly marks: HoleDrawingOptions
}

/** A drawing fills the wall, so a small sheet is large type. */
const SHEET_LENGTH = 350
const SHEET_BREADTH = 275
const BARS_WIDTH = 330
const SCALE_WIDTH = 360
/** More bars than this are too small at the back of a room. */
const BARS = 6

/** The pictures in the order of a lesson: the plan, where the shots finish, what clubs cost, what flips it, go or lay up. `isTall`: the wall is higher than wide. */
export function deskPictures(shown: Shown, isTall: boolean): readonly WallPicture[] {
  const { plan, option, hole, survey, marks, desk, surveyed, hazards, reader, situation } = shown
  // Carries of the other clubs are another idea, and their names lie in the pattern.
  const { arcs: _, ...finishes } = marks
  const { pattern: __, ...aim } = finishes
  const [width, height] = isTall ? [SHEET_BREADTH, SHEET_LENGTH] : [SHEET_LENGTH, SHEET_BREADTH]
  const chart = { ...survey, width, height, hasTitle: false }
  return [
    { words: unbroken(plan.sentence), picture: drawHole(hole, { ...chart, ...aim }) },
    {
      words: `Where the ${clubWords(option)} finishes: every second one in the inner line, nine in ten in the outer.`,
      picture: drawHole(hole, { ...chart, ...finishes }),
    },
    {
      words: `${verdict(plan)} The bars: ${costHeading(plan)}.`,
      picture: drawCostBars(plan.options.slice(0, BARS), { width: BARS_WIDTH, chosen: option.club }),
    },
    ...shown.scales.map(({ quantity, crossings }): WallPicture => {
      const { label, low, high, rest, ends } = scaleWords(
        quantity,
        valueOn(desk, surveyed, quantity),
        hazards,
        reader,
      )
      const clubs =
        crossings.length === 0
          ? 'nothing likely changes the club'
          : 'a tick stands where another club takes over'
      return {
        words: `${label}: ${clubs}.`,
        picture: drawFlipScale({ title: label, low, high, rest, ends, crossings, width: SCALE_WIDTH }),
      }
    }),
    // Worked out when it is shown.
    { words: 'Go or lay up', picture: () => <GoingCurves situation={situation} reader={reader} /> },
  ]
}
