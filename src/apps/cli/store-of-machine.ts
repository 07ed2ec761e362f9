import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { Failure } from '#faults/failure.ts'
import { openStore } from '#outside/store/open-store.ts'
import type { Store } from '#outside/store/store.ts'
import type { Machine } from './machine.ts'

/** Works with the store that is there, and closes it. Throws MAR-FILE-001 when there is none, and what opening it throws. */
export async function storeOfMachine(
  options: { readonly store?: string },
  machine: Machine,
  work: (store: Store) => Promise<number>,
): Promise<number> {
  const path = options.store ?? join(machine.home, '.marram/store.db')
  // Opening would make one.
  if (!existsSync(path)) throw new Failure('MAR-FILE-001', 'There is no store here.', path)
  const store = await openStore(path)
  try {
    return await work(store)
  } finally {
    await store.close()
  }
}
