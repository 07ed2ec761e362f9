import { type DBSchema, type IDBPDatabase, openDB } from 'idb'

interface Answers extends DBSchema {
  answers: {
    key: string
    value: { readonly of: string; readonly name: string; readonly state: unknown; readonly at: number }
    indexes: { of: string; at: number }
  }
}

/** Answers are kept so long as there is room: fifty players on eighteen holes. A plan is some 90 kB. Our choice. */
const MOST_KEPT = 900
/** Work begins without what was kept when the browser has not brought it after so long, milliseconds: another tab may hold it shut. */
const FIND_PATIENCE = 1500

let opened: Promise<IDBPDatabase<Answers>> | null = null

function shelf(): Promise<IDBPDatabase<Answers>> {
  opened ??= openDB<Answers>('marram-answers', 1, {
    upgrade(database) {
      const answers = database.createObjectStore('answers')
      answers.createIndex('of', 'of')
      answers.createIndex('at', 'at')
    },
    // Another tab would clear or rebuild it.
    blocking(_before, _wanted, event) {
      opened = null
      ;(event.target as IDBDatabase).close()
    },
    terminated() {
      opened = null
    },
  })
  return opened
}

/** Answers of one asking that outlive the page; each is worked out anew where the browser keeps nothing. */
export interface KeptAnswers {
  /** Those that are there, by the name of their piece. */
  find(): Promise<Readonly<Record<string, unknown>>>
  keep(name: string, state: unknown): Promise<void>
}

/**
 * The answers to what this key asks of a worker. `worker`: the address of what works it out, which holds a mark of its content,
 * so that another version of it finds nothing.
 */
export function keptAnswers(worker: string, key: string): KeptAnswers {
  const of = digest(`${worker} ${key}`)
  const found = async (): Promise<Readonly<Record<string, unknown>>> => {
    try {
      const id = await of
      if (id === null) return {}
      const all = await (await shelf()).getAllFromIndex('answers', 'of', id)
      return Object.fromEntries(all.map(({ name, state }) => [name, state]))
    } catch {
      return {}
    }
  }
  return {
    find: () => Promise.race([found(), nothingAfter(FIND_PATIENCE)]),
    async keep(name, state) {
      try {
        const id = await of
        if (id === null) return
        const database = await shelf()
        await database.put('answers', { of: id, name, state, at: Date.now() }, `${id} ${name}`)
        await dropOldest(database)
      } catch {
        // A full or forbidden storage: it is worked out again next time.
      }
    },
  }
}

/** Lets go of all that is kept: it holds names of players, one of whom is gone. */
export async function forgetAnswers(): Promise<void> {
  try {
    await (await shelf()).clear('answers')
  } catch {
    // Where nothing can be kept nothing is.
  }
}

function nothingAfter(milliseconds: number): Promise<Readonly<Record<string, never>>> {
  return new Promise((resolve) => {
    setTimeout(() => resolve({}), milliseconds)
  })
}

async function dropOldest(database: IDBPDatabase<Answers>): Promise<void> {
  let surplus = (await database.count('answers')) - MOST_KEPT
  if (surplus <= 0) return
  const { store, done } = database.transaction('answers', 'readwrite')
  for (let at = await store.index('at').openCursor(); at !== null && surplus > 0; at = await at.continue()) {
    await at.delete()
    surplus -= 1
  }
  await done
}

/** `null` where the page came by a way on which others can listen: browsers digest nothing there. */
async function digest(text: string): Promise<string | null> {
  if (!isSecureContext) return null
  const bytes = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text))
  return Array.from(new Uint8Array(bytes), (byte) => byte.toString(16).padStart(2, '0')).join('')
}
