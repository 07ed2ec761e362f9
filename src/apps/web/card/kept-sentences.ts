import { Failure } from '#faults/failure.ts'
import { isSamePlace, type OwnSentence } from '#golf/player/own-sentence.ts'
import { fetchKept, keepChanged } from '../documents/fetch-document.ts'

/**
 * Keeps in the store what was changed of a player's sentences, in the player's own file, and leaves all else of it as it is
 * there now. While the server is away the change waits here. Throws a Failure with the server's code.
 */
export async function keepSentences(
  playerId: string,
  before: readonly OwnSentence[],
  now: readonly OwnSentence[],
): Promise<void> {
  const keep = async (): Promise<void> => {
    const { text, revision } = await fetchKept('players', playerId)
    const document = textWith(text, before, now)
    if (document !== text) await keepChanged('players', playerId, document, revision)
  }
  // What came between is another's: the change is made again on top of it.
  await keep().catch((error: unknown) => {
    if (error instanceof Failure && error.code === 'MAR-STORE-004') return keep()
    throw error
  })
}

/** The text of a player's file with the sentences that are not as before put in place of what it has there. */
export function textWith(text: string, before: readonly OwnSentence[], now: readonly OwnSentence[]): string {
  const document = JSON.parse(text) as { sentences?: readonly OwnSentence[] }
  const written = now.filter((sentence) => !before.includes(sentence))
  const gone = before.filter((sentence) => !now.some((other) => isSamePlace(sentence, other)))
  const stays = (document.sentences ?? []).filter(
    (sentence) => ![...written, ...gone].some((other) => isSamePlace(sentence, other)),
  )
  const { sentences: _, ...rest } = document
  const sentences = [...stays, ...written]
  return `${JSON.stringify(sentences.length === 0 ? rest : { ...rest, sentences }, null, 2)}\n`
}
