import { parseKeptRound } from '#golf/round/parse-kept-round.ts'
import { roundBelongs } from '#golf/round/round-belongs.ts'
import { fetchDocument, keepNewDocument, listDocuments, removeDocument } from '../documents/fetch-document.ts'
import { putRound, removeRound, roundsHere, roundText } from '../round/round-shelf.ts'

/** A round, or what a card was made by, that went with its player. */
export interface RoundOfPlayer {
  readonly kind: 'rounds' | 'cards'
  readonly id: string
  readonly text: string
  /** In the store, or on this browser's page of the round. */
  readonly from: 'store' | 'phone'
}

/** Takes the rounds and cards of a player out of the store and off this browser, and tells of each as it is gone: what comes after it may fail. */
export async function removeRoundsOf(
  playerId: string,
  onRemoved: (round: RoundOfPlayer) => void,
): Promise<void> {
  for (const kind of ['rounds', 'cards'] as const)
    for (const { id } of await listDocuments(kind)) {
      const text = await fetchDocument(kind, id)
      if (roundBelongs(text, id).playerId !== playerId) continue
      await removeDocument(kind, id)
      onRemoved({ kind, id, text, from: 'store' })
    }
  // A browser that keeps nothing has none.
  for (const { id } of await roundsHere().catch(() => [])) {
    const text = await roundText(id)
    if (text === null || roundBelongs(text, id).playerId !== playerId) continue
    await removeRound(id)
    onRemoved({ kind: 'rounds', id, text, from: 'phone' })
  }
}

/** Puts rounds back where they were. */
export async function putRoundsBack(rounds: readonly RoundOfPlayer[]): Promise<void> {
  for (const { kind, id, text, from } of rounds) {
    if (from === 'store') await keepNewDocument(kind, id, text)
    const round = from === 'phone' ? parseKeptRound(text, id)?.round : undefined
    if (round !== undefined) await putRound(round)
  }
}
