import { ownStorage } from '../documents/own-storage.ts'

const KEY = 'marram.phone'
let known: string | null = null

/** What this phone is called in logs: six letters and digits by chance. */
export function phoneId(): string {
  known ??= ownStorage.getItem(KEY)
  if (known !== null) return known
  known = newMark()
  try {
    ownStorage.setItem(KEY, known)
  } catch {
    // Where nothing may be kept it is another phone the next time, which harms nothing.
  }
  return known
}

/** Six letters and digits by chance: one in two thousand million. */
export function newMark(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(6))
  return Array.from(bytes, (byte) => (byte % 36).toString(36)).join('')
}
