import type { Fault } from '#faults/fault.ts'
import type { Day } from '#golf/course/day.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { parseRound } from '#golf/round/parse-round.ts'
import type { Round } from '#golf/round/round.ts'
import { type RoundBelongs, roundBelongs } from '#golf/round/round-belongs.ts'
import { fetchDocument, listDocuments } from '../documents/fetch-document.ts'
import { type Loaded, troubleOf, useLoaded } from '../documents/use-library.ts'

/** A round of the store, and whose it is. */
export interface KeptRoundFile {
  readonly id: string
  readonly round: Round
  readonly belongs: RoundBelongs
  readonly faults: readonly Fault[]
}

/** Reads a round of the store. Throws a Failure when there is none or it holds no hole. */
async function loadRound(id: string): Promise<KeptRoundFile> {
  const [text, where] = [await fetchDocument('rounds', id), `rounds/${id}`]
  const { round, faults } = parseRound(text, where)
  return { id, round, faults, belongs: roundBelongs(text, where) }
}

/** A day of the store. */
export interface KeptDay {
  readonly id: string
  readonly name: string
  readonly day: Day
}

async function loadDays(): Promise<readonly KeptDay[]> {
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
