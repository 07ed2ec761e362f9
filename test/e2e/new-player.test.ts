import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { PATIENCE, type ServedDesk, serveDesk, smallTargets, violations } from '../../tools/served-desk.ts'

/** The ten questions in a real browser, from the first key to the desk with the new player. */
let desk: ServedDesk
let page: Page

/** Keys pressed, each letter one. */
let keys = 0

beforeAll(async () => {
  desk = await serveDesk()
  page = desk.page
  await page.goto(`${desk.address}#/new-player`)
  await page.getByLabel('How old is the player?').waitFor()
}, PATIENCE * 2)
afterAll(() => desk?.close())

async function press(key: string, times = 1): Promise<void> {
  for (let time = 0; time < times; time += 1) await page.keyboard.press(key)
  keys += times
}

async function type(text: string): Promise<void> {
  await page.keyboard.type(text)
  keys += text.length
}

/** Goes on by tab until the field of this name, or the chosen row of this choice, has the focus. */
async function tabTo(name: string): Promise<void> {
  for (let tabs = 0; tabs < 12; tabs += 1) {
    await press('Tab')
    const focused = await page.evaluate(
      `[document.activeElement?.closest('fieldset')?.querySelector('legend')?.textContent,
        document.activeElement?.closest('.question')?.querySelector('label')?.textContent,
        document.activeElement?.textContent].join('|')`,
    )
    if (String(focused).includes(name)) return
  }
  throw new Error(`no tab leads to ${name}`)
}

describe('a new player', () => {
  it.each([
    [1280, 900],
    [390, 844],
  ])('has no accessibility violation at %i × %i, and nothing to hit under 48 px', async (width, height) => {
    await page.setViewportSize({ width, height })
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true)
  })

  it('says at its field what is wrong, and leads to the first', async () => {
    await page.setViewportSize({ width: 1280, height: 900 })
    await page.getByRole('button', { name: 'Make the profile' }).click()
    const name = page.getByLabel('What is the player called?')
    expect(await name.evaluate('document.activeElement.dataset.field')).toBe('name')
    expect(await name.getAttribute('aria-invalid')).toBe('true')
    expect(await page.getByRole('alert').textContent()).toBe('3 answers are still to be put right.')
    await page.getByLabel('How old is the player?').fill('12')
    await name.fill('Wren Loam')
    expect(await page.locator('.question-fault').first().textContent()).toContain('by first name only')
    expect(await violations(page)).toEqual([])
  })

  it('keeps what was answered when the page is loaded again', async () => {
    await page.reload()
    const name = page.getByLabel('What is the player called?')
    await name.waitFor()
    expect(await name.inputValue()).toBe('Wren Loam')
  })

  it('leads from the first key to the plan of the new player, by keys alone, in two minutes of typing', async ({
    annotate,
  }) => {
    await page.getByLabel('What is the player called?').fill('')
    await page.getByLabel('How old is the player?').fill('')
    await page.getByLabel('How old is the player?').focus()
    keys = 0
    await type('44')
    await tabTo('called')
    await type('Oda Quill')
    await tabTo('A man or a woman?')
    await press('ArrowUp')
    await tabTo('stand to the ball')
    await press('ArrowDown')
    await tabTo('handicap index')
    await type('24,5')
    await tabTo('in the bag')
    await type('driver, 5w, 5h, 7i-PW, SW, putter')
    await tabTo('known well')
    await type('driver 150, 7i 95')
    await tabTo('shot bend')
    await press('ArrowUp', 2)
    await tabTo('bad full shot')
    await press('ArrowUp', 4)
    await tabTo('mishit')
    await press('ArrowUp', 3)
    await tabTo('holed in two')
    await press('ArrowUp', 3)
    await tabTo('second putt')
    await press('ArrowUp', 5)
    await tabTo('Make the profile')
    await press('Enter')
    await page.getByRole('heading', { name: 'A first profile of Oda Quill' }).waitFor()
    expect(await page.locator('.made-words').first().textContent()).toMatch(
      /^Oda Quill, left-handed, is off 24\.5\./,
    )
    // driver, 5-wood, 5-hybrid, 7-iron to pitching wedge, sand wedge.
    expect(await page.locator('.profile-table tbody tr').count()).toBe(8)
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    await tabTo('Keep, and open the desk')
    await press('Enter')
    const player = page.getByLabel('Player', { exact: true })
    await player.waitFor()
    expect(await player.inputValue()).toBe('oda-quill')
    await page.locator('.sentence .plan-sentence:not(:empty)').waitFor()
    // 200 ms a key is 60 words a minute, 300 ms a slow typist's 40, at five keys a word (common practice).
    await annotate(`${keys} keys: ${keys * 0.2} s at 200 ms a key, ${keys * 0.3} s at 300 ms`)
    expect(keys * 0.2).toBeLessThan(120)
    expect(keys * 0.3).toBeLessThan(120)
    expect(await page.evaluate(`sessionStorage.getItem('marram.answers')`)).toBeNull()
  })

  it('plans for the new player, who is in the store as the questions made them', async () => {
    const kept = (await page.evaluate(`fetch('/api/players/oda-quill').then((answer) => answer.json())`)) as {
      said: unknown
      hand: string
      clubs: { name: string; carry_m: number; curve_share: number; guesses: string[] }[]
    }
    expect(kept.hand).toBe('left')
    expect(kept.said).toEqual({
      carries: ['driver', '7-iron'],
      shape: 'fade',
      big_miss: 'left',
      mishit_share: 0.167,
      up_and_down_share: 0.25,
      half_holed_m: 1.2,
    })
    const iron = kept.clubs.find(({ name }) => name === '7-iron')
    expect(iron?.carry_m).toBeCloseTo(95 * 0.9144, 1)
    expect(iron?.curve_share).toBeLessThan(0)
    expect(iron?.guesses).toContain('curve_share')
    const answered = page.locator('.sentence .plan-sentence:not(:empty)')
    await answered.or(page.getByRole('alert')).first().waitFor()
    expect(await page.getByRole('alert').count()).toBe(0)
    expect(await answered.textContent()).toMatch(/[a-z]\.$/)
  })

  it('keeps a second player of the same name beside the first', async () => {
    await page.getByRole('link', { name: 'New player' }).click()
    await page.getByLabel('What is the player called?').fill('Oda Quill')
    await page.getByLabel('right-handed').check()
    await page.getByLabel('What is the handicap index?').fill('3')
    await page.getByRole('button', { name: 'Make the profile' }).click()
    await page.getByRole('button', { name: 'Keep, and open the desk' }).click()
    const player = page.getByLabel('Player', { exact: true })
    await player.waitFor()
    expect(await player.inputValue()).toBe('oda-quill-2')
    expect(await player.locator('option:checked').textContent()).toBe('Oda Quill (oda-quill-2)')
  })

  it('had no error of its own on the way', () => expect(desk.troubles).toEqual([]))
})
