import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { HoleModel } from '../src/golf/strategy/hole-model.ts'
import { type HoleProblem, holeProblem } from '../src/golf/strategy/hole-problem.ts'
import { KEPT_ACTIONS, SOLVE_TOLERANCE } from '../src/golf/strategy/settings.ts'
import type { KernelMemory } from '../src/numbers/kernels/kernel-memory.ts'
import { type KernelFor, weighKernel } from '../src/numbers/kernels/weigh-kernel.ts'
import { FRAME, LANDING } from '../src/numbers/kernels/weigh-layout.ts'
import { weighPlainly } from '../src/numbers/kernels/weigh-plainly.ts'
import { solveShortestPath } from '../src/numbers/solver/solve-shortest-path.ts'
import { type Figure, medianMilliseconds, middleOf } from './measure.ts'

/** Lines and strikes of the cold solve that is measured: 41 lines about the pin, 128 strikes to a shot. */
const COLD = { aboutPinDegrees: 40, quadrature: { good: 96, mishit: 32 } } as const
const RUNS = 3
/** Its kind, and the most arguments that a call has. */
const CALL_WORDS = 7

/** One weighing as the kernel was asked for it: the memory before it, and each call as {@link CALL_WORDS} numbers. */
interface Weighing {
  readonly memory: Uint8Array
  readonly frame: number
  readonly calls: readonly number[]
  /** Sum of the cheapest cost of every cell. */
  readonly kept: number
}

/** Figures of the solve itself: cold, and one weighing against its native and its readable twin. */
export function solverFigures(model: HoleModel): Figure[] {
  const figures: Figure[] = []
  const add = (name: string, median: number, against: Figure | null): Figure => {
    const figure: Figure = {
      name,
      unit: 'ms',
      median,
      ratio: against === null ? null : median / against.median,
      against: against?.name ?? null,
    }
    figures.push(figure)
    return figure
  }
  let problem: HoleProblem | null = null
  const cold = medianMilliseconds(
    {
      name: 'cold',
      prepare: () => null,
      run: () => {
        problem = holeProblem(model, COLD)
        const { converged } = solveShortestPath(problem, { tolerance: SOLVE_TOLERANCE })
        if (!converged) throw new Error('the hole was not solved')
      },
    },
    3,
  )
  const solve = add('cold solve, 41 lines, 128 strikes', cold, null)
  const { pairs, bytes } = (problem as HoleProblem | null)?.size() ?? { pairs: 0, bytes: 0 }
  console.error(`${pairs} pairs of state and action, ${(bytes / 1e6).toFixed(0)} MB in the kernel's memory`)
  const weighing = add('one weighing of all actions', weighingTime(model, weighKernel, RUNS), solve)
  add('the same by the readable twin', weighingTime(model, weighPlainly, 1), weighing)
  const native = nativeTime(noted(model))
  if (native === null) console.error('no native twin: there is no C compiler on this machine')
  else
    add(
      'one weighing of all actions, against native',
      weighing.median,
      add('the same by the native twin', native, null),
    )
  return figures
}

/** Median time of the first weighing of a problem, which weighs every action, everything laid out before. */
function weighingTime(model: HoleModel, kernel: KernelFor, runs: number): number {
  let spent = 0
  const timed: KernelFor = (memory, frame) => {
    const inner = kernel(memory, frame)
    const time = (work: () => void): void => {
      const start = performance.now()
      work()
      spent += performance.now() - start
    }
    return {
      layLanding: (...given) => time(() => inner.layLanding(...given)),
      layRise: (...given) => time(() => inner.layRise(...given)),
      hasLive: (...given) => inner.hasLive(...given),
      weighAction: (...given) => time(() => inner.weighAction(...given)),
    }
  }
  const times: number[] = []
  for (let run = 0; run < runs; run++) {
    spent = 0
    const problem = holeProblem(model, { ...COLD, kernel: timed })
    problem.improve(problem.startValues())
    times.push(spent)
  }
  return middleOf(times)
}

function noted(model: HoleModel): Weighing {
  let memory: KernelMemory | null = null
  let at = 0
  let before: Uint8Array | null = null
  const calls: number[] = []
  /** By landing: where its balls rest, which the caller lays before the kernel lays the landing. */
  const rests = new Map<number, Uint8Array>()
  const noting: KernelFor = (of, frame) => {
    const inner = weighKernel(of, frame)
    memory = of
    at = frame
    const note = (...call: number[]): void => {
      before ??= of.bytes().slice()
      calls.push(...call, ...new Array<number>(CALL_WORDS - call.length).fill(0))
    }
    return {
      hasLive: (...given) => inner.hasLive(...given),
      layRise: (slant) => {
        note(0, slant)
        inner.layRise(slant)
      },
      layLanding: (landing, buffer) => {
        note(1, landing, buffer)
        const from = of.words()[landing / 4 + LANDING.rest] as number
        if (!rests.has(landing)) rests.set(landing, of.bytes().slice(from, from + 4 * model.places.count))
        inner.layLanding(landing, buffer)
      },
      weighAction: (...given) => {
        note(2, ...given)
        inner.weighAction(...given)
      },
    }
  }
  const problem = holeProblem(model, { ...COLD, kernel: noting })
  problem.improve(problem.startValues())
  if (memory === null || before === null) throw new Error('nothing was weighed')
  return { memory: withRests(before, rests), frame: at, calls, kept: keptSum(memory, at) }
}

/** A memory with the rests of every landing laid behind it, for calls that are not followed by laying them anew. */
function withRests(memory: Uint8Array, rests: ReadonlyMap<number, Uint8Array>): Uint8Array {
  const size = [...rests.values()].reduce((sum, { byteLength }) => sum + byteLength, memory.byteLength)
  const longer = new Uint8Array(size)
  longer.set(memory)
  const words = new Int32Array(longer.buffer)
  let next = memory.byteLength
  for (const [landing, rest] of rests) {
    words[landing / 4 + LANDING.rest] = next
    longer.set(rest, next)
    next += rest.byteLength
  }
  return longer
}

function keptSum(memory: KernelMemory, frame: number): number {
  const word = (field: number): number => memory.words()[frame / 4 + field] as number
  let sum = 0
  for (let cell = 0; cell < word(FRAME.columns) * word(FRAME.rows); cell++) {
    const cost = memory.figures()[word(FRAME.keptCosts) / 4 + cell * KEPT_ACTIONS] as number
    if (Number.isFinite(cost)) sum += cost
  }
  return sum
}

/** Median of the native twin over the same calls; `null` where there is no compiler. Throws when it kept other costs. */
function nativeTime({ memory, frame, calls, kept }: Weighing): number | null {
  const folder = mkdtempSync(join(tmpdir(), 'marram-native-'))
  try {
    const program = join(folder, 'weigh-actions')
    const source = fileURLToPath(new URL('./weigh-actions.c', import.meta.url))
    const built = spawnSync('cc', ['-O3', '-march=native', '-o', program, source, '-lm'])
    if (built.error) return null
    if (built.status !== 0) throw new Error(`the native twin does not compile: ${built.stderr}`)
    const file = join(folder, 'file')
    const head = Int32Array.of(memory.byteLength, frame, calls.length / CALL_WORDS, 0)
    writeFileSync(file, Buffer.concat([bytesOf(head), memory, bytesOf(Int32Array.from(calls))]))
    const said = JSON.parse(execFileSync(program, [file, String(RUNS)]).toString()) as {
      median: number
      kept: number
    }
    if (Math.abs(said.kept - kept) > 1e-4 * kept)
      throw new Error(`the native twin kept costs of ${said.kept} together, not ${kept}`)
    return said.median
  } finally {
    rmSync(folder, { recursive: true })
  }
}

function bytesOf(numbers: Int32Array): Uint8Array {
  return new Uint8Array(numbers.buffer, numbers.byteOffset, numbers.byteLength)
}
