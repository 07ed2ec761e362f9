import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openHole } from '#apps/web/survey/survey.ts'
import { readHole } from '#apps/web/survey/survey-reading.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import type { Course } from '#golf/course/course.ts'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { planHole } from '#golf/strategy/plan-hole.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { polygonCentroid } from '#numbers/geometry/polygon.ts'
import { tangentPlane } from '#numbers/geometry/tangent-plane.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'
import { parseGeojson } from '#outside/formats/geojson.ts'
import { layOutSheet } from '#paper/draw/sheet.ts'
import {
  beyondTheSide,
  PATIENCE,
  type ServedDesk,
  serveDesk,
  smallTargets,
  violations,
} from '../../tools/served-desk.ts'

/** A hole surveyed in a real browser: typed by keys alone, traced by taps, kept, and planned from both. */
let desk: ServedDesk
let page: Page

beforeAll(async () => {
  desk = await serveDesk()
  page = desk.page
  await page.goto(desk.address)
  await page.getByRole('link', { name: 'Survey a hole' }).click()
  await page.getByLabel('Row 1, what').waitFor()
}, PATIENCE * 2)
afterAll(() => desk?.close())

/** An invented par 4: what a person types in each cell, from the first letters of a list on. */
const ROWS = [
  ['t', '', '0', '364', '', '', 'white'],
  ['f', '', '180', '340', '', '34', ''],
  ['bu', 'l', '225', '245', '17', '29', ''],
  ['wa', 'r', '240', '330', '30', '62', 'the mere'],
  ['tr', 'l', '100', '300', '42', '90', ''],
  ['h', 'r', '60', '160', '25', '60', ''],
  ['o', 'r', '', '', '80', '', ''],
  ['g', '', '350', '378', '', '26', ''],
] as const

/** Keys pressed, each letter one. */
let keys = 0
/** Presses of the mouse; a choice in a list is two. */
let clicks = 0

async function press(key: string): Promise<void> {
  await page.keyboard.press(key)
  keys += 1
}

async function type(text: string): Promise<void> {
  await page.keyboard.type(text)
  keys += text.length
}

const focused = (): Promise<string> =>
  page.evaluate(`document.activeElement.getAttribute('aria-label') ?? document.activeElement.textContent`)

async function tabTo(name: string): Promise<void> {
  for (let tabs = 0; tabs < 40; tabs += 1) {
    if ((await focused()).includes(name)) return
    await press('Tab')
  }
  throw new Error(`no tab leads to ${name}`)
}

const rowFaults = (): Promise<string[]> => page.locator('.row-faults li.wrong').allTextContents()
const lengths = async (): Promise<string> => (await page.locator('.closing').textContent()) ?? ''

/** A course as the server keeps it. */
async function kept(id: string): Promise<Course> {
  const text = String(await page.evaluate(`fetch('/api/courses/${id}').then((answer) => answer.text())`))
  const reading = parseGeojson(text, id)
  return assembleCourse(reading.features, reading).course
}

describe('a hole that is typed', () => {
  it('is done by keys alone, eight rows in under eight minutes of typing', async ({ annotate }) => {
    await page.getByLabel('Name of the course').focus()
    await type('Sounding Links')
    await press('Tab')
    await press('Control+a')
    await type('7')
    await press('Tab')
    await type('4')
    await press('Tab')
    await type('3')
    await press('Tab')
    for (const row of ROWS) {
      for (const [index, cell] of row.entries()) {
        if (cell !== '') await type(cell)
        if (index < row.length - 1) await press('Tab')
      }
      await press('Enter')
    }
    expect(await rowFaults()).toEqual([])
    expect(await lengths()).toBe(
      'The line is 364 yd long.The card from the white tee says 364 yd: it closes.',
    )
    // 200 ms a key is 60 words a minute at five keys a word (common practice); a slow typist takes 500.
    await annotate(`${keys} keys: ${keys * 0.2} s at 200 ms a key, ${keys * 0.5} s at 500 ms`)
    expect(keys * 0.2).toBeLessThan(480)
    expect(keys * 0.5).toBeLessThan(480)
  })

  it('says at its row what is wrong and loses nothing; every step can be taken back', async () => {
    const to = page.getByLabel('Row 3, to')
    await to.fill('205')
    await page.getByLabel('Row 4, what').focus()
    expect(await rowFaults()).toEqual([
      expect.stringMatching(/^The row was left out: “to” must be further .*MAR-IMPORT-019$/),
    ])
    expect(await page.getByLabel('Row 3, near').inputValue()).toBe('17')
    expect(await to.getAttribute('aria-invalid')).toBe('true')
    const card = page.getByLabel('Row 1, to')
    await card.fill('400')
    expect(await lengths()).toContain('the line is 36 yd too short. It does not close.')
    await page.getByRole('button', { name: 'Remove row 2: fairway' }).click()
    expect(await page.locator('.typed-row').count()).toBe(8)
    for (let step = 0; step < 3; step += 1) await page.keyboard.press('Control+z')
    expect(await to.inputValue()).toBe('245')
    expect(await card.inputValue()).toBe('364')
    expect(await page.locator('.typed-row').count()).toBe(9)
    expect(await rowFaults()).toEqual([])
    await page.keyboard.press('Control+Shift+z')
    expect(await to.inputValue()).toBe('205')
  })

  it.each([
    [1280, 900],
    [390, 844],
  ])(
    'has no accessibility violation at %i × %i with a fault shown, and nothing to hit under 48 px',
    async (width, height) => {
      await page.setViewportSize({ width, height })
      await page.waitForTimeout(300)
      expect(await rowFaults()).toHaveLength(1)
      expect(await violations(page)).toEqual([])
      expect(await smallTargets(page)).toEqual([])
      expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true)
      await page.setViewportSize({ width: 1280, height: 900 })
    },
  )

  it('is there again when the page is loaded again, with its past', async () => {
    await page.reload()
    await page.getByLabel('Row 1, what').waitFor()
    expect(await page.getByLabel('Row 3, to').inputValue()).toBe('205')
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await page.getByLabel('Row 3, to').inputValue()).toBe('245')
  })

  it('goes to a table on the disk and back', async () => {
    const waiting = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save as a table' }).click()
    const download = await waiting
    expect(download.suggestedFilename()).toBe('sounding-links.csv')
    const path = await download.path()
    expect(readFileSync(path, 'utf8').split('\n').slice(0, 4)).toEqual([
      'hole,what,side,from_yd,to_yd,near_yd,far_yd,note',
      '7,tee,,0,,,,"white, card 364 yd"',
      '7,fairway,,180,340,,34,',
      '7,bunker,left,225,245,17,29,',
    ])
    await page.getByLabel('A hole table').setInputFiles({
      name: 'other.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(
        'hole,what,side,from_m,to_m,near_m,far_m,note\n2,green,,140,160,,20,par 3\n2,lava,,,,,,\n',
      ),
    })
    await expect.poll(() => page.getByLabel('Hole', { exact: true }).inputValue()).toBe('2')
    expect(await page.getByLabel('Par', { exact: true }).inputValue()).toBe('3')
    expect(await rowFaults()).toHaveLength(1)
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await page.getByLabel('Hole', { exact: true }).inputValue()).toBe('7')
  })

  it('is kept by keys alone, and the desk opens on it', async () => {
    await page.getByLabel('Row 9, what').focus()
    await tabTo('Keep, and open the desk')
    await press('Enter')
    const course = page.getByLabel('Course', { exact: true })
    await course.waitFor()
    expect(await course.inputValue()).toBe('sounding-links')
    await expect.poll(() => page.getByLabel('Hole', { exact: true }).inputValue()).toBe('7')
    const hole = holeFromCourse(await kept('sounding-links'), '7')
    expect(hole).toMatchObject({ par: 4, strokeIndex: 3, teeName: 'white' })
    expect(hole.lengthMetres).toBeCloseTo(364 * METRES_PER_YARD, 2)
  })
})

/** The same ground by its corners, yards beside the line and along it. */
const TRACED: readonly (readonly [what: string, corners: readonly Point[]])[] = [
  ['fairway', box(-17, 17, 180, 340)],
  ['bunker', box(-29, -17, 225, 245)],
  ['water-red', box(30, 62, 240, 330)],
  ['trees', box(-90, -42, 100, 300)],
  ['heavy', box(25, 60, 60, 160)],
  // Eight corners of an oval of the same area.
  [
    'green',
    Array.from({ length: 8 }, (_, k): Point => {
      const angle = (k * Math.PI) / 4
      return [13 * 1.054 * Math.cos(angle), 364 + 14 * 1.054 * Math.sin(angle)]
    }),
  ],
]

function box(left: number, right: number, from: number, to: number): Point[] {
  return [
    [left, from],
    [right, from],
    [right, to],
    [left, to],
  ]
}

describe('a hole that is traced', () => {
  it('takes at most sixty clicks on blank paper', async ({ annotate }) => {
    await page.getByRole('link', { name: 'Survey a hole' }).click()
    await page.getByRole('button', { name: 'Begin a new course' }).click()
    await page.getByLabel('Name of the course').fill('Traced Links')
    await page.getByLabel('Hole', { exact: true }).fill('7')
    await page.getByLabel('Par', { exact: true }).fill('4')
    await page.getByLabel('Stroke index').fill('3')
    // The card gives blank paper its scale.
    await page.getByLabel('Row 1, what').selectOption('tee')
    await page.getByLabel('Row 1, from').fill('0')
    await page.getByLabel('Row 1, to').fill('364')
    await page.getByLabel('Row 1, note').fill('white')
    await page.waitForTimeout(500)
    const sheet = await sheetOnScreen()
    const chart = page.getByRole('application')
    await page.getByRole('button', { name: 'Trace', exact: true }).click()
    clicks += 1
    let taps = 0
    /** A hand that is up to a pixel off. */
    const tap = async (at: Point): Promise<void> => {
      const [x, y] = sheet.toSheet([at[0] * METRES_PER_YARD, at[1] * METRES_PER_YARD])
      taps += 1
      await chart.click({ position: { x: x + Math.sin(taps * 7), y: y + Math.cos(taps * 5) } })
      clicks += 1
    }
    const [right, top] = sheet.toHole([sheet.frame.right - 4, sheet.frame.top + 4])
    const bottom = sheet.toHole([0, sheet.frame.bottom - 4])[1]
    const yards = (metres: number): number => metres / METRES_PER_YARD
    const out = box(80, yards(right), yards(bottom), yards(top))
    for (const [what, corners] of [...TRACED, ['out', out] as const]) {
      if (what !== 'fairway') {
        await page.getByLabel('What a tap traces').selectOption(what)
        clicks += 2
      }
      for (const corner of corners) await tap(corner)
      await tap(corners.at(-1)!)
    }
    expect(await page.locator('.typed-row .traced').allTextContents()).toEqual([
      ...Array(5).fill('traced, 4 corners'),
      'traced, 8 corners',
      'traced, 4 corners',
    ])
    expect(await rowFaults()).toEqual([])
    await annotate(`${clicks} clicks`)
    expect(clicks).toBeLessThanOrEqual(60)
  })

  it('takes back every tap, and lets corners be dragged and typed', async () => {
    const before = await page.locator('.typed-row').count()
    await page.keyboard.press('Control+z')
    expect(await page.getByText('4 corners. Tap the last one again').count()).toBe(1)
    for (let left = 3; left > 0; left -= 1) {
      await page.keyboard.press('Control+z')
      expect(await page.locator('.trace-layer polyline').getAttribute('points')).toSatisfy(
        (points: string) => points.split(' ').length === left,
      )
    }
    for (let back = 0; back < 4; back += 1) await page.keyboard.press('Control+y')
    expect(await page.locator('.typed-row').count()).toBe(before)

    await page.getByRole('button', { name: 'traced, 4 corners' }).nth(1).click()
    const along = page.getByLabel('Corner 1, along')
    const first = Number(await along.inputValue())
    await along.fill('230')
    expect(Number(await along.inputValue())).toBe(230)
    const handle = (await page.locator('.trace-layer circle').first().boundingBox())!
    const [x, y] = [handle.x + handle.width / 2, handle.y + handle.height / 2]
    await page.mouse.move(x, y)
    await page.mouse.down()
    await page.mouse.move(x - 10, y + 40, { steps: 6 })
    await page.mouse.up()
    expect(Number(await along.inputValue())).toBeLessThan(215)
    await page.keyboard.press('Control+z')
    expect(Number(await along.inputValue())).toBe(230)
    await page.getByRole('button', { name: 'Another corner after 4' }).click()
    await page.getByRole('button', { name: 'Remove corner 5' }).click()
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    for (let step = 0; step < 3; step += 1) await page.keyboard.press('Control+z')
    expect(Number(await along.inputValue())).toBe(first)
  })

  it('takes the corner that a tap is near to, unless it is told not to', async () => {
    const corner = page.locator('.trace-layer polyline')
    const sheet = await sheetOnScreen()
    const [x, y] = sheet.toSheet([80 * METRES_PER_YARD, 200 * METRES_PER_YARD])
    const chart = page.getByRole('application')
    const beside = async (): Promise<number> => {
      await page.getByRole('button', { name: 'Trace', exact: true }).click()
      await chart.click({ position: { x: x - 7, y } })
      const at = Number(((await corner.getAttribute('points')) ?? '').split(',')[0]) - x
      await page.getByRole('button', { name: 'Let it go' }).click()
      await page.getByRole('button', { name: 'Trace', exact: true }).click()
      return at
    }
    // The edge of the ground out of bounds, traced a pixel off at most.
    expect(Math.abs(await beside())).toBeLessThan(2)
    await page.getByRole('button', { name: 'Snap' }).click()
    expect(await beside()).toBeCloseTo(-7, 0)
    await page.getByRole('button', { name: 'Snap' }).click()
  })

  it('is traced by keys as well', async () => {
    const before = await page.locator('.typed-row').count()
    const chart = page.getByRole('application')
    await page.getByRole('button', { name: 'Trace', exact: true }).click()
    await page.getByLabel('What a tap traces').selectOption('scrub')
    await chart.focus()
    for (const keys of ['ArrowLeft', 'ArrowUp', 'ArrowRight', 'ArrowDown']) {
      for (let times = 0; times < 4; times += 1) await page.keyboard.press(keys)
      await page.keyboard.press(' ')
    }
    await page.keyboard.press('Enter')
    expect(await page.locator('.typed-row').count()).toBe(before + 1)
    await page.keyboard.press('Backspace')
    expect(await page.locator('.typed-row').count()).toBe(before)
    await page.keyboard.press('Escape')
    expect(await page.locator('.trace-layer polyline').count()).toBe(0)
  })

  it('plans as the typed hole does, within 0.02 of a stroke', async ({ annotate }) => {
    await page.getByRole('button', { name: 'Keep, and open the desk' }).click()
    // Back to the survey, so that the desk does not plan at the same time.
    await page.getByRole('link', { name: 'Survey a hole' }).click()
    await page.getByLabel('Row 1, what').waitFor()
    const whole = completePlayer(
      parsePlayer(readFileSync(join(EXAMPLES, 'aldous-brack.player.json'), 'utf8'), 'aldous-brack'),
    )
    // Every second club, driver first: the same ground is told in half the time.
    const player = { ...whole, clubs: whole.clubs.filter((_, index) => index % 2 === 0) }
    const planOn = async (id: string): Promise<Plan> => {
      const course = await kept(id)
      const hole = holeFromCourse(course, '7')
      const question = { courseName: course.name, hole, player, day: REFERENCE_DAY, isQuick: true }
      return planHole(question)
    }
    const [typed, traced] = [await planOn('sounding-links'), await planOn('traced-links')]
    await annotate(`${typed.value.strokes.toFixed(4)} typed, ${traced.value.strokes.toFixed(4)} traced`)
    expect(Math.abs(typed.value.strokes - traced.value.strokes)).toBeLessThanOrEqual(0.02)
    expect(traced.options[0]?.club).toBe(typed.options[0]?.club)
  })
})

describe('a course that was typed here', () => {
  it('gets another hole', async () => {
    await page.getByLabel('A course of the store').selectOption('sounding-links')
    await page.getByRole('button', { name: 'Go on with it' }).click()
    await expect.poll(() => page.getByLabel('Name of the course').inputValue()).toBe('Sounding Links')
    await page.getByRole('button', { name: 'Another hole' }).click()
    const number = page.locator('.hole-fields').getByLabel('Hole', { exact: true })
    expect(await number.inputValue()).toBe('8')
    await page.getByLabel('Par', { exact: true }).fill('3')
    await page.getByLabel('Row 1, what').selectOption('green')
    await page.getByLabel('Row 1, from').fill('150')
    await page.getByLabel('Row 1, to').fill('170')
    await page.getByLabel('Row 1, far').fill('20')
    await page.getByRole('button', { name: 'Keep, and open the desk' }).click()
    await page.getByLabel('Course', { exact: true }).waitFor()
    await expect.poll(() => page.getByLabel('Hole', { exact: true }).inputValue()).toBe('8')
    expect((await kept('sounding-links')).holes.map(({ ref, par }) => [ref, par])).toEqual([
      ['7', 4],
      ['8', 3],
    ])
  })

  it('is the only kind to go on with', async () => {
    await page.getByRole('link', { name: 'Survey a hole' }).click()
    await page.getByLabel('A course of the store').selectOption('sandrel-ness')
    await page.getByRole('button', { name: 'Go on with it' }).click()
    expect(await page.getByRole('alert').textContent()).toContain('MAR-WEB-004')
    expect(await page.getByLabel('Name of the course').inputValue()).toBe('Sounding Links')
  })
})

describe('the green', () => {
  it('is typed by size, fall and heights, shows the slopes these come to, and is taken back step by step', async () => {
    await page.getByRole('button', { name: 'Begin a new course' }).click()
    const green = page.getByRole('region', { name: 'The green' })
    const fill = (label: string, text: string): Promise<void> =>
      green.getByLabel(label, { exact: true }).fill(text)
    await fill('Front, from the tee', '350')
    await fill('Depth', '30')
    await fill('Width', '26')
    await fill('Falls, %', '2.5')
    await green.getByLabel('Towards its', { exact: true }).selectOption('front left')
    const said = green.getByRole('status')
    await said.getByText('falls 2.5 per cent towards its front left').waitFor()
    // A plane through three places, 3 in 100 down towards the front: what is measured comes before what was said.
    for (const [index, [on, beside, height]] of [
      ['0', '0', '0'],
      ['20', '-10', '60'],
      ['20', '10', '6o'],
    ].entries()) {
      await fill(`Height ${index + 1}, on, yd`, on ?? '')
      await fill(`Height ${index + 1}, beside, yd`, beside ?? '')
      await fill(`Height ${index + 1}, height, cm`, height ?? '')
    }
    await green.getByText('height 3: “height” is “6o”, which is no number').waitFor()
    await green.getByText('MAR-IMPORT-039').waitFor()
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    await fill('Height 3, height, cm', '60')
    // 60 cm over 20 yd is 3.28 per cent.
    await said.getByText('falls 3.3 per cent towards its front, by 3 spot heights').waitFor()
    await page.getByRole('button', { name: 'Undo' }).click()
    await green.getByText('MAR-IMPORT-039').waitFor()
    await page.setViewportSize({ width: 320, height: 700 })
    expect(await beyondTheSide(page)).toEqual([])
    await page.setViewportSize({ width: 1280, height: 900 })
  })
})

describe('edges that were walked', () => {
  const { toLonLat } = tangentPlane([-2.1, 55.9])
  // The hole is played to the east, so that the walk must be turned.
  const place = (along: number, right: number): string => {
    const [lon, lat] = toLonLat([along, -right])
    return `lat="${lat.toFixed(8)}" lon="${lon.toFixed(8)}"`
  }
  const track = (name: string, corners: readonly (readonly [number, number])[]): string =>
    `<trk><name>${name}</name><trkseg>${corners.map(([along, right]) => `<trkpt ${place(along, right)}/>`).join('\n')}</trkseg></trk>`
  const square = (from: number, to: number, left: number, right: number): readonly [number, number][] => [
    [from, left],
    [to, left],
    [to, right],
    [from, right],
    [from, left],
  ]
  const GPX = `<?xml version="1.0"?><gpx version="1.1" creator="a receiver" xmlns="http://www.topografix.com/GPX/1/1">
<wpt ${place(0, 0)}><name>tee</name></wpt><wpt ${place(300, 0)}><name>pin</name></wpt>
${track('green', square(288, 312, -12, 12))}
<trk><name>Tuesday</name><trkseg><trkpt lat="?" lon="2"/>
${track('', square(200, 215, 14, 26)).replace(/^.*<trkseg>/, '')}</gpx>`

  it('become rows once the surveyor has said what they are', async () => {
    await page.getByRole('button', { name: 'Begin a new course' }).click()
    await page
      .getByLabel('A walk, GPX')
      .setInputFiles({ name: 'walk.gpx', mimeType: 'application/gpx+xml', buffer: Buffer.from(GPX) })
    const second = page.getByLabel('Tuesday', { exact: true })
    expect(await second.inputValue()).toBe('')
    expect(await page.locator('.walks + ul').textContent()).toContain('walk.gpx, line 8: A point of track 2')
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    await second.selectOption('bunker')
    await page.getByRole('button', { name: 'Put them on the hole' }).click()
    await page.getByText('good to about 5 yd').waitFor()
    const what = page.getByLabel(/^Row \d+, what$/)
    await expect
      .poll(() => what.evaluateAll((cells) => cells.map((cell) => (cell as HTMLSelectElement).value)))
      .toEqual(['green', 'bunker', 'tee', 'start', ''])
    expect(await page.getByLabel(/^Row 4, note/).inputValue()).toMatch(
      /^55\.9000000 -2\.1000000 toward 90\.00$/,
    )
    const survey = JSON.parse(String(await page.evaluate(`localStorage.getItem('marram.survey')`))).now
    const { hole } = readHole(openHole(survey), survey.unit)
    const bunker = hole!.areas.find(({ ground }) => ground === 'bunker')!
    const [x, y] = polygonCentroid(bunker.polygon)
    expect(x).toBeCloseTo(20, 0)
    expect(y).toBeCloseTo(207.5, 0)
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await what.count()).toBe(1)
  })
})

describe('a picture of the hole', () => {
  it('lies under the chart to scale, turned away from its tee', async () => {
    await page.getByRole('button', { name: 'Begin a new course' }).click()
    const known = page.getByLabel('A known length')
    await known.fill('300')
    // The tee at the right, the green at the left, 400 px apart; a pond above the middle.
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="500" height="200"><rect width="500" height="200" fill="#9b9"/>
      <rect x="440" y="90" width="20" height="20"/><circle cx="50" cy="100" r="15" fill="#fff"/><rect x="230" y="30" width="40" height="40" fill="#46a"/></svg>`
    await page
      .getByLabel('A picture of the hole')
      .setInputFiles({ name: 'plan.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(svg) })
    const placer = page.getByRole('application')
    await page.getByText('Tap the tee.').waitFor()
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    const picture = (await page.locator('.placer img').boundingBox())!
    const box = (await placer.boundingBox())!
    const scale = picture.width / 500
    const tap = (u: number, v: number) =>
      placer.click({ position: { x: picture.x - box.x + u * scale, y: picture.y - box.y + v * scale } })
    await tap(450, 100)
    await tap(50, 100)
    const under = page.locator('.under-picture')
    await under.waitFor()
    const matrix = String(await under.evaluate((image) => getComputedStyle(image).transform))
    const [a, b, c, d, e, f] = matrix.match(/-?[\d.]+(?:e-?\d+)?/g)!.map(Number) as [
      number,
      number,
      number,
      number,
      number,
      number,
    ]
    const sheet = await sheetOnScreen()
    const onGround = (u: number, v: number): Point => sheet.toHole([a * u + c * v + e, b * u + d * v + f])
    const expected: readonly (readonly [number, number, number, number])[] = [
      [450, 100, 0, 0],
      [50, 100, 0, 300],
      // 75 yards of the 300 to the pixel row of the pond: to the right of the player.
      [250, 50, 37.5, 150],
    ]
    for (const [u, v, beside, along] of expected) {
      const [x, y] = onGround(u, v)
      expect(x / METRES_PER_YARD).toBeCloseTo(beside, 0)
      expect(y / METRES_PER_YARD).toBeCloseTo(along, 0)
    }
    await page.getByRole('button', { name: 'Take it away' }).click()
    expect(await under.count()).toBe(0)
  })

  it('had no error of its own on the way', () => expect(desk.troubles).toEqual([]))
})

const EXAMPLES = fileURLToPath(new URL('../../examples', import.meta.url))

/** The chart's sheet as the page lays it out now. */
async function sheetOnScreen() {
  const survey = JSON.parse(String(await page.evaluate(`localStorage.getItem('marram.survey')`))).now
  const { hole } = readHole(openHole(survey), survey.unit)
  const size = (await page.evaluate(
    `(({ clientWidth, clientHeight }) => ({ width: clientWidth, height: clientHeight }))(document.querySelector('.survey-chart'))`,
  )) as { width: number; height: number }
  const [width, height] = [Math.floor(size.width / 10) * 10, Math.floor(size.height / 10) * 10]
  return layOutSheet(hole!, { width, height })
}
