import { useSyncExternalStore } from 'react'

/** The address of the ten questions. */
export const NEW_PLAYER = '#/new-player'
/** The address where a hole is typed or traced. */
export const SURVEY = '#/survey'
/** The address of the players that are kept. */
export const PLAYERS = '#/players'
/** The address of the rounds that are kept. */
export const ROUNDS = '#/rounds'
const SHOTS = '#/shots'
const COURSE = '#/course'
/** The address of the hole desk, and what every other address leads to. */
export const DESK = '#/desk'

/** The address where shots of a player are put down. */
export function shotsPlace(playerId: string): string {
  return `${SHOTS}/${playerId}`
}

/** Whose shots an address leads to: an id, `null` where it names nobody, `undefined` for any other address. */
export function playerOfPlace(place: string): string | null | undefined {
  if (place === SHOTS) return null
  return place.startsWith(`${SHOTS}/`) ? decodeURIComponent(place.slice(SHOTS.length + 1)) : undefined
}

/** The address of a course as a whole. */
export function coursePlace(courseId: string): string {
  return `${COURSE}/${encodeURIComponent(courseId)}`
}

/** Which course an address leads to; `undefined` for any other address. */
export function courseOfPlace(place: string): string | undefined {
  return place.startsWith(`${COURSE}/`) ? decodeURIComponent(place.slice(COURSE.length + 1)) : undefined
}

/** The pages of a player on a course. */
export type PlayerPage = 'card' | 'season' | 'practice'

/** The address of a page of a player on a course; `null` = nobody is chosen yet. */
export function playerPlace(page: PlayerPage, courseId: string, playerId: string | null): string {
  const place = `${coursePlace(courseId)}/${page}`
  return playerId === null ? place : `${place}/${encodeURIComponent(playerId)}`
}

/** Which page of whom on which course an address leads to; `undefined` for any other address. */
export function playerPageOfPlace(place: string):
  | {
      readonly page: PlayerPage
      readonly courseId: string
      readonly playerId: string | null
    }
  | undefined {
  const [, courseId, page, playerId] = PLAYER_PLACE.exec(place) ?? []
  if (courseId === undefined) return undefined
  return {
    page: page as PlayerPage,
    courseId: decodeURIComponent(courseId),
    playerId: playerId === undefined ? null : decodeURIComponent(playerId),
  }
}

const PLAYER_PLACE = /^#\/course\/([^/]+)\/(card|season|practice)(?:\/([^/]+))?$/

/** The address where a day of a course is typed, its weather and pins. */
export function dayPlace(courseId: string): string {
  return `${coursePlace(courseId)}/day`
}

/** The address of a group's cards on a course. */
export function groupPlace(courseId: string): string {
  return `${coursePlace(courseId)}/group`
}

/** The address of a club on its course: rounds of many players, without names. */
export function clubPlace(courseId: string): string {
  return `${coursePlace(courseId)}/club`
}

/** The course whose club an address leads to; `undefined` for any other address. */
export function courseOfClubPlace(place: string): string | undefined {
  return courseWith('club', place)
}

/** The address where rounds on a course are scored. */
export function scorePlace(courseId: string): string {
  return `${coursePlace(courseId)}/score`
}

/** The course whose scores an address leads to; `undefined` for any other address. */
export function courseOfScorePlace(place: string): string | undefined {
  return courseWith('score', place)
}

/** The address of a pair of foursomes on a course. */
export function foursomesPlace(courseId: string): string {
  return `${coursePlace(courseId)}/foursomes`
}

/** The course whose foursomes an address leads to; `undefined` for any other address. */
export function courseOfFoursomesPlace(place: string): string | undefined {
  return courseWith('foursomes', place)
}

/** The course whose group an address leads to; `undefined` for any other address. */
export function courseOfGroupPlace(place: string): string | undefined {
  return courseWith('group', place)
}

/** The course whose day an address leads to; `undefined` for any other address. */
export function courseOfDayPlace(place: string): string | undefined {
  return courseWith('day', place)
}

function courseWith(part: string, place: string): string | undefined {
  const [, courseId] = new RegExp(`^#/course/([^/]+)/${part}$`).exec(place) ?? []
  return courseId === undefined ? undefined : decodeURIComponent(courseId)
}

/** What is laid on the desk by an address; what is absent stays as it was left. */
export interface Wanted {
  readonly courseId?: string
  readonly holeRef?: string
  readonly playerId?: string
}

/** The address of the desk with a hole or a player laid on it. */
export function deskPlace(wanted: Wanted): string {
  return `${DESK}?${new URLSearchParams(Object.entries(wanted))}`
}

/** What an address lays on the desk; `null` = nothing. */
export function wantedOfPlace(place: string): Wanted | null {
  if (!place.startsWith(`${DESK}?`)) return null
  const asked = new URLSearchParams(place.slice(DESK.length + 1))
  return Object.fromEntries(
    (['courseId', 'holeRef', 'playerId'] as const).flatMap((name) => {
      const value = asked.get(name)
      return value === null ? [] : [[name, value]]
    }),
  )
}

/** The address of the recap of a kept round. */
export function recapPlace(roundId: string): string {
  return `${ROUNDS}/${encodeURIComponent(roundId)}`
}

/** Which round's recap an address leads to; `undefined` for any other address. */
export function recapOfPlace(place: string): string | undefined {
  return place.startsWith(`${ROUNDS}/`) ? decodeURIComponent(place.slice(ROUNDS.length + 1)) : undefined
}

/** The part of the address after the page, and what follows it. */
export function usePlace(): string {
  return useSyncExternalStore(follow, () => location.hash)
}

function follow(onChange: () => void): () => void {
  addEventListener('hashchange', onChange)
  return () => removeEventListener('hashchange', onChange)
}
