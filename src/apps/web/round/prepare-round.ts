import type { Course } from '#golf/course/course.ts'
import { type Day, REFERENCE_DAY } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { pageName } from '#golf/player/first-name.ts'
import type { Player } from '#golf/player/player.ts'
import type { CardHole, RoundFacts } from '#golf/round/kept-round.ts'
import { encodePlanNumbers } from '#golf/round/plan-numbers.ts'
import { EMPTY_LOG } from '#golf/round/round-log.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import type { BookFacts } from '#paper/book/book-facts.ts'
import { greenNumbers, reachAndCarry } from '#paper/book/hole-numbers.ts'
import { playerRow } from '#paper/book/player-row.ts'
import { rulerOf } from '#paper/draw/ruler.ts'
import { fetchDocument } from '../documents/fetch-document.ts'
import { loadCourse } from '../documents/load-course.ts'
import { loadPlayer } from '../documents/load-player.ts'
import { plainPlan } from '../planning/plain-plan.ts'
import { planner } from '../planning/planner.ts'
import { drawPicture, playedHole } from './draw-pictures.ts'
import { newMark } from './phone-id.ts'
import { putPictures, putRound, readRound } from './round-shelf.ts'

/** How the holes of a card are planned: `none` is at once. */
export type CardPlans = 'full' | 'quick' | 'none'

/** What is settled before the start. */
export interface AskedRound {
  readonly courseId: string
  readonly playerId: string
  /** `null` = calm reference conditions. */
  readonly dayId: string | null
  readonly tee: string | null
  readonly date: string
  readonly purpose: 'counting' | 'practice'
  readonly hasDevices: boolean
  readonly isTextOnly: boolean
  readonly units: 'yards' | 'metres'
  readonly plans: CardPlans
}

/**
 * Prepares the card of a round before its start, as it would be printed, and puts the round on this phone; returns its id.
 * `tell` hears of each hole that is done. Throws a Failure when course, player or day cannot be read, and when stopped.
 */
export async function prepareRound(
  asked: AskedRound,
  tell: (done: number, of: number) => void,
  signal: AbortSignal,
): Promise<string> {
  const { courseId, playerId, dayId, tee, purpose, plans, units } = asked
  const [course, player] = await Promise.all([loadCourse(courseId), loadPlayer(playerId)])
  const day = dayId === null ? REFERENCE_DAY : parseDay(await fetchDocument('days', dayId), `days/${dayId}`)
  const holes = course.holes.flatMap(({ ref }) => playedHole(course, ref, tee, day) ?? [])
  const settings = { course, player, day, holes, purpose, units }
  const card = new Map<Hole, CardHole>()
  const waiting = [...holes]
  const lanes = plans === 'none' ? [] : Array.from({ length: laneCount() }, planner)
  const planned = async (lane: (typeof lanes)[number]): Promise<void> => {
    for (let hole = waiting.shift(); hole !== undefined; hole = waiting.shift()) {
      const { plan, fault } = await lane.run(
        plainPlan({ courseName: course.name, hole, player, day, units }, null, plans === 'quick'),
        signal,
      )
      card.set(hole, cardHole(hole, plan ?? null, fault?.message ?? '', settings))
      tell(card.size, holes.length)
    }
  }
  try {
    tell(0, holes.length)
    await Promise.all(lanes.map(planned))
  } finally {
    await Promise.all(lanes.map((lane) => lane.close()))
  }
  const facts: RoundFacts = {
    id: `round-${asked.date}-${newMark()}`,
    date: asked.date,
    tee: holes[0]?.teeName || tee,
    format: 'strokes',
    course: course.name,
    courseId,
    player: pageName(player.name, player.age),
    playerId,
    purpose,
    hasDevices: asked.hasDevices,
    isTextOnly: asked.isTextOnly,
    clubs: [...player.clubs.map(({ name }) => name), 'putter'],
    card: holes.map((hole) => card.get(hole) ?? cardHole(hole, null, '', settings)),
    planNumbers: encodePlanNumbers({
      from: plans === 'none' ? 'kept' : 'card',
      date: asked.date,
      player,
      day: dayId === null ? null : day,
    }),
  }
  await putRound({ facts, log: EMPTY_LOG })
  await putPictures(facts.id, picturesFor(facts, holes))
  return facts.id
}

/** Draws the pictures of a round that was begun on another phone, from the course that this one can read. */
export async function preparePictures(id: string): Promise<void> {
  const facts = (await readRound(id))?.round.facts
  if (facts === undefined || facts.courseId === null) return
  const course = await loadCourse(facts.courseId)
  const refs = facts.card.length > 0 ? facts.card.map(({ ref }) => ref) : course.holes.map(({ ref }) => ref)
  const holes = refs.flatMap((ref) => playedHole(course, ref, facts.tee, null) ?? [])
  await putPictures(id, picturesFor(facts, holes))
}

/** A core is left for the page; each worker holds a hole of its own. */
function laneCount(): number {
  return Math.max(1, Math.min(4, navigator.hardwareConcurrency - 1))
}

function picturesFor(facts: Pick<RoundFacts, 'purpose' | 'isTextOnly'>, holes: readonly Hole[]) {
  return holes.map((hole) => drawPicture(hole, facts.purpose === 'counting', !facts.isTextOnly))
}

interface CardSettings extends Pick<AskedRound, 'purpose' | 'units'> {
  readonly course: Course
  readonly player: Player
  readonly day: Day
  readonly holes: readonly Hole[]
}

/** The words of the printed card. */
function cardHole(hole: Hole, plan: Plan | null, missing: string, settings: CardSettings): CardHole {
  const { course, player, day, holes, purpose, units } = settings
  const ruler = rulerOf(units)
  const bare = { received: null, missing: '', plan: null }
  const book: BookFacts = {
    course: course.name,
    day,
    holes: holes.map((one) => ({ ...bare, hole: one })),
    localRules: course.localRules,
    purpose,
    ruler,
    paper: 'a4',
    hasFolds: false,
    credit: course.credit,
    // Nothing is set in type here.
    letters: () => 0,
    playerName: pageName(player.name, player.age),
    player,
  }
  const { facts, club, words } = playerRow({ ...bare, hole, plan, missing }, book)
  const measures = measureHole(hole)
  const reach = reachAndCarry(measures, ruler).join('; ')
  return {
    ref: hole.ref,
    par: hole.par,
    facts: facts.filter((fact) => fact !== ''),
    club,
    words,
    numbers: [reach === '' ? '' : `To reach–carry: ${reach}.`, greenNumbers(measures, ruler)]
      .filter((line) => line !== '')
      .join(' '),
  }
}
