import type { Locator, Route } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { KEY_TABLE } from '#apps/web/commands/key-table.ts'
import { PATIENCE, smallTargets, violations } from '../../tools/served-desk.ts'
import { deskAt } from './desk-at.ts'

/** What stands beside the desk and around it, in a real browser: the keys, the first lesson, the course, the players and the field that finds. One desk is served for all of it. */
const desk = await deskAt('3')
const { page } = desk

const press = (name: string): Promise<void> => page.getByRole('button', { name, exact: true }).click()
const poll = (of: () => Promise<unknown>) => expect.poll(of, { timeout: 2 * PATIENCE })

describe('the keys', () => {
  const hole = (): Promise<string> => page.getByLabel('Hole', { exact: true }).inputValue()
  const sheet = (): Locator => page.getByRole('dialog', { name: 'Keys' })

  it('are all in one list, opened by its key and by its button, and put away by Escape', async () => {
    await press('Keys')
    await sheet().waitFor()
    const rows = Object.values(KEY_TABLE).flatMap((place) => Object.values(place.rows))
    expect(await sheet().locator('dd').allTextContents()).toEqual(rows.map(({ words }) => words))
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    await page.keyboard.press('Escape')
    await sheet().waitFor({ state: 'detached' })
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Keys')
    await page.keyboard.press('?')
    await sheet().waitFor()
    await page.keyboard.press('n')
    expect(await hole()).toBe('3')
    await page.evaluate(`location.hash = '#/players'`)
    await sheet().waitFor({ state: 'detached' })
    await page.goBack()
    await poll(hole).toBe('3')
  })

  it('turn to the next hole and back, measure, and lead to the aim', async () => {
    await page.keyboard.press('n')
    await poll(hole).toBe('4')
    await page.keyboard.press('b')
    await poll(hole).toBe('3')
    await page.keyboard.press('m')
    expect(await page.locator('.handle-measure').count()).toBe(2)
    await page.keyboard.press('m')
    expect(await page.locator('.handle-measure').count()).toBe(0)
    const aim = page.getByRole('slider', { name: 'Aim' })
    await aim.waitFor()
    await page.keyboard.press('a')
    expect(await aim.evaluate('document.activeElement.className')).toContain('handle-aim')
  })

  it('do nothing while somebody types or chooses, and nothing at all once they are turned off', async () => {
    await page.getByLabel('Player', { exact: true }).press('n')
    await press('Type own carries')
    const carry = page.getByLabel('Carry of the driver, yards')
    await carry.press('n')
    await carry.press('Backspace')
    expect(await hole()).toBe('3')
    await press('Close')
    const alone = page.getByRole('button', { name: 'Letters and signs alone are commands' })
    await press('Keys')
    await alone.click()
    await page.keyboard.press('Escape')
    await page.keyboard.press('n')
    expect(await hole()).toBe('3')
    await press('Keys')
    await alone.click()
    await page.keyboard.press('Escape')
    await page.keyboard.press('n')
    await poll(hole).toBe('4')
    await page.keyboard.press('Control+z')
    await poll(hole).toBe('3')
  })
})

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

  it('ticks the club and the carries', async () => {
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
  })

  it('is taken up where it was left when the page is loaded again', async () => {
    await page.reload()
    await page.locator('.lesson').waitFor()
    expect(await ticked()).toBe(6)
    expect(await steps().nth(5).getAttribute('aria-current')).toBe('step')
  })

  it('ticks the page, and ends', async () => {
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
      // At the end of the page the strip stands in its own place: further up it covers what will be scrolled to.
      await page.evaluate('scrollTo(0, document.body.scrollHeight)')
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

describe('the course and the players', () => {
  const looks = async (): Promise<void> => {
    for (const [width, height] of [
      [390, 844],
      [1280, 900],
    ] as const) {
      await page.setViewportSize({ width, height })
      expect(await violations(page)).toEqual([])
      expect(await smallTargets(page)).toEqual([])
      expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true)
    }
  }

  it('shows every hole of a course with its card and its day, and leads to the desk of one', async () => {
    await page.getByRole('link', { name: 'Holes' }).click()
    const seventh = page.locator('.course-hole').filter({ hasText: 'Heron' })
    await seventh.locator('svg').waitFor()
    expect(await page.locator('.course-hole svg').count()).toBeGreaterThanOrEqual(9)
    expect(await seventh.textContent()).toMatch(/par 4, stroke index 9.*drift 365.*yd.*calm/)
    await page.getByLabel('Day', { exact: true }).selectOption('westerly')
    await poll(() => seventh.textContent()).toMatch(/wind .*m\/s/)
    await looks()
    await seventh.getByRole('link').click()
    await poll(() => page.getByLabel('Hole', { exact: true }).inputValue()).toBe('7')
    expect(await page.evaluate('location.hash')).toBe('#/desk')
  })

  it('deletes a player for good, takes the deletion back, and gives a player as a file', async () => {
    await page.getByRole('link', { name: 'Players' }).click()
    const wren = page.getByRole('region', { name: 'Wren', exact: true })
    await wren.locator('.kept-carries li').first().waitFor()
    expect(await wren.locator('p').first().textContent()).toMatch(/-handed, off /)
    await looks()
    const kept = 'fetch("/api/players/wren").then((answer) => answer.ok ? answer.text() : "")'
    const before = await page.evaluate(kept)
    await page.evaluate('localStorage.setItem("marram.shots.wren", "[]")')
    const round = 'fetch("/api/rounds/round-w").then((answer) => answer.ok)'
    const body = { schema: 'round/1', player_id: 'wren', holes: [{ ref: '1', putts: 2 }] }
    const put = { method: 'PUT', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) }
    await page.evaluate(`fetch("/api/rounds/round-w", ${JSON.stringify(put)}).then(() => true)`)
    await wren.getByRole('button', { name: 'Delete Wren' }).click()
    await page.getByText('Wren was deleted').waitFor()
    await wren.waitFor({ state: 'detached' })
    expect(await page.evaluate('localStorage.getItem("marram.shots.wren")')).toBeNull()
    const listed = 'fetch("/api/players").then((answer) => answer.text())'
    expect(await page.evaluate(listed)).not.toContain('"wren"')
    expect(await page.evaluate(`fetch("/api/rounds").then((answer) => answer.text())`)).not.toContain(
      'round-w',
    )
    await press('Take the deletion back')
    await wren.waitFor()
    expect(await page.evaluate(kept)).toBe(before)
    expect(await page.evaluate(round)).toBe(true)

    // A store that gives the player up and not the round: what is gone can still be taken back.
    const refuse = (route: Route): Promise<void> =>
      route.request().method() === 'DELETE' ? route.fulfill({ status: 500, body: 'no' }) : route.fallback()
    await page.context().route('**/api/rounds/**', refuse)
    await wren.getByRole('button', { name: 'Delete Wren' }).click()
    await page.getByText('Wren was deleted: from the store').waitFor()
    await page.getByRole('alert').waitFor()
    await page.context().unroute('**/api/rounds/**', refuse)
    // The browser's own word of that answer is no error of the desk.
    expect(desk.troubles.pop()).toContain('500')
    await press('Take the deletion back')
    await wren.waitFor()
    expect(await page.evaluate(kept)).toBe(before)
    expect(await page.evaluate(round)).toBe(true)
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      wren.getByRole('button', { name: 'Save as a file' }).click(),
    ])
    expect(file.suggestedFilename()).toBe('wren.player.json')
    await wren.getByRole('link', { name: 'Wren on the desk' }).click()
    await poll(() => page.getByLabel('Player', { exact: true }).inputValue()).toBe('wren')
  })
})

describe('the field that finds', () => {
  const field = (): Locator => page.getByRole('combobox', { name: 'A hole by its number' })

  it('leads by keys alone to a hole, does a command and opens a player', async () => {
    await page.keyboard.press('/')
    await field().waitFor()
    expect(await page.evaluate('document.activeElement.id')).toBe('find-field')
    await page.keyboard.type('larder')
    await page.getByRole('dialog').getByRole('option', { name: '7 Heron' }).waitFor()
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    await page.keyboard.press('Enter')
    await field().waitFor({ state: 'detached' })
    await poll(() => page.getByLabel('Hole', { exact: true }).inputValue()).toBe('7')

    await press('Find')
    await page.keyboard.type('next hole')
    await page.keyboard.press('Enter')
    await poll(() => page.getByLabel('Hole', { exact: true }).inputValue()).toBe('8')

    await page.keyboard.press('/')
    await page.keyboard.type('ysolde')
    const second = page.getByRole('dialog').getByRole('option').nth(1)
    await second.waitFor()
    await page.keyboard.press('ArrowDown')
    expect(await second.getAttribute('aria-selected')).toBe('true')
    await page.keyboard.press('ArrowUp')
    await page.keyboard.press('Enter')
    await poll(() => page.getByLabel('Player', { exact: true }).inputValue()).toBe('ysolde-marrin')

    await page.keyboard.press('/')
    await page.keyboard.type('season ysolde')
    await page.getByRole('dialog').getByRole('option', { name: 'Season of Ysolde Marrin on' }).waitFor()
    await page.keyboard.press('Enter')
    await page.waitForURL((url) => url.hash === '#/course/sandrel-ness/season/ysolde-marrin')
    await page.goBack()
  })

  it('says that nothing is called so, and goes with Escape', async () => {
    await page.keyboard.press('/')
    await field().fill('zzz')
    await page.getByText('Nothing is called so.').waitFor()
    await page.setViewportSize({ width: 390, height: 844 })
    expect(await violations(page)).toEqual([])
    await page.keyboard.press('Escape')
    await field().waitFor({ state: 'detached' })
    await page.setViewportSize({ width: 1280, height: 900 })
  })
})

describe('all of it', () => {
  it('had no error of its own on the way', () => expect(desk.troubles).toEqual([]))
})
