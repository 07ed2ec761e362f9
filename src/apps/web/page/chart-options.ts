import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import type { Plan, PlanOption } from '#golf/strategy/plan.ts'
import type { HoleDrawingOptions } from '#paper/draw/hole-drawing-options.ts'
import type { Reader } from '../desk/desk.ts'
import type { AimedClub } from '../desk/first-aim.ts'
import type { Finishes } from '../planning/questions.ts'
import { windSpeed } from '../words.ts'

/** Arcs drawn at most: the first clubs of the plan. */
const ARCS = 4

/** What the chart shows of the survey and the day; what is measured on it is measured when it is engraved. */
export function chartSurvey(
  hole: Hole | null,
  course: Course | null,
  day: Day,
  reader: Reader,
): HoleDrawingOptions | null {
  if (hole === null || course === null) return null
  const label = windSpeed(day.wind.speedMetresPerSecond, reader)
  return {
    units: reader.units,
    courseName: course.name,
    wind: { ...day.wind, label },
  }
}

/** Hazards that lie elsewhere than they were surveyed, and the one that is looked at. */
export function movedMarks(
  surveyed: Hole | null,
  hole: Hole | null,
  moves: Readonly<Record<string, unknown>>,
  looked: string | null,
): HoleDrawingOptions {
  const now = new Map((hole?.areas ?? []).map(({ id, polygon }) => [id, polygon]))
  const moved = (surveyed?.areas ?? []).flatMap(({ id, polygon }) => {
    const there = id in moves || id === looked ? now.get(id) : undefined
    return there === undefined ? [] : [{ surveyed: polygon, now: there }]
  })
  return moved.length === 0 ? {} : { moved }
}

/** The player's own marks: the chosen club's pattern and aim, arcs at the carries of the plan's first clubs. */
export function chartMarks(
  option: (AimedClub & Pick<PlanOption, 'short'>) | null,
  headingDegrees: number | null,
  finishes: Finishes | null,
  plan: Plan | null,
  player: Player | null,
): HoleDrawingOptions {
  if (option === null || headingDegrees === null) return {}
  const clubs = new Set([option.club, ...(plan?.options ?? []).slice(0, ARCS).map(({ club }) => club)])
  // A short shot is drawn from the side: arcs of full carries would only cross the green.
  const isFullShot = option.short === undefined
  const arcs = (isFullShot ? (player?.clubs ?? []) : [])
    .filter(({ name }) => clubs.has(name))
    .map(({ name, carryMetres }) => ({ club: name, carryMetres }))
  const startDegrees = option.aim.start_deg + headingDegrees - option.aim.heading_deg
  const from = plan === null ? ([0, 0] as const) : ([plan.situation.x_m, plan.situation.y_m] as const)
  return {
    aim: { from, headingDegrees, atMetres: option.total_m, startDegrees },
    arcs,
    ...(player === null ? {} : { playerName: player.name }),
    ...(finishes === null ? {} : { pattern: finishes }),
  }
}
