// The hole desk in headless Chromium by real input events: how soon a drag is painted, how evenly the chart is carried, how
// much is loaded first, and how soon the desk can be used: `npm run bench-desk -- [--hole REF] [--json]`. Chromium draws
// without a graphics card here, so these are upper bounds for a machine that has one. Opening is timed by the page's own clock,
// from its navigation on, with an empty browser and the server running.
import { availableParallelism, loadavg } from 'node:os'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import type { Locator, Page } from 'playwright-core'
import { type FirstLoad, firstLoad } from '../tools/first-load.ts'
import { planned, type ServedDesk, serveDesk } from '../tools/served-desk.ts'

/** One figure of the desk. */
interface DeskFigure {
  readonly name: string
  readonly unit: 'ms' | 'kB' | 'per second'
  readonly median: number
  readonly percentile95: number | null
}

/** Moves of one drag, and the pause between them: as fast as a hand that looks. */
const MOVES = 60
const PAUSE_MILLISECONDS = 33
const FINISHES = 5000

/** Notes for every move of the pointer when the next change of an element had been painted. */
const WATCH = `
globalThis.watchPaint = (selector) => {
  const painted = []
  let moved = 0
  const target = document.querySelector(selector)
  const onMove = (event) => { moved = event.timeStamp }
  const observer = new MutationObserver(() => {
    const from = moved
    if (from === 0) return
    requestAnimationFrame(() => setTimeout(() => painted.push(performance.now() - from)))
  })
  addEventListener('pointermove', onMove, true)
  observer.observe(target, { subtree: true, childList: true, characterData: true, attributes: true })
  globalThis.painted = () => { observer.disconnect(); removeEventListener('pointermove', onMove, true); return painted }
}`

async function drag(
  page: Page,
  handle: Locator,
  by: (move: number) => readonly [number, number],
): Promise<void> {
  const box = await handle.boundingBox()
  if (box === null) throw new Error('nothing to drag')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  for (let move = 1; move <= MOVES; move += 1) {
    const [right, down] = by(move)
    await page.mouse.move(x + right, y + down)
    await page.waitForTimeout(PAUSE_MILLISECONDS)
  }
  await page.mouse.up()
}

async function paintFigure(
  page: Page,
  name: string,
  watched: string,
  handle: Locator,
  by: (move: number) => readonly [number, number],
): Promise<DeskFigure> {
  await page.evaluate(`watchPaint(${JSON.stringify(watched)})`)
  await drag(page, handle, by)
  await page.waitForTimeout(3000)
  const painted = (await page.evaluate('painted()')) as number[]
  return spread(name, 'ms', painted)
}

function spread(name: string, unit: DeskFigure['unit'], values: readonly number[]): DeskFigure {
  const sorted = values.toSorted((a, b) => a - b)
  const at = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN
  return { name: `${name} (${values.length} times)`, unit, median: at(0.5), percentile95: at(0.95) }
}

async function deskFigures(desk: ServedDesk, hole: string): Promise<DeskFigure[]> {
  const { page } = desk
  await page.goto(desk.address)
  await page.locator('.handle-aim').waitFor()
  await page.locator('.outcomes li').first().waitFor()
  const opened = (await page.evaluate('performance.now()')) as number
  await planned(page)
  const firstPlan = (await page.evaluate('performance.now()')) as number
  const loaded = await firstLoad(page)
  await page.getByLabel('Hole', { exact: true }).selectOption(hole)
  await planned(page)
  await page.locator('.state:empty').waitFor({ state: 'attached', timeout: 600_000 })
  await page.evaluate(WATCH)
  const aim = await paintFigure(
    page,
    'aim dragged to its price painted',
    '.aim-words',
    page.locator('.handle-aim'),
    (move) => [move % 2 === 0 ? move : -move, 0],
  )
  await page.keyboard.press('Control+z')
  const hazards = await page.getByLabel('Hazard', { exact: true }).locator('option').allTextContents()
  const water = hazards.findIndex((words) => /pool|water|cove/i.test(words))
  await page.getByLabel('Hazard', { exact: true }).selectOption({ index: Math.max(1, water) })
  const grip = page.locator('.grip-whole')
  const outline = await paintFigure(
    page,
    'hazard dragged to its outline painted',
    '.chart-carried',
    grip,
    (move) => [0, -move / 3],
  )
  const figures = await paintFigure(page, 'hazard dragged to the plan painted', '.clubs', grip, (move) => [
    0,
    move / 3,
  ])
  return [
    aim,
    outline,
    figures,
    await carriedFigure(page),
    {
      name: 'opened to a chart whose aim answers with where the shots finish',
      unit: 'ms',
      median: opened,
      percentile95: null,
    },
    { name: 'opened to the first plan, on a coarse grid', unit: 'ms', median: firstPlan, percentile95: null },
    ...loadFigures(loaded),
  ]
}

/** Frames a second while the enlarged chart is carried with so many finishes on it. */
async function carriedFigure(page: Page): Promise<DeskFigure> {
  await page.getByRole('button', { name: 'Nearer', exact: true }).click()
  await page.waitForTimeout(2000)
  await page.evaluate(`(() => {
    const picture = document.querySelectorAll('.chart-carried svg')[1]
    for (let index = 0; index < ${FINISHES}; index += 1) {
      const dot = document.createElementNS('http://www.w3.org/2000/svg', 'circle')
      dot.setAttribute('cx', String((index * 7919) % 600)); dot.setAttribute('cy', String((index * 104729) % 700))
      dot.setAttribute('r', '1.2')
      picture.append(dot)
    }
    globalThis.frames = []
    let last = performance.now()
    const frame = (now) => { frames.push(now - last); last = now; globalThis.counting && requestAnimationFrame(frame) }
    globalThis.counting = true
    requestAnimationFrame(frame)
  })()`)
  const box = await page.locator('.chart').boundingBox()
  if (box === null) throw new Error('no chart')
  const [x, y] = [box.x + box.width * 0.62, box.y + box.height * 0.9]
  await page.mouse.move(x, y)
  await page.mouse.down()
  for (let move = 1; move <= MOVES; move += 1) await page.mouse.move(x - move, y - 2 * move)
  const frames = (await page.evaluate('counting = false, frames.slice(2)')) as number[]
  await page.mouse.up()
  const { median, percentile95 } = spread('', 'ms', frames)
  return {
    name: `frames while the chart is carried with ${FINISHES} finishes, ${frames.length} of them`,
    unit: 'per second',
    median: 1000 / median,
    percentile95: 1000 / (percentile95 ?? Number.NaN),
  }
}

function loadFigures({ page, workers, documents, files }: FirstLoad): DeskFigure[] {
  const figure = (name: string, median: number): DeskFigure => ({
    name,
    unit: 'kB',
    median,
    percentile95: null,
  })
  return [
    figure(`first load as it was sent, ${files.length} files with its workers`, page),
    figure('its workers', workers),
    figure('courses, players and days', documents),
  ]
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { values } = parseArgs({
    options: { hole: { type: 'string', default: '7' }, json: { type: 'boolean' } },
  })
  const desk = await serveDesk()
  try {
    const before = loadavg()[0] ?? 0
    const figures = await deskFigures(desk, values.hole)
    console.error(`${before.toFixed(1)} programs wanted ${availableParallelism()} cores before it began.`)
    if (values.json === true) console.log(JSON.stringify(figures, null, 2))
    else
      for (const { name, unit, median, percentile95 } of figures)
        console.log(
          `${name}: ${median.toFixed(1)} ${unit}${percentile95 === null ? '' : `, at 95 per cent ${percentile95.toFixed(1)}`}`,
        )
  } finally {
    await desk.close()
  }
}
