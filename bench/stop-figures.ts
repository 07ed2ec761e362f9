import { fileURLToPath } from 'node:url'
import { askHole, planQuestion } from '../src/apps/cli/ask-hole.ts'
import { loadCourse } from '../src/apps/cli/load-course.ts'
import { loadPlayer } from '../src/apps/cli/load-player.ts'
import { parseQuestion } from '../src/apps/cli/parse-question.ts'
import { planPool } from '../src/apps/cli/plan-pool.ts'
import { REFERENCE_DAY } from '../src/golf/course/day.ts'
import type { PlanQuestion } from '../src/golf/strategy/plan-hole.ts'
import { stopsInBrowser } from './stop-in-browser.ts'

/** Times of many stops of one kind: the middle one, and the one that 19 in 20 do not exceed, milliseconds. */
export interface StopFigure {
  readonly name: string
  readonly middle: number
  readonly percentile95: number
}

const COURSE = fileURLToPath(new URL('../examples/sandrel-ness.course.geojson', import.meta.url))
const PLAYER = fileURLToPath(new URL('../examples/aldous-brack.player.json', import.meta.url))
/** Moments of a plan at which it is stopped, milliseconds after it was begun: from 0.05 s to 7 s, each a step of 28 % later. */
const STOP_AFTER = Array.from({ length: 21 }, (_, step) => Math.round(50 * 1.28 ** step))

/** From the signal until the plan has stopped, in a thread of Node and in a worker of Chromium. */
export async function stopFigures(): Promise<StopFigure[]> {
  const { course } = await loadCourse(COURSE)
  const question = parseQuestion({ player: [PLAYER], hole: '7', draws: '0', flips: false })
  const asked = askHole(course, '7', REFERENCE_DAY, question)
  const task = planQuestion(asked, course, loadPlayer(PLAYER), question, 'yards')
  const figures = [figure('stopping a plan in a thread', await stopsInThread(task))]
  const browser = await stopsInBrowser(task, STOP_AFTER)
  if (browser === null) console.error('stopping in a browser is left out: there is no Chromium')
  else {
    figures.push(figure('stopping a plan in a browser', browser.milliseconds))
    console.error(`${browser.workers} workers of the browser for ${STOP_AFTER.length} stops`)
  }
  return figures
}

function figure(name: string, milliseconds: readonly number[]): StopFigure {
  const at = (share: number): number => milliseconds[Math.ceil(share * milliseconds.length) - 1] as number
  return { name, middle: at(0.5), percentile95: at(0.95) }
}

/** How soon the thread of a plan has ended, milliseconds, in order of size. */
async function stopsInThread(task: PlanQuestion): Promise<number[]> {
  // A hole without a green is answered at once: so the thread has started before a plan is begun.
  const first = { ...task, hole: { ...task.hole, green: null } }
  const pool = planPool(1)
  const times: number[] = []
  for (const after of STOP_AFTER) {
    for await (const _settled of pool.run([first]));
    const stop = new AbortController()
    let from = 0
    setTimeout(() => {
      from = performance.now()
      stop.abort()
    }, after)
    try {
      for await (const _settled of pool.run([task], { signal: stop.signal }))
        throw new Error('the plan was done before it was stopped')
    } catch (error) {
      if (!stop.signal.aborted) throw error
    }
    times.push(performance.now() - from)
  }
  await pool.close()
  return times.sort((a, b) => a - b)
}
