import type { Page } from 'playwright-core'
import { differences, type Kept, settledKept } from './kept.ts'

/** So many steps are taken back before and after the page is loaded again. */
const STEPS = 3

/**
 * Loads the page again and holds what it then keeps, and what its last steps of undo lead back to, against what was there
 * before. Returns what was lost, in words.
 */
export async function reloadAndCompare(page: Page): Promise<string[]> {
  const stepsBefore = await stepBack(page)
  const before = await settledKept(page)
  await page.reload()
  await ready(page)
  const after = await settledKept(page)
  const lost = differences(before, after).map((words) => `after loading again: ${words}`)
  const stepsAfter = await stepBack(page)
  if (stepsBefore.length !== stepsAfter.length)
    lost.push(
      `${stepsBefore.length} steps could be taken back before loading again, ${stepsAfter.length} after`,
    )
  for (const [index, step] of stepsBefore.entries()) {
    const other = stepsAfter[index]
    if (other !== undefined)
      lost.push(
        ...differences(step, other).map((words) => `${index + 1} steps back after loading again: ${words}`),
      )
  }
  return lost
}

/** What each of the last steps leads back to, newest first; everything is put back. None on a page without steps of its own. */
async function stepBack(page: Page): Promise<Kept[]> {
  const states: Kept[] = []
  // Shots are taken back one by one after a reload, not step by step: only the sheet itself is compared.
  if (String(page.url()).includes('#/shots')) return states
  // What lies over the page would take the press.
  while ((await page.locator('dialog[open]').count()) > 0) await page.keyboard.press('Escape')
  const now = await settledKept(page)
  while (states.length < STEPS && (await press(page, 'Undo'))) states.push(await settledKept(page))
  for (const _ of states) await press(page, 'Redo')
  const again = differences(now, await settledKept(page))
  if (again.length > 0) throw new Error(`Undo and redo do not lead back: ${again.join('; ')}`)
  return states
}

async function press(page: Page, name: string): Promise<boolean> {
  const button = page.locator('.head-buttons').getByRole('button', { name, exact: true })
  if ((await button.count()) === 0 || (await button.isDisabled())) return false
  await button.click()
  return true
}

/** Waits until the page shows more than that it is loading. */
async function ready(page: Page): Promise<void> {
  await page.locator('main:not([aria-busy=true])').first().waitFor()
  await page.getByRole('heading', { level: 1 }).or(page.getByRole('alert')).first().waitFor()
}
