import { describe, expect, it } from 'vitest'
import { beyondTheSide, PATIENCE, smallTargets, violations } from '../../tools/served-desk.ts'
import { deskAt } from './desk-at.ts'

/**
 * Light, size of print and units as the reader likes, and the browser's own wishes: zoom, narrow screens, forced colours,
 * stillness. `violations` looks in every light; other tests ask it in the states they come to.
 */
const desk = await deskAt('3')
const { page } = desk

const choice = (label: string) => page.getByLabel(label, { exact: true })

/** Chooses in the menu and closes it. */
async function read(choices: Readonly<Record<string, string>>): Promise<void> {
  await page.getByText('Reading', { exact: true }).click()
  for (const [label, value] of Object.entries(choices)) await choice(label).selectOption(value)
  await page.keyboard.press('Escape')
}

/** Contrast of the main numbers and words with the page, by the formula of WCAG 2.2 (relative luminance). */
const CONTRASTS = `(() => {
  const luminance = (colour) => {
    const [red, green, blue] = colour.match(/[\\d.]+/g).slice(0, 3).map((each) => {
      const share = Number(each) / 255
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
    })
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue
  }
  const paper = luminance(getComputedStyle(document.documentElement).backgroundColor)
  const against = (colour) => {
    const [high, low] = [luminance(colour), paper].toSorted((a, b) => b - a)
    return (high + 0.05) / (low + 0.05)
  }
  const words = ['.plan-sentence', '.verdict', '.value', '.aim-words strong', '.clubs .number', '.clubs .number small', '.outcomes b', '.step-slider output']
  const figures = ['.clubs .bar svg text', '.chart svg text']
  return [
    ...words.map((each) => [each, against(getComputedStyle(document.querySelector(each)).color)]),
    ...figures.flatMap((each) => [...document.querySelectorAll(each)].map((text) => [each + ' ' + text.textContent, against(getComputedStyle(text).fill)])),
  ]
})()`

async function contrasts(): Promise<[string, number][]> {
  return (await page.evaluate(CONTRASTS)) as [string, number][]
}

const attributeOf = (selector: string, attribute: string): Promise<number> =>
  page.evaluate(`Number(document.querySelector('${selector}').getAttribute('${attribute}'))`)

/** Stands the page on a screen of this size: nothing of it lies beyond the side, and everything is large enough to hit. */
async function holdsTo(width: number, height: number): Promise<void> {
  await page.setViewportSize({ width, height })
  // Drawings follow the size a frame later.
  await expect.poll(() => beyondTheSide(page), { timeout: PATIENCE }).toEqual([])
  expect(await smallTargets(page)).toEqual([])
}

describe('reading', () => {
  it('has its choices in one place, opened and closed by keys, and nothing of them is hard to reach', async () => {
    await page.getByText('Reading', { exact: true }).focus()
    await page.keyboard.press('Enter')
    await choice('Light').waitFor()
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    await choice('Light').focus()
    await page.keyboard.press('Escape')
    expect(await choice('Light').isVisible()).toBe(false)
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Reading')
    await page.keyboard.press('Enter')
    await page.locator('.plan-sentence').click()
    expect(await choice('Light').isVisible()).toBe(false)
  })

  it.each([
    ['day', 7],
    ['night', 7],
    ['sun', 12],
  ])('in %s every main number stands out from the paper by %i to 1', async (theme, least) => {
    await read({ Light: theme })
    const measured = await contrasts()
    expect(measured.length).toBeGreaterThan(20)
    expect(measured.filter(([, contrast]) => contrast < least)).toEqual([])
  })

  it('has heavier lines, larger figures and nothing grey in full sun', async () => {
    const look = async (): Promise<{ line: number; sentence: number; faint: unknown }> => ({
      line: await attributeOf('.chart svg path[stroke-width]', 'stroke-width'),
      sentence: Number.parseFloat(
        String(await page.evaluate(`getComputedStyle(document.querySelector('.plan-sentence')).fontSize`)),
      ),
      faint: await page.evaluate(`getComputedStyle(document.documentElement).getPropertyValue('--faint')`),
    })
    const sun = await look()
    await read({ Light: 'day' })
    const day = await look()
    expect(sun.line / day.line).toBeCloseTo(1.6, 1)
    expect(sun.sentence).toBeGreaterThan(day.sentence)
    expect(sun.faint).toBe('#000')
  })

  it("is drawn in the reader's own colours", async () => {
    await page.emulateMedia({ forcedColors: 'active' })
    // The colours are the reader's: what is asked is that the chart follows them and stands out (WCAG 2.2, 1.4.11).
    expect((await contrasts()).filter(([, contrast]) => contrast < 3)).toEqual([])
    const [ink, text] = (await page.evaluate(`[
      getComputedStyle(document.querySelector('.chart svg text')).fill,
      getComputedStyle(document.body).color,
    ]`)) as [string, string]
    expect(ink).toBe(text)
    expect(await violations(page)).toEqual([])
    await page.emulateMedia({ forcedColors: null })
  })
})

describe('with its parts open', () => {
  it('has no accessibility violation', async () => {
    await choice('Played for').selectOption('points')
    await choice('Hazard').selectOption({ index: 2 })
    await page.getByRole('button', { name: 'Type own carries' }).click()
    await page.getByRole('button', { name: /^All \d+ clubs/ }).click()
    await page.locator('.carry-table input').first().waitFor()
    expect(await violations(page)).toEqual([])
  })

  // A window of 1280 × 900 enlarged twice has 640 × 450 CSS pixels (WCAG 2.2, 1.4.4 and 1.4.10).
  it.each([
    [1280, 900],
    [640, 450],
    [320, 640],
  ])('holds to a screen of %i × %i, in large print too, and in full sun', async (width, height) => {
    await read({ Print: 'usual', Light: 'day' })
    await holdsTo(width, height)
    await read({ Print: 'large', Light: 'sun' })
    await holdsTo(width, height)
  })

  it('engraves the figures of the chart larger in large print', async () => {
    expect(await violations(page)).toEqual([])
    const figure = () => attributeOf('.chart svg text', 'font-size')
    await page.setViewportSize({ width: 1280, height: 900 })
    const large = await figure()
    await read({ Print: 'usual' })
    expect(large / (await figure())).toBeCloseTo(1.25, 1)
    await read({ Light: 'day' })
  })
})

describe('every page', () => {
  it('is on paper without a violation too, and says a trouble without one', async () => {
    await page.emulateMedia({ media: 'print' })
    await page.locator('.printed').waitFor()
    expect(await violations(page)).toEqual([])
    await page.emulateMedia({ media: null })
    const other = await desk.browser.context.newPage()
    await other.route('**/api/courses', (route) =>
      route.fulfill({
        status: 500,
        json: { error: { code: 'MAR-STORE-001', message: 'The store is away.', where: 'store' } },
      }),
    )
    await other.goto(desk.address)
    await other.getByRole('alert').waitFor()
    expect(await violations(other)).toEqual([])
    await other.close()
  })

  it.each(['#/new-player', '#/survey', '#/shots/aldous-brack', '#/course/sandrel-ness/day', '#/rounds'])(
    '%s holds to an enlarged and to a narrow screen, in large print too',
    async (place) => {
      await page.evaluate(`location.hash = '${place}'`)
      await page.locator(`main:not([aria-busy]):not(:empty)`).waitFor()
      await page.getByRole('link', { name: /^Back to the/ }).waitFor()
      expect(await violations(page)).toEqual([])
      for (const print of ['usual', 'large']) {
        await read({ Print: print })
        await holdsTo(640, 450)
        await holdsTo(320, 640)
      }
      await read({ Print: 'usual' })
      await page.setViewportSize({ width: 1280, height: 900 })
    },
  )

  it('is read as it was chosen when it is loaded again', async () => {
    await read({ Print: 'large', Light: 'night' })
    await page.reload()
    await page.getByText('Reading', { exact: true }).waitFor()
    expect(await page.evaluate('({ ...document.documentElement.dataset })')).toEqual({
      theme: 'night',
      print: 'large',
    })
  })

  it('moves nothing by itself for a reader who likes it still', async () => {
    const moving = (await page.evaluate(`(() => {
      const rules = (of) => [...of].flatMap((rule) => rule.cssRules === undefined || rule.cssRules.length === 0 ? [rule]
        : rules(rule.cssRules).map((inner) => ({ style: inner.style, media: [rule.media?.mediaText, inner.media].join(' ') })))
      return [...document.styleSheets].flatMap((sheet) => rules(sheet.cssRules))
        // What appears in one step after a wait does not move.
        .filter(({ style }) => style?.transition || (style?.animation && style.animationTimingFunction !== 'step-end'))
        .map(({ media }) => String(media))
    })()`)) as string[]
    expect(moving.length).toBeGreaterThan(0)
    expect(moving.filter((media) => !media.includes('prefers-reduced-motion: no-preference'))).toEqual([])
    expect(desk.troubles).toEqual([])
  })
})
