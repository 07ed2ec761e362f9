import { type ReactElement, useEffect, useState } from 'react'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { KeptRound } from '#golf/round/kept-round.ts'
import { penaltyOf, scoreOf } from '#golf/round/round.ts'
import { holeOfLog, holesOfLog } from '#golf/round/round-of-log.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { loadCourse } from '../documents/load-course.ts'
import { loadPlayer } from '../documents/load-player.ts'
import { plainPlan } from '../planning/plain-plan.ts'
import { planner } from '../planning/planner.ts'
import { LEFT, type Units } from './club-words.ts'
import { playedHole } from './draw-pictures.ts'
import { wordsOf } from './trouble-words.ts'

/** What may be worked out in practice and after a round: how it stands, how far it is from the ball, and what to play from there. */
export function PracticeView(props: {
  readonly round: KeptRound
  readonly holeRef: string
  readonly units: Units
}): ReactElement {
  const { round, holeRef, units } = props
  const { facts, log } = round
  const [hole, setHole] = useState<Hole | null>(null)
  const [plan, setPlan] = useState<{ readonly of: string; readonly plan: Plan } | null>(null)
  const [said, setSaid] = useState('')
  const { courseId, playerId, tee } = facts
  useEffect(() => {
    let isWanted = true
    if (courseId !== null)
      loadCourse(courseId).then(
        (course) => isWanted && setHole(playedHole(course, holeRef, tee, null)),
        (error: unknown) => isWanted && setSaid(wordsOf(error)),
      )
    return () => {
      isWanted = false
    }
  }, [courseId, tee, holeRef])
  const last = holeOfLog(log, holeRef).strokes.at(-1)?.stroke.finish
  const ball: Point | null =
    last === undefined ? [0, 0] : last !== null && 'x' in last ? [last.x, last.y] : null
  const from = JSON.stringify([holeRef, ball])
  const ask = async (): Promise<void> => {
    if (hole === null || playerId === null || ball === null) return
    setSaid('Planning.')
    const lane = planner()
    try {
      const answer = await lane.run(
        plainPlan(
          {
            courseName: facts.course ?? '',
            hole,
            player: await loadPlayer(playerId),
            day: REFERENCE_DAY,
            units,
          },
          last === undefined ? null : { at: ball, lie: null, said: null, from: [0, 0] },
        ),
        new AbortController().signal,
      )
      setSaid(answer.fault?.message ?? '')
      if (answer.plan !== undefined) setPlan({ of: from, plan: answer.plan })
    } catch (error) {
      setSaid(wordsOf(error))
    } finally {
      await lane.close()
    }
  }
  return (
    <section aria-label="Practice view" className="practice">
      <h2>Practice view</h2>
      <p>{standing(round)}</p>
      {hole !== null && ball !== null && <p>{distances(hole, ball, units)}</p>}
      {hole !== null && ball !== null && playerId !== null && (
        <button type="button" className="wide" onClick={() => void ask()}>
          What to play from here
        </button>
      )}
      <p role="status">{said}</p>
      {plan?.of === from && (
        <>
          <p className="sentence">{plan.plan.sentence}</p>
          <p>
            {plan.plan.options
              .slice(0, 3)
              .map(({ club, strokes }) => `${club} ${strokes.toFixed(2)}`)
              .join(', ')}
          </p>
        </>
      )}
    </section>
  )
}

/** How the round stands: strokes, against par where the card has it, putts and penalties. */
function standing({ facts, log }: KeptRound): string {
  const holes = holesOfLog(
    log,
    facts.card.map(({ ref }) => ref),
  ).filter(({ isPickedUp, ref }) => !isPickedUp && holeOfLog(log, ref).putts !== null)
  if (holes.length === 0) return 'No hole is finished yet.'
  const strokes = holes.reduce((sum, hole) => sum + scoreOf(hole), 0)
  const pars = holes.map(({ ref }) => facts.card.find((card) => card.ref === ref)?.par ?? null)
  const par = pars.includes(null) ? null : pars.reduce<number>((sum, one) => sum + (one ?? 0), 0)
  const putts = holes.reduce((sum, hole) => sum + hole.putts, 0)
  const penalties = holes.flatMap((hole) => hole.strokes).reduce((sum, stroke) => sum + penaltyOf(stroke), 0)
  const against =
    par === null
      ? ''
      : strokes === par
        ? ', level par'
        : `, ${Math.abs(strokes - par)} ${strokes > par ? 'over' : 'under'} par`
  const count = (number: number, word: string): string =>
    `${number} ${word}${number === 1 ? '' : word.endsWith('y') ? '' : 's'}`
  return `${count(strokes, 'stroke')} on ${count(holes.length, 'finished hole')}${against}; ${count(putts, 'putt')}, ${count(penalties, 'penalty stroke')}.`
}

/** From the ball to the near and the far edge of the green and to the pin, on the level. */
function distances({ green, pin }: Hole, ball: Point, units: Units): string {
  const { sign, metres } = LEFT[units]
  const figure = (length: number): string => `${Math.round(length / metres)}`
  const edge = (green?.[0] ?? []).map((corner) => distance(ball, corner))
  const ends = edge.length === 0 ? '' : `, green ${figure(Math.min(...edge))} to ${figure(Math.max(...edge))}`
  return `From the ball to the pin ${figure(distance(ball, pin))} ${sign}${ends}.`
}
