import { useEffect, useMemo, useRef, useState } from 'react'
import type { Day } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import type { NearbyStart } from '#golf/strategy/nearby-start.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import type { Point } from '#numbers/geometry/point.ts'
import type { Ball } from '../desk/desk.ts'
import { type LatestAnswer, latestAnswer } from './latest-answer.ts'
import { planner } from './planner.ts'
import type { Answered, AskedFormat, Finishes, PlanQuestion, Question, Trouble } from './questions.ts'

/** What is planned: the hole as cut, the player, the conditions. `null` while something is missing. */
export interface Situation {
  readonly courseName: string
  readonly hole: Hole
  readonly player: Player
  readonly day: Day
  /** `null` = on the markers. */
  readonly ball: Ball | null
  /** What the hole is played for; `null` = the fewest strokes. */
  readonly format: AskedFormat | null
  /** Units of the sentence. */
  readonly units: 'yards' | 'metres'
}

/** The plan of the latest situation, as far as it is known. */
export interface Planning {
  /** The last answer, possibly of the situation before: `isCurrent` tells. */
  readonly plan: Plan | null
  readonly isCurrent: boolean
  /** True once the fuller answer is there. */
  readonly isFull: boolean
  readonly trouble: Trouble | null
  /** The hole as the last full plan solved it; `null` before there is one. */
  readonly solved: NearbyStart | null
}

const NOTHING: Planning = { plan: null, isCurrent: false, isFull: false, trouble: null, solved: null }

/**
 * Plans the situation: a quick first answer, then the fuller one from another worker, begun only when the first is
 * there; stale answers are dropped. A club of the player's own choice is planned on with by the fuller one while the
 * plan at hand stays.
 */
export function usePlan(situation: Situation | null, club: string | null): Planning {
  const [planning, setPlanning] = useState<Planning>(NOTHING)
  const workers = useRef<{ first: LatestAnswer; full: LatestAnswer } | null>(null)
  const asked = useRef<Situation | null>(null)
  const next = useRef<PlanQuestion | null>(null)
  const start = useRef<NearbyStart | null>(null)
  const atHand = useRef(planning)
  atHand.current = planning

  useEffect(() => {
    const answer = ({ plan, start: nearby, fault }: Answered, isLate: boolean): void => {
      start.current = nearby ?? start.current
      setPlanning((before) => {
        if (before.isFull) return before
        if (plan !== undefined) return { ...before, plan, isCurrent: !isLate, isFull: false, trouble: null }
        return { ...before, trouble: fault ?? null }
      })
      if (plan !== undefined && !isLate && next.current !== null) workers.current?.full.ask(next.current)
    }
    const first = latestAnswer(planner(), answer, false, isOneStroke)
    const tell = ({ plan, start: nearby, fault }: Answered): void => {
      start.current = nearby ?? start.current
      setPlanning((before) =>
        plan === undefined
          ? { ...before, trouble: fault ?? null }
          : { plan, isCurrent: true, isFull: true, trouble: null, solved: nearby ?? before.solved },
      )
    }
    const full = latestAnswer(planner(), tell, true)
    workers.current = { first, full }
    return () => {
      first.stop()
      full.stop()
      workers.current = null
      asked.current = null
    }
  }, [])

  useEffect(() => {
    if (situation === null) {
      workers.current?.first.forget()
      workers.current?.full.forget()
      asked.current = null
      setPlanning(NOTHING)
      return
    }
    const isNew = asked.current !== situation
    // Until the first answer is there the fuller one would only take its time from it; it is asked for then.
    const isAnswered = !isNew && atHand.current.isCurrent
    asked.current = situation
    setPlanning((before) => ({
      ...before,
      isCurrent: !isNew && before.isCurrent,
      // Of another club only its own words are still to come: what the plan at hand knows it still knows.
      isFull: !isNew && before.isFull,
      trouble: isNew || isAnswered ? null : before.trouble,
    }))
    next.current = { kind: 'plan', ...situation, club, isFirst: false, near: null }
    if (isNew) {
      workers.current?.full.forget()
      workers.current?.first.ask({
        kind: 'plan',
        ...situation,
        club: null,
        isFirst: true,
        near: start.current,
      })
    } else if (isAnswered) {
      if (isFullyOf(atHand.current, club)) workers.current?.full.forget()
      else workers.current?.full.ask(next.current)
    }
  }, [situation, club])
  return planning
}

/** Where a club's full shots finish along a heading; the last answer stays until the next one comes. `null` club = none, as for a partial swing, whose pattern the planner does not lay out. */
export function useFinishes(
  situation: Situation | null,
  club: string | null,
  headingDegrees: number | null,
): Finishes | null {
  const [answer, setAnswer] = useState<{ finishes: Finishes; situation: Situation } | null>(null)
  const worker = useRef<LatestAnswer | null>(null)
  const asked = useRef<Situation | null>(null)

  useEffect(() => {
    const latest = latestAnswer(planner(), ({ finishes }) => {
      if (finishes !== undefined && asked.current !== null) setAnswer({ finishes, situation: asked.current })
    })
    worker.current = latest
    return () => latest.stop()
  }, [])

  useEffect(() => {
    if (situation === null || club === null || headingDegrees === null) return
    asked.current = situation
    const { hole, player, day, ball } = situation
    worker.current?.ask({ kind: 'finishes', hole, player, day, ball, club, headingDegrees })
  }, [situation, club, headingDegrees])

  return useMemo(() => {
    if (answer === null || answer.finishes.club !== club || answer.situation.hole.ref !== situation?.hole.ref)
      return null
    if (answer.situation.ball !== situation.ball) return null
    if (headingDegrees === null) return null
    return turned(answer.finishes, headingDegrees, answer.situation.ball?.at ?? [0, 0])
  }, [answer, situation, club, headingDegrees])
}

/** Until a dragged aim's own finishes are there, the last ones turned about the ball stand in for a moment. */
function turned(finishes: Finishes, headingDegrees: number, [fromX, fromY]: Point): Finishes {
  const turn = ((headingDegrees - finishes.headingDegrees) * Math.PI) / 180
  if (Math.abs(turn) < 1e-6) return finishes
  const [sin, cos] = [Math.sin(turn), Math.cos(turn)]
  const right = finishes.x.map((each) => each - fromX)
  const on = finishes.y.map((each) => each - fromY)
  const x = right.map((each, index) => fromX + each * cos + (on[index] ?? 0) * sin)
  const y = on.map((each, index) => fromY + each * cos - (right[index] ?? 0) * sin)
  return { ...finishes, headingDegrees, x, y }
}

/** Whether the full plan at hand goes on with the club already: a drag of its aim takes up the best one by name. */
function isFullyOf({ plan, isFull }: Planning, club: string | null): boolean {
  const best = plan?.options[0]?.club
  return isFull && best !== undefined && (plan?.overruled?.club ?? best) === (club ?? best)
}

/** Whether two plans are of one stroke under other conditions, so that the older one still says something. */
function isOneStroke(older: Question, newer: Question): boolean {
  return (
    older.kind === 'plan' &&
    newer.kind === 'plan' &&
    older.courseName === newer.courseName &&
    older.hole.ref === newer.hole.ref &&
    older.hole.teeName === newer.hole.teeName &&
    older.player.name === newer.player.name &&
    (older.ball === null) === (newer.ball === null)
  )
}
