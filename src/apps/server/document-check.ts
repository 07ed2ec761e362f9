import type { Fault } from '#faults/fault.ts'

/** What was found out about a document before it is kept. */
export interface CheckedDocument {
  /** What lists show. */
  readonly name: string
  /** What is wrong with it; one of severity `error` keeps it from being kept. */
  readonly faults: readonly Fault[]
}

/** Reads a document as its kind and throws a Failure when it is not one; `where` is its place in the API: `players/anna`. */
export type DocumentCheck = (text: string, where: string) => CheckedDocument

/** The kinds of document, by their name in the API. */
export const DOCUMENT_KINDS = ['courses', 'players', 'days', 'plans', 'rounds', 'notes', 'cards'] as const
export type DocumentKind = (typeof DOCUMENT_KINDS)[number]
