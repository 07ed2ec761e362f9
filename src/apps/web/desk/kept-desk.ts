import { LIES } from '#golf/player/player.ts'
import type { Desk } from './desk.ts'
import type { History } from './history.ts'

const KEPT = 'marram.desk'
const KEPT_STEPS = 'marram.desk.steps'

/** What is kept must still be in the store. */
interface Stored {
  readonly courses: readonly { readonly id: string }[]
  readonly players: readonly { readonly id: string }[]
}

/** The part of the browser's storage that is used. */
type Place = Pick<Storage, 'getItem' | 'setItem'>

/** Keeps the desk for when the page is loaded again in this tab; a full or forbidden storage keeps nothing. */
export function keepDesk(desk: Desk, place: Place): void {
  try {
    place.setItem(KEPT, JSON.stringify(desk))
  } catch {
    // Nothing is lost but the comfort.
  }
}

/** The desk as it was before the page was loaded again; `null` when none was kept or it no longer fits the store. */
export function keptDesk(stored: Stored, place: Place): Desk | null {
  try {
    const kept: unknown = JSON.parse(place.getItem(KEPT) ?? 'null')
    return isDesk(kept) && isIn(stored.courses, kept.courseId) && isIn(stored.players, kept.playerId)
      ? kept
      : null
  } catch {
    return null
  }
}

/** The steps that can be taken back and forth again. */
type Steps = Pick<History<Desk>, 'past' | 'future'>

/** Keeps the steps of undo for when the page is loaded again in this tab; a full or forbidden storage keeps none. */
export function keepSteps({ past, future }: Steps, place: Place): void {
  try {
    place.setItem(KEPT_STEPS, JSON.stringify({ past, future }))
  } catch {
    // Nothing is lost but undo.
  }
}

/** The steps that were kept, without those that no longer fit the store. */
export function keptSteps(stored: Stored, place: Place): Steps {
  try {
    const kept: unknown = JSON.parse(place.getItem(KEPT_STEPS) ?? 'null')
    const fitting = (steps: unknown): readonly Desk[] =>
      Array.isArray(steps)
        ? steps.filter(
            (desk) =>
              isDesk(desk) && isIn(stored.courses, desk.courseId) && isIn(stored.players, desk.playerId),
          )
        : []
    return isRecord(kept)
      ? { past: fitting(kept.past), future: fitting(kept.future) }
      : { past: [], future: [] }
  } catch {
    return { past: [], future: [] }
  }
}

function isIn(listed: readonly { readonly id: string }[], id: string): boolean {
  return listed.some((each) => each.id === id)
}

/** What an older page kept may have another shape: every part that is read is looked at. */
function isDesk(kept: unknown): kept is Desk {
  if (!isRecord(kept) || !isRecord(kept.day) || !isRecord(kept.day.wind)) return false
  const { day, pin } = kept
  const texts = [kept.courseId, kept.holeRef, kept.playerId, day.rough]
  const names = [kept.teeName, kept.dayId, kept.club, day.date]
  const wind = [kept.day.wind.speedMetresPerSecond, kept.day.wind.fromDegrees]
  const air = [day.temperatureCelsius, day.altitudeMetres, day.firmness, day.greenSpeedFeet]
  return (
    texts.every((each) => typeof each === 'string') &&
    names.every((each) => each === null || typeof each === 'string') &&
    [...wind, ...air, kept.spread].every(Number.isFinite) &&
    isBall(kept.ball) &&
    isFormat(kept.format) &&
    isRecord(kept.moved) &&
    Object.values(kept.moved).every(isMove) &&
    isRecord(kept.carries) &&
    Object.values(kept.carries).every(Number.isFinite) &&
    [kept.aimDegrees, day.pressureHectopascal].every((each) => each === null || Number.isFinite(each)) &&
    isRecord(day.pins) &&
    isRecord(day.tees) &&
    (typeof pin === 'string' || isPoint(pin))
  )
}

function isBall(ball: unknown): boolean {
  if (ball === null) return true
  if (!isRecord(ball) || !isPoint(ball.at) || !isPoint(ball.from)) return false
  const isKnown = ball.said === null || ball.said === 'in question' || ball.said === 'lost'
  return isKnown && (ball.lie === null || LIES.some((lie) => lie === ball.lie))
}

function isFormat(format: unknown): boolean {
  if (!isRecord(format)) return false
  const { kind, atMost, received, opponentId, opponentScore, up, through, played } = format
  return (
    ['strokes', 'points', 'at-most', 'match'].some((each) => each === kind) &&
    [atMost, opponentScore, played].every(Number.isInteger) &&
    [received, up].every((each) => each === null || Number.isInteger(each)) &&
    [opponentId, through].every((each) => each === null || typeof each === 'string')
  )
}

function isPoint(at: unknown): boolean {
  return Array.isArray(at) && at.length === 2 && at.every(Number.isFinite)
}

function isMove(move: unknown): boolean {
  return isRecord(move) && [move.near, move.far, move.left, move.right].every(Number.isFinite)
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
