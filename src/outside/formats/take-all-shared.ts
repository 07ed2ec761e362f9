import { cardId } from '#golf/round/printed-card.ts'
import type { SharedDocument } from './shared-file.ts'
import { type Taken, type TakingStore, takeShared } from './take-shared.ts'

/**
 * Takes the documents of one file in. What belongs to a player or a course of the file goes with them where they are kept beside
 * another of their id: rounds and cards name it as it is called here. Rejects with what the store throws.
 */
export async function takeAllShared<Revision>(
  documents: readonly SharedDocument[],
  store: TakingStore<Revision>,
): Promise<Taken[]> {
  const taken: Taken[] = []
  const renamed = new Map<string, string>()
  const isNamed = ({ kind }: SharedDocument): boolean => kind === 'players' || kind === 'courses'
  for (const document of [...documents.filter(isNamed), ...documents.filter((one) => !isNamed(one))]) {
    const one = await takeShared(isNamed(document) ? document : named(document, renamed), store)
    if (one.keptAs !== one.id) renamed.set(`${one.kind}/${one.id}`, one.keptAs)
    taken.push(one)
  }
  return taken
}

/** A document with the ids of its player and course as they are called here; the id of a card is made of them. */
function named(document: SharedDocument, renamed: ReadonlyMap<string, string>): SharedDocument {
  const fields = JSON.parse(document.text) as Readonly<Record<string, unknown>>
  const [player, course] = [
    renamed.get(`players/${String(fields.player_id)}`),
    renamed.get(`courses/${String(fields.course_id)}`),
  ]
  if (player === undefined && course === undefined) return document
  const here = {
    ...fields,
    ...(player === undefined ? {} : { player_id: player }),
    ...(course === undefined ? {} : { course_id: course }),
  } as Readonly<Record<string, unknown>>
  const text = JSON.stringify(here)
  if (document.kind !== 'cards') return { ...document, text }
  const [courseId, playerId, date] = [here.course_id, here.player_id, here.date].map(String) as [
    string,
    string,
    string,
  ]
  return { ...document, id: cardId({ courseId, playerId, date }), text }
}
