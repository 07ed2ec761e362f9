import { join } from 'node:path'
import { Failure } from '#faults/failure.ts'
import {
  encodeShared,
  parseShared,
  SHARED_KINDS,
  type SharedDocument,
  type SharedKind,
} from '#outside/formats/shared-file.ts'
import { takeAllShared } from '#outside/formats/take-all-shared.ts'
import type { Taken, TakingStore } from '#outside/formats/take-shared.ts'
import { openStore } from '#outside/store/open-store.ts'
import type { Store } from '#outside/store/store.ts'
import { documentChecks } from '../server/document-checks.ts'
import type { GlobalOptions, Machine } from './machine.ts'
import { printJson, printLines } from './print-answer.ts'
import { readText } from './read-file.ts'
import { storeOfMachine } from './store-of-machine.ts'
import { writeText } from './write-file.ts'

/** The options of `marram share` and `marram take`, as typed. */
export interface ShareOptions extends GlobalOptions {
  readonly store?: string
  readonly out?: string
}

/** `marram share`: documents of the store as one file for another machine. Returns the exit code. */
export async function shareCommand(
  names: readonly string[],
  options: ShareOptions,
  machine: Machine,
): Promise<number> {
  const { out = '' } = options
  return storeOfMachine(options, machine, async (store) => {
    const documents: SharedDocument[] = []
    for (const name of names) documents.push(await documentNamed(name, store))
    writeText(out, encodeShared(documents))
    if (options.json)
      printJson(
        { schema: 'shared-out/1', out, documents: documents.map(({ kind, id }) => ({ kind, id })) },
        machine,
      )
    else
      printLines(
        [`${names.join(', ')} written to ${out}. Take it in there with: marram take ${out}`],
        machine,
      )
    return 0
  })
}

/** `marram take`: takes a file of documents into the store, which is made if there is none. Returns the exit code. */
export async function takeCommand(path: string, options: ShareOptions, machine: Machine): Promise<number> {
  const documents = parseShared(readText(path), path)
  // Everything is looked at before anything is kept.
  for (const { kind, id, text } of documents) check(kind, id, text)
  const store = await openStore(options.store ?? join(machine.home, '.marram/store.db'))
  try {
    const taken = await takeAllShared(documents, takingStore(store))
    if (options.json) printJson({ schema: 'shared-in/1', documents: taken }, machine)
    else printLines(taken.map(takenWords), machine)
    return 0
  } finally {
    await store.close()
  }
}

function takingStore(store: Store): TakingStore<number> {
  return {
    async get(kind, id) {
      const kept = await store[kind].get(id)
      return kept === null ? null : { text: kept.document, revision: kept.revision }
    },
    async put(kind, id, text, revision) {
      await store[kind].put(id, check(kind, id, text), text, { expectedRevision: revision ?? 0 })
    },
  }
}

/** What lists call the document. Throws the Failure of its reader, or MAR-SERVER-009 for a course with errors. */
function check(kind: SharedKind, id: string, text: string): string {
  const { name, faults } = documentChecks[kind](text, `${kind}/${id}`)
  const first = faults.find(({ severity }) => severity === 'error')
  if (first !== undefined) throw new Failure('MAR-SERVER-009', first.message, first.place)
  return name
}

async function documentNamed(name: string, store: Store): Promise<SharedDocument> {
  const [word, id = '', ...rest] = name.split('/')
  const kind = SHARED_KINDS.find((each) => each === word)
  if (kind === undefined || id === '' || rest.length > 0)
    throw new Failure(
      'MAR-USAGE-002',
      `"${name}" is no document of the store. Write it like players/anna or rounds/round-2026-05-02-k3x7q1.`,
      name,
    )
  const kept = await store[kind].get(id)
  if (kept !== null) return { kind, id, text: kept.document }
  const known = (await store[kind].list()).map((one) => one.id).join(', ')
  throw new Failure('MAR-SHARE-003', `The store has no ${name}. Its ${kind}: ${known || 'none'}.`, name)
}

function takenWords({ kind, id, became, keptAs }: Taken): string {
  const words = {
    new: 'is new here',
    same: 'was here already',
    merged: 'was laid together with the copy that was here',
    beside: `differs from the one that is here and was kept beside it as ${keptAs}`,
  }
  return `${kind}/${id} ${words[became]}.`
}
