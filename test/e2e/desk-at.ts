import type { Page } from 'playwright-core'
import { afterAll } from 'vitest'
import { openHole, type ServedDesk, serveDesk } from '../../tools/served-desk.ts'

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
