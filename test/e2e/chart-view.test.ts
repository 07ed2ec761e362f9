import { describe, expect, it } from 'vitest'
import { cost as costWords } from '#apps/web/words.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { smallTargets, violations } from '../../tools/served-desk.ts'
import { deskAt } from './desk-at.ts'

/** Notes the latest plan that a worker gives the page. */
const NOTE_PLANS = `globalThis.Worker = class extends Worker {
  constructor(...how) {
    super(...how)
    this.addEventListener('message', ({ data }) => {
      const answered = data.result
      if (answered?.plan?.options) globalThis.latestPlan = answered.plan
    })
  }
}`

/** The chart seen from nearer by, carried, measured on, and with the expected score over it. */
const desk = await deskAt('3', (page) => page.addInitScript(NOTE_PLANS))
const { page } = desk

const tool = (name: string) => page.getByRole('button', { name, exact: true })
/** How far apart pin and ball are on the screen. */
async function span(): Promise<number> {
  const top = async (name: string): Promise<number> =>
    Number(/top: (-?[\d.]+)px/.exec((await page.locator(`.handle-${name}`).getAttribute('style')) ?? '')?.[1])
  return (await top('ball')) - (await top('pin'))
}
/** A place of the screen on the way from the ball to the pin; between the cove and the green there is open ground. */
async function shortOfGreen(share: number): Promise<[number, number]> {
  const middle = async (name: string): Promise<[number, number]> => {
    const box = (await page.locator(`.handle-${name}`).boundingBox())!
    return [box.x + box.width / 2, box.y + box.height / 2]
  }
  const [ball, pin] = [await middle('ball'), await middle('pin')]
  return [ball[0] + (pin[0] - ball[0]) * share, ball[1] + (pin[1] - ball[1]) * share]
}

const measured = (): Promise<string | null> => page.locator('.chart svg .measured text').textContent()

describe('the chart', () => {
  it('comes nearer by button and goes back to the whole hole', async () => {
    const whole = await span()
    expect(await tool('Whole hole').isDisabled()).toBe(true)
    await tool('Nearer').click()
    await expect.poll(span).toBeGreaterThan(whole * 1.4)
    await tool('Whole hole').click()
    await expect.poll(span).toBeCloseTo(whole, 3)
  })

  it('comes nearer about the pointer with the wheel and the control key, and is then carried by the mouse', async () => {
    const at = await shortOfGreen(0.8)
    const whole = await span()
    await page.mouse.move(...at)
    await page.keyboard.down('Control')
    for (let turn = 0; turn < 4; turn += 1) await page.mouse.wheel(0, -120)
    await page.keyboard.up('Control')
    await expect.poll(span).toBeGreaterThan(whole * 2)
    const ball = (): Promise<string | null> => page.locator('.handle-ball').getAttribute('style')
    const before = await ball()
    const green = (await page.locator('.plan-sentence').textContent()) ?? ''
    await page.mouse.move(...at)
    await page.mouse.down()
    await page.mouse.move(at[0], at[1] - 60, { steps: 6 })
    await page.mouse.up()
    await expect.poll(ball).not.toBe(before)
    // Carrying the chart aims nowhere.
    expect(await page.locator('.plan-sentence').textContent()).toBe(green)
    await tool('Whole hole').click()
  })

  it('measures between two places: from the ball to the pin at first, then by taps, drags and keys', async () => {
    expect(await page.locator('.chart svg .measured').count()).toBe(0)
    await tool('Measure').click()
    const length = Number(
      /(\d+) yd to the pin/.exec((await page.locator('.ball-controls').textContent()) ?? '')?.[1],
    )
    expect(await measured()).toBe(`${length} yards`)
    await page.locator('.handle-measure').last().focus()
    for (let key = 0; key < 10; key += 1) await page.keyboard.press('ArrowDown')
    expect(Number.parseInt((await measured()) ?? '', 10)).toBe(length - 10)
    await page.mouse.click(...(await shortOfGreen(0.5)))
    await page.mouse.click(...(await shortOfGreen(0.75)))
    const tapped = Number.parseInt((await measured()) ?? '', 10)
    expect(tapped).toBeGreaterThan(5)
    expect(tapped).toBeLessThan(length / 2)
    await tool('Measure').click()
    expect(await page.locator('.chart svg .measured').count()).toBe(0)
  })

  it('shows the expected score over the hole once the full plan knows it', async () => {
    await page.locator('.state:empty').waitFor({ state: 'attached' })
    await tool('Scores').click()
    const figures = page.locator('.chart svg .values text')
    await figures.first().waitFor({ state: 'attached' })
    const scores = (await figures.allTextContents()).map(Number)
    expect(Math.min(...scores)).toBeGreaterThan(1)
    expect(Math.max(...scores)).toBeLessThan(7)
    await tool('Scores').click()
  })

  it('says the whole plan to a screen reader: club, line, side to miss, every cost, what flips it', async () => {
    const plan = (await page.evaluate('latestPlan')) as Plan
    // What the browser hands to a screen reader, not what stands in the document.
    const readOf = (name: string) => page.getByRole('region', { name }).ariaSnapshot()
    expect((await readOf('The plan')).replaceAll('\u2011', '-')).toContain(plan.sentence)
    // The sentence has the club, where to start it, where it finishes and the side to miss on.
    expect(plan.sentence).toMatch(
      /6-iron: start it \d+ yards .* to finish .*; (the safe side is|a miss is dear|keep away)/,
    )
    await page.getByRole('button', { name: /^All \d+ clubs/ }).click()
    const rows = (await readOf('The clubs')).match(/(?<=- row ").*(?=":)/g) ?? []
    expect(rows.length).toBe(plan.options.length + 1)
    for (const [place, { club, cost, cost_low, cost_high }] of plan.options.entries()) {
      const row = rows[place + 1]
      expect(row).toMatch(new RegExp(`^${club.replace(/(?<=[a-z])-/, ' ')} .*(left|right|on the line)`))
      const [low, high] = [costWords(cost_low), costWords(cost_high)]
      expect(row).toContain(low === high ? costWords(cost) : `${costWords(cost)}, likely ${low} to ${high}`)
    }
    const flips = await readOf('What flips it')
    const found = plan.flips.flatMap(({ club }) => (club === null ? [] : [club]))
    expect(found.length).toBeGreaterThan(1)
    expect(flips.match(/(?<=listitem: ".*: the ).*(?=\."$)/gm)).toEqual(found)
    expect(flips).toContain('paragraph: "Within what is likely')
  })

  it('is shown on the wall of a room, one idea a picture, stepped by keys or taps', async () => {
    const opener = page.getByRole('button', { name: 'On the wall' })
    await opener.focus()
    await page.keyboard.press('w')
    const wall = page.getByRole('dialog', { name: 'On the wall' })
    const words = wall.getByRole('heading')
    await words.waitFor()
    const plan = (await page.evaluate('latestPlan')) as Plan
    const all: string[] = []
    const count = Number(/picture 1 of (\d+)/.exec((await wall.textContent()) ?? '')?.[1])
    for (let picture = 1; picture <= count; picture += 1) {
      await wall.getByText(`picture ${picture} of ${count}`).waitFor()
      all.push((await words.textContent()) ?? '')
      // The last one is worked out when it is shown.
      if (picture < count) await wall.locator('svg').waitFor()
      if (picture === 1 || picture === count) expect(await violations(page)).toEqual([])
      if (picture < count) await page.keyboard.press('ArrowRight')
    }
    expect(all[0]?.replaceAll('\u2011', '-')).toBe(plan.sentence)
    expect(all.slice(1, 4)).toEqual([
      expect.stringContaining('finishes'),
      expect.stringContaining('cost in strokes'),
      expect.stringContaining('Wind along'),
    ])
    expect(all.at(-1)).toBe('Go or lay up')
    await page.keyboard.press('Home')
    await wall.locator('svg').click()
    expect(await words.textContent()).toBe(all[1])
    await page.keyboard.press('Escape')
    await wall.waitFor({ state: 'detached' })
    expect(await page.evaluate('document.activeElement.textContent')).toBe('On the wall')
  })

  it('has nothing that a screen reader or a large finger cannot use', async () => {
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    expect(desk.troubles).toEqual([])
  })
})
