import type { NextShot, Plan, PlanOption } from './plan.ts'
import { TOO_CLOSE_STROKES } from './settings.ts'

/** The first stroke of a plan. */
export type FirstStroke = Pick<PlanOption, 'club' | 'shape' | 'aim'>

/** What another player of the same name plays differently on a hole. */
export interface PlanChange {
  readonly hole: string
  readonly par: number
  /** The first stroke, where playing the old one costs more than is too close to call: another club, or the same on another line. */
  readonly first: {
    readonly what: 'club' | 'line'
    readonly before: FirstStroke
    readonly after: FirstStroke
    /** What the old stroke costs the player of now, strokes; `null` when it is not played any more. */
    readonly cost: number | null
  } | null
  /** Numbers of the green that are played to now from a lie, where another one was; nobody has worked out what that costs. */
  readonly approaches: readonly {
    readonly lie: NextShot['lie']
    readonly before: NextShot['number']
    readonly after: NextShot['number']
  }[]
}

/** What of a hole's plan changes with the player; `null` when nothing does that could be noticed. */
export function planChange(before: Plan, after: Plan): PlanChange | null {
  const [was, now] = [before.options[0], after.options[0]]
  const approaches = before.then.flatMap(({ lie, number }) => {
    const next = after.then.find((one) => one.lie === lie)
    return next === undefined || next.number === number ? [] : [{ lie, before: number, after: next.number }]
  })
  const first = was && now ? firstChange(was, now, after) : null
  if (first === null && approaches.length === 0) return null
  return { hole: after.hole.ref, par: after.hole.par, first, approaches }
}

function firstChange(was: PlanOption, now: PlanOption, after: Plan): PlanChange['first'] {
  const same = after.options.find(({ club }) => club === was.club)
  const cost = same === undefined ? null : costOnLine(same, was)
  if (cost !== null && cost < TOO_CLOSE_STROKES) return null
  return { what: was.club === now.club ? 'line' : 'club', before: strokeOf(was), after: strokeOf(now), cost }
}

/** What a club costs against the plan on the line of an old stroke: between the lines that were weighed, straight. */
function costOnLine(option: PlanOption, { aim }: PlanOption): number {
  const offset = (option.aim.at_m * aim.offset_m) / aim.at_m
  const lines = option.aimCosts
  const right = lines.findIndex(({ offset_m }) => offset_m >= offset)
  const [a, b] = [lines[right - 1], lines[right]]
  if (a === undefined || b === undefined) return (b ?? lines.at(-1) ?? option).cost
  const share = (offset - a.offset_m) / (b.offset_m - a.offset_m)
  return a.cost + share * (b.cost - a.cost)
}

function strokeOf({ club, shape, aim }: PlanOption): FirstStroke {
  return { club, shape, aim }
}
