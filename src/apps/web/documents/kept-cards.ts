import type { PlanNumbers } from '#golf/round/plan-numbers.ts'
import { encodePrintedCard, type PrintedCard, parsePrintedCard } from '#golf/round/printed-card.ts'
import { textNumber } from '#golf/round/text-number.ts'
import { fetchDocument, fetchKept, keepChanged, keepNewDocument, listDocuments } from './fetch-document.ts'

/** Keeps what a card stood on when it left the desk; a later one of the same day takes its place. Throws a Failure with the server's code. */
export async function keepCard(card: PrintedCard): Promise<void> {
  const id = `${cardsOf(card)}${card.date}`
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
  const own = cardsOf(of)
  const dates = (await listDocuments('cards'))
    .flatMap(({ id }) => (id.startsWith(own) ? [id.slice(own.length)] : []))
    .filter((made) => made <= date)
    .sort()
  const last = dates.at(-1)
  if (last === undefined) return null
  const { card, numbers } = parsePrintedCard(await fetchDocument('cards', own + last), `cards/${own}${last}`)
  return card.courseId === of.courseId && card.playerId === of.playerId ? numbers : null
}

/** What ids of the cards of a player on a course begin with: both ids together may be longer than an id can be. */
function cardsOf({ courseId, playerId }: Pick<PrintedCard, 'courseId' | 'playerId'>): string {
  return `card-${textNumber(`${courseId}/${playerId}`)}-`
}
