import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Lie, Player } from '#golf/player/player.ts'
import type { Partners, TeeTurn } from '#golf/strategy/alternate-shot.ts'
import type { AskedObjective, ObjectiveSetting } from '#golf/strategy/asked-objective.ts'
import type { NearbyStart } from '#golf/strategy/nearby-start.ts'
import type { OutcomeGround, Plan } from '#golf/strategy/plan.ts'
import type { Relief } from '#golf/strategy/relief.ts'
import type { Thumb } from '#golf/strategy/thumb.ts'
import type { Ball } from '../desk/desk.ts'

/** What a worker is asked: everything it needs travels with the question. */
export type Question = PlanQuestion | FinishesQuestion | ReliefQuestion | ThumbQuestion | PairQuestion

/** A plan of the hole; `isFirst` asks for a quick first answer, near what was planned before where there is such. */
export interface PlanQuestion {
  readonly kind: 'plan'
  readonly courseName: string
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  /** `null` = on the markers. */
  readonly ball: Ball | null
  /** Planned on with, whatever it costs; `null` = the best. */
  readonly club: string | null
  /** What the hole is played for; `null` = the fewest strokes. First answers are for these whatever is asked. */
  readonly format: AskedFormat | null
  /** Units of the sentence. */
  readonly units: 'yards' | 'metres'
  readonly isFirst: boolean
  readonly near: NearbyStart | null
  /** False where nobody asks what would flip the plan: then it is not looked for. */
  readonly hasFlips?: boolean
}

/** A format as it is asked for, with what the card and the course say of it. */
export interface AskedFormat extends Pick<ObjectiveSetting, 'teeSets' | 'later'> {
  readonly asked: AskedObjective
}

/** Where one club's shots finish along a heading. */
export interface FinishesQuestion {
  readonly kind: 'finishes'
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  /** `null` = on the markers. */
  readonly ball: Ball | null
  readonly club: string
  readonly headingDegrees: number
}

/** What the Rules give a ball; `isFirst` asks for a quick first answer. */
export interface ReliefQuestion {
  readonly kind: 'relief'
  readonly courseName: string
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  readonly ball: Ball
  readonly isFirst: boolean
}

/** Where to go and where to lay up along a hole, from one lie; `isFirst` asks for a quick first answer. */
export interface ThumbQuestion {
  readonly kind: 'thumb'
  readonly courseName: string
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  readonly lie: Lie
  readonly isFirst: boolean
}

/** A hole for two partners who strike one ball by turns. */
export interface PairQuestion {
  readonly kind: 'pair'
  readonly hole: Hole
  readonly players: Partners<Player>
  readonly day: Day
}

/** Finishes as a worker sends them; weights sum to 1. */
export interface Finishes {
  readonly club: string
  readonly headingDegrees: number
  readonly x: Float64Array
  readonly y: Float64Array
  readonly weight: Float64Array
  /** Side of the cell to which each finish is known, metres. */
  readonly cellMetres: number
  readonly ground: readonly OutcomeGround[]
}

/** A worker's answer: a plan, finishes, or what went wrong. */
export interface Answered {
  readonly plan?: Plan
  /** What the next quick answer may start from. */
  readonly start?: NearbyStart | null
  readonly finishes?: Finishes
  readonly relief?: Relief
  readonly thumb?: Thumb
  readonly pair?: Partners<TeeTurn>
  readonly fault?: Trouble
}

/** What went wrong, in words, with its code; `code` is empty for a defect of ours. */
export interface Trouble {
  readonly code: string
  readonly message: string
  readonly where: string
}
