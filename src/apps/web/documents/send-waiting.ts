import { Failure } from '#faults/failure.ts'
import { keepNewDocument } from './fetch-document.ts'
import { copyDocument, dropWaiting, keepWaiting, type WaitingChange, waitingChanges } from './local-shelf.ts'
import { fetchServed, isAway, putServed } from './server-documents.ts'
import { tellWaiting } from './waiting-news.ts'

/** Sends every change that waits and was not refused; stops when the server is still away. */
export async function sendWaiting(): Promise<void> {
  for (const change of await waitingChanges()) {
    if (change.refusal !== '') continue
    try {
      await settle(change, await putServed(change.kind, change.id, change.text, change.revision))
    } catch (error) {
      if (isAway(error)) return
      // Its answer may have been lost on the way while the change itself arrived.
      const there = await fetchServed(change.kind, change.id).catch(() => null)
      if (there?.text === change.text) {
        await settle(change, there.revision)
        continue
      }
      await keepWaiting({ ...change, refusal: reasonOf(error) })
      tellWaiting()
    }
  }
}

/** Keeps a refused change as another document. */
export async function keepBeside(change: WaitingChange): Promise<void> {
  await keepNewDocument(change.kind, `${change.id}-here`, change.text)
  await takeTheirs(change)
}

/** Gives up a refused change for what the store has. */
export async function takeTheirs(change: WaitingChange): Promise<void> {
  await dropWaiting(change)
  tellWaiting()
}

/** Puts a refused change in the place of what the store has now. */
export async function putInPlace(change: WaitingChange): Promise<void> {
  const { revision } = await fetchServed(change.kind, change.id)
  await settle(change, await putServed(change.kind, change.id, change.text, revision))
}

async function settle(change: WaitingChange, revision: string): Promise<void> {
  const { kind, id, name, text } = change
  await dropWaiting(change)
  await copyDocument({ kind, id, name, text, revision })
  tellWaiting()
}

function reasonOf(error: unknown): string {
  if (!(error instanceof Failure)) return 'The server would not have it.'
  return error.code === 'MAR-STORE-004' ? 'It was changed elsewhere since.' : error.message
}
