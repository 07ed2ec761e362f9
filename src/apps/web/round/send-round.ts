import { Failure } from '#faults/failure.ts'
import { encodeRound } from '#golf/round/encode-round.ts'
import { mergeRounds } from '#golf/round/kept-round.ts'
import { parseKeptRound } from '#golf/round/parse-kept-round.ts'
import { fetchServed, putServed } from '../documents/server-documents.ts'
import { markToSend, putRound, roundsToSend, roundText } from './round-shelf.ts'

/** Sends a round to the desk, laid together with what the desk has of it, which then is here too. Throws a Failure with the server's code. */
export async function sendRound(id: string): Promise<void> {
  await markToSend(id, true)
  for (let times = 0; ; times += 1) {
    try {
      return await sendOnce(id)
    } catch (error) {
      // Another phone came first: what it sent is taken in, and then it is this one's turn.
      const isLate = error instanceof Failure && error.code === 'MAR-STORE-004'
      if (!isLate || times >= MOST_TIMES) throw error
    }
  }
}

/** Sends what waits; what cannot be sent goes on waiting. */
export async function sendWaitingRounds(): Promise<void> {
  for (const id of await roundsToSend().catch(() => [])) await sendRound(id).catch(() => {})
}

async function sendOnce(id: string): Promise<void> {
  const there = await fetchServed('rounds', id).catch((error: unknown) => {
    if (error instanceof Failure && error.code === 'MAR-SERVER-008') return null
    throw error
  })
  const theirs = there === null ? null : parseKeptRound(there.text, id)
  if (theirs !== null) await putRound(theirs.round)
  const text = await roundText(id)
  const ours = text === null ? null : parseKeptRound(text, id)
  if (text === null || ours === null) return
  const merged = theirs === null ? ours.round : mergeRounds(ours.round, theirs.round)
  await putServed('rounds', id, encodeRound(merged), there?.revision ?? '')
  await markToSend(id, false, text)
}

const MOST_TIMES = 3
