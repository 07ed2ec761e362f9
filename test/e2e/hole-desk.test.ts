import type { Locator } from 'playwright-core'
import { describe, expect, it } from 'vitest'
import { WEIGH_ACTIONS_WASM } from '#numbers/kernels/weigh-actions-wasm.ts'
import { firstLoad } from '../../tools/first-load.ts'
import { PATIENCE, planned, smallTargets, violations } from '../../tools/served-desk.ts'
import { deskAt } from './desk-at.ts'

/**
 * The hole desk in a real browser, served by the real server with the example course, planned by the real planner.
 * Hole 3 is used: a par 3, so that a plan takes a second or two.
 */
const desk = await deskAt('3')
const { browser, page } = desk

async function text(locator: Locator): Promise<string> {
  return (await locator.textContent()) ?? ''
}

async function clubs(): Promise<string[]> {
  return page.locator('.clubs tbody tr').allTextContents()
}

async function aim(): Promise<string> {
  return (await page.getByRole('slider', { name: 'Aim' }).getAttribute('aria-valuetext')) ?? ''
}

describe('the hole desk', () => {
  it('opens on a plan: a sentence, clubs with their cost, the hole as a chart', async () => {
    expect(await text(page.locator('.plan-sentence'))).toMatch(/[a-z].*\.$/s)
    expect((await clubs()).length).toBeGreaterThanOrEqual(5)
    expect(await page.locator('.clubs .bar svg text').first().textContent()).toBe('0.00')
    const chart = page.locator('.chart svg').first()
    expect(await chart.locator('title').textContent()).toBe('Hole 3, Cold Cove')
    expect(await chart.locator('desc').textContent()).toMatch(/^Par 3, \d+ yards, drawn to scale/)
  })

  it('loads less than 250 kB before it is there, packed as the server sends it', async () => {
    const loaded = await firstLoad(page)
    expect(loaded.files.join(' ')).toMatch(/index-[^ ]+\.js.*\.woff2/)
    // Nothing that came unpacked or from another time: React alone is more than this.
    expect(loaded.page).toBeGreaterThan(60)
    expect(loaded.page).toBeLessThan(250)
  })

  it('lets its workers compile the solver’s kernel, and no text', async () => {
    const [worker] = page.workers()
    const kernel = `Uint8Array.from(atob('${WEIGH_ACTIONS_WASM}'), (letter) => letter.charCodeAt(0))`
    const tried = (what: string) =>
      worker?.evaluate(`new Promise((tell) => {
        setTimeout(() => {
          try { tell(${what}) } catch (error) { tell(error.name) }
        })
      })`)
    expect(await tried(`String(new WebAssembly.Module(${kernel}))`)).toBe('[object WebAssembly.Module]')
    expect(await tried(`new Function('return 1')()`)).toBe('EvalError')
  })

  it('can be aimed before there is a plan: where the shots finish answers', async () => {
    const early = await browser.context.newPage()
    await early.addInitScript(`globalThis.Worker = class extends Worker {
      postMessage(asked) { if (asked.task.kind !== 'plan') super.postMessage(asked) }
    }`)
    await early.goto(desk.address)
    await early.locator('.outcomes li').first().waitFor()
    const aiming = early.getByRole('slider', { name: 'Aim' })
    const shares = () => early.locator('.outcomes').first().textContent()
    const [words, before] = [await aiming.getAttribute('aria-valuetext'), await shares()]
    expect(words).toMatch(/^driver, .* at \d+ yd$/)
    await aiming.press('PageUp')
    await aiming.press('PageUp')
    await aiming.press('PageUp')
    await aiming.press('PageUp')
    await expect.poll(shares, { timeout: PATIENCE }).not.toBe(before)
    expect(await aiming.getAttribute('aria-valuetext')).not.toBe(words)
    expect(await text(early.locator('.sentence .state'))).toBe('Reckoning.')
    expect(await early.locator('.clubs').count()).toBe(0)
    await early.close()
  })

  it('moves the aim and its price while it is dragged, and takes it back with undo', async () => {
    const before = await aim()
    const price = await text(page.locator('.aim-words strong'))
    const box = (await page.getByRole('slider', { name: 'Aim' }).boundingBox())!
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x + 30, y, { steps: 5 })
    const during = await aim()
    await page.mouse.move(x + 60, y, { steps: 5 })
    await page.mouse.up()
    expect(during).not.toBe(before)
    expect(await aim()).not.toBe(during)
    expect(await text(page.locator('.aim-words strong'))).not.toBe(price)
    await page.keyboard.press('Control+z')
    expect(await aim()).toBe(before)
  })

  it('is kept apart from other sites, so that it may stop the plans of its workers', async () => {
    expect(await page.evaluate('crossOriginIsolated')).toBe(true)
  })

  it('draws the pattern of the club and turns it with the aim', async () => {
    const marks = page.locator('.chart svg .pattern')
    await marks.waitFor({ state: 'attached' })
    const before = await marks.innerHTML()
    await page.getByRole('button', { name: 'Aim 5 yd right' }).click()
    await expect.poll(() => marks.innerHTML()).not.toBe(before)
    await page.getByRole('button', { name: 'best line' }).click()
    expect(await page.getByRole('button', { name: 'best line' }).isDisabled()).toBe(true)
  })

  it('does everything of the aim and the wind by keys', async () => {
    const slider = page.getByRole('slider', { name: 'Aim' })
    const before = await aim()
    await slider.focus()
    await page.keyboard.press('ArrowRight')
    const stepped = await aim()
    expect(stepped).not.toBe(before)
    await page.keyboard.press('PageDown')
    expect(await aim()).not.toBe(stepped)
    await page.keyboard.press('Home')
    expect(await aim()).toBe(before)
    await page.getByLabel('Ground', { exact: true }).focus()
    await page.keyboard.press('ArrowRight')
    expect(await page.getByLabel('Ground', { exact: true }).inputValue()).toBe('1.1')
    await page.keyboard.press('Control+z')
    expect(await page.getByLabel('Ground', { exact: true }).inputValue()).toBe('1')
    await planned(page)
  })

  it('shows the pattern and the price of another club that is chosen', async () => {
    const row = page.locator('.clubs tbody tr').nth(1)
    const club = await text(row.getByRole('button'))
    await row.getByRole('button').click()
    expect(await row.getByRole('button').getAttribute('aria-pressed')).toBe('true')
    expect(await aim()).toContain(club)
    expect(await text(page.locator('.own-choice'))).toContain(club)
    expect(await page.getByRole('heading', { name: `Where the ${club} finishes` }).count()).toBe(1)
    await page.keyboard.press('Control+z')
  })

  it('plans anew when wind is given: the order of the clubs or their costs change', async () => {
    const before = await clubs()
    // Rows that change places glide there.
    await page.evaluate(`{
      globalThis.glides = 0
      const animate = Element.prototype.animate
      Element.prototype.animate = function (...how) {
        globalThis.glides += this.matches('.clubs tr') ? 1 : 0
        return animate.apply(this, how)
      }
    }`)
    const more = page.getByRole('button', { name: 'Wind: one step more' })
    for (let step = 0; step < 7; step += 1) await more.click()
    expect(await text(page.locator('.step-slider output').first())).toBe('7 m/s')
    await planned(page)
    expect(await clubs()).not.toEqual(before)
    expect(await page.evaluate('glides')).toBeGreaterThan(0)
    await page.emulateMedia({ reducedMotion: 'reduce' })
    await page.evaluate('glides = 0')
    // On a slow machine a run of clicks is more than one step.
    while ((await text(page.locator('.step-slider output').first())) !== 'calm')
      await page.keyboard.press('Control+z')
    await planned(page)
    expect(await clubs()).toEqual(before)
    expect(await page.evaluate('glides')).toBe(0)
    await page.emulateMedia({ reducedMotion: null })
  })

  it('moves the pin by its parts and by paces, never off the green', async () => {
    const pin = (): Promise<string | null> => page.locator('.handle-pin').getAttribute('style')
    const middle = await pin()
    await page.getByRole('button', { name: 'back', exact: true }).click()
    const back = await pin()
    expect(back).not.toBe(middle)
    await page.locator('.handle-pin').focus()
    await page.keyboard.press('ArrowDown')
    expect(await pin()).not.toBe(back)
    for (let pace = 0; pace < 40; pace += 1) await page.keyboard.press('ArrowUp')
    expect(await page.getByRole('alert').count()).toBe(0)
    await page.getByRole('button', { name: 'middle', exact: true }).click()
    // The handle keeps clear of the aim, which is back only with the plan.
    await planned(page)
    await expect.poll(pin).toBe(middle)
  })

  it('reads in metres and at night when asked', async () => {
    await page.getByText('Reading', { exact: true }).click()
    await page.getByLabel('Lengths', { exact: true }).selectOption('metres')
    expect(await aim()).toMatch(/ m (left|right|on)|on the line/)
    await page.getByLabel('Lengths', { exact: true }).selectOption('yards')
    await page.getByLabel('Light', { exact: true }).selectOption('night')
    expect(await page.evaluate('getComputedStyle(document.documentElement).backgroundColor')).toBe(
      'rgb(20, 18, 15)',
    )
    expect(await violations(page)).toEqual([])
    await page.getByLabel('Light', { exact: true }).selectOption('day')
    await page.keyboard.press('Escape')
    await planned(page)
  })

  it.each([
    [1280, 900],
    [390, 844],
  ])('has no accessibility violation at %i × %i, and nothing to hit under 48 px', async (width, height) => {
    await page.setViewportSize({ width, height })
    await page.waitForTimeout(300)
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true)
    await page.setViewportSize({ width: 1280, height: 900 })
  })

  it('prints one page: the plan, and nothing of the desk', async () => {
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.printed').isVisible()).toBe(true)
    expect(await page.locator('.desk-head').isVisible()).toBe(false)
    expect(await text(page.locator('.printed-sentence'))).toMatch(/[a-z]\.$/)
    expect(await text(page.locator('.printed-cautions'))).toMatch(/lightning.*Committee/is)
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1')
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length).toBe(1)
    await page.emulateMedia({ media: null })
    const drawn = `document.querySelector('.printed-chart').innerHTML`
    const before = await page.evaluate(drawn)
    expect(before).toContain('<svg')
    await page.getByRole('slider', { name: 'Aim' }).press('PageUp')
    expect(await page.evaluate(`dispatchEvent(new Event('beforeprint')), ${drawn}`)).not.toBe(before)
  })

  it('says in words what the server refuses, with its code', async () => {
    const other = await browser.context.newPage()
    await other.route('**/api/players', (route) =>
      route.fulfill({
        status: 500,
        json: { error: { code: 'MAR-STORE-001', message: 'The store is away.', where: 'store' } },
      }),
    )
    await other.goto(desk.address)
    const note = other.getByRole('alert')
    await note.waitFor()
    expect(await text(note)).toMatch(/The store is away\.\s*MAR-STORE-001 · store/)
    await other.close()
  })

  it('had no error of its own on the way', () => {
    expect(desk.troubles).toEqual([])
  })
})
