import { type Answers, FIELDS } from '#golf/player/player-questions.ts'

const KEPT = 'marram.answers'

/** Keeps answers for when the page is loaded again in this tab; a full or forbidden storage keeps nothing. */
export function keepAnswers(answers: Answers, place: Pick<Storage, 'setItem'>): void {
  try {
    place.setItem(KEPT, JSON.stringify(answers))
  } catch {
    // Nothing is lost but the comfort.
  }
}

/** Once the player is in the store, nothing of the pupil stays in the browser. */
export function forgetAnswers(place: Pick<Storage, 'removeItem'>): void {
  place.removeItem(KEPT)
}

/** The answers of before the page was loaded again; none when none were kept. */
export function keptAnswers(place: Pick<Storage, 'getItem'>): Answers {
  try {
    const kept: unknown = JSON.parse(place.getItem(KEPT) ?? '{}')
    if (typeof kept !== 'object' || kept === null) return {}
    const texts = kept as Readonly<Record<string, unknown>>
    return Object.fromEntries(
      FIELDS.flatMap(({ id }) => (typeof texts[id] === 'string' ? [[id, texts[id]]] : [])),
    )
  } catch {
    return {}
  }
}
