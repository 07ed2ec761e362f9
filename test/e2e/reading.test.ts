import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  openHole,
  PATIENCE,
  planned,
  type ServedDesk,
  serveDesk,
  smallTargets,
  violations,
} from '../../tools/served-desk.ts'

/** Light, size of print and units as the reader likes, and the browser's own wishes: zoom, narrow screens, forced colours, stillness. */
let desk: ServedDesk
let page: Page

beforeAll(async () => {
  desk = await serveDesk()
  page = desk.page
  await openHole(desk, '3')
}, PATIENCE * 2)
afterAll(() => desk?.close())

const choose = (label: string, value: string): Promise<unknown> =>
  page.getByLabel(label, { exact: true }).selectOption(value)

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
const isInWidth = (): Promise<unknown> => page.evaluate('document.documentElement.scrollWidth <= innerWidth')

describe('reading', () => {
  it('has its choices in one place, opened and closed by keys, and nothing of them is hard to reach', async () => {
    const summary = page.getByText('Reading', { exact: true })
    await summary.focus()
    await page.keyboard.press('Enter')
    await page.getByLabel('Light', { exact: true }).waitFor()
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    await page.getByLabel('Light', { exact: true }).focus()
    await page.keyboard.press('Escape')
    expect(await page.getByLabel('Light', { exact: true }).isVisible()).toBe(false)
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Reading')
  })

  it.each([
    ['day', 7],
    ['night', 7],
    ['sun', 12],
  ])('in %s every main number stands out from the paper by %i to 1', async (theme, least) => {
    await page.getByText('Reading', { exact: true }).click()
    await choose('Light', theme)
    await page.keyboard.press('Escape')
    await planned(page)
    const measured = await contrasts()
    expect(measured.length).toBeGreaterThan(20)
    expect(measured.filter(([, contrast]) => contrast < least)).toEqual([])
    expect(await violations(page)).toEqual([])
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
    await page.getByText('Reading', { exact: true }).click()
    await choose('Light', 'day')
    await page.keyboard.press('Escape')
    const day = await look()
    expect(sun.line / day.line).toBeCloseTo(1.6, 1)
    expect(sun.sentence).toBeGreaterThan(day.sentence)
    expect(sun.faint).toBe('#000')
  })

  it('keeps the choices when the page is loaded again, and grows in large print without running off a narrow screen', async () => {
    await page.getByText('Reading', { exact: true }).click()
    await choose('Light', 'sun')
    await choose('Print', 'large')
    await page.reload()
    await planned(page)
    expect(await page.evaluate('({ ...document.documentElement.dataset })')).toEqual({
      theme: 'sun',
      print: 'large',
    })
    const figure = await attributeOf('.chart svg text', 'font-size')
    for (const width of [1280, 390, 320]) {
      await page.setViewportSize({ width, height: 900 })
      expect([width, await isInWidth()]).toEqual([width, true])
    }
    await page.setViewportSize({ width: 1280, height: 900 })
    await page.getByText('Reading', { exact: true }).click()
    await choose('Light', 'day')
    await choose('Print', 'usual')
    expect(figure / (await attributeOf('.chart svg text', 'font-size'))).toBeCloseTo(1.25, 1)
    await page.keyboard.press('Escape')
  })

  it.each([
    // A window of 1280 × 900 enlarged twice has 640 × 450 CSS pixels (WCAG 2.2, 1.4.4 and 1.4.10).
    ['enlarged twice', 640, 450],
    ['320 px wide', 320, 640],
  ])('is whole and reachable %s', async (_, width, height) => {
    await page.setViewportSize({ width, height })
    expect(await isInWidth()).toBe(true)
    expect(await smallTargets(page)).toEqual([])
    expect(await violations(page)).toEqual([])
    await page.setViewportSize({ width: 1280, height: 900 })
  })

  it('draws the chart in forced colours too', async () => {
    await page.emulateMedia({ forcedColors: 'active' })
    const measured = await contrasts()
    // The colours are the reader's: what is asked is that the chart follows them and stands out (WCAG 2.2, 1.4.11).
    expect(measured.filter(([, contrast]) => contrast < 3)).toEqual([])
    expect(await violations(page)).toEqual([])
    await page.emulateMedia({ forcedColors: null })
  })

  it('is still for a reader who likes it still', async () => {
    await page.emulateMedia({ reducedMotion: 'reduce' })
    const moving = `[...document.querySelectorAll('*')].filter((each) => {
      const { transitionDuration, animationName } = getComputedStyle(each)
      return transitionDuration.split(', ').some((time) => Number.parseFloat(time) > 0) || animationName !== 'none'
    }).map((each) => each.className)`
    expect(await page.evaluate(moving)).toEqual([])
    await page.emulateMedia({ reducedMotion: null })
    expect(desk.troubles).toEqual([])
  })
})
