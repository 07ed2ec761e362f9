import { encodeRound } from '#golf/round/encode-round.ts'
import { isSameRound, mergeRounds } from '#golf/round/kept-round.ts'
import { parseKeptRound } from '#golf/round/parse-kept-round.ts'
import { sortedText } from '#golf/round/sorted-text.ts'
import type { SharedDocument, SharedKind } from './shared-file.ts'

/** The store that documents are taken into; a put names the revision that was got, `null` for a new document. */
export interface TakingStore<Revision> {
  get(kind: SharedKind, id: string): Promise<{ readonly text: string; readonly revision: Revision } | null>
  put(kind: SharedKind, id: string, text: string, revision: Revision | null): Promise<void>
}

/** What became of a document. */
export interface Taken {
  readonly kind: SharedKind
  /** As it was sent. */
  readonly id: string
  /** `beside`: another document has its id, so it was kept under one of its own. */
  readonly became: 'new' | 'merged' | 'beside' | 'same'
  /** The id it has here. */
  readonly keptAs: string
}

/**
 * Takes a document in without losing anything of what is there: copies of one round are laid together, and what differs
 * otherwise is kept beside under the next free number. Taken in once more, nothing changes. Rejects with what the store throws.
 */
export async function takeShared<Revision>(
  { kind, id, text }: SharedDocument,
  store: TakingStore<Revision>,
): Promise<Taken> {
  for (let number = 1; ; number += 1) {
    const keptAs = number === 1 ? id : `${id}-${number}`
    const there = await store.get(kind, keptAs)
    if (there === null) {
      await store.put(kind, keptAs, text, null)
      return { kind, id, keptAs, became: number === 1 ? 'new' : 'beside' }
    }
    if (isSameText(there.text, text)) return { kind, id, keptAs, became: 'same' }
    const merged = kind === 'rounds' ? mergedRound(there.text, text, keptAs) : null
    if (merged === null) continue
    if (merged.isSame) return { kind, id, keptAs, became: 'same' }
    await store.put(kind, keptAs, merged.text, there.revision)
    return { kind, id, keptAs, became: 'merged' }
  }
}

function isSameText(one: string, other: string): boolean {
  return sortedText(JSON.parse(one)) === sortedText(JSON.parse(other))
}

/** Two copies of one round laid together; `null` when they are not, or one has no log. */
function mergedRound(mine: string, theirs: string, where: string): { text: string; isSame: boolean } | null {
  const [one, other] = [parseKeptRound(mine, where)?.round, parseKeptRound(theirs, where)?.round]
  if (one === undefined || other === undefined || one.facts.id !== other.facts.id) return null
  const merged = mergeRounds(one, other)
  return { text: encodeRound(merged), isSame: isSameRound(merged, one) }
}
