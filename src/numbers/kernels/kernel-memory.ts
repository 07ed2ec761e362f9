/** One growing memory that kernels work in. Addresses are bytes from its start; views go stale when it grows: ask anew. */
export interface KernelMemory {
  readonly memory: WasmMemory
  words(): Int32Array
  figures(): Float32Array
  bytes(): Uint8Array
  /** Takes so many bytes, aligned to 16 and zero. Throws a RangeError where the machine has none left. */
  allocate(bytes: number): number
  /** Takes room for numbers and copies them in. */
  place(numbers: Int32Array | Float32Array | Uint8Array): number
}

/** As much of a WebAssembly memory as is used here; neither Node's nor the browser's types are known in this room. */
export interface WasmMemory {
  readonly buffer: ArrayBuffer
  grow(pages: number): number
}

declare const WebAssembly: {
  readonly Memory: new (size: { readonly initial: number }) => WasmMemory
}

const PAGE_BYTES = 65536
const ALIGN_BYTES = 16
/** Below it lie the kernels' own constants. */
const FIRST_ADDRESS = 4096

/** An empty memory. */
export function kernelMemory(): KernelMemory {
  const memory = new WebAssembly.Memory({ initial: 64 })
  let next = FIRST_ADDRESS
  let words = new Int32Array(memory.buffer)
  let figures = new Float32Array(memory.buffer)
  let bytes = new Uint8Array(memory.buffer)
  function allocate(size: number): number {
    const at = next
    next = at + Math.ceil(size / ALIGN_BYTES) * ALIGN_BYTES
    const missing = next - memory.buffer.byteLength
    if (missing > 0) {
      memory.grow(Math.ceil(Math.max(missing, memory.buffer.byteLength / 8) / PAGE_BYTES))
      words = new Int32Array(memory.buffer)
      figures = new Float32Array(memory.buffer)
      bytes = new Uint8Array(memory.buffer)
    }
    return at
  }
  return {
    memory,
    words: () => words,
    figures: () => figures,
    bytes: () => bytes,
    allocate,
    place(numbers) {
      const at = allocate(numbers.byteLength)
      bytes.set(new Uint8Array(numbers.buffer, numbers.byteOffset, numbers.byteLength), at)
      return at
    },
  }
}
