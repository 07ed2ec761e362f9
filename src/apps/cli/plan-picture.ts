import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import type { Player } from '#golf/player/player.ts'
import { finishesOf } from '#golf/strategy/finishes.ts'
import type { Plan, PlanOption } from '#golf/strategy/plan.ts'
import { isShotShape, type ShotShape } from '#golf/strategy/shots.ts'
import { drawHole } from '#paper/draw/draw-hole.ts'
import { drawShortOption } from '#paper/draw/draw-short-option.ts'
import type { HoleDrawingOptions } from '#paper/draw/hole-drawing-options.ts'
import type { Pattern } from '#paper/draw/pattern.ts'
import { renderSvg } from '#paper/draw/render-svg.ts'
import { plainText } from './plain-text.ts'
import { isShort } from './short-rows.ts'
import { type ReaderUnits, windText } from './units-of-the-reader.ts'

/** What a picture of a plan shows. */
export interface PictureQuestion {
  readonly course: Course
  readonly hole: Hole
  readonly player: Player
  /** The day as planned for, wind included. */
  readonly day: Day
  readonly plan: Plan
  /** The club whose pattern is drawn: the player's own choice, or the plan's. */
  readonly club: string | null
  readonly units: ReaderUnits
}

/** The hole with the chosen club's pattern and aim, or a short shot from the side, as the text of an SVG file. */
export function planPicture(asked: PictureQuestion): string {
  // XML has no place for control characters, and a name from a file may hold some.
  return plainText(pictureText(asked), false)
}

function pictureText(asked: PictureQuestion): string {
  const { course, hole, player, day, plan, units } = asked
  const option = plan.options.find(({ club }) => club === asked.club) ?? plan.options[0]
  if (option !== undefined && isShort(option)) return renderSvg(drawShortOption(hole, plan, option, units))
  const { x_m: x, y_m: y } = plan.situation
  const shown: HoleDrawingOptions = {
    units,
    courseName: course.name,
    playerName: player.name,
    wind: { ...day.wind, label: windText(day.wind.speedMetresPerSecond, units) },
    measures: measureHole(hole),
    ...(course.credit === null ? {} : { credit: course.credit }),
  }
  if (option === undefined || !isShotShape(option.shape)) return renderSvg(drawHole(hole, shown))
  const headingDegrees = option.aim.heading_deg
  return renderSvg(
    drawHole(hole, {
      ...shown,
      pattern: patternOf(asked, option, option.shape),
      aim: {
        from: [x, y],
        headingDegrees,
        atMetres: option.total_m,
        startDegrees: option.aim.start_deg,
      },
      arcs: player.clubs.slice(0, ARCS).map(({ name, carryMetres }) => ({ club: name, carryMetres })),
    }),
  )
}

/** Where the club's shots finish. */
function patternOf(
  { hole, player, day, plan }: PictureQuestion,
  option: PlanOption,
  shape: ShotShape,
): Pattern {
  const { x_m: x, y_m: y, lie, sit, stance } = plan.situation
  const finishes = finishesOf({
    hole,
    player,
    day,
    club: option.club,
    shape,
    headingDegrees: option.aim.heading_deg,
    from: [x, y],
    lie,
    sit,
    stance: stance && { uphillDegrees: stance.uphill_deg, aboveDegrees: stance.above_deg },
  })
  return { ...finishes, club: option.club }
}

/** Carries drawn as arcs: the longest clubs, so that they stay apart. Our assumption. */
const ARCS = 4
