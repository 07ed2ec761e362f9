import { Failure } from '#faults/failure.ts'
import type { PlanNumbers } from '#golf/round/plan-numbers.ts'
import {
  cardId,
  encodePrintedCard,
  lastCardId,
  type PrintedCard,
  parsePrintedCard,
} from '#golf/round/printed-card.ts'
import { fetchDocument, fetchKept, keepChanged, keepNewDocument, listDocuments } from './fetch-document.ts'

/** Cards are kept one after the other: a page may leave the desk twice at once. */
let last: Promise<unknown> = Promise.resolve()

/** Keeps what a card stood on when it left the desk; a later one of the same day takes its place. Throws a Failure with the server's code. */
export function keepCard(card: PrintedCard): Promise<void> {
  const keeping = last.then(() =>
    put(card).catch((error: unknown) => {
      // Another browser was quicker: its card is there now, and this one comes after it.
      if (error instanceof Failure && error.code === 'MAR-STORE-004') return put(card)
      throw error
    }),
  )
  last = keeping.catch(() => {})
  return keeping
}

async function put(card: PrintedCard): Promise<void> {
  const id = cardId(card)
  const text = encodePrintedCard(card)
  const listed = await listDocuments('cards')
  if (!listed.some((one) => one.id === id)) {
    await keepNewDocument('cards', id, text)
    return
  }
  const kept = await fetchKept('cards', id)
  if (kept.text !== text) await keepChanged('cards', id, text, kept.revision)
}

/** What the last card stood on that a player had on a course on this date; `null` = none is known. Throws a Failure with the server's code. */
export async function cardOn(
  of: Pick<PrintedCard, 'courseId' | 'playerId'>,
  date: string,
): Promise<PlanNumbers | null> {
  const ids = (await listDocuments('cards')).map(({ id }) => id)
  const id = lastCardId(ids, of, date)
  if (id === null) return null
  const { card, numbers } = parsePrintedCard(await fetchDocument('cards', id), `cards/${id}`)
  return card.courseId === of.courseId && card.playerId === of.playerId ? numbers : null
}
