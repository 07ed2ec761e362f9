import type { Page } from 'playwright-core'

/** Work that chance alone would hardly ever finish: a player made of three answers, and a hole of two rows, each kept in the store. */

/** Answers three of the ten questions and keeps the player. */
export async function keepPlayer(page: Page, address: string, name: string): Promise<string> {
  await page.goto(`${address}#/new-player`)
  const done = await inTime(async (timeout) => {
    const back = page.getByRole('button', { name: 'Back to the questions' })
    if ((await back.count()) > 0) await back.click({ timeout })
    await type(page, 'What is the player called?', name, timeout)
    await page.getByRole('radio', { name: /right/i }).first().click({ timeout })
    await type(page, 'handicap index', '18', timeout)
    await page.getByRole('button', { name: 'Make the profile' }).click({ timeout })
    await page.getByRole('button', { name: 'Keep, and open the desk' }).click({ timeout })
    await page.getByLabel('Course', { exact: true }).waitFor({ timeout })
  })
  return done ? `kept the player ${name}` : 'began a player'
}

/** Begins a course, types a green and a name, and keeps it. */
export async function keepHole(page: Page, address: string, name: string): Promise<string> {
  await page.goto(`${address}#/survey`)
  const done = await inTime(async (timeout) => {
    await page.getByRole('button', { name: 'Begin a new course' }).click({ timeout })
    await type(page, 'Name of the course', name, timeout)
    await page.getByLabel('Row 1, what').focus({ timeout })
    await page.keyboard.type('g')
    for (const [cell, text] of [
      ['from', '150'],
      ['to', '170'],
      ['far', '20'],
    ] as const)
      await type(page, `Row 1, ${cell}`, text, timeout)
    await page.getByRole('button', { name: 'Keep, and open the desk' }).click({ timeout })
    await page.getByLabel('Course', { exact: true }).waitFor({ timeout })
  })
  return done ? `kept the course ${name}` : 'began a course'
}

async function type(page: Page, label: string, text: string, timeout: number): Promise<void> {
  await page.getByLabel(label).first().click({ timeout })
  await page.keyboard.press('Control+a')
  await page.keyboard.type(text)
}

/** What the page does not let happen (the survey asks about another tab, the player is no beginner) is left half done, as a person would. */
async function inTime(work: (timeout: number) => Promise<void>): Promise<boolean> {
  try {
    await work(TIMEOUT_MILLISECONDS)
    return true
  } catch (error) {
    if (error instanceof Error && error.name === 'TimeoutError') return false
    throw error
  }
}

/** Long enough for a page that stands still to be given up by the desk itself. */
const TIMEOUT_MILLISECONDS = 20_000
