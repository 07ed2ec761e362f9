import type { Page } from 'playwright-core'
import { afterAll, expect } from 'vitest'
import { openHole, type ServedDesk, serveDesk } from '../../tools/served-desk.ts'
import { twoClubs, twoShortWithWater } from '../fixtures/two-short.ts'

/**
 * A desk for all tests of a file, opened at a hole and put away after the last. Hole 3 is a par 3, so that a plan takes a second
 * or two. `before`: what is set up on the page before anything is opened.
 */
export async function deskAt(ref: string, before?: (page: Page) => Promise<unknown>): Promise<ServedDesk> {
  const desk = await serveDesk()
  afterAll(() => desk.close())
  await before?.(desk.page)
  await openHole(desk, ref)
  return desk
}

/** The same at a short hole with water in front of its green, for a player with two clubs: a plan takes a second, all of it a few. */
export async function deskAtShort(): Promise<ServedDesk> {
  const desk = await serveDesk()
  afterAll(() => desk.close())
  await opensShort(desk)
  await openHole(desk, '1')
  return desk
}

/** Named so that they come first in the lists, and the desk opens with them. */
const FIRST: readonly (readonly [place: string, document: object])[] = [
  ['courses/a-short-one', twoShortWithWater('A Short One')],
  ['players/abel', twoClubs('Abel Sands')],
]

/**
 * From now on the desk opens at a short hole for a player with two clubs, whose plan takes a second: for tests that ask of a
 * plan only that it comes. Call the answer to open it at the example course again.
 */
export async function opensShort({ address }: ServedDesk): Promise<() => Promise<void>> {
  for (const [place, document] of FIRST) {
    const headers = { 'Content-Type': 'application/json', 'If-None-Match': '*' }
    const answer = await fetch(`${address}api/${place}`, {
      method: 'PUT',
      headers,
      body: JSON.stringify(document),
    })
    expect(answer.status, await answer.text()).toBe(201)
  }
  return async () => {
    for (const [place] of FIRST) {
      const answer = await fetch(`${address}api/${place}`, { method: 'DELETE' })
      expect(answer.ok).toBe(true)
    }
  }
}
