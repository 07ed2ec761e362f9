import type { Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  openHole,
  PATIENCE,
  type ServedDesk,
  serveDesk,
  smallTargets,
  violations,
} from '../../tools/served-desk.ts'

/** What stands beside the desk and around it, in a real browser: the first lesson. One desk is served for all of it. */
let desk: ServedDesk
let page: Page

beforeAll(async () => {
  desk = await serveDesk()
  page = desk.page
  await openHole(desk, '3')
}, PATIENCE * 2)

afterAll(() => desk?.close())

const press = (name: string): Promise<void> => page.getByRole('button', { name, exact: true }).click()
const poll = (of: () => Promise<unknown>) => expect.poll(of, { timeout: 2 * PATIENCE })

describe('the first lesson', () => {
  const steps = (): Locator => page.locator('.lesson-steps li')
  const ticked = (): Promise<number> => page.locator('.lesson-steps .done').count()

  it('opens beside the desk, which stays free, and takes the focus when it is asked for', async () => {
    await press('Lesson')
    await page.getByRole('heading', { name: 'First lesson' }).waitFor()
    expect(await page.evaluate('document.activeElement.textContent')).toBe('First lesson')
    expect(await ticked()).toBe(0)
    await page.getByLabel('Hole', { exact: true }).selectOption('4')
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await page.getByLabel('Hole', { exact: true }).inputValue()).toBe('3')
  })

  it('ticks a step off once it is really done: the hole, the aim, the water and the way back', async () => {
    await press('Lay it out')
    await poll(ticked).toBe(1)
    expect(await page.locator('.lesson-words').textContent()).toContain('That sentence is the plan')
    await press('Next step')
    expect(await page.locator('.lesson-words').textContent()).toContain('Drag the ring')
    await page.getByRole('slider', { name: 'Aim' }).press('PageUp')
    await poll(ticked).toBe(2)

    const hazards = page.getByLabel('Hazard', { exact: true })
    const pool = await hazards.locator('option').filter({ hasText: 'Heron pool' }).getAttribute('value')
    await hazards.selectOption(pool)
    const on = page.getByLabel('On', { exact: true })
    await on.press('ArrowUp')
    expect(await ticked()).toBe(2)
    for (let yards = 1; yards < 20; yards += 1) await on.press('ArrowUp')
    await poll(ticked).toBe(3)
    expect(await page.locator('.lesson-words').textContent()).toContain('Now another club comes first')
    for (let step = 0; step < 30 && (await ticked()) < 4; step += 1) await page.keyboard.press('Control+z')
    await poll(ticked).toBe(4)
  })

  it('is taken up where it was left when the page is loaded again', async () => {
    await page.reload()
    await page.locator('.lesson').waitFor()
    expect(await ticked()).toBe(4)
    expect(await steps().nth(3).getAttribute('aria-current')).toBe('step')
  })

  it('ticks the club, the carries and the page, and ends', async () => {
    await page.locator('.clubs tbody button').nth(2).click()
    await poll(ticked).toBe(5)
    await press('Type own carries')
    for (const [club, yards] of [
      ['driver', '225'],
      ['7-iron', '155'],
      ['pitching wedge', '120'],
    ] as const)
      await page.getByLabel(`Carry of the ${club}, yards`).fill(yards)
    await page.keyboard.press('Tab')
    await poll(ticked).toBe(6)
    await page.pdf()
    await poll(ticked).toBe(7)
    await press('Next step')
    expect(await page.locator('.lesson-words').textContent()).toContain('That was the lesson')
  })

  it('has no accessibility violation, on a phone either, and nothing to hit under 48 px', async () => {
    for (const [width, height] of [
      [390, 844],
      [1280, 900],
    ] as const) {
      await page.setViewportSize({ width, height })
      expect(await violations(page)).toEqual([])
      expect(await smallTargets(page)).toEqual([])
      expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true)
    }
  })

  it('is put away and stays so', async () => {
    await press('Put away')
    expect(await page.locator('.lesson').count()).toBe(0)
    await page.reload()
    await page.getByLabel('Hole', { exact: true }).waitFor()
    expect(await page.locator('.lesson').count()).toBe(0)
  })
})

describe('all of it', () => {
  it('had no error of its own on the way', () => expect(desk.troubles).toEqual([]))
})
