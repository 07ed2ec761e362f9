import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { beyondTheSide, PATIENCE, serveDesk, violations } from '../../tools/served-desk.ts'
import { twoShort } from '../fixtures/two-short.ts'

/** A day as it is typed in the morning: weather and pins in paces, each green drawn as its pin is typed. */
const desk = await serveDesk()
afterAll(() => desk.close())
const { page } = desk

const poll = (of: () => Promise<unknown>) => expect.poll(of, { timeout: PATIENCE })
const line = (ref: string) => page.getByLabel(`Hole ${ref}`, { exact: true })
const keep = () => page.getByRole('button', { name: 'Keep the day' })
const greens = (): Promise<string[]> => page.locator('.pin-picture svg desc').allTextContents()
const inStore = async (id: string): Promise<Record<string, unknown>> =>
  JSON.parse(String(await page.evaluate(`fetch('/api/days/${id}').then((answer) => answer.text())`)))

beforeAll(async () => {
  await page.goto(`${desk.address}#/players`)
  await page.evaluate(
    `fetch('/api/courses/two-short', { method: 'PUT', headers: { 'Content-Type': 'application/json' }, body: ${JSON.stringify(JSON.stringify(twoShort()))} })`,
  )
  await page.evaluate(`location.hash = '#/course/two-short/day'`)
  await line('1').waitFor()
}, PATIENCE)

describe('a day on a course', () => {
  it('draws each green as its pin is typed, and says of a line what it cannot be', async () => {
    await poll(async () => (await greens()).length).toBe(2)
    await line('1').fill('8 on, 5 left')
    await poll(greens).toContain('1: 8 on, 5 left')
    await page.keyboard.press('Enter')
    expect(await page.evaluate('document.activeElement.ariaLabel')).toBe('Hole 2')
    await line('2').fill('8 on')
    await line('1').focus()
    await poll(() => page.locator('.line-faults').allTextContents()).toEqual([
      '"8 on" is not read as a hole location. Write the paces on from the front, then in from a side, like 14 on, 6 left, or 14 middle.',
    ])
    expect(await keep().isDisabled()).toBe(true)
    await page.getByText('The line of hole 2 must be read first.').waitFor()
    await line('2').fill('70 middle')
    await poll(() => page.locator('.line-faults').textContent()).toMatch(/70 on, middle, is not on its green/)
    expect(await violations(page)).toEqual([])
  })

  it('is as it was typed after a reload, and kept as a day that every page can choose', async () => {
    await page.getByLabel('Date').fill('2026-07-23')
    await page.getByLabel('Wind', { exact: true }).fill('4')
    await line('2').fill('6 m')
    await page.reload()
    await poll(() => line('1').inputValue()).toBe('8 on, 5 left')
    await poll(greens).toEqual(['1: 8 on, 5 left', '2: 6 on, middle'])
    await keep().click()
    await page.getByText('The day 2026-07-23 is kept with 2 pins.').waitFor()
    expect(await inStore('day-2026-07-23')).toMatchObject({
      schema: 'day/1',
      date: '2026-07-23',
      wind: { speed_mps: 4 },
      pins: { 1: { x_paces: 5, y_paces: 8, from: 'left' }, 2: { y_paces: 6, from: 'middle' } },
    })
    expect(await line('2').inputValue()).toBe('6 on, middle')
  })

  it('is changed as the same day, and another is not opened over what is not kept', async () => {
    await line('2').fill('')
    await page.getByLabel('Day', { exact: true }).selectOption('')
    await page.getByText('What was typed is not kept yet.').waitFor()
    await page.getByRole('button', { name: 'Stay' }).click()
    await keep().click()
    await page.getByText('The day 2026-07-23 is kept with 1 pin.').waitFor()
    expect((await inStore('day-2026-07-23')).pins).toEqual({ 1: { x_paces: 5, y_paces: 8, from: 'left' } })
    await page.getByLabel('Day', { exact: true }).selectOption('')
    await poll(() => line('1').inputValue()).toBe('')
  })

  it('stands on a narrow screen', async () => {
    await page.setViewportSize({ width: 320, height: 640 })
    await poll(() => beyondTheSide(page)).toEqual([])
    expect(desk.troubles).toEqual([])
  })
})
