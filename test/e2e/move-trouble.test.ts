import type { Locator } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { planned, smallTargets, violations } from '../../tools/served-desk.ts'
import { deskAtShort } from './desk-at.ts'

/** Moving the trouble of a hole: by mouse, by finger, by key and by button, and taking it back. */
const desk = await deskAtShort()
const { page } = desk

const hazard = (): Locator => page.getByLabel('Hazard', { exact: true })
const words = async (): Promise<string> =>
  ((await page.locator('.moved-words').textContent()) ?? '').replace('As surveyed', '').trim()
const restore = (): Locator => page.getByRole('button', { name: 'As surveyed' })
const clubs = (): Promise<string[]> => page.locator('.clubs tbody tr').allTextContents()

/** Takes up the hazard that lies in front of the green on this hole. */
async function takeUp(): Promise<void> {
  const names = await hazard().locator('option').allTextContents()
  const across = names.findIndex((name) => / across,/.test(name) || /^bunker/.test(name))
  expect(across).toBeGreaterThan(0)
  await hazard().selectOption({ index: across })
}

async function middleOf(locator: Locator): Promise<[number, number]> {
  const box = (await locator.boundingBox())!
  return [box.x + box.width / 2, box.y + box.height / 2]
}

describe('moving the trouble', () => {
  it('takes a hazard up by name, with handles on the chart for it and each edge', async () => {
    expect(await page.locator('.handle-hazard').count()).toBe(0)
    await takeUp()
    expect(await page.locator('.handle-hazard').count()).toBe(5)
    expect(await words()).toBe('as surveyed')
    expect(await restore().isDisabled()).toBe(true)
  })

  it('drags the whole of it: the words say how far, the plan is made anew, one undo takes it back', async () => {
    const before = await clubs()
    const [x, y] = await middleOf(page.locator('.grip-whole'))
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x, y - 40, { steps: 8 })
    expect(await words()).toMatch(/^moved: \d+ yd on$/)
    await page.mouse.up()
    await planned(page)
    expect(await page.locator('.chart svg .moved').count()).toBe(1)
    expect(await clubs()).not.toEqual(before)
    await page.keyboard.press('Control+z')
    expect(await words()).toBe('as surveyed')
    await planned(page)
  })

  it('stretches it by one edge', async () => {
    const [x, y] = await middleOf(page.locator('.grip-far'))
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x, y - 20, { steps: 4 })
    await page.mouse.up()
    expect(await words()).toMatch(/^moved: far edge \d+ yd on$/)
    await restore().click()
    expect(await words()).toBe('as surveyed')
  })

  it('does the same by keys on the chart and by the scales', async () => {
    await page.locator('.grip-whole').focus()
    for (const key of ['ArrowUp', 'ArrowUp', 'ArrowUp', 'ArrowLeft']) await page.keyboard.press(key)
    expect(await words()).toBe('moved: 3 yd on, 1 yd left')
    await page.getByRole('button', { name: 'On: one step more' }).click()
    expect(await words()).toBe('moved: 4 yd on, 1 yd left')
    await page.getByLabel('Part', { exact: true }).selectOption('near')
    await page.getByRole('button', { name: 'On: one step less' }).click()
    expect(await words()).toBe('moved: near edge 3 yd on, far edge 4 yd on, 1 yd left')
    await restore().click()
    await page.getByLabel('Part', { exact: true }).selectOption('whole')
  })

  it('drags a hazard that the mouse finds under it, and a tap takes one up without moving it', async () => {
    // The handle keeps clear of the aim, which may still be on its way back from where the trouble was moved.
    await page.locator('.state:empty').waitFor({ state: 'attached' })
    const at = await middleOf(page.locator('.grip-whole'))
    await hazard().selectOption({ index: 0 })
    const under = `document.elementFromPoint(${at[0]}, ${at[1]}).className`
    expect(await page.evaluate(under)).toContain('chart-surface')
    expect(await page.locator('.handle-hazard').count()).toBe(0)
    await page.mouse.click(...at)
    expect(await page.locator('.handle-hazard').count()).toBe(5)
    expect(await words()).toBe('as surveyed')
    await hazard().selectOption({ index: 0 })
    await page.mouse.move(...at)
    await page.mouse.down()
    await page.mouse.move(at[0] + 30, at[1], { steps: 6 })
    await page.mouse.up()
    expect(await words()).toMatch(/^moved: \d+ yd right$/)
    await restore().click()
  })

  it('drags along the ruler of flips: the plan follows, the ticks stay, one undo takes it back', async () => {
    const along = page.locator('.flip-ruler .step-slider', {
      has: page.getByRole('slider', { name: 'Wind along' }),
    })
    const ticks = (): Promise<string[]> => along.locator('svg text').allTextContents()
    const before = await ticks()
    // Behind, into, and at least two clubs where one takes over from the other.
    expect(before.length).toBeGreaterThanOrEqual(4)
    const box = (await along.getByRole('slider').boundingBox())!
    const [middle, y] = [box.x + box.width / 2, box.y + 24]
    await page.mouse.move(middle, y)
    await page.mouse.down()
    await page.mouse.move(middle + box.width / 5, y, { steps: 4 })
    await page.mouse.up()
    expect(await along.locator('output').textContent()).toBe('6 m/s into')
    await along.getByRole('button', { name: 'one step more' }).click()
    expect(await along.locator('output').textContent()).toBe('7 m/s into')
    await planned(page)
    expect(await ticks()).toEqual(before)
    await along.getByRole('slider').focus()
    await page.keyboard.press('ArrowLeft')
    expect(await along.locator('output').textContent()).toBe('6 m/s into')
    // On a slow machine a run of steps is more than one.
    while ((await along.locator('output').textContent()) !== 'calm') await page.keyboard.press('Control+z')
    await planned(page)
  })

  it('keeps what was moved when the page is loaded again, and forgets it with the hole', async () => {
    await page.locator('.grip-whole').focus()
    await page.keyboard.press('ArrowUp')
    await page.reload()
    await planned(page)
    await takeUp()
    expect(await words()).toBe('moved: 1 yd on')
    await page.getByLabel('Hole', { exact: true }).selectOption('2')
    await page.getByLabel('Hole', { exact: true }).selectOption('1')
    await planned(page)
    await takeUp()
    expect(await words()).toBe('as surveyed')
  })

  it('moves greens, markers and spread by their scales', async () => {
    const output = (label: string): Promise<string | null> =>
      page
        .locator('.step-slider', { has: page.getByLabel(label, { exact: true }) })
        .locator('output')
        .textContent()
    await page.getByRole('button', { name: 'Greens: one step more' }).click()
    expect(await output('Greens')).toBe('9.5 ft on the ramp')
    await page.getByRole('button', { name: 'Tees: one step less' }).click()
    expect(await output('Tees')).toBe('1 yd back')
    await page.getByRole('button', { name: 'Spread: one step more' }).click()
    expect(await output('Spread')).toBe('1.1 times as wide')
    await planned(page)
  })

  it('has nothing that a screen reader or a large finger cannot use', async () => {
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    expect(desk.troubles).toEqual([])
  })
})
