import { expect } from 'vitest'

/** A message is a sentence for a person: no stack, no class name, no line of code. */
export function expectPlain(message: string): void {
  expect(message.length).toBeGreaterThan(10)
  expect(message).not.toMatch(
    /\n\s+at |TypeError|RangeError|SyntaxError|undefined|\[object|node:internal|\.ts:\d/,
  )
}
