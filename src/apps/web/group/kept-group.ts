import type { Place } from '../documents/own-storage.ts'

const KEPT = 'marram.group'

/** Who was in the group when it was last looked at in this browser. */
export function keptGroup(storage: Place): readonly string[] {
  try {
    const kept: unknown = JSON.parse(storage.getItem(KEPT) ?? '[]')
    return Array.isArray(kept) ? kept.filter((id) => typeof id === 'string') : []
  } catch {
    return []
  }
}

export function keepGroup(ids: readonly string[], storage: Place): void {
  try {
    storage.setItem(KEPT, JSON.stringify(ids))
  } catch {
    // It holds until the page goes.
  }
}
