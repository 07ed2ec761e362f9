/**
 * The solution of `matrix · x = right` by elimination with the largest pivot of each column; `null` when the matrix is
 * singular. Rows run one after the other in `matrix`; both arguments are used up.
 */
export function solveLinear(matrix: Float64Array, right: Float64Array): Float64Array | null {
  const size = right.length
  const at = (row: number, column: number): number => matrix[row * size + column] as number
  for (let column = 0; column < size; column++) {
    let pivot = column
    for (let row = column + 1; row < size; row++)
      if (Math.abs(at(row, column)) > Math.abs(at(pivot, column))) pivot = row
    const top = at(pivot, column)
    if (!(Math.abs(top) > 0)) return null
    if (pivot !== column) swapRows(matrix, right, size, pivot, column)
    for (let row = column + 1; row < size; row++) {
      const share = at(row, column) / top
      if (share === 0) continue
      for (let k = column; k < size; k++) matrix[row * size + k] = at(row, k) - share * at(column, k)
      right[row] = (right[row] as number) - share * (right[column] as number)
    }
  }
  const solution = new Float64Array(size)
  for (let row = size - 1; row >= 0; row--) {
    let rest = right[row] as number
    for (let k = row + 1; k < size; k++) rest -= at(row, k) * (solution[k] as number)
    solution[row] = rest / at(row, row)
  }
  return solution.every(Number.isFinite) ? solution : null
}

function swapRows(matrix: Float64Array, right: Float64Array, size: number, a: number, b: number): void {
  const row = matrix.slice(a * size, (a + 1) * size)
  matrix.copyWithin(a * size, b * size, (b + 1) * size)
  matrix.set(row, b * size)
  const value = right[a] as number
  right[a] = right[b] as number
  right[b] = value
}
