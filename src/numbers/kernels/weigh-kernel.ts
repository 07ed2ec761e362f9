import type { KernelMemory, WasmMemory } from './kernel-memory.ts'
import { WEIGH_ACTIONS_WASM } from './weigh-actions-wasm.ts'
import { weighPlainly } from './weigh-plainly.ts'

/** What weighs the actions of a problem that is laid out as `weigh-layout.ts` says. Arguments are addresses. */
export interface WeighKernel {
  /** Works out in a buffer what landing costs with the present costs of outcomes. */
  layLanding(landing: number, buffer: number): void
  /** Works out what balls cost that are caught as they leave. */
  layRise(slant: number): void
  /** Whether an action may be among the cheapest of any of its cells, by what it cost when last weighed. */
  hasLive(segments: number, segmentCount: number, memo: number): boolean
  /**
   * Weighs an action from the cells of its segments, where it may be among the cheapest, and keeps the cheapest few of each
   * cell. `memo`: a figure for each cell of each block of a segment, what it cost when last weighed.
   */
  weighAction(
    action: number,
    groups: number,
    groupCount: number,
    segments: number,
    segmentCount: number,
    memo: number,
  ): void
}

/** Sets a kernel to work on a problem: its memory, and the address of its frame. */
export type KernelFor = (memory: KernelMemory, frame: number) => WeighKernel

interface WeighExports {
  layLanding(frame: number, landing: number, buffer: number): void
  layRise(frame: number, slant: number): void
  weighAction(
    frame: number,
    action: number,
    groups: number,
    groupCount: number,
    segments: number,
    segmentCount: number,
    memo: number,
  ): void
  hasLive(frame: number, segments: number, segmentCount: number, memo: number): number
}

declare const WebAssembly: {
  readonly Module: new (bytes: Uint8Array) => object
  readonly Instance: new (
    module: object,
    imports: { readonly env: { readonly memory: WasmMemory; readonly abort: () => void } },
  ) => { readonly exports: unknown }
}

/** The compiled kernel; `null` where this machine cannot run it, `undefined` = not yet tried. */
let compiled: object | null | undefined

/** The fast kernel where the machine can run it, else its readable twin. */
export function weighKernel(memory: KernelMemory, frame: number): WeighKernel {
  if (compiled === undefined) compiled = compile()
  if (compiled === null) return weighPlainly(memory, frame)
  const { exports } = new WebAssembly.Instance(compiled, {
    env: {
      memory: memory.memory,
      abort: () => {
        throw new RangeError('a kernel stopped')
      },
    },
  })
  const { layLanding, layRise, weighAction, hasLive } = exports as WeighExports
  return {
    layLanding: (landing, buffer) => layLanding(frame, landing, buffer),
    layRise: (slant) => layRise(frame, slant),
    hasLive: (segments, segmentCount, memo) => hasLive(frame, segments, segmentCount, memo) !== 0,
    weighAction: (action, groups, groupCount, segments, segmentCount, memo) =>
      weighAction(frame, action, groups, groupCount, segments, segmentCount, memo),
  }
}

/** A machine without vector instructions refuses the module. */
function compile(): object | null {
  try {
    return new WebAssembly.Module(bytesOf(WEIGH_ACTIONS_WASM))
  } catch {
    return null
  }
}

/** Bytes of base64 text. */
export function bytesOf(base64: string): Uint8Array {
  const bytes = new Uint8Array(Math.floor((base64.replace(/=+$/, '').length * 3) / 4))
  let held = 0
  let bits = 0
  let at = 0
  for (const letter of base64) {
    const value = LETTERS.indexOf(letter)
    if (value < 0) break
    held = ((held << 6) | value) & 0xffffff
    bits += 6
    if (bits < 8) continue
    bits -= 8
    bytes[at] = (held >> bits) & 0xff
    at += 1
  }
  return bytes
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'
