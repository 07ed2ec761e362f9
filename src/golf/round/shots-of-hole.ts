import { REFERENCE_DAY } from '#golf/course/day.ts'
import { groundReader } from '#golf/course/ground-at.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { LoggedNearGreen } from '#golf/player/logged-near-green.ts'
import type { ShotRecord } from '#golf/player/shot-record.ts'
import { calmHeading } from '#golf/strategy/finishes.ts'
import { type HoleModel, holeGround, holeModel } from '#golf/strategy/hole-model.ts'
import { isNearGreen } from '#golf/strategy/plan-near-green.ts'
import { aimOf } from '#golf/strategy/plan-options.ts'
import { requireGreen } from '#golf/strategy/require-green.ts'
import { distance } from '#numbers/geometry/point.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { DatedHole } from './dated-hole.ts'
import { followHole, type Spot, type Stretch } from './follow-hole.ts'
import { judgeChoice, type RecapHole } from './judge-choice.ts'
import { nearGreenOfHole, UNLEARNED_NEAR_GREEN, type UnlearnedNearGreen } from './near-green-of-hole.ts'
import type { Planned } from './plan-numbers.ts'
import { cheapestDrop, type Judge, type RecapQuestion, solveForRecap } from './recap-hole.ts'
import type { RoundHole } from './round.ts'
import { FINISH_SD_METRES } from './settings.ts'
import { struckWays } from './struck-ways.ts'
import { pacedSd, type WrittenEnd, writtenLikelihood } from './written-end.ts'

/** Why a stroke of a round is not learned from. */
type UnlearnedFull = 'places' | 'club' | 'swing' | 'line' | 'unlike'
export type Unlearned = UnlearnedNearGreen | UnlearnedFull
export const UNLEARNED: readonly Unlearned[] = [
  ...UNLEARNED_NEAR_GREEN,
  ...(['places', 'club', 'swing', 'line', 'unlike'] as const),
]

/** What a hole that was played says of its player: full shots, putts, and strokes near the green. */
export interface ShotsOfHole extends LoggedNearGreen {
  readonly shots: readonly ShotRecord[]
  /** Shots among them of which nobody knows the line aimed at: they say how far and not how straight. */
  readonly withoutLine: number
  /** Strokes that say nothing, by why. */
  readonly unused: Readonly<Record<Unlearned, number>>
}

/**
 * The full shots of a hole that was played on days alike, as learning takes them: each as all the ways in which it may have been
 * struck. The line is the one that was logged, or the plan's where it was played as planned. A hole that was not played out
 * counts as far as it goes. Throws a Failure when the survey lacks the green.
 */
export function shotsOfHoles({
  logged,
  planned = null,
  ...question
}: Omit<RecapQuestion, 'logged'> & {
  readonly logged: readonly DatedHole[]
  readonly planned?: Planned | null
}): ShotsOfHole {
  requireGreen(question.hole)
  const solved = solveForRecap(question)
  // Where balls come to rest is looked at on fine cells, even where the plan was found on rough ones.
  const model =
    question.isQuick === true
      ? holeModel(holeGround(question.hole), question.player, question.day, solved.model.flights, null)
      : solved.model
  const judge =
    planned === null
      ? judgeChoice
      : judgeByPlan(solveForRecap({ ...question, player: planned.player, day: planned.day ?? REFERENCE_DAY }))
  return addShots(logged.map((one) => shotsOfHole(solved, model, one, judge)))
}

/** Judges as ever, but takes club and line of a stroke that was played as planned from the plan of then. */
function judgeByPlan(then: RecapHole): Judge {
  return (solved, from, stroke) => {
    if (!stroke.isAsPlanned) return judgeChoice(solved, from, stroke)
    const { candidate } = judgeChoice(then, from, stroke)
    if (candidate === null) return judgeChoice(solved, from, stroke)
    const [x, y] = from.point
    const { offset_m: aimOffsetMetres } = aimOf({ x, y, lie: from.lie }, candidate)
    return judgeChoice(solved, from, {
      ...stroke,
      club: candidate.shot.club,
      aimOffsetMetres,
      isAsPlanned: false,
    })
  }
}

/** Adds up what several holes say. */
export function addShots(holes: readonly ShotsOfHole[]): ShotsOfHole {
  return {
    shots: holes.flatMap(({ shots }) => shots),
    putts: holes.flatMap(({ putts }) => putts),
    strokes: holes.flatMap(({ strokes }) => strokes),
    withoutLine: holes.reduce((sum, one) => sum + one.withoutLine, 0),
    unused: unusedOf((why) => holes.reduce((sum, { unused }) => sum + unused[why], 0)),
  }
}

/** The same for a hole that is solved already; `model` has the ground on which balls come to rest. */
export function shotsOfHole(
  solved: RecapHole,
  model: HoleModel,
  { hole: logged, date }: DatedHole,
  judge: Judge = judgeChoice,
): ShotsOfHole {
  const { hole } = solved.model
  const shots: ShotRecord[] = []
  const counts = new Map<Unlearned, number>()
  let withoutLine = 0
  const knowledge = new Map<Spot, Known>()
  for (const stretch of followHole(hole, logged, cheapestDrop(solved)).stretches) {
    const { to } = stretch
    // A ball that is played again lies where it lay before, and that is known as before.
    if (to !== null && !knowledge.has(to) && to !== stretch.from) knowledge.set(to, knownBy(stretch))
    const from = knowledge.get(stretch.from) ?? ON_TEE
    const shot = shotOf(solved, model, stretch, { logged, date, judge, from })
    if (shot === null) continue
    if (typeof shot === 'string') counts.set(shot, (counts.get(shot) ?? 0) + stretch.strokes.length)
    else {
      shots.push(shot.record)
      if (!shot.hasLine) withoutLine += 1
    }
  }
  const { putts, strokes, unused } = nearGreenOfHole(solved, { hole: logged, date })
  for (const why of UNLEARNED_NEAR_GREEN) counts.set(why, unused[why])
  return { shots, putts, strokes, withoutLine, unused: unusedOf((why) => counts.get(why) ?? 0) }
}

/** How well a place is known: standard deviation, metres; a place that was only paced is anywhere on its circle. */
interface Known {
  readonly sd: number
  readonly isPaced: boolean
}

const ON_TEE: Known = { sd: 0, isPaced: false }

function knownBy({ strokes }: Stretch): Known {
  const finish = strokes.at(-1)?.finish ?? null
  return finish !== null && 'letter' in finish
    ? { sd: pacedSd(finish.leftMetres ?? 0), isPaced: true }
    : { sd: FINISH_SD_METRES, isPaced: false }
}

function shotOf(
  solved: RecapHole,
  model: HoleModel,
  stretch: Stretch,
  known: {
    readonly logged: RoundHole
    readonly date: string | null
    readonly judge: Judge
    readonly from: Known
  },
): { readonly record: ShotRecord; readonly hasLine: boolean } | Unlearned | null {
  const { from, to, strokes } = stretch
  const [stroke] = strokes
  const [x, y] = from.point
  const situation = { x, y, lie: from.lie }
  // Putts and short strokes are read by themselves.
  if (isNearGreen(situation, model.hole)) return null
  const end =
    stroke === undefined || strokes.length > 1 ? null : writtenEnd(model.hole, stretch, known.logged)
  if (stroke === undefined || end === null) return 'places'
  const { candidate, unsplit } = known.judge(solved, from, stroke)
  if (candidate === null) return 'club'
  const { shot } = candidate
  if (shot.shape !== 'stock') return 'swing'
  const hasLine = !known.from.isPaced && (stroke.isAsPlanned || !unsplit.includes('line'))
  const rest = end.kind === 'place' ? end.point : end.kind === 'letter' ? (to?.point ?? null) : null
  if (!hasLine && rest === null) return 'line'
  const bearing = rest === null ? 0 : Math.atan2(rest[0] - x, rest[1] - y)
  const heading = hasLine ? candidate.heading : calmHeading(model, shot, bearing)
  const likelihood = writtenLikelihood(model, from.point, end, known.from.sd)
  const ways = struckWays({ model, from, shot, heading, hasLine, likelihood })
  if (ways.length === 0) return 'unlike'
  const off = hasLine ? bearing - degreesToRadians(aimOf(situation, candidate).heading_deg) : 0
  const reach = rest === null ? null : distance(from.point, rest)
  const record: ShotRecord = {
    date: known.date,
    club: shot.club,
    lie: from.lie,
    carryMetres: null,
    totalMetres: reach === null ? null : reach * Math.cos(off),
    offlineMetres: reach === null || !hasLine ? null : reach * Math.sin(off),
    strike: null,
    ways,
  }
  return { record, hasLine }
}

/** What was written of the end of a single stroke; `null` where that says nothing. */
function writtenEnd(
  hole: Hole,
  { from, to, strokes: [stroke], penalty }: Stretch,
  { firstPuttMetres, isPickedUp }: RoundHole,
): WrittenEnd | null {
  const finish = stroke?.finish ?? null
  if (to === null && !isPickedUp) return penalty > 0 ? null : { kind: 'place', point: hole.pin }
  if (finish === null)
    return penalty > 0 || firstPuttMetres === null
      ? null
      : { kind: 'letter', letter: 'g', leftMetres: firstPuttMetres }
  if ('letter' in finish) {
    const { letter, leftMetres } = finish
    if (letter === 'o') return { kind: 'again', isLost: true }
    if (leftMetres === null) return null
    return letter === 'p' || penalty > 0
      ? { kind: 'drop', point: null, leftMetres }
      : { kind: 'letter', letter, leftMetres }
  }
  const point = [finish.x, finish.y] as const
  if (penalty === 0) return { kind: 'place', point }
  const ground = groundReader(hole)(point)
  if (ground === 'out') return { kind: 'again', isLost: true }
  if (ground === 'penalty-red' || ground === 'penalty-yellow') return { kind: 'splash', point }
  return distance(point, from.point) < 1
    ? { kind: 'again', isLost: false }
    : { kind: 'drop', point, leftMetres: distance(point, hole.pin) }
}

function unusedOf(count: (why: Unlearned) => number): Record<Unlearned, number> {
  return Object.fromEntries(UNLEARNED.map((why) => [why, count(why)])) as Record<Unlearned, number>
}
