import { readFileSync } from 'node:fs'
import type { Locator } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { beyondTheSide, PATIENCE, serveDesk, smallTargets, violations } from '../../tools/served-desk.ts'
import { canReadPdf, sizeOf, textOf } from '../acceptance/printed-pages.ts'
import { twoClubs, twoShort } from '../fixtures/two-short.ts'

/** The card on the screen: as it will print, sentences written anew in their place, and its ways out. A course of two short holes, so that a plan takes a second or two. */
const desk = await serveDesk()
afterAll(() => desk.close())
const { page } = desk
const EBB = twoClubs('Ebbe Strömnäs')

const put = (place: string, document: unknown): Promise<unknown> =>
  page.evaluate(
    `fetch('/api/${place}', { method: 'PUT', headers: { 'Content-Type': 'application/json' }, body: ${JSON.stringify(JSON.stringify(document))} }).then((answer) => answer.status)`,
  )
const inStore = async (): Promise<{ sentences?: { words: string; hole: string }[] }> =>
  JSON.parse(String(await page.evaluate(`fetch('/api/players/ebbe').then((answer) => answer.text())`)))
const wordsInStore = async (): Promise<string[]> =>
  ((await inStore()).sentences ?? []).map(({ words }) => words)
const press = (name: string | RegExp): Promise<void> =>
  page.getByRole('button', { name, exact: typeof name === 'string' }).click()
const choose = (label: string, value: string): Promise<unknown> =>
  page.getByLabel(label, { exact: true }).selectOption(value)
const row = (ref: string): Locator => page.getByRole('button', { name: new RegExp(`^Hole ${ref}:`) })
const sheet = (): Locator => page.locator('.sheet').first()
const poll = (of: () => Promise<unknown>) => expect.poll(of, { timeout: PATIENCE })
const light = (): Locator => page.locator('.legal-light b')
/** All that stands on the first sheet, lines joined. */
const printed = async (): Promise<string> =>
  (await sheet().locator('svg text').allTextContents()).join(' ').replaceAll(/\s+/g, ' ')
const isReady = () => poll(() => page.getByRole('button', { name: 'Save as PDF' }).isEnabled()).toBe(true)
const never = (): Locator => page.getByRole('group', { name: 'Hole 1: the never' }).getByLabel('Words')

beforeAll(async () => {
  await page.goto(`${desk.address}#/course/two-short/card`)
  expect(await put('courses/two-short', twoShort())).toBe(201)
  expect(await put('courses/one-short', twoShort(true, 1))).toBe(201)
  expect(await put('players/ebbe', EBB)).toBe(201)
  await page.reload()
  await page.getByText('Choose the player whose card').waitFor()
}, PATIENCE)

/** Seconds of a key: 60 words a minute at five keys a word (common practice). Of a press of the mouse with looking for what to press, and of looking over a page: our assumptions, slower than a practised hand. */
const KEY_SECONDS = 0.2
const PRESS_SECONDS = 2
const LOOK_SECONDS = 5

// A hole is enough: what a person does is the same for eighteen.
describe('a new player on a known course', () => {
  it('has a first card in under a minute of use, the time of planning aside', async ({ annotate }) => {
    let seconds = 0
    const hit = async (what: Locator): Promise<void> => {
      await what.click()
      seconds += PRESS_SECONDS
    }
    const type = async (label: string | RegExp, text: string): Promise<void> => {
      await hit(page.getByLabel(label))
      await page.keyboard.type(text)
      seconds += text.length * KEY_SECONDS
    }
    await hit(page.getByRole('link', { name: 'New player' }))
    await type('What is the player called?', 'Merle Tansy')
    await hit(page.getByRole('radio', { name: /right/i }).first())
    await type(/handicap index/, '21.4')
    await hit(page.getByRole('button', { name: 'Make the profile' }))
    await hit(page.getByRole('button', { name: 'Keep, and open the desk' }))
    await page.getByLabel('Course', { exact: true }).selectOption('one-short')
    seconds += 2 * PRESS_SECONDS + LOOK_SECONDS
    await hit(page.getByRole('link', { name: 'Card', exact: true }))
    await isReady()
    seconds += LOOK_SECONDS
    expect(await printed()).toMatch(/Two Short: Merle Tansy .*start .*; /)
    const saved = page.waitForEvent('download')
    await hit(page.getByRole('button', { name: 'Save as PDF' }))
    expect((await saved).suggestedFilename()).toBe('one-short-merle-tansy-card.pdf')
    await annotate(`A first card took ${seconds.toFixed(0)} s of a person's time.`)
    expect(seconds).toBeLessThan(60)
    await page.goto(`${desk.address}#/course/two-short/card`)
    await page.getByText('Choose the player whose card').waitFor()
  })
})

describe('the card on the screen', () => {
  it('asks whose it is, shows the pages as they will print, and says what they may be used for', async () => {
    expect(await violations(page)).toEqual([])
    await choose('Player', 'ebbe')
    await sheet().waitFor()
    await isReady()
    expect(await page.locator('.sheet').count()).toBe(2)
    expect(await printed()).toMatch(/Two Short: Ebbe Strömnäs .*87 yd .*start .*; /)
    expect(await light().textContent()).toBe('Practice only.')
    expect(await violations(page)).toEqual([])
  })

  it.each([
    [1280, 900],
    [320, 640],
  ])('holds to a screen of %i × %i, a sentence being written', async (width, height) => {
    await page.setViewportSize({ width, height })
    await row('1').click()
    await poll(() => beyondTheSide(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    expect(await violations(page)).toEqual([])
    await page.keyboard.press('Escape')
    expect(await row('1').evaluate('document.activeElement.className')).toContain('row-button')
    await page.setViewportSize({ width: 1280, height: 900 })
  })

  it('takes a sentence anew by keys alone, steps back and forth, and keeps it in the store', async () => {
    await row('1').focus()
    await page.keyboard.press('Enter')
    const focused = page.locator('fieldset', { hasText: 'the never' }).locator('textarea:focus')
    for (let tabs = 0; (await focused.count()) === 0; tabs += 1) {
      if (tabs > 8) throw new Error('no tab leads to the never')
      await page.keyboard.press('Tab')
    }
    await page.keyboard.press('Control+A')
    await page.keyboard.type('Never at the flag.')
    await poll(printed).toContain('Never at the flag.')
    await page.keyboard.press('Enter')
    await page.keyboard.press('Control+z')
    await poll(printed).not.toContain('Never at the flag.')
    await page.keyboard.press('Control+y')
    await poll(printed).toContain('Never at the flag.')
    await poll(wordsInStore).toEqual(['Never at the flag.'])
    expect(await inStore()).toMatchObject({ ...EBB, sentences: [{ hole: '1', units: 'yards' }] })
    await page.reload()
    await isReady()
    await poll(printed).toContain('Never at the flag.')
    expect(await page.getByRole('region', { name: 'To look at again' }).count()).toBe(0)
  })

  it('refuses what may not be carried, with the clause, until it is written otherwise', async () => {
    await choose('For', 'counting')
    await poll(() => light().textContent()).toBe('May be carried.')
    await row('1').click()
    await never().fill('It plays 95.')
    await poll(() => light().textContent()).toBe('May not be carried.')
    expect(await page.locator('.legal-light').textContent()).toMatch(/4\.3a\(1\).*MAR-BOOK-006/)
    expect(await page.getByRole('button', { name: 'Print', exact: true }).isDisabled()).toBe(true)
    expect(await violations(page)).toEqual([])
    await never().fill('Never at the flag.')
    await poll(() => light().textContent()).toBe('May be carried.')
    await choose('For', 'practice')
  })

  it('gives the pages to the printer and as a PDF of their size, with the words written', async () => {
    const [file] = await Promise.all([page.waitForEvent('download'), press('Save as PDF')])
    expect(file.suggestedFilename()).toBe('two-short-ebbe-card.pdf')
    const saved = readFileSync(await file.path())
    const paper = await page.pdf({ preferCSSPageSize: true })
    if (!canReadPdf) return
    expect(sizeOf(saved)).toMatchObject({ pages: 2, width: 841.89, height: 595.276 })
    expect(textOf(saved)).toContain('Never at the flag.')
    const size = sizeOf(paper)
    expect(size.pages).toBe(2)
    expect(Math.abs(size.width - 841.89)).toBeLessThan(1)
    expect(Math.abs(size.height - 595.276)).toBeLessThan(1)
    expect(textOf(paper)).toContain('Never at the flag.')
  })

  it('opens a letter with the card as plain text, and says that no file travels with it', async () => {
    const address = String(await page.getByRole('link', { name: 'Write an e-mail' }).getAttribute('href'))
    const [, subject = '', body = ''] = /^mailto:\?subject=(.*)&body=(.*)$/.exec(address) ?? []
    expect(decodeURIComponent(subject)).toBe('Two Short: the card of Ebbe Strömnäs')
    expect(decodeURIComponent(body)).toMatch(/\r\n1, par 3, 87 yd.*\r\n.*Never at the flag\./)
    await page.getByText('No file travels with it').waitFor()
  })

  it('points out a sentence whose plan has changed, and takes the plan’s with one press', async () => {
    const [sentence] = (await inStore()).sentences ?? []
    const other = { ...sentence, hole: '2', words: 'Never long.', under: 'Never right: gorse.' }
    await put('players/ebbe', { ...EBB, sentences: [sentence, other] })
    await page.reload()
    await isReady()
    const list = page.getByRole('region', { name: 'To look at again' })
    await list.waitFor()
    expect(await list.textContent()).toMatch(/Hole 2, the never: the plan has changed.*Never long\./)
    expect(await violations(page)).toEqual([])
    await press('Keep mine: hole 2, the never')
    await list.waitFor({ state: 'detached' })
    await press('Undo')
    await press('Take the plan’s: hole 2, the never')
    await list.waitFor({ state: 'detached' })
    await poll(wordsInStore).toEqual(['Never at the flag.'])
  })

  it.each([
    ['large', 'Never at the flag.'],
    ['junior', 'your par'],
    ['caddie', 'Green: front'],
    ['pins', 'hole locations'],
    ['book', 'Scale 1:'],
  ])('shows another kind as it will print: %s', async (kind, words) => {
    await choose('What', kind)
    await isReady()
    await poll(() =>
      page
        .locator('.sheet svg text')
        .allTextContents()
        .then((all) => all.join(' ')),
    ).toContain(words)
    if (kind !== 'book') return void (await choose('What', 'card'))
    expect(await violations(page)).toEqual([])
    // Written anew on the page where it stands, which is that of the card too.
    await row('1').click()
    await never().fill('Never at the back.')
    await page.keyboard.press('Enter')
    await poll(async () => (await page.locator('.sheet svg text').allTextContents()).join(' ')).toContain(
      'Never at the back.',
    )
    await poll(wordsInStore).toEqual(['Never at the back.'])
    await press('Undo')
    await poll(wordsInStore).toEqual(['Never at the flag.'])
    await press('Words alone')
    await poll(printed).toContain('lie, left')
    await press('Words alone')
    await choose('What', 'card')
  })

  it('keeps what is written while the server is away, and sends it when it is back', async () => {
    await page.evaluate('navigator.serviceWorker.ready.then(() => true)')
    await desk.stopServer()
    await row('1').click()
    await never().fill('Never over the back.')
    await page.keyboard.press('Enter')
    await page.getByText('Your words are being kept').waitFor({ state: 'detached' })
    await page.reload()
    await isReady()
    await poll(printed).toContain('Never over the back.')
    const [file] = await Promise.all([page.waitForEvent('download'), press('Save as PDF')])
    if (canReadPdf) expect(textOf(readFileSync(await file.path()))).toContain('Never over the back.')
    await desk.startServer()
    await poll(() => wordsInStore().catch(() => [])).toEqual(['Never over the back.'])
  })

  it('stops planning where it is told to, says what is missing, and goes on', async () => {
    await page.evaluate(`location.hash = '#/course/sandrel-ness/card/ebbe'`)
    await press('Stop planning')
    await page.getByText(/^Stopped: \d+ of 18 holes are not planned/).waitFor()
    await poll(printed).toContain('it was stopped before it was planned.')
    await press('Plan the rest')
    await page.getByText(/of 18 holes are planned/).waitFor()
    await press('Stop planning')
  })

  it('plans soon and roughly where that is asked for, and the card says so', async () => {
    const words = async (): Promise<string> =>
      (await page.locator('.sheet svg text').allTextContents()).join(' ').replaceAll(/\s+/g, ' ')
    await page.evaluate(`location.hash = '#/course/two-short/card/ebbe'`)
    await press('Soon and rough')
    await isReady()
    await poll(words).toContain('solved by quick settings')
    await press('Soon and rough')
    await isReady()
    await poll(words).not.toContain('solved by quick settings')
  })

  it('has its plans at once when the page is loaded again, and plans anew for another player', async () => {
    await page.evaluate(`location.hash = '#/course/two-short/card/ebbe'`)
    await isReady()
    await page.reload()
    // With no worker there is nothing but what was kept.
    await page.evaluate('delete globalThis.Worker')
    await isReady()
    expect(await printed()).not.toContain('it was stopped')
    const { sentences: _, ...numbers } = await inStore()
    await page.evaluate(
      `fetch('/api/players/longer', { method: 'PUT', headers: { 'Content-Type': 'application/json' }, body: ${JSON.stringify(JSON.stringify({ ...numbers, name: 'Longer', clubs: [{ name: '9-iron', carry_m: 108 }] }))} })`,
    )
    await page.evaluate(`location.hash = '#/course/two-short/card/longer'`)
    await page.getByText('Marram itself failed').first().waitFor()
  })

  it('plans anew where the browser’s storage is damaged, and lets go of all when a player goes', async () => {
    const kept = (what: string) =>
      page.evaluate(`new Promise((resolve, reject) => {
        const asked = indexedDB.open('marram-answers')
        asked.onerror = reject
        asked.onsuccess = () => {
          const store = asked.result.transaction('answers', 'readwrite').objectStore('answers')
          const done = (answer) => { asked.result.close(); resolve(answer) }
          ${what}
        }
      })`)
    const count = () => kept('store.count().onsuccess = ({ target }) => done(target.result)')
    expect(await count()).toBeGreaterThanOrEqual(2)
    await kept(`store.openCursor().onsuccess = ({ target: { result } }) => {
      if (result === null) return done()
      result.update({ ...result.value, state: [null, { plan: { options: [] } }][Math.round(Math.random())] })
      result.continue()
    }`)
    await page.evaluate(`location.hash = '#/course/two-short/card/ebbe'`)
    await page.reload()
    await isReady()
    expect(await printed()).toContain('Sand wedge')
    await page.goto(`${desk.address}#/players`)
    await page.evaluate(
      `fetch('/api/players/longer').then((answer) => fetch('/api/players/longer', { method: 'DELETE', headers: { 'If-Match': answer.headers.get('ETag') ?? '*' } }))`,
    )
    await page.reload()
    await poll(count).toBe(0)
    expect(desk.troubles.filter((trouble) => !/Failed to (?:load|fetch)|ERR_/.test(trouble))).toEqual([])
  })
})
