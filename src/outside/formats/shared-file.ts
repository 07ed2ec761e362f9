import { Failure } from '#faults/failure.ts'
import { cardId, parsePrintedCard } from '#golf/round/printed-card.ts'
import { documentId } from './document-id.ts'

/** The kinds of document that go from one machine to another. */
export const SHARED_KINDS = ['courses', 'players', 'days', 'plans', 'rounds', 'notes', 'cards'] as const
export type SharedKind = (typeof SHARED_KINDS)[number]

/** One document as it goes from one store to another; a card goes with its round. */
export interface SharedDocument {
  readonly kind: SharedKind
  readonly id: string
  /** Its text, JSON. */
  readonly text: string
}

/** Documents as one file, `shared/1`. */
export function encodeShared(documents: readonly SharedDocument[]): string {
  const written = documents.map(({ kind, id, text }) => ({ kind, id, document: JSON.parse(text) as unknown }))
  return `${JSON.stringify({ schema: 'shared/1', documents: written }, null, 1)}\n`
}

/**
 * The documents of a `shared/1` file, of what `player export` wrote, or one `player/1`, `round/1`, `card/1`, `practice/1` or course file by itself.
 * Throws MAR-SHARE-001 when it is none of these, MAR-SHARE-002 when a document in it has no kind or id.
 */
export function parseShared(text: string, where: string): readonly SharedDocument[] {
  const file = objectIn(text, where)
  if (file.schema === 'shared/1' && Array.isArray(file.documents))
    return file.documents.map((one: unknown, index) => sharedDocument(one, `${where}: documents[${index}]`))
  if (file.schema === 'player-export/1') {
    const of = (kind: SharedKind, list: unknown): readonly SharedDocument[] =>
      (Array.isArray(list) ? list : []).map((one: unknown, index) =>
        sharedDocument({ ...recordOf(one), kind }, `${where}: ${kind}[${index}]`),
      )
    return [
      ...of('players', [file.player]),
      ...of('plans', file.plans),
      ...of('rounds', file.rounds),
      ...of('cards', file.cards),
    ]
  }
  if (file.schema === 'round/1' && isId(file.id)) return [{ kind: 'rounds', id: file.id, text }]
  if (file.schema === 'card/1')
    return [{ kind: 'cards', id: cardId(parsePrintedCard(text, where).card), text }]
  if (file.schema === 'practice/1') return [{ kind: 'notes', id: 'practice', text }]
  if (file.schema === 'player/1')
    return [{ kind: 'players', id: documentId(wordOf(file.name), 'player'), text }]
  if (file.type === 'FeatureCollection' && file.marram !== undefined)
    return [{ kind: 'courses', id: documentId(wordOf(recordOf(file.marram).name), 'course'), text }]
  throw new Failure(
    'MAR-SHARE-001',
    'This is no file to take in: neither shared/1 nor player-export/1, nor a player, a card, a course file, notes on practice or a round with an id.',
    `${where}: schema`,
  )
}

function sharedDocument(one: unknown, place: string): SharedDocument {
  const { kind, id, document } = recordOf(one)
  const known = SHARED_KINDS.find((each) => each === kind)
  if (known === undefined || !isId(id) || typeof document !== 'object' || document === null)
    throw new Failure(
      'MAR-SHARE-002',
      `A shared document needs a kind (${SHARED_KINDS.join(', ')}), an id and the document itself.`,
      place,
    )
  return { kind: known, id, text: JSON.stringify(document) }
}

function wordOf(value: unknown): string {
  return typeof value === 'string' ? value : ''
}

function objectIn(text: string, where: string): Readonly<Record<string, unknown>> {
  try {
    return recordOf(JSON.parse(text.replace(/^\uFEFF/, '')))
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    throw new Failure('MAR-SHARE-001', `The file is not JSON: ${reason}.`, where)
  }
}

function recordOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {}
}

/** As an address of the server has it. */
function isId(value: unknown): value is string {
  return typeof value === 'string' && value.length <= 64 && /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(value)
}
