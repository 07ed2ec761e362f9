import type { Fault } from '#faults/fault.ts'
import type { Day } from '#golf/course/day.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { parseRound } from '#golf/round/parse-round.ts'
import type { PlanNumbers } from '#golf/round/plan-numbers.ts'
import type { Round } from '#golf/round/round.ts'
import { type RoundBelongs, roundBelongs } from '#golf/round/round-belongs.ts'
import { roundKey } from '#golf/round/round-key.ts'
import { fetchDocument, listDocuments } from '../documents/fetch-document.ts'
import { type Loaded, troubleOf, useLoaded } from '../documents/use-library.ts'

/** A round of the store, and whose it is. */
export interface KeptRoundFile {
  readonly id: string
  readonly round: Round
  /** What tells it from every other round, whatever store it stands in. */
  readonly key: string
  readonly belongs: RoundBelongs
  /** What the plans of its day stood on; `null` = not known. */
  readonly planNumbers: PlanNumbers | null
  readonly faults: readonly Fault[]
}

/** A document of the store and its name. */
export interface Named {
  readonly id: string
  readonly name: string
}

/** Whether a round is of this player: by id, or by name where it has none. */
export function isOfPlayer({ playerId, player }: RoundBelongs, of: Named): boolean {
  return playerId === null ? player === of.name : playerId === of.id
}

/** The same of the course. */
export function isOnCourse({ courseId, course }: RoundBelongs, of: Named): boolean {
  return courseId === null ? course === of.name : courseId === of.id
}

/** Reads a round of the store. Throws a Failure when there is none or it holds no hole. */
async function loadRound(id: string): Promise<KeptRoundFile> {
  const [text, where] = [await fetchDocument('rounds', id), `rounds/${id}`]
  const read = parseRound(text, where)
  const { round, planNumbers, faults } = read
  return { id, round, planNumbers, faults, key: roundKey(read), belongs: roundBelongs(text, where) }
}

/** A day of the store. */
export interface KeptDay {
  readonly id: string
  readonly name: string
  readonly day: Day
}

/** Every day of the store. Throws a Failure with the server's code. */
export async function loadDays(): Promise<readonly KeptDay[]> {
  const listed = await listDocuments('days')
  return Promise.all(
    listed.map(async ({ id, name }) => ({
      id,
      name,
      day: parseDay(await fetchDocument('days', id), `days/${id}`),
    })),
  )
}

/** Every round that can be read, by date, and why others cannot. */
export interface KeptRounds {
  readonly rounds: readonly KeptRoundFile[]
  readonly unread: readonly string[]
}

async function loadRounds(): Promise<KeptRounds> {
  const unread: string[] = []
  const rounds: KeptRoundFile[] = []
  for (const { id, name } of await listDocuments('rounds'))
    await loadRound(id).then(
      (round) => rounds.push(round),
      (error: unknown) => unread.push(`${name}: ${troubleOf(error).message}`),
    )
  rounds.sort((one, other) => (one.round.date ?? '').localeCompare(other.round.date ?? ''))
  return { rounds, unread }
}

/** Every round of the store. */
export function useKeptRounds(): Loaded<KeptRounds> {
  return useLoaded('all', loadRounds)
}

/** A round of the store by id. */
export function useKeptRound(id: string): Loaded<KeptRoundFile> {
  return useLoaded(id, loadRound)
}

/** Every day of the store. */
export function useKeptDays(): Loaded<readonly KeptDay[]> {
  return useLoaded('all', loadDays)
}
