import type { Putting } from '#golf/player/player.ts'
import type { Candidate, Situation, StrokeEvaluation } from '#golf/strategy/evaluate-stroke.ts'
import type { HoleModel } from '#golf/strategy/hole-model.ts'
import { aimOf } from '#golf/strategy/plan-options.ts'
import { TOO_CLOSE_STROKES } from '#golf/strategy/settings.ts'
import { radiansToDegrees } from '#numbers/units/units.ts'

/** The plan's stroke from one place, and what else may be played there, which is worked out only when asked for. */
export interface Choices {
  readonly plan: Candidate
  readonly menu: () => Menu
}

/** What a simulated player may choose from one place: what the golfers below play there. */
export interface Menu {
  readonly plan: Candidate
  /** Clubs too close to the plan to call, on their best lines; the plan's own among them. */
  readonly close: readonly Candidate[]
  /** The plan's club on the line nearest to the flag. */
  readonly atFlag: Candidate
  /** The longest club of the bag on its best line. */
  readonly longest: Candidate
  /** Some of all that may be played, whatever it costs. */
  readonly some: readonly Candidate[]
}

/** A simulated player, and the one thing that is wrong with them. */
export interface Golfer {
  readonly name: string
  /** What a season must name first; `null` = nothing. */
  readonly fault: string | null
  readonly chooses: (of: Choices, at: Situation, model: HoleModel, random: () => number) => Candidate
  /** Strokes to hole out from sand beside the green, as a share of what the profile says. */
  readonly sand: number
  /** Whether the same holds of sand further away. */
  readonly isPoorFromAllSand: boolean
  /** Putting they have, where it is not the profile's. */
  readonly putting: (own: Putting) => Putting
}

const sound: Omit<Golfer, 'name' | 'fault'> = {
  chooses: ({ plan }) => plan,
  sand: 1,
  isPoorFromAllSand: false,
  putting: (own) => own,
}

/** Further than this from the hole, as a share of the longest club, nobody aims at a flag. Our assumption. */
const FLAG_REACH_SHARE = 1.05

/** The golfers of the study: two without a fault, the others with one each. */
export const GOLFERS: readonly Golfer[] = [
  { ...sound, name: 'follows the plan', fault: null },
  {
    ...sound,
    name: 'takes any club too close to call',
    fault: null,
    chooses: ({ menu }, _, __, random) => {
      const { close, plan } = menu()
      return close[Math.floor(random() * close.length)] ?? plan
    },
  },
  {
    ...sound,
    name: 'aims at every flag',
    fault: 'toward-flag',
    chooses: ({ plan, menu }, at, { hole }) =>
      at.lie === 'tee' && hole.par > 3
        ? plan
        : Math.hypot(hole.pin[0] - at.x, hole.pin[1] - at.y) <= FLAG_REACH_SHARE * plan.shot.stock.totalMetres
          ? menu().atFlag
          : plan,
  },
  {
    ...sound,
    name: 'always takes the driver',
    fault: 'longer-from-tee',
    chooses: ({ plan, menu }, at, { hole }) => (at.lie === 'tee' && hole.par > 3 ? menu().longest : plan),
  },
  { ...sound, name: '20 % worse from sand', fault: 'sand', sand: 1.2, isPoorFromAllSand: true },
  { ...sound, name: 'the same, beside the green only', fault: 'sand', sand: 1.2 },
  {
    ...sound,
    name: 'three-putts: twice the spread of pace',
    fault: 'three-putts',
    putting: (own) => ({ ...own, distanceSdShare: 2 * own.distanceSdShare }),
  },
]

/** One of so many strokes is kept for who plays anything. */
const SOME_STEP = 37

/** Sorts out what may be chosen from one place. */
export function menuOf(model: HoleModel, at: Situation, { candidates }: StrokeEvaluation): Menu {
  const cheapest = (of: readonly Candidate[]): Candidate =>
    of.reduce((best, one) => (one.strokes < best.strokes ? one : best))
  const plan = cheapest(candidates)
  const clubs = [...new Set(candidates.map(({ shot }) => shot.club))]
  const bests = clubs.map((club) => cheapest(candidates.filter(({ shot }) => shot.club === club)))
  const { pin } = model.hole
  const flag = radiansToDegrees(Math.atan2(pin[0] - at.x, pin[1] - at.y))
  const off = (one: Candidate): number => Math.abs(((aimOf(at, one).heading_deg - flag + 540) % 360) - 180)
  return {
    plan,
    close: bests.filter(({ strokes }) => strokes - plan.strokes < TOO_CLOSE_STROKES),
    atFlag: candidates
      .filter(({ shot }) => shot === plan.shot)
      .reduce((best, one) => (off(one) < off(best) ? one : best)),
    some: candidates.filter((_, index) => index % SOME_STEP === 0),
    longest: bests.reduce((far, one) =>
      one.shot.stock.totalMetres > far.shot.stock.totalMetres ? one : far,
    ),
  }
}
